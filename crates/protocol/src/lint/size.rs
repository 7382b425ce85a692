//! Whether a family fits the tables of a plan.

use diagnostic::{Diagnostic, Sink};
use operative::MAX_SAFE_ARCS;

use super::words::start_of;
use crate::Family;
use crate::compile::{days, lanes};

/// Rows and columns are counted in one byte, and each safe arc of a record may add a column.
const MOST_LINES: usize = u8::MAX as usize - MAX_SAFE_ARCS;
/// The rules that fired are one bit each.
const MOST_RULES: usize = u128::BITS as usize;
/// The selections that hold are one bit each.
const MOST_SELECTIONS: usize = u64::BITS as usize;
/// The protocols that cap a plan are one bit each.
const MOST_PROTOCOLS: usize = u8::BITS as usize;

/// Whether the family can be compiled; what is too large is a diagnostic.
pub(crate) fn fits(family: &Family, sink: &mut Sink) -> bool {
    let columns = days(family, &[]).len() - 1;
    if columns == 0 {
        sink.push(
            Diagnostic::error(
                "gap",
                format!("no protocol of the family `{}` reaches beyond the day of surgery", family.file.id),
            )
            .at(start_of(family.file.span))
            .help("give each protocol a horizon, such as horizon = \"day 365\""),
        );
        return false;
    }
    let counted = [
        ("rules", family.rules().count(), MOST_RULES),
        ("selections", family.file.selects.len(), MOST_SELECTIONS),
        ("protocols", family.protocols.len(), MOST_PROTOCOLS),
        ("days on which something changes", columns, MOST_LINES),
        ("movements in modes and positions", lanes(family).len(), MOST_LINES),
    ];
    let mut fits = true;
    for (what, count, most) in counted.into_iter().filter(|(_, count, most)| count > most) {
        fits = false;
        sink.push(
            Diagnostic::error(
                "family-too-large",
                format!("the family `{}` has {count} {what}; {most} fit", family.file.id),
            )
            .at(start_of(family.file.span))
            .help("split the family by operation, or let lines share their days"),
        );
    }
    fits
}
