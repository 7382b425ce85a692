//! What changes between two plans as data: `mendarc.comparison/1`.

mod parts;

use ::diagnostic::{Diagnostic as Found, Sources};
use ::prescription::OpenQuestion;
use ::prescription::compare::{LineKind, Scoped};
use schemars::JsonSchema;
use serde::Serialize;

pub use parts::title;

use parts::{about, beside, change, exercise, first, point, question, sling};

use super::{Diagnostic, diagnostics, usual_cautions};
use crate::shelf::Shelf;

/// The schema of a comparison.
pub const COMPARISON_SCHEMA: &str = "mendarc.comparison/1";

/// What changes for the patient between two records, protocols, editions or prescriptions, or with each answer to an
/// open question. Days are postoperative days; ranges are half open; null is never, or nothing there.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Comparison {
    pub schema: &'static str,
    /// records, protocols, editions, prescriptions or questions.
    pub kind: &'static str,
    pub a: Head,
    /// null where the questions of one record are listed.
    pub b: Option<Head>,
    /// Nothing changes for the patient, whatever is said beside the plan.
    pub same: bool,
    /// The same in a sentence.
    pub note: String,
    pub changes: Vec<Change>,
    pub sling: Vec<Sling>,
    pub exercises: Vec<Exercise>,
    pub first_allowed: Vec<First>,
    pub stages: Vec<Point>,
    pub goals: Vec<Point>,
    pub visits: Vec<Point>,
    pub returns: Vec<Point>,
    /// Said on one side alone: protocols, questions, cautions, rules and the like.
    pub beside: Vec<Beside>,
    /// What each answer to an open question would change.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub questions: Option<Vec<Question>>,
    pub cautions: Vec<String>,
    pub diagnostics: Vec<Diagnostic>,
}

/// One side of a comparison.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Head {
    pub file: String,
    /// The protocol in force; null for a whole edition.
    pub protocol: Option<String>,
    pub edition: Option<String>,
    /// The day of operation; null for files of protocols.
    pub date: Option<String>,
    pub side: Option<&'static str>,
}

/// What a line is about, where files of protocols are compared.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct About {
    /// The protocol, where whole editions are compared.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub protocol: Option<String>,
    /// The rule: the line holds only where it fires, and `free` means that it leaves the key alone.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rule: Option<String>,
    /// The choice of the surgeon's that the line needs, as `choice: option`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub option: Option<String>,
}

/// A limit on a run of days on which it differs.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Change {
    /// joint/movement/position/mode.
    pub key: String,
    pub from_day: u16,
    pub until_day: u16,
    pub a: Limit,
    pub b: Limit,
    /// a or b; null where each allows something the other does not.
    pub looser: Option<&'static str>,
    /// How many days after the looser side the other allows as much; null where it never does.
    pub days_later: Option<u16>,
    #[serde(flatten)]
    pub about: About,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Limit {
    /// no, up_to or free.
    pub allowed: &'static str,
    pub max_deg: Option<f64>,
    pub max_load_kg: Option<f64>,
    pub max_effort_percent: Option<f64>,
    /// Allowed only lying on the back.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub only_lying: bool,
}

/// The sling on a run of days on which it is worn in two ways.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Sling {
    pub from_day: u16,
    pub until_day: u16,
    pub a: Option<Worn>,
    pub b: Option<Worn>,
    /// a or b: the side that wears it less.
    pub looser: Option<&'static str>,
    #[serde(flatten)]
    pub about: About,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Worn {
    pub wear: &'static str,
    pub position: &'static str,
    pub except: Vec<String>,
}

/// An exercise on a run of days on which it is done on one side alone, or in two ways.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Exercise {
    pub id: String,
    pub title: String,
    pub from_day: u16,
    pub until_day: u16,
    pub a: Option<Dose>,
    pub b: Option<Dose>,
    #[serde(flatten)]
    pub about: About,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Dose {
    pub sets: u16,
    pub repetitions: u16,
    pub repetitions_to: Option<u16>,
    pub hold_s: u16,
    pub times_per_day: u16,
    pub days_per_week: Option<u16>,
    pub target_deg: Option<f64>,
    pub as_far_as_comfortable: bool,
    pub load_kg: Option<f64>,
    pub supervised: bool,
    pub remarks: Vec<String>,
}

/// The first day of a movement in a mode.
#[derive(Debug, Serialize, JsonSchema)]
pub struct First {
    pub joint: &'static str,
    pub movement: &'static str,
    pub mode: &'static str,
    pub a: Option<u16>,
    pub b: Option<u16>,
    #[serde(flatten)]
    pub about: About,
}

/// A stage, goal, visit or return that differs.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Point {
    pub id: String,
    pub title: String,
    pub a: Option<Said>,
    pub b: Option<Said>,
    #[serde(flatten)]
    pub about: About,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Said {
    pub day: Option<u16>,
    pub says: String,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Beside {
    pub what: &'static str,
    pub only_in_a: Vec<String>,
    pub only_in_b: Vec<String>,
    #[serde(flatten)]
    pub about: About,
}

/// An open question with what each of its answers would change.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Question {
    pub asked: Vec<Asked>,
    pub blocks_signing: bool,
    pub answers: Vec<Answer>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Asked {
    pub path: String,
    pub text: String,
}

/// An answer, or several that no rule tells apart; `a` is the plan with the question open, `b` the plan answered.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Answer {
    pub answers: Vec<&'static str>,
    /// Answers to other open questions that the changes need as well.
    pub together: Vec<Together>,
    pub changes: Vec<Change>,
    pub sling: Vec<Sling>,
    pub first_allowed: Vec<First>,
    pub stages: Vec<Point>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Together {
    pub fact: &'static str,
    pub answer: &'static str,
}

impl Comparison {
    /// An empty comparison.
    pub fn new(kind: &'static str, a: Head, b: Option<Head>, note: String, same: bool) -> Self {
        Self {
            schema: COMPARISON_SCHEMA,
            kind,
            a,
            b,
            same,
            note,
            changes: Vec::new(),
            sling: Vec::new(),
            exercises: Vec::new(),
            first_allowed: Vec::new(),
            stages: Vec::new(),
            goals: Vec::new(),
            visits: Vec::new(),
            returns: Vec::new(),
            beside: Vec::new(),
            questions: None,
            cautions: usual_cautions(),
            diagnostics: Vec::new(),
        }
    }

    /// Adds what differs.
    #[must_use]
    pub fn with(mut self, found: &[Scoped], shelf: &Shelf) -> Self {
        for Scoped { scope, comparison } in found {
            let about = about(scope);
            self.changes.extend(comparison.limits.iter().map(|of| change(of, &about)));
            self.sling.extend(comparison.sling.iter().map(|of| sling(of, &about)));
            self.exercises.extend(comparison.exercises.iter().map(|of| exercise(of, &about, shelf)));
            self.first_allowed.extend(comparison.first_allowed.iter().map(|of| first(of, &about)));
            for of in &comparison.lines {
                let lines = match of.kind {
                    LineKind::Stage => &mut self.stages,
                    LineKind::Goal => &mut self.goals,
                    LineKind::Visit => &mut self.visits,
                    LineKind::Return => &mut self.returns,
                };
                lines.push(point(of, &about, shelf));
            }
            self.beside.extend(comparison.beside.iter().map(|of| beside(of, &about)));
        }
        self
    }

    /// Adds the open questions.
    #[must_use]
    pub fn with_questions(mut self, questions: &[OpenQuestion], shelf: &Shelf) -> Self {
        self.questions = Some(questions.iter().map(|of| question(of, shelf)).collect());
        self
    }

    /// The document as text.
    pub fn to_text(mut self, found: &[Found], sources: &Sources) -> String {
        self.diagnostics = diagnostics::all(found, sources);
        super::to_text(&self)
    }
}
