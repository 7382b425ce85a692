//! What is wrong with a composed plan, told day by day from the files.

use body::Position;
use operative::Facts;
use plan::words::{of_cell, of_days as days, of_difference, of_key, of_length};
use plan::{Cell, LaneId, Plan, Wear};

use super::fault::{Fault, Harm};
use super::rulebook::{InForce, Rulebook, Says};
use super::stillness::Stillness;
use crate::Requested;
use crate::file::ProtocolFile;

/// Everything that is wrong with a plan, the worst harm first.
///
/// # Method
/// Every key on every day against every line in force, each line by itself.
pub fn faults_of_plan(book: &Rulebook<'_>, plan: &Plan, facts: &Facts, requested: Requested) -> Vec<Fault> {
    let in_force = book.in_force(facts, requested);
    let mut faults = above_rules(&in_force, plan);
    faults.extend(modes(plan));
    faults.extend(sling(&in_force, plan));
    faults.extend(gates(book, &in_force, plan));
    faults.extend(falls(plan));
    faults.extend(never_lifted(&in_force, plan));
    faults.extend(too_late(&in_force, plan));
    faults.extend(stillness(plan).beyond_caps_under(!facts.safe_arcs.is_empty()));
    faults.sort_by_key(|fault| (fault.harm, fault.from_day));
    faults
}

/// The days of a column.
fn column(plan: &Plan, column: usize) -> (u16, u16) {
    (plan.grid.days[column], plan.grid.days[column + 1])
}

fn overload(kind: &'static str, key: body::Key, (from_day, until_day): (u16, u16), message: String) -> Fault {
    Fault { harm: Harm::Overload, kind, key: Some(key), from_day, until_day, message, rule: kind.into() }
}

fn above_rules(in_force: &InForce<'_>, plan: &Plan) -> Vec<Fault> {
    let mut faults: Vec<Fault> = Vec::new();
    for (lane, key) in (0_u8..).map(LaneId).zip(&plan.grid.keys) {
        let lines = in_force.lines(*key);
        for at in 0..plan.grid.columns() {
            let (from_day, until_day) = column(plan, at);
            let issued = plan.cell(lane, at);
            let Some(day) = (from_day..until_day).find(|&day| lines.most(day) < issued) else { continue };
            let Some(line) = lines.strictest(day) else { continue };
            let rule = line.says.id();
            let message = format!(
                "{} is {} where {} says {}{}",
                of_key(*key),
                of_cell(issued, *key),
                line.says.title(),
                of_cell(line.cell, *key),
                by_how_much(issued, line.cell, *key)
            );
            match faults.last_mut() {
                Some(last)
                    if last.key == Some(*key)
                        && last.until_day == from_day
                        && last.rule == rule
                        && last.message.ends_with(&message) =>
                {
                    last.until_day = until_day;
                    last.message = format!("{}: {message}", days(last.from_day, until_day));
                }
                _ => faults.push(Fault {
                    harm: Harm::Overload,
                    kind: "limit-above-rule",
                    key: Some(*key),
                    from_day,
                    until_day,
                    message: format!("{}: {message}", days(from_day, until_day)),
                    rule,
                }),
            }
        }
    }
    faults
}

/// By how much, where both values are counted.
fn by_how_much(issued: Cell, most: Cell, key: body::Key) -> String {
    of_difference(issued, most, key).map_or_else(String::new, |by| format!(": {by} too much"))
}

fn modes(plan: &Plan) -> Vec<Fault> {
    let grid = &plan.grid;
    let mut faults = Vec::new();
    for (lane, key) in (0_u8..).map(LaneId).zip(&grid.keys) {
        let below = key.mode.rests_on().map(|mode| key.in_mode(mode)).filter(|below| below.exists());
        let lane_of = |key: body::Key| grid.keys.iter().position(|lane| *lane == key);
        let below = below.and_then(|key| lane_of(key).or_else(|| lane_of(key.in_position(Position::Any))));
        let Some(below) = below else { continue };
        let rests_on = grid.keys[below];
        let wider = (0..grid.columns()).find(|&at| plan.cell(lane, at) > plan.cells[below * grid.columns() + at]);
        if let Some(at) = wider {
            let (own, most) = (plan.cell(lane, at), plan.cells[below * grid.columns() + at]);
            let message = format!(
                "{}: {} is {} while {} is {}",
                days(column(plan, at).0, column(plan, at).1),
                of_key(*key),
                of_cell(own, *key),
                of_key(rests_on),
                of_cell(most, rests_on)
            );
            faults.push(overload("wider-than-its-mode", *key, column(plan, at), message));
        }
    }
    faults
}

fn sling(in_force: &InForce<'_>, plan: &Plan) -> Vec<Fault> {
    let mut faults = Vec::new();
    let mut fault = |at: usize, kind: &'static str, message: String| {
        let (from_day, until_day) = column(plan, at);
        let message = format!("{}: {message}", days(from_day, until_day));
        faults.push(Fault { harm: Harm::Overload, kind, key: None, from_day, until_day, message, rule: kind.into() });
    };
    for at in 0..plan.grid.columns() {
        let day = plan.grid.days[at];
        let (worn, least) = (plan.wear[at], in_force.wear(day));
        if worn < least {
            fault(
                at,
                "sling-worn-less",
                format!("the sling is worn \"{}\" where it is to be worn \"{}\"", worn.name(), least.name()),
            );
        }
        if plan.sling_position[at] < in_force.sling_position(day) && plan.wear[at] != Wear::None {
            fault(
                at,
                "sling-turned-out",
                "the sling holds the forearm straight ahead where turning outward stays below that".into(),
            );
        }
        if at > 0 && plan.wear[at - 1] < worn {
            fault(at, "sling-comes-back", format!("the sling is worn \"{}\" again", worn.name()));
        }
    }
    faults
}

fn gates(book: &Rulebook<'_>, in_force: &InForce<'_>, plan: &Plan) -> Vec<Fault> {
    let mut faults = Vec::new();
    let mut before: Option<(&str, u16)> = None;
    for (id, gate) in book.family.stage_ids().into_iter().zip(&plan.gates) {
        let Some(gate) = *gate else { continue };
        let mut fault = |kind: &'static str, message: String| {
            faults.push(Fault {
                harm: Harm::Overload,
                kind,
                key: None,
                from_day: gate,
                until_day: gate + 1,
                message,
                rule: kind.into(),
            });
        };
        if let Some(least) = in_force.gate(id).filter(|least| *least > gate) {
            fault(
                "gate-too-early",
                format!("the stage `{id}` opens on day {gate}, {} days before day {least}", least - gate),
            );
        }
        if let Some((earlier, day)) = before.filter(|(_, day)| *day >= gate) {
            fault(
                "gates-out-of-order",
                format!("the stage `{id}` opens on day {gate}, and `{earlier}` before it on day {day}"),
            );
        }
        before = Some((id, gate));
    }
    faults
}

fn falls(plan: &Plan) -> Vec<Fault> {
    let mut faults = Vec::new();
    for (lane, key) in (0_u8..).map(LaneId).zip(&plan.grid.keys) {
        let cells = plan.lane(lane);
        if let Some(at) = (1..cells.len()).find(|&at| cells[at] < cells[at - 1]) {
            let day = plan.grid.days[at];
            let message = format!(
                "day {day}: {} falls from {} to {}",
                of_key(*key),
                of_cell(cells[at - 1], *key),
                of_cell(cells[at], *key)
            );
            faults.push(overload("limit-falls", *key, column(plan, at), message));
        }
    }
    faults
}

fn never_lifted(in_force: &InForce<'_>, plan: &Plan) -> Vec<Fault> {
    let Some(last) = plan.grid.columns().checked_sub(1) else { return Vec::new() };
    let (day, horizon) = column(plan, last);
    let mut faults = Vec::new();
    for (lane, key) in (0_u8..).map(LaneId).zip(&plan.grid.keys) {
        let cell = plan.cell(lane, last);
        let lines = in_force.lines(*key);
        let declared = lines.on(day).any(|line| match line.says {
            Says::Protocol(_, limit) => limit.opened_by_surgeon && line.cell == cell,
            Says::SafeArc(_) => true,
            Says::NotListed(_) | Says::Rule(_) => false,
        });
        if cell != Cell::FREE && !declared {
            faults.push(Fault {
                harm: Harm::Stiffness,
                kind: "limit-never-lifts",
                key: Some(*key),
                from_day: day,
                until_day: horizon,
                message: format!(
                    "{} is still {} on day {}, and nothing says that the surgeon lifts it",
                    of_key(*key),
                    of_cell(cell, *key),
                    horizon - 1
                ),
                rule: lines.strictest(day).map_or_else(String::new, |line| line.says.id()),
            });
        }
    }
    faults
}

/// Movements that stay shut passively beyond their latest day.
fn too_late(in_force: &InForce<'_>, plan: &Plan) -> Vec<Fault> {
    let mut faults = Vec::new();
    for (lane, key) in (0_u8..).map(LaneId).zip(&plan.grid.keys) {
        let declared = |protocol: &ProtocolFile| latest_passive(protocol, *key);
        let Some(latest) = in_force.protocols.iter().filter_map(|(_, protocol)| declared(protocol)).max() else {
            continue;
        };
        let cells = plan.lane(lane);
        if cells[plan.grid.column(latest)].is_open() {
            continue;
        }
        let opens = (0..cells.len()).find(|&at| cells[at].is_open()).map(|at| plan.grid.days[at]);
        let until = opens.unwrap_or_else(|| plan.grid.days.last().copied().unwrap_or(latest));
        let when = opens.map_or("never".into(), |day| format!("on day {day}, {} later", of_length(day - latest)));
        let line = in_force.lines(*key).strictest(latest).map(|line| (line.says.id(), line.says.title()));
        let (rule, title) = line.unwrap_or_default();
        faults.push(Fault {
            harm: Harm::Stiffness,
            kind: "passive-too-late",
            key: Some(*key),
            from_day: latest,
            until_day: until,
            message: format!(
                "{} has to be open from day {latest} at the latest and opens {when}, because of {title}",
                of_key(*key)
            ),
            rule,
        });
    }
    faults
}

/// The day from which on a protocol promises a movement passively, whatever is found.
pub(super) fn latest_passive(protocol: &ProtocolFile, key: body::Key) -> Option<u16> {
    protocol.passive_by.iter().find(|promise| promise.keys.contains(&key)).map(|promise| promise.day.count())
}

/// The runs of still days, each day judged by itself.
fn stillness(plan: &Plan) -> Stillness {
    let horizon = plan.grid.days.last().copied().unwrap_or(0);
    let lane = |key: body::Key| plan.grid.keys.iter().position(|lane| *lane == key);
    let value = |key: body::Key, day: u16| {
        lane(key).map_or(Cell::NO, |lane| plan.cells[lane * plan.grid.columns() + plan.grid.column(day)])
    };
    Stillness::of_days(&plan.grid.keys, horizon, value, |day| plan.wear[plan.grid.column(day)])
}
