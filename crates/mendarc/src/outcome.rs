//! How a run ends: exit status, and never a panic as an answer.

use std::io::Write as _;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::process::ExitCode;

use serde_json::json;

/// How a command ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[must_use]
pub enum Outcome {
    /// Done: exit status 0.
    Done,
    /// Findings: exit status 1.
    Findings,
    /// Could not run: exit status 2.
    CouldNotRun,
}

impl From<Outcome> for ExitCode {
    fn from(outcome: Outcome) -> Self {
        match outcome {
            Outcome::Done => Self::SUCCESS,
            Outcome::Findings => Self::from(1),
            Outcome::CouldNotRun => Self::from(2),
        }
    }
}

/// Runs a command; a fault of the program itself becomes a message and exit status 2.
pub fn guarded(run: fn() -> Outcome) -> ExitCode {
    let as_json = std::env::args_os().any(|argument| argument == "--json");
    std::panic::set_hook(Box::new(|_| {}));
    match catch_unwind(AssertUnwindSafe(run)) {
        Ok(outcome) => outcome.into(),
        Err(fault) => {
            let what = fault
                .downcast_ref::<&str>()
                .map(|text| (*text).to_owned())
                .or_else(|| fault.downcast_ref::<String>().cloned())
                .unwrap_or_else(|| "no details".into());
            let message = format!("mendarc met a fault of its own and printed nothing: {what}");
            if as_json {
                let document = json!({ "diagnostics": [{ "code": "internal-fault", "severity": "error",
                    "message": message, "file": null, "line": null, "column": null, "helps": [] }] });
                let _ = print(&document.to_string());
            }
            let _ = writeln!(std::io::stderr(), "error[internal-fault]: {message}");
            Outcome::CouldNotRun.into()
        }
    }
}

/// Prints a document to stdout.
///
/// A reader that went away is no fault; a document that could not be written is.
pub fn print(text: &str) -> Outcome {
    write_all(|mut out| writeln!(out, "{text}"))
}

/// Prints a page to stdout, in color where the terminal has it.
pub fn print_page(text: &str) -> Outcome {
    write_all(|out| write!(anstream::AutoStream::auto(out), "{text}"))
}

/// Says what was done, to stderr: stdout is for the document.
pub fn tell(text: &str) {
    // Where nobody listens, nothing is lost but the remark.
    let _ = writeln!(std::io::stderr(), "{text}");
}

fn write_all(write: impl FnOnce(std::io::StdoutLock<'static>) -> std::io::Result<()>) -> Outcome {
    let written = write(std::io::stdout().lock()).and_then(|()| std::io::stdout().flush());
    match written {
        Ok(()) => Outcome::Done,
        Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => Outcome::Done,
        Err(error) => {
            let _ = writeln!(std::io::stderr(), "error[cannot-write]: cannot write to stdout: {error}");
            Outcome::CouldNotRun
        }
    }
}
