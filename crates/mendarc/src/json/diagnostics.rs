//! Diagnostics as data.

use ::diagnostic::{Diagnostic as Found, Sources};
use schemars::JsonSchema;
use serde::Serialize;

/// One finding; line and column count from 1, in characters.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Diagnostic {
    pub code: String,
    /// error, warning, question or note.
    pub severity: String,
    pub message: String,
    pub file: Option<String>,
    pub line: Option<usize>,
    pub column: Option<usize>,
    pub helps: Vec<String>,
    pub notes: Vec<String>,
}

pub(super) fn all(found: &[Found], sources: &Sources) -> Vec<Diagnostic> {
    found
        .iter()
        .map(|found| {
            let source = found.span.and_then(|span| Some((span, sources.get(span.file)?)));
            let position = source.map(|(span, source)| source.position(span.start));
            Diagnostic {
                code: found.code.into(),
                severity: found.severity.name().into(),
                message: found.message.clone(),
                file: source.map(|(_, source)| source.name.clone()),
                line: position.map(|position| position.line),
                column: position.map(|position| position.column),
                helps: found.helps.clone(),
                notes: found.notes.clone(),
            }
        })
        .collect()
}
