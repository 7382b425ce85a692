//! Which stages the surgeon has opened.

use diagnostic::{Diagnostic, FileId, Sink, Spanned};
use jiff::civil::Date;

/// One stage opened by a surgeon.
#[derive(Debug, Clone)]
pub struct Opening {
    /// The stage.
    pub stage: Spanned<String>,
    /// When.
    pub on: Spanned<Date>,
    /// By whom.
    pub by: String,
}

/// All openings of a prescription; the first stage is open without one.
#[derive(Debug, Clone, Default)]
pub struct Openings(pub Vec<Opening>);

/// Reads a list of `[[opened]]` with `stage`, `on` and `by`.
///
/// # Errors
/// `None` where the file is not TOML; every other fault is a diagnostic.
pub fn read(file: FileId, text: &str, sink: &mut Sink) -> Option<Openings> {
    let mut table = document::read(file, text, sink)?;
    let mut openings = Vec::new();
    for mut opened in table.tables("opened", sink) {
        let stage = opened.require("stage", sink).and_then(|value| value.text(sink));
        let on = opened.require("on", sink).and_then(|value| value.date(sink));
        let by = opened.require("by", sink).and_then(|value| value.text(sink));
        opened.finish(sink);
        let (Some(stage), Some(on), Some(by)) = (stage, on, by) else { continue };
        if !crate::settings_read::says_something(&by.value) {
            sink.push(Diagnostic::error("unsigned", "a stage is opened by somebody").at(by.span));
            continue;
        }
        openings.push(Opening { stage, on, by: by.value });
    }
    table.finish(sink);
    Some(Openings(openings))
}
