//! Rounding the hollows of an outline, as skin and cloth do.

use kurbo::{ParamCurve, Point, QuadBez};

/// A closed line, going around to the left, whose sharp inner corners are curves.
///
/// # Method
/// A corner that turns to the right by more than a limit is replaced by a parabola between the two places of the line
/// that lie `reach` before and behind it.
pub(crate) fn rounded(corners: &[Point], reach: f64, within: Option<(Point, f64)>) -> Vec<Point> {
    let count = corners.len();
    let is_hollow = |at: usize| {
        let (before, here, after) = (corners[(at + count - 1) % count], corners[at], corners[(at + 1) % count]);
        let (into, out) = (here - before, after - here);
        let turn = into.cross(out).atan2(into.dot(out)).to_degrees();
        turn < -SHARP && within.is_none_or(|(center, radius)| here.distance(center) < radius)
    };
    let hollows: Vec<usize> = (0..count).filter(|&at| is_hollow(at)).collect();
    let Some(&first) = hollows.first() else { return corners.to_vec() };
    // Starting halfway around from a hollow, so that no curve goes over the start.
    let start = (first + count / 2) % count;
    let turned: Vec<Point> = (0..count).map(|at| corners[(start + at) % count]).collect();
    let hollows: Vec<usize> = (0..count).filter(|&at| is_hollow((start + at) % count)).collect();
    let mut out: Vec<Point> = Vec::with_capacity(count + 8);
    let mut next = 0;
    for at in hollows {
        let (from, behind) = along(&turned, at, reach, Direction::Back);
        let (to, ahead) = along(&turned, at, reach, Direction::On);
        if behind < next {
            continue;
        }
        out.extend(&turned[next..=behind]);
        let curve = QuadBez::new(from, turned[at], to);
        out.extend((0..=STEPS).map(|step| curve.eval(f64::from(step) / f64::from(STEPS))));
        next = ahead;
    }
    out.extend(&turned[next..]);
    out
}

/// A turn to the right that counts as a corner, in degrees.
const SHARP: f64 = 16.0;

/// Straight pieces of a curve.
const STEPS: u32 = 6;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Direction {
    Back,
    On,
}

/// The place a distance away along a line, and the corner beyond it.
fn along(corners: &[Point], at: usize, distance: f64, direction: Direction) -> (Point, usize) {
    let mut left = distance;
    let mut here = at;
    loop {
        let next = match direction {
            Direction::Back if here == 0 => return (corners[here], here),
            Direction::On if here + 1 == corners.len() => return (corners[here], here),
            Direction::Back => here - 1,
            Direction::On => here + 1,
        };
        let step = corners[here].distance(corners[next]);
        if step >= left {
            return (corners[here].lerp(corners[next], left / step.max(1e-12)), next);
        }
        left -= step;
        here = next;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_inner_corners_are_rounded() {
        let corner = [(0.0, 0.0), (0.4, 0.0), (0.4, 0.2), (0.2, 0.2), (0.2, 0.4), (0.0, 0.4)].map(Point::from);
        let rounded = rounded(&corner, 0.05, None);
        assert!(!rounded.contains(&Point::new(0.2, 0.2)));
        for kept in [(0.0, 0.0), (0.4, 0.0), (0.4, 0.2), (0.2, 0.4), (0.0, 0.4)] {
            assert!(rounded.contains(&Point::from(kept)), "{kept:?}");
        }
        let far = super::rounded(&corner, 0.05, Some((Point::new(0.4, 0.4), 0.1)));
        assert_eq!(far, corner);
    }
}
