//! Smooth functions of time: minimum-jerk ways, band-limited wandering, and the low-pass of the definitions.

use std::f64::consts::TAU;

use crate::random::Random;

/// The share of a way covered after a share of its time, with the least jerk.
///
/// # Source
/// Flash and Hogan 1985, from memory: 10 s³ − 15 s⁴ + 6 s⁵.
pub fn minimum_jerk(share: f64) -> f64 {
    let s = share.clamp(0.0, 1.0);
    s * s * s * (10.0 + s * (-15.0 + 6.0 * s))
}

/// A value that goes from one place to the next on minimum-jerk ways.
#[derive(Debug, Clone, PartialEq)]
pub struct Ways {
    /// Time and value of each place, times rising.
    places: Vec<(f64, f64)>,
}

impl Ways {
    /// Begins with a value.
    pub fn from(time: f64, value: f64) -> Self {
        Self { places: vec![(time, value)] }
    }

    /// Goes to a value within some seconds.
    pub fn to(&mut self, value: f64, seconds: f64) {
        let until = self.end() + seconds;
        self.places.push((until, value));
    }

    /// Stays for some seconds.
    pub fn stay(&mut self, seconds: f64) {
        self.to(self.last(), seconds);
    }

    /// When it ends.
    pub fn end(&self) -> f64 {
        self.places[self.places.len() - 1].0
    }

    /// Where it ends.
    pub fn last(&self) -> f64 {
        self.places[self.places.len() - 1].1
    }

    /// The value at a time.
    pub fn at(&self, time: f64) -> f64 {
        let next = self.places.partition_point(|(until, _)| *until <= time);
        match (next.checked_sub(1).map(|index| self.places[index]), self.places.get(next)) {
            (None, _) => self.places[0].1,
            (Some((_, value)), None) => value,
            (Some((from, a)), Some((until, b))) => a + (b - a) * minimum_jerk((time - from) / (until - from)),
        }
    }
}

/// A value that wanders around zero within a band of frequencies.
///
/// # Method
/// A sum of sines with random frequencies and phases, each of the same size; smooth to every order.
#[derive(Debug, Clone)]
pub struct Wander {
    waves: Vec<(f64, f64)>,
    size: f64,
}

impl Wander {
    const WAVES: usize = 7;

    /// Wanders with this root mean square between two frequencies in hertz.
    pub fn new(random: &mut Random, root_mean_square: f64, low: f64, high: f64) -> Self {
        let waves = (0..Self::WAVES).map(|_| (random.uniform(low, high) * TAU, random.uniform(0.0, TAU))).collect();
        Self { waves, size: root_mean_square * (2.0 / Self::WAVES as f64).sqrt() }
    }

    /// The value at a time.
    pub fn at(&self, time: f64) -> f64 {
        self.size * self.waves.iter().map(|(rate, phase)| (rate * time + phase).sin()).sum::<f64>()
    }
}

/// Low-pass without delay: a Butterworth filter of second order run forward, then backward.
///
/// # Units and shape
/// Evenly spaced values, their step in seconds, the border in hertz (of one run).
pub fn low_pass(values: &[f64], step: f64, border: f64) -> Vec<f64> {
    let mut once = one_way(values.iter().copied(), step, border);
    once.reverse();
    let mut twice = one_way(once.into_iter(), step, border);
    twice.reverse();
    twice
}

/// The bilinear Butterworth section, begun as if the first value had always been there.
fn one_way(values: impl Iterator<Item = f64>, step: f64, border: f64) -> Vec<f64> {
    let warped = (std::f64::consts::PI * border * step).tan();
    let square = warped * warped;
    let scale = 1.0 / (1.0 + std::f64::consts::SQRT_2 * warped + square);
    let [b0, a1, a2] =
        [square * scale, 2.0 * (square - 1.0) * scale, (1.0 - std::f64::consts::SQRT_2 * warped + square) * scale];
    let mut memory: Option<[f64; 4]> = None;
    values
        .map(|x| {
            let [x1, x2, y1, y2] = memory.unwrap_or([x; 4]);
            let y = b0 * (x + 2.0 * x1 + x2) - a1 * y1 - a2 * y2;
            memory = Some([x, x1, y, y1]);
            y
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_minimum_jerk_way_starts_and_ends_at_rest() {
        let slope = |s: f64| (minimum_jerk(s + 1e-6) - minimum_jerk(s - 1e-6)) / 2e-6;
        assert_eq!((minimum_jerk(0.0), minimum_jerk(0.5), minimum_jerk(1.0)), (0.0, 0.5, 1.0));
        // The greatest speed is 15/8 of the mean, in the middle: from the formula's derivative.
        assert!((slope(0.5) - 1.875).abs() < 1e-6 && slope(1e-4) < 1e-6 && slope(1.0 - 1e-4) < 1e-6);
    }

    #[test]
    fn ways_pass_their_places() {
        let mut ways = Ways::from(1.0, 5.0);
        ways.to(25.0, 2.0);
        ways.stay(1.0);
        assert_eq!([0.0, 1.0, 2.0, 3.0, 3.5, 9.0].map(|time| ways.at(time)), [5.0, 5.0, 15.0, 25.0, 25.0, 25.0]);
    }

    #[test]
    fn the_low_pass_keeps_slow_and_stops_fast() {
        let wave = |hertz: f64| -> Vec<f64> { (0..4000).map(|i| (f64::from(i) * 1e-3 * TAU * hertz).sin()).collect() };
        let size = |values: &[f64]| values[1000..3000].iter().fold(0.0_f64, |most, value| most.max(value.abs()));
        // One run of second order halves the power at its border, so two runs halve the size.
        assert!((size(&low_pass(&wave(3.0), 1e-3, 3.0)) - 0.5).abs() < 0.01);
        assert!(size(&low_pass(&wave(0.5), 1e-3, 3.0)) > 0.998);
        assert!(size(&low_pass(&wave(12.0), 1e-3, 3.0)) < 0.01);
        assert!(low_pass(&[4.0; 50], 1e-3, 3.0).iter().all(|value| (value - 4.0).abs() < 1e-9));
    }
}
