//! From a value to a place, and which values get a tick.

use super::error::{ChartError, drawable};

/// From values to millimeters along one direction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Scale {
    from: f64,
    until: f64,
    at_from: f64,
    at_until: f64,
}

impl Scale {
    /// `from` and `until` land at the two places.
    pub(super) const fn new([from, until]: [f64; 2], [at_from, at_until]: [f64; 2]) -> Self {
        Self { from, until, at_from, at_until }
    }

    /// Where a value lands.
    pub(super) fn at(&self, value: f64) -> f64 {
        let share = (value - self.from) / (self.until - self.from);
        self.at_from + share * (self.at_until - self.at_from)
    }
}

/// Values with a tick: multiples of 1, 2 or 5 times a power of ten within a range, as many as there is room for.
///
/// # Method
/// The smallest step with at most `most` intervals.
pub(super) fn round_ticks([from, until]: [f64; 2], most: u16) -> Vec<f64> {
    let width = until - from;
    if !width.is_finite() || width <= 0.0 || most == 0 {
        return Vec::new();
    }
    let rough = width / f64::from(most);
    let power = 10f64.powf(rough.log10().floor());
    let step = [1.0, 2.0, 5.0, 10.0].map(|times| times * power).into_iter().find(|step| rough <= step * (1.0 + CLOSE));
    multiples([from, until], step.unwrap_or(10.0 * power))
}

/// Degrees with a tick: parts of a circle that a goniometer shows.
pub(super) fn degree_ticks([from, until]: [f64; 2], most: u16) -> Vec<f64> {
    let step = PARTS.into_iter().find(|step| (until - from) / step <= f64::from(most));
    step.map_or_else(|| round_ticks([from, until], most), |step| multiples([from, until], step))
}

/// Days with a tick: whole weeks, as many as there is room for.
pub(super) fn week_ticks([from, until]: [f64; 2], most: u16) -> Vec<f64> {
    let weeks = (until - from) / DAYS_A_WEEK;
    if most == 0 {
        return Vec::new();
    }
    let step = WEEKS.into_iter().find(|step| weeks / step <= f64::from(most));
    // Beyond the longest of the table, years of 52 weeks.
    let longest = (weeks / f64::from(most) / YEAR).ceil() * YEAR;
    multiples([from, until], step.unwrap_or(longest) * DAYS_A_WEEK)
}

/// The multiples of a step within a range.
fn multiples([from, until]: [f64; 2], step: f64) -> Vec<f64> {
    let slack = step * CLOSE;
    let first = ((from - slack) / step).ceil();
    let mut ticks = Vec::new();
    for index in 0..MOST {
        let tick = (first + f64::from(index)) * step;
        if until + slack < tick {
            break;
        }
        // No minus zero.
        ticks.push(if tick.abs() < slack { 0.0 } else { tick });
    }
    ticks
}

/// A range that begins and ends at a round value and holds all the values.
pub(super) fn round_range(what: &'static str, values: impl Iterator<Item = f64>) -> Result<[f64; 2], ChartError> {
    let mut range: Option<[f64; 2]> = None;
    for value in values {
        let value = drawable(what, value)?;
        range = Some(range.map_or([value; 2], |[low, high]| [low.min(value), high.max(value)]));
    }
    let [low, high] = range.ok_or(ChartError::Empty(what))?;
    if high - low <= low.abs().max(high.abs()) * CLOSE {
        return Err(ChartError::NoRange(what));
    }
    let ticks = round_ticks([low, high], INTERVALS);
    let [Some(first), Some(second)] = [ticks.first(), ticks.get(1)] else { return Ok([low, high]) };
    let step = second - first;
    Ok([(low / step - CLOSE).floor(), (high / step + CLOSE).ceil()].map(|times| times * step))
}

/// Days in a week.
pub(super) const DAYS_A_WEEK: f64 = 7.0;

const PARTS: [f64; 6] = [5.0, 10.0, 15.0, 30.0, 45.0, 90.0];
const WEEKS: [f64; 8] = [1.0, 2.0, 4.0, 6.0, 8.0, 13.0, 26.0, YEAR];
const YEAR: f64 = 52.0;
/// Two numbers nearer than this part of their size are one.
const CLOSE: f64 = 1e-9;
/// Intervals of a range that is chosen here.
const INTERVALS: u16 = 8;
/// No axis has more ticks.
const MOST: u16 = 400;

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn ticks_are_ones_twos_and_fives() {
        assert_eq!(round_ticks([0.0, 180.0], 4), [0.0, 50.0, 100.0, 150.0]);
        assert_eq!(round_ticks([0.0, 180.0], 10), [0.0, 20.0, 40.0, 60.0, 80.0, 100.0, 120.0, 140.0, 160.0, 180.0]);
        assert_eq!(round_ticks([-1.0, 1.0], 2), [-1.0, 0.0, 1.0]);
        assert_eq!(degree_ticks([-30.0, 180.0], 7), [-30.0, 0.0, 30.0, 60.0, 90.0, 120.0, 150.0, 180.0]);
        assert_eq!(week_ticks([0.0, 84.0], 6), [0.0, 14.0, 28.0, 42.0, 56.0, 70.0, 84.0]);
        assert_eq!(week_ticks([0.0, 84.0], 5), [0.0, 28.0, 56.0, 84.0]);
        assert_eq!(week_ticks([0.0, 3640.0], 4), [0.0, 1092.0, 2184.0, 3276.0]);
    }

    #[test]
    fn a_range_is_never_made_up() {
        let range = |values: &[f64]| round_range("y", values.iter().copied());
        assert_eq!(range(&[3.0, 47.0]), Ok([0.0, 50.0]));
        assert_eq!(range(&[-3.0, 47.0]), Ok([-10.0, 50.0]));
        assert_eq!(range(&[]), Err(ChartError::Empty("y")));
        assert_eq!(range(&[5.0, 5.0]), Err(ChartError::NoRange("y")));
        assert_eq!(range(&[0.0, f64::NAN]), Err(ChartError::NotFinite("y")));
        assert_eq!(range(&[0.0, f64::INFINITY]), Err(ChartError::NotFinite("y")));
        assert_eq!(range(&[0.0, 1e300]), Err(ChartError::TooLarge("y")));
    }

    proptest! {
        #[test]
        fn ticks_lie_within_and_are_few(from in -1e6f64..1e6, width in 1e-3f64..1e6, most in 1u16..30) {
            let until = from + width;
            let ticks = round_ticks([from, until], most);
            prop_assert!(ticks.len() <= usize::from(most) + 1, "{ticks:?}");
            let slack = width * 1e-6;
            prop_assert!(ticks.iter().all(|tick| from - slack <= *tick && *tick <= until + slack));
            // The next smaller step would be too small: a step is at most two and a half times the least.
            if let [first, second, ..] = ticks[..] {
                prop_assert!(second - first <= width / f64::from(most) * 2.5 * (1.0 + 1e-6));
            }
        }
    }
}
