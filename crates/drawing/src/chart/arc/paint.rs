//! Painting an arc.

use body::Angle;

use super::super::hatch::{self, HATCH_WIDTH};
use super::super::pen::{Pen, Place, edged, stroked};
use super::super::tones::{CASING, EDGE, HEAVY, LINE, THIN, cut, dashed, dotted};
use super::labels::Labels;
use super::{Arc, Measured};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Paint, Stroke, Svg, units};

/// How far from the joint each measured value stands.
#[derive(Debug, Clone, PartialEq, Default)]
pub(super) struct Levels(pub(super) Vec<f64>);

impl Levels {
    /// One beside the other where there is room, else further out.
    pub(super) fn of(arc: &Arc) -> Self {
        let mut placed: Vec<(f64, [Angle; 2])> = Vec::new();
        for measured in &arc.measured {
            // Beyond the bar of the limit where it would lie on it.
            let [from, to] = measured.ends();
            let near = Angle::from_radians((DOT + STOP) / arc.radius_mm);
            let is_at_limit = arc.limit.as_ref().is_some_and(|(at, _)| from - near < *at && *at < to + near);
            let mut radius = arc.radius_mm + if is_at_limit { STOP_OUT + DOT * 2.0 } else { FIRST };
            let own = |radius: f64| {
                let [from, to] = measured.ends();
                let half = Angle::from_radians(DOT * 1.6 / radius);
                [from - half, to + half]
            };
            let meets = |radius: f64| {
                let [from, to] = own(radius);
                placed.iter().any(|(other, [a, b])| (*other - radius).abs() < NEXT && from < *b && *a < to)
            };
            while meets(radius) {
                radius += NEXT / 2.0;
            }
            placed.push((radius, own(radius)));
        }
        Self(placed.into_iter().map(|(radius, _)| radius).collect())
    }
}

impl Measured {
    /// Between what the true value lies.
    fn ends(&self) -> [Angle; 2] {
        let error = self.error.unwrap_or(Angle::ZERO);
        [self.value - error, self.value + error]
    }
}

/// Small spaces over everything that a word must not lie on.
pub(super) fn covered(arc: &Arc, levels: &Levels) -> Vec<Space> {
    let radius = arc.radius_mm;
    let speck = |place: Place| Space::around(place, SPECK, SPECK);
    let mut covered: Vec<Space> = Arc::steps(arc.whole, radius, SPECK).map(|at| speck(arc.place(at, radius))).collect();
    let radial = |at: Angle, from: f64, to: f64| {
        std::iter::successors(Some(from), |far| Some(far + SPECK))
            .take_while(move |far| *far < to)
            .map(move |far| speck(arc.place(at, far)))
    };
    if let Some((limit, _)) = arc.limit {
        covered.extend(radial(limit, radius, radius + STOP_OUT));
    }
    covered.extend(radial(Angle::ZERO, 0.0, radius * RAY));
    for end in arc.whole {
        covered.extend(radial(end, 0.0, radius));
    }
    for (at, _) in &arc.notes {
        covered.extend(radial(*at, radius, radius + NOTE));
    }
    for (measured, level) in arc.measured.iter().zip(&levels.0) {
        covered.extend(radial(measured.value, radius, *level));
        covered.push(Space::around(arc.place(measured.value, *level), DOT * 2.0, DOT * 2.0));
        let whisker = Arc::steps(measured.ends(), *level, SPECK);
        covered.extend(whisker.map(|at| Space::around(arc.place(at, *level), CAP * 2.0, CAP * 2.0)));
    }
    covered
}

/// The whole arc with its words.
pub(super) fn arc(svg: &mut Svg, arc: &Arc, labels: &Labels) {
    let radius = arc.radius_mm;
    rest(svg, arc);
    if let Some(allowed) = arc.allowed {
        let sector = arc.sector(allowed, radius);
        svg.path(&sector, &Paint { fill_opacity: Some(SOLID), ..Paint::filled(Color::MOVEMENT) });
        svg.path(&sector, &stroked(Stroke::new(Color::MOVEMENT, EDGE)));
        svg.path(&arc.arc(allowed, radius), &stroked(cut(Color::MOVEMENT, ALLOWED)));
    }
    if let Some((goal, _)) = &arc.goal {
        goal_band(svg, arc, *goal);
    }
    let mut pen = Pen(svg);
    pen.line(arc.center_mm, arc.place(Angle::ZERO, radius * RAY), dotted(Color::INK, LINE, DOTS));
    let note = |at: Angle| [arc.place(at, radius), arc.place(at, radius + NOTE)];
    let notes: Vec<_> = arc.notes.iter().map(|(at, _)| note(*at)).collect();
    pen.lines(&notes, cut(Color::INK, EDGE));
    pen.lines(&labels.hairlines, cut(Color::GHOST, THIN));
    for (measured, level) in arc.measured.iter().zip(&labels.levels.0) {
        tick(&mut pen, arc, measured, *level);
    }
    if let Some((limit, _)) = arc.limit {
        let bar = [arc.place(limit, radius - STOP_IN), arc.place(limit, radius + STOP_OUT)];
        pen.line(bar[0], bar[1], cut(Color::WHITE, STOP + CASING));
        pen.line(bar[0], bar[1], cut(Color::STOP, STOP));
    }
    pen.disk(arc.center_mm, JOINT, &edged(Color::WHITE, Stroke::new(Color::INK, LINE)));
    for word in &labels.words {
        pen.word(word);
    }
}

/// What is not allowed of the whole way, outlined.
fn rest(svg: &mut Svg, arc: &Arc) {
    let stroke = stroked(dashed(Color::GHOST, EDGE, 1.4, 1.0));
    let [from, to] = arc.whole;
    let Some([low, high]) = arc.allowed else {
        svg.path(&arc.sector(arc.whole, arc.radius_mm), &stroke);
        return;
    };
    for [far, near] in [[from, low], [to, high]] {
        if far != near {
            let [x, y] = arc.center_mm.map(units);
            let [a, b] = arc.place(far, arc.radius_mm).map(units);
            svg.path(&format!("M{x} {y}L{a} {b}{}", arc.bend([far, near], arc.radius_mm)), &stroke);
        }
    }
}

/// The goal, hatched along the edge.
fn goal_band(svg: &mut Svg, arc: &Arc, goal: [Angle; 2]) {
    let radii = [arc.radius_mm * GOAL, arc.radius_mm];
    let band = arc.band(goal, radii);
    svg.path(&band, &Paint::filled(Color::WHITE));
    let [x, y] = arc.center_mm;
    let within = Space::around([x, y], radii[1] * 2.0, radii[1] * 2.0);
    let middle = Angle::from_degrees(f64::midpoint(goal[0].degrees(), goal[1].degrees()));
    let is_inside = |place: Place| {
        let far = (place[0] - x).hypot(place[1] - y);
        let at = arc.angle_at(place, middle);
        radii[0] <= far && far <= radii[1] && goal[0] <= at && at <= goal[1]
    };
    let mut pen = Pen(svg);
    pen.lines(&hatch::inside(within, is_inside), cut(Color::MOVEMENT, HATCH_WIDTH));
    svg.path(&band, &stroked(Stroke::new(Color::MOVEMENT, EDGE)));
}

/// A measured value: a hairline, its error as a bent bar with ends, and a dot, open where the error is not known.
fn tick(pen: &mut Pen<'_>, arc: &Arc, measured: &Measured, level: f64) {
    let at = arc.place(measured.value, level);
    pen.line(arc.place(measured.value, arc.radius_mm - INTO), at, cut(Color::INK, THIN));
    if measured.error.is_some() {
        let ends = measured.ends();
        pen.0.path(&arc.arc(ends, level), &stroked(cut(Color::INK, EDGE)));
        let cap = |end: Angle| [arc.place(end, level - CAP), arc.place(end, level + CAP)];
        pen.lines(&ends.map(cap), cut(Color::INK, EDGE));
    }
    let fill = if measured.error.is_some() { Color::INK } else { Color::WHITE };
    pen.disk(at, DOT, &edged(fill, Stroke::new(Color::INK, EDGE)));
}

/// How strongly the allowed sector is filled.
const SOLID: f64 = 0.2;
/// Width of the edge of the allowed sector, in millimeters.
const ALLOWED: f64 = 0.9;
/// From where to the edge the goal reaches, in radii.
const GOAL: f64 = 0.8;
/// How far the ray of the zero position goes, in radii.
const RAY: f64 = 1.12;
/// Length of the tick of another angle.
pub(super) const NOTE: f64 = 1.3;
const DOTS: f64 = 1.2;
/// How far the bar of the limit reaches to both sides of the edge.
const STOP_IN: f64 = 3.2;
pub(super) const STOP_OUT: f64 = 2.6;
const STOP: f64 = HEAVY * 1.2;
const JOINT: f64 = 1.1;
/// From the edge to the first measured value, and from one to the next.
const FIRST: f64 = 2.0;
const NEXT: f64 = 2.6;
const DOT: f64 = 0.75;
const CAP: f64 = 0.8;
/// How far the hairline of a measured value reaches into the sector.
const INTO: f64 = 1.5;
const SPECK: f64 = 0.6;
