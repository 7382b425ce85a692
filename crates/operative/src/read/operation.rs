//! The `[operation]` table.

use body::Side;
use diagnostic::{Diagnostic, Sink, Spanned};
use document::{Table, Value};

use super::{require_table, safe_arc, tear, tendon};
use crate::record::{Also, Operation};
use crate::words::{Approach, Biceps, Labrum, Procedure};

const MOST_OTHER: usize = 20; // not medical: a list that a person reads
const LONGEST_OTHER: usize = 200; // not medical: a line that a person reads

pub(super) fn operation(top: &mut Table<'_>, sink: &mut Sink) -> Option<Operation> {
    let needed = ["date", "side", "approach", "tear.anteroposterior"];
    let mut table = require_table(top, "operation", &needed, sink)?;
    let span = table.span;
    let date = table.require("date", sink).and_then(|value| value.date(sink));
    let side = table.require("side", sink).and_then(|value| value.word(Side::WORDS, sink));
    let approach = table.require("approach", sink).and_then(|value| value.word(Approach::WORDS, sink));
    let procedure = table.word("procedure", Procedure::WORDS, sink);
    let cuff = procedure.is_none_or(|procedure| procedure.value == Procedure::RotatorCuffRepair);
    let revision = table.boolean("revision", sink);
    let tear = tear::tear(&mut table, cuff, sink);
    let tendons = tendon::tendons(&mut table, cuff, sink);
    let fatty_infiltration = tear::fatty_infiltration(&mut table, sink);
    let also = also(&mut table, sink);
    let safe_arcs = safe_arc::safe_arcs(&mut table, sink);
    table.finish(sink);
    Some(Operation {
        span,
        date: date?,
        side: side?,
        approach: approach?,
        procedure,
        revision,
        tear,
        tendons,
        fatty_infiltration,
        also,
        safe_arcs,
    })
}

fn also(operation: &mut Table<'_>, sink: &mut Sink) -> Also {
    let Some(mut table) = operation.table("also", sink) else { return Also::default() };
    let found = Also {
        biceps: table.word("biceps", Biceps::WORDS, sink),
        labrum: table.word("labrum", Labrum::WORDS, sink),
        distal_clavicle_excision: table.boolean("distal_clavicle_excision", sink),
        subacromial_decompression: table.boolean("subacromial_decompression", sink),
        microfracture: table.boolean("microfracture", sink),
        capsular_release: table.boolean("capsular_release", sink),
        other: table.take("other").and_then(|value| other(value, sink)),
    };
    table.finish(sink);
    found
}

/// The list of what no shipped protocol covers; an empty list is a statement of its own.
fn other(value: Value<'_>, sink: &mut Sink) -> Option<Spanned<Vec<Spanned<String>>>> {
    let span = value.span;
    let items = value.list(sink)?;
    if items.len() > MOST_OTHER {
        sink.push(Diagnostic::error("too-many", format!("more than {MOST_OTHER} other procedures")).at(span));
        return None;
    }
    let mut found = Vec::new();
    for item in items {
        let Some(text) = item.text(sink) else { continue };
        if text.value.trim().is_empty() || text.value.chars().count() > LONGEST_OTHER {
            sink.push(
                Diagnostic::error("bad-text", "an other procedure needs a short name")
                    .at(text.span)
                    .help("name it in a few words, or write `other = []` where there was none"),
            );
        }
        found.push(text);
    }
    Some(Spanned::new(found, span))
}
