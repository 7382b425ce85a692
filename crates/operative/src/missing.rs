//! What is not recorded, and how to ask for it.

use crate::dimension::DimensionId;
use crate::dimensions::dim;
use crate::record::{Record, TendonEntry};
use crate::words::{Procedure, Tendon};

/// One key that is not written and that would settle a dimension.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Missing {
    /// The path from the top of the record.
    pub path: String,
    /// The question to the surgeon, in plain words.
    pub text: String,
}

fn ask(path: impl Into<String>, text: impl Into<String>) -> Missing {
    Missing { path: path.into(), text: text.into() }
}

impl Record {
    /// Whether a dimension has a meaning for this record: a capsular release has no repair to describe.
    pub fn applies(&self, to: DimensionId) -> bool {
        let of_a_repair = [
            dim::TEAR_SIZE,
            dim::TISSUE,
            dim::TENSION,
            dim::REPAIR_CONSTRUCT,
            dim::RETRACTION_GRADE,
            dim::DELAMINATION,
            dim::FATTY_INFILTRATION,
        ];
        self.procedure() == Procedure::RotatorCuffRepair || !of_a_repair.contains(&to)
    }

    /// The paths that would have to be written to settle a dimension, each with a question.
    ///
    /// # Method
    /// Empty where everything the class rests on is recorded, and where the
    /// dimension has no meaning for the record. Where either of two keys would
    /// do (mediolateral size or retraction; any muscle's grade) both are named.
    /// The answers of the surgeon count as missing until they are given.
    pub fn missing(&self, of: DimensionId) -> Vec<Missing> {
        if !self.applies(of) {
            return Vec::new();
        }
        let operation = &self.operation;
        let (also, risk, tear) = (&operation.also, &self.risk, &operation.tear);
        let one = |recorded: bool, path: &str, text: &str| if recorded { Vec::new() } else { vec![ask(path, text)] };
        match of {
            dim::TEAR_SIZE => self.missing_size(),
            dim::REPAIRED_TENDONS | dim::REPAIR_CONSTRUCT => {
                self.of_tendons(|t| t.repair.is_some(), "repair", |name| format!("how was the {name} fixed?"))
            }
            dim::SUBSCAPULARIS => self
                .tendon(Tendon::Subscapularis)
                .filter(|tendon| tendon.is_repaired() && tendon.part.is_none())
                .map(|tendon| ask(tendon.path("part"), "was the upper part of the subscapularis torn, or all of it?"))
                .into_iter()
                .collect(),
            dim::TISSUE => self.of_tendons(
                |t| t.tissue.is_some(),
                "tissue",
                |name| format!("how good was the tissue of the {name}?"),
            ),
            dim::TENSION => self.of_tendons(
                |t| t.tension.is_some(),
                "tension",
                |name| format!("under how much tension was the {name} fixed?"),
            ),
            dim::REVISION => {
                one(operation.revision.is_some(), "operation.revision", "had the tendon been repaired before?")
            }
            dim::BICEPS => {
                one(also.biceps.is_some(), "operation.also.biceps", "what was done to the long head of the biceps?")
            }
            dim::LABRUM => one(also.labrum.is_some(), "operation.also.labrum", "what was done to the labrum?"),
            dim::DISTAL_CLAVICLE_EXCISION => one(
                also.distal_clavicle_excision.is_some(),
                "operation.also.distal_clavicle_excision",
                "was the outer end of the clavicle taken off?",
            ),
            dim::CAPSULAR_RELEASE => one(
                also.capsular_release.is_some() || self.procedure() == Procedure::CapsularRelease,
                "operation.also.capsular_release",
                "was the capsule released?",
            ),
            dim::PREOPERATIVE_STIFFNESS => one(
                risk.preoperative_stiffness.is_some(),
                "risk.preoperative_stiffness",
                "was the shoulder stiff before surgery?",
            ),
            dim::RETRACTION_GRADE => one(
                tear.retraction_patte.is_some(),
                "operation.tear.retraction_patte",
                "which Patte grade did the retraction have?",
            ),
            dim::FATTY_INFILTRATION => self.missing_grades(),
            dim::PSEUDOPARALYSIS => one(
                risk.pseudoparalysis.is_some(),
                "risk.pseudoparalysis",
                "was the patient unable to raise the arm before surgery?",
            ),
            dim::DELAMINATION => one(
                tear.delamination.is_some(),
                "operation.tear.delamination",
                "had the layers of the tendon come apart?",
            ),
            dim::SMOKING => one(risk.smoking.is_some(), "risk.smoking", "does the patient smoke?"),
            dim::DIABETES => one(risk.diabetes.is_some(), "risk.diabetes", "does the patient have diabetes?"),
            dim::OTHER_SHOULDER => one(
                self.other_arm.shoulder.is_some() || self.other_arm.operated_on.is_some(),
                "other_arm.shoulder",
                "is the other shoulder sound enough to help?",
            ),
            dim::SLOWER => {
                one(self.surgeon.slower.is_some(), "surgeon.slower", "should this patient go slower than the plan?")
            }
            dim::STIFF_SHOULDER => one(
                self.surgeon.stiff_shoulder.is_some(),
                "surgeon.stiff_shoulder",
                "keep the plan as composed, or loosen passive motion by the settings?",
            ),
            dim::BEYOND_DELAYED => one(
                self.surgeon.beyond_delayed.is_some(),
                "surgeon.beyond_delayed",
                "does the slow plan protect this repair enough as composed?",
            ),
            _ => Vec::new(),
        }
    }

    fn missing_size(&self) -> Vec<Missing> {
        // One of the two stands for the other in the class, and still the other could be the greater.
        let tear = &self.operation.tear;
        let mut asked = Vec::new();
        if tear.mediolateral.is_none() {
            asked.push(ask(
                "operation.tear.mediolateral",
                "how wide was the tear, from the footprint toward the middle?",
            ));
        }
        if tear.retraction.is_none() {
            asked.push(ask("operation.tear.retraction", "how far had the edge of the tendon drawn back?"));
        }
        asked
    }

    /// One question for each repaired tendon that lacks a key.
    fn of_tendons(
        &self,
        is_recorded: impl Fn(&TendonEntry) -> bool,
        key: &str,
        text: impl Fn(&str) -> String,
    ) -> Vec<Missing> {
        self.repaired_tendons()
            .filter(|tendon| !is_recorded(tendon))
            .map(|tendon| ask(tendon.path(key), text(tendon.name.value.name())))
            .collect()
    }

    /// Where no muscle is graded: the infraspinatus, which the healing index reads too, then the torn ones.
    fn missing_grades(&self) -> Vec<Missing> {
        if self.operation.fatty_infiltration.recorded().next().is_some() {
            return Vec::new();
        }
        let torn = self.operation.tendons.iter().map(|tendon| tendon.name.value);
        std::iter::once(Tendon::Infraspinatus)
            .chain(torn.filter(|name| *name != Tendon::Infraspinatus))
            .map(|name| {
                let key = name.name().replace(' ', "_");
                ask(
                    format!("operation.fatty_infiltration.{key}"),
                    format!("which Goutallier grade did the {name} have?"),
                )
            })
            .collect()
    }
}

/// Every optional path that is not written, in the order of the record.
///
/// Not among them: the patient's label, safe arcs and `also.other` (absence
/// means none), the surgeon's answers (absence means not answered), and the
/// position of a safe arc (it binds every position).
pub(crate) fn optional_paths(record: &Record) -> Vec<String> {
    let operation = &record.operation;
    let (tear, also, risk) = (&operation.tear, &operation.also, &record.risk);
    let repair = record.procedure() == Procedure::RotatorCuffRepair;
    let mut paths: Vec<String> = Vec::new();
    let mut note = |recorded: bool, path: String| {
        if !recorded {
            paths.push(path);
        }
    };
    note(record.patient.sex.is_some(), "patient.sex".into());
    note(record.patient.dominant_arm.is_some(), "patient.dominant_arm".into());
    note(operation.revision.is_some(), "operation.revision".into());
    if repair {
        note(tear.mediolateral.is_some(), "operation.tear.mediolateral".into());
        note(tear.retraction.is_some(), "operation.tear.retraction".into());
        note(tear.retraction_patte.is_some(), "operation.tear.retraction_patte".into());
        note(tear.delamination.is_some(), "operation.tear.delamination".into());
    }
    for tendon in &operation.tendons {
        note(tendon.thickness.is_some(), tendon.path("thickness"));
        note(tendon.repair.is_some(), tendon.path("repair"));
        if tendon.is_repaired() {
            let needs_part = tendon.name.value == Tendon::Subscapularis;
            note(!needs_part || tendon.part.is_some(), tendon.path("part"));
            note(tendon.tissue.is_some(), tendon.path("tissue"));
            note(tendon.tension.is_some(), tendon.path("tension"));
        }
    }
    if repair {
        let graded = operation.fatty_infiltration.infraspinatus.is_some();
        note(graded, "operation.fatty_infiltration.infraspinatus".into());
    }
    note(also.biceps.is_some(), "operation.also.biceps".into());
    note(also.labrum.is_some(), "operation.also.labrum".into());
    note(also.distal_clavicle_excision.is_some(), "operation.also.distal_clavicle_excision".into());
    note(also.subacromial_decompression.is_some(), "operation.also.subacromial_decompression".into());
    note(also.capsular_release.is_some() || !repair, "operation.also.capsular_release".into());
    note(record.other_arm.shoulder.is_some() || record.other_arm.operated_on.is_some(), "other_arm.shoulder".into());
    note(risk.diabetes.is_some(), "risk.diabetes".into());
    note(risk.smoking.is_some(), "risk.smoking".into());
    note(risk.bone_density_t_score.is_some(), "risk.bone_density_t_score".into());
    note(risk.preoperative_stiffness.is_some(), "risk.preoperative_stiffness".into());
    note(risk.activity.is_some(), "risk.activity".into());
    note(risk.pseudoparalysis.is_some(), "risk.pseudoparalysis".into());
    paths
}
