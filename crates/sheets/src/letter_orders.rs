//! What the surgeon orders of the therapist beside the box.

use body::{Joint, Key, Mode, Movement};
use jiff::civil::Date;
use plan::{Allowed, Prescription, SpanOfDays};
use prescription::{Permission, Therapy};
use quantity::PostoperativeDay;

use crate::desk::Desk;
use crate::document::{Block, Column, Print};
use crate::limits_columns::{are_planned, frozen, next_gate};
use crate::limits_for_good::for_good;
use crate::limits_table::{plain, value_on};
use crate::limits_words::short;
use crate::texts::Texts;

const TO_FILL_IN: &str = "____________";

/// Yes or no with a date, for what is not an exercise.
pub(crate) fn permissions(desk: &Desk<'_>) -> Block {
    let (say, of, therapy) = (Texts::of_clinicians(desk), desk.prescription, &desk.settings.therapy);
    // The longest texts get the widest columns, so that the table takes few lines of the first page.
    let orders = [
        ("manual therapy", 2, permission(desk, &say, therapy.manual_therapy)),
        ("end-range stretch, shoulder", 3, stretch(&say, of)), // not medical: a width
        ("pool", 2, permission(desk, &say, therapy.pool)),
        ("traction", 2, permission(desk, &say, therapy.traction)),
        ("therapy", 3, frequency(&say, therapy)), // not medical: a width
    ];
    let columns = orders.iter().map(|(title, share, _)| Column { title: (*title).into(), share: *share }).collect();
    let row = orders.into_iter().map(|(.., text)| plain(text)).collect();
    Block::Table { alt: say.get("letter-orders-alt"), print: Print::Smaller, columns, rows: vec![row] }
}

/// What a permission of the settings comes to on the day of issue.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Order<'p> {
    /// The surgeon has said nothing: a line to fill in.
    Unsaid,
    /// Not at all.
    No,
    /// A hold of the whole arm stands: until this date.
    Held(Date),
    /// The gate of a stage waits.
    Waits(&'p str),
    /// The plan was moved, and a day of the settings is a day of the plan before it was.
    Moved,
    /// Not before a day, once a stage is opened where one has to be.
    NotBefore(PostoperativeDay, Option<&'p str>),
}

impl<'p> Order<'p> {
    /// # Method
    /// A setting is a day and knows of no gate, hold or go-back, so it is never told as running: what
    /// stops the plan on the day of issue, or holds the day itself, comes first; where anything has
    /// moved the plan, the surgeon is asked; else it is not before that day, and once the stage of that
    /// day is opened.
    pub fn of(desk: &Desk<'p>, permission: Option<Permission>) -> Self {
        let of = desk.prescription;
        let day = match permission {
            None => return Self::Unsaid,
            Some(Permission::No) => return Self::No,
            Some(Permission::From(day)) => day,
        };
        let issued = PostoperativeDay::of(desk.issued_on, of.operated_on).unwrap_or(PostoperativeDay::new(0));
        let holds = || desk.settings.holds.iter().filter(|hold| hold.joint.is_none());
        let held = holds()
            .filter(|hold| {
                [issued, day].iter().any(|day| (0..hold.days).contains(&day.count().wrapping_sub(hold.from_day)))
            })
            .filter_map(|hold| hold.from_day.checked_add(hold.days))
            .max();
        if let Some(until) = held {
            return Self::Held(PostoperativeDay::new(until).date(of.operated_on));
        }
        if frozen(of).is_some() {
            return Self::Waits(next_gate(of).map_or("the next stage", |(stage, ..)| &stage.title));
        }
        if holds().next().is_some() || !desk.settings.backs.is_empty() {
            return Self::Moved;
        }
        let stage = of
            .spans
            .iter()
            .zip(are_planned(of))
            .rfind(|(span, _)| span.from_day <= day)
            .filter(|(_, is_planned)| *is_planned)
            .and_then(|(span, _)| of.stages.iter().find(|stage| stage.id == span.stage));
        Self::NotBefore(day, stage.map(|stage| stage.title.as_str()))
    }
}

fn permission(desk: &Desk<'_>, say: &Texts<'_>, permission: Option<Permission>) -> String {
    let of = desk.prescription;
    match Order::of(desk, permission) {
        Order::Unsaid => format!("{} {TO_FILL_IN}", say.get("letter-as-the-surgeon-writes")),
        Order::No => say.get("letter-no-order"),
        Order::Held(until) => say.with("letter-order-held", &[("until", short(until).into())]),
        Order::Waits(stage) => say.with("letter-order-waits", &[("stage", stage.into())]),
        Order::Moved => say.get("letter-order-moved"),
        Order::NotBefore(day, stage) => {
            let before = of
                .first_allowed
                .iter()
                .filter(|first| first.key.joint == Joint::Shoulder && first.key.mode == Mode::Active)
                .map(|first| first.day)
                .min()
                .is_none_or(|active| day < active);
            let told = [
                ("from", short(day.date(of.operated_on)).into()),
                ("stage", stage.unwrap_or_default().into()),
                ("earlier", if before { "yes" } else { "no" }.into()),
            ];
            say.with(if stage.is_some() { "letter-order-once-opened" } else { "letter-order-not-before" }, &told)
        }
    }
}

/// End-range stretch of the shoulder from the limits: the day from which it is not shut again, movement by
/// movement where they differ.
fn stretch(say: &Texts<'_>, of: &Prescription) -> String {
    let mut days: Vec<(Option<&SpanOfDays>, Vec<&'static str>)> = Vec::new();
    for &movement in Movement::ALL {
        let key = Key::any(Joint::Shoulder, movement, Mode::EndRangeStretch);
        if !key.exists() {
            continue;
        }
        let first = for_good(of, |span| value_on(span, key).allowed != Allowed::No);
        let same = days.iter_mut().find(|(known, _)| known.map(|s| s.from_day) == first.map(|s| s.from_day));
        match same {
            Some((_, movements)) => movements.push(movement.name()),
            None => days.push((first, vec![movement.name()])),
        }
    }
    let planned = are_planned(of);
    let answer = |first: Option<&SpanOfDays>| {
        let Some(span) = first else { return say.get("letter-stretch-never") };
        let place = of.spans.iter().position(|other| other.from_day == span.from_day);
        let stage = of.stages.iter().find(|stage| stage.id == span.stage).map_or("", |stage| &stage.title);
        let told = [("from", short(span.from).into()), ("stage", stage.into())];
        let is_planned = place.is_some_and(|place| planned[place]);
        say.with(if is_planned { "letter-stretch-once-opened" } else { "letter-yes-from" }, &told)
    };
    match &days[..] {
        [(first, _)] => answer(*first),
        many => {
            let parts: Vec<String> =
                many.iter().map(|(first, movements)| format!("{}: {}", movements.join(", "), answer(*first))).collect();
            parts.join("; ")
        }
    }
}

/// How often and for how long; what the surgeon has not said is a line to fill in.
fn frequency(say: &Texts<'_>, therapy: &Therapy) -> String {
    let number = |number: Option<u16>| number.map_or("_____".to_owned(), |number| number.to_string());
    let (times, weeks) = (number(therapy.times_a_week), number(therapy.weeks));
    say.with("letter-frequency", &[("times", times.into()), ("weeks", weeks.into())])
}
