//! One value of the table, and its readings as quantities.

use quantity::{Days, Degrees, Kilograms, Millimeters, Percent, PostoperativeDay};

use crate::{HowKnown, Unit};

/// One medical value, or one sourced statement without a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Entry {
    /// The id that files and code cite: kebab words, no person's or clinic's name.
    pub id: &'static str,
    /// The file it stands in, without its ending.
    pub topic: &'static str,
    /// What the value is, in one line.
    pub what: &'static str,
    /// The number; none for a statement.
    pub value: Option<f64>,
    /// The lowest number the sources give.
    pub low: Option<f64>,
    /// The highest number the sources give.
    pub high: Option<f64>,
    /// The unit of `value`, `low` and `high`.
    pub unit: Unit,
    /// Standard deviation, confidence interval or range, as text.
    pub spread: Option<&'static str>,
    /// How many people, shoulders or studies.
    pub n: Option<u32>,
    /// Who they were.
    pub population: Option<&'static str>,
    /// The design of the study.
    pub design: Option<&'static str>,
    /// How the value is known.
    pub how_known: HowKnown,
    /// Keys of [`crate::SOURCES`].
    pub sources: &'static [&'static str],
    /// Table, figure or page.
    pub locator: Option<&'static str>,
    /// One or two sentences.
    pub note: Option<&'static str>,
    /// The entries this one was computed from.
    pub derived_from: &'static [&'static str],
    /// How it was computed.
    pub formula: Option<&'static str>,
}

/// Two numbers of the table closer than this are one number.
const TOLERANCE: f64 = 1e-9;

impl Entry {
    /// An entry of which nothing optional is known.
    pub(crate) const fn new(
        id: &'static str,
        topic: &'static str,
        what: &'static str,
        unit: Unit,
        how_known: HowKnown,
    ) -> Self {
        Self {
            id,
            topic,
            what,
            value: None,
            low: None,
            high: None,
            unit,
            spread: None,
            n: None,
            population: None,
            design: None,
            how_known,
            sources: &[],
            locator: None,
            note: None,
            derived_from: &[],
            formula: None,
        }
    }

    /// The number as it stands in the table.
    ///
    /// # Panics
    /// The entry holds a statement and no number: a slip of the program, never of input.
    /// In a `const` it stops the build.
    #[track_caller]
    pub const fn number(&self) -> f64 {
        match self.value {
            Some(number) => number,
            None => panic!("this entry of the evidence holds no number"),
        }
    }

    /// The number in steps of `1 / per_unit`, exactly.
    #[track_caller]
    const fn steps(&self, per_unit: f64) -> i32 {
        let scaled = self.number() * per_unit;
        let rounded = scaled.round();
        assert!((scaled - rounded).abs() < 1e-6, "finer than the quantity keeps");
        assert!(rounded.abs() < 1e9, "beyond what the quantity holds");
        rounded as i32
    }

    #[track_caller]
    const fn count(&self) -> u16 {
        let steps = self.steps(1.0);
        assert!(steps >= 0 && steps <= u16::MAX as i32, "not a count");
        steps as u16
    }

    #[track_caller]
    const fn expect_unit(&self, fits: bool) {
        assert!(fits, "this entry of the evidence has another unit");
    }

    /// The postoperative day; unit `day`.
    ///
    /// # Panics
    /// Another unit, no number, or not a whole day: a slip of the program, never of input.
    /// The same holds for every reading below; in a `const` it stops the build.
    ///
    /// # Example
    /// ```
    /// use evidence::ids;
    /// use quantity::PostoperativeDay;
    /// const LAST: PostoperativeDay = ids::INFECTION_QUESTIONS_DAILY_UNTIL.day();
    /// assert_eq!(LAST, PostoperativeDay::new(56));
    /// ```
    #[track_caller]
    pub const fn day(&self) -> PostoperativeDay {
        self.expect_unit(matches!(self.unit, Unit::Day));
        PostoperativeDay::new(self.count())
    }

    /// A length of time in days; unit `days`.
    #[track_caller]
    pub const fn days(&self) -> Days {
        self.expect_unit(matches!(self.unit, Unit::Days));
        Days::new(self.count())
    }

    /// An angle; unit `deg`.
    #[track_caller]
    pub const fn degrees(&self) -> Degrees {
        self.expect_unit(matches!(self.unit, Unit::Degrees));
        Degrees::from_steps(self.steps(10.0))
    }

    /// A load; unit `kg`.
    #[track_caller]
    pub const fn kilograms(&self) -> Kilograms {
        self.expect_unit(matches!(self.unit, Unit::Kilograms));
        Kilograms::from_steps(self.steps(100.0))
    }

    /// A percentage; unit `%` or `% MVIC`.
    #[track_caller]
    pub const fn percent(&self) -> Percent {
        self.expect_unit(matches!(self.unit, Unit::Percent | Unit::PercentMvic));
        Percent::from_steps(self.steps(10.0))
    }

    /// A length; unit `mm`.
    #[track_caller]
    pub const fn millimeters(&self) -> Millimeters {
        self.expect_unit(matches!(self.unit, Unit::Millimeters));
        Millimeters::from_steps(self.steps(10.0))
    }

    /// Points of a score; unit `points`.
    #[track_caller]
    pub const fn points(&self) -> u8 {
        self.expect_unit(matches!(self.unit, Unit::Points));
        let count = self.count();
        assert!(count <= u8::MAX as u16, "more points than any score has");
        count as u8
    }

    /// Completed years; unit `years`.
    #[track_caller]
    pub const fn years(&self) -> i16 {
        self.expect_unit(matches!(self.unit, Unit::Years));
        let count = self.count();
        assert!(count <= i16::MAX as u16, "more years than any life has");
        count as i16
    }

    /// Repetitions, sets or times a day or week; unit `repetitions`, `sets`, `per day`, `per week` or `count`.
    #[track_caller]
    pub const fn repetitions(&self) -> u16 {
        self.expect_unit(matches!(
            self.unit,
            Unit::Repetitions | Unit::Sets | Unit::PerDay | Unit::PerWeek | Unit::Count
        ));
        self.count()
    }

    /// Whether `number` in `unit` is this value, or lies in the range the sources give.
    ///
    /// # Units and shape
    /// The unit must be the same; both ends of the range belong to it; an entry without a
    /// number and without both ends of a range holds nothing.
    ///
    /// # Example
    /// ```
    /// use evidence::{ids, Unit};
    /// assert!(ids::FEVER_SAME_DAY.holds(38.0, Unit::Celsius));
    /// assert!(!ids::FEVER_SAME_DAY.holds(38.0, Unit::Days));
    /// ```
    pub fn holds(&self, number: f64, unit: Unit) -> bool {
        if unit != self.unit {
            return false;
        }
        let is_value = self.value.is_some_and(|value| (value - number).abs() < TOLERANCE);
        let in_range = match (self.low, self.high) {
            (Some(low), Some(high)) => low - TOLERANCE < number && number < high + TOLERANCE,
            _ => false,
        };
        is_value || in_range
    }
}
