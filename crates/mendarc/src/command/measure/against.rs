//! A measured exercise against what a day allows.

use body::HangingArm;
use diagnostic::{Diagnostic, Severity};
use exercise::Whose;
use plan::Wear;
use prescription::{Case, ladder};
use quantity::Kilograms;

use crate::arguments::Measure;
use crate::command::inputs::Inputs;
use crate::shelf::Shelf;

/// What a record says of the day of a recording.
#[derive(Debug)]
pub struct Day {
    pub found: Vec<Diagnostic>,
    /// How far the exercise goes that day.
    pub limit_deg: Option<f64>,
    /// The person's hanging arm, where stature, mass and table are known.
    pub arm: Option<HangingArm>,
}

/// Reads the record and looks the exercise up; `Some(None)` where no record was given, `None` where it can't be told.
pub fn day_of(arguments: &Measure, inputs: &mut Inputs) -> Option<Option<Day>> {
    let (Some(path), Some(on)) = (&arguments.record, &arguments.on) else { return Some(None) };
    let on = inputs.date(on);
    let record = inputs.record(path);
    let settings = inputs.settings(arguments.settings.as_deref());
    let openings = inputs.openings(arguments.opened.as_deref());
    let (on, record, settings, openings) = (on?, record?, settings?, openings?);
    if inputs.sink.has_errors() {
        return None;
    }
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    let issued = {
        let line_of = Inputs::line_of(&inputs.sources);
        let title_of = |id: &str| shelf.title(id);
        let case = Case {
            openings: &openings,
            on: Some(on),
            line_of: &line_of,
            title_of: &title_of,
            ..Case::new(&shelf.library, &shelf.catalogue, &record, &settings)
        };
        prescription::prescribe(&case, &mut inputs.sink)
    }?;
    let today = issued.today.as_ref()?;
    let mut found = Vec::new();
    let side = body::Side::from(arguments.side);
    let arm = match ladder::whose(&record) {
        Whose::Known { person, .. } => Some(HangingArm::of(person, Kilograms::whole(0))),
        Whose::OfMass { .. } | Whose::Anybody(_) => None,
    };
    if side != issued.side {
        let fault = Diagnostic::warning("other-arm-measured", format!("the record is of the {} shoulder", issued.side));
        found.push(fault.help("the other arm has no limits here; give --side of the operated arm to check them"));
        return Some(Some(Day { found, limit_deg: None, arm }));
    }
    let moves_the_shoulder = today.exercises.iter().any(|line| line.key.joint == body::Joint::Shoulder);
    if today.sling.wear == Wear::Always && !moves_the_shoulder {
        let message = format!("on {on} the arm is kept still in the sling: no phone is strapped to it");
        found.push(Diagnostic::error("phone-while-kept-still", message));
    }
    let line = today.exercises.iter().find(|line| line.id == arguments.exercise);
    if line.is_none() {
        let message = format!("`{}` is not among the exercises of {on} (stage {})", arguments.exercise, today.stage);
        found.push(
            Diagnostic::error("exercise-not-allowed-then", message)
                .help("it was measured all the same; its numbers are no leave to do it"),
        );
    }
    found.retain(|found| found.severity != Severity::Note);
    let limit_deg = line.and_then(|line| line.target).map(|target| target.number());
    Some(Some(Day { found, limit_deg, arm }))
}
