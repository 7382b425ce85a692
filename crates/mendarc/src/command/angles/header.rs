//! The first line of a file of matrices.

use std::io::Read;

use diagnostic::Diagnostic;

use super::lines::Lines;
use crate::command::found::Found;

/// The names of the columns, row by row.
pub const COLUMNS: [&str; 9] = ["r11", "r12", "r13", "r21", "r22", "r23", "r31", "r32", "r33"];

/// Why no row is read.
#[derive(Debug)]
pub enum Refusal {
    CannotRead(Diagnostic),
    Unusable(Found),
}

/// Reads the first line and makes sure that it names the nine columns in order.
pub fn read(lines: &mut Lines<impl Read>, name: &str) -> Result<(), Refusal> {
    let first = lines.first().map_err(|error| {
        Refusal::CannotRead(Diagnostic::error("cannot-read", format!("cannot read {name}: {error}")))
    })?;
    let Some(first) = first else {
        let fault = Diagnostic::error("empty-file", format!("{name} is empty, or its first line has no end"));
        return Err(Refusal::Unusable(Found::of_run(fault.help(WANTED))));
    };
    let Ok(first) = std::str::from_utf8(&first) else {
        let fault = Diagnostic::error("not-utf-8", format!("{name} is not UTF-8 text (first fault in line 1)"));
        return Err(Refusal::Unusable(Found::at(fault.help("save the file as UTF-8"), 1, 1)));
    };
    // An editor on one platform puts an invisible mark in front.
    let first = first.strip_prefix('\u{feff}').unwrap_or(first);
    let names: Vec<String> =
        first.split(',').map(|name| name.trim().trim_matches('"').trim().to_ascii_lowercase()).collect();
    if names == COLUMNS {
        return Ok(());
    }
    let fault = Diagnostic::error("matrix-header", "the first line does not name the nine columns in order");
    let column = 1 + names.iter().zip(COLUMNS).take_while(|(name, wanted)| name == wanted).count();
    let fault = fault.help(WANTED).help(guess(first, &names));
    let place = first.split(',').take(column - 1).map(|name| name.chars().count() + 1).sum::<usize>() + 1;
    Err(Refusal::Unusable(Found::at(fault, 1, place)))
}

const WANTED: &str = "the first line is r11,r12,r13,r21,r22,r23,r31,r32,r33; each line after it is one matrix";

/// The most likely way out.
fn guess(first: &str, names: &[String]) -> &'static str {
    let is_one_of = |name: &String| COLUMNS.contains(&name.as_str());
    if first.contains([';', '\t']) {
        return "separate columns with commas, and write decimals with a point";
    }
    if names.iter().all(|name| name.parse::<f64>().is_ok()) {
        return "the first line is a matrix already: put the names of the columns above it";
    }
    if names.len() == COLUMNS.len() && names.iter().all(is_one_of) {
        return "the names are there in another order: write matrices row by row, r12 is row 1, column 2";
    }
    if names.iter().filter(|name| is_one_of(name)).count() == COLUMNS.len() {
        return "cut the columns that are not part of the matrix";
    }
    "columns are the humerus's axes (forward, up, right) in the thorax's, written row by row"
}

#[cfg(test)]
mod tests {
    use super::*;

    fn refusal(text: &str) -> Option<(&'static str, String)> {
        match read(&mut Lines::new(text.as_bytes()), "a.csv") {
            Ok(()) => None,
            Err(Refusal::CannotRead(fault)) => Some((fault.code, String::new())),
            Err(Refusal::Unusable(found)) => {
                Some((found.diagnostic.code, found.diagnostic.helps.last().cloned().unwrap_or_default()))
            }
        }
    }

    #[test]
    fn dresses_of_the_right_line_are_accepted() {
        let bare = COLUMNS.join(",");
        for text in [
            bare.clone(),
            format!("{bare}\r\n1"),
            format!("\u{feff}{bare}\n"),
            bare.to_uppercase(),
            COLUMNS.join(" , "),
            format!("\"{}\"", COLUMNS.join("\",\"")),
        ] {
            assert_eq!(refusal(&text), None, "{text}");
        }
    }

    #[test]
    fn wrong_lines_are_refused_with_the_likely_way_out() {
        let bare = COLUMNS.join(",");
        let helps = |text: &str, part: &str| {
            let (code, help) = refusal(text).expect("refused");
            assert_eq!(code, "matrix-header", "{text}");
            assert!(help.contains(part), "{text}: {help}");
        };
        helps(&COLUMNS.join(";"), "commas");
        helps("1,0,0,0,1,0,0,0,1\n", "above it");
        helps("r11,r21,r31,r12,r22,r32,r13,r23,r33", "another order");
        helps(&format!("time,{bare}"), "cut the columns");
        helps("a,b,c", "forward, up, right");
        helps(&bare.replace(",r33", ""), "forward, up, right");
        assert_eq!(refusal("").map(|(code, _)| code), Some("empty-file"));
        assert_eq!(refusal("\n\n").map(|(code, _)| code), Some("empty-file"));
    }
}
