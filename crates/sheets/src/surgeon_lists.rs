//! Goals, gates, returns and visits on the surgeon's page.

use evidence::HowKnown;
use plan::{GoalLine, Prescription, StageLine};

use crate::desk::Desk;
use crate::document::{Block, Cell, Column, Print};
use crate::letter_gates::{closes_again, text};
use crate::limits_columns::issued;
use crate::limits_for_good::of_return;
use crate::limits_table::plain;
use crate::limits_words::{on, short};
use crate::reasons_list::ReasonsList;
use crate::surgeon_exercises::title;
use crate::texts::Texts;

fn table(alt: String, titles: &[(&str, u8)], rows: Vec<Vec<Cell>>) -> Block {
    let columns = titles.iter().map(|(title, share)| Column { title: (*title).into(), share: *share }).collect();
    Block::Table { alt, print: Print::Smaller, columns, rows }
}

/// Each goal once, with the day from which it is shown and the day it is due.
pub(crate) fn goals(desk: &Desk<'_>, reasons: &mut ReasonsList) -> Option<Block> {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let mut shown: Vec<&GoalLine> = Vec::new();
    let mut rows = Vec::new();
    for span in &of.spans {
        for goal in &span.goals {
            if shown.iter().any(|known| known.id == goal.id && known.key == goal.key) {
                continue;
            }
            shown.push(goal);
            rows.push(vec![
                plain(plan::words::of_key(goal.key)),
                plain(aim(goal)),
                plain(on(span.from, span.from_day)),
                plain(on(goal.due.date(of.operated_on), goal.due)),
                plain(remark(goal)),
                plain(reasons.refer_line(&goal.reasons)),
            ]);
        }
    }
    let titles = [("goal", 3), ("aim", 0), ("shown from", 0), ("due", 0), ("remark", 3), ("why", 1)]; // not medical: widths
    (!rows.is_empty()).then(|| table(say.get("surgeon-goals-alt"), &titles, rows))
}

fn aim(goal: &GoalLine) -> String {
    match goal.to {
        Some(to) if to == goal.from => format!("{to}°"),
        Some(to) => format!("{} to {to}°", goal.from),
        None => format!("{}° to normal", goal.from),
    }
}

fn remark(goal: &GoalLine) -> String {
    let mut parts = Vec::new();
    if goal.held_by_limit {
        parts.push("held lower by a limit");
    }
    if goal.or_other_shoulder {
        parts.push("or as the other shoulder, where that moves less");
    }
    let from_memory =
        goal.reasons.iter().flat_map(|reason| &reason.evidence).any(|entry| entry.how_known == HowKnown::Memory);
    match (from_memory, goal.adopted) {
        (true, true) => parts.push("from memory, adopted by the surgeon"),
        (true, false) => parts.push("from memory, not adopted: warns of nothing"),
        (false, _) => {}
    }
    parts.join("; ")
}

/// Every gate with its criteria.
pub(crate) fn gates(desk: &Desk<'_>, reasons: &mut ReasonsList) -> Block {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let mut rows = Vec::new();
    for stage in of.stages.iter().filter(|stage| stage.from_day.count() > 0) {
        let opening = desk.openings.0.iter().rev().find(|opening| opening.stage.value == stage.id);
        let state = match opening {
            Some(opening) if stage.opened => format!("opened {} by {}", short(opening.on.value), opening.by),
            _ if stage.opened => "opened".into(),
            _ if stage.closes_again.is_some() => closes_again(&say, stage),
            _ if waits(of, stage) => say.get("letter-gate-no-visit"),
            _ => "not opened".into(),
        };
        let criteria: Vec<String> = stage
            .criteria
            .iter()
            .map(|criterion| format!("{} ({})", text(of, stage, criterion), reasons.refer_line(&criterion.reasons)))
            .collect();
        rows.push(vec![
            plain(stage.title.clone()),
            plain(on(stage.from, stage.from_day)),
            plain(state),
            plain(criteria.join("\n")),
            plain(reasons.refer_line(&stage.reasons)),
        ]);
    }
    let titles = [("stage", 2), ("gate", 0), ("state", 2), ("looked at before", 5), ("why", 1)]; // not medical: widths
    table(say.get("surgeon-gates-title"), &titles, rows)
}

/// Whether its gate has passed and it is not opened: the visit that was to decide is over.
fn waits(of: &Prescription, stage: &StageLine) -> bool {
    !stage.opened && stage.from <= issued(of)
}

/// Return to activities; a first day that is taken away again has the day for good beside it.
pub(crate) fn returns(desk: &Desk<'_>, reasons: &mut ReasonsList) -> Option<Block> {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let mut rows = Vec::new();
    for line in &of.returns {
        let when = match (line.date, line.day) {
            (Some(date), Some(day)) => match of_return(desk, line) {
                Some(stays) if stays == day => on(date, day),
                Some(stays) => {
                    let told =
                        [("first", on(date, day).into()), ("stays", on(stays.date(of.operated_on), stays).into())];
                    say.with("surgeon-returns-shut-again", &told)
                }
                None => say.with("surgeon-returns-not-again", &[("first", on(date, day).into())]),
            },
            _ => "no dated day allows it".into(),
        };
        let mut remark: Vec<&str> = Vec::new();
        if line.opened_by_surgeon {
            remark.push("only when the surgeon opens it");
        }
        remark.extend(line.note.as_deref());
        rows.push(vec![
            plain(title(desk, &line.activity)),
            plain(when),
            plain(remark.join("; ")),
            plain(reasons.refer_line(&line.reasons)),
        ]);
    }
    let titles = [("activity", 3), ("not before", 0), ("remark", 3), ("why", 1)]; // not medical: widths
    (!rows.is_empty()).then(|| table(say.get("surgeon-returns-alt"), &titles, rows))
}

/// Visits on clinic days.
pub(crate) fn visits(say: &Texts<'_>, of: &Prescription) -> Block {
    let rows = of
        .visits
        .iter()
        .map(|visit| {
            vec![
                plain(visit.purpose.clone()),
                plain(format!("day {}", visit.due_day.count())),
                plain(on(visit.date, visit.day)),
            ]
        })
        .collect();
    table(say.get("surgeon-visits-alt"), &[("visit", 2), ("due", 1), ("clinic day", 2)], rows)
}
