//! Why no paper comes out.

use typst::WorldExt;
use typst::diag::SourceDiagnostic;

use crate::sheet::Sheet;

/// Why a document was not printed.
#[derive(Debug, thiserror::Error)]
pub enum Failure {
    /// A text has signs that the faces lack; they would print as empty boxes.
    #[error("no glyph for {} in \"{sample}\"", shown(characters))]
    NoGlyph {
        /// The beginning of the text.
        sample: String,
        /// The signs, each once, in their order.
        characters: Vec<char>,
    },
    /// The document could not be written as data.
    #[error("the document can't be written as data")]
    Document(#[source] serde_json::Error),
    /// The templates could not lay it out.
    #[error("the document can't be laid out: {0}")]
    Layout(String),
    /// A picture could not be drawn as pixels.
    #[error("the picture can't be drawn: {0}")]
    Picture(String),
    /// The pages could not be written as an accessible PDF.
    #[error("the pages can't be written as PDF: {0}")]
    Export(String),
}

impl Failure {
    pub(crate) fn layout(sheet: &Sheet, faults: &[SourceDiagnostic]) -> Self {
        Self::Layout(told(sheet, faults))
    }

    pub(crate) fn export(sheet: &Sheet, faults: &[SourceDiagnostic]) -> Self {
        Self::Export(told(sheet, faults))
    }
}

/// The faults with their places in the templates.
fn told(sheet: &Sheet, faults: &[SourceDiagnostic]) -> String {
    let each = faults.iter().map(|fault| {
        let place = place(sheet, fault).map_or(String::new(), |place| format!(" ({place})"));
        let hints: String = fault.hints.iter().map(|hint| format!("; {}", hint.v)).collect();
        format!("{}{place}{hints}", fault.message)
    });
    each.collect::<Vec<_>>().join(" · ")
}

fn place(sheet: &Sheet, fault: &SourceDiagnostic) -> Option<String> {
    let id = fault.span.id()?;
    let source = typst::World::source(sheet, id).ok()?;
    let start = sheet.range(fault.span)?.start;
    let line = source.lines().byte_to_line(start)? + 1;
    Some(format!("{}:{line}", id.get().vpath().get_without_slash()))
}

fn shown(characters: &[char]) -> String {
    characters.iter().map(|c| format!("'{c}' (U+{:04X})", u32::from(*c))).collect::<Vec<_>>().join(", ")
}
