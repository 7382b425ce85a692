//! Degrees and kilograms as a patient sees them.
//!
//! A word is only used where it says no more than the number: "no higher than your chest" stands for 85 to 89 degrees
//! and never for 84. Heights are computed by [`body::Landmark`], as parts of stature.

use body::Landmark;
use evidence::{Entry, ids};
use plan::{Allowed, Bound};
use quantity::{Degrees, Kilograms, Millimeters};
use wording::{Argument, Language};

/// Where the forearm points, elbow bent at the side, the furthest first.
const FOREARM_DIRECTIONS: &[(&Entry, &str)] = &[
    (ids::TURNED_OUT_TO_THE_SIDE, "to-the-side"),
    (ids::TURNED_OUT_TWO_THIRDS, "two-thirds"),
    (ids::TURNED_OUT_HALF, "half"),
    (ids::TURNED_OUT_A_THIRD, "a-third"),
    (ids::TURNED_OUT_A_FIFTH, "a-fifth"),
    (ids::TURNED_OUT_A_SIXTH, "a-sixth"),
];

/// The highest place of the body that the hand of the straight arm reaches at an elevation, as messages name it;
/// `low` where it reaches none.
pub(crate) fn hand_height(angle: Degrees) -> &'static str {
    match Landmark::within(angle) {
        Some(Landmark::TopOfHead) => "top-of-head",
        Some(Landmark::Eyes) => "eyes",
        Some(Landmark::Chin) => "chin",
        Some(Landmark::Shoulder) => "shoulder",
        Some(Landmark::Chest) => "chest",
        Some(Landmark::HalfToChest) => "half-chest",
        Some(Landmark::BellyButton) => "belly-button",
        Some(Landmark::Hip) => "hip",
        Some(Landmark::TopOfThigh) => "thigh",
        None => "low",
    }
}

/// How high that place is above the floor for somebody of a stature, in whole centimeters and inches, rounded down.
pub(crate) fn above_floor(angle: Degrees, stature: Millimeters) -> Option<[(&'static str, Argument<'static>); 2]> {
    const MILLIMETERS_PER_CENTIMETER: f64 = 10.0; // not medical: the prefix
    const MILLIMETERS_PER_INCH: f64 = 25.4; // not medical: the international inch
    let height = Landmark::within(angle)?.height().above_floor(stature).number();
    let whole = |unit: f64| format!("{:.0}", (height / unit).floor());
    Some([("centimeters", whole(MILLIMETERS_PER_CENTIMETER).into()), ("inches", whole(MILLIMETERS_PER_INCH).into())])
}

/// The furthest direction at or below an external rotation: `ahead` up to a sixth of the way, `across`
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
        assert_eq!((at(29), at(30), at(45), at(46)), ("low", "thigh", "thigh", "hip"));
        assert_eq!((at(67), at(68), at(76)), ("hip", "belly-button", "belly-button"));
        assert_eq!((at(77), at(84), at(85)), ("half-chest", "half-chest", "chest"));
        assert_eq!((at(89), at(90), at(102), at(103)), ("chest", "shoulder", "shoulder", "chin"));
        assert_eq!((at(113), at(114), at(123), at(124)), ("chin", "eyes", "eyes", "top-of-head"));
        let to = |degrees| forearm_direction(Degrees::whole(degrees));
        assert_eq!((to(-10), to(0), to(1), to(14)), ("across", "ahead", "a-little", "a-little"));
        assert_eq!((to(15), to(17), to(18), to(29), to(30)), ("a-sixth", "a-sixth", "a-fifth", "a-fifth", "a-third"));
        assert_eq!(
            (to(44), to(45), to(60), to(89), to(90)),
            ("a-third", "half", "two-thirds", "two-thirds", "to-the-side")
        );
    }

    #[test]
    fn a_height_is_told_in_centimeters_of_a_stature() {
        // The belly button at 0.602 of 1700 mm: 1023 mm, 40.3 inches.
        let [centimeters, inches] = above_floor(Degrees::whole(70), Millimeters::whole(1700)).expect("a place");
        assert_eq!(
            format!("{centimeters:?} {inches:?}"),
            format!("{:?} {:?}", ("centimeters", Argument::from("102")), ("inches", Argument::from("40")))
        );
        assert!(above_floor(Degrees::whole(10), Millimeters::whole(1700)).is_none());
    }

    #[test]
    fn pounds_are_rounded_down() {
        // 5 lb and 10 lb by definition are 2.268 kg and 4.536 kg.
        let pounds = |steps| load(Kilograms::from_steps(steps), Language::English)[1].1.clone();
        assert_eq!((pounds(226), pounds(227), pounds(454)), ("4".into(), "5".into(), "10".into()));
        assert_eq!(load(Kilograms::from_steps(227), Language::Spanish)[0].1, "2,27".into());
    }
}
