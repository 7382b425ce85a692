//! A table of a TOML file, and the keys that were asked of it.

use diagnostic::{Diagnostic, FileId, Sink, Span, Spanned};
use jiff::civil::Date;
use quantity::QuantityError;
use toml::de::{DeTable, DeValue};

use crate::nearest;
use crate::value::{Value, list, place, shown};

/// One table, with the keys not yet asked for.
#[derive(Debug)]
pub struct Table<'s> {
    entries: Vec<Entry<'s>>,
    asked: Vec<&'static str>,
    /// Where the table stands.
    pub span: Span,
    /// The path from the top of the file; empty for the file itself.
    pub path: String,
}

#[derive(Debug)]
struct Entry<'s> {
    key: String,
    key_span: Span,
    value: Option<(DeValue<'s>, Span)>,
}

/// Parses a whole file; the first few syntax faults go to the sink.
///
/// # Errors
/// `None` with at least one diagnostic, `toml-syntax` or `no-such-date`, when the text is not TOML.
pub fn read<'s>(file: FileId, text: &'s str, sink: &mut Sink) -> Option<Table<'s>> {
    let whole = Span { file, start: 0, end: text.len() as u32 };
    let (table, errors) = DeTable::parse_recoverable(text);
    if errors.is_empty() {
        return Some(Table::new(table.into_inner(), whole, String::new()));
    }
    // One fault of syntax often makes a dozen: the first few are the useful ones.
    for error in errors.iter().take(3) {
        let span = error.span().map_or(whole, |range| place(whole, range));
        if let Some(date) = date_at(text, span) {
            sink.push(
                Diagnostic::error("no-such-date", format!("{date} is not in the calendar"))
                    .at(span)
                    .help("write a date as 2026-03-02: year, month, day"),
            );
            continue;
        }
        sink.push(
            Diagnostic::error("toml-syntax", error.message().lines().collect::<Vec<_>>().join("; "))
                .at(span)
                .help("examples of every file stand in the examples folder"),
        );
    }
    None
}

/// What looks like a date around a place that would not parse.
fn date_at(text: &str, span: Span) -> Option<&str> {
    let line_start = text.get(..span.start as usize)?.rfind('\n').map_or(0, |at| at + 1);
    let line = text.get(line_start..)?.lines().next()?;
    let value = line.split_once('=')?.1.trim();
    let date = value.split(|c: char| c == '#' || c.is_whitespace()).next()?;
    let shape = |c: char| if c.is_ascii_digit() { '0' } else { c };
    (date.chars().map(shape).collect::<String>() == "0000-00-00").then_some(date)
}

impl<'s> Table<'s> {
    pub(crate) fn new(table: DeTable<'s>, span: Span, path: String) -> Self {
        let mut entries: Vec<_> = table
            .into_iter()
            .map(|(key, value)| {
                let value_span = place(span, value.span());
                Entry {
                    key_span: place(span, key.span()),
                    key: key.into_inner().into_owned(),
                    value: Some((value.into_inner(), value_span)),
                }
            })
            .collect();
        entries.sort_by_key(|entry| entry.key_span.start);
        Self { entries, asked: Vec::new(), span, path }
    }

    /// The path of a key of this table.
    pub fn path_of(&self, key: &str) -> String {
        if self.path.is_empty() { key.to_owned() } else { format!("{}.{key}", self.path) }
    }

    /// The keys of the table that were not yet taken, in the order of the text.
    pub fn remaining(&self) -> Vec<Spanned<String>> {
        self.entries
            .iter()
            .filter(|entry| entry.value.is_some())
            .map(|entry| Spanned::new(entry.key.clone(), entry.key_span))
            .collect()
    }

    /// Takes the value of a key that is known only at run time.
    pub fn take_named(&mut self, key: &str) -> Option<Value<'s>> {
        let path = self.path_of(key);
        let entry = self.entries.iter_mut().find(|entry| entry.key == key)?;
        let (value, span) = entry.value.take()?;
        Some(Value { value, span, path })
    }

    /// Takes the value of a key, if it stands there.
    pub fn take(&mut self, key: &'static str) -> Option<Value<'s>> {
        self.asked.push(key);
        self.take_named(key)
    }

    /// Takes a key that must be there; its absence is a diagnostic `missing-key`.
    pub fn require(&mut self, key: &'static str, sink: &mut Sink) -> Option<Value<'s>> {
        let value = self.take(key);
        if value.is_none()
            && let Some(misspelt) = self.misspelt(key)
        {
            sink.push(
                self.unknown(&misspelt.value)
                    .at(misspelt.span)
                    .help(format!("did you mean `{key}`? it is needed here")),
            );
            return None;
        }
        if value.is_none() {
            sink.push(
                Diagnostic::error("missing-key", format!("`{}` is missing", self.path_of(key)))
                    .at(self.head())
                    .help(format!("add `{key} = …` here")),
            );
        }
        value
    }

    /// Takes out an untouched key that can only be a misspelling of `key`.
    fn misspelt(&mut self, key: &'static str) -> Option<Spanned<String>> {
        const SHORTEST: usize = 4;
        let untouched = self.entries.iter_mut().filter(|entry| entry.value.is_some());
        let entry = untouched
            .filter(|entry| key.len() >= SHORTEST && entry.key.len() >= SHORTEST)
            .find(|entry| nearest(&entry.key, [key]).is_some())?;
        entry.value = None;
        Some(Spanned::new(entry.key.clone(), entry.key_span))
    }

    fn unknown(&self, key: &str) -> Diagnostic {
        Diagnostic::error(
            "unknown-key",
            if self.path.is_empty() {
                format!("`{}` is not a key of this file", shown(key))
            } else {
                format!("`{}` is not a key of `{}`", shown(key), self.path)
            },
        )
    }

    /// The first line of the table, so that a diagnostic about what is missing stays short.
    fn head(&self) -> Span {
        let end = self.entries.first().map_or(self.span.end, |entry| entry.key_span.end);
        Span { end: end.clamp(self.span.start, self.span.end.max(self.span.start)), ..self.span }
    }

    /// Text, if the key stands there.
    pub fn text(&mut self, key: &'static str, sink: &mut Sink) -> Option<Spanned<String>> {
        self.take(key)?.text(sink)
    }

    /// True or false, if the key stands there.
    pub fn boolean(&mut self, key: &'static str, sink: &mut Sink) -> Option<Spanned<bool>> {
        self.take(key)?.boolean(sink)
    }

    /// A whole number, if the key stands there.
    pub fn integer(&mut self, key: &'static str, sink: &mut Sink) -> Option<Spanned<i64>> {
        self.take(key)?.integer(sink)
    }

    /// A number, if the key stands there.
    pub fn number(&mut self, key: &'static str, sink: &mut Sink) -> Option<Spanned<f64>> {
        self.take(key)?.number(sink)
    }

    /// A civil date, if the key stands there.
    pub fn date(&mut self, key: &'static str, sink: &mut Sink) -> Option<Spanned<Date>> {
        self.take(key)?.date(sink)
    }

    /// One of a few words, if the key stands there.
    pub fn word<T: Copy>(&mut self, key: &'static str, words: &[(&str, T)], sink: &mut Sink) -> Option<Spanned<T>> {
        self.take(key)?.word(words, sink)
    }

    /// A quantity such as `"18 mm"`, if the key stands there.
    pub fn quantity<Q>(
        &mut self,
        key: &'static str,
        name: &str,
        example: &str,
        parse: impl Fn(&str) -> Result<Q, QuantityError>,
        sink: &mut Sink,
    ) -> Option<Spanned<Q>> {
        self.take(key)?.quantity(name, example, parse, sink)
    }

    /// A table, if the key stands there.
    pub fn table(&mut self, key: &'static str, sink: &mut Sink) -> Option<Table<'s>> {
        self.take(key)?.table(sink)
    }

    /// A list of tables (`[[key]]`); empty where the key does not stand there.
    pub fn tables(&mut self, key: &'static str, sink: &mut Sink) -> Vec<Table<'s>> {
        let Some(value) = self.take(key) else { return Vec::new() };
        if value.is_table() {
            let (path, span) = (value.path.clone(), value.span);
            sink.push(
                Diagnostic::error("wrong-type", format!("`{path}` is one table, not a list of tables"))
                    .at(span)
                    .help(format!("write [[{path}]] with two brackets on each side")),
            );
            return Vec::new();
        }
        let items = value.list(sink).unwrap_or_default();
        items.into_iter().filter_map(|item| item.table(sink)).collect()
    }

    /// A list of texts; empty where the key does not stand there.
    pub fn texts(&mut self, key: &'static str, sink: &mut Sink) -> Vec<Spanned<String>> {
        let Some(value) = self.take(key) else { return Vec::new() };
        let items = value.list(sink).unwrap_or_default();
        items.into_iter().filter_map(|item| item.text(sink)).collect()
    }

    /// Reports every key that nobody asked for, with the nearest name that was.
    pub fn finish(self, sink: &mut Sink) {
        const MOST: usize = 20;
        let unknown = || self.entries.iter().filter(|entry| entry.value.is_some());
        let count = unknown().count();
        if count > MOST {
            sink.push(
                Diagnostic::error("unknown-key", format!("{} more keys are unknown here", count - MOST))
                    .at(self.head()),
            );
        }
        for entry in unknown().take(MOST) {
            let mut fault = self
                .unknown(&entry.key)
                .at(entry.key_span)
                .fact(format!("known keys: {}", list(self.asked.iter().copied())));
            if let Some(near) = nearest(&entry.key, self.asked.iter().copied()) {
                fault = fault.help(format!("did you mean `{near}`?"));
            }
            sink.push(fault);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quantity::Millimeters;

    fn check(text: &str, ask: impl Fn(&mut Table<'_>, &mut Sink)) -> Vec<String> {
        let mut sink = Sink::new();
        if let Some(mut table) = read(FileId(0), text, &mut sink) {
            ask(&mut table, &mut sink);
            table.finish(&mut sink);
        }
        sink.into_sorted()
            .iter()
            .map(|d| {
                let at = d.span.map_or("", |s| &text[s.start as usize..(s.end as usize).min(text.len())]);
                format!("{}: {} [{}] {}", d.code, d.message, at, d.helps.join(" / "))
            })
            .collect()
    }

    #[test]
    fn a_misspelt_key_is_told_the_nearest_name() {
        let found = check("aproach = 1", |table, sink| {
            table.text("approach", sink);
        });
        assert_eq!(found, ["unknown-key: `aproach` is not a key of this file [aproach] did you mean `approach`?"]);
    }

    #[test]
    fn a_length_without_a_unit_says_the_way_out() {
        let ask = |table: &mut Table<'_>, sink: &mut Sink| {
            table.quantity("size", "length", "18 mm", Millimeters::parse, sink);
        };
        assert_eq!(
            check("size = 23", ask),
            ["length-without-unit: length has no unit [23] if mm is meant, write \"23 mm\""]
        );
        assert_eq!(
            check("size = \"23\"", ask),
            ["length-without-unit: length has no unit [\"23\"] if mm is meant, write \"23 mm\""]
        );
    }

    #[test]
    fn dates_must_be_in_the_calendar() {
        let ask = |table: &mut Table<'_>, sink: &mut Sink| {
            table.date("date", sink);
        };
        assert!(check("date = 2026-02-28", ask).is_empty());
        assert_eq!(check("date = 2026-02-30", ask).len(), 1);
        assert_eq!(check("date = \"2026-02-28\"", ask).len(), 1);
        assert_eq!(check("date = 2026-02-28T10:00:00", ask).len(), 1);
    }

    #[test]
    fn a_misspelt_key_that_is_needed_is_one_fault() {
        let found = check("birth_dat = 1970-01-01", |table, sink| {
            table.require("birth_date", sink);
        });
        assert_eq!(
            found,
            [
                "unknown-key: `birth_dat` is not a key of this file [birth_dat] did you mean `birth_date`? it is needed here"
            ]
        );
    }

    #[test]
    fn a_date_that_is_not_in_the_calendar_is_called_that() {
        let codes = |text| {
            check(text, |_, _| {}).iter().map(|f| f.split(':').next().unwrap_or("").to_owned()).collect::<Vec<_>>()
        };
        assert_eq!(codes("date = 2026-02-30"), ["no-such-date"]);
        assert_eq!(codes("date = 2026-13-01 # a month"), ["no-such-date"]);
        assert_eq!(codes("date = 2026-"), ["toml-syntax"]);
    }

    #[test]
    fn deep_nesting_is_a_fault_and_not_a_crash() {
        let text = format!("a = {}{}", "[".repeat(100_000), "]".repeat(100_000));
        assert!(!check(&text, |_, _| {}).is_empty());
        let text = format!("a{} = 1", ".b".repeat(50_000));
        let _ = check(&text, |_, _| {});
    }
}
