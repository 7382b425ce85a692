//! `cargo xtask evidence`: from `evidence/*.toml` to the Rust table and `docs/evidence.md`.

mod check;
mod page;
mod read;
mod table;

use std::fs;
use std::path::Path;

use anyhow::Context;
use diagnostic::{Diagnostic, FileId, Sink, Sources};

use crate::{Mode, Output};

pub use read::{Entry, Source};

/// Everything the files of the evidence folder say.
#[derive(Debug, Default)]
pub struct Table {
    /// Entries, by id.
    pub entries: Vec<Entry>,
    /// Sources, by key.
    pub sources: Vec<Source>,
}

/// What was read, what was found wrong with it, and the files it came from.
#[derive(Debug)]
pub struct Reading {
    /// The table as far as it could be read.
    pub table: Table,
    /// Faults, errors first.
    pub found: Vec<Diagnostic>,
    /// The files, for printing places.
    pub files: Sources,
    /// Whether any of the faults is an error.
    pub failed: bool,
}

/// Reads and checks files given as (name, text); `sources.toml` holds the sources.
pub fn read(files: &[(String, String)]) -> Reading {
    let mut sources = Sources::new();
    let mut sink = Sink::new();
    let mut table = Table::default();
    for (name, text) in files {
        let file: FileId = sources.add(name.clone(), text.clone());
        let topic = name.rsplit('/').next().unwrap_or(name).trim_end_matches(".toml");
        read::file(file, topic, text, &mut table, &mut sink);
    }
    check::check(&table, &mut sink);
    table.entries.sort_by(|a, b| a.id.value.cmp(&b.id.value));
    table.sources.sort_by(|a, b| a.key.value.cmp(&b.key.value));
    let failed = sink.has_errors();
    Reading { table, found: sink.into_sorted(), files: sources, failed }
}

/// Reads the evidence folder of a workspace.
pub fn read_folder(root: &Path) -> anyhow::Result<Reading> {
    let mut files = Vec::new();
    for item in fs::read_dir(root.join("evidence")).context("reading the evidence folder")? {
        let path = item?.path();
        if path.extension().is_some_and(|ending| ending == "toml") {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            let text = fs::read_to_string(&path).with_context(|| format!("reading evidence/{name}"))?;
            files.push((format!("evidence/{name}"), text));
        }
    }
    files.sort();
    Ok(read(&files))
}

/// The files that the table gives.
pub fn outputs(table: &Table) -> Vec<Output> {
    vec![
        Output { path: "crates/evidence/src/generated.rs".into(), text: table::entries(table) },
        Output { path: "crates/evidence/src/citations.rs".into(), text: table::citations(table) },
        Output { path: "docs/evidence.md".into(), text: page::page(table) },
    ]
}

/// Reads, checks, and writes or compares; gives whether all was well.
pub fn run(root: &Path, mode: Mode) -> anyhow::Result<bool> {
    let reading = read_folder(root)?;
    crate::print(&reading.found, &reading.files);
    if reading.failed {
        eprintln!("nothing was written");
        return Ok(false);
    }
    let mut current = true;
    for output in outputs(&reading.table) {
        current &= output.settle(root, mode)?;
    }
    if !current {
        eprintln!("run `cargo xtask evidence`");
    }
    Ok(current)
}

#[cfg(test)]
mod tests;
