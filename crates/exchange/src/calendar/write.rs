//! The calendar as text.

use std::collections::BTreeSet;
use std::fmt;

use jiff::civil::{Date, DateTime};
use jiff::tz::TimeZone;

use super::content::Lines;
use super::{Calendar, Visit, VisitTime, zone};

/// What this program calls itself in a calendar; [`super::previous`] knows its own files by it.
pub(super) const PRODUCT: &str = "-//mendarc//visits//EN";

/// The hour at which a day without a time is reminded of. Own choice: midnight wakes people.
const REMINDER_HOUR: u32 = 9;

const HOURS_OF_A_DAY: u32 = 24;

/// Why a calendar cannot be written.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Unwritable {
    /// The tz database has no such time zone.
    #[error("no time zone is called \"{0}\"")]
    UnknownTimeZone(String),
    /// Two visits share an id, so a phone would keep one of them.
    #[error("two visits share the id {0}")]
    RepeatedUid(String),
    /// A visit is before or after every time that can be told in UTC.
    #[error("{0} is no time that can be told in UTC")]
    OutOfRange(DateTime),
    /// The text could not be put together.
    #[error("the calendar's text could not be put together")]
    Text(#[from] fmt::Error),
}

impl Calendar<'_> {
    /// The calendar as iCalendar text: UTF-8, lines ended with CRLF, none over 75 octets.
    ///
    /// # Errors
    /// A time zone that the tz database does not know, an id that two visits share, a time out of range.
    pub fn to_text(&self) -> Result<String, Unwritable> {
        let mut seen = BTreeSet::new();
        for visit in self.visits.iter().chain(&self.cancelled) {
            if !seen.insert(&visit.uid) {
                return Err(Unwritable::RepeatedUid(visit.uid.clone()));
            }
        }
        let zone = zone::named(self.time_zone)?;
        let mut lines = Lines::default();
        lines.component("VCALENDAR", |lines| {
            lines.property("VERSION", "2.0")?;
            lines.property("PRODID", PRODUCT)?;
            lines.property("CALSCALE", "GREGORIAN")?;
            lines.property("METHOD", "PUBLISH")?;
            // Not in RFC 5545, but what programs read.
            lines.words("X-WR-CALNAME", self.name)?;
            zone::write(lines, &zone, &self.times())?;
            for visit in &self.visits {
                lines.component("VEVENT", |lines| {
                    self.visit(lines, visit, &zone, "CONFIRMED")?;
                    reminder(lines, visit)
                })?;
            }
            for visit in &self.cancelled {
                lines.component("VEVENT", |lines| self.visit(lines, visit, &zone, "CANCELLED"))?;
            }
            Ok::<(), Unwritable>(())
        })?;
        Ok(lines.into_text())
    }

    /// The civil times of all visits that have one.
    fn times(&self) -> Vec<DateTime> {
        let all = self.visits.iter().chain(&self.cancelled);
        all.filter_map(|visit| match visit.start {
            VisitTime::At(start, _) => Some(start),
            VisitTime::AllDay(_) => None,
        })
        .collect()
    }

    fn visit(&self, lines: &mut Lines, visit: &Visit<'_>, zone: &TimeZone, status: &str) -> fmt::Result {
        lines.words("UID", &visit.uid)?;
        lines.property("DTSTAMP", format!("{}Z", basic(self.stamp)))?;
        lines.property("SEQUENCE", visit.sequence.to_string())?;
        match visit.start {
            VisitTime::AllDay(date) => {
                lines.qualified("DTSTART", ("VALUE", "DATE"), day(date))?;
                // Without an end a day is a day (RFC 5545, 3.6.1); the last day there is has no next.
                if let Ok(next) = date.tomorrow() {
                    lines.qualified("DTEND", ("VALUE", "DATE"), day(next))?;
                }
                lines.property("TRANSP", "TRANSPARENT")?;
            }
            VisitTime::At(start, minutes) => {
                lines.qualified("DTSTART", ("TZID", zone::id(zone)), basic(start))?;
                // A length is the same across a clock change, and the end as a time would not be.
                lines.property("DURATION", format!("PT{minutes}M"))?;
            }
        }
        lines.words("SUMMARY", visit.title)?;
        if !visit.description.is_empty() {
            lines.words("DESCRIPTION", visit.description)?;
        }
        lines.property("CLASS", "PRIVATE")?;
        lines.property("STATUS", status)
    }
}

fn reminder(lines: &mut Lines, visit: &Visit<'_>) -> Result<(), Unwritable> {
    let Some(days) = visit.remind_days_before.map(u32::from) else { return Ok(()) };
    let trigger = match (visit.start, days) {
        (VisitTime::At(..), days) => format!("-P{days}D"),
        (VisitTime::AllDay(_), 0) => format!("PT{REMINDER_HOUR}H"),
        // Counted back from the midnight at which the day begins.
        (VisitTime::AllDay(_), 1) => format!("-PT{}H", HOURS_OF_A_DAY - REMINDER_HOUR),
        (VisitTime::AllDay(_), days) => format!("-P{}DT{}H", days - 1, HOURS_OF_A_DAY - REMINDER_HOUR),
    };
    lines.component("VALARM", |lines| {
        lines.property("ACTION", "DISPLAY")?;
        lines.words("DESCRIPTION", visit.title)?;
        lines.property("TRIGGER", trigger)?;
        Ok(())
    })
}

/// A date in the basic form of ISO 8601: `20260302`.
fn day(date: Date) -> String {
    date.strftime("%Y%m%d").to_string()
}

/// A date and a time in the basic form of ISO 8601: `20260302T090000`.
pub(super) fn basic(time: DateTime) -> String {
    time.strftime("%Y%m%dT%H%M%S").to_string()
}
