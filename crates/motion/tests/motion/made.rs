//! Recordings made from formulas: a phone that turns about one axis of a limb, or hangs and swings.

use glam::{DQuat, DVec3};
use motion::{Axis, Exercise, Recording, Sample, Task};

pub const GRAVITY: f64 = 9.81;

/// How a recording is spoilt or turned, with the truth left as it is.
#[derive(Clone, Copy)]
pub struct How {
    pub rate_hz: f64,
    pub start_s: f64,
    pub strap: DQuat,
    pub sign: f64,
    pub table: bool,
}

impl Default for How {
    fn default() -> Self {
        Self { rate_hz: 60.0, start_s: 0.0, strap: DQuat::IDENTITY, sign: 1.0, table: true }
    }
}

/// Samples of a turning phone at one place: gravity and angular rate, rounded as browsers round.
pub fn sampled(seconds: f64, how: How, turn_at: impl Fn(f64) -> DQuat) -> Vec<Sample> {
    let turn = |t: f64| turn_at(t) * how.strap;
    let count = (seconds * how.rate_hz) as usize;
    (0..count)
        .map(|at| {
            let t = at as f64 / how.rate_hz;
            let now = turn(t);
            let mut passed = turn(t - 1e-4).inverse() * turn(t + 1e-4);
            if passed.w < 0.0 {
                passed = -passed;
            }
            let rate = passed.to_scaled_axis() / 2e-4;
            let force = now.inverse() * DVec3::new(0.0, 0.0, GRAVITY * how.sign);
            let tenth_of = |value: f64, unit: f64| (value / unit).round() * unit;
            let force = force.to_array().map(|value| tenth_of(value, 0.1));
            let rate = rate.to_array().map(|value| tenth_of(value, 0.1_f64.to_radians()));
            Sample::new(how.start_s + t, force, rate)
        })
        .collect()
}

pub fn recording(samples: impl IntoIterator<Item = Sample>) -> Recording {
    Recording::of(samples.into_iter().map(Some))
}

/// From 0 to 1 without a jerk.
pub fn eased(share: f64) -> f64 {
    let s = share.clamp(0.0, 1.0);
    s * s * s * (10.0 - 15.0 * s + 6.0 * s * s)
}

/// Raises of a hanging arm to the side by these peaks: table 4 s, strapping 3 s, pose 4 s, set, pose 4 s.
pub fn raises(peaks: &[f64], how: How) -> Recording {
    // The phone's y axis runs along the limb, toward the hand: hanging it points down.
    let hanging = DQuat::from_rotation_x(-90.0_f64.to_radians());
    let (out, hold, back, rest) = (1.5, 1.0, 1.5, 1.0);
    let each = out + hold + back + rest;
    let opening = if how.table { 7.0 } else { 0.0 };
    let set = opening + 4.0;
    let angle = move |t: f64, peaks: &[f64]| -> f64 {
        let at = (t - set) / each;
        if at < 0.0 || at >= peaks.len() as f64 {
            return 0.0;
        }
        let (peak, into) = (peaks[at as usize], (at - at.floor()) * each);
        match into {
            into if into < out => peak * eased(into / out),
            into if into < out + hold => peak,
            into => peak * (1.0 - eased((into - out - hold) / back)),
        }
    };
    let lying = DQuat::from_rotation_z(0.4) * how.strap.inverse();
    let turn = |t: f64| {
        let worn = DQuat::from_rotation_y(-angle(t, peaks).to_radians()) * hanging;
        if how.table { lying.slerp(worn, eased((t - 4.0) / 3.0)) } else { worn }
    };
    recording(sampled(set + each * peaks.len() as f64 + 4.0, how, turn))
}

/// A cone swung by a hanging arm: half-angle in degrees, seconds a turn, turns (negative: clockwise seen from above).
pub fn circles(half_angle: f64, period: f64, turns: f64, how: How) -> Recording {
    let hanging = DQuat::from_rotation_x(-90.0_f64.to_radians());
    let (opening, pose) = (7.0, 4.0);
    let set = opening + pose;
    let seconds = turns.abs() * period;
    let lying = DQuat::from_rotation_z(0.4) * how.strap.inverse();
    let turn = |t: f64| {
        let since = t - set;
        let grown = eased((since + 1.0) / 1.0) * (1.0 - eased((since - seconds) / 1.0));
        let phase = std::f64::consts::TAU * since / period * turns.signum();
        // The limb's direction goes around the vertical without the limb turning about itself.
        let axis = DVec3::new(phase.cos(), phase.sin(), 0.0).cross(DVec3::Z).normalize();
        let worn = DQuat::from_axis_angle(axis, half_angle.to_radians() * grown) * hanging;
        lying.slerp(worn, eased((t - 4.0) / 3.0))
    };
    recording(sampled(set + seconds + 1.0 + 4.0, how, turn))
}

pub fn task(exercise: Exercise) -> Task {
    Task { axis: Axis::Y, arm_length_m: Some(0.65), ..Task::new(exercise, body::Side::Right) }
}
