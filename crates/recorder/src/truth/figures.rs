//! Revolutions and cycles of a path in a plane, counted step by step.

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use glam::DVec2;
use serde_json::{Value, json};

use crate::pendulum::Way;

/// One time around, or one time to and fro.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Revolution {
    /// When it began.
    pub from_s: f64,
    /// When it was complete.
    pub until_s: f64,
    /// Seen from above.
    pub way: Way,
    /// The longer principal diameter.
    pub longer_cm: f64,
    /// The shorter one.
    pub shorter_cm: f64,
    /// Whether the longer one alone decides if it counts, as for a swing.
    pub is_swing: bool,
}

/// Smaller ones are not counted: the contract.
const LEAST_CM: f64 = 4.0;

/// A turn that ends in rest is complete this near to its start, radians: rounding and tremor, own choice.
const CLOSES_WITHIN: f64 = 0.035;

impl Revolution {
    /// Mean of the two principal diameters.
    pub fn mean_diameter_cm(&self) -> f64 {
        (self.longer_cm + self.shorter_cm) / 2.0
    }

    /// Whether it is large enough to count.
    pub fn counts(&self) -> bool {
        let size = if self.is_swing { self.longer_cm } else { self.mean_diameter_cm() };
        size >= LEAST_CM
    }

    pub(super) fn to_json(self) -> Value {
        let way = match self.way {
            Way::Clockwise => "clockwise",
            Way::Anticlockwise => "anticlockwise",
        };
        json!({
            "from_s": self.from_s, "until_s": self.until_s, "way": if self.is_swing { Value::Null } else { way.into() },
            "longer_cm": self.longer_cm, "shorter_cm": self.shorter_cm, "counted": self.counts(),
        })
    }
}

/// Completed revolutions of a path in meters around a moving middle.
///
/// # Method
/// The angle around the middle is followed from step to step. A revolution is complete a whole turn after the last one;
/// when the path turns back by a quarter, the next one begins where it was farthest.
pub fn revolutions(path: &[DVec2], middle: &[DVec2], start_s: f64, step: f64) -> Vec<Revolution> {
    let mut found = Vec::new();
    let (mut turned, mut anchor, mut far) = (0.0_f64, (0, 0.0_f64), (0, 0.0_f64));
    let mut last: Option<DVec2> = None;
    for (index, (point, middle)) in path.iter().zip(middle).enumerate() {
        let arm = *point - *middle;
        turned += last.map_or(0.0, |last| last.angle_to(arm));
        if !turned.is_finite() {
            turned = far.1;
        }
        last = Some(arm);
        let (since, way) = (turned - anchor.1, far.1 - anchor.1);
        if since.abs() > CLOSES_WITHIN && since * way >= 0.0 && since.abs() >= way.abs() {
            far = (index, turned);
        } else if (turned - far.1).abs() > FRAC_PI_2 {
            anchor = far;
            far = (index, turned);
        }
        if (turned - anchor.1).abs() >= TAU - CLOSES_WITHIN {
            let [longer, shorter] = principal(&path[anchor.0..=index]);
            found.push(Revolution {
                from_s: start_s + anchor.0 as f64 * step,
                until_s: start_s + index as f64 * step,
                way: Way::of(turned - anchor.1),
                longer_cm: longer * 100.0,
                shorter_cm: shorter * 100.0,
                is_swing: false,
            });
            // From where it should have closed, or the small allowances would add up to a revolution.
            anchor = (index, anchor.1 + TAU * (turned - anchor.1).signum());
            far = anchor;
        }
    }
    found
}

/// Full cycles of a path that goes to and fro: from one passage of the middle to the next in the same direction.
pub fn cycles(path: &[DVec2], middle: &[DVec2], start_s: f64, step: f64) -> Vec<Revolution> {
    let off: Vec<DVec2> = path.iter().zip(middle).map(|(point, middle)| *point - *middle).collect();
    // The direction of the longest width of all.
    let main = directions().max_by(|a, b| width(&off, *a).total_cmp(&width(&off, *b))).unwrap_or(DVec2::X);
    let along: Vec<f64> = off.iter().map(|point| point.dot(main)).collect();
    let passages: Vec<usize> =
        (1..along.len()).filter(|index| along[index - 1] < 0.0 && along[*index] >= 0.0).collect();
    passages
        .windows(2)
        .map(|pair| {
            let [longer, shorter] = principal(&path[pair[0]..=pair[1]]);
            Revolution {
                from_s: start_s + pair[0] as f64 * step,
                until_s: start_s + pair[1] as f64 * step,
                way: Way::Anticlockwise,
                longer_cm: longer * 100.0,
                shorter_cm: shorter * 100.0,
                is_swing: true,
            }
        })
        .collect()
}

/// Directions two degrees apart over half a turn.
fn directions() -> impl Iterator<Item = DVec2> {
    (0..90).map(|index| DVec2::from_angle(f64::from(index) * PI / 90.0))
}

fn width(path: &[DVec2], direction: DVec2) -> f64 {
    let (low, high) = path.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), point| {
        let along = point.dot(direction);
        (low.min(along), high.max(along))
    });
    (high - low).max(0.0)
}

/// The greatest and the least width of a path: of an ellipse its principal diameters.
fn principal(path: &[DVec2]) -> [f64; 2] {
    // Every fifth millisecond will do for a width.
    let thinned: Vec<DVec2> = path.iter().copied().step_by(5).collect();
    directions()
        .map(|direction| width(&thinned, direction))
        .fold([0.0, f64::INFINITY], |[most, least], width| [most.max(width), least.min(width)])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ellipse(turns: f64, a: f64, b: f64) -> Vec<DVec2> {
        let many = (turns.abs() * 1000.0).round() as usize + 2;
        (0..many)
            .map(|index| {
                let angle = index as f64 / 1000.0 * TAU * turns.signum();
                DVec2::new(a * angle.cos(), b * angle.sin()).rotate(DVec2::from_angle(0.7))
            })
            .collect()
    }

    fn around(path: &[DVec2]) -> Vec<Revolution> {
        revolutions(path, &vec![DVec2::ZERO; path.len()], 0.0, 0.001)
    }

    #[test]
    fn only_completed_turns_count_and_each_has_its_diameters() {
        assert_eq!(around(&ellipse(2.99, 0.1, 0.1)).len(), 2);
        assert_eq!(around(&ellipse(40.9, 0.1, 0.1)).len(), 40);
        let found = around(&ellipse(-3.0, 0.1, 0.05));
        assert_eq!(found.len(), 3);
        assert!(found.iter().all(|one| one.way == Way::Clockwise));
        assert!((found[0].longer_cm - 20.0).abs() < 0.02 && (found[0].shorter_cm - 10.0).abs() < 0.02);
    }

    #[test]
    fn turning_back_starts_anew() {
        let mut path = ellipse(2.5, 0.1, 0.1);
        let mut back = path.clone();
        back.reverse();
        path.extend(back);
        let ways: Vec<Way> = around(&path).iter().map(|one| one.way).collect();
        assert_eq!(ways, [Way::Anticlockwise, Way::Anticlockwise, Way::Clockwise, Way::Clockwise]);
    }

    #[test]
    fn small_ones_are_found_and_do_not_count() {
        let counts =
            |diameter: f64| around(&ellipse(1.0, diameter / 2.0, diameter / 2.0)).iter().filter(|r| r.counts()).count();
        assert_eq!((counts(0.0399), counts(0.0401)), (0, 1));
    }

    #[test]
    fn a_swing_has_full_cycles() {
        let path: Vec<DVec2> = ellipse(5.2, 0.0, 0.1);
        let found = cycles(&path, &vec![DVec2::ZERO; path.len()], 0.0, 0.001);
        // Passages upward at 0 (not seen: it starts there), 1, 2, 3, 4, 5.
        assert_eq!(found.len(), 4);
        assert!(found.iter().all(|one| (one.longer_cm - 20.0).abs() < 0.05 && one.shorter_cm < 0.8));
    }
}
