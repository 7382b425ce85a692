//! Numbers one step up and down, switches turned, entries taken away.

use quantity::{Degrees, Kilograms, Percent, PostoperativeDay};
use toml::Spanned;
use toml::de::{DeString, DeValue};

use crate::mutant::Visit;

/// Texts that hold no number of the protocol: words for people, names, and the words of a choice.
const WORDS: [&str; 10] = ["id", "title", "text", "summary", "note", "edition", "options", "is", "says", "path"];

/// Single lines without which an entry goes further, or less far.
const CONDITIONAL: [&str; 5] = ["choice", "unless_capped_by", "only_when_chosen", "only_without", "shown_from_stage"];

/// Switches.
const SWITCHES: [&str; 4] = ["opened_by_surgeon", "invites", "without_measurement", "or_other_shoulder"];

/// Lists whose entries are taken away one at a time, also the last.
const ENTRIES: [&str; 17] = [
    "rule",
    "limit",
    "limits",
    "select",
    "question",
    "refusal",
    "caution",
    "on_request",
    "posture",
    "return",
    "visit",
    "goal",
    "exercise",
    "sling",
    "gates",
    "criteria",
    "passive_by",
];

/// Lists that say what an entry is about; a single one is never taken away, as that is the entry itself.
const PARTS: [&str; 4] = ["keys", "modes", "except", "steps"];

/// The changes of a key and its value.
pub fn of_entry(key: &Spanned<DeString<'_>>, value: &Spanned<DeValue<'_>>, visit: &mut Visit<'_>) {
    let name = key.get_ref().as_ref();
    if WORDS.contains(&name) {
        return;
    }
    if CONDITIONAL.contains(&name) && !value.get_ref().is_array() {
        visit.drop(key.span().start..value.span().end);
    }
    match value.get_ref() {
        DeValue::String(text) => {
            for stepped in stepped(text).into_iter().flatten().flatten() {
                visit.replace(value.span(), format!("\"{stepped}\""));
            }
            for other in others(name, text) {
                visit.replace(value.span(), format!("\"{other}\""));
            }
        }
        DeValue::Integer(number) => {
            let number: i64 = number.as_str().parse().expect("a whole number of a shipped file");
            visit.replace(value.span(), (number - 1).to_string());
            visit.replace(value.span(), (number + 1).to_string());
        }
        DeValue::Boolean(on) if SWITCHES.contains(&name) => visit.replace(value.span(), (!on).to_string()),
        _ => {}
    }
}

/// The changes of an item of a list as a whole.
pub fn of_item(list: &str, items: &[Spanned<DeValue<'_>>], index: usize, visit: &mut Visit<'_>) {
    let span = items[index].span();
    if ENTRIES.contains(&list) {
        if visit.text[span.start..].starts_with("[[") {
            let block = &visit.text[span.start..];
            let end = block.find("\n[").map_or(block.len(), |at| at + 1);
            visit.say("dropped", span.start..span.start + end, "");
        } else {
            visit.drop(span);
        }
    } else if PARTS.contains(&list) && items.len() > 1 {
        if items[index].get_ref().is_str() {
            visit.place = format!("{} {}", visit.place, &visit.text[span.clone()]);
        }
        visit.drop(span);
    }
}

/// A quantity one step down and one step up: a day, a degree, a percent, ten grams.
fn stepped(text: &str) -> Option<[Option<String>; 2]> {
    if let Ok(day) = PostoperativeDay::parse(text) {
        let day = day.count();
        return Some([day.checked_sub(1), day.checked_add(1)].map(|day| day.map(|day| format!("day {day}"))));
    }
    if let Ok(angle) = Degrees::parse(text) {
        return Some([-1.0, 1.0].map(|step| Some(format!("{} deg", angle.number() + step))));
    }
    if let Ok(load) = Kilograms::parse(text) {
        return Some([-0.01, 0.01].map(|step| Some(format!("{:.2} kg", load.number() + step))));
    }
    let effort = Percent::parse(text).ok()?;
    Some([-1.0, 1.0].map(|step| Some(format!("{} %", effort.number() + step))))
}

/// Other words of a closed list.
fn others(name: &str, text: &str) -> &'static [&'static str] {
    match (name, text) {
        ("allowed", "no") => &["free"],
        ("allowed", "free") => &["no"],
        ("wear", "always") => &["weaning"],
        ("wear", "weaning") => &["always", "none"],
        ("wear", "none") => &["weaning"],
        _ => &[],
    }
}
