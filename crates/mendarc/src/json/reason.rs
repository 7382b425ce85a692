//! Reasons as data.

use schemars::JsonSchema;
use serde::Serialize;

/// Why a line says what it says.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Reason {
    /// The rule, such as `staged/passive-elevation`.
    pub rule: String,
    /// What the rule says.
    pub text: String,
    /// Ids of the table of evidence.
    pub evidence: Vec<&'static str>,
    /// The path in the record that led to it, the first of `places`.
    pub record: Option<String>,
    /// Every place of the record that led to it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub places: Vec<Place>,
}

/// A place of the record.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Place {
    pub path: String,
    pub shown: String,
    pub line: Option<usize>,
}

pub(super) fn all(reasons: &[plan::Reason]) -> Vec<Reason> {
    reasons.iter().map(one).collect()
}

fn one(reason: &plan::Reason) -> Reason {
    Reason {
        rule: reason.rule.clone(),
        text: reason.text.clone(),
        evidence: reason.evidence.iter().map(|entry| entry.id).collect(),
        record: reason.record.first().map(|place| place.path.clone()),
        places: reason
            .record
            .iter()
            .map(|place| Place { path: place.path.clone(), shown: place.shown.clone(), line: place.line })
            .collect(),
    }
}
