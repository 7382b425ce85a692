//! Which lines of the files, and which parts of the record, made a value what it is.

use operative::Facts;
use plan::{Bound, Cell, LaneId, Plan, Wear};

use crate::Choices;
use crate::compile::{Compiled, columns_of, is_bound_by_arc, is_effort_beyond_arc};
use crate::file::{Limit, Rule, SlingStep};
use crate::library::chosen;

/// One thing that binds a value.
#[derive(Debug, Clone, Copy)]
pub enum Binding<'f> {
    /// A limit of a protocol, the chosen one or one that caps the plan.
    Protocol {
        /// The place of the protocol.
        protocol: u8,
        /// The limit.
        limit: &'f Limit,
        /// The rule whose finding made the protocol cap the plan.
        capped_by: Option<&'f Rule>,
    },
    /// Nothing allows it.
    ClosedWorld {
        /// The place of the protocol.
        protocol: u8,
    },
    /// A rule that a finding added.
    Rule {
        /// The rule.
        rule: &'f Rule,
    },
    /// A safe arc of the record.
    SafeArc {
        /// Its place in the record.
        index: u8,
    },
}

impl<'f> Compiled<'f> {
    /// Everything that binds the value of a lane in a column of a plan.
    ///
    /// # Method
    /// Of the lane itself first; where the value comes from the mode below, of that.
    pub fn binding(&self, plan: &Plan, facts: &Facts, lane: LaneId, column: usize) -> Vec<Binding<'f>> {
        let value = plan.cell(lane, column);
        let mut bound = self.own_binding(plan, facts, lane, column, value);
        let mut at = lane;
        // The value came down from a mode below: the lowest one that says it has the reason.
        while bound.is_empty()
            && let Some(below) = self.rests_on[usize::from(at.0)]
        {
            at = below;
            bound = self.own_binding(plan, facts, at, column, value);
        }
        bound
    }

    fn own_binding(&self, plan: &Plan, facts: &Facts, lane: LaneId, column: usize, value: Cell) -> Vec<Binding<'f>> {
        let mut bound = Vec::new();
        let width = self.grid.columns();
        let at = usize::from(lane.0) * width + column;
        let key = self.grid.keys[usize::from(lane.0)];
        for index in plan.fired.iter() {
            // The ops of a rule stand in the order of their lanes.
            let ops = &self.rules[index].ops;
            let of_lane = &ops[ops.partition_point(|op| op.lane < lane)..];
            let binds = of_lane
                .iter()
                .take_while(|op| op.lane == lane)
                .any(|op| op.cell == value && (op.from..op.until).contains(&(column as u8)));
            if binds {
                bound.push(Binding::Rule { rule: self.rule(index) });
            }
        }
        for arc in facts.safe_arcs.iter() {
            let until = arc.until.map(|day| day.count());
            let until = until.or_else(|| self.safe_arc_stage.and_then(|stage| plan.gates[stage]));
            let in_time = until.is_none_or(|day| self.grid.days[column] < day);
            let caps = Cell::up_to(Bound::Angle(arc.up_to)) == value && is_bound_by_arc(arc.movement, key);
            let closes = value == Cell::NO && is_effort_beyond_arc(arc.movement, key);
            if in_time && (caps || closes) {
                bound.push(Binding::SafeArc { index: arc.index });
            }
        }
        for (place, base) in (0_u8..).zip(&self.bases) {
            let is_chosen = place == plan.protocol;
            if (!is_chosen && plan.caps & (1 << place) == 0) || base.cells[at] != value {
                continue;
            }
            let capped_by = (!is_chosen).then(|| self.capping_rule(plan, place)).flatten();
            bound.push(match base.owner[usize::from(lane.0)] {
                Some(limit) => Binding::Protocol {
                    protocol: place,
                    limit: &self.protocol(place).limits[usize::from(limit)],
                    capped_by,
                },
                None => Binding::ClosedWorld { protocol: place },
            });
        }
        bound
    }

    /// The value a protocol alone gives a lane in a column, before anything is added and before modes cascade.
    pub fn own_value(&self, protocol: u8, lane: LaneId, column: usize) -> Cell {
        self.bases[usize::from(protocol)].cells[usize::from(lane.0) * self.grid.columns() + column]
    }

    /// The first fired rule that makes a protocol cap the plan.
    pub fn capping_rule(&self, plan: &Plan, protocol: u8) -> Option<&'f Rule> {
        plan.fired
            .iter()
            .map(|index| &self.rules[index])
            .find(|rule| rule.cap == Some(usize::from(protocol)))
            .map(|rule| rule.rule)
    }

    /// Every fired rule that makes a protocol cap the plan.
    pub fn capping_rules(&self, plan: &Plan) -> Vec<&'f Rule> {
        plan.fired.iter().map(|index| &self.rules[index]).filter(|rule| rule.cap.is_some()).map(|r| r.rule).collect()
    }

    /// The sling steps of protocols and rules that ask for the wear of a column.
    pub fn sling_binding(
        &self,
        plan: &Plan,
        choices: &Choices,
        column: usize,
    ) -> Vec<(Option<&'f Rule>, u8, &'f SlingStep)> {
        let wear = plan.wear[column];
        let covers =
            |step: &SlingStep| step.wear == wear && columns_of(&self.grid, step.from, step.until).contains(&column);
        let mut bound = Vec::new();
        for index in plan.fired.iter() {
            let rule = &self.rules[index];
            bound.extend(
                rule.rule.slings.iter().filter(|step| covers(step)).map(|step| (Some(rule.rule), plan.protocol, step)),
            );
        }
        for place in (0_u8..).take(self.bases.len()) {
            if place != plan.protocol && plan.caps & (1 << place) == 0 {
                continue;
            }
            let own = self.protocol(place).slings.iter();
            bound.extend(
                own.filter(|step| chosen(step.choice.as_ref(), choices) && covers(step))
                    .map(|step| (None, place, step)),
            );
        }
        if wear == Wear::None {
            bound.truncate(1);
        }
        bound
    }
}
