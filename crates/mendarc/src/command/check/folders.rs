//! The families in the folders that a user names.

use std::path::{Path, PathBuf};

use diagnostic::{Diagnostic, FileId, Sink};
use protocol::{Family, Library};

use crate::command::family_folder::{self, is_family};
use crate::command::inputs::Inputs;
use crate::shelf::Shelf;

/// Reads and checks every family in some folders; everything that is wrong with the files is told.
pub fn families(paths: &[PathBuf], shelf: &Shelf, inputs: &mut Inputs) -> Vec<Family> {
    let mut folders: Vec<PathBuf> = Vec::new();
    for path in paths {
        let found = folders_of(path, inputs);
        folders.extend(found.into_iter().filter(|folder| !folders.contains(folder)).collect::<Vec<_>>());
    }
    let mut files: Vec<(String, FileId, String)> = Vec::new();
    for (place, folder) in folders.iter().enumerate() {
        for (name, file) in family_folder::open(folder, inputs).into_iter().flatten() {
            // Two folders of one name are two families: the place keeps them apart.
            files.push((format!("{place}/{name}.toml"), file, inputs.text(file)));
        }
    }
    let texts: Vec<(&str, FileId, &str)> =
        files.iter().map(|(name, file, text)| (name.as_str(), *file, text.as_str())).collect();
    let mut library = Library::read(&texts, &mut inputs.sink);
    library.check(&shelf.catalogue, &mut inputs.sink);
    for (place, family) in library.families.iter().enumerate() {
        let twin = library.families[..place].iter().find(|known| known.file.id == family.file.id);
        if twin.is_some() {
            inputs.sink.push(
                Diagnostic::error("duplicate-id", format!("two folders hold a family `{}`", family.file.id))
                    .at(diagnostic::Span { end: family.file.span.start + 1, ..family.file.span })
                    .help("check them one after the other, or compare them with `mendarc compare`"),
            );
        }
    }
    // What is too large was told with the rest where the files could be read whole.
    let told = inputs.sink.found().iter().any(|found| found.code == "family-too-large");
    let mut again = Sink::new();
    library.families.retain(|family| family.fits(if told { &mut again } else { &mut inputs.sink }));
    if folders.is_empty() && !inputs.sink.has_errors() {
        inputs.cannot_run(Diagnostic::error("no-family", "nothing to check"));
    }
    library.families
}

/// The folders of families at a path: itself, the folder a file stands in, or its folders.
fn folders_of(path: &Path, inputs: &mut Inputs) -> Vec<PathBuf> {
    let shown = path.display();
    if !path.exists() {
        inputs.cannot_run(Diagnostic::error("cannot-read", format!("cannot read {shown}: no such file or folder")));
        return Vec::new();
    }
    if path.is_file() {
        let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
        if is_family(folder) {
            return vec![folder.to_owned()];
        }
    } else if is_family(path) {
        return vec![path.to_owned()];
    } else if let Ok(listed) = std::fs::read_dir(path) {
        let mut folders: Vec<PathBuf> =
            listed.filter_map(|item| Some(item.ok()?.path())).filter(|folder| is_family(folder)).collect();
        folders.sort();
        if !folders.is_empty() {
            return folders;
        }
    }
    inputs.cannot_run(
        Diagnostic::error("no-family", format!("{shown} holds no family of protocols"))
            .help("name a folder that holds family.toml, its protocols and its rules, or a folder of such folders"),
    );
    Vec::new()
}
