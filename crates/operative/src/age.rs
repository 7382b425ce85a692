//! Age in completed years.

use jiff::civil::Date;

/// Age in completed years.
///
/// # Units and shape
/// Civil dates in, years out; below 0 where `on` lies before the first birthday's year.
///
/// # Method
/// The birthday itself completes the year. Whoever was born on 29 February has
/// the birthday on 1 March in the other years.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use operative::completed_years;
/// assert_eq!(completed_years(date(1956, 3, 5), date(2026, 3, 4)), 69);
/// assert_eq!(completed_years(date(1956, 3, 5), date(2026, 3, 5)), 70);
/// assert_eq!(completed_years(date(1956, 2, 29), date(2026, 2, 28)), 69);
/// assert_eq!(completed_years(date(1956, 2, 29), date(2026, 3, 1)), 70);
/// ```
///
/// # Source
/// Own choice for 29 February.
pub fn completed_years(birth: Date, on: Date) -> i16 {
    // Comparing month and day as numbers puts 28 February before and 1 March
    // after 29 February, which is the rule above.
    let had_birthday = (on.month(), on.day()) >= (birth.month(), birth.day());
    on.year() - birth.year() - i16::from(!had_birthday)
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn the_birthday_itself_completes_the_year() {
        let check = |birth, on, years| assert_eq!(completed_years(birth, on), years, "{birth} {on}");
        check(date(1955, 3, 5), date(2026, 3, 4), 70);
        check(date(1955, 3, 5), date(2026, 3, 5), 71);
        check(date(1955, 12, 31), date(2026, 1, 1), 70);
        // Born on 29 February: 1 March in other years, the day itself in leap years.
        check(date(1956, 2, 29), date(2027, 2, 28), 70);
        check(date(1956, 2, 29), date(2027, 3, 1), 71);
        check(date(1956, 2, 29), date(2028, 2, 28), 71);
        check(date(1956, 2, 29), date(2028, 2, 29), 72);
        check(date(2026, 3, 2), date(2026, 3, 2), 0);
        check(date(2026, 3, 3), date(2026, 3, 2), -1);
    }
}
