//! Which days the box of limits shows, and whether what it says of them is in force.

use jiff::civil::Date;
use plan::{LimitRow, Prescription, SpanOfDays, StageLine, Today, TodayBasis};
use quantity::PostoperativeDay;

use crate::limits_table::{Value, value_in};

/// What is said of the days of a column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Standing {
    /// In force from the day of issue on, because the next gate waits.
    Now,
    /// In a stage that is opened.
    Open,
    /// Over on the day of issue.
    Over,
    /// After a gate that has to be opened first: for planning only.
    Planned,
}

/// Which days are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Days {
    /// The whole plan.
    All,
    /// What is not over on the day of issue.
    Ahead,
}

/// The limits of the day of issue, where an unopened gate holds the plan.
pub(crate) fn frozen(of: &Prescription) -> Option<&Today> {
    of.today.as_ref().filter(|today| today.basis == TodayBasis::Frozen)
}

/// The day of issue; the day of surgery where no day was asked for.
pub(crate) fn issued(of: &Prescription) -> Date {
    of.today.as_ref().map_or(of.operated_on, |today| today.date)
}

/// Whether the days of each run have to be opened first.
///
/// # Method
/// Planned is what nothing signed opens on its first day: an opening counts only up to the next go-back. What a
/// go-back that has come has undone is not planned any more, whether it was lived or not.
pub(crate) fn are_planned(of: &Prescription) -> Vec<bool> {
    let undone = of.go_backs.iter().filter(|back| back.date <= issued(of)).map(|back| back.day).max();
    let is_undone = |span: &SpanOfDays| undone.is_some_and(|back| span.from_day < back);
    of.spans.iter().map(|span| !of.is_open(span) && !is_undone(span)).collect()
}

/// The stage that has to be opened next, and its gate: the one that waits, else the first of the days ahead that nothing
/// signed opens.
pub(crate) fn next_gate(of: &Prescription) -> Option<(&StageLine, PostoperativeDay, Date)> {
    if let Some(waits) = frozen(of).and_then(|today| today.not_before.as_ref()) {
        let stage = of.stages.iter().find(|stage| stage.id == waits.stage)?;
        return Some((stage, waits.day, waits.date));
    }
    let mut ahead = of.spans.iter().filter(|span| span.from > issued(of));
    let closed = ahead.find(|span| !of.is_open(span))?;
    let stage = of.stages.iter().find(|stage| !stage.is_open_on(closed.from_day))?;
    Some((stage, closed.from_day, closed.from))
}

/// One place in a line of values: the day of issue, or a run of days of the plan.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shown<'p> {
    /// The limits.
    pub limits: &'p [LimitRow],
    /// The first day.
    pub day: PostoperativeDay,
    /// Its date.
    pub date: Date,
    /// The stage.
    pub stage: &'p str,
    /// What is said of it.
    pub standing: Standing,
}

impl Shown<'_> {
    /// What it allows of a key.
    pub fn value(&self, key: body::Key) -> Value {
        value_in(self.limits, key)
    }
}

/// What is shown, in order; the limits in force now come first while a gate waits.
pub(crate) fn shown(of: &Prescription, days: Days) -> Vec<Shown<'_>> {
    let issued = issued(of);
    let now = frozen(of).map(|today| Shown {
        limits: &today.limits,
        day: today.day,
        date: today.date,
        stage: &today.stage,
        standing: Standing::Now,
    });
    let dated = of.spans.iter().zip(are_planned(of)).map(|(span, is_planned)| Shown {
        limits: &span.limits,
        day: span.from_day,
        date: span.from,
        stage: &span.stage,
        standing: match is_planned {
            true => Standing::Planned,
            // While a gate waits, no dated day before it is in force any more.
            false if span.until <= issued || frozen(of).is_some() => Standing::Over,
            false => Standing::Open,
        },
    });
    now.into_iter().chain(dated).filter(|shown| days == Days::All || shown.standing != Standing::Over).collect()
}
