//! Whom the figure looks like: chosen by the caller, never guessed.
//!
//! # Source
//! The plain figure takes its girths from the measured ratios of young adults, the mean of men and women (ANSUR II:
//! Gordon and others, 2014, NATICK/TR-15/007). How the other builds differ from it is own choice, drawn by eye. Lengths
//! and joints are the same for all, so that an angle looks the same on everybody.

use body::Build;

impl Shape {
    /// The girths of a build.
    pub(crate) const fn of(build: Build) -> Self {
        match build {
            Build::Medium => Self::MEDIUM,
            Build::Slim => Self {
                arms: 0.88,
                legs: 0.90,
                neck: 0.91,
                waist: 0.92,
                hips: 0.95,
                depth: 0.92,
                chest: 0.95,
                ..Self::MEDIUM
            },
            Build::Broad => Self {
                arms: 1.12,
                legs: 1.07,
                neck: 1.14,
                waist: 1.13,
                hips: 1.02,
                depth: 1.08,
                chest: 1.06,
                ..Self::MEDIUM
            },
            Build::Round => Self {
                arms: 1.12,
                legs: 1.12,
                neck: 1.10,
                waist: 1.30,
                hips: 1.13,
                depth: 1.14,
                chest: 1.06,
                belly: 0.030,
                bust: 0.004,
            },
            Build::Curved => Self {
                arms: 0.93,
                legs: 1.02,
                neck: 0.90,
                waist: 0.95,
                hips: 1.08,
                depth: 0.97,
                chest: 0.96,
                bust: 0.016,
                ..Self::MEDIUM
            },
        }
    }
}

/// Factors on the plain figure's girths, and what stands out, in parts of stature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Shape {
    pub(crate) arms: f64,
    pub(crate) legs: f64,
    pub(crate) neck: f64,
    /// Breadth at the waist.
    pub(crate) waist: f64,
    /// Breadth at the hips.
    pub(crate) hips: f64,
    /// Depth of the whole trunk.
    pub(crate) depth: f64,
    /// Breadth of the chest.
    pub(crate) chest: f64,
    /// How far the belly stands out.
    pub(crate) belly: f64,
    /// How far the bust stands out.
    pub(crate) bust: f64,
}

impl Shape {
    const MEDIUM: Self =
        Self { arms: 1.0, legs: 1.0, neck: 1.0, waist: 1.0, hips: 1.0, depth: 1.0, chest: 1.0, belly: 0.0, bust: 0.0 };
}
