//! The one whose arm is weighed.

use std::fmt;

use evidence::ids;
use quantity::{Kilograms, Millimeters};

use crate::segment::SegmentTable;

/// Stature, body mass, and the table of segments that fits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Person {
    stature: Millimeters,
    mass: Kilograms,
    table: SegmentTable,
}

/// A stature or a mass that the model does not take.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PersonError {
    /// Outside what is accepted as a stature.
    Stature {
        /// The least that is accepted.
        least: Millimeters,
        /// The most that is accepted.
        most: Millimeters,
    },
    /// Outside what is accepted as a body mass.
    Mass {
        /// The least that is accepted.
        least: Kilograms,
        /// The most that is accepted.
        most: Kilograms,
    },
}

/// A stature that the model takes.
///
/// # Errors
/// Outside the accepted range: own choice, `stature-least` to `stature-most`.
pub fn accepted_stature(stature: Millimeters) -> Result<Millimeters, PersonError> {
    let [least, most] = [ids::STATURE_LEAST.millimeters(), ids::STATURE_MOST.millimeters()];
    let accepted = (least..=most).contains(&stature);
    if accepted { Ok(stature) } else { Err(PersonError::Stature { least, most }) }
}

/// A body mass that the model takes.
///
/// # Errors
/// Outside the accepted range: own choice, `body-mass-least` to `body-mass-most`.
pub fn accepted_mass(mass: Kilograms) -> Result<Kilograms, PersonError> {
    let [least, most] = [ids::BODY_MASS_LEAST.kilograms(), ids::BODY_MASS_MOST.kilograms()];
    if (least..=most).contains(&mass) { Ok(mass) } else { Err(PersonError::Mass { least, most }) }
}

impl Person {
    /// Somebody of this stature and mass.
    ///
    /// # Errors
    /// A stature or mass outside the accepted range: nothing is computed for a slip of the pen.
    ///
    /// # Source
    /// [`accepted_stature`] and [`accepted_mass`].
    pub fn new(stature: Millimeters, mass: Kilograms, table: SegmentTable) -> Result<Self, PersonError> {
        accepted_stature(stature)?;
        accepted_mass(mass)?;
        Ok(Self { stature, mass, table })
    }

    /// The same person by another table.
    pub const fn by(self, table: SegmentTable) -> Self {
        Self { table, ..self }
    }

    /// Stature.
    pub const fn stature(self) -> Millimeters {
        self.stature
    }

    /// Body mass.
    pub const fn mass(self) -> Kilograms {
        self.mass
    }

    /// The table of segments.
    pub const fn table(self) -> SegmentTable {
        self.table
    }

    /// Stature in meters.
    pub(crate) fn meters(self) -> f64 {
        self.stature.number() / MILLIMETERS_PER_METER
    }
}

const MILLIMETERS_PER_METER: f64 = 1000.0; // not medical: the prefix

impl fmt::Display for PersonError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Stature { least, most } => {
                let centimeters = |length: &Millimeters| length.number() / 10.0; // not medical: the prefix
                write!(f, "a stature is accepted from {} to {} cm", centimeters(least), centimeters(most))
            }
            Self::Mass { least, most } => write!(f, "a body mass is accepted from {least} to {most} kg"),
        }
    }
}

impl std::error::Error for PersonError {}
