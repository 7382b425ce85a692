//! Limits that differ, by movement: movements that change alike stand together.

use std::fmt::Write as _;

use body::{Key, Mode};
use plan::{Allowed, Bound};
use prescription::compare::{LimitChange, Value, Which};

use super::days::{Days, later};
use super::{Kind, WIDTH};
use crate::view::paint::{FAINT, HEADING, paint, wrapped};
use crate::view::prescription::{names, section};

/// Modes that change alike, with what changes.
type Modes = Vec<(Vec<Mode>, Vec<String>)>;

/// A movement with the lines of its modes.
struct Movement {
    key: Key,
    modes: Modes,
}

pub(super) fn write(page: &mut String, changes: &[LimitChange], kind: Kind, days: &Days) {
    if changes.is_empty() {
        return;
    }
    section(page, if kind == Kind::Rule { "Limits that the rule caps" } else { "Limits" });
    let mut groups: Vec<(Vec<Key>, Modes)> = Vec::new();
    for Movement { key, modes } in movements(changes, kind, days) {
        match groups.iter_mut().find(|(_, known)| *known == modes) {
            Some((keys, _)) => keys.push(key),
            None => groups.push((vec![key], modes)),
        }
    }
    for (keys, modes) in groups {
        let _ = writeln!(page, "  {}", paint(HEADING, &wrapped(&names(&keys), WIDTH, "  ")));
        for (modes, lines) in modes {
            let modes: Vec<&str> = modes.iter().map(|mode| mode.name()).collect();
            let _ = writeln!(page, "    {}", paint(FAINT, &wrapped(&modes.join(", "), WIDTH - 2, "    ")));
            for line in lines {
                let _ = writeln!(page, "      {}", wrapped(&line, WIDTH - 4, "        "));
            }
        }
    }
}

/// Each movement in each position, with its modes; modes that change alike stand together.
fn movements(changes: &[LimitChange], kind: Kind, days: &Days) -> Vec<Movement> {
    let mut movements: Vec<Movement> = Vec::new();
    let mut at = 0;
    let mut sorted: Vec<&LimitChange> = changes.iter().collect();
    sorted.sort_by_key(|change| {
        let key = change.key;
        (key.joint, key.movement, key.position, key.mode, change.from_day)
    });
    while let Some(first) = sorted.get(at) {
        let own: Vec<&&LimitChange> = sorted[at..].iter().take_while(|change| change.key == first.key).collect();
        let lines: Vec<String> = own.iter().map(|change| line(change, kind, days)).collect();
        at += own.len();
        let same = |movement: &Movement| {
            let (a, b) = (movement.key, first.key);
            (a.joint, a.movement, a.position) == (b.joint, b.movement, b.position)
        };
        let mode = first.key.mode;
        match movements.last_mut().filter(|last| same(last)) {
            Some(movement) => match movement.modes.iter_mut().find(|(_, known)| *known == lines) {
                Some((modes, _)) => modes.push(mode),
                None => movement.modes.push((vec![mode], lines)),
            },
            None => movements.push(Movement { key: first.key, modes: vec![(vec![mode], lines)] }),
        }
    }
    movements
}

/// "days 14 to 41: up to 90 degrees in A, not allowed in B (28 days later)".
fn line(change: &LimitChange, kind: Kind, days: &Days) -> String {
    let comes = match change.days_later {
        _ if kind == Kind::Rule => String::new(),
        Some(by) => format!(" ({})", later(by)),
        None if change.looser.is_some() => " (not in the dated plan)".into(),
        None => String::new(),
    };
    let (after_a, after_b) = match change.looser {
        Some(Which::A) => ("", comes.as_str()),
        Some(Which::B) => (comes.as_str(), ""),
        None => ("", ""),
    };
    format!(
        "{}: {} {}{after_a}, {} {}{after_b}",
        days.run(change.from_day, change.until_day),
        value(change.a, change.key, kind),
        days.a,
        value(change.b, change.key, kind),
        days.b
    )
}

fn value(value: Value, key: Key, kind: Kind) -> String {
    let lying = if value.only_lying { " lying on the back" } else { "" };
    let text = match value.cell.allowed(key) {
        Allowed::Free if kind == Kind::Rule => "left alone".to_owned(),
        Allowed::Free => "free".to_owned(),
        Allowed::No => "not allowed".to_owned(),
        Allowed::UpTo(Bound::Angle(angle)) => format!("up to {angle} degrees"),
        Allowed::UpTo(Bound::Load(load)) => format!("up to {load} kg"),
        Allowed::UpTo(Bound::Effort(effort)) => format!("up to {effort} percent effort"),
    };
    format!("{text}{lying}")
}
