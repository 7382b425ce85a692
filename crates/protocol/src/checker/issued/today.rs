//! The day that was asked about: never more than the dated plan, and nothing new while a gate waits.

use plan::words::{of_cell, of_key};
use plan::{Cell, SpanOfDays, Today, TodayBasis};

use super::found::{Found, Wrong};
use super::rows::{above, lying, modes_rest};
use super::{Judge, exercises, governing};

/// Judges the day that was asked about.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    let Some(today) = &judge.issued.prescription.today else { return };
    let asked = today.day.count();
    let day = asked.min(judge.horizon.saturating_sub(1));
    let since = since(judge, asked).map(|since| since.min(day));
    stages(judge, today, asked, found);
    let values: Vec<Cell> = judge.sheet.keys.iter().map(|key| governing(&today.limits, *key)).collect();
    modes_rest(judge, &values, (day, day + 1), found);
    lying(judge, &today.limits, (day, day + 1), |day| since.unwrap_or(day), found);
    for (place, (key, issued)) in judge.sheet.keys.iter().zip(&values).enumerate() {
        if judge.cap(place, day) < *issued {
            found.on(day, above(judge, place, *key, *issued, day));
        }
    }
    let first = since.unwrap_or(day);
    for (span, dated) in spans_between(judge, first, day) {
        for (key, (issued, most)) in judge.sheet.keys.iter().zip(values.iter().zip(&judge.values[span])) {
            if most < issued {
                let message = format!(
                    "{} is {} on the day asked about, and {} in the plan from day {}",
                    of_key(*key),
                    of_cell(*issued, *key),
                    of_cell(*most, *key),
                    dated.from_day.count()
                );
                found.on(day, Wrong::overload("day-above-the-plan", message).about(*key));
            }
        }
        if today.sling.wear < dated.sling.wear {
            let message = format!("the sling is worn \"{}\" on the day asked about", today.sling.wear.name());
            found.on(day, Wrong::overload("sling-worn-less", message));
        }
    }
    let planned = judge.span_at(first).map(|(_, span)| span);
    listed(today, planned, day, found);
    exercises::inside_day(judge, &today.exercises, &today.limits, (first, day), found);
}

/// The runs of days of the plan between two days, both included.
fn spans_between<'c>(judge: &Judge<'c>, first: u16, last: u16) -> impl Iterator<Item = (usize, &'c SpanOfDays)> {
    let spans = judge.issued.prescription.spans.iter().enumerate();
    spans.filter(move |(_, span)| span.from_day.count() <= last && first < span.until_day.count())
}

/// Exercises and goals of the day the plan stands still on, and no others.
fn listed(today: &Today, planned: Option<&SpanOfDays>, day: u16, found: &mut Found) {
    for line in &today.exercises {
        let dated = planned.and_then(|span| span.exercises.iter().find(|dated| dated.id == line.id));
        let more = |dated: &plan::ExerciseLine| {
            (dated.target.is_some() && line.target.is_none_or(|target| Some(target) > dated.target))
                || line.load > dated.load
        };
        let message = match dated {
            None => "the plan does not hold it on the day it stands still on",
            Some(dated) if more(dated) => "it asks for more than the plan does",
            Some(_) => continue,
        };
        found.on(day, exercises::about(line, "day-above-the-plan", message.into()));
    }
    for goal in &today.goals {
        if planned.is_none_or(|span| !span.goals.contains(goal)) {
            let message = format!("goal {}: the plan does not hold it on the day it stands still on", goal.id);
            found.on(day, Wrong::overload("day-above-the-plan", message).about(goal.key));
        }
    }
}

/// The stage of the day, and what is said to come next.
fn stages(judge: &Judge<'_>, today: &Today, day: u16, found: &mut Found) {
    let open = open_stages(judge, day);
    let mut wrong = |message: String| found.on(day, Wrong::overload("stage-not-opened", message));
    let last = judge.stages.get(open.saturating_sub(1)).map_or("", |(id, _)| *id);
    let place = |id: &str| judge.stages.iter().position(|(stage, _)| *stage == id);
    if place(&today.stage).is_none_or(|place| place >= open) {
        wrong(format!("the day is counted to the stage `{}`, and `{last}` is the last that is opened", today.stage));
    }
    let waiting = judge.stages.get(open).filter(|(_, gate)| judge.lived.arm(day) >= *gate);
    let waits = waiting.is_some();
    let next = match waiting {
        Some((id, gate)) => Some((*id, judge.lived.reached_by(*gate, day))),
        None => first_new(judge, open, day),
    };
    if (today.basis == TodayBasis::Frozen) != waits {
        wrong(match next {
            Some((id, opens)) if waits => {
                format!("the gate of `{id}` was due on day {opens} and is not opened, and the day does not wait for it")
            }
            _ => "the day waits for a gate, and none is due".into(),
        });
    }
    if let (Some((id, opens)), Some(said)) = (next, &today.not_before) {
        if said.stage != id || said.day.count() < opens {
            wrong(format!(
                "`{}` is said to come next on day {}, and it is `{id}` on day {opens}",
                said.stage,
                said.day.count()
            ));
        }
    } else if next.is_some() != today.not_before.is_some() {
        wrong("the stage that comes next is not the one that is said".into());
    }
}

/// How many stages are open on a day, in their order.
///
/// # Method
/// The first is. Each other one where the one before it is, its gate has been
/// reached, and the surgeon opened it after the last go-back to a stage before it.
fn open_stages(judge: &Judge<'_>, day: u16) -> usize {
    let is_open = |place: &usize| {
        let (id, gate) = judge.stages[*place];
        let earlier = |stage: &str| judge.stages[..*place].iter().any(|(id, _)| *id == stage);
        let backs = judge.issued.backs.iter().filter(|back| back.day <= day && earlier(&back.stage));
        let closed = backs.map(|back| back.day).max();
        let opened = judge.issued.openings.iter().filter(|opening| opening.stage == id && opening.day <= day);
        let reached = judge.lived.arm(day) >= gate;
        reached && (*place == 0 || opened.into_iter().any(|opening| closed.is_none_or(|closed| opening.day > closed)))
    };
    (0..judge.stages.len()).take_while(is_open).count()
}

/// The first day after a day on which the plan has reached a stage that is not open on that day, or that nothing
/// signed by then opens, and the stage.
fn first_new<'c>(judge: &Judge<'c>, open: usize, asked: u16) -> Option<(&'c str, u16)> {
    (asked.saturating_add(1)..=judge.lived.last()).find_map(|day| {
        let stages = judge.stages.iter().enumerate().skip(1);
        let mut reached = stages.filter(|(_, (_, gate))| judge.lived.arm(day) >= *gate);
        let new = reached.find(|(place, (id, _))| *place >= open || !is_signed(judge, id, asked, day));
        new.map(|(_, (id, _))| (*id, day))
    })
}

/// Whether an opening signed by one day still counts on another: no go-back to a stage before it lies between.
pub(super) fn is_signed(judge: &Judge<'_>, id: &str, signed_by: u16, day: u16) -> bool {
    let before = judge.stages.iter().take_while(|(stage, _)| *stage != id);
    let earlier: Vec<&str> = before.map(|(stage, _)| *stage).collect();
    let closes = |back: &&super::WentBack| earlier.contains(&back.stage.as_str()) && back.day <= day;
    let openings = judge.issued.openings.iter().filter(|opening| opening.stage == id && opening.day <= signed_by);
    openings
        .map(|opening| opening.day)
        .any(|signed| signed <= day && judge.issued.backs.iter().filter(closes).all(|back| back.day < signed))
}

/// The last day before the unopened gate, where a gate holds the plan on this day.
pub(super) fn since(judge: &Judge<'_>, day: u16) -> Option<u16> {
    let (_, gate) = *judge.stages.get(open_stages(judge, day))?;
    (judge.lived.arm(day) >= gate).then(|| judge.lived.reached_by(gate, day).saturating_sub(1))
}
