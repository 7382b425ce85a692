//! The sling over time, in the words of the trade.

use plan::{Prescription, SlingLine, SpanOfDays, Wear};

use crate::limits_columns::{are_planned, frozen, issued, next_gate};
use crate::limits_words::on;

/// A run of days with one way of wearing the sling.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Run<'p> {
    /// Its first run of days.
    pub first: &'p SpanOfDays,
    /// Its last one.
    pub last: &'p SpanOfDays,
    /// Whether a stage has to be opened before it begins.
    pub is_planned: bool,
}

/// The runs, in order.
pub(crate) fn runs(of: &Prescription) -> Vec<Run<'_>> {
    let mut runs: Vec<Run<'_>> = Vec::new();
    for (span, is_planned) in of.spans.iter().zip(are_planned(of)) {
        let known = runs.last_mut().filter(|run| {
            run.last.sling.wear == span.sling.wear
                && (span.sling.wear == Wear::None || run.last.sling.position == span.sling.position)
        });
        match known {
            Some(run) => run.last = span,
            None => runs.push(Run { first: span, last: span, is_planned }),
        }
    }
    runs
}

/// "always, asleep too, neutral, from 2 Mar 2026 (day 0), off for washing; planned, not open: weaning …; none …".
///
/// While a gate waits, the sling of the day of issue stands first and lasts until the gate is opened.
pub(crate) fn line(of: &Prescription) -> String {
    let now = frozen(of);
    let mut parts: Vec<String> = Vec::new();
    if let Some(today) = now {
        let next = next_gate(of).map_or("the next stage", |(stage, ..)| &stage.title);
        parts.push(format!("in force now: {}, until {next} is opened", words(&today.sling)));
    }
    let mut is_planned_told = false;
    let mut before = None;
    for run in runs(of) {
        // What a go-back puts on again has to wait for no gate.
        let is_again = before.replace(run.first.sling.wear).is_some_and(|before| run.first.sling.wear > before);
        let is_over = run.last.until <= issued(of) || now.is_some();
        // What is in force now is told already.
        let is_told = now.is_some_and(|today| run.first.from <= today.date && today.sling.wear == run.first.sling.wear);
        if is_told || (is_over && !run.is_planned) {
            continue;
        }
        let (words, day) = (words(&run.first.sling), on(run.first.from, run.first.from_day));
        parts.push(match (run.is_planned, is_planned_told) {
            (_, _) if is_again => format!("again {words}, from {day}"),
            (false, _) => format!("{words}, from {day}"),
            (true, false) => format!("planned, not open: {words}, not before {day}"),
            (true, true) => format!("{words}, not before {day}"),
        });
        is_planned_told = run.is_planned && !is_again;
    }
    parts.join("; ")
}

fn words(sling: &SlingLine) -> String {
    match sling.wear {
        Wear::Always => {
            format!("always, asleep too, {}, off for {}", sling.position.name(), sling.except.join(", "))
        }
        Wear::Weaning => format!("weaning, {}", sling.position.name()),
        Wear::None => "none".into(),
    }
}
