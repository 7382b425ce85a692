//! Where up is: the orientation of the phone from gyroscope and accelerometer, without a magnetometer.
//!
//! The filter is VQF (evidence notes on sensing with a phone, part b): live as the crate gives it, and for stored
//! recordings run forward and backward with the bias of both joined.

use glam::{DMat3, DQuat, DVec3};
use vqf_rs::VQF;

use crate::sample::{Grid, Recording};

/// The live filter: one sample at a time.
pub struct Causal {
    filter: VQF,
    step_s: f64,
    last_s: Option<f64>,
    /// Where steps are alike, one serves all.
    even: bool,
}

impl std::fmt::Debug for Causal {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Causal").field("step_s", &self.step_s).field("even", &self.even).finish_non_exhaustive()
    }
}

/// The steps of a recording.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Steps {
    /// Alike but for rounding: the usual step is used for each.
    Even,
    /// As the time of each sample says.
    Measured,
}

impl Causal {
    /// For samples with a usual step.
    pub fn new(step_s: f64, steps: Steps) -> Self {
        let step_s = step_s.clamp(SHORTEST_STEP_S, LONGEST_STEP_S);
        Self { filter: VQF::new(step_s, None, None, None), step_s, last_s: None, even: steps == Steps::Even }
    }

    /// Takes one sample; gives the turn that takes the phone's axes to the room's (z up, heading arbitrary).
    pub fn update(&mut self, t_s: f64, force: DVec3, rate: DVec3) -> DQuat {
        let passed = self.last_s.map_or(self.step_s, |last| t_s - last);
        self.last_s = Some(t_s);
        let step = if self.even { self.step_s } else { passed.clamp(0.0, LONGEST_STEP_S) };
        self.filter.update_gyr_with_ts(rate.to_array(), step);
        self.filter.update_acc(force.to_array());
        self.turn()
    }

    /// The turn after the last sample.
    pub fn turn(&self) -> DQuat {
        quaternion(self.filter.quat_6d())
    }

    /// The gyroscope's bias in rad/s, and how sure it is.
    pub fn bias(&self) -> (DVec3, f64) {
        let (bias, sigma) = self.filter.bias_estimate();
        (DVec3::from_array(bias), sigma)
    }

    /// What is known of the bias: the inverse of its covariance. Units are the filter's own and fall out where two are
    /// joined.
    fn information(&self) -> DMat3 {
        let [x, y, z] = self.filter.state().bias_p.0.map(DVec3::from_array);
        // Rows for columns: a covariance is its own transpose.
        let covariance = DMat3::from_cols(x, y, z);
        if covariance.determinant() > 0.0 { covariance.inverse() } else { DMat3::ZERO }
    }

    fn start_with_bias(&mut self, (bias, sigma): (DVec3, f64)) {
        self.filter.set_bias_estimate(bias.to_array(), Some(sigma));
    }
}

/// 500 Hz with grace, and 2 Hz: outside of it nothing is measured, but nothing may fail either.
const SHORTEST_STEP_S: f64 = 1e-4;
const LONGEST_STEP_S: f64 = 0.5;

fn quaternion(q: vqf_rs::Quaternion) -> DQuat {
    DQuat::from_xyzw(q.1, q.2, q.3, q.0)
}

/// The unit vector that points up, in the phone's axes, of a turn.
pub fn up(turn: DQuat) -> DVec3 {
    (turn.inverse() * DVec3::Z).normalize_or_zero()
}

/// The live estimate for every sample of a recording.
pub fn causal(recording: &Recording) -> Vec<DVec3> {
    let Some(step_s) = recording.step_s() else {
        return recording.samples().iter().map(|s| at_once(s.force)).collect();
    };
    let steps = if recording.is_even(step_s) { Steps::Even } else { Steps::Measured };
    let mut filter = Causal::new(step_s, steps);
    recording.samples().iter().map(|sample| up(filter.update(sample.t_s, sample.force, sample.rate))).collect()
}

fn at_once(force: DVec3) -> DVec3 {
    force.normalize_or_zero()
}

/// The estimate of a stored recording for every one of its samples.
pub fn offline(recording: &Recording) -> Vec<DVec3> {
    let Some(grid) = Grid::fine(recording) else { return causal(recording) };
    let turns = offline_turns(&grid);
    let ups: Vec<DVec3> = turns.turns.into_iter().map(up).collect();
    let samples = recording.samples();
    let even = samples.len() == ups.len() && recording.step_s().is_some_and(|step| recording.is_even(step));
    if even {
        return ups;
    }
    let last = ups.len() - 1;
    samples
        .iter()
        .map(|sample| {
            let place = ((sample.t_s - grid.start_s) / grid.step_s).clamp(0.0, last as f64);
            let before = (place.floor() as usize).min(last);
            ups[before].lerp(ups[(before + 1).min(last)], place - place.floor()).normalize_or_zero()
        })
        .collect()
}

/// The turns of a grid, each stretch by itself; heading is arbitrary in each.
///
/// # Method
/// The filter runs forward and, on the reversed series, backward. Both bias estimates are joined by their certainty,
/// the angular rate less the joined bias is integrated, the specific force is taken to that frame, low-passed there
/// without delay (second-order Butterworth, time constant of 3 s, both ways), and the inclination is turned to it.
///
/// # Source
/// The structure is that of the filter's authors' own offline variant; written anew, because the crate has none.
pub fn offline_turns(grid: &Grid) -> Turns {
    let mut all = Turns { turns: Vec::with_capacity(grid.len()), bias: Vec::with_capacity(grid.len()) };
    let mut known = None;
    for (from, until) in &grid.stretches {
        let stretch = one_stretch(&grid.force[*from..*until], &grid.rate[*from..*until], grid.step_s, &mut known);
        all.turns.extend(stretch.turns);
        all.bias.extend(stretch.bias);
    }
    all
}

/// Turns of a grid, and what the gyroscope was off by.
#[derive(Debug, Clone, PartialEq)]
pub struct Turns {
    /// From the phone's axes to the room's, one a step.
    pub turns: Vec<DQuat>,
    /// The gyroscope's bias in rad/s, one a step.
    pub bias: Vec<DVec3>,
}

fn one_stretch(force: &[DVec3], rate: &[DVec3], step_s: f64, known: &mut Option<(DVec3, f64)>) -> Turns {
    let count = force.len();
    let mut forward = Causal::new(step_s, Steps::Even);
    if let Some(bias) = *known {
        forward.start_with_bias(bias);
    }
    let mut first: Vec<(DVec3, DMat3)> = Vec::with_capacity(count);
    for (force, rate) in force.iter().zip(rate) {
        forward.update(0.0, *force, *rate);
        first.push((forward.bias().0, forward.information()));
    }
    let sigma = forward.bias().1;
    let mut bias = vec![DVec3::ZERO; count];
    let mut backward = Causal::new(step_s, Steps::Even);
    for place in (0..count).rev() {
        backward.update(0.0, force[place], -rate[place]);
        let (second, _) = backward.bias();
        let (one, other) = (first[place].1, backward.information());
        let both = one + other;
        // Time reversed, the bias has the other sign.
        let sum = one * first[place].0 - other * second;
        bias[place] = if both.determinant() > 0.0 { both.inverse() * sum } else { first[place].0 };
    }
    if let Some(last) = bias.last() {
        *known = Some((*last, sigma.max(BIAS_SIGMA_CARRIED)));
    }
    let mut turn = DQuat::IDENTITY;
    let mut turns = Vec::with_capacity(count);
    let mut room = Vec::with_capacity(count);
    for place in 0..count {
        turn = (turn * DQuat::from_scaled_axis((rate[place] - bias[place]) * step_s)).normalize();
        turns.push(turn);
        room.push(turn * force[place]);
    }
    both_ways(&mut room, step_s);
    let mut level = DQuat::IDENTITY;
    for (turn, force) in turns.iter_mut().zip(&room) {
        let seen = (level * *force).normalize_or(DVec3::Z);
        level = (DQuat::from_rotation_arc(seen, DVec3::Z) * level).normalize();
        *turn = level * *turn;
    }
    Turns { turns, bias }
}

/// A bias carried over a gap is believed to this, rad/s: 0.1 degrees a second (own choice).
const BIAS_SIGMA_CARRIED: f64 = 0.1 * std::f64::consts::PI / 180.0;
/// The filter's time constant for specific force (its authors' default).
const FORCE_TIME_CONSTANT_S: f64 = 3.0;

/// The low-pass of the filter, forward with the mean of the first three seconds to start from, then backward.
fn both_ways(values: &mut [DVec3], step_s: f64) {
    let cutoff = std::f64::consts::SQRT_2 / (2.0 * std::f64::consts::PI) / FORCE_TIME_CONSTANT_S;
    let filter = Biquad::low_pass(cutoff, step_s);
    let mut state: Option<[DVec3; 2]> = None;
    let mut sum = DVec3::ZERO;
    for (place, value) in values.iter_mut().enumerate() {
        match &mut state {
            Some(state) => *value = filter.step(*value, state),
            None => {
                sum += *value;
                let seen = (place + 1) as f64;
                let mean = sum / seen;
                if seen * step_s >= FORCE_TIME_CONSTANT_S {
                    state = Some(filter.settled(mean));
                }
                *value = mean;
            }
        }
    }
    let Some(last) = values.last() else { return };
    let mut state = filter.settled(*last);
    for value in values.iter_mut().rev() {
        *value = filter.step(*value, &mut state);
    }
}

/// A Butterworth low-pass of second order.
#[derive(Debug, Clone, Copy)]
struct Biquad {
    b: [f64; 3],
    a: [f64; 2],
}

impl Biquad {
    fn low_pass(cutoff_hz: f64, step_s: f64) -> Self {
        let c = (std::f64::consts::PI * cutoff_hz * step_s).tan();
        let d = c * c + std::f64::consts::SQRT_2 * c + 1.0;
        let b0 = c * c / d;
        Self { b: [b0, 2.0 * b0, b0], a: [2.0 * (c * c - 1.0) / d, (1.0 - std::f64::consts::SQRT_2 * c + c * c) / d] }
    }

    fn settled(self, value: DVec3) -> [DVec3; 2] {
        [value * (1.0 - self.b[0]), value * (self.b[2] - self.a[1])]
    }

    fn step(self, value: DVec3, state: &mut [DVec3; 2]) -> DVec3 {
        let out = self.b[0] * value + state[0];
        state[0] = self.b[1] * value - self.a[0] * out + state[1];
        state[1] = self.b[2] * value - self.a[1] * out;
        out
    }
}
