//! What a movement asks of an arm.

use body::Key;
use diagnostic::Span;
use quantity::{Degrees, Kilograms, Percent};

/// One thing an entry asks of the operated arm, or of the other one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Demand {
    /// What has to be allowed.
    pub key: Key,
    /// How much of it.
    pub amount: Amount,
    /// Where it was written.
    pub span: Span,
}

/// How much of a key an entry needs.
///
/// # Units and shape
/// Angles are humerus relative to thorax, counted as the key's movement is.
/// Among the demands of the other arm, "the limit" is the angle the operated
/// arm is taken to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Amount {
    /// The movement itself, at no particular angle: the key must be allowed at all.
    Movement,
    /// A fixed arc: the whole of it must be allowed.
    Angle {
        /// Where the movement starts.
        from: Degrees,
        /// The greatest angle.
        to: Degrees,
    },
    /// As far as the day allows, and never further than `most`.
    AngleToLimit {
        /// Where the movement starts.
        from: Degrees,
        /// The furthest it goes when everything is free.
        most: Degrees,
    },
    /// A fixed load.
    Load(Kilograms),
    /// As much as the day allows, and never more than `most`.
    LoadToLimit {
        /// The most when everything is free.
        most: Kilograms,
    },
    /// A share of the greatest effort.
    Effort(Percent),
}

impl Amount {
    /// The greatest angle this can ask for, if it asks for an angle.
    pub const fn greatest_angle(self) -> Option<Degrees> {
        match self {
            Self::Angle { to, .. } => Some(to),
            Self::AngleToLimit { most, .. } => Some(most),
            _ => None,
        }
    }

    /// The angle the movement starts from, if it asks for an angle.
    pub const fn start_angle(self) -> Option<Degrees> {
        match self {
            Self::Angle { from, .. } | Self::AngleToLimit { from, .. } => Some(from),
            _ => None,
        }
    }

    /// Whether the day's limit decides how far or how heavy.
    pub const fn follows_the_limit(self) -> bool {
        matches!(self, Self::AngleToLimit { .. } | Self::LoadToLimit { .. })
    }
}
