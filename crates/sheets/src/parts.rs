//! The opened stages of a prescription, as a patient may see them.

use jiff::Span;
use jiff::civil::Date;
use plan::{Allowed, ExerciseLine, GoBack, LimitRow, Prescription, SlingLine, SpanOfDays, StageLine, TodayBasis, Wear};
use quantity::PostoperativeDay;

use body::{Joint, Key, Mode, Movement, Position};

/// An opened stage that is not over on the day of issue.
#[derive(Debug, Clone)]
pub struct Part<'p> {
    /// The stage.
    pub stage: &'p StageLine,
    /// Its place among the stages, from 1.
    pub number: usize,
    /// How it comes after what is before it.
    pub begins: Begins,
    /// Runs of days within which nothing changes, in order; at least one.
    pub periods: Vec<Period<'p>>,
}

/// How a part comes after the one before it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Begins {
    /// At its gate.
    InOrder,
    /// With a go-back that lies ahead: its rules are stricter, and nobody has to wait for them.
    GoesBack,
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

    /// Whether it allows less of anything than an earlier one, or has the sling worn more.
    fn is_stricter_than(&self, before: &Self) -> bool {
        // A position without a row of its own is bound by the row for every position.
        let row = |key: Key| self.limits.iter().find(|row| row.key == key).map(|row| row.allowed);
        let now = |key: Key| row(key).or_else(|| row(key.in_position(Position::Any))).unwrap_or(Allowed::No);
        before.limits.iter().any(|row| now(row.key) < row.allowed) || self.sling.wear > before.sling.wear
    }

    /// What is less than in an earlier one, as a patient can be told of it.
    pub fn lost_since(&self, before: &Self) -> Vec<Lost> {
        let shoulder = |movement, mode| Key::any(Joint::Shoulder, movement, mode);
        let hand = Key::any(Joint::WholeArm, Movement::HandLoad, Mode::Resisted);
        let is_shut = |key: Key| before.allowed(key) != Allowed::No && self.allowed(key) == Allowed::No;
        let mut lost = Vec::new();
        if is_shut(shoulder(Movement::ForwardElevation, Mode::Active)) {
            lost.push(Lost::OwnStrength);
        }
        if is_shut(shoulder(Movement::ForwardElevation, Mode::Resisted)) {
            lost.push(Lost::Bands);
        }
        if self.allowed(hand) < before.allowed(hand) {
            lost.push(Lost::Holding);
        }
        match (before.sling.wear, self.sling.wear) {
            (before, Wear::Always) if before != Wear::Always => lost.push(Lost::SlingOff),
            (Wear::None, Wear::Weaning) => lost.push(Lost::SlingGone),
            _ => {}
        }
        lost
    }

    /// Whether a key is allowed only lying on the back.
    pub fn only_lying(&self, key: Key) -> bool {
        self.of(key).any(|row| row.only_lying)
    }

    fn of(&self, key: Key) -> impl Iterator<Item = &LimitRow> {
        self.limits.iter().filter(move |row| row.key.in_position(key.position) == key)
    }
}

/// What a go-back takes away again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lost {
    /// Raising the arm by its own strength.
    OwnStrength,
    /// Bands and weights.
    Bands,
    /// Holding and carrying, or as much of it.
    Holding,
    /// Going without the sling at all: it is worn day and night again.
    SlingOff,
    /// Going without the sling the whole day.
    SlingGone,
}

/// What one handout prints of the opened stages, and what it leaves to later paper.
#[derive(Debug, Clone, Copy)]
pub struct OnPaper<'a, 'p> {
    /// The stage that is on, and the next one where it begins soon.
    pub printed: &'a [Part<'p>],
    /// The stages after those.
    pub later: &'a [Part<'p>],
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
    /// The first day after those printed that allows less of anything than the last one printed: whoever has no new
    /// paper by then must not go on with the old one.
    ///
    /// # Method
    /// Every later day is compared, and not the next step alone: that one may allow more, and the one after it less.
    pub fn stricter_from(&self) -> Option<Date> {
        let last = self.printed.last()?.periods.last()?;
        let mut later = self.later.iter().flat_map(|part| &part.periods);
        later.find(|period| period.is_stricter_than(last)).map(|period| period.from)
    }
}

/// The opened stages that are not over on the day of issue.
///
/// # Method
/// Opened, not dated: a part ends at the gate of the first stage that is not open, as far as is signed on the day of
/// issue and as no go-back closes it again. Where that gate has passed, the first part is the limits of the day of
/// issue, and it has no end. A stage that was opened before its gate begins at the gate. A go-back that lies ahead
/// begins a part of its own, whatever waits before it: stricter rules wait for nobody.
pub fn parts(of: &Prescription, issued_on: Date) -> Vec<Part<'_>> {
    let place_of = |id: &str| of.stages.iter().position(|stage| stage.id == id).unwrap_or(0);
    let mut parts: Vec<Part<'_>> = Vec::new();
    let mut begin = issued_on;
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
        parts.push(Part {
            stage: &of.stages[place],
            number: place + 1,
            begins: Begins::InOrder,
            periods: vec![period],
        });
        let Some(back) = of.next_go_back(issued_on) else { return parts };
        begin = back.date;
    }
    let last_span = of.spans.len().saturating_sub(1);
    for (order, span) in of.spans.iter().enumerate() {
        let is_over = span.until <= begin && order < last_span;
        if is_over || !of.is_open(span) {
            continue;
        }
        // What is printed is valid from the day of issue on, and not for days that are over.
        let issued = PostoperativeDay::of(issued_on, of.operated_on).filter(|day| *day > span.from_day);
        let (from_day, from) = issued.map_or((span.from_day, span.from), |day| (day, issued_on));
        let before = parts.last().and_then(|part| part.periods.last());
        let period = Period {
            from_day,
            from,
            until: (order < last_span).then_some((span.until_day, span.until)),
            sling: before.filter(|before| keeps_sling(of, span, before, issued_on)).map_or(&span.sling, |b| b.sling),
            limits: &span.limits,
            exercises: &span.exercises,
        };
        let place = place_of(&span.stage);
        let begins = match ahead(of, issued_on).any(|back| back.day == span.from_day) {
            true => Begins::GoesBack,
            false => Begins::InOrder,
        };
        match parts.last_mut() {
            Some(part) if part.stage.id == span.stage && begins == Begins::InOrder => part.periods.push(period),
            _ => parts.push(Part { stage: &of.stages[place], number: place + 1, begins, periods: vec![period] }),
        }
    }
    parts
}

/// Go-backs after the day of issue.
fn ahead(of: &Prescription, issued_on: Date) -> impl Iterator<Item = &GoBack> {
    of.go_backs.iter().filter(move |back| back.date > issued_on)
}

/// Whether the sling stays as it was, because a go-back puts it on again soon.
fn keeps_sling(of: &Prescription, span: &SpanOfDays, before: &Period<'_>, issued_on: Date) -> bool {
    span.from > issued_on && span.sling.wear < before.sling.wear && is_shortly_before_a_go_back(of, span.from)
}

/// Whether a go-back comes so soon after a day that no paper loosens the sling or gives driving on it.
///
/// # Source
/// `nothing-looser-before-a-go-back`: own choice.
pub(crate) fn is_shortly_before_a_go_back(of: &Prescription, day: Date) -> bool {
    let soon = evidence::ids::NOTHING_LOOSER_BEFORE_A_GO_BACK.days().count();
    let last = day.saturating_add(Span::new().days(i64::from(soon)));
    of.next_go_back(day).is_some_and(|back| back.date <= last)
}
