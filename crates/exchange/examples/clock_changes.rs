//! Calendars around every change of the clock, for readers of other projects to read.
//!
//! `cargo run -p exchange --example clock_changes -- FOLDER` writes one for each zone, and beside it
//! the same calendar issued again. `checks/outside` compares how three readers take them.

use std::error::Error;
use std::path::PathBuf;
use std::{env, fs};

use exchange::calendar::{Calendar, Subject, Visit, VisitTime, previous, uid};
use jiff::ToSpan;
use jiff::civil::{Date, date};

/// Days on which a clock changes in 2026 and 2027, with the zone; by the laws of the EU, the US and New South Wales.
const CHANGES: [(&str, [Date; 4]); 3] = [
    ("Europe/Berlin", [date(2026, 3, 29), date(2026, 10, 25), date(2027, 3, 28), date(2027, 10, 31)]),
    ("America/New_York", [date(2026, 3, 8), date(2026, 11, 1), date(2027, 3, 14), date(2027, 11, 7)]),
    ("Australia/Sydney", [date(2026, 4, 5), date(2026, 10, 4), date(2027, 4, 4), date(2027, 10, 3)]),
];

fn main() -> Result<(), Box<dyn Error>> {
    let folder = PathBuf::from(env::args().nth(1).ok_or("name a folder")?);
    fs::create_dir_all(&folder)?;
    for (zone, changes) in CHANGES {
        let name = zone.replace('/', "-");
        let visits = around(&changes)?;
        let first = calendar(zone, visits.clone()).to_text()?;
        fs::write(folder.join(format!("{name}.ics")), &first)?;
        // Issued again: the last visit is no more, and the first of all is a day later.
        let known = previous(&first)?;
        let mut again = visits;
        again.pop();
        if let Some(visit) = again.first_mut() {
            visit.start = later(visit.start)?;
        }
        let second = calendar(zone, again).following(&known).to_text()?;
        fs::write(folder.join(format!("{name}-again.ics")), second)?;
    }
    Ok(())
}

fn calendar<'a>(time_zone: &'a str, visits: Vec<Visit<'a>>) -> Calendar<'a> {
    let stamp = date(2026, 1, 5).at(0, 0, 0, 0);
    Calendar { name: "Visits", time_zone, stamp, visits, cancelled: Vec::new() }
}

/// Visits at night and by day on the day before, of and after each change, and days without a time.
///
/// No time that a change skips or repeats: readers differ there, whatever RFC 5545 (3.3.5) says.
fn around(changes: &[Date]) -> Result<Vec<Visit<'static>>, jiff::Error> {
    let mut times = Vec::new();
    for change in changes {
        for day in [change.yesterday()?, *change, change.tomorrow()?] {
            times.push(VisitTime::AllDay(day));
            for (hour, minute) in [(0, 15), (3, 30), (9, 0), (23, 45)] {
                times.push(VisitTime::At(day.at(hour, minute, 0, 0), 30));
            }
        }
    }
    times.push(VisitTime::AllDay(date(2028, 2, 29)));
    times.push(VisitTime::At(date(2028, 2, 29).at(9, 0, 0, 0), 30));
    let visits = times.into_iter().enumerate().map(|(order, start)| Visit {
        uid: uid(&Subject {
            patient: Some("example"),
            operated_on: date(2026, 1, 5),
            side: "right",
            purpose: "clock",
            order,
        }),
        sequence: 0,
        title: "Visit – Besuch, visita; 診察 \\ a title that is longer than seventy-five octets and has to be folded",
        start,
        description: "by day: 555-0100\nby night: 555-0101",
        remind_days_before: Some(1),
    });
    Ok(visits.collect())
}

fn later(start: VisitTime) -> Result<VisitTime, jiff::Error> {
    Ok(match start {
        VisitTime::AllDay(date) => VisitTime::AllDay(date.tomorrow()?),
        VisitTime::At(time, minutes) => VisitTime::At(time.checked_add(1.day())?, minutes),
    })
}
