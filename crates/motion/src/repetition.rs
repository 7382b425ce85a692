//! Repetitions in a signal that leaves rest, goes out, and comes back.

use crate::smooth::{likeness, median, period, quantile, slope};

/// One repetition.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Repetition {
    /// The step at which it leaves a quarter of the usual peak.
    pub from: usize,
    /// Where it is highest.
    pub top: usize,
    /// The step at which it is back under a quarter.
    pub until: usize,
    /// How far it went.
    pub peak: f64,
    /// Whether the recording begins or ends inside it.
    pub cut: bool,
}

/// A repetition reaches this part of the set's median peak (contract).
pub const REACHES: f64 = 0.5;
/// And comes back below this part (contract).
pub const RETURNS: f64 = 0.25;
/// The shortest and the longest repetition, seconds (evidence notes, "Rep counter": refractory 0.6 s, at most 30 s).
const SHORTEST_S: f64 = 0.6;
const LONGEST_S: f64 = 30.0;
/// Tries until the median peak stays where it is.
const ROUNDS: usize = 12;

/// The repetitions of a set and the median of their peaks.
///
/// # Method
/// A state machine with two thresholds, half and a quarter of the median peak; the median is looked for from below, so
/// that many partial repetitions cannot pull it under theirs.
pub fn find(signal: &[f64], step_s: f64, least_peak: f64) -> (Vec<Repetition>, f64) {
    let Some(high) = quantile(signal, 0.98) else { return (Vec::new(), 0.0) };
    let mut usual = (0.6 * high).max(least_peak);
    let mut found = with_thresholds(signal, step_s, usual);
    for _ in 0..ROUNDS {
        let peaks: Vec<f64> = found.iter().map(|repetition| repetition.peak).collect();
        let Some(next) = median(&peaks) else { break };
        let same = (next - usual).abs() < 1e-9;
        usual = next.max(least_peak);
        found = with_thresholds(signal, step_s, usual);
        if same {
            break;
        }
    }
    found.retain(|repetition| repetition.peak >= least_peak);
    (found, usual)
}

/// Passes of a signal over half of `usual` that end below a quarter of it.
fn with_thresholds(signal: &[f64], step_s: f64, usual: f64) -> Vec<Repetition> {
    let [out, back] = [REACHES * usual, RETURNS * usual];
    let mut found = Vec::new();
    // Below the lower threshold, or where it was last.
    let mut left_rest = None;
    let mut top: Option<usize> = None;
    for (at, value) in signal.iter().enumerate() {
        if *value < back {
            if let Some(highest) = top.take() {
                found.push(Repetition {
                    from: left_rest.unwrap_or(0),
                    top: highest,
                    until: at,
                    peak: signal[highest],
                    cut: left_rest.is_none(),
                });
            }
            left_rest = Some(at);
        } else if *value >= out || top.is_some() {
            top = Some(top.filter(|highest| signal[*highest] >= *value).unwrap_or(at));
        }
    }
    if let Some(highest) = top {
        // The recording ends before the arm is back: counted only where it is on its way down below half.
        let last = signal.len() - 1;
        if signal[last] < out {
            let from = left_rest.unwrap_or(0);
            found.push(Repetition { from, top: highest, until: last, peak: signal[highest], cut: true });
        }
    }
    let seconds = |repetition: &Repetition| (repetition.until - repetition.from) as f64 * step_s;
    found.retain(|repetition| repetition.cut || (SHORTEST_S..=LONGEST_S).contains(&seconds(repetition)));
    found
}

/// Movements that stayed under half of the usual peak: they are not counted, but they take their time.
pub fn partial(signal: &[f64], step_s: f64, usual: f64) -> usize {
    let low = with_thresholds(signal, step_s, usual * 0.5);
    low.iter().filter(|repetition| repetition.peak < REACHES * usual).count()
}

/// A second count by what repeats, which knows no threshold: how many periods fit into the time of the set; `None`
/// where nothing repeats well enough to tell.
pub fn by_likeness(signal: &[f64], step_s: f64, found: &[Repetition]) -> Option<f64> {
    let [first, last] = [found.first()?, found.last()?];
    let [from, until] = [first.from, last.until.min(signal.len())];
    let part = &signal[from..until];
    let mean = part.iter().sum::<f64>() / part.len().max(1) as f64;
    let channel = vec![part.iter().map(|value| value - mean).collect::<Vec<f64>>()];
    let steps = |seconds: f64| ((seconds / step_s) as usize).max(2);
    let (length, like) = period(&channel, steps(SHORTEST_S), steps(LONGEST_S))?;
    if like < LIKE_ENOUGH || likeness(&channel, 0) <= 0.0 {
        return None;
    }
    // Rests between repetitions belong to their period; after the last there is none.
    let usual_length = median(&found.iter().map(|r| (r.until - r.from) as f64).collect::<Vec<f64>>())?;
    Some(((until - from) as f64 + (length - usual_length).max(0.0)) / length)
}

/// Likeness from which a period can be believed (own choice).
const LIKE_ENOUGH: f64 = 0.5;

/// A third count by speed: how often the movement goes out by at least half of the usual way at one stretch.
///
/// # Method
/// Lobes of positive slope and the way covered in each; tremor makes short ones, so they are joined over small steps
/// back.
pub fn by_strokes(signal: &[f64], usual: f64) -> usize {
    let mut count = 0;
    let mut lowest = f64::INFINITY;
    let mut highest = f64::NEG_INFINITY;
    let mut going_out = false;
    for value in signal {
        if going_out {
            highest = highest.max(*value);
            if *value < highest - STROKE * usual {
                going_out = false;
                lowest = *value;
            }
        } else {
            lowest = lowest.min(*value);
            if *value > lowest + STROKE * usual {
                going_out = true;
                highest = *value;
                count += 1;
            }
        }
    }
    count
}

/// A stroke is this part of the usual way (own choice, another than the thresholds above).
const STROKE: f64 = 0.4;

/// Seconds for which a repetition is held: within 5 degrees of its peak and slower than 5 degrees a second, breaks
/// under 0.3 s bridged (contract).
pub fn hold_s(signal: &[f64], repetition: &Repetition, step_s: f64) -> f64 {
    let part = &signal[repetition.from..repetition.until.min(signal.len())];
    let speed = slope(part, step_s);
    let is_held = |at: usize| part[at] > repetition.peak - HELD_WITHIN_DEG && speed[at].abs() < HELD_UNDER_DEG_S;
    let bridged = (BRIDGED_S / step_s) as usize;
    let mut longest = 0;
    let mut from: Option<usize> = None;
    let mut last_held = 0;
    for at in 0..part.len() {
        if is_held(at) {
            match from {
                Some(start) if at - last_held <= bridged.max(1) => longest = longest.max(at + 1 - start),
                _ => {
                    from = Some(at);
                    longest = longest.max(1);
                }
            }
            last_held = at;
        }
    }
    longest as f64 * step_s
}

const HELD_WITHIN_DEG: f64 = 5.0;
const HELD_UNDER_DEG_S: f64 = 5.0;
const BRIDGED_S: f64 = 0.3;

#[cfg(test)]
mod tests {
    use super::*;

    const STEP: f64 = 1.0 / 60.0;

    /// Raised cosines with rests between them.
    fn bumps(peaks: &[f64], seconds: f64, rest_s: f64) -> Vec<f64> {
        let mut signal = vec![0.0; 60];
        for peak in peaks {
            let count = (seconds / STEP) as usize;
            signal.extend(
                (0..count).map(|at| peak * 0.5 * (1.0 - (at as f64 / count as f64 * std::f64::consts::TAU).cos())),
            );
            signal.extend(vec![0.0; (rest_s / STEP) as usize]);
        }
        signal
    }

    #[test]
    fn a_repetition_reaches_half_and_returns_below_a_quarter() {
        let count = |peaks: &[f64]| find(&bumps(peaks, 3.0, 1.0), STEP, 10.0).0.len();
        assert_eq!(count(&[60.0; 8]), 8);
        // Half of 60 is 30: 29 is not counted, 31 is.
        assert_eq!(count(&[60.0, 60.0, 29.0, 60.0, 60.0]), 4);
        assert_eq!(count(&[60.0, 60.0, 31.0, 60.0, 60.0]), 5);
        // Three partial ones among seven do not pull the threshold down.
        assert_eq!(count(&[60.0, 20.0, 61.0, 59.0, 22.0, 60.0, 18.0, 62.0, 60.0, 60.0]), 7);
        // One that goes twice as far does not pull it up.
        assert_eq!(count(&[30.0, 30.0, 65.0, 30.0, 30.0]), 5);
        assert_eq!(count(&[8.0; 5]), 0);
        assert_eq!(find(&[], STEP, 10.0).0.len(), 0);
    }

    #[test]
    fn one_that_does_not_come_back_is_part_of_the_next() {
        // From 60 down to 20 (a third) and up again: one repetition; down to 12 (a fifth): two.
        let dip = |low: f64| {
            let mut signal = vec![0.0; 30];
            let way = |from: f64, to: f64| (0..60).map(move |at| from + (to - from) * f64::from(at) / 60.0);
            signal.extend(way(0.0, 60.0).chain(way(60.0, low)).chain(way(low, 60.0)).chain(way(60.0, 0.0)));
            signal.extend([0.0; 30]);
            find(&signal, STEP, 10.0).0.len()
        };
        assert_eq!((dip(20.0), dip(12.0)), (1, 2));
    }

    #[test]
    fn the_other_counts_agree_on_an_even_set() {
        let signal = bumps(&[60.0; 9], 3.0, 0.5);
        let (found, usual) = find(&signal, STEP, 10.0);
        assert_eq!((found.len(), by_strokes(&signal, usual)), (9, 9));
        let by_likeness = by_likeness(&signal, STEP, &found).expect("it repeats");
        assert!((by_likeness - 9.0).abs() < 0.5, "{by_likeness}");
    }

    #[test]
    fn a_hold_is_the_time_near_the_peak_and_slow() {
        let mut signal: Vec<f64> = (0..60).map(f64::from).collect();
        signal.extend([60.0; 180]);
        signal.extend((0..60).map(|at| 60.0 - f64::from(at)));
        let (found, _) = find(&signal, STEP, 10.0);
        let held = hold_s(&signal, &found[0], STEP);
        assert!((held - 3.0).abs() < 0.1, "{held}");
    }
}
