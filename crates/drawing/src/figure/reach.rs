//! Reaching for a place: two bones that meet it.

use body::{Angle, Arm, Fingers, Rotation, Shoulder, Skeleton, Vector};
use evidence::ids;

/// The middle joint of two bones that go from a root to a target, and where they really end.
///
/// # Units and shape
/// `pole` is where the middle joint points. A target that is too far away is met as far as the bones reach: almost
/// stretched, in its direction.
pub(crate) fn two_bones(root: Vector, target: Vector, lengths: [f64; 2], pole: Vector) -> (Vector, Vector) {
    let [first, second] = lengths;
    let way = target - root;
    let far = (first + second) * STRETCHED;
    let near = (first - second).abs() + CLOSED;
    let distance = way.length().clamp(near, far);
    let along = way.normalize_or(-Vector::Y);
    let across = (pole - along * pole.dot(along)).normalize_or(along.any_orthonormal_vector());
    let foot = (distance * distance + first * first - second * second) / (2.0 * distance);
    let height = (first * first - foot * foot).max(0.0).sqrt();
    (root + along * foot + across * height, root + along * distance)
}

/// Share of the full length at which a limb counts as stretched.
const STRETCHED: f64 = 0.9995;
/// How much more than the difference of the bones a folded limb keeps.
const CLOSED: f64 = 0.02;

/// The arm that was not operated, its grip at a place of the room.
///
/// # Method
/// The shoulder's place depends a little on the raised arm, and the grip on the turned hand, so the wanted arm is
/// computed in a few rounds. The elbow points down and outward. The hand is closed, the thumb on top.
pub(crate) fn arm_to(place: Vector, trunk: Rotation) -> Arm {
    let fingers = Fingers::Closed;
    reaching(place, trunk, |arm, _| Arm { fingers, ..arm })
}

/// The same with the hand flat on something level, the palm down.
pub(crate) fn arm_onto(place: Vector, trunk: Rotation) -> Arm {
    let palm = Vector::Y * PALM_ABOVE;
    reaching(place + palm, trunk, |arm, trunk| flattened(&arm, trunk))
}

/// Half the thickness of a palm.
const PALM_ABOVE: f64 = 0.013;

fn reaching(place: Vector, trunk: Rotation, hand: impl Fn(Arm, Rotation) -> Arm) -> Arm {
    // Told as of a right arm in the mirror.
    let trunk = trunk.mirrored();
    let wanted = trunk.inverse() * Vector::new(place.x, place.y, -place.z);
    let mut arm = Arm::HANGING;
    for _ in 0..ROUNDS {
        let pose = body::Pose { operated: arm, ..body::Pose::at_rest(body::Posture::Standing) };
        let joints = Skeleton::of(&pose).operated;
        // The wrist stands where the grip would then meet the place.
        let wrist = wanted - (joints.grip - joints.wrist);
        let lengths = [ids::UPPER_ARM_LENGTH.number(), ids::FOREARM_LENGTH.number()];
        let (elbow, wrist) = two_bones(joints.shoulder, wrist, lengths, ELBOW_POLE);
        arm = hand(Arm { forearm: arm.forearm, wrist: arm.wrist, ..through(joints.shoulder, elbow, wrist) }, trunk);
    }
    arm
}

/// Forearm and wrist turned so that the palm looks down as well as it can.
fn flattened(arm: &Arm, trunk: Rotation) -> Arm {
    let mut best = (f64::NEG_INFINITY, *arm);
    for turn in -17..=17 {
        for bend in -16..=8 {
            let [forearm, wrist] = [turn, bend].map(|steps| Angle::from_degrees(5.0 * f64::from(steps)));
            let turned = Arm { forearm, wrist, fingers: Fingers::Straight, ..*arm };
            let palm = trunk * (turned.hand_frame() * -Vector::Z);
            let strain = f64::from(turn * turn + bend * bend) * 1e-5;
            let score = -palm.y - strain;
            if score > best.0 {
                best = (score, turned);
            }
        }
    }
    best.1
}

const ROUNDS: usize = 5;
const ELBOW_POLE: Vector = Vector::new(-0.35, -1.0, 0.55);

/// The arm whose joints are at these places, in the frame of the thorax.
pub(crate) fn through(shoulder: Vector, elbow: Vector, wrist: Vector) -> Arm {
    let [upper, fore] = [elbow - shoulder, wrist - elbow].map(|bone| bone.normalize_or(-Vector::Y));
    let elevation = Angle::from_radians((-upper.y).clamp(-1.0, 1.0).acos());
    let plane = Angle::from_radians(upper.x.atan2(upper.z));
    let swing = Rotation::about_y(plane) * Rotation::about_x(-elevation) * Rotation::about_y(-plane);
    let bend = Angle::from_radians(upper.dot(fore).clamp(-1.0, 1.0).acos());
    // Where the forearm leaves the line of the upper arm is forward of the humerus.
    let forward = swing.inverse() * (fore - upper * upper.dot(fore));
    let outward = if forward.length() > 1e-9 { Angle::from_radians(forward.z.atan2(forward.x)) } else { Angle::ZERO };
    Arm { shoulder: Shoulder { plane, elevation, outward }, elbow: bend, ..Arm::HANGING }
}

#[cfg(test)]
mod tests {
    use super::*;
    use body::{Pose, Posture};

    #[test]
    fn an_arm_through_its_own_joints_is_the_same_arm() {
        let degrees = Angle::from_degrees;
        let shoulder = Shoulder { plane: degrees(40.0), elevation: degrees(75.0), outward: degrees(-20.0) };
        let arm = Arm { shoulder, elbow: degrees(65.0), ..Arm::HANGING };
        let joints = Skeleton::of(&Pose { operated: arm, ..Pose::at_rest(Posture::Standing) }).operated;
        let found = through(joints.shoulder, joints.elbow, joints.wrist);
        let pairs = [
            (found.shoulder.plane, shoulder.plane),
            (found.shoulder.elevation, shoulder.elevation),
            (found.shoulder.outward, shoulder.outward),
            (found.elbow, arm.elbow),
        ];
        for (found, given) in pairs {
            assert!((found - given).abs() < degrees(1e-6), "{found} {given}");
        }
    }

    #[test]
    fn the_other_hand_reaches_what_is_within_its_length() {
        for place in [Vector::new(0.2, 0.1, -0.1), Vector::new(0.1, 0.4, -0.2), Vector::new(0.15, 0.05, 0.08)] {
            let other = arm_to(place, Rotation::NONE);
            let joints = Skeleton::of(&Pose { other, ..Pose::at_rest(Posture::Standing) }).other;
            assert!((joints.grip - place).length() < 0.002, "{place} {}", joints.grip);
        }
    }
}
