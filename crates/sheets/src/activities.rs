//! "May I …?" for daily life, over the days of an opened stage.

use exercise::SlingDuring;
use jiff::civil::Date;
use plan::Wear;
use prescription::{Answer, May};

use crate::desk::Desk;
use crate::document::{Block, Cell, Column, ListMark, Print, Shade, Tone};
use crate::handout::step_number;
use crate::parts::{Part, is_shortly_before_a_go_back};
use crate::texts::Texts;

/// What a patient is told of an activity.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Told {
    /// All through the stage.
    Yes,
    /// From a day of the stage on.
    From(Date),
    /// Only the surgeon's office can say.
    Ask,
    /// Not in what is opened; no date is told.
    NotYet,
}

/// What a patient is told of each activity in a part whose periods begin with the answer lists `answers`.
///
/// # Method
/// Yes is told only where every later period says yes. A date of the prescription is told only where it lies
/// before the end of the part: what is not opened has no date on paper.
pub fn told(desk: &Desk<'_>, part: &Part<'_>, answers: &[Vec<May>]) -> Vec<(String, Told)> {
    let Some(first) = answers.first() else { return Vec::new() };
    // A date alone never opens these.
    let by_surgeon = |activity: &str| {
        desk.prescription.returns.iter().any(|line| line.opened_by_surgeon && line.activity == activity)
    };
    // A step that is ahead, and a go-back soon after its first day.
    let begins_later = part.from() > desk.issued_on && is_shortly_before_a_go_back(desk.prescription, part.from());
    let is_dated = |activity: &str| {
        let returns = desk.prescription.returns.iter().filter(|line| line.activity == activity);
        returns.filter_map(|line| line.date).any(|date| is_shortly_before_a_go_back(desk.prescription, date))
    };
    let waits = part.until().is_none() && desk.prescription.stages.iter().any(|stage| !stage.opened);
    let of = |place: usize| {
        let activity = first[place].activity.clone();
        let told = match of_activity(part, answers, place) {
            // A part without an end waits for a gate: what the dated plan says beyond it is not opened.
            Told::From(_) if waits => Told::NotYet,
            Told::Yes | Told::From(_) if by_surgeon(&activity) => Told::Ask,
            // What a go-back takes away again soon is not given for so short a time.
            Told::From(date) if is_shortly_before_a_go_back(desk.prescription, date) => Told::NotYet,
            Told::Yes if begins_later && is_dated(&activity) => Told::NotYet,
            told => told,
        };
        (activity, told)
    };
    (0..first.len()).map(of).collect()
}

fn of_activity(part: &Part<'_>, answers: &[Vec<May>], place: usize) -> Told {
    let answer = |period: usize| answers.get(period).and_then(|list| list.get(place));
    let is_yes = |period: usize| answer(period).is_some_and(|may| may.answer == Answer::Yes);
    let count = part.periods.len();
    // The first period from which on every one says yes; the number of periods where the last does not.
    let from = (0..count).rev().take_while(|&period| is_yes(period)).last().unwrap_or(count);
    if from == 0 {
        return Told::Yes;
    }
    let before = answer(from - 1);
    let until = part.until().map(|(_, date)| date);
    let inside = |date: Date| until.is_none_or(|until| date < until);
    let begins = part.periods.get(from).map(|period| period.from);
    match before.map(|may| (may.answer, may.date)) {
        // It may begin between two breaks of the limits.
        Some((Answer::NotBefore, date)) if inside(date) && begins.is_none_or(|begins| date <= begins) => {
            Told::From(date)
        }
        _ if begins.is_some() => Told::From(begins.unwrap_or(part.from())),
        Some((Answer::Ask, _)) => Told::Ask,
        _ => Told::NotYet,
    }
}

/// The table of what may be done and when, and the list of what has to wait.
pub(crate) fn blocks(desk: &Desk<'_>, texts: &Texts<'_>, part: &Part<'_>, answers: &[Vec<May>]) -> Vec<Block> {
    let told = on_paper(desk, part, answers).into_iter().filter(|(activity, _)| has_place(desk, part, activity));
    // What has a way around it is named; the rest is told in a sentence.
    let is_named = |message: &str| texts.messages.attribute(message, "until").is_some();
    let (rows, waiting) = rows_and_waiting(desk, texts, told.collect(), is_named);
    let mut blocks = vec![
        texts.heading(1, "handout-activities-title"),
        texts.paragraph(Tone::Plain, "handout-activities-intro", &[]),
    ];
    blocks.extend(table(texts, rows));
    if !waiting.is_empty() {
        blocks.extend(not_yet(texts, waiting));
        blocks.push(texts.paragraph(Tone::Plain, "handout-activities-not-rest", &[]));
    }
    blocks
}

/// What is other in a part than at the end of the part before it, which stands in full before it.
pub(crate) fn changes(
    desk: &Desk<'_>,
    texts: &Texts<'_>,
    (before, earlier): (&Part<'_>, &[Vec<May>]),
    (part, answers): (&Part<'_>, &[Vec<May>]),
) -> Vec<Block> {
    let at_the_end = |told: Told| if let Told::From(_) = told { Told::Yes } else { told };
    let known = on_paper(desk, before, earlier);
    let is_known = |activity: &str, told: Told| {
        has_place(desk, before, activity)
            && known.iter().any(|(other, earlier)| other == activity && at_the_end(*earlier) == told)
    };
    let is_told = |activity: &str, told: Told| has_place(desk, part, activity) || told == Told::NotYet;
    let told = on_paper(desk, part, answers)
        .into_iter()
        .filter(|(activity, told)| !is_known(activity, *told) && is_told(activity, *told));
    // What was allowed and is no more is named whatever it is.
    let (rows, waiting) = rows_and_waiting(desk, texts, told.collect(), |_| true);
    let id = match rows.is_empty() && waiting.is_empty() {
        true => "handout-activities-same",
        false => "handout-activities-changed",
    };
    let mut blocks =
        vec![texts.heading(1, "handout-activities-title"), texts.paragraph(Tone::Plain, id, &[step_number(before)])];
    blocks.extend(table(texts, rows));
    if !waiting.is_empty() {
        blocks.extend(not_yet(texts, waiting));
    }
    blocks
}

/// Whether a part speaks of an activity: with the sling on nothing is done where none is worn.
fn has_place(desk: &Desk<'_>, part: &Part<'_>, activity: &str) -> bool {
    let is_worn = part.periods.iter().any(|period| period.sling.wear != Wear::None);
    is_worn || desk.catalogue.get(activity).is_none_or(|entry| entry.sling != SlingDuring::On)
}

/// What a part tells of each activity on paper.
pub(crate) fn on_paper(desk: &Desk<'_>, part: &Part<'_>, answers: &[Vec<May>]) -> Vec<(String, Told)> {
    let mut told = told(desk, part, answers);
    // What only the surgeon's office can say is no question for today while a whole stage is still closed.
    if desk.prescription.stages.iter().any(|stage| !stage.opened) {
        for (_, told) in told.iter_mut().filter(|(_, told)| *told == Told::Ask) {
            *told = Told::NotYet;
        }
    }
    told.sort_by_key(|(_, told)| *told);
    told
}

/// The rows of the table, and the names of what has to wait.
fn rows_and_waiting(
    desk: &Desk<'_>,
    texts: &Texts<'_>,
    told: Vec<(String, Told)>,
    is_named: impl Fn(&str) -> bool,
) -> (Vec<Vec<Cell>>, Vec<String>) {
    let mut rows = Vec::new();
    let mut waiting = Vec::new();
    for (activity, told) in &told {
        let Some(entry) = desk.catalogue.get(activity) else { continue };
        let message = entry.message_id();
        let name = texts.get(&message);
        let answer = match told {
            Told::Yes => texts.get("handout-activities-yes"),
            Told::From(date) => texts.with("handout-activities-from", &[("date", texts.date(*date).into())]),
            Told::Ask => texts.get("handout-activities-ask"),
            Told::NotYet => {
                if is_named(&message) {
                    waiting.push(name);
                }
                continue;
            }
        };
        let how = texts.messages.attribute(&message, "how");
        let name = how.map_or_else(|| name.clone(), |how| format!("{name}\n{how}"));
        let cell = |text: String, strong: bool| Cell { text, span: 1, shade: Shade::None, strong };
        rows.push(vec![cell(name, false), cell(answer, true)]);
    }
    (rows, waiting)
}

fn table(texts: &Texts<'_>, rows: Vec<Vec<Cell>>) -> Option<Block> {
    (!rows.is_empty()).then(|| Block::Table {
        alt: texts.get("handout-activities-title"),
        print: Print::Usual,
        columns: vec![
            Column { title: texts.get("handout-activities-what"), share: 3 },
            Column { title: texts.get("handout-activities-answer"), share: 1 },
        ],
        rows,
    })
}

fn not_yet(texts: &Texts<'_>, waiting: Vec<String>) -> [Block; 3] {
    [
        texts.heading(3, "handout-activities-not-title"),
        texts.paragraph(Tone::Plain, "handout-activities-not", &[]),
        Block::Brief { mark: ListMark::Dont, items: waiting },
    ]
}
