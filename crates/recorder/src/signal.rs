//! From where a sensor is to what a perfect one would feel.

use glam::{DQuat, DVec3};

use crate::arm::Place;
use crate::person::gravity;

/// Seconds between two steps of everything that is computed before a phone samples it.
pub const STEP: f64 = 0.001;

/// The specific force in the sensor's axes: acceleration less gravity, so +9.81 upward at rest.
///
/// # Method
/// Second differences of the places; the first and last step take their neighbor's.
pub fn specific_force(places: &[Place]) -> Vec<DVec3> {
    inner(places, |before, now, after| {
        let acceleration = (before.at - 2.0 * now.at + after.at) / (STEP * STEP);
        now.turn.inverse() * (acceleration + DVec3::Z * gravity())
    })
}

/// The angular rate in the sensor's axes, radians a second.
pub fn angular_rate(places: &[Place]) -> Vec<DVec3> {
    inner(places, |before, _, after| short(before.turn.inverse() * after.turn) / (2.0 * STEP))
}

/// The direction up in the sensor's axes.
pub fn up(place: &Place) -> DVec3 {
    place.turn.inverse() * DVec3::Z
}

fn inner(places: &[Place], of: impl Fn(&Place, &Place, &Place) -> DVec3) -> Vec<DVec3> {
    let mut values: Vec<DVec3> = places.windows(3).map(|three| of(&three[0], &three[1], &three[2])).collect();
    if let (Some(first), Some(last)) = (values.first().copied(), values.last().copied()) {
        values.insert(0, first);
        values.push(last);
    }
    values
}

/// A turn by its axis times its angle, the short way.
fn short(turn: DQuat) -> DVec3 {
    let turn = if turn.w < 0.0 { -turn } else { turn };
    turn.to_scaled_axis()
}
