//! Whether somebody walks.

use glam::DVec3;

use crate::smooth::{likeness, low_pass, moving_mean};

/// What speaks for steps in a movement of some period.
///
/// # Method
/// An arm swings once for two steps. So the vertical specific force comes again after half of the arm's period as well
/// as after all of it, which no exercise's does that goes out and back by one way; or each period carries impacts,
/// sharper than anything an arm does by itself. Both were looked at on the open wrist recordings of seven shoulder
/// exercises (first five people) and on open recordings of walking; what separates them are own choices.
pub fn are_taken(force: &[DVec3], ups: &[DVec3], rate: &[DVec3], period_s: f64, step_s: f64) -> bool {
    let upward: Vec<f64> = force.iter().zip(ups).map(|(force, up)| force.dot(*up)).collect();
    let slow = low_pass(&upward, STEPS_HZ, step_s);
    let drift = moving_mean(&slow, ((period_s / step_s) as usize).max(1));
    let bounce: Vec<f64> = slow.iter().zip(&drift).map(|(value, drift)| value - drift).collect();
    let count = bounce.len().max(1) as f64;
    let strength = (bounce.iter().map(|value| value * value).sum::<f64>() / count).sqrt();
    if strength > BOUNCE_OF_RUNNING {
        return true;
    }
    let channel = [bounce];
    // The best of a few lags around: a period is known to a few percent.
    let best = |seconds: f64| {
        let [from, to] = [0.94, 1.06].map(|part| ((seconds * part / step_s).round() as usize).max(1));
        (from..=to).map(|lag| likeness(&channel, lag)).fold(f64::NEG_INFINITY, f64::max)
    };
    let cadence = (STEP_S[0]..=STEP_S[1]).contains(&(period_s / 2.0));
    let twice = best(period_s / 2.0) > HALF_ALIKE && best(period_s) > WHOLE_ALIKE;
    let lengths: Vec<f64> = force.iter().map(|force| force.length()).collect();
    let smooth = low_pass(&lengths, IMPACT_HZ, step_s);
    let sharp = lengths.iter().zip(&smooth).map(|(value, smooth)| (value - smooth) * (value - smooth)).sum::<f64>();
    let sharp = (sharp / count).sqrt();
    let turning = (rate.iter().map(|rate| rate.length_squared()).sum::<f64>() / count).sqrt().to_degrees();
    let impacts = sharp > IMPACT && sharp > IMPACT_PER_DEG_S * turning;
    strength > LEAST_BOUNCE && cadence && (twice || impacts)
}

const STEPS_HZ: f64 = 5.0;
const IMPACT_HZ: f64 = 4.0;
/// A step lasts this long, seconds (evidence notes, "Signal quality": 1.4 to 2.4 Hz; a slow walk of people with an arm
/// in a sling is slower).
const STEP_S: [f64; 2] = [0.38, 0.85];
/// Root mean squares in m/s², and the same for each degree a second of turning.
const LEAST_BOUNCE: f64 = 0.4;
const BOUNCE_OF_RUNNING: f64 = 8.5;
const IMPACT: f64 = 1.2;
const IMPACT_PER_DEG_S: f64 = 0.0095;
const HALF_ALIKE: f64 = 0.45;
const WHOLE_ALIKE: f64 = 0.35;
