//! What must hold of the table beyond its words.

use std::collections::HashMap;

use diagnostic::{Diagnostic, Sink, Span};
use evidence::{HowKnown, Reading, SourceKind, Unit};

use super::Table;
use super::read::Entry;

/// Reports every fault of the table.
pub fn check(table: &Table, sink: &mut Sink) {
    sources(table, sink);
    let mut first: HashMap<&str, Span> = HashMap::new();
    for entry in &table.entries {
        let id = entry.id.value.as_str();
        if !is_kebab(id) {
            sink.push(
                Diagnostic::error("id-not-kebab", format!("`{id}` is not kebab words"))
                    .at(entry.id.span)
                    .help("lower-case words and numbers joined by single hyphens, a letter first"),
            );
        }
        if let Some(earlier) = first.insert(id, entry.id.span) {
            sink.push(
                Diagnostic::error("duplicate-id", format!("`{id}` stands twice in the table"))
                    .at(entry.id.span)
                    .also(earlier, "first here"),
            );
        }
        numbers(entry, sink);
        references(entry, table, sink);
    }
    for entry in &table.entries {
        for parent in &entry.derived_from {
            if !first.contains_key(parent.value.as_str()) || parent.value == entry.id.value {
                let known = table.entries.iter().map(|entry| entry.id.value.as_str());
                sink.push(unknown("unknown-parent", "an id", &parent.value, parent.span, known));
            }
        }
    }
}

fn sources(table: &Table, sink: &mut Sink) {
    let mut first: HashMap<&str, Span> = HashMap::new();
    for source in &table.sources {
        let key = source.key.value.as_str();
        if let Some(earlier) = first.insert(key, source.key.span) {
            sink.push(
                Diagnostic::error("duplicate-key", format!("source `{key}` stands twice"))
                    .at(source.key.span)
                    .also(earlier, "first here"),
            );
        }
        let named = source.authors.iter().flat_map(|authors| authors.split([',', ';']));
        let private =
            matches!(source.kind, SourceKind::SurgeonsProtocol | SourceKind::Hospital | SourceKind::PublicBody);
        for name in named.map(str::trim).filter(|name| private && name.len() > 2) {
            if source.shown_as.to_lowercase().contains(&name.to_lowercase()) {
                sink.push(
                    Diagnostic::error("name-on-screen", format!("`{key}` would show the name `{name}`"))
                        .at(source.key.span)
                        .help("shown_as tells the kind of source, not whose it is"),
                );
            }
        }
    }
}

fn numbers(entry: &Entry, sink: &mut Sink) {
    let id = &entry.id.value;
    if let (Some(low), Some(high)) = (entry.low, entry.high)
        && low.value > high.value
    {
        sink.push(
            Diagnostic::error("range-upside-down", format!("`{id}` has its low above its high"))
                .at(low.span)
                .also(high.span, "the high"),
        );
    }
    let numbers = [entry.value, entry.low, entry.high];
    for number in numbers.into_iter().flatten() {
        let whole = number.value.fract() == 0.0 && number.value >= 0.0;
        if entry.unit == Unit::Day && !whole {
            sink.push(
                Diagnostic::error("day-not-whole", format!("`{id}` has a day that is no whole day"))
                    .at(number.span)
                    .help("a length of time, such as a mean, has the unit \"days\""),
            );
        }
    }
    if entry.unit == Unit::None && entry.value.is_none() && numbers.iter().any(Option::is_some) {
        sink.push(Diagnostic::error("range-without-unit", format!("`{id}` has a range and no unit")).at(entry.id.span));
    }
    if entry.n.is_some_and(|n| u32::try_from(n.value).is_err()) {
        sink.push(Diagnostic::error("n-out-of-range", format!("`{id}` has no such n")).at(entry.id.span));
    }
}

fn references(entry: &Entry, table: &Table, sink: &mut Sink) {
    let id = &entry.id.value;
    let how = entry.how_known.value;
    let without = matches!(how, HowKnown::CommonPractice | HowKnown::OwnChoice);
    if entry.sources.is_empty() && !without {
        sink.push(
            Diagnostic::error("reference-missing", format!("`{id}` has no source"))
                .at(entry.id.span)
                .help("name a source, or say \"common-practice\" or \"own-choice\""),
        );
    }
    let mut readings = Vec::new();
    for key in &entry.sources {
        match table.sources.iter().find(|source| source.key.value == key.value) {
            Some(source) => readings.push(source.how),
            None => {
                let known = table.sources.iter().map(|source| source.key.value.as_str());
                sink.push(unknown("unknown-source", "a key of sources.toml", &key.value, key.span, known));
            }
        }
    }
    let claims_reading = matches!(how, HowKnown::Read | HowKnown::Abstract);
    let unread = |how: &Reading| matches!(how, Reading::NotRead | Reading::SecondHand);
    if claims_reading && !readings.is_empty() && readings.iter().all(unread) {
        sink.push(
            Diagnostic::error(
                "nobody-read-it",
                format!("`{id}` says {}, but none of its sources was read", how.name()),
            )
            .at(entry.how_known.span)
            .help("cite the page that was read, or say \"memory\""),
        );
    } else if how == HowKnown::Read && !readings.is_empty() && !readings.contains(&Reading::Read) {
        sink.push(
            Diagnostic::error(
                "only-the-abstract",
                format!("`{id}` says read, but of its sources only the abstract was"),
            )
            .at(entry.how_known.span)
            .help("say \"abstract\""),
        );
    }
}

fn unknown<'k>(
    code: &'static str,
    what: &str,
    found: &str,
    span: Span,
    known: impl Iterator<Item = &'k str>,
) -> Diagnostic {
    let fault = Diagnostic::error(code, format!("`{found}` is not {what}")).at(span);
    match document::nearest(found, known) {
        Some(near) => fault.help(format!("did you mean `{near}`?")),
        None => fault,
    }
}

fn is_kebab(id: &str) -> bool {
    id.starts_with(|c: char| c.is_ascii_lowercase())
        && id
            .split('-')
            .all(|word| !word.is_empty() && word.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit()))
}
