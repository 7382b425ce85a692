//! Diagnostics for people, on stderr.

use std::io::Write as _;

use annotate_snippets::{AnnotationKind, Group, Level, Origin, Renderer, Snippet};
use diagnostic::{Diagnostic, Severity, Sources, Span};

/// Writes diagnostics to stderr, in color where the terminal has it.
pub fn to_stderr(diagnostics: &[Diagnostic], sources: &Sources) {
    let mut err = anstream::stderr().lock();
    for diagnostic in diagnostics {
        // A reader that went away is no fault of the command.
        let _ = writeln!(err, "{}\n", render(diagnostic, sources, &Renderer::styled()));
    }
}

/// Writes a diagnostic of a place in a file that is not kept: the place is named, the line is not shown.
pub fn to_stderr_at(diagnostic: &Diagnostic, file: &str, line: u64, column: usize) {
    let title = level(diagnostic).primary_title(diagnostic.message.as_str()).id(diagnostic.code);
    let mut origin = Origin::path(file).char_column(column);
    if let Ok(line) = usize::try_from(line) {
        origin = origin.line(line);
    }
    let text = finish(Group::with_title(title).element(origin), diagnostic, &Renderer::styled());
    let _ = writeln!(anstream::stderr().lock(), "{text}\n");
}

/// One diagnostic as text.
pub fn render(diagnostic: &Diagnostic, sources: &Sources, renderer: &Renderer) -> String {
    let level = level(diagnostic);
    let title = level.primary_title(diagnostic.message.as_str()).id(diagnostic.code);
    let mut group = Group::with_title(title);
    if let Some(span) = diagnostic.span
        && let Some(source) = sources.get(span.file)
    {
        let text = source.text.as_str();
        let at = range(span, text);
        let line_start = text[..at.start].rfind('\n').map_or(0, |place| place + 1);
        let line = text[line_start..].lines().next().unwrap_or_default();
        if line.len() > LONGEST_LINE || line.chars().any(|c| c.is_control() && c != '\t') {
            let position = source.position(span.start);
            let origin = Origin::path(source.name.as_str()).line(position.line).char_column(position.column);
            return finish(group.element(origin), diagnostic, renderer);
        }
        let mut snippet = Snippet::source(source.text.as_str()).path(source.name.as_str());
        let annotation = AnnotationKind::Primary.span(range(span, &source.text));
        snippet = snippet.annotation(match &diagnostic.label {
            Some(label) => annotation.label(label.as_str()),
            None => annotation,
        });
        for label in diagnostic.labels.iter().filter(|label| label.span.file == span.file) {
            snippet = snippet
                .annotation(AnnotationKind::Context.span(range(label.span, &source.text)).label(label.text.as_str()));
        }
        group = group.element(snippet);
    }
    finish(group, diagnostic, renderer)
}

fn level(diagnostic: &Diagnostic) -> Level<'static> {
    match diagnostic.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Question => Level::INFO.with_name("question"),
        Severity::Note => Level::NOTE,
    }
}

/// A longer line is named and not shown.
const LONGEST_LINE: usize = 500;

fn finish<'d>(mut group: Group<'d>, diagnostic: &'d Diagnostic, renderer: &Renderer) -> String {
    for note in &diagnostic.notes {
        group = group.element(Level::NOTE.message(note.as_str()));
    }
    for help in &diagnostic.helps {
        group = group.element(Level::HELP.message(help.as_str()));
    }
    renderer.render(&[group])
}

/// The span on the text: on character borders, and cut to its first line where it runs over many.
fn range(span: Span, text: &str) -> std::ops::Range<usize> {
    let clamp = |at: u32| {
        let mut at = (at as usize).min(text.len());
        while !text.is_char_boundary(at) {
            at -= 1;
        }
        at
    };
    let (start, end) = (clamp(span.start), clamp(span.end));
    let first_line = text[start..].find('\n').map_or(text.len(), |length| start + length);
    start..end.min(first_line).max(start)
}
