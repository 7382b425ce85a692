//! Telling from its content what a file is.

use std::path::Path;

use diagnostic::{Diagnostic, FileId, Sink, Span};

use super::families::{OpenFamily, OpenProtocol};
use crate::command::inputs::Inputs;

/// What was named on the command line.
pub(super) enum Paper {
    /// An operative record.
    Record(FileId),
    /// A protocol of a family.
    Protocol(OpenProtocol),
    /// The folder of a family.
    Family(OpenFamily),
    /// A prescription as a document.
    Prescription(FileId),
}

impl Paper {
    pub(super) fn kind(&self) -> &'static str {
        match self {
            Self::Record(_) => "an operative record",
            Self::Protocol(_) => "a protocol",
            Self::Family(_) => "a family of protocols",
            Self::Prescription(_) => "a prescription",
        }
    }
}

/// Opens what was named and tells what it is.
///
/// # Errors
/// `None` with at least one error in the sink: it cannot be read, is no TOML, or is none of the four kinds.
pub(super) fn recognize(path: &Path, inputs: &mut Inputs) -> Option<Paper> {
    if path.is_dir() {
        return OpenFamily::open(path, inputs).map(Paper::Family);
    }
    let file = inputs.open_either(path)?;
    let text = inputs.text(file);
    if text.trim_start().starts_with('{') {
        return Some(Paper::Prescription(file));
    }
    let table = document::read(file, &text, &mut inputs.sink)?;
    let keys: Vec<String> = table.remaining().into_iter().map(|key| key.value).collect();
    let has = |key: &str| keys.iter().any(|known| known == key);
    if has("operation") || has("patient") {
        return Some(Paper::Record(file));
    }
    if has("procedure") && has("protocols") {
        let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
        return OpenFamily::open(folder, inputs).map(Paper::Family);
    }
    if has("horizon") || (has("id") && (has("stage") || has("limit"))) {
        let id = { table }.text("id", &mut Sink::new()).map(|id| id.value);
        return Some(Paper::Protocol(OpenProtocol { path: path.to_owned(), file, id }));
    }
    let mut fault = Diagnostic::error("unknown-kind", format!("what {} is cannot be told", path.display()))
        .at(Span { file, start: 0, end: 1 })
        .fact("a record has [operation], a protocol has `id` and `horizon`, a family is a folder with family.toml, a prescription is JSON");
    if has("rule") || has("limit") || has("exercise") {
        fault = fault.help("a part of a family is compared by naming its folder");
    } else {
        fault = fault.help("name two records, two protocols, two folders of protocols, or two prescriptions");
    }
    inputs.sink.push(fault);
    None
}
