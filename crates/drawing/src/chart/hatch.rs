//! Hatching with real lines: the same on every screen and paper.

use super::pen::Place;
use crate::label::Space;

/// From one line of a hatch to the next, in millimeters.
pub(super) const HATCH_PITCH: f64 = 1.3;
/// Its width.
pub(super) const HATCH_WIDTH: f64 = 0.32;

/// Lines rising to the right over a rectangle.
///
/// # Method
/// Lines with x + y a multiple of the pitch's diagonal, so that neighbors' hatches run through.
pub(super) fn over(space: Space) -> Vec<[Place; 2]> {
    lines([space.left + space.top, space.right + space.bottom])
        .filter_map(|sum| {
            let left = space.left.max(sum - space.bottom);
            let right = space.right.min(sum - space.top);
            (right - left > SHORTEST).then_some([[left, sum - left], [right, sum - right]])
        })
        .collect()
}

/// Lines rising to the right over whatever is inside, within a rectangle; to a tenth of a millimeter.
pub(super) fn inside(within: Space, is_inside: impl Fn(Place) -> bool) -> Vec<[Place; 2]> {
    let mut runs = Vec::new();
    for [from, to] in over(within) {
        let count = ((to[0] - from[0]) / GRAIN).ceil();
        let at = |index: f64| {
            let x = from[0] + (to[0] - from[0]) * index / count;
            [x, from[0] + from[1] - x]
        };
        let mut start: Option<Place> = None;
        let mut index = 0.0;
        while index <= count {
            let place = at(index);
            match (is_inside(place), start) {
                (true, None) => start = Some(place),
                (false, Some(begun)) => {
                    runs.push([begun, at(index - 1.0)]);
                    start = None;
                }
                _ => {}
            }
            index += 1.0;
        }
        runs.extend(start.map(|begun| [begun, to]));
    }
    runs.retain(|[from, to]| to[0] - from[0] > SHORTEST);
    runs
}

/// The sums x + y of the hatch lines between two.
fn lines([from, until]: [f64; 2]) -> impl Iterator<Item = f64> {
    let step = HATCH_PITCH * std::f64::consts::SQRT_2;
    let first = (from / step).ceil();
    // A sheet is at most a few thousand millimeters.
    (0..u16::MAX).map(move |index| (first + f64::from(index)) * step).take_while(move |sum| *sum < until)
}

/// How finely a border is looked for, in millimeters.
const GRAIN: f64 = 0.08;
/// Shorter lines are left out.
const SHORTEST: f64 = 0.3;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_stay_inside() {
        let space = Space { left: 3.0, top: 10.0, right: 20.0, bottom: 15.0 };
        let lines = over(space);
        assert!(lines.len() > 8, "{lines:?}");
        let inside = |[x, y]: Place| {
            space.left - 1e-9 <= x && x <= space.right + 1e-9 && space.top - 1e-9 <= y && y <= space.bottom + 1e-9
        };
        assert!(lines.iter().flatten().all(|place| inside(*place)));
        let disk = |[x, y]: Place| (x - 11.0).hypot(y - 12.0) < 2.0;
        let chords = super::inside(space, disk);
        assert!(chords.len() >= 2 && chords.iter().flatten().all(|place| disk(*place)), "{chords:?}");
    }
}
