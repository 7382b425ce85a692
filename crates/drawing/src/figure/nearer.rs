//! Which of two surfaces is nearer to the viewer.

use kurbo::Point;

use super::part::Part;
use super::region::Region;

/// Who of two lies over the other.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Front {
    First,
    Second,
}

/// What a few places say about two pieces that overlap.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Verdict {
    /// Everywhere the same, clearly.
    Clear(Front),
    /// Not the same everywhere, or hardly any difference: look at each piece of the overlap.
    Mixed,
    /// No place was found in both.
    Nowhere,
}

/// A difference of depth that counts fully.
const CLEAR: f64 = 0.02;

/// A difference of depth that is plain.
const PLAIN: f64 = 0.004;

/// Level lines on which places are looked for.
const ROWS: u32 = 7;

/// Looks at a few places in both pieces.
pub(crate) fn glance(first: &Part, second: &Part) -> Verdict {
    let shared = first.region.bounds().intersect(second.region.bounds());
    let mut verdict = Verdict::Nowhere;
    for row in 0..ROWS {
        let y = shared.y0 + shared.height() * (f64::from(row) + 0.5) / f64::from(ROWS);
        for (from, to) in common(&first.region.stretches(y), &second.region.stretches(y)) {
            for share in [0.1, 0.5, 0.9] {
                let point = Point::new(from + (to - from) * share, y);
                let (Some(a), Some(b)) = (first.front(point), second.front(point)) else { continue };
                if (a - b).abs() < PLAIN {
                    return Verdict::Mixed;
                }
                let front = if a > b { Front::First } else { Front::Second };
                match verdict {
                    Verdict::Clear(known) if known != front => return Verdict::Mixed,
                    _ => verdict = Verdict::Clear(front),
                }
            }
        }
    }
    verdict
}

/// The stretches that lie in both of two rising lists.
fn common(first: &[(f64, f64)], second: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let each = |a: &(f64, f64)| {
        let a = *a;
        second.iter().map(move |b| (a.0.max(b.0), a.1.min(b.1))).filter(|(from, to)| from < to)
    };
    first.iter().flat_map(each).collect()
}

/// Which surface is nearer to the viewer in an area both cover.
pub(crate) fn nearer(area: &Region, first: &Part, second: &Part) -> Front {
    let mut sum = 0.0;
    for point in samples(area) {
        if let (Some(a), Some(b)) = (first.front(point), second.front(point)) {
            sum += (a - b).clamp(-CLEAR, CLEAR);
        }
    }
    if sum >= 0.0 { Front::First } else { Front::Second }
}

/// Some points inside an area.
pub(crate) fn samples(area: &Region) -> Vec<Point> {
    let bounds = area.bounds();
    let mut points = Vec::new();
    for row in 0..ROWS {
        let y = bounds.y0 + bounds.height() * (f64::from(row) + 0.5) / f64::from(ROWS);
        for (from, to) in area.stretches(y) {
            points.extend([0.2, 0.5, 0.8].map(|share| Point::new(from + (to - from) * share, y)));
        }
    }
    points
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn stretches_in_common_are_what_both_have() {
        assert_eq!(common(&[(0.0, 2.0), (3.0, 5.0)], &[(1.0, 4.0)]), [(1.0, 2.0), (3.0, 4.0)]);
        assert_eq!(common(&[(0.0, 1.0)], &[(1.0, 2.0)]), []);
    }
}
