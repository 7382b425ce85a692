//! What only the whole record can tell: statements that cannot both be true,
//! pairs that are unlikely, and what is not recorded.

use diagnostic::{Diagnostic, Sink, Spanned};
use evidence::ids;
use jiff::civil::Date;
use quantity::Millimeters;

use crate::age::completed_years;
use crate::missing;
use crate::record::{Record, TendonEntry};
use crate::words::{OtherShoulder, Procedure, Thickness};

const AGE_GREATEST: i16 = ids::RECORD_AGE_GREATEST.years();
const PARTIAL_RETRACTION: Millimeters = ids::RECORD_PARTIAL_TEAR_RETRACTION.millimeters();
const PARTIAL_PATTE: f64 = ids::RECORD_PARTIAL_TEAR_PATTE.number();
const PATTE_HIGHEST: f64 = ids::PATTE_GRADE_HIGHEST.number();
const HIGH_PATTE_RETRACTION: Millimeters = ids::RECORD_HIGH_PATTE_RETRACTION.millimeters();

/// Checks what the parts of a record say together.
pub(crate) fn record(record: &Record, sink: &mut Sink) {
    dates(record, sink);
    procedure(record, sink);
    other_arm(record, sink);
    unlikely_pairs(record, sink);
    left_unrepaired(record, sink);
}

const FIRST_OPERATION: Date = Date::constant(1990, 1, 1); // not medical: earliest operation the product accepts
const LAST_OPERATION: Date = Date::constant(2200, 1, 1); // not medical: later than any plan can be meant for

/// Whether an operation on a date can be meant: from 1990 until 2200.
pub fn is_believable_operation(date: Date) -> bool {
    (FIRST_OPERATION..LAST_OPERATION).contains(&date)
}

fn dates(record: &Record, sink: &mut Sink) {
    let birth = record.patient.birth_date;
    let operation = record.operation.date;
    let first_birth = Date::constant(1900, 1, 1); // not medical: earliest believable calendar entry
    let impossible = |at: Spanned<Date>, message: String| {
        Diagnostic::error("impossible-date", message).at(at.span).help("mend the date")
    };
    if birth.value < first_birth {
        sink.push(impossible(birth, format!("a birth on {} is before 1900", birth.value)));
    } else if operation.value < FIRST_OPERATION {
        sink.push(impossible(operation, format!("an operation on {} is before 1990", operation.value)));
    } else if operation.value >= LAST_OPERATION {
        sink.push(impossible(operation, format!("an operation on {} is after 2199", operation.value)));
    } else if operation.value < birth.value {
        sink.push(
            impossible(operation, format!("the operation on {} is before the birth", operation.value))
                .also(birth.span, "born"),
        );
    } else {
        let age = completed_years(birth.value, operation.value);
        if age > AGE_GREATEST {
            sink.push(
                impossible(birth, format!("the patient would have been {age} years old"))
                    .also(operation.span, "on the day of surgery"),
            );
        }
    }
    if let Some(other) = record.other_arm.operated_on
        && other.value < birth.value
    {
        sink.push(
            impossible(other, format!("the other arm's operation on {} is before the birth", other.value))
                .also(birth.span, "born"),
        );
    }
}

/// A capsular release is the procedure only where no tendon was repaired.
fn procedure(record: &Record, sink: &mut Sink) {
    let Some(procedure) = record.operation.procedure.filter(|p| p.value == Procedure::CapsularRelease) else { return };
    if let Some(tendon) = record.repaired_tendons().next() {
        sink.push(
            Diagnostic::error("contradiction", "a capsular release with a repaired tendon is a rotator cuff repair")
                .at(procedure.span)
                .also(tendon.name.span, "counts as repaired")
                .help("leave `procedure` out and write `capsular_release = true` under [operation.also]"),
        );
    }
    if let Some(also) = record.operation.also.capsular_release.filter(|release| !release.value) {
        sink.push(
            Diagnostic::error("contradiction", "the procedure is a capsular release, and none was done")
                .at(also.span)
                .also(procedure.span, "the procedure")
                .help("take one of the two out"),
        );
    }
}

fn other_arm(record: &Record, sink: &mut Sink) {
    let other = &record.other_arm;
    match (other.shoulder, other.operated_on) {
        (Some(shoulder), Some(date)) if shoulder.value == OtherShoulder::Sound => sink.push(
            Diagnostic::error("contradiction", "the other shoulder is sound and was operated on")
                .at(shoulder.span)
                .also(date.span, "operated on")
                .help("write `shoulder = \"operated\"`, or take `operated_on` out"),
        ),
        (Some(shoulder), None) if shoulder.value == OtherShoulder::Operated => sink.push(
            Diagnostic::warning("operated-when", "the other shoulder was operated on, and the day is not recorded")
                .at(shoulder.span)
                .help("add `operated_on = …` so that the two plans can be checked together"),
        ),
        _ => {}
    }
}

/// Pairs that anatomy makes unlikely; both may still be true.
fn unlikely_pairs(record: &Record, sink: &mut Sink) {
    let tear = &record.operation.tear;
    let unlikely = |message: String| {
        Diagnostic::warning("unlikely-pair", message).help("look at both once more; the plan is made as written")
    };
    let partial = |tendon: &TendonEntry| tendon.thickness.filter(|thickness| thickness.value != Thickness::Full);
    let tendons = &record.operation.tendons;
    let all_partial = tendons.iter().all(|tendon| partial(tendon).is_some());
    if let Some(thickness) = tendons.first().and_then(partial).filter(|_| all_partial) {
        if let Some(retraction) = tear.retraction.filter(|length| length.value >= PARTIAL_RETRACTION) {
            sink.push(
                unlikely(format!("a partial-thickness tear that drew back {} mm", retraction.value))
                    .at(retraction.span)
                    .also(thickness.span, "partial thickness"),
            );
        }
        if let Some(grade) = tear.retraction_patte.filter(|grade| f64::from(grade.value) >= PARTIAL_PATTE) {
            sink.push(
                unlikely(format!("a partial-thickness tear of Patte grade {}", grade.value))
                    .at(grade.span)
                    .also(thickness.span, "partial thickness"),
            );
        }
    }
    if let (Some(grade), Some(length)) = (tear.retraction_patte, tear.retraction)
        && f64::from(grade.value) >= PATTE_HIGHEST
        && length.value < HIGH_PATTE_RETRACTION
    {
        sink.push(
            unlikely(format!("Patte grade {} with a retraction of {} mm", grade.value, length.value))
                .at(grade.span)
                .also(length.span, "the retraction"),
        );
    }
}

fn left_unrepaired(record: &Record, sink: &mut Sink) {
    if record.repaired_tendons().next().is_none() {
        return;
    }
    for tendon in record.operation.tendons.iter().filter(|tendon| !tendon.is_repaired()) {
        let at = tendon.repair.map_or(tendon.name.span, |repair| repair.span);
        sink.push(
            Diagnostic::warning("tendon-left-unrepaired", format!("the {} was torn and left", tendon.name.value))
                .at(at)
                .also(tendon.name.span, "this tendon")
                .fact("no rule reads a tendon that was not repaired; the plan protects the others only"),
        );
    }
}

/// One note for everything that is not recorded, and one for the list whose absence means none.
pub(crate) fn not_recorded(record: &Record, sink: &mut Sink) {
    let paths = missing::optional_paths(record);
    if !paths.is_empty() {
        let count = paths.len();
        let are = if count == 1 { "fact is" } else { "facts are" };
        sink.push(
            Diagnostic::note("not-recorded", format!("{count} {are} not recorded"))
                .at(record.operation.span)
                .fact("where a rule reads one of them, it takes the safer side")
                .fact(format!("not recorded: {}", paths.join(", ")))
                .help("add what is known; the prescription asks for what would change it"),
        );
    }
    if record.operation.also.other.is_none() {
        sink.push(
            Diagnostic::note("other-not-recorded", "`operation.also.other` is left out and read as none")
                .at(record.operation.span)
                .help("write `other = []` where nothing else was done, or name what was"),
        );
    }
}
