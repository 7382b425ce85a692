//! Repetitions of an angle, by the contract's definitions and without any cleverness.

/// When a repetition happened.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Repetition {
    /// It left the start.
    pub from_s: f64,
    /// It was farthest.
    pub peak_s: f64,
    /// It was back.
    pub until_s: f64,
}

impl Repetition {
    pub(super) fn shift(&mut self, by: f64) {
        for time in [&mut self.from_s, &mut self.peak_s, &mut self.until_s] {
            *time += by;
        }
    }

    /// Its part of evenly spaced values that begin at `start_s`.
    fn of<'v>(&self, values: &'v [f64], start_s: f64, step: f64) -> &'v [f64] {
        let index = |time: f64| (((time - start_s) / step).round().max(0.0) as usize).min(values.len());
        &values[index(self.from_s)..index(self.until_s)]
    }
}

/// A repetition reaches this share of the median peak …
const REACHES: f64 = 0.5;
/// … and returns below this one.
const RETURNS: f64 = 0.25;
/// A hold is within this many degrees of the peak …
const HOLD_WITHIN: f64 = 5.0;
/// … at less than this many degrees a second …
const HOLD_SLOWER: f64 = 5.0;
/// … and breaks shorter than this are bridged, seconds.
const HOLD_BRIDGED: f64 = 0.3;

/// The repetitions that count among evenly spaced values.
///
/// # Method
/// The median of the peaks and what counts depend on each other: begun with the greatest value and repeated until
/// nothing changes.
pub fn counted(values: &[f64], start_s: f64, step: f64) -> Vec<Repetition> {
    let mut size = values.iter().copied().fold(0.0, f64::max);
    let mut found = Vec::new();
    for _ in 0..50 {
        let spans = spans(values, size);
        let mut peaks: Vec<f64> = spans.iter().map(|[_, peak, _]| values[*peak]).collect();
        found = spans;
        peaks.sort_by(f64::total_cmp);
        let Some(median) = median(&peaks).filter(|median| (median - size).abs() > 1e-9) else { break };
        size = median;
    }
    let time = |index: usize| start_s + index as f64 * step;
    found
        .into_iter()
        .map(|[from, peak, until]| Repetition { from_s: time(from), peak_s: time(peak), until_s: time(until) })
        .collect()
}

fn median(sorted: &[f64]) -> Option<f64> {
    let middle = sorted.len() / 2;
    let upper = *sorted.get(middle)?;
    Some(if sorted.len() % 2 == 1 { upper } else { (sorted[middle - 1] + upper) / 2.0 })
}

/// Start, peak and end of every excursion to half of a size that comes back below its quarter.
fn spans(values: &[f64], size: f64) -> Vec<[usize; 3]> {
    let mut spans = Vec::new();
    let mut left: Option<usize> = None;
    for (index, value) in values.iter().enumerate() {
        if *value >= RETURNS * size {
            left.get_or_insert(index);
        } else if let Some(from) = left.take() {
            let peak = (from..index).max_by(|a, b| values[*a].total_cmp(&values[*b])).unwrap_or(from);
            if values[peak] >= REACHES * size {
                spans.push([from, peak, index]);
            }
        }
    }
    spans
}

/// The longest hold of a repetition, seconds. The values have been low-passed.
pub fn longest_hold(repetition: &Repetition, values: &[f64], start_s: f64, step: f64) -> f64 {
    let values = repetition.of(values, start_s, step);
    let peak = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let held = |index: usize| {
        let speed = (values[index] - values[index - 1]) / step;
        peak - values[index] <= HOLD_WITHIN && speed.abs() < HOLD_SLOWER
    };
    let mut runs: Vec<(usize, usize)> = Vec::new();
    for index in (1..values.len()).filter(|index| held(*index)) {
        match runs.last_mut() {
            Some((_, until)) if ((index - *until) as f64) * step < HOLD_BRIDGED => *until = index,
            _ => runs.push((index, index)),
        }
    }
    runs.iter().map(|(from, until)| (until - from) as f64 * step).fold(0.0, f64::max)
}

/// The 95th percentile of the values of a repetition.
pub fn percentile_95(repetition: &Repetition, values: &[f64], start_s: f64, step: f64) -> f64 {
    let mut values = repetition.of(values, start_s, step).to_vec();
    values.sort_by(f64::total_cmp);
    let place = (values.len().saturating_sub(1)) as f64 * 0.95;
    values.get(place.round() as usize).copied().unwrap_or(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Straight ways between places a second apart.
    fn ways(places: &[f64]) -> Vec<f64> {
        places
            .windows(2)
            .flat_map(|pair| (0..100).map(move |i| pair[0] + (pair[1] - pair[0]) * f64::from(i) / 100.0))
            .collect()
    }

    #[test]
    fn the_borders_of_a_repetition() {
        let count = |places: &[f64]| counted(&ways(places), 0.0, 0.01).len();
        assert_eq!(count(&[0.0, 100.0, 0.0, 100.0, 0.0, 100.0, 0.0]), 3);
        // Half of the median peak counts, just below does not.
        assert_eq!(count(&[0.0, 100.0, 0.0, 100.0, 0.0, 51.0, 0.0, 100.0, 0.0]), 4);
        assert_eq!(count(&[0.0, 100.0, 0.0, 100.0, 0.0, 49.0, 0.0, 100.0, 0.0]), 3);
        // Back below a quarter parts two, just above does not.
        assert_eq!(count(&[0.0, 100.0, 24.0, 100.0, 0.0]), 2);
        assert_eq!(count(&[0.0, 100.0, 26.0, 100.0, 0.0]), 1);
        // What has not come back is none.
        assert_eq!(count(&[0.0, 100.0, 0.0, 100.0]), 1);
        assert_eq!(count(&[0.0, 0.0, 0.0]), 0);
    }

    #[test]
    fn a_hold_is_slow_and_near_the_peak() {
        let values = ways(&[0.0, 60.0, 60.0, 60.0, 0.0]);
        let found = counted(&values, 0.0, 0.01);
        assert!((longest_hold(&found[0], &values, 0.0, 0.01) - 2.0).abs() < 0.03);
        // Six degrees below the peak is no hold.
        let sunk = ways(&[0.0, 60.0, 54.0, 54.0, 54.0, 0.0]);
        let found = counted(&sunk, 0.0, 0.01);
        assert!(longest_hold(&found[0], &sunk, 0.0, 0.01) < 0.05);
    }
}
