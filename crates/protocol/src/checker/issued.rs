//! The checker over a finished prescription: every line that a patient may act on, held
//! against the files and against one another.

mod ceiling;
mod exercises;
mod fitting;
mod found;
mod gates;
mod goals;
mod lived;
mod other_arm;
mod returns;
mod rows;
mod sheet;
mod sling;
mod still;
mod today;

use body::{Joint, Key};
use exercise::Catalogue;
use operative::Facts;
use plan::{Cell, LimitRow, Prescription, SpanOfDays};
use quantity::Degrees;

use super::fault::Fault;
use super::rulebook::{InForce, Rulebook};
use crate::{Choices, Family, Requested};
use found::Found;
use lived::Lived;
use sheet::Sheet;

/// What a plan rests on: the files, the surgeon's options, and the facts of the record.
#[derive(Debug, Clone, Copy)]
pub struct Basis<'c> {
    /// The files.
    pub family: &'c Family,
    /// The surgeon's options.
    pub choices: &'c Choices,
    /// The facts of the record.
    pub facts: &'c Facts,
    /// The protocol that was asked for.
    pub requested: Requested,
}

/// For some days, nothing new.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Held {
    /// The first day that is held.
    pub from_day: u16,
    /// How many days.
    pub days: u16,
    /// The joint it is for alone; the whole arm where none is named.
    pub joint: Option<Joint>,
}

/// From a day on, back to a stage.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WentBack {
    /// The day.
    pub day: u16,
    /// The stage.
    pub stage: String,
}

/// A looser limit by the surgeon's own decision.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Loosening {
    /// What it loosens; any position means every position.
    pub key: Key,
    /// The first day.
    pub from_day: u16,
    /// The first day after; a go-back ends it before.
    pub until_day: u16,
    /// The value.
    pub cell: Cell,
}

/// A stage that the surgeon opened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Opening {
    /// The stage.
    pub stage: String,
    /// The day it was opened on.
    pub day: u16,
}

/// The other shoulder of the same person, where it has a plan of its own.
#[derive(Debug, Clone, Copy)]
pub struct OtherShoulder<'c> {
    /// What its plan rests on.
    pub basis: Basis<'c>,
    /// How many days its operation was before this one; below zero where it came after.
    pub days_ahead: i32,
}

/// A prescription, and everything it was made from.
#[derive(Debug, Clone, Copy)]
pub struct Issued<'c> {
    /// The prescription.
    pub prescription: &'c Prescription,
    /// What it rests on.
    pub basis: Basis<'c>,
    /// The catalogue its exercises come from.
    pub catalogue: &'c Catalogue,
    /// How far an unsupervised target stays below its limit.
    pub home_margin: Degrees,
    /// Holds.
    pub holds: &'c [Held],
    /// Go-backs.
    pub backs: &'c [WentBack],
    /// Loosenings: outside every proof, and the only thing that may lie above a rule.
    pub loosenings: &'c [Loosening],
    /// What the surgeon opened.
    pub openings: &'c [Opening],
    /// The other shoulder.
    pub other: Option<OtherShoulder<'c>>,
}

/// Everything that is wrong with a prescription, the worst harm first.
///
/// # Method
/// Each day lives a day of the rules, counted day by day from the holds and
/// go-backs. Every limit on every day is held against every line in force on
/// both days; exercises, goals, visits, returns and the day asked about are then
/// held against the limits that were issued, and against the files by themselves.
pub fn faults_of_prescription(issued: &Issued<'_>) -> Vec<Fault> {
    let judge = Judge::new(issued);
    let mut found = Found::default();
    rows::judge(&judge, &mut found);
    sling::judge(&judge, &mut found);
    gates::judge(&judge, &mut found);
    goals::judge(&judge, &mut found);
    exercises::judge(&judge, &mut found);
    returns::judge(&judge, &mut found);
    today::judge(&judge, &mut found);
    still::judge(&judge, &mut found);
    found.into_faults()
}

/// What is wrong with the answer that an activity is allowed on a day; nothing where nothing is.
///
/// The day is judged by the dated plan, and where an unopened gate holds it, by every day since.
pub fn faults_of_permission(issued: &Issued<'_>, activity: &str, day: u16) -> Vec<Fault> {
    let judge = Judge::new(issued);
    let mut found = Found::default();
    returns::judge_permission(&judge, activity, day, &mut found);
    found.into_faults()
}

/// What the parts of the judgment share.
struct Judge<'c> {
    issued: &'c Issued<'c>,
    in_force: InForce<'c>,
    lived: Lived,
    sheet: Sheet<'c>,
    /// The first day after the dated plan.
    horizon: u16,
    /// The stages of the plan in order, each with the day of the rules it opens on.
    stages: Vec<(&'c str, u16)>,
    /// For each run of days of the prescription the value of each key of the sheet.
    values: Vec<Vec<Cell>>,
}

impl<'c> Judge<'c> {
    fn new(issued: &'c Issued<'c>) -> Self {
        let Basis { family, choices, facts, requested } = issued.basis;
        let in_force = Rulebook::new(family, choices).in_force(facts, requested);
        let stages: Vec<(&str, u16)> =
            family.stage_ids().into_iter().filter_map(|id| Some((id, in_force.gate(id)?))).collect();
        let horizon = family.protocols.iter().map(|protocol| protocol.horizon.count()).max().unwrap_or(0);
        let lived = Lived::count(issued.holds, issued.backs, &stages, horizon);
        let spans = &issued.prescription.spans;
        let today = issued.prescription.today.iter().flat_map(|today| &today.limits);
        let written = spans.iter().flat_map(|span| &span.limits).chain(today).map(|row| row.key);
        let sheet = Sheet::new(&in_force, family, written, horizon);
        let of_span =
            |span: &SpanOfDays| sheet.keys.iter().map(|key| governing(&span.limits, *key)).collect::<Vec<_>>();
        let values = spans.iter().map(of_span).collect();
        Self { issued, in_force, lived, sheet, horizon, stages, values }
    }

    /// The most the files allow of a key of the sheet on a day of the patient, loosenings included.
    fn cap(&self, place: usize, day: u16) -> Cell {
        let key = self.sheet.keys[place];
        let lives = self.lived.on(key.joint, day);
        let most = self.sheet.most(place, lives).min(self.sheet.most(place, day));
        self.loosened(key, day).map_or(most, |loosened| loosened.max(most))
    }

    /// What the surgeon's loosenings allow of a key on a day.
    fn loosened(&self, key: Key, day: u16) -> Option<Cell> {
        let names = |loosening: &&Loosening| {
            let ends = self.issued.backs.iter().map(|back| back.day).filter(|back| *back > loosening.from_day).min();
            let until = loosening.until_day.min(ends.unwrap_or(u16::MAX));
            (loosening.key == key || loosening.key == key.in_position(body::Position::Any))
                && (loosening.from_day..until).contains(&day)
        };
        self.issued.loosenings.iter().filter(names).map(|loosening| loosening.cell).max()
    }

    /// The run of days that a day lies in, by its place; days after the plan lie in the last.
    fn span_at(&self, day: u16) -> Option<(usize, &'c SpanOfDays)> {
        let spans = &self.issued.prescription.spans;
        let place = spans.iter().rposition(|span| span.from_day.count() <= day)?;
        Some((place, &spans[place]))
    }

    /// What is allowed on a day: by the limits that were issued, and after the last day of the plan by the files alone.
    fn value(&self, key: Key, day: u16) -> Cell {
        if day < self.horizon {
            self.span_at(day).map_or(Cell::NO, |(_, span)| governing(&span.limits, key))
        } else {
            self.sheet.place(key).map_or(Cell::NO, |place| self.cap(place, day))
        }
    }

    /// The day of the rules on which a stage may open; `None` where the plan has no such stage.
    fn gate(&self, stage: &str) -> Option<u16> {
        self.stages.iter().find(|(id, _)| *id == stage).map(|(_, gate)| *gate)
    }

    /// The protocol that is followed.
    fn followed(&self) -> &'c crate::file::ProtocolFile {
        self.in_force.protocols[0].1
    }
}

/// What governs a key among rows: its own position where one is written, else any; no row is not allowed.
fn governing(rows: &[LimitRow], key: Key) -> Cell {
    let row = |key: Key| rows.iter().find(|row| row.key == key);
    let row = row(key).or_else(|| row(key.in_position(body::Position::Any)));
    row.map_or(Cell::NO, |row| Cell::from(row.allowed))
}
