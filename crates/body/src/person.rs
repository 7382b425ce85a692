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

impl Person {
    /// Somebody of this stature and mass.
    ///
    /// # Errors
    /// A stature or mass outside the accepted range: nothing is computed for a slip of the pen.
    ///
    /// # Source
    /// The ranges: own choice, `stature-least`, `stature-most`, `body-mass-least`, `body-mass-most`.
    pub fn new(stature: Millimeters, mass: Kilograms, table: SegmentTable) -> Result<Self, PersonError> {
        let [least, most] = [ids::STATURE_LEAST.millimeters(), ids::STATURE_MOST.millimeters()];
        if stature < least || stature > most {
            return Err(PersonError::Stature { least, most });
        }
        let [least, most] = [ids::BODY_MASS_LEAST.kilograms(), ids::BODY_MASS_MOST.kilograms()];
        if mass < least || mass > most {
            return Err(PersonError::Mass { least, most });
        }
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
