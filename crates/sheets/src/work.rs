//! The work note: what can be done at work, from when at the earliest. No findings, no exercises.

use body::{Joint, Key, Mode, Movement};
use jiff::civil::Date;
use plan::{Allowed, LimitRow, Prescription, TodayBasis, Wear};

use crate::desk::Desk;
use crate::document::{Block, Column, Document, Print, Tone};
use crate::letter_strip::allows;
use crate::letter_text::{Kind, Say, Validity, blank, filled, head, page};
use crate::limits_table::{load_of, plain, value_in};
use crate::limits_words::{load, short};

const KIND: Kind =
    Kind { title: "work-title", running: "work-running", running_with_id: "work-running", side: "work-side" };

/// A kind of work: its message, and how its first day is found.
#[derive(Debug, Clone, Copy)]
enum Task {
    /// The protocol gives it a date.
    Return(&'static str),
    /// Its demands in the catalogue against the limits.
    Activity(&'static str),
    /// Climbing: both what is held overhead and weight through the arm have to be open.
    ///
    /// # Source
    /// Own choice, evidence `work-on-a-ladder`.
    Ladder,
}

/// The kinds of work, from light to heavy. Work with the other hand alone goes with desk work in the sling: own
/// choice, evidence `work-with-one-hand`.
const TASKS: &[(&str, Task)] = &[
    ("work-desk-sling", Task::Return("desk-work")),
    ("work-one-hand", Task::Return("desk-work")),
    ("work-desk-both", Task::Return("desk-work-both-hands")),
    ("work-drive", Task::Return("drive")),
    ("work-manual", Task::Return("manual-work")),
    ("work-overhead", Task::Activity("overhead-work")),
    ("work-ladder", Task::Ladder),
];

/// The work note.
///
/// # Method
/// The dates are those of the prescription. What lies before the gate of the first stage that is not
/// open is in force; every later day is told as the earliest one.
pub fn work_note(desk: &Desk<'_>) -> Document {
    let (say, of) = (Say::at(desk), desk.prescription);
    let mut document = page(desk, &KIND);
    let review = of.visits.iter().map(|visit| visit.date).find(|date| *date > desk.issued_on);
    document.blocks = vec![
        head(desk, "work-title"),
        Block::Fields {
            columns: 3, // not medical: side by side
            fields: vec![blank("Name"), blank("Date of birth"), filled("Issued", short(desk.issued_on))],
        },
        say.paragraph(Tone::Plain, "work-intro", &[("date", short(of.operated_on).into())]),
        Block::Callout {
            tone: Tone::Strong,
            title: match review {
                Some(date) => say.with("work-review", &[("date", short(date).into())]),
                None => say.get("work-review-no-date"),
            },
            text: vec![say.get("work-rule")],
            items: Vec::new(),
        },
        say.heading(2, "work-tasks-title"),
        tasks(desk, &say, review),
        say.heading(2, "work-lift-title"),
        say.paragraph(Tone::Plain, "work-lift-text", &[]),
        lifting(&say, of, desk.issued_on),
        say.heading(2, "work-sling-title"),
        Block::Paragraph { tone: Tone::Plain, text: sling(&say, of, desk.issued_on) },
        Block::Signature {
            text: say.get("work-sign"),
            labels: vec!["Surgeon's signature".into(), "Name".into(), "Date".into()],
        },
    ];
    document
}

fn tasks(desk: &Desk<'_>, say: &Say<'_>, review: Option<Date>) -> Block {
    let columns = vec![
        Column { title: say.get("work-task"), share: 3 }, // not medical: widths
        Column { title: say.get("work-earliest"), share: 3 }, // not medical: widths
        Column { title: say.get("work-review-head"), share: 2 },
    ];
    let reviewed = match review {
        Some(date) => say.with("work-review-on", &[("date", short(date).into())]),
        None => say.get("work-review-later"),
    };
    let rows = TASKS
        .iter()
        .map(|(id, task)| vec![plain(say.get(id)), plain(earliest(desk, say, *task)), plain(reviewed.clone())])
        .collect();
    Block::Table { alt: say.get("work-tasks-alt"), print: Print::Usual, columns, rows }
}

fn earliest(desk: &Desk<'_>, say: &Say<'_>, task: Task) -> String {
    let Some(date) = first_day(desk, task) else { return say.get("work-not-dated") };
    let told = [("date", short(date).into())];
    match Validity::of(desk.prescription, desk.issued_on).next() {
        Some(stage) if date >= stage.from && date <= desk.issued_on => say.get("work-waits"),
        Some(stage) if date >= stage.from => say.with("work-only-after", &told),
        _ if date <= desk.issued_on => say.get("work-may"),
        _ => say.with("work-from", &told),
    }
}

/// The first day of the dated plan, never before the limits allow it for good.
fn first_day(desk: &Desk<'_>, task: Task) -> Option<Date> {
    let of = desk.prescription;
    let open = |movement: Movement, limits: &[LimitRow]| value_in(limits, load_key(movement)).allowed != Allowed::No;
    match task {
        Task::Return(activity) => {
            of.returns.iter().find(|line| line.activity == activity && !line.opened_by_surgeon)?.date
        }
        Task::Activity(id) => {
            let entry = desk.catalogue.get(id)?;
            for_good(of, |span| span.sling.wear == Wear::None && allows(entry, &span.limits))
        }
        Task::Ladder => for_good(of, |span| {
            span.sling.wear == Wear::None
                && open(Movement::OverheadLoad, &span.limits)
                && open(Movement::WeightThroughTheArm, &span.limits)
        }),
    }
}

/// The first day from which something holds until the end of the dated plan.
fn for_good(of: &Prescription, holds: impl Fn(&plan::SpanOfDays) -> bool) -> Option<Date> {
    of.spans.iter().rev().take_while(|span| holds(span)).last().map(|span| span.from)
}

const fn load_key(movement: Movement) -> Key {
    Key::any(Joint::WholeArm, movement, Mode::Resisted)
}

/// A run of days with one load in the hand and one overhead.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Lift {
    /// First day.
    pub from: Date,
    /// First day after; `None` where it lasts until the surgeon says more.
    pub before: Option<Date>,
    /// What the hand may hold.
    pub hand: Allowed,
    /// What it may hold above the shoulder.
    pub overhead: Allowed,
    /// Whether a stage that is not open has to be opened first.
    pub later: bool,
}

/// What may be lifted, from the day of issue on.
///
/// # Method
/// While a passed gate waits, the limits of the day of issue last, and nothing later is told: no day
/// of the dated plan after that gate holds.
pub(crate) fn lifts(of: &Prescription, issued_on: Date) -> Vec<Lift> {
    let pair = |limits: &[LimitRow]| {
        let of = |movement| value_in(limits, load_key(movement)).allowed;
        // What may be held overhead is never more than what may be held at all.
        (of(Movement::HandLoad), of(Movement::OverheadLoad).min(of(Movement::HandLoad)))
    };
    if let Some(today) = of.today.as_ref().filter(|today| today.basis == TodayBasis::Frozen) {
        let (hand, overhead) = pair(&today.limits);
        return vec![Lift { from: issued_on, before: None, hand, overhead, later: false }];
    }
    let gate = Validity::of(of, issued_on).next().map(|stage| stage.from);
    let mut lifts: Vec<Lift> = Vec::new();
    for span in of.spans.iter().filter(|span| span.until > issued_on) {
        let (hand, overhead) = pair(&span.limits);
        let later = gate.is_some_and(|gate| span.from >= gate);
        match lifts.last_mut() {
            Some(last)
                if (last.hand, last.overhead) == (hand, overhead) && (last.later == later || hand == Allowed::No) => {}
            last => {
                if let Some(last) = last {
                    last.before = Some(span.from);
                }
                lifts.push(Lift { from: span.from.max(issued_on), before: None, hand, overhead, later });
            }
        }
    }
    lifts
}

fn lifting(say: &Say<'_>, of: &Prescription, issued_on: Date) -> Block {
    let columns = vec![
        Column { title: say.get("work-lift-from"), share: 2 },
        Column { title: say.get("work-lift-before"), share: 3 }, // not medical: widths
        Column { title: say.get("work-lift-hand"), share: 3 },   // not medical: widths
        Column { title: say.get("work-lift-overhead"), share: 3 }, // not medical: widths
        Column { title: say.get("work-lift-holds"), share: 2 },
    ];
    let rows = lifts(of, issued_on)
        .iter()
        .map(|lift| {
            vec![
                plain(short(lift.from)),
                plain(lift.before.map_or_else(|| say.get("work-lift-open-end"), short)),
                plain(most(say, lift.hand)),
                plain(most(say, lift.overhead)),
                plain(say.get(if lift.later { "work-lift-earliest" } else { "work-lift-now" })),
            ]
        })
        .collect();
    Block::Table { alt: say.get("work-lift-alt"), print: Print::Usual, columns, rows }
}

fn most(say: &Say<'_>, allowed: Allowed) -> String {
    match (allowed, load_of(allowed)) {
        (_, Some(most)) => {
            let [kilograms, pounds] = load(most);
            say.with("work-lift-most", &[("kilograms", kilograms.into()), ("pounds", pounds.into())])
        }
        (Allowed::Free, _) => say.get("work-lift-free"),
        _ => say.get("work-lift-nothing"),
    }
}

fn sling(say: &Say<'_>, of: &Prescription, issued_on: Date) -> String {
    let runs = crate::sling_words::runs(of);
    let first =
        |wear: Wear| runs.iter().find(|span| span.sling.wear == wear && span.from > issued_on).map(|span| span.from);
    let told = |id: &str, from: Option<Date>, until: Option<Date>| {
        let text = |date: Option<Date>| date.map_or(String::new(), short);
        say.with(id, &[("from", text(from).into()), ("until", text(until).into())])
    };
    if let Some(today) = of.today.as_ref().filter(|today| today.basis == TodayBasis::Frozen) {
        return say.get(match today.sling.wear {
            Wear::Always => "work-sling-always-open",
            Wear::Weaning => "work-sling-weaning-open",
            Wear::None => "work-sling-none",
        });
    }
    let mut sentences = Vec::new();
    let worn = of.spans.iter().rev().find(|span| span.from <= issued_on).map_or(Wear::Always, |span| span.sling.wear);
    let (weaning, none) = (first(Wear::Weaning), first(Wear::None));
    if worn == Wear::Always {
        sentences.push(told("work-sling-always", None, weaning.or(none)));
    }
    if worn != Wear::None && (weaning.is_some() || worn == Wear::Weaning) {
        sentences.push(told("work-sling-weaning", weaning.or(Some(issued_on)), none));
    }
    if worn == Wear::None {
        sentences.push(say.get("work-sling-none"));
    }
    sentences.join(" ")
}
