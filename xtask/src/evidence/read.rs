//! Reading one file of the evidence folder.

use diagnostic::{Diagnostic, FileId, Sink, Span, Spanned};
use evidence::{HowKnown, Reading, SourceKind, Unit};

use super::Table;

/// An entry as a person wrote it.
#[derive(Debug, Clone)]
pub struct Entry {
    /// The id.
    pub id: Spanned<String>,
    /// File name without its ending.
    pub topic: String,
    /// What the value is.
    pub what: String,
    /// The number, if any.
    pub value: Option<Spanned<f64>>,
    /// The lowest number of the sources.
    pub low: Option<Spanned<f64>>,
    /// The highest number of the sources.
    pub high: Option<Spanned<f64>>,
    /// The unit.
    pub unit: Unit,
    /// Spread as text.
    pub spread: Option<String>,
    /// How many.
    pub n: Option<Spanned<i64>>,
    /// Who.
    pub population: Option<String>,
    /// Design of the study.
    pub design: Option<String>,
    /// How known.
    pub how_known: Spanned<HowKnown>,
    /// Keys of sources.
    pub sources: Vec<Spanned<String>>,
    /// Where in the source.
    pub locator: Option<String>,
    /// One or two sentences.
    pub note: Option<String>,
    /// Parents of a derived value.
    pub derived_from: Vec<Spanned<String>>,
    /// How it was derived.
    pub formula: Option<String>,
    /// The place of the entry.
    pub span: Span,
}

/// A source as a person wrote it.
#[derive(Debug, Clone)]
pub struct Source {
    /// The key.
    pub key: Spanned<String>,
    /// What screens may show.
    pub shown_as: String,
    /// Authors or body.
    pub authors: Option<String>,
    /// Year.
    pub year: Option<i64>,
    /// Title.
    pub title: Option<String>,
    /// Journal.
    pub journal: Option<String>,
    /// Digital object identifier.
    pub doi: Option<String>,
    /// Address.
    pub address: Option<String>,
    /// Kind.
    pub kind: SourceKind,
    /// How much was read.
    pub how: Reading,
}

/// Reads one file into the table.
pub fn file(file: FileId, topic: &str, text: &str, table: &mut Table, sink: &mut Sink) {
    if text.trim().is_empty() {
        sink.push(Diagnostic::error("empty-file", format!("evidence/{topic}.toml is empty")));
        return;
    }
    let Some(mut document) = document::read(file, text, sink) else { return };
    if topic == "sources" {
        for item in document.tables("source", sink) {
            table.sources.extend(source(item, sink));
        }
    } else {
        for item in document.tables("entry", sink) {
            table.entries.extend(entry(item, topic, sink));
        }
    }
    document.finish(sink);
}

fn entry(mut item: document::Table<'_>, topic: &str, sink: &mut Sink) -> Option<Entry> {
    let span = item.span;
    let plain = |text: Option<Spanned<String>>| text.map(|text| text.value);
    let id = item.require("id", sink).and_then(|value| value.text(sink));
    let what = item.require("what", sink).and_then(|value| value.text(sink));
    let value = item.number("value", sink);
    let low = item.number("low", sink);
    let high = item.number("high", sink);
    let unit = item.require("unit", sink).and_then(|value| value.word(Unit::WORDS, sink));
    let spread = plain(item.text("spread", sink));
    let n = item.integer("n", sink);
    let population = plain(item.text("population", sink));
    let design = plain(item.text("design", sink));
    let how_known = item.require("how_known", sink).and_then(|value| value.word(HowKnown::WORDS, sink));
    let sources = item.texts("sources", sink);
    let locator = plain(item.text("locator", sink));
    let note = plain(item.text("note", sink));
    let (mut derived_from, mut formula) = (Vec::new(), None);
    if let Some(mut derived) = item.table("derived", sink) {
        derived_from = derived.texts("from", sink);
        formula = derived.require("formula", sink).and_then(|value| value.text(sink)).map(|formula| formula.value);
        derived.finish(sink);
    }
    item.finish(sink);
    Some(Entry {
        id: id?,
        topic: topic.to_owned(),
        what: what?.value,
        value,
        low,
        high,
        unit: unit?.value,
        spread,
        n,
        population,
        design,
        how_known: how_known?,
        sources,
        locator,
        note,
        derived_from,
        formula,
        span,
    })
}

fn source(mut item: document::Table<'_>, sink: &mut Sink) -> Option<Source> {
    let plain = |text: Option<Spanned<String>>| text.map(|text| text.value);
    let key = item.require("key", sink).and_then(|value| value.text(sink));
    let shown_as = item.require("shown_as", sink).and_then(|value| value.text(sink));
    let authors = plain(item.text("authors", sink));
    let year = item.integer("year", sink).map(|year| year.value);
    let title = plain(item.text("title", sink));
    let journal = plain(item.text("journal", sink));
    let doi = plain(item.text("doi", sink));
    let address = plain(item.text("address", sink));
    let kind = item.require("kind", sink).and_then(|value| value.word(SourceKind::WORDS, sink));
    let how = item.require("how", sink).and_then(|value| value.word(Reading::WORDS, sink));
    item.finish(sink);
    Some(Source {
        key: key?,
        shown_as: shown_as?.value,
        authors,
        year,
        title,
        journal,
        doi,
        address,
        kind: kind?.value,
        how: how?.value,
    })
}
