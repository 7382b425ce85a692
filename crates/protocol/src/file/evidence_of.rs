//! Every number of a protocol file stands behind an entry of the table of evidence.

use diagnostic::{Diagnostic, Sink, Span};
use document::{Table, nearest};
use evidence::{Entry, Unit};

/// Reads `evidence = [...]`; unknown ids and values from memory that would set a limit are faults.
pub(super) fn read(table: &mut Table<'_>, use_of: UseOf, sink: &mut Sink) -> Vec<&'static Entry> {
    let mut entries = Vec::new();
    for id in table.texts("evidence", sink) {
        match evidence::entry(&id.value) {
            Some(entry) if use_of == UseOf::Limit && !entry.how_known.may_set_limit() => sink.push(
                Diagnostic::error("memory-sets-limit", format!("`{}` is known from memory only", entry.id))
                    .at(id.span)
                    .label("a value from memory never sets a limit")
                    .help("read the source and enter the value as read, or mark it as the practice's own choice"),
            ),
            Some(entry) => entries.push(entry),
            None => {
                let mut fault =
                    Diagnostic::error("unknown-evidence", format!("`{}` is not in the table of evidence", id.value))
                        .at(id.span);
                if let Some(near) = nearest(&id.value, evidence::ENTRIES.iter().map(|entry| entry.id)) {
                    fault = fault.help(format!("did you mean \"{near}\"?"));
                }
                sink.push(fault);
            }
        }
    }
    entries
}

/// Whether a value only informs, or sets what a patient may do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum UseOf {
    /// It sets a limit, a start, a gate or the sling.
    Limit,
    /// It is a goal.
    Goal,
}

/// A number of a file, waiting to be found in the cited evidence.
#[derive(Debug, Clone, Copy)]
pub(super) struct Number {
    pub value: f64,
    pub unit: Unit,
    pub span: Span,
}

/// Demands that each number is the value of a cited entry, or lies in its range; 0 needs none.
pub(super) fn demand(numbers: &[Number], entries: &[&'static Entry], sink: &mut Sink) {
    for number in numbers {
        let days = matches!(number.unit, Unit::Day | Unit::Days);
        let held = number.value == 0.0
            || entries.iter().any(|entry| {
                entry.holds(number.value, number.unit)
                    || (days && (entry.holds(number.value, Unit::Day) || entry.holds(number.value, Unit::Days)))
            });
        if !held {
            sink.push(
                Diagnostic::error(
                    "number-without-evidence",
                    format!("no cited evidence holds {} {}", number.value, number.unit.name()),
                )
                .at(number.span)
                .label("this number has no source here")
                .help("cite the entry that holds it, or enter the number in the table of evidence with its source or mark"),
            );
        }
    }
}
