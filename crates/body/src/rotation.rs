//! Turns of one frame against another.

use std::ops::Mul;

use glam::{DMat3, DVec3};

use crate::angle::Angle;

/// A place or a direction: forward, up, right.
///
/// # Units and shape
/// The axes of the recommendation of 2005: X forward, Y up, Z to the right of the body. Lengths are in meters
/// or in fractions of stature, as the giver says.
pub type Vector = DVec3;

/// A turn of a moved frame against a fixed one.
///
/// # Units and shape
/// A 3 × 3 matrix whose columns are the axes of the moved frame, written in the fixed one. It takes what is
/// written in the moved frame to the fixed one. Made only from turns, so it is always orthonormal; what comes from
/// outside is a [`crate::Matrix`] until it has been looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rotation(DMat3);

impl Rotation {
    /// Both frames alike.
    pub const NONE: Self = Self(DMat3::IDENTITY);

    /// About the forward axis; positive turns up toward the right.
    pub fn about_x(angle: Angle) -> Self {
        Self(DMat3::from_rotation_x(angle.radians()))
    }

    /// About the axis that points up; positive turns right toward forward.
    pub fn about_y(angle: Angle) -> Self {
        Self(DMat3::from_rotation_y(angle.radians()))
    }

    /// About the axis that points right; positive turns forward toward up.
    pub fn about_z(angle: Angle) -> Self {
        Self(DMat3::from_rotation_z(angle.radians()))
    }

    /// About any axis of length one, by the rule of the right hand.
    pub fn about(axis: Vector, angle: Angle) -> Self {
        Self(DMat3::from_axis_angle(axis, angle.radians()))
    }

    /// From axes that are known to be orthonormal and right-handed.
    pub(crate) const fn from_axes(x: Vector, y: Vector, z: Vector) -> Self {
        Self(DMat3::from_cols(x, y, z))
    }

    /// The turn back.
    pub fn inverse(self) -> Self {
        Self(self.0.transpose())
    }

    /// The forward axis of the moved frame.
    pub const fn x(self) -> Vector {
        self.0.x_axis
    }

    /// The upward axis of the moved frame.
    pub const fn y(self) -> Vector {
        self.0.y_axis
    }

    /// The axis of the moved frame that points right.
    pub const fn z(self) -> Vector {
        self.0.z_axis
    }

    /// The matrix, row by row.
    pub fn rows(self) -> [[f64; 3]; 3] {
        self.0.transpose().to_cols_array_2d()
    }

    /// The same turn seen in a mirror between left and right.
    ///
    /// # Method
    /// The recommendation defines a left arm by mirroring raw places (z becomes −z) and reading them as a right
    /// arm's. For a matrix that is S R S with S = diag(1, 1, −1).
    pub fn mirrored(self) -> Self {
        let [[a, b, c], [d, e, f], [g, h, i]] = self.rows();
        Self(DMat3::from_cols_array(&[a, d, -g, b, e, -h, -c, -f, i]))
    }

    /// How far apart two turns are: the angle of the turn between them.
    pub fn distance(self, other: Self) -> Angle {
        let between = self.inverse() * other;
        let [x, y, z] = [between.y().z - between.z().y, between.z().x - between.x().z, between.x().y - between.y().x];
        let sine = Vector::new(x, y, z).length();
        let cosine = between.x().x + between.y().y + between.z().z - 1.0;
        Angle::from_radians(sine.atan2(cosine))
    }
}

impl Mul for Rotation {
    type Output = Self;
    /// First the right one, then the left one, both written in the fixed frame.
    fn mul(self, other: Self) -> Self {
        Self(self.0 * other.0)
    }
}

impl Mul<Vector> for Rotation {
    type Output = Vector;
    fn mul(self, written_in_moved: Vector) -> Vector {
        self.0 * written_in_moved
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn close(a: Vector, b: Vector) -> bool {
        (a - b).length() < 1e-12 // not medical: far under any angle that counts
    }

    #[test]
    fn each_axis_turns_as_its_comment_says() {
        let quarter = Angle::from_degrees(90.0); // not medical: a right angle
        assert!(close(Rotation::about_x(quarter) * Vector::Y, Vector::Z));
        assert!(close(Rotation::about_y(quarter) * Vector::Z, Vector::X));
        assert!(close(Rotation::about_z(quarter) * Vector::X, Vector::Y));
    }

    #[test]
    fn a_mirror_turns_back_what_is_not_in_its_plane() {
        let turn = Angle::from_degrees(33.0); // not medical: any angle
        assert_eq!(Rotation::about_y(turn).mirrored(), Rotation::about_y(-turn));
        assert_eq!(Rotation::about_x(turn).mirrored(), Rotation::about_x(-turn));
        assert_eq!(Rotation::about_z(turn).mirrored(), Rotation::about_z(turn));
        let both = Rotation::about_x(turn) * Rotation::about_y(turn) * Rotation::about_z(turn);
        assert_eq!(both.mirrored().mirrored(), both);
        assert!((both.distance(Rotation::NONE * both)).abs() < Angle::from_degrees(1e-6)); // not medical: as above
    }
}
