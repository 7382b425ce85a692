//! Safe arcs as facts: what of them binds a plan.

use body::Movement;
use quantity::{Degrees, PostoperativeDay};

/// A record may name so many safe arcs; more is refused when it is read.
pub const MAX_SAFE_ARCS: usize = 8; // not medical: room in a small struct

/// One arc that the surgeon saw was safe on the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct SafeArc {
    /// The movement it caps, in every position and mode.
    pub movement: Movement,
    /// How far; may be below zero for rotation.
    pub up_to: Degrees,
    /// The first day it no longer binds; `None`: until active motion opens.
    pub until: Option<PostoperativeDay>,
    /// Its place in the record, for the path `operation.safe_arc[index]`.
    pub index: u8,
}

/// The safe arcs of a record, at most [`MAX_SAFE_ARCS`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct SafeArcs([Option<SafeArc>; MAX_SAFE_ARCS]);

impl SafeArcs {
    /// The arcs, in the order of the record.
    pub fn iter(&self) -> impl Iterator<Item = SafeArc> + '_ {
        self.0.iter().flatten().copied()
    }

    /// Whether the record names none.
    pub fn is_empty(&self) -> bool {
        self.iter().next().is_none()
    }
}

impl FromIterator<SafeArc> for SafeArcs {
    /// Takes the first [`MAX_SAFE_ARCS`].
    fn from_iter<T: IntoIterator<Item = SafeArc>>(arcs: T) -> Self {
        let mut kept = Self::default();
        for (place, arc) in kept.0.iter_mut().zip(arcs) {
            *place = Some(arc);
        }
        kept
    }
}
