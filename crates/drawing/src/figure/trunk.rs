//! The trunk as solids: shirt, hips, neck, and the muscles that follow the arm.
//!
//! # Source
//! Breadths and depths from the measured ratios of young adults (ANSUR II), slimmed by eye as a neutral figure; the
//! muscles between trunk and arm are own choice.

use body::{Rotation, Vector};
use evidence::ids;

use super::arm::ArmFrames;
use super::build::Shape;
use super::loft::{Bead, Cap, FINE, Loft, Ring, Solid};
use super::stations::between;

/// Height above the floor, half breadth, half depth, how far forward; weight of waist, hips and chest in the build.
const SHIRT: [[f64; 4]; 11] = [
    [0.532, 0.0995, 0.0695, -0.004],
    [0.560, 0.0960, 0.0670, -0.001],
    [0.585, 0.0895, 0.0625, 0.001],
    [0.615, 0.0850, 0.0600, 0.003],
    [0.660, 0.0855, 0.0630, 0.005],
    [0.700, 0.0880, 0.0665, 0.006],
    [0.735, 0.0905, 0.0690, 0.006],
    [0.765, 0.0890, 0.0655, 0.001],
    [0.788, 0.0830, 0.0565, -0.004],
    [0.804, 0.0660, 0.0470, -0.008],
    [0.820, 0.0450, 0.0395, -0.0105],
];

const HIPS: [[f64; 4]; 5] = [
    [0.468, 0.0660, 0.0500, -0.004],
    [0.495, 0.0900, 0.0630, -0.007],
    [0.525, 0.0985, 0.0670, -0.008],
    [0.570, 0.0920, 0.0620, -0.003],
    [0.610, 0.0800, 0.0560, 0.002],
];

/// How square the trunk is.
const SQUARE: f64 = 2.35;

/// How far something on the shirt lies before it.
const CLOTH: f64 = 0.004;

/// The trunk of a person.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Trunk<'s> {
    pub(crate) frame: Rotation,
    pub(crate) shape: &'s Shape,
}

impl Trunk<'_> {
    /// Heights between which the shirt closes around the trunk.
    pub(crate) const SHIRT_REACHES: std::ops::RangeInclusive<f64> = 0.532..=0.804;

    /// A section of the plain figure: how far forward, half breadth, half depth.
    pub(crate) fn section(height: f64) -> [f64; 3] {
        let [_, breadth, depth, ahead] = between(&SHIRT, height);
        [ahead, breadth, depth]
    }

    /// A place of the trunk: forward, height above the floor of somebody who stands, right.
    pub(crate) fn at(&self, ahead: f64, height: f64, right: f64) -> Vector {
        self.frame * Vector::new(ahead, height - ids::HIP_HEIGHT.number(), right)
    }

    fn ring(&self, table: &[[f64; 4]], height: f64) -> Ring {
        let [_, breadth, depth, ahead] = between(table, height);
        let near = |middle: f64, reach: f64| (-((height - middle) / reach).powi(2)).exp();
        let (waist, hips, chest) = (near(0.625, 0.045), near(0.520, 0.055), near(0.735, 0.070));
        let shape = self.shape;
        let factor = (waist * shape.waist + hips * shape.hips + chest * shape.chest) / (waist + hips + chest);
        let belly = shape.belly * near(0.615, 0.060) + shape.bust * near(0.722, 0.032);
        let depth = depth * shape.depth + belly * 0.5;
        Ring {
            center: self.at(ahead + belly * 0.5, height, 0.0),
            a: self.frame.x() * depth,
            b: self.frame.z() * (breadth * factor),
            power: SQUARE,
        }
    }

    /// The shirt without sleeves, from its hem to the collar.
    pub(crate) fn shirt(&self) -> Solid {
        let mut rings: Vec<Ring> =
            (0..=18).map(|step| self.ring(&SHIRT, 0.532 + (0.820 - 0.532) * f64::from(step) / 18.0)).collect();
        rings.push(self.collar());
        Solid::Loft(Loft::new(&rings, FINE + 4, [Cap::Closed, Cap::Closed]))
    }

    /// On the front of the shirt at a height, this far to the right.
    pub(crate) fn on_chest(&self, height: f64, right: f64) -> Vector {
        self.on_shirt(height, right, 1.0)
    }

    /// On the back of the shirt.
    pub(crate) fn on_back(&self, height: f64, right: f64) -> Vector {
        self.on_shirt(height, right, -1.0)
    }

    fn on_shirt(&self, height: f64, right: f64, front: f64) -> Vector {
        let ring = self.ring(&SHIRT, height);
        let share = (right / ring.b.length()).clamp(-1.0, 1.0);
        let rest = (1.0 - share.abs().powf(SQUARE)).max(0.0).powf(1.0 / SQUARE);
        ring.center + ring.a * (front * (rest + CLOTH / ring.a.length())) + ring.b * share
    }

    /// The lower edge of the shirt.
    pub(crate) fn hem(&self) -> Ring {
        self.ring(&SHIRT, 0.532)
    }

    /// The edge of the shirt around the neck, lower in front.
    pub(crate) fn collar(&self) -> Ring {
        let neck = self.shape.neck;
        Ring {
            center: self.at(-0.0115, 0.8330, 0.0),
            a: self.frame * Vector::new(0.0350, -0.0125, 0.0) * neck,
            b: self.frame.z() * (0.0395 * neck),
            power: 2.0,
        }
    }

    /// Where the collar opens to.
    pub(crate) fn collar_axis(&self) -> Vector {
        self.frame * Vector::new(0.0125, 0.0350, 0.0).normalize()
    }

    /// The hips, under the shorts.
    pub(crate) fn hips(&self) -> Solid {
        let rings: Vec<Ring> =
            (0..=8).map(|step| self.ring(&HIPS, 0.468 + (0.610 - 0.468) * f64::from(step) / 8.0)).collect();
        Solid::Loft(Loft::new(&rings, FINE + 4, [Cap::Round(0.022), Cap::Open]))
    }

    /// From the collar to the head.
    pub(crate) fn neck(&self, head: Vector, head_frame: Rotation) -> Solid {
        let collar = self.collar();
        let to = head + head_frame * Vector::new(-0.016, -0.030, 0.0);
        let radius = 0.0310 * self.shape.neck;
        let rings: Vec<Ring> = (0..=6)
            .map(|step| {
                let share = f64::from(step) / 6.0;
                // Wider where it comes out of the shirt.
                let flare = (1.0 - share).powi(3);
                let level = |axis: Vector, edge: Vector| axis * radius * (1.0 - flare) + edge * (0.93 * flare);
                let center = collar.center + (to - collar.center) * share;
                Ring::ellipse(center, level(self.frame.x(), collar.a), level(self.frame.z(), collar.b))
            })
            .collect();
        Solid::Loft(Loft::new(&rings, FINE, [Cap::Open, Cap::Round(0.02)]))
    }

    /// What joins the trunk to an arm on its right: the muscle from the neck, the cap over the joint and, when the arm
    /// is raised, the folds before and behind the armpit.
    pub(crate) fn shoulder(&self, arm: &ArmFrames, folds: Folds) -> Vec<Solid> {
        let up = self.frame.y();
        let shoulder = arm.joints.shoulder;
        let mut solids = vec![
            chain([
                (self.at(-0.014, 0.825, 0.028 * self.shape.neck), 0.0150),
                (self.at(-0.012, 0.8135, 0.056), 0.0190),
                (shoulder + up * 0.0080 - self.frame.x() * 0.002 - self.frame.z() * 0.005, 0.0190),
                (shoulder + up * 0.0005 + self.frame.z() * 0.0100, 0.0165),
            ]),
            chain([(self.at(0.002, 0.775, 0.052), 0.0400), (shoulder - self.frame.z() * 0.008, 0.0255)]),
        ];
        let raised = arm.joints.elbow - shoulder;
        let elevation = raised.normalize_or(-up).dot(-up).clamp(-1.0, 1.0).acos().to_degrees();
        let grown = ((elevation - 20.0) / 50.0).clamp(0.0, 1.0);
        if grown > 0.0 && folds == Folds::Shown {
            let reach = 0.10 + 0.20 * grown;
            let outside = raised.normalize_or(-up);
            // Across the arm, toward the chest and toward the back.
            let across = self.frame.x() - outside * outside.dot(self.frame.x());
            let inner = shoulder + outside * (reach * ids::UPPER_ARM_LENGTH.number());
            let [front, back] = [0.016, -0.018].map(|ahead| inner + across * ahead - self.frame.z() * 0.004);
            solids.push(chain([
                (self.at(0.034, 0.735, 0.058), 0.0220),
                (self.at(0.030, 0.765, 0.068), 0.0220),
                (front, 0.0165),
            ]));
            solids.push(chain([
                (self.at(-0.030, 0.690, 0.058), 0.0270),
                (self.at(-0.030, 0.735, 0.072), 0.0280),
                (back, 0.0195),
            ]));
        }
        solids
    }
}

/// Whether the folds around the armpit are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Folds {
    Shown,
    /// Of an arm on the far side of the trunk.
    Hidden,
}

fn chain<const N: usize>(beads: [(Vector, f64); N]) -> Solid {
    Solid::Chain(beads.map(|(center, radius)| Bead { center, radius }).to_vec())
}
