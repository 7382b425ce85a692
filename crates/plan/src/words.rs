//! Keys, values and runs of days as a surgeon says them.

use body::{Joint, Key, Position};

use crate::{Allowed, Bound, Cell};

/// A key in words, such as "passive external rotation" or "active flexion of the elbow".
pub fn of_key(key: Key) -> String {
    if key.is_load() {
        return key.movement.to_string();
    }
    let joint = if key.joint == Joint::Shoulder { String::new() } else { format!(" of the {}", key.joint) };
    let position = if key.position == Position::Any { String::new() } else { format!(" ({})", key.position) };
    format!("{} {}{joint}{position}", key.mode, key.movement)
}

/// A value in words.
pub fn of_cell(cell: Cell, key: Key) -> String {
    match cell.allowed(key) {
        Allowed::No => "not allowed".into(),
        Allowed::Free => "free".into(),
        Allowed::UpTo(Bound::Angle(angle)) => format!("allowed up to {angle} degrees"),
        Allowed::UpTo(Bound::Load(load)) => format!("allowed up to {load} kg"),
        Allowed::UpTo(Bound::Effort(effort)) => format!("allowed up to {effort} percent effort"),
    }
}

/// Keys in words, the first two by name.
pub fn of_keys(keys: &[Key]) -> String {
    match keys {
        [] => String::new(),
        [one] => of_key(*one),
        [one, two] => format!("{} and {}", of_key(*one), of_key(*two)),
        [one, two, more @ ..] => format!("{}, {} and {} more", of_key(*one), of_key(*two), more.len()),
    }
}

/// By how much two values differ, where both are bounds of one kind.
pub fn of_difference(a: Cell, b: Cell, key: Key) -> Option<String> {
    let apart = |a: i32, b: i32| (a - b).abs();
    Some(match (a.allowed(key), b.allowed(key)) {
        (Allowed::UpTo(Bound::Angle(a)), Allowed::UpTo(Bound::Angle(b))) => {
            let by = quantity::Degrees::from_steps(apart(a.steps(), b.steps()));
            if by == quantity::Degrees::whole(1) { "1 degree".into() } else { format!("{by} degrees") }
        }
        (Allowed::UpTo(Bound::Load(a)), Allowed::UpTo(Bound::Load(b))) => {
            format!("{} kg", quantity::Kilograms::from_steps(apart(a.steps(), b.steps())))
        }
        (Allowed::UpTo(Bound::Effort(a)), Allowed::UpTo(Bound::Effort(b))) => {
            format!("{} percent", quantity::Percent::from_steps(apart(a.steps(), b.steps())))
        }
        _ => return None,
    })
}

/// A run of days, both ends included.
pub fn of_days(from: u16, until: u16) -> String {
    if until <= from + 1 { format!("day {from}") } else { format!("days {from} to {}", until - 1) }
}

/// A number of days.
pub fn of_length(days: u16) -> String {
    if days == 1 { "1 day".into() } else { format!("{days} days") }
}
