//! From a checked record to its classes.

use evidence::ids;
use quantity::Millimeters;

use crate::age::completed_years;
use crate::arcs::{SafeArc, SafeArcs};
use crate::dimension::DimensionId;
use crate::dimensions::{DIMENSION_COUNT, DIMENSIONS, dim};
use crate::record::{Record, TendonEntry};
use crate::words::{
    Approach, Biceps, Labrum, OtherShoulder, Part, Procedure, Repair, StiffShoulder, Tendon, Tension, Tissue,
};

const SMALL_BELOW: Millimeters = ids::TEAR_CLASS_SMALL_BELOW.millimeters();
const LARGE_FROM: Millimeters = ids::TEAR_CLASS_LARGE_FROM.millimeters();
const MASSIVE_ABOVE: Millimeters = ids::TEAR_CLASS_MASSIVE_ABOVE.millimeters();
const RETRACTION_GRADE: f64 = ids::SLOWER_RETRACTION_GRADE.number();
const INFILTRATION_FROM: f64 = ids::SLOWER_INFILTRATION_FROM.number();
const AGE_OVER: i16 = ids::SLOWER_AGE_OVER.years();

/// The classes of one record, one for each dimension, and its safe arcs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Facts {
    /// The index of the class in each dimension, in the order of [`DIMENSIONS`].
    pub classes: [u8; DIMENSION_COUNT],
    /// What the surgeon saw was safe on the table.
    pub safe_arcs: SafeArcs,
}

impl Facts {
    /// The class index in a dimension; 0 where the number is no dimension.
    pub fn class(&self, of: DimensionId) -> u8 {
        self.classes.get(usize::from(of.0)).copied().unwrap_or(0)
    }

    /// The same facts with another class in one dimension.
    #[must_use]
    pub fn with(mut self, of: DimensionId, class: u8) -> Self {
        if let Some(place) = self.classes.get_mut(usize::from(of.0)) {
            *place = class;
        }
        self
    }

    /// Whether the class in a dimension is `unknown`.
    pub fn is_unknown(&self, of: DimensionId) -> bool {
        of.get().and_then(|dimension| dimension.unknown_class()) == Some(self.class(of))
    }

    /// The name of the class in a dimension; empty where the number is no dimension.
    pub fn class_name(&self, of: DimensionId) -> &'static str {
        of.get().and_then(|dimension| dimension.classes.get(usize::from(self.class(of)))).map_or("", |class| class.name)
    }
}

/// The classes of a record.
///
/// # Method
/// Each dimension on its own; the boundaries come from the table of evidence.
/// What is not recorded takes the class `unknown` where the dimension has one,
/// and otherwise the class the dimension's doc comment names.
pub fn facts(record: &Record) -> Facts {
    let (operation, also, risk) = (&record.operation, &record.operation.also, &record.risk);
    let mut classes = [0; DIMENSION_COUNT];
    let mut set = |of: DimensionId, class: u8| classes[usize::from(of.0)] = class;

    set(dim::PROCEDURE, u8::from(record.procedure() == Procedure::CapsularRelease));
    set(dim::TEAR_SIZE, tear_size(record));
    set(dim::REPAIRED_TENDONS, u8::from(record.repaired_tendons().count() > 1));
    set(dim::INFRASPINATUS, u8::from(is_repaired(record, Tendon::Infraspinatus)));
    set(dim::TERES_MINOR, u8::from(is_repaired(record, Tendon::TeresMinor)));
    set(dim::SUBSCAPULARIS, subscapularis(record));
    set(dim::TISSUE, worst(record, |t| t.tissue.map(|tissue| tissue.value == Tissue::Poor)));
    set(dim::TENSION, worst(record, |t| t.tension.map(|tension| tension.value == Tension::High)));
    set(dim::REPAIR_CONSTRUCT, worst(record, |t| t.repair.map(|repair| repair.value == Repair::PartialRepair)));
    set(dim::REVISION, yes_no(operation.revision.map(|r| r.value)));
    set(dim::BICEPS, or_unknown(dim::BICEPS, also.biceps.map(|b| biceps(b.value))));
    set(dim::LABRUM, or_unknown(dim::LABRUM, also.labrum.map(|l| labrum(l.value))));
    set(dim::DISTAL_CLAVICLE_EXCISION, yes_no(also.distal_clavicle_excision.map(|d| d.value)));
    set(dim::CAPSULAR_RELEASE, capsular_release(record));
    set(dim::PREOPERATIVE_STIFFNESS, yes_no(risk.preoperative_stiffness.map(|p| p.value)));
    let highest = operation.tear.retraction_patte.map(|grade| f64::from(grade.value) >= RETRACTION_GRADE);
    set(dim::RETRACTION_GRADE, yes_no(highest));
    let grade = operation.fatty_infiltration.recorded().map(|(_, grade)| grade.value).max();
    set(dim::FATTY_INFILTRATION, yes_no(grade.map(|grade| f64::from(grade) >= INFILTRATION_FROM)));
    set(dim::PSEUDOPARALYSIS, yes_no(risk.pseudoparalysis.map(|p| p.value)));
    set(dim::DELAMINATION, yes_no(operation.tear.delamination.map(|d| d.value)));
    let age = completed_years(record.patient.birth_date.value, record.operation_date());
    set(dim::AGE_OVER_70, u8::from(age > AGE_OVER));
    set(dim::SMOKING, yes_no(risk.smoking.map(|s| s.value)));
    set(dim::DIABETES, yes_no(risk.diabetes.map(|d| d.value)));
    set(dim::OTHER_SHOULDER, other_shoulder(record));
    let listed =
        also.other.as_ref().is_some_and(|other| other.value.iter().any(|procedure| !changes_nothing(&procedure.value)));
    set(dim::OTHER_PROCEDURE, u8::from(listed));
    set(dim::SLOWER, record.surgeon.slower.map_or(0, |slower| 1 + u8::from(slower.value)));
    set(
        dim::STIFF_SHOULDER,
        match record.surgeon.stiff_shoulder.map(|answer| answer.value) {
            None => 0,
            Some(StiffShoulder::AsComposed) => 1,
            Some(StiffShoulder::Loosened) => 2,
        },
    );
    set(dim::BEYOND_DELAYED, u8::from(record.surgeon.beyond_delayed.is_some()));

    Facts { classes, safe_arcs: safe_arcs(record) }
}

/// Whether a procedure of the free list is one that changes no plan.
pub(crate) fn changes_nothing(procedure: &str) -> bool {
    let procedure = procedure.trim().to_lowercase();
    ["microfracture", "subacromial decompression", "decompression", "acromioplasty"].contains(&procedure.as_str())
}

/// `no`, `yes`, `unknown`, which is the order of every such dimension.
fn yes_no(value: Option<bool>) -> u8 {
    value.map_or(2, u8::from)
}

/// A class, or the class `unknown` of the dimension.
fn or_unknown(of: DimensionId, class: Option<u8>) -> u8 {
    let unknown = || DIMENSIONS[usize::from(of.0)].unknown_class().unwrap_or(0);
    class.unwrap_or_else(unknown)
}

/// The class by the greatest of the three sizes.
///
/// Where neither mediolateral size nor retraction is recorded the tear may be
/// larger than its front-to-back size says, so the class is `unknown`, unless
/// that size alone already makes it a large one.
fn tear_size(record: &Record) -> u8 {
    let tear = &record.operation.tear;
    let written = [tear.anteroposterior, tear.mediolateral, tear.retraction];
    let greatest = written.iter().flatten().map(|size| size.value).max();
    let class = greatest.and_then(|size| {
        let width_known = tear.mediolateral.is_some() || tear.retraction.is_some();
        let depth_known = tear.anteroposterior.is_some();
        let large = size >= LARGE_FROM;
        ((width_known && depth_known) || large).then(|| size_class(size))
    });
    or_unknown(dim::TEAR_SIZE, class)
}

pub(crate) fn size_class(size: Millimeters) -> u8 {
    u8::from(size >= SMALL_BELOW) + u8::from(size >= LARGE_FROM) + u8::from(size > MASSIVE_ABOVE)
}

fn is_repaired(record: &Record, name: Tendon) -> bool {
    record.tendon(name).is_some_and(TendonEntry::is_repaired)
}

/// `not repaired`, `upper part, arthroscopic`, `complete or open`.
fn subscapularis(record: &Record) -> u8 {
    match record.tendon(Tendon::Subscapularis) {
        Some(tendon) if tendon.is_repaired() => {
            let upper = tendon.part.is_some_and(|part| part.value == Part::UpperPart);
            let portals = record.operation.approach.value == Approach::Arthroscopic;
            if upper && portals { 1 } else { 2 }
        }
        _ => 0,
    }
}

/// The worst over the repaired tendons: 1 where any is bad, 2 where none is
/// and one is not recorded (or nothing was repaired), else 0.
fn worst(record: &Record, bad: impl Fn(&TendonEntry) -> Option<bool>) -> u8 {
    let found: Vec<_> = record.repaired_tendons().map(bad).collect();
    if found.contains(&Some(true)) {
        1
    } else if found.contains(&None) || found.is_empty() {
        2
    } else {
        0
    }
}

fn biceps(biceps: Biceps) -> u8 {
    match biceps {
        Biceps::None => 0,
        Biceps::Tenotomy => 1,
        Biceps::Tenodesis => 2,
    }
}

fn labrum(labrum: Labrum) -> u8 {
    match labrum {
        Labrum::None => 0,
        Labrum::SuperiorRepair => 1,
        Labrum::AnteriorRepair => 2,
    }
}

fn capsular_release(record: &Record) -> u8 {
    match record.procedure() {
        Procedure::CapsularRelease => 1,
        Procedure::RotatorCuffRepair => yes_no(record.operation.also.capsular_release.map(|release| release.value)),
    }
}

/// A day of operation says `operated` even where the word is not written.
fn other_shoulder(record: &Record) -> u8 {
    let other = &record.other_arm;
    let class = match other.shoulder.map(|shoulder| shoulder.value) {
        Some(OtherShoulder::Operated) => Some(2),
        _ if other.operated_on.is_some() => Some(2),
        Some(OtherShoulder::Painful) => Some(1),
        Some(OtherShoulder::Sound) => Some(0),
        None => None,
    };
    or_unknown(dim::OTHER_SHOULDER, class)
}

fn safe_arcs(record: &Record) -> SafeArcs {
    record
        .operation
        .safe_arcs
        .iter()
        .map(|arc| SafeArc {
            movement: arc.movement.value,
            up_to: arc.up_to.value,
            until: arc.until.map(|until| until.value),
            index: arc.index,
        })
        .collect()
}
