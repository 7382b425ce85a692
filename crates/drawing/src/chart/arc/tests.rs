//! An arc read back from what was drawn.

use proptest::prelude::*;

use super::super::reading::{Seen, read, sound};
use super::*;
use crate::color::Color;

fn degrees(ends: [f64; 2]) -> [Angle; 2] {
    ends.map(Angle::from_degrees)
}

fn bare() -> Arc {
    Arc {
        center_mm: [40.0, 40.0],
        radius_mm: 20.0,
        zero: Angle::from_degrees(-90.0),
        turn: Turning::Counterclockwise,
        whole: degrees([0.0, 180.0]),
        allowed: Some(degrees([0.0, 90.0])),
        goal: None,
        limit: None,
        measured: Vec::new(),
        notes: Vec::new(),
        zero_text: String::new(),
    }
}

fn over(arc: &Arc) -> Result<Seen, ChartError> {
    let mut svg = Svg::new(90.0, 90.0, "Arc", "An arc of a test.");
    arc.paint(&mut svg, [0.0, 0.0, 90.0, 90.0], |_| false)?;
    let seen = read(svg);
    sound(&seen);
    Ok(seen)
}

/// The angle of the movement at which a place was drawn.
fn back(arc: &Arc, place: [f64; 2], near: f64) -> f64 {
    let [x, y] = arc.center_mm;
    // Written anew: from the picture alone, with Y growing downward.
    let in_picture = (y - place[1]).atan2(place[0] - x).to_degrees();
    let sign = if arc.turn == Turning::Clockwise { -1.0 } else { 1.0 };
    let angle = (in_picture - arc.zero.degrees()) * sign;
    near + (angle - near + 180.0).rem_euclid(360.0) - 180.0
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    // A tenth of a millimeter at 20 mm is 0.3 degrees; the issue allows 1.
    #[test]
    fn every_angle_is_where_it_is_said_to_be(
        zero in -180.0f64..180.0,
        is_clockwise in any::<bool>(),
        low in -90.0f64..0.0,
        limit in 20.0f64..170.0,
        value in 0.0f64..170.0,
    ) {
        let arc = Arc {
            zero: Angle::from_degrees(zero),
            turn: if is_clockwise { Turning::Clockwise } else { Turning::Counterclockwise },
            whole: degrees([-90.0, 180.0]),
            allowed: Some(degrees([low, limit])),
            limit: Some((Angle::from_degrees(limit), String::new())),
            measured: vec![Measured {
                value: Angle::from_degrees(value),
                error: Some(Angle::from_degrees(5.0)),
                text: String::new(),
            }],
            ..bare()
        };
        let seen = over(&arc).expect("it can be drawn");
        let close = |place: [f64; 2], angle: f64| (back(&arc, place, angle) - angle).abs() < 0.4;
        let sector = seen.shapes.iter().find(|shape| shape.fill.is_some_and(|(_, opacity)| opacity < 1.0));
        let sector = &sector.expect("the allowed sector").places;
        prop_assert!(close(sector[1], low) && close(sector[sector.len() - 1], limit), "{sector:?}");
        // In between it turns the way it is said to, and stays on its circle.
        for pair in sector[1..].windows(2) {
            let at = pair.iter().map(|place| back(&arc, *place, (low + limit) / 2.0)).collect::<Vec<_>>();
            prop_assert!(at[0] < at[1], "{at:?}");
            let far = (pair[1][0] - 40.0).hypot(pair[1][1] - 40.0);
            prop_assert!((far - 20.0).abs() < 0.08, "{far}");
        }
        // Every bent piece bulges away from the joint: those of the edge lie on its circle all the way.
        let middles = seen.shapes.iter().filter(|shape| shape.fill.is_some()).flat_map(|shape| &shape.middles);
        for middle in middles {
            let far = (middle[0] - 40.0).hypot(middle[1] - 40.0);
            prop_assert!((far - 20.0).abs() < 0.15, "{far}");
        }
        let bar = seen.shapes.iter().find(|shape| shape.stroke.is_some_and(|(color, _)| color == Color::STOP));
        for place in &bar.expect("the limit").places {
            prop_assert!(close(*place, limit), "{place:?}");
        }
        let dot = seen.shapes.iter().find(|shape| shape.radius.is_some() && shape.fill == Some((Color::INK, 1.0)));
        prop_assert!(close(dot.expect("the value").places[0], value));
        let whisker = seen.shapes.iter().find(|shape| {
            shape.places.len() == 2 && close(shape.places[0], value - 5.0) && close(shape.places[1], value + 5.0)
        });
        prop_assert!(whisker.is_some(), "its error");
    }
}

#[test]
fn the_hatch_of_the_goal_stays_in_it() {
    let arc = Arc { goal: Some((degrees([60.0, 90.0]), String::new())), ..bare() };
    let seen = over(&arc).expect("it can be drawn");
    let hatch = seen.shapes.iter().find(|shape| shape.has_stroke(Color::MOVEMENT, 0.32)).expect("a hatch");
    assert!(hatch.places.len() >= 8, "{hatch:?}");
    for place in &hatch.places {
        let at = back(&arc, *place, 75.0);
        let far = (place[0] - 40.0).hypot(place[1] - 40.0);
        assert!((59.5..90.5).contains(&at) && (15.8..20.2).contains(&far), "{place:?} {at} {far}");
    }
}

#[test]
fn a_picture_never_allows_what_it_forbids() {
    let limit = |limit| Arc { limit: Some((Angle::from_degrees(limit), "stop".into())), ..bare() };
    assert!(over(&limit(90.0)).is_ok());
    assert_eq!(over(&limit(89.0)).err(), Some(ChartError::Outside { what: "allowed", value: 90.0 }));
}

#[test]
fn what_is_wrong_is_not_drawn() {
    let fault = |change: fn(&mut Arc)| {
        let mut arc = bare();
        change(&mut arc);
        over(&arc).err()
    };
    assert_eq!(fault(|_| ()), None);
    assert!(matches!(fault(|arc| arc.radius_mm = 0.0), Some(ChartError::NoRoom { .. })));
    assert_eq!(fault(|arc| arc.radius_mm = f64::NAN), Some(ChartError::NotFinite("radius")));
    assert_eq!(fault(|arc| arc.center_mm[1] = f64::INFINITY), Some(ChartError::NotFinite("place of the joint")));
    assert!(matches!(fault(|arc| arc.whole = degrees([0.0, 181.0])), Some(ChartError::Outside { .. })));
    assert!(matches!(fault(|arc| arc.whole = degrees([-91.0, 90.0])), Some(ChartError::Outside { .. })));
    assert_eq!(fault(|arc| arc.whole = degrees([90.0, 0.0])), Some(ChartError::Reversed("whole way")));
    assert_eq!(fault(|arc| arc.allowed = Some(degrees([50.0, 40.0]))), Some(ChartError::Reversed("allowed")));
    assert_eq!(fault(|arc| arc.allowed = Some(degrees([f64::NAN, 40.0]))), Some(ChartError::NotFinite("allowed")));
    let measured = |value: f64, error: f64| {
        let [value, error] = degrees([value, error]);
        let arc = Arc { measured: vec![Measured { value, error: Some(error), text: String::new() }], ..bare() };
        over(&arc).err()
    };
    assert_eq!(measured(180.0, 5.0), None);
    assert!(matches!(measured(180.1, 5.0), Some(ChartError::Outside { what: "measured", .. })));
    assert!(matches!(measured(90.0, -1.0), Some(ChartError::Outside { .. })));
    assert_eq!(measured(90.0, f64::NAN), Some(ChartError::NotFinite("error of a measured value")));
    // The edge of the sector would lie beyond the border: 20 mm from a joint 19 mm away from it.
    assert!(matches!(fault(|arc| arc.center_mm[1] = 19.0), Some(ChartError::NoRoom { .. })));
    assert_eq!(fault(|arc| arc.center_mm[1] = 24.0), None);
}

fn picture(arc: Arc, size_mm: [f64; 2]) -> ArcPicture {
    ArcPicture {
        title: "Arc".into(),
        description: "An arc of a test.".into(),
        size_mm,
        side: "RIGHT".into(),
        heading: "Elevation".into(),
        arc,
    }
}

#[test]
fn the_side_stands_in_every_picture() {
    let seen = read(picture(bare(), [50.0, 50.0]).draw().expect("it can be drawn"));
    assert!(seen.texts.iter().any(|text| text.text == "RIGHT"));
    let without = ArcPicture { side: " ".into(), ..picture(bare(), [50.0, 50.0]) };
    assert_eq!(without.draw().err(), Some(ChartError::NoText("side")));
    assert!(matches!(picture(bare(), [0.0, 50.0]).draw(), Err(ChartError::NoRoom { .. })));
}

#[test]
fn words_go_where_nothing_of_the_picture_lies() {
    let arc = Arc { limit: Some((Angle::from_degrees(90.0), "stop at 90°".into())), ..bare() };
    let word = |is_taken: fn(Place) -> bool| {
        let mut svg = Svg::new(90.0, 90.0, "Arc", "An arc of a test.");
        arc.paint(&mut svg, [0.0, 0.0, 90.0, 90.0], is_taken).expect("it can be drawn");
        let seen = read(svg);
        sound(&seen);
        seen.texts[0].space
    };
    // Level with the bar where nothing lies there; above it where a figure takes the place below 38 mm.
    let free = word(|_| false);
    assert!(free.top < 40.0 && 40.0 < free.bottom, "{free:?}");
    assert!(word(|place| place[1] > 38.0).bottom <= 38.0);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    // Up to five values, some on top of one another: at 75 mm there is always a place for every word.
    #[test]
    fn no_word_lies_on_another(
        zero in prop_oneof![Just(-90.0), Just(90.0), Just(0.0), -180.0f64..180.0],
        is_clockwise in any::<bool>(),
        limit in 30.0f64..170.0,
        values in proptest::collection::vec((0.0f64..170.0, 1.0f64..9.0), 0..5),
    ) {
        let measured = values.into_iter().map(|(value, error)| Measured {
            value: Angle::from_degrees(value),
            error: Some(Angle::from_degrees(error)),
            text: format!("{value:.0}° ± {error:.0}°"),
        });
        let arc = Arc {
            zero: Angle::from_degrees(zero),
            turn: if is_clockwise { Turning::Clockwise } else { Turning::Counterclockwise },
            allowed: Some(degrees([0.0, limit])),
            goal: Some((degrees([limit - 15.0, limit]), "goal".into())),
            limit: Some((Angle::from_degrees(limit), format!("stop at {limit:.0}°"))),
            measured: measured.collect(),
            zero_text: "0°".into(),
            ..bare()
        };
        let drawn = picture(arc, [75.0, 75.0]).draw();
        prop_assert!(drawn.is_ok(), "{drawn:?}");
        sound(&read(drawn.expect("checked")));
    }
}
