//! The upper arm against the chest, in the angles of the standard.

use crate::angle::Angle;
use crate::noise;
use crate::rotation::Rotation;

/// Plane of elevation, elevation and axial rotation: Y-X′-Y″ in the branch of the standard.
///
/// # Units and shape
/// Of a right arm; a left one is mirrored first ([`Rotation::mirrored`]). The humerus in the thorax is
/// Ry(plane) Rx(−elevation) Ry(axial). Elevation goes from 0 to 180 and is printed as a positive number, though the
/// standard turns about +X by its negative; the plane is 0 to the side, +90 straight ahead; inward turn is positive.
/// Angles go from over −180 to 180 degrees.
///
/// # Method
/// The plane comes from where the humerus points, the axial rotation from how the thorax's upward axis lies in the
/// humerus. Two common libraries return the other branch of the same sequence, (plane ∓ 180, −elevation,
/// axial ∓ 180), where the elevation looks right and both others are half a turn off.
///
/// With the arm at the side or straight up both turns are about one axis and neither has a value; where the sine of
/// the elevation is under a thousandth they are `None`, near it [`Thoracohumeral::noise_gain`] says how unsure they
/// are. Their sum stays well behaved but for an arm straight up.
///
/// # Source
/// Recommendation of the International Society of Biomechanics of 2005, 2.4.7; branch and signs checked by matrices
/// against SciPy (`crates/body/tests/scipy.csv`).
///
/// # Example
/// ```
/// use body::{Angle, Rotation, Thoracohumeral};
/// // Raised straight ahead, without any twist: the standard still reads an axial rotation.
/// let ahead = Thoracohumeral::of(Rotation::about_z(Angle::from_degrees(60.0)));
/// let degrees = |angle: Option<Angle>| angle.map(|angle| angle.degrees().round());
/// assert_eq!(degrees(ahead.plane_of_elevation()), Some(90.0));
/// assert_eq!(degrees(ahead.axial_rotation()), Some(-90.0));
/// assert!(ahead.y_sum().degrees().abs() < 1e-9);
/// let at_the_side = Thoracohumeral::of(Rotation::about_y(Angle::from_degrees(-40.0)));
/// assert_eq!(at_the_side.plane_of_elevation(), None);
/// assert!((at_the_side.y_sum().degrees() + 40.0).abs() < 1e-9);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thoracohumeral {
    turns: Option<(Angle, Angle)>,
    elevation: Angle,
    y_sum: Angle,
}

/// Below this sine of the elevation neither turn has a value.
pub(crate) const SINGULAR: f64 = 1e-3; // not medical: the border of "undefined", in the contract

/// What a sine and a cosine of the sum must have together to be more than the rounding of entries near one.
const ROUNDING: f64 = 1e-14; // not medical: a hundred times the last place of one

impl Thoracohumeral {
    /// The angles of a humerus in the frame of the thorax.
    pub fn of(humerus: Rotation) -> Self {
        let [[xx, xy, xz], [yx, yy, yz], [zx, zy, zz]] = humerus.rows();
        let sine = xy.hypot(zy);
        let turns = (sine >= SINGULAR).then(|| (angle(-xy, -zy), angle(-yx, yz)));
        let (across, along) = (xz - zx, xx + zz);
        // Straight up no sum exists: what is left of it is rounding, and none of it is taken for a turn.
        let y_sum = if across.hypot(along) < ROUNDING { Angle::ZERO } else { angle(across, along) };
        Self { turns, elevation: Angle::from_radians(sine.atan2(yy)), y_sum }
    }

    /// From a kernel that computed the same for an arm that is not singular.
    pub(crate) const fn from_radians(plane: f64, elevation: f64, axial: f64, y_sum: f64) -> Self {
        Self {
            turns: Some((Angle::from_radians(plane), Angle::from_radians(axial))),
            elevation: Angle::from_radians(elevation),
            y_sum: Angle::from_radians(y_sum),
        }
    }

    /// The humerus of these angles: the way back.
    pub fn rotation(plane_of_elevation: Angle, elevation: Angle, axial_rotation: Angle) -> Rotation {
        Rotation::about_y(plane_of_elevation) * Rotation::about_x(-elevation) * Rotation::about_y(axial_rotation)
    }

    /// The plane in which the arm is raised: 0 to the side, 90 straight ahead.
    pub const fn plane_of_elevation(&self) -> Option<Angle> {
        match self.turns {
            Some((plane, _)) => Some(plane),
            None => None,
        }
    }

    /// How far the arm is raised, from 0 to 180.
    pub const fn elevation(&self) -> Angle {
        self.elevation
    }

    /// The last turn about the humerus, inward positive. Not what a clinician calls rotation: that is the sum.
    pub const fn axial_rotation(&self) -> Option<Angle> {
        match self.turns {
            Some((_, axial)) => Some(axial),
            None => None,
        }
    }

    /// Both turns about the long axis together: the clinical rotation, inward positive.
    ///
    /// # Method
    /// The twist about the humerus's axis that is left after the shortest swing. Zero for an arm raised in any plane
    /// without a twist. It has a value also with the arm at the side; its own singular place is straight up, where
    /// [`Thoracohumeral::sum_noise_gain`] grows without a bound and the value is zero at the end.
    pub const fn y_sum(&self) -> Angle {
        self.y_sum
    }

    /// Whether plane and axial rotation have a value.
    pub const fn is_defined(&self) -> bool {
        self.turns.is_some()
    }

    /// By how much noise of orientation is larger in plane and axial rotation; none where they have no value.
    ///
    /// # Method
    /// See [`noise::plane_gain`].
    pub fn noise_gain(&self) -> Option<f64> {
        self.turns.map(|_| noise::plane_gain(self.elevation))
    }

    /// The same for the sum.
    pub fn sum_noise_gain(&self) -> f64 {
        noise::sum_gain(self.elevation)
    }
}

/// Its sine and cosine, up to a common factor; half a turn is positive whatever the sign of zero.
fn angle(sine: f64, cosine: f64) -> Angle {
    Angle::from_radians((sine + 0.0).atan2(cosine))
}

/// The alternative without a singular place at the side: X-Z′-Y″.
///
/// # Units and shape
/// The humerus in the thorax is Rx(about_forward) Rz(about_right) Ry(about_humerus). Raising to the side is a negative
/// turn about the forward axis, raising straight ahead a positive one about the axis that points right; inward turn is
/// positive. Singular where the arm points straight ahead or straight back: then the turns about the forward axis and
/// about the humerus are about one axis and are `None`.
///
/// # Source
/// Recommended for the plane of the shoulder blade and low elevation by a comparison of sequences of 2011.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ForwardRightAxial {
    /// First, about the forward axis of the thorax.
    pub about_forward: Option<Angle>,
    /// Second, about the axis that points right.
    pub about_right: Angle,
    /// Last, about the humerus.
    pub about_humerus: Option<Angle>,
}

impl ForwardRightAxial {
    /// The angles of a humerus in the frame of the thorax.
    ///
    /// # Example
    /// ```
    /// use body::{Angle, ForwardRightAxial, Rotation};
    /// let to_the_side = ForwardRightAxial::of(Rotation::about_x(Angle::from_degrees(-25.0)));
    /// assert_eq!(to_the_side.about_forward.map(|angle| angle.degrees().round()), Some(-25.0));
    /// ```
    pub fn of(humerus: Rotation) -> Self {
        let [[xx, xy, xz], [_, yy, _], [_, zy, _]] = humerus.rows();
        let cosine = xx.hypot(xz);
        let defined = cosine >= SINGULAR;
        Self {
            about_forward: defined.then(|| angle(zy, yy)),
            about_right: angle(-xy, cosine),
            about_humerus: defined.then(|| angle(xz, xx)),
        }
    }

    /// The humerus of these angles: the way back.
    pub fn rotation(about_forward: Angle, about_right: Angle, about_humerus: Angle) -> Rotation {
        Rotation::about_x(about_forward) * Rotation::about_z(about_right) * Rotation::about_y(about_humerus)
    }
}
