//! What the surgeon set: contact, clinic days, choices, holds and loosenings.

use body::{Joint, Key};
use diagnostic::Spanned;
use jiff::civil::{Date, Weekday};
use plan::Cell;
use quantity::Degrees;

/// The surgeon's settings; everything is optional.
#[derive(Debug, Clone, Default)]
pub struct Settings {
    /// Whom to call.
    pub contact: Contact,
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
