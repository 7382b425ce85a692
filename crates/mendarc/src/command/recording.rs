//! Reading a recording of a phone's sensors.

use std::fs::File;
use std::io::{BufRead, BufReader};
use std::path::Path;

use diagnostic::Diagnostic;
use motion::{Recording, Sample};

use crate::command::found::Found;
use crate::outcome::Outcome;

/// The columns of a recording; the unit of the angular rate is in their names.
const COLUMNS: [&str; 7] = ["t_s", "ax_m_s2", "ay_m_s2", "az_m_s2", "wx", "wy", "wz"];
const RADIANS: &str = "_rad_s";
const DEGREES: &str = "_deg_s";
const WANTED: &str = "the first line is t_s,ax_m_s2,ay_m_s2,az_m_s2,wx_rad_s,wy_rad_s,wz_rad_s; wx_deg_s and so on are \
                      read as well";
/// No line of numbers is longer.
const LONGEST_LINE: u64 = 4096;
/// Eleven hours at 100 Hz: no set is longer, and memory is bounded.
const MOST_ROWS: usize = 4_000_000;
/// So many faults of rows are told one by one; the others are counted.
const TOLD: usize = 10;

/// What a file held.
#[derive(Debug, Default)]
pub struct Read {
    pub recording: Recording,
    /// The time of every row, as far as it was a number.
    pub times: Vec<Option<f64>>,
    pub found: Vec<Found>,
}

/// Why no row was read.
#[derive(Debug)]
pub struct Refused {
    pub outcome: Outcome,
    pub found: Found,
}

/// Reads a recording row by row; faults of rows are told, and their rows left out.
pub fn read(path: &Path, name: &str) -> Result<Read, Refused> {
    let cannot = |error: &dyn std::fmt::Display| Refused {
        outcome: Outcome::CouldNotRun,
        found: Found::of_run(Diagnostic::error("cannot-read", format!("cannot read {name}: {error}"))),
    };
    let kind = std::fs::metadata(path).map_err(|error| cannot(&error))?;
    if kind.is_dir() {
        return Err(cannot(&"it is not a file"));
    }
    let file = File::open(path).map_err(|error| cannot(&error))?;
    of(BufReader::with_capacity(1 << 16, file), name, cannot)
}

fn of(mut text: impl BufRead, name: &str, cannot: impl Fn(&dyn std::fmt::Display) -> Refused) -> Result<Read, Refused> {
    let unusable = |found| Refused { outcome: Outcome::Findings, found };
    let mut line = Vec::new();
    let mut number = 0;
    let mut next = |line: &mut Vec<u8>| -> Result<bool, Refused> {
        line.clear();
        let taken = std::io::Read::take(&mut text, LONGEST_LINE).read_until(b'\n', line);
        number += 1;
        taken.map(|count| count > 0).map_err(|error| cannot(&error))
    };
    let is_there = next(&mut line)?;
    if !is_there || line.iter().all(u8::is_ascii_whitespace) {
        let fault = Diagnostic::error("empty-file", format!("{name} is empty, or its first line is"));
        return Err(unusable(Found::of_run(fault.help(WANTED))));
    }
    let columns = header(&line).map_err(unusable)?;
    let mut rows = Vec::new();
    let mut read = Read::default();
    let mut faults = 0_usize;
    let mut row = 1_u64;
    while next(&mut line)? {
        row += 1;
        if line.iter().all(u8::is_ascii_whitespace) {
            continue;
        }
        if rows.len() == MOST_ROWS {
            let message = format!("{name} has more than {MOST_ROWS} rows; what follows was not read");
            read.found
                .push(Found::of_run(Diagnostic::error("recording-too-long", message).help("record one set at a time")));
            break;
        }
        let values = numbers(&line, &columns);
        if let Err((column, why)) = &values {
            faults += 1;
            if faults <= TOLD {
                let fault = Diagnostic::warning("recording-row", why.clone()).help("the row is left out");
                read.found.push(Found::at(fault, row, *column));
            }
        }
        read.times.push(match &values {
            Ok(values) => Some(values[0]),
            Err(_) => first_number(&line, &columns),
        });
        rows.push(values.ok().map(|values| {
            let rate = [values[4], values[5], values[6]].map(|rate| rate * columns.rate_factor);
            Sample::new(values[0], [values[1], values[2], values[3]], rate)
        }));
    }
    if faults > TOLD {
        let message = format!("{} more rows are no readings", faults - TOLD);
        read.found.push(Found::of_run(Diagnostic::warning("more-findings", message)));
    }
    if rows.is_empty() {
        let fault = Diagnostic::error("recording-empty", format!("{name} has a first line and no reading"));
        return Err(unusable(Found::of_run(fault.help("each line after the first is one reading"))));
    }
    read.recording = Recording::of(rows);
    let left_out = read.recording.left_out();
    if left_out.backward > 0 {
        let message = format!("time runs backward in {} rows", left_out.backward);
        let fault = Diagnostic::warning("recording-time", message);
        read.found
            .push(Found::of_run(fault.help("these rows are left out; record the set again if it is more than a few")));
    }
    if left_out.repeated > 0 {
        let message = format!("{} rows have the time of the row above", left_out.repeated);
        read.found.push(Found::of_run(Diagnostic::warning("recording-time", message).help("they are left out")));
    }
    if left_out.unbelievable > faults {
        let message = format!("{} rows hold numbers that no sensor of a phone gives", left_out.unbelievable - faults);
        let fault = Diagnostic::warning("recording-row", message);
        read.found.push(Found::of_run(
            fault.help("angular rates are radians a second where the column says rad; times are seconds"),
        ));
    }
    Ok(read)
}

/// Where each column stands.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Columns {
    at: [usize; 7],
    count: usize,
    rate_factor: f64,
}

fn header(line: &[u8]) -> Result<Columns, Found> {
    let Ok(text) = std::str::from_utf8(line) else {
        let fault = Diagnostic::error("not-utf-8", "the first line is not UTF-8 text");
        return Err(Found::at(fault.help("save the file as UTF-8"), 1, 1));
    };
    let text = text.trim_start_matches('\u{feff}');
    let names: Vec<String> =
        text.split(',').map(|name| name.trim().trim_matches('"').trim().to_ascii_lowercase()).collect();
    let with =
        |unit: &str| COLUMNS.map(|name| if name.starts_with('w') { format!("{name}{unit}") } else { name.to_owned() });
    for (unit, rate_factor) in [(RADIANS, 1.0), (DEGREES, std::f64::consts::PI / 180.0)] {
        let places = with(unit).map(|wanted| {
            let mut found = names.iter().enumerate().filter(|(_, name)| **name == wanted).map(|(at, _)| at);
            found.next().filter(|_| found.next().is_none())
        });
        if let [Some(t), Some(ax), Some(ay), Some(az), Some(wx), Some(wy), Some(wz)] = places {
            return Ok(Columns { at: [t, ax, ay, az, wx, wy, wz], count: names.len(), rate_factor });
        }
    }
    let fault = Diagnostic::error("recording-header", "the first line does not name the seven columns, each once");
    let fault = fault.help(WANTED);
    let fault = match () {
        () if text.contains([';', '\t']) => fault.help("separate columns with commas, and write decimals with a point"),
        () if names.iter().all(|name| name.parse::<f64>().is_ok()) => {
            fault.help("the first line is a reading already: put the names of the columns above it")
        }
        () => fault,
    };
    Err(Found::at(fault, 1, 1))
}

/// The seven numbers of a row, or the column of the fault and what it is.
fn numbers(line: &[u8], columns: &Columns) -> Result<[f64; 7], (usize, String)> {
    let Ok(text) = std::str::from_utf8(line) else { return Err((1, "the row is not UTF-8 text".into())) };
    let mut cells = [""; 64];
    let mut count = 0;
    for cell in text.trim_end().split(',') {
        if let Some(place) = cells.get_mut(count) {
            *place = cell.trim();
        }
        count += 1;
    }
    if count != columns.count {
        return Err((1, format!("the row has {count} cells, the first line {}", columns.count)));
    }
    let mut values = [0.0; 7];
    for (value, at) in values.iter_mut().zip(columns.at) {
        let cell = cells.get(at).copied().unwrap_or("");
        let column = || cells[..at.min(64)].iter().map(|cell| cell.chars().count() + 1).sum::<usize>() + 1;
        match cell.parse::<f64>() {
            Ok(number) if number.is_finite() => *value = number,
            Ok(_) => return Err((column(), "the cell holds no finite number".into())),
            Err(_) => return Err((column(), format!("`{}` is not a number", shown(cell)))),
        }
    }
    Ok(values)
}

/// The time of a row whose other cells may be wrong.
fn first_number(line: &[u8], columns: &Columns) -> Option<f64> {
    let text = std::str::from_utf8(line).ok()?;
    let number: f64 = text.trim_end().split(',').nth(columns.at[0])?.trim().parse().ok()?;
    number.is_finite().then_some(number)
}

/// A cell as it may be shown: short, and nothing that steers a terminal.
fn shown(cell: &str) -> String {
    cell.chars().take(24).map(|letter| if letter.is_control() { '\u{fffd}' } else { letter }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEADER: &str = "t_s,ax_m_s2,ay_m_s2,az_m_s2,wx_rad_s,wy_rad_s,wz_rad_s\n";

    fn reading(text: &str) -> Result<Read, Refused> {
        of(text.as_bytes(), "a.csv", |error| Refused {
            outcome: Outcome::CouldNotRun,
            found: Found::of_run(Diagnostic::error("cannot-read", error.to_string())),
        })
    }

    fn code(text: &str) -> &'static str {
        reading(text).err().map_or("", |refused| refused.found.diagnostic.code)
    }

    #[test]
    fn rows_are_read_in_either_unit_and_any_order_of_columns() {
        let row = "0.5,1,2,3,0.1,0.2,0.3\r\n";
        let sample = Sample::new(0.5, [1.0, 2.0, 3.0], [0.1, 0.2, 0.3]);
        let plain = reading(&format!("\u{feff}{HEADER}{row}\n\n")).expect("read");
        assert_eq!(plain.recording.samples(), [sample]);
        let turned = "wz_deg_s,t_s,ax_m_s2,ay_m_s2,az_m_s2,wx_deg_s,wy_deg_s,note\n180,0.5,1,2,3,90,0,held still\n";
        let read = reading(turned).expect("read");
        let pi = std::f64::consts::PI;
        assert_eq!(read.recording.samples(), [Sample::new(0.5, [1.0, 2.0, 3.0], [pi / 2.0, 0.0, pi])]);
    }

    #[test]
    fn files_that_are_no_recording_are_refused_with_their_code() {
        assert_eq!(code(""), "empty-file");
        assert_eq!(code("\n\n"), "empty-file");
        assert_eq!(code(HEADER), "recording-empty");
        assert_eq!(code("t,ax,ay,az,wx,wy,wz\n1,2,3,4,5,6,7\n"), "recording-header");
        assert_eq!(code("0,1,2,3,4,5,6\n"), "recording-header");
        assert_eq!(code(&HEADER.replace(',', ";")), "recording-header");
        assert_eq!(code(&HEADER.replace("wz_rad_s", "wz_deg_s")), "recording-header");
    }

    #[test]
    fn a_bad_row_keeps_its_place_and_is_told() {
        let text = format!(
            "{HEADER}0,0,0,9.8,0,0,0\n0.1,nan,0,9.8,0,0,0\n0.2,0,0\n0.3,x,0,9.8,0,0,0\n0.25,0,0,9.8,0,0,0\n0.4,0,0,9.8,0,0,0\n0.1,0,0,9.8,0,0,0\n"
        );
        let read = reading(&text).expect("read");
        assert_eq!(
            read.recording.places().iter().map(Option::is_some).collect::<Vec<_>>(),
            [true, false, false, false, true, true, false]
        );
        assert_eq!(read.times[1..4], [Some(0.1), Some(0.2), Some(0.3)]);
        let told: Vec<_> = read.found.iter().map(|found| (found.diagnostic.code, found.place)).collect();
        assert_eq!(
            told,
            [
                ("recording-row", Some((3, 5))),
                ("recording-row", Some((4, 1))),
                ("recording-row", Some((5, 5))),
                ("recording-time", None),
            ]
        );
        assert!(!read.found.iter().any(Found::is_error));
    }
}
