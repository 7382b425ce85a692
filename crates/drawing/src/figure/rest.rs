//! How an arm rests that has nothing to do, and how the head is held.
//!
//! Own choices of how a person is shown; nothing but drawings rests on them.

use body::{Angle, Arm, Fingers, Pose, Posture, Rotation, Shoulder};

const fn degrees(value: f64) -> Angle {
    Angle::from_degrees(value)
}

/// The arm that was not operated, at rest in a posture.
pub(crate) fn other_arm(pose: &Pose) -> Arm {
    let arm = |plane: f64, elevation: f64, outward: f64, elbow: f64, forearm: f64| Arm {
        shoulder: Shoulder { plane: degrees(plane), elevation: degrees(elevation), outward: degrees(outward) },
        elbow: degrees(elbow),
        forearm: degrees(forearm),
        ..Arm::HANGING
    };
    match pose.posture {
        // Hanging, a little away from the body, as arms do; also when the trunk leans.
        Posture::Standing | Posture::BentForward => {
            let ahead = pose.lean.degrees().max(0.0);
            if ahead > 5.0 { arm(86.0, ahead.max(8.0), 0.0, 12.0, 30.0) } else { arm(20.0, 7.0, -8.0, 14.0, 20.0) }
        }
        // The hand on the thigh.
        Posture::Sitting => arm(78.0, 16.0 + pose.lean.degrees().max(0.0), -14.0, 62.0, 62.0),
        // Beside the body, the palm down.
        Posture::LyingOnTheBack => arm(10.0, 17.0, 0.0, 14.0, 60.0),
        Posture::LyingOnTheFront => arm(5.0, 20.0, -10.0, 14.0, -50.0),
        // In front of the body, the hand before the face.
        Posture::LyingOnTheSoundSide | Posture::LyingOnTheOperatedSide => {
            Arm { fingers: Fingers::Soft, ..arm(88.0, 84.0, 0.0, 96.0, 0.0) }
        }
        // A straight prop under the shoulder, the palm on the floor.
        Posture::Kneeling => {
            let wrist = degrees(-80.0);
            Arm { wrist, fingers: Fingers::Straight, ..arm(90.0, 90.0 - pose.lean.degrees(), 0.0, 4.0, 80.0) }
        }
    }
}

/// What carries the body.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum StandsOn {
    /// What the posture says.
    ItsPosture,
    /// Hands and toes: the trunk is off the floor.
    HandsAndToes,
}

/// How the head stands in the room.
pub(crate) fn head(pose: &Pose, stands_on: StandsOn) -> Rotation {
    let trunk = pose.trunk();
    let nod = |by: f64| Rotation::about_z(degrees(by));
    match pose.posture {
        // The eyes stay ahead of the feet, not under the body.
        Posture::Standing | Posture::BentForward | Posture::Sitting => {
            trunk * nod((pose.lean.degrees() * 0.35).clamp(-15.0, 25.0))
        }
        Posture::LyingOnTheBack => trunk * nod(-8.0),
        Posture::LyingOnTheSoundSide | Posture::LyingOnTheOperatedSide => trunk,
        // One cheek on the bed.
        Posture::LyingOnTheFront if stands_on == StandsOn::HandsAndToes => trunk * nod(22.0),
        Posture::LyingOnTheFront => trunk * Rotation::about_y(degrees(-62.0)),
        Posture::Kneeling => trunk * nod(22.0),
    }
}
