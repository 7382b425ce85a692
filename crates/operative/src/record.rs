//! The checked record: every value with its place, what is not known left out.

use body::{Movement, Position, Side};
use diagnostic::{Span, Spanned};
use jiff::civil::Date;
use quantity::{Degrees, Kilograms, Millimeters, PostoperativeDay};

use crate::words::{
    Activity, Approach, BeyondDelayed, Biceps, Labrum, OtherShoulder, Part, Procedure, Repair, Sex, StiffShoulder,
    Tendon, Tension, Thickness, Tissue,
};

/// An operative record in which no two statements contradict each other.
///
/// Only [`read`](crate::read) makes one. `None` means *not recorded*, never *none*.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Record {
    /// Who was operated on.
    pub patient: Patient,
    /// What was found and done.
    pub operation: Operation,
    /// The arm that has to help.
    pub other_arm: OtherArm,
    /// What may slow healing.
    pub risk: Risk,
    /// The surgeon's answers to what an earlier prescription asked.
    pub surgeon: SurgeonAnswers,
}

/// Who was operated on.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub struct Patient {
    /// The practice's own label; at most 64 characters.
    pub id: Option<Spanned<String>>,
    /// The day of birth.
    pub birth_date: Spanned<Date>,
    /// Sex as recorded.
    pub sex: Option<Spanned<Sex>>,
    /// The arm the patient writes with.
    pub dominant_arm: Option<Spanned<Side>>,
    /// Height; only what an arm weighs and how high a hand comes depends on it.
    pub stature: Option<Spanned<Millimeters>>,
    /// Body mass; only what an arm weighs depends on it.
    pub mass: Option<Spanned<Kilograms>>,
}

/// What was found and done.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub struct Operation {
    /// The place of the `[operation]` table.
    pub span: Span,
    /// The day of surgery, day 0.
    pub date: Spanned<Date>,
    /// The operated side.
    pub side: Spanned<Side>,
    /// How the tendon was reached.
    pub approach: Spanned<Approach>,
    /// Written only where it is not a rotator cuff repair.
    pub procedure: Option<Spanned<Procedure>>,
    /// Whether the tendon had been repaired before.
    pub revision: Option<Spanned<bool>>,
    /// The tear as a whole.
    pub tear: Tear,
    /// The torn tendons, in the order of the text, each name once.
    pub tendons: Vec<TendonEntry>,
    /// Goutallier grades.
    pub fatty_infiltration: FattyInfiltration,
    /// What else was done.
    pub also: Also,
    /// What the surgeon saw was safe on the table.
    pub safe_arcs: Vec<SafeArcEntry>,
}

/// The size and kind of the tear.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[non_exhaustive]
pub struct Tear {
    /// Front to back; always there for a rotator cuff repair.
    pub anteroposterior: Option<Spanned<Millimeters>>,
    /// From the footprint toward the middle.
    pub mediolateral: Option<Spanned<Millimeters>>,
    /// How far the edge had drawn back.
    pub retraction: Option<Spanned<Millimeters>>,
    /// The Patte grade, 1 to 3.
    pub retraction_patte: Option<Spanned<u8>>,
    /// Whether the layers had come apart.
    pub delamination: Option<Spanned<bool>>,
}

/// One torn tendon.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub struct TendonEntry {
    /// Where it stands in the list of the text, from 0.
    pub index: u8,
    /// The place of the entry.
    pub span: Span,
    /// Which tendon.
    pub name: Spanned<Tendon>,
    /// How deep the tear went.
    pub thickness: Option<Spanned<Thickness>>,
    /// Subscapularis only.
    pub part: Option<Spanned<Part>>,
    /// How it was fixed.
    pub repair: Option<Spanned<Repair>>,
    /// How it looked and held.
    pub tissue: Option<Spanned<Tissue>>,
    /// The tension on it.
    pub tension: Option<Spanned<Tension>>,
}

impl TendonEntry {
    /// Whether it counts as repaired: everything but `not repaired`, also where nothing is recorded.
    pub fn is_repaired(&self) -> bool {
        self.repair.is_none_or(|repair| repair.value != Repair::NotRepaired)
    }

    /// The path of one of its keys.
    pub fn path(&self, key: &str) -> String {
        format!("operation.tendon[{}].{key}", self.index)
    }
}

/// A muscle that has a Goutallier grade.
pub type Muscle = Tendon;

/// The Goutallier grade of each muscle, 0 to 4.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[non_exhaustive]
pub struct FattyInfiltration {
    /// Supraspinatus.
    pub supraspinatus: Option<Spanned<u8>>,
    /// Infraspinatus.
    pub infraspinatus: Option<Spanned<u8>>,
    /// Teres minor.
    pub teres_minor: Option<Spanned<u8>>,
    /// Subscapularis.
    pub subscapularis: Option<Spanned<u8>>,
}

impl FattyInfiltration {
    /// The recorded grades, each with its path.
    pub fn recorded(&self) -> impl Iterator<Item = (&'static str, Spanned<u8>)> {
        [
            ("operation.fatty_infiltration.supraspinatus", self.supraspinatus),
            ("operation.fatty_infiltration.infraspinatus", self.infraspinatus),
            ("operation.fatty_infiltration.teres_minor", self.teres_minor),
            ("operation.fatty_infiltration.subscapularis", self.subscapularis),
        ]
        .into_iter()
        .filter_map(|(path, grade)| grade.map(|grade| (path, grade)))
    }
}

/// What else was done in the same operation.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[non_exhaustive]
pub struct Also {
    /// Long head of the biceps.
    pub biceps: Option<Spanned<Biceps>>,
    /// Labrum.
    pub labrum: Option<Spanned<Labrum>>,
    /// The outer end of the clavicle was taken off.
    pub distal_clavicle_excision: Option<Spanned<bool>>,
    /// Room was made under the acromion; changes no plan.
    pub subacromial_decompression: Option<Spanned<bool>>,
    /// The bone was pricked so that marrow comes out; changes no plan.
    pub microfracture: Option<Spanned<bool>>,
    /// A tight capsule was cut free beside the repair.
    pub capsular_release: Option<Spanned<bool>>,
    /// Anything else, in the surgeon's words; `None` where the key is left out.
    pub other: Option<Spanned<Vec<Spanned<String>>>>,
}

/// One arc that the surgeon saw was safe on the table.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub struct SafeArcEntry {
    /// Where it stands in the list of the text, from 0.
    pub index: u8,
    /// The place of the entry.
    pub span: Span,
    /// The movement.
    pub movement: Spanned<Movement>,
    /// The position it was seen in; the arc binds every position all the same.
    pub position: Option<Spanned<Position>>,
    /// How far.
    pub up_to: Spanned<Degrees>,
    /// The first day it no longer binds; left out = until active motion opens.
    pub until: Option<Spanned<PostoperativeDay>>,
}

/// The arm that has to help.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[non_exhaustive]
pub struct OtherArm {
    /// How its shoulder is.
    pub shoulder: Option<Spanned<OtherShoulder>>,
    /// When it was operated on.
    pub operated_on: Option<Spanned<Date>>,
}

/// What may slow healing.
#[derive(Debug, Clone, Default, PartialEq)]
#[non_exhaustive]
pub struct Risk {
    /// Diabetes.
    pub diabetes: Option<Spanned<bool>>,
    /// Smoking.
    pub smoking: Option<Spanned<bool>>,
    /// Bone density.
    pub bone_density_t_score: Option<Spanned<f64>>,
    /// A shoulder that was stiff before surgery.
    pub preoperative_stiffness: Option<Spanned<bool>>,
    /// How heavy work and leisure are.
    pub activity: Option<Spanned<Activity>>,
    /// The arm could not be raised before surgery.
    pub pseudoparalysis: Option<Spanned<bool>>,
}

/// The surgeon's answers to what an earlier prescription asked.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[non_exhaustive]
pub struct SurgeonAnswers {
    /// Whether to go slower.
    pub slower: Option<Spanned<bool>>,
    /// What to do about a stiff or released shoulder.
    pub stiff_shoulder: Option<Spanned<StiffShoulder>>,
    /// What to do where a finding asks for more than the slow plan.
    pub beyond_delayed: Option<Spanned<BeyondDelayed>>,
    /// Whether a safe arc that keeps the shoulder still for long is kept all the same.
    pub safe_arc_kept: Option<Spanned<bool>>,
}

impl Record {
    /// The day of surgery, day 0.
    pub fn operation_date(&self) -> Date {
        self.operation.date.value
    }

    /// The operated side.
    pub fn side(&self) -> Side {
        self.operation.side.value
    }

    /// What the operation was for; a rotator cuff repair where nothing else is written.
    pub fn procedure(&self) -> Procedure {
        self.operation.procedure.map_or(Procedure::RotatorCuffRepair, |procedure| procedure.value)
    }

    /// The day the other arm was operated on, if it was and the day is recorded.
    pub fn other_arm_operated_on(&self) -> Option<Date> {
        self.other_arm.operated_on.map(|date| date.value)
    }

    /// The arm the patient writes with.
    pub fn dominant_arm(&self) -> Option<Side> {
        self.patient.dominant_arm.map(|arm| arm.value)
    }

    /// The practice's own label of the patient.
    pub fn patient_id(&self) -> Option<&str> {
        self.patient.id.as_ref().map(|id| id.value.as_str())
    }

    /// Sex as recorded.
    pub fn sex(&self) -> Option<Sex> {
        self.patient.sex.map(|sex| sex.value)
    }

    /// The tendons that count as repaired.
    pub fn repaired_tendons(&self) -> impl Iterator<Item = &TendonEntry> {
        self.operation.tendons.iter().filter(|tendon| tendon.is_repaired())
    }

    /// The entry of a tendon, whether repaired or not.
    pub fn tendon(&self, name: Tendon) -> Option<&TendonEntry> {
        self.operation.tendons.iter().find(|tendon| tendon.name.value == name)
    }
}
