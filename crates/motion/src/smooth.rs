//! Series made smooth, and what repeats in them.

use std::f64::consts::{PI, SQRT_2};
use std::ops::{Add, Mul, Sub};

/// A Butterworth low-pass of second order, forward and backward: no delay.
pub fn low_pass<V>(values: &[V], cutoff_hz: f64, step_s: f64) -> Vec<V>
where
    V: Copy + Add<Output = V> + Sub<Output = V> + Mul<f64, Output = V>,
{
    let mut out = values.to_vec();
    // Above a third of the sampling rate there is nothing to take away.
    if cutoff_hz * step_s > 0.33 || out.len() < 2 {
        return out;
    }
    let c = (PI * cutoff_hz * step_s).tan();
    let d = c * c + SQRT_2 * c + 1.0;
    let b0 = c * c / d;
    let [b1, b2] = [2.0 * b0, b0];
    let [a1, a2] = [2.0 * (c * c - 1.0) / d, (1.0 - SQRT_2 * c + c * c) / d];
    let run = |value: &mut V, state: &mut [V; 2]| {
        let x = *value;
        let y = x * b0 + state[0];
        state[0] = x * b1 - y * a1 + state[1];
        state[1] = x * b2 - y * a2;
        *value = y;
    };
    let settled = |value: V| [value * (1.0 - b0), value * (b2 - a2)];
    let mut state = settled(out[0]);
    out.iter_mut().for_each(|value| run(value, &mut state));
    let mut state = settled(out[out.len() - 1]);
    out.iter_mut().rev().for_each(|value| run(value, &mut state));
    out
}

/// The mean over a window around each value; nearer to an end than half a window, the last whole window stands.
pub fn moving_mean<V>(values: &[V], half: usize) -> Vec<V>
where
    V: Copy + Add<Output = V> + Sub<Output = V> + Mul<f64, Output = V>,
{
    let reach = half.min(values.len().saturating_sub(1) / 2);
    window_mean(values, |at| (at.clamp(reach, values.len() - 1 - reach), reach))
}

/// The same with windows that become shorter toward the ends, on both sides alike.
pub fn moving_mean_to_the_ends<V>(values: &[V], half: usize) -> Vec<V>
where
    V: Copy + Add<Output = V> + Sub<Output = V> + Mul<f64, Output = V>,
{
    window_mean(values, |at| (at, half.min(at).min(values.len() - 1 - at)))
}

/// Means of windows, each given by its middle and its reach.
fn window_mean<V>(values: &[V], window: impl Fn(usize) -> (usize, usize)) -> Vec<V>
where
    V: Copy + Add<Output = V> + Sub<Output = V> + Mul<f64, Output = V>,
{
    let Some(first) = values.first() else { return Vec::new() };
    let zero = *first * 0.0;
    let mut sums = Vec::with_capacity(values.len() + 1);
    sums.push(zero);
    for value in values {
        let last = sums[sums.len() - 1];
        sums.push(last + *value);
    }
    (0..values.len())
        .map(|at| {
            let (at, reach) = window(at);
            (sums[at + reach + 1] - sums[at - reach]) * (1.0 / (2 * reach + 1) as f64)
        })
        .collect()
}

/// The rate of change between neighbors, one value for each.
pub fn slope(values: &[f64], step_s: f64) -> Vec<f64> {
    let last = values.len().saturating_sub(1);
    (0..values.len())
        .map(|at| {
            let [before, after] = [at.saturating_sub(1), (at + 1).min(last)];
            if after == before { 0.0 } else { (values[after] - values[before]) / ((after - before) as f64 * step_s) }
        })
        .collect()
}

/// The value below which a part of all lie; `None` of no value.
pub fn quantile(values: &[f64], part: f64) -> Option<f64> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let at = part * (sorted.len().checked_sub(1)?) as f64;
    let below = sorted[at.floor() as usize];
    let above = sorted[at.ceil() as usize];
    Some(below + (above - below) * (at - at.floor()))
}

/// The value in the middle.
pub fn median(values: &[f64]) -> Option<f64> {
    quantile(values, 0.5)
}

/// How alike a series is to itself some steps later, from -1 to 1; several channels are added.
pub fn likeness(channels: &[Vec<f64>], lag: usize) -> f64 {
    let mut product = 0.0;
    let mut power = [0.0; 2];
    for channel in channels {
        let Some(end) = channel.len().checked_sub(lag) else { return 0.0 };
        for at in 0..end {
            let [now, later] = [channel[at], channel[at + lag]];
            product += now * later;
            power[0] += now * now;
            power[1] += later * later;
        }
    }
    let norm = (power[0] * power[1]).sqrt();
    if norm > 0.0 { product / norm } else { 0.0 }
}

/// The period at which channels repeat, in steps, and how well; `None` where nothing repeats.
///
/// # Method
/// The first peak of the likeness that comes near the highest one: a multiple of a period is as good as the period.
pub fn period(channels: &[Vec<f64>], shortest: usize, longest: usize) -> Option<(f64, f64)> {
    let length = channels.first()?.len();
    let longest = longest.min(length * 2 / 3);
    if longest <= shortest + 1 {
        return None;
    }
    let stride = (shortest / 12).max(1);
    let lags: Vec<usize> = (shortest.saturating_sub(stride).max(1)..=longest + stride).step_by(stride).collect();
    let likes: Vec<f64> = lags.iter().map(|lag| likeness(channels, *lag)).collect();
    let peaks: Vec<usize> = (1..likes.len().saturating_sub(1))
        .filter(|at| likes[*at] >= likes[at - 1] && likes[*at] > likes[at + 1])
        .collect();
    let best = peaks.iter().map(|at| likes[*at]).fold(f64::NEG_INFINITY, f64::max);
    let chosen = peaks.into_iter().find(|at| likes[*at] >= best - NEAR_THE_BEST)?;
    if likes[chosen] <= 0.0 {
        return None;
    }
    // The top of the parabola through three points.
    let [left, top, right] = [likes[chosen - 1], likes[chosen], likes[chosen + 1]];
    let bend = left - 2.0 * top + right;
    let shift = if bend < 0.0 { 0.5 * (left - right) / bend } else { 0.0 };
    Some((lags[chosen] as f64 + shift.clamp(-1.0, 1.0) * stride as f64, top))
}

/// Likeness this close to the best is as good (own choice: half a period of a slanted movement stays below).
const NEAR_THE_BEST: f64 = 0.15;
