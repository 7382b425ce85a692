//! What a proof found, told for a surgeon: the finding, the days, the movement, by how much, and a record.

use std::collections::{HashMap, HashSet};

use body::Key;
use operative::dim;
use plan::words::{of_cell, of_days, of_key, of_keys, of_length};
use plan::{Change, Plan};
use protocol::checker::{Fault, Harm, Rulebook};
use protocol::{Compiled, resolve};

use crate::edition::EDITION_CHANGED;
use crate::space::{Space, What};
use crate::walk::{LooserThan, Walked, faults_at, is_stricter};
use crate::witness::{Edge, is_believable, witness};

/// Which of the two harms, or which order, a finding is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum About {
    /// A plan that overloads the repair.
    Unsafe,
    /// A plan that a worse finding makes looser.
    Looser,
    /// A plan that only immobilizes.
    Stiffening,
}

/// One finding with the mildest record that shows it.
#[derive(Debug, Clone)]
pub struct Finding {
    /// What it is about.
    pub about: About,
    /// What kind of fault, as a kebab word.
    pub kind: String,
    /// The finding in a sentence.
    pub message: String,
    /// The movement it is about, where it is about one.
    pub key: Option<Key>,
    /// First day of it.
    pub from_day: u16,
    /// First day after it.
    pub until_day: u16,
    /// The line of the files it is about, where there is one.
    pub rule: Option<String>,
    /// How many records have such a plan; 0 where nobody counted.
    pub records: u64,
    /// What the record says that is not the mildest, in words.
    pub who: String,
    /// The record, as a file.
    pub record: String,
    /// The record it is compared with, where two are compared.
    pub compared_with: Option<String>,
}

impl Finding {
    /// Whether it is wrong only against the edition that the files call themselves.
    pub fn is_of_edition(&self) -> bool {
        self.kind == EDITION_CHANGED
    }
}

/// So many findings of one kind are told.
const MOST_TOLD: usize = 12; // not medical: a page of them

/// The findings of a walk, each with its record made as mild as it can be.
pub fn findings(space: &Space<'_>, walked: &Walked) -> Vec<Finding> {
    let mut findings = unsound(space, walked);
    findings.extend(looser(space, walked));
    if !walked.partial {
        findings.extend(promises(space, walked));
    }
    findings
}

fn unsound(space: &Space<'_>, walked: &Walked) -> Vec<Finding> {
    let mut findings: Vec<(String, Finding)> = Vec::new();
    let mut more: HashSet<String> = HashSet::new();
    let mut counted: HashSet<usize> = HashSet::new();
    // With every record by itself a plan comes as often as it has records; it is counted once.
    for found in walked.unsound.iter().filter(|found| counted.insert(found.plan)) {
        let records = walked.representatives.get(found.plan).map_or(0, |(_, records)| *records);
        let (_, mut faults) = faults_at(space, &found.point);
        if faults.is_empty() {
            faults.push(untold());
        }
        let mut told = Vec::new();
        for fault in faults {
            let same = format!("{} {}", fault.kind, fault.rule);
            if told.contains(&same) {
                continue;
            }
            told.push(same.clone());
            if let Some((_, known)) = findings.iter_mut().find(|(known, _)| *known == same) {
                known.records += records;
                continue;
            }
            if findings.len() < MOST_TOLD {
                findings.push((same, of_fault(space, &found.point, &fault, records)));
            } else {
                more.insert(same);
            }
        }
    }
    if let (Some((_, last)), false) = (findings.last_mut(), more.is_empty()) {
        last.message += &format!(" (and {} more kinds of fault)", more.len());
    }
    findings.into_iter().map(|(_, finding)| finding).collect()
}

/// The fast judgment says no, and the telling of it finds nothing: one of the two is wrong, and the plan is not to be trusted.
fn untold() -> Fault {
    Fault {
        harm: Harm::Overload,
        kind: "fault-without-words",
        key: None,
        from_day: 0,
        until_day: 0,
        message: "the plan does not pass, and day by day no fault is found in it: a fault of the program".into(),
        rule: String::new(),
    }
}

fn of_fault(space: &Space<'_>, point: &[u8], fault: &Fault, records: u64) -> Finding {
    let shown = |other: &Fault| (other.kind, &other.rule) == (fault.kind, &fault.rule);
    let mild = mildest(space, point, |point| faults_at(space, point).1.iter().any(shown));
    let fault = faults_at(space, &mild).1.into_iter().find(shown).unwrap_or_else(|| fault.clone());
    Finding {
        about: if fault.harm == Harm::Overload { About::Unsafe } else { About::Stiffening },
        kind: fault.kind.into(),
        message: fault.message,
        key: fault.key,
        from_day: fault.from_day,
        until_day: fault.until_day,
        rule: Some(fault.rule),
        records,
        who: who(space, &mild),
        record: record(space, &mild),
        compared_with: None,
    }
}

fn looser(space: &Space<'_>, walked: &Walked) -> Vec<Finding> {
    let mut findings: Vec<Finding> = Vec::new();
    for pair in &walked.looser {
        let Some(axis) = (0..space.axes.len()).find(|axis| pair.mild[*axis] != pair.worse[*axis]) else { continue };
        let worse_class = pair.worse[axis];
        let names = &space.axes[axis];
        let title = format!(
            "{}: \"{}\" in place of \"{}\"",
            names.name,
            names.classes[usize::from(worse_class)].name,
            names.classes[usize::from(pair.mild[axis])].name
        );
        if findings.len() >= MOST_TOLD || findings.iter().any(|finding| finding.kind == title) {
            continue;
        }
        let with = |point: &[u8]| {
            let mut worse = point.to_vec();
            worse[axis] = worse_class;
            worse
        };
        let holds = |point: &[u8]| {
            let worse = with(point);
            point[axis] == pair.mild[axis]
                && is_believable(&space.facts(&worse))
                && !is_stricter(&plan_at(space, &worse), &plan_at(space, point))
        };
        let mild = mildest(space, &pair.mild, holds);
        findings.push(of_pair(space, &title, &LooserThan { worse: with(&mild), mild }));
    }
    findings
}

fn of_pair(space: &Space<'_>, title: &str, pair: &LooserThan) -> Finding {
    let (before, after) = (plan_at(space, &pair.mild), plan_at(space, &pair.worse));
    let changes: Vec<Change> = before.changes(&after).into_iter().filter(|change| change.b > change.a).collect();
    let weightiest = changes.iter().rev().max_by_key(|change| change.weight());
    let (message, key, from_day, until_day) = match weightiest {
        Some(change) => (
            format!(
                "{title} loosens the plan: {}, {} is {} in place of {}",
                of_days(change.from_day, change.until_day),
                of_key(change.key),
                of_cell(change.b, change.key),
                of_cell(change.a, change.key)
            ),
            Some(change.key),
            change.from_day,
            change.until_day,
        ),
        None => {
            let (what, from, until) = other_difference(&before, &after);
            (format!("{title} loosens the plan: {what}"), None, from, until)
        }
    };
    Finding {
        about: About::Looser,
        kind: title.into(),
        message,
        key,
        from_day,
        until_day,
        rule: None,
        records: 0,
        who: who(space, &pair.mild),
        record: record(space, &pair.worse),
        compared_with: Some(record(space, &pair.mild)),
    }
}

/// A sling or a gate that the second plan has looser.
fn other_difference(before: &Plan, after: &Plan) -> (String, u16, u16) {
    let grid = &before.grid;
    if let Some(at) = (0..grid.columns()).find(|&at| after.wear[at] < before.wear[at]) {
        let (from, until) = (grid.days[at], grid.days[at + 1]);
        let (own, usual) = (after.wear[at].name(), before.wear[at].name());
        return (format!("{}, the sling is worn \"{own}\" in place of \"{usual}\"", of_days(from, until)), from, until);
    }
    let gates = before.gates.iter().zip(&after.gates);
    let earlier = gates.filter_map(|(before, after)| before.zip(*after)).find(|(before, after)| after < before);
    let (before, after) = earlier.unwrap_or_default();
    (format!("a stage opens on day {after} in place of day {before}"), after, before)
}

/// Promises against stiffness that are later than any record needs: they would let a movement open later unseen.
fn promises(space: &Space<'_>, walked: &Walked) -> Vec<Finding> {
    let by_default = |point: &[u8]| {
        space.axes.iter().zip(point).all(|(axis, class)| match axis.what {
            What::Options | What::SafeArc(_) => *class == 0,
            What::Protocol | What::Fact(_) => true,
        })
    };
    let compiled = Compiled::new(space.family, &space.options[0], &[]);
    let book = Rulebook::new(space.family, &space.options[0]);
    // For each movement and promised day in force the latest day on which a record opens it.
    let mut needed: HashMap<(Key, u16), u16> = HashMap::new();
    for (point, _) in walked.representatives.iter().filter(|(point, _)| by_default(point)) {
        let (facts, requested) = (space.facts(point), space.requested(point));
        let plan = resolve(&compiled, &facts, requested);
        let in_force = book.in_force(&facts, requested).protocols;
        let promised = || in_force.iter().flat_map(|(_, protocol)| &protocol.passive_by);
        for key in promised().flat_map(|promise| &promise.keys) {
            let days = promised().filter(|promise| promise.keys.contains(key)).map(|promise| promise.day.count());
            let Some((day, lane)) = days.max().zip(plan.grid.lane(*key)) else { continue };
            let cells = plan.lane(lane);
            let opens = cells.iter().position(|cell| cell.is_open()).map_or(u16::MAX, |column| plan.grid.days[column]);
            let latest = needed.entry((*key, day)).or_default();
            *latest = (*latest).max(opens);
        }
    }
    let mut findings = Vec::new();
    for protocol in &space.family.protocols {
        for promise in &protocol.passive_by {
            let day = promise.day.count();
            let later: Vec<(Key, u16)> = promise
                .keys
                .iter()
                .filter_map(|key| Some((*key, *needed.get(&(*key, day))?)))
                .filter(|(_, latest)| *latest < day)
                .collect();
            let Some((key, latest)) = later.first().copied() else { continue };
            let keys: Vec<Key> = later.iter().map(|(key, _)| *key).collect();
            findings.push(Finding {
                about: About::Stiffening,
                kind: "promise-too-late".into(),
                message: format!(
                    "`{}` promises {} by day {day}, and every record has it by day {latest}: the promise would let it \
                     open {} later unseen",
                    protocol.id,
                    of_keys(&keys),
                    of_length(day - latest)
                ),
                key: Some(key),
                from_day: latest,
                until_day: day,
                rule: Some(format!("{}/passive_by", protocol.id)),
                records: 0,
                who: "every record of the protocol".into(),
                record: String::new(),
                compared_with: None,
            });
        }
    }
    findings
}

/// The plan of a point.
pub fn plan_at(space: &Space<'_>, point: &[u8]) -> Plan {
    let compiled = Compiled::new(space.family, space.choices(point), &[]);
    resolve(&compiled, &space.facts(point), space.requested(point))
}

/// The mildest point that still shows something: on each axis the first class with which it does.
fn mildest(space: &Space<'_>, point: &[u8], holds: impl Fn(&[u8]) -> bool) -> Vec<u8> {
    let mut point = point.to_vec();
    // Twice, because one axis may only become mild once another is.
    for axis in (0..space.axes.len()).chain(0..space.axes.len()) {
        for class in 0..point[axis] {
            let mut milder = point.clone();
            milder[axis] = class;
            if is_believable(&space.facts(&milder)) && holds(&milder) {
                point = milder;
                break;
            }
        }
    }
    point
}

/// What of a point is not the mildest, in words.
pub fn who(space: &Space<'_>, point: &[u8]) -> String {
    let said =
        space.axes.iter().zip(point).filter(|(axis, class)| **class > 0 || axis.what == What::Fact(dim::TEAR_SIZE));
    let said: Vec<String> =
        said.map(|(axis, class)| format!("{} {}", axis.name, axis.classes[usize::from(*class)].name)).collect();
    if said.is_empty() { "every record".into() } else { said.join(", ") }
}

/// The record of a point, with the protocol and the options it is about.
pub fn record(space: &Space<'_>, point: &[u8]) -> String {
    let mut text = String::new();
    for (axis, class) in space.axes.iter().zip(point).filter(|(_, class)| **class > 0) {
        if matches!(axis.what, What::Options | What::Protocol) {
            text += &format!("# {}: {}\n", axis.name, axis.classes[usize::from(*class)].name);
        }
    }
    text + &witness(&space.facts(point), Edge::Middle)
}
