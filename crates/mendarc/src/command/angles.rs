//! `mendarc angles`: a file of matrices of any size, row by row, with little memory.

mod header;
mod lines;
mod numbers;
mod rows;
mod tally;
mod work;

use std::fs::File;
use std::io::{Read, Write};
use std::path::Path;

use body::Side;
use diagnostic::{Diagnostic, Sources};

use crate::arguments::Angles;
use crate::command::found::{Found, tell};
use crate::json;
use crate::outcome::{Outcome, print};
use crate::render;
use crate::view;
use header::Refusal;
use lines::Lines;
use tally::Tally;

/// How rows are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Shape {
    Document,
    Table,
}

pub fn run(arguments: &Angles) -> Outcome {
    let path = &arguments.matrices;
    let name = path.display().to_string();
    let side = arguments.side.map(Side::from);
    let shape = if arguments.json { Shape::Document } else { Shape::Table };
    let opened = open(path).map_err(|error| {
        let fault = Diagnostic::error("cannot-read", format!("cannot read {name}: {error}"));
        (Outcome::CouldNotRun, Found::of_run(fault))
    });
    let started = opened.and_then(|file| {
        let mut lines = Lines::new(file);
        match header::read(&mut lines, &name) {
            Ok(()) => Ok(lines),
            Err(Refusal::CannotRead(fault)) => Err((Outcome::CouldNotRun, Found::of_run(fault))),
            Err(Refusal::Unusable(found)) => Err((Outcome::Findings, found)),
        }
    });
    match started {
        Ok(lines) => stream(lines, &name, side, shape),
        Err((outcome, found)) => refuse(outcome, &found, &name, shape),
    }
}

/// A file, or what another program hands over; a folder or a device is not read.
fn open(path: &Path) -> std::io::Result<File> {
    let kind = std::fs::metadata(path)?.file_type();
    #[cfg(unix)]
    let streams = std::os::unix::fs::FileTypeExt::is_fifo(&kind);
    #[cfg(not(unix))]
    let streams = false;
    if kind.is_file() || streams {
        return File::open(path);
    }
    Err(std::io::Error::other("it is not a file"))
}

/// Nothing could be read: one document, and what was wrong.
fn refuse(outcome: Outcome, found: &Found, name: &str, shape: Shape) -> Outcome {
    let printed = match shape {
        Shape::Document => print(&json::angles::refusal(&[found.for_document(name)])),
        Shape::Table => Outcome::Done,
    };
    tell(std::slice::from_ref(found), name);
    outcome.max(printed)
}

/// Every row in order, then what was found.
fn stream(lines: Lines<impl Read + Send>, name: &str, side: Option<Side>, shape: Shape) -> Outcome {
    // Programs use a right arm's definitions, so that is what an unnamed arm is read as, and it is said so.
    let read_as = side.unwrap_or(Side::Right);
    let mut out = std::io::stdout().lock();
    let mut tally = Tally::default();
    if side.is_none() {
        let fault = Diagnostic::warning("side-not-given", "read as a right arm, because no side was given")
            .help("give --side left or --side right; a left arm's raw data are mirrored for you");
        tally.add(Found::of_run(fault));
    }
    let head = match shape {
        Shape::Document => json::angles::head(side),
        Shape::Table => view::angles::head(name, read_as, side.is_some()),
    };
    let mut written = out.write_all(head.as_bytes());
    if written.is_ok() {
        written = work::through(lines, read_as, shape, &mut out, &mut tally);
    }
    let could_read = tally.cannot_read.is_none();
    if tally.summary.rows == 0 && could_read && written.is_ok() {
        let fault = Diagnostic::error("no-matrices", format!("{name} has a first line and no matrix"))
            .help("each line after the first is one matrix: nine numbers, row by row");
        tally.add(Found::of_run(fault));
    }
    let found = tally.all();
    let written = written.and_then(|()| {
        let tail = match shape {
            Shape::Document => {
                let told: Vec<_> = found.iter().map(|found| found.for_document(name)).collect();
                json::angles::tail(&tally.summary, told)
            }
            Shape::Table => view::angles::tail(&tally.summary),
        };
        out.write_all(tail.as_bytes())?;
        out.flush()
    });
    drop(out);
    tell(&found, name);
    match written {
        Ok(()) if !could_read => Outcome::CouldNotRun,
        Ok(()) if tally.errors > 0 => Outcome::Findings,
        Ok(()) => Outcome::Done,
        // A reader that went away is no fault.
        Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => Outcome::Done,
        Err(error) => {
            let fault = Diagnostic::error("cannot-write", format!("cannot write to stdout: {error}"));
            render::to_stderr(&[fault], &Sources::new());
            Outcome::CouldNotRun
        }
    }
}
