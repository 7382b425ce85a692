//! What differs between two plans on the same grid.

use body::Key;
use quantity::Degrees;

use crate::{Allowed, Bound, Cell, LaneId, Plan};

/// A run of days on which two plans give a key different values.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Change {
    /// The lane.
    pub lane: LaneId,
    /// Its key.
    pub key: Key,
    /// First day.
    pub from_day: u16,
    /// First day after.
    pub until_day: u16,
    /// The value of the first plan.
    pub a: Cell,
    /// The value of the second plan.
    pub b: Cell,
}

impl Change {
    /// By how many degrees, where the key is counted in degrees: `no` counts as 0, `free` as 180.
    pub fn degrees(&self) -> Option<Degrees> {
        if self.key.is_load() || self.key.is_effort() {
            return None;
        }
        Some(Degrees::from_steps((count(self.a, self.key) - count(self.b, self.key)).abs()))
    }

    /// Days × degrees; a key without degrees counts its days only.
    pub fn weight(&self) -> u64 {
        let days = u64::from(self.until_day - self.from_day);
        days * self.degrees().map_or(1, |degrees| u64::from(degrees.steps().unsigned_abs()).div_ceil(10).max(1)) // not medical: steps of a degree
    }
}

fn count(cell: Cell, key: Key) -> i32 {
    match cell.allowed(key) {
        Allowed::No => 0,
        Allowed::Free => Degrees::whole(180).steps(), // not medical: half a turn, only to order questions
        Allowed::UpTo(Bound::Angle(angle)) => angle.steps(),
        Allowed::UpTo(_) => 0,
    }
}

impl Plan {
    /// What differs from another plan on the same grid, lane by lane, in runs of days.
    pub fn changes(&self, other: &Self) -> Vec<Change> {
        let mut changes: Vec<Change> = Vec::new();
        let columns = self.grid.columns();
        for (lane, &key) in (0_u8..).map(LaneId).zip(&self.grid.keys) {
            let (own, others) = (self.lane(lane), other.lane(lane));
            if own == others {
                continue;
            }
            for column in (0..columns).filter(|&column| own[column] != others[column]) {
                let (from_day, until_day) = (self.grid.days[column], self.grid.days[column + 1]);
                let change = Change { lane, key, from_day, until_day, a: own[column], b: others[column] };
                match changes.last_mut() {
                    Some(last)
                        if last.lane == lane
                            && last.until_day == from_day
                            && (last.a, last.b) == (change.a, change.b) =>
                    {
                        last.until_day = until_day;
                    }
                    _ => changes.push(change),
                }
            }
        }
        changes
    }
}
