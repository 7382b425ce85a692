//! Goals: the degrees of the next gate's criteria, and the goals a protocol writes.

use evidence::ids;
use plan::{Allowed, Bound, Cell, GoalLine, Reason};
use protocol::file::Stage;
use quantity::{Degrees, PostoperativeDay};

use crate::dated::Dated;
use crate::rows::protocols;

/// A goal and the days it is shown on: from a day until, not including, the day it is due.
#[derive(Debug, Clone)]
pub(crate) struct DatedGoal {
    pub shown_from: u16,
    pub line: GoalLine,
}

impl DatedGoal {
    /// Whether the goal is worked toward on a day.
    pub(crate) fn is_shown_on(&self, day: u16) -> bool {
        self.shown_from <= day && day < self.line.due.count()
    }
}

/// The stage as the strictest of the plan's protocols writes it: the one with the latest gate.
pub(crate) fn stage<'d>(dated: &'d Dated<'_>, place: usize) -> Option<&'d Stage> {
    let id = dated.compiled.stages[place];
    protocols(dated)
        .filter_map(|protocol| protocol.stages.iter().find(|stage| stage.id == id))
        .max_by_key(|stage| stage.gate)
}

/// All goals of the plan, clipped to the limits they lie under.
///
/// # Method
/// A goal is compared with the lower of the limit on the day it is due and the
/// day before. What leaves less than the least useful arc is dropped.
pub(crate) fn all(dated: &Dated<'_>, adopted: &[String]) -> Vec<DatedGoal> {
    let mut goals = Vec::new();
    let stages = dated.stages();
    for pair in stages.windows(2) {
        let [(_, shown_from), (place, due)] = *pair else { continue };
        let Some(stage) = stage(dated, place) else { continue };
        for criterion in &stage.criteria {
            let Some((key, angle)) = criterion.measure else { continue };
            let line = GoalLine {
                id: format!("{}/{}", stage.id, criterion.id),
                key,
                from: angle,
                to: Some(angle),
                due: PostoperativeDay::new(due),
                held_by_limit: false,
                or_other_shoulder: false,
                adopted: true,
                reasons: vec![Reason {
                    rule: format!("criterion/{}/{}", stage.id, criterion.id),
                    text: criterion.text.clone(),
                    evidence: criterion.evidence.clone(),
                    record: Vec::new(),
                }],
            };
            goals.extend(clipped(dated, line).map(|line| DatedGoal { shown_from, line }));
        }
    }
    let protocol = dated.compiled.protocol(dated.plan.protocol);
    for goal in &protocol.goals {
        let due = dated.moves.reaches(goal.due.count());
        let before = protocol.goals.iter().filter(|other| other.key == goal.key && other.due < goal.due);
        let after_last = before.map(|other| dated.moves.reaches(other.due.count())).max().unwrap_or(0);
        let from_stage = goal.shown_from_stage.as_deref().and_then(|id| {
            dated.compiled.stages.iter().position(|stage| *stage == id).and_then(|stage| dated.gate(stage))
        });
        let memory = goal.evidence.iter().any(|entry| !entry.how_known.may_set_limit());
        let line = GoalLine {
            id: goal.id.clone(),
            key: goal.key,
            from: goal.from,
            to: goal.to,
            due: PostoperativeDay::new(due),
            held_by_limit: false,
            or_other_shoulder: goal.or_other_shoulder,
            adopted: !memory || adopted.contains(&goal.id),
            reasons: vec![Reason {
                rule: format!("{}/goal/{}", protocol.id, goal.id),
                text: if memory { "consensus goal, from memory".into() } else { "goal of the protocol".into() },
                evidence: goal.evidence.clone(),
                record: Vec::new(),
            }],
        };
        // Not before the movement is allowed at all.
        let opens = dated.change_days().into_iter().find(|&day| dated.value(goal.key, day).is_open());
        let Some(opens) = opens.filter(|&opens| opens < due) else { continue };
        let shown_from = from_stage.unwrap_or(after_last).max(opens);
        goals.extend(clipped(dated, line).map(|line| DatedGoal { shown_from, line }));
    }
    goals
}

/// The goal under its limit, or nothing where too little is left.
fn clipped(dated: &Dated<'_>, mut line: GoalLine) -> Option<GoalLine> {
    let due = line.due.count().min(dated.horizon().saturating_sub(1));
    let cell: Cell = dated.value(line.key, due).min(dated.value(line.key, due.saturating_sub(1)));
    let limit = match cell.allowed(line.key) {
        Allowed::No => return None,
        Allowed::Free => return Some(line),
        Allowed::UpTo(Bound::Angle(limit)) => limit,
        Allowed::UpTo(_) => return None,
    };
    if limit < least_arc() {
        return None;
    }
    line.held_by_limit = line.to.is_none_or(|to| to > limit);
    line.to = Some(line.to.map_or(limit, |to| to.min(limit)));
    line.from = line.from.min(limit);
    Some(line)
}

fn least_arc() -> Degrees {
    ids::LEAST_USEFUL_ARC.degrees()
}
