//! The changes: found by walking the parsed text of each shipped file.

use std::ops::Range;

use protocol::SHIPPED;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::{change, condition};

/// A shipped file with one thing changed.
#[derive(Debug)]
pub struct Mutant {
    /// File, place in the file, and what became what.
    pub name: String,
    /// The place of the file in [`SHIPPED`].
    pub file: usize,
    /// The entry at the top of the file that holds the change: neighbours are caught alike.
    pub entry: String,
    /// The line of the change.
    pub line: usize,
    /// The whole file, changed.
    pub text: String,
}

/// One replacement in a text.
#[derive(Debug)]
pub struct Change {
    /// The path to what changes.
    pub place: String,
    /// What it is said to become.
    pub said: String,
    /// What is replaced.
    pub range: Range<usize>,
    /// By what.
    pub by: String,
}

/// A table or a value on the walk.
pub struct Visit<'t> {
    pub text: &'t str,
    pub place: String,
    pub found: &'t mut Vec<Change>,
}

/// Every change of every shipped file.
pub fn all() -> Vec<Mutant> {
    (0..).zip(SHIPPED).flat_map(|(file, (name, text))| of_file(file, name, text)).collect()
}

fn of_file(file: usize, name: &str, text: &str) -> Vec<Mutant> {
    let table = DeTable::parse(text).expect("a shipped file is TOML");
    let mut found = Vec::new();
    of_table(table.get_ref(), &mut Visit { text, place: String::new(), found: &mut found });
    found.sort_by_key(|change| change.range.start);
    let mutant = |change: Change| {
        let mut changed = text.to_owned();
        changed.replace_range(change.range.clone(), &change.by);
        Mutant {
            name: format!("{name} {}: {}", change.place, change.said),
            file,
            entry: change.place.split('.').take(2).collect::<Vec<_>>().join("."),
            line: text[..change.range.start].matches('\n').count() + 1,
            text: changed,
        }
    };
    found.into_iter().map(mutant).collect()
}

fn of_table(table: &DeTable<'_>, visit: &mut Visit<'_>) {
    condition::changes(table, visit);
    for (key, value) in table {
        let name = key.get_ref().as_ref();
        // What a sling that nobody wears comes off for is read by nobody.
        if name == "except" && table.get("wear").is_some_and(|wear| wear.get_ref().as_str() == Some("none")) {
            continue;
        }
        let place = if visit.place.is_empty() { name.to_owned() } else { format!("{}.{name}", visit.place) };
        let mut inside = Visit { text: visit.text, place, found: visit.found };
        change::of_entry(key, value, &mut inside);
        match value.get_ref() {
            DeValue::Table(table) => of_table(table, &mut inside),
            DeValue::Array(items) => of_items(name, items, &mut inside),
            _ => {}
        }
    }
}

fn of_items(name: &str, items: &[Spanned<DeValue<'_>>], visit: &mut Visit<'_>) {
    for (index, item) in items.iter().enumerate() {
        let place = format!("{}.{}", visit.place, label(index, item.get_ref()));
        let mut inside = Visit { text: visit.text, place, found: visit.found };
        change::of_item(name, items, index, &mut inside);
        if let DeValue::Table(table) = item.get_ref() {
            of_table(table, &mut inside);
        }
    }
}

/// What an entry of a list is called: its own name where it has one, else its number.
fn label(index: usize, item: &DeValue<'_>) -> String {
    let named =
        ["id", "purpose", "activity", "protocol", "stage"].iter().find_map(|key| item.get(*key)?.get_ref().as_str());
    named.map_or_else(|| index.to_string(), str::to_owned)
}

impl Visit<'_> {
    /// Adds a change that is told as what was and what is.
    pub fn replace(&mut self, range: Range<usize>, by: String) {
        let said = format!("{} -> {by}", &self.text[range.clone()]);
        self.found.push(Change { place: self.place.clone(), said, range, by });
    }

    /// Adds a change in words.
    pub fn say(&mut self, said: impl Into<String>, range: Range<usize>, by: impl Into<String>) {
        self.found.push(Change { place: self.place.clone(), said: said.into(), range, by: by.into() });
    }

    /// Takes an entry away, with the comma that parts it from its neighbour.
    pub fn drop(&mut self, range: Range<usize>) {
        let after = &self.text[range.end..];
        let gap = after.len() - after.trim_start_matches([' ', '\n']).len();
        let range = if after[gap..].starts_with(',') {
            range.start..range.end + gap + 1
        } else {
            let before = self.text[..range.start].trim_end_matches([' ', '\n']);
            if before.ends_with(',') { before.len() - 1..range.end } else { range }
        };
        self.say("dropped", range, "");
    }
}
