//! Whether what is asked of an arm fits what is allowed, worked out here once more.

use evidence::ids;
use exercise::{Amount, Demand};
use plan::words::{of_cell, of_key};
use plan::{Allowed, Bound, Cell, ExerciseLine};
use quantity::Degrees;

/// No margin: what a therapist does, activities and tests.
pub(super) const NO_MARGIN: Degrees = Degrees::whole(0);

/// What a demand asks that a limit does not allow; nothing where it fits.
///
/// # Source
/// `least-useful-arc` and `home-margin`: own choice.
pub(super) fn asks_too_much(demand: &Demand, limit: Cell, margin: Degrees) -> Option<String> {
    let (key, allowed) = (demand.key, limit.allowed(demand.key));
    let is = || format!("{} is {}", of_key(key), of_cell(limit, key));
    match (demand.amount, allowed) {
        (_, Allowed::No) => Some(is()),
        (Amount::Movement, _) | (_, Allowed::Free) => None,
        (Amount::Angle { to, .. }, Allowed::UpTo(Bound::Angle(most))) => {
            let beyond = to.steps() + margin.steps() - most.steps();
            (beyond > 0).then(|| {
                let margin = if margin > NO_MARGIN { format!(" and stays {margin} below it") } else { String::new() };
                format!(
                    "it goes to {to} degrees where {}{margin}: {} degrees too far",
                    is(),
                    Degrees::from_steps(beyond)
                )
            })
        }
        (Amount::AngleToLimit { from, most }, Allowed::UpTo(Bound::Angle(limit))) => {
            let end = (limit.steps() - margin.steps()).min(most.steps());
            let short = end - from.steps() < ids::LEAST_USEFUL_ARC.degrees().steps();
            short.then(|| {
                let least = ids::LEAST_USEFUL_ARC.degrees();
                format!("it starts at {from} degrees where {}: under {least} degrees are left of it", is())
            })
        }
        (Amount::Load(load), Allowed::UpTo(Bound::Load(most))) => {
            (load > most).then(|| format!("it takes {load} kg where {}", is()))
        }
        (Amount::LoadToLimit { .. }, Allowed::UpTo(Bound::Load(_))) => None,
        (Amount::Effort(effort), Allowed::UpTo(Bound::Effort(most))) => {
            (effort > most).then(|| format!("it takes {effort} percent effort where {}", is()))
        }
        (_, Allowed::UpTo(_)) => Some(format!("what it asks of {} can't be compared with its limit", of_key(key))),
    }
}

/// What is wrong with the angle that a line prints for its first demand.
pub(super) fn target_is_wrong(line: &ExerciseLine, demand: &Demand, limit: Cell, margin: Degrees) -> Option<String> {
    let is = of_cell(limit, demand.key);
    let (from, most) = match demand.amount {
        Amount::AngleToLimit { from, most } => (from, most),
        _ if line.target.is_some() || line.as_far_as_comfortable => {
            return Some("an angle is printed for what has none to choose".into());
        }
        _ => return None,
    };
    let bound = match limit.allowed(demand.key) {
        Allowed::Free => most,
        Allowed::UpTo(Bound::Angle(bound)) => Degrees::from_steps(bound.steps() - margin.steps()).min(most),
        _ => return None,
    };
    let Some(target) = line.target else {
        let bounded = limit != Cell::FREE;
        return bounded.then(|| format!("no angle is printed where {} is {is}", of_key(demand.key)));
    };
    let least = ids::LEAST_USEFUL_ARC.degrees();
    if target > bound {
        Some(format!(
            "its target is {target} degrees where {} is {is}, and {bound} is the most for it: {} degrees too far",
            of_key(demand.key),
            Degrees::from_steps(target.steps() - bound.steps())
        ))
    } else if target.steps() - from.steps() < least.steps() {
        Some(format!("its target is {target} degrees, under {least} degrees beyond its start"))
    } else if line.as_far_as_comfortable {
        Some("it goes as far as is comfortable and to an angle at once".into())
    } else {
        None
    }
}

/// What is wrong with the load that a line prints.
pub(super) fn load_is_wrong(
    line: &ExerciseLine,
    demands: &[Demand],
    limit: impl Fn(&Demand) -> Cell,
) -> Option<String> {
    let mut printed_for_nothing = line.load.is_some();
    for demand in demands.iter().filter(|demand| demand.key.is_load()) {
        let most = match demand.amount {
            Amount::LoadToLimit { most } => most,
            Amount::Load(load) => load,
            _ => continue,
        };
        printed_for_nothing = false;
        let limit = limit(demand);
        let bound = match limit.allowed(demand.key) {
            Allowed::UpTo(Bound::Load(bound)) => bound.min(most),
            Allowed::Free => most,
            _ => continue,
        };
        match line.load {
            Some(load) if load > bound => {
                return Some(format!(
                    "it takes {load} kg where {} is {}, and {bound} kg is the most for it",
                    of_key(demand.key),
                    of_cell(limit, demand.key)
                ));
            }
            None if matches!(demand.amount, Amount::LoadToLimit { .. }) => {
                return Some(format!(
                    "no load is printed where {} is {}",
                    of_key(demand.key),
                    of_cell(limit, demand.key)
                ));
            }
            _ => {}
        }
    }
    printed_for_nothing.then(|| "a load is printed for what takes none".into())
}
