//! The leg as solids, told as a right one: leg of the shorts, thigh, shank, shoe.
//!
//! # Source
//! Girths at the thickest places from the measured ratios of young adults (ANSUR II); everything between them, the
//! shorts and the shoe are own choice, drawn by eye.

use body::{LegJoints, Rotation, Vector};

use super::build::Shape;
use super::joints::ANKLE_HEIGHT;
use super::loft::{Cap, FINE, Loft, Ring, Solid};
use super::stations::between;

/// Share of the thigh, half thickness in the plane of bending, across it.
const SHORTS: [[f64; 3]; 6] = [
    [-0.06, 0.0560, 0.0500],
    [0.05, 0.0600, 0.0545],
    [0.20, 0.0605, 0.0560],
    [0.35, 0.0585, 0.0555],
    [0.48, 0.0570, 0.0550],
    [0.56, 0.0570, 0.0550],
];

/// Where the leg of the shorts ends, as a share of the thigh.
const HEM: f64 = 0.56;

const THIGH: [[f64; 3]; 5] = [
    [0.40, 0.0500, 0.0490],
    [0.56, 0.0470, 0.0462],
    [0.72, 0.0412, 0.0408],
    [0.88, 0.0362, 0.0365],
    [1.00, 0.0348, 0.0352],
];

/// Share of the shank, half thickness in the plane of bending, across it, how far backward.
const SHANK: [[f64; 4]; 7] = [
    [0.00, 0.0345, 0.0345, 0.000],
    [0.12, 0.0340, 0.0340, 0.001],
    [0.30, 0.0365, 0.0365, 0.006],
    [0.50, 0.0320, 0.0325, 0.006],
    [0.66, 0.0255, 0.0262, 0.003],
    [0.80, 0.0212, 0.0215, 0.001],
    [1.00, 0.0195, 0.0198, 0.000],
];

/// From the ankle toward the toes: half height, half breadth.
const SHOE: [[f64; 3]; 10] = [
    [-0.038, 0.0135, 0.0125],
    [-0.033, 0.0205, 0.0190],
    [-0.018, 0.0275, 0.0235],
    [0.000, 0.0310, 0.0245],
    [0.020, 0.0285, 0.0245],
    [0.044, 0.0215, 0.0265],
    [0.068, 0.0165, 0.0280],
    [0.088, 0.0138, 0.0262],
    [0.102, 0.0110, 0.0205],
    [0.109, 0.0085, 0.0140],
];

/// A right leg in the room.
#[derive(Debug, Clone, Copy)]
pub(crate) struct LegFrames {
    pub(crate) joints: LegJoints,
    pub(crate) foot: Rotation,
    /// To the right of the body, for a leg whose knee is straight.
    pub(crate) aside: Vector,
}

impl LegFrames {
    /// Forward of a bone, in the plane of bending, and across that plane.
    fn axes(&self, from: Vector, to: Vector) -> (Vector, Vector) {
        let along = (to - from).normalize_or(-Vector::Y);
        let bones = (self.joints.knee - self.joints.hip).cross(self.joints.ankle - self.joints.knee);
        // A knee bends one way only: that tells where its outside is, unless the leg is straight.
        let across = if bones.length() > 4e-3 { -bones.normalize() } else { self.aside };
        let across = (across - along * across.dot(along)).normalize_or(along.any_orthonormal_vector());
        (across.cross(along), across)
    }

    fn thigh_ring(&self, place: f64, a: f64, b: f64) -> Ring {
        let (from, to) = (self.joints.hip, self.joints.knee);
        let (ahead, across) = self.axes(from, to);
        Ring::ellipse(from + (to - from) * place, ahead * a, across * b)
    }

    /// One leg of the shorts.
    pub(crate) fn shorts(&self, shape: &Shape) -> Solid {
        let rings: Vec<Ring> = (0..=8)
            .map(|step| {
                let [place, a, b] = between(&SHORTS, -0.06 + (HEM + 0.06) * f64::from(step) / 8.0);
                self.thigh_ring(place, a * shape.legs, b * shape.legs)
            })
            .collect();
        Solid::Loft(Loft::new(&rings, FINE, [Cap::Round(0.03), Cap::Closed]))
    }

    /// The lower edge of the shorts.
    pub(crate) fn hem(&self, shape: &Shape) -> Ring {
        let [place, a, b] = between(&SHORTS, HEM);
        self.thigh_ring(place, a * shape.legs, b * shape.legs)
    }

    /// Where the leg of the shorts opens to.
    pub(crate) fn hem_axis(&self) -> Vector {
        (self.joints.knee - self.joints.hip).normalize_or(-Vector::Y)
    }

    /// What of the thigh comes out of the shorts.
    pub(crate) fn thigh(&self, shape: &Shape) -> Solid {
        let rings: Vec<Ring> = (0..=8)
            .map(|step| {
                let [place, a, b] = between(&THIGH, 0.5 + 0.5 * f64::from(step) / 8.0);
                self.thigh_ring(place, a * shape.legs, b * shape.legs)
            })
            .collect();
        Solid::Loft(Loft::new(&rings, FINE, [Cap::Open, Cap::Round(0.032)]))
    }

    /// From the knee to the ankle.
    pub(crate) fn shank(&self, shape: &Shape) -> Solid {
        let (from, to) = (self.joints.knee, self.joints.ankle);
        let (ahead, across) = self.axes(from, to);
        let rings: Vec<Ring> = (0..=12)
            .map(|step| {
                let [place, a, b, behind] = between(&SHANK, f64::from(step) / 12.0);
                let [a, b] = [a, b].map(|radius| radius * shape.legs);
                Ring::ellipse(from + (to - from) * place - ahead * behind, ahead * a, across * b)
            })
            .collect();
        Solid::Loft(Loft::new(&rings, FINE, [Cap::Round(0.032), Cap::Round(0.015)]))
    }

    /// The shoe, its sole flat.
    pub(crate) fn shoe(&self) -> Solid {
        let sole = self.joints.ankle - self.foot.y() * ANKLE_HEIGHT;
        let rings: Vec<Ring> = (0..=12)
            .map(|step| {
                let [along, half, broad] = between(&SHOE, -0.038 + (0.109 + 0.038) * f64::from(step) / 12.0);
                let center = sole + self.foot.x() * along + self.foot.y() * half;
                Ring { center, a: self.foot.y() * half, b: self.foot.z() * broad, power: 2.5 }
            })
            .collect();
        Solid::Loft(Loft::new(&rings, FINE, [Cap::Round(0.004), Cap::Round(0.005)]))
    }
}
