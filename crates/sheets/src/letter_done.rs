//! What was done in the operation, in the words of the trade.

use operative::{Procedure, Record, TendonEntry};

use crate::document::Fact;
use crate::letter_text::fact;

pub(crate) const NOT_RECORDED: &str = "not recorded";

/// What was found and done, as rows.
pub(crate) fn facts(record: &Record) -> Vec<Fact> {
    let operation = &record.operation;
    let mut facts = vec![fact("Operation", procedure(record))];
    if !operation.tendons.is_empty() {
        let tendons: Vec<String> = operation.tendons.iter().map(tendon).collect();
        facts.push(fact(if tendons.len() == 1 { "Tendon" } else { "Tendons" }, tendons.join("; ")));
        facts.push(fact("Tear", tear(record)));
    }
    if record.operation.safe_arcs.is_empty() {
        facts.push(fact("Also", format!("{}; safe arcs: none recorded", also(record))));
    } else {
        facts.push(fact("Also", also(record)));
        facts.push(fact("Safe arcs", safe_arcs(record)));
    }
    facts
}

fn procedure(record: &Record) -> String {
    let operation = &record.operation;
    format!(
        "{}, {}, revision: {}",
        record.procedure(),
        operation.approach.value,
        flag(operation.revision.map(|v| v.value))
    )
}

fn tendon(of: &TendonEntry) -> String {
    let word = |name: Option<&'static str>| name.unwrap_or(NOT_RECORDED);
    let part = of.part.map_or(String::new(), |part| format!(" ({})", part.value));
    let thickness = match of.thickness.map(|thickness| thickness.value) {
        Some(operative::Thickness::Full) => "full thickness",
        Some(operative::Thickness::PartialBursal) => "partial thickness, bursal side",
        Some(operative::Thickness::PartialArticular) => "partial thickness, articular side",
        None => "thickness not recorded",
    };
    format!(
        "{}{part}, {thickness}, repair: {}, tissue: {}, tension: {}",
        of.name.value,
        word(of.repair.map(|value| value.value.name())),
        word(of.tissue.map(|value| value.value.name())),
        word(of.tension.map(|value| value.value.name())),
    )
}

fn tear(record: &Record) -> String {
    let tear = &record.operation.tear;
    let length = |value: Option<quantity::Millimeters>| value.map_or(NOT_RECORDED.into(), |mm| format!("{mm} mm"));
    let patte = tear.retraction_patte.map_or(NOT_RECORDED.into(), |grade| grade.value.to_string());
    format!(
        "front to back {}, toward the middle {}, retraction {} (Patte {patte}), delamination: {}",
        length(tear.anteroposterior.map(|v| v.value)),
        length(tear.mediolateral.map(|v| v.value)),
        length(tear.retraction.map(|v| v.value)),
        flag(tear.delamination.map(|v| v.value)),
    )
}

fn also(record: &Record) -> String {
    let also = &record.operation.also;
    let word = |name: Option<&'static str>| name.unwrap_or(NOT_RECORDED);
    let mut parts = vec![
        format!("biceps: {}", word(also.biceps.map(|value| value.value.name()))),
        format!("labrum: {}", word(also.labrum.map(|value| value.value.name()))),
        format!("distal clavicle excision: {}", flag(also.distal_clavicle_excision.map(|v| v.value))),
        format!("subacromial decompression: {}", flag(also.subacromial_decompression.map(|v| v.value))),
    ];
    // Where it is the operation itself, it is told already.
    if record.procedure() != Procedure::CapsularRelease {
        parts.push(format!("capsular release: {}", flag(also.capsular_release.map(|v| v.value))));
    }
    if let Some(other) = also.other.as_ref().filter(|other| !other.value.is_empty()) {
        let other: Vec<&str> = other.value.iter().map(|text| text.value.as_str()).collect();
        parts.push(format!("other: {}", other.join(", ")));
    }
    parts.join("; ")
}

/// The arcs as the record has them; what they come to on which date stands in the box.
fn safe_arcs(record: &Record) -> String {
    let arcs: Vec<String> = record
        .operation
        .safe_arcs
        .iter()
        .map(|arc| {
            let seen = arc.position.map_or(String::new(), |position| format!(", seen {}", position.value));
            let until = arc.until.map_or("until active motion opens".into(), |until| {
                format!("until day {} (that day no longer)", until.value.count())
            });
            format!("{} ≤ {}°{seen}, binds every position {until}", arc.movement.value, arc.up_to.value)
        })
        .collect();
    arcs.join("; ")
}

pub(crate) const fn flag(value: Option<bool>) -> &'static str {
    match value {
        Some(true) => "yes",
        Some(false) => "no",
        None => NOT_RECORDED,
    }
}
