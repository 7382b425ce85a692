//! The composed plan on the calendar: holds, go-backs and loosenings applied.

use body::{Joint, Key};
use operative::Facts;
use plan::{Cell, LaneId, Plan, SlingPosition, Wear};
use protocol::{Choices, Compiled};

use crate::moves::Moves;

/// A loosening with its lanes looked up.
#[derive(Debug, Clone)]
pub(crate) struct Loosened {
    pub key: Key,
    pub written: diagnostic::Span,
    pub lanes: Vec<LaneId>,
    pub from: u16,
    pub until: u16,
    pub cell: Cell,
    pub reason: String,
}

/// A plan whose days are days of this patient.
#[derive(Debug)]
pub(crate) struct Dated<'f> {
    pub compiled: &'f Compiled<'f>,
    pub choices: &'f Choices,
    pub facts: Facts,
    pub plan: Plan,
    pub moves: Moves,
    pub loosened: Vec<Loosened>,
}

impl Dated<'_> {
    /// The last day of the dated plan.
    pub(crate) fn horizon(&self) -> u16 {
        self.plan.grid.days.last().copied().unwrap_or(0)
    }

    /// The column of the composed plan that a joint lives on a day.
    pub(crate) fn column(&self, joint: Joint, day: u16) -> usize {
        self.plan.grid.column(self.moves.lives(joint, day))
    }

    /// The value of a lane on a day, before loosenings.
    ///
    /// # Method
    /// The lower of the day the hold lives and the day itself, so that a hold
    /// never raises a limit, whatever the plan does later.
    pub(crate) fn unloosened(&self, lane: LaneId, day: u16) -> Cell {
        let joint = self.plan.grid.keys[usize::from(lane.0)].joint;
        let lives = self.plan.cell(lane, self.column(joint, day));
        lives.min(self.plan.cell(lane, self.plan.grid.column(day)))
    }

    /// The loosening that is in force for a lane on a day, where it does loosen.
    pub(crate) fn loosening(&self, lane: LaneId, day: u16) -> Option<&Loosened> {
        let before = self.unloosened(lane, day);
        self.loosened
            .iter()
            .filter(|l| l.lanes.contains(&lane) && (l.from..l.until).contains(&day) && l.cell > before)
            .max_by_key(|l| l.cell)
    }

    /// The value of a lane on a day.
    pub(crate) fn cell(&self, lane: LaneId, day: u16) -> Cell {
        self.loosening(lane, day).map_or_else(|| self.unloosened(lane, day), |loosened| loosened.cell)
    }

    /// The value that governs a key on a day.
    pub(crate) fn value(&self, key: Key, day: u16) -> Cell {
        self.plan.grid.governing(key).map_or(Cell::NO, |lane| self.cell(lane, day))
    }

    /// The lowest value a lane has had from one day to another, both included.
    pub(crate) fn lowest(&self, lane: LaneId, from: u16, to: u16) -> Cell {
        self.change_days()
            .into_iter()
            .filter(|&day| from < day && day <= to)
            .chain([from, to])
            .map(|day| self.cell(lane, day))
            .min()
            .unwrap_or(Cell::NO)
    }

    /// How much the sling is worn on a day.
    pub(crate) fn wear(&self, day: u16) -> Wear {
        let lives = self.plan.wear[self.column(Joint::WholeArm, day)];
        lives.max(self.plan.wear[self.plan.grid.column(day)])
    }

    /// How the sling holds the arm on a day.
    pub(crate) fn sling_position(&self, day: u16) -> SlingPosition {
        let lives = self.plan.sling_position[self.column(Joint::WholeArm, day)];
        if lives == SlingPosition::InternalRotation {
            lives
        } else {
            self.plan.sling_position[self.plan.grid.column(day)]
        }
    }

    /// The day a stage may be opened for; `None` where the plan has no such stage.
    pub(crate) fn gate(&self, stage: usize) -> Option<u16> {
        self.plan.gates[stage].map(|gate| self.moves.reaches(gate))
    }

    /// The stages of this plan in the order of their gates: place among the family's stages, and day.
    pub(crate) fn stages(&self) -> Vec<(usize, u16)> {
        (0..self.plan.gates.len()).filter_map(|stage| Some((stage, self.gate(stage)?))).collect()
    }

    /// The stage whose days these are, by its gate.
    pub(crate) fn stage_on(&self, day: u16) -> usize {
        let passed = |gate: u16| self.moves.reached_by(gate, day) <= day;
        (0..self.plan.gates.len()).rev().find(|&stage| self.plan.gates[stage].is_some_and(passed)).unwrap_or(0)
    }

    /// The day a stage may be opened for, as it looks on a day: a go-back that lies ahead hides nothing.
    pub(crate) fn gate_on(&self, stage: usize, day: u16) -> Option<u16> {
        self.plan.gates[stage].map(|gate| self.moves.reached_by(gate, day))
    }

    /// The first day of the composed plan on which a safe arc no longer binds.
    pub(crate) fn arc_ends(&self, arc: &operative::SafeArc) -> Option<u16> {
        arc.until.map(|day| day.count()).or_else(|| self.compiled.safe_arc_end(&self.plan))
    }

    /// Every day on which a limit, the sling or a stage can change; starts with day 0.
    pub(crate) fn change_days(&self) -> Vec<u16> {
        let grid = &self.plan.grid;
        let mut days: Vec<u16> = (1..self.horizon())
            .filter(|&day| {
                grid.column(day) != grid.column(day - 1)
                    || Joint::ALL.iter().any(|&joint| self.column(joint, day) != self.column(joint, day - 1))
            })
            .collect();
        days.push(0);
        days.extend(self.loosened.iter().flat_map(|l| [l.from, l.until]));
        days.retain(|&day| day < self.horizon());
        days.sort_unstable();
        days.dedup();
        days
    }
}
