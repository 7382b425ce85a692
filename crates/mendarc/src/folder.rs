//! A folder of files that appear whole or not at all.

use std::fs::{self, File};
use std::io::{ErrorKind, Read as _, Write as _};
use std::path::{Path, PathBuf};

use diagnostic::Diagnostic;

/// A file of ours is far smaller.
const MOST_READ: u64 = 1024 * 1024 + 1; // not medical: the limit of files, and one byte to see that it is passed

/// Files on their way into a folder: each written beside its place and synced first, all moved into place at the end.
///
/// Whoever looks into the folder sees the old files or the new ones, and never half of one. A process that is
/// killed leaves at most files whose names begin with a dot.
#[derive(Debug)]
pub struct Folder {
    path: PathBuf,
    waiting: Vec<(PathBuf, PathBuf)>,
    outdated: Vec<PathBuf>,
}

impl Folder {
    /// Opens a folder, and makes it where it is not there.
    ///
    /// # Errors
    /// `cannot-write`: it is a file, or can't be made.
    pub fn open(path: &Path) -> Result<Self, Diagnostic> {
        if path.exists() && !path.is_dir() {
            return Err(Diagnostic::error(
                "cannot-write",
                format!("{} is a file, and `--out` names a folder", path.display()),
            ));
        }
        fs::create_dir_all(path).map_err(|error| fault(path, &error))?;
        Ok(Self { path: path.to_owned(), waiting: Vec::new(), outdated: Vec::new() })
    }

    /// What stands in the folder under a name now, at most 1 MiB of it; `None` where nothing does, or no text.
    pub fn text(&self, name: &str) -> Option<String> {
        let mut text = String::new();
        let mut file = File::open(self.path.join(name)).ok()?.take(MOST_READ);
        file.read_to_string(&mut text).ok().map(|_| text)
    }

    /// Notes that a file of an earlier run has no place beside the new ones: it goes when they come.
    pub fn outdate(&mut self, name: &str) {
        self.outdated.push(self.path.join(name));
    }

    /// Writes a file beside its place.
    ///
    /// # Errors
    /// `cannot-write`: no room, no permission; nothing stays behind.
    pub fn put(&mut self, name: &str, content: &[u8]) -> Result<(), Diagnostic> {
        let place = self.path.join(name);
        let beside = self.path.join(format!(".{name}.{}", std::process::id()));
        self.waiting.push((beside.clone(), place.clone()));
        let written = File::create(&beside).and_then(|mut file| {
            file.write_all(content)?;
            file.sync_all()
        });
        written.map_err(|error| fault(&place, &error))
    }

    /// Moves every file into its place.
    ///
    /// # Errors
    /// `cannot-write`, with the file it was about; those moved before it are whole.
    pub fn finish(mut self) -> Result<(), Diagnostic> {
        for (beside, place) in std::mem::take(&mut self.waiting) {
            if let Err(error) = fs::rename(&beside, &place) {
                self.waiting.push((beside, place.clone()));
                return Err(fault(&place, &error));
            }
        }
        for place in &self.outdated {
            match fs::remove_file(place) {
                Err(error) if error.kind() != ErrorKind::NotFound => return Err(fault(place, &error)),
                _ => {}
            }
        }
        // A rename lasts once the folder itself is on the disk; where a folder can't be synced nothing is lost
        // but that promise.
        let _ = File::open(&self.path).and_then(|folder| folder.sync_all());
        Ok(())
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        for (beside, _) in &self.waiting {
            // What is half written must not stay; that removing it fails as well changes nothing.
            let _ = fs::remove_file(beside);
        }
    }
}

fn fault(place: &Path, error: &std::io::Error) -> Diagnostic {
    Diagnostic::error("cannot-write", format!("cannot write {}: {error}", place.display()))
        .help("give `--out` a folder that can be written to, with room for a few megabytes")
}
