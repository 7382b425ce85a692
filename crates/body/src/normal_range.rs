//! What counts as usual for a motion: several references side by side, because they differ.

use evidence::{Entry, entry};

use crate::words::Movement;

/// A motion of the arm for which references give a usual range.
///
/// # Units and shape
/// Degrees, as a goniometer measures. Elbow and forearm carry the joint in their name.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum UsualMotion {
    /// Shoulder: straight ahead.
    ForwardElevation,
    /// Shoulder: straight back.
    Extension,
    /// Shoulder: to the side.
    Abduction,
    /// Shoulder: turned inward.
    InternalRotation,
    /// Shoulder: turned outward.
    ExternalRotation,
    /// Elbow bent.
    ElbowFlexion,
    /// Elbow straightened; negative is short of straight.
    ElbowExtension,
    /// Palm down.
    Pronation,
    /// Palm up.
    Supination,
}

/// How references name themselves in ids of the table of evidence, in the order they are shown.
const REFERENCES: [&str; 11] = [
    "men-to-54",
    "adults-18-to-55",
    "elders-65-to-85",
    "women-18-to-59",
    "surgeons-handbook",
    "impairment-guide",
    "men-to-54-retold",
    "surgeons-handbook-retold",
    "impairment-guide-retold",
    "active-men",
    "active-women",
];

impl UsualMotion {
    /// Every motion.
    pub const ALL: [Self; 9] = [
        Self::ForwardElevation,
        Self::Extension,
        Self::Abduction,
        Self::InternalRotation,
        Self::ExternalRotation,
        Self::ElbowFlexion,
        Self::ElbowExtension,
        Self::Pronation,
        Self::Supination,
    ];

    /// The name that its entries of the table start with, after `normal-`.
    pub const fn name(self) -> &'static str {
        match self {
            Self::ForwardElevation => "forward-elevation",
            Self::Extension => "extension",
            Self::Abduction => "abduction",
            Self::InternalRotation => "internal-rotation",
            Self::ExternalRotation => "external-rotation",
            Self::ElbowFlexion => "elbow-flexion",
            Self::ElbowExtension => "elbow-extension",
            Self::Pronation => "pronation",
            Self::Supination => "supination",
        }
    }

    /// The motion of the shoulder that a movement is.
    pub const fn of_shoulder(movement: Movement) -> Option<Self> {
        match movement {
            Movement::ForwardElevation => Some(Self::ForwardElevation),
            Movement::Extension => Some(Self::Extension),
            Movement::Abduction => Some(Self::Abduction),
            Movement::InternalRotation => Some(Self::InternalRotation),
            Movement::ExternalRotation => Some(Self::ExternalRotation),
            _ => None,
        }
    }

    /// What each reference gives, each with its edition in its source; never one number.
    ///
    /// # Method
    /// The references contradict each other: by age and sex of who was measured, by edition, and one page retells a
    /// handbook with other numbers. For one patient the other arm is the better reference.
    ///
    /// # Source
    /// The entries `normal-…` of the topic `measurement`.
    ///
    /// # Example
    /// ```
    /// use body::UsualMotion;
    /// let usual: Vec<f64> = UsualMotion::ExternalRotation.references().map(|entry| entry.number()).collect();
    /// assert!(usual.contains(&90.0) && usual.contains(&60.0));
    /// ```
    pub fn references(self) -> impl Iterator<Item = &'static Entry> {
        REFERENCES.iter().filter_map(move |reference| entry(&format!("normal-{}-{reference}", self.name())))
    }

    /// The least and the greatest number among the references, which is how far they disagree.
    pub fn disagreement(self) -> (f64, f64) {
        let ends = |(least, most): (f64, f64), entry: &Entry| (least.min(entry.number()), most.max(entry.number()));
        self.references().fold((f64::INFINITY, f64::NEG_INFINITY), ends)
    }

    /// The motion that an id of the table is a reference of, also `normal-` and its name alone.
    pub fn of_id(id: &str) -> Option<Self> {
        let rest = id.strip_prefix("normal-")?;
        Self::ALL.into_iter().find(|motion| match rest.strip_prefix(motion.name()) {
            Some("") => true,
            Some(after) => REFERENCES.iter().any(|reference| after.strip_prefix('-') == Some(reference)),
            None => false,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The handbook's appendix, 5th edition, table A.1, as it was read: its six columns in order.
    const HANDBOOK: [(UsualMotion, [Option<f64>; 6]); 9] = {
        const fn all(row: [i32; 6]) -> [Option<f64>; 6] {
            let [a, b, c, d, e, f] = row;
            [Some(a as f64), Some(b as f64), Some(c as f64), Some(d as f64), Some(e as f64), Some(f as f64)]
        }
        [
            (UsualMotion::ForwardElevation, all([167, 156, 165, 188, 180, 180])),
            (UsualMotion::Extension, [Some(62.0), None, Some(44.0), Some(70.0), Some(60.0), Some(50.0)]),
            (UsualMotion::Abduction, all([184, 168, 165, 188, 180, 170])),
            (UsualMotion::InternalRotation, all([69, 49, 62, 94, 70, 80])),
            (UsualMotion::ExternalRotation, all([104, 84, 81, 108, 90, 60])),
            (UsualMotion::ElbowFlexion, all([143, 145, 143, 149, 150, 140])),
            (UsualMotion::ElbowExtension, all([1, 0, -4, 2, 0, 0])),
            (UsualMotion::Pronation, all([76, 84, 71, 92, 80, 80])),
            (UsualMotion::Supination, all([82, 77, 74, 96, 80, 80])),
        ]
    };

    #[test]
    fn every_cell_of_the_handbook_is_there_with_its_edition() {
        for (motion, row) in HANDBOOK {
            for (reference, cell) in REFERENCES.iter().zip(row) {
                let found = entry(&format!("normal-{}-{reference}", motion.name()));
                assert_eq!(found.map(|entry| entry.number()), cell, "{motion:?} {reference}");
                for key in found.into_iter().flat_map(|entry| entry.sources) {
                    let source = evidence::source(key).expect("in the table");
                    assert!(source.shown_as.contains("5th edition, 2016"), "{}", source.shown_as);
                }
            }
        }
    }

    #[test]
    fn conflicts_are_shown_and_not_resolved() {
        // The same guide: at least 180 in the handbook, 150 on a teaching page.
        let guide: Vec<f64> = UsualMotion::ForwardElevation
            .references()
            .filter(|entry| entry.id.contains("impairment-guide"))
            .map(|entry| entry.number())
            .collect();
        assert_eq!(guide, [180.0, 150.0]);
        assert_eq!(UsualMotion::ForwardElevation.disagreement(), (150.0, 188.0));
        assert_eq!(UsualMotion::ExternalRotation.disagreement(), (60.0, 108.0));
    }

    #[test]
    fn every_entry_of_the_table_is_found_from_its_motion_and_back() {
        let named: Vec<&str> = UsualMotion::ALL.iter().flat_map(|motion| motion.references()).map(|e| e.id).collect();
        let in_table: Vec<&str> =
            evidence::ENTRIES.iter().filter(|entry| entry.id.starts_with("normal-")).map(|entry| entry.id).collect();
        assert_eq!(named.len(), in_table.len());
        for id in in_table {
            let motion = UsualMotion::of_id(id).unwrap_or_else(|| panic!("{id} is of no motion"));
            assert!(motion.references().any(|entry| entry.id == id), "{id}");
        }
        assert_eq!(UsualMotion::of_id("normal-extension"), Some(UsualMotion::Extension));
        assert_eq!(UsualMotion::of_id("normal-elbow-extension"), Some(UsualMotion::ElbowExtension));
        assert_eq!(UsualMotion::of_id("normal-wrist"), None);
    }
}
