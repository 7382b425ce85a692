//! What each answer to an open question would change.

use diagnostic::Sink;
use operative::{DIMENSIONS, DimensionId, Facts};
use plan::{LaneId, Plan};
use protocol::Compiled;

use crate::compare::{Comparison, Course, Line, LineKind, Sling, Value, compare};
use crate::issue::{Case, with_context};
use crate::questions::{self, Open, Plans};

/// An open question with what each of its answers would change.
#[derive(Debug, Clone, PartialEq)]
pub struct OpenQuestion {
    /// Where answers are written, each place with its question.
    pub asked: Vec<(String, String)>,
    /// Whether it stands before signing.
    pub blocks_signing: bool,
    /// Its answers; those that no rule tells apart stand together.
    pub answers: Vec<Answer>,
}

/// An answer, or several that no rule tells apart.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The answers, in the words of the facts.
    pub words: Vec<&'static str>,
    /// What it stands for.
    pub because: &'static str,
    /// Answers to other open questions without which this one changes nothing.
    pub together: Vec<Together>,
    /// What changes in limits, sling and gates: first the plan with the question open, then answered.
    pub comparison: Comparison,
}

/// An answer to another open question.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Together {
    /// The fact.
    pub fact: &'static str,
    /// Its answer.
    pub answer: &'static str,
}

/// The open questions of a record whose answers would change its plan, and those that stand before signing.
///
/// # Method
/// Each answer alone, everything else as recorded. Where that changes nothing,
/// because another open fact counts as the same finding, the answers to other
/// open facts with which it changes most, and of these as few as it takes.
///
/// # Errors
/// `None` with at least one error in the sink, as for a prescription.
pub fn questions_of(case: &Case<'_>, sink: &mut Sink) -> Option<Vec<OpenQuestion>> {
    with_context(case, sink, |context, _, extras| {
        let dated = context.dated;
        let facts = &dated.facts;
        let mut plans = Plans::new(dated.compiled, extras.requested);
        let has_loosening = !dated.loosened.is_empty();
        let mut found: Vec<OpenQuestion> = Vec::new();
        for blocking in questions::blocking(context.reasons, has_loosening) {
            let family = &dated.compiled.family.file;
            let Some(question) = family.questions.iter().find(|question| question.path == blocking.path) else {
                continue;
            };
            let fact = question.answered_by;
            // Class 0 means not answered.
            let answers: Vec<Vec<u8>> = (1..classes(fact)).map(|class| vec![class]).collect();
            found.push(OpenQuestion {
                asked: vec![(blocking.path, blocking.text)],
                blocks_signing: true,
                answers: answers.into_iter().map(|answer| answered(&mut plans, facts, fact, &answer, &[])).collect(),
            });
        }
        let open = questions::open(dated.compiled, case.record);
        for fact in &open {
            let others: Vec<&Open> = open.iter().filter(|other| other.dimension != fact.dimension).collect();
            let answers: Vec<Answer> =
                fact.alike.iter().map(|alike| answered(&mut plans, facts, fact.dimension, alike, &others)).collect();
            let asked: Vec<(String, String)> =
                case.record.missing(fact.dimension).into_iter().map(|missing| (missing.path, missing.text)).collect();
            if answers.iter().any(|answer| !answer.comparison.is_empty()) {
                found.push(OpenQuestion { asked, blocks_signing: false, answers });
            }
        }
        found
    })
}

fn classes(of: DimensionId) -> u8 {
    of.get().map_or(0, |dimension| dimension.classes.len() as u8)
}

/// What one answer changes, alone or with as few others as it takes.
fn answered(plans: &mut Plans<'_>, facts: &Facts, of: DimensionId, alike: &[u8], others: &[&Open]) -> Answer {
    let class = alike.first().copied().unwrap_or_default();
    let mut completed = *facts;
    if plans.weight(facts, &facts.with(of, class)) == 0 {
        let most = questions::combinations(facts, others)
            .into_iter()
            .map(|completed| (plans.weight(&completed, &completed.with(of, class)), completed))
            .max_by_key(|(weight, _)| *weight);
        if let Some((weight, most)) = most.filter(|(weight, _)| *weight > 0) {
            completed = most;
            for other in others {
                let left_open = completed.with(other.dimension, facts.class(other.dimension));
                if plans.weight(&left_open, &left_open.with(of, class)) >= weight {
                    completed = left_open;
                }
            }
        }
    }
    let together = others
        .iter()
        .filter(|other| completed.class(other.dimension) != facts.class(other.dimension))
        .map(|other| Together {
            fact: DIMENSIONS[usize::from(other.dimension.0)].name,
            answer: completed.class_name(other.dimension),
        })
        .collect();
    let now = course(plans.compiled, plans.get(&completed));
    let then = course(plans.compiled, plans.get(&completed.with(of, class)));
    let because = of.get().and_then(|dimension| dimension.classes.get(usize::from(class))).map_or("", |c| c.because);
    let words = alike.iter().map(|&class| facts.with(of, class).class_name(of)).collect();
    Answer { words, because, together, comparison: compare(&now, &then) }
}

/// Limits, sling and gates of a composed plan.
fn course(compiled: &Compiled<'_>, plan: &Plan) -> Course {
    let grid = &plan.grid;
    let mut course = Course::empty(grid.days.last().copied().unwrap_or(0), plan::Cell::NO);
    let in_force = |place: u8| place == plan.protocol || plan.caps & (1 << place) != 0;
    let protocols = || (0_u8..).zip(&compiled.family.protocols).filter(move |(place, _)| in_force(*place));
    let lying = |mode: body::Mode, day: u16| {
        protocols()
            .flat_map(|(_, protocol)| &protocol.postures)
            .any(|gate| gate.modes.contains(&mode) && day < gate.until.count())
    };
    for (lane, key) in (0_u8..).map(LaneId).zip(&grid.keys) {
        let runs = course.limits.entry(*key).or_default();
        for (days, &cell) in grid.days.windows(2).zip(plan.lane(lane)) {
            let only_lying = cell.is_open() && key.joint == body::Joint::Shoulder && lying(key.mode, days[0]);
            runs.push(days[0], days[1], Value { cell, only_lying });
        }
    }
    let worn = plan.wear.iter().zip(&plan.sling_position);
    for (days, (&wear, &position)) in grid.days.windows(2).zip(worn) {
        course.sling.push(days[0], days[1], Sling { wear, position, except: Vec::new() });
    }
    let gates = compiled.stages.iter().zip(&plan.gates);
    course.lines = gates
        .filter_map(|(id, gate)| gate.map(|day| (id, day)))
        .map(|(id, day)| Line {
            kind: LineKind::Stage,
            id: (*id).to_owned(),
            title: String::new(),
            day: Some(day),
            says: String::new(),
        })
        .collect();
    course
}
