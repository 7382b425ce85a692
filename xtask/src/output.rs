//! Generated files: written, or compared with what is on disk.

use std::fs;
use std::path::Path;

use anyhow::Context;

/// Whether to write what was generated or only to compare it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mode {
    /// Write files that differ.
    Write,
    /// Report files that differ.
    Check,
}

/// A generated file: its place below the workspace and its text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Output {
    /// Path below the workspace, with forward slashes.
    pub path: String,
    /// The whole text.
    pub text: String,
}

impl Output {
    /// Whether the file on disk holds exactly this text.
    pub fn is_current(&self, root: &Path) -> bool {
        fs::read_to_string(root.join(&self.path)).is_ok_and(|found| found == self.text)
    }

    /// Writes or compares; gives whether the file was, or now is, current.
    pub fn settle(&self, root: &Path, mode: Mode) -> anyhow::Result<bool> {
        if self.is_current(root) {
            return Ok(true);
        }
        match mode {
            Mode::Check => {
                eprintln!("{} differs from what its sources give", self.path);
                Ok(false)
            }
            Mode::Write => {
                let path = root.join(&self.path);
                if let Some(folder) = path.parent() {
                    fs::create_dir_all(folder).with_context(|| format!("folder of {}", self.path))?;
                }
                fs::write(&path, &self.text).with_context(|| format!("writing {}", self.path))?;
                eprintln!("wrote {}", self.path);
                Ok(true)
            }
        }
    }
}
