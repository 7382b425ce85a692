//! The most the files allow of every key on every day, laid out once.

use std::collections::HashMap;

use body::{ALL_KEYS, Joint, Key, Mode, Movement, Position};
use plan::{Cell, SlingPosition, Wear};

use crate::Family;
use crate::checker::rulebook::{InForce, Lines};

/// What the rules in force say of every key, the sling included.
#[derive(Debug)]
pub(super) struct Sheet<'c> {
    /// Every key in any position, and every key in a position that a file or a row names.
    pub keys: Vec<Key>,
    places: HashMap<Key, usize>,
    lines: Vec<Lines<'c>>,
    days: usize,
    cells: Vec<Cell>,
    wear: Vec<Wear>,
    position: Vec<SlingPosition>,
}

impl<'c> Sheet<'c> {
    /// Asks the rules in force about every key, each time they may change.
    pub(super) fn new(
        in_force: &InForce<'c>,
        family: &Family,
        written: impl Iterator<Item = Key>,
        horizon: u16,
    ) -> Self {
        let of_protocols = family.protocols.iter().flat_map(|protocol| &protocol.limits);
        let of_rules = family.rules().flat_map(|(_, rule)| &rule.limits);
        let named = of_protocols.chain(of_rules).flat_map(|limit| limit.keys.iter().copied());
        let mut positions: Vec<Key> = named.chain(written).filter(|key| key.position != Position::Any).collect();
        positions.sort_unstable();
        positions.dedup();
        let keys: Vec<Key> = ALL_KEYS.iter().copied().chain(positions).collect();
        let lines: Vec<Lines<'c>> = keys.iter().map(|key| in_force.lines(*key)).collect();
        let days = usize::from(horizon.max(1));
        let mut cells = Vec::with_capacity(keys.len() * days);
        for lines in &lines {
            cells.extend(by_day(changes(lines), days, |day| lines.most(day)));
        }
        let outward = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::Passive);
        let places: HashMap<Key, usize> = keys.iter().copied().zip(0..).collect();
        let mut changes_of_sling = places.get(&outward).map_or(Vec::new(), |place| changes(&lines[*place]));
        let of_protocols = in_force.protocols.iter().flat_map(|(_, protocol)| &protocol.slings);
        let steps = of_protocols.chain(in_force.rules.iter().flat_map(|rule| &rule.slings));
        changes_of_sling.extend(steps.flat_map(|step| [Some(step.from), step.until]).flatten());
        let wear = by_day(changes_of_sling.clone(), days, |day| in_force.wear(day)).collect();
        let position = by_day(changes_of_sling, days, |day| in_force.sling_position(day)).collect();
        Self { keys, places, lines, days, cells, wear, position }
    }

    /// The place of a key; a position that nothing names is judged as any position.
    pub(super) fn place(&self, key: Key) -> Option<usize> {
        self.places.get(&key).or_else(|| self.places.get(&key.in_position(Position::Any))).copied()
    }

    /// The most that is allowed on a day of the rules; after their last day, what is allowed on it.
    pub(super) fn most(&self, place: usize, day: u16) -> Cell {
        self.cells[place * self.days + usize::from(day).min(self.days - 1)]
    }

    /// Everything that is said of a key.
    pub(super) fn lines(&self, place: usize) -> &Lines<'c> {
        &self.lines[place]
    }

    /// How much the sling is worn at least on a day of the rules.
    pub(super) fn wear(&self, day: u16) -> Wear {
        self.wear[usize::from(day).min(self.days - 1)]
    }

    /// How the sling holds the arm at least on a day of the rules.
    pub(super) fn position(&self, day: u16) -> SlingPosition {
        self.position[usize::from(day).min(self.days - 1)]
    }
}

/// The days on which any line of a key starts or ends.
fn changes(lines: &Lines<'_>) -> Vec<u16> {
    lines.lines.iter().flat_map(|line| [Some(line.from), line.until]).flatten().collect()
}

/// A value for each day, asked for on each day that it may change.
fn by_day<T: Copy>(mut changes: Vec<u16>, days: usize, value: impl Fn(u16) -> T) -> impl Iterator<Item = T> {
    changes.push(0);
    changes.sort_unstable();
    changes.dedup();
    changes.retain(|day| usize::from(*day) < days);
    let ends: Vec<usize> = changes.iter().skip(1).map(|day| usize::from(*day)).chain([days]).collect();
    let runs: Vec<(T, usize)> =
        changes.iter().zip(ends).map(|(day, end)| (value(*day), end - usize::from(*day))).collect();
    runs.into_iter().flat_map(|(value, count)| std::iter::repeat_n(value, count))
}
