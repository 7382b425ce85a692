//! Numbers in clinical code: a medical number comes from the table of evidence.

use std::path::Path;

use super::{Fault, files};
use crate::lexer::{Kind, Token, tokens};

/// The crates whose numbers are medical until a line says otherwise.
const CLINICAL: &[&str] = &["body", "exercise", "plan", "operative", "protocol", "prescription", "proof"];

/// What a line says that holds another number; the reason follows.
const EXCUSE: &str = "// not medical:";

/// Numbers other than 0, 1 and 2 in clinical code that carry no reason.
pub fn faults(root: &Path) -> anyhow::Result<Vec<Fault>> {
    let mut faults = Vec::new();
    for name in CLINICAL {
        for (path, text) in files::under(root, &format!("crates/{name}/src"), &[".rs"])? {
            let is_test = path.ends_with("/tests.rs") || path.contains("/tests/");
            if !is_test {
                faults.extend(scan(&path, &text));
            }
        }
    }
    Ok(faults)
}

fn scan(path: &str, text: &str) -> Vec<Fault> {
    let lines: Vec<&str> = text.lines().collect();
    let tokens = tokens(text);
    let mut faults = Vec::new();
    let mut at = 0;
    while let Some(token) = tokens.get(at) {
        if starts_test_item(&tokens[at..]) {
            at = end_of_item(&tokens, at);
            continue;
        }
        let line = lines.get(token.line - 1).copied().unwrap_or_default();
        if token.kind == Kind::Number && !is_plain(token.text) && !is_place(&tokens, at) && !is_excused(line) {
            faults.push(Fault {
                path: path.to_owned(),
                line: token.line,
                code: "bare-number",
                message: format!(
                    "`{}` in clinical code: take it from the table of evidence, or end the line with `{EXCUSE} why`",
                    token.text
                ),
            });
        }
        at += 1;
    }
    faults
}

fn is_excused(line: &str) -> bool {
    line.split_once(EXCUSE).is_some_and(|(_, why)| !why.trim().is_empty())
}

/// Whether the number is 0, 1 or 2, however it is written.
fn is_plain(text: &str) -> bool {
    let mut digits = text.replace('_', "");
    for suffix in ["usize", "isize", "u128", "i128", "u16", "u32", "u64", "i16", "i32", "i64", "f32", "f64", "u8", "i8"]
    {
        if let Some(bare) = digits.strip_suffix(suffix) {
            digits = bare.to_owned();
            break;
        }
    }
    digits.parse::<f64>().is_ok_and(|number| [0.0, 1.0, 2.0].contains(&number))
}

/// Whether the number is a place and no amount: a field of a tuple, or the length of an array.
fn is_place(tokens: &[Token<'_>], at: usize) -> bool {
    let text = |index: Option<usize>| index.and_then(|index| tokens.get(index)).map_or("", |token| token.text);
    let before = text(at.checked_sub(1));
    let is_field = before == "." && text(at.checked_sub(2)) != ".";
    let is_length = before == ";" && text(Some(at + 1)) == "]";
    is_field || is_length
}

fn starts_test_item(tokens: &[Token<'_>]) -> bool {
    let wanted = ["#", "[", "cfg", "(", "test", ")", "]"];
    tokens.len() >= wanted.len() && tokens.iter().zip(wanted).all(|(token, wanted)| token.text == wanted)
}

/// The place after the item that starts here: after its braces, or after its semicolon.
fn end_of_item(tokens: &[Token<'_>], start: usize) -> usize {
    let mut depth = 0_usize;
    for (offset, token) in tokens[start..].iter().enumerate() {
        match token.text {
            "{" => depth += 1,
            "}" => {
                depth = depth.saturating_sub(1);
                if depth == 0 {
                    return start + offset + 1;
                }
            }
            ";" if depth == 0 => return start + offset + 1,
            _ => {}
        }
    }
    tokens.len()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(text: &str) -> Vec<String> {
        scan("a.rs", text)
            .into_iter()
            .map(|fault| format!("{} {}", fault.line, fault.message.split('`').nth(1).unwrap_or_default()))
            .collect()
    }

    #[test]
    fn a_bare_number_is_found_whatever_its_dress() {
        assert_eq!(found("let day = 42;"), ["1 42"]);
        assert_eq!(found("f(0x2A, 4_2u16, 4.2e1, 42.0_f64)"), ["1 0x2A", "1 4_2u16", "1 4.2e1", "1 42.0_f64"]);
        assert_eq!(found("0..42"), ["1 42"]);
        assert_eq!(found("x..=90"), ["1 90"]);
        assert_eq!(found("const A: i32 = -3;"), ["1 3"]);
        assert_eq!(found("match x { 14 => a, _ => b }"), ["1 14"]);
        assert_eq!(found("[7, 7; 3]"), ["1 7", "1 7"]);
    }

    #[test]
    fn zero_one_and_two_are_free() {
        assert_eq!(found("a(0, 1, 2, 0.0, 1.0_f64, 2u8, 0..2, 0x1)").as_slice(), ["1 0x1"]);
    }

    #[test]
    fn words_are_not_numbers() {
        assert_eq!(found("// 42\n/* 42 /* 43 */ 44 */\n/// day 42\n//! 42"), [""; 0]);
        assert_eq!(found(r###"a("42", b"42", r#"4"2"#, '4', b'4', "\"42", '\'')"###), [""; 0]);
        assert_eq!(found("Abduction90; u16::MAX; x_45; f64::from(a)"), [""; 0]);
        assert_eq!(found("fn f<'a4>(x: &'a4 str) -> [u8; 32] { x.12 }"), [""; 0]);
    }

    #[test]
    fn a_reason_on_the_line_excuses() {
        assert_eq!(found("let a = 60; // not medical: minutes of an hour"), [""; 0]);
        assert_eq!(found("let a = 60; // not medical:"), ["1 60"]);
        assert_eq!(found("let a = 60; // not medical: minutes\nlet b = 61;"), ["2 61"]);
    }

    #[test]
    fn tests_are_free_and_what_follows_them_is_not() {
        assert_eq!(found("#[cfg(test)]\nmod tests { fn f() { g(42); } }\nconst A: u8 = 7;"), ["3 7"]);
        assert_eq!(found("#[cfg(test)]\nmod tests;\nconst A: u8 = 7;"), ["3 7"]);
        assert_eq!(found("#[cfg(not(test))]\nmod a { const A: u8 = 7; }"), ["2 7"]);
    }
}
