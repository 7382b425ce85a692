//! Exercises over time for clinicians: what is new, what ends, and what is left out.

use exercise::Catalogue;
use plan::{ExerciseLine, Prescription};
use wording::Messages;

use crate::desk::Desk;
use crate::document::{Block, Cell, Column, Print};
use crate::letter_words::in_trade_words;
use crate::limits_table::plain;
use crate::limits_words::{load, on};
use crate::reasons_list::ReasonsList;
use crate::texts::Texts;

/// What begins and what ends, run of days by run of days.
pub(crate) fn over_time(desk: &Desk<'_>, reasons: &mut ReasonsList) -> Block {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let mut rows: Vec<Vec<Cell>> = Vec::new();
    let mut before: Vec<(&str, String)> = Vec::new();
    for span in &of.spans {
        let now: Vec<(&str, String)> = span.exercises.iter().map(|line| (line.id.as_str(), dose(desk, line))).collect();
        let mut date = on(span.from, span.from_day);
        for (line, shown) in span.exercises.iter().zip(&now) {
            if !before.contains(shown) {
                let why = reasons.refer_line(&line.reasons);
                rows.push(vec![plain(std::mem::take(&mut date)), plain(shown.1.clone()), plain(why)]);
            }
        }
        let ended: Vec<String> = before
            .iter()
            .filter(|(id, _)| now.iter().all(|(kept, _)| kept != id))
            .map(|(id, _)| title(desk, id))
            .collect();
        if !ended.is_empty() {
            let text = format!("ends: {}", ended.join("; "));
            rows.push(vec![plain(std::mem::take(&mut date)), plain(text), plain(String::new())]);
        }
        before = now;
    }
    let columns = vec![
        Column { title: "from".into(), share: 0 },
        Column { title: "exercise".into(), share: 6 }, // not medical: widths
        Column { title: "why".into(), share: 2 },
    ];
    Block::Table { alt: say.get("surgeon-exercises-alt"), print: Print::Smaller, columns, rows }
}

/// What the protocol lists and some days do not allow, each reason once, and what stands in.
pub(crate) fn left_out(desk: &Desk<'_>, reasons: &mut ReasonsList) -> Option<Block> {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let mut rows: Vec<(Vec<Cell>, &str, &str)> = Vec::new();
    for span in &of.spans {
        for dropped in &span.dropped {
            if rows.iter().any(|(_, id, because)| *id == dropped.id && *because == dropped.because) {
                continue;
            }
            let cells = vec![
                plain(title(desk, &dropped.id)),
                plain(on(span.from, span.from_day)),
                plain(in_trade_words(&with_replacement(desk, of, &dropped.id, &dropped.because))),
                plain(reasons.refer(&dropped.reasons)),
            ];
            rows.push((cells, &dropped.id, &dropped.because));
        }
    }
    if rows.is_empty() {
        return None;
    }
    let columns = vec![
        Column { title: "exercise".into(), share: 2 },
        Column { title: "first on".into(), share: 0 },
        Column { title: "because".into(), share: 5 }, // not medical: widths
        Column { title: "why".into(), share: 2 },
    ];
    let rows = rows.into_iter().map(|(cells, ..)| cells).collect();
    Some(Block::Table { alt: say.get("surgeon-left-out-alt"), print: Print::Smaller, columns, rows })
}

fn with_replacement(desk: &Desk<'_>, of: &Prescription, id: &str, because: &str) -> String {
    let mut taken: Vec<String> = of
        .spans
        .iter()
        .flat_map(|span| &span.replaced)
        .filter(|replaced| replaced.dropped == id)
        .map(|replaced| title(desk, &replaced.taken))
        .collect();
    taken.dedup();
    if taken.is_empty() { because.to_owned() } else { format!("{because}; in its place: {}", taken.join(", ")) }
}

/// The title of an entry of the catalogue; its id where it has none.
pub(crate) fn title(desk: &Desk<'_>, id: &str) -> String {
    match desk.catalogue.get(id) {
        Some(entry) => Texts::of_clinicians(desk).get(&entry.message_id()),
        None => id.to_owned(),
    }
}

/// An exercise of a desk as clinicians read it.
pub(crate) fn dose(desk: &Desk<'_>, line: &ExerciseLine) -> String {
    exercise_line(line, desk.catalogue, Texts::of_clinicians(desk).messages)
}

/// An exercise with its dose in a line for clinicians: "Table slide, to 85°, 10 times, held 5 s, 3 times a day".
///
/// # Units and shape
/// `messages` are English, as all that clinicians read. A load stands in kilograms and in whole pounds, rounded down.
pub fn exercise_line(line: &ExerciseLine, catalogue: &Catalogue, messages: &Messages) -> String {
    let entry = catalogue.get(&line.id);
    let mut parts = vec![entry.map_or_else(|| line.id.clone(), |entry| messages.text(&entry.message_id(), &[]))];
    if let Some(target) = line.target {
        parts.push(format!("to {target}°"));
    } else if line.as_far_as_comfortable {
        parts.push("as far as is comfortable".into());
    }
    if let Some(most) = line.load {
        let [kilograms, pounds] = load(most);
        parts.push(format!("at most {kilograms} kg ({pounds} lb)"));
    }
    if line.sets > 1 {
        parts.push(format!("{} sets", line.sets));
    }
    let counted = counted(&line.id, catalogue, messages);
    parts.push(match line.repetitions_to {
        Some(to) => format!("{} to {to} {counted}", line.repetitions),
        None => format!("{} {counted}", line.repetitions),
    });
    if line.hold_s > 0 {
        parts.push(format!("held {} s", line.hold_s));
    }
    parts.push(match line.times_per_day {
        1 => "once a day".into(),
        many => format!("{many} times a day"),
    });
    if let Some(days) = line.days_per_week {
        parts.push(format!("{days} days a week"));
    }
    if line.supervised {
        parts.push("with a therapist".into());
    }
    parts.join(", ")
}

/// What the repetitions of an exercise count: "times" where its text says nothing else.
pub fn counted(id: &str, catalogue: &Catalogue, messages: &Messages) -> String {
    let entry = catalogue.get(id);
    entry
        .and_then(|entry| messages.attribute(&entry.message_id(), "counted"))
        .unwrap_or_else(|| messages.text("prescription-times", &[]))
}
