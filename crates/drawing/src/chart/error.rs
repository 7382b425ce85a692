//! Why there is no picture.

use std::fmt;

/// Why a picture can't be drawn.
///
/// # Units and shape
/// A failure of the one who asks for the picture, never a text for a patient. Where one of these is returned nothing
/// has been drawn: a picture is right or there is none.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum ChartError {
    /// The picture is too small for what it has to show, or its size is no number.
    NoRoom {
        /// The width asked for, in millimeters.
        width_mm: f64,
        /// The height asked for or needed, in millimeters.
        height_mm: f64,
    },
    /// A text fits nowhere without lying on something else.
    NoRoomForText(String),
    /// A number is none, or infinite.
    NotFinite(&'static str),
    /// A number is larger than a picture can show exactly.
    TooLarge(&'static str),
    /// Nothing to show.
    Empty(&'static str),
    /// A course needs at least two places.
    OnePlace(&'static str),
    /// All values are one, and no range is said: any range would be invented.
    NoRange(&'static str),
    /// A value lies outside of the range that is drawn.
    Outside {
        /// What.
        what: &'static str,
        /// Its value: a day, degrees, or as the axis counts.
        value: f64,
    },
    /// The lower end does not lie below the upper.
    Reversed(&'static str),
    /// Two spans have a day in common.
    Overlap(&'static str),
    /// Places are not in order.
    NotInOrder(&'static str),
    /// More lines than can be told apart in black and white.
    TooManyLines {
        /// How many can.
        most: usize,
    },
    /// What is drawn needs a text that was not given.
    NoText(&'static str),
}

impl fmt::Display for ChartError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoRoom { width_mm, height_mm } => {
                write!(f, "a picture of {width_mm} by {height_mm} mm is too small for what it has to show")
            }
            Self::NoRoomForText(text) => write!(f, "no room for the text \"{text}\""),
            Self::NotFinite(what) => write!(f, "{what}: not a finite number"),
            Self::TooLarge(what) => write!(f, "{what}: too large to be drawn"),
            Self::Empty(what) => write!(f, "{what}: nothing to show"),
            Self::OnePlace(what) => write!(f, "{what}: a course needs two places or more"),
            Self::NoRange(what) => write!(f, "{what}: all values are one, and no range is given"),
            Self::Outside { what, value } => write!(f, "{what}: {value} lies outside of what is drawn"),
            Self::Reversed(what) => write!(f, "{what}: the lower end does not lie below the upper"),
            Self::Overlap(what) => write!(f, "{what}: two of them overlap"),
            Self::NotInOrder(what) => write!(f, "{what}: not in order"),
            Self::TooManyLines { most } => write!(f, "more than {most} lines can't be told apart in black and white"),
            Self::NoText(what) => write!(f, "{what}: the text is missing"),
        }
    }
}

impl std::error::Error for ChartError {}

/// The number itself where it can be drawn.
pub(super) fn drawable(what: &'static str, value: f64) -> Result<f64, ChartError> {
    if !value.is_finite() {
        return Err(ChartError::NotFinite(what));
    }
    if value.abs() > LARGEST {
        return Err(ChartError::TooLarge(what));
    }
    Ok(value)
}

/// The size itself where it is one.
pub(super) fn size(width_mm: f64, height_mm: f64, least: [f64; 2]) -> Result<(), ChartError> {
    let fits = |size: f64, least: f64| size.is_finite() && least <= size && size <= WIDEST;
    match fits(width_mm, least[0]) && fits(height_mm, least[1]) {
        true => Ok(()),
        false => Err(ChartError::NoRoom { width_mm, height_mm }),
    }
}

/// Beyond this a difference of one is lost among the digits.
const LARGEST: f64 = 1e12;
/// No sheet is wider, in millimeters.
const WIDEST: f64 = 2000.0;
