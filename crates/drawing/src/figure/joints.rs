//! Where the joints of the drawn person are.
//!
//! Trunk and arms stand as [`body::Skeleton`] says, so that a drawn angle is the pose's angle. Legs, head and an arm that
//! only rests are the drawing's own: they are placed so that the person stands, sits or lies as people do.

use body::{Angle, Arm, LegJoints, Pose, Posture, Rotation, Skeleton, Vector};
use evidence::ids;

use super::reach::{self, two_bones};
use super::rest::{self, StandsOn};
use super::support;

/// The joints of the person as drawn.
///
/// # Units and shape
/// In the room and in parts of stature, from the middle between the hips, the operated arm being the right one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Joints {
    /// The pose as drawn: the operated arm as given, the other one perhaps moved to what it reaches for.
    pub pose: Pose,
    /// The joints; legs as drawn.
    pub skeleton: Skeleton,
    /// Height of what the soles or the body lie on.
    pub floor: f64,
    /// Height of what the person sits on.
    pub seat: Option<f64>,
    /// How the head stands in the room.
    pub head: Rotation,
    /// How the whole body is turned in the room against [`body::Skeleton::of`], so that somebody who leans on the hands
    /// stands on one floor with hands and knees; not turned at all in every other pose.
    pub tilt: Rotation,
    /// How the feet stand in the room: X toward the toes, Y up from the sole; operated side first.
    pub(crate) feet: [Rotation; 2],
}

/// What the arm that was not operated does.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum OtherHand {
    /// As the pose says; where it says that the arm hangs, it rests as it does in that posture.
    #[default]
    AsPosed,
    /// It holds something here in the room, as far as the arm is long.
    At(Vector),
    /// It lies flat on something here, the palm down.
    On(Vector),
}

impl Joints {
    /// The joints of a pose.
    pub fn of(pose: &Pose, other_hand: OtherHand) -> Self {
        let other = match other_hand {
            OtherHand::At(place) => reach::arm_to(place, pose.trunk()),
            OtherHand::On(place) => reach::arm_onto(place, pose.trunk()),
            OtherHand::AsPosed if pose.other == Arm::HANGING => rest::other_arm(pose),
            OtherHand::AsPosed => pose.other,
        };
        let pose = Pose { other, ..*pose };
        let mut stance = stance(&pose);
        let support = support::on_hands(&pose, stance.floor);
        if let Some(floor) = support.floor {
            stance = match support.stands_on {
                StandsOn::HandsAndToes => plank(floor, support.tilt),
                StandsOn::ItsPosture => on_knees(floor),
            };
        }
        let mut skeleton = support::turned(&Skeleton::of(&pose), support.tilt);
        let [operated_leg, other_leg] = [leg(&pose, &stance, Flank::Operated), leg(&pose, &stance, Flank::Other)];
        skeleton.operated_leg = operated_leg.0;
        skeleton.other_leg = other_leg.0;
        let head = support.tilt * rest::head(&pose, support.stands_on);
        // The head turns about the top of the neck's base, not about its own middle.
        skeleton.head = skeleton.neck + head * (Vector::Y * HEAD_ABOVE_NECK);
        let feet = [operated_leg.1, other_leg.1];
        Self { pose, skeleton, floor: stance.floor, seat: stance.seat, head, tilt: support.tilt, feet }
    }
}

/// Which half of the body.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(crate) enum Flank {
    Operated,
    Other,
}

impl Flank {
    pub(crate) const BOTH: [Self; 2] = [Self::Operated, Self::Other];

    /// A frame or a place of this half, told as of a right one.
    pub(crate) fn rotation(self, turn: Rotation) -> Rotation {
        if self == Self::Operated { turn } else { turn.mirrored() }
    }

    /// A place of this half, told as of a right one; also the way back.
    pub(crate) fn place(self, place: Vector) -> Vector {
        if self == Self::Operated { place } else { Vector::new(place.x, place.y, -place.z) }
    }
}

/// From the base of the neck to the middle of the head; own choice, near the evidence's two heights.
const HEAD_ABOVE_NECK: f64 = 0.097;

/// Ankle above the sole, from the measured ratios of young adults.
pub(crate) const ANKLE_HEIGHT: f64 = 0.039;

/// How the legs carry a posture, told of a right leg in the room.
struct Stance {
    floor: f64,
    seat: Option<f64>,
    ankle: [Vector; 2],
    /// Where the knee points.
    knee: [Vector; 2],
    foot: [Rotation; 2],
}

/// Own choices of how a person is shown; nothing but drawings rests on them.
fn stance(pose: &Pose) -> Stance {
    let degrees = Angle::from_degrees;
    let lean = pose.lean.sin();
    let toes_out = Rotation::about_y(degrees(-9.0));
    let flat = |floor: f64, x: f64, z: f64| Vector::new(x, floor + ANKLE_HEIGHT, z);
    let same = |floor: f64, seat: Option<f64>, ankle: Vector, knee: Vector, foot: Rotation| Stance {
        floor,
        seat,
        ankle: [ankle; 2],
        knee: [knee; 2],
        foot: [foot; 2],
    };
    match pose.posture {
        Posture::Standing | Posture::BentForward => {
            let floor = -ids::HIP_HEIGHT.number() + 0.004 + 0.008 * lean.max(0.0);
            // One foot a little before the other, as people stand.
            let ankle = [-0.026, 0.008].map(|ahead| flat(floor, ahead + 0.075 * lean, 0.057));
            Stance { ankle, ..same(floor, None, ankle[0], Vector::new(1.0, 0.0, 0.16), toes_out) }
        }
        Posture::Sitting => {
            let floor = -ids::SHANK_LENGTH.number() - ANKLE_HEIGHT - 0.004;
            let knee = ids::THIGH_LENGTH.number();
            let ankle = [-0.028, 0.000].map(|ahead| flat(floor, knee + ahead, 0.064));
            Stance { ankle, ..same(floor, Some(-0.056), ankle[0], Vector::new(1.0, 1.0, 0.05), toes_out) }
        }
        Posture::LyingOnTheBack => {
            let floor = -0.071;
            let ankle = [0.300, 0.262].map(|ahead| flat(floor, ahead, 0.058));
            let foot = Rotation::about_y(degrees(-5.0));
            Stance { ankle, ..same(floor, None, ankle[0], Vector::new(0.0, 1.0, 0.02), foot) }
        }
        Posture::LyingOnTheFront => {
            let floor = -0.070;
            let ankle = Vector::new(-0.488, floor + 0.030, 0.058);
            // The instep lies on the bed, the sole looks up and backward.
            let foot = Rotation::about_z(degrees(180.0 + 28.0)) * Rotation::about_x(degrees(0.0));
            same(floor, None, ankle, Vector::new(0.0, -1.0, 0.1), foot)
        }
        Posture::Kneeling => on_knees(-ids::THIGH_LENGTH.number() - KNEE_HEIGHT),
        Posture::LyingOnTheSoundSide | Posture::LyingOnTheOperatedSide => on_the_side(pose.posture),
    }
}

/// Middle of the knee above the floor it kneels on.
const KNEE_HEIGHT: f64 = 0.034;

/// Knees and insteps on the floor; the hips may be lower than the thighs are long, then the knees are farther back.
fn on_knees(floor: f64) -> Stance {
    let down = -floor - KNEE_HEIGHT;
    let back = (ids::THIGH_LENGTH.number().powi(2) - down * down).max(0.0).sqrt();
    let ankle = Vector::new(-back - ids::SHANK_LENGTH.number(), floor + 0.030, 0.056);
    Stance {
        floor,
        seat: None,
        ankle: [ankle; 2],
        knee: [Vector::new(0.4, -1.0, 0.0); 2],
        foot: [Rotation::about_z(Angle::from_degrees(180.0 + 25.0)); 2],
    }
}

/// Stretched out over hands and toes.
fn plank(floor: f64, tilt: Rotation) -> Stance {
    let ankle = tilt * Vector::new(-0.488, 0.0, 0.0) + Vector::Z * 0.056;
    Stance {
        floor,
        seat: None,
        ankle: [ankle; 2],
        knee: [Vector::new(0.0, -1.0, 0.1); 2],
        foot: [tilt * Rotation::about_z(Angle::from_degrees(-100.0)); 2],
    }
}

/// Curled up on one side, the upper leg a little more bent than the lower one.
fn on_the_side(posture: Posture) -> Stance {
    let pelvis = posture.trunk(Angle::ZERO);
    let floor = -0.122;
    let right_is_up = posture == Posture::LyingOnTheSoundSide;
    let each = |right: f64| {
        let is_up = (right > 0.0) == right_is_up;
        let hip = Angle::from_degrees(if is_up { 52.0 } else { 38.0 });
        let knee_bend = Angle::from_degrees(if is_up { 82.0 } else { 62.0 });
        let thigh = Rotation::about_z(hip);
        let shank = thigh * Rotation::about_z(-knee_bend);
        let inward = if is_up { 0.012 } else { 0.052 };
        let ankle = thigh * -Vector::Y * ids::THIGH_LENGTH.number()
            + shank * -Vector::Y * ids::SHANK_LENGTH.number()
            + Vector::Z * (right * inward);
        let foot = shank * Rotation::about_z(Angle::from_degrees(-16.0));
        (pelvis * ankle, pelvis * (thigh * -Vector::Y), pelvis * foot)
    };
    let [right, left] = [each(1.0), each(-1.0)];
    // Told as of a right leg, as everywhere here.
    let mirrored = |place: Vector| Flank::Other.place(place);
    Stance {
        floor,
        seat: None,
        ankle: [right.0, mirrored(left.0)],
        knee: [right.1, mirrored(left.1)],
        foot: [right.2, left.2.mirrored()],
    }
}

fn leg(pose: &Pose, stance: &Stance, flank: Flank) -> (LegJoints, Rotation) {
    let at = usize::from(flank == Flank::Other);
    let pelvis = flank.rotation(pose.posture.trunk(Angle::ZERO));
    let hip = pelvis * (Vector::Z * ids::HIP_HALF_BREADTH.number());
    let lengths = [ids::THIGH_LENGTH.number(), ids::SHANK_LENGTH.number()];
    let (knee, ankle) = two_bones(hip, stance.ankle[at], lengths, stance.knee[at]);
    let foot = stance.foot[at];
    let toe = ankle + foot * Vector::X * (ids::FOOT_LENGTH.number() - HEEL_BEHIND_ANKLE);
    let [hip, knee, ankle, toe] = [hip, knee, ankle, toe].map(|place| flank.place(place));
    (LegJoints { hip, knee, ankle, toe }, flank.rotation(foot))
}

/// How far the heel reaches behind the ankle; own choice.
pub(crate) const HEEL_BEHIND_ANKLE: f64 = 0.040;
