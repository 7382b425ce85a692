//! The documents that programs read; their shapes are the contract's.

pub mod angles;
pub mod check;
pub mod comparison;
mod diagnostics;
pub mod ladder;
pub mod measurement;
mod prescription;
mod reason;
pub mod stored;

use ::diagnostic::{Diagnostic as Found, Sources};
use ::prescription::May;
use plan::{Allowed, Bound};
use schemars::JsonSchema;
use serde::Serialize;
use sha2::{Digest, Sha256};

pub use comparison::{COMPARISON_SCHEMA, Comparison};
pub use diagnostics::Diagnostic;
pub use prescription::Prescription;
pub use reason::Reason;

/// The schema of a prescription.
pub const PRESCRIPTION_SCHEMA: &str = "mendarc.prescription/1";

/// The schema of the sheet for going home.
pub const FIRST_DAYS_SCHEMA: &str = "mendarc.first-days/1";

/// A section of the sheet for going home.
#[derive(Debug, Serialize, JsonSchema)]
pub struct SheetSection {
    pub title: String,
    /// Whether the paragraphs are points of a list.
    pub list: bool,
    pub paragraphs: Vec<String>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct Sheet<'a> {
    schema: &'a str,
    operation: SheetOperation,
    sections: Vec<SheetSection>,
    cautions: Vec<String>,
    diagnostics: Vec<Diagnostic>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct SheetOperation {
    date: String,
    side: &'static str,
}

/// The sheet for going home.
pub fn first_days(
    date: jiff::civil::Date,
    side: body::Side,
    sections: Vec<SheetSection>,
    found: &[Found],
    sources: &Sources,
) -> String {
    to_text(&Sheet {
        schema: FIRST_DAYS_SCHEMA,
        operation: SheetOperation { date: date.to_string(), side: side.name() },
        sections,
        cautions: usual_cautions(),
        diagnostics: diagnostics::all(found, sources),
    })
}

/// A limit in the words and numbers of the documents: the word, then degrees, kilograms or percent.
pub(crate) struct Bounds {
    pub word: &'static str,
    pub deg: Option<f64>,
    pub kg: Option<f64>,
    pub percent: Option<f64>,
}

impl Bounds {
    pub(crate) fn of(allowed: Allowed) -> Self {
        let word = |word| Self { word, deg: None, kg: None, percent: None };
        match allowed {
            Allowed::No => word("no"),
            Allowed::Free => word("free"),
            Allowed::UpTo(Bound::Angle(angle)) => Self { deg: Some(angle.number()), ..word("up_to") },
            Allowed::UpTo(Bound::Load(load)) => Self { kg: Some(load.number()), ..word("up_to") },
            Allowed::UpTo(Bound::Effort(effort)) => Self { percent: Some(effort.number()), ..word("up_to") },
        }
    }
}

/// The usual cautions, which stand in every document.
pub(crate) fn usual_cautions() -> Vec<String> {
    let messages = wording::Messages::english();
    wording::cautions::ALL.iter().map(|id| messages.text(id, &[])).collect()
}

#[derive(Debug, Serialize)]
struct Failure<'a> {
    #[serde(skip_serializing_if = "Option::is_none")]
    schema: Option<&'a str>,
    cautions: Vec<String>,
    diagnostics: Vec<Diagnostic>,
}

/// The document of a run that gave nothing.
pub fn failure(schema: Option<&str>, found: &[Found], sources: &Sources) -> String {
    to_text(&Failure { schema, cautions: usual_cautions(), diagnostics: diagnostics::all(found, sources) })
}

#[derive(Debug, Serialize, JsonSchema)]
struct Activities {
    activities: Vec<Activity>,
    cautions: Vec<String>,
}

#[derive(Debug, Serialize, JsonSchema)]
struct Activity {
    id: String,
    title: String,
}

/// The list of activities.
pub fn activities(list: &[(String, String)]) -> String {
    let activities = list.iter().map(|(id, title)| Activity { id: id.clone(), title: title.clone() }).collect();
    to_text(&Activities { activities, cautions: usual_cautions() })
}

#[derive(Debug, Serialize, JsonSchema)]
struct MayAnswer {
    activity: String,
    /// yes, not before, or ask.
    answer: &'static str,
    day: u16,
    date: String,
    because: Vec<Reason>,
    waiting_for_stage: Option<String>,
    cautions: Vec<String>,
    diagnostics: Vec<Diagnostic>,
}

/// The answer to "may I …?".
pub fn may(answer: &May, found: &[Found], sources: &Sources) -> String {
    to_text(&MayAnswer {
        activity: answer.activity.clone(),
        answer: answer.answer.name(),
        day: answer.day.count(),
        date: answer.date.to_string(),
        because: reason::all(&answer.because),
        waiting_for_stage: answer.waiting_for_stage.clone(),
        cautions: usual_cautions(),
        diagnostics: diagnostics::all(found, sources),
    })
}

/// Any document as text.
pub(crate) fn to_text(document: &impl Serialize) -> String {
    // Plain structs with text keys always serialize.
    serde_json::to_string(document).unwrap_or_else(|error| format!("{{\"diagnostics\":[],\"fault\":\"{error}\"}}"))
}

/// The SHA-256 of bytes, in hexadecimal.
pub fn sha256(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

/// The SHA-256 of the family's files that a protocol belongs to.
pub fn hash_of_family(protocol: &str) -> String {
    let folder = protocol::SHIPPED
        .iter()
        .find(|(name, _)| name.split_once('/').is_some_and(|(_, file)| file == format!("{protocol}.toml")))
        .and_then(|(name, _)| name.split_once('/'))
        .map_or("", |(folder, _)| folder);
    let mut hash = Sha256::new();
    for (name, text) in protocol::SHIPPED.iter().filter(|(name, _)| name.starts_with(&format!("{folder}/"))) {
        hash.update(name.as_bytes());
        hash.update([0]);
        hash.update(text.as_bytes());
        hash.update([0]);
    }
    hex(&hash.finalize())
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
