//! Plain questions to the facts, so that nothing outside this crate names a finding.

use body::Joint;

use crate::dimension::DimensionId;
use crate::dimensions::{DIMENSIONS, dim};
use crate::facts::{Facts, changes_nothing, size_class};
use crate::record::Record;

/// Muscles whose measured activity bounds the early exercises.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ProtectedMuscles {
    /// Whether the muscle behind the joint was repaired, so that its activity counts as well.
    pub infraspinatus: bool,
}

impl Facts {
    /// Whether the other arm can be asked to help: only where it is known to be sound.
    pub fn other_arm_helps(&self) -> bool {
        self.class_name(dim::OTHER_SHOULDER) == "sound"
    }

    /// Whether the other shoulder was operated on too, so that its own plan has to be asked.
    pub fn other_arm_operated(&self) -> bool {
        self.class_name(dim::OTHER_SHOULDER) == "operated"
    }

    /// The repaired muscles, beside the supraspinatus, whose activity is looked at.
    pub fn protected(&self) -> ProtectedMuscles {
        ProtectedMuscles { infraspinatus: self.class(dim::INFRASPINATUS) > 0 }
    }

    /// Whether the muscles of a joint are what the operation protects.
    pub const fn protects(joint: Joint) -> bool {
        matches!(joint, Joint::Shoulder | Joint::Scapula)
    }
}

impl Record {
    /// What was done and changes no plan, to be said so.
    pub fn without_effect(&self) -> Vec<&str> {
        let also = &self.operation.also;
        let mut done = Vec::new();
        if also.subacromial_decompression.is_some_and(|done| done.value) {
            done.push("subacromial decompression");
        }
        if also.microfracture.is_some_and(|done| done.value) {
            done.push("microfracture");
        }
        let listed = also.other.iter().flat_map(|other| &other.value);
        done.extend(listed.map(|other| other.value.as_str()).filter(|other| changes_nothing(other)));
        done.dedup();
        done
    }

    /// The dimensions that more of the record could settle, each with the classes it could come to.
    ///
    /// # Method
    /// Not the surgeon's answers, and not what has no meaning for the record. A
    /// class that the recorded part already rules out is left out: a tear of
    /// 18 mm from front to back cannot become a small one.
    pub fn unsettled(&self) -> Vec<(DimensionId, Vec<u8>)> {
        let answers = [dim::SLOWER, dim::STIFF_SHOULDER, dim::BEYOND_DELAYED];
        (0_u8..)
            .zip(DIMENSIONS)
            .map(|(place, dimension)| (DimensionId(place), dimension))
            .filter(|(id, _)| !answers.contains(id) && self.applies(*id) && !self.missing(*id).is_empty())
            .map(|(id, dimension)| {
                let least = match id {
                    dim::TEAR_SIZE => {
                        let tear = &self.operation.tear;
                        let written = [tear.anteroposterior, tear.mediolateral, tear.retraction];
                        written.iter().flatten().map(|size| size_class(size.value)).max().unwrap_or(0)
                    }
                    dim::SUBSCAPULARIS => 1,
                    _ => 0,
                };
                let unknown = dimension.unknown_class();
                let classes = (0_u8..).zip(dimension.classes).map(|(class, _)| class);
                (id, classes.filter(|class| Some(*class) != unknown && *class >= least).collect())
            })
            .collect()
    }
}
