//! `mendarc tilt`: where up is at every row.

use std::fmt::Write as _;

use diagnostic::Diagnostic;
use motion::{Estimate, tilt};

use crate::arguments::Tilt;
use crate::command::found::{self, Found};
use crate::command::recording;
use crate::json;
use crate::outcome::{Outcome, print, print_page};

pub fn run(arguments: &Tilt) -> Outcome {
    let name = arguments.recording.display().to_string();
    let read = match recording::read(&arguments.recording, &name) {
        Ok(read) => read,
        Err(refused) => {
            let mut outcome = refused.outcome;
            if arguments.json {
                let told = vec![refused.found.for_document(&name)];
                outcome = outcome.max(print(&json::measurement::tilt(&[], &[], told)));
            }
            found::tell(&[refused.found], &name);
            return outcome;
        }
    };
    let estimate = if arguments.offline { Estimate::Offline } else { Estimate::Causal };
    let mut found = read.found;
    let up = match tilt(&read.recording, estimate) {
        Some(tilt) => {
            if tilt.sign_turned {
                let message = "the table tells that gravity came with the other sign; it was turned";
                found.push(Found::of_run(Diagnostic::note("gravity-turned", message)));
            }
            tilt.up
        }
        None => {
            let why = motion::WhyNot::NoGravity;
            found.push(Found::of_run(Diagnostic::error("not-measured", format!("{why}: {}", why.means()))));
            vec![None; read.times.len()]
        }
    };
    let outcome = if found.iter().any(Found::is_error) { Outcome::Findings } else { Outcome::Done };
    let written = if arguments.json {
        let told = found.iter().map(|found| found.for_document(&name)).collect();
        print(&json::measurement::tilt(&read.times, &up, told))
    } else {
        print_page(&table(&read.times, &up))
    };
    found::tell(&found, &name);
    outcome.max(written)
}

/// The same as lines of numbers; empty cells where a row could not be used.
fn table(times: &[Option<f64>], up: &[Option<[f64; 3]>]) -> String {
    let mut text = String::from("t_s,ux,uy,uz\n");
    for (time, up) in times.iter().zip(up) {
        let _ = match (time, up) {
            (Some(time), Some([x, y, z])) => writeln!(text, "{time},{x:.7},{y:.7},{z:.7}"),
            (Some(time), None) => writeln!(text, "{time},,,"),
            (None, _) => writeln!(text, ",,,"),
        };
    }
    text
}
