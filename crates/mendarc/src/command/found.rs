//! A finding in a file that is read row by row and not kept.

use diagnostic::{Diagnostic, Severity};

use crate::json;
use crate::render;

/// A diagnostic and its place in the file.
#[derive(Debug, Clone)]
pub struct Found {
    pub diagnostic: Diagnostic,
    /// Line and column, from 1, in characters.
    pub place: Option<(u64, usize)>,
}

impl Found {
    /// One of the whole run.
    pub const fn of_run(diagnostic: Diagnostic) -> Self {
        Self { diagnostic, place: None }
    }

    /// One of a place in the file.
    pub const fn at(diagnostic: Diagnostic, line: u64, column: usize) -> Self {
        Self { diagnostic, place: Some((line, column)) }
    }

    /// The same as data.
    pub fn for_document(&self, name: &str) -> json::Diagnostic {
        json::Diagnostic {
            code: self.diagnostic.code.into(),
            severity: self.diagnostic.severity.name().into(),
            message: self.diagnostic.message.clone(),
            file: self.place.map(|_| name.to_owned()),
            line: self.place.and_then(|(line, _)| usize::try_from(line).ok()),
            column: self.place.map(|(_, column)| column),
            helps: self.diagnostic.helps.clone(),
            notes: self.diagnostic.notes.clone(),
        }
    }

    pub fn is_error(&self) -> bool {
        self.diagnostic.severity == Severity::Error
    }
}

/// Says what was found, to stderr.
pub fn tell(found: &[Found], name: &str) {
    for found in found {
        match found.place {
            Some((line, column)) => render::to_stderr_at(&found.diagnostic, name, line, column),
            None => render::to_stderr(std::slice::from_ref(&found.diagnostic), &diagnostic::Sources::new()),
        }
    }
}
