//! Smooth values between the stations of a table.

/// A row between the rows of a table, its first column being the place.
///
/// # Method
/// Monotone cubic interpolation of every column: no value rises or falls where its neighbors do not. Beyond the ends
/// the end rows hold.
///
/// # Units and shape
/// Rows by rising place; at least one.
pub(crate) fn between<const N: usize>(table: &[[f64; N]], place: f64) -> [f64; N] {
    let last = table.len() - 1;
    let upper = table.partition_point(|row| row[0] <= place).clamp(1.min(last), last);
    let lower = upper.saturating_sub(1);
    let width = table[upper][0] - table[lower][0];
    let share = if width > 0.0 { ((place - table[lower][0]) / width).clamp(0.0, 1.0) } else { 0.0 };
    let mut row = [place; N];
    for column in 1..N {
        let [a, b] = [table[lower][column], table[upper][column]];
        let [slope_a, slope_b] = [slope(table, lower, column) * width, slope(table, upper, column) * width];
        let [s2, s3] = [share * share, share * share * share];
        row[column] = a * (2.0 * s3 - 3.0 * s2 + 1.0)
            + slope_a * (s3 - 2.0 * s2 + share)
            + b * (3.0 * s2 - 2.0 * s3)
            + slope_b * (s3 - s2);
    }
    row
}

/// How steep a column is at a row: the harmonic mean of the slopes on both sides, none at a peak or at an end.
fn slope<const N: usize>(table: &[[f64; N]], row: usize, column: usize) -> f64 {
    let secant = |lower: usize| {
        let width = table[lower + 1][0] - table[lower][0];
        (table[lower + 1][column] - table[lower][column]) / width
    };
    match (row.checked_sub(1), row + 1 < table.len()) {
        (Some(before), true) => {
            let [a, b] = [secant(before), secant(row)];
            if a * b > 0.0 { 2.0 * a * b / (a + b) } else { 0.0 }
        }
        (Some(before), false) => secant(before),
        (None, true) => secant(row),
        (None, false) => 0.0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const TABLE: [[f64; 2]; 4] = [[0.0, 1.0], [0.5, 3.0], [0.6, 3.0], [1.0, 2.0]];

    #[test]
    fn stations_are_met_and_never_passed() {
        for [place, value] in TABLE {
            assert!((between(&TABLE, place)[1] - value).abs() < 1e-12);
        }
        for step in 0..=100 {
            let value = between(&TABLE, f64::from(step) / 100.0)[1];
            assert!((1.0..=3.0).contains(&value), "{value}");
        }
    }

    #[test]
    fn beyond_the_ends_the_ends_hold() {
        assert_eq!([between(&TABLE, -1.0)[1], between(&TABLE, 9.0)[1]], [1.0, 2.0]);
        assert_eq!(between(&[[0.3, 7.0]], 0.9)[1], 7.0);
    }
}
