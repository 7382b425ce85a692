//! An invented phone: how its sensors err, and how it hands over what they say.

use glam::{DQuat, DVec3};

use crate::parameter::{Draws, OWN_CHOICE, Parameter, Spread, own};
use crate::random::Random;
use crate::signal::STEP;

/// One row of a recording.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Seconds.
    pub t_s: f64,
    /// Specific force, meters per second squared.
    pub force: DVec3,
    /// Angular rate, radians a second.
    pub rate: DVec3,
}

/// Which sign of gravity the phone hands over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Gravity {
    /// Specific force, as the specification says.
    Specified,
    /// Its negative, as one platform does.
    Opposite,
}

/// How finely values are handed over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rounding {
    /// To 0.1 m/s² and 0.1 degrees a second, as browsers do.
    Tenths,
    /// As measured.
    None,
}

/// The unit of the angular rate in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RateUnit {
    /// Radians a second.
    Radians,
    /// Degrees a second.
    Degrees,
}

/// The sensors of a phone.
#[derive(Debug, Clone)]
pub struct Phone {
    /// Rows a second.
    pub rate_hz: f64,
    /// Sign of gravity.
    pub gravity: Gravity,
    /// Rounding.
    pub rounding: Rounding,
    /// Spread of the time between rows, seconds.
    pub jitter_s: f64,
    /// Share of rows that are lost.
    pub lost: f64,
    /// What the clock shows at the start, seconds.
    pub clock_s: f64,
    errors: Errors,
}

/// Errors of the two sensors.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Errors {
    force_offset: DVec3,
    force_scale: DVec3,
    force_noise: f64,
    rate_offset: DVec3,
    rate_scale: DVec3,
    rate_noise: f64,
    rate_drift: f64,
    misaligned: DQuat,
    stamp_s: f64,
}

/// Whether the sensors err.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sensors {
    /// As in a phone.
    Real,
    /// Not at all, and evenly spaced.
    Perfect,
}

const fn bell(name: &'static str, unit: &'static str, deviation: f64, source: &'static str) -> Parameter {
    Parameter { name, unit, spread: Spread::Bell(0.0, deviation), source }
}

const FORCE_OFFSET: Parameter =
    bell("accelerometer_offset", "m/s2", 0.12, "motion.md, error budget: 20 mg typical, read; spread own choice");
const FORCE_SCALE: Parameter = bell("accelerometer_scale_error", "share", 0.004, OWN_CHOICE);
const FORCE_NOISE: Parameter = Parameter {
    name: "accelerometer_noise_density",
    unit: "m/s2/√Hz",
    spread: Spread::Even(0.0010, 0.0025),
    source: "motion.md, error budget: 160 µg/√Hz; spread own choice",
};
const RATE_OFFSET: Parameter =
    bell("gyroscope_bias", "deg/s", 0.5, "motion.md, error budget: 0.5 deg/s; spread own choice");
const RATE_SCALE: Parameter = bell("gyroscope_scale_error", "share", 0.004, OWN_CHOICE);
const RATE_NOISE: Parameter = own("gyroscope_noise_density", "deg/s/√Hz", 0.004, 0.012);
const RATE_DRIFT: Parameter = own("gyroscope_bias_drift", "deg/s in a minute", 0.0, 0.06);
const MISALIGNED: Parameter = bell("sensor_misalignment", "deg", 0.4, OWN_CHOICE);
const JITTER: Parameter = own("jitter_of_interval", "s", 0.0003, 0.0025); // motion.md: median 16.7 ms, 95th percentile 21 ms under load
const LOST: Parameter = own("rows_lost", "share", 0.0, 0.02);
const STAMP: Parameter = own("error_of_time_stamp", "s", 0.0, 0.0006);
const CLOCK: Parameter = own("clock_at_start", "s", 0.0, 600.0);
/// The sensor itself averages over this time.
const SENSOR_WINDOW_S: f64 = 0.005;
/// Time stamps are handed over in steps of 0.1 ms.
const STAMPS_A_SECOND: f64 = 1e4;

impl Phone {
    /// A phone at this rate.
    pub fn draw(draws: &mut Draws, rate_hz: f64, gravity: Gravity, rounding: Rounding, sensors: Sensors) -> Self {
        if sensors == Sensors::Perfect {
            let none = DVec3::ZERO;
            let errors = Errors {
                force_offset: none,
                force_scale: none,
                force_noise: 0.0,
                rate_offset: none,
                rate_scale: none,
                rate_noise: 0.0,
                rate_drift: 0.0,
                misaligned: DQuat::IDENTITY,
                stamp_s: 0.0,
            };
            return Self { rate_hz, gravity, rounding, jitter_s: 0.0, lost: 0.0, clock_s: 0.0, errors };
        }
        // White noise of a density reaches this much of a signal sampled at the rate.
        let band = (rate_hz / 2.0).sqrt();
        let errors = Errors {
            force_offset: draws.draw_axes(&FORCE_OFFSET),
            force_scale: draws.draw_axes(&FORCE_SCALE),
            force_noise: draws.draw(&FORCE_NOISE) * band,
            rate_offset: draws.draw_axes(&RATE_OFFSET) * std::f64::consts::PI / 180.0,
            rate_scale: draws.draw_axes(&RATE_SCALE),
            rate_noise: draws.draw(&RATE_NOISE).to_radians() * band,
            rate_drift: draws.draw(&RATE_DRIFT).to_radians(),
            misaligned: DQuat::from_scaled_axis(draws.draw_axes(&MISALIGNED) * std::f64::consts::PI / 180.0),
            stamp_s: draws.draw(&STAMP),
        };
        let [jitter_s, lost, clock_s] = [&JITTER, &LOST, &CLOCK].map(|parameter| draws.draw(parameter));
        // A faster phone is not more late for each row than the row is long.
        let jitter_s = jitter_s.min(0.15 / rate_hz);
        Self { rate_hz, gravity, rounding, jitter_s, lost, clock_s, errors }
    }

    /// The times at which the phone samples, seconds from the start; gaps and lost rows are left out.
    pub fn times(&self, random: &mut Random, seconds: f64, gaps: &[(f64, f64)]) -> Vec<f64> {
        let many = ((seconds - 2.0 * STEP) * self.rate_hz) as usize;
        (0..many)
            .filter_map(|row| {
                let late = self.jitter_s * random.normal().clamp(-2.5, 2.5);
                let is_lost = random.happens(self.lost);
                let time = (STEP + row as f64 / self.rate_hz + late).clamp(STEP, seconds - 2.0 * STEP);
                let in_gap = gaps.iter().any(|(from, until)| (*from..*until).contains(&time));
                (!is_lost && !in_gap).then_some(time)
            })
            .collect()
    }

    /// What the phone hands over at these times of what a perfect sensor would feel at every step.
    pub fn samples(&self, random: &mut Random, times: &[f64], force: &[DVec3], rate: &[DVec3]) -> Vec<Sample> {
        let errors = &self.errors;
        let noise =
            |random: &mut Random, size: f64| DVec3::new(random.normal(), random.normal(), random.normal()) * size;
        let mut drift = DVec3::ZERO;
        let mut before = 0.0;
        let mut last_stamp = f64::NEG_INFINITY;
        let sign = match self.gravity {
            Gravity::Specified => 1.0,
            Gravity::Opposite => -1.0,
        };
        let mut samples = Vec::with_capacity(times.len());
        for &time in times {
            drift += noise(random, errors.rate_drift * ((time - before).max(0.0) / 60.0).sqrt());
            before = time;
            let true_force = errors.misaligned * window(force, time);
            let true_rate = errors.misaligned * window(rate, time);
            let force = true_force * (DVec3::ONE + errors.force_scale)
                + errors.force_offset
                + noise(random, errors.force_noise);
            let rate = true_rate * (DVec3::ONE + errors.rate_scale)
                + errors.rate_offset
                + drift
                + noise(random, errors.rate_noise);
            let stamp = self.clock_s + time + errors.stamp_s * random.normal();
            let stamp = (stamp * STAMPS_A_SECOND).round() / STAMPS_A_SECOND;
            if stamp <= last_stamp {
                continue;
            }
            last_stamp = stamp;
            samples.push(self.handed_over(Sample { t_s: stamp, force: force * sign, rate }));
        }
        samples
    }

    fn handed_over(&self, sample: Sample) -> Sample {
        match self.rounding {
            Rounding::None => sample,
            Rounding::Tenths => {
                let tenths = |value: DVec3| (value * 10.0).round() / 10.0;
                let degrees = tenths(sample.rate * (180.0 / std::f64::consts::PI));
                Sample { force: tenths(sample.force), rate: degrees * (std::f64::consts::PI / 180.0), ..sample }
            }
        }
    }
}

/// The mean over the sensor's own window around a time, between the steps on a straight line.
fn window(values: &[DVec3], time: f64) -> DVec3 {
    let half = (SENSOR_WINDOW_S / STEP / 2.0) as isize;
    let last = values.len() as isize - 1;
    let place = time / STEP;
    let (whole, part) = (place.floor() as isize, place.fract());
    let at = |index: isize| values[index.clamp(0, last) as usize];
    let many = (2 * half + 1) as f64;
    (-half..=half).map(|off| at(whole + off).lerp(at(whole + off + 1), part)).sum::<DVec3>() / many
}

#[cfg(test)]
mod tests {
    use super::*;

    fn phone(rounding: Rounding, gravity: Gravity) -> Phone {
        Phone::draw(&mut Draws::new(1, "phone"), 60.0, gravity, rounding, Sensors::Perfect)
    }

    #[test]
    fn values_are_rounded_as_browsers_do() {
        let phone = phone(Rounding::Tenths, Gravity::Specified);
        let raw = Sample { t_s: 0.0, force: DVec3::splat(1.234_567), rate: DVec3::splat(0.1) };
        let given = phone.handed_over(raw);
        // `motion.md`, (a): 1.234567 becomes 1.2; 0.1 rad/s becomes 5.7 degrees a second.
        assert!((given.force.x - 1.2).abs() < 1e-12 && (given.rate.x.to_degrees() - 5.7).abs() < 1e-12);
    }

    #[test]
    fn the_sign_variant_turns_gravity_over_and_nothing_else() {
        let (force, rate) = (vec![DVec3::new(0.0, 0.0, 9.81); 100], vec![DVec3::X; 100]);
        let of = |gravity| phone(Rounding::None, gravity).samples(&mut Random::new(1, "s"), &[0.05], &force, &rate);
        let (plain, turned) = (of(Gravity::Specified), of(Gravity::Opposite));
        assert_eq!((plain[0].force, plain[0].rate), (-turned[0].force, turned[0].rate));
    }

    #[test]
    fn gaps_hold_no_rows_and_time_only_rises() {
        let draws = &mut Draws::new(5, "phone");
        let phone = Phone::draw(draws, 60.0, Gravity::Specified, Rounding::None, Sensors::Real);
        let times = phone.times(&mut Random::new(5, "times"), 20.0, &[(4.0, 5.5)]);
        assert!(times.iter().all(|time| !(4.0..5.5).contains(time)));
        let still = vec![DVec3::Z; 20_000];
        let samples = phone.samples(&mut Random::new(5, "noise"), &times, &still, &still);
        assert!(samples.windows(2).all(|pair| pair[0].t_s < pair[1].t_s));
        assert!((1050..=1110).contains(&samples.len()), "{}", samples.len());
    }
}
