//! Whether what an exercise asks for is allowed.

use evidence::ids;
use exercise::{Amount, Demand, Entry, Posture, Supervision};
use plan::{Allowed, Bound, Cell};
use quantity::Degrees;

use crate::file::PostureGate;

/// Whether one demand is met by a limit, staying a margin below it.
///
/// # Source
/// `least-useful-arc`: own choice.
pub(super) fn is_met(demand: &Demand, cell: Cell, margin: Degrees) -> bool {
    let below = |limit: Degrees| limit.steps() - margin.steps();
    match (demand.amount, cell.allowed(demand.key)) {
        (_, Allowed::No) => false,
        (Amount::Movement | Amount::LoadToLimit { .. }, _) | (_, Allowed::Free) => true,
        (Amount::Angle { to, .. }, Allowed::UpTo(Bound::Angle(limit))) => to.steps() <= below(limit),
        (Amount::AngleToLimit { from, most }, Allowed::UpTo(Bound::Angle(limit))) => {
            below(limit).min(most.steps()) - from.steps() >= ids::LEAST_USEFUL_ARC.degrees().steps()
        }
        (Amount::Load(load), Allowed::UpTo(Bound::Load(limit))) => load <= limit,
        (Amount::Effort(effort), Allowed::UpTo(Bound::Effort(limit))) => effort <= limit,
        // A bound of another kind cannot be compared: the safe answer is no.
        _ => false,
    }
}

/// How far below the limit a demand of an exercise stays: the target of what nobody supervises.
///
/// # Source
/// `home-margin`: own choice.
pub(super) fn margin(entry: &Entry, place: usize) -> Degrees {
    if place == 0 && entry.supervision != Supervision::Therapist {
        ids::HOME_MARGIN.degrees()
    } else {
        Degrees::whole(0)
    }
}

/// Whether a gate of posture stands against an exercise on a day.
pub(super) fn is_barred(entry: &Entry, gate: &PostureGate, day: u16) -> bool {
    day < gate.until.count()
        && entry.posture != Posture::LyingOnTheBack
        && entry.demands.iter().any(|demand| gate.modes.contains(&demand.key.mode))
}

#[cfg(test)]
mod tests {
    use super::*;
    use body::{Joint, Key, Mode, Movement};
    use diagnostic::{FileId, Span};
    use quantity::{Kilograms, Percent};

    fn met(amount: Amount, key: Key, cell: Cell, margin: i32) -> bool {
        let demand = Demand { key, amount, span: Span { file: FileId(0), start: 0, end: 0 } };
        is_met(&demand, cell, Degrees::whole(margin))
    }

    fn up_to(degrees: i32) -> Cell {
        Cell::up_to(Bound::Angle(Degrees::whole(degrees)))
    }

    /// Margin 5 and arc 15 degrees: own choices, `home-margin` and `least-useful-arc`.
    #[test]
    fn a_target_at_home_stays_below_the_limit_and_keeps_an_arc() {
        let key = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::Passive);
        let to_limit = Amount::AngleToLimit { from: Degrees::whole(0), most: Degrees::whole(90) };
        assert!(met(to_limit, key, up_to(20), 5));
        assert!(!met(to_limit, key, up_to(19), 5));
        assert!(met(to_limit, key, up_to(15), 0));
        assert!(met(to_limit, key, Cell::FREE, 5));
        assert!(!met(to_limit, key, Cell::NO, 0));
        let short = Amount::AngleToLimit { from: Degrees::whole(0), most: Degrees::whole(10) };
        assert!(!met(short, key, up_to(90), 0), "the joint itself leaves no useful arc");
        let fixed = Amount::Angle { from: Degrees::whole(0), to: Degrees::whole(20) };
        assert!(met(fixed, key, up_to(25), 5));
        assert!(!met(fixed, key, up_to(24), 5));
    }

    #[test]
    fn loads_and_efforts_are_compared_with_their_kind() {
        let load = Key::any(Joint::WholeArm, Movement::HandLoad, Mode::Resisted);
        let two = Cell::up_to(Bound::Load(Kilograms::whole(2)));
        assert!(met(Amount::Load(Kilograms::whole(2)), load, two, 0));
        assert!(!met(Amount::Load(Kilograms::whole(3)), load, two, 0));
        let effort = Key::any(Joint::Shoulder, Movement::Abduction, Mode::Isometric);
        let thirty = Cell::up_to(Bound::Effort(Percent::whole(30)));
        assert!(met(Amount::Effort(Percent::whole(30)), effort, thirty, 0));
        assert!(!met(Amount::Effort(Percent::whole(31)), effort, thirty, 0));
        assert!(!met(Amount::Load(Kilograms::whole(1)), effort, thirty, 0), "another kind never fits");
    }
}
