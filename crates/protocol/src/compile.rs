//! A family as integer tables: a lane for every key, a column for every run of days.

use std::sync::Arc;

use body::{ALL_KEYS, Joint, Key, Movement, Position};
use operative::DimensionId;
use plan::{Cell, Grid, LaneId, SlingPosition, Wear};

use crate::Choices;
use crate::file::{Limit, ProtocolFile, SlingStep, When};
use crate::library::{Family, chosen};

/// A compiled family; [`resolve`](crate::resolve()) composes plans from it.
#[derive(Debug)]
pub struct Compiled<'f> {
    /// The family it was compiled from.
    pub family: &'f Family,
    /// The rows and columns of every plan.
    pub grid: Arc<Grid>,
    /// The ids of the stages, in order.
    pub stages: Vec<&'f str>,
    /// For each lane, the lane of the mode it rests on.
    pub(crate) rests_on: Vec<Option<LaneId>>,
    pub(crate) bases: Vec<Base>,
    pub(crate) rules: Vec<CompiledRule<'f>>,
    pub(crate) default: usize,
    pub(crate) selects: Vec<(When, usize)>,
    pub(crate) safe_arc_stage: Option<usize>,
    pub(crate) external_rotation: Option<LaneId>,
}

/// A protocol as tables.
#[derive(Debug)]
pub(crate) struct Base {
    /// The values, lane after lane.
    pub cells: Vec<Cell>,
    /// For each lane, the limit of the protocol that gives it.
    pub owner: Vec<Option<u16>>,
    pub wear: Vec<Wear>,
    pub position: Vec<SlingPosition>,
    pub gates: Vec<Option<u16>>,
}

/// A rule as tables.
#[derive(Debug)]
pub(crate) struct CompiledRule<'f> {
    pub rule: &'f crate::file::Rule,
    /// The protocol whose own rule this is.
    pub own: Option<usize>,
    pub all: Vec<(DimensionId, u16)>,
    pub any: Vec<(DimensionId, u16)>,
    pub ops: Vec<Op>,
    pub wear: Vec<(u8, u8, Wear)>,
    pub gates: Vec<(usize, u16)>,
    pub cap: Option<usize>,
}

/// One cap on one lane over a run of columns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Op {
    pub lane: LaneId,
    pub from: u8,
    pub until: u8,
    pub cell: Cell,
}

impl<'f> Compiled<'f> {
    /// Compiles a family under the surgeon's choices.
    ///
    /// # Units and shape
    /// `extra_days` adds columns that start on these days, for safe arcs that end
    /// on a day no file names.
    pub fn new(family: &'f Family, choices: &Choices, extra_days: &[u16]) -> Self {
        let grid = Arc::new(Grid { keys: lanes(family), days: days(family, extra_days) });
        let stages = family.stage_ids();
        let rests_on = grid
            .keys
            .iter()
            .map(|key| key.mode.rests_on().and_then(|below| grid.governing(key.in_mode(below))))
            .collect();
        let bases = family.protocols.iter().map(|protocol| base(protocol, &grid, &stages, choices)).collect();
        let rules = family
            .rules()
            .filter(|(_, rule)| chosen(rule.choice.as_ref(), choices))
            .map(|(own, rule)| compile_rule(rule, own, family, &grid, &stages))
            .collect();
        let selects = family
            .file
            .selects
            .iter()
            .filter_map(|select| Some((select.when.clone(), family.protocol(&select.protocol)?)))
            .collect();
        let external_rotation = grid.lane(Key::any(Joint::Shoulder, Movement::ExternalRotation, body::Mode::Passive));
        Self {
            default: family.protocol(&family.file.default).unwrap_or(0),
            safe_arc_stage: stages.iter().position(|stage| *stage == family.file.safe_arc_until_stage),
            family,
            grid,
            stages,
            rests_on,
            bases,
            rules,
            selects,
            external_rotation,
        }
    }

    /// The lanes that a safe arc of a movement caps.
    pub(crate) fn bound_by_arc(&self, movement: Movement) -> impl Iterator<Item = LaneId> + '_ {
        self.lanes_where(move |key| is_bound_by_arc(movement, key))
    }

    /// The lanes of effort without movement away from the side that a safe arc of a movement closes.
    pub(crate) fn efforts_beyond_arc(&self, movement: Movement) -> impl Iterator<Item = LaneId> + '_ {
        self.lanes_where(move |key| is_effort_beyond_arc(movement, key))
    }

    fn lanes_where(&self, holds: impl Fn(Key) -> bool) -> impl Iterator<Item = LaneId> {
        (0_u8..).zip(&self.grid.keys).filter_map(move |(lane, key)| holds(*key).then_some(LaneId(lane)))
    }

    /// What a protocol alone allows, lane after lane: no mode further than the mode it rests on.
    pub fn alone(&self, protocol: usize) -> Vec<Cell> {
        let width = self.grid.columns();
        let mut cells = self.bases[protocol].cells.clone();
        // The lanes of lower modes come first.
        for (lane, below) in self.rests_on.iter().enumerate() {
            let Some(LaneId(below)) = below else { continue };
            for column in 0..width {
                let most = cells[usize::from(*below) * width + column];
                let cell = &mut cells[lane * width + column];
                *cell = (*cell).min(most);
            }
        }
        cells
    }

    /// The protocol of a place.
    pub fn protocol(&self, place: u8) -> &'f ProtocolFile {
        &self.family.protocols[usize::from(place)]
    }

    /// The rule of an index in a plan's set of fired rules.
    pub fn rule(&self, index: usize) -> &'f crate::file::Rule {
        self.rules[index].rule
    }
}

/// Whether a safe arc of a movement caps a key.
///
/// # Method
/// Every position and mode of the movement that is counted in degrees.
/// Forward elevation, scapular-plane elevation and abduction bind one another;
/// external rotation binds the combined movement as well.
pub(crate) fn is_bound_by_arc(movement: Movement, key: Key) -> bool {
    key.joint == Joint::Shoulder && !key.is_effort() && bound_with(movement).contains(&key.movement)
}

/// Whether a key is effort without movement away from the side that a safe arc of a movement closes.
pub(crate) fn is_effort_beyond_arc(movement: Movement, key: Key) -> bool {
    key.joint == Joint::Shoulder
        && key.is_effort()
        && key.position == Position::Any
        && bound_with(movement).contains(&key.movement)
}

fn bound_with(movement: Movement) -> &'static [Movement] {
    use Movement as M;
    match movement {
        M::ForwardElevation | M::ScapularPlaneElevation | M::Abduction => {
            &[M::ForwardElevation, M::ScapularPlaneElevation, M::Abduction]
        }
        M::ExternalRotation => &[M::ExternalRotation, M::AbductionWithExternalRotation],
        M::Extension => &[M::Extension],
        M::InternalRotation => &[M::InternalRotation],
        M::HorizontalAdduction => &[M::HorizontalAdduction],
        M::AbductionWithExternalRotation => &[M::AbductionWithExternalRotation],
        _ => &[],
    }
}

/// Every key in any position, and the keys in the positions that files name.
pub(crate) fn lanes(family: &Family) -> Vec<Key> {
    let mut keys = ALL_KEYS.clone();
    let own = family.protocols.iter().flat_map(|protocol| &protocol.limits);
    let of_rules = family.rules().flat_map(|(_, rule)| &rule.limits);
    let mut named: Vec<Key> = own
        .chain(of_rules)
        .flat_map(|limit| limit.keys.iter().copied())
        .filter(|key| key.position != Position::Any)
        .collect();
    named.sort_unstable();
    named.dedup();
    keys.extend(named);
    keys
}

/// The days on which anything of the family can change, and the horizon at the end.
pub(crate) fn days(family: &Family, extra: &[u16]) -> Vec<u16> {
    let mut days = vec![0];
    let horizon = family.protocols.iter().map(|protocol| protocol.horizon.count()).max().unwrap_or(0);
    let of_limit = |days: &mut Vec<u16>, limit: &Limit| {
        days.extend(limit.steps.iter().flat_map(|step| [Some(step.from), step.until]).flatten());
    };
    let of_sling = |days: &mut Vec<u16>, step: &SlingStep| {
        days.extend([Some(step.from), step.until].into_iter().flatten());
    };
    for protocol in &family.protocols {
        protocol.limits.iter().for_each(|limit| of_limit(&mut days, limit));
        protocol.slings.iter().for_each(|step| of_sling(&mut days, step));
        days.extend(protocol.stages.iter().map(|stage| stage.gate.count()));
        days.extend(protocol.postures.iter().map(|gate| gate.until.count()));
    }
    for (_, rule) in family.rules() {
        rule.limits.iter().for_each(|limit| of_limit(&mut days, limit));
        rule.slings.iter().for_each(|step| of_sling(&mut days, step));
        days.extend(rule.gates.iter().map(|(_, day)| day.count()));
    }
    days.extend(extra);
    days.retain(|&day| day < horizon);
    days.push(horizon);
    days.sort_unstable();
    days.dedup();
    days
}

/// The columns of a run of days.
pub(crate) fn columns_of(grid: &Grid, from: u16, until: Option<u16>) -> std::ops::Range<usize> {
    let at = |day: u16| grid.days.partition_point(|&start| start < day).min(grid.columns());
    at(from)..until.map_or(grid.columns(), at)
}

fn base(protocol: &ProtocolFile, grid: &Grid, stages: &[&str], choices: &Choices) -> Base {
    let width = grid.columns();
    let mut cells = vec![Cell::NO; grid.keys.len() * width];
    let mut owner = vec![None; grid.keys.len()];
    for (place, limit) in (0_u16..).zip(&protocol.limits) {
        if !chosen(limit.choice.as_ref(), choices) {
            continue;
        }
        for key in &limit.keys {
            let Some(LaneId(lane)) = grid.lane(*key) else { continue };
            owner[usize::from(lane)] = Some(place);
            for step in &limit.steps {
                for column in columns_of(grid, step.from, step.until) {
                    cells[usize::from(lane) * width + column] = step.cell;
                }
            }
        }
    }
    // A position that this protocol does not name has the value of any position.
    for (lane, key) in grid.keys.iter().enumerate() {
        if key.position != Position::Any
            && owner[lane].is_none()
            && let Some(LaneId(any)) = grid.lane(key.in_position(Position::Any))
        {
            let any = usize::from(any);
            owner[lane] = owner[any];
            cells.copy_within(any * width..(any + 1) * width, lane * width);
        }
    }
    let mut wear = vec![Wear::None; width];
    let mut position = vec![SlingPosition::Neutral; width];
    for step in protocol.slings.iter().filter(|step| chosen(step.choice.as_ref(), choices)) {
        for column in columns_of(grid, step.from, step.until) {
            wear[column] = step.wear;
            position[column] = step.position;
        }
    }
    let gates = stages
        .iter()
        .map(|id| protocol.stages.iter().find(|stage| stage.id == *id).map(|stage| stage.gate.count()))
        .collect();
    Base { cells, owner, wear, position, gates }
}

fn compile_rule<'f>(
    rule: &'f crate::file::Rule,
    own: Option<usize>,
    family: &Family,
    grid: &Grid,
    stages: &[&str],
) -> CompiledRule<'f> {
    let conditions = |list: &[crate::file::Condition]| list.iter().map(|c| (c.dimension, c.mask)).collect();
    let narrow = |range: std::ops::Range<usize>| (range.start as u8, range.end as u8);
    let mut ops = Vec::new();
    for limit in &rule.limits {
        for key in &limit.keys {
            // A limit given for one position binds every position, unless the rule names others.
            let lanes = (0_u8..).zip(&grid.keys).filter(|(_, lane)| {
                lane.joint == key.joint
                    && lane.movement == key.movement
                    && lane.mode == key.mode
                    && (key.position == Position::Any
                        || lane.position == key.position
                        || !limit.keys.iter().any(|other| *other == **lane))
            });
            for (lane, lane_key) in lanes {
                for step in limit.steps.iter().filter(|step| step.counts.fits(*lane_key)) {
                    let (from, until) = narrow(columns_of(grid, step.from, step.until));
                    ops.push(Op { lane: LaneId(lane), from, until, cell: step.cell });
                }
            }
        }
    }
    // What binds a value is looked up by lane; the order of caps changes no plan.
    ops.sort_by_key(|op| op.lane);
    let wear = rule
        .slings
        .iter()
        .map(|step| {
            let (from, until) = narrow(columns_of(grid, step.from, step.until));
            (from, until, step.wear)
        })
        .collect();
    let gates = rule
        .gates
        .iter()
        .filter_map(|(stage, day)| Some((stages.iter().position(|id| id == stage)?, day.count())))
        .collect();
    CompiledRule {
        rule,
        own,
        all: conditions(&rule.when.all),
        any: conditions(&rule.when.any),
        ops,
        wear,
        gates,
        cap: rule.cap.as_deref().and_then(|id| family.protocol(id)),
    }
}
