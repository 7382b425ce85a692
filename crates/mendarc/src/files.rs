//! Opening what the user named.

use std::fs::File;
use std::io::Read as _;
use std::path::Path;

use diagnostic::{Diagnostic, FileId, Sources};
use document::{MAX_FILE_BYTES, text_of, too_large};

/// Documents that the program wrote itself may be larger than what a person writes, up to this.
pub const MAX_DOCUMENT_BYTES: u64 = 16 << 20;

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

/// Reads a file that a person wrote, or a document of the program's own, which may be larger.
///
/// A file over the usual size is read only where it starts as a document does.
pub fn read_either(path: &Path, sources: &mut Sources) -> Result<FileId, FileFault> {
    match read(path, sources) {
        Err(FileFault::Unusable(fault)) if fault.code == "file-too-large" => {}
        other => return other,
    }
    let name = path.display().to_string();
    let cannot = |error: std::io::Error| {
        FileFault::CannotRead(Diagnostic::error("cannot-read", format!("cannot read {name}: {error}")))
    };
    let mut file = File::open(path).map_err(cannot)?;
    let mut bytes = Vec::new();
    std::io::Read::by_ref(&mut file).take(START_BYTES).read_to_end(&mut bytes).map_err(cannot)?;
    let first = bytes.strip_prefix(BYTE_ORDER_MARK).unwrap_or(&bytes).iter().find(|byte| !byte.is_ascii_whitespace());
    if first != Some(&b'{') {
        return Err(FileFault::Unusable(too_large(&name)));
    }
    file.take(MAX_DOCUMENT_BYTES + 1 - START_BYTES).read_to_end(&mut bytes).map_err(cannot)?;
    if bytes.len() as u64 > MAX_DOCUMENT_BYTES {
        return Err(FileFault::Unusable(
            Diagnostic::error("file-too-large", format!("{name} is larger than 16 MiB and was not read"))
                .help("a prescription is a few mebibytes at most; is this the right file?"),
        ));
    }
    let text = String::from_utf8(bytes).map_err(|_| {
        FileFault::Unusable(
            Diagnostic::error("not-utf-8", format!("{name} is not UTF-8 text")).help("save the file as UTF-8"),
        )
    })?;
    let text = text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text);
    Ok(sources.add(name, text))
}

/// So much is read to see whether a large file is a document.
const START_BYTES: u64 = 1 << 10;

const BYTE_ORDER_MARK: &[u8] = "\u{feff}".as_bytes();
