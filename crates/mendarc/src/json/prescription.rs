//! The prescription as data: `mendarc.prescription/1`.

use ::diagnostic::{Diagnostic as Found, Sources};
use plan::{ExerciseLine, GoalLine, LimitRow, SlingLine, SpanOfDays};
use schemars::JsonSchema;
use serde::Serialize;

use super::{Bounds, Diagnostic, Reason, diagnostics, reason};
use crate::shelf::Shelf;

/// A dated prescription for one shoulder. Angles are degrees, loads kilograms, dates ISO 8601;
/// `day` counts from surgery, which is day 0; ranges are half open.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Prescription {
    pub schema: &'static str,
    pub operation: Operation,
    pub protocol: Protocol,
    pub evidence_edition: &'static str,
    pub stages: Vec<Stage>,
    pub spans: Vec<Span>,
    pub first_allowed: Vec<FirstAllowed>,
    pub indices: Vec<Index>,
    pub questions: Vec<Question>,
    /// Over how many completions of the record the plan was compared.
    pub completions: u64,
    /// What the questions amount to, in a sentence.
    pub completions_note: String,
    pub visits: Vec<Visit>,
    pub returns: Vec<Return>,
    /// Loosenings by the surgeon, and what each comes to.
    pub loosened: Vec<String>,
    /// The surgeon's own choices that loosen: what is proved of the files does not speak of them.
    pub outside_the_proof: Vec<String>,
    /// Holds and go-backs.
    pub moved: Vec<String>,
    pub cautions: Vec<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub today: Option<Today>,
    pub diagnostics: Vec<Diagnostic>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Operation {
    pub date: String,
    pub side: &'static str,
    pub patient: Option<String>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Protocol {
    pub id: String,
    pub title: String,
    pub edition: String,
    /// Of the files of its family.
    pub sha256: String,
    pub capped_by: Vec<String>,
    pub why: Vec<Reason>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Stage {
    pub id: String,
    pub title: String,
    pub from_day: u16,
    pub from: String,
    /// Whether it is opened for this gate.
    pub opened: bool,
    /// The first day on which it is closed again, where it is opened now and a go-back lies ahead.
    pub closes_again: Option<String>,
    pub criteria: Vec<Criterion>,
    pub reasons: Vec<Reason>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Criterion {
    pub id: String,
    pub text: String,
    pub reasons: Vec<Reason>,
}

/// A run of days within which nothing changes.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Span {
    pub from_day: u16,
    /// The first day after.
    pub until_day: u16,
    pub from: String,
    pub until: String,
    pub stage: String,
    pub sling: Sling,
    pub limits: Vec<Limit>,
    pub goals: Vec<Goal>,
    pub exercises: Vec<Exercise>,
    pub dropped: Vec<Dropped>,
    pub replaced: Vec<Replaced>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Sling {
    /// always, weaning or none.
    pub wear: &'static str,
    /// neutral or internal rotation.
    pub position: &'static str,
    pub except: Vec<String>,
    pub reasons: Vec<Reason>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Limit {
    pub joint: &'static str,
    pub movement: &'static str,
    pub position: &'static str,
    pub mode: &'static str,
    /// no, up_to or free.
    pub allowed: &'static str,
    pub max_deg: Option<f64>,
    pub max_load_kg: Option<f64>,
    pub max_effort_percent: Option<f64>,
    /// Allowed only lying on the back.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub only_lying: bool,
    pub reasons: Vec<Reason>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Goal {
    pub id: String,
    pub joint: &'static str,
    pub movement: &'static str,
    pub position: &'static str,
    pub mode: &'static str,
    pub from_deg: f64,
    /// null where the source says within normal limits.
    pub to_deg: Option<f64>,
    pub due_day: u16,
    pub held_by_limit: bool,
    /// The other shoulder in the same position is the goal where it moves less.
    pub or_other_shoulder: bool,
    /// false for a goal from memory that the surgeon has not adopted.
    pub adopted: bool,
    pub reasons: Vec<Reason>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Exercise {
    pub id: String,
    pub title: String,
    pub joint: &'static str,
    pub movement: &'static str,
    pub position: &'static str,
    pub mode: &'static str,
    pub sets: u16,
    pub repetitions: u16,
    pub repetitions_to: Option<u16>,
    /// What the repetitions count, such as "circles each way".
    pub counted: String,
    pub hold_s: u16,
    pub times_per_day: u16,
    pub days_per_week: Option<u16>,
    /// null where nothing bounds it, or where the exercise has no angle to reach.
    pub target_deg: Option<f64>,
    /// Nothing bounds how far it goes, so comfort does.
    pub as_far_as_comfortable: bool,
    pub load_kg: Option<f64>,
    /// Only with a therapist.
    pub supervised: bool,
    pub reasons: Vec<Reason>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Dropped {
    pub id: String,
    pub title: String,
    pub because: String,
    pub reasons: Vec<Reason>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Replaced {
    pub dropped: String,
    pub taken: String,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct FirstAllowed {
    pub joint: &'static str,
    pub movement: &'static str,
    pub mode: &'static str,
    pub day: u16,
    pub date: String,
    pub reasons: Vec<Reason>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Index {
    pub id: &'static str,
    pub score: Option<u8>,
    pub low: u8,
    pub high: u8,
    pub missing: Vec<String>,
    pub of: u8,
    pub meaning: String,
    pub evidence: Vec<&'static str>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Question {
    pub path: String,
    pub text: String,
    /// Empty where the question blocks signing.
    pub changes: Vec<Change>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Change {
    pub key: String,
    pub from_day: u16,
    pub until_day: u16,
    pub degrees: Option<f64>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Visit {
    pub due_day: u16,
    pub day: u16,
    pub date: String,
    pub purpose: String,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Return {
    pub activity: String,
    pub title: String,
    pub day: Option<u16>,
    pub date: Option<String>,
    pub opened_by_surgeon: bool,
    pub note: Option<String>,
    pub reasons: Vec<Reason>,
}

/// One day with what is opened: the effective limits.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Today {
    pub day: u16,
    pub date: String,
    pub stage: String,
    /// opened or frozen.
    pub basis: &'static str,
    pub sling: Sling,
    pub limits: Vec<Limit>,
    pub exercises: Vec<Exercise>,
    pub goals: Vec<Goal>,
    pub not_before: Option<NotBefore>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct NotBefore {
    pub stage: String,
    pub day: u16,
    pub date: String,
}

impl Prescription {
    /// Says what was found, also what was found since the document was made.
    pub fn say(&mut self, found: &[Found], sources: &Sources) {
        self.diagnostics = diagnostics::all(found, sources);
    }

    /// The document of a prescription.
    pub fn new(of: &plan::Prescription, shelf: &Shelf, sha256: String, found: &[Found], sources: &Sources) -> Self {
        let mut cautions = of.cautions.clone();
        cautions.extend(wording::cautions::ALL.iter().map(|id| shelf.messages.text(id, &[])));
        let limit_questions = of.questions.iter().filter(|question| !question.changes.is_empty()).count();
        Self {
            schema: super::PRESCRIPTION_SCHEMA,
            operation: Operation {
                date: of.operated_on.to_string(),
                side: of.side.name(),
                patient: of.patient.clone(),
            },
            protocol: Protocol {
                id: of.protocol.id.clone(),
                title: of.protocol.title.clone(),
                edition: of.protocol.edition.clone(),
                sha256,
                capped_by: of.protocol.capped_by.clone(),
                why: reason::all(&of.protocol.why),
            },
            evidence_edition: evidence::EDITION,
            stages: of
                .stages
                .iter()
                .map(|stage| Stage {
                    id: stage.id.clone(),
                    title: stage.title.clone(),
                    from_day: stage.from_day.count(),
                    from: stage.from.to_string(),
                    opened: stage.opened,
                    closes_again: stage.closes_again.map(|(_, date)| date.to_string()),
                    criteria: stage
                        .criteria
                        .iter()
                        .map(|criterion| Criterion {
                            id: criterion.id.clone(),
                            text: criterion.text.clone(),
                            reasons: reason::all(&criterion.reasons),
                        })
                        .collect(),
                    reasons: reason::all(&stage.reasons),
                })
                .collect(),
            spans: of.spans.iter().map(|span| self::span(span, shelf)).collect(),
            first_allowed: of
                .first_allowed
                .iter()
                .map(|first| FirstAllowed {
                    joint: first.key.joint.name(),
                    movement: first.key.movement.name(),
                    mode: first.key.mode.name(),
                    day: first.day.count(),
                    date: first.date.to_string(),
                    reasons: reason::all(&first.reasons),
                })
                .collect(),
            indices: of
                .indices
                .iter()
                .map(|index| Index {
                    id: index.id,
                    score: index.score,
                    low: index.low,
                    high: index.high,
                    missing: index.missing.clone(),
                    of: index.of,
                    meaning: index.meaning.clone(),
                    evidence: index.evidence.iter().map(|entry| entry.id).collect(),
                })
                .collect(),
            questions: of
                .questions
                .iter()
                .map(|question| Question {
                    path: question.path.clone(),
                    text: question.text.clone(),
                    changes: question
                        .changes
                        .iter()
                        .map(|change| Change {
                            key: change.key.clone(),
                            from_day: change.from_day.count(),
                            until_day: change.until_day.count(),
                            degrees: change.degrees.map(|degrees| degrees.number()),
                        })
                        .collect(),
                })
                .collect(),
            completions: of.completions,
            completions_note: sheets::completions(limit_questions, of.completions, &shelf.messages),
            visits: of
                .visits
                .iter()
                .map(|visit| Visit {
                    due_day: visit.due_day.count(),
                    day: visit.day.count(),
                    date: visit.date.to_string(),
                    purpose: visit.purpose.clone(),
                })
                .collect(),
            returns: of
                .returns
                .iter()
                .map(|line| Return {
                    activity: line.activity.clone(),
                    title: shelf.title(&line.activity),
                    day: line.day.map(|day| day.count()),
                    date: line.date.map(|date| date.to_string()),
                    opened_by_surgeon: line.opened_by_surgeon,
                    note: line.note.clone(),
                    reasons: reason::all(&line.reasons),
                })
                .collect(),
            loosened: of.loosened.clone(),
            outside_the_proof: of.outside_the_proof.clone(),
            moved: of.moved.clone(),
            cautions,
            today: of.today.as_ref().map(|today| Today {
                day: today.day.count(),
                date: today.date.to_string(),
                stage: today.stage.clone(),
                basis: match today.basis {
                    plan::TodayBasis::Opened => "opened",
                    plan::TodayBasis::Frozen => "frozen",
                },
                sling: sling(&today.sling),
                limits: today.limits.iter().map(limit).collect(),
                exercises: today.exercises.iter().map(|line| exercise(line, shelf)).collect(),
                goals: today.goals.iter().map(goal).collect(),
                not_before: today.not_before.as_ref().map(|next| NotBefore {
                    stage: next.stage.clone(),
                    day: next.day.count(),
                    date: next.date.to_string(),
                }),
            }),
            diagnostics: diagnostics::all(found, sources),
        }
    }
}

fn span(span: &SpanOfDays, shelf: &Shelf) -> Span {
    Span {
        from_day: span.from_day.count(),
        until_day: span.until_day.count(),
        from: span.from.to_string(),
        until: span.until.to_string(),
        stage: span.stage.clone(),
        sling: sling(&span.sling),
        limits: span.limits.iter().map(limit).collect(),
        goals: span.goals.iter().map(goal).collect(),
        exercises: span.exercises.iter().map(|line| exercise(line, shelf)).collect(),
        dropped: span
            .dropped
            .iter()
            .map(|dropped| Dropped {
                id: dropped.id.clone(),
                title: shelf.title(&dropped.id),
                because: dropped.because.clone(),
                reasons: reason::all(&dropped.reasons),
            })
            .collect(),
        replaced: span
            .replaced
            .iter()
            .map(|replaced| Replaced { dropped: replaced.dropped.clone(), taken: replaced.taken.clone() })
            .collect(),
    }
}

fn sling(sling: &SlingLine) -> Sling {
    Sling {
        wear: sling.wear.name(),
        position: sling.position.name(),
        except: sling.except.clone(),
        reasons: reason::all(&sling.reasons),
    }
}

fn limit(row: &LimitRow) -> Limit {
    let Bounds { word, deg, kg, percent } = Bounds::of(row.allowed);
    Limit {
        joint: row.key.joint.name(),
        movement: row.key.movement.name(),
        position: row.key.position.name(),
        mode: row.key.mode.name(),
        allowed: word,
        max_deg: deg,
        max_load_kg: kg,
        max_effort_percent: percent,
        only_lying: row.only_lying,
        reasons: reason::all(&row.reasons),
    }
}

fn goal(goal: &GoalLine) -> Goal {
    Goal {
        id: goal.id.clone(),
        joint: goal.key.joint.name(),
        movement: goal.key.movement.name(),
        position: goal.key.position.name(),
        mode: goal.key.mode.name(),
        from_deg: goal.from.number(),
        to_deg: goal.to.map(|to| to.number()),
        due_day: goal.due.count(),
        held_by_limit: goal.held_by_limit,
        or_other_shoulder: goal.or_other_shoulder,
        adopted: goal.adopted,
        reasons: reason::all(&goal.reasons),
    }
}

fn exercise(line: &ExerciseLine, shelf: &Shelf) -> Exercise {
    Exercise {
        id: line.id.clone(),
        title: shelf.title(&line.id),
        joint: line.key.joint.name(),
        movement: line.key.movement.name(),
        position: line.key.position.name(),
        mode: line.key.mode.name(),
        sets: line.sets,
        repetitions: line.repetitions,
        repetitions_to: line.repetitions_to,
        counted: sheets::counted(&line.id, &shelf.catalogue, &shelf.messages),
        hold_s: line.hold_s,
        times_per_day: line.times_per_day,
        days_per_week: line.days_per_week,
        target_deg: line.target.map(|target| target.number()),
        as_far_as_comfortable: line.as_far_as_comfortable,
        load_kg: line.load.map(|load| load.number()),
        supervised: line.supervised,
        reasons: reason::all(&line.reasons),
    }
}
