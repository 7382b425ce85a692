//! What the hands hold, and how they turn to hold it.

use body::{Rotation, Vector};
use evidence::ids;

use super::arm::ArmFrames;
use super::joints::{Flank, Joints};
use super::things::{Spot, Thing};

/// How far in front of the palm the axis of a held stick lies.
const OFF_PALM: f64 = 0.019;

/// The hands in the room, as drawn: turned at the wrist, if need be, so that a stick lies across the palm.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Grips {
    /// Frames of the hands, told as of a right hand; operated first.
    pub(crate) frames: [Rotation; 2],
    /// Middles of the wrists in the room.
    wrists: [Vector; 2],
}

impl Grips {
    /// The hands of a person who holds some things.
    pub(crate) fn of(joints: &Joints, arms: [&ArmFrames; 2], things: &[Thing]) -> Self {
        let wrists = [joints.skeleton.operated.wrist, joints.skeleton.other.wrist];
        let mut grips = Self { frames: arms.map(|arm| arm.hand), wrists };
        let turned = grips;
        for _ in 0..ROUNDS {
            for thing in things {
                let Thing::Stick { ends, .. } = thing else { continue };
                let axis = grips.place(ends[1]) - grips.place(ends[0]);
                for end in ends {
                    if let (Some(flank), true) = (end.flank(), axis.length() > 0.03) {
                        let at = usize::from(flank == Flank::Other);
                        grips.frames[at] = across(turned.frames[at], flank.place(axis));
                    }
                }
            }
        }
        grips
    }

    /// Where a spot is: for a hand, the axis of what lies in its grip.
    pub(crate) fn place(&self, spot: Spot) -> Vector {
        let Some((flank, at)) = spot.hand() else {
            let Spot::At(place) = spot else { return Vector::ZERO };
            return place;
        };
        let grip = Vector::new(0.0, -ids::GRIP_CENTER.number(), -OFF_PALM);
        self.wrists[at] + flank.place(self.frames[at] * grip)
    }

    /// Across the palm of a hand; level elsewhere.
    pub(crate) fn axis(&self, spot: Spot) -> Vector {
        spot.hand().map_or(Vector::Z, |(flank, at)| flank.place(self.frames[at].x()))
    }

    /// Out of the palm of a hand; down elsewhere.
    pub(crate) fn palmward(&self, spot: Spot) -> Vector {
        spot.hand().map_or(-Vector::Y, |(flank, at)| flank.place(-self.frames[at].z()))
    }
}

const ROUNDS: usize = 3;

impl Spot {
    const fn flank(self) -> Option<Flank> {
        match self {
            Self::OperatedHand => Some(Flank::Operated),
            Self::OtherHand => Some(Flank::Other),
            Self::At(_) => None,
        }
    }

    fn hand(self) -> Option<(Flank, usize)> {
        self.flank().map(|flank| (flank, usize::from(flank == Flank::Other)))
    }
}

/// A hand turned by as little as possible, and no more than a wrist can, so that something lies across its palm.
fn across(hand: Rotation, axis: Vector) -> Rotation {
    let wanted = axis.normalize_or(hand.x());
    let wanted = if wanted.dot(hand.x()) < 0.0 { -wanted } else { wanted };
    let about = hand.x().cross(wanted);
    let angle = about.length().atan2(hand.x().dot(wanted)).min(MOST);
    if about.length() < 1e-9 {
        return hand;
    }
    Rotation::about(about.normalize(), body::Angle::from_radians(angle)) * hand
}

/// How far a hand turns for its grip: about 35 degrees.
const MOST: f64 = 0.61;
