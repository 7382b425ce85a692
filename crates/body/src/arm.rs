//! One arm in a pose.

use evidence::ids;

use crate::angle::Angle;
use crate::rotation::{Rotation, Vector};

/// How one arm is held.
///
/// # Units and shape
/// Told as a right arm's: a left one is the mirror image. Everything at zero is the arm hanging at the side, the
/// thumb pointing forward.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Arm {
    /// Where the upper arm points and how it is turned.
    pub shoulder: Shoulder,
    /// The shoulder blade on the chest wall, beyond what it does along with the humerus.
    pub blade: Blade,
    /// Bending of the elbow.
    pub elbow: Angle,
    /// Turn of the forearm: palm down is positive, palm up negative.
    pub forearm: Angle,
    /// Bending of the wrist toward the palm.
    pub wrist: Angle,
    /// What the fingers do.
    pub fingers: Fingers,
}

/// Where the upper arm points and how it is turned, as a clinician says it.
///
/// # Units and shape
/// A swing without twist in a plane, then a turn about the humerus: the frame is
/// Ry(plane) Rx(−elevation) Ry(−plane) Ry(−outward). So the outward turn is one clinical number at every elevation,
/// and zero is the forearm pointing ahead, when the arm is at the side and the elbow bent.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shoulder {
    /// The plane of elevation: 0 to the side, 90 straight ahead, −90 straight back.
    pub plane: Angle,
    /// How far the upper arm is raised in that plane, from 0 to 180.
    pub elevation: Angle,
    /// Turned outward; inward is negative.
    pub outward: Angle,
}

impl Shoulder {
    /// Hanging at the side, not turned.
    pub const HANGING: Self = Self { plane: Angle::ZERO, elevation: Angle::ZERO, outward: Angle::ZERO };

    /// The frame of the humerus in that of the thorax.
    pub fn humerus(self) -> Rotation {
        Rotation::about_y(self.plane)
            * Rotation::about_x(-self.elevation)
            * Rotation::about_y(-(self.plane + self.outward))
    }

    fn between(first: Self, second: Self, share: f64) -> Self {
        let mix = |a: Angle, b: Angle| a + (b - a) * share;
        let outward = mix(first.outward, second.outward);
        let opposite = (first.plane - second.plane).wrapped().abs() >= OPPOSITE;
        let [hangs_first, hangs_second] = [first, second].map(|shoulder| shoulder.elevation == Angle::ZERO);
        // From in front to behind the arm goes past the side of the body, not around it.
        let elevation = mix(first.elevation, if opposite { -second.elevation } else { second.elevation });
        let plane = match (hangs_first, hangs_second, opposite) {
            (true, false, _) => second.plane,
            (false, true, _) => first.plane,
            (_, _, true) if elevation < Angle::ZERO => second.plane,
            (_, _, true) => first.plane,
            (_, _, false) => mix(first.plane, second.plane),
        };
        Self { plane, elevation: elevation.abs(), outward }
    }
}

/// Planes at least this far apart are one plane, before and behind the body.
///
/// Between others the arm goes round the side. The border lies well below half a turn: a way that is nearly through
/// the side of the body and one exactly through it must not differ by a swing around the body.
const OPPOSITE: Angle = Angle::from_degrees(150.0); // not medical: which of two ways a drawn arm takes

/// Movement of the shoulder blade.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Blade {
    /// Toward the ear.
    pub raised: Angle,
    /// Forward around the chest; backward is negative.
    pub forward: Angle,
}

crate::words! {
    /// What the fingers do.
    Fingers {
        /// Half bent, as a hand hangs.
        Soft = "soft",
        /// Straight.
        Straight = "straight",
        /// Closed, or around something.
        Closed = "closed",
    }
}

impl Arm {
    /// Hanging at the side.
    pub const HANGING: Self = Self {
        shoulder: Shoulder::HANGING,
        blade: Blade { raised: Angle::ZERO, forward: Angle::ZERO },
        elbow: Angle::ZERO,
        forearm: Angle::ZERO,
        wrist: Angle::ZERO,
        fingers: Fingers::Soft,
    };

    /// Where the upper arm points, from shoulder to elbow, in the frame of the thorax.
    pub fn upper_arm_direction(&self) -> Vector {
        self.shoulder.humerus() * -Vector::Y
    }

    /// The frame of the forearm before it turns about its own length, in that of the thorax.
    pub fn forearm_frame(&self) -> Rotation {
        self.shoulder.humerus() * Rotation::about_z(self.elbow)
    }

    /// Where the forearm points, from elbow to wrist, in the frame of the thorax.
    pub fn forearm_direction(&self) -> Vector {
        self.forearm_frame() * -Vector::Y
    }

    /// The frame of the hand, in that of the thorax: the fingers point along −Y, the palm faces −Z.
    pub fn hand_frame(&self) -> Rotation {
        self.forearm_frame() * Rotation::about_y(self.forearm) * Rotation::about_x(self.wrist)
    }

    /// Where the hand points, from the wrist on, in the frame of the thorax.
    pub fn hand_direction(&self) -> Vector {
        self.hand_frame() * -Vector::Y
    }

    /// How far the shoulder blade turns upward along with the humerus.
    ///
    /// # Method
    /// A simple rhythm: none up to the setting phase, then a fixed share of every degree. Measured shares differ
    /// between people and along the arc; skeletons and drawings use this, no limit does.
    ///
    /// # Source
    /// `scapula-setting`, `scapula-share`: common practice, no source.
    pub fn scapular_upward_rotation(&self) -> Angle {
        self.beyond_setting() * ids::SCAPULA_SHARE.number()
    }

    /// The frame of the shoulder blade, in that of the thorax: X away from its face, Y along its inner border, Z toward
    /// the shoulder.
    ///
    /// # Method
    /// At rest it stands in the scapular plane; then it turns upward by the simple rhythm, and moves with the pose's own
    /// [`Blade`]. Tilt and winging are left out.
    ///
    /// # Source
    /// `scapular-plane-forward`, `scapula-setting`, `scapula-share`: common practice, no source. For drawings only.
    pub fn scapula(&self) -> Rotation {
        let forward = Angle::from_degrees(ids::SCAPULAR_PLANE_FORWARD.number()) + self.blade.forward;
        Rotation::about_y(forward) * Rotation::about_x(-self.scapular_upward_rotation())
    }

    /// How far the collarbone rises along with the humerus.
    ///
    /// # Source
    /// `clavicle-share`: own choice.
    pub fn clavicle_rise(&self) -> Angle {
        self.beyond_setting() * ids::CLAVICLE_SHARE.number()
    }

    /// Raising that the blade goes along with; toward straight back, where it does not, ever less of it.
    fn beyond_setting(&self) -> Angle {
        let beyond = (self.shoulder.elevation.degrees() - ids::SCAPULA_SETTING.number()).max(0.0);
        let plane = self.shoulder.plane;
        let along = if plane.sin() < 0.0 { plane.cos().abs() } else { 1.0 };
        Angle::from_degrees(beyond * along)
    }

    /// A place on the way from one hold to another; 0 is the first, 1 the second.
    ///
    /// # Method
    /// Every angle changes in proportion; an upper arm that hangs at one end moves in the plane of the other end, and
    /// one that goes from in front of the body to behind it passes the side.
    /// The fingers are those of the nearer end.
    pub fn between(first: &Self, second: &Self, share: f64) -> Self {
        let mix = |a: Angle, b: Angle| a + (b - a) * share;
        Self {
            shoulder: Shoulder::between(first.shoulder, second.shoulder, share),
            blade: Blade {
                raised: mix(first.blade.raised, second.blade.raised),
                forward: mix(first.blade.forward, second.blade.forward),
            },
            elbow: mix(first.elbow, second.elbow),
            forearm: mix(first.forearm, second.forearm),
            wrist: mix(first.wrist, second.wrist),
            fingers: if share < HALF { first.fingers } else { second.fingers },
        }
    }
}

const HALF: f64 = 0.5; // not medical: the middle of a way
