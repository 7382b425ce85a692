//! A whole body in a pose: what exercises, loads and drawings share.

use crate::angle::Angle;
use crate::arm::Arm;
use crate::posture::Posture;
use crate::rotation::Rotation;

/// How a body is placed and holds its arms.
///
/// # Units and shape
/// Always told with the right arm as the operated one; a left arm's pose is this one in a mirror
/// ([`crate::Skeleton::mirrored`]), so no number here changes its sign with the side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pose {
    /// How the body is placed.
    pub posture: Posture,
    /// How far the trunk leans forward.
    pub lean: Angle,
    /// The operated arm.
    pub operated: Arm,
    /// The other arm.
    pub other: Arm,
}

impl Pose {
    /// A posture with both arms hanging.
    pub const fn at_rest(posture: Posture) -> Self {
        Self { posture, lean: Angle::ZERO, operated: Arm::HANGING, other: Arm::HANGING }
    }

    /// The frame of the thorax in the room.
    pub fn trunk(&self) -> Rotation {
        self.posture.trunk(self.lean)
    }

    /// A place on the way from one pose to another; 0 is the first, 1 the second.
    ///
    /// # Units and shape
    /// Both in one posture: a movement does not stand up on its way. The posture is the first one's.
    pub fn between(first: &Self, second: &Self, share: f64) -> Self {
        Self {
            posture: first.posture,
            lean: first.lean + (second.lean - first.lean) * share,
            operated: Arm::between(&first.operated, &second.operated, share),
            other: Arm::between(&first.other, &second.other, share),
        }
    }
}
