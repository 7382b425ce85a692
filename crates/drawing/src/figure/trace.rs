//! From lines of straight pieces to smooth curves.
//!
//! # Method
//! A line is split at its corners; each smooth stretch becomes as few cubic curves as keep the tolerance, by least
//! squares with the ends' directions held (after Schneider, "An algorithm for automatically fitting digitized curves",
//! 1990).

use kurbo::{BezPath, CubicBez, ParamCurve, ParamCurveDeriv, Point, Vec2};

use super::lines::{Ends, Line};

/// How far a curve may leave its line, in parts of stature.
const TOLERANCE: f64 = 0.0007;

/// A turn sharper than this is a corner.
const CORNER_DEGREES: f64 = 38.0;

/// How far on both sides of a place its turn is measured.
const REACH: f64 = 0.0025;

/// Adds the curves of a line to a path.
pub(crate) fn trace(line: &Line, path: &mut BezPath) {
    let points = spaced(&line.points, line.shape);
    if points.len() < 2 {
        return;
    }
    let corners = corners(&points, line.shape);
    let points = smoothed(&points, &corners, line.shape);
    match line.shape {
        Ends::Open => {
            path.move_to(points[0]);
            let mut start = 0;
            for end in corners.into_iter().chain([points.len() - 1]) {
                if end > start {
                    stretch(&points[start..=end], [None; 2], path);
                }
                start = end;
            }
        }
        Ends::Closed => {
            let begin = corners.first().copied().unwrap_or(0);
            let mut turned: Vec<Point> = points[begin..].iter().chain(&points[..begin]).copied().collect();
            turned.push(points[begin]);
            path.move_to(turned[0]);
            if corners.is_empty() {
                // No corner anywhere: the curve passes its own start smoothly.
                let around = (points[1] - points[points.len() - 1]).normalize();
                stretch(&turned, [Some(around), Some(-around)], path);
            } else {
                let mut start = 0;
                let ends = corners.iter().skip(1).map(|corner| corner - begin).chain([turned.len() - 1]);
                for end in ends {
                    stretch(&turned[start..=end], [None; 2], path);
                    start = end;
                }
            }
            path.close_path();
        }
    }
}

/// The flat faces of the outline smoothed; corners and open ends stay where they are.
fn smoothed(points: &[Point], corners: &[usize], shape: Ends) -> Vec<Point> {
    let count = points.len();
    let mut stays = vec![false; count];
    corners.iter().for_each(|corner| stays[*corner] = true);
    if shape == Ends::Open {
        stays[0] = true;
        stays[count - 1] = true;
    }
    let mut points = points.to_vec();
    for part in SMOOTHINGS {
        let before = points.clone();
        for at in (0..count).filter(|at| !stays[*at]) {
            let [low, high] = [before[(at + count - 1) % count], before[(at + 1) % count]];
            points[at] = before[at].lerp(low.midpoint(high), part);
        }
    }
    points
}

/// How far each place goes toward the middle of its neighbors, one smoothing after the other; every second one goes back
/// a little farther, so that round things do not shrink (Taubin, "A signal processing approach to fair surface design",
/// 1995).
const SMOOTHINGS: [f64; 8] = [0.5, -0.53, 0.5, -0.53, 0.5, -0.53, 0.5, -0.53];

/// Without points that are too near to the one before, which would have no direction.
fn spaced(points: &[Point], shape: Ends) -> Vec<Point> {
    let mut out: Vec<Point> = Vec::with_capacity(points.len());
    for point in points {
        if out.last().is_none_or(|last| last.distance(*point) > NEAR) {
            out.push(*point);
        }
    }
    if let (Some(end), Some(last), Ends::Open) = (points.last(), out.last_mut(), shape) {
        *last = *end;
    }
    if shape == Ends::Closed && out.len() > 2 && out[0].distance(out[out.len() - 1]) <= NEAR {
        out.pop();
    }
    filled(&out, shape)
}

const NEAR: f64 = 0.0003;

/// With points on long straight pieces too, so that a curve keeps to them between their ends.
fn filled(points: &[Point], shape: Ends) -> Vec<Point> {
    let count = points.len();
    let segments = if shape == Ends::Closed { count } else { count.saturating_sub(1) };
    let mut out = Vec::with_capacity(2 * count);
    for at in 0..segments {
        let (from, to) = (points[at], points[(at + 1) % count]);
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a few hundred at most")]
        let pieces = ((from.distance(to) / LONG).ceil() as u32).clamp(1, 200);
        out.extend((0..pieces).map(|piece| from.lerp(to, f64::from(piece) / f64::from(pieces))));
    }
    if shape == Ends::Open {
        out.extend(points.last());
    }
    out
}

/// The longest straight piece without a point on it.
const LONG: f64 = 0.012;

/// Where the line turns sharply, by rising place; never its open ends.
fn corners(points: &[Point], shape: Ends) -> Vec<usize> {
    let count = points.len();
    let turn = |at: usize| -> f64 {
        let here = points[at];
        let away = |forward: bool| -> Option<Vec2> {
            let mut to = at;
            for _ in 0..count {
                to = match (forward, shape) {
                    (true, Ends::Open) if to + 1 == count => break,
                    (false, Ends::Open) if to == 0 => break,
                    (true, _) => (to + 1) % count,
                    (false, _) => (to + count - 1) % count,
                };
                if points[to].distance(here) >= REACH {
                    break;
                }
            }
            (to != at).then(|| points[to] - here)
        };
        let (Some(before), Some(after)) = (away(false), away(true)) else { return 0.0 };
        (-before).cross(after).atan2((-before).dot(after)).abs().to_degrees()
    };
    let turns: Vec<f64> = (0..count).map(turn).collect();
    let is_peak = |at: usize| {
        let near = |step: usize| {
            let [low, high] = [(at + count - step) % count, (at + step) % count];
            let apart = |other: usize| points[other].distance(points[at]) >= REACH;
            (apart(low) || turns[low] <= turns[at]) && (apart(high) || turns[high] < turns[at])
        };
        (1..=3.min(count - 1)).all(near)
    };
    let inner = match shape {
        Ends::Open => 1..count.saturating_sub(1),
        Ends::Closed => 0..count,
    };
    inner.filter(|&at| is_peak(at) && (turns[at] > CORNER_DEGREES || is_between_straights(points, at, shape))).collect()
}

/// Whether two long straight pieces meet there: that is a corner however slight the turn.
fn is_between_straights(points: &[Point], at: usize, shape: Ends) -> bool {
    let count = points.len();
    let side = |forward: bool| -> Option<Vec2> {
        let mut to = at;
        let mut first: Option<Vec2> = None;
        loop {
            let next = match (forward, shape) {
                (true, Ends::Open) if to + 1 == count => return None,
                (false, Ends::Open) if to == 0 => return None,
                (true, _) => (to + 1) % count,
                (false, _) => (to + count - 1) % count,
            };
            let step = (points[next] - points[to]).normalize();
            if first.is_some_and(|first| first.dot(step) < 1.0 - 1e-5) || next == at {
                return None;
            }
            first.get_or_insert(step);
            to = next;
            if points[to].distance(points[at]) > STRAIGHT_FOR {
                return first;
            }
        }
    };
    let (Some(before), Some(after)) = (side(false), side(true)) else { return false };
    (-before).dot(after) < SLIGHT_TURN
}

/// How far a piece is straight on both sides of a corner that turns little.
const STRAIGHT_FOR: f64 = 0.030;
/// The cosine of six degrees.
const SLIGHT_TURN: f64 = 0.9945;

/// One smooth stretch; the directions are those of its ends, pointing into it.
fn stretch(points: &[Point], directions: [Option<Vec2>; 2], path: &mut BezPath) {
    let [first, .., last] = points else { return };
    let start = directions[0].unwrap_or_else(|| direction(points.iter().copied()));
    let end = directions[1].unwrap_or_else(|| direction(points.iter().rev().copied()));
    if points.iter().all(|point| distance_to_line(*point, *first, *last) < STRAIGHT) {
        path.line_to(*last);
        return;
    }
    fit(points, start, end, path);
}

/// A stretch that leaves its chord by less is straight.
const STRAIGHT: f64 = 0.0003;

/// How far along a line its direction is taken.
const SETS_OUT: f64 = 0.005;

/// The direction in which a line sets out.
fn direction(mut points: impl Iterator<Item = Point>) -> Vec2 {
    let Some(first) = points.next() else { return Vec2::ZERO };
    let mut way = Vec2::ZERO;
    for point in points {
        way = point - first;
        if way.hypot() >= SETS_OUT {
            break;
        }
    }
    if way.hypot2() > 0.0 { way.normalize() } else { Vec2::new(1.0, 0.0) }
}

fn distance_to_line(point: Point, a: Point, b: Point) -> f64 {
    let way = b - a;
    let length = way.hypot();
    if length < NEAR { point.distance(a) } else { (way.cross(point - a) / length).abs() }
}

fn fit(points: &[Point], start: Vec2, end: Vec2, path: &mut BezPath) {
    let (first, last) = (points[0], points[points.len() - 1]);
    if points.len() == 2 {
        path.line_to(last);
        return;
    }
    let mut shares = by_length(points);
    let mut curve = least_squares(points, &shares, start, end);
    let (mut error, mut worst) = worst(&curve, points, &shares);
    for _ in 0..ROUNDS {
        if error <= TOLERANCE {
            break;
        }
        for (share, point) in shares.iter_mut().zip(points) {
            *share = nearer(&curve, *point, *share);
        }
        curve = least_squares(points, &shares, start, end);
        (error, worst) = self::worst(&curve, points, &shares);
    }
    if error <= TOLERANCE {
        path.curve_to(curve.p1, curve.p2, curve.p3);
        return;
    }
    let middle = worst.clamp(1, points.len() - 2);
    let across = direction(points[middle..].iter().copied()) - direction(points[..=middle].iter().rev().copied());
    let across = if across.hypot() > 0.1 { across.normalize() } else { (last - first).normalize() };
    fit(&points[..=middle], start, -across, path);
    fit(&points[middle..], across, end, path);
}

/// Rounds in which the curve's own places are sought for the points.
const ROUNDS: usize = 3;

fn by_length(points: &[Point]) -> Vec<f64> {
    let mut gone = 0.0;
    let mut shares = vec![0.0];
    for two in points.windows(2) {
        gone += two[0].distance(two[1]);
        shares.push(gone);
    }
    shares.iter_mut().for_each(|share| *share /= gone);
    shares
}

fn least_squares(points: &[Point], shares: &[f64], start: Vec2, end: Vec2) -> CubicBez {
    let (first, last) = (points[0], points[points.len() - 1]);
    let [mut aa, mut ab, mut bb, mut ax, mut bx] = [0.0; 5];
    for (point, t) in points.iter().zip(shares) {
        let s = 1.0 - t;
        let [b0, b1, b2, b3] = [s * s * s, 3.0 * t * s * s, 3.0 * t * t * s, t * t * t];
        let (a, b) = (start * b1, end * b2);
        let rest = point.to_vec2() - first.to_vec2() * (b0 + b1) - last.to_vec2() * (b2 + b3);
        aa += a.dot(a);
        ab += a.dot(b);
        bb += b.dot(b);
        ax += a.dot(rest);
        bx += b.dot(rest);
    }
    let determinant = aa * bb - ab * ab;
    let chord = first.distance(last);
    let (mut reach_start, mut reach_end) = if determinant.abs() > 1e-18 {
        ((ax * bb - bx * ab) / determinant, (aa * bx - ab * ax) / determinant)
    } else {
        (0.0, 0.0)
    };
    // Handles that point backward or are far longer than the curve make loops.
    let least = 0.01 * chord;
    let longest = 2.0 * points.windows(2).map(|two| two[0].distance(two[1])).sum::<f64>();
    if !(least..=longest).contains(&reach_start) || !(least..=longest).contains(&reach_end) {
        (reach_start, reach_end) = (chord / 3.0, chord / 3.0);
    }
    CubicBez::new(first, first + start * reach_start, last + end * reach_end, last)
}

fn worst(curve: &CubicBez, points: &[Point], shares: &[f64]) -> (f64, usize) {
    let mut worst = (0.0, points.len() / 2);
    for (at, (point, share)) in points.iter().zip(shares).enumerate() {
        let error = curve.eval(*share).distance(*point);
        if error > worst.0 {
            worst = (error, at);
        }
    }
    worst
}

/// One step toward the place of the curve that is nearest to a point.
fn nearer(curve: &CubicBez, point: Point, share: f64) -> f64 {
    let off = curve.eval(share) - point;
    let first = curve.deriv();
    let (speed, bend) = (first.eval(share).to_vec2(), first.deriv().eval(share).to_vec2());
    let slope = speed.dot(speed) + off.dot(bend);
    if slope.abs() < 1e-18 { share } else { (share - off.dot(speed) / slope).clamp(0.0, 1.0) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::region::circle;
    use kurbo::{ParamCurveNearest, PathEl, Shape};

    fn traced(line: &Line) -> BezPath {
        let mut path = BezPath::new();
        trace(line, &mut path);
        path
    }

    #[test]
    fn a_circle_takes_few_curves_and_stays_round() {
        let path = traced(&Line::closed(circle(Point::ZERO, 0.1, 60)));
        let curves = path.elements().iter().filter(|element| matches!(element, PathEl::CurveTo(..))).count();
        assert!((2..=6).contains(&curves), "{curves}");
        assert!((path.area() - std::f64::consts::PI * 0.01).abs() < 0.0006, "{}", path.area());
    }

    #[test]
    fn a_square_keeps_its_corners() {
        let corners = [(0.0, 0.0), (0.1, 0.0), (0.1, 0.1), (0.0, 0.1)].map(Point::from);
        let path = traced(&Line::closed(corners.to_vec()));
        assert!((path.area() - 0.01).abs() < 1e-9);
        assert!(!path.elements().iter().any(|element| matches!(element, PathEl::CurveTo(..))));
    }

    #[test]
    fn a_curve_stays_near_its_line() {
        let wave = (0..=120).map(|step| {
            let x = f64::from(step) / 240.0;
            Point::new(x, 0.03 * (x * 30.0).sin() + 0.01 * (x * 71.0).cos())
        });
        let points: Vec<Point> = wave.collect();
        let path = traced(&Line::open(points.clone()));
        for point in points {
            let nearest = path.segments().map(|segment| segment.nearest(point, 1e-9).distance_sq);
            assert!(nearest.fold(f64::MAX, f64::min).sqrt() <= 1.01 * TOLERANCE);
        }
    }
}
