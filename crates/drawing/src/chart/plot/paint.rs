//! Painting charts.

use super::super::pen::{Pen, Place, edged};
use super::super::tones::{EDGE, HAIR, THIN, TINT, cut, dotted};
use super::layout::{Frame, Layout, TICK};
use super::marks::{self, Censored};
use super::styles::{CENTER, FUNNELS, Kind, MIDDLE, READINGS, REFERENCE, STEPS};
use super::{Bound, Multiples, Reading, Seen, Series, Spread};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Stroke, Svg};

pub(super) fn picture(of: &Multiples, layout: &Layout) -> Svg {
    let [width, height] = of.size_mm;
    let mut svg = Svg::new(width, height, &of.title, &of.description);
    let mut pen = Pen(&mut svg);
    for (frame, panel) in layout.frames.iter().zip(&of.panels) {
        if let Some(strip) = frame.strip {
            marks::strip(&mut pen, strip);
        }
        let mut series: Vec<&Series> = panel.series.iter().collect();
        series.sort_by_key(|series| order(series));
        let (under, over): (Vec<&Series>, Vec<&Series>) =
            series.into_iter().partition(|series| Kind::of(series) == Kind::Band);
        let place = |series: &Series| layout.names.place(Kind::of(series), series.name()).unwrap_or_default();
        for series in under {
            paint(&mut pen, frame, series, place(series));
        }
        grid(&mut pen, frame, &layout.ticks);
        for series in over {
            paint(&mut pen, frame, series, place(series));
        }
        for hairline in &frame.hairlines {
            pen.open(hairline, cut(Color::GHOST, THIN));
        }
    }
    for word in &layout.words {
        pen.word(word);
    }
    layout.legend.paint(&mut pen, layout.legend_top);
    svg
}

/// What lies below what.
const fn order(series: &Series) -> u8 {
    match series {
        Series::Band { .. } => 0,
        Series::Reference { .. } => 1,
        Series::Funnel { .. } => 2,
        Series::Steps { .. } => 3,
        Series::Line { .. } => 4,
        Series::Points { .. } => 5,
    }
}

fn grid(pen: &mut Pen<'_>, frame: &Frame, [across, up]: &[Vec<f64>; 2]) {
    let Space { left, top, right, bottom } = frame.space;
    let floor = frame.strip.map_or(bottom, |strip| strip.bottom);
    let rows = up.iter().map(|tick| frame.y.at(*tick)).filter(|y| (y - bottom).abs() > EDGE);
    let rows: Vec<[Place; 2]> = rows.map(|y| [[left, y], [right, y]]).collect();
    pen.lines(&rows, dotted(Color::GHOST, HAIR, 1.0));
    let level = across.iter().map(|tick| frame.x.at(*tick)).map(|x| [[x, floor], [x, floor + TICK]]);
    let upright = up.iter().map(|tick| frame.y.at(*tick)).map(|y| [[left - TICK, y], [left, y]]);
    let ticks: Vec<[Place; 2]> = level.chain(upright).collect();
    pen.lines(&ticks, cut(Color::INK, THIN));
    pen.lines(&[[[left, top], [left, floor]], [[left, floor], [right, floor]]], Stroke::new(Color::INK, EDGE));
}

fn paint(pen: &mut Pen<'_>, frame: &Frame, series: &Series, place: usize) {
    match series {
        Series::Line { readings, .. } => {
            line(pen, frame, readings, READINGS[place].line);
            points(pen, frame, readings, place);
        }
        Series::Points { readings, .. } => points(pen, frame, readings, place),
        Series::Band { course, .. } => {
            let edge = |of: fn(&Spread) -> f64| {
                course.iter().map(move |spread| [frame.x.at(spread.x), frame.y.at(of(spread))]).collect::<Vec<_>>()
            };
            let high = edge(|spread| spread.high);
            let low: Vec<Place> = edge(|spread| spread.low).into_iter().rev().collect();
            let around: Vec<Place> = high.into_iter().chain(low).collect();
            pen.closed(&around, &edged(TINT, Stroke::new(Color::GHOST, THIN)));
            pen.open(&edge(|spread| spread.middle), MIDDLE);
        }
        Series::Funnel { limits, .. } => {
            let edge = |of: fn(&Spread) -> f64| {
                limits.iter().map(move |spread| [frame.x.at(spread.x), frame.y.at(of(spread))]).collect::<Vec<_>>()
            };
            pen.open(&edge(|spread| spread.middle), CENTER);
            pen.open(&edge(|spread| spread.high), FUNNELS[place]);
            pen.open(&edge(|spread| spread.low), FUNNELS[place]);
        }
        Series::Steps { steps, until, .. } => {
            let ends = steps.iter().skip(1).map(|step| step.from).chain([*until]);
            let corners = steps.iter().zip(ends).flat_map(|(step, end)| {
                let y = frame.y.at(step.y);
                [[frame.x.at(step.from), y], [frame.x.at(end), y]]
            });
            let corners: Vec<Place> = corners.collect();
            pen.open(&corners, STEPS[place]);
        }
        Series::Reference { at, .. } => {
            let Space { left, top, right, .. } = frame.space;
            let floor = frame.strip.map_or(frame.space.bottom, |strip| strip.bottom);
            match at {
                Bound::Y(y) => pen.line([left, frame.y.at(*y)], [right, frame.y.at(*y)], REFERENCE),
                Bound::X(x) => pen.line([frame.x.at(*x), top], [frame.x.at(*x), floor], REFERENCE),
            }
        }
    }
}

/// Lines between plain values that follow one another.
fn line(pen: &mut Pen<'_>, frame: &Frame, readings: &[Reading], stroke: Stroke) {
    let place = |reading: &Reading| match reading.seen {
        Seen::Value { y, .. } => Some([frame.x.at(reading.x), frame.y.at(y)]),
        _ => None,
    };
    let places: Vec<Option<Place>> = readings.iter().map(place).collect();
    for run in places.split(Option::is_none).filter(|run| run.len() > 1) {
        let run: Vec<Place> = run.iter().copied().flatten().collect();
        pen.open(&run, stroke);
    }
}

fn points(pen: &mut Pen<'_>, frame: &Frame, readings: &[Reading], place: usize) {
    let look = READINGS[place];
    let color = look.line.color;
    for reading in readings {
        let x = frame.x.at(reading.x);
        match reading.seen {
            Seen::Value { y, error } => {
                if let Some(error) = error.filter(|error| *error > 0.0) {
                    marks::whisker(pen, color, x, [frame.y.at(y + error), frame.y.at(y - error)]);
                }
                marks::marker(pen, look, [x, frame.y.at(y)]);
            }
            Seen::MoreThan(y) => marks::censored(pen, Censored::Up, color, [x, frame.y.at(y)]),
            Seen::LessThan(y) => marks::censored(pen, Censored::Down, color, [x, frame.y.at(y)]),
            Seen::CouldNot => {
                if let Some(strip) = frame.strip {
                    let y = f64::midpoint(strip.top, strip.bottom);
                    marks::censored(pen, Censored::Not, color, [x, y]);
                }
            }
        }
    }
}
