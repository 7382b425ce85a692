//! Keys, values and places as a surgeon says them.

use body::{Joint, Key, Position};
use diagnostic::{Diagnostic, Span};
use document::nearest;
use plan::{Allowed, Bound, Cell};

/// A key in words, such as "passive external rotation" or "active flexion of the elbow".
pub(super) fn of_key(key: Key) -> String {
    if key.is_load() {
        return key.movement.to_string();
    }
    let joint = if key.joint == Joint::Shoulder { String::new() } else { format!(" of the {}", key.joint) };
    let position = if key.position == Position::Any { String::new() } else { format!(" ({})", key.position) };
    format!("{} {}{joint}{position}", key.mode, key.movement)
}

/// A value in words.
pub(super) fn of_cell(cell: Cell, key: Key) -> String {
    match cell.allowed(key) {
        Allowed::No => "not allowed".into(),
        Allowed::Free => "free".into(),
        Allowed::UpTo(Bound::Angle(angle)) => format!("allowed up to {angle} degrees"),
        Allowed::UpTo(Bound::Load(load)) => format!("allowed up to {load} kg"),
        Allowed::UpTo(Bound::Effort(effort)) => format!("allowed up to {effort} percent effort"),
    }
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
