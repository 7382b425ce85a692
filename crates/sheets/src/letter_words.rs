//! Names of the record's keys and of movements as a surgeon says them, where a text carries the machine's.

use std::sync::LazyLock;

use body::{ALL_KEYS, Key, Position};

/// Parts of a record that a path may begin with.
const PARTS: [&str; 5] = ["patient.", "operation.", "other_arm.", "risk.", "surgeon."]; // not medical: how many there are

/// Every key in every position, with its words; "active" is the beginning of "active-assisted": the longer name first.
static KEYS: LazyLock<Vec<(String, String)>> = LazyLock::new(|| {
    let positions = |key: &Key| Position::ALL.iter().map(|&position| key.in_position(position)).collect::<Vec<_>>();
    let all = ALL_KEYS.iter().flat_map(positions);
    let mut keys: Vec<_> = all.map(|key| (key.to_string(), plan::words::of_key(key))).collect();
    keys.sort_by(|a, b| b.0.len().cmp(&a.0.len()).then_with(|| a.0.cmp(&b.0)));
    keys.dedup();
    keys
});

/// A text with every path of the record and every key in the words of the trade.
///
/// # Example
/// `operation.tendon[0].tissue` becomes "tissue of tendon 1", `shoulder/extension/any/active`
/// "active extension".
pub(crate) fn in_trade_words(text: &str) -> String {
    let mut told = with_paths(text);
    if told.contains('/') {
        for (name, words) in KEYS.iter() {
            if told.contains(name) {
                told = told.replace(name, words);
            }
        }
    }
    told
}

fn with_paths(text: &str) -> String {
    let is_sign = |sign: char| sign.is_ascii_alphanumeric() || ['_', '.', '[', ']'].contains(&sign);
    let mut told = String::new();
    let mut rest = text;
    while let Some(start) = rest.find(is_sign) {
        let end = rest[start..].find(|sign| !is_sign(sign)).map_or(rest.len(), |length| start + length);
        let word = rest[start..end].trim_end_matches('.');
        told.push_str(&rest[..start]);
        match PARTS.iter().any(|part| word.len() > part.len() && word.starts_with(part)) {
            true => told.push_str(&of_path(word)),
            false => told.push_str(word),
        }
        rest = &rest[start + word.len()..];
        // A full stop that ended the word stands in the rest.
        let stops = rest.len() - rest.trim_start_matches('.').len();
        told.push_str(&rest[..stops]);
        rest = &rest[stops..];
    }
    told.push_str(rest);
    told
}

/// One path of the record in words.
pub(crate) fn of_path(path: &str) -> String {
    let (before, last) = path.rsplit_once('.').unwrap_or(("", path));
    let name = match last {
        "bone_density_t_score" => "bone density (T-score)".into(),
        "retraction_patte" => "retraction (Patte)".into(),
        "anteroposterior" => "tear, front to back".into(),
        "mediolateral" => "tear, toward the middle".into(),
        other => other.replace('_', " "),
    };
    if let Some(number) = before.strip_prefix("operation.tendon[").and_then(|rest| rest.strip_suffix(']')) {
        let number = number.parse::<u16>().map_or_else(|_| number.to_owned(), |number| (number + 1).to_string());
        return format!("{name} of tendon {number}");
    }
    match before {
        "surgeon" => format!("the surgeon's answer: {name}"),
        "other_arm" => format!("other arm, {name}"),
        "operation.fatty_infiltration" => format!("fatty infiltration, {name}"),
        _ => name,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_is_told_in_words_and_the_rest_is_left() {
        let told = in_trade_words("asked (found: operation.tendon[0].tissue poor; risk.smoking yes). Done.");
        assert_eq!(told, "asked (found: tissue of tendon 1 poor; smoking yes). Done.");
        assert_eq!(in_trade_words("surgeon.stiff_shoulder"), "the surgeon's answer: stiff shoulder");
        assert_eq!(in_trade_words("the surgeon. An operation."), "the surgeon. An operation.");
    }

    #[test]
    fn a_key_is_told_in_words() {
        let told = in_trade_words(
            "shoulder/forward elevation/any/passive up to 90 degrees; elbow/flexion/any/active-assisted",
        );
        assert_eq!(told, "passive forward elevation up to 90 degrees; active-assisted flexion of the elbow");
        assert_eq!(in_trade_words("shoulder/abduction/at side/isometric"), "isometric abduction (at side)");
        assert_eq!(in_trade_words("whole arm/hand load/any/resisted"), "hand load");
    }
}
