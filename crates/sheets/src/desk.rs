//! What a sheet is made from.

use exercise::Catalogue;
use jiff::civil::Date;
use operative::Record;
use plan::Prescription;
use prescription::{May, Openings, Settings};
use wording::Messages;

use crate::parts::{Part, parts};
use crate::points::OtherArm;

/// Everything that sheets are made from. Nothing here is decided anew: limits, dates and answers
/// are those of the prescription.
#[derive(Debug, Clone, Copy)]
pub struct Desk<'a> {
    /// The prescription on the day of issue, so that [`Prescription::today`] is there.
    pub prescription: &'a Prescription,
    /// The operative record.
    pub record: &'a Record,
    /// The surgeon's settings.
    pub settings: &'a Settings,
    /// The catalogue of exercises and activities.
    pub catalogue: &'a Catalogue,
    /// The texts, in the language of the reader.
    pub messages: &'a Messages,
    /// What the surgeon has opened.
    pub openings: &'a Openings,
    /// The day the sheets are issued for.
    pub issued_on: Date,
    /// For each period of [`parts`], in order, what may be done from its first day on.
    pub answers: &'a [Vec<May>],
}

impl<'a> Desk<'a> {
    /// The opened stages that are not over, with their periods.
    pub fn parts(&self) -> Vec<Part<'a>> {
        parts(self.prescription, self.issued_on)
    }

    /// Whether the other arm can help, as the record says; one that is not known can't.
    pub fn other_arm(&self) -> OtherArm {
        if operative::facts(self.record).other_arm_helps() { OtherArm::Helps } else { OtherArm::Rests }
    }
}

/// The day sheets are issued for: the day asked about, else the day of the last opening, else the day of surgery.
pub fn issued_on(on: Option<Date>, openings: &Openings, operated_on: Date) -> Date {
    let last = openings.0.iter().map(|opening| opening.on.value).max();
    on.or(last).unwrap_or(operated_on).max(operated_on)
}
