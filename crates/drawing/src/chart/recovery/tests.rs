//! A recovery line read back from what was drawn.

use proptest::prelude::*;

use super::super::reading::{Seen, read, sound};
use super::super::tones::{HEAVY, LINE, TINT};
use super::*;
use crate::color::Color;

fn line(width: f64, until_day: u16) -> RecoveryLine {
    RecoveryLine::new("Line", "A line of a test.", width, until_day, "week")
}

fn event(day: u16, kind: EventKind, text: &str) -> Event {
    Event { day, kind, label: Label::new(text) }
}

fn drawn(line: &RecoveryLine) -> Seen {
    let seen = read(line.draw().expect("it can be drawn"));
    sound(&seen);
    seen
}

/// Where a day lands: the line is drawn from 2 mm to 2 mm before the right border, checked against its ends.
fn at(seen: &Seen, day: u16, until_day: u16) -> f64 {
    let axis = seen.shapes.iter().find(|shape| {
        shape.has_stroke(Color::INK, LINE) && shape.places.len() == 2 && shape.places[0][1] == shape.places[1][1]
    });
    let [from, to] = [axis.expect("the line").places[0][0], axis.expect("the line").places[1][0]];
    from + (to - from) * f64::from(day) / f64::from(until_day)
}

#[test]
fn weeks_stand_under_their_days() {
    let seen = drawn(&line(170.0, 182));
    let numbers: Vec<_> = seen.texts.iter().filter(|text| text.text.parse::<u16>().is_ok()).collect();
    assert!(numbers.len() >= 12, "{numbers:?}");
    for number in numbers {
        let week: u16 = number.text.parse().expect("a number");
        let middle = f64::midpoint(number.space.left, number.space.right);
        // The last number may be pushed in from the border by half of its width.
        let slack = if week == 26 { 1.5 } else { 0.1 };
        assert!((middle - at(&seen, week * 7, 182)).abs() < slack, "{number:?}");
    }
}

#[test]
fn spans_and_today_stand_at_their_days() {
    let mut of = line(120.0, 84);
    of.stages = vec![
        StageSpan { days: [0, 42], name: Label::new("Protect"), state: StageState::Opened },
        StageSpan { days: [42, 84], name: Label::new("Move"), state: StageState::NotOpened },
    ];
    of.sling = vec![SlingSpan { days: [0, 35], wear: SlingWear::Always, name: Label::new("Sling") }];
    of.today = Some((30, Label::new("Today")));
    let seen = drawn(&of);
    let opened = seen.shapes.iter().find(|shape| shape.fill == Some((TINT, 1.0))).expect("the opened stage");
    assert!((opened.places[0][0] - at(&seen, 0, 84)).abs() < 0.06, "{opened:?}");
    assert!((opened.places[1][0] - at(&seen, 42, 84)).abs() < 0.06, "{opened:?}");
    let sling = seen.shapes.iter().find(|shape| shape.fill == Some((Color::INK, 1.0))).expect("the sling");
    assert!((sling.places[1][0] - at(&seen, 35, 84)).abs() < 0.06, "{sling:?}");
    let today = seen.shapes.iter().find(|shape| shape.has_stroke(Color::INK, HEAVY)).expect("today");
    assert!(today.places.iter().all(|place| (place[0] - at(&seen, 30, 84)).abs() < 0.06), "{today:?}");
    assert!(seen.shapes.iter().any(|shape| shape.dash.is_some()), "the unopened stage is dashed");
}

#[test]
fn a_name_that_does_not_fit_is_shortened_or_goes_above() {
    let stage = |name| StageSpan { days: [0, 14], name, state: StageState::Opened };
    let texts = |name| {
        let of = RecoveryLine { stages: vec![stage(name)], ..line(80.0, 84) };
        drawn(&of).texts.into_iter().map(|text| text.text).collect::<Vec<_>>()
    };
    assert!(texts(Label::with_short("Protecting the repair", "Protect")).contains(&"Protect".to_owned()));
    assert!(texts(Label::new("Protecting the repair")).contains(&"Protecting the repair".to_owned()));
}

#[test]
fn dates_are_left_out_at_even_steps() {
    let dates: Vec<(u16, String)> = (0..12).map(|week| (week * 7, format!("{week} January"))).collect();
    let of = RecoveryLine { dates, ..line(80.0, 84) };
    let shown: Vec<u16> =
        drawn(&of).texts.iter().filter_map(|text| text.text.strip_suffix(" January")?.parse().ok()).collect();
    assert_eq!(shown, [0, 3, 6, 9]);
}

#[test]
fn what_is_wrong_is_not_drawn() {
    let fault = |change: fn(&mut RecoveryLine)| {
        let mut of = line(80.0, 84);
        change(&mut of);
        of.draw().err()
    };
    let span = |days| StageSpan { days, name: Label::new("a"), state: StageState::Opened };
    assert_eq!(fault(|_| ()), None);
    assert_eq!(fault(|of| of.until_day = 0), Some(ChartError::Empty("recovery line")));
    assert!(matches!(fault(|of| of.width_mm = 0.0), Some(ChartError::NoRoom { .. })));
    assert!(matches!(fault(|of| of.width_mm = f64::NAN), Some(ChartError::NoRoom { .. })));
    assert!(matches!(fault(|of| of.width_mm = 59.9), Some(ChartError::NoRoom { .. })));
    assert_eq!(fault(|of| of.today = Some((84, Label::new("now")))), None);
    let outside = ChartError::Outside { what: "today", value: 85.0 };
    assert_eq!(fault(|of| of.today = Some((85, Label::new("now")))), Some(outside));
    assert_eq!(fault(|of| of.events = vec![event(3, EventKind::GateMet, " ")]), Some(ChartError::NoText("event")));
    let hold = EventKind::Hold { until_day: 3 };
    let mut of = line(80.0, 84);
    of.events = vec![event(3, hold, "held")];
    assert_eq!(of.draw().err(), Some(ChartError::Reversed("hold")));
    of.events.clear();
    of.stages = vec![span([0, 42]), span([41, 84])];
    assert_eq!(of.draw().err(), Some(ChartError::Overlap("stage")));
    of.stages = vec![span([0, 42]), span([42, 85])];
    assert_eq!(of.draw().err(), Some(ChartError::Outside { what: "stage", value: 85.0 }));
    of.stages.clear();
    of.dates = vec![(7, "a".into()), (7, "b".into())];
    assert_eq!(of.draw().err(), Some(ChartError::NotInOrder("date")));
}

#[test]
fn every_kind_of_mark_has_its_own_shape() {
    let kinds = [
        EventKind::VisitDone,
        EventKind::VisitPlanned,
        EventKind::GateMet,
        EventKind::GateNotMet,
        EventKind::GateWaiting,
        EventKind::Hold { until_day: 50 },
        EventKind::StepBack,
    ];
    // Colors are left out: shape and filling alone have to tell.
    let marks = kinds.map(|kind| {
        let of = RecoveryLine { events: vec![event(40, kind, "x")], ..line(80.0, 84) };
        let seen = drawn(&of);
        let shapes = seen.shapes.iter().map(|shape| {
            let filled = shape.fill.is_some_and(|(fill, _)| fill != Color::WHITE);
            format!("{:?} {:?} {filled}", shape.places.len(), shape.radius)
        });
        shapes.collect::<Vec<_>>()
    });
    for (index, one) in marks.iter().enumerate() {
        assert!(marks[..index].iter().all(|other| other != one), "{:?}", kinds[index]);
    }
}

fn text() -> impl Strategy<Value = String> {
    proptest::collection::vec("[A-Za-zÁé]{1,9}", 1..4).prop_map(|words| words.join(" "))
}

fn label() -> impl Strategy<Value = Label> {
    (text(), proptest::option::of("[A-Za-z]{1,5}")).prop_map(|(text, short)| Label { text, short })
}

fn kind() -> impl Strategy<Value = EventKind> {
    prop_oneof![
        Just(EventKind::VisitDone),
        Just(EventKind::VisitPlanned),
        Just(EventKind::GateMet),
        Just(EventKind::GateNotMet),
        Just(EventKind::StepBack),
    ]
}

prop_compose! {
    fn any_line()(
        width in 80.0f64..180.0,
        until in 60u16..400,
        names in proptest::collection::vec((label(), any::<bool>()), 0..5),
        dates in proptest::collection::vec(text(), 0..8),
        events in proptest::collection::vec((0u16..400, kind(), label()), 0..7),
        sling in proptest::collection::vec(label(), 0..3),
        today in proptest::option::of((0u16..400, label())),
    ) -> RecoveryLine {
        let part = |index: usize, of: usize| until / u16::try_from(of).unwrap_or(1) * u16::try_from(index).unwrap_or(0);
        let count = names.len();
        let stages = names.into_iter().enumerate().map(|(index, (name, opened))| StageSpan {
            days: [part(index, count), part(index + 1, count)],
            name,
            state: if opened { StageState::Opened } else { StageState::NotOpened },
        });
        let runs = sling.into_iter().enumerate().map(|(index, name)| SlingSpan {
            days: [part(index, 6), part(index + 1, 6)],
            wear: if index == 0 { SlingWear::Always } else { SlingWear::Weaning },
            name,
        });
        let count = dates.len();
        RecoveryLine {
            stages: stages.collect(),
            sling: runs.collect(),
            dates: dates.into_iter().enumerate().map(|(index, text)| (part(index, count), text)).collect(),
            events: events.into_iter().map(|(day, kind, label)| Event { day: day.min(until), kind, label }).collect(),
            today: today.map(|(day, label)| (day.min(until), label)),
            ..line(width, until)
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    // Labels up to 27 letters are narrower than the narrowest line: there is always a place.
    #[test]
    fn nothing_written_lies_on_anything_written(of in any_line()) {
        drawn(&of);
    }
}
