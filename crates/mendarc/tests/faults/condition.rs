//! Conditions: taken away, always true, the other word, the class next to the one named.

use operative::{DIMENSIONS, Dimension, dimension};
use toml::de::{DeTable, DeValue};

use crate::mutant::Visit;

/// A condition that every record satisfies.
const ALWAYS: &str = "{ fact = \"revision\", at_least = \"no\" }";

/// The changes of a table that is a condition.
///
/// A change that leaves the same classes is no change, and one that the language of conditions cannot say is left out.
pub fn changes(table: &DeTable<'_>, visit: &mut Visit<'_>) {
    let entry = |name: &str| table.iter().find(|(key, _)| key.get_ref().as_ref() == name);
    let Some((_, fact)) = entry("fact") else { return };
    let fact = fact.get_ref().as_str().expect("the name of a fact");
    let of = &DIMENSIONS[usize::from(dimension(fact).expect("a fact of a record").0)];
    let (word, (key, value)) =
        ["has", "at_least"].iter().find_map(|word| Some((*word, entry(word)?))).expect("`has` or `at_least`");
    let DeValue::String(class) = value.get_ref() else { return };
    visit.place = format!("{} ({fact})", visit.place);
    let mask = |word: &str, class: &str| if word == "has" { of.has(class) } else { of.at_least(class) };
    let is = mask(word, class);
    let other = if word == "has" { "at_least" } else { "has" };
    if mask(other, class).is_some_and(|mask| Some(mask) != is) {
        visit.replace(key.span(), other.to_owned());
    }
    for near in neighbours(of, class) {
        if mask(word, near).is_some_and(|mask| Some(mask) != is) {
            visit.replace(value.span(), format!("\"{near}\""));
        }
    }
    // The braces around the condition.
    let (start, end) = (visit.text[..key.span().start].rfind('{'), visit.text[value.span().end..].find('}'));
    let (Some(start), Some(end)) = (start, end) else { return };
    let whole = start..value.span().end + end + 1;
    if !visit.text[whole.clone()].contains("says") {
        visit.say("always", whole.clone(), ALWAYS);
        if visit.text[..start].trim_end().ends_with(',') || visit.text[whole.end..].trim_start().starts_with(',') {
            visit.drop(whole);
        }
    }
}

/// The classes before and after one.
fn neighbours(of: &Dimension, class: &str) -> impl Iterator<Item = &'static str> {
    let place = usize::from(of.class(class).expect("a class of the fact"));
    [place.checked_sub(1), Some(place + 1)].into_iter().flatten().filter_map(|near| Some(of.classes.get(near)?.name))
}
