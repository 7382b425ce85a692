//! Reading the folders of families, and the protocols in them.

use std::path::{Path, PathBuf};

use diagnostic::{Diagnostic, FileId};
use document::nearest;
use prescription::compare::{Edition, Folders, Scoped, compare_editions, compare_protocols};
use protocol::{Family, Library};

use super::Found;
use crate::command::family_folder;
use crate::command::inputs::Inputs;
use crate::json::comparison::Head;
use crate::shelf::Shelf;

/// Errors that say something about where a number comes from and nothing about the plan: a draft with a number that
/// has no source yet compares, and the run still ends with the finding.
const OF_SOURCES: [&str; 3] = ["number-without-evidence", "unknown-evidence", "memory-sets-limit"];

/// The files of a family, opened and not yet read.
#[derive(Clone)]
pub(super) struct OpenFamily {
    folder: PathBuf,
    /// The name of each file without its ending, and the file.
    files: Vec<(String, FileId)>,
}

/// A protocol's file, opened and not yet read.
pub(super) struct OpenProtocol {
    pub path: PathBuf,
    pub file: FileId,
    pub id: Option<String>,
}

impl OpenFamily {
    /// Opens the files of a folder.
    pub(super) fn open(folder: &Path, inputs: &mut Inputs) -> Option<Self> {
        Some(Self { folder: folder.to_owned(), files: family_folder::open(folder, inputs)? })
    }

    /// Reads the family; everything that is wrong with its files is told.
    fn read(&self, shelf: &Shelf, inputs: &mut Inputs) -> Option<Family> {
        let texts: Vec<(String, FileId, String)> =
            self.files.iter().map(|(name, file)| (format!("family/{name}.toml"), *file, inputs.text(*file))).collect();
        let files: Vec<(&str, FileId, &str)> =
            texts.iter().map(|(name, file, text)| (name.as_str(), *file, text.as_str())).collect();
        let before = (inputs.sink.errors(), inputs.sink.found().len());
        let library = Library::read(&files, &mut inputs.sink);
        library.check(&shelf.catalogue, &mut inputs.sink);
        let of_sources = inputs.sink.found()[before.1..].iter().filter(|found| OF_SOURCES.contains(&found.code));
        let hinders = inputs.sink.errors() - before.0 > of_sources.count();
        let family = library.families.into_iter().next();
        // A family that was not read says why; that it says nothing must not look like a reason to go on.
        if family.is_none() && !hinders {
            let shown = self.folder.display();
            inputs
                .sink
                .push(Diagnostic::error("no-family", format!("the folder {shown} holds no family that can be used")));
        }
        family.filter(|_| !hinders)
    }

    fn texts(&self, inputs: &Inputs) -> Vec<(String, String)> {
        self.files.iter().map(|(name, file)| (name.clone(), inputs.text(*file))).collect()
    }

    fn head(&self) -> Head {
        Head { file: self.folder.display().to_string(), ..Head::default() }
    }
}

/// Compares two folders, protocol by protocol.
pub(super) fn editions(
    a: OpenFamily,
    b: OpenFamily,
    only: Option<&str>,
    shelf: &Shelf,
    inputs: &mut Inputs,
) -> Option<Found> {
    let read = [a.read(shelf, inputs), b.read(shelf, inputs)];
    let [Some(of_a), Some(of_b)] = read else { return None };
    of_one_family(&of_a, &of_b, inputs)?;
    if let Some(only) = only
        && (of_a.protocol(only).is_none() || of_b.protocol(only).is_none())
    {
        let ids = of_a.file.protocols.iter().map(String::as_str);
        let mut fault = Diagnostic::error("unknown-protocol", format!("`{only}` is not a protocol of both folders"))
            .fact(format!("protocols: {}", of_a.file.protocols.join(", ")));
        if let Some(near) = nearest(only, ids) {
            fault = fault.help(format!("did you mean \"{near}\"?"));
        }
        inputs.sink.push(fault);
        return None;
    }
    Some(Found {
        kind: "editions",
        heads: [(&a, &of_a), (&b, &of_b)]
            .map(|(open, family)| Head { edition: Some(editions_of(family)), ..open.head() }),
        scoped: compare_editions(&of_a, &of_b, only, &shelf.catalogue),
        same_text: a.texts(inputs) == b.texts(inputs),
    })
}

/// "staged 2026-07, delayed 2026-07"; one word where all are of one edition.
fn editions_of(family: &Family) -> String {
    let mut editions: Vec<&str> = family.protocols.iter().map(|protocol| protocol.edition.as_str()).collect();
    editions.dedup();
    if let [one] = editions[..] {
        return one.to_owned();
    }
    let each = family.protocols.iter().map(|protocol| format!("{} {}", protocol.id, protocol.edition));
    each.collect::<Vec<_>>().join(", ")
}

/// Compares two protocols of one family.
///
/// # Method
/// A protocol is read with its family, which lies in its folder. A file that
/// stands alone, or beside the file that the family names, is read in the place
/// of the protocol of its id, with the rest of the other file's family.
pub(super) fn protocols(a: OpenProtocol, b: OpenProtocol, shelf: &Shelf, inputs: &mut Inputs) -> Option<Found> {
    let folders = [folder_of(&a.path), folder_of(&b.path)];
    let has_family = folders.each_ref().map(|folder| folder.join("family.toml").is_file());
    let home = |side: usize| if has_family[side] { side } else { 1 - side };
    if !has_family[0] && !has_family[1] {
        for folder in &folders {
            inputs.cannot_run(
                Diagnostic::error("no-family", format!("the folder {} has no family.toml", folder.display())).help(
                    "a protocol is compared with its family: at least one of the two files has to stand in its folder",
                ),
            );
        }
        return None;
    }
    let one_folder = same_folder(&folders[home(0)], &folders[home(1)]);
    let first = OpenFamily::open(&folders[home(0)], inputs)?;
    let second = if one_folder { first.clone() } else { OpenFamily::open(&folders[home(1)], inputs)? };
    let placed = [first.with(&a), second.with(&b)];
    let folders = if one_folder && placed[0].files == placed[1].files { Folders::One } else { Folders::Two };
    let of_a = placed[0].read(shelf, inputs);
    let of_b = if folders == Folders::One { of_a.clone() } else { placed[1].read(shelf, inputs) };
    let (of_a, of_b) = (of_a?, of_b?);
    of_one_family(&of_a, &of_b, inputs)?;
    let places = [place(&of_a, &a, inputs), place(&of_b, &b, inputs)];
    let [Some(place_a), Some(place_b)] = places else { return None };
    let edition_a = Edition { family: &of_a, place: place_a };
    let edition_b = Edition { family: &of_b, place: place_b };
    let scoped: Vec<Scoped> = compare_protocols(edition_a, edition_b, folders, &shelf.catalogue);
    let heads = [(&a, edition_a), (&b, edition_b)].map(|(open, edition)| {
        let protocol = &edition.family.protocols[edition.place];
        Head {
            file: open.path.display().to_string(),
            protocol: Some(protocol.id.clone()),
            edition: Some(protocol.edition.clone()),
            ..Head::default()
        }
    });
    let same_text = inputs.text(a.file) == inputs.text(b.file) && placed[0].texts(inputs) == placed[1].texts(inputs);
    Some(Found { kind: "protocols", heads, scoped, same_text })
}

impl OpenFamily {
    /// The family with a protocol's file in its place, where the family does not have this very file.
    fn with(&self, protocol: &OpenProtocol) -> Self {
        let mut family = self.clone();
        let stem = protocol.path.file_stem().map(|name| name.to_string_lossy().into_owned());
        let own = same_folder(&folder_of(&protocol.path), &self.folder);
        let id = protocol.id.clone().or_else(|| stem.clone()).unwrap_or_default();
        if own && stem.as_deref() == Some(id.as_str()) {
            return family;
        }
        match family.files.iter_mut().find(|(name, _)| *name == id) {
            Some((_, file)) => *file = protocol.file,
            None => family.files.push((id, protocol.file)),
        }
        family
    }
}

fn place(family: &Family, protocol: &OpenProtocol, inputs: &mut Inputs) -> Option<usize> {
    let id = protocol.id.as_deref().unwrap_or_default();
    let place = family.protocol(id);
    if place.is_none() {
        inputs.sink.push(
            Diagnostic::error(
                "unknown-protocol",
                format!("`{id}` is not a protocol of the family `{}`", family.file.id),
            )
            .fact(format!("protocols: {}", family.file.protocols.join(", ")))
            .help("family.toml names the protocols of a family"),
        );
    }
    place
}

fn of_one_family(a: &Family, b: &Family, inputs: &mut Inputs) -> Option<()> {
    if a.file.id == b.file.id {
        return Some(());
    }
    inputs.sink.push(
        Diagnostic::error(
            "two-families",
            format!("`{}` and `{}` are families for different operations", a.file.id, b.file.id),
        )
        .help("compare protocols of one family; two records of different operations do compare"),
    );
    None
}

fn folder_of(path: &Path) -> PathBuf {
    path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new(".")).to_owned()
}

fn same_folder(a: &Path, b: &Path) -> bool {
    match (a.canonicalize(), b.canonicalize()) {
        (Ok(a), Ok(b)) => a == b,
        _ => a == b,
    }
}
