//! A folder of files that appear whole or not at all.

use std::fs::{self, File};
use std::io::{ErrorKind, Read as _, Write as _};
use std::path::{Path, PathBuf};

use diagnostic::Diagnostic;

/// How the name of a file ends that is on its way.
const UNFINISHED: &str = ".unfinished";

/// A file of ours is far smaller.
const MOST_READ: u64 = 1024 * 1024 + 1; // not medical: the limit of files, and one byte to see that it is passed

/// Files on their way into a folder: each written beside its place and synced first, all moved into place at the end.
///
/// Whoever looks into the folder sees the old files or the new ones, and never half of one. A process that is
/// killed leaves at most files whose names begin with a dot, and the next run into the folder takes them away. Runs into
/// one folder wait for each other.
#[derive(Debug)]
pub struct Folder {
    path: PathBuf,
    waiting: Vec<(PathBuf, PathBuf)>,
    outdated: Vec<PathBuf>,
    /// Held until the folder is done with: two runs at once would mix the sheets of two patients.
    _lock: Option<File>,
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
        // Where a folder can't be locked, as on some file systems, whoever comes last wins file by file.
        let lock = File::open(path).ok().filter(|folder| folder.lock().is_ok());
        if lock.is_some() {
            sweep(path);
        }
        Ok(Self { path: path.to_owned(), waiting: Vec::new(), outdated: Vec::new(), _lock: lock })
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
        let beside = self.path.join(format!(".{name}.{}{UNFINISHED}", std::process::id()));
        self.waiting.push((beside.clone(), place.clone()));
        let written = File::create(&beside).and_then(|mut file| {
            file.write_all(content)?;
            file.sync_all()
        });
        written.map_err(|error| fault(&place, &error))
    }

    /// Moves every file into its place; gives their names.
    ///
    /// # Errors
    /// `cannot-write`, with the file it was about; those moved before it are whole.
    pub fn finish(mut self) -> Result<Vec<String>, Diagnostic> {
        let mut written = Vec::new();
        while let Some((beside, place)) = self.waiting.first() {
            fs::rename(beside, place).map_err(|error| fault(place, &error))?;
            written.extend(place.file_name().map(|name| name.to_string_lossy().into_owned()));
            self.waiting.remove(0);
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
        Ok(written)
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

/// Takes away what a run that was killed has left; nobody else writes while the folder is locked.
fn sweep(path: &Path) {
    let Ok(files) = fs::read_dir(path) else { return };
    for file in files.flatten() {
        let name = file.file_name();
        let is_left = name.to_str().is_some_and(|name| name.starts_with('.') && name.ends_with(UNFINISHED));
        if is_left {
            // What can't be removed does no harm.
            let _ = fs::remove_file(file.path());
        }
    }
}

fn fault(place: &Path, error: &std::io::Error) -> Diagnostic {
    Diagnostic::error("cannot-write", format!("cannot write {}: {error}", place.display()))
        .help("give `--out` a folder that can be written to, with room for a few megabytes")
}
