//! An invented person: lengths, masses, and how steadily and willingly they move.

use evidence::{Entry, ids};
use glam::DVec3;

use crate::arm::Lengths;
use crate::parameter::{Draws, OWN_CHOICE, Parameter, Spread, own};

/// Gravity, meters per second squared.
pub fn gravity() -> f64 {
    ids::GRAVITY.number()
}

/// Somebody who does not exist.
#[derive(Debug, Clone)]
pub struct Person {
    /// Lengths of the body.
    pub lengths: Lengths,
    /// The hanging arm.
    pub hanging: Hanging,
    /// Root mean square of the tremor of a joint that works, degrees.
    pub tremor_deg: f64,
    /// Root mean square of the sway of the trunk, degrees.
    pub sway_deg: f64,
    /// Lean of the trunk away from an arm that is raised to 150 degrees, standing.
    pub lean_deg: f64,
    /// Share of the amplitude that is lost by the last repetition.
    pub fatigue: f64,
    /// Seconds from start to peak.
    pub outward_s: f64,
    /// Seconds back over seconds out.
    pub back_ratio: f64,
    /// Spread of every duration and amplitude between repetitions, as a share.
    pub unevenness: f64,
    /// Damping of a hanging arm, as a share of critical damping.
    pub damping: f64,
    /// All that was drawn.
    pub draws: Draws,
}

/// A straight arm that hangs and swings as one stiff body.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hanging {
    /// Moment of inertia about the shoulder, kilogram square meters.
    pub inertia: f64,
    /// Mass times distance, kilogram meters.
    pub weighted: f64,
}

impl Hanging {
    /// Length of the simple pendulum with the same period, meters.
    pub fn length(self) -> f64 {
        self.inertia / self.weighted
    }

    /// Angular frequency of small swings, radians a second.
    pub fn frequency(self) -> f64 {
        (gravity() / self.length()).sqrt()
    }
}

const STATURE: Parameter =
    Parameter { name: "stature", unit: "m", spread: Spread::Bell(1.69, 0.085), source: OWN_CHOICE };
const BODY_MASS_INDEX: Parameter = own("body_mass_index", "kg/m2", 20.0, 33.0);
// Physiological tremor is 6 to 12 Hz and well under a degree: memory; the sizes are chosen.
const TREMOR: Parameter = own("tremor_rms_with_effort", "deg", 0.005, 0.06);
const SWAY: Parameter = own("trunk_sway_rms", "deg", 0.1, 0.6);
const LEAN: Parameter = own("trunk_lean_at_150", "deg", 0.0, 8.0);
const FATIGUE: Parameter = own("amplitude_lost_by_fatigue", "share", 0.0, 0.18);
const OUTWARD: Parameter = own("time_out", "s", 1.1, 3.2);
const BACK: Parameter = own("time_back_over_out", "ratio", 0.7, 1.4);
const UNEVEN: Parameter = own("unevenness", "share", 0.02, 0.08);
const DAMPING: Parameter = own("arm_damping", "share of critical", 0.04, 0.1);
// What `issues 7` takes for a phone with its strap, at a forearm's middle.
const WORN_MASS_KG: f64 = 0.25;

impl Person {
    /// The person of a seed.
    pub fn draw(seed: u64) -> Self {
        let mut draws = Draws::new(seed, "person");
        let is_man = draws.random().happens(0.5);
        let stature = draws.draw(&STATURE);
        let mass = draws.draw(&BODY_MASS_INDEX) * stature * stature;
        let part = |entry: &Entry| entry.number() * stature;
        let lengths = Lengths {
            shoulder: DVec3::new(
                0.0,
                -part(ids::SHOULDER_HALF_BREADTH),
                part(ids::SHOULDER_CENTER_HEIGHT) - part(ids::HIP_HEIGHT),
            ),
            hip_height: part(ids::HIP_HEIGHT),
            upper_arm: part(ids::UPPER_ARM_LENGTH),
            forearm: part(ids::FOREARM_LENGTH),
            grip: part(ids::GRIP_CENTER),
        };
        Self {
            hanging: hanging(is_man, stature, mass, &lengths),
            lengths,
            tremor_deg: draws.draw(&TREMOR),
            sway_deg: draws.draw(&SWAY),
            lean_deg: draws.draw(&LEAN),
            fatigue: draws.draw(&FATIGUE),
            outward_s: draws.draw(&OUTWARD),
            back_ratio: draws.draw(&BACK),
            unevenness: draws.draw(&UNEVEN),
            damping: draws.draw(&DAMPING),
            draws,
        }
    }
}

/// The arm with the phone on its forearm, from the published parts of body mass and of length.
fn hanging(is_man: bool, stature: f64, mass: f64, lengths: &Lengths) -> Hanging {
    let [upper, fore, hand, palm] = if is_man {
        [
            [ids::UPPER_ARM_MASS_MEN, ids::UPPER_ARM_CENTER_MEN, ids::UPPER_ARM_GYRATION_MEN],
            [ids::FOREARM_MASS_MEN, ids::FOREARM_CENTER_MEN, ids::FOREARM_GYRATION_MEN],
            [ids::HAND_MASS_MEN, ids::HAND_CENTER_MEN, ids::HAND_GYRATION_MEN],
            [ids::PALM_LENGTH_MEN; 3],
        ]
    } else {
        [
            [ids::UPPER_ARM_MASS_WOMEN, ids::UPPER_ARM_CENTER_WOMEN, ids::UPPER_ARM_GYRATION_WOMEN],
            [ids::FOREARM_MASS_WOMEN, ids::FOREARM_CENTER_WOMEN, ids::FOREARM_GYRATION_WOMEN],
            [ids::HAND_MASS_WOMEN, ids::HAND_CENTER_WOMEN, ids::HAND_GYRATION_WOMEN],
            [ids::PALM_LENGTH_WOMEN; 3],
        ]
    };
    let wrist = lengths.upper_arm + lengths.forearm;
    let worn_at = lengths.upper_arm + lengths.forearm / 2.0;
    let start = Hanging { inertia: WORN_MASS_KG * worn_at * worn_at, weighted: WORN_MASS_KG * worn_at };
    [
        (upper, 0.0, lengths.upper_arm),
        (fore, lengths.upper_arm, lengths.forearm),
        (hand, wrist, palm[0].number() * stature),
    ]
    .into_iter()
    .fold(start, |sum, ([own, center, gyration], from, counted)| {
        let [own, center, gyration] =
            [own.number() * mass, from + center.number() * counted, gyration.number() * counted];
        Hanging {
            inertia: sum.inertia + own * (center * center + gyration * gyration),
            weighted: sum.weighted + own * center,
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The natural periods that `motion.md` computed from the same tables: 1.32 s for a man, 1.26 s for a woman;
    /// 250 g at the forearm change them by under 0.03 s.
    #[test]
    fn the_arm_swings_as_the_tables_say() {
        let period = |is_man, stature: f64, mass| {
            let part = |entry: &Entry| entry.number() * stature;
            let lengths = Lengths {
                shoulder: DVec3::ZERO,
                hip_height: 0.0,
                upper_arm: part(ids::UPPER_ARM_LENGTH),
                forearm: part(ids::FOREARM_LENGTH),
                grip: part(ids::GRIP_CENTER),
            };
            std::f64::consts::TAU / hanging(is_man, stature, mass, &lengths).frequency()
        };
        assert!((period(true, 1.75, 80.0) - 1.32).abs() < 0.03);
        assert!((period(false, 1.63, 65.0) - 1.26).abs() < 0.03);
    }
}
