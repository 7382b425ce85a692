//! The work note: what can be done at work, from when at the earliest. No findings, no exercises.

use body::{Joint, Key, Mode, Movement};
use jiff::civil::Date;
use operative::Procedure;
use plan::{Allowed, LimitRow, Wear};

use crate::desk::Desk;
use crate::document::{Block, Column, Document, Print, Tone};
use crate::letter_strip::allows;
use crate::letter_text::{Kind, Validity, blank, filled, head, page};
use crate::limits_columns::frozen;
use crate::limits_for_good::{for_good, is_allowed_now, of_return};
use crate::limits_table::{plain, value_in};
use crate::limits_words::short;
use crate::texts::Texts;
use crate::work_lifting::lifting;
use crate::work_sling::{is_off_from, sling};

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
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let mut document = page(desk, &KIND);
    // While a gate waits, no visit of the dated plan stands: the next one is to be made.
    let ahead = of.visits.iter().map(|visit| visit.date).find(|date| *date > desk.issued_on);
    let review = ahead.filter(|_| frozen(of).is_none());
    let (rows, is_release) = (rows(desk), desk.record.procedure() == Procedure::CapsularRelease);
    let is_blocked = of.questions.iter().any(|question| question.changes.is_empty());
    let mut blocks = vec![
        head(desk, "work-title"),
        Block::Fields {
            columns: 3, // not medical: side by side
            fields: vec![blank("Name"), blank("Date of birth"), filled("Issued", short(desk.issued_on))],
        },
        say.paragraph(
            Tone::Plain,
            if is_release { "work-intro-release" } else { "work-intro" },
            &[("date", short(of.operated_on).into())],
        ),
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
    ];
    blocks.extend(until_then(desk, &say, &rows));
    blocks.push(tasks(desk, &say, review, &rows));
    blocks.push(say.heading(2, "work-lift-title"));
    blocks.push(say.paragraph(Tone::Plain, "work-lift-text", &[]));
    blocks.extend(lifting(&say, of, desk.issued_on));
    blocks.push(say.heading(2, "work-sling-title"));
    blocks.push(Block::Paragraph { tone: Tone::Plain, text: sling(&say, of, desk.issued_on) });
    blocks.push(Block::Signature {
        text: say.get(if is_blocked { "work-sign-blocked" } else { "work-sign" }),
        labels: vec!["Surgeon's signature".into(), "Name".into(), "Date".into()],
    });
    document.blocks = blocks;
    document
}

/// A row of the table of tasks.
struct Row {
    task: Task,
    title: &'static str,
    first: Option<Date>,
}

/// What is told of, each with its first day.
///
/// # Method
/// No row speaks of a sling that is off by then, and work with the other hand is told only where that
/// arm is sound.
fn rows(desk: &Desk<'_>) -> Vec<Row> {
    let of = desk.prescription;
    let has_helping_arm = operative::facts(desk.record).other_arm_helps();
    let told = TASKS.iter().filter_map(|&(title, task)| {
        let first = first_day(desk, task);
        let is_off = first.is_some_and(|first| is_off_from(of, desk.issued_on, first.max(desk.issued_on)));
        let title = match title {
            "work-desk-sling" if is_off => return None,
            "work-one-hand" if !has_helping_arm => return None,
            "work-one-hand" if is_off => "work-one-hand-no-sling",
            other => other,
        };
        Some(Row { task, title, first })
    });
    told.collect()
}

/// What holds before the first day of work with this arm.
fn until_then(desk: &Desk<'_>, say: &Texts<'_>, rows: &[Row]) -> Option<Block> {
    let of_this_arm = || rows.iter().filter(|row| !row.title.starts_with("work-one-hand"));
    let is_now = |row: &Row| matches!(earliest(desk, row), Earliest::Now);
    if of_this_arm().any(is_now) {
        return None;
    }
    let ahead = of_this_arm().filter_map(|row| match earliest(desk, row) {
        Earliest::From(date) | Earliest::Planned(date) => Some(date),
        Earliest::Now | Earliest::Waits | Earliest::Never => None,
    });
    let is_waiting = of_this_arm().any(|row| matches!(earliest(desk, row), Earliest::Waits));
    Some(match ahead.min().filter(|_| !is_waiting) {
        Some(date) => say.paragraph(Tone::Strong, "work-none-before", &[("date", short(date).into())]),
        None => say.paragraph(Tone::Strong, "work-none-yet", &[]),
    })
}

fn tasks(desk: &Desk<'_>, say: &Texts<'_>, review: Option<Date>, rows: &[Row]) -> Block {
    let columns = vec![
        Column { title: say.get("work-task"), share: 3 }, // not medical: widths
        Column { title: say.get("work-earliest"), share: 2 },
        Column { title: say.get("work-review-head"), share: 2 },
    ];
    let reviewed = match review {
        Some(date) => say.with("work-review-on", &[("date", short(date).into())]),
        None => say.get("work-review-later"),
    };
    let rows = rows
        .iter()
        .map(|row| vec![plain(say.get(row.title)), plain(in_words(say, earliest(desk, row))), plain(reviewed.clone())])
        .collect();
    Block::Table { alt: say.get("work-tasks-alt"), print: Print::Usual, columns, rows }
}

/// What is said of the first day of a task.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Earliest {
    /// It is allowed on the day of issue, and stays so.
    Now,
    /// From a day on, in a stage that is open.
    From(Date),
    /// Not before a day, and only once a stage is opened.
    Planned(Date),
    /// The day has come, and a stage is not opened.
    Waits,
    /// No dated day allows it.
    Never,
}

fn earliest(desk: &Desk<'_>, row: &Row) -> Earliest {
    let Some(date) = row.first else { return Earliest::Never };
    let has_come = date <= desk.issued_on;
    match Validity::of(desk.prescription, desk.issued_on).gate() {
        Some(gate) if date >= gate && has_come => Earliest::Waits,
        Some(gate) if date >= gate => Earliest::Planned(date),
        _ if has_come && !is_now(desk, row.task) => Earliest::Waits,
        _ if has_come => Earliest::Now,
        _ => Earliest::From(date),
    }
}

/// Whether the day of issue itself allows a task: a gate that waits can shut what its date has reached.
fn is_now(desk: &Desk<'_>, task: Task) -> bool {
    match task {
        Task::Return(activity) | Task::Activity(activity) => is_allowed_now(desk, activity),
        Task::Ladder => desk.prescription.today.as_ref().is_some_and(|today| {
            let is_open = |movement| value_in(&today.limits, load_key(movement)).allowed != Allowed::No;
            today.sling.wear == Wear::None && is_open(Movement::OverheadLoad) && is_open(Movement::WeightThroughTheArm)
        }),
    }
}

fn in_words(say: &Texts<'_>, earliest: Earliest) -> String {
    match earliest {
        Earliest::Now => say.get("work-may"),
        Earliest::From(date) => say.with("work-from", &[("date", short(date).into())]),
        Earliest::Planned(date) => say.with("work-only-after", &[("date", short(date).into())]),
        Earliest::Waits => say.get("work-waits"),
        Earliest::Never => say.get("work-not-dated"),
    }
}

/// The first day of the dated plan, never before the limits and the sling allow it for good.
fn first_day(desk: &Desk<'_>, task: Task) -> Option<Date> {
    let of = desk.prescription;
    let open = |movement: Movement, limits: &[LimitRow]| value_in(limits, load_key(movement)).allowed != Allowed::No;
    match task {
        Task::Return(activity) => {
            let line = of.returns.iter().find(|line| line.activity == activity && !line.opened_by_surgeon)?;
            of_return(desk, line).map(|day| day.date(of.operated_on))
        }
        Task::Activity(id) => {
            let entry = desk.catalogue.get(id)?;
            for_good(of, |span| span.sling.wear == Wear::None && allows(entry, &span.limits)).map(|span| span.from)
        }
        Task::Ladder => for_good(of, |span| {
            span.sling.wear == Wear::None
                && open(Movement::OverheadLoad, &span.limits)
                && open(Movement::WeightThroughTheArm, &span.limits)
        })
        .map(|span| span.from),
    }
}

/// The key of a load.
pub(crate) const fn load_key(movement: Movement) -> Key {
    Key::any(Joint::WholeArm, movement, Mode::Resisted)
}
