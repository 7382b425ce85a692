//! The postoperative day, and civil dates counted from the operation.

use std::fmt;

use jiff::ToSpan;
use jiff::civil::Date;

use crate::decimal::{self, QuantityError};

/// A day counted from the operation: **day 0 is the day of surgery**.
///
/// This comment is the one definition of day 0; everything else refers to it.
/// A postoperative day and a date never add by accident: use [`PostoperativeDay::date`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct PostoperativeDay(u16);

impl PostoperativeDay {
    /// The day of surgery.
    pub const SURGERY: Self = Self(0);

    /// The `count`th day after the day of surgery.
    pub const fn new(count: u16) -> Self {
        Self(count)
    }

    /// Days since the day of surgery.
    pub const fn count(self) -> u16 {
        self.0
    }

    /// The civil date of this day for an operation on `operation`.
    ///
    /// # Example
    /// ```
    /// use jiff::civil::date;
    /// use quantity::PostoperativeDay;
    /// // 2028 is a leap year: two days after 28 February is 1 March.
    /// assert_eq!(PostoperativeDay::new(2).date(date(2028, 2, 28)), date(2028, 3, 1));
    /// ```
    pub fn date(self, operation: Date) -> Date {
        operation.saturating_add(i64::from(self.0).days())
    }

    /// The postoperative day of `date`, or `None` before the operation or beyond day 65535.
    pub fn of(date: Date, operation: Date) -> Option<Self> {
        let days = operation.until((jiff::Unit::Day, date)).ok()?.get_days();
        u16::try_from(days).ok().map(Self)
    }

    /// Reads `day 42`.
    ///
    /// # Errors
    /// No number, another unit, or beyond 3650.
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let number = text.trim().strip_prefix("day").ok_or_else(|| match decimal::read(text) {
            Err(error) => error,
            Ok(_) => QuantityError::NoUnit,
        })?;
        Days::from_decimal(&decimal::read(number)?, &[""]).map(|days| Self(days.count()))
    }
}

impl fmt::Display for PostoperativeDay {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "day {}", self.0)
    }
}

/// A length of time in whole days.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Days(u16);

impl Days {
    /// So many days.
    pub const fn new(count: u16) -> Self {
        Self(count)
    }

    /// How many days.
    pub const fn count(self) -> u16 {
        self.0
    }

    /// Reads `28 days` or `4 weeks`.
    ///
    /// # Errors
    /// No number, no unit, another unit, or beyond 3650 days.
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let decimal = decimal::read(text)?;
        if matches!(decimal.unit, "week" | "weeks") {
            let days = decimal.exact(7, 0)?;
            return Self::checked(days);
        }
        Self::from_decimal(&decimal, &["day", "days"])
    }

    fn from_decimal(decimal: &decimal::Decimal<'_>, units: &[&str]) -> Result<Self, QuantityError> {
        if !units.contains(&decimal.unit) {
            return Err(if decimal.unit.is_empty() {
                QuantityError::NoUnit
            } else {
                QuantityError::UnknownUnit { found: decimal.unit.into() }
            });
        }
        Self::checked(decimal.exact(1, 0)?)
    }

    fn checked(days: i64) -> Result<Self, QuantityError> {
        match u16::try_from(days) {
            Ok(days) if days <= 3650 => Ok(Self(days)),
            _ => Err(QuantityError::OutOfRange),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn dates_and_days_are_inverse_across_leap_years() {
        for operation in [date(1999, 12, 31), date(2000, 2, 28), date(2024, 2, 29), date(2026, 3, 2)] {
            for count in [0_u16, 1, 28, 42, 98, 365, 366, 1461] {
                let day = PostoperativeDay::new(count);
                assert_eq!(PostoperativeDay::of(day.date(operation), operation), Some(day));
            }
            let eve = operation.yesterday().expect("in range");
            assert_eq!(PostoperativeDay::of(eve, operation), None);
        }
    }

    #[test]
    fn days_read_with_their_unit() {
        assert_eq!(PostoperativeDay::parse("day 42"), Ok(PostoperativeDay::new(42)));
        assert_eq!(PostoperativeDay::parse("42"), Err(QuantityError::NoUnit));
        assert!(PostoperativeDay::parse("day -1").is_err());
        assert!(PostoperativeDay::parse("day 1.5").is_err());
        assert_eq!(Days::parse("28 days"), Ok(Days::new(28)));
        assert_eq!(Days::parse("4 weeks"), Ok(Days::new(28)));
        assert_eq!(Days::parse("9999 days"), Err(QuantityError::OutOfRange));
    }
}
