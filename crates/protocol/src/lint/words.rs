//! Keys, values and places as a surgeon says them.

use diagnostic::{Diagnostic, Span};
use document::nearest;

pub use plan::words::{of_cell, of_key};

/// So many names stand in one message.
const NAMED: usize = 4; // not medical: keeps a message to one line

/// Names with commas; of many the first, and how many more.
pub(super) fn in_short(names: &[String]) -> String {
    let more = names.len().saturating_sub(NAMED);
    let named = names.iter().take(NAMED).map(String::as_str).collect::<Vec<_>>().join(", ");
    if more == 0 { named } else { format!("{named} and {more} more") }
}

/// The beginning of a long span, for what is missing from a whole file.
pub(super) fn start_of(span: Span) -> Span {
    Span { end: span.end.min(span.start + 1), ..span }
}

/// Adds the nearest name, where one is near.
pub(super) fn did_you_mean<'c>(
    fault: Diagnostic,
    word: &str,
    candidates: impl IntoIterator<Item = &'c str>,
) -> Diagnostic {
    match nearest(word, candidates) {
        Some(near) => fault.help(format!("did you mean \"{near}\"?")),
        None => fault,
    }
}
