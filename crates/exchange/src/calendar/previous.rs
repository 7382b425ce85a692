//! An earlier file of ours, read back.

use std::collections::BTreeSet;

use icalendar::parser::{Component, Property, read_calendar_simple, unfold};
use jiff::civil::{Date, DateTime};

use super::content::readable;
use super::write::PRODUCT;
use super::{Visit, VisitTime};

/// The largest text that is looked at.
const MOST_OCTETS: usize = 1024 * 1024;

/// How deep components may lie in one another: calendar, visit, alarm, and one to spare.
const DEEPEST: usize = 4;

/// A visit as it was last issued.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Known {
    /// Its id.
    pub uid: String,
    /// Its `SEQUENCE`.
    pub sequence: u32,
    /// When it was to be.
    pub start: VisitTime,
    /// Its title.
    pub title: String,
    /// What else was said.
    pub description: String,
    /// Whether it was cancelled.
    pub cancelled: bool,
}

/// Why a text is no earlier file of ours.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NotOurs {
    /// Over 1 MiB.
    #[error("the calendar is larger than 1 MiB")]
    TooLarge,
    /// No iCalendar text, and why.
    #[error("this is no iCalendar text: {0}")]
    NotACalendar(String),
    /// A calendar that another program wrote.
    #[error("another program wrote this calendar")]
    AnotherProgram,
    /// A visit that this program would not have written so.
    #[error("visit {number} of the calendar has no {what} that can be read")]
    Visit {
        /// Which visit, from 1.
        number: usize,
        /// What it lacks.
        what: &'static str,
    },
    /// Two visits share an id.
    #[error("two visits of the calendar share the id {0}")]
    RepeatedUid(String),
}

/// Reads the visits of a calendar that [`super::Calendar::to_text`] wrote before, in its order.
///
/// # Errors
/// Any text that this program did not write; it is then to be left alone.
pub fn previous(text: &str) -> Result<Vec<Known>, NotOurs> {
    if text.len() > MOST_OCTETS {
        return Err(NotOurs::TooLarge);
    }
    // The reader takes a value up to the next CRLF, and over all bare line feeds before it.
    let text = unfold(text).replace("\r\n", "\n").replace('\n', "\r\n");
    shallow(&text)?;
    // The reader's other entrance words its faults, and panics over a line of 65,536 letters.
    let calendars = read_calendar_simple(&text).map_err(|fault| {
        let read = text.len() - fault.input.len();
        let line = text.get(..read).map_or(0, |before| before.matches("\r\n").count()) + 1;
        NotOurs::NotACalendar(format!("it cannot be read from line {line} on, folded lines counted as one"))
    })?;
    let [calendar] = calendars.as_slice() else {
        return Err(NotOurs::NotACalendar("more than one calendar".into()));
    };
    if calendar.name.as_str() != "VCALENDAR" || value(calendar, "PRODID") != Some(PRODUCT) {
        return Err(NotOurs::AnotherProgram);
    }
    let mut known: Vec<Known> = Vec::new();
    let mut seen = BTreeSet::new();
    let visits = calendar.components.iter().filter(|component| component.name.as_str() == "VEVENT");
    for (at, component) in visits.enumerate() {
        let visit = read(component).map_err(|what| NotOurs::Visit { number: at + 1, what })?;
        if !seen.insert(visit.uid.clone()) {
            return Err(NotOurs::RepeatedUid(visit.uid));
        }
        known.push(visit);
    }
    Ok(known)
}

impl Known {
    /// Whether this visit still is what it was when it was issued.
    pub(super) fn is_now(&self, visit: &Visit<'_>) -> bool {
        !self.cancelled
            && self.start == visit.start
            && self.title == readable(visit.title)
            && self.description == readable(visit.description)
    }

    /// The visit as one that is no more.
    pub(super) fn cancellation(&self) -> Visit<'_> {
        Visit {
            uid: self.uid.clone(),
            sequence: if self.cancelled { self.sequence } else { self.sequence.saturating_add(1) },
            title: &self.title,
            start: self.start,
            description: &self.description,
            remind_days_before: None,
        }
    }
}

/// Refuses components that lie too deep: the reader goes down one call for each.
fn shallow(text: &str) -> Result<(), NotOurs> {
    let mut depth = 0_usize;
    for line in text.lines() {
        let starts_with =
            |word: &str| line.trim_start().get(..word.len()).is_some_and(|s| s.eq_ignore_ascii_case(word));
        if starts_with("BEGIN:") {
            depth += 1;
        } else if starts_with("END:") {
            depth = depth.saturating_sub(1);
        }
        if depth > DEEPEST {
            return Err(NotOurs::NotACalendar("components lie too deep in one another".into()));
        }
    }
    Ok(())
}

fn read(component: &Component<'_>) -> Result<Known, &'static str> {
    let uid = value(component, "UID").filter(|uid| !uid.is_empty()).ok_or("UID")?;
    let cancelled = match value(component, "STATUS") {
        Some("CONFIRMED") => false,
        Some("CANCELLED") => true,
        _ => return Err("STATUS"),
    };
    Ok(Known {
        uid: uid.to_owned(),
        sequence: value(component, "SEQUENCE").and_then(|text| text.parse().ok()).ok_or("SEQUENCE")?,
        start: start(component).ok_or("DTSTART")?,
        title: value(component, "SUMMARY").ok_or("SUMMARY")?.to_owned(),
        // A visit about which nothing more is said has none.
        description: value(component, "DESCRIPTION").map_or_else(String::new, str::to_owned),
        cancelled,
    })
}

fn start(component: &Component<'_>) -> Option<VisitTime> {
    let property = component.find_prop("DTSTART")?;
    let text = property.val.as_str();
    match (parameter(property, "VALUE"), parameter(property, "TZID")) {
        (Some("DATE"), None) => Some(VisitTime::AllDay(Date::strptime("%Y%m%d", text).ok()?)),
        (None, Some(_)) => {
            let minutes = value(component, "DURATION")?.strip_prefix("PT")?.strip_suffix('M')?;
            Some(VisitTime::At(DateTime::strptime("%Y%m%dT%H%M%S", text).ok()?, minutes.parse().ok()?))
        }
        _ => None,
    }
}

fn value<'c>(component: &'c Component<'_>, name: &str) -> Option<&'c str> {
    component.find_prop(name).map(|property| property.val.as_str())
}

fn parameter<'p>(property: &'p Property<'_>, name: &str) -> Option<&'p str> {
    property.params.iter().find(|parameter| parameter.key == name)?.val.as_ref().map(|value| value.as_str())
}
