//! A family under one set of the surgeon's options.

use body::Key;
use plan::{Cell, Grid, LaneId};

use crate::file::ProtocolFile;
use crate::{Choices, Compiled, Family};

/// A compiled family, and what each protocol alone allows.
pub(super) struct Under<'f> {
    /// The option that differs from the defaults, in words; empty for the defaults.
    pub option: String,
    pub compiled: Compiled<'f>,
    /// For each protocol its values after modes cascade, lane after lane.
    allowed: Vec<Vec<Cell>>,
}

impl<'f> Under<'f> {
    /// The family under the defaults, and under every other option, one at a time.
    pub(super) fn all(family: &'f Family) -> Vec<Self> {
        let others = family.choices().flat_map(|choice| {
            choice.options.iter().skip(1).map(move |option| {
                let mut choices = Choices::of(family);
                choices.take(&choice.id, option);
                Self::new(family, &choices, format!(" where `{}` is \"{option}\"", choice.id))
            })
        });
        std::iter::once(Self::new(family, &Choices::of(family), String::new())).chain(others).collect()
    }

    fn new(family: &'f Family, choices: &Choices, option: String) -> Self {
        let compiled = Compiled::new(family, choices, &[]);
        let allowed = (0..compiled.bases.len()).map(|place| compiled.alone(place)).collect();
        Self { option, compiled, allowed }
    }

    pub(super) fn grid(&self) -> &Grid {
        &self.compiled.grid
    }

    /// The protocols with their places.
    pub(super) fn protocols(&self) -> impl Iterator<Item = (usize, &'f ProtocolFile)> + '_ {
        self.compiled.family.protocols.iter().enumerate()
    }

    /// What a protocol alone allows of a key in a column.
    pub(super) fn in_column(&self, protocol: usize, key: Key, column: usize) -> Cell {
        self.grid().governing(key).map_or(Cell::NO, |lane| self.of_lane(protocol, lane, column))
    }

    /// What a protocol alone allows of a key on a day.
    pub(super) fn on_day(&self, protocol: usize, key: Key, day: u16) -> Cell {
        self.in_column(protocol, key, self.grid().column(day))
    }

    /// What a protocol alone allows of a lane in a column.
    pub(super) fn of_lane(&self, protocol: usize, lane: LaneId, column: usize) -> Cell {
        self.allowed[protocol][usize::from(lane.0) * self.grid().columns() + column]
    }
}
