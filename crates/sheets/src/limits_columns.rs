//! Which days the box of limits shows, and whether what it says of them is in force.

use jiff::civil::Date;
use plan::{LimitRow, Prescription, Today, TodayBasis};
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
/// Planned is what lies at or after the gate of the first stage that is not open; what belongs to a
/// stage that is not open and begins after the day of issue; and what comes after a go-back that still
/// lies ahead, in a stage later than the one it goes back to: a go-back closes those. What a go-back that
/// has come has undone is not planned any more, whether it was lived or not.
pub(crate) fn are_planned(of: &Prescription) -> Vec<bool> {
    let issued = issued(of);
    let place = |id: &str| of.stages.iter().position(|stage| stage.id == id);
    let gate = of.stages.iter().find(|stage| !stage.opened).map(|stage| stage.from);
    let mut back_to: Option<usize> = None;
    let mut before: Option<usize> = None;
    let mut planned = Vec::with_capacity(of.spans.len());
    for span in &of.spans {
        let own = place(&span.stage);
        let goes_back = own < before;
        before = own;
        if goes_back && span.from > issued {
            back_to = back_to.map_or(own, |known| own.map(|own| own.min(known)));
        } else if goes_back {
            planned.fill(false);
        }
        let is_open = own.is_some_and(|own| of.stages[own].opened);
        let is_past_the_gate = gate.is_some_and(|gate| span.from >= gate);
        let is_closed_again = back_to.is_some() && own > back_to;
        planned.push(is_past_the_gate || is_closed_again || (!is_open && span.from > issued));
    }
    planned
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
