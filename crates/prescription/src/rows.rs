//! The limits of a day, key by key.

use body::{Joint, Position};
use plan::{Cell, LaneId, LimitRow, Reason, SlingLine};

use crate::dated::Dated;
use crate::reasons::Reasons;

/// The limits of a day as rows: every key of the shoulder, and of the rest what is allowed or named.
///
/// # Method
/// Rows are written with position `any`. A named position has a row of its own
/// only where its value differs; where it allows more, and any other position
/// nothing, the row for any position is left out, because a row for any
/// position would bind the named one as well.
pub(crate) fn of_day(
    dated: &Dated<'_>,
    value: impl Fn(LaneId) -> Cell,
    reasons: impl Fn(LaneId) -> Vec<Reason>,
    day: u16,
) -> Vec<LimitRow> {
    let grid = &dated.plan.grid;
    let mut rows = Vec::with_capacity(grid.keys.len());
    for (lane, key) in (0_u8..).map(LaneId).zip(&grid.keys) {
        let cell = value(lane);
        if key.position == Position::Any {
            let named_allows_more = (0_u8..).map(LaneId).zip(&grid.keys).any(|(other, named)| {
                named.position != Position::Any && named.in_position(Position::Any) == *key && value(other) > cell
            });
            if named_allows_more && !cell.is_open() {
                continue;
            }
        } else {
            let any = grid.lane(key.in_position(Position::Any)).map(&value);
            if any == Some(cell) {
                continue;
            }
        }
        rows.push(LimitRow {
            key: *key,
            allowed: cell.allowed(*key),
            only_lying: cell.is_open() && key.joint == Joint::Shoulder && only_lying(dated, key.mode, day),
            reasons: reasons(lane),
        });
    }
    rows.sort_by_key(|row| (row.key.joint, row.key.movement, row.key.mode, row.key.position));
    rows
}

/// Whether a mode is allowed only lying on the back on a day.
pub(crate) fn only_lying(dated: &Dated<'_>, mode: body::Mode, day: u16) -> bool {
    let lives = dated.moves.lives(Joint::Shoulder, day);
    protocols(dated).any(|protocol| protocol.is_only_lying(mode, lives))
}

/// The chosen protocol and those that cap the plan.
pub(crate) fn protocols<'d>(dated: &'d Dated<'_>) -> impl Iterator<Item = &'d protocol::file::ProtocolFile> {
    let plan = &dated.plan;
    (0_u8..)
        .zip(&dated.compiled.family.protocols)
        .filter(move |(place, _)| *place == plan.protocol || plan.caps & (1 << place) != 0)
        .map(|(_, protocol)| protocol)
}

/// The sling of a day.
pub(crate) fn sling(dated: &Dated<'_>, reasons: &Reasons<'_>, day: u16) -> SlingLine {
    let wear = dated.wear(day);
    let column = dated.column(Joint::WholeArm, day);
    let except = dated
        .compiled
        .sling_binding(&dated.plan, dated.choices, column)
        .into_iter()
        .map(|(_, _, step)| &step.except)
        .find(|except| !except.is_empty())
        .cloned();
    let except = except.or_else(|| {
        dated
            .compiled
            .protocol(dated.plan.protocol)
            .slings
            .iter()
            .map(|step| step.except.clone())
            .find(|e| !e.is_empty())
    });
    SlingLine {
        wear,
        position: dated.sling_position(day),
        except: if wear == plan::Wear::None { Vec::new() } else { except.unwrap_or_default() },
        reasons: reasons.of_sling(day),
    }
}
