//! How far the movements of an exercise go on a day.

use body::Key;
use exercise::{Amount, Demand, Entry};
use plan::{Allowed, Bound, LimitRow};
use quantity::Degrees;

/// How far a demand of an exercise goes on a day: what loads are weighed and pictures are drawn at.
///
/// # Units and shape
/// `target` is that of the prescription's line, for the exercise's own first demand; every other demand goes as far as the
/// day's limits leave it, and never beyond what the exercise asks.
pub fn reach(entry: &Entry, demand: &Demand, target: Option<Degrees>, limits: &[LimitRow]) -> Degrees {
    let is_target = entry.target().is_some_and(|target| target.key == demand.key);
    if let (true, Some(target)) = (is_target, target) {
        return target;
    }
    let Amount::AngleToLimit { from, most } = demand.amount else {
        return demand.amount.greatest_angle().unwrap_or_default();
    };
    match allowed(demand.key, limits) {
        Allowed::Free => most,
        Allowed::UpTo(Bound::Angle(limit)) => limit.min(most),
        // An exercise whose demand is shut would not have been given.
        Allowed::UpTo(_) | Allowed::No => from,
    }
}

/// What a day's limits say of a movement: in its own position, else in any.
pub fn allowed(key: Key, limits: &[LimitRow]) -> Allowed {
    let exact = limits.iter().find(|row| row.key == key);
    let any = || limits.iter().find(|row| row.key == key.in_position(body::Position::Any));
    exact.or_else(any).map_or(Allowed::No, |row| row.allowed)
}
