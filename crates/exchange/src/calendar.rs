//! Visits as iCalendar text (RFC 5545, published as RFC 5546 says).
//!
//! A calendar that is issued again carries the same `UID` for the same visit,
//! a higher `SEQUENCE` where something about it changed, and a cancellation for
//! a visit that is no more: [`previous`] reads what was issued before, and
//! [`Calendar::following`] compares.
//!
//! Left out on purpose: `ORGANIZER`, which RFC 5546 wants of what is published,
//! because it has to be an address and a practice is known by a telephone number.

mod content;
mod identity;
mod previous;
mod write;
mod zone;

pub use identity::{Subject, uid};
pub use previous::{Known, NotOurs, previous};
pub use write::Unwritable;

use jiff::civil::{Date, DateTime};

/// Everything one file holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Calendar<'a> {
    /// What the calendar is called; it may stand on a lock screen.
    pub name: &'a str,
    /// The time zone of visits with a time, as the tz database names it.
    pub time_zone: &'a str,
    /// When this was issued, in UTC (`DTSTAMP`); passed in, for nothing here reads the clock.
    pub stamp: DateTime,
    /// The visits.
    pub visits: Vec<Visit<'a>>,
    /// Visits that were issued once and are no more.
    pub cancelled: Vec<Visit<'a>>,
}

/// One visit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Visit<'a> {
    /// Who this visit is, whenever it is: see [`uid`].
    pub uid: String,
    /// How often it was changed since it was first issued: 0 at first, then see [`Calendar::following`].
    pub sequence: u32,
    /// What a lock screen shows; nothing medical.
    pub title: &'a str,
    /// When.
    pub start: VisitTime,
    /// What else to say; empty for nothing.
    pub description: &'a str,
    /// How many days before it the calendar reminds; for a visit without a time, at nine in the morning.
    pub remind_days_before: Option<u16>,
}

/// When a visit is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum VisitTime {
    /// A day without a time.
    AllDay(Date),
    /// A civil time in the calendar's time zone, and how many minutes it takes.
    ///
    /// A time that a clock change skips is read with the offset before the change, and the
    /// first of two where a change repeats it, as RFC 5545 (3.3.5) says.
    At(DateTime, u16),
}

impl<'a> Calendar<'a> {
    /// The same calendar, issued after another one.
    ///
    /// A visit that is as it was keeps its `SEQUENCE`; one whose time or text changed, or that
    /// had been cancelled, takes the next; one that is no longer there is cancelled with the next,
    /// once, and stays cancelled with that. A visit that is new keeps what it has.
    ///
    /// Visits of another person are passed over: who writes one patient's papers over another's
    /// must not tell the one what the other had.
    #[must_use]
    pub fn following(mut self, known: &'a [Known]) -> Self {
        for visit in &mut self.visits {
            if let Some(before) = known.iter().find(|before| before.uid == visit.uid) {
                visit.sequence = match before.is_now(visit) {
                    true => before.sequence,
                    false => before.sequence.saturating_add(1),
                };
            }
        }
        let gone = known.iter().filter(|before| {
            let all = || self.visits.iter().chain(&self.cancelled);
            all().any(|visit| identity::of_one_person(&visit.uid, &before.uid))
                && !all().any(|visit| visit.uid == before.uid)
        });
        let gone: Vec<_> = gone.map(Known::cancellation).collect();
        self.cancelled.extend(gone);
        self
    }
}

#[cfg(test)]
mod tests;
