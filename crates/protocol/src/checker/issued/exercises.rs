//! The exercises of every run of days: listed, in their stage, inside the limits, and done as they may be.

use body::{Joint, Key, Mode, Movement, Position};
use exercise::{Amount, Entry, Kind, Posture, SlingDuring, Supervision};
use plan::words::{of_cell, of_key};
use plan::{Cell, ExerciseLine, LimitRow, SlingLine, SpanOfDays, Wear};
use quantity::Degrees;

use super::fitting::{NO_MARGIN, asks_too_much, load_is_wrong, target_is_wrong};
use super::found::{Found, Wrong};
use super::{Judge, ceiling, governing, other_arm};
use crate::file::ExerciseUse;

/// Judges every exercise on every day.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    let other = other_arm::OtherPlan::new(judge);
    for span in &judge.issued.prescription.spans {
        let (from, until) = (span.from_day.count(), span.until_day.count());
        for line in &span.exercises {
            let Some(entry) = entry_of(judge, line) else {
                found.on_days(
                    from,
                    until,
                    about(line, "exercise-unknown", "the catalogue has no such exercise".into()),
                );
                continue;
            };
            let mut wrong = |kind, message| found.on_days(from, until, about(line, kind, message));
            inside(judge, line, entry, &span.limits, &mut wrong);
            as_written(judge, line, entry, &mut wrong);
            if let Some(message) = without_the_sling(entry, &span.sling) {
                wrong("exercise-with-the-sling-on", message);
            }
            for day in from..until {
                let mut wrong = |kind, message| found.on(day, about(line, kind, message));
                if let Some(message) = out_of_its_stage(judge, line, entry, span, day) {
                    wrong("exercise-out-of-its-stage", message);
                }
                if let Some(message) = not_lying(judge, entry, day) {
                    wrong("exercise-not-lying", message);
                }
                if let Some(message) = other.stands_in_the_way(judge, entry, line, day) {
                    wrong("exercise-needs-the-other-arm", message);
                }
            }
        }
    }
    ceiling::judge(judge, found);
}

/// The exercise of a line in the catalogue.
pub(super) fn entry_of<'c>(judge: &Judge<'c>, line: &ExerciseLine) -> Option<&'c Entry> {
    judge.issued.catalogue.get(&line.id).filter(|entry| entry.kind == Kind::Exercise)
}

/// A fault of an exercise.
pub(super) fn about(line: &ExerciseLine, kind: &'static str, message: String) -> Wrong {
    Wrong::overload(kind, format!("exercise {}: {message}", line.id)).about(line.key).of_rule(line.id.clone())
}

/// Everything it asks lies inside the limits, and what is printed is what it may ask.
pub(super) fn inside(
    judge: &Judge<'_>,
    line: &ExerciseLine,
    entry: &Entry,
    rows: &[LimitRow],
    wrong: &mut impl FnMut(&'static str, String),
) {
    let home = if entry.supervision == Supervision::Home { judge.issued.home_margin } else { NO_MARGIN };
    let limit = |key: Key| governing(rows, key);
    for (place, demand) in entry.demands.iter().enumerate() {
        // Only the first demand is what the exercise is for; the others are what its pose needs.
        let margin = if place == 0 { home } else { NO_MARGIN };
        if let Some(message) = asks_too_much(demand, limit(demand.key), margin) {
            wrong("exercise-beyond-its-limit", message);
        }
    }
    if let Some(first) = entry.demands.first() {
        if let Some(message) = target_is_wrong(line, first, limit(first.key), home) {
            wrong("target-beyond-its-limit", message);
        }
        if line.key != first.key {
            wrong(
                "exercise-not-as-written",
                format!("it is printed as {} and is {}", of_key(line.key), of_key(first.key)),
            );
        }
    }
    if let Some(message) = load_is_wrong(line, &entry.demands, |demand| limit(demand.key)) {
        wrong("load-beyond-its-limit", message);
    }
    // An effort at the side holds the forearm straight ahead.
    let outward = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::Passive);
    let most = limit(outward);
    let ahead = |demand: &exercise::Demand| {
        demand.key.joint == Joint::Shoulder
            && demand.key.position == Position::AtSide
            && matches!(demand.amount, Amount::Effort(_))
    };
    if most.is_open() && most < Cell::up_to_zero_degrees() && entry.demands.iter().any(ahead) {
        let message =
            format!("it holds the forearm straight ahead while {} is {}", of_key(outward), of_cell(most, outward));
        wrong("exercise-beyond-its-limit", message);
    }
}

/// Dose and supervision as the catalogue or the protocol writes them.
fn as_written(judge: &Judge<'_>, line: &ExerciseLine, entry: &Entry, wrong: &mut impl FnMut(&'static str, String)) {
    if line.supervised != (entry.supervision == Supervision::Therapist) {
        wrong("exercise-not-as-written", "it is not printed with the supervision it needs".into());
    }
    let Some(dose) = &entry.dose else {
        return wrong("exercise-not-as-written", "the catalogue gives no dose for it".into());
    };
    let own = (dose.repetitions, None);
    let of_protocol = uses(judge, &line.id).filter_map(|used| used.repetitions.map(|(low, high)| (low, Some(high))));
    let counts = std::iter::once(own).chain(of_protocol).any(|count| count == (line.repetitions, line.repetitions_to));
    let rest = (line.sets, line.hold_s, line.times_per_day, line.days_per_week)
        == (dose.sets, dose.hold_s, dose.times_per_day, dose.days_per_week);
    if !counts || !rest {
        wrong("exercise-not-as-written", "its dose is not the one of the files".into());
    }
}

/// How the protocol that is followed lists an exercise.
fn uses<'c>(judge: &Judge<'c>, id: &str) -> impl Iterator<Item = &'c ExerciseUse> {
    judge.followed().exercises.iter().filter(move |used| used.id == id)
}

/// Whether the protocol lists an exercise for the stage of a day.
pub(super) fn listed_on<'c>(judge: &Judge<'c>, id: &str, day: u16) -> Option<&'c ExerciseUse> {
    let lives = judge.lived.arm(day);
    uses(judge, id).find(|used| {
        let until = used.until_stage.as_deref().and_then(|stage| judge.gate(stage));
        judge.gate(&used.stage).is_some_and(|gate| gate <= lives) && until.is_none_or(|until| lives < until)
    })
}

/// An exercise outside the stages it is listed for, that stands in for none either.
fn out_of_its_stage(
    judge: &Judge<'_>,
    line: &ExerciseLine,
    entry: &Entry,
    span: &SpanOfDays,
    day: u16,
) -> Option<String> {
    if listed_on(judge, &line.id, day).is_some() {
        return None;
    }
    let stands_in = span.replaced.iter().filter(|pair| pair.taken == line.id).any(|pair| {
        let dropped = judge.issued.catalogue.get(&pair.dropped);
        listed_on(judge, &pair.dropped, day).is_some()
            && dropped.is_some_and(|dropped| {
                let harder = entry.target().zip(dropped.target()).is_none_or(|(own, of)| own.key.mode > of.key.mode);
                entry.purpose == dropped.purpose && entry.supervision == Supervision::Home && !harder
            })
    });
    let first = uses(judge, &line.id).filter_map(|used| judge.gate(&used.stage)).min();
    (!stands_in).then(|| match first {
        Some(gate) if judge.lived.arm(day) < gate => {
            let opens = judge.lived.reaches(gate);
            format!("it is listed from day {opens} on: {} days too early", opens.saturating_sub(day))
        }
        Some(_) => format!("`{}` no longer lists it on these days", judge.followed().id),
        None => format!("`{}` does not list it, and it stands in for nothing", judge.followed().id),
    })
}

/// A mode that is allowed only lying on the back, done in another posture.
fn not_lying(judge: &Judge<'_>, entry: &Entry, day: u16) -> Option<String> {
    if entry.posture == Posture::LyingOnTheBack {
        return None;
    }
    let lives = judge.lived.on(Joint::Shoulder, day);
    let gates = judge.in_force.protocols.iter().flat_map(|(_, protocol)| &protocol.postures);
    let mut gates = gates.filter(|gate| lives < gate.until.count());
    let demands = |gate: &&crate::file::PostureGate| {
        entry.demands.iter().any(|demand| demand.key.joint == Joint::Shoulder && gate.modes.contains(&demand.key.mode))
    };
    gates.find(demands).map(|gate| format!("it is done {}, against \"{}\"", entry.posture, gate.title))
}

/// An exercise without the sling while the sling comes off for no exercise.
fn without_the_sling(entry: &Entry, sling: &SlingLine) -> Option<String> {
    let stays_on = sling.wear == Wear::Always && !sling.except.iter().any(|what| what == "exercises");
    (stays_on && entry.sling == SlingDuring::Off).then(|| "the sling comes off for no exercise on these days".into())
}

/// The lines of a frozen day under its own limits; what else holds for them was judged on the day of the plan.
pub(super) fn inside_day(
    judge: &Judge<'_>,
    lines: &[ExerciseLine],
    rows: &[LimitRow],
    (of_plan, day): (u16, u16),
    found: &mut Found,
) {
    let other = other_arm::OtherPlan::new(judge);
    for line in lines {
        let Some(entry) = entry_of(judge, line) else {
            found.on(day, about(line, "exercise-unknown", "the catalogue has no such exercise".into()));
            continue;
        };
        let mut wrong = |kind, message| found.on(day, about(line, kind, message));
        inside(judge, line, entry, rows, &mut wrong);
        if let Some(message) = not_lying(judge, entry, of_plan) {
            wrong("exercise-not-lying", message);
        }
        if let Some(message) = other.stands_in_the_way(judge, entry, line, day) {
            wrong("exercise-needs-the-other-arm", message);
        }
    }
}

/// The greatest angle an exercise takes the operated arm to.
pub(super) fn taken_to(entry: &Entry, line: &ExerciseLine, most: Degrees) -> Degrees {
    let own = entry.target().and_then(|demand| demand.amount.greatest_angle());
    line.target.or(own).map_or(most, |angle| angle.min(most))
}
