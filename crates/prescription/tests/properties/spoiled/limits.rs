//! Limits, first days and the name of the protocol.

use body::{Joint, Key, Mode, Movement};
use jiff::ToSpan;
use plan::{Allowed, Bound};
use quantity::{Degrees, Kilograms, Percent};

use super::{ELEVATION, HAND_LOAD, LARGE, OUTWARD, OUTWARD_ASSISTED, SMALL, days_earlier, degrees, each, row};
use crate::plans::Texts;

/// The values are those of the default policies, `staged`: 20 degrees from day 14, 2.27 kg from day 84,
/// 30 percent from day 49, assisted only lying on the back until day 34.
#[test]
fn limits() {
    each(
        Texts { record: SMALL, ..Texts::default() },
        &[
            (
                "half a degree more",
                |p| row(p, 20, OUTWARD).allowed = Allowed::UpTo(Bound::Angle(Degrees::from_steps(205))),
                &["limit-above-rule"],
                "days 14 to 27: passive external rotation is allowed up to 20.5 degrees where `staged` \
                 (passive external rotation) says allowed up to 20 degrees: 0.5 degrees too much",
            ),
            (
                "ten grams more",
                |p| row(p, 100, HAND_LOAD).allowed = Allowed::UpTo(Bound::Load(Kilograms::from_steps(228))),
                &["limit-above-rule"],
                "0.01 kg too much",
            ),
            (
                "a tenth of a percent more",
                |p| {
                    let key = Key::any(Joint::Shoulder, Movement::Abduction, Mode::Isometric);
                    row(p, 60, key.in_position(body::Position::AtSide)).allowed =
                        Allowed::UpTo(Bound::Effort(Percent::from_steps(301)));
                },
                &["limit-above-rule"],
                "0.1 percent too much",
            ),
            (
                "open before its day",
                |p| row(p, 7, ELEVATION).allowed = degrees(0),
                &["limit-above-rule", "first-day-is-not-the-limits"],
                "passive forward elevation is allowed up to 0 degrees where `staged`",
            ),
            (
                "a load that is free in the end",
                |p| row(p, 300, HAND_LOAD).allowed = Allowed::Free,
                &["limit-above-rule"],
                "hand load is free where `staged` (load in the hand) says allowed up to 4.54 kg",
            ),
            (
                "a row twice",
                |p| {
                    let again = row(p, 20, OUTWARD).clone();
                    p.spans.iter_mut().find(|span| span.from_day.count() == 14).expect("a run").limits.push(again);
                },
                &["limit-written-twice"],
                "passive external rotation is written twice",
            ),
            (
                "assisted further than passive",
                |p| row(p, 30, OUTWARD_ASSISTED).allowed = degrees(25),
                &["limit-above-rule", "wider-than-its-mode"],
                "active-assisted external rotation is allowed up to 25 degrees while passive external rotation is",
            ),
            (
                "not marked as lying",
                |p| row(p, 30, OUTWARD_ASSISTED).only_lying = false,
                &["lying-not-said"],
                "only lying on the back",
            ),
            (
                "a limit that nobody lifts",
                |p| {
                    let key = Key::any(Joint::Wrist, Movement::Flexion, Mode::EndRangeStretch);
                    row(p, 364, key).allowed = degrees(30);
                },
                &["limit-never-lifts"],
                "nothing says who lifts it",
            ),
            (
                "a first day too early",
                |p| {
                    let first = p.first_allowed.iter_mut().find(|first| first.key == ELEVATION).expect("a first day");
                    first.day = days_earlier(first.day, 1);
                    first.date = first.date.saturating_sub(1.day());
                },
                &["first-day-is-not-the-limits"],
                "is said to open on day 13 and its limits open on day 14",
            ),
            (
                "a first day left out",
                |p| p.first_allowed.retain(|first| first.key != ELEVATION),
                &["first-day-is-not-the-limits"],
                "is said to open on no day",
            ),
            (
                "another protocol's name",
                |p| p.protocol.id = "delayed".into(),
                &["not-the-protocol"],
                "the plan is called `delayed` where the record takes `staged`",
            ),
            (
                "a cap that is not in force",
                |p| p.protocol.capped_by.push("delayed".into()),
                &["not-the-protocol"],
                "capped by delayed",
            ),
        ],
    );
}

/// What the delayed protocol's plan may not do, with a record that takes it by itself.
#[test]
fn a_large_tear() {
    each(
        Texts { record: LARGE, ..Texts::default() },
        &[(
            "passive motion of the staged protocol",
            |p| row(p, 20, ELEVATION).allowed = degrees(90),
            &["limit-above-rule", "first-day-is-not-the-limits"],
            "passive forward elevation is allowed up to 90 degrees where `delayed`",
        )],
    );
}
