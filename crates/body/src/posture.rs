//! How the body is placed, and how the trunk then lies in the room.

use crate::angle::Angle;
use crate::rotation::Rotation;
use crate::words;

words! {
    /// How the body is placed.
    Posture {
        /// Standing.
        Standing = "standing",
        /// Sitting.
        Sitting = "sitting",
        /// Lying on the back.
        LyingOnTheBack = "lying on the back",
        /// Lying on the side that was not operated.
        LyingOnTheSoundSide = "lying on the sound side",
        /// Lying on the operated side; an activity only, never an exercise.
        LyingOnTheOperatedSide = "lying on the operated side",
        /// Lying on the front.
        LyingOnTheFront = "lying on the front",
        /// Standing, the trunk bent forward.
        BentForward = "bent forward",
        /// On the knees or on hands and knees.
        Kneeling = "kneeling",
    }
}

const QUARTER: Angle = Angle::from_degrees(90.0); // not medical: a right angle

impl Posture {
    /// The frame of the thorax in the room, the operated arm being the right one.
    ///
    /// # Units and shape
    /// The room: X where the person faces when standing, Y up, Z to the right. `lean` bends the trunk forward from
    /// this posture's own position; on the back, front or side it curls the trunk the same way.
    pub fn trunk(self, lean: Angle) -> Rotation {
        let placed = match self {
            Self::Standing | Self::Sitting | Self::BentForward => Rotation::NONE,
            Self::LyingOnTheBack => Rotation::about_z(QUARTER),
            Self::LyingOnTheFront | Self::Kneeling => Rotation::about_z(-QUARTER),
            // The right arm is the operated one: its side is up when the sound side is down.
            Self::LyingOnTheSoundSide => Rotation::about_x(-QUARTER),
            Self::LyingOnTheOperatedSide => Rotation::about_x(QUARTER),
        };
        placed * Rotation::about_z(-lean)
    }

    /// Whether the trunk is upright before any lean.
    pub const fn is_upright(self) -> bool {
        matches!(self, Self::Standing | Self::Sitting | Self::BentForward)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rotation::Vector;

    fn check(posture: Posture, of_the_trunk: Vector, in_the_room: Vector) {
        let found = posture.trunk(Angle::ZERO) * of_the_trunk;
        assert!((found - in_the_room).length() < 1e-12, "{posture}: {found}"); // not medical: a rounding error
    }

    #[test]
    fn what_is_up_is_up() {
        check(Posture::Standing, Vector::Y, Vector::Y);
        check(Posture::LyingOnTheBack, Vector::X, Vector::Y);
        check(Posture::LyingOnTheFront, -Vector::X, Vector::Y);
        check(Posture::Kneeling, -Vector::X, Vector::Y);
        check(Posture::LyingOnTheSoundSide, Vector::Z, Vector::Y);
        check(Posture::LyingOnTheOperatedSide, -Vector::Z, Vector::Y);
    }

    #[test]
    fn leaning_takes_the_head_forward() {
        let head = Posture::BentForward.trunk(Angle::from_degrees(60.0)) * Vector::Y; // not medical: any lean
        assert!(head.x > 0.8 && head.y > 0.0); // not medical: sine of that lean
    }
}
