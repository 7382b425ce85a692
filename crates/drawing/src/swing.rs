//! The turn that a prescribed angle counts, in space, and how true it looks from a place.

use body::{Angle, Joint, Key, Movement, Pose, Rotation, Vector};

use crate::camera::Camera;
use crate::figure::{Joints, OtherHand};

/// A turn of one part of the body about one place: what an arc with degrees is drawn from.
///
/// # Units and shape
/// In the room, in parts of stature. `zero` is where the angle counts from, a direction of length one; `axis` is what it
/// turns about, by the rule of the right hand, so that `angle` is never negative.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Swing {
    /// What is turned about.
    pub center: Vector,
    /// Where the angle counts from.
    pub zero: Vector,
    /// The axis.
    pub axis: Vector,
    /// How far.
    pub angle: Angle,
    /// How far the moving part reaches from the center.
    pub reach: f64,
}

/// Which part of an arc is looked at for a fault of its picture.
const EVERY: f64 = 10.0;

impl Swing {
    /// The turn that counts for a movement in a pose; `None` where the movement has no angle that a picture could show.
    ///
    /// # Method
    /// Raising counts at the shoulder, from the arm hanging along the trunk; turning at the elbow, from where the bent
    /// forearm points before any turn, and only where the elbow is bent enough for the forearm to show it; across the
    /// chest at the shoulder, from straight ahead, and only for an arm about level; bending at the elbow, from straight.
    pub fn of(pose: &Pose, key: Key) -> Option<Self> {
        let placed = Joints::of(pose, OtherHand::AsPosed).skeleton;
        let joints = placed.operated;
        let trunk = placed.trunk;
        let arm = &pose.operated;
        let shoulder = arm.shoulder;
        let to_grip = joints.shoulder.distance(joints.grip).max(joints.shoulder.distance(joints.elbow));
        // An arm behind the body is not raised ahead, whatever the exercise is called after.
        let is_in_its_half = match key.movement {
            Movement::ForwardElevation => shoulder.plane.sin() > 0.0,
            Movement::Extension => shoulder.plane.sin() < 0.0,
            Movement::ScapularPlaneElevation | Movement::Abduction => shoulder.plane.cos() > 0.0,
            _ => true,
        };
        match key.movement {
            _ if !is_in_its_half && shoulder.elevation > Angle::ZERO => None,
            _ if !matches!(key.joint, Joint::Shoulder | Joint::Elbow) => None,
            Movement::ForwardElevation
            | Movement::ScapularPlaneElevation
            | Movement::Abduction
            | Movement::Extension => Some(Self {
                center: joints.shoulder,
                zero: trunk * -Vector::Y,
                axis: trunk * (Rotation::about_y(shoulder.plane) * -Vector::X),
                angle: shoulder.elevation,
                reach: to_grip,
            }),
            Movement::ExternalRotation
            | Movement::AbductionWithExternalRotation
            | Movement::InternalRotation
            | Movement::InwardTurnAgainstGravity => {
                if arm.elbow.sin() < SHOWS_TURN {
                    return None;
                }
                let swing = body::Shoulder { outward: Angle::ZERO, ..shoulder };
                let humerus = trunk * swing.humerus();
                let outward =
                    matches!(key.movement, Movement::ExternalRotation | Movement::AbductionWithExternalRotation);
                let (axis, angle) =
                    if outward { (-humerus.y(), shoulder.outward) } else { (humerus.y(), -shoulder.outward) };
                (angle >= Angle::ZERO).then(|| Self {
                    center: joints.elbow,
                    zero: humerus.x(),
                    axis,
                    angle,
                    reach: joints.elbow.distance(joints.grip) * arm.elbow.sin(),
                })
            }
            Movement::HorizontalAdduction => {
                let level = (shoulder.elevation - QUARTER).abs() <= LEVEL_ENOUGH;
                let across = shoulder.plane - QUARTER;
                (level && across >= Angle::ZERO).then(|| Self {
                    center: joints.shoulder,
                    zero: trunk.x(),
                    axis: trunk.y(),
                    angle: across,
                    reach: to_grip,
                })
            }
            Movement::Flexion if key.joint == Joint::Elbow => {
                let humerus = trunk * shoulder.humerus();
                Some(Self {
                    center: joints.elbow,
                    zero: -humerus.y(),
                    axis: humerus.z(),
                    angle: arm.elbow,
                    reach: joints.elbow.distance(joints.grip),
                })
            }
            _ => None,
        }
    }

    /// The direction after a part of the turn.
    pub fn direction(&self, angle: Angle) -> Vector {
        Rotation::about(self.axis, angle) * self.zero
    }

    /// Where the moving part of a pose stands on this turn, before zero negative; `None` where it is out of its plane.
    ///
    /// # Units and shape
    /// `key` as the turn was made with.
    pub fn angle_of(&self, pose: &Pose, key: Key) -> Option<Angle> {
        let arm = &pose.operated;
        let raises = matches!(
            key.movement,
            Movement::ForwardElevation
                | Movement::ScapularPlaneElevation
                | Movement::Abduction
                | Movement::Extension
                | Movement::HorizontalAdduction
        );
        let part = if raises { arm.upper_arm_direction() } else { arm.forearm_direction() };
        let part = Joints::of(pose, OtherHand::AsPosed).skeleton.trunk * part;
        let flat = part - self.axis * part.dot(self.axis);
        if flat.length() < IN_PLANE {
            return None;
        }
        let across = self.axis.cross(self.zero);
        Some(Angle::from_radians(flat.dot(across).atan2(flat.dot(self.zero))))
    }

    /// A place on the arc.
    pub fn place(&self, angle: Angle, radius: f64) -> Vector {
        self.center + self.direction(angle) * radius
    }

    /// The same turn to another angle.
    #[must_use]
    pub const fn to(self, angle: Angle) -> Self {
        Self { angle, ..self }
    }

    /// Between the axis and the line of sight, whichever way the axis points: 0 where the arc is seen in its plane.
    pub fn tilt(&self, camera: &Camera) -> Angle {
        Angle::from_radians(self.axis.dot(camera.toward_viewer()).abs().min(1.0).acos())
    }

    /// How large an angle of this turn looks from somewhere.
    pub fn seen_angle(&self, camera: &Camera, angle: Angle) -> Angle {
        let flat = |direction: Vector| {
            let seen = camera.project(direction);
            Vector::new(seen.x, seen.y, 0.0)
        };
        let steps = (angle.degrees() / EVERY).ceil().max(1.0);
        let mut sum = Angle::ZERO;
        let mut before = flat(self.zero);
        let mut step = 1.0;
        while step <= steps {
            let after = flat(self.direction(angle * (step / steps)));
            let turned = (before.x * after.y - before.y * after.x).atan2(before.dot(after));
            sum = sum + Angle::from_radians(turned);
            before = after;
            step += 1.0;
        }
        sum.abs()
    }

    /// The greatest difference between how large the arc looks and how large it is, at every ten degrees and at its end.
    pub fn fault(&self, camera: &Camera) -> Angle {
        let mut worst = Angle::ZERO;
        let mut at = EVERY;
        loop {
            let angle = if at >= self.angle.degrees() { self.angle } else { Angle::from_degrees(at) };
            let off = (self.seen_angle(camera, angle) - angle).abs();
            if off > worst {
                worst = off;
            }
            if angle == self.angle {
                return worst;
            }
            at += EVERY;
        }
    }

    /// Whether a number of degrees may stand at this arc seen from here.
    ///
    /// # Method
    /// Tilted by no more than 20 degrees; or by no more than 35 and nowhere more than 3 degrees off. A small error at the
    /// end alone is luck. In both cases the drawn angle is within 3 degrees of the true one everywhere.
    pub fn may_carry_a_number(&self, camera: &Camera) -> bool {
        let tilt = self.tilt(camera);
        tilt <= TILT_AT_MOST && self.fault(camera) <= FAULT_AT_MOST
    }
}

const QUARTER: Angle = Angle::from_degrees(90.0);
/// Sine of the elbow's bend from which a turn of the upper arm shows in the forearm.
const SHOWS_TURN: f64 = 0.5;
/// How much of a part's length must lie in the plane of a turn.
const IN_PLANE: f64 = 0.9;
/// How far from level an arm across the chest still shows its angle in the picture from above.
const LEVEL_ENOUGH: Angle = Angle::from_degrees(20.0);
const TILT_AT_MOST: Angle = Angle::from_degrees(35.0);
const FAULT_AT_MOST: Angle = Angle::from_degrees(3.0);

#[cfg(test)]
mod tests {
    use super::*;
    use body::{Posture, Shoulder, Skeleton};

    const DEGREES: fn(f64) -> Angle = Angle::from_degrees;

    fn key(movement: Movement) -> Key {
        let joint = if movement == Movement::Flexion { Joint::Elbow } else { Joint::Shoulder };
        Key { joint, movement, position: body::Position::Any, mode: body::Mode::Passive }
    }

    fn swing(posture: Posture, shoulder: Shoulder, elbow: f64, movement: Movement) -> Swing {
        let mut pose = Pose::at_rest(posture);
        pose.operated.shoulder = shoulder;
        pose.operated.elbow = DEGREES(elbow);
        Swing::of(&pose, key(movement)).expect("an angle that shows")
    }

    /// Drawn less true, at the cameras of a study that measured them in another program.
    #[test]
    fn drawn_angles_are_off_by_what_was_measured() {
        let supine =
            swing(Posture::LyingOnTheBack, Shoulder::raised_ahead(DEGREES(110.0)), 0.0, Movement::ForwardElevation);
        let scapular = swing(
            Posture::Standing,
            Shoulder::raised_in_the_scapular_plane(DEGREES(100.0)),
            0.0,
            Movement::ScapularPlaneElevation,
        );
        for (swing, azimuth, elevation, off) in [
            (supine, -78.0, 14.0, 2.8),
            (supine, -90.0, 6.0, 0.1),
            (scapular, 35.0, 4.0, 0.0),
            (scapular, -150.0, 6.0, 0.0),
        ] {
            let camera = Camera::degrees(azimuth, elevation);
            let found = (swing.seen_angle(&camera, swing.angle) - swing.angle).degrees();
            assert!((found - off).abs() < 0.5, "{azimuth} {elevation}: {found} and {off}");
        }
    }

    #[test]
    fn the_end_of_the_arc_is_where_the_arm_points() {
        for (shoulder, elbow, movement) in [
            (Shoulder::raised_ahead(DEGREES(70.0)), 0.0, Movement::ForwardElevation),
            (Shoulder::raised_to_the_side(DEGREES(70.0)), 0.0, Movement::Abduction),
            (Shoulder::raised(DEGREES(-90.0), DEGREES(25.0)), 0.0, Movement::Extension),
            (Shoulder::HANGING.turned_outward(DEGREES(30.0)), 90.0, Movement::ExternalRotation),
            (Shoulder::HANGING.turned_outward(DEGREES(-50.0)), 90.0, Movement::InternalRotation),
            (
                Shoulder::raised_to_the_side(DEGREES(90.0)).turned_outward(DEGREES(60.0)),
                90.0,
                Movement::AbductionWithExternalRotation,
            ),
            (Shoulder::raised(DEGREES(120.0), DEGREES(90.0)), 0.0, Movement::HorizontalAdduction),
            (Shoulder::HANGING, 110.0, Movement::Flexion),
        ] {
            for posture in [Posture::Standing, Posture::LyingOnTheBack, Posture::LyingOnTheSoundSide] {
                let mut pose = Pose::at_rest(posture);
                pose.operated.shoulder = shoulder;
                pose.operated.elbow = DEGREES(elbow);
                let swing = Swing::of(&pose, key(movement)).expect("an angle that shows");
                let joints = Skeleton::of(&pose).operated;
                let (from, to) = match movement {
                    Movement::ExternalRotation
                    | Movement::InternalRotation
                    | Movement::AbductionWithExternalRotation
                    | Movement::Flexion => (joints.elbow, joints.wrist),
                    _ => (joints.shoulder, joints.elbow),
                };
                let off = (swing.direction(swing.angle) - (to - from).normalize()).length();
                assert!(off < 1e-9, "{movement} {posture}: {off}");
            }
        }
    }

    /// The formula of the worst error for a tilted plane: θ = 2 atan(tan(θ/2) / cos t) − θ.
    #[test]
    fn the_fault_is_at_most_what_the_tilt_allows() {
        let mut pose = Pose::at_rest(Posture::Standing);
        pose.operated.shoulder = Shoulder::raised_ahead(DEGREES(90.0));
        let swing = Swing::of(&pose, key(Movement::ForwardElevation)).expect("an angle");
        for (tilt, worst) in [(10.0, 0.9), (15.0, 2.0), (20.0, 3.6), (25.0, 5.6), (30.0, 8.2)] {
            for (azimuth, elevation) in [(-90.0 + tilt, 0.0), (-90.0, tilt)] {
                let found = swing.fault(&Camera::degrees(azimuth, elevation)).degrees();
                assert!(found <= worst + 0.05, "{tilt}: {found} and {worst}");
            }
        }
        assert!(swing.may_carry_a_number(&Camera::degrees(-82.0, 8.0)));
        assert!(!swing.may_carry_a_number(&Camera::degrees(-40.0, 8.0)));
    }

    #[test]
    fn a_straight_arm_shows_no_turn() {
        let mut pose = Pose::at_rest(Posture::Standing);
        pose.operated.shoulder = Shoulder::HANGING.turned_outward(DEGREES(30.0));
        assert_eq!(Swing::of(&pose, key(Movement::ExternalRotation)), None);
        assert_eq!(Swing::of(&pose, key(Movement::Shrug)), None);
    }
}
