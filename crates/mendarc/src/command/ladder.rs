//! `mendarc ladder`.

use body::PersonError;
use diagnostic::Diagnostic;
use exercise::Whose;
use operative::{Record, Sex};
use prescription::ladder::Muscle;
use prescription::{Case, ladder};
use quantity::{Kilograms, Millimeters, QuantityError};

use crate::arguments::{Ladder, SexWord};
use crate::command::inputs::Inputs;
use crate::json;
use crate::outcome::{Outcome, print, print_page};
use crate::shelf::Shelf;
use crate::view;

pub fn run(arguments: &Ladder) -> Outcome {
    let mut inputs = Inputs::default();
    let record = match &arguments.record {
        None => None,
        Some(path) => match inputs.record(path) {
            Some(record) => Some(record),
            None => return inputs.fail(Some(json::ladder::SCHEMA), arguments.json),
        },
    };
    let settings = inputs.settings(arguments.settings.as_deref());
    let whose = whose(arguments, record.as_ref(), &mut inputs);
    let (Some(settings), Some(whose)) = (settings, whose) else {
        return inputs.fail(Some(json::ladder::SCHEMA), arguments.json);
    };
    if inputs.sink.has_errors() {
        return inputs.fail(Some(json::ladder::SCHEMA), arguments.json);
    }
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    let prescription = match &record {
        None => None,
        Some(record) => {
            let line_of = Inputs::line_of(&inputs.sources);
            let title_of = |id: &str| shelf.title(id);
            let case = Case {
                protocol: arguments.protocol.as_deref(),
                line_of: &line_of,
                title_of: &title_of,
                ..Case::new(&shelf.library, &shelf.catalogue, record, &settings)
            };
            prescription::prescribe(&case, &mut inputs.sink)
        }
    };
    if record.is_some() && prescription.is_none() {
        return inputs.fail(Some(json::ladder::SCHEMA), arguments.json);
    }
    let (rungs, steps) = match &prescription {
        None => (ladder::of_catalogue(&shelf.catalogue, whose), Vec::new()),
        Some(prescription) => (
            ladder::of_prescription(prescription, &shelf.catalogue, whose),
            ladder::steep_steps(prescription, &shelf.catalogue, whose),
        ),
    };
    let repaired = record.as_ref().map(Muscle::repaired);
    let (muscles, shown) = match &repaired {
        Some(muscles) if !muscles.is_empty() => (muscles.as_slice(), view::ladder::Shown::Repaired),
        Some(_) => (STAND_IN, view::ladder::Shown::InsteadOfTheRepaired),
        None => (STAND_IN, view::ladder::Shown::ForAnybody),
    };
    let told =
        view::ladder::Told { whose, prescription: prescription.as_ref(), muscles, shown, rungs: &rungs, steps: &steps };
    let written = if arguments.json {
        print(&json::ladder::document(&told, &shelf, inputs.sink.found(), &inputs.sources))
    } else {
        print_page(&view::ladder::page(&told, &shelf))
    };
    inputs.finish(written)
}

/// The muscle most repairs are about, shown where no measured one was repaired.
const STAND_IN: &[Muscle] = &[Muscle::Supraspinatus];

/// Whose arm: what the command line says goes before what the record says.
fn whose(arguments: &Ladder, record: Option<&Record>, inputs: &mut Inputs) -> Option<Whose<'static>> {
    let faults = inputs.sink.errors();
    let stature = arguments.stature_cm.as_ref().and_then(|written| {
        let read = quantity(written, "cm", "--stature-cm", "172", Millimeters::parse, inputs)?;
        accepted("--stature-cm", body::accepted_stature(read), inputs)
    });
    let mass = arguments.mass_kg.as_ref().and_then(|written| {
        let read = quantity(written, "kg", "--mass-kg", "70", Kilograms::parse, inputs)?;
        accepted("--mass-kg", body::accepted_mass(read), inputs)
    });
    if inputs.sink.errors() > faults {
        return None;
    }
    let of_record = record.map(|record| &record.patient);
    let stature = stature.or_else(|| of_record?.stature.map(|stature| stature.value));
    let mass = mass.or_else(|| of_record?.mass.map(|mass| mass.value));
    let sex = match arguments.sex {
        Some(SexWord::Male) => Some(Sex::Male),
        Some(SexWord::Female) => Some(Sex::Female),
        None => record.and_then(Record::sex),
    };
    let tables = ladder::tables_of(sex);
    Some(ladder::whose_of(stature, mass, tables))
}

fn accepted<Q>(option: &str, checked: Result<Q, PersonError>, inputs: &mut Inputs) -> Option<Q> {
    match checked {
        Ok(accepted) => Some(accepted),
        Err(refusal) => {
            inputs.sink.push(Diagnostic::error("out-of-range", format!("`{option}`: {refusal}")));
            None
        }
    }
}

fn quantity<Q>(
    written: &str,
    unit: &str,
    option: &str,
    example: &str,
    parse: impl Fn(&str) -> Result<Q, QuantityError>,
    inputs: &mut Inputs,
) -> Option<Q> {
    // The unit stands in the option's name; written a second time it is no harm.
    let bare = written.trim().trim_end_matches(unit).trim_end();
    match parse(&format!("{bare} {unit}")) {
        Ok(read) => Some(read),
        Err(QuantityError::OutOfRange) => {
            inputs.sink.push(Diagnostic::error("out-of-range", format!("`{option}`: nobody has `{written}`")));
            None
        }
        Err(_) => {
            inputs.sink.push(
                Diagnostic::error("not-a-quantity", format!("`{option}`: `{written}` is not a number of {unit}"))
                    .help(format!("write it like {option} {example}")),
            );
            None
        }
    }
}
