//! Goals: under the limits of the day they are due and the day before, and no further than the files say.

use body::Key;
use evidence::ids;
use plan::words::{of_cell, of_key};
use plan::{Allowed, Bound, GoalLine};
use quantity::Degrees;

use super::Judge;
use super::found::{Found, Wrong};

/// Judges every goal on every day it is shown.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    for span in &judge.issued.prescription.spans {
        let (from, until) = (span.from_day.count(), span.until_day.count());
        for goal in &span.goals {
            let mut wrong = |kind, message: String| found.on_days(from, until, about(goal, kind, message));
            if until > goal.due.count() {
                wrong("goal-after-it-was-due", format!("it is shown after day {}, when it was due", goal.due.count()));
            }
            for message in above_its_limit(judge, goal) {
                wrong("goal-above-its-limit", message);
            }
            if let Some(message) = not_as_written(judge, goal) {
                wrong("goal-not-as-written", message);
            }
        }
    }
}

fn about(goal: &GoalLine, kind: &'static str, message: String) -> Wrong {
    Wrong::overload(kind, format!("goal {}: {message}", goal.id)).about(goal.key).of_rule(goal.id.clone())
}

/// The goal against the day it is due and the day before.
fn above_its_limit(judge: &Judge<'_>, goal: &GoalLine) -> Vec<String> {
    let due = goal.due.count().min(judge.horizon.saturating_sub(1));
    let least = ids::LEAST_USEFUL_ARC.degrees();
    let on = |day: u16| {
        let limit = judge.value(goal.key, day);
        let is = || format!("{} is {} on day {day}", of_key(goal.key), of_cell(limit, goal.key));
        match limit.allowed(goal.key) {
            Allowed::Free => None,
            Allowed::UpTo(Bound::Angle(bound)) if bound >= least => match goal.to {
                Some(to) if to.max(goal.from) <= bound => None,
                Some(to) => {
                    let beyond = Degrees::from_steps(to.max(goal.from).steps() - bound.steps());
                    Some(format!("{} degrees where {}: {beyond} degrees too far", to.max(goal.from), is()))
                }
                None => Some(format!("it has no end where {}", is())),
            },
            _ => Some(format!("it leaves under {least} degrees where {}", is())),
        }
    };
    let mut days = vec![due.saturating_sub(1), due];
    days.dedup();
    days.into_iter().filter_map(on).collect()
}

/// A goal beyond what its file writes, or due before that.
fn not_as_written(judge: &Judge<'_>, goal: &GoalLine) -> Option<String> {
    let own = judge.followed().goals.iter().find(|own| own.id == goal.id);
    let own = own.map(|own| (own.key, own.from, own.to, judge.lived.reaches(own.due.count())));
    let Some((key, from, to, due)) = own.or_else(|| of_criterion(judge, &goal.id)) else {
        return Some("no line of the files sets it".into());
    };
    if key != goal.key {
        return Some(format!("it is a goal of {} and is shown for {}", of_key(key), of_key(goal.key)));
    }
    if goal.due.count() < due {
        return Some(format!("it is due {} days before day {due}", due - goal.due.count()));
    }
    let beyond = to.is_some_and(|most| goal.to.is_none_or(|shown| shown > most)) || goal.from > from;
    beyond.then(|| "it goes further than its file says".into())
}

/// A goal that is the degrees of the next gate's criterion.
fn of_criterion(judge: &Judge<'_>, id: &str) -> Option<(Key, Degrees, Option<Degrees>, u16)> {
    let (stage, criterion) = id.split_once('/')?;
    let of_protocols = judge.in_force.protocols.iter().flat_map(|(_, protocol)| &protocol.stages);
    let written = of_protocols.filter(|written| written.id == stage).flat_map(|written| &written.criteria);
    let measures = written.filter(|written| written.id == criterion).filter_map(|written| written.measure);
    let (key, angle) = measures.max_by_key(|(_, angle)| *angle)?;
    let gate = judge.lived.reaches(judge.gate(stage)?);
    Some((key, angle, Some(angle), gate))
}
