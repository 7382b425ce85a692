//! The arm as solids, told as a right one.
//!
//! # Source
//! Girths at the thickest places from the measured ratios of young adults (ANSUR II: Gordon and others, 2014,
//! NATICK/TR-15/007; circumference over 2π); everything between them is own choice, drawn by eye. Lengths come with the
//! joints.

use body::{Arm, ArmJoints, Rotation};

use super::build::Shape;
use super::loft::{Cap, FINE, Loft, Ring, Solid};
use super::stations::between;

/// Share of the upper arm, half thickness in the plane of bending and across it, how far forward.
const UPPER_ARM: [[f64; 4]; 11] = [
    [-0.08, 0.0200, 0.0200, 0.000],
    [-0.05, 0.0275, 0.0270, 0.000],
    [0.00, 0.0345, 0.0340, 0.000],
    [0.07, 0.0378, 0.0370, 0.000],
    [0.14, 0.0388, 0.0378, 0.000],
    [0.28, 0.0350, 0.0345, 0.000],
    [0.45, 0.0318, 0.0300, 0.001],
    [0.62, 0.0316, 0.0282, 0.002],
    [0.80, 0.0282, 0.0258, 0.001],
    [0.92, 0.0258, 0.0250, 0.000],
    [1.00, 0.0256, 0.0252, 0.000],
];

/// Share of the forearm, half thickness toward the palm and across it.
const FOREARM: [[f64; 3]; 7] = [
    [0.00, 0.0254, 0.0254],
    [0.12, 0.0262, 0.0275],
    [0.26, 0.0262, 0.0285],
    [0.45, 0.0238, 0.0258],
    [0.70, 0.0178, 0.0212],
    [0.90, 0.0142, 0.0186],
    [1.02, 0.0132, 0.0180],
];

const STEPS: u32 = 12;

/// The frames of a right arm in the room.
#[derive(Debug, Clone, Copy)]
pub(crate) struct ArmFrames {
    pub(crate) joints: ArmJoints,
    pub(crate) humerus: Rotation,
    pub(crate) forearm: Rotation,
    pub(crate) hand: Rotation,
    turn: body::Angle,
}

impl ArmFrames {
    /// Of an arm on a trunk, joints and trunk told as of a right arm.
    pub(crate) fn of(arm: &Arm, joints: ArmJoints, trunk: Rotation) -> Self {
        Self {
            joints,
            humerus: trunk * arm.shoulder.humerus(),
            forearm: trunk * arm.forearm_frame(),
            hand: trunk * arm.hand_frame(),
            turn: arm.forearm,
        }
    }

    /// From the shoulder to the elbow, its end rounded by the muscle that covers the shoulder.
    pub(crate) fn upper_arm(&self, shape: &Shape) -> Solid {
        let (from, to) = (self.joints.shoulder, self.joints.elbow);
        let rings: Vec<Ring> = UPPER_ARM_PLACES
            .into_iter()
            .map(|place| {
                let [_, a, b, ahead] = between(&UPPER_ARM, place);
                let [a, b] = [a, b].map(|radius| radius * shape.arms);
                let center = from + (to - from) * place + self.humerus.x() * ahead;
                Ring::ellipse(center, self.humerus.x() * a, self.humerus.z() * b)
            })
            .collect();
        Solid::Loft(Loft::new(&rings, FINE, [Cap::Round(0.007), Cap::Round(0.0254)]))
    }

    /// From the elbow to the wrist; the turn of the forearm grows toward the hand.
    pub(crate) fn forearm(&self, shape: &Shape) -> Solid {
        let (from, to) = (self.joints.elbow, self.joints.wrist);
        let rings: Vec<Ring> = places()
            .map(|place| {
                let [_, a, b] = between(&FOREARM, place);
                let [a, b] = [a, b].map(|radius| radius * shape.arms);
                let frame = self.forearm * Rotation::about_y(self.turn * place.clamp(0.0, 1.0));
                Ring::ellipse(from + (to - from) * place, frame.z() * a, frame.x() * b)
            })
            .collect();
        Solid::Loft(Loft::new(&rings, FINE, [Cap::Round(0.0254), Cap::Round(0.008)]))
    }
}

/// Where the upper arm's sections are: close together where it is round.
const UPPER_ARM_PLACES: [f64; 16] =
    [-0.08, -0.06, -0.035, 0.0, 0.04, 0.09, 0.15, 0.22, 0.30, 0.40, 0.50, 0.60, 0.70, 0.80, 0.90, 1.00];

/// Where the forearm's sections are.
fn places() -> impl Iterator<Item = f64> {
    (0..=STEPS).map(|step| 1.02 * f64::from(step) / f64::from(STEPS))
}
