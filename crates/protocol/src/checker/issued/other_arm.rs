//! The other arm: what its own plan allows, and whether it may be leaned on at all.

use std::collections::HashMap;

use body::{Key, Movement};
use evidence::ids;
use exercise::{Amount, Demand, Entry, OtherArm};
use plan::words::{of_cell, of_key};
use plan::{Allowed, Bound, Cell, ExerciseLine};

use super::exercises::taken_to;
use super::fitting::{NO_MARGIN, asks_too_much};
use super::{Basis, Judge};
use crate::checker::rulebook::{Lines, Rulebook};

/// The rules of the other shoulder's plan, where it has one.
pub(super) struct OtherPlan<'c> {
    /// For each key that exercises ask of the other arm, what its rules say.
    lines: HashMap<Key, Lines<'c>>,
    /// Its day on this plan's day 0, and the last day of its plan.
    days: Option<(i32, u16)>,
}

impl<'c> OtherPlan<'c> {
    /// Asks the rules in force for the other shoulder about what exercises may ask of it.
    pub(super) fn new(judge: &Judge<'c>) -> Self {
        let Some(other) = judge.issued.other else { return Self { lines: HashMap::new(), days: None } };
        let Basis { family, choices, facts, requested } = other.basis;
        let in_force = Rulebook::new(family, choices).in_force(facts, requested);
        let horizon = family.protocols.iter().map(|protocol| protocol.horizon.count()).max().unwrap_or(0);
        let asked = judge.issued.catalogue.entries().iter().flat_map(|entry| &entry.other_demands);
        let lines = asked.map(|demand| (demand.key, in_force.lines(demand.key))).collect();
        Self { lines, days: Some((other.days_ahead, horizon.saturating_sub(1))) }
    }

    /// The day of the other shoulder's plan; `None` before its operation, or where it has no plan.
    fn day(&self, day: u16) -> Option<u16> {
        let (ahead, last) = self.days?;
        u16::try_from(i32::from(day) + ahead).ok().map(|day| day.min(last))
    }

    /// "28 days ahead".
    fn ahead(&self) -> String {
        let ahead = self.days.map_or(0, |(ahead, _)| ahead);
        format!("{} days {}", ahead.unsigned_abs(), if ahead < 0 { "behind" } else { "ahead" })
    }

    /// Why an exercise must not ask the other arm on a day.
    ///
    /// # Source
    /// The other arm is not known to be sound: own choice (`weight-through-arm-lean` for a light lean).
    pub(super) fn stands_in_the_way(
        &self,
        judge: &Judge<'_>,
        entry: &Entry,
        line: &ExerciseLine,
        day: u16,
    ) -> Option<String> {
        if entry.other_arm == OtherArm::None {
            return None;
        }
        let facts = judge.issued.basis.facts;
        if let Some(their_day) = self.day(day) {
            let most = |key: Key| self.lines.get(&key).map_or(Cell::NO, |lines| lines.most(their_day));
            for demand in &entry.other_demands {
                if let Some(message) = asks_of_other(demand, entry, line, most(demand.key)) {
                    return Some(format!("it asks of the other arm, whose own plan is {}: {message}", self.ahead()));
                }
            }
            if facts.other_arm_operated() {
                return None;
            }
        }
        let (sound, operated) = (facts.other_arm_helps(), facts.other_arm_operated());
        let leans = match entry.other_arm {
            OtherArm::None => false,
            OtherArm::Steadies => operated || (!sound && leans_hard(entry)),
            OtherArm::Helps | OtherArm::Drives => !sound,
        };
        leans.then(|| "it needs the other arm, which is not known to be sound".into())
    }
}

/// What is asked of the other arm beyond its limit; "to the limit" is the angle the operated arm is taken to.
fn asks_of_other(demand: &Demand, entry: &Entry, line: &ExerciseLine, limit: Cell) -> Option<String> {
    let Amount::AngleToLimit { most, .. } = demand.amount else {
        return asks_too_much(demand, limit, NO_MARGIN);
    };
    let angle = taken_to(entry, line, most);
    match limit.allowed(demand.key) {
        Allowed::Free => None,
        Allowed::UpTo(Bound::Angle(bound)) if angle <= bound => None,
        _ => Some(format!(
            "it would go to {angle} degrees where {} is {}",
            of_key(demand.key),
            of_cell(limit, demand.key)
        )),
    }
}

/// Whether more than a light lean goes through the other arm.
fn leans_hard(entry: &Entry) -> bool {
    let lean = ids::WEIGHT_THROUGH_ARM_LEAN.kilograms();
    entry.other_demands.iter().any(|demand| {
        let light = matches!(demand.amount, Amount::Load(load) if load <= lean);
        demand.key.movement == Movement::WeightThroughTheArm && !light
    })
}
