//! The sling in the work note: every run of days of it, from the day of issue on.

use jiff::civil::Date;
use plan::{Prescription, Wear};

use crate::limits_columns::frozen;
use crate::limits_words::short;
use crate::texts::Texts;

/// A run of days with one way of wearing the sling, whatever its position.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Worn {
    /// How much it is worn.
    pub wear: Wear,
    /// First day.
    pub from: Date,
    /// First day after.
    pub until: Date,
}

/// The runs that are not over on the day of issue.
pub(crate) fn worn(of: &Prescription, issued_on: Date) -> Vec<Worn> {
    let mut runs: Vec<Worn> = Vec::new();
    for span in of.spans.iter().filter(|span| span.until > issued_on) {
        match runs.last_mut() {
            Some(last) if last.wear == span.sling.wear => last.until = span.until,
            _ => runs.push(Worn { wear: span.sling.wear, from: span.from.max(issued_on), until: span.until }),
        }
    }
    runs
}

/// Whether no sling is worn any more on a day and after it.
pub(crate) fn is_off_from(of: &Prescription, issued_on: Date, day: Date) -> bool {
    let wears = |wear: Wear| wear != Wear::None;
    // While a gate waits, a sling that is worn comes off on no dated day.
    let is_kept = frozen(of).is_some_and(|today| wears(today.sling.wear));
    !is_kept && worn(of, issued_on).iter().all(|run| !wears(run.wear) || run.until <= day)
}

/// A sentence for each run; while a gate waits, the sling of the day of issue stays.
pub(crate) fn sling(say: &Texts<'_>, of: &Prescription, issued_on: Date) -> String {
    if let Some(today) = frozen(of) {
        return say.get(match today.sling.wear {
            Wear::Always => "work-sling-always-open",
            Wear::Weaning => "work-sling-weaning-open",
            Wear::None => "work-sling-none",
        });
    }
    let mut before = None;
    let sentences = worn(of, issued_on).into_iter().map(|run| {
        let told = [("from", short(run.from).into()), ("until", short(run.until).into())];
        let id = match (before.replace(run.wear), run.wear) {
            (None, Wear::Always) => "work-sling-always",
            (Some(_), Wear::Always) => "work-sling-again",
            (None, Wear::Weaning) => "work-sling-weaning-now",
            (Some(Wear::None), Wear::Weaning) => "work-sling-weaning-again",
            (Some(_), Wear::Weaning) => "work-sling-weaning",
            (None, Wear::None) => "work-sling-none",
            (Some(_), Wear::None) => "work-sling-off",
        };
        say.with(id, &told)
    });
    sentences.collect::<Vec<_>>().join(" ")
}
