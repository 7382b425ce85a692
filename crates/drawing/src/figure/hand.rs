//! The hand as solids, told as a right one: palm, four fingers, thumb.
//!
//! # Source
//! Length and breadth from the measured ratios of young adults (ANSUR II); bones, curls and thumb are own choice, drawn
//! by eye.

use body::{Angle, Fingers, Rotation, Vector};

use super::loft::{Bead, Cap, FINE, Loft, Ring, Solid};
use super::stations::between;

/// From the wrist on: half thickness, half breadth, how far toward the thumb.
const PALM: [[f64; 4]; 5] = [
    [-0.004, 0.0128, 0.0176, 0.000],
    [0.010, 0.0130, 0.0192, 0.000],
    [0.028, 0.0132, 0.0230, 0.001],
    [0.044, 0.0120, 0.0240, 0.001],
    [0.054, 0.0096, 0.0228, 0.000],
];

/// Where a finger begins, toward the thumb and along the hand, and how long it is against the others.
const FINGERS: [[f64; 3]; 4] =
    [[0.0178, -0.0510, 0.94], [0.0062, -0.0530, 1.04], [-0.0058, -0.0520, 1.0], [-0.0172, -0.0485, 0.80]];

/// The three bones of a finger of usual length.
const BONES: [f64; 3] = [0.0235, 0.0158, 0.0110];

/// Radii from the knuckle to the tip.
const FINGER_RADII: [f64; 4] = [0.0078, 0.0073, 0.0068, 0.0058];

/// Degrees at the three joints.
const fn curls(fingers: Fingers) -> [f64; 3] {
    match fingers {
        Fingers::Straight => [3.0, 3.0, 2.0],
        Fingers::Soft => [18.0, 24.0, 18.0],
        Fingers::Closed => [62.0, 88.0, 62.0],
    }
}

/// How far the fingers spread, in degrees from one to the next.
const fn spread(fingers: Fingers) -> f64 {
    match fingers {
        Fingers::Straight => 2.5,
        Fingers::Soft => 1.5,
        Fingers::Closed => 0.0,
    }
}

/// Four places and radii of the thumb: toward the thumb, along the hand, toward the palm, radius.
const fn thumb_places(fingers: Fingers) -> [[f64; 4]; 4] {
    match fingers {
        Fingers::Straight => [
            [0.0090, -0.0120, 0.0030, 0.0112],
            [0.0250, -0.0330, 0.0070, 0.0096],
            [0.0340, -0.0510, 0.0080, 0.0078],
            [0.0385, -0.0670, 0.0080, 0.0064],
        ],
        Fingers::Soft => [
            [0.0090, -0.0120, 0.0030, 0.0112],
            [0.0215, -0.0340, 0.0100, 0.0096],
            [0.0255, -0.0530, 0.0150, 0.0078],
            [0.0260, -0.0690, 0.0190, 0.0064],
        ],
        Fingers::Closed => [
            [0.0090, -0.0120, 0.0030, 0.0112],
            [0.0215, -0.0300, 0.0170, 0.0096],
            [0.0200, -0.0440, 0.0310, 0.0080],
            [0.0080, -0.0560, 0.0370, 0.0066],
        ],
    }
}

/// A right hand at a wrist.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Hand {
    pub(crate) wrist: Vector,
    pub(crate) frame: Rotation,
    pub(crate) fingers: Fingers,
}

impl Hand {
    fn at(&self, thumbward: f64, along: f64, palmward: f64) -> Vector {
        self.wrist + self.frame * Vector::new(thumbward, along, -palmward)
    }

    /// The palm, without fingers.
    pub(crate) fn palm(&self) -> Solid {
        let rings: Vec<Ring> = (0..=8)
            .map(|step| {
                let [along, thick, broad, aside] = between(&PALM, -0.004 + 0.058 * f64::from(step) / 8.0);
                let center = self.at(aside, -along, 0.0);
                Ring { center, a: self.frame.z() * thick, b: self.frame.x() * broad, power: 2.6 }
            })
            .collect();
        Solid::Loft(Loft::new(&rings, FINE, [Cap::Round(0.006), Cap::Round(0.007)]))
    }

    /// The fingers, from the one beside the thumb on.
    pub(crate) fn fingers(&self) -> [Solid; 4] {
        let curl = curls(self.fingers);
        let mut order = 0.0;
        FINGERS.map(|[thumbward, along, length]| {
            // Turned away from the middle of the hand.
            let aside = Angle::from_degrees((1.5 - order) * spread(self.fingers));
            order += 1.0;
            let fan = Rotation::about_z(aside);
            let mut place = Vector::new(thumbward, along, 0.0);
            let mut beads = vec![place];
            let mut bent = 0.0;
            for (bone, turn) in BONES.into_iter().zip(curl) {
                bent += turn;
                let direction = fan * Rotation::about_x(Angle::from_degrees(bent)) * -Vector::Y;
                place += direction * (bone * length);
                beads.push(place);
            }
            self.chain(beads.into_iter().zip(FINGER_RADII))
        })
    }

    /// The thumb.
    pub(crate) fn thumb(&self) -> Solid {
        let places = thumb_places(self.fingers);
        self.chain(
            places
                .into_iter()
                .map(|[thumbward, along, palmward, radius]| (Vector::new(thumbward, along, -palmward), radius)),
        )
    }

    fn chain(&self, places: impl Iterator<Item = (Vector, f64)>) -> Solid {
        let bead = |(place, radius)| Bead { center: self.wrist + self.frame * place, radius };
        Solid::Chain(places.map(bead).collect())
    }

    /// Where the fingers leave the palm, and last the thumb.
    pub(crate) fn finger_roots(&self) -> [Vector; 5] {
        let [first, second, third, fourth] = FINGERS.map(|[thumbward, along, _]| self.at(thumbward, along, 0.0));
        [first, second, third, fourth, self.at(0.013, -0.022, 0.006)]
    }
}
