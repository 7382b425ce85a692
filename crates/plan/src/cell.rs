//! One limit as a small ordered number, so that "the lowest wins" is one minimum.

use body::Key;
use quantity::{Degrees, Kilograms, Percent};

/// The value of one key on one run of days: not allowed, allowed up to a bound, or free.
///
/// # Units and shape
/// The order of the numbers is the order of limits: no < up to d < free. What d
/// counts follows from the key: tenths of a degree for a movement, ten grams for
/// a load of the whole arm, tenths of a percent for effort without movement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Cell(i16);

/// How far a key is allowed, in words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Allowed {
    /// Not at all.
    No,
    /// Up to a bound; a bound of zero degrees is still allowed.
    UpTo(Bound),
    /// Without a bound.
    Free,
}

/// What a limit counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Bound {
    /// Degrees of a movement.
    Angle(Degrees),
    /// Kilograms held or carried.
    Load(Kilograms),
    /// Percent of maximal effort.
    Effort(Percent),
}

impl Cell {
    /// Not allowed.
    pub const NO: Self = Self(i16::MIN);
    /// Allowed without a bound.
    pub const FREE: Self = Self(i16::MAX);

    /// Up to zero degrees, kilograms or percent, which is not the same as not allowed.
    pub const fn up_to_zero_degrees() -> Self {
        Self(0)
    }

    /// A bound; what is beyond the range of a cell counts as the end of the range.
    pub fn up_to(bound: Bound) -> Self {
        let steps = match bound {
            Bound::Angle(angle) => angle.steps(),
            Bound::Load(load) => load.steps(),
            Bound::Effort(effort) => effort.steps(),
        };
        let (least, most) = (i32::from(i16::MIN) + 1, i32::from(i16::MAX) - 1);
        Self(i16::try_from(steps.clamp(least, most)).unwrap_or(i16::MIN + 1))
    }

    /// Whether anything at all is allowed.
    pub fn is_open(self) -> bool {
        self != Self::NO
    }

    /// The value in words, for the key it belongs to.
    pub fn allowed(self, key: Key) -> Allowed {
        match self {
            Self::NO => Allowed::No,
            Self::FREE => Allowed::Free,
            Self(steps) => Allowed::UpTo(if key.is_load() {
                Bound::Load(Kilograms::from_steps(i32::from(steps)))
            } else if key.is_effort() {
                Bound::Effort(Percent::from_steps(i32::from(steps)))
            } else {
                Bound::Angle(Degrees::from_steps(i32::from(steps)))
            }),
        }
    }

    /// The bound in degrees, where there is one and it is an angle.
    pub fn angle(self, key: Key) -> Option<Degrees> {
        match self.allowed(key) {
            Allowed::UpTo(Bound::Angle(angle)) => Some(angle),
            _ => None,
        }
    }
}

impl From<Allowed> for Cell {
    fn from(allowed: Allowed) -> Self {
        match allowed {
            Allowed::No => Self::NO,
            Allowed::UpTo(bound) => Self::up_to(bound),
            Allowed::Free => Self::FREE,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use body::{Joint, Mode, Movement};

    #[test]
    fn the_order_of_cells_is_the_order_of_limits() {
        let angle = |degrees| Cell::up_to(Bound::Angle(Degrees::whole(degrees)));
        let ladder = [Cell::NO, angle(-180), angle(-10), angle(0), angle(20), angle(180), Cell::FREE];
        assert!(ladder.is_sorted_by(|a, b| a < b));
        assert!(angle(0).is_open(), "up to 0 is not `no`");
    }

    #[test]
    fn a_cell_gives_back_what_it_was_made_of() {
        let load = Key::any(Joint::WholeArm, Movement::HandLoad, Mode::Resisted);
        let bound = Bound::Load(Kilograms::from_steps(227));
        assert_eq!(Cell::up_to(bound).allowed(load), Allowed::UpTo(bound));
        let effort = Key::any(Joint::Shoulder, Movement::Abduction, Mode::Isometric);
        let bound = Bound::Effort(Percent::whole(30));
        assert_eq!(Cell::up_to(bound).allowed(effort), Allowed::UpTo(bound));
    }
}
