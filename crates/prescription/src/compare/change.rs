//! What differs between two courses.

use std::collections::{BTreeMap, BTreeSet};

use body::{Key, Position};

use super::course::{self, Course, Exercise, Line, LineKind, Sling, Value};
use super::runs::{Runs, pieces};

/// One of the two sides.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Which {
    /// The first.
    A,
    /// The second.
    B,
}

/// Everything that differs.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Comparison {
    /// Limits, key by key, in runs of days.
    pub limits: Vec<LimitChange>,
    /// The sling, in runs of days.
    pub sling: Vec<SlingChange>,
    /// Exercises that come, go or change their dose.
    pub exercises: Vec<ExerciseChange>,
    /// First days of movements.
    pub first_allowed: Vec<FirstChange>,
    /// Stages, goals, visits and returns.
    pub lines: Vec<LineChange>,
    /// What is said beside the plan on one side alone.
    pub beside: Vec<BesideChange>,
}

/// A run of days on which a key has two values.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimitChange {
    /// The key.
    pub key: Key,
    /// First day.
    pub from_day: u16,
    /// First day after.
    pub until_day: u16,
    /// The value on the first side.
    pub a: Value,
    /// The value on the second side.
    pub b: Value,
    /// Which side allows more; `None` where each allows something the other does not.
    pub looser: Option<Which>,
    /// How many days after the looser side the other side allows as much.
    pub days_later: Option<u16>,
}

/// A run of days on which the sling is worn in two ways.
#[derive(Debug, Clone, PartialEq)]
pub struct SlingChange {
    /// First day.
    pub from_day: u16,
    /// First day after.
    pub until_day: u16,
    /// The sling of the first side.
    pub a: Option<Sling>,
    /// The sling of the second side.
    pub b: Option<Sling>,
    /// Which side wears it less.
    pub looser: Option<Which>,
}

/// A run of days on which an exercise is done on one side alone, or in two ways.
#[derive(Debug, Clone, PartialEq)]
pub struct ExerciseChange {
    /// The exercise.
    pub id: String,
    /// First day.
    pub from_day: u16,
    /// First day after.
    pub until_day: u16,
    /// How it is done on the first side.
    pub a: Option<Exercise>,
    /// How it is done on the second side.
    pub b: Option<Exercise>,
}

/// A movement in a mode that starts on two days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FirstChange {
    /// Joint, movement and mode; any position.
    pub key: Key,
    /// The first day on the first side; `None` for never.
    pub a: Option<u16>,
    /// The first day on the second side.
    pub b: Option<u16>,
}

/// A line that stands on one side alone, or says two things.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LineChange {
    /// What it is.
    pub kind: LineKind,
    /// Its id.
    pub id: String,
    /// The line on the first side.
    pub a: Option<Line>,
    /// The line on the second side.
    pub b: Option<Line>,
}

/// What is said beside the plan on one side alone.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BesideChange {
    /// What kind of remark.
    pub what: &'static str,
    /// Said on the first side alone.
    pub a: Vec<String>,
    /// Said on the second side alone.
    pub b: Vec<String>,
}

impl Comparison {
    /// Whether nothing changes for any patient, whatever else is said beside the plan.
    ///
    /// # Method
    /// When a rule fires and how a family selects is told beside the plan, and it decides who gets which.
    pub fn is_same_plan(&self) -> bool {
        let Self { limits, sling, exercises, first_allowed, lines, beside } = self;
        let decides = |change: &BesideChange| [course::beside::RULE, course::beside::FAMILY].contains(&change.what);
        limits.is_empty()
            && sling.is_empty()
            && exercises.is_empty()
            && first_allowed.is_empty()
            && lines.is_empty()
            && !beside.iter().any(decides)
    }

    /// Takes out what `known` has as well.
    pub(super) fn leave_out(&mut self, known: &Self) {
        self.limits.retain(|change| !known.limits.contains(change));
        self.sling.retain(|change| !known.sling.contains(change));
        self.exercises.retain(|change| !known.exercises.contains(change));
        self.first_allowed.retain(|change| !known.first_allowed.contains(change));
        self.lines.retain(|change| !known.lines.contains(change));
        self.beside.retain(|change| !known.beside.contains(change));
    }

    /// Whether nothing differs at all.
    pub fn is_empty(&self) -> bool {
        self.beside.is_empty() && self.is_same_plan()
    }
}

/// What differs between two courses, up to the earlier of their horizons.
pub fn compare(a: &Course, b: &Course) -> Comparison {
    let horizon = a.horizon.min(b.horizon);
    Comparison {
        limits: limits(a, b, horizon),
        sling: sling(a, b, horizon),
        exercises: exercises(a, b, horizon),
        first_allowed: first_allowed(a, b),
        lines: lines(a, b),
        beside: beside(a, b),
    }
}

fn limits(a: &Course, b: &Course, horizon: u16) -> Vec<LimitChange> {
    let keys: BTreeSet<Key> = a.limits.keys().chain(b.limits.keys()).copied().collect();
    keys.into_iter().flat_map(|key| limit(a, b, key, horizon)).collect()
}

/// A run of days with the values of both sides.
struct Piece {
    from: u16,
    until: u16,
    values: [Value; 2],
    /// Whether the row for any position says it already; then it is not said again for a named one.
    said: bool,
}

/// The runs on which one key differs.
fn limit(a: &Course, b: &Course, key: Key, horizon: u16) -> Vec<LimitChange> {
    let any = key.in_position(Position::Any);
    let rows = [a, b].into_iter().flat_map(|side| [side.limits.get(&key), side.limits.get(&any)]).flatten();
    let mut joined: Vec<Piece> = Vec::new();
    for (from, until) in pieces(rows.flat_map(Runs::borders), horizon) {
        let values = [a.value(key, from), b.value(key, from)];
        let said = key != any && [a.value(any, from), b.value(any, from)] == values;
        match joined.last_mut() {
            Some(last) if (last.values, last.said) == (values, said) => last.until = until,
            _ => joined.push(Piece { from, until, values, said }),
        }
    }
    let changes = (0..joined.len()).filter(|&at| !joined[at].said && joined[at].values[0] != joined[at].values[1]);
    changes
        .map(|at| {
            let Piece { from, until, values: [a, b], .. } = joined[at];
            let looser = looser(a, b);
            let days_later = looser.and_then(|which| days_later(&joined, at, which));
            LimitChange { key, from_day: from, until_day: until, a, b, looser, days_later }
        })
        .collect()
}

fn looser(a: Value, b: Value) -> Option<Which> {
    match (a.allows_as_much_as(b), b.allows_as_much_as(a)) {
        (true, false) => Some(Which::A),
        (false, true) => Some(Which::B),
        _ => None,
    }
}

/// How many days after the looser side the other one allows as much; `None` where it never does.
fn days_later(pieces: &[Piece], at: usize, looser: Which) -> Option<u16> {
    let (own, others) = match looser {
        Which::A => (0, 1),
        Which::B => (1, 0),
    };
    let reached = pieces[at].values[own];
    let earlier = pieces[..at].iter().rev().take_while(|piece| piece.values[own].allows_as_much_as(reached));
    let since = earlier.last().map_or(pieces[at].from, |piece| piece.from);
    let later = pieces[at + 1..].iter().find(|piece| piece.values[others].allows_as_much_as(reached))?;
    Some(later.from - since)
}

fn sling(a: &Course, b: &Course, horizon: u16) -> Vec<SlingChange> {
    differing(&a.sling, &b.sling, horizon)
        .into_iter()
        .map(|(from_day, until_day, a, b)| {
            let wear = |sling: &Option<Sling>| sling.as_ref().map(|sling| sling.wear).unwrap_or_default();
            let looser = match wear(&a).cmp(&wear(&b)) {
                std::cmp::Ordering::Less => Some(Which::A),
                std::cmp::Ordering::Equal => None,
                std::cmp::Ordering::Greater => Some(Which::B),
            };
            SlingChange { from_day, until_day, a, b, looser }
        })
        .collect()
}

fn exercises(a: &Course, b: &Course, horizon: u16) -> Vec<ExerciseChange> {
    let ids: BTreeSet<&String> = a.exercises.keys().chain(b.exercises.keys()).collect();
    let none = Runs::default();
    let mut changes: Vec<ExerciseChange> = ids
        .into_iter()
        .flat_map(|id| {
            let (a, b) = (a.exercises.get(id).unwrap_or(&none), b.exercises.get(id).unwrap_or(&none));
            let runs = differing(a, b, horizon).into_iter();
            runs.map(|(from_day, until_day, a, b)| ExerciseChange { id: id.clone(), from_day, until_day, a, b })
        })
        .collect();
    changes.sort_by_key(|change| (change.from_day, change.until_day));
    changes
}

/// The runs of days on which two sides differ, with what each has there.
fn differing<T: PartialEq + Clone>(a: &Runs<T>, b: &Runs<T>, horizon: u16) -> Vec<(u16, u16, Option<T>, Option<T>)> {
    let mut found: Vec<(u16, u16, Option<T>, Option<T>)> = Vec::new();
    for (from, until) in pieces(a.borders().chain(b.borders()), horizon) {
        let (a, b) = (a.at(from), b.at(from));
        if a == b {
            continue;
        }
        match found.last_mut() {
            Some(last) if last.1 == from && last.2.as_ref() == a && last.3.as_ref() == b => last.1 = until,
            _ => found.push((from, until, a.cloned(), b.cloned())),
        }
    }
    found
}

fn first_allowed(a: &Course, b: &Course) -> Vec<FirstChange> {
    let all = a.limits.keys().chain(b.limits.keys());
    let keys: BTreeSet<Key> = all.map(|key| key.in_position(Position::Any)).collect();
    let firsts = keys.into_iter().map(|key| FirstChange { key, a: a.first_open(key), b: b.first_open(key) });
    firsts.filter(|first| first.a != first.b).collect()
}

/// Lines are paired by what they are and their id; the second of one id with the second.
fn lines(a: &Course, b: &Course) -> Vec<LineChange> {
    let mut pairs: BTreeMap<(LineKind, &str, usize), [Option<&Line>; 2]> = BTreeMap::new();
    let mut order: Vec<(LineKind, &str, usize)> = Vec::new();
    for (side, course) in [a, b].into_iter().enumerate() {
        let mut seen: BTreeMap<(LineKind, &str), usize> = BTreeMap::new();
        for line in &course.lines {
            let count = seen.entry((line.kind, &line.id)).or_default();
            let key = (line.kind, line.id.as_str(), *count);
            *count += 1;
            let pair = pairs.entry(key).or_insert_with(|| {
                order.push(key);
                [None; 2]
            });
            pair[side] = Some(line);
        }
    }
    order.sort_by_key(|(kind, ..)| *kind);
    order
        .into_iter()
        .filter_map(|key| Some((key, pairs.get(&key)?)))
        .filter(|(_, [a, b])| a != b)
        .map(|((kind, id, _), [a, b])| LineChange { kind, id: id.to_owned(), a: a.cloned(), b: b.cloned() })
        .collect()
}

fn beside(a: &Course, b: &Course) -> Vec<BesideChange> {
    let mut kinds: Vec<&'static str> = Vec::new();
    for remark in a.beside.iter().chain(&b.beside) {
        if !kinds.contains(&remark.what) {
            kinds.push(remark.what);
        }
    }
    let alone = |own: &Course, other: &Course, what: &str| -> Vec<String> {
        let said: BTreeSet<&str> =
            other.beside.iter().filter(|remark| remark.what == what).map(|remark| remark.text.as_str()).collect();
        let own = own.beside.iter().filter(|remark| remark.what == what && !said.contains(remark.text.as_str()));
        own.map(|remark| remark.text.clone()).collect()
    };
    kinds
        .into_iter()
        .map(|what| BesideChange { what, a: alone(a, b, what), b: alone(b, a, what) })
        .filter(|change| !change.a.is_empty() || !change.b.is_empty())
        .collect()
}

#[cfg(test)]
mod tests;
