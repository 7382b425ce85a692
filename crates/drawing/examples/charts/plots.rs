//! Plain charts. All data is invented.

use drawing::chart::{
    Axis, Bound, CensoredWords, Chart, Multiples, Numbering, Panel, Reading, Seen, Series, Spread, Step,
};

use super::Named;

pub fn all() -> Vec<Named> {
    vec![
        ("plot-course", course([120.0, 78.0]).draw()),
        ("plot-course-small", course([80.0, 66.0]).draw()),
        ("plot-limits", limits().draw()),
        ("plot-one-value", one().draw()),
        ("plot-funnel", funnel().draw()),
        ("plot-control", control().draw()),
        ("plot-four-lines", four().draw()),
        ("plot-multiples", multiples().draw()),
    ]
}

fn value(day: f64, y: f64, error: f64) -> Reading {
    Reading { x: day, seen: Seen::Value { y, error: (error > 0.0).then_some(error) } }
}

fn censored() -> CensoredWords {
    CensoredWords {
        more_than: "more than the scale".into(),
        less_than: "less than the scale".into(),
        could_not: "could not be done".into(),
    }
}

fn expected() -> Series {
    let spread = |(x, low, middle, high): (f64, f64, f64, f64)| Spread { x, low, middle, high };
    let course = [
        (14.0, 30.0, 45.0, 60.0),
        (42.0, 60.0, 80.0, 100.0),
        (84.0, 105.0, 130.0, 150.0),
        (126.0, 130.0, 150.0, 168.0),
        (182.0, 140.0, 160.0, 175.0),
    ];
    Series::Band { name: "expected course, middle eight of ten".into(), course: course.map(spread).to_vec() }
}

fn course(size: [f64; 2]) -> Chart {
    let readings = vec![
        value(14.0, 40.0, 5.0),
        value(28.0, 52.0, 5.0),
        Reading { x: 35.0, seen: Seen::CouldNot },
        value(42.0, 71.0, 5.0),
        value(84.0, 112.0, 5.0),
        value(126.0, 149.0, 5.0),
        Reading { x: 168.0, seen: Seen::MoreThan(170.0) },
    ];
    let x = Axis::weeks("weeks from surgery", 0.0, 182.0);
    let y = Axis::degrees("passive elevation (degrees)", 0.0, 180.0);
    Chart::new("Elevation over the weeks", "Invented.", size, x, y)
        .saying(censored())
        .with(expected())
        .with(Series::Line { name: "measured, with its error".into(), readings })
        .with(Series::Reference { text: "gate 90°".into(), at: Bound::Y(90.0) })
        .with(Series::Reference { text: "gate 120°".into(), at: Bound::Y(120.0) })
        .with(Series::Reference { text: "sling off".into(), at: Bound::X(42.0) })
}

fn limits() -> Chart {
    let steps = [(0.0, 60.0), (14.0, 90.0), (42.0, 120.0), (84.0, 150.0)];
    let steps = steps.map(|(from, y)| Step { from, y }).to_vec();
    let x = Axis::weeks("weeks from surgery", 0.0, 126.0);
    let y = Axis::degrees("passive elevation (degrees)", 0.0, 180.0);
    let readings = vec![value(12.0, 48.0, 5.0), value(40.0, 82.0, 5.0), value(83.0, 101.0, 0.0)];
    Chart::new("Limits over the days", "Invented.", [110.0, 70.0], x, y)
        .with(Series::Steps { name: "limit".into(), steps, until: 126.0 })
        .with(Series::Points { name: "measured".into(), readings })
        .with(Series::Reference { text: "today".into(), at: Bound::X(90.0) })
        .with(Series::Reference { text: "visit".into(), at: Bound::X(84.0) })
}

fn one() -> Chart {
    let x = Axis::weeks("semanas desde la operación", 0.0, 84.0);
    let y = Axis::degrees("elevación pasiva (grados)", 0.0, 180.0);
    Chart::new("Un valor", "Inventado.", [70.0, 48.0], x, y)
        .with(Series::Line { name: String::new(), readings: vec![value(14.0, 41.0, 5.0)] })
}

fn funnel() -> Chart {
    let limits = |times: f64| {
        let at = |n: f64| {
            let error = (0.12_f64 * 0.88 / n).sqrt() * 100.0 * times;
            Spread { x: n, low: (12.0 - error).max(0.0), middle: 12.0, high: (12.0 + error).min(60.0) }
        };
        (1..=40).map(|index| at(f64::from(index) * 5.0)).collect::<Vec<_>>()
    };
    let rates = [(18.0, 22.0), (25.0, 8.0), (44.0, 14.0), (60.0, 10.0), (90.0, 24.0), (140.0, 11.0), (180.0, 13.0)];
    let x = Axis::new("operations").between(0.0, 200.0);
    let y = Axis::new("stiff at six months (percent)").between(0.0, 60.0);
    Chart::new("Rates of stiffness", "Invented.", [110.0, 74.0], x, y)
        .with(Series::Funnel { name: "all practices, and where 95 of 100 lie".into(), limits: limits(1.96) })
        .with(Series::Funnel { name: "where 998 of 1000 lie".into(), limits: limits(3.09) })
        .with(Series::Points { name: "a practice".into(), readings: rates.map(|(n, y)| value(n, y, 0.0)).to_vec() })
}

fn control() -> Chart {
    let values = [4.1, 3.8, 4.4, 5.0, 4.2, 3.9, 4.6, 6.3, 4.0, 4.3, 4.1, 3.7];
    let readings = (1..=12).map(f64::from).zip(values).map(|(x, y)| value(x, y, 0.0)).collect();
    let frame = |x: f64| Spread { x, low: 2.4, middle: 4.2, high: 6.0 };
    let numbering = Numbering::new(|number| format!("{number:.1}").replace('.', ","));
    let y = Axis { numbering, ..Axis::new("weeks to 90° (mean)") };
    Chart::new("Weeks to 90 degrees", "Invented.", [100.0, 60.0], Axis::new("month").between(0.0, 13.0), y)
        .with(Series::Funnel { name: "center and limits".into(), limits: vec![frame(0.0), frame(13.0)] })
        .with(Series::Line { name: "mean of the month".into(), readings })
}

fn four() -> Chart {
    let line = |name: &str, slope: f64| {
        let readings = (0..=6).map(f64::from).map(|n| value(n * 14.0, 20.0 + slope * n, 0.0)).collect();
        Series::Line { name: name.to_owned(), readings }
    };
    let x = Axis::weeks("weeks from surgery", 0.0, 84.0);
    let y = Axis::new("angle (degrees)");
    let chart = Chart::new("Four lines", "Invented.", [100.0, 66.0], x, y);
    let names = [("elevation", 20.0), ("abduction", 16.0), ("external rotation", 9.0), ("internal rotation", 5.0)];
    names.into_iter().fold(chart, |chart, (name, slope)| chart.with(line(name, slope)))
}

fn multiples() -> Multiples {
    let panel = |heading: &str, slope: f64, last: Seen| {
        let mut readings: Vec<Reading> =
            (1..=5).map(f64::from).map(|n| value(n * 21.0, 30.0 + slope * n, 6.0)).collect();
        readings.push(Reading { x: 126.0, seen: last });
        let target = Series::Reference { text: "goal".into(), at: Bound::Y(120.0) };
        Panel { heading: heading.to_owned(), series: vec![Series::Line { name: "measured".into(), readings }, target] }
    };
    Multiples {
        title: "Four movements".into(),
        description: "Invented.".into(),
        size_mm: [170.0, 110.0],
        columns: 3,
        x: Axis::weeks("weeks from surgery", 0.0, 140.0),
        y: Axis::degrees("angle (degrees)", 0.0, 180.0),
        panels: vec![
            panel("Elevation, passive", 22.0, Seen::MoreThan(170.0)),
            panel("Elevation, active", 15.0, Seen::CouldNot),
            panel("External rotation", 6.0, Seen::Value { y: 70.0, error: Some(6.0) }),
            panel("Internal rotation", 8.0, Seen::LessThan(10.0)),
        ],
        censored: censored(),
    }
}
