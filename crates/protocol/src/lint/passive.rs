//! The latest day on which each movement of the shoulder is open passively: promised, and kept.

use body::{ALL_KEYS, Joint, Key, Mode};
use diagnostic::{Diagnostic, Sink, Span};

use super::under::Under;
use super::words::{in_short, of_key, start_of};
use crate::Family;
use crate::file::PassiveBy;

/// Checks that every protocol promises one latest day for each movement of the shoulder.
pub(super) fn names(family: &Family, sink: &mut Sink) {
    for protocol in &family.protocols {
        for (place, line) in protocol.passive_by.iter().enumerate() {
            for other in &protocol.passive_by[..place] {
                if let Some(key) = line.keys.iter().find(|key| other.keys.contains(key)) {
                    sink.push(
                        Diagnostic::error(
                            "contradiction",
                            format!("`{}` promises {} by {} and by {}", protocol.id, of_key(*key), other.day, line.day),
                        )
                        .at(line.span)
                        .also(other.span, "the other day")
                        .help("name each movement in one [[passive_by]] only"),
                    );
                }
            }
        }
        let promised = |key: &Key| protocol.passive_by.iter().any(|line| line.keys.contains(key));
        let lacking: Vec<String> = ALL_KEYS
            .iter()
            .filter(|key| key.joint == Joint::Shoulder && key.mode == Mode::Passive && !promised(key))
            .map(|key| of_key(*key))
            .collect();
        if !lacking.is_empty() {
            sink.push(
                Diagnostic::error(
                    "no-latest-passive-day",
                    format!("`{}` promises no latest day for {}", protocol.id, in_short(&lacking)),
                )
                .at(start_of(protocol.span))
                .help("add a [[passive_by]] with the day from which the movement is open whatever was found"),
            );
        }
    }
}

/// Checks that the limits and rules of every protocol keep what it promises.
///
/// # Method
/// A rule is taken to fire, whatever it asks for: the promise holds for every record. A rule that
/// caps with another protocol is left out, as then the later promise of the two counts.
pub(super) fn days(alternatives: &[Under<'_>], sink: &mut Sink) {
    let Some(defaults) = alternatives.first() else { return };
    for (place, protocol) in defaults.protocols() {
        for line in &protocol.passive_by {
            if line.day >= protocol.horizon {
                sink.push(
                    Diagnostic::error(
                        "passive-too-late",
                        format!("`{}` promises {} and ends on {}", protocol.id, line.day, protocol.horizon),
                    )
                    .at(line.span)
                    .help("name a day within the plan"),
                );
                continue;
            }
            let mut told: Vec<(Span, Option<u16>)> = Vec::new();
            for under in alternatives {
                for late in kept_closed(under, place, line) {
                    if !told.contains(&(late.by, late.until)) {
                        told.push((late.by, late.until));
                        sink.push(late.fault(&protocol.id, line, &under.option));
                    }
                }
            }
        }
    }
}

/// Movements that one line keeps closed for longer than promised.
struct Late {
    keys: Vec<Key>,
    /// The first day after; nothing where it never ends.
    until: Option<u16>,
    /// The line that keeps them closed.
    by: Span,
    /// That line in words.
    says: String,
}

impl Late {
    fn fault(&self, protocol: &str, line: &PassiveBy, option: &str) -> Diagnostic {
        let keys: Vec<String> = self.keys.iter().map(|key| of_key(*key)).collect();
        let keys = in_short(&keys);
        let opens = match self.until {
            Some(day) => format!("opens {keys} on day {day}"),
            None => format!("never opens {keys}"),
        };
        Diagnostic::error(
            "passive-too-late",
            format!("`{protocol}` {opens} {}{option}, and promises {} at the latest", self.says, line.day),
        )
        .at(line.span)
        .also(self.by, "this keeps it closed until then")
        .help("open the movement sooner, or promise the later day")
    }
}

fn kept_closed(under: &Under<'_>, place: usize, line: &PassiveBy) -> Vec<Late> {
    let grid = under.grid();
    let protocol = &under.compiled.family.protocols[place];
    let promised = grid.column(line.day.count());
    let mut late: Vec<Late> = Vec::new();
    let mut add = |key: Key, closed: Option<usize>, by: Span, says: &dyn Fn() -> String| {
        let Some(last) = closed.filter(|&column| column >= promised) else { return };
        let until = (last + 1 < grid.columns()).then(|| grid.days[last + 1]);
        match late.iter_mut().find(|known| known.by == by && known.until == until) {
            Some(known) => known.keys.push(key),
            None => late.push(Late { keys: vec![key], until, by, says: says() }),
        }
    };
    for &key in &line.keys {
        let Some(lane) = grid.governing(key) else { continue };
        let closed = (0..grid.columns()).rev().find(|&column| !under.of_lane(place, lane, column).is_open());
        let owner = under.compiled.bases[place].owner[usize::from(lane.0)];
        let limit = owner.map(|limit| &protocol.limits[usize::from(limit)]);
        let span = limit.map_or_else(|| start_of(protocol.span), |limit| limit.span);
        add(key, closed, span, &|| "by its own limits".to_owned());
        for rule in under.compiled.rules.iter().filter(|rule| rule.own.is_none_or(|own| own == place)) {
            let shut = rule.ops.iter().filter(|op| op.lane == lane && !op.cell.is_open() && op.from < op.until);
            let closed = shut.map(|op| usize::from(op.until) - 1).max();
            add(key, closed, rule.rule.span, &|| format!("under the rule `{}`", rule.rule.id));
        }
    }
    late
}
