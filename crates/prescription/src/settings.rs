//! What the surgeon set: contact, clinic days, choices, holds and loosenings.

use body::{Joint, Key};
use diagnostic::Spanned;
use jiff::civil::{Date, Weekday};
use plan::Cell;
use quantity::{Degrees, PostoperativeDay};

/// The surgeon's settings; everything is optional.
#[derive(Debug, Clone, Default)]
pub struct Settings {
    /// Whom to call.
    pub contact: Contact,
    /// Who writes.
    pub practice: Practice,
    /// What the surgeon says on patients' paper.
    pub paper: Paper,
    /// What the surgeon orders of the therapist.
    pub therapy: Therapy,
    /// When patients are seen.
    pub clinic: Clinic,
    /// Another protocol than the default.
    pub choice: Option<ProtocolChoice>,
    /// Options taken where sources disagree.
    pub prefers: Vec<Prefer>,
    /// Go-backs.
    pub backs: Vec<Back>,
    /// Holds.
    pub holds: Vec<Hold>,
    /// Loosenings; outside every proof, and printed.
    pub loosenings: Vec<Loosening>,
    /// How far an unsupervised target stays below the limit.
    pub home_margin: Option<Spanned<Degrees>>,
    /// Why the home margin is smaller than the usual one.
    pub home_margin_reason: Option<Spanned<String>>,
    /// Goals from memory that the surgeon has adopted, by their ids.
    pub adopted_goals: Vec<Spanned<String>>,
}

/// Whom to call by day and by night.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Contact {
    /// By day.
    pub day: Option<String>,
    /// By night.
    pub night: Option<String>,
}

/// Who writes: the head of a letter.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Practice {
    /// The surgeon.
    pub surgeon: Option<String>,
    /// The practice.
    pub name: Option<String>,
    /// Where it is.
    pub address: Option<String>,
}

/// What the surgeon says on patients' paper.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Paper {
    /// The size of the sheets.
    pub size: PaperSize,
    /// The pain tablets, in the surgeon's own words.
    pub tablets: Option<String>,
    /// The same in Spanish.
    pub tablets_es: Option<String>,
    /// The fever from which patients call the same day.
    pub fever: FeverLimit,
    /// Whom the figure in the drawings looks like, so that patients can recognize themselves.
    pub look: body::Look,
}

body::words! {
    /// The size of a sheet.
    #[derive(Default)]
    PaperSize {
        /// 210 by 297 mm.
        #[default]
        A4 = "a4",
        /// 8.5 by 11 inches.
        Letter = "letter",
    }
}

body::words! {
    /// The fever from which patients call the same day; the sources disagree.
    #[derive(Default)]
    FeverLimit {
        /// The cautious one.
        #[default]
        Cautious = "38.0 C",
        /// The other one.
        Other = "38.3 C",
    }
}

impl FeverLimit {
    /// Degrees Celsius.
    pub fn celsius(self) -> f64 {
        match self {
            Self::Cautious => evidence::ids::FEVER_SAME_DAY.number(),
            Self::Other => evidence::ids::FEVER_SAME_DAY_OTHER.number(),
        }
    }
}

/// What the surgeon orders of the therapist; what is left out prints as a line to fill in.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Therapy {
    /// Visits a week.
    pub times_a_week: Option<u16>,
    /// For how many weeks.
    pub weeks: Option<u16>,
    /// Manual therapy; no shipped date.
    pub manual_therapy: Option<Permission>,
    /// Exercise in a pool; no shipped date.
    pub pool: Option<Permission>,
    /// Traction; no shipped date.
    pub traction: Option<Permission>,
}

/// Whether the surgeon allows something, and from when.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Permission {
    /// Not at all.
    No,
    /// From a day on.
    From(PostoperativeDay),
}

/// When patients are seen.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Clinic {
    /// Weekdays of the clinic; empty where none are set.
    pub days: Vec<Weekday>,
    /// Days without a clinic.
    pub holidays: Vec<Date>,
    /// The zone of the practice's clock.
    pub time_zone: Option<String>,
}

impl Clinic {
    /// Whether patients are seen on a date; any date that is no holiday where no clinic days are set.
    pub fn sees_patients_on(&self, date: Date) -> bool {
        (self.days.is_empty() || self.days.contains(&date.weekday())) && !self.holidays.contains(&date)
    }

    /// The dates between which a visit may fall.
    ///
    /// # Method
    /// Where clinic days are set, from the first to the last of them inside the days from `first` to `last`;
    /// where only one lies inside, from it to the last day; otherwise the days as they are.
    pub fn window(&self, operated_on: Date, first: PostoperativeDay, last: PostoperativeDay) -> (Date, Date) {
        let ends = (first.date(operated_on), last.date(operated_on));
        let seen: Vec<Date> = (first.count()..=last.count())
            .map(|day| PostoperativeDay::new(day).date(operated_on))
            .filter(|&date| self.sees_patients_on(date))
            .collect();
        match (&seen[..], self.days.is_empty()) {
            ([only], false) => (*only, ends.1),
            ([first, .., last], false) => (*first, *last),
            _ => ends,
        }
    }
}

/// Another protocol than the default, with its reason.
#[derive(Debug, Clone)]
pub struct ProtocolChoice {
    /// The protocol.
    pub protocol: Spanned<String>,
    /// Why.
    pub reason: Option<Spanned<String>>,
    /// The protocol written a second time.
    pub confirm: Option<Spanned<String>>,
    /// The size written, for the largest tears.
    pub confirm_large: Option<Spanned<String>>,
}

/// An option taken where sources disagree.
#[derive(Debug, Clone)]
pub struct Prefer {
    /// The choice.
    pub choice: Spanned<String>,
    /// The option.
    pub option: Spanned<String>,
    /// Why.
    pub reason: Option<Spanned<String>>,
    /// The option written a second time.
    pub confirm: Option<Spanned<String>>,
}

/// From a day on, back to a stage.
#[derive(Debug, Clone)]
pub struct Back {
    /// The stage.
    pub stage: Spanned<String>,
    /// The day.
    pub day: u16,
    /// Why.
    pub reason: String,
}

/// For some days, nothing new.
#[derive(Debug, Clone)]
pub struct Hold {
    /// The first day that is held.
    pub from_day: u16,
    /// How many days.
    pub days: u16,
    /// Why.
    pub reason: String,
    /// The joint below the shoulder it is for alone; the whole arm where none is named.
    pub joint: Option<Joint>,
}

/// A looser limit by the surgeon's own decision.
#[derive(Debug, Clone)]
pub struct Loosening {
    /// What it loosens.
    pub key: Key,
    /// First day.
    pub from_day: u16,
    /// First day after.
    pub until_day: u16,
    /// The value.
    pub up_to: Cell,
    /// The value as written.
    pub written: Spanned<String>,
    /// The value written a second time.
    pub confirm: Option<Spanned<String>>,
    /// Why.
    pub reason: Spanned<String>,
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn a_window_keeps_to_clinic_days() {
        let clinic = |days: &[Weekday]| Clinic { days: days.to_vec(), ..Clinic::default() };
        let window = |clinic: Clinic, operated_on| {
            clinic.window(operated_on, PostoperativeDay::new(10), PostoperativeDay::new(14))
        };
        // Days 10 to 14 after Monday 2 March 2026 are Thursday 12 to Monday 16 March.
        let operated_on = date(2026, 3, 2);
        let ends = (date(2026, 3, 12), date(2026, 3, 16));
        assert_eq!(window(Clinic::default(), operated_on), ends);
        assert_eq!(window(clinic(&[Weekday::Monday, Weekday::Thursday]), operated_on), ends);
        assert_eq!(window(clinic(&[Weekday::Friday]), operated_on), (date(2026, 3, 13), ends.1));
        assert_eq!(window(clinic(&[Weekday::Tuesday]), operated_on), ends, "none inside: the days as they are");
    }
}
