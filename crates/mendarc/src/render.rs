//! Diagnostics for people, on stderr.

use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};
use diagnostic::{Diagnostic, Severity, Sources, Span};

/// Writes diagnostics to stderr, in color where the terminal has it.
pub fn to_stderr(diagnostics: &[Diagnostic], sources: &Sources) {
    for diagnostic in diagnostics {
        anstream::eprintln!("{}\n", render(diagnostic, sources, &Renderer::styled()));
    }
}

/// One diagnostic as text.
pub fn render(diagnostic: &Diagnostic, sources: &Sources, renderer: &Renderer) -> String {
    let level = match diagnostic.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Question => Level::INFO.with_name("question"),
        Severity::Note => Level::NOTE,
    };
    let title = level.primary_title(diagnostic.message.as_str()).id(diagnostic.code);
    let mut group = Group::with_title(title);
    if let Some(span) = diagnostic.span
        && let Some(source) = sources.get(span.file)
    {
        let mut snippet = Snippet::source(source.text.as_str()).path(source.name.as_str());
        let annotation = AnnotationKind::Primary.span(range(span, &source.text));
        snippet = snippet.annotation(match &diagnostic.label {
            Some(label) => annotation.label(label.as_str()),
            None => annotation,
        });
        for label in diagnostic.labels.iter().filter(|label| label.span.file == span.file) {
            snippet = snippet.annotation(
                AnnotationKind::Context.span(range(label.span, &source.text)).label(label.text.as_str()),
            );
        }
        group = group.element(snippet);
    }
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
