//! A protocol that caps a plan must be the stricter one.

use diagnostic::{Diagnostic, Sink};
use plan::LaneId;

use super::under::Under;
use super::words::{of_cell, of_key};

/// Checks every protocol that a rule lets cap the plan against the default.
///
/// # Method
/// Where it were looser the lowest value would still win, but the rule would not
/// do what it says.
pub(super) fn check(alternatives: &[Under<'_>], sink: &mut Sink) {
    let Some(defaults) = alternatives.first() else { return };
    let family = defaults.compiled.family;
    let Some(default) = family.protocol(&family.file.default) else { return };
    let mut told = Vec::new();
    for (_, rule) in family.rules() {
        let Some(cap) = rule.cap.as_deref().and_then(|id| family.protocol(id)) else { continue };
        if cap == default || told.contains(&cap) {
            continue;
        }
        if let Some(where_looser) = alternatives.iter().find_map(|under| looser(under, cap, default)) {
            told.push(cap);
            sink.push(
                Diagnostic::error(
                    "cap-not-stricter",
                    format!("`{}` is to make plans stricter, but {where_looser}", family.protocols[cap].id),
                )
                .at(rule.span)
                .help("a protocol that caps is at least as strict as the default in every limit, gate and sling day"),
            );
        }
    }
}

/// Where a protocol is looser than the default, in words.
fn looser(under: &Under<'_>, cap: usize, default: usize) -> Option<String> {
    let grid = under.grid();
    let lanes = (0_u8..).map(LaneId).zip(&grid.keys);
    for (lane, &key) in lanes {
        for column in 0..grid.columns() {
            let (own, usual) = (under.of_lane(cap, lane, column), under.of_lane(default, lane, column));
            if own > usual {
                return Some(format!(
                    "on day {} {} is {} in it and {} in the default{}",
                    grid.days[column],
                    of_key(key),
                    of_cell(own, key),
                    of_cell(usual, key),
                    under.option
                ));
            }
        }
    }
    let (own, usual) = (&under.compiled.bases[cap], &under.compiled.bases[default]);
    if let Some(column) = (0..grid.columns()).find(|&column| own.wear[column] < usual.wear[column]) {
        return Some(format!(
            "on day {} the sling is worn \"{}\" in it and \"{}\" in the default{}",
            grid.days[column],
            own.wear[column].name(),
            usual.wear[column].name(),
            under.option
        ));
    }
    let gates = own.gates.iter().zip(&usual.gates).zip(&under.compiled.stages);
    for ((own, usual), stage) in gates {
        if let (Some(own), Some(usual)) = (own, usual)
            && own < usual
        {
            return Some(format!("the stage `{stage}` opens on day {own} in it and on day {usual} in the default"));
        }
    }
    None
}
