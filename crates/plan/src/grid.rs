//! The dense plan: a lane for every key, a column for every run of days.

use std::sync::Arc;

use body::Key;

use crate::{Cell, SlingPosition, Wear};

/// A key's row in a [`Grid`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LaneId(pub u8);

/// The rows and columns that plans of one compiled family share.
///
/// # Units and shape
/// `days` is sorted, starts at 0, and ends at the horizon; column `c` covers the
/// postoperative days `days[c] .. days[c + 1]`.
#[derive(Debug, PartialEq, Eq)]
pub struct Grid {
    /// The key of each lane.
    pub keys: Vec<Key>,
    /// Where each column starts, and at the end the horizon.
    pub days: Vec<u16>,
}

impl Grid {
    /// How many columns there are.
    pub fn columns(&self) -> usize {
        self.days.len().saturating_sub(1)
    }

    /// The column that `day` falls in; days beyond the horizon fall in the last.
    pub fn column(&self, day: u16) -> usize {
        self.days.partition_point(|&start| start <= day).saturating_sub(1).min(self.columns().saturating_sub(1))
    }

    /// The lane of a key.
    pub fn lane(&self, key: Key) -> Option<LaneId> {
        let at = self.keys.iter().position(|&lane| lane == key)?;
        u8::try_from(at).ok().map(LaneId)
    }

    /// The lane that governs a key: its own position where one is named, else any position.
    pub fn governing(&self, key: Key) -> Option<LaneId> {
        self.lane(key).or_else(|| self.lane(key.in_position(body::Position::Any)))
    }
}

/// A set of rule indices, at most 128.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct RuleSet(pub u128);

impl RuleSet {
    /// Adds a rule.
    pub fn insert(&mut self, rule: usize) {
        self.0 |= 1 << rule;
    }

    /// Whether a rule is in the set.
    pub const fn contains(self, rule: usize) -> bool {
        self.0 & (1 << rule) != 0
    }

    /// The rules of the set, in order; from bit to bit, because every value of a plan asks.
    pub fn iter(self) -> impl Iterator<Item = usize> {
        let mut bits = self.0;
        std::iter::from_fn(move || {
            let rule = bits.trailing_zeros() as usize;
            (bits != 0).then(|| {
                bits &= bits - 1;
                rule
            })
        })
    }
}

/// One composed plan on a [`Grid`].
#[derive(Debug, Clone)]
pub struct Plan {
    /// The rows and columns.
    pub grid: Arc<Grid>,
    /// The values, lane after lane.
    pub cells: Vec<Cell>,
    /// Sling wear for each column.
    pub wear: Vec<Wear>,
    /// How the sling holds the arm, for each column.
    pub sling_position: Vec<SlingPosition>,
    /// The gate day of each stage of the family; `None` where this plan has no such stage.
    pub gates: Vec<Option<u16>>,
    /// The protocol that was chosen, by its place in the family.
    pub protocol: u8,
    /// The protocols whose limits cap the plan as well, a bit for each.
    pub caps: u8,
    /// The rules that fired.
    pub fired: RuleSet,
}

impl Plan {
    /// The value of a lane in a column.
    pub fn cell(&self, lane: LaneId, column: usize) -> Cell {
        self.cells[usize::from(lane.0) * self.grid.columns() + column]
    }

    /// The values of a lane, one for each column.
    pub fn lane(&self, lane: LaneId) -> &[Cell] {
        let columns = self.grid.columns();
        &self.cells[usize::from(lane.0) * columns..][..columns]
    }

    /// Whether nothing in this plan is looser than in `other`, on the same grid.
    pub fn is_within(&self, other: &Self) -> bool {
        self.cells.iter().zip(&other.cells).all(|(own, others)| own <= others)
            && self.wear.iter().zip(&other.wear).all(|(own, others)| own >= others)
    }
}
