//! Whether goals and criteria can be reached under the protocol's own limits.

use body::{Key, Position};
use diagnostic::{Diagnostic, Sink};
use exercise::{Catalogue, Entry, Kind};
use plan::{Bound, Cell};

use super::under::Under;
use super::words::{of_cell, of_key};
use crate::file::{Goal, Stage, StageCriterion};

/// Checks the goals of every protocol; goals from memory bind nobody and are left out.
pub(super) fn goals(alternatives: &[Under<'_>], sink: &mut Sink) {
    let Some(defaults) = alternatives.first() else { return };
    for (place, protocol) in defaults.protocols() {
        for goal in &protocol.goals {
            let memory = goal.evidence.iter().any(|entry| !entry.how_known.may_set_limit());
            if !memory && let Some(fault) = alternatives.iter().find_map(|under| above(under, place, goal)) {
                sink.push(fault);
            }
        }
    }
}

/// A goal is compared with the lower of the limit on the day it is due and the day before.
fn above(under: &Under<'_>, place: usize, goal: &Goal) -> Option<Diagnostic> {
    let due = goal.due.count();
    let (on, before) = (under.on_day(place, goal.key, due), under.on_day(place, goal.key, due.saturating_sub(1)));
    let (limit, day) = if before < on { (before, due.saturating_sub(1)) } else { (on, due) };
    let aim = goal.to.unwrap_or(goal.from);
    if limit.is_open() && Cell::up_to(Bound::Angle(aim)) <= limit {
        return None;
    }
    let says = if limit.is_open() {
        format!("the goal `{}` asks for {aim} degrees of {} by day {due}", goal.id, of_key(goal.key))
    } else {
        format!("the goal `{}` asks for {} by day {due}", goal.id, of_key(goal.key))
    };
    Some(
        Diagnostic::error(
            "goal-above-limit",
            format!("{says}, which is {} on day {day}{}", of_cell(limit, goal.key), under.option),
        )
        .at(goal.span)
        .help("lower the goal, or make it due after the limit has risen"),
    )
}

/// Checks the measured criteria of every protocol.
pub(super) fn criteria(alternatives: &[Under<'_>], catalogue: &Catalogue, sink: &mut Sink) {
    let Some(defaults) = alternatives.first() else { return };
    for (place, protocol) in defaults.protocols() {
        for stage in &protocol.stages {
            for criterion in &stage.criteria {
                let fault =
                    alternatives.iter().find_map(|under| out_of_reach(under, place, stage, criterion, catalogue));
                sink.extend(fault);
            }
        }
    }
}

/// Why no allowed measurement meets a criterion: it is looked at on the day before its gate at the latest.
fn out_of_reach(
    under: &Under<'_>,
    place: usize,
    stage: &Stage,
    criterion: &StageCriterion,
    catalogue: &Catalogue,
) -> Option<Diagnostic> {
    let (key, at_least) = criterion.measure?;
    let fault = |message: String| {
        Diagnostic::error("criterion-out-of-reach", format!("{message}{}", under.option)).at(criterion.span)
    };
    let before = |why: &str| format!("the criterion `{}` of the stage `{}` {why}", criterion.id, stage.id);
    let Some(day) = stage.gate.count().checked_sub(1) else {
        return Some(
            fault(before("is measured before surgery: its gate is day 0"))
                .help("a stage that starts on the day of surgery has no measured criterion"),
        );
    };
    let limit = under.on_day(place, key, day);
    if !limit.is_open() {
        return Some(
            fault(before(&format!("measures {}, which is not allowed on day {day}", of_key(key))))
                .help("measure what is allowed before the gate, or open it sooner"),
        );
    }
    if Cell::up_to(Bound::Angle(at_least)) > limit {
        return Some(
            fault(before(&format!(
                "asks for {at_least} degrees of {}, which is {} on day {day}",
                of_key(key),
                of_cell(limit, key)
            )))
            .help("ask for no more than the limit of the day before the gate"),
        );
    }
    let mut tests = catalogue.of(Kind::Test).filter(|test| measures(test, key)).peekable();
    if tests.peek().is_none() {
        return Some(
            fault(before(&format!("measures {}, for which the catalogue has no visit test", of_key(key))))
                .help("add a [[test]] for it, or measure something a test shows"),
        );
    }
    // "Stopped at the limit" meets the criterion, so the test itself needs only to be open; its pose must be allowed.
    let allowed = tests.any(|test| test.demands.iter().all(|demand| under.on_day(place, demand.key, day).is_open()));
    (!allowed).then(|| {
        fault(before(&format!("measures {}, but no test of it is allowed on day {day}", of_key(key))))
            .help("open what the test needs besides, or measure it in another pose")
    })
}

/// Whether the first demand of a test, the one it reads off, is this key.
fn measures(test: &Entry, key: Key) -> bool {
    test.target().is_some_and(|target| {
        let read = target.key;
        (read.joint, read.movement, read.mode) == (key.joint, key.movement, key.mode)
            && (read.position == key.position || read.position == Position::Any || key.position == Position::Any)
    })
}
