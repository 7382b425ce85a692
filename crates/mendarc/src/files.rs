//! Opening what the user named.

use std::fs::File;
use std::io::Read as _;
use std::path::Path;

use diagnostic::{Diagnostic, FileId, Sources};
use document::{MAX_FILE_BYTES, text_of, too_large};

/// Why a file gave no text.
#[derive(Debug)]
pub enum FileFault {
    /// It could not be opened or read: the command could not run.
    CannotRead(Diagnostic),
    /// It was read, and it is no text a person wrote.
    Unusable(Diagnostic),
}

/// Reads a file into the sources.
///
/// A file larger than can be right is refused unread; a folder, a pipe or a
/// device is not read at all.
pub fn read(path: &Path, sources: &mut Sources) -> Result<FileId, FileFault> {
    let name = path.display().to_string();
    let cannot = |error: &dyn std::fmt::Display| {
        FileFault::CannotRead(Diagnostic::error("cannot-read", format!("cannot read {name}: {error}")))
    };
    let about = std::fs::metadata(path).map_err(|error| cannot(&error))?;
    if !about.is_file() {
        return Err(cannot(&"it is not a file"));
    }
    if about.len() > MAX_FILE_BYTES {
        return Err(FileFault::Unusable(too_large(&name)));
    }
    let mut bytes = Vec::new();
    let file = File::open(path).map_err(|error| cannot(&error))?;
    file.take(MAX_FILE_BYTES + 1).read_to_end(&mut bytes).map_err(|error| cannot(&error))?;
    let text = text_of(&name, bytes).map_err(FileFault::Unusable)?;
    Ok(sources.add(name, text))
}
