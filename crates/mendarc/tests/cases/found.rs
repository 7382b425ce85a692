//! Diagnostics: the ones a case expects, and the ones nobody expected.

use diagnostic::{Diagnostic, Severity};

use crate::days::Words;
use crate::world::World;

/// `error CODE [in settings.toml] [line N]`, and the same for warnings and notes.
struct Expected<'t> {
    severity: Severity,
    code: &'t str,
    file: Option<&'t str>,
    line: Option<usize>,
}

impl<'t> Expected<'t> {
    fn read(text: &'t str) -> Option<Result<Self, String>> {
        let mut words = Words(text);
        let severity = match words.word() {
            Ok("error") => Severity::Error,
            Ok("warning") => Severity::Warning,
            Ok("note") => Severity::Note,
            _ => return None,
        };
        let mut read = || -> Result<Self, String> {
            let code = words.word()?;
            let file = if words.take("in") { Some(words.word()?) } else { None };
            let line = if words.take("line") { Some(words.number()?) } else { None };
            words.end()?;
            Ok(Self { severity, code, file, line })
        };
        Some(read())
    }

    fn is(&self, found: &Diagnostic, world: &World<'_>) -> bool {
        let (file, line) = place(found, world);
        found.severity == self.severity
            && found.code == self.code
            && self.file.is_none_or(|wanted| file.as_deref() == Some(wanted))
            && self.line.is_none_or(|wanted| line == Some(wanted))
    }
}

fn place(found: &Diagnostic, world: &World<'_>) -> (Option<String>, Option<usize>) {
    let source = found.span.and_then(|span| Some((span, world.sources.get(span.file)?)));
    (source.map(|(_, source)| source.name.clone()), source.map(|(span, source)| source.position(span.start).line))
}

fn shown(found: &Diagnostic, world: &World<'_>) -> String {
    let (file, line) = place(found, world);
    let at = file.map_or(String::new(), |file| format!(" in {file} line {}", line.unwrap_or(0)));
    format!("{} {}{at} ({})", found.severity.name(), found.code, found.message)
}

/// Whether something of this kind was found.
pub fn check(world: &World<'_>, text: &str) -> Result<(), String> {
    let expected = Expected::read(text).ok_or("not a finding")??;
    if world.found.iter().any(|found| expected.is(found, world)) {
        return Ok(());
    }
    let all: Vec<String> = world.found.iter().map(|found| shown(found, world)).collect();
    Err(if all.is_empty() { "nothing was found".into() } else { format!("found: {}", all.join("; ")) })
}

/// Errors and warnings that no expectation names, and a plan in spite of errors.
pub fn unexpected<'w>(world: &'w World<'_>, expectations: &'w [(usize, String)]) -> impl Iterator<Item = String> + 'w {
    let expected: Vec<Expected<'_>> =
        expectations.iter().filter_map(|(_, text)| Expected::read(text)).filter_map(Result::ok).collect();
    let in_spite = world.issued.is_some() && world.found.iter().any(|found| found.severity == Severity::Error);
    world
        .found
        .iter()
        .filter(|found| matches!(found.severity, Severity::Error | Severity::Warning))
        .filter(move |found| !expected.iter().any(|expected| expected.is(found, world)))
        .map(|found| format!("nobody expected {}", shown(found, world)))
        .chain(in_spite.then(|| "a plan was made in spite of an error".to_owned()))
}
