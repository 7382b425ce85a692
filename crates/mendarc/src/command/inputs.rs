//! Reading the files a command was given.

use std::path::Path;

use diagnostic::{Diagnostic, FileId, Severity, Sink, Sources, Span};
use jiff::civil::Date;
use operative::Record;
use prescription::{Openings, Settings};

use crate::files::{self, FileFault};
use crate::json;
use crate::outcome::{Outcome, print, tell};
use crate::render;

/// The files and findings of one run.
#[derive(Debug, Default)]
pub struct Inputs {
    pub sources: Sources,
    pub sink: Sink,
    could_not_run: bool,
}

impl Inputs {
    /// Opens a file that a person wrote.
    pub fn open(&mut self, path: &Path) -> Option<FileId> {
        let file = files::read(path, &mut self.sources);
        self.usable(file)
    }

    /// Opens a file that a person wrote, or a document of the program's own, which may be larger.
    pub fn open_either(&mut self, path: &Path) -> Option<FileId> {
        let file = files::read_either(path, &mut self.sources);
        self.usable(file)
    }

    fn usable(&mut self, file: Result<FileId, FileFault>) -> Option<FileId> {
        match file {
            Ok(file) => Some(file),
            Err(FileFault::CannotRead(fault)) => {
                self.could_not_run = true;
                self.sink.push(fault);
                None
            }
            Err(FileFault::Unusable(fault)) => {
                self.sink.push(fault);
                None
            }
        }
    }

    /// Opens a file in which everything is optional: an empty one is as good as none.
    fn open_optional(&mut self, path: &Path) -> Option<Option<FileId>> {
        match files::read(path, &mut self.sources) {
            Ok(file) => Some(Some(file)),
            Err(FileFault::Unusable(fault)) if fault.code == "empty-file" => Some(None),
            Err(FileFault::Unusable(fault)) => {
                self.sink.push(fault);
                None
            }
            Err(FileFault::CannotRead(fault)) => {
                self.could_not_run = true;
                self.sink.push(fault);
                None
            }
        }
    }

    /// The text of a file that was opened.
    pub fn text(&self, file: FileId) -> String {
        self.sources.get(file).map(|source| source.text.clone()).unwrap_or_default()
    }

    /// Reads an operative record.
    pub fn record(&mut self, path: &Path) -> Option<Record> {
        let file = self.open(path)?;
        self.record_of(file)
    }

    /// Reads an operative record from a file that is open.
    pub fn record_of(&mut self, file: FileId) -> Option<Record> {
        let text = self.text(file);
        operative::read(file, &text, &mut self.sink)
    }

    /// Reads the settings; the built-in defaults where none are named.
    pub fn settings(&mut self, path: Option<&Path>) -> Option<Settings> {
        let Some(path) = path else { return Some(Settings::default()) };
        let Some(file) = self.open_optional(path)? else { return Some(Settings::default()) };
        let text = self.text(file);
        prescription::read_settings(file, &text, &mut self.sink)
    }

    /// Reads what was opened; nothing beyond the first stage where no file is named.
    pub fn openings(&mut self, path: Option<&Path>) -> Option<Openings> {
        let Some(path) = path else { return Some(Openings::default()) };
        let Some(file) = self.open_optional(path)? else { return Some(Openings::default()) };
        let text = self.text(file);
        prescription::read_opened(file, &text, &mut self.sink)
    }

    /// Reads a date of the command line.
    pub fn date(&mut self, written: &str) -> Option<Date> {
        let date: Option<Date> = (written.len() == "2026-03-02".len()).then(|| written.parse().ok()).flatten();
        if date.is_none() {
            self.could_not_run = true;
            self.sink.push(
                Diagnostic::error("usage", format!("`{written}` is not a date of the calendar"))
                    .help("write a date as 2026-03-02"),
            );
        }
        date
    }

    /// Accepts the languages there are.
    pub fn language(&mut self, written: &str) -> Option<wording::Language> {
        let known = wording::Language::named(written);
        if known.is_none() {
            self.could_not_run = true;
            self.sink.push(
                Diagnostic::error("language-not-there", format!("there are no texts in `{written}` yet"))
                    .help("use `--language en` or `--language es`"),
            );
        }
        known
    }

    /// Notes that the command could not run.
    pub fn cannot_run(&mut self, fault: Diagnostic) {
        self.could_not_run = true;
        self.sink.push(fault);
    }

    /// Tells what was written to a folder, or notes why nothing was: a machine that could not, or a text that must
    /// not be printed. Whether it was.
    pub fn wrote(&mut self, written: Result<Vec<String>, Diagnostic>, folder: &Path, as_json: bool) -> bool {
        match written {
            Ok(names) => {
                if !as_json {
                    tell(&format!("wrote {} to {}", names.join(", "), folder.display()));
                }
                true
            }
            Err(fault) => {
                self.could_not_run |= fault.code == "cannot-write";
                self.sink.push(fault);
                false
            }
        }
    }

    /// The line of a place in its file, from 1.
    pub fn line_of(sources: &Sources) -> impl Fn(Span) -> usize + '_ {
        |span| sources.get(span.file).map_or(0, |source| source.position(span.start).line)
    }

    /// Ends a run that gave nothing: every diagnostic to stderr, and with `--json` as the one document.
    pub fn fail(self, schema: Option<&str>, as_json: bool) -> Outcome {
        let mut outcome = if self.could_not_run { Outcome::CouldNotRun } else { Outcome::Findings };
        let found = self.sink.into_sorted();
        if as_json {
            outcome = outcome.max(print(&json::failure(schema, &found, &self.sources)));
        }
        render::to_stderr(&found, &self.sources);
        outcome
    }

    /// Ends a run that gave something.
    pub fn finish(self, written: Outcome) -> Outcome {
        let outcome = match () {
            () if written == Outcome::CouldNotRun => written,
            () if self.could_not_run => Outcome::CouldNotRun,
            () if self.sink.has_errors() => Outcome::Findings,
            () => Outcome::Done,
        };
        let shown: Vec<Diagnostic> =
            self.sink.into_sorted().into_iter().filter(|found| found.severity != Severity::Note).collect();
        render::to_stderr(&shown, &self.sources);
        outcome
    }
}
