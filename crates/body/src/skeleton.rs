//! Where the joints are in a pose.

use evidence::ids;

use crate::angle::Angle;
use crate::arm::Arm;
use crate::pose::Pose;
use crate::posture::Posture;
use crate::rotation::{Rotation, Vector};

/// The joints of one arm, from the trunk outward.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArmJoints {
    /// Inner end of the collarbone.
    pub inner_clavicle: Vector,
    /// Center of the shoulder joint.
    pub shoulder: Vector,
    /// How the shoulder blade stands in the room, by a simple rhythm ([`Arm::scapula`]).
    pub scapula: Rotation,
    /// Center of the elbow.
    pub elbow: Vector,
    /// Center of the wrist.
    pub wrist: Vector,
    /// Middle of the grip.
    pub grip: Vector,
    /// Tip of the longest finger of a straight hand.
    pub fingertip: Vector,
    /// Where the palm faces.
    pub palm: Vector,
}

/// The joints of one leg.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LegJoints {
    /// Center of the hip.
    pub hip: Vector,
    /// Center of the knee.
    pub knee: Vector,
    /// Center of the ankle.
    pub ankle: Vector,
    /// Tip of the foot.
    pub toe: Vector,
}

/// The joints of a body in a pose.
///
/// # Units and shape
/// Places in the room as parts of stature, from the middle between the hips: X forward for somebody standing, Y up,
/// Z to the right. Times stature gives lengths.
///
/// # Method
/// Trunk and head are one stiff piece on the hips; the collarbone rises by a simple rhythm and by the pose's own
/// movement of the blade, and the blade turns along by another; everything beyond the shoulder follows the pose's angles
/// exactly. Legs are placed by the posture alone.
///
/// # Source
/// The lengths of the table of evidence named in this file; the rhythms are own choice (`clavicle-share`) and common
/// practice (`scapula-share`).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Skeleton {
    /// The frame of the thorax in the room.
    pub trunk: Rotation,
    /// Base of the neck.
    pub neck: Vector,
    /// Middle of the head.
    pub head: Vector,
    /// The operated arm.
    pub operated: ArmJoints,
    /// The other arm.
    pub other: ArmJoints,
    /// The leg on the operated side.
    pub operated_leg: LegJoints,
    /// The other leg.
    pub other_leg: LegJoints,
}

impl Skeleton {
    /// The joints of a pose, the operated arm being the right one.
    pub fn of(pose: &Pose) -> Self {
        let trunk = pose.trunk();
        let above_hips = |height: &evidence::Entry| trunk * (Vector::Y * (height.number() - ids::HIP_HEIGHT.number()));
        let operated = arm(&pose.operated, trunk);
        let other = arm(&pose.other, trunk.mirrored()).mirrored();
        let (operated_leg, other_leg) = legs(pose.posture);
        Self {
            trunk,
            neck: above_hips(ids::NECK_BASE_HEIGHT),
            head: above_hips(ids::HEAD_CENTER_HEIGHT),
            operated,
            other,
            operated_leg,
            other_leg,
        }
    }

    /// The same body in a mirror between left and right: the operated arm becomes the left one.
    pub fn mirrored(self) -> Self {
        Self {
            trunk: self.trunk.mirrored(),
            neck: mirrored(self.neck),
            head: mirrored(self.head),
            operated: self.operated.mirrored(),
            other: self.other.mirrored(),
            operated_leg: self.operated_leg.mirrored(),
            other_leg: self.other_leg.mirrored(),
        }
    }
}

impl ArmJoints {
    fn mirrored(self) -> Self {
        Self {
            inner_clavicle: mirrored(self.inner_clavicle),
            shoulder: mirrored(self.shoulder),
            scapula: self.scapula.mirrored(),
            elbow: mirrored(self.elbow),
            wrist: mirrored(self.wrist),
            grip: mirrored(self.grip),
            fingertip: mirrored(self.fingertip),
            palm: mirrored(self.palm),
        }
    }
}

impl LegJoints {
    fn mirrored(self) -> Self {
        Self {
            hip: mirrored(self.hip),
            knee: mirrored(self.knee),
            ankle: mirrored(self.ankle),
            toe: mirrored(self.toe),
        }
    }
}

fn mirrored(place: Vector) -> Vector {
    Vector::new(place.x, place.y, -place.z)
}

/// A right arm on a trunk.
fn arm(arm: &Arm, trunk: Rotation) -> ArmJoints {
    let above_hips = |height: &evidence::Entry| height.number() - ids::HIP_HEIGHT.number();
    let clavicle = Vector::new(0.0, above_hips(ids::INNER_CLAVICLE_HEIGHT), ids::INNER_CLAVICLE_HALF_BREADTH.number());
    let at_rest = Vector::new(0.0, above_hips(ids::SHOULDER_CENTER_HEIGHT), ids::SHOULDER_HALF_BREADTH.number());
    let rise = arm.clavicle_rise() + arm.blade.raised;
    // Rising turns right toward up; going forward turns right toward forward.
    let carried = Rotation::about_x(-rise) * Rotation::about_y(arm.blade.forward);
    let shoulder = clavicle + carried * (at_rest - clavicle);
    let elbow = shoulder + arm.upper_arm_direction() * ids::UPPER_ARM_LENGTH.number();
    let wrist = elbow + arm.forearm_direction() * ids::FOREARM_LENGTH.number();
    let hand = arm.hand_direction();
    ArmJoints {
        inner_clavicle: trunk * clavicle,
        shoulder: trunk * shoulder,
        scapula: trunk * arm.scapula(),
        elbow: trunk * elbow,
        wrist: trunk * wrist,
        grip: trunk * (wrist + hand * ids::GRIP_CENTER.number()),
        fingertip: trunk * (wrist + hand * ids::HAND_LENGTH.number()),
        palm: trunk * (arm.hand_frame() * -Vector::Z),
    }
}

/// How far the hip and the knee bend in a posture.
///
/// Own choices of how a person is shown; nothing but drawings rests on them.
fn bends(posture: Posture) -> (Angle, Angle) {
    let [hip, knee] = match posture {
        Posture::Standing | Posture::BentForward | Posture::LyingOnTheFront => [0.0, 0.0],
        Posture::Sitting => [90.0, 90.0], // not medical: how a person sits in a picture
        Posture::LyingOnTheBack => [45.0, 90.0], // not medical: knees up, feet on the bed
        Posture::LyingOnTheSoundSide | Posture::LyingOnTheOperatedSide => [45.0, 75.0], // not medical: curled up
        Posture::Kneeling => [90.0, 90.0], // not medical: on hands and knees
    };
    (Angle::from_degrees(hip), Angle::from_degrees(knee))
}

fn legs(posture: Posture) -> (LegJoints, LegJoints) {
    let pelvis = posture.trunk(Angle::ZERO);
    let (hip_bend, knee_bend) = bends(posture);
    let right = |side: f64| {
        let hip = Vector::Z * (ids::HIP_HALF_BREADTH.number() * side);
        let thigh = Rotation::about_z(hip_bend);
        let shank = thigh * Rotation::about_z(-knee_bend);
        let knee = hip + thigh * -Vector::Y * ids::THIGH_LENGTH.number();
        let ankle = knee + shank * -Vector::Y * ids::SHANK_LENGTH.number();
        let foot = match posture {
            // Stretched out on the floor or the bed.
            Posture::Kneeling | Posture::LyingOnTheFront => shank * -Vector::Y,
            // Flat on the bed, pointing away from the head.
            Posture::LyingOnTheBack => -Vector::Y,
            _ => shank * Vector::X,
        };
        let toe = ankle + foot * ids::FOOT_LENGTH.number();
        LegJoints { hip: pelvis * hip, knee: pelvis * knee, ankle: pelvis * ankle, toe: pelvis * toe }
    };
    (right(1.0), right(-1.0))
}
