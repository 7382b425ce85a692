//! Nine numbers that should be a turn, and what is wrong with them where they are not.

use glam::{DMat3, DVec3};

use crate::rotation::Rotation;
use crate::words::Side;

/// A 3 × 3 matrix as it came from outside, row by row.
///
/// # Units and shape
/// The humerus in the frame of the thorax: the columns are the axes of the humerus (forward, up, right), written in
/// the axes of the thorax. Nothing is promised about the numbers; [`Matrix::check`] says what they are.
///
/// # Example
/// ```
/// use body::{Angle, Frame, Matrix, Rotation};
/// let turn = Rotation::about_z(Angle::from_degrees(60.0));
/// let mut rows = turn.rows();
/// rows[0][0] += 0.01;
/// let written = Matrix::from_rows(rows);
/// assert_eq!(written.check().frame, Frame::Off);
/// assert!(written.nearest().expect("a turn is near").distance(turn) < Angle::from_degrees(0.6));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Matrix([f64; 9]);

crate::words! {
    /// What nine numbers are.
    Frame {
        /// A turn, as closely as measured matrices are.
        Turn = "turn",
        /// Not orthonormal, and a turn is near.
        Off = "not orthonormal",
        /// A reflection: right-handed axes seen as left-handed ones.
        LeftHanded = "left-handed",
        /// The axes lie in one plane, or one is missing: no turn is nearer than others.
        Flat = "no frame",
        /// A number is missing, infinite, or too large to be looked at.
        NotFinite = "not finite",
    }
}

/// How far nine numbers are from a turn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FrameCheck {
    /// What they are.
    pub frame: Frame,
    /// The largest departure of RᵀR from the identity, by entry; not a number where they are not finite.
    pub defect: f64,
    /// The determinant: 1 of a turn, −1 of a reflection.
    pub determinant: f64,
}

/// More than this off orthonormal is told.
pub(crate) const DEFECT_TOLD: f64 = 1e-3; // not medical: the border of the warning, in the contract

/// A determinant below this part of what axes of the same lengths can have is flat.
const FLAT: f64 = 1e-6; // not medical: axes of one length, the third within 0.00006 degrees of the plane of the others

/// Larger entries are no part of any frame, and their squares may be infinite.
const LARGEST: f64 = 1e100; // not medical: far beyond any frame, far below the largest number

impl FrameCheck {
    /// From what a kernel computed; `scale` is the size of the entries.
    pub(crate) fn new(defect: f64, determinant: f64, scale: f64) -> Self {
        let frame = match () {
            () if !defect.is_finite() || !determinant.is_finite() || scale > LARGEST => Frame::NotFinite,
            () if determinant.abs() <= FLAT * scale * scale * scale => Frame::Flat,
            () if determinant < 0.0 => Frame::LeftHanded,
            () if defect > DEFECT_TOLD => Frame::Off,
            () => Frame::Turn,
        };
        Self { frame, defect, determinant }
    }
}

impl Matrix {
    /// From its rows.
    pub const fn from_rows(rows: [[f64; 3]; 3]) -> Self {
        let [[a, b, c], [d, e, f], [g, h, i]] = rows;
        Self([a, b, c, d, e, f, g, h, i])
    }

    /// From its nine numbers, row by row.
    pub const fn from_array(entries: [f64; 9]) -> Self {
        Self(entries)
    }

    /// The nine numbers, row by row.
    pub const fn entries(&self) -> &[f64; 9] {
        &self.0
    }

    /// The matrix of the right arm that this one of an arm of `side` is, in a mirror.
    ///
    /// # Method
    /// See [`Rotation::mirrored`]; a right arm's is itself.
    #[must_use]
    pub const fn as_right_arm(self, side: Side) -> Self {
        let [a, b, c, d, e, f, g, h, i] = self.0;
        match side {
            Side::Right => self,
            Side::Left => Self([a, b, -c, d, e, -f, -g, -h, i]),
        }
    }

    /// What the nine numbers are.
    pub fn check(&self) -> FrameCheck {
        let matrix = self.columns();
        let [x, y, z] = [matrix.x_axis, matrix.y_axis, matrix.z_axis];
        let lengths = [x, y, z].map(|axis| (axis.dot(axis) - 1.0).abs());
        let between = [x.dot(y).abs(), y.dot(z).abs(), z.dot(x).abs()];
        // A sum carries what is not a number; a maximum would drop it.
        let carried = (lengths.iter().sum::<f64>() + between.iter().sum::<f64>()) * 0.0;
        let defect = lengths.into_iter().chain(between).fold(0.0, f64::max) + carried;
        FrameCheck::new(defect, matrix.determinant(), self.largest())
    }

    /// The turn that is nearest by the sum of squared differences; none of a reflection, of axes in one plane, and of
    /// what is no number.
    ///
    /// # Method
    /// The orthogonal factor of the polar decomposition, by Newton's iteration X ← (sX + (sX)⁻ᵀ) / 2 with the scale
    /// that makes the determinant one. Ten lines do for 3 × 3; a library of linear algebra would be for this alone.
    pub fn nearest(&self) -> Option<Rotation> {
        if !matches!(self.check().frame, Frame::Turn | Frame::Off) {
            return None;
        }
        let mut near = self.columns() * (1.0 / self.largest());
        for _ in 0..STEPS {
            near *= near.determinant().cbrt().recip();
            let next = (near + near.inverse().transpose()) * HALF;
            let moved = (next - near).abs();
            near = next;
            let largest =
                [moved.x_axis, moved.y_axis, moved.z_axis].map(DVec3::max_element).into_iter().fold(0.0, f64::max);
            if largest < SETTLED {
                break;
            }
        }
        Some(Rotation::from_axes(near.x_axis, near.y_axis, near.z_axis))
    }

    fn columns(&self) -> DMat3 {
        DMat3::from_cols_array(&self.0).transpose()
    }

    fn largest(&self) -> f64 {
        self.0.iter().fold(0.0, |most: f64, entry| most.max(entry.abs()))
    }
}

impl From<Rotation> for Matrix {
    fn from(turn: Rotation) -> Self {
        Self::from_rows(turn.rows())
    }
}

const STEPS: u32 = 40; // not medical: flat axes within the tolerance settle in under half of these
const SETTLED: f64 = 1e-15; // not medical: the last step squares the error, so this is rounding
const HALF: f64 = 0.5; // not medical: the mean of two

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Angle;

    const DIAGONAL: fn([f64; 3]) -> Matrix = |[a, b, c]| Matrix([a, 0.0, 0.0, 0.0, b, 0.0, 0.0, 0.0, c]);

    fn some_turn() -> Rotation {
        let angle = Angle::from_degrees;
        Rotation::about_y(angle(40.0)) * Rotation::about_x(angle(-120.0)) * Rotation::about_y(angle(-50.0))
    }

    #[test]
    fn each_kind_is_told_from_the_others() {
        let frame = |matrix: Matrix| matrix.check().frame;
        assert_eq!(frame(DIAGONAL([1.0; 3])), Frame::Turn);
        assert_eq!(frame(DIAGONAL([1.000_499, 1.0, 1.0])), Frame::Turn);
        assert_eq!(frame(DIAGONAL([1.000_501, 1.0, 1.0])), Frame::Off);
        assert_eq!(frame(DIAGONAL([1e30; 3])), Frame::Off);
        assert_eq!(frame(DIAGONAL([1e-200; 3])), Frame::Flat);
        assert_eq!(frame(DIAGONAL([1.0, 1.0, -1.0])), Frame::LeftHanded);
        assert_eq!(frame(DIAGONAL([1.0, 1.0, 0.0])), Frame::Flat);
        assert_eq!(frame(DIAGONAL([0.0; 3])), Frame::Flat);
        for bad in [f64::NAN, f64::INFINITY, 1e200, f64::MAX] {
            for at in 0..9 {
                let mut entries = *Matrix::from(some_turn()).entries();
                entries[at] = bad;
                assert_eq!(frame(Matrix(entries)), Frame::NotFinite, "{bad} at {at}");
            }
        }
    }

    #[test]
    fn two_axes_swapped_are_a_reflection() {
        let [[a, b, c], [d, e, f], [g, h, i]] = some_turn().rows();
        let check = Matrix::from_rows([[b, a, c], [e, d, f], [h, g, i]]).check();
        assert_eq!(check.frame, Frame::LeftHanded);
        assert!((check.determinant + 1.0).abs() < 1e-12 && check.defect < 1e-12, "{check:?}");
    }

    #[test]
    fn the_nearest_turn_of_a_stretched_one_is_that_turn() {
        // A turn times a symmetric positive matrix is a polar decomposition by definition.
        let stretch = DMat3::from_cols_array(&[1.3, 0.2, -0.1, 0.2, 0.9, 0.15, -0.1, 0.15, 1.1]);
        let rows = some_turn().rows();
        let turn = DMat3::from_cols_array_2d(&rows).transpose();
        let written = Matrix::from_rows((turn * stretch).transpose().to_cols_array_2d());
        let near = written.nearest().expect("a turn is near");
        assert!(near.distance(some_turn()) < Angle::from_degrees(1e-10), "{}", near.distance(some_turn()));
        let check = Matrix::from(near).check();
        assert!(check.defect < 1e-14, "{check:?}");
    }

    #[test]
    fn nothing_is_near_a_reflection_or_a_plane() {
        assert_eq!(DIAGONAL([1.0, 1.0, -1.0]).nearest(), None);
        assert_eq!(DIAGONAL([1.0, 1.0, 1e-9]).nearest(), None);
        assert!(DIAGONAL([1.0, 1.0, 1e-4]).nearest().is_some_and(|near| near.distance(Rotation::NONE) == Angle::ZERO));
        assert_eq!(DIAGONAL([f64::NAN, 1.0, 1.0]).nearest(), None);
    }

    #[test]
    fn a_mirror_of_the_numbers_is_a_mirror_of_the_turn() {
        let mirrored = Matrix::from(some_turn()).as_right_arm(Side::Left);
        assert_eq!(mirrored, Matrix::from(some_turn().mirrored()));
        assert_eq!(mirrored.as_right_arm(Side::Right), mirrored);
    }
}
