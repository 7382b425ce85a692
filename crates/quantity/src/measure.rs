//! Angles, loads, effort and lengths.

use std::fmt;

use crate::decimal::{self, QuantityError};

macro_rules! fixed_point {
    ($(#[$meta:meta])* $name:ident, $decimals:literal, $per_unit:literal, $range:expr, $unit:literal) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
        pub struct $name(i32);

        impl $name {
            /// A whole number of units.
            pub const fn whole(units: i32) -> Self {
                Self(units * $per_unit)
            }

            /// From the smallest step this quantity keeps.
            pub const fn from_steps(steps: i32) -> Self {
                Self(steps)
            }

            /// In the smallest step this quantity keeps.
            pub const fn steps(self) -> i32 {
                self.0
            }

            /// As a plain number of units, for what prints or serializes.
            pub fn number(self) -> f64 {
                f64::from(self.0) / f64::from($per_unit)
            }

            /// The word or sign of the unit as it is written in files.
            pub const UNIT: &'static str = $unit;

            fn checked(steps: i64) -> Result<Self, QuantityError> {
                let range = $range;
                let steps = i32::try_from(steps).map_err(|_| QuantityError::OutOfRange)?;
                if range.contains(&(f64::from(steps) / f64::from($per_unit))) {
                    Ok(Self(steps))
                } else {
                    Err(QuantityError::OutOfRange)
                }
            }
        }

        impl fmt::Display for $name {
            /// The number alone, with no more decimals than it needs.
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                let per_unit: i32 = $per_unit;
                let sign = if self.0 < 0 { "-" } else { "" };
                let (whole, part) = (self.0.abs() / per_unit, self.0.abs() % per_unit);
                if part == 0 {
                    write!(f, "{sign}{whole}")
                } else {
                    let digits = format!("{part:0width$}", width = $decimals);
                    write!(f, "{sign}{whole}.{}", digits.trim_end_matches('0'))
                }
            }
        }
    };
}

fixed_point! {
    /// An angle of the trade, in degrees, kept to a tenth.
    ///
    /// # Units and shape
    /// Written as `40 deg`; from −180 to 180. External rotation and the like may
    /// be negative: `-10 deg` of external rotation is 10 degrees of internal rotation.
    Degrees, 1, 10, -180.0..=180.0, "deg"
}
fixed_point! {
    /// A load in the hand or through the arm, in kilograms, kept to ten grams.
    ///
    /// # Units and shape
    /// Written as `2.27 kg` or `5 lb` (the pound of 0.45359237 kg, rounded to ten grams); from 0 to 300.
    Kilograms, 2, 100, 0.0..=300.0, "kg"
}
fixed_point! {
    /// Effort as percent of a maximal voluntary contraction, or any other percentage, kept to a tenth.
    ///
    /// # Units and shape
    /// Written as `30 %`; from 0 to 1000.
    Percent, 1, 10, 0.0..=1000.0, "%"
}
fixed_point! {
    /// A length, in millimeters, kept to a tenth.
    ///
    /// # Units and shape
    /// Written as `18 mm` or `1.8 cm`; from 0 to 3000.
    Millimeters, 1, 10, 0.0..=3000.0, "mm"
}

impl Degrees {
    /// Reads `40 deg`, `-7.5 deg` or `40°`.
    ///
    /// # Errors
    /// No number, no unit, another unit, more than one decimal, or beyond ±180.
    ///
    /// # Example
    /// ```
    /// use quantity::Degrees;
    /// assert_eq!(Degrees::parse("40 deg"), Ok(Degrees::whole(40)));
    /// assert!(Degrees::parse("40").is_err());
    /// ```
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let decimal = decimal::read(text)?;
        match decimal.unit {
            "deg" | "degrees" | "°" => Self::checked(decimal.exact(1, 1)?),
            "" => Err(QuantityError::NoUnit),
            other => Err(QuantityError::UnknownUnit { found: other.into() }),
        }
    }
}

impl Kilograms {
    /// Reads `2.27 kg` or `5 lb`.
    ///
    /// # Errors
    /// No number, no unit, another unit, finer than ten grams, or beyond 300 kg.
    ///
    /// # Example
    /// ```
    /// use quantity::Kilograms;
    /// assert_eq!(Kilograms::parse("5 lb"), Kilograms::parse("2.27 kg"));
    /// ```
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let decimal = decimal::read(text)?;
        match decimal.unit {
            "kg" => Self::checked(decimal.exact(1, 2)?),
            "lb" => Self::checked(decimal.rounded(45_359_237, 100_000_000, 2)),
            "" => Err(QuantityError::NoUnit),
            other => Err(QuantityError::UnknownUnit { found: other.into() }),
        }
    }
}

impl Percent {
    /// Reads `30 %`.
    ///
    /// # Errors
    /// No number, no unit, another unit, more than one decimal, or beyond 1000.
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let decimal = decimal::read(text)?;
        match decimal.unit {
            "%" | "percent" => Self::checked(decimal.exact(1, 1)?),
            "" => Err(QuantityError::NoUnit),
            other => Err(QuantityError::UnknownUnit { found: other.into() }),
        }
    }
}

impl Millimeters {
    /// Reads `18 mm` or `1.8 cm`.
    ///
    /// # Errors
    /// No number, no unit, another unit, finer than a tenth of a millimeter, negative, or beyond 3 m.
    ///
    /// # Example
    /// ```
    /// use quantity::Millimeters;
    /// assert_eq!(Millimeters::parse("1.8 cm"), Ok(Millimeters::whole(18)));
    /// ```
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let decimal = decimal::read(text)?;
        match decimal.unit {
            "mm" => Self::checked(decimal.exact(1, 1)?),
            "cm" => Self::checked(decimal.exact(10, 1)?),
            "" => Err(QuantityError::NoUnit),
            other => Err(QuantityError::UnknownUnit { found: other.into() }),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_what_it_prints() {
        for steps in [-1800, -75, -1, 0, 1, 9, 10, 900, 1800] {
            let angle = Degrees::from_steps(steps);
            assert_eq!(Degrees::parse(&format!("{angle} deg")), Ok(angle));
        }
        for steps in [0, 1, 10, 227, 454, 30_000] {
            let load = Kilograms::from_steps(steps);
            assert_eq!(Kilograms::parse(&format!("{load} kg")), Ok(load));
        }
    }

    #[test]
    fn a_pound_is_its_legal_mass_rounded_to_ten_grams() {
        // International yard and pound agreement of 1959: 1 lb = 0.45359237 kg exactly.
        assert_eq!(Kilograms::parse("5 lb"), Ok(Kilograms::from_steps(227)));
        assert_eq!(Kilograms::parse("10 lb"), Ok(Kilograms::from_steps(454)));
    }

    #[test]
    fn refuses_what_it_cannot_hold() {
        assert_eq!(Degrees::parse("23"), Err(QuantityError::NoUnit));
        assert_eq!(Degrees::parse("deg"), Err(QuantityError::NoNumber));
        assert_eq!(Degrees::parse("181 deg"), Err(QuantityError::OutOfRange));
        assert_eq!(Degrees::parse("1.25 deg"), Err(QuantityError::TooPrecise));
        assert_eq!(Millimeters::parse("-3 mm"), Err(QuantityError::OutOfRange));
        assert_eq!(Millimeters::parse("3 inch"), Err(QuantityError::UnknownUnit { found: "inch".into() }));
        assert_eq!(Millimeters::parse("99999999999999999999 mm"), Err(QuantityError::OutOfRange));
        assert_eq!(Millimeters::parse("1.2.3 mm"), Err(QuantityError::NoNumber));
    }
}
