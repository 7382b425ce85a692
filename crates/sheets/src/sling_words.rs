//! The sling over time, in the words of the trade.

use plan::{Prescription, SpanOfDays, Wear};

use crate::limits_words::on;

/// Runs of days with one way of wearing the sling: the first run of days of each.
pub(crate) fn runs(of: &Prescription) -> Vec<&SpanOfDays> {
    let mut runs: Vec<&SpanOfDays> = Vec::new();
    for span in &of.spans {
        let is_same = runs.last().is_some_and(|last| {
            last.sling.wear == span.sling.wear
                && (span.sling.wear == Wear::None || last.sling.position == span.sling.position)
        });
        if !is_same {
            runs.push(span);
        }
    }
    runs
}

/// "always, asleep too, neutral, from 2 Mar 2026 (day 0), off for washing, dressing; weaning …; none …".
pub(crate) fn line(of: &Prescription) -> String {
    let parts: Vec<String> = runs(of)
        .into_iter()
        .map(|span| {
            let from = on(span.from, span.from_day);
            match span.sling.wear {
                Wear::Always => format!(
                    "always, asleep too, {}, from {from}, off for {}",
                    span.sling.position.name(),
                    span.sling.except.join(", ")
                ),
                Wear::Weaning => format!("weaning, {}, from {from}", span.sling.position.name()),
                Wear::None => format!("none from {from}"),
            }
        })
        .collect();
    parts.join("; ")
}
