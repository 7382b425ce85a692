//! The `mendarc` command.

use std::process::ExitCode;

use mendarc::{command, outcome};

fn main() -> ExitCode {
    outcome::guarded(command::run)
}
