//! Reading a decimal number and its unit without passing through a float.

use thiserror::Error;

/// Why a written quantity could not be read.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum QuantityError {
    /// There is no number at the start.
    #[error("no number found")]
    NoNumber,
    /// A number without a unit: what it means is unknown.
    #[error("no unit after the number")]
    NoUnit,
    /// The unit is not one this quantity is written in.
    #[error("`{found}` is not a unit for this quantity")]
    UnknownUnit {
        /// What stood in place of the unit.
        found: String,
    },
    /// More decimals than the quantity can hold exactly.
    #[error("more decimals than this quantity keeps")]
    TooPrecise,
    /// The number is beyond what the quantity can hold.
    #[error("the number is out of range")]
    OutOfRange,
}

/// A decimal number as (mantissa, number of decimals), and the rest of the text.
pub(crate) struct Decimal<'t> {
    pub mantissa: i64,
    pub decimals: u32,
    pub unit: &'t str,
}

/// Splits "−12.5 mm" into its number and its unit.
pub(crate) fn read(text: &str) -> Result<Decimal<'_>, QuantityError> {
    let text = text.trim();
    let (negative, digits) = match text.strip_prefix(['-', '\u{2212}']) {
        Some(rest) => (true, rest),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let whole_end = digits.find(|c: char| !c.is_ascii_digit()).unwrap_or(digits.len());
    let (whole, mut rest) = digits.split_at(whole_end);
    let mut fraction = "";
    if let Some(after) = rest.strip_prefix('.') {
        let end = after.find(|c: char| !c.is_ascii_digit()).unwrap_or(after.len());
        (fraction, rest) = after.split_at(end);
    }
    if whole.is_empty() || (rest.starts_with('.')) {
        return Err(QuantityError::NoNumber);
    }
    let fraction = fraction.trim_end_matches('0');
    if whole.len() > 9 {
        return Err(QuantityError::OutOfRange);
    }
    if fraction.len() > 6 {
        return Err(QuantityError::TooPrecise);
    }
    let mut mantissa: i64 = 0;
    for digit in whole.bytes().chain(fraction.bytes()) {
        mantissa = mantissa * 10 + i64::from(digit - b'0');
    }
    Ok(Decimal {
        mantissa: if negative { -mantissa } else { mantissa },
        decimals: fraction.len() as u32,
        unit: rest.trim(),
    })
}

impl Decimal<'_> {
    /// The number times `factor`, to be kept with `decimals` decimals, exactly.
    pub(crate) fn exact(&self, factor: i64, decimals: u32) -> Result<i64, QuantityError> {
        let scaled = self.mantissa * factor;
        if self.decimals <= decimals {
            Ok(scaled * 10_i64.pow(decimals - self.decimals))
        } else {
            let divisor = 10_i64.pow(self.decimals - decimals);
            if scaled % divisor == 0 { Ok(scaled / divisor) } else { Err(QuantityError::TooPrecise) }
        }
    }

    /// The number times `numerator / denominator`, rounded to `decimals` decimals.
    pub(crate) fn rounded(&self, numerator: i64, denominator: i64, decimals: u32) -> i64 {
        let scaled = i128::from(self.mantissa) * i128::from(numerator) * 10_i128.pow(decimals);
        let divisor = i128::from(denominator) * 10_i128.pow(self.decimals);
        let half = if scaled < 0 { -divisor / 2 } else { divisor / 2 };
        ((scaled + half) / divisor) as i64
    }
}
