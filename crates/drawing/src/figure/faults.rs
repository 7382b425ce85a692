//! What a figure can get wrong, found by looking at the figure itself.

use body::Vector;
use evidence::ids;

use super::composition::{Composition, Role};
use super::head::{Head, SKULL};
use super::joints::OtherHand;
use super::region::Region;
use super::things::STICK;
use super::trunk::Trunk;

/// Something about a figure that a reader could misread.
///
/// # Source
/// The borders are own choice, drawn by eye.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fault {
    /// Less of the operated arm is seen than nine tenths.
    OperatedArmHidden {
        /// The share that is seen.
        seen: f64,
    },
    /// The head faces the viewer and less of it is seen than nineteen twentieths.
    FaceHidden {
        /// The share that is seen.
        seen: f64,
    },
    /// The other arm is too short for where its hand should be.
    OutOfReach {
        /// How far the hand stays away from it, in parts of stature.
        by: f64,
    },
    /// A stick goes through trunk or head.
    StickThroughBody {
        /// How deep, in parts of stature.
        by: f64,
    },
}

const ARM_SEEN: f64 = 0.90;
const FACE_SEEN: f64 = 0.95;
/// How far a hand may stay away from its place.
const NEAR_ENOUGH: f64 = 0.006;
/// Places looked at along a stick.
const STEPS: u32 = 40;

impl Composition {
    /// What is wrong with the figure; empty if nothing is.
    pub fn faults(&self) -> Vec<Fault> {
        let mut faults = Vec::new();
        let arm = self.seen_of(Role::OperatedArm);
        if arm < ARM_SEEN {
            faults.push(Fault::OperatedArmHidden { seen: arm });
        }
        let face = self.seen_of(Role::Head);
        if face < FACE_SEEN && self.joints.head.x().dot(self.view.toward) > 0.0 {
            faults.push(Fault::FaceHidden { seen: face });
        }
        let grip = self.joints.skeleton.other.grip;
        if let OtherHand::At(place) | OtherHand::On(place) = self.other_hand {
            let by = grip.distance(place) - if matches!(self.other_hand, OtherHand::On(_)) { PALM } else { 0.0 };
            if by > NEAR_ENOUGH {
                faults.push(Fault::OutOfReach { by });
            }
        }
        let depth = self.sticks.iter().map(|ends| self.depth_of_stick(*ends)).fold(0.0, f64::max);
        if depth > 0.0 {
            faults.push(Fault::StickThroughBody { by: depth });
        }
        faults
    }

    /// The share of something that nothing lies over.
    fn seen_of(&self, role: Role) -> f64 {
        let wholes = self.wholes.iter().filter(|whole| whole.0 == role).map(|whole| &whole.1);
        let whole = Region::union_all(wholes).area();
        if whole > 0.0 { self.area(role).area() / whole } else { 1.0 }
    }

    fn depth_of_stick(&self, [from, to]: [Vector; 2]) -> f64 {
        (0..=STEPS)
            .map(|step| self.depth_in_body(from.lerp(to, f64::from(step) / f64::from(STEPS))))
            .fold(0.0, f64::max)
    }

    /// How deep in trunk or head the surface of a stick lies whose axis goes through a place; 0 outside.
    fn depth_in_body(&self, place: Vector) -> f64 {
        let joints = &self.joints;
        let on_trunk = joints.skeleton.trunk.inverse() * place;
        let height = on_trunk.y + ids::HIP_HEIGHT.number();
        let trunk = if Trunk::SHIRT_REACHES.contains(&height) {
            let [ahead, breadth, depth] = Trunk::section(height);
            inside(on_trunk.x - ahead, on_trunk.z, depth, breadth)
        } else {
            0.0
        };
        let head = Head { middle: joints.skeleton.head, frame: joints.head };
        let on_head = joints.head.inverse() * (place - head.middle);
        let [lowest, highest] = [SKULL[0][0], SKULL[SKULL.len() - 1][0]];
        let skull = if (lowest..=highest).contains(&on_head.y) {
            let ring = head.ring(&SKULL, on_head.y);
            let middle = joints.head.inverse() * (ring.center - head.middle);
            inside(on_head.x - middle.x, on_head.z, ring.a.length(), ring.b.length())
        } else {
            0.0
        };
        trunk.max(skull)
    }
}

/// Half a palm between the middle of a hand and what it lies on, and some more for a slanting one.
const PALM: f64 = 0.016;

/// How deep a place lies in an ellipse grown by the stick; 0 outside.
fn inside(ahead: f64, aside: f64, depth: f64, breadth: f64) -> f64 {
    let share = (ahead / (depth + STICK)).hypot(aside / (breadth + STICK));
    if share < 1.0 { (1.0 - share) * depth.min(breadth) } else { 0.0 }
}
