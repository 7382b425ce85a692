//! Plans of the shipped families, for tests that ask what a plan says.

use std::sync::LazyLock;

use body::Key;
use operative::{DIMENSION_COUNT, Facts, SafeArcs, dimension};
use plan::{Allowed, Bound, Cell, Plan};

use super::shipped;
use crate::{Choices, Compiled, Family, Library, Requested, resolve};

pub(super) static LIBRARY: LazyLock<Library> = LazyLock::new(shipped);

/// The shipped family for a repair of the cuff.
pub(super) fn cuff() -> &'static Family {
    LIBRARY.families.iter().find(|family| family.file.id == "cuff").expect("it is shipped")
}

/// Facts that are best in everything, except for what is named.
pub(super) fn facts(findings: &[(&str, &str)]) -> Facts {
    findings.iter().fold(
        Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() },
        |facts, (name, class)| {
            let id = dimension(name).expect("a dimension");
            facts.with(id, id.get().and_then(|known| known.class(class)).expect("a class"))
        },
    )
}

/// The plan for some facts, a protocol asked for, and options.
pub(super) fn composed(facts: &Facts, protocol: Option<&str>, options: &[(&str, &str)]) -> Plan {
    let family = cuff();
    let mut choices = Choices::of(family);
    options.iter().for_each(|(choice, option)| choices.take(choice, option));
    let compiled = Compiled::new(family, &choices, &[]);
    let place = protocol.map(|id| family.protocol(id).expect("a protocol") as u8);
    resolve(&compiled, facts, Requested(place))
}

/// What a plan says of a key on a day, as files write it.
pub(super) fn says(plan: &Plan, key: &str, day: u16) -> String {
    let key = Key::parse(key).expect("a key");
    let lane = plan.grid.governing(key).expect("a lane");
    in_words(plan.cell(lane, plan.grid.column(day)), key)
}

/// A value as files write it.
pub(super) fn in_words(cell: Cell, key: Key) -> String {
    match cell.allowed(key) {
        Allowed::No => "no".into(),
        Allowed::Free => "free".into(),
        Allowed::UpTo(Bound::Angle(angle)) => format!("{angle} deg"),
        Allowed::UpTo(Bound::Load(load)) => format!("{load} kg"),
        Allowed::UpTo(Bound::Effort(effort)) => format!("{effort} %"),
    }
}
