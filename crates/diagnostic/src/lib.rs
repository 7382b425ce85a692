//! Problems in what a person wrote: a code, a severity, the smallest span that
//! carries the fault, a message, and the way out.
//!
//! Diagnostics are collected in a [`Sink`], never thrown. Nothing here renders a
//! color or knows a particular code.
#![deny(missing_docs)]

mod source;

pub use source::{FileId, Position, Source, Sources, Span, Spanned};

/// How much a diagnostic matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Nothing can be issued until this is mended.
    Error,
    /// Somebody should look; the work went on.
    Warning,
    /// Only the surgeon can answer this.
    Question,
    /// A fact the reader should have.
    Note,
}

impl Severity {
    /// The word that stands in output.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Error => "error",
            Self::Warning => "warning",
            Self::Question => "question",
            Self::Note => "note",
        }
    }
}

/// A second place in the file that a diagnostic speaks of.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Label {
    /// Where.
    pub span: Span,
    /// What stands there.
    pub text: String,
}

/// One fault, one message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Diagnostic {
    /// A readable kebab word that `explain` describes.
    pub code: &'static str,
    /// How much it matters.
    pub severity: Severity,
    /// What is wrong: lower case, no full stop.
    pub message: String,
    /// The smallest span that carries the fault.
    pub span: Option<Span>,
    /// A few words shown under the span.
    pub label: Option<String>,
    /// Other places that belong to the fault.
    pub labels: Vec<Label>,
    /// Facts and sources.
    pub notes: Vec<String>,
    /// The way out, one sentence each.
    pub helps: Vec<String>,
}

impl Diagnostic {
    fn new(severity: Severity, code: &'static str, message: impl Into<String>) -> Self {
        Self {
            code,
            severity,
            message: message.into(),
            span: None,
            label: None,
            labels: Vec::new(),
            notes: Vec::new(),
            helps: Vec::new(),
        }
    }

    /// A fault that stops the work.
    pub fn error(code: &'static str, message: impl Into<String>) -> Self {
        Self::new(Severity::Error, code, message)
    }

    /// Something to look at.
    pub fn warning(code: &'static str, message: impl Into<String>) -> Self {
        Self::new(Severity::Warning, code, message)
    }

    /// A question to the surgeon.
    pub fn question(code: &'static str, message: impl Into<String>) -> Self {
        Self::new(Severity::Question, code, message)
    }

    /// A fact.
    pub fn note(code: &'static str, message: impl Into<String>) -> Self {
        Self::new(Severity::Note, code, message)
    }

    /// Places the diagnostic.
    #[must_use]
    pub fn at(mut self, span: Span) -> Self {
        self.span = Some(span);
        self
    }

    /// Places the diagnostic where a span is known.
    #[must_use]
    pub fn at_maybe(mut self, span: Option<Span>) -> Self {
        self.span = span.or(self.span);
        self
    }

    /// Says under the span what is needed there.
    #[must_use]
    pub fn label(mut self, text: impl Into<String>) -> Self {
        self.label = Some(text.into());
        self
    }

    /// Points at a second place.
    #[must_use]
    pub fn also(mut self, span: Span, text: impl Into<String>) -> Self {
        self.labels.push(Label { span, text: text.into() });
        self
    }

    /// Adds a fact or a source.
    #[must_use]
    pub fn fact(mut self, note: impl Into<String>) -> Self {
        self.notes.push(note.into());
        self
    }

    /// Adds a way out.
    #[must_use]
    pub fn help(mut self, help: impl Into<String>) -> Self {
        self.helps.push(help.into());
        self
    }
}

/// So many diagnostics are kept; a file with more faults is told how many more there are.
pub const MOST_KEPT: usize = 100;

/// Where checking puts what it finds.
#[derive(Debug, Default)]
pub struct Sink {
    found: Vec<Diagnostic>,
    errors: usize,
    left_out: usize,
}

impl Sink {
    /// An empty sink.
    pub fn new() -> Self {
        Self::default()
    }

    /// Adds one diagnostic.
    pub fn push(&mut self, diagnostic: Diagnostic) {
        self.errors += usize::from(diagnostic.severity == Severity::Error);
        if self.found.len() < MOST_KEPT {
            self.found.push(diagnostic);
        } else {
            self.left_out += 1;
        }
    }

    /// How many errors were found so far.
    pub fn errors(&self) -> usize {
        self.errors
    }

    /// Whether any error was found.
    pub fn has_errors(&self) -> bool {
        self.errors > 0
    }

    /// Everything found, in the order it was found.
    pub fn found(&self) -> &[Diagnostic] {
        &self.found
    }

    /// Takes everything out, errors first, otherwise in the order of the text.
    pub fn into_sorted(mut self) -> Vec<Diagnostic> {
        self.found.sort_by_key(|d| (d.severity, d.span.map(|s| (s.file, s.start))));
        if self.left_out > 0 {
            let more = format!("{} more findings are not shown", self.left_out);
            self.found.push(Diagnostic::warning("more-findings", more).help("mend these first and run it again"));
        }
        self.found
    }
}

impl Extend<Diagnostic> for Sink {
    fn extend<T: IntoIterator<Item = Diagnostic>>(&mut self, iter: T) {
        for diagnostic in iter {
            self.push(diagnostic);
        }
    }
}
