//! `mendarc check`: protocol files, and the proof of a family over every record it accepts.

mod folders;
mod watched;

use std::time::Instant;

use diagnostic::{Diagnostic, Severity};
use proof::{Manner, Space, TooMany, is_edition_of, points, prove};
use protocol::{Family, Library};
use watched::watched;

use crate::arguments::Check;
use crate::command::inputs::Inputs;
use crate::json;
use crate::outcome::{Outcome, print, print_page};
use crate::shelf::Shelf;
use crate::view;

/// A number that no cited evidence holds stops nobody from looking at who would be harmed by it.
const MAY_STAND: &str = "number-without-evidence";

pub fn run(arguments: &Check) -> Outcome {
    let mut inputs = Inputs::default();
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    let families = folders::families(&arguments.paths, &shelf, &mut inputs);
    if families.is_empty() || inputs.sink.found().iter().any(|f| f.severity == Severity::Error && f.code != MAY_STAND) {
        return inputs.fail(Some(json::check::CHECK_SCHEMA), arguments.json);
    }
    if !arguments.every_record {
        let page = view::check::files(&families);
        let written = if arguments.json {
            print(&json::check::files(&families, inputs.sink.found(), &inputs.sources))
        } else {
            print_page(&page)
        };
        return inputs.finish(written);
    }
    let manner = if arguments.singly { Manner::Singly } else { Manner::ByRule };
    let library = Library { families: families.clone() };
    let mut proofs = Vec::new();
    for family in &families {
        let shipped = shelf.library.families.iter().find(|shipped| is_edition_of(family, shipped));
        let started = Instant::now();
        let all = points(&Space::new(family), manner).try_into().unwrap_or(u64::MAX);
        let what = format!("{}: groups of records", family.file.id);
        match watched(all, &what, |watch| prove(family, shipped, manner, watch)) {
            Ok(mut proof) => {
                proof.space.check(&mut inputs.sink);
                if arguments.whole {
                    let what = format!("{}: whole prescriptions", family.file.id);
                    let all = 2 * proof.walked.distinct_plans();
                    watched(all, &what, |watch| proof.issue(&library, &shelf.catalogue, watch));
                }
                proofs.push((proof, started.elapsed()));
            }
            Err(too_many) => inputs.sink.push(too_many_records(family, &too_many, manner)),
        }
    }
    if proofs.is_empty() {
        return inputs.fail(Some(json::check::CHECK_SCHEMA), arguments.json);
    }
    if proofs.iter().any(|(proof, _)| proof.walked.partial) {
        inputs.sink.push(
            Diagnostic::error("proof-stopped", "the proof was stopped before its end and proves nothing")
                .help("let it run to its end"),
        );
    }
    let written = if arguments.json {
        print(&json::check::proofs(&proofs, inputs.sink.found(), &inputs.sources))
    } else {
        print_page(&view::check::proofs(&proofs, &shelf))
    };
    let holds = proofs.iter().all(|(proof, _)| proof.holds());
    let finished = inputs.finish(written);
    if holds { finished } else { finished.max(Outcome::Findings) }
}

fn too_many_records(family: &Family, too_many: &TooMany, manner: Manner) -> Diagnostic {
    let dimensions: Vec<String> =
        too_many.dimensions.iter().map(|(name, classes)| format!("{name} {classes}")).collect();
    let fault = Diagnostic::error(
        "too-many-records",
        format!("`{}` has {} combinations to go through, and the proof would not end", family.file.id, too_many.points),
    )
    .fact(format!("classes: {}", dimensions.join(", ")));
    match manner {
        Manner::Singly => {
            fault.help("leave out `--singly`: records that the rules cannot tell apart then share one plan")
        }
        Manner::ByRule => fault.help("let fewer rules ask for each fact, or make two families of it"),
    }
}
