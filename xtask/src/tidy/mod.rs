//! `cargo xtask tidy`: what a compiler can't check.

mod files;
mod glossary;
mod layers;
mod length;
mod literals;
mod open_sources;

use std::fmt;
use std::path::Path;

use crate::Mode;

#[cfg(feature = "schema")]
pub(crate) use files::under;

/// Something that breaks a rule of the house, and where.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fault {
    /// Path below the workspace.
    pub path: String,
    /// The line, from 1; 0 where it is of the whole file.
    pub line: usize,
    /// The rule, as a kebab word.
    pub code: &'static str,
    /// What is wrong and the way out.
    pub message: String,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.line {
            0 => write!(f, "{}: {}: {}", self.path, self.code, self.message),
            line => write!(f, "{}:{line}: {}: {}", self.path, self.code, self.message),
        }
    }
}

/// Runs every check; gives whether all was well.
pub fn run(root: &Path) -> anyhow::Result<bool> {
    let mut faults = layers::faults(root)?;
    faults.extend(literals::faults(root)?);
    faults.extend(glossary::faults(root)?);
    faults.extend(length::faults(root)?);
    faults.extend(open_sources::faults(root)?);
    faults.sort();
    for fault in &faults {
        eprintln!("{fault}");
    }
    let evidence = crate::evidence::run(root, Mode::Check)?;
    let schemas = crate::schema::run(root, Mode::Check)?;
    Ok(faults.is_empty() && evidence && schemas)
}
