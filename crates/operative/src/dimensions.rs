//! A table: every dimension, its classes, and why each class ends where it ends.

use crate::dimension::{Class, Dimension, DimensionId, Order, Unknown};

/// Writes the table and gives each row its name in [`dim`].
macro_rules! dimensions {
    ($($(#[$doc:meta])* $id:ident = $name:literal, $order:expr, $unknown:expr, [$($class:literal / $rank:literal: $because:literal,)+];)+) => {
        /// The dimensions by name.
        pub mod dim {
            use crate::dimension::DimensionId;

            #[allow(non_camel_case_types, clippy::upper_case_acronyms, reason = "only counts the rows of the table")]
            #[repr(u8)]
            enum Place { $($id,)+ }

            $($(#[$doc])* pub const $id: DimensionId = DimensionId(Place::$id as u8);)+
        }

        const TABLE: &[Dimension] = &[$(Dimension {
            name: $name,
            classes: &[$(Class { name: $class, rank: $rank, because: $because },)+],
            unknown: $unknown,
            order: $order,
        },)+];
    };
}

const YES: Unknown = Unknown::CountsAs(&["yes"]);

dimensions! {
    /// What the operation was for.
    PROCEDURE = "procedure", Order::Unordered, Unknown::Never, [
        "rotator cuff repair" / 0: "a tendon fixed to bone has to heal before it is loaded",
        "capsular release" / 0: "nothing was fixed, and motion is what would be lost",
    ];
    /// The greatest of anteroposterior size, mediolateral size and retraction.
    TEAR_SIZE = "tear size", Order::Total, Unknown::CountsAs(&["under 10 mm", "10 to under 30 mm", "30 to 50 mm"]), [
        "under 10 mm" / 0: "the smallest class of the size classification; the sling of the early-passive choice is shorter here",
        "10 to under 30 mm" / 1: "still below the size from which published sheets protect longer",
        "30 to 50 mm" / 2: "from 30 mm published sheets wait longer; the border itself is taken on the safer side",
        "over 50 mm" / 3: "the largest class; early motion did worse here, so loosening is confirmed twice", // not medical: rank
        "unknown" / 3: "neither mediolateral size nor retraction is recorded, so it counts as 30 mm or more", // not medical: rank
    ];
    /// How many tendons count as repaired.
    REPAIRED_TENDONS = "repaired tendons", Order::Total, Unknown::Never, [
        "one" / 0: "one tendon carries the repair",
        "more than one" / 1: "more than one repaired tendon is treated as a large tear",
    ];
    /// Whether the infraspinatus was repaired.
    INFRASPINATUS = "infraspinatus", Order::Total, Unknown::Never, [
        "not repaired" / 0: "the tendon is not listed as repaired",
        "repaired" / 1: "turning outward works this tendon, turning inward stretches it",
    ];
    /// Whether the teres minor was repaired.
    TERES_MINOR = "teres minor", Order::Total, Unknown::Never, [
        "not repaired" / 0: "the tendon is not listed as repaired",
        "repaired" / 1: "turning outward works this tendon, turning inward stretches it",
    ];
    /// Whether and how the subscapularis was repaired.
    SUBSCAPULARIS = "subscapularis", Order::Total, Unknown::Never, [
        "not repaired" / 0: "the tendon is not listed as repaired",
        "upper part, arthroscopic" / 1: "the lower part still holds, and no incision crossed the tendon",
        "complete or open" / 2: "the whole tendon, or any part through an incision; a part not recorded counts as the whole",
    ];
    /// The worst tissue over the repaired tendons.
    TISSUE = "tissue", Order::Total, Unknown::CountsAs(&["poor"]), [
        "good or fair" / 0: "fair tissue changes no plan",
        "poor" / 1: "poor tissue holds a suture badly",
        "unknown" / 2: "not recorded for every repaired tendon, so it counts as poor",
    ];
    /// The highest tension over the repaired tendons.
    TENSION = "tension", Order::Total, Unknown::CountsAs(&["high"]), [
        "low or moderate" / 0: "moderate tension changes no plan",
        "high" / 1: "a repair under high tension has less in reserve",
        "unknown" / 2: "not recorded for every repaired tendon, so it counts as high",
    ];
    /// Whether every repaired tendon reached its footprint.
    REPAIR_CONSTRUCT = "repair construct", Order::Total, Unknown::CountsAs(&["partial repair"]), [
        "complete" / 0: "every repaired tendon reaches its footprint",
        "partial repair" / 1: "what could not be closed loads what could",
        "unknown" / 2: "not recorded for every tendon, so it counts as a partial repair",
    ];
    /// Whether the tendon had been repaired before.
    REVISION = "revision", Order::Total, YES, [
        "no" / 0: "a first repair",
        "yes" / 1: "a repair that is done again",
        "unknown" / 2: "not recorded, so it counts as a revision",
    ];
    /// The long head of the biceps.
    BICEPS = "biceps", Order::Partial, Unknown::CountsAs(&["tenotomy", "tenodesis"]), [
        "none" / 0: "nothing was done to it",
        "tenotomy" / 1: "cut and left to scar",
        "tenodesis" / 1: "cut and fixed, and the fixation has to heal",
        "unknown" / 2: "not recorded, so it counts as cut and as fixed",
    ];
    /// The labrum.
    LABRUM = "labrum", Order::Partial, Unknown::CountsAs(&["superior repair", "anterior repair"]), [
        "none" / 0: "nothing was done to it",
        "superior repair" / 1: "the biceps pulls on it",
        "anterior repair" / 1: "turning outward stretches it",
        "unknown" / 2: "not recorded, so it counts as repaired above and in front",
    ];
    /// Whether the outer end of the clavicle was taken off.
    DISTAL_CLAVICLE_EXCISION = "distal clavicle excision", Order::Total, YES, [
        "no" / 0: "the joint was left alone",
        "yes" / 1: "loaded reaching across and behind presses on the joint",
        "unknown" / 2: "not recorded, so it counts as done",
    ];
    /// Whether a tight capsule was cut free.
    CAPSULAR_RELEASE = "capsular release", Order::Total, YES, [
        "no" / 0: "the capsule was left alone",
        "yes" / 1: "what was released may tighten again while the repair is protected",
        "unknown" / 2: "not recorded, so it counts as done",
    ];
    /// Whether the shoulder was stiff before surgery.
    PREOPERATIVE_STIFFNESS = "preoperative stiffness", Order::Total, YES, [
        "no" / 0: "the shoulder was not stiff",
        "yes" / 1: "a shoulder that was stiff is likelier to be stiff again",
        "unknown" / 2: "not recorded, so it counts as stiff",
    ];
    /// The Patte grade.
    RETRACTION_GRADE = "retraction grade", Order::Total, Unknown::OnItsOwn, [
        "below 3" / 0: "the edge had not drawn back to the socket",
        "3" / 1: "the edge had drawn back to the socket; an expert survey goes slower",
        "unknown" / 1: "not recorded; named to the surgeon and changes nothing by itself",
    ];
    /// The greatest recorded Goutallier grade.
    FATTY_INFILTRATION = "fatty infiltration", Order::Total, Unknown::OnItsOwn, [
        "below 3" / 0: "more muscle than fat in every muscle that was graded",
        "3 or more" / 1: "as much fat as muscle, or more, in one of them; an expert survey goes slower",
        "unknown" / 1: "no muscle was graded; named to the surgeon and changes nothing by itself",
    ];
    /// Whether the arm could not be raised before surgery.
    PSEUDOPARALYSIS = "pseudoparalysis", Order::Total, Unknown::OnItsOwn, [
        "no" / 0: "the arm could be raised",
        "yes" / 1: "an expert survey goes slower",
        "unknown" / 1: "not recorded; named to the surgeon and changes nothing by itself",
    ];
    /// Whether the layers of the tendon had come apart.
    DELAMINATION = "delamination", Order::Total, Unknown::OnItsOwn, [
        "no" / 0: "the layers were one",
        "yes" / 1: "an expert survey goes slower",
        "unknown" / 1: "not recorded; named to the surgeon and changes nothing by itself",
    ];
    /// Age in completed years on the day of surgery.
    AGE_OVER_70 = "age over 70", Order::Total, Unknown::Never, [
        "no" / 0: "70 itself does not count",
        "yes" / 1: "an expert survey goes slower for older patients; the number is that of the healing index",
    ];
    /// Smoking.
    SMOKING = "smoking", Order::Total, Unknown::OnItsOwn, [
        "no" / 0: "does not smoke",
        "yes" / 1: "an expert survey goes slower",
        "unknown" / 1: "not recorded; named to the surgeon and changes nothing by itself",
    ];
    /// Diabetes.
    DIABETES = "diabetes", Order::Total, Unknown::OnItsOwn, [
        "no" / 0: "no diabetes",
        "yes" / 1: "an expert survey goes slower, and stiffness is likelier too",
        "unknown" / 1: "not recorded; named to the surgeon and changes nothing by itself",
    ];
    /// The arm that has to help.
    OTHER_SHOULDER = "other shoulder", Order::Total, Unknown::CountsAs(&["painful"]), [
        "sound" / 0: "it can drive a stick or a pulley",
        "painful" / 1: "it should not have to work for the operated arm",
        "operated" / 2: "it has limits of its own",
        "unknown" / 2: "not recorded, so it counts as painful",
    ];
    /// Anything done for which no protocol is shipped.
    OTHER_PROCEDURE = "other procedure", Order::Total, Unknown::Never, [
        "none" / 0: "nothing is listed; a key that is left out means none, and a note says so",
        "present" / 1: "no shipped protocol covers it",
    ];
    /// The surgeon's answer to the question whether to go slower.
    SLOWER = "slower", Order::Unordered, Unknown::Never, [
        "not answered" / 0: "the surgeon has not answered",
        "no" / 0: "the surgeon keeps the plan",
        "yes" / 0: "the surgeon goes slower",
    ];
    /// The surgeon's answer for a stiff or released shoulder.
    STIFF_SHOULDER = "stiff shoulder", Order::Unordered, Unknown::Never, [
        "not answered" / 0: "the surgeon has not answered",
        "as composed" / 0: "the surgeon keeps the plan as it was composed",
        "loosened" / 0: "the surgeon loosens passive motion, and the settings name how",
    ];
    /// The surgeon's answer where a finding asks for more than the slow plan.
    BEYOND_DELAYED = "beyond delayed", Order::Unordered, Unknown::Never, [
        "not answered" / 0: "the surgeon has not answered",
        "as composed" / 0: "the surgeon keeps the plan as it was composed",
    ];
}

/// How many dimensions there are.
pub const DIMENSION_COUNT: usize = TABLE.len();

/// Every dimension; a [`DimensionId`] is a place in this list.
pub static DIMENSIONS: &[Dimension] = TABLE;

/// The dimension of this name.
pub fn dimension(name: &str) -> Option<DimensionId> {
    (0..).zip(DIMENSIONS).find(|(_, dimension)| dimension.name == name).map(|(index, _)| DimensionId(index))
}

impl DimensionId {
    /// The dimension itself, if the number is one.
    pub fn get(self) -> Option<&'static Dimension> {
        DIMENSIONS.get(usize::from(self.0))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(mask: Option<u16>, of: DimensionId) -> Option<Vec<&'static str>> {
        let classes = of.get().expect("a dimension").classes;
        mask.map(|mask| (0..).zip(classes).filter(|(i, _)| mask & (1 << i) != 0).map(|(_, c)| c.name).collect())
    }

    fn at_least(of: DimensionId, class: &str) -> Option<Vec<&'static str>> {
        names(of.get()?.at_least(class), of)
    }

    fn has(of: DimensionId, class: &str) -> Option<Vec<&'static str>> {
        names(of.get()?.has(class), of)
    }

    #[test]
    fn what_counts_as_a_class_satisfies_its_conditions() {
        assert_eq!(at_least(dim::TEAR_SIZE, "30 to 50 mm"), Some(vec!["30 to 50 mm", "over 50 mm", "unknown"]));
        assert_eq!(at_least(dim::TEAR_SIZE, "over 50 mm"), Some(vec!["over 50 mm"]));
        assert_eq!(has(dim::TEAR_SIZE, "under 10 mm"), Some(vec!["under 10 mm", "unknown"]));
        assert_eq!(has(dim::BICEPS, "tenodesis"), Some(vec!["tenodesis", "unknown"]));
        assert_eq!(has(dim::REVISION, "no"), Some(vec!["no"]));
        assert_eq!(at_least(dim::REVISION, "no"), Some(vec!["no", "yes", "unknown"]));
        assert_eq!(at_least(dim::OTHER_SHOULDER, "operated"), Some(vec!["operated"]));
    }

    #[test]
    fn an_unknown_on_its_own_satisfies_only_its_name() {
        assert_eq!(has(dim::SMOKING, "yes"), Some(vec!["yes"]));
        assert_eq!(at_least(dim::SMOKING, "yes"), Some(vec!["yes"]));
        assert_eq!(has(dim::SMOKING, "unknown"), Some(vec!["unknown"]));
    }

    #[test]
    fn a_question_that_has_no_answer_is_refused() {
        assert_eq!(at_least(dim::BICEPS, "tenotomy"), None);
        assert_eq!(at_least(dim::PROCEDURE, "capsular release"), None);
        assert_eq!(at_least(dim::TISSUE, "unknown"), None);
        assert_eq!(has(dim::TISSUE, "fair"), None);
    }

    #[test]
    fn the_table_is_sound() {
        assert_eq!(DIMENSION_COUNT, 27);
        for dimension in DIMENSIONS {
            let mut seen = std::collections::HashSet::new();
            for class in dimension.classes {
                assert!(seen.insert(class.name), "{} twice in {}", class.name, dimension.name);
                assert!(!class.because.is_empty());
            }
            let last = dimension.classes.last().map(|class| class.name);
            assert_eq!(last == Some("unknown"), dimension.unknown != Unknown::Never, "{}", dimension.name);
            if let Unknown::CountsAs(counted) = dimension.unknown {
                assert!(counted.iter().all(|name| dimension.class(name).is_some()), "{}", dimension.name);
            }
            assert_eq!(dimension.classes[0].rank, 0, "{}", dimension.name);
        }
        for (index, row) in DIMENSIONS.iter().enumerate() {
            assert_eq!(dimension(row.name).map(|id| usize::from(id.0)), Some(index));
        }
    }
}
