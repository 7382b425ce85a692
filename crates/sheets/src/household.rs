//! Degrees and kilograms as a patient sees them.
//!
//! A word is only used where it says no more than the number: "no higher than
//! your chest" stands for 75 to 89 degrees and never for 74. A small fixed
//! table now; it will be computed from the patient's stature.

use evidence::{Entry, ids};
use plan::{Allowed, Bound};
use quantity::{Degrees, Kilograms};
use wording::{Argument, Language};

/// Landmarks of the body for the hand of the straight arm, the highest first.
const HAND_HEIGHTS: &[(&Entry, &str)] = &[
    (ids::HAND_AT_TOP_OF_HEAD, "top-of-head"),
    (ids::HAND_AT_EYES, "eyes"),
    (ids::HAND_AT_CHIN, "chin"),
    (ids::HAND_AT_SHOULDER, "shoulder"),
    (ids::HAND_AT_CHEST, "chest"),
    (ids::HAND_AT_BELLY_BUTTON, "belly-button"),
    (ids::HAND_AT_HIP, "hip"),
    (ids::HAND_AT_TOP_OF_THIGH, "thigh"),
];

/// Where the forearm points, elbow bent at the side, the furthest first.
const FOREARM_DIRECTIONS: &[(&Entry, &str)] = &[
    (ids::TURNED_OUT_TO_THE_SIDE, "to-the-side"),
    (ids::TURNED_OUT_TWO_THIRDS, "two-thirds"),
    (ids::TURNED_OUT_HALF, "half"),
    (ids::TURNED_OUT_A_THIRD, "a-third"),
];

/// The highest landmark at or below an elevation; `low` where there is none.
pub(crate) fn hand_height(angle: Degrees) -> &'static str {
    highest(HAND_HEIGHTS, angle).unwrap_or("low")
}

/// The furthest direction at or below an external rotation: `ahead` up to a third of the way, `across`
/// where not even straight ahead is allowed.
pub(crate) fn forearm_direction(angle: Degrees) -> &'static str {
    highest(FOREARM_DIRECTIONS, angle).unwrap_or(match angle.steps() {
        ..0 => "across",
        0 => "ahead",
        _ => "a-little",
    })
}

fn highest(table: &[(&'static Entry, &'static str)], angle: Degrees) -> Option<&'static str> {
    table.iter().find(|(entry, _)| entry.degrees() <= angle).map(|(_, word)| *word)
}

/// One pound, by definition.
const POUND_IN_KILOGRAMS: f64 = 0.453_592_37; // not medical: the international pound

/// A load as kilograms and as pounds, the pounds rounded down: the words never say more than the limit.
pub(crate) fn load(load: Kilograms, language: Language) -> [(&'static str, Argument<'static>); 2] {
    let pounds = (load.number() / POUND_IN_KILOGRAMS).floor();
    [("kilograms", decimal(&load.to_string(), language).into()), ("pounds", format!("{pounds:.0}").into())]
}

/// A number with the sign for its decimals that the language writes.
pub(crate) fn decimal(written: &str, language: Language) -> String {
    match language {
        Language::English => written.to_owned(),
        Language::Spanish => written.replace('.', ","),
    }
}

/// How much effort is told in a word; `percent` where only the number can be told.
pub(crate) fn effort(allowed: Allowed) -> &'static str {
    match allowed {
        Allowed::UpTo(Bound::Effort(percent)) if percent >= ids::LIGHT_PRESS.percent() => "quarter",
        Allowed::UpTo(_) => "percent",
        Allowed::Free => "free",
        Allowed::No => "none",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_never_says_more_than_the_degrees() {
        let at = |degrees| hand_height(Degrees::whole(degrees));
        assert_eq!((at(29), at(30), at(44), at(45)), ("low", "thigh", "thigh", "hip"));
        assert_eq!((at(74), at(75), at(89), at(90)), ("belly-button", "chest", "chest", "shoulder"));
        assert_eq!((at(99), at(100), at(119), at(120)), ("shoulder", "chin", "eyes", "top-of-head"));
        let to = |degrees| forearm_direction(Degrees::whole(degrees));
        assert_eq!((to(-10), to(0), to(1), to(29), to(30)), ("across", "ahead", "a-little", "a-little", "a-third"));
        assert_eq!(
            (to(44), to(45), to(60), to(89), to(90)),
            ("a-third", "half", "two-thirds", "two-thirds", "to-the-side")
        );
    }

    /// Segment lengths as shares of the stature, as printed in handbooks of movement analysis (from memory):
    /// shoulder 0.818 high, upper arm 0.186, forearm 0.146, half the hand 0.054.
    #[test]
    fn the_landmarks_are_where_the_hand_is() {
        let height = |degrees: f64| 0.818 - 0.386 * degrees.to_radians().cos();
        for (entry, word) in HAND_HEIGHTS {
            // Landmarks as shares of the stature: own choice, coarse.
            let landmark = match *word {
                "thigh" => 0.48,
                "hip" => 0.53,
                "belly-button" => 0.60,
                "chest" => 0.72,
                "shoulder" => 0.818,
                "chin" => 0.87,
                "eyes" => 0.936,
                "top-of-head" => 1.0,
                other => panic!("{other}"),
            };
            let hand = height(entry.number());
            assert!((-0.01..0.04).contains(&(hand - landmark)), "{word}: hand at {hand:.3}, landmark at {landmark}");
        }
    }

    #[test]
    fn pounds_are_rounded_down() {
        // 5 lb and 10 lb by definition are 2.268 kg and 4.536 kg.
        let pounds = |steps| load(Kilograms::from_steps(steps), Language::English)[1].1.clone();
        assert_eq!((pounds(226), pounds(227), pounds(454)), ("4".into(), "5".into(), "10".into()));
        assert_eq!(load(Kilograms::from_steps(227), Language::Spanish)[0].1, "2,27".into());
    }
}
