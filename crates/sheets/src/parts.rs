//! The opened stages of a prescription, as a patient may see them.

use jiff::Span;
use jiff::civil::Date;
use plan::{Allowed, ExerciseLine, LimitRow, Prescription, SlingLine, StageLine, TodayBasis};
use quantity::PostoperativeDay;

use body::Key;

/// An opened stage that is not over on the day of issue.
#[derive(Debug, Clone)]
pub struct Part<'p> {
    /// The stage.
    pub stage: &'p StageLine,
    /// Its place among the stages, from 1.
    pub number: usize,
    /// Runs of days within which nothing changes, in order; at least one.
    pub periods: Vec<Period<'p>>,
}

/// A run of days within which nothing changes.
#[derive(Debug, Clone)]
pub struct Period<'p> {
    /// Its first day.
    pub from_day: PostoperativeDay,
    /// Its first day as a date.
    pub from: Date,
    /// The first day after it; `None` where it lasts until the surgeon opens more.
    pub until: Option<(PostoperativeDay, Date)>,
    /// The sling.
    pub sling: &'p SlingLine,
    /// What is allowed.
    pub limits: &'p [LimitRow],
    /// What to do.
    pub exercises: &'p [ExerciseLine],
}

impl Part<'_> {
    /// The first day of the part.
    pub fn from(&self) -> Date {
        self.periods[0].from
    }

    /// The first day of the part as a postoperative day.
    pub fn from_day(&self) -> PostoperativeDay {
        self.periods[0].from_day
    }

    /// The first day after the part; `None` where it lasts until the surgeon opens more.
    pub fn until(&self) -> Option<(PostoperativeDay, Date)> {
        self.periods.last().and_then(|period| period.until)
    }
}

impl Period<'_> {
    /// What is allowed of a key in any position: its own row, else the lowest of its named positions.
    pub fn allowed(&self, key: Key) -> Allowed {
        let own = self.limits.iter().find(|row| row.key == key).map(|row| row.allowed);
        own.or_else(|| self.of(key).map(|row| row.allowed).min()).unwrap_or(Allowed::No)
    }

    /// Whether a key is allowed only lying on the back.
    pub fn only_lying(&self, key: Key) -> bool {
        self.of(key).any(|row| row.only_lying)
    }

    fn of(&self, key: Key) -> impl Iterator<Item = &LimitRow> {
        self.limits.iter().filter(move |row| row.key.in_position(key.position) == key)
    }
}

/// What one handout prints of the opened stages, and what it leaves to later paper.
#[derive(Debug, Clone, Copy)]
pub struct OnPaper<'a, 'p> {
    /// The stage that is on, and the next one where it begins soon.
    pub printed: &'a [Part<'p>],
    /// The stages after those.
    pub later: &'a [Part<'p>],
}

/// How the rules go on where a stage is left to later paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Onward {
    /// Nothing that is allowed becomes less: who has no new paper yet may go on with the old one.
    NoStricter,
    /// Something becomes less: the old paper must not be followed any more.
    Stricter,
}

/// Takes what is on now, and the next stage only where it begins soon: nobody carries paper for months ahead.
///
/// # Source
/// `next-step-on-paper`: own choice.
pub fn on_paper<'a, 'p>(parts: &'a [Part<'p>], issued_on: Date) -> OnPaper<'a, 'p> {
    let soon = evidence::ids::NEXT_STEP_ON_PAPER.days().count();
    let is_soon = |part: &Part<'_>| {
        let last = issued_on.saturating_add(Span::new().days(i64::from(soon)));
        part.from() <= last
    };
    let count = match parts {
        [_, next, ..] if is_soon(next) => 2,
        _ => parts.len().min(1),
    };
    let (printed, later) = parts.split_at(count);
    OnPaper { printed, later }
}

impl OnPaper<'_, '_> {
    /// Whether the first stage that is left to later paper allows less of anything than the last one printed.
    pub fn onward(&self) -> Onward {
        let (Some(last), Some(next)) = (self.printed.last(), self.later.first()) else { return Onward::NoStricter };
        let (Some(before), Some(after)) = (last.periods.last(), next.periods.first()) else {
            return Onward::NoStricter;
        };
        let is_less = before.limits.iter().any(|row| after.allowed(row.key) < row.allowed);
        let more_sling = after.sling.wear > before.sling.wear;
        if is_less || more_sling { Onward::Stricter } else { Onward::NoStricter }
    }
}

/// The opened stages that are not over on the day of issue.
///
/// # Method
/// Opened, not dated: the parts end at the gate of the first stage that is not open. Where that gate
/// has passed, there is one part, the limits of the day of issue, and it has no end. A stage that was
/// opened before its gate begins at the gate.
pub fn parts(of: &Prescription, issued_on: Date) -> Vec<Part<'_>> {
    let first_closed = of.stages.iter().position(|stage| !stage.opened);
    let gate = first_closed.map(|place| (of.stages[place].from_day, of.stages[place].from));
    let place_of = |id: &str| of.stages.iter().position(|stage| stage.id == id).unwrap_or(0);
    if let Some(today) = of.today.as_ref().filter(|today| today.basis == TodayBasis::Frozen) {
        let place = place_of(&today.stage);
        let period = Period {
            from_day: today.day,
            from: today.date,
            until: None,
            sling: &today.sling,
            limits: &today.limits,
            exercises: &today.exercises,
        };
        return vec![Part { stage: &of.stages[place], number: place + 1, periods: vec![period] }];
    }
    let mut parts: Vec<Part<'_>> = Vec::new();
    let last_span = of.spans.len().saturating_sub(1);
    for (order, span) in of.spans.iter().enumerate() {
        let is_closed = gate.is_some_and(|(gate, _)| span.from_day >= gate);
        let is_over = span.until <= issued_on && order < last_span;
        if is_closed || is_over {
            continue;
        }
        let until = match gate {
            Some((gate, date)) if span.until_day >= gate => Some((gate, date)),
            None if order == last_span => None,
            _ => Some((span.until_day, span.until)),
        };
        // What is printed is valid from the day of issue on, and not for days that are over.
        let issued = PostoperativeDay::of(issued_on, of.operated_on).filter(|day| *day > span.from_day);
        let (from_day, from) = issued.map_or((span.from_day, span.from), |day| (day, issued_on));
        let period =
            Period { from_day, from, until, sling: &span.sling, limits: &span.limits, exercises: &span.exercises };
        let place = place_of(&span.stage);
        match parts.last_mut() {
            Some(part) if part.stage.id == span.stage => part.periods.push(period),
            _ => parts.push(Part { stage: &of.stages[place], number: place + 1, periods: vec![period] }),
        }
    }
    parts
}
