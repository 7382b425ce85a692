//! The signal that tells an exercise's repetitions.

use glam::{DMat3, DQuat, DVec3};

use crate::orientation::up;
use crate::principal::Principal;
use crate::smooth::{low_pass, quantile};

/// Movements of an arm in therapy end here (evidence notes, "Rep counter": 3 Hz).
pub const MOVEMENT_HZ: f64 = 3.0;

/// The axis that the phone turns about in a set, in its own axes.
///
/// # Method
/// First principal direction of the angular rate, low-passed at 3 Hz.
pub fn turning_axis(rate: &[DVec3], step_s: f64) -> Option<DVec3> {
    let slow = low_pass(rate, MOVEMENT_HZ, step_s);
    Some(Principal::of(slow)?.axes[0])
}

/// The angle between where up is and where it was in the pose: of a hanging limb its elevation, in whatever plane, and
/// whatever the limb turns about itself. Degrees, never negative.
pub fn cone(turns: &[DQuat], pose_up: DVec3) -> Vec<f64> {
    turns.iter().map(|turn| cone_of(up(*turn), pose_up)).collect()
}

/// The same of one moment.
pub fn cone_of(up: DVec3, pose_up: DVec3) -> f64 {
    pose_up.cross(up).length().atan2(pose_up.dot(up)).to_degrees()
}

/// The signed turn about a level axis since the pose, told by gravity alone. Degrees, from -180 to 180.
///
/// # Method
/// θ = atan2(n·(u₀×u⊥), u₀·u⊥) with u⊥ the part of up at right angles to the axis; negated, because up turns against
/// the phone (evidence notes, "Conventions").
pub fn plane(turns: &[DQuat], pose_up: DVec3, axis: DVec3) -> Vec<f64> {
    turns.iter().map(|turn| plane_of(up(*turn), pose_up, axis)).collect()
}

/// The same of one moment.
pub fn plane_of(up: DVec3, pose_up: DVec3, axis: DVec3) -> f64 {
    let flat = up - axis * axis.dot(up);
    let start = pose_up - axis * axis.dot(pose_up);
    -axis.dot(start.cross(flat)).atan2(start.dot(flat)).to_degrees()
}

/// The line along the limb in the phone's axes, from how it moves; starts from a guess and stays near it.
///
/// # Method
/// A limb that is raised about one axis of the room, and turns about itself as it likes, takes its own line along a great
/// circle; any other line of the phone leaves it. The circle's axis and the line are found in turns, each the best for
/// the other, the line held to the guess by a weight, since a limb that does not turn about itself leaves it free within
/// the circle (where it does no harm).
pub fn limb_line(turns: &[DQuat], guess: DVec3) -> DVec3 {
    let stride = (turns.len() / LOOKED_AT).max(1);
    let looked_at = || turns.iter().step_by(stride);
    let mut line = guess;
    for _ in 0..LINE_STEPS {
        let Some(circle) = Principal::of(looked_at().map(|turn| *turn * line)) else { return guess };
        let axis = circle.axes[2];
        let mut count = 0.0;
        let mut across = DMat3::ZERO;
        for turn in looked_at() {
            let seen = turn.inverse() * axis;
            across += DMat3::from_cols(seen * seen.x, seen * seen.y, seen * seen.z);
            count += 1.0;
        }
        let system = across * (1.0 / count) + DMat3::from_diagonal(DVec3::splat(LINE_WEIGHT));
        line = (system.inverse() * (guess * LINE_WEIGHT)).normalize_or(guess);
    }
    if line.angle_between(guess).to_degrees() > LINE_WITHIN_DEG { guess } else { line }
}

/// So many moments of a set tell the line.
const LOOKED_AT: usize = 2000;
const LINE_STEPS: usize = 12;
/// Weight of the guess against the whole movement (own choice).
const LINE_WEIGHT: f64 = 0.02;
/// A strap is within ten degrees of the limb (contract); with the rest, this (own choice).
const LINE_WITHIN_DEG: f64 = 20.0;

/// How far a limb that lay is raised, whatever it turns about itself; degrees, never negative.
///
/// # Method
/// The angle between the limb's line in the room now and where it lay. The heading of where it lay is followed through
/// the rests, so that a gyroscope's drift does not matter; how high it lay is told by gravity in the pose. A line that is
/// a little off matters by its square only.
pub fn raised(turns: &[DQuat], pose_up: DVec3, line: DVec3, rests: &[usize]) -> Vec<f64> {
    let lay = line.dot(pose_up).clamp(-1.0, 1.0);
    let mut last: f64 = 0.0;
    let headings: Vec<f64> = rests
        .iter()
        .map(|rest| {
            let along = turns[*rest] * line;
            let raw = along.y.atan2(along.x);
            last = raw + std::f64::consts::TAU * ((last - raw) / std::f64::consts::TAU).round();
            last
        })
        .collect();
    let mut next = 0;
    turns
        .iter()
        .enumerate()
        .map(|(at, turn)| {
            while next < rests.len() && rests[next] < at {
                next += 1;
            }
            let heading = match (next.checked_sub(1), headings.get(next)) {
                (None, Some(after)) => *after,
                (Some(before), None) => headings[before],
                (Some(before), Some(after)) => {
                    let share = (at - rests[before]) as f64 / (rests[next] - rests[before]).max(1) as f64;
                    headings[before] + (after - headings[before]) * share
                }
                (None, None) => 0.0,
            };
            let flat = (1.0 - lay * lay).sqrt();
            cone_of(*turn * line, DVec3::new(flat * heading.cos(), flat * heading.sin(), lay))
        })
        .collect()
}

/// The turn about an axis of the phone since a moment, by the gyroscope; degrees, without jumps.
///
/// # Method
/// The twist part of the turn since then; where it passes half a turn it goes on.
pub fn turn(turns: &[DQuat], since: DQuat, axis: DVec3) -> Vec<f64> {
    let mut last: f64 = 0.0;
    turns
        .iter()
        .map(|turn| {
            let passed = since.inverse() * *turn;
            let raw = 2.0 * axis.dot(DVec3::new(passed.x, passed.y, passed.z)).atan2(passed.w).to_degrees();
            last = raw + 360.0 * ((last - raw) / 360.0).round();
            last
        })
        .collect()
}

/// Turns the signal so that its greater side is positive: the first and main movement is outward or upward (contract).
pub fn outward_positive(signal: &mut [f64]) -> f64 {
    let [low, high] = [0.03, 0.97].map(|part| quantile(signal, part).unwrap_or(0.0));
    let sign = if high + low < 0.0 { -1.0 } else { 1.0 };
    signal.iter_mut().for_each(|value| *value *= sign);
    sign
}
