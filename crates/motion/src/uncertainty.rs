//! How sure an angle is: the error budget of the evidence notes on sensing with a phone, as one standard deviation.

use crate::task::{Exercise, Tells};

/// Degrees. Left of the filter after smoothing, slow movement at 60 Hz ("Error budget").
const FILTER_DEG: f64 = 0.5;
/// What the accelerometer's offset leaves in a difference to a pose ("Error budget": 1.0 to 1.6 with one pose).
const OFFSET_DEG: f64 = 1.0;
/// What is left of a turned strap after the pose ("Error budget": 0.5 to 2).
const STRAP_DEG: f64 = 1.0;
/// Soft tissue of the forearm ("Error budget": 2 to 4).
const TISSUE_DEG: f64 = 2.0;
/// Soft tissue of the upper arm, which moves more ("Error budget").
const UPPER_ARM_TISSUE_DEG: f64 = 3.0;
/// A turn about a vertical axis, by the gyroscope alone ("Per exercise": 3 to 5).
const TURN_DEG: f64 = 3.0;
/// Relative error of a length that was measured with a tape ("Per exercise": about 5 percent dominates a diameter).
pub const LENGTH_PART: f64 = 0.05;

/// One standard deviation of an angle against the pose as held, in degrees.
///
/// # Method
/// Root of the sum of squares of the parts. A trunk that leans is not in it: a phone on the arm does not see it.
pub fn sigma_deg(exercise: Exercise, worn: crate::Worn, slip_deg: f64) -> f64 {
    let tissue = if worn == crate::Worn::UpperArm { UPPER_ARM_TISSUE_DEG } else { TISSUE_DEG };
    let turn = if exercise.tells() == Tells::Turn { TURN_DEG } else { 0.0 };
    let parts = [FILTER_DEG, OFFSET_DEG, STRAP_DEG, tissue, turn, slip_deg / 2.0];
    parts.iter().map(|part| part * part).sum::<f64>().sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Worn;

    #[test]
    fn the_budget_is_that_of_the_notes() {
        // "Total: about 2 to 3 same-patient change (supine)"; 3 to 5 for a turn by the gyroscope.
        let supine = sigma_deg(Exercise::SupineElevation, Worn::Forearm, 0.0);
        assert!((2.0..3.0).contains(&supine), "{supine}");
        let turn = sigma_deg(Exercise::ExternalRotation, Worn::Forearm, 0.0);
        assert!((3.0..5.0).contains(&turn), "{turn}");
        assert!(sigma_deg(Exercise::SupineElevation, Worn::Forearm, 12.0) > 6.0);
    }
}
