//! Days of two plans in words, with dates where both have the same.

use jiff::civil::Date;
use quantity::PostoperativeDay;

use super::operated;
use crate::json::comparison::Head;
use crate::view::dates;

/// How days and the two sides are named.
pub(super) struct Days {
    operated_on: Option<Date>,
    /// Where the first side is, such as "in A".
    pub a: &'static str,
    /// Where the second side is.
    pub b: &'static str,
}

impl Days {
    pub(super) fn of(heads: &[Head; 2]) -> Self {
        let [a, b] = [operated(&heads[0]), operated(&heads[1])];
        Self { operated_on: a.filter(|date| Some(*date) == b), a: "in A", b: "in B" }
    }

    pub(super) const fn between(self, a: &'static str, b: &'static str) -> Self {
        Self { a, b, ..self }
    }

    /// What the reader should know where the two are not of one day or one side.
    pub(super) fn remark(&self, heads: &[Head; 2]) -> Option<&'static str> {
        let dates = heads[0].date != heads[1].date;
        let sides = heads[0].side != heads[1].side;
        match (dates, sides) {
            (false, false) => None,
            (true, false) => Some("operated on two days: compared by the day after the operation, without dates"),
            (false, true) => Some("two sides of the body: compared as if they were one"),
            (true, true) => {
                Some("operated on two days and two sides: compared by the day after the operation, without dates")
            }
        }
    }

    fn date(&self, day: u16) -> Option<String> {
        self.operated_on.map(|operated_on| dates::short(PostoperativeDay::new(day).date(operated_on)))
    }

    /// "14 to 41 (16 Mar 2026 to 12 Apr 2026)"; both days are included.
    pub(super) fn run(&self, from: u16, until: u16) -> String {
        let last = until.saturating_sub(1);
        if from == last {
            let date = self.date(from).map_or(String::new(), |date| format!(" ({date})"));
            return format!("day {from}{date}");
        }
        let dates = self.date(from).zip(self.date(last));
        let dates = dates.map_or(String::new(), |(from, last)| format!(" ({from} to {last})"));
        format!("days {from} to {last}{dates}")
    }

    /// "day 14 (16 Mar 2026)".
    pub(super) fn on(&self, day: Option<u16>, never: &str) -> String {
        match day {
            Some(day) => {
                format!("day {day}{}", self.date(day).map_or(String::new(), |date| format!(" ({date})")))
            }
            None => never.to_owned(),
        }
    }

    /// "day 14 in A, day 42 in B (28 days later)".
    pub(super) fn moved(&self, a: Option<u16>, b: Option<u16>, never: &str) -> String {
        let by = match (a, b) {
            (Some(a), Some(b)) if b > a => format!(" ({})", later(b - a)),
            (Some(a), Some(b)) if a > b => format!(" ({} earlier)", count(a - b)),
            _ => String::new(),
        };
        format!("{} {}, {} {}{by}", self.on(a, never), self.a, self.on(b, never), self.b)
    }
}

/// "28 days later".
pub(super) fn later(days: u16) -> String {
    format!("{} later", count(days))
}

fn count(days: u16) -> String {
    if days == 1 { "1 day".into() } else { format!("{days} days") }
}
