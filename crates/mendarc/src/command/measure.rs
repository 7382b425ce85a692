//! `mendarc measure`: an exercise measured from a recording.

mod against;
mod plot;

use std::path::Path;

use body::Side;
use diagnostic::Diagnostic;
use motion::{Axis, Exercise, Measurement, Task, Worn};

use crate::arguments::Measure;
use crate::command::found::{self, Found};
use crate::command::inputs::Inputs;
use crate::command::recording;
use crate::json;
use crate::outcome::{Outcome, print, print_page, tell};
use crate::view;

pub fn run(arguments: &Measure) -> Outcome {
    let name = arguments.recording.display().to_string();
    let mut inputs = Inputs::default();
    let task = task_of(arguments, &mut inputs);
    let day = against::day_of(arguments, &mut inputs);
    let (Some(mut task), Some(day)) = (task, day) else {
        return inputs.fail(Some(json::measurement::SCHEMA), arguments.json);
    };
    task.arm = day.as_ref().and_then(|day| day.arm);
    let limit_from_record = day.as_ref().and_then(|day| day.limit_deg).filter(|_| task.limit_deg.is_none());
    task.limit_deg = task.limit_deg.or(limit_from_record);
    let read = match recording::read(&arguments.recording, &name) {
        Ok(read) => read,
        Err(refused) => return refuse(refused.outcome, refused.found, &name, &task, arguments),
    };
    let measured = motion::measure(&read.recording, &task);
    let mut found = read.found;
    found.extend(day.iter().flat_map(|day| day.found.iter().cloned()).map(Found::of_run));
    found.extend(of_the_measurement(&measured, &task));
    if day.is_none() {
        let note = Diagnostic::note(
            "not-checked",
            "no record was given, so pose and exercise were not checked against a day's limits",
        );
        found.push(Found::of_run(note.help("give --record and --on")));
    }
    found.sort_by_key(|found| (found.diagnostic.severity, found.place));
    let mut outcome = if found.iter().any(Found::is_error) { Outcome::Findings } else { Outcome::Done };
    if let Some(path) = &arguments.plot {
        match draw(path, &measured, &task) {
            Ok(true) if !arguments.json => tell(&format!("wrote {}", path.display())),
            Ok(_) => {}
            Err(fault) => {
                outcome = Outcome::CouldNotRun;
                found.push(Found::of_run(fault));
            }
        }
    }
    let told = json::measurement::Told { measured: &measured, task: &task, checked: day.is_some(), limit_from_record };
    let written = if arguments.json {
        let diagnostics = found.iter().map(|found| found.for_document(&name)).collect();
        print(&json::measurement::document(&told, diagnostics))
    } else {
        print_page(&view::measurement::page(&told, &name))
    };
    found::tell(&found, &name);
    outcome.max(written)
}

/// Nothing could be read: one document that says so.
fn refuse(outcome: Outcome, found: Found, name: &str, task: &Task, arguments: &Measure) -> Outcome {
    let mut printed = Outcome::Done;
    if arguments.json {
        let measured = Measurement::default();
        let told = json::measurement::Told { measured: &measured, task, checked: false, limit_from_record: None };
        printed = print(&json::measurement::refused(&told, vec![found.for_document(name)]));
    }
    found::tell(&[found], name);
    outcome.max(printed)
}

/// What the measurement has to say in words.
fn of_the_measurement(measured: &Measurement, task: &Task) -> Vec<Found> {
    let mut found: Vec<Diagnostic> = Vec::new();
    for why in &measured.why_not {
        found.push(Diagnostic::error("not-measured", format!("{why}: {}", why.means())));
    }
    if !measured.is_usable() {
        return found.into_iter().map(Found::of_run).collect();
    }
    if measured.uncertain {
        let message = "the count is uncertain: another way of counting disagrees, or too much is missing";
        found.push(Diagnostic::warning("count-uncertain", message).help("count aloud, or record the set again"));
    }
    if let Some(length) = measured.assumed_arm_length_cm {
        let message = format!("diameters assume {length:.1} cm from the shoulder to the middle of the hand");
        found.push(Diagnostic::warning("arm-length-assumed", message).help("measure it and give --arm-length-cm"));
    }
    if !measured.has_table {
        let message = "no table at the start, so the specification's sign of gravity is assumed";
        found.push(Diagnostic::note("no-table", message).help("lay the phone on a table, screen up, for 3 s first"));
    }
    if !measured.has_pose && task.exercise != Exercise::Pendulum {
        let message = "no pose was held before the set, so there is a count and no angle";
        found.push(
            Diagnostic::warning("no-pose", message).help("hold the exercise's pose still for 3 s before the set"),
        );
    }
    found.into_iter().map(Found::of_run).collect()
}

/// Draws the plot; whether there was anything to draw.
fn draw(path: &Path, measured: &Measurement, task: &Task) -> Result<bool, Diagnostic> {
    let Some(svg) = plot::svg(measured, task) else { return Ok(false) };
    std::fs::write(path, svg)
        .map(|()| true)
        .map_err(|error| Diagnostic::error("cannot-write", format!("cannot write {}: {error}", path.display())))
}

fn task_of(arguments: &Measure, inputs: &mut Inputs) -> Option<Task> {
    let exercise =
        word("--exercise", &arguments.exercise, Exercise::named, &names(Exercise::ALL, Exercise::name), inputs);
    let axis = word("--axis", &arguments.axis, Axis::named, &names(Axis::ALL, Axis::name), inputs);
    let worn = match &arguments.worn {
        None => Some(None),
        Some(written) => word("--worn", written, Worn::named, &names(Worn::ALL, Worn::name), inputs).map(Some),
    };
    let arm_length = number("--arm-length-cm", arguments.arm_length_cm.as_deref(), ARM_LENGTH_CM, inputs);
    let limit = number("--limit-deg", arguments.limit_deg.as_deref(), LIMIT_DEG, inputs);
    let side = Side::from(arguments.side);
    let (exercise, axis, worn) = (exercise?, axis?, worn?);
    let task = Task::new(exercise, side);
    Some(Task {
        axis,
        worn: worn.unwrap_or(task.worn),
        arm_length_m: arm_length?.map(|length| length / CENTIMETERS),
        limit_deg: limit?,
        ..task
    })
}

const CENTIMETERS: f64 = 100.0;
/// From the shoulder to the middle of the hand of the smallest and the largest person.
const ARM_LENGTH_CM: [f64; 2] = [30.0, 110.0];
const LIMIT_DEG: [f64; 2] = [0.0, 180.0];

fn names<W: Copy>(all: &[W], name: fn(W) -> &'static str) -> String {
    all.iter().map(|one| name(*one)).collect::<Vec<_>>().join(", ")
}

fn word<W>(option: &str, written: &str, named: fn(&str) -> Option<W>, all: &str, inputs: &mut Inputs) -> Option<W> {
    let known = named(written.trim());
    if known.is_none() {
        let fault = Diagnostic::error("usage", format!("`{option}`: there is no `{written}`"));
        inputs.cannot_run(fault.help(format!("one of: {all}")));
    }
    known
}

/// `None` where it was written and is no such number.
fn number(option: &str, written: Option<&str>, accepted: [f64; 2], inputs: &mut Inputs) -> Option<Option<f64>> {
    let Some(written) = written else { return Some(None) };
    match written.trim().parse::<f64>() {
        Ok(number) if (accepted[0]..=accepted[1]).contains(&number) => Some(Some(number)),
        _ => {
            let [low, high] = accepted;
            let fault =
                Diagnostic::error("usage", format!("`{option}`: `{written}` is no number from {low} to {high}"));
            inputs.cannot_run(fault);
            None
        }
    }
}
