//! A body that leans on its hands: turned as a whole until hands and knees, or hands and toes, stand on one floor.
//!
//! Nothing within the arms or between arm and trunk changes; only how the whole body lies in the room.

use body::{Angle, ArmJoints, Fingers, Pose, Posture, Rotation, Skeleton, Vector};

use super::rest::StandsOn;

/// How a body is turned to stand on its hands, and where the floor then is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Support {
    /// About the axis between the hips; positive lifts the shoulders.
    pub(crate) tilt: Rotation,
    /// Height of the floor, if the hands say so.
    pub(crate) floor: Option<f64>,
    pub(crate) stands_on: StandsOn,
}

/// Wrist above the floor while the hand lies flat.
const WRIST_HEIGHT: f64 = 0.022;

/// Steps and size of the search for the tilt, in degrees.
const STEPS: u32 = 240;
const STEP: f64 = 0.25;

/// How the body stands on its hands; `floor` is where it would kneel or lie without them.
pub(crate) fn on_hands(pose: &Pose, floor: f64) -> Support {
    let none = Support { tilt: Rotation::NONE, floor: None, stands_on: StandsOn::ItsPosture };
    if !matches!(pose.posture, Posture::Kneeling | Posture::LyingOnTheFront) {
        return none;
    }
    let skeleton = Skeleton::of(pose);
    let hand = lowest_hand(&skeleton, Rotation::NONE);
    let is_flat = pose.operated.fingers == Fingers::Straight && skeleton.operated.palm.y < -FLAT;
    if hand >= floor - TOUCHES {
        let lowers = pose.posture == Posture::Kneeling && is_flat;
        return Support { floor: lowers.then_some(hand), ..none };
    }
    let is_plank = pose.posture == Posture::LyingOnTheFront;
    for step in 1..=STEPS {
        let degrees = Angle::from_degrees(STEP * f64::from(step));
        let tilt = Rotation::about_z(degrees);
        let under_toes = if is_plank { TOES_BELOW - TOES_BEHIND * degrees.sin() } else { floor };
        if lowest_hand(&skeleton, tilt) >= under_toes {
            let stands_on = if is_plank { StandsOn::HandsAndToes } else { StandsOn::ItsPosture };
            return Support { tilt, floor: is_plank.then_some(under_toes), stands_on };
        }
    }
    none
}

/// Where the floor is under the toes of a body stretched out straight: below the ankle and as far behind.
const TOES_BELOW: f64 = -0.060;
const TOES_BEHIND: f64 = 0.480;
/// A palm that looks down by this much lies flat.
const FLAT: f64 = 0.6;
/// A hand that would be this far below the floor lies on it.
const TOUCHES: f64 = 0.02;

fn lowest_hand(skeleton: &Skeleton, tilt: Rotation) -> f64 {
    let lowest = |arm: &ArmJoints| {
        let elbow = (tilt * arm.elbow).y;
        elbow.min((tilt * arm.wrist).y) - WRIST_HEIGHT
    };
    lowest(&skeleton.operated).min(lowest(&skeleton.other))
}

/// The same joints, turned about the middle between the hips.
pub(crate) fn turned(skeleton: &Skeleton, tilt: Rotation) -> Skeleton {
    let place = |place: Vector| tilt * place;
    let arm = |arm: ArmJoints| ArmJoints {
        inner_clavicle: place(arm.inner_clavicle),
        shoulder: place(arm.shoulder),
        scapula: tilt * arm.scapula,
        elbow: place(arm.elbow),
        wrist: place(arm.wrist),
        grip: place(arm.grip),
        fingertip: place(arm.fingertip),
        palm: place(arm.palm),
    };
    Skeleton {
        trunk: tilt * skeleton.trunk,
        neck: place(skeleton.neck),
        head: place(skeleton.head),
        operated: arm(skeleton.operated),
        other: arm(skeleton.other),
        ..*skeleton
    }
}
