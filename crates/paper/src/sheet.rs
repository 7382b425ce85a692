//! What the typesetter sees: the templates, the faces, and one document as a file of data.

use std::sync::LazyLock;

use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Library, LibraryExt, World};

use crate::fonts::Faces;

/// The file the templates read.
const DATA: &str = "sheet.json";

/// Path and text of each template; the first is the one that is set.
static TEMPLATES: &[(&str, &str)] = &[
    ("main.typ", include_str!("../templates/main.typ")),
    ("theme.typ", include_str!("../templates/theme.typ")),
    ("signs.typ", include_str!("../templates/signs.typ")),
    ("prose.typ", include_str!("../templates/prose.typ")),
    ("forms.typ", include_str!("../templates/forms.typ")),
    ("tables.typ", include_str!("../templates/tables.typ")),
    ("bands.typ", include_str!("../templates/bands.typ")),
    ("recovery.typ", include_str!("../templates/recovery.typ")),
    ("blocks.typ", include_str!("../templates/blocks.typ")),
];

// The extra is the summary of a table, for those who can't see it.
static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| {
    LazyHash::new(Library::builder().with_features([Feature::A11yExtras].into_iter().collect()).build())
});

static SOURCES: LazyLock<Vec<Source>> = LazyLock::new(|| {
    TEMPLATES.iter().filter_map(|(path, text)| Some(Source::new(id(path)?, (*text).to_owned()))).collect()
});

static DATA_ID: LazyLock<Option<FileId>> = LazyLock::new(|| id(DATA));

/// One document, ready to be set.
pub struct Sheet {
    data: Bytes,
    /// Each drawing by the file that the data name it by.
    drawings: Vec<(FileId, Bytes)>,
}

impl Sheet {
    /// The document as JSON, and its drawings in the order of their names ([`drawing_name`]).
    pub fn new(json: String, drawings: Vec<String>) -> Self {
        let files = drawings.into_iter().enumerate();
        let files = files.filter_map(|(order, svg)| Some((id(&drawing_name(order))?, Bytes::from_string(svg))));
        Self { data: Bytes::from_string(json), drawings: files.collect() }
    }
}

/// The file of a drawing.
pub fn drawing_name(order: usize) -> String {
    format!("drawing-{order}.svg")
}

impl World for Sheet {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        Faces::get().book()
    }

    fn main(&self) -> FileId {
        SOURCES[0].id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        SOURCES.iter().find(|source| source.id() == id).cloned().ok_or_else(|| missing(id))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if Some(id) == *DATA_ID {
            return Ok(self.data.clone());
        }
        let drawing = self.drawings.iter().find(|(file, _)| *file == id);
        drawing.map(|(_, svg)| svg.clone()).ok_or_else(|| missing(id))
    }

    fn font(&self, index: usize) -> Option<Font> {
        Faces::get().face(index)
    }

    // No template asks for the day: dates are in the document.
    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

fn id(path: &str) -> Option<FileId> {
    Some(RootedPath::new(VirtualRoot::Project, VirtualPath::new(path).ok()?).intern())
}

fn missing(id: FileId) -> FileError {
    FileError::NotFound(id.get().vpath().get_without_slash().into())
}
