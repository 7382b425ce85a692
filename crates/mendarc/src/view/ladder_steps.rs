//! Where the heaviest exercise of its kind becomes much heavier, and of what nothing can be said.

use std::fmt::Write as _;

use exercise::NoLoad;
use prescription::ladder::{Reached, Rung, Step};
use quantity::Kilograms;

use crate::shelf::Shelf;
use crate::view::dates;
use crate::view::ladder::Told;
use crate::view::paint::{HEADING, paint, wrapped};

const WIDTH: usize = 102;

/// The steps; nothing without a prescription.
pub(super) fn print(page: &mut String, told: &Told<'_>, shelf: &Shelf) {
    if told.prescription.is_none() {
        return;
    }
    let _ = writeln!(page, "\n{}", paint(HEADING, "Steps"));
    let mut say = |text: &str| {
        let _ = writeln!(page, "  {}", wrapped(text, WIDTH, "    "));
    };
    for step in told.steps {
        say(&line(step, shelf));
    }
    let without = |why: NoLoad| {
        let mut ids: Vec<&str> = told.rungs.iter().filter(|rung| is_without(rung, why)).map(id).collect();
        ids.sort_unstable();
        ids.dedup();
        ids.len()
    };
    let (unknown, unmeasured) = (without(NoLoad::MassUnknown), without(NoLoad::NotGravity));
    match unknown {
        0 if told.steps.is_empty() => say(&format!(
            "none: on no day is the heaviest exercise of its kind more than {} times the heaviest of that kind before it, \
             or than the own straight arm held level",
            evidence::ids::STEP_OF_LOAD.number()
        )),
        0 => {}
        1 => say("Not known: one exercise with a weight has no number (give mass)."),
        many => say(&format!("Not known: {many} exercises with a weight have no number (give mass).")),
    }
    if unmeasured > 0 {
        say("Bands, presses, body weight and speed are not measured here.");
    }
}

fn is_without(rung: &Rung<'_>, why: NoLoad) -> bool {
    rung.load.as_ref().err() == Some(&why)
}

fn id<'r>(rung: &'r Rung<'_>) -> &'r str {
    &rung.entry.id
}

fn line(step: &Step, shelf: &Shelf) -> String {
    let named = |id: &str, held: Option<Kilograms>, ratio: f64| {
        let held = held.map_or_else(String::new, |held| format!(", {held} kg"));
        format!("{}{held}: {ratio:.2}", shelf.title(id))
    };
    let reached = |before: &Reached| named(&before.exercise, before.held, before.ratio);
    let counts = match &step.before {
        Some(before) if before.ratio >= step.ratio / step.factor => {
            format!("{:.1} times the heaviest before it ({})", step.factor, reached(before))
        }
        before => format!(
            "{:.1} times the own straight arm held level; the heaviest before it is less ({})",
            step.factor,
            before.as_ref().map_or_else(|| "nothing".to_owned(), reached)
        ),
    };
    let between: Vec<String> = step.between.iter().map(|weight| format!("{weight} kg")).collect();
    let between = match between.as_slice() {
        [] => String::new(),
        weights => format!("; in between, e.g. {}", weights.join(", then ")),
    };
    format!(
        "from {} (day {}), {}: {}, {counts}{between}",
        dates::short(step.date),
        step.day.count(),
        step.work,
        named(&step.exercise, step.held, step.ratio)
    )
}
