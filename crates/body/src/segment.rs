//! Tables of segments: what the parts of an arm weigh, and where their weight acts.

use evidence::{Entry, ids};

use crate::words;

words! {
    /// A published table of segments.
    SegmentTable {
        /// Young men, scanned alive.
        Men = "men",
        /// Young women, scanned alive.
        Women = "women",
        /// Cadavers of men; the handbook's table, kept as a check.
        Cadavers = "cadavers",
    }
}

/// One segment of the arm as a table gives it.
///
/// # Units and shape
/// Mass as a part of body mass; lengths as parts of stature or of the segment's own counted length, from the upper
/// joint.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Segment {
    pub(crate) mass: f64,
    /// From this joint to the next, of stature.
    pub(crate) length: f64,
    /// From the upper joint to the center of mass, of stature.
    pub(crate) center: f64,
    /// Radius of gyration about a transverse axis through the center of mass, of stature.
    pub(crate) gyration: f64,
}

/// The three segments of the arm.
#[derive(Debug, Clone, Copy)]
pub(crate) struct ArmSegments {
    pub(crate) upper_arm: Segment,
    pub(crate) forearm: Segment,
    pub(crate) hand: Segment,
}

impl SegmentTable {
    /// The arm by this table.
    ///
    /// # Method
    /// Masses, centers and radii are the table's own; lengths between joints are the published parts of stature,
    /// the same for all tables. The hand's center is counted along the palm, from wrist to third knuckle, because
    /// that is how the tables count the hand. Mixing one author's lengths with another's fractions is inexact:
    /// their end points differ by some millimeters.
    pub(crate) fn arm(self) -> ArmSegments {
        let palm = match self {
            Self::Men => ids::PALM_LENGTH_MEN,
            Self::Women => ids::PALM_LENGTH_WOMEN,
            Self::Cadavers => ids::PALM_LENGTH_SURVEY,
        };
        let [upper_arm, forearm, hand] = match self {
            Self::Men => [
                [ids::UPPER_ARM_MASS_MEN, ids::UPPER_ARM_CENTER_MEN, ids::UPPER_ARM_GYRATION_MEN],
                [ids::FOREARM_MASS_MEN, ids::FOREARM_CENTER_MEN, ids::FOREARM_GYRATION_MEN],
                [ids::HAND_MASS_MEN, ids::HAND_CENTER_MEN, ids::HAND_GYRATION_MEN],
            ],
            Self::Women => [
                [ids::UPPER_ARM_MASS_WOMEN, ids::UPPER_ARM_CENTER_WOMEN, ids::UPPER_ARM_GYRATION_WOMEN],
                [ids::FOREARM_MASS_WOMEN, ids::FOREARM_CENTER_WOMEN, ids::FOREARM_GYRATION_WOMEN],
                [ids::HAND_MASS_WOMEN, ids::HAND_CENTER_WOMEN, ids::HAND_GYRATION_WOMEN],
            ],
            Self::Cadavers => [
                [ids::UPPER_ARM_MASS_CADAVER, ids::UPPER_ARM_CENTER_CADAVER, ids::UPPER_ARM_GYRATION_CADAVER],
                [ids::FOREARM_MASS_CADAVER, ids::FOREARM_CENTER_CADAVER, ids::FOREARM_GYRATION_CADAVER],
                [ids::HAND_MASS_CADAVER, ids::HAND_CENTER_CADAVER, ids::HAND_GYRATION_CADAVER],
            ],
        };
        ArmSegments {
            upper_arm: segment(upper_arm, ids::UPPER_ARM_LENGTH, ids::UPPER_ARM_LENGTH),
            forearm: segment(forearm, ids::FOREARM_LENGTH, ids::FOREARM_LENGTH),
            hand: segment(hand, ids::HAND_LENGTH, palm),
        }
    }
}

/// Mass, center, radius of gyration.
const THREE: usize = 3; // not medical: a count of columns

fn segment([mass, center, gyration]: [&Entry; THREE], length: &Entry, counted: &Entry) -> Segment {
    Segment {
        mass: mass.number(),
        length: length.number(),
        center: center.number() * counted.number(),
        gyration: gyration.number() * counted.number(),
    }
}
