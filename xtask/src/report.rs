//! Diagnostics as plain lines.

use diagnostic::{Diagnostic, Sources};

/// Prints each diagnostic as `file:line:column: severity[code]: message`, with its helps.
pub fn print(found: &[Diagnostic], sources: &Sources) {
    for fault in found {
        let place = fault.span.and_then(|span| {
            let source = sources.get(span.file)?;
            let at = source.position(span.start);
            Some(format!("{}:{}:{}: ", source.name, at.line, at.column))
        });
        eprintln!("{}{}[{}]: {}", place.unwrap_or_default(), fault.severity.name(), fault.code, fault.message);
        for note in &fault.notes {
            eprintln!("  = note: {note}");
        }
        for help in &fault.helps {
            eprintln!("  = help: {help}");
        }
    }
}
