//! Keys of a protocol file: `keys`, `modes` and `position` spelled out.

use body::{ALL_KEYS, Joint, Key, Mode, Movement, Position};
use diagnostic::{Diagnostic, Sink, Spanned};
use document::{Table, nearest};

/// Reads `keys`, `modes` and `position` of a limit.
///
/// # Method
/// `shoulder/*` is every movement of the joint; `modes = "all"` is every mode the
/// movement has. A mode that one of several movements lacks is skipped for it;
/// a line that names no key at all is a fault.
pub(super) fn read(table: &mut Table<'_>, sink: &mut Sink) -> Vec<Key> {
    let position = table.word("position", Position::WORDS, sink).map_or(Position::Any, |word| word.value);
    let modes = read_modes(table, sink);
    read_in(table, position, &modes, sink)
}

/// Reads `keys` alone, in these modes and any position.
pub(super) fn read_in_modes(table: &mut Table<'_>, modes: &[Mode], sink: &mut Sink) -> Vec<Key> {
    read_in(table, Position::Any, modes, sink)
}

fn read_in(table: &mut Table<'_>, position: Position, modes: &[Mode], sink: &mut Sink) -> Vec<Key> {
    let written = table.texts("keys", sink);
    let mut keys = Vec::new();
    for text in &written {
        let Some((joint, movement)) = joint_and_movement(text, sink) else { continue };
        let before = keys.len();
        keys.extend(
            ALL_KEYS
                .iter()
                .filter(|key| key.joint == joint && movement.is_none_or(|movement| key.movement == movement))
                .filter(|key| modes.contains(&key.mode))
                .map(|key| key.in_position(position))
                .filter(|key| key.exists()),
        );
        if keys.len() == before && !modes.is_empty() {
            sink.push(
                Diagnostic::error("no-such-key", format!("`{}` has none of these modes", text.value)).at(text.span),
            );
        }
    }
    if written.is_empty() {
        sink.push(Diagnostic::error("missing-key", format!("`{}.keys` names nothing", table.path)).at(table.span));
    }
    keys.sort_unstable();
    keys.dedup();
    keys
}

/// Reads `modes = "all"` or a list of modes.
pub(super) fn read_modes(table: &mut Table<'_>, sink: &mut Sink) -> Vec<Mode> {
    let Some(value) = table.require("modes", sink) else { return Vec::new() };
    if value.is_text() {
        let word = value.word(&[("all", ())], sink);
        return word.map_or(Vec::new(), |_| Mode::ALL.to_vec());
    }
    let items = value.list(sink).unwrap_or_default();
    items.into_iter().filter_map(|item| item.word(Mode::WORDS, sink)).map(|mode| mode.value).collect()
}

fn joint_and_movement(text: &Spanned<String>, sink: &mut Sink) -> Option<(Joint, Option<Movement>)> {
    let (joint_name, movement_name) = text.value.split_once('/').unwrap_or((&text.value, ""));
    let Some(joint) = Joint::named(joint_name) else {
        sink.push(unknown("joint", joint_name, Joint::WORDS.iter().map(|(word, _)| *word), text));
        return None;
    };
    if movement_name == "*" {
        return Some((joint, None));
    }
    let of_joint =
        || Movement::WORDS.iter().filter(|(_, m)| ALL_KEYS.iter().any(|k| k.joint == joint && k.movement == *m));
    match of_joint().find(|(word, _)| *word == movement_name) {
        Some((_, movement)) => Some((joint, Some(*movement))),
        None => {
            let kind = if Movement::named(movement_name).is_some() { "movement of this joint" } else { "movement" };
            sink.push(unknown(kind, movement_name, of_joint().map(|(word, _)| *word), text));
            None
        }
    }
}

fn unknown<'w>(kind: &str, word: &str, words: impl Iterator<Item = &'w str>, text: &Spanned<String>) -> Diagnostic {
    let code = if kind == "joint" { "unknown-joint" } else { "unknown-movement" };
    let fault = Diagnostic::error(code, format!("`{word}` is not a {kind}")).at(text.span);
    match nearest(word, words) {
        Some(near) => fault.help(format!("did you mean \"{near}\"?")),
        None => fault,
    }
}

/// Reads a whole key written as one string.
pub(super) fn read_key(table: &mut Table<'_>, name: &'static str, sink: &mut Sink) -> Option<Spanned<Key>> {
    let text = table.text(name, sink)?;
    match Key::parse(&text.value) {
        Ok(key) => Some(text.map(|_| key)),
        Err(error) => {
            let mut fault = Diagnostic::error("no-such-key", format!("`{}` names no key", text.value)).at(text.span);
            if let Some(near) = nearest(&text.value, keys_as_text().iter().map(String::as_str)) {
                fault = fault.help(format!("did you mean \"{near}\"?"));
            } else if let body::KeyError::Word(kind, word) = error {
                fault = fault.fact(format!("`{word}` is not a {kind}"));
            }
            sink.push(fault);
            None
        }
    }
}

fn keys_as_text() -> Vec<String> {
    ALL_KEYS.iter().map(Key::to_string).collect()
}
