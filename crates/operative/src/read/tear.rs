//! The size of the tear and the grades of the muscles.

use diagnostic::{Diagnostic, Sink, Spanned};
use document::{Table, Value};
use evidence::ids;
use quantity::Millimeters;

use super::missing;
use crate::record::{FattyInfiltration, Tear};

const GREATEST: Millimeters = ids::RECORD_TEAR_SIZE_GREATEST.millimeters();
const GOUTALLIER_HIGHEST: f64 = ids::GOUTALLIER_GRADE_HIGHEST.number();
const PATTE_HIGHEST: f64 = ids::PATTE_GRADE_HIGHEST.number();

/// The tear; its front-to-back size has to be there where a tendon was repaired.
pub(super) fn tear(operation: &mut Table<'_>, required: bool, sink: &mut Sink) -> Tear {
    let near = operation.span;
    let Some(value) = operation.take("tear") else {
        if required {
            sink.push(
                missing("operation.tear.anteroposterior", near)
                    .help("add `anteroposterior = \"… mm\"` under [operation.tear]"),
            );
        }
        return Tear::default();
    };
    let Some(mut table) = value.table(sink) else { return Tear::default() };
    let anteroposterior = if required { table.require("anteroposterior", sink) } else { table.take("anteroposterior") };
    let found = Tear {
        anteroposterior: anteroposterior.and_then(|value| size(value, Zero::Refused, sink)),
        mediolateral: table.take("mediolateral").and_then(|value| size(value, Zero::Refused, sink)),
        retraction: table.take("retraction").and_then(|value| size(value, Zero::Allowed, sink)),
        retraction_patte: table
            .take("retraction_patte")
            .and_then(|value| grade(value, "Patte", 1, PATTE_HIGHEST, sink)),
        delamination: table.boolean("delamination", sink),
    };
    table.finish(sink);
    found
}

/// Whether a length of nothing makes sense: an edge may not have drawn back at all.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Zero {
    Allowed,
    Refused,
}

fn size(value: Value<'_>, zero: Zero, sink: &mut Sink) -> Option<Spanned<Millimeters>> {
    let size = value.quantity("length", "18 mm", Millimeters::parse, sink)?;
    let fault = if size.value > GREATEST {
        Diagnostic::error("implausible-size", format!("{} mm is larger than any tear", size.value))
            .help(format!("a size above {GREATEST} mm is taken for a slip; is the unit right?"))
    } else if zero == Zero::Refused && size.value.steps() == 0 {
        Diagnostic::error("implausible-size", "a torn tendon has a tear of some size")
            .help("write the measured size; where it was not measured, leave the key out")
    } else {
        return Some(size);
    };
    sink.push(fault.at(size.span));
    None
}

/// A grade of a scale that runs in whole steps.
fn grade(value: Value<'_>, scale: &str, lowest: u8, highest: f64, sink: &mut Sink) -> Option<Spanned<u8>> {
    let written = value.integer(sink)?;
    match u8::try_from(written.value) {
        Ok(grade) if grade >= lowest && f64::from(grade) <= highest => Some(written.map(|_| grade)),
        _ => {
            sink.push(
                Diagnostic::error("no-such-grade", format!("{} is no {scale} grade", written.value))
                    .at(written.span)
                    .help(format!(
                        "a {scale} grade is {lowest} to {highest}; where it was not graded, leave the key out"
                    )),
            );
            None
        }
    }
}

/// The Goutallier grade of each muscle.
pub(super) fn fatty_infiltration(operation: &mut Table<'_>, sink: &mut Sink) -> FattyInfiltration {
    let Some(mut table) = operation.table("fatty_infiltration", sink) else { return FattyInfiltration::default() };
    let mut muscle =
        |key: &'static str| table.take(key).and_then(|value| grade(value, "Goutallier", 0, GOUTALLIER_HIGHEST, sink));
    let mut found = FattyInfiltration {
        supraspinatus: muscle("supraspinatus"),
        infraspinatus: muscle("infraspinatus"),
        teres_minor: muscle("teres_minor"),
        subscapularis: muscle("subscapularis"),
    };
    // The tendon's own name is two words, and a quoted key may carry them.
    let spelt_out = muscle("teres minor");
    if let (Some(first), Some(second)) = (found.teres_minor, spelt_out) {
        sink.push(
            Diagnostic::error("written-twice", "the grade of the teres minor is written twice")
                .at(second.span)
                .also(first.span, "the other one")
                .help("keep one of them"),
        );
    }
    found.teres_minor = found.teres_minor.or(spelt_out);
    table.finish(sink);
    found
}
