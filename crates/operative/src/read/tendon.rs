//! The torn tendons.

use diagnostic::{Diagnostic, Sink};
use document::Table;

use super::missing;
use crate::record::TendonEntry;
use crate::words::{Part, Repair, Tendon, Tension, Thickness, Tissue};

const MOST_ENTRIES: usize = 8; // not medical: keeps one slip from filling a page

/// The list of torn tendons; a rotator cuff repair needs one that says what was done.
pub(super) fn tendons(operation: &mut Table<'_>, cuff: bool, sink: &mut Sink) -> Vec<TendonEntry> {
    let near = operation.span;
    let before = sink.errors();
    let mut tables = operation.tables("tendon", sink);
    if sink.errors() > before {
        return Vec::new();
    }
    if tables.is_empty() && cuff {
        sink.push(
            Diagnostic::error("no-tendon", "a rotator cuff repair needs at least one tendon")
                .at(near)
                .help("add [[operation.tendon]] with name, thickness and repair"),
        );
        return Vec::new();
    }
    if tables.len() > MOST_ENTRIES {
        let extra = tables[MOST_ENTRIES].span;
        sink.push(Diagnostic::error("too-many", "more tendons than the rotator cuff has").at(extra));
        tables.truncate(MOST_ENTRIES);
    }
    let before = sink.errors();
    let mut found: Vec<TendonEntry> = Vec::new();
    for (index, table) in (0..).zip(tables) {
        let Some(entry) = tendon(index, table, sink) else { continue };
        if let Some(first) = found.iter().find(|other| other.name.value == entry.name.value) {
            sink.push(
                Diagnostic::error("duplicate-tendon", format!("{} is listed twice", entry.name.value))
                    .at(entry.name.span)
                    .also(first.name.span, "first listed here")
                    .help("write one entry for each torn tendon"),
            );
            continue;
        }
        found.push(entry);
    }
    if cuff && sink.errors() == before {
        one_is_complete(&found, sink);
        one_is_repaired(&found, sink);
    }
    found
}

fn tendon(index: u8, mut table: Table<'_>, sink: &mut Sink) -> Option<TendonEntry> {
    let span = table.span;
    let name = table.require("name", sink).and_then(|value| value.word(Tendon::WORDS, sink));
    let thickness = table.word("thickness", Thickness::WORDS, sink);
    let part = table.word("part", Part::WORDS, sink);
    let repair = table.word("repair", Repair::WORDS, sink);
    let tissue = table.word("tissue", Tissue::WORDS, sink);
    let tension = table.word("tension", Tension::WORDS, sink);
    table.finish(sink);
    let name = name?;
    if let Some(part) = part
        && name.value != Tendon::Subscapularis
    {
        sink.push(
            Diagnostic::error(
                "contradiction",
                format!("`part` is told apart for the subscapularis only, not for the {}", name.value),
            )
            .at(part.span)
            .also(name.span, "this tendon")
            .help("take the line out, or mend the name"),
        );
    }
    Some(TendonEntry { index, span, name, thickness, part, repair, tissue, tension })
}

/// What an entry still needs to say what was done.
fn lacking(tendon: &TendonEntry) -> Vec<&'static str> {
    let mut keys = Vec::new();
    if tendon.thickness.is_none() {
        keys.push("thickness");
    }
    if tendon.repair.is_none() {
        keys.push("repair");
    }
    if tendon.part.is_none() && tendon.name.value == Tendon::Subscapularis {
        keys.push("part");
    }
    keys
}

/// At least one entry says everything; otherwise the nearest to it is asked for the rest.
fn one_is_complete(tendons: &[TendonEntry], sink: &mut Sink) {
    let Some(nearest) = tendons.iter().min_by_key(|tendon| lacking(tendon).len()) else { return };
    for key in lacking(nearest) {
        sink.push(missing(&nearest.path(key), nearest.name.span).help(format!("add `{key} = …` to this tendon")));
    }
}

fn one_is_repaired(tendons: &[TendonEntry], sink: &mut Sink) {
    let mut left = tendons.iter().filter(|tendon| !tendon.is_repaired());
    let Some(first) = left.next().filter(|_| !tendons.iter().any(TendonEntry::is_repaired)) else { return };
    let mut fault = Diagnostic::error("contradiction", "a rotator cuff repair in which no tendon was repaired")
        .at(first.repair.map_or(first.span, |repair| repair.span))
        .help("say how the repaired tendon was fixed");
    for other in left {
        fault = fault.also(other.repair.map_or(other.span, |repair| repair.span), "not repaired either");
    }
    sink.push(fault);
}
