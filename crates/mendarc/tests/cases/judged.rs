//! What is wrong in a step of a story, each fault with its line.

use std::path::{Path, PathBuf};

use mendarc::shelf::Shelf;

use crate::story::Step;
use crate::{expect, found, world};

/// The files of all stories, in order.
pub fn stories() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../cases");
    let mut files: Vec<_> = std::fs::read_dir(&folder)
        .expect("the folder of cases can be listed")
        .map(|file| file.expect("a file of the folder").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "md"))
        .filter(|path| path.file_name().is_some_and(|name| name != "README.md"))
        .collect();
    files.sort();
    files
}

/// The faults of a step; none where every expectation holds and nothing unexpected was found.
pub fn faults(step: &Step, shelf: &Shelf) -> Vec<String> {
    let mut world = match world::World::new(step, shelf) {
        Ok(world) => world,
        Err(message) => return vec![format!("{}: {message}", step.line)],
    };
    let mut faults = Vec::new();
    for (line, text) in &step.expectations {
        if let Err(message) = expect::check(&mut world, text) {
            faults.push(format!("{line}: `{text}`: {message}"));
        }
    }
    faults.extend(found::unexpected(&world, &step.expectations).map(|fault| format!("{}: {fault}", step.line)));
    faults
}
