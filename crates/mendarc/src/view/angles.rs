//! Angles of an arm row by row, as a table, and what the rows come to.

mod summary;

use std::fmt::Write as _;

use body::{ClinicalReading, PlaneName, Side, Thoracohumeral, UsualMotion};

use crate::decimals::{write_column, write_count};
use crate::view::paint::wrapped;
pub use summary::{Extreme, Seen, Summary};

const WIDTH: usize = 104;

/// What stands above the rows.
pub fn head(name: &str, read_as: Side, side_is_given: bool) -> String {
    let whose = if side_is_given {
        format!("{read_as} arm")
    } else {
        "read as a right arm, because no side was given".to_owned()
    };
    let legend = "Degrees. Elevation against the trunk; plane: 0 to the side, 90 straight ahead; axial: the standard's \
                  last turn, inward positive; sum: both turns about the humerus together, which is the clinical turn, \
                  inward positive. A dash: near the side and straight up plane and axial are mostly noise, and with a \
                  sine of the elevation under 0.001 they have no value.";
    format!(
        "{name}: {whose}\n{}\n\n{:>9}{:>11}{:>9}{:>9}{:>9}   as a therapist says it\n",
        wrapped(legend, WIDTH, ""),
        "line",
        "elevation",
        "plane",
        "axial",
        "sum"
    )
}

/// One row with angles; `defect` where the matrix was off orthonormal.
pub fn write_row(
    text: &mut Vec<u8>,
    line: u64,
    angles: &Thoracohumeral,
    clinical: &ClinicalReading,
    defect: Option<f64>,
) {
    write_count(text, line, 9);
    write_column(text, angles.elevation().degrees(), 11);
    match (clinical.plane, angles.axial_rotation()) {
        (Some((_, plane)), Some(axial)) => {
            write_column(text, plane.degrees(), 9);
            write_column(text, axial.degrees(), 9);
        }
        _ => text.extend_from_slice("        –        –".as_bytes()),
    }
    write_column(text, angles.y_sum().degrees(), 9);
    text.extend_from_slice(b"   ");
    write_words(text, clinical);
    if defect.is_some() {
        text.extend_from_slice(b" (off orthonormal)");
    }
    text.push(b'\n');
}

/// One row without angles.
pub fn write_fault(text: &mut Vec<u8>, code: &str, line: u64) {
    write_count(text, line, 9);
    text.extend_from_slice("          –        –        –        –   no angles: ".as_bytes());
    text.extend_from_slice(code.as_bytes());
    text.push(b'\n');
}

/// "forward elevation 60, turned outward 25".
fn write_words(text: &mut Vec<u8>, clinical: &ClinicalReading) {
    let mut say = |words: &str| text.extend_from_slice(words.as_bytes());
    match (clinical.plane, clinical.movement()) {
        (_, Some((movement, angle))) => {
            say(movement.name());
            say(" ");
            whole(text, angle.degrees());
            if let Some((PlaneName::Across, _)) = clinical.plane {
                text.extend_from_slice(b" at elevation ");
                whole(text, clinical.elevation.degrees());
            }
        }
        (Some((name, _)), None) => {
            say("raised ");
            whole(text, clinical.elevation.degrees());
            text.push(b' ');
            text.extend_from_slice(name.name().as_bytes());
        }
        (None, None) if clinical.elevation < STRAIGHT_OUT => say("near the side"),
        (None, None) => say("nearly straight up"),
    }
    match clinical.outward.map(|outward| outward.degrees()) {
        None => text.extend_from_slice(b", the turn can't be told"),
        Some(outward) if outward.abs() < 0.5 => text.extend_from_slice(b", not turned"),
        Some(outward) => {
            text.extend_from_slice(if outward > 0.0 { b", turned outward " } else { b", turned inward " });
            whole(text, outward.abs());
        }
    }
}

const STRAIGHT_OUT: body::Angle = body::Angle::from_degrees(90.0);

fn whole(text: &mut Vec<u8>, degrees: f64) {
    write_count(text, (degrees.max(0.0) + 0.5) as u64, 0);
}

/// What the rows come to.
pub fn tail(summary: &Summary) -> String {
    let mut page = String::new();
    let _ = writeln!(page, "\nRows: {}. With angles: {}. Without: {}.", summary.rows, summary.read(), summary.refused);
    let _ = writeln!(
        page,
        "At the side or straight up, where only the sum has a value: {}. Off orthonormal: {}.",
        summary.undefined, summary.not_orthonormal
    );
    if let (Some(lowest), Some(highest)) = (summary.lowest, summary.highest) {
        let _ = writeln!(page, "Elevation from {lowest} to {highest}.");
    }
    if let (Some(inward), Some(outward)) = (summary.inmost, summary.outmost) {
        let _ = writeln!(page, "The turn, outward positive, from {inward} to {outward}.");
    }
    for seen in summary.movements() {
        let _ = writeln!(page, "\n{}: at most {}; rows: {}.", capital(seen.movement.name()), seen.most, seen.rows);
        if let Some(motion) = UsualMotion::of_shoulder(seen.movement) {
            usual(&mut page, motion);
        }
    }
    if summary.movements().next().is_some() {
        let text = "References disagree by age, sex and edition, and none is the right one: compare with the other arm \
                    first. No number here is a limit.";
        let _ = writeln!(page, "\n{}", wrapped(text, WIDTH, ""));
    }
    let caution = wording::Messages::english().text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "\n{}", wrapped(&caution, WIDTH, ""));
    page
}

/// What each reference gives for a motion.
fn usual(page: &mut String, motion: UsualMotion) {
    let (least, most) = motion.disagreement();
    let _ = writeln!(page, "  usual by one reference or another, {least} to {most}:");
    for entry in motion.references() {
        let _ = writeln!(page, "  {:>5}  {}", entry.number(), reference(entry));
    }
}

/// What may be shown of where a usual range comes from, and of whom it is.
pub fn reference(entry: &evidence::Entry) -> String {
    let source = entry.sources.first().and_then(|key| evidence::source(key)).map_or("no source", |s| s.shown_as);
    let note = entry.note.map_or_else(String::new, |note| format!(" ({note})"));
    let mark = entry.how_known.mark().map_or_else(String::new, |mark| format!(" [{mark}]"));
    match entry.what.split_once(", ") {
        // The columns of the handbook are sources of their own, and say whose they are.
        Some((_, whose)) if !source.contains(": ") => format!("{source}: {whose}{note}{mark}"),
        _ => format!("{source}{note}{mark}"),
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use body::{Angle, Shoulder};

    use super::*;

    fn row(shoulder: Shoulder) -> String {
        let angles = Thoracohumeral::of(shoulder.humerus());
        let mut text = Vec::new();
        write_row(&mut text, 7, &angles, &ClinicalReading::of(&angles), None);
        String::from_utf8(text).expect("a row is text")
    }

    #[test]
    fn a_row_says_what_a_therapist_says() {
        let degrees = Angle::from_degrees;
        let says = |shoulder: Shoulder, expected: &str| {
            let row = row(shoulder);
            assert_eq!(row.split("   ").last().map(str::trim), Some(expected), "{row}");
        };
        says(Shoulder::raised_ahead(degrees(60.0)), "forward elevation 60, not turned");
        says(
            Shoulder::raised_to_the_side(degrees(90.0)).turned_outward(degrees(80.0)),
            "abduction 90, turned outward 80",
        );
        says(
            Shoulder::raised(degrees(65.0), degrees(40.0)).turned_outward(degrees(-20.0)),
            "raised 40 between the scapular plane and straight ahead, turned inward 20",
        );
        says(Shoulder::HANGING.turned_outward(degrees(30.0)), "near the side, turned outward 30");
        says(Shoulder::raised_ahead(degrees(180.0)), "nearly straight up, the turn can't be told");
        let across = Shoulder::raised(degrees(120.0), degrees(90.0));
        says(across, "horizontal adduction 30 at elevation 90, not turned");
    }

    #[test]
    fn columns_stand_under_their_heads() {
        let head = head("a.csv", Side::Left, true);
        let heads = head.lines().last().expect("a line of heads");
        let row = row(Shoulder::raised_ahead(Angle::from_degrees(60.0)));
        for (name, value) in
            [("line", "7"), ("elevation", "60.0"), ("plane", "90.0"), ("axial", "-90.0"), ("sum", "0.0")]
        {
            let ends = heads.find(name).expect("there") + name.len();
            assert!(row[..ends].ends_with(value), "{name}: {row}");
        }
        let mut fault = Vec::new();
        write_fault(&mut fault, "cells-in-row", 7);
        let fault = String::from_utf8(fault).expect("text");
        let place = |text: &str, part: &str| text.split(part).next().map(|before| before.chars().count());
        assert_eq!(place(&fault, "no angles"), place(heads, "as a therapist"));
    }
}
