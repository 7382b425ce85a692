//! Whether a demand fits what is allowed.

use body::Key;
use exercise::{Amount, Demand, Posture};
use plan::{Allowed, Bound, Cell};
use quantity::{Degrees, Kilograms};

/// What a demand comes to under the limits of a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Fit {
    /// It fits; how far, where the limit decides that.
    Yes {
        /// The angle to go to.
        target: Option<Degrees>,
        /// The load to take.
        load: Option<Kilograms>,
    },
    /// The key is not allowed.
    Closed,
    /// The key is allowed, but not as far or as heavy as this needs.
    TooFar,
    /// So little arc is left that the exercise is of no use.
    TooLittleArc,
}

/// How far below the limit something has to stay.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Margin(pub Degrees);

impl Margin {
    /// None: activities, tests, and what a therapist does.
    pub(crate) const NONE: Self = Self(Degrees::whole(0));
}

/// Whether one demand fits a limit.
///
/// # Source
/// Least useful arc: `least-useful-arc`, own choice.
pub(crate) fn fit(demand: &Demand, cell: Cell, margin: Margin) -> Fit {
    let yes = |target, load| Fit::Yes { target, load };
    let allowed = cell.allowed(demand.key);
    if allowed == Allowed::No {
        return Fit::Closed;
    }
    match (demand.amount, allowed) {
        (Amount::Movement, _) => yes(None, None),
        (Amount::Angle { .. }, Allowed::Free) => yes(None, None),
        (Amount::Angle { to, .. }, Allowed::UpTo(Bound::Angle(limit))) => {
            if to.steps() <= below(limit, margin).steps() { yes(None, None) } else { Fit::TooFar }
        }
        // Nothing bounds it: as far as is comfortable, and no number to chase.
        (Amount::AngleToLimit { .. }, Allowed::Free) => yes(None, None),
        (Amount::AngleToLimit { from, most }, Allowed::UpTo(Bound::Angle(limit))) => {
            let target = below(limit, margin).min(most);
            let arc = target.steps() - from.steps();
            if arc < evidence::ids::LEAST_USEFUL_ARC.degrees().steps() {
                Fit::TooLittleArc
            } else {
                yes(Some(target), None)
            }
        }
        (Amount::Load(_), Allowed::Free) => yes(None, None),
        (Amount::Load(load), Allowed::UpTo(Bound::Load(limit))) => {
            if load <= limit {
                yes(None, Some(load))
            } else {
                Fit::TooFar
            }
        }
        (Amount::LoadToLimit { most }, allowed) => match allowed {
            Allowed::UpTo(Bound::Load(limit)) => yes(None, Some(limit.min(most))),
            Allowed::Free => yes(None, Some(most)),
            _ => Fit::TooFar,
        },
        (Amount::Effort(_), Allowed::Free) => yes(None, None),
        (Amount::Effort(effort), Allowed::UpTo(Bound::Effort(limit))) => {
            if effort <= limit {
                yes(None, None)
            } else {
                Fit::TooFar
            }
        }
        // A bound of another kind cannot be compared: the safe answer is no.
        _ => Fit::TooFar,
    }
}

fn below(limit: Degrees, margin: Margin) -> Degrees {
    Degrees::from_steps(limit.steps() - margin.0.steps())
}

/// Whether a posture is lying on the back.
pub(crate) fn lies_on_the_back(posture: Posture) -> bool {
    posture == Posture::LyingOnTheBack
}

/// The first demand that does not fit, and why.
pub(crate) fn first_misfit(demands: &[Demand], margin: Margin, value: impl Fn(Key) -> Cell) -> Option<(&Demand, Fit)> {
    demands.iter().enumerate().find_map(|(place, demand)| {
        // Only the first demand is a target; the others are what the pose needs.
        let margin = if place == 0 { margin } else { Margin::NONE };
        match fit(demand, value(demand.key), margin) {
            Fit::Yes { .. } => None,
            misfit => Some((demand, misfit)),
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use body::{Joint, Mode, Movement};
    use diagnostic::{FileId, Span};

    fn demand(amount: Amount) -> Demand {
        let key = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::Passive);
        Demand { key, amount, span: Span { file: FileId(0), start: 0, end: 0 } }
    }

    fn limit(degrees: i32) -> Cell {
        Cell::up_to(Bound::Angle(Degrees::whole(degrees)))
    }

    #[test]
    fn a_home_target_stays_the_margin_below_and_needs_an_arc() {
        let home = Margin(Degrees::whole(5));
        let to_limit = demand(Amount::AngleToLimit { from: Degrees::whole(0), most: Degrees::whole(90) });
        let target = |degrees| Fit::Yes { target: Some(Degrees::whole(degrees)), load: None };
        assert_eq!(fit(&to_limit, limit(20), home), target(15));
        assert_eq!(fit(&to_limit, limit(19), home), Fit::TooLittleArc);
        assert_eq!(fit(&to_limit, limit(0), home), Fit::TooLittleArc);
        assert_eq!(fit(&to_limit, Cell::FREE, home), Fit::Yes { target: None, load: None });
        assert_eq!(fit(&to_limit, Cell::NO, home), Fit::Closed);
    }

    #[test]
    fn a_fixed_arc_needs_the_whole_of_it() {
        let fixed = demand(Amount::Angle { from: Degrees::whole(0), to: Degrees::whole(20) });
        assert_eq!(fit(&fixed, limit(20), Margin::NONE), Fit::Yes { target: None, load: None });
        assert_eq!(fit(&fixed, limit(19), Margin::NONE), Fit::TooFar);
        assert_eq!(fit(&fixed, limit(-10), Margin::NONE), Fit::TooFar);
    }
}
