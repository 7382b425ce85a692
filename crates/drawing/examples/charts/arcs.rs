//! Arcs. All data is invented.

use body::Angle;
use drawing::chart::{Arc, ArcPicture, Measured, Turning};

use super::Named;

pub fn all() -> Vec<Named> {
    vec![
        ("arc-elevation", elevation([62.0, 70.0]).draw()),
        ("arc-elevation-wide", ArcPicture { size_mm: [85.0, 62.0], ..elevation([62.0, 70.0]) }.draw()),
        ("arc-small", ArcPicture { size_mm: [46.0, 46.0], ..elevation([88.0, 89.0]) }.draw()),
        ("arc-rotation", rotation().draw()),
        ("arc-extension", extension().draw()),
        ("arc-nothing-allowed", nothing().draw()),
        ("arc-crowded", crowded().draw()),
    ]
}

fn degrees(ends: [f64; 2]) -> [Angle; 2] {
    ends.map(Angle::from_degrees)
}

fn measured(value: f64, error: Option<f64>, text: &str) -> Measured {
    Measured { value: Angle::from_degrees(value), error: error.map(Angle::from_degrees), text: text.to_owned() }
}

fn bare(zero: f64, turn: Turning, whole: [f64; 2]) -> Arc {
    Arc {
        center_mm: [0.0; 2],
        radius_mm: 1.0,
        zero: Angle::from_degrees(zero),
        turn,
        whole: degrees(whole),
        allowed: None,
        goal: None,
        limit: None,
        measured: Vec::new(),
        notes: vec![(Angle::from_degrees(whole[1]), format!("{}°", whole[1]))],
        zero_text: "0°".to_owned(),
    }
}

fn picture(side: &str, heading: &str, arc: Arc) -> ArcPicture {
    ArcPicture {
        title: heading.to_owned(),
        description: "Invented data.".to_owned(),
        size_mm: [58.0, 62.0],
        side: side.to_owned(),
        heading: heading.to_owned(),
        arc,
    }
}

fn elevation(values: [f64; 2]) -> ArcPicture {
    let arc = Arc {
        allowed: Some(degrees([0.0, 90.0])),
        goal: Some((degrees([75.0, 90.0]), "goal 75–90°".to_owned())),
        limit: Some((Angle::from_degrees(90.0), "stop at 90°".to_owned())),
        measured: vec![
            measured(values[0], Some(5.0), &format!("2 Mar: {}°\u{a0}±\u{a0}5°", values[0])),
            measured(values[1], Some(5.0), &format!("16 Mar: {}°\u{a0}±\u{a0}5°", values[1])),
        ],
        ..bare(-90.0, Turning::Counterclockwise, [0.0, 180.0])
    };
    picture("RIGHT", "Elevation, passive", arc)
}

fn rotation() -> ArcPicture {
    let arc = Arc {
        allowed: Some(degrees([-40.0, 30.0])),
        goal: Some((degrees([20.0, 30.0]), "goal 20–30°".to_owned())),
        limit: Some((Angle::from_degrees(30.0), "stop at 30°".to_owned())),
        measured: vec![measured(18.0, None, "18°")],
        notes: vec![(Angle::from_degrees(-40.0), "−40°".to_owned())],
        ..bare(90.0, Turning::Clockwise, [-80.0, 80.0])
    };
    picture("RIGHT", "External rotation, arm at the side, passive", arc)
}

fn extension() -> ArcPicture {
    let arc = Arc {
        allowed: Some(degrees([-20.0, 120.0])),
        limit: Some((Angle::from_degrees(120.0), "alto a 120°".to_owned())),
        measured: vec![measured(104.0, Some(4.0), "104°\u{a0}±\u{a0}4°")],
        ..bare(-90.0, Turning::Clockwise, [-50.0, 180.0])
    };
    picture("IZQUIERDO", "Elevación con ayuda", arc)
}

fn nothing() -> ArcPicture {
    let arc = bare(-90.0, Turning::Counterclockwise, [0.0, 180.0]);
    picture("LEFT", "Abduction, active: not yet", arc)
}

fn crowded() -> ArcPicture {
    let values = [(58.0, 8.0), (61.0, 5.0), (64.0, 5.0), (70.0, 3.0), (71.0, 5.0), (120.0, 5.0)];
    let arc = Arc {
        allowed: Some(degrees([0.0, 120.0])),
        goal: Some((degrees([60.0, 75.0]), "goal 60–75°".to_owned())),
        limit: Some((Angle::from_degrees(120.0), "stop at 120°".to_owned())),
        measured: values
            .into_iter()
            .map(|(value, error)| measured(value, Some(error), &format!("{value}°\u{a0}±\u{a0}{error}°")))
            .collect(),
        ..bare(-90.0, Turning::Counterclockwise, [-90.0, 180.0])
    };
    ArcPicture { size_mm: [85.0, 85.0], ..picture("RIGHT", "Six values close together", arc) }
}
