//! Degrees in the words of a household: how high the hand comes.

use evidence::{Entry, ids};
use quantity::{Degrees, Millimeters};

use crate::angle::Angle;
use crate::table::straight_arm;
use crate::words;

words! {
    /// A place of the body that everybody can find on it, from low to high.
    Landmark {
        /// The top of the thigh.
        TopOfThigh = "top of the thigh",
        /// The hip.
        Hip = "hip",
        /// The belly button.
        BellyButton = "belly button",
        /// Half way between belly button and chest.
        HalfToChest = "half way from the belly button to the chest",
        /// The middle of the chest.
        Chest = "chest",
        /// The shoulder joint.
        Shoulder = "shoulder",
        /// The chin.
        Chin = "chin",
        /// The eyes.
        Eyes = "eyes",
        /// The top of the head.
        TopOfHead = "top of the head",
    }
}

/// A height above the floor, of somebody who stands upright.
///
/// # Units and shape
/// As a part of stature, so that it holds for every size until a stature is known.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Height(f64);

impl Height {
    /// As a part of stature.
    pub const fn of_stature(self) -> f64 {
        self.0
    }

    /// Above the floor, for somebody of this stature.
    pub fn above_floor(self, stature: Millimeters) -> Millimeters {
        Millimeters::from_steps((self.0 * f64::from(stature.steps())).round() as i32)
    }

    /// Of the hand, when a straight arm is raised in any plane of an upright trunk.
    ///
    /// # Units and shape
    /// `elevation` is humerus against thorax, from 0 to 180. The hand is the middle of its grip.
    ///
    /// # Source
    /// `shoulder-center-height` (own choice), `upper-arm-length`, `forearm-length`, `grip-center` (own choice). That
    /// the shoulder rises as the arm does is left out, so the height told is rather too low than too high.
    pub fn of_hand(elevation: Angle) -> Self {
        Self(ids::SHOULDER_CENTER_HEIGHT.number() - straight_arm() * elevation.cos())
    }
}

impl Landmark {
    /// Its height.
    pub fn height(self) -> Height {
        self.height_by(Entry::number)
    }

    /// A height from the entry of the place; half way lies in the middle of two, the top of the head is the stature.
    fn height_by(self, of: impl Fn(&Entry) -> f64) -> Height {
        match self {
            Self::HalfToChest => Height(f64::midpoint(of(ids::NAVEL_HEIGHT), of(ids::CHEST_HEIGHT))),
            other => other.entry().map_or(Height(1.0), |entry| Height(of(entry))),
        }
    }

    /// Where its height comes from, where it has an entry of its own.
    fn entry(self) -> Option<&'static Entry> {
        Some(match self {
            Self::TopOfThigh => ids::THIGH_TOP_HEIGHT,
            Self::Hip => ids::HIP_HEIGHT,
            Self::BellyButton => ids::NAVEL_HEIGHT,
            Self::Chest => ids::CHEST_HEIGHT,
            Self::Shoulder => ids::SHOULDER_CENTER_HEIGHT,
            Self::Chin => ids::CHIN_HEIGHT,
            Self::Eyes => ids::EYE_HEIGHT,
            Self::HalfToChest | Self::TopOfHead => return None,
        })
    }

    /// The highest place that a hand may be kept below so that the arm stays within an elevation.
    ///
    /// # Method
    /// The highest landmark that on nobody measured lies higher than the hand of a straight arm at that elevation: who
    /// keeps the hand of a straight arm no higher than it stays within the limit. A bent elbow can lower the hand below
    /// a raised upper arm, so the words have to ask for a straight one. `None` under every landmark.
    ///
    /// # Example
    /// ```
    /// use body::Landmark;
    /// use quantity::Degrees;
    /// assert_eq!(Landmark::within(Degrees::whole(67)), Some(Landmark::Hip));
    /// assert_eq!(Landmark::within(Degrees::whole(68)), Some(Landmark::BellyButton));
    /// assert_eq!(Landmark::within(Degrees::whole(90)), Some(Landmark::Shoulder));
    /// ```
    pub fn within(elevation: Degrees) -> Option<Self> {
        let hand = Height::of_hand(elevation.into());
        Self::ALL.iter().rev().copied().find(|mark| mark.highest().0 <= hand.0 + ROUNDING)
    }

    /// The highest it was measured on anybody; its height where no range is given.
    fn highest(self) -> Height {
        self.height_by(|entry| entry.high.unwrap_or(entry.number()))
    }
}

/// A level hand is as high as the shoulder, whatever the last place of a cosine says.
const ROUNDING: f64 = 1e-12; // not medical: of the arithmetic

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn landmarks_stand_in_the_order_of_their_heights() {
        for pair in Landmark::ALL.windows(2) {
            assert!(pair[0].height() < pair[1].height(), "{} {}", pair[0], pair[1]);
        }
    }

    #[test]
    fn a_hand_kept_below_its_landmark_stays_within_the_limit() {
        // Whatever elevation a straight arm has while its hand is at or below the landmark, it is within the limit.
        for limit in 0..=180 {
            // not medical: every whole degree of the arc
            let Some(mark) = Landmark::within(Degrees::whole(limit)) else { continue };
            for elevation in 0..=180 {
                // not medical: every whole degree of the arc
                let hand = Height::of_hand(Angle::from_degrees(f64::from(elevation)));
                assert!(
                    hand.0 > mark.highest().0 + ROUNDING || elevation <= limit,
                    "{mark} lets {elevation} through at {limit}"
                );
            }
        }
    }

    #[test]
    fn higher_limits_never_name_a_lower_place() {
        let marks: Vec<_> = (0..=180).map(|limit| Landmark::within(Degrees::whole(limit))).collect(); // not medical: the arc
        assert!(marks.windows(2).all(|pair| pair[0] <= pair[1]));
        assert_eq!(marks[0], None);
    }

    #[test]
    fn a_stature_makes_centimeters_of_it() {
        let floor = Landmark::BellyButton.height().above_floor(Millimeters::whole(1750)); // not medical: a stature
        assert_eq!(floor, Millimeters::from_steps(10535)); // not medical: 0.602 of it
    }
}
