//! From text to a checked record.

mod arm;
mod operation;
mod safe_arc;
mod tear;
mod tendon;

use diagnostic::{Diagnostic, FileId, Sink, Span};
use document::Table;

use crate::check;
use crate::record::Record;

/// Reads an operative record.
///
/// # Errors
/// `None` when any error was pushed; every fault of the text is reported at
/// once, each with its place. Warnings and notes leave the record there. What
/// is not recorded is one note, `not-recorded`, with all the paths.
///
/// # Example
/// ```
/// use diagnostic::{FileId, Sink};
/// let mut sink = Sink::new();
/// assert!(operative::read(FileId(0), "[patient]\n", &mut sink).is_none());
/// assert!(sink.found().iter().all(|d| d.code == "missing-key"));
/// ```
pub fn read(file: FileId, text: &str, sink: &mut Sink) -> Option<Record> {
    let before = sink.errors();
    let mut top = document::read(file, text, sink)?;
    let patient = arm::patient(&mut top, sink);
    let operation = operation::operation(&mut top, sink);
    let other_arm = arm::other_arm(&mut top, sink);
    let risk = arm::risk(&mut top, sink);
    let surgeon = arm::surgeon(&mut top, sink);
    top.finish(sink);
    let record = Record { patient: patient?, operation: operation?, other_arm, risk, surgeon };
    check::record(&record, sink);
    if sink.errors() > before {
        return None;
    }
    check::not_recorded(&record, sink);
    Some(record)
}

/// Takes a table, or reports the keys that had to stand in it.
fn require_table<'s>(parent: &mut Table<'s>, key: &'static str, needed: &[&str], sink: &mut Sink) -> Option<Table<'s>> {
    let Some(value) = parent.take(key) else {
        let path = parent.path_of(key);
        for key in needed {
            let near = Span { end: parent.span.start, ..parent.span };
            sink.push(missing(&format!("{path}.{key}"), near).help(format!("add `{key} = …` under [{path}]")));
        }
        return None;
    };
    value.table(sink)
}

/// The diagnostic of a key that has to be there.
fn missing(path: &str, near: Span) -> Diagnostic {
    Diagnostic::error("missing-key", format!("`{path}` is missing")).at(near)
}
