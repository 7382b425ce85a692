//! What happened in a set that somebody should know of. Events never change a count.

use evidence::ids;
use glam::{DQuat, DVec3};

use crate::pendulum::Pendulum;
use crate::sample::{GAP_TOLD_S, Gap, Grid};
use crate::smooth::{low_pass, slope};

body::words! {
    /// Kinds of events.
    Kind {
        /// The angle may have reached the limit: its upper end, two standard deviations up.
        Limit = "limit",
        /// The arm moved faster than is meant for it now.
        TooFast = "too-fast",
        /// A circle was wider than the cap.
        WideCircle = "wide-circle",
        /// The pose after the set is not the one before it: the strap moved.
        Slipped = "slipped",
        /// Samples are missing.
        Gap = "gap",
        /// The hand may have gone behind the back. Possible, never certain.
        PossiblyBehindBack = "possibly-behind-back",
    }
}

/// One of them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Event {
    /// When, in the recording's own time.
    pub t_s: f64,
    /// What.
    pub kind: Kind,
    /// How much: degrees, degrees a second, centimeters or seconds, as the kind has it.
    pub value: f64,
}

/// A difference of poses above this is a slip (evidence notes, "Placement error": 8 degrees).
pub const SLIPPED_DEG: f64 = 8.0;
/// So far under the level that warned the angle has to come before it warns again (own choice).
pub const REARMED_DEG: f64 = 5.0;
/// Faster for this long is fast; a knock is shorter (own choice).
const FAST_FOR_S: f64 = 0.15;
const MILLIMETERS_PER_CENTIMETER: f64 = 10.0;
/// Backward past the hanging arm by this much (evidence notes, "Safety checks": 20 degrees).
const BEHIND_DEG: f64 = 20.0;
/// Together with a turn of the limb about itself of this much (own choice).
const PALM_BACK_DEG: f64 = 45.0;

/// Where the upper end of the angle reaches the limit, once for every time it does.
///
/// # Method
/// Warns as soon as angle + 2σ is at the limit: within the error nothing says "below".
pub fn limit(grid: &Grid, from: usize, angle_deg: &[f64], limit_deg: f64, sigma_deg: f64) -> Vec<Event> {
    let level = limit_deg - 2.0 * sigma_deg;
    let mut events = Vec::new();
    let mut armed = true;
    for (at, angle) in angle_deg.iter().enumerate() {
        if armed && *angle >= level {
            armed = false;
            events.push(Event { t_s: grid.time(from + at), kind: Kind::Limit, value: *angle });
        } else if *angle < level - REARMED_DEG {
            armed = true;
        }
    }
    events
}

/// Where the arm was faster than it should be now.
pub fn too_fast(grid: &Grid, from: usize, until: usize) -> Vec<Event> {
    let most = ids::MOTION_TOO_FAST.number();
    let speed: Vec<f64> = low_pass(&grid.rate[from..until], crate::signal::MOVEMENT_HZ, grid.step_s)
        .iter()
        .map(|r| r.length().to_degrees())
        .collect();
    let lasting = grid.steps(FAST_FOR_S);
    let mut events = Vec::new();
    let mut since: Option<usize> = None;
    for at in 0..=speed.len() {
        match (speed.get(at).is_some_and(|speed| *speed > most), since) {
            (true, None) => since = Some(at),
            (false, Some(start)) => {
                if at - start >= lasting {
                    let value = speed[start..at].iter().copied().fold(0.0, f64::max);
                    events.push(Event { t_s: grid.time(from + start), kind: Kind::TooFast, value });
                }
                since = None;
            }
            _ => {}
        }
    }
    events
}

/// Circles wider than the cap.
pub fn wide_circles(grid: &Grid, pendulum: &Pendulum, arm_length_m: f64) -> Vec<Event> {
    let cap_cm = ids::MOTION_CIRCLE_CAP.number() / MILLIMETERS_PER_CENTIMETER;
    let centimeters = |part: f64| part * arm_length_m * 100.0;
    let wide = pendulum.turns.iter().filter(|turn| turn.way != 0);
    wide.map(|turn| (turn, centimeters((turn.diameters[0] + turn.diameters[1]) / 2.0)))
        .filter(|(_, diameter)| *diameter > cap_cm)
        .map(|(turn, value)| Event { t_s: grid.time(turn.until), kind: Kind::WideCircle, value })
        .collect()
}

/// Gaps in the set.
pub fn gaps(all: &[Gap], from_s: f64, until_s: f64) -> Vec<Event> {
    let inside = all.iter().filter(|gap| gap.seconds() > GAP_TOLD_S && gap.touches(from_s, until_s));
    inside.map(|gap| Event { t_s: gap.from_s, kind: Kind::Gap, value: gap.seconds() }).collect()
}

/// Where the limb went behind the body and turned, so that the hand may have been behind the back.
///
/// # Method
/// Tilt against the movement's outward way by more than 20 degrees, and a turn about the limb by more than 45. A phone
/// does not see the plane behind the body; this is a hint.
pub fn behind_back(grid: &Grid, from: usize, signed_deg: &[f64], turns: &[DQuat], limb: DVec3) -> Vec<Event> {
    let about: Vec<f64> = crate::signal::turn(turns, turns.first().copied().unwrap_or_default(), limb);
    let still = slope(signed_deg, grid.step_s);
    let mut events = Vec::new();
    let mut armed = true;
    for (at, angle) in signed_deg.iter().enumerate() {
        if armed && *angle < -BEHIND_DEG && about[at].abs() > PALM_BACK_DEG && still[at].is_finite() {
            armed = false;
            events.push(Event { t_s: grid.time(from + at), kind: Kind::PossiblyBehindBack, value: *angle });
        } else if *angle > -BEHIND_DEG / 2.0 {
            armed = true;
        }
    }
    events
}
