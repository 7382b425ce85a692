//! What each command does.

mod angles;
mod check;
mod compare;
mod draw;
mod explain;
mod family_folder;
mod first_days;
mod found;
mod inputs;
mod ladder;
mod may;
mod measure;
mod papers;
mod prescribe;
mod recording;
mod tilt;

use clap::Parser as _;
use diagnostic::Diagnostic;

use crate::arguments::{Cli, Command};
use crate::json;
use crate::outcome::{Outcome, print};

/// Runs the command of the process's arguments.
pub fn run() -> Outcome {
    match Cli::try_parse() {
        Ok(cli) => match cli.command {
            Command::Prescribe(arguments) => prescribe::run(&arguments),
            Command::FirstDays(arguments) => first_days::run(&arguments),
            Command::May(arguments) => may::run(&arguments),
            Command::Angles(arguments) => angles::run(&arguments),
            Command::Measure(arguments) => measure::run(&arguments),
            Command::Tilt(arguments) => tilt::run(&arguments),
            Command::Ladder(arguments) => ladder::run(&arguments),
            Command::Draw(arguments) => draw::run(&arguments),
            Command::Compare(arguments) => compare::run(&arguments),
            Command::Check(arguments) => check::run(&arguments),
            Command::Explain(arguments) => explain::run(&arguments),
        },
        Err(error) if error.use_stderr() => {
            let _ = error.print();
            if std::env::args_os().any(|argument| argument == "--json") {
                let message = error.render().to_string();
                // Up to the first empty line: what is wrong, and the arguments it is about.
                let lines: Vec<&str> =
                    message.lines().take_while(|line| !line.trim().is_empty()).map(str::trim).collect();
                let fault = Diagnostic::error("usage", lines.join(" ").trim_start_matches("error: "))
                    .help("`mendarc --help` shows how each command is called");
                let _ = print(&json::failure(None, &[fault], &diagnostic::Sources::new()));
            }
            Outcome::CouldNotRun
        }
        Err(help_or_version) => {
            let _ = help_or_version.print();
            Outcome::Done
        }
    }
}
