//! Gates with what is looked at before the surgeon opens them.

use plan::{Criterion, GoalLine, Prescription, StageLine};

use crate::document::{Block, Column, Print};
use crate::limits_columns::{issued, next_gate};
use crate::limits_table::plain;
use crate::limits_words::short;
use crate::reasons_list::ReasonsList;
use crate::texts::Texts;

/// What the protocols write after a criterion of motion.
const AT_THE_LIMIT: &str = ", or stopped at the limit of the day";

/// The gate that is decided on next: what the letter is valid until.
pub(crate) fn next(say: &Texts<'_>, of: &Prescription, reasons: &mut ReasonsList) -> Option<Block> {
    let (stage, ..) = next_gate(of)?;
    Some(table(say, of, std::slice::from_ref(stage), reasons))
}

/// Every gate.
pub(crate) fn all(say: &Texts<'_>, of: &Prescription, reasons: &mut ReasonsList) -> Vec<Block> {
    vec![say.heading(2, "surgeon-gates-title"), table(say, of, &of.stages, reasons)]
}

/// A line for each gate: from when, whether it is open or when it is looked at, and what is looked at.
fn table(say: &Texts<'_>, of: &Prescription, stages: &[StageLine], reasons: &mut ReasonsList) -> Block {
    let mut rows = Vec::new();
    for stage in stages.iter().filter(|stage| stage.from_day.count() > 0) {
        let criteria: Vec<String> = stage
            .criteria
            .iter()
            .map(|criterion| text(of, stage, criterion))
            .map(|text| text.strip_suffix(AT_THE_LIMIT).map_or_else(|| text.clone(), |text| format!("{text}†")))
            .map(|text| text.replace(" degrees", "°"))
            .collect();
        let why = stage.reasons.iter().chain(stage.criteria.iter().flat_map(|criterion| &criterion.reasons));
        let why = reasons.refer_line(why);
        let cells = [stage.id.clone(), gate(of, stage), state(say, of, stage), criteria.join(" · "), why];
        rows.push(cells.map(plain).into());
    }
    let titles = ["gate", "not before", "opened?", "looked at first († or stopped at the limit of the day)", "why"];
    let shares = [0, 0, 0, 1, 0];
    let columns = titles.into_iter().zip(shares).map(|(title, share)| Column { title: title.into(), share }).collect();
    Block::Table { alt: say.get("letter-gates-alt"), print: Print::Smaller, columns, rows }
}

/// Whether a gate is opened, and else the visit that decides; one that has passed decided nothing.
fn state(say: &Texts<'_>, of: &Prescription, stage: &StageLine) -> String {
    let purpose = format!("gate: {}", stage.id);
    let visit = of.visits.iter().find(|visit| visit.purpose == purpose).map(|visit| visit.date);
    match visit.filter(|visit| *visit > issued(of)) {
        _ if stage.opened => "yes".into(),
        _ if stage.closes_again.is_some() => closes_again(say, stage),
        Some(visit) if !is_behind_a_waiting_gate(of, stage) => format!("visit {}", short(visit)),
        _ => say.get("letter-gate-no-visit"),
    }
}

/// Whether an earlier gate has passed unopened: then no visit of the dated plan stands any more.
fn is_behind_a_waiting_gate(of: &Prescription, stage: &StageLine) -> bool {
    crate::limits_columns::frozen(of).is_some()
        && next_gate(of).is_some_and(|(next, day, _)| next.id != stage.id && day < stage.from_day)
}

/// From when a stage may be opened; both days where a go-back lies between the next gate and the one for good.
fn gate(of: &Prescription, stage: &StageLine) -> String {
    match next_gate(of) {
        Some((next, _, date)) if next.id == stage.id && date < stage.from => {
            format!("{}, again {}", short(date), short(stage.from))
        }
        _ => short(stage.from),
    }
}

/// That a stage is open now, and that the opening ends with a go-back.
pub(crate) fn closes_again(say: &Texts<'_>, stage: &StageLine) -> String {
    let date = stage.closes_again.map_or_else(String::new, |(_, date)| short(date));
    say.with("letter-gate-closes-again", &[("date", date.into())])
}

/// A criterion with its angle as it can be reached: never above the limit of the day before its gate.
///
/// # Method
/// The engine clips the same angle where it is a goal. Where the limit leaves so little that there is
/// no goal, being stopped at the limit is all that is looked at.
pub(crate) fn text(of: &Prescription, stage: &StageLine, criterion: &Criterion) -> String {
    let id = format!("{}/{}", stage.id, criterion.id);
    let Some(what) = criterion.text.strip_suffix(AT_THE_LIMIT) else { return criterion.text.clone() };
    let Some((before, degrees)) = what.strip_suffix(" degrees").and_then(|what| what.rsplit_once(' ')) else {
        return criterion.text.clone();
    };
    let goal = of.spans.iter().flat_map(|span| &span.goals).find(|goal| goal.id == id);
    match goal {
        Some(GoalLine { to: Some(to), held_by_limit: true, .. }) => format!("{before} {to} degrees{AT_THE_LIMIT}"),
        Some(_) => format!("{before} {degrees} degrees{AT_THE_LIMIT}"),
        None => format!("{before} as far as the limit of the day"),
    }
}
