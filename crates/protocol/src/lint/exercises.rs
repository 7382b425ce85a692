//! Exercises that no day of their stages can ever allow.

use diagnostic::{Diagnostic, Sink};
use exercise::{Catalogue, Demand, Entry, Kind};
use plan::Cell;

use super::demands::{is_barred, is_met, margin};
use super::under::Under;
use super::words::{of_cell, of_key};
use crate::file::{ExerciseUse, ProtocolFile};

/// Checks the exercises of every protocol against the protocol's own limits.
///
/// # Method
/// The ceiling of muscle activity is not looked at: it depends on the tendons.
pub(super) fn check(alternatives: &[Under<'_>], catalogue: &Catalogue, sink: &mut Sink) {
    let Some(defaults) = alternatives.first() else { return };
    for (place, protocol) in defaults.protocols() {
        for used in &protocol.exercises {
            let entry = catalogue.get(&used.id).filter(|entry| entry.kind == Kind::Exercise);
            let (Some(entry), Some(days)) = (entry, days_of(used, protocol)) else { continue };
            let fault = alternatives.iter().find_map(|under| never(under, place, used, entry, days));
            sink.extend(fault);
        }
    }
}

/// The first day and the first day after; nothing where a stage is unknown, which is told elsewhere.
pub(super) fn days_of(used: &ExerciseUse, protocol: &ProtocolFile) -> Option<(u16, u16)> {
    let gate = |id: &str| protocol.stages.iter().find(|stage| stage.id == id).map(|stage| stage.gate.count());
    let until = match &used.until_stage {
        Some(stage) => gate(stage)?,
        None => protocol.horizon.count(),
    };
    Some((gate(&used.stage)?, until))
}

/// Whether the protocol's own limits allow an exercise in a column.
pub(super) fn is_allowed(under: &Under<'_>, place: usize, entry: &Entry, column: usize) -> bool {
    let met =
        |(at, demand): (usize, &Demand)| is_met(demand, under.in_column(place, demand.key, column), margin(entry, at));
    let protocol = &under.compiled.family.protocols[place];
    !is_barred_in(protocol, entry, under.grid().days[column]) && entry.demands.iter().enumerate().all(met)
}

/// Gates of posture end on days that start a column, so the first day of a column speaks for all of it.
fn is_barred_in(protocol: &ProtocolFile, entry: &Entry, first_day: u16) -> bool {
    protocol.postures.iter().any(|gate| is_barred(entry, gate, first_day))
}

fn never(
    under: &Under<'_>,
    place: usize,
    used: &ExerciseUse,
    entry: &Entry,
    (from, until): (u16, u16),
) -> Option<Diagnostic> {
    let fault = |message: String| {
        Diagnostic::error("exercise-never-allowed", format!("`{}` {message}{}", used.id, under.option)).at(used.span)
    };
    if until <= from {
        return Some(
            fault(format!("starts on day {from} and ends before it: its last stage is not after its first"))
                .help("name a later stage in `until_stage`, or leave it out"),
        );
    }
    let (grid, protocol) = (under.grid(), &under.compiled.family.protocols[place]);
    let columns = grid.column(from)..=grid.column(until - 1);
    let cell = |demand: &Demand, column: usize| under.in_column(place, demand.key, column);
    let met = |(at, demand): (usize, &Demand), column: usize| is_met(demand, cell(demand, column), margin(entry, at));
    let barred = |column: usize| is_barred_in(protocol, entry, grid.days[column]);
    if columns.clone().any(|column| is_allowed(under, place, entry, column)) {
        return None;
    }
    let span = format!("from day {from} to day {}", until - 1);
    let lacking = entry.demands.iter().enumerate().find(|demand| !columns.clone().any(|column| met(*demand, column)));
    let help = "start it with a later stage, or leave it out of the protocol";
    if columns.clone().all(barred) {
        return Some(
            fault(format!("is given {span}, where what it asks for is only allowed lying on the back"))
                .help("take it lying on the back, start it with a later stage, or leave it out of the protocol"),
        );
    }
    Some(match lacking {
        Some((_, demand)) => {
            let most = columns.map(|column| cell(demand, column)).max().unwrap_or(Cell::NO);
            let at_most = if most.is_open() { " at most" } else { "" };
            fault(format!("is given {span}, where {} is {}{at_most}", of_key(demand.key), of_cell(most, demand.key)))
                .fact("an unsupervised target stays the home margin below its limit and needs the least useful arc")
                .help(help)
        }
        None => {
            fault(format!("is given {span}, where what it asks for is never allowed on one day together")).help(help)
        }
    })
}
