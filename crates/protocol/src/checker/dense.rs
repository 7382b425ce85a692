//! The checker over a composed plan, fast enough for every record of a family.

use body::{Joint, Key, Mode, Movement};
use operative::Facts;
use plan::{Bound, Cell, Grid, Plan, SlingPosition, Wear};

use super::arcs::{ArcSays, arc_says};
use super::explain::latest_passive;
use super::rulebook::{Line, Rulebook, of_protocol, of_rule};
use super::stillness::still_days;
use crate::file::{ProtocolFile, Rule};
use crate::library::chosen;
use crate::{Choices, Family, Requested};

/// The lines of a family laid out on the days of its plans, each evaluated by itself.
///
/// Each value comes from one line of one file, asked day by day; the tables that
/// plans are composed from have no part in it.
#[derive(Debug)]
pub struct DenseRules<'f> {
    /// The files.
    pub book: Rulebook<'f>,
    protocols: Vec<ProtocolSheet>,
    rules: Vec<RuleSheet<'f>>,
    /// For each lane the lane of the mode it rests on.
    below: Vec<Option<usize>>,
    outward: Option<usize>,
    columns: usize,
}

/// What one protocol alone allows.
#[derive(Debug)]
struct ProtocolSheet {
    cells: Vec<Cell>,
    wear: Vec<Wear>,
    position: Vec<SlingPosition>,
    /// The gate of each stage of the family.
    gates: Vec<Option<u16>>,
    /// The lanes whose last bound stays until the surgeon names another.
    until_the_surgeon: Vec<bool>,
    /// Lanes that have to be open from a day on at the latest.
    passive_by: Vec<(usize, u16)>,
}

/// What one rule alone caps.
#[derive(Debug)]
struct RuleSheet<'f> {
    rule: &'f Rule,
    own: Option<usize>,
    cap: Option<usize>,
    /// Runs of columns of a lane, and the most of them.
    caps: Vec<(usize, usize, usize, Cell)>,
    wear: Vec<Wear>,
    belly: Vec<bool>,
    gates: Vec<(usize, u16)>,
}

impl<'f> DenseRules<'f> {
    /// Lays the files of a family out on a grid.
    ///
    /// # Errors
    /// A line that starts or ends within a column of the grid, by its key and day:
    /// plans on such a grid could not say what the files say.
    pub fn new(family: &'f Family, choices: &Choices, grid: &Grid, stages: &[&str]) -> Result<Self, String> {
        let book = Rulebook::new(family, choices);
        let protocols = family.protocols.iter();
        let protocols = protocols.map(|protocol| protocol_sheet(protocol, choices, grid, stages));
        let rules = family.rules().filter(|(_, rule)| chosen(rule.choice.as_ref(), choices));
        let rules = rules.map(|(own, rule)| rule_sheet(rule, own, family, grid, stages));
        let below = grid.keys.iter().map(|key| {
            let below = key.mode.rests_on().map(|mode| key.in_mode(mode)).filter(|below| below.exists())?;
            place(grid, below).or_else(|| place(grid, below.in_position(body::Position::Any)))
        });
        Ok(Self {
            protocols: protocols.collect::<Result<_, _>>()?,
            rules: rules.collect::<Result<_, _>>()?,
            below: below.collect(),
            outward: place(grid, OUTWARD),
            columns: grid.columns(),
            book,
        })
    }

    /// Whether a plan keeps every rule that is in force for the facts, and leaves nothing still for too long.
    ///
    /// # Method
    /// Each line in force by itself: no value above it, the sling no less, no gate
    /// earlier. Then the plan alone: no mode further than the mode it rests on, no
    /// limit that falls and no sling that comes back as days go by, gates in order,
    /// every limit lifted in the end, every movement open by its latest day, and the
    /// runs of still days under their caps. What a safe arc of the record holds still
    /// is a question to the surgeon and no fault.
    pub fn is_sound(&self, plan: &Plan, facts: &Facts, requested: Requested) -> bool {
        let followed = requested.0.map_or_else(|| self.followed(facts), usize::from);
        let mut protocols = 1_u32 << followed;
        for sheet in &self.rules {
            if sheet.own.is_some_and(|own| own != followed) || !sheet.rule.when.holds(facts) {
                continue;
            }
            if !self.keeps_rule(plan, sheet) {
                return false;
            }
            protocols |= sheet.cap.map_or(0, |cap| 1 << cap);
        }
        let in_force = || (0..self.protocols.len()).filter(move |place| protocols & (1 << place) != 0);
        in_force().all(|place| self.keeps_protocol(plan, &self.protocols[place]))
            && self.keeps_arcs(plan, facts)
            && self.keeps_modes(plan)
            && self.rises(plan)
            && self.is_lifted(plan, facts, protocols)
            && self.opens_in_time(plan, protocols)
            && still_days(plan).beyond_caps_under(!facts.safe_arcs.is_empty()).is_empty()
    }

    /// The protocol the family selects.
    fn followed(&self, facts: &Facts) -> usize {
        let family = self.book.family;
        let selected = family.file.selects.iter().rfind(|select| select.when.holds(facts));
        let id = selected.map_or(&family.file.default, |select| &select.protocol);
        family.protocol(id).unwrap_or(0)
    }

    fn keeps_rule(&self, plan: &Plan, sheet: &RuleSheet<'_>) -> bool {
        let keeps = |&(lane, from, until, most): &(usize, usize, usize, Cell)| {
            plan.cells[lane * self.columns..][from..until].iter().all(|cell| *cell <= most)
        };
        sheet.caps.iter().all(keeps)
            && plan.wear.iter().zip(&sheet.wear).all(|(worn, least)| worn >= least)
            && plan.sling_position.iter().zip(&sheet.belly).all(|(position, belly)| !belly || on_the_belly(*position))
            && sheet.gates.iter().all(|&(stage, day)| plan.gates[stage].is_none_or(|gate| gate >= day))
    }

    fn keeps_protocol(&self, plan: &Plan, sheet: &ProtocolSheet) -> bool {
        // Without a branch, so that whole rows are compared at once.
        let above = plan.cells.iter().zip(&sheet.cells).fold(false, |above, (cell, most)| above | (cell > most));
        !above
            && plan.wear.iter().zip(&sheet.wear).all(|(worn, least)| worn >= least)
            && plan.sling_position.iter().zip(&sheet.position).all(|(position, least)| position >= least)
            && plan.gates.iter().zip(&sheet.gates).all(|(gate, least)| gate >= least)
    }

    fn keeps_arcs(&self, plan: &Plan, facts: &Facts) -> bool {
        if facts.safe_arcs.iter().next().is_none() {
            return true;
        }
        let family = self.book.family;
        let stages = family.stage_ids();
        let ends = stages.iter().position(|stage| *stage == family.file.safe_arc_until_stage);
        let ends = ends.and_then(|stage| plan.gates[stage]);
        facts.safe_arcs.iter().all(|arc| {
            let until = arc.until.map(|day| day.count()).or(ends).unwrap_or(u16::MAX);
            let columns = plan.grid.days[..self.columns].iter().take_while(|day| **day < until).count();
            plan.grid.keys.iter().enumerate().all(|(lane, key)| {
                let most = match arc_says(arc.movement, *key) {
                    ArcSays::Nothing => return true,
                    ArcSays::AtMost => Cell::up_to(Bound::Angle(arc.up_to)),
                    ArcSays::No => Cell::NO,
                };
                let belly = self.outward == Some(lane) && most < STRAIGHT_AHEAD;
                plan.cells[lane * self.columns..][..columns].iter().all(|cell| *cell <= most)
                    && (!belly || plan.sling_position[..columns].iter().all(|position| on_the_belly(*position)))
            })
        })
    }

    fn keeps_modes(&self, plan: &Plan) -> bool {
        self.below.iter().enumerate().all(|(lane, below)| {
            below.is_none_or(|below| {
                let (own, rests_on) = (self.lane(plan, lane), self.lane(plan, below));
                !own.iter().zip(rests_on).fold(false, |above, (cell, most)| above | (cell > most))
            })
        })
    }

    fn rises(&self, plan: &Plan) -> bool {
        let falls = |lane: &[Cell]| lane.iter().zip(&lane[1..]).fold(false, |falls, (now, next)| falls | (next < now));
        let mut gates = plan.gates.iter().flatten();
        let mut last = gates.next();
        let in_order = gates.all(|gate| last.replace(gate).is_none_or(|before| before < gate));
        in_order
            && (0..self.below.len()).all(|lane| !falls(self.lane(plan, lane)))
            && plan.wear.windows(2).all(|pair| pair[0] >= pair[1])
    }

    fn is_lifted(&self, plan: &Plan, facts: &Facts, protocols: u32) -> bool {
        let last = self.columns - 1;
        let horizon = plan.grid.days[last];
        (0..self.below.len()).all(|lane| {
            self.lane(plan, lane)[last] == Cell::FREE
                || self
                    .protocols
                    .iter()
                    .enumerate()
                    .any(|(place, sheet)| protocols & (1 << place) != 0 && sheet.until_the_surgeon[lane])
                || facts.safe_arcs.iter().any(|arc| {
                    let bound = arc_says(arc.movement, plan.grid.keys[lane]) != ArcSays::Nothing;
                    bound && arc.until.is_some_and(|until| until.count() > horizon)
                })
        })
    }

    fn opens_in_time(&self, plan: &Plan, protocols: u32) -> bool {
        let in_force = || (0..self.protocols.len()).filter(move |place| protocols & (1 << place) != 0);
        in_force().flat_map(|place| &self.protocols[place].passive_by).all(|&(lane, day)| {
            // The slowest of the protocols in force has the word.
            let latest = in_force().flat_map(|place| &self.protocols[place].passive_by);
            let latest = latest.filter(|(other, _)| *other == lane).map(|(_, day)| *day).max().unwrap_or(day);
            self.lane(plan, lane)[plan.grid.column(latest)].is_open()
        })
    }

    fn lane<'p>(&self, plan: &'p Plan, lane: usize) -> &'p [Cell] {
        &plan.cells[lane * self.columns..][..self.columns]
    }
}

const OUTWARD: Key = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::Passive);
const STRAIGHT_AHEAD: Cell = Cell::up_to_zero_degrees();

fn on_the_belly(position: SlingPosition) -> bool {
    position == SlingPosition::InternalRotation
}

fn place(grid: &Grid, key: Key) -> Option<usize> {
    grid.keys.iter().position(|lane| *lane == key)
}

/// The lowest of some lines in each column, every day of the column asked; `None` where no line is about it.
fn by_column(lines: &[Line<'_>], grid: &Grid, key: Key) -> Result<Vec<Option<Cell>>, String> {
    let lowest = |day: u16| {
        let on = lines.iter().filter(|line| line.from <= day && line.until.is_none_or(|until| day < until));
        on.map(|line| line.cell).min()
    };
    grid.days
        .windows(2)
        .map(|column| {
            let first = lowest(column[0]);
            match (column[0]..column[1]).find(|&day| lowest(day) != first) {
                None => Ok(first),
                Some(day) => Err(format!("{key} changes on day {day}, within a column of the plan")),
            }
        })
        .collect()
}

fn protocol_sheet(
    protocol: &ProtocolFile,
    choices: &Choices,
    grid: &Grid,
    stages: &[&str],
) -> Result<ProtocolSheet, String> {
    let mut cells = Vec::with_capacity(grid.keys.len() * grid.columns());
    for key in &grid.keys {
        let mut lines = Vec::new();
        of_protocol(protocol, choices, *key, &mut lines);
        cells.extend(by_column(&lines, grid, *key)?.into_iter().map(|cell| cell.unwrap_or(Cell::NO)));
    }
    let on = |day: u16| {
        let in_choice = protocol.slings.iter().filter(|step| chosen(step.choice.as_ref(), choices));
        in_choice.filter(move |step| step.from <= day && step.until.is_none_or(|until| day < until))
    };
    let starts = || grid.days[..grid.columns()].iter();
    let until_the_surgeon = grid.keys.iter().map(|key| {
        let named = protocol.limits.iter().filter(|limit| chosen(limit.choice.as_ref(), choices));
        named.filter(|limit| limit.keys.contains(key)).any(|limit| limit.opened_by_surgeon)
    });
    Ok(ProtocolSheet {
        cells,
        wear: starts().map(|day| on(*day).map(|step| step.wear).max().unwrap_or(Wear::None)).collect(),
        position: starts().map(|day| on(*day).map(|step| step.position).max().unwrap_or_default()).collect(),
        gates: stages
            .iter()
            .map(|id| protocol.stages.iter().find(|stage| stage.id == *id).map(|stage| stage.gate.count()))
            .collect(),
        until_the_surgeon: until_the_surgeon.collect(),
        passive_by: grid
            .keys
            .iter()
            .enumerate()
            .filter_map(|(lane, key)| Some((lane, latest_passive(protocol, *key)?)))
            .collect(),
    })
}

fn rule_sheet<'f>(
    rule: &'f Rule,
    own: Option<usize>,
    family: &Family,
    grid: &Grid,
    stages: &[&str],
) -> Result<RuleSheet<'f>, String> {
    let mut caps = Vec::new();
    let mut belly = vec![false; grid.columns()];
    for (lane, key) in grid.keys.iter().enumerate() {
        let mut lines = Vec::new();
        of_rule(rule, *key, &mut lines);
        for (column, cell) in by_column(&lines, grid, *key)?.into_iter().enumerate() {
            let Some(cell) = cell else { continue };
            belly[column] |= *key == OUTWARD && cell.is_open() && cell < STRAIGHT_AHEAD;
            match caps.last_mut() {
                Some((last, _, until, most)) if *last == lane && *until == column && *most == cell => *until += 1,
                _ => caps.push((lane, column, column + 1, cell)),
            }
        }
    }
    let wear = grid.days[..grid.columns()].iter().map(|day| {
        let on = rule.slings.iter().filter(|step| step.from <= *day && step.until.is_none_or(|until| *day < until));
        on.map(|step| step.wear).max().unwrap_or(Wear::None)
    });
    let gates =
        rule.gates.iter().filter_map(|(id, day)| Some((stages.iter().position(|stage| stage == id)?, day.count())));
    Ok(RuleSheet {
        rule,
        own,
        cap: rule.cap.as_deref().and_then(|id| family.protocol(id)),
        caps,
        wear: wear.collect(),
        belly,
        gates: gates.collect(),
    })
}
