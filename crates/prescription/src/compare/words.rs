//! Parts of a plan in a few words, the same whichever kind of file they came from.

use protocol::file::{ChoiceIs, SlingStep};
use quantity::Degrees;

/// "staged, capped by delayed".
pub fn protocol<'t>(id: &str, capped_by: impl Iterator<Item = &'t str>) -> String {
    let caps: Vec<&str> = capped_by.collect();
    if caps.is_empty() { id.to_owned() } else { format!("{id}, capped by {}", caps.join(", ")) }
}

/// A question with its place, and whether it stands before signing.
pub fn question(text: &str, path: &str, blocks: bool) -> String {
    let before = if blocks { "before signing: " } else { "" };
    format!("{before}{text} ({path})")
}

/// "rotator-cuff-healing 2 to 6 of 15: …".
pub fn index(id: &str, low: u8, high: u8, of: u8, meaning: &str) -> String {
    let score = if low == high { low.to_string() } else { format!("{low} to {high}") };
    format!("{id} {score} of {of}: {meaning}")
}

/// Texts in one line.
pub fn list<'t>(texts: impl Iterator<Item = &'t str>) -> String {
    texts.collect::<Vec<_>>().join(" · ")
}

/// "20 to 30 degrees, held by the limit".
pub fn goal(from: Degrees, to: Option<Degrees>, or_other_shoulder: bool, held: bool) -> String {
    let mut text = match to {
        Some(to) if to == from => format!("{from} degrees"),
        Some(to) => format!("{from} to {to} degrees"),
        None => format!("from {from} degrees on"),
    };
    if or_other_shoulder {
        text.push_str(", or as far as the other shoulder");
    }
    if held {
        text.push_str(", held by the limit");
    }
    text
}

/// The clinic day, where it is not the day the visit is due.
pub fn clinic_day(due: u16, day: u16) -> String {
    if due == day { String::new() } else { format!("seen on day {day}") }
}

/// An opened stage, with the day on which a go-back closes it again.
pub fn opened(stage: &str, closes_again: Option<&str>) -> String {
    closes_again.map_or_else(|| stage.to_owned(), |date| format!("{stage}, closed again on {date}"))
}

/// What a return says beside its day.
pub fn return_to(opened_by_surgeon: bool, note: Option<&str>) -> String {
    let opened = opened_by_surgeon.then_some("when the surgeon opens it");
    opened.into_iter().chain(note).collect::<Vec<_>>().join("; ")
}

/// "always from day 0 until day 42, neutral".
pub(super) fn sling(step: &SlingStep) -> String {
    let until = step.until.map_or(String::new(), |day| format!(" until day {day}"));
    let except = if step.except.is_empty() { String::new() } else { format!(", off for {}", step.except.join(", ")) };
    let under = step.choice.as_ref().map_or(String::new(), |choice| format!(" ({})", option(choice)));
    format!("sling {} from day {}{until}, {}{except}{under}", step.wear.name(), step.from, step.position.name())
}

/// "where the choice sling-small is 28 days".
pub(super) fn option(choice: &ChoiceIs) -> String {
    format!("where the choice {} is {}", choice.id, choice.is)
}
