//! The folder of a family: its files, opened and not yet read.

use std::path::{Path, PathBuf};

use diagnostic::{Diagnostic, FileId};

use crate::command::inputs::Inputs;

/// A folder with more files than this is no family.
const MOST_FILES: usize = 100; // not medical: bounds the work

/// Whether a folder holds a family.
pub fn is_family(folder: &Path) -> bool {
    folder.join("family.toml").is_file()
}

/// Opens every file of a family: the name of each without its ending, and the file.
///
/// # Errors
/// - `cannot-read`, `no-family`: the command could not run
/// - `too-many`, and whatever keeps a single file from being read
pub fn open(folder: &Path, inputs: &mut Inputs) -> Option<Vec<(String, FileId)>> {
    let shown = folder.display();
    let listed = match std::fs::read_dir(folder) {
        Ok(listed) => listed,
        Err(error) => {
            inputs.cannot_run(Diagnostic::error("cannot-read", format!("cannot read {shown}: {error}")));
            return None;
        }
    };
    let mut paths: Vec<PathBuf> = listed
        .filter_map(|item| item.ok().map(|item| item.path()))
        .filter(|path| path.extension().is_some_and(|ending| ending == "toml"))
        .take(MOST_FILES + 1)
        .collect();
    paths.sort();
    if !is_family(folder) {
        inputs.cannot_run(
            Diagnostic::error("no-family", format!("the folder {shown} has no family.toml"))
                .help("name the folder that holds family.toml, its protocols and its rules"),
        );
        return None;
    }
    if paths.len() > MOST_FILES {
        inputs.sink.push(
            Diagnostic::error("too-many", format!("the folder {shown} has more than {MOST_FILES} files"))
                .help("a family has a folder of its own"),
        );
        return None;
    }
    // Every file is opened, so that all that is wrong with them is told at once.
    let files: Vec<Option<(String, FileId)>> =
        paths.iter().map(|path| Some((path.file_stem()?.to_string_lossy().into_owned(), inputs.open(path)?))).collect();
    files.into_iter().collect()
}
