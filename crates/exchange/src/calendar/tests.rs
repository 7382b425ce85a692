//! What a calendar says, and what is read of it again.

mod again;
mod clock;
mod hostile;
mod text;

use jiff::civil::{Date, DateTime, date};

use super::{Calendar, Subject, Visit, VisitTime, uid};

/// A calendar of Berlin that was issued on 2 March 2026.
fn calendar<'a>(visits: Vec<Visit<'a>>) -> Calendar<'a> {
    let stamp = date(2026, 3, 2).at(0, 0, 0, 0);
    Calendar { name: "Visits", time_zone: "Europe/Berlin", stamp, visits, cancelled: Vec::new() }
}

fn subject(purpose: &str, order: usize) -> Subject<'_> {
    Subject { patient: Some("example-07"), operated_on: date(2026, 3, 2), side: "right", purpose, order }
}

fn all_day(purpose: &str, on: Date) -> Visit<'_> {
    visit(purpose, VisitTime::AllDay(on))
}

fn timed(purpose: &str, start: DateTime) -> Visit<'_> {
    visit(purpose, VisitTime::At(start, 30))
}

fn visit(purpose: &str, start: VisitTime) -> Visit<'_> {
    let uid = uid(&subject(purpose, 0));
    Visit { uid, sequence: 0, title: "Visit", start, description: "", remind_days_before: Some(1) }
}

fn written(calendar: &Calendar<'_>) -> String {
    calendar.to_text().expect("a calendar that can be written")
}

/// The lines of a text, unfolded.
fn lines(text: &str) -> Vec<String> {
    text.replace("\r\n ", "").split_terminator("\r\n").map(str::to_owned).collect()
}

/// The values of a property, in order.
fn values(text: &str, name: &str) -> Vec<String> {
    let lines = lines(text);
    let found = lines.iter().filter_map(|line| {
        let (key, value) = line.split_once(':')?;
        let is_it = key == name || key.strip_prefix(name).is_some_and(|rest| rest.starts_with(';'));
        is_it.then(|| value.to_owned())
    });
    found.collect()
}
