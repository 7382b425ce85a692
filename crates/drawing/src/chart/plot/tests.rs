//! Charts read back from what was drawn.

use proptest::prelude::*;

use super::super::error::ChartError;
use super::super::reading::{Seen as Drawn, Shape, read, sound};
use super::super::tones::{HAIR, HEAVY, TINT};
use super::*;
use crate::color::Color;

fn chart(size: [f64; 2]) -> Chart {
    let x = Axis::weeks("weeks from surgery", 0.0, 84.0);
    Chart::new("Chart", "A chart of a test.", size, x, Axis::new("angle (degrees)").between(0.0, 180.0))
}

fn value(x: f64, y: f64) -> Reading {
    Reading { x, seen: Seen::Value { y, error: None } }
}

fn line(readings: Vec<Reading>) -> Series {
    Series::Line { name: "measured".into(), readings }
}

fn drawn(chart: &Chart) -> Drawn {
    let seen = read(chart.draw().expect("it can be drawn"));
    sound(&seen);
    seen
}

/// From the numbers written at an axis: the place of a value, by two of them.
fn by_numbers(seen: &Drawn, is_level: bool, times: f64) -> impl Fn(f64) -> f64 {
    let middle = |text: &super::super::reading::Text| {
        let space = text.space;
        if is_level { f64::midpoint(space.left, space.right) } else { space.bottom - 0.24 * 2.9 - 0.33 * 2.9 }
    };
    let numbers = seen.texts.iter().filter_map(|text| Some((text.text.parse::<f64>().ok()?, text)));
    let lowest = seen.texts.iter().map(|text| text.space.bottom);
    let lowest = lowest.fold(0.0, f64::max);
    assert!(lowest > 0.0);
    // Numbers of the level axis stand in the lowest row of numbers.
    let row = numbers.clone().map(|(_, text)| text.space.bottom).fold(0.0, f64::max);
    let own: Vec<(f64, f64)> = numbers
        .filter(|(_, text)| ((text.space.bottom - row).abs() < 0.1) == is_level)
        .map(|(number, text)| (number * times, middle(text)))
        .collect();
    let ((a, at_a), (b, at_b)) = (own[0], own[own.len() - 1]);
    move |value| at_a + (value - a) / (b - a) * (at_b - at_a)
}

fn markers(seen: &Drawn) -> Vec<&Shape> {
    // The sample of the legend stands below the axis.
    let floor = seen.texts.iter().filter(|text| text.text.parse::<f64>().is_ok()).map(|text| text.space.bottom);
    let floor = floor.fold(0.0, f64::max);
    seen.shapes.iter().filter(|shape| shape.radius.is_some() && shape.places[0][1] < floor).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    // Positions are written in tenths of a millimeter; numbers are centered on theirs to as much again.
    #[test]
    fn a_value_stands_where_the_numbers_say(
        days in proptest::collection::vec(0.0f64..84.0, 1..6),
        angles in proptest::collection::vec(0.0f64..180.0, 6),
        width in 70.0f64..180.0,
        height in 50.0f64..120.0,
    ) {
        let mut days = days;
        days.sort_by(f64::total_cmp);
        let readings: Vec<Reading> = days.iter().zip(&angles).map(|(x, y)| value(*x, *y)).collect();
        let seen = drawn(&chart([width, height]).with(line(readings.clone())));
        let (x, y) = (by_numbers(&seen, true, 7.0), by_numbers(&seen, false, 1.0));
        let markers = markers(&seen);
        prop_assert_eq!(markers.len(), readings.len());
        for (marker, (day, angle)) in markers.into_iter().zip(days.iter().zip(&angles)) {
            let [across, down] = marker.places[0];
            prop_assert!((across - x(*day)).abs() < 0.2, "{} {}", across, x(*day));
            prop_assert!((down - y(*angle)).abs() < 0.2, "{} {}", down, y(*angle));
        }
    }
}

#[test]
fn a_line_is_broken_where_nothing_was_measured() {
    let could_not = Reading { x: 30.0, seen: Seen::CouldNot };
    let readings = vec![value(7.0, 30.0), value(14.0, 40.0), could_not, value(42.0, 60.0), value(56.0, 80.0)];
    let words = CensoredWords { could_not: "could not".into(), ..CensoredWords::default() };
    let of = chart([90.0, 60.0]).with(line(readings)).saying(words);
    let seen = drawn(&of);
    let look = styles::READINGS[0].line;
    let runs: Vec<usize> = seen
        .shapes
        .iter()
        .filter(|shape| shape.has_stroke(look.color, look.width_mm) && shape.fill.is_none())
        .map(|shape| shape.places.len())
        .collect();
    // Two runs of two, and the sample in the legend.
    assert_eq!(runs, [2, 2, 2]);
    // What could not be done stands at no value: below the lowest number of the axis.
    let y = by_numbers(&seen, false, 1.0);
    let x = by_numbers(&seen, true, 7.0)(30.0);
    let cross = seen.shapes.iter().find(|shape| {
        shape.places.len() == 4 && shape.places.iter().all(|place| (place[0] - x).abs() < 1.5 && place[1] > y(0.0))
    });
    assert!(cross.is_some());
}

#[test]
fn a_limit_steps_on_its_day() {
    let steps = vec![Step { from: 0.0, y: 60.0 }, Step { from: 42.0, y: 90.0 }];
    let seen = drawn(&chart([120.0, 70.0]).with(Series::Steps { name: "limit".into(), steps, until: 84.0 }));
    let (x, y) = (by_numbers(&seen, true, 7.0), by_numbers(&seen, false, 1.0));
    let path = seen.shapes.iter().find(|shape| shape.has_stroke(Color::STOP, HEAVY * 0.8)).expect("the limit");
    let expected = [[0.0, 60.0], [42.0, 60.0], [42.0, 90.0], [84.0, 90.0]];
    for (place, [day, angle]) in path.places.iter().zip(expected) {
        assert!((place[0] - x(day)).abs() < 0.2 && (place[1] - y(angle)).abs() < 0.2, "{place:?} {day} {angle}");
    }
}

#[test]
fn the_grid_stands_at_the_numbers() {
    let seen = drawn(&chart([120.0, 70.0]).with(line(vec![value(7.0, 30.0)])));
    let y = by_numbers(&seen, false, 1.0);
    let grid = seen.shapes.iter().find(|shape| shape.has_stroke(Color::GHOST, HAIR)).expect("a grid");
    let rows: Vec<f64> = grid.places.iter().step_by(2).map(|place| place[1]).collect();
    assert_eq!(rows.len(), 9);
    for (row, angle) in rows.into_iter().zip((1..=9).map(|index| f64::from(index) * 20.0)) {
        assert!((row - y(angle)).abs() < 0.2, "{row} {angle}");
    }
}

#[test]
fn what_is_wrong_is_not_drawn() {
    let fault = |series: Series| chart([90.0, 60.0]).with(series).draw().err();
    let of = |y| fault(line(vec![value(7.0, y)]));
    assert_eq!(of(30.0), None);
    assert_eq!(of(f64::NAN), Some(ChartError::NotFinite("upright axis")));
    assert_eq!(of(f64::INFINITY), Some(ChartError::NotFinite("upright axis")));
    assert_eq!(of(1e300), Some(ChartError::TooLarge("upright axis")));
    assert_eq!(of(180.5), Some(ChartError::Outside { what: "upright axis", value: 180.5 }));
    assert_eq!(fault(line(vec![])), Some(ChartError::Empty("readings")));
    assert_eq!(fault(line(vec![value(9.0, 3.0), value(8.0, 3.0)])), Some(ChartError::NotInOrder("line")));
    assert_eq!(fault(line(vec![value(f64::NAN, 3.0), value(8.0, 3.0)])), Some(ChartError::NotFinite("line")));
    let spread = |x, low| Spread { x, low, middle: 50.0, high: 60.0 };
    let band = |course| fault(Series::Band { name: "b".into(), course });
    assert_eq!(band(vec![spread(0.0, 40.0)]), Some(ChartError::OnePlace("band")));
    assert_eq!(band(vec![spread(0.0, 40.0), spread(1.0, 51.0)]), Some(ChartError::Reversed("band")));
    let more = Reading { x: 7.0, seen: Seen::MoreThan(170.0) };
    let untold = ChartError::NoText("what is more than could be measured");
    assert_eq!(fault(line(vec![more])), Some(untold));
    assert_eq!(chart([90.0, 60.0]).draw().err(), Some(ChartError::Empty("chart")));
    for size in [[0.0, 60.0], [90.0, -1.0], [f64::NAN, 60.0], [21.0, 21.0]] {
        let of = chart(size).with(line(vec![value(7.0, 30.0)]));
        assert!(matches!(of.draw(), Err(ChartError::NoRoom { .. } | ChartError::NoRoomForText(_))), "{size:?}");
    }
    // One value is a picture where the axis says its range, and none where it would have to be made up.
    let free = Chart::new("t", "d", [90.0, 60.0], Axis::new("x").between(0.0, 9.0), Axis::new("y"));
    assert_eq!(free.with(line(vec![value(7.0, 30.0)])).draw().err(), Some(ChartError::NoRange("upright axis")));
}

#[test]
fn more_lines_than_can_be_told_apart_are_refused() {
    let named = |index: usize| Series::Line { name: format!("line {index}"), readings: vec![value(7.0, 30.0)] };
    let of = |count| (0..count).fold(chart([120.0, 70.0]), |chart, index| chart.with(named(index)));
    assert!(of(4).draw().is_ok());
    assert_eq!(of(5).draw().err(), Some(ChartError::TooManyLines { most: 4 }));
}

#[test]
fn small_multiples_share_their_axes() {
    let panel = |heading: &str, y| Panel { heading: heading.into(), series: vec![line(vec![value(42.0, y)])] };
    let of = Multiples {
        title: "Charts".into(),
        description: "Charts of a test.".into(),
        size_mm: [150.0, 90.0],
        columns: 2,
        x: Axis::weeks("weeks", 0.0, 84.0),
        y: Axis::new("degrees"),
        panels: vec![panel("One", 10.0), panel("Two", 100.0), panel("Three", 10.0)],
        censored: CensoredWords::default(),
    };
    let seen = read(of.draw().expect("it can be drawn"));
    sound(&seen);
    let markers = seen.shapes.iter().filter(|shape| shape.radius.is_some()).map(|shape| shape.places[0]);
    let places: Vec<[f64; 2]> = markers.collect();
    // The same day in the same column, and the same height in the same row only for the same value.
    assert!((places[0][0] - places[2][0]).abs() < 0.06, "{places:?}");
    assert!(places[1][1] < places[0][1] - 5.0, "{places:?}");
    // One name, one entry in the legend.
    assert_eq!(seen.texts.iter().filter(|text| text.text == "measured").count(), 1);
}

#[test]
fn a_band_holds_its_course() {
    let spread = |x, low, middle, high| Spread { x, low, middle, high };
    let course = vec![spread(0.0, 20.0, 40.0, 60.0), spread(84.0, 100.0, 130.0, 150.0)];
    let seen = drawn(&chart([120.0, 70.0]).with(Series::Band { name: "expected".into(), course }));
    let y = by_numbers(&seen, false, 1.0);
    let band = seen.shapes.iter().find(|shape| shape.fill == Some((TINT, 1.0))).expect("the band");
    for (place, angle) in band.places.iter().zip([60.0, 150.0, 100.0, 20.0]) {
        assert!((place[1] - y(angle)).abs() < 0.2, "{place:?} {angle}");
    }
}

fn words() -> impl Strategy<Value = String> {
    proptest::collection::vec("[A-Za-zÁé]{1,8}", 1..4).prop_map(|words| words.join(" "))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    // Up to three lines across each way and four names: at this size there is always room.
    #[test]
    fn no_word_lies_on_another(
        width in 100.0f64..180.0,
        height in 90.0f64..140.0,
        level in proptest::collection::vec((words(), 0.0f64..180.0), 0..4),
        upright in proptest::collection::vec((words(), 0.0f64..84.0), 0..4),
        names in proptest::collection::btree_set(words(), 1..5),
    ) {
        let mut of = chart([width, height]);
        for (text, y) in level {
            of = of.with(Series::Reference { text, at: Bound::Y(y) });
        }
        for (text, x) in upright {
            of = of.with(Series::Reference { text, at: Bound::X(x) });
        }
        for name in names {
            of = of.with(Series::Points { name, readings: vec![value(30.0, 60.0)] });
        }
        drawn(&of);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    #[test]
    fn numbers_stand_apart_on_any_axis(
        days in 20.0f64..3000.0,
        top in 0.5f64..100_000.0,
        width in 60.0f64..180.0,
        height in 45.0f64..120.0,
        places in 0usize..3,
    ) {
        let y = Axis { numbering: Numbering::new(move |number| format!("{number:.places$}")), ..Axis::new("y") };
        let x = Axis::weeks("weeks", 0.0, days);
        let of = Chart::new("Chart", "A chart of a test.", [width, height], x, y.between(-top, top));
        drawn(&of.with(Series::Points { name: String::new(), readings: vec![value(3.0, top / 3.0)] }));
    }
}

#[test]
fn texts_at_the_floor_and_at_the_top_make_room_for_one_another() {
    for places in [[0.0, 1.0, 2.0], [178.0, 179.0, 180.0]] {
        let of = places.into_iter().fold(chart([90.0, 60.0]), |chart, y| {
            chart.with(Series::Reference { text: format!("at {y}"), at: Bound::Y(y) })
        });
        let seen = drawn(&of);
        let rows: Vec<f64> = places
            .map(|y| {
                let text = seen.texts.iter().find(|text| text.text == format!("at {y}")).expect("its text");
                text.space.top
            })
            .to_vec();
        // In the order of their lines, and none below the axis's own numbers.
        assert!(rows[0] > rows[1] && rows[1] > rows[2], "{rows:?}");
        let numbers = seen.texts.iter().filter(|text| text.text.parse::<f64>().is_ok());
        assert!(rows[0] < numbers.map(|text| text.space.top).fold(0.0, f64::max) - 1.0, "{rows:?}");
    }
}

#[test]
fn a_legend_goes_on_in_rows() {
    let named = |name: &str| Series::Points { name: name.into(), readings: vec![value(7.0, 30.0)] };
    let names = ["measured by the therapist", "measured with the telephone", "measured by the surgeon at the visit"];
    let seen = drawn(&names.into_iter().fold(chart([80.0, 70.0]), |chart, name| chart.with(named(name))));
    let rows: Vec<f64> = names
        .map(|name| {
            let text = seen.texts.iter().find(|text| text.text == name).expect("its name");
            text.space.top
        })
        .to_vec();
    assert!(rows[0] + 3.0 < rows[1] && rows[1] + 3.0 < rows[2], "{rows:?}");
}
