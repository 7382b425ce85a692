//! Dates against python-dateutil, across leap days and both changes of the clocks.
//!
//! The table is made by `python3 crates/prescription/tests/dates.py > crates/prescription/tests/dates.csv`.

use diagnostic::{FileId, Sink};
use jiff::civil::Date;
use plan::Prescription;
use prescription::{Case, Settings};
use quantity::PostoperativeDay;

const TABLE: &str = include_str!("dates.csv");
const RECORD: &str = include_str!("../../../examples/small-cuff.toml");

/// The rows of a kind: a date, a number, a date.
fn rows(kind: &str) -> Vec<(Date, u16, Date)> {
    let mut lines = TABLE.lines();
    assert_eq!(lines.next(), Some("kind,from,number,to"));
    lines
        .map(|line| line.split(',').collect::<Vec<_>>())
        .filter(|cells| cells[0] == kind)
        .map(|cells| {
            let date = |text: &str| text.parse::<Date>().expect("a date");
            (date(cells[1]), cells[2].parse().expect("a number"), date(cells[3]))
        })
        .collect()
}

#[test]
fn days_and_dates_agree_in_both_directions() {
    let rows = rows("day");
    assert!(rows.len() > 500, "{}", rows.len());
    for (operation, day, date) in rows {
        assert_eq!(PostoperativeDay::new(day).date(operation), date, "day {day} of {operation}");
        assert_eq!(PostoperativeDay::of(date, operation), Some(PostoperativeDay::new(day)), "{date} from {operation}");
    }
}

#[test]
fn completed_years_agree() {
    let rows = rows("age");
    assert!(rows.len() >= 9, "{}", rows.len());
    for (birth, years, on) in rows {
        assert_eq!(i32::from(operative::completed_years(birth, on)), i32::from(years), "born {birth}, on {on}");
    }
}

/// Every date that is printed: gates, runs of days, first days, visits and returns.
#[test]
fn a_prescription_has_the_dates_of_the_table() {
    let rows = rows("day");
    let mut operations: Vec<Date> = rows.iter().map(|(operation, ..)| *operation).collect();
    operations.dedup();
    let mut compared = 0;
    for operation in operations {
        let Some(p) = prescribe(operation) else { panic!("no prescription for {operation}") };
        let dated = p
            .stages
            .iter()
            .map(|stage| (stage.from_day, stage.from))
            .chain(p.spans.iter().flat_map(|span| [(span.from_day, span.from), (span.until_day, span.until)]))
            .chain(p.first_allowed.iter().map(|first| (first.day, first.date)))
            .chain(p.visits.iter().map(|visit| (visit.day, visit.date)))
            .chain(p.returns.iter().filter_map(|line| line.day.zip(line.date)));
        for (day, date) in dated {
            let row = rows.iter().find(|(from, number, _)| *from == operation && *number == day.count());
            if let Some((_, _, wanted)) = row {
                assert_eq!(date, *wanted, "{day} of {operation}");
                compared += 1;
            }
        }
    }
    assert!(compared > 2000, "only {compared} dates were compared");
}

fn prescribe(operation: Date) -> Option<Prescription> {
    let text = RECORD.replace("date = 2026-03-02", &format!("date = {operation}"));
    // Old enough in 1999, and not past belief in 2100.
    let text = text.replace("birth_date = 1970-09-14", "birth_date = 1985-09-14");
    let mut sink = Sink::new();
    let record = operative::read(FileId(0), &text, &mut sink)?;
    let library = protocol::Library::shipped(|_, _| FileId(0), &mut sink);
    let catalogue = exercise::shipped(&mut sink, |_, _| FileId(0));
    let settings = Settings::default();
    let case = Case::new(&library, &catalogue, &record, &settings);
    prescription::prescribe(&case, &mut sink)
}
