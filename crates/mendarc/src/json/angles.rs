//! The document of `angles`, written as its rows stream by.

use std::io::Write as _;

use body::{ClinicalReading, NotTold, Side, Thoracohumeral, UsualMotion};
use schemars::JsonSchema;
use serde::Serialize;

use super::{Diagnostic, to_text, usual_cautions};
use crate::decimals::{write_angle, write_factor, write_whole};
use crate::view::angles::{Extreme, Seen, Summary, reference};

/// The schema of this document.
pub const SCHEMA: &str = "mendarc.angles/1";

/// Angles of the upper arm against the chest, one row for each matrix, in order.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Angles {
    pub schema: String,
    /// left or right as it was given; null where it was not.
    pub side: Option<&'static str>,
    /// The arm whose definitions were used: right where no side was given.
    pub read_as: &'static str,
    pub rows: Vec<Row>,
    pub summary: Totals,
    pub cautions: Vec<String>,
    pub diagnostics: Vec<Diagnostic>,
}

/// One matrix. A row that can't be read keeps its place, with nulls and `fault`.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Row {
    /// 0 to the side, 90 straight ahead; null with the arm at the side or straight up.
    pub plane_of_elevation_deg: Option<f64>,
    /// 0 to 180.
    pub elevation_deg: Option<f64>,
    /// The standard's last turn, inward positive; null as the plane.
    pub axial_rotation_deg: Option<f64>,
    /// Both turns about the humerus together, inward positive: the clinical turn.
    pub y_sum_deg: Option<f64>,
    /// Degrees of the sum for one degree of noise of the orientation: 1 at the side, 1.4 level; null straight up, where
    /// the sum says nothing.
    pub y_sum_noise_gain: Option<f64>,
    /// Whether plane and axial rotation have a value.
    pub defined: bool,
    /// Degrees of plane and axial rotation for one degree of noise of the orientation; null where they have no value.
    pub noise_gain: Option<f64>,
    /// Null where the row gives no angles.
    pub clinical: Option<Clinical>,
    /// How far the matrix is off orthonormal, where that is more than 0.001.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub frame_defect: Option<f64>,
    /// The code of the diagnostic that says why there are no angles.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fault: Option<String>,
    /// The line of the file, where there is a fault.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub line: Option<u64>,
}

/// What a therapist calls it.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Clinical {
    /// The movement whose name the position has; null between movements, near the side and nearly straight up.
    pub movement: Option<&'static str>,
    /// The angle that movement is measured by.
    pub movement_deg: Option<f64>,
    /// The plane in words.
    pub plane: Option<&'static str>,
    /// The position in which the turn is measured, where it has a name.
    pub position: Option<&'static str>,
    /// Outward positive, inward negative; null nearly straight up.
    pub external_rotation_deg: Option<f64>,
    /// What is left out, and why.
    pub not_told: Vec<&'static str>,
}

/// What the rows come to.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Totals {
    pub rows: u64,
    pub with_angles: u64,
    pub without_angles: u64,
    /// At the side or straight up.
    pub undefined: u64,
    pub not_orthonormal: u64,
    pub largest_defect: Option<f64>,
    pub largest_defect_line: Option<u64>,
    pub least_elevation: Option<Place>,
    pub greatest_elevation: Option<Place>,
    pub least_external_rotation: Option<Place>,
    pub greatest_external_rotation: Option<Place>,
    pub movements: Vec<MovementSeen>,
}

/// An angle and its line.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Place {
    pub deg: f64,
    pub line: u64,
}

/// A movement among the rows, and what references call usual for it; they disagree, and all are given.
#[derive(Debug, Serialize, JsonSchema)]
pub struct MovementSeen {
    pub movement: &'static str,
    pub rows: u64,
    pub greatest: Place,
    pub usual: Vec<Usual>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Usual {
    pub evidence: &'static str,
    pub deg: f64,
    pub reference: String,
}

/// What comes before the rows.
pub fn head(side: Option<Side>) -> String {
    let given = side.map_or_else(|| "null".to_owned(), |side| format!("\"{side}\""));
    let read_as = side.unwrap_or(Side::Right);
    format!("{{\"schema\":\"{SCHEMA}\",\"side\":{given},\"read_as\":\"{read_as}\",\"rows\":[")
}

/// What comes after the rows.
pub fn tail(summary: &Summary, diagnostics: Vec<Diagnostic>) -> String {
    format!(
        "\n],\"summary\":{},\"cautions\":{},\"diagnostics\":{}}}\n",
        to_text(&totals(summary)),
        to_text(&usual_cautions()),
        to_text(&diagnostics)
    )
}

#[derive(Debug, Serialize)]
struct Refusal<'a> {
    schema: &'a str,
    cautions: Vec<String>,
    diagnostics: &'a [Diagnostic],
}

/// The document of a run that read no row.
pub fn refusal(diagnostics: &[Diagnostic]) -> String {
    to_text(&Refusal { schema: SCHEMA, cautions: usual_cautions(), diagnostics })
}

/// A comma, and a row with angles; `defect` where the matrix was off orthonormal.
///
/// Written by hand, so that a million rows need neither values of their own nor a formatter; a test holds it against
/// [`Row`].
pub fn write_row(text: &mut Vec<u8>, angles: &Thoracohumeral, clinical: &ClinicalReading, defect: Option<f64>) {
    text.extend_from_slice(b",\n{\"plane_of_elevation_deg\":");
    angle_or_null(text, angles.plane_of_elevation());
    text.extend_from_slice(b",\"elevation_deg\":");
    write_angle(text, angles.elevation().degrees());
    text.extend_from_slice(b",\"axial_rotation_deg\":");
    angle_or_null(text, angles.axial_rotation());
    text.extend_from_slice(b",\"y_sum_deg\":");
    write_angle(text, angles.y_sum().degrees());
    text.extend_from_slice(b",\"y_sum_noise_gain\":");
    factor_or_null(text, sum_gain(angles));
    text.extend_from_slice(if angles.is_defined() { b",\"defined\":true" } else { b",\"defined\":false" });
    text.extend_from_slice(b",\"noise_gain\":");
    factor_or_null(text, angles.noise_gain());
    let movement = clinical.movement();
    text.extend_from_slice(b",\"clinical\":{\"movement\":");
    word_or_null(text, movement.map(|(movement, _)| movement.name()));
    text.extend_from_slice(b",\"movement_deg\":");
    angle_or_null(text, movement.map(|(_, angle)| angle));
    text.extend_from_slice(b",\"plane\":");
    word_or_null(text, clinical.plane.map(|(plane, _)| plane.name()));
    text.extend_from_slice(b",\"position\":");
    word_or_null(text, clinical.position().map(|position| position.name()));
    text.extend_from_slice(b",\"external_rotation_deg\":");
    angle_or_null(text, clinical.outward);
    text.extend_from_slice(b",\"not_told\":[");
    for (at, why) in clinical.not_told().enumerate() {
        if at > 0 {
            text.push(b',');
        }
        word_or_null(text, Some(why.name()));
    }
    text.extend_from_slice(b"]}");
    if let Some(defect) = defect {
        // Writing to memory does not fail.
        let _ = write!(text, ",\"frame_defect\":{defect:e}");
    }
    text.push(b'}');
}

/// A comma, and a row that can't be read.
pub fn write_fault(text: &mut Vec<u8>, code: &str, line: u64) {
    text.extend_from_slice(
        b",\n{\"plane_of_elevation_deg\":null,\"elevation_deg\":null,\"axial_rotation_deg\":null,\"y_sum_deg\":null,\
          \"y_sum_noise_gain\":null,\"defined\":false,\"noise_gain\":null,\"clinical\":null,\"fault\":",
    );
    word_or_null(text, Some(code));
    text.extend_from_slice(b",\"line\":");
    write_whole(text, line);
    text.push(b'}');
}

fn angle_or_null(text: &mut Vec<u8>, angle: Option<body::Angle>) {
    write_angle(text, angle.map_or(f64::NAN, |angle| angle.degrees()));
}

fn factor_or_null(text: &mut Vec<u8>, factor: Option<f64>) {
    match factor {
        Some(factor) => write_factor(text, factor),
        None => text.extend_from_slice(b"null"),
    }
}

/// Of the sum; none straight up, where the same border counts as for the two turns.
fn sum_gain(angles: &Thoracohumeral) -> Option<f64> {
    let is_up = !angles.is_defined() && angles.elevation() > LEVEL;
    (!is_up).then(|| angles.sum_noise_gain())
}

const LEVEL: body::Angle = body::Angle::from_degrees(90.0);

/// The program's own words: none holds a quote or a control character.
fn word_or_null(text: &mut Vec<u8>, word: Option<&str>) {
    match word {
        None => text.extend_from_slice(b"null"),
        Some(word) => {
            text.push(b'"');
            text.extend_from_slice(word.as_bytes());
            text.push(b'"');
        }
    }
}

fn totals(summary: &Summary) -> Totals {
    Totals {
        rows: summary.rows,
        with_angles: summary.read(),
        without_angles: summary.refused,
        undefined: summary.undefined,
        not_orthonormal: summary.not_orthonormal,
        largest_defect: summary.largest_defect.map(|(defect, _)| defect),
        largest_defect_line: summary.largest_defect.map(|(_, line)| line),
        least_elevation: summary.lowest.map(place),
        greatest_elevation: summary.highest.map(place),
        least_external_rotation: summary.inmost.map(place),
        greatest_external_rotation: summary.outmost.map(place),
        movements: summary.movements().map(movement).collect(),
    }
}

fn place(extreme: Extreme) -> Place {
    Place { deg: to_nine_decimals(extreme.angle), line: extreme.line }
}

/// As the rows have it.
fn to_nine_decimals(angle: body::Angle) -> f64 {
    (angle.degrees() * 1e9).round() / 1e9
}

fn to_three_decimals(factor: f64) -> f64 {
    (factor * 1000.0).round() / 1000.0
}

fn movement(seen: &Seen) -> MovementSeen {
    let motion = UsualMotion::of_shoulder(seen.movement);
    let entries = motion.into_iter().flat_map(UsualMotion::references);
    MovementSeen {
        movement: seen.movement.name(),
        rows: seen.rows,
        greatest: place(seen.most),
        usual: entries
            .map(|entry| Usual { evidence: entry.id, deg: entry.number(), reference: reference(entry) })
            .collect(),
    }
}

impl Row {
    /// The row of angles, as [`write_row`] writes it.
    pub fn of(angles: &Thoracohumeral, clinical: &ClinicalReading, defect: Option<f64>) -> Self {
        let movement = clinical.movement();
        Self {
            plane_of_elevation_deg: angles.plane_of_elevation().map(to_nine_decimals),
            elevation_deg: Some(to_nine_decimals(angles.elevation())),
            axial_rotation_deg: angles.axial_rotation().map(to_nine_decimals),
            y_sum_deg: Some(to_nine_decimals(angles.y_sum())),
            y_sum_noise_gain: sum_gain(angles).map(to_three_decimals),
            defined: angles.is_defined(),
            noise_gain: angles.noise_gain().map(to_three_decimals),
            clinical: Some(Clinical {
                movement: movement.map(|(movement, _)| movement.name()),
                movement_deg: movement.map(|(_, angle)| to_nine_decimals(angle)),
                plane: clinical.plane.map(|(plane, _)| plane.name()),
                position: clinical.position().map(|position| position.name()),
                external_rotation_deg: clinical.outward.map(to_nine_decimals),
                not_told: clinical.not_told().map(NotTold::name).collect(),
            }),
            frame_defect: defect,
            fault: None,
            line: None,
        }
    }
}

#[cfg(test)]
mod tests {
    use body::{Angle, Shoulder};
    use serde_json::Value;

    use super::*;

    fn read(text: &[u8]) -> Value {
        serde_json::from_slice(&text[1..]).expect("a comma and JSON")
    }

    #[track_caller]
    fn same(written: &Value, struct_says: &Value) {
        match (written, struct_says) {
            (Value::Object(a), Value::Object(b)) => {
                assert_eq!(a.keys().collect::<Vec<_>>(), b.keys().collect::<Vec<_>>());
                a.iter().zip(b).for_each(|((_, a), (_, b))| same(a, b));
            }
            (Value::Number(a), Value::Number(b)) => {
                let [a, b] = [a, b].map(|number| number.as_f64().expect("a number"));
                assert!((a - b).abs() < 2e-9 * b.abs().max(1.0), "{a} {b}");
            }
            _ => assert_eq!(written, struct_says),
        }
    }

    #[test]
    fn rows_written_by_hand_are_those_of_the_schema() {
        let degrees = Angle::from_degrees;
        for elevation in [0.0, 0.1, 15.0, 45.0, 90.0, 150.0, 175.0, 180.0] {
            for plane in [-170.0, -90.0, -45.0, 0.0, 35.0, 65.0, 90.0, 130.0] {
                for defect in [None, Some(0.002_5)] {
                    let held = Shoulder::raised(degrees(plane), degrees(elevation)).turned_outward(degrees(20.0));
                    let angles = Thoracohumeral::of(held.humerus());
                    let clinical = ClinicalReading::of(&angles);
                    let mut text = Vec::new();
                    write_row(&mut text, &angles, &clinical, defect);
                    let row = Row::of(&angles, &clinical, defect);
                    same(&read(&text), &serde_json::to_value(&row).expect("a row serializes"));
                }
            }
        }
        let mut text = Vec::new();
        write_fault(&mut text, "cells-in-row", 12);
        let row = Row {
            plane_of_elevation_deg: None,
            elevation_deg: None,
            axial_rotation_deg: None,
            y_sum_deg: None,
            y_sum_noise_gain: None,
            defined: false,
            noise_gain: None,
            clinical: None,
            frame_defect: None,
            fault: Some("cells-in-row".into()),
            line: Some(12),
        };
        same(&read(&text), &serde_json::to_value(&row).expect("a row serializes"));
    }

    #[test]
    fn head_and_tail_around_no_row_are_the_document() {
        for side in [None, Some(Side::Left), Some(Side::Right)] {
            let text = head(side) + &tail(&Summary::default(), Vec::new());
            let document = Angles {
                schema: SCHEMA.into(),
                side: side.map(Side::name),
                read_as: side.unwrap_or(Side::Right).name(),
                rows: Vec::new(),
                summary: totals(&Summary::default()),
                cautions: usual_cautions(),
                diagnostics: Vec::new(),
            };
            let written: Value = serde_json::from_str(&text).expect("one document");
            assert_eq!(written, serde_json::to_value(&document).expect("a document serializes"));
        }
    }

    #[test]
    fn words_need_no_escape() {
        let words = body::PlaneName::ALL.iter().map(|name| name.name());
        let words = words.chain(NotTold::ALL.iter().map(|name| name.name()));
        let words = words.chain(body::Movement::ALL.iter().map(|name| name.name()));
        for word in words.chain(body::Position::ALL.iter().map(|name| name.name())) {
            assert_eq!(serde_json::to_string(word).expect("text"), format!("\"{word}\""));
        }
    }
}
