//! The parts of a stored prescription that a comparison reads.
//!
//! Apart from what is written: a document of an earlier or a later version may
//! hold less or more, and only what is read has to be there.

use serde::Deserialize;
use serde::de::IgnoredAny;

/// What a document says it is.
#[derive(Debug, Deserialize)]
pub(super) struct Probe {
    pub schema: Option<serde_json::Value>,
    pub spans: Option<IgnoredAny>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Prescription {
    pub operation: Operation,
    pub protocol: Protocol,
    pub stages: Vec<Stage>,
    pub spans: Vec<Span>,
    pub indices: Vec<Index>,
    pub questions: Vec<Question>,
    pub visits: Vec<Visit>,
    #[serde(default)]
    pub returns: Vec<Return>,
    #[serde(default)]
    pub loosened: Vec<String>,
    #[serde(default)]
    pub moved: Vec<String>,
    pub cautions: Vec<String>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Operation {
    pub date: String,
    pub side: String,
}

#[derive(Debug, Deserialize)]
pub(super) struct Protocol {
    pub id: String,
    pub edition: String,
    #[serde(default)]
    pub capped_by: Vec<String>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Stage {
    pub id: String,
    pub title: String,
    pub from_day: u16,
    pub opened: bool,
    /// Papers of earlier editions have none.
    #[serde(default)]
    pub closes_again: Option<String>,
    pub criteria: Vec<Criterion>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Criterion {
    pub text: String,
}

#[derive(Debug, Deserialize)]
pub(super) struct Span {
    pub from_day: u16,
    pub until_day: u16,
    pub sling: Sling,
    pub limits: Vec<Limit>,
    pub goals: Vec<Goal>,
    pub exercises: Vec<Exercise>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Sling {
    pub wear: String,
    pub position: String,
    pub except: Vec<String>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Key {
    pub joint: String,
    pub movement: String,
    pub position: String,
    pub mode: String,
}

#[derive(Debug, Deserialize)]
pub(super) struct Limit {
    #[serde(flatten)]
    pub key: Key,
    pub allowed: String,
    pub max_deg: Option<f64>,
    pub max_load_kg: Option<f64>,
    pub max_effort_percent: Option<f64>,
    #[serde(default)]
    pub only_lying: bool,
}

#[derive(Debug, Deserialize)]
pub(super) struct Goal {
    pub id: String,
    #[serde(flatten)]
    pub key: Key,
    pub from_deg: f64,
    pub to_deg: Option<f64>,
    pub due_day: u16,
    pub held_by_limit: bool,
    #[serde(default)]
    pub or_other_shoulder: bool,
}

#[derive(Debug, Deserialize)]
pub(super) struct Exercise {
    pub id: String,
    #[serde(flatten)]
    pub key: Key,
    pub sets: u16,
    pub repetitions: u16,
    #[serde(default)]
    pub repetitions_to: Option<u16>,
    pub hold_s: u16,
    pub times_per_day: u16,
    #[serde(default)]
    pub days_per_week: Option<u16>,
    pub target_deg: Option<f64>,
    #[serde(default)]
    pub as_far_as_comfortable: bool,
    pub load_kg: Option<f64>,
    #[serde(default)]
    pub supervised: bool,
}

#[derive(Debug, Deserialize)]
pub(super) struct Index {
    pub id: String,
    pub low: u8,
    pub high: u8,
    pub of: u8,
    pub meaning: String,
}

#[derive(Debug, Deserialize)]
pub(super) struct Question {
    pub path: String,
    pub text: String,
    pub changes: Vec<IgnoredAny>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Visit {
    pub due_day: u16,
    pub day: u16,
    pub purpose: String,
}

#[derive(Debug, Deserialize)]
pub(super) struct Return {
    pub activity: String,
    pub day: Option<u16>,
    pub opened_by_surgeon: bool,
    pub note: Option<String>,
}
