//! Limits among themselves: one value for a key, rising day by day, lifted in the end.

use body::{ALL_KEYS, Joint, Key};
use diagnostic::{Diagnostic, Sink};
use plan::{Cell, LaneId};

use super::days::together;
use super::under::Under;
use super::words::{in_short, of_cell, of_key, start_of};
use crate::Family;
use crate::file::{Limit, ProtocolFile};

/// Checks the limits of every protocol and rule.
pub(super) fn check(family: &Family, sink: &mut Sink) {
    for protocol in &family.protocols {
        two_values(protocol, sink);
        let horizon = protocol.horizon.count();
        for limit in &protocol.limits {
            falls(limit, sink);
            ends(limit, horizon, sink);
        }
        never_opened(protocol, sink);
    }
    for (_, rule) in family.rules() {
        for limit in &rule.limits {
            falls(limit, sink);
            rule_for_good(&rule.title, limit, sink);
        }
    }
}

fn two_values(protocol: &ProtocolFile, sink: &mut Sink) {
    for (place, limit) in protocol.limits.iter().enumerate() {
        for other in &protocol.limits[..place] {
            let shared = limit.keys.iter().find(|key| other.keys.contains(key));
            if let Some(key) = shared
                && together(limit.choice.as_ref(), other.choice.as_ref())
            {
                sink.push(
                    Diagnostic::error(
                        "contradiction",
                        format!("`{}` and `{}` both give a limit for {}", other.id, limit.id, of_key(*key)),
                    )
                    .at(limit.span)
                    .also(other.span, "the other limit")
                    .help("keep one of the two, or put each under its own option of a choice"),
                );
            }
        }
    }
}

/// A step lower than the one before it.
fn falls(limit: &Limit, sink: &mut Sink) {
    let Some(&key) = limit.keys.first() else { return };
    for pair in limit.steps.windows(2) {
        if pair[1].cell < pair[0].cell {
            sink.push(
                Diagnostic::error(
                    "limit-falls",
                    format!(
                        "{} is {} before day {} and {}{} from then on",
                        of_key(key),
                        of_cell(pair[0].cell, key),
                        pair[1].from,
                        if pair[1].cell.is_open() { "only " } else { "" },
                        of_cell(pair[1].cell, key)
                    ),
                )
                .at(pair[1].span)
                .also(pair[0].span, "the step before")
                .help("limits rise as the repair heals; a setback is a hold in the settings"),
            );
        }
    }
}

/// How the last step of a protocol's limit ends.
fn ends(limit: &Limit, horizon: u16, sink: &mut Sink) {
    let (Some(&key), Some(last)) = (limit.keys.first(), limit.steps.last()) else { return };
    match last.until.filter(|&until| until < horizon) {
        Some(until) if last.cell.is_open() => sink.push(
            Diagnostic::error("limit-falls", format!("{} is not allowed again from day {until}", of_key(key)))
                .at(last.span)
                .label("what no step allows is not allowed")
                .help("leave `until` out of the last step"),
        ),
        _ if last.cell != Cell::FREE && !limit.opened_by_surgeon => sink.push(
            Diagnostic::error("limit-never-lifts", format!("{} stays {} for good", of_key(key), of_cell(last.cell, key)))
                .at(last.span)
                .help("add a step with allowed = \"free\", or opened_by_surgeon = true where the surgeon names the next value"),
        ),
        _ => {}
    }
}

/// A rule that binds to the end: no later day and no surgeon would lift it.
fn rule_for_good(title: &str, limit: &Limit, sink: &mut Sink) {
    let (Some(&key), Some(last)) = (limit.keys.first(), limit.steps.last()) else { return };
    if last.until.is_none() && last.cell != Cell::FREE {
        sink.push(
            Diagnostic::error(
                "limit-never-lifts",
                format!("{} stays {} for good under \"{title}\"", of_key(key), of_cell(last.cell, key)),
            )
            .at(last.span)
            .help("end the last step with `until`; from that day the protocol alone decides"),
        );
    }
}

/// Movements of the shoulder that no limit opens in some option.
fn never_opened(protocol: &ProtocolFile, sink: &mut Sink) {
    // Whether a key is opened under every option shows only where each of them is compiled.
    let opened = |key: &Key| protocol.limits.iter().any(|limit| limit.keys.contains(key));
    let closed: Vec<String> =
        ALL_KEYS.iter().filter(|key| key.joint == Joint::Shoulder && !opened(key)).map(|key| of_key(*key)).collect();
    push_never_opened(protocol, &closed, "", sink);
}

fn push_never_opened(protocol: &ProtocolFile, closed: &[String], option: &str, sink: &mut Sink) {
    if closed.is_empty() {
        return;
    }
    sink.push(
        Diagnostic::error("limit-never-lifts", format!("`{}` never opens {}{option}", protocol.id, in_short(closed)))
            .at(start_of(protocol.span))
            .label("what no limit names stays not allowed")
            .help("add a [[limit]] that opens it, or one with allowed = \"no\" and opened_by_surgeon = true"),
    );
}

/// Keys that a protocol opens, but not under every option.
pub(super) fn check_options(alternatives: &[Under<'_>], sink: &mut Sink) {
    let Some(defaults) = alternatives.first() else { return };
    for (place, protocol) in defaults.protocols() {
        let closed = alternatives.iter().find_map(|under| {
            let owners = &under.compiled.bases[place].owner;
            let lanes = under.grid().keys.iter().zip(owners).filter(|(key, owner)| {
                let opened = protocol.limits.iter().any(|limit| limit.keys.contains(key));
                owner.is_none() && key.joint == Joint::Shoulder && opened
            });
            let closed: Vec<String> = lanes.map(|(key, _)| of_key(*key)).collect();
            (!closed.is_empty()).then_some((closed, &under.option))
        });
        if let Some((closed, option)) = closed {
            push_never_opened(protocol, &closed, option, sink);
        }
    }
}

/// Modes that go further than the mode they rest on.
pub(super) fn check_modes(alternatives: &[Under<'_>], sink: &mut Sink) {
    let Some(defaults) = alternatives.first() else { return };
    for (place, protocol) in defaults.protocols() {
        let mut told: Vec<u16> = Vec::new();
        for (limit, message) in alternatives.iter().flat_map(|under| upside_down(under, place)) {
            if !told.contains(&limit) {
                told.push(limit);
                sink.push(
                    Diagnostic::warning("modes-upside-down", message)
                        .at(protocol.limits[usize::from(limit)].span)
                        .help("write the value that holds: no mode goes further than the mode it rests on"),
                );
            }
        }
    }
}

/// The limits that give a mode further than the mode below it, with what to say.
fn upside_down(under: &Under<'_>, place: usize) -> Vec<(u16, String)> {
    let (grid, base) = (under.grid(), &under.compiled.bases[place]);
    let width = grid.columns();
    let mut found = Vec::new();
    for (lane, below) in under.compiled.rests_on.iter().enumerate() {
        let (Some(LaneId(below)), Some(limit)) = (below, base.owner[lane]) else { continue };
        let below = usize::from(*below);
        let column = (0..width).find(|column| base.cells[lane * width + column] > base.cells[below * width + column]);
        if let Some(column) = column {
            let (key, rests_on) = (grid.keys[lane], grid.keys[below]);
            let (cell, most) = (base.cells[lane * width + column], base.cells[below * width + column]);
            found.push((
                limit,
                format!(
                    "on day {} {} is {} while {} is {}{}",
                    grid.days[column],
                    of_key(key),
                    of_cell(cell, key),
                    of_key(rests_on),
                    of_cell(most, rests_on),
                    under.option
                ),
            ));
        }
    }
    found
}
