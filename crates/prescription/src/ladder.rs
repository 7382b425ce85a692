//! The exercises in the order of what they ask an arm to hold against gravity.

mod agreement;
mod steps;
mod work;

use std::collections::BTreeMap;

use body::SegmentTable;
use exercise::{Amount, Catalogue, Demand, Entry, Kind, Load, NoLoad, Whose};
use operative::{Record, Sex};
use plan::{Prescription, SpanOfDays};
use quantity::{Degrees, Kilograms, Millimeters, PostoperativeDay};

use crate::reach;

pub use agreement::{Agreement, Muscle, OutOfOrder, Why, agreement};
pub use steps::{Reached, Step, steep_steps};
pub use work::Work;

/// One exercise with what it weighs.
#[derive(Debug, Clone)]
pub struct Rung<'c> {
    /// The exercise.
    pub entry: &'c Entry,
    /// The stage it belongs to; `None` for the catalogue as a whole.
    pub stage: Option<&'c str>,
    /// The first day of this load in that stage.
    pub from_day: Option<PostoperativeDay>,
    /// What is held in the hand.
    pub held: Option<Kilograms>,
    /// The load, or why it has no number.
    pub load: Result<Load, NoLoad>,
}

impl Rung<'_> {
    /// Its load as a multiple of the own straight arm held level.
    pub fn middle(&self) -> Option<f64> {
        self.load.as_ref().ok().map(Load::middle)
    }

    /// What it is put in order by: newton meters of somebody known, else the multiple; then what no number is known
    /// of, and last what is not the work of gravity.
    fn rank(&self) -> (u8, f64) {
        match &self.load {
            Ok(load) => (0, load.middle_nm().unwrap_or_else(|| load.middle())),
            Err(NoLoad::MassUnknown | NoLoad::NotAnExercise | NoLoad::NoTable) => (1, 0.0),
            Err(NoLoad::NotGravity) => (2, 0.0),
        }
    }
}

/// The tables of segments that may fit a record: one where sex is recorded as male or female, else both.
pub fn tables_of(sex: Option<Sex>) -> &'static [SegmentTable] {
    match sex {
        Some(Sex::Male) => &[SegmentTable::Men],
        Some(Sex::Female) => &[SegmentTable::Women],
        Some(Sex::Other | Sex::Unknown) | None => &[SegmentTable::Men, SegmentTable::Women],
    }
}

/// Whose arm a record tells of.
pub fn whose(record: &Record) -> Whose<'static> {
    let tables = tables_of(record.sex());
    let patient = &record.patient;
    whose_of(patient.stature.map(|stature| stature.value), patient.mass.map(|mass| mass.value), tables)
}

/// Whose arm, as far as stature and body mass are known; both must have been accepted.
pub fn whose_of<'t>(stature: Option<Millimeters>, mass: Option<Kilograms>, tables: &'t [SegmentTable]) -> Whose<'t> {
    let person = stature
        .zip(mass)
        .zip(tables.first())
        .and_then(|((stature, mass), first)| body::Person::new(stature, mass, *first).ok());
    match (person, mass) {
        (Some(person), _) => Whose::Known { person, tables },
        (None, Some(mass)) => Whose::OfMass { mass, tables },
        (None, None) => Whose::Anybody(tables),
    }
}

/// The whole catalogue, lightest first, each exercise as far and as heavy as it goes when everything is free.
///
/// # Units and shape
/// Exercises without a number come last, in the catalogue's order; of these, those that are not the work of gravity.
pub fn of_catalogue<'c>(catalogue: &'c Catalogue, whose: Whose<'_>) -> Vec<Rung<'c>> {
    let widest = |demand: &Demand| demand.amount.greatest_angle().unwrap_or_default();
    let mut rungs: Vec<Rung<'_>> = catalogue
        .of(Kind::Exercise)
        .map(|entry| {
            let held = entry.heaviest_held();
            Rung { entry, stage: None, from_day: None, held, load: entry.load(whose, held, widest) }
        })
        .collect();
    sort(&mut rungs);
    rungs
}

/// The exercises a prescription gives, stage by stage, lightest first within a stage.
///
/// # Units and shape
/// Each exercise once in every stage for each load it comes to there, with the first day of that load; a load is another
/// where it is heavier by what two decimal places show, or where more is held.
pub fn of_prescription<'c>(
    prescription: &'c Prescription,
    catalogue: &'c Catalogue,
    whose: Whose<'c>,
) -> Vec<Rung<'c>> {
    let mut scale = Scale::new(catalogue, whose);
    let mut all = Vec::new();
    for stage in &prescription.stages {
        let mut rungs: Vec<Rung<'c>> = Vec::new();
        for span in prescription.spans.iter().filter(|span| span.stage == stage.id) {
            for rung in scale.of_span(span) {
                let mut of_same = rungs.iter().filter(|known| known.entry.id == rung.entry.id);
                if of_same.all(|known| is_heavier(&rung, known)) {
                    rungs.push(rung);
                }
            }
        }
        sort(&mut rungs);
        all.extend(rungs);
    }
    all
}

/// Weighs exercises, each form of one only once: most stay as they are from one run of days to the next.
struct Scale<'c> {
    catalogue: &'c Catalogue,
    whose: Whose<'c>,
    weighed: BTreeMap<Form<'c>, Result<Load, NoLoad>>,
}

/// An exercise at the angles and with the weight of a day.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct Form<'c> {
    id: &'c str,
    held: Option<Kilograms>,
    reaches: Vec<Degrees>,
}

impl<'c> Scale<'c> {
    fn new(catalogue: &'c Catalogue, whose: Whose<'c>) -> Self {
        Self { catalogue, whose, weighed: BTreeMap::new() }
    }

    /// The exercises of a run of days.
    fn of_span(&mut self, span: &'c SpanOfDays) -> Vec<Rung<'c>> {
        let catalogue = self.catalogue;
        let lines = span.exercises.iter().filter_map(|line| Some((line, catalogue.get(&line.id)?)));
        lines
            .map(|(line, entry)| {
                let held = line.load.or_else(|| fixed_load(entry));
                let reach = |demand: &Demand| reach(entry, demand, line.target, &span.limits);
                let form = Form { id: &entry.id, held, reaches: entry.demands.iter().map(reach).collect() };
                let whose = self.whose;
                let load = self.weighed.entry(form).or_insert_with(|| entry.load(whose, held, reach)).clone();
                Rung { entry, stage: Some(&span.stage), from_day: Some(span.from_day), held, load }
            })
            .collect()
    }
}

/// A load that the exercise itself fixes.
fn fixed_load(entry: &Entry) -> Option<Kilograms> {
    let mut loads = entry.demands.iter().filter(|demand| demand.key.movement == body::Movement::HandLoad);
    loads.find_map(|demand| match demand.amount {
        Amount::Load(held) => Some(held),
        _ => None,
    })
}

fn is_heavier(rung: &Rung<'_>, than: &Rung<'_>) -> bool {
    match (rung.middle(), than.middle()) {
        (Some(one), Some(other)) => one > other + SHOWN || rung.held > than.held,
        // Without a number the heavier weight in the hand tells.
        _ => rung.held > than.held,
    }
}

fn sort(rungs: &mut [Rung<'_>]) {
    rungs.sort_by(|one, other| {
        let ([first, second], [one, other]) = ([one.rank().0, other.rank().0], [one.rank().1, other.rank().1]);
        first.cmp(&second).then(one.total_cmp(&other))
    });
}

/// Half of the last place that is printed.
const SHOWN: f64 = 0.005; // not medical: two decimal places
