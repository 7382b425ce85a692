//! Reading the poses of an entry.

use body::Fingers;
use diagnostic::{Diagnostic, Sink, Spanned};
use document::Table;

use crate::{
    BladeHold, Demand, Elbow, Forearm, Hold, Kind, Other, Path, Positions, Resting, Trunk, Turn, UpperArm, Weight,
    Wrist,
};

/// What the words of a pose may take their degrees from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Given<'d> {
    /// What is demanded of the operated arm.
    pub demands: &'d [Demand],
    /// The pose that is held against the resting allowance, where the entry is one.
    pub resting: Option<Resting>,
}

/// The poses under `positions`; required of exercises and tests. An activity or a care pose may have the one pose that
/// asks most, under `at`. They are held against the demands where those could be read: one fault gives one message.
pub(crate) fn positions(
    kind: Kind,
    table: &mut Table<'_>,
    given: Option<Given<'_>>,
    sink: &mut Sink,
) -> Option<Positions> {
    if !matches!(kind, Kind::Exercise | Kind::Test) {
        return one(table, given, sink);
    }
    let mut positions = table.require("positions", sink)?.table(sink)?;
    let weight = positions.require("weight", sink).and_then(|value| value.word(Weight::WORDS, sink));
    let other = positions.word("other", Other::WORDS, sink);
    let path = positions.word("path", Path::WORDS, sink);
    let start = positions.require("start", sink).and_then(|value| value.table(sink));
    let start = start.and_then(|table| hold(table, None, given, sink));
    let end = positions.require("end", sink).and_then(|value| value.table(sink));
    let end = end.and_then(|table| hold(table, start.as_ref(), given, sink));
    positions.finish(sink);
    Some(Positions {
        start: start?,
        end: end?,
        weight: weight?.value,
        other: other.map_or(Other::AtRest, |other| other.value),
        path: path.map_or(Path::Direct, |path| path.value),
    })
}

fn one(table: &mut Table<'_>, given: Option<Given<'_>>, sink: &mut Sink) -> Option<Positions> {
    let mut positions = table.take("positions")?.table(sink)?;
    let other = positions.word("other", Other::WORDS, sink);
    let at = positions.require("at", sink).and_then(|value| value.table(sink));
    let at = at.and_then(|table| hold(table, None, given, sink));
    positions.finish(sink);
    let at = at?;
    let rests = given.is_some_and(|given| given.resting.is_some());
    Some(Positions {
        start: at,
        end: at,
        weight: if rests { Weight::Carried } else { Weight::Own },
        other: other.map_or(Other::AtRest, |other| other.value),
        path: Path::Direct,
    })
}

/// One pose. What the end leaves out stays as at the start; what the start leaves out is at its rest.
fn hold(mut table: Table<'_>, before: Option<&Hold>, given: Option<Given<'_>>, sink: &mut Sink) -> Option<Hold> {
    let errors = sink.errors();
    let table_span = table.span;
    let trunk = table.word("trunk", Trunk::WORDS, sink);
    let upper_arm = table.word("upper_arm", UpperArm::WORDS, sink);
    let turn = table.word("turn", Turn::WORDS, sink);
    let elbow = table.word("elbow", Elbow::WORDS, sink);
    let forearm = table.word("forearm", Forearm::WORDS, sink);
    let wrist = table.word("wrist", Wrist::WORDS, sink);
    let fingers = table.word("fingers", Fingers::WORDS, sink);
    let blade = table.word("blade", BladeHold::WORDS, sink);
    table.finish(sink);
    if let Some(word) = upper_arm {
        has_demand(word.map(UpperArm::movement), given, sink);
    }
    if let Some(word) = turn {
        has_demand(word.map(Turn::movement), given, sink);
    }
    let behind = upper_arm.is_some_and(|word| word.value == UpperArm::BehindTheBack)
        || turn.is_some_and(|word| word.value == Turn::BehindTheBack);
    if behind && given.is_some_and(|given| !given.demands.iter().any(goes_behind_the_back)) {
        sink.push(
            Diagnostic::error("pose-without-demand", "nothing demands that the hand goes behind the back")
                .at(table_span)
                .help("add the demand, or choose a pose that needs none"),
        );
    }
    if sink.errors() > errors {
        return None;
    }
    let rest = Hold {
        trunk: Trunk::AsPlaced,
        upper_arm: UpperArm::Hanging,
        turn: Turn::None,
        elbow: Elbow::Straight,
        forearm: Forearm::ThumbLeads,
        wrist: Wrist::Straight,
        fingers: Fingers::Soft,
        blade: BladeHold::AtRest,
    };
    let before = before.copied().unwrap_or(rest);
    Some(Hold {
        trunk: trunk.map_or(before.trunk, |word| word.value),
        upper_arm: upper_arm.map_or(before.upper_arm, |word| word.value),
        turn: turn.map_or(before.turn, |word| word.value),
        elbow: elbow.map_or(before.elbow, |word| word.value),
        forearm: forearm.map_or(before.forearm, |word| word.value),
        wrist: wrist.map_or(before.wrist, |word| word.value),
        fingers: fingers.map_or(before.fingers, |word| word.value),
        blade: blade.map_or(before.blade, |word| word.value),
    })
}

fn goes_behind_the_back(demand: &Demand) -> bool {
    demand.key.joint == body::Joint::Shoulder && demand.key.movement == body::Movement::HandBehindBack
}

/// A pose that names a movement needs a demand that says how far.
fn has_demand(movement: Spanned<Option<body::Movement>>, given: Option<Given<'_>>, sink: &mut Sink) {
    let (Some(named), Some(given)) = (movement.value, given) else { return };
    // A pose that rests says by itself how far it is turned inward.
    if named == body::Movement::InternalRotation && given.resting.is_some() {
        return;
    }
    let found = given.demands.iter().any(|demand| {
        demand.key.joint == body::Joint::Shoulder
            && demand.key.movement == named
            && demand.amount.greatest_angle().is_some()
    });
    if !found {
        sink.push(
            Diagnostic::error(
                "pose-without-demand",
                format!("nothing says how far: no demand of {named} has an angle"),
            )
            .at(movement.span)
            .help("add the demand, or choose a pose that needs none"),
        );
    }
}
