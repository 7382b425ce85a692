//! Two live plans of one person: neither asks of the other arm what that arm may not do.

use jiff::ToSpan;
use proptest::prelude::*;

use crate::judged::Told;
use crate::plans::{Texts, prescribe, span};
use crate::records::{Written, record};

/// The second operation of the same person, on the other side.
fn on_the_other_side(first: &Written, mut second: Written, days: i64) -> Written {
    second.side = if first.side == "left" { "right" } else { "left" };
    second.birth = first.birth;
    second.date = first.date.saturating_add(days.days());
    second
}

proptest! {
    #![proptest_config(crate::config())]

    #[test]
    fn no_exercise_asks_what_the_other_plan_forbids(
        first in record(),
        second in record(),
        days in -200..200_i64,
        (known, on) in (any::<bool>(), 0..365_i64),
    ) {
        let mut second = on_the_other_side(&first, second, days);
        if known {
            second.other_arm = Some("operated");
        }
        let (record, other) = (second.text(), first.text());
        let on = Some(second.date.saturating_add(on.days()));
        let texts = Texts { record: &record, other: &other, on, ..Texts::default() };
        prop_assert_eq!(Told::of(texts).faults(&prescribe(texts)), vec![], "{}{}", record, other);
        // Made as if the other arm were sound: whatever that one forbids is found, and nothing else.
        let alone = prescribe(Texts { other: "", ..texts });
        let faults = Told::of(texts).faults(&alone);
        let others = faults.iter().find(|fault| fault.kind != "exercise-needs-the-other-arm");
        prop_assert!(others.is_none(), "{others:?}\n{record}{other}");
    }
}

const SMALL: &str = include_str!("../../../../examples/small-cuff.toml");

/// The left shoulder four weeks after the right one: the stick is driven by an arm that may not move actively
/// before day 42 of its own plan, by the default policies.
#[test]
fn the_arm_that_drives_has_a_plan_of_its_own() {
    let first = SMALL;
    let p = prescribe(Texts { record: first, ..Texts::default() });
    let date = p.operated_on.saturating_add(28.days());
    let second = SMALL
        .replace(&p.operated_on.to_string(), &date.to_string())
        .replace(&format!("side = \"{}\"", p.side), &format!("side = \"{}\"", p.side.other()));
    let texts = Texts { record: &second, other: first, ..Texts::default() };
    let id = "stick-external-rotation";
    let has = |p: &plan::Prescription, day: u16| span(p, day).exercises.iter().any(|line| line.id == id);
    // Day 14 here is day 42 there.
    assert!(has(&prescribe(texts), 14));
    let alone = prescribe(Texts { other: "", ..texts });
    assert!(has(&alone, 14));
    assert!(Told::of(texts).faults(&alone).iter().all(|fault| fault.rule != id));

    let date = p.operated_on.saturating_add(20.days());
    let second = second.replace(&alone.operated_on.to_string(), &date.to_string());
    let texts = Texts { record: &second, other: first, ..Texts::default() };
    let alone = prescribe(Texts { other: "", ..texts });
    // Day 22 here is day 42 there: eight days too early, from day 14 on.
    assert!(has(&alone, 14) && !has(&prescribe(texts), 21) && has(&prescribe(texts), 22));
    let faults = Told::of(texts).faults(&alone);
    let fault = faults.iter().find(|fault| fault.rule == id).unwrap_or_else(|| panic!("{faults:#?}"));
    assert_eq!((fault.kind, fault.from_day, fault.until_day), ("exercise-needs-the-other-arm", 14, 22));
    assert!(fault.message.contains("it asks of the other arm, whose own plan is 20 days ahead"), "{fault}");
}

/// A safe arc holds the other arm at 20 degrees across the chest until its day 300: it can't go along with a
/// stretch that is free here from day 84 on and goes to 40.
#[test]
fn going_along_to_the_limit_is_as_far_as_the_operated_arm_goes() {
    let arc = "[[operation.safe_arc]]\nmovement = \"horizontal adduction\"\nup_to = \"20 deg\"\nuntil = \"day 300\"\n";
    let first = format!("{SMALL}\n{arc}");
    let p = prescribe(Texts { record: &first, ..Texts::default() });
    let date = p.operated_on.saturating_add(60.days());
    let second = SMALL
        .replace(&p.operated_on.to_string(), &date.to_string())
        .replace(&format!("side = \"{}\"", p.side), &format!("side = \"{}\"", p.side.other()));
    let texts = Texts { record: &second, other: &first, ..Texts::default() };
    let stretches =
        |p: &plan::Prescription, day: u16| span(p, day).exercises.iter().any(|line| line.id == "cross-body-stretch");
    let (alone, both) = (prescribe(Texts { other: "", ..texts }), prescribe(texts));
    assert!(stretches(&alone, 100));
    // Day 240 here is day 300 there.
    assert!(!stretches(&both, 100) && !stretches(&both, 239) && stretches(&both, 240));
    let faults = Told::of(texts).faults(&alone);
    let fault = faults.iter().find(|fault| fault.rule == "cross-body-stretch").expect("a fault");
    assert_eq!((fault.from_day, fault.kind), (84, "exercise-needs-the-other-arm"));
    assert!(fault.message.contains("it would go to 40 degrees where active horizontal adduction"), "{fault}");
}
