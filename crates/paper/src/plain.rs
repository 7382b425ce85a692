//! Texts made ready for print: nothing unprintable, no word wider than a page.

use serde_json::Value;

use crate::Failure;
use crate::fonts::Faces;

/// Words longer than this may be broken anywhere.
const LONGEST_WORD: usize = 24;

/// How many letters stand between two places where a long word may break.
const STRIDE: usize = 6;

/// Letters of a text shown in a message.
const SAMPLE: usize = 60;

/// A place where a line may end, without a sign.
const BREAK: char = '\u{200B}';

/// Makes every text of the document printable.
///
/// # Method
/// Line ends stay, other controls become a blank, and signs that only steer the
/// direction of writing are taken away: they could show a text in another order
/// than it stands in. Words longer than any real one get places to break at.
///
/// # Errors
/// [`Failure::NoGlyph`] for the first text with signs that the faces lack.
pub fn prepare(value: &mut Value) -> Result<(), Failure> {
    match value {
        Value::String(text) => {
            let plain: String = text.chars().filter_map(printable).collect();
            covered(&plain)?;
            *text = breakable(&plain);
            Ok(())
        }
        Value::Array(items) => items.iter_mut().try_for_each(prepare),
        Value::Object(fields) => fields.values_mut().try_for_each(prepare),
        Value::Null | Value::Bool(_) | Value::Number(_) => Ok(()),
    }
}

fn printable(character: char) -> Option<char> {
    match character {
        '\n' => Some('\n'),
        '\u{2028}' | '\u{2029}' => Some('\n'),
        '\u{200B}'..='\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{206F}' | '\u{FEFF}' | '\u{00AD}' => None,
        control if control.is_control() => Some(' '),
        other => Some(other),
    }
}

fn covered(text: &str) -> Result<(), Failure> {
    let mut characters: Vec<char> = Vec::new();
    for character in text.chars() {
        if character != '\n' && !Faces::get().hold(character) && !characters.contains(&character) {
            characters.push(character);
        }
    }
    if characters.is_empty() {
        return Ok(());
    }
    Err(Failure::NoGlyph { sample: text.chars().take(SAMPLE).collect(), characters })
}

fn breakable(text: &str) -> String {
    let mut broken = String::with_capacity(text.len());
    for word in text.split_inclusive(char::is_whitespace) {
        if word.chars().count() <= LONGEST_WORD {
            broken.push_str(word);
            continue;
        }
        // First after a hyphen, a slash or the like; inside of what is still too long, anywhere.
        for piece in word.split_inclusive(|sign: char| !sign.is_alphanumeric()) {
            if !broken.is_empty() && !broken.ends_with(char::is_whitespace) {
                broken.push(BREAK);
            }
            let is_long = piece.chars().count() > LONGEST_WORD;
            for (at, character) in piece.chars().enumerate() {
                if is_long && at > 0 && at % STRIDE == 0 {
                    broken.push(BREAK);
                }
                broken.push(character);
            }
        }
    }
    broken
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(text: &str, expect: &str) {
        let mut value = Value::from(text);
        prepare(&mut value).expect("covered");
        assert_eq!(value, Value::from(expect));
    }

    #[test]
    fn a_plain_text_stays() {
        check("Lift to 90° – no more.\nRest.", "Lift to 90° – no more.\nRest.");
        check("#strong[a] $x$ `b` \\ <c> @d //e", "#strong[a] $x$ `b` \\ <c> @d //e");
    }

    #[test]
    fn what_prints_nothing_goes() {
        check("a\tb\rc\u{0}d", "a b c d");
        check("90\u{202E}°05\u{202C}\u{200F}", "90°05");
        check("one\u{2028}two", "one\ntwo");
    }

    #[test]
    fn only_words_longer_than_real_ones_may_break_anywhere() {
        check(&"w".repeat(LONGEST_WORD), &"w".repeat(LONGEST_WORD));
        let long = "w".repeat(LONGEST_WORD + 1);
        let six = "w".repeat(STRIDE);
        check(&format!("a {long} b"), &format!("a {six}\u{200B}{six}\u{200B}{six}\u{200B}{six}\u{200B}w b"));
        check(
            "see (staged/assisted-external-rotation)",
            "see (\u{200B}staged/\u{200B}assisted-\u{200B}external-\u{200B}rotation)",
        );
    }

    #[test]
    fn a_sign_without_a_glyph_is_named() {
        let mut value = serde_json::json!({ "a": ["fine", "a 漢 and b 漢 字"] });
        let told = prepare(&mut value).expect_err("refused").to_string();
        assert_eq!(told, "no glyph for '漢' (U+6F22), '字' (U+5B57) in \"a 漢 and b 漢 字\"");
    }
}
