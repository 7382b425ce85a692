//! An angle as it is computed with: finer than a written one, and never a bare number.

use std::fmt;
use std::ops::{Add, Mul, Neg, Sub};

use quantity::Degrees;

/// An angle of a frame or a pose.
///
/// # Units and shape
/// Kept in radians; goes in and out in degrees by name. Written angles are [`Degrees`], in tenths.
///
/// # Example
/// ```
/// use body::Angle;
/// let quarter = Angle::from_degrees(90.0);
/// assert!((quarter.sin() - 1.0).abs() < 1e-15);
/// assert!((Angle::from_degrees(190.0).wrapped().degrees() + 170.0).abs() < 1e-12);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Angle(f64);

impl Angle {
    /// No angle.
    pub const ZERO: Self = Self(0.0);

    /// From degrees.
    pub const fn from_degrees(degrees: f64) -> Self {
        Self(degrees.to_radians())
    }

    /// From radians.
    pub const fn from_radians(radians: f64) -> Self {
        Self(radians)
    }

    /// In degrees.
    pub const fn degrees(self) -> f64 {
        self.0.to_degrees()
    }

    /// In radians.
    pub const fn radians(self) -> f64 {
        self.0
    }

    /// Its sine.
    pub fn sin(self) -> f64 {
        self.0.sin()
    }

    /// Its cosine.
    pub fn cos(self) -> f64 {
        self.0.cos()
    }

    /// The angle without its sign.
    pub const fn abs(self) -> Self {
        Self(self.0.abs())
    }

    /// The same direction, from over −180 to 180 degrees.
    pub fn wrapped(self) -> Self {
        use std::f64::consts::{PI, TAU};
        let turned = self.0.rem_euclid(TAU);
        Self(if turned > PI { turned - TAU } else { turned })
    }
}

impl From<Degrees> for Angle {
    fn from(degrees: Degrees) -> Self {
        Self::from_degrees(degrees.number())
    }
}

impl Add for Angle {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Angle {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Neg for Angle {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl Mul<f64> for Angle {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

impl fmt::Display for Angle {
    /// Degrees with the decimals asked for, without the unit.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(&self.degrees(), f)
    }
}
