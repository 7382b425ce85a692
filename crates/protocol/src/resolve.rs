//! The one composition: the function that is proved is the function that prescribes.
//!
//! Per key and day the lowest limit, per stage the latest gate, the sling the
//! longest. It runs over millions of records when a family is proved, so it
//! works on integers and takes no memory once a plan's buffers exist.

use operative::{DimensionId, Facts};
use plan::{Bound, Cell, Plan, RuleSet, SlingPosition};

use crate::compile::{Compiled, CompiledRule};

/// The protocol the surgeon asked for, in place of the one the family selects.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Requested(pub Option<u8>);

/// Composes the plan for the facts of a record.
///
/// # Units and shape
/// The plan lies on the grid of the compiled family. Fired rules are indices
/// into the compiled family; reasons are looked up from them afterwards.
///
/// # Method
/// 1. The protocol asked for, or the last selection that fires, or the default.
/// 2. Every rule whose conditions hold lowers its cells, lengthens the sling,
///    moves its gates later, or caps the whole plan with another protocol.
/// 3. Safe arcs cap their movements.
/// 4. Modes cascade: no mode goes further than the mode it rests on.
///
/// # Source
/// Rules of composition: own choice, written in the table of evidence as
/// `closed-world`, `modes-cascade` and `safe-arc-caps`.
pub fn resolve(compiled: &Compiled<'_>, facts: &Facts, requested: Requested) -> Plan {
    let mut plan = Plan {
        grid: compiled.grid.clone(),
        cells: Vec::new(),
        wear: Vec::new(),
        sling_position: Vec::new(),
        gates: Vec::new(),
        protocol: 0,
        caps: 0,
        fired: RuleSet::default(),
    };
    resolve_into(compiled, facts, requested, &mut plan);
    plan
}

/// The same, into a plan whose memory is used again.
pub fn resolve_into(compiled: &Compiled<'_>, facts: &Facts, requested: Requested, plan: &mut Plan) {
    let width = compiled.grid.columns();
    let chosen = requested.0.map_or_else(|| selected(compiled, facts), usize::from);
    let base = &compiled.bases[chosen];
    plan.cells.clear();
    plan.cells.extend_from_slice(&base.cells);
    plan.wear.clear();
    plan.wear.extend_from_slice(&base.wear);
    plan.sling_position.clear();
    plan.sling_position.extend_from_slice(&base.position);
    plan.gates.clear();
    plan.gates.extend_from_slice(&base.gates);
    plan.protocol = chosen as u8;
    plan.caps = 0;
    plan.fired = RuleSet::default();

    let forward = |plan: &mut Plan, from: usize, until: usize| {
        plan.sling_position[from..until].fill(SlingPosition::InternalRotation);
    };
    for (index, rule) in compiled.rules.iter().enumerate() {
        if rule.own.is_some_and(|own| own != chosen) || !fires(rule, facts) {
            continue;
        }
        plan.fired.insert(index);
        for op in &rule.ops {
            let lane = usize::from(op.lane.0) * width;
            let (from, until) = (usize::from(op.from), usize::from(op.until));
            lower(&mut plan.cells[lane + from..lane + until], op.cell);
            if compiled.external_rotation == Some(op.lane) && below_neutral(op.cell) {
                forward(plan, from, until);
            }
        }
        for &(from, until, wear) in &rule.wear {
            for worn in &mut plan.wear[usize::from(from)..usize::from(until)] {
                *worn = (*worn).max(wear);
            }
        }
        for &(stage, day) in &rule.gates {
            if let Some(gate) = &mut plan.gates[stage] {
                *gate = (*gate).max(day);
            }
        }
        if let Some(cap) = rule.cap
            && cap != chosen
        {
            plan.caps |= 1 << cap;
        }
    }
    for (place, cap) in compiled.bases.iter().enumerate().filter(|(place, _)| plan.caps & (1 << place) != 0) {
        debug_assert_ne!(place, chosen, "a protocol does not cap itself");
        plan.cells.iter_mut().zip(&cap.cells).for_each(|(cell, cap)| *cell = (*cell).min(*cap));
        plan.wear.iter_mut().zip(&cap.wear).for_each(|(worn, cap)| *worn = (*worn).max(*cap));
        plan.sling_position.iter_mut().zip(&cap.position).for_each(|(position, cap)| *position = (*position).max(*cap));
        plan.gates.iter_mut().zip(&cap.gates).for_each(|(gate, cap)| *gate = (*gate).max(*cap));
    }

    let arcs_end = compiled.safe_arc_stage.and_then(|stage| plan.gates[stage]);
    for arc in facts.safe_arcs.iter() {
        let until = arc.until.map(|day| day.count()).or(arcs_end);
        let end = until.map_or(width, |day| compiled.grid.days.partition_point(|&start| start < day).min(width));
        let cell = Cell::up_to(Bound::Angle(arc.up_to));
        for lane in compiled.bound_by_arc(arc.movement) {
            let start = usize::from(lane.0) * width;
            lower(&mut plan.cells[start..start + end], cell);
            if compiled.external_rotation == Some(lane) && below_neutral(cell) {
                forward(plan, 0, end);
            }
        }
        // Effort away from the side cannot be held to an angle, so the arc leaves it at the side alone.
        for lane in compiled.efforts_beyond_arc(arc.movement) {
            let start = usize::from(lane.0) * width;
            lower(&mut plan.cells[start..start + end], Cell::NO);
        }
    }

    for (lane, below) in compiled.rests_on.iter().enumerate() {
        let Some(below) = below else { continue };
        let (head, tail) = plan.cells.split_at_mut(lane * width);
        let below = &head[usize::from(below.0) * width..][..width];
        tail[..width].iter_mut().zip(below).for_each(|(cell, below)| *cell = (*cell).min(*below));
    }
}

/// The protocol that the family's selection takes.
pub(crate) fn selected(compiled: &Compiled<'_>, facts: &Facts) -> usize {
    let fired = compiled.selects.iter().rev().find(|(when, _)| when.holds(facts));
    fired.map_or(compiled.default, |(_, protocol)| *protocol)
}

fn fires(rule: &CompiledRule<'_>, facts: &Facts) -> bool {
    let holds = |(dimension, mask): &(DimensionId, u16)| mask & (1 << facts.class(*dimension)) != 0;
    rule.all.iter().all(holds) && (rule.any.is_empty() || rule.any.iter().any(holds))
}

fn lower(cells: &mut [Cell], cap: Cell) {
    for cell in cells {
        *cell = (*cell).min(cap);
    }
}

/// A bound of external rotation that does not reach the forearm pointing straight ahead.
fn below_neutral(cell: Cell) -> bool {
    cell.is_open() && cell < Cell::up_to(Bound::Angle(quantity::Degrees::whole(0)))
}

impl Compiled<'_> {
    /// The classes that each condition on a dimension asks for, over rules and selections.
    pub fn masks_on(&self, dimension: DimensionId) -> Vec<u16> {
        let of_rules = self.rules.iter().flat_map(|rule| rule.all.iter().chain(&rule.any).copied());
        let of_selects =
            self.selects.iter().flat_map(|(when, _)| when.all.iter().chain(&when.any).map(|c| (c.dimension, c.mask)));
        of_rules.chain(of_selects).filter(|(on, _)| *on == dimension).map(|(_, mask)| mask).collect()
    }

    /// For each rule the first rule that does just the same to a plan: the same caps, sling, gates and capping protocol.
    ///
    /// Two records under one protocol whose fired rules are the same in this sense, and whose safe arcs are the same,
    /// have the same plan: [`resolve_into`] reads nothing else of the facts.
    pub fn same_effect(&self) -> Vec<usize> {
        let same = |a: &CompiledRule<'_>, b: &CompiledRule<'_>| {
            a.cap == b.cap && a.gates == b.gates && a.wear == b.wear && a.ops == b.ops
        };
        self.rules.iter().map(|rule| self.rules.iter().position(|first| same(first, rule)).unwrap_or(0)).collect()
    }

    /// The day on which safe arcs that name none stop to bind a plan.
    pub fn safe_arc_end(&self, plan: &Plan) -> Option<u16> {
        self.safe_arc_stage.and_then(|stage| plan.gates[stage])
    }

    /// The protocol that the family's selection takes for some facts.
    pub fn selected(&self, facts: &Facts) -> u8 {
        selected(self, facts) as u8
    }
}
