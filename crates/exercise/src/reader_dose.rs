//! Reading how often an exercise is done.

use diagnostic::{Diagnostic, Sink};
use document::Table;
use evidence::Unit;

use crate::Dose;
use crate::check::{self, Number};
use crate::reader::known;

/// Counts over this are slips of the pen.
const GREATEST_COUNT: u16 = 999; // not medical: bound of input

/// Days of a week.
const DAYS_OF_A_WEEK: u16 = 7; // not medical: calendar

/// The dose of an exercise, its numbers checked against the entries it cites.
pub(crate) fn dose(table: &mut Table<'_>, sink: &mut Sink) -> Option<Dose> {
    let before = sink.errors();
    let mut dose = table.require("dose", sink)?.table(sink)?;
    let span = dose.span;
    let mut numbers = Vec::new();
    let sets = count(&mut dose, "sets", Unit::Sets, &mut numbers, sink);
    let repetitions = count(&mut dose, "repetitions", Unit::Repetitions, &mut numbers, sink);
    let hold_s = count(&mut dose, "hold_s", Unit::Seconds, &mut numbers, sink);
    let times_per_day = count(&mut dose, "times_per_day", Unit::PerDay, &mut numbers, sink);
    let days_per_week = match dose.take("days_per_week") {
        Some(value) => {
            let days = value.integer(sink)?;
            match u16::try_from(days.value) {
                Ok(count) if (1..=DAYS_OF_A_WEEK).contains(&count) => {
                    numbers.push(Number::count(count, Unit::PerWeek, days.span));
                    Some(count)
                }
                _ => {
                    sink.push(out_of_range("days of a week").at(days.span));
                    None
                }
            }
        }
        None => None,
    };
    let evidence: Vec<_> = dose.texts("evidence", sink).iter().filter_map(|id| known(id, sink)).collect();
    dose.finish(sink);
    if sink.errors() == before {
        check::numbers(&numbers, &evidence, sink);
    }
    Some(Dose {
        sets: sets?,
        repetitions: repetitions?,
        hold_s: hold_s?,
        times_per_day: times_per_day?,
        days_per_week,
        evidence,
        span,
    })
}

fn count(
    dose: &mut Table<'_>,
    key: &'static str,
    unit: Unit,
    numbers: &mut Vec<Number>,
    sink: &mut Sink,
) -> Option<u16> {
    let written = dose.require(key, sink)?.integer(sink)?;
    match u16::try_from(written.value) {
        Ok(count) if count <= GREATEST_COUNT && (count > 0 || unit == Unit::Seconds) => {
            numbers.push(Number::count(count, unit, written.span));
            Some(count)
        }
        _ => {
            sink.push(out_of_range(key).at(written.span));
            None
        }
    }
}

fn out_of_range(what: &str) -> Diagnostic {
    Diagnostic::error("out-of-range", format!("this number of {what} is not possible"))
}
