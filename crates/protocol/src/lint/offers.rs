//! Whether every stage offers an exercise for each goal it sets.

use body::{Joint, Key, Movement};
use diagnostic::{Diagnostic, Sink, Span};
use exercise::{Catalogue, Entry, Kind};

use super::exercises::{days_of, is_allowed};
use super::under::Under;
use crate::file::{ExerciseUse, ProtocolFile, Stage};

/// A goal within the stage that works on it.
struct Aim<'p> {
    stage: &'p Stage,
    /// The days of the stage.
    from: u16,
    until: u16,
    key: Key,
    /// The goal in words.
    says: String,
    span: Span,
}

/// Checks the stages of every protocol.
///
/// # Method
/// The goals of a stage are the degrees that open the next one, and the goals due while it lasts,
/// but for those from memory, which bind nobody. An exercise serves a goal where it asks anything
/// of the same movement, elevation counting as one in any plane, and the protocol's own limits
/// allow it on a day of the stage. What a finding takes away is replaced when a plan is made.
pub(super) fn check(alternatives: &[Under<'_>], catalogue: &Catalogue, sink: &mut Sink) {
    let Some(defaults) = alternatives.first() else { return };
    for (place, protocol) in defaults.protocols() {
        for aim in aims(protocol) {
            let listed = listed(protocol, catalogue, &aim);
            let without = alternatives.iter().find(|under| !listed.iter().any(|used| serves(under, place, used)));
            if let Some(under) = without {
                sink.push(
                    Diagnostic::error(
                        "goal-without-exercise",
                        format!(
                            "the stage `{}` of `{}` works towards {}, but gives no exercise of {} that it allows from day {} to day {}{}",
                            aim.stage.id,
                            protocol.id,
                            aim.says,
                            of_movement(aim.key),
                            aim.from,
                            aim.until - 1,
                            under.option
                        ),
                    )
                    .at(aim.span)
                    .also(aim.stage.span, "the stage")
                    .help("list an exercise for it in this stage, or leave the goal to a later one"),
                );
            }
        }
    }
}

fn aims(protocol: &ProtocolFile) -> Vec<Aim<'_>> {
    let mut aims = Vec::new();
    let ends = protocol.stages.iter().skip(1).map(|next| next.gate).chain([protocol.horizon]);
    for (place, (stage, end)) in protocol.stages.iter().zip(ends).enumerate() {
        let (from, until) = (stage.gate.count(), end.count());
        if until <= from {
            continue;
        }
        let mut add = |key: Key, says: String, span: Span| aims.push(Aim { stage, from, until, key, says, span });
        if let Some(next) = protocol.stages.get(place + 1) {
            for criterion in &next.criteria {
                if let Some((key, _)) = criterion.measure {
                    add(key, format!("the criterion `{}` of `{}`", criterion.id, next.id), criterion.span);
                }
            }
        }
        for goal in &protocol.goals {
            let memory = goal.evidence.iter().any(|entry| !entry.how_known.may_set_limit());
            // What is due on the day a stage opens was worked on before.
            if !memory && (from..until).contains(&goal.due.count().saturating_sub(1)) {
                add(goal.key, format!("the goal `{}`", goal.id), goal.span);
            }
        }
    }
    aims
}

/// The exercises on the goal's movement that the protocol gives on a day of the stage, with those days.
fn listed<'c>(protocol: &ProtocolFile, catalogue: &'c Catalogue, aim: &Aim<'_>) -> Vec<(&'c Entry, u16, u16)> {
    let within = |used: &ExerciseUse| {
        let (from, until) = days_of(used, protocol)?;
        let (from, until) = (from.max(aim.from), until.min(aim.until));
        let entry = catalogue.get(&used.id).filter(|entry| entry.kind == Kind::Exercise)?;
        let moves = entry.demands.iter().any(|demand| is_same_movement(demand.key, aim.key));
        (moves && from < until).then_some((entry, from, until))
    };
    protocol.exercises.iter().filter_map(within).collect()
}

fn serves(under: &Under<'_>, place: usize, &(entry, from, until): &(&Entry, u16, u16)) -> bool {
    let grid = under.grid();
    (grid.column(from)..=grid.column(until - 1)).any(|column| is_allowed(under, place, entry, column))
}

fn is_same_movement(a: Key, b: Key) -> bool {
    a.joint == b.joint && (a.movement == b.movement || (is_elevation(a) && is_elevation(b)))
}

/// Raising the arm in any plane.
fn is_elevation(key: Key) -> bool {
    use Movement as M;
    key.joint == Joint::Shoulder
        && matches!(key.movement, M::ForwardElevation | M::ScapularPlaneElevation | M::Abduction)
}

fn of_movement(key: Key) -> String {
    if is_elevation(key) { "elevation in any plane".to_owned() } else { key.movement.to_string() }
}
