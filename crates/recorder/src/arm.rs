//! Forward kinematics: from the angles of the joints to where the limbs are and how they are turned.
//!
//! Axes of the world: X ahead, Y to the left, Z up. The person faces X when upright; lying on the back the head points
//! to −X. Everything is told of a right arm; [`Limbs::mirrored`] makes the left one. A limb's own axes: Z from its far
//! to its near end, X to the front of a hanging arm.

use glam::{DQuat, DVec3};

/// Lengths of the body, meters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lengths {
    /// From the middle of the hips to the right shoulder, in the axes of the trunk.
    pub shoulder: DVec3,
    /// Of the hips above the floor.
    pub hip_height: f64,
    /// Shoulder to elbow.
    pub upper_arm: f64,
    /// Elbow to wrist.
    pub forearm: f64,
    /// Wrist to the middle of the hand.
    pub grip: f64,
}

impl Lengths {
    /// Shoulder to the middle of the hand.
    pub fn arm(&self) -> f64 {
        self.upper_arm + self.forearm + self.grip
    }
}

/// The angles of the joints of a right arm, in radians, and where the trunk is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Joints {
    /// The middle of the hips.
    pub hips: DVec3,
    /// How the trunk is turned.
    pub trunk: DQuat,
    /// The shoulder against the trunk, beyond its own place.
    pub shoulder_shift: DVec3,
    /// Plane of elevation: 0 to the side, a quarter turn straight ahead.
    pub plane: f64,
    /// Raising of the upper arm in that plane.
    pub elevation: f64,
    /// Turned outward.
    pub outward: f64,
    /// Bending of the elbow.
    pub elbow: f64,
    /// Turn of the forearm about its own length.
    pub forearm: f64,
}

impl Joints {
    /// Upright, everything hanging.
    pub fn standing(lengths: &Lengths) -> Self {
        Self {
            hips: DVec3::new(0.0, 0.0, lengths.hip_height),
            trunk: DQuat::IDENTITY,
            shoulder_shift: DVec3::ZERO,
            plane: 0.0,
            elevation: 0.0,
            outward: 0.0,
            elbow: 0.0,
            forearm: 0.0,
        }
    }

    /// On the back: what was ahead is up, the head points to −X.
    pub fn supine() -> Self {
        Self {
            hips: DVec3::new(0.0, 0.0, 0.6),
            trunk: DQuat::from_rotation_y(-std::f64::consts::FRAC_PI_2),
            shoulder_shift: DVec3::ZERO,
            plane: 0.0,
            elevation: 0.0,
            outward: 0.0,
            elbow: 0.0,
            forearm: 0.0,
        }
    }
}

/// A place and how what is there is turned: from its own axes to the world's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// Meters.
    pub at: DVec3,
    /// From own axes to the world's.
    pub turn: DQuat,
}

impl Place {
    /// A point given in own axes.
    pub fn point(&self, own: DVec3) -> DVec3 {
        self.at + self.turn * own
    }
}

/// Where the parts of the arm are.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limbs {
    /// Upper arm, at the shoulder.
    pub upper_arm: Place,
    /// Forearm, at the elbow, before its turn about its own length.
    pub forearm: Place,
    /// Hand, at the wrist, turned with the forearm.
    pub hand: Place,
    /// The middle of the hand.
    pub grip: DVec3,
}

impl Limbs {
    /// From the angles of the joints.
    pub fn of(joints: &Joints, lengths: &Lengths) -> Self {
        let shoulder = joints.hips + joints.trunk * (lengths.shoulder + joints.shoulder_shift);
        let upper_turn = joints.trunk * swing(joints.plane, joints.elevation) * DQuat::from_rotation_z(-joints.outward);
        let upper_arm = Place { at: shoulder, turn: upper_turn };
        let elbow = upper_arm.point(DVec3::NEG_Z * lengths.upper_arm);
        let forearm = Place { at: elbow, turn: upper_turn * DQuat::from_rotation_y(-joints.elbow) };
        let wrist = forearm.point(DVec3::NEG_Z * lengths.forearm);
        let hand = Place { at: wrist, turn: forearm.turn * DQuat::from_rotation_z(joints.forearm) };
        Self { upper_arm, forearm, hand, grip: hand.point(DVec3::NEG_Z * lengths.grip) }
    }

    /// The left arm of the same movement: reflected in the plane that parts left from right.
    pub fn mirrored(self) -> Self {
        let place = |place: Place| Place { at: mirror(place.at), turn: mirror_turn(place.turn) };
        Self {
            upper_arm: place(self.upper_arm),
            forearm: place(self.forearm),
            hand: place(self.hand),
            grip: mirror(self.grip),
        }
    }
}

fn mirror(point: DVec3) -> DVec3 {
    DVec3::new(point.x, -point.y, point.z)
}

/// A turn seen in the mirror: its axis is an axial vector.
fn mirror_turn(turn: DQuat) -> DQuat {
    DQuat::from_xyzw(-turn.x, turn.y, -turn.z, turn.w)
}

/// From hanging to raised in a plane, without a turn about the arm's own length.
fn swing(plane: f64, elevation: f64) -> DQuat {
    // Right angles to hanging and to the way the arm goes, by the right-hand rule.
    let way = DVec3::new(plane.sin(), -plane.cos(), 0.0);
    DQuat::from_axis_angle(DVec3::NEG_Z.cross(way), elevation)
}

#[cfg(test)]
mod tests {
    use std::f64::consts::FRAC_PI_2;

    use super::*;

    const LENGTHS: Lengths =
        Lengths { shoulder: DVec3::new(0.0, -0.2, 0.5), hip_height: 0.9, upper_arm: 0.3, forearm: 0.25, grip: 0.1 };

    fn near(found: DVec3, wanted: [f64; 3]) {
        assert!((found - DVec3::from(wanted)).length() < 1e-12, "{found} is not {wanted:?}");
    }

    #[test]
    fn a_hanging_arm_hangs() {
        let limbs = Limbs::of(&Joints::standing(&LENGTHS), &LENGTHS);
        near(limbs.grip, [0.0, -0.2, 0.9 + 0.5 - 0.65]);
    }

    #[test]
    fn each_joint_moves_the_hand_where_a_clinician_expects() {
        let standing = Joints::standing(&LENGTHS);
        let grip = |joints| Limbs::of(&joints, &LENGTHS).grip - Limbs::of(&joints, &LENGTHS).upper_arm.at;
        near(grip(Joints { elevation: FRAC_PI_2, ..standing }), [0.0, -0.65, 0.0]); // to the side: right is −Y
        near(grip(Joints { elevation: FRAC_PI_2, plane: FRAC_PI_2, ..standing }), [0.65, 0.0, 0.0]); // ahead
        near(grip(Joints { elbow: FRAC_PI_2, ..standing }), [0.35, 0.0, -0.3]); // forearm points ahead
        near(grip(Joints { elbow: FRAC_PI_2, outward: FRAC_PI_2, ..standing }), [0.0, -0.35, -0.3]); // outward
        let supine = Joints { elbow: FRAC_PI_2, ..Joints::supine() };
        near(grip(supine), [0.3, 0.0, 0.35]); // along the body to the feet, forearm to the ceiling
        near(grip(Joints { outward: FRAC_PI_2, ..supine }), [0.3, -0.35, 0.0]); // down beside the body
        near(grip(Joints { plane: FRAC_PI_2, elevation: FRAC_PI_2, ..Joints::supine() }), [0.0, 0.0, 0.65]);
    }

    #[test]
    fn the_left_arm_is_the_mirror_image() {
        let joints = Joints { elevation: 0.7, plane: 0.4, outward: 0.5, elbow: 1.1, ..Joints::standing(&LENGTHS) };
        let (right, left) = (Limbs::of(&joints, &LENGTHS), Limbs::of(&joints, &LENGTHS).mirrored());
        near(left.grip, [right.grip.x, -right.grip.y, right.grip.z]);
        // Turns and places must fit: the far end of the mirrored forearm is the mirrored wrist.
        near(left.forearm.point(DVec3::NEG_Z * LENGTHS.forearm), left.hand.at.to_array());
        near(left.hand.point(DVec3::NEG_Z * LENGTHS.grip), left.grip.to_array());
    }
}
