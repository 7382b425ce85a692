//! Axes.

use std::fmt;
use std::sync::Arc;

use super::super::scale::{DAYS_A_WEEK, degree_ticks, round_ticks, week_ticks};

/// An axis.
#[derive(Debug, Clone)]
pub struct Axis {
    /// What it counts, with its unit.
    pub title: String,
    /// How its ticks lie.
    pub count: Count,
    /// Its ends; none where they follow from the values.
    pub range: Option<[f64; 2]>,
    /// How the numbers at its ticks are written.
    pub numbering: Numbering,
}

/// How ticks lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Count {
    /// At multiples of 1, 2 or 5.
    Numbers,
    /// At the parts of a circle that a goniometer shows: multiples of 5, 10, 15, 30, 45 or 90.
    Degrees,
    /// At whole weeks; values are days, the numbers written are weeks.
    Weeks,
}

/// How a number is written: in the reader's language.
#[derive(Clone)]
pub struct Numbering(Arc<dyn Fn(f64) -> String + Send + Sync>);

impl Numbering {
    /// As a function writes it.
    pub fn new(write: impl Fn(f64) -> String + Send + Sync + 'static) -> Self {
        Self(Arc::new(write))
    }

    /// Whole numbers in digits, with a true minus.
    pub fn whole() -> Self {
        Self::new(|number| {
            let sign = if number < 0.0 { "−" } else { "" };
            format!("{sign}{:.0}", number.abs())
        })
    }

    pub(super) fn write(&self, number: f64) -> String {
        (self.0)(number)
    }
}

impl fmt::Debug for Numbering {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Numbering")
    }
}

impl Axis {
    /// An axis of numbers whose ends follow from the values.
    pub fn new(title: &str) -> Self {
        Self { title: title.to_owned(), count: Count::Numbers, range: None, numbering: Numbering::whole() }
    }

    /// An axis of degrees between two ends.
    pub fn degrees(title: &str, from: f64, until: f64) -> Self {
        Self { count: Count::Degrees, range: Some([from, until]), ..Self::new(title) }
    }

    /// An axis of weeks from surgery between two days.
    pub fn weeks(title: &str, from_day: f64, until_day: f64) -> Self {
        Self { count: Count::Weeks, range: Some([from_day, until_day]), ..Self::new(title) }
    }

    /// The same between two ends.
    pub const fn between(mut self, from: f64, until: f64) -> Self {
        self.range = Some([from, until]);
        self
    }

    pub(super) fn ticks(&self, range: [f64; 2], most: u16) -> Vec<f64> {
        match self.count {
            Count::Numbers => round_ticks(range, most),
            Count::Degrees => degree_ticks(range, most),
            Count::Weeks => week_ticks(range, most),
        }
    }

    /// What is written at a tick.
    pub(super) fn words(&self, tick: f64) -> String {
        match self.count {
            Count::Numbers | Count::Degrees => self.numbering.write(tick),
            Count::Weeks => self.numbering.write((tick / DAYS_A_WEEK).round()),
        }
    }
}
