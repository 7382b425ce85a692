//! What a hold, an unopened gate and a safe arc add to still days, counted by hand from the default policies:
//! in `staged` the sling is worn 56 days and nothing is moved passively for 14, in `delayed` for 42; the caps
//! are 56, 42 and 28 days. Elbow motion after a biceps tenodesis is active from day 28.

use jiff::ToSpan;

use crate::plans::{Texts, prescribe};

const SMALL: &str = include_str!("../../../../examples/small-cuff.toml");
const LARGE: &str = include_str!("../../../../examples/large-cuff.toml");
const TENODESIS: &str = include_str!("../../../../examples/cuff-with-tenodesis.toml");

/// The cautions about still days.
fn cautions(texts: Texts<'_>) -> Vec<String> {
    let cautions = prescribe(texts).cautions.into_iter();
    cautions.filter(|line| line.contains("days in a row")).collect()
}

#[test]
fn a_hold_says_what_it_adds_by_its_reason() {
    let hold = |from: u16, days: u16, joint: &str| {
        format!("[[hold]]\nfrom_day = {from}\ndays = {days}\nreason = \"the wound drains\"\n{joint}")
    };
    assert_eq!(cautions(Texts { record: SMALL, ..Texts::default() }), Vec::<String>::new());
    let late = hold(40, 14, "");
    assert_eq!(
        cautions(Texts { record: SMALL, settings: &late, ..Texts::default() }),
        ["stiffness: the hold from day 40 (the wound drains) adds 14 days: 70 days in a row with the sling, weaning \
          counted, over the cap of 56"]
    );
    let early = hold(7, 7, "");
    assert_eq!(
        cautions(Texts { record: SMALL, settings: &early, ..Texts::default() }),
        [
            "still days: the hold from day 7 (the wound drains) adds 7 days: 21 days in a row without passive motion \
             of the shoulder, within the cap of 42",
            "stiffness: the hold from day 7 (the wound drains) adds 7 days: 63 days in a row with the sling, weaning \
             counted, over the cap of 56",
        ]
    );
    let elbow = hold(5, 10, "joint = \"elbow\"\n");
    assert_eq!(
        cautions(Texts { record: TENODESIS, settings: &elbow, ..Texts::default() }),
        ["stiffness: the hold from day 5 (the wound drains) adds 10 days: 38 days in a row without active motion of \
          the elbow, over the cap of 28"]
    );
    let two = hold(20, 1, "") + &hold(30, 2, "");
    let both = cautions(Texts { record: SMALL, settings: &two, ..Texts::default() });
    assert!(
        both[0].contains(
            "the hold from day 20 (the wound drains) and the hold from day 30 (the wound drains) add 3 days: 59"
        ),
        "{both:?}"
    );
}

/// Nothing is opened: on day 70 the plan stands still on day 13.
#[test]
fn an_unopened_gate_says_what_it_adds() {
    let on = Some(prescribe(Texts { record: SMALL, ..Texts::default() }).operated_on.saturating_add(70.days()));
    assert_eq!(
        cautions(Texts { record: SMALL, on, ..Texts::default() }),
        [
            "waiting for the surgeon: the gate of `passive` was due on day 14 and is not opened; this gate alone adds 57 \
          days: 71 days in a row without passive motion of the shoulder, over the cap of 42; this gate alone adds 15 \
          days: 71 days in a row with the sling, weaning counted, over the cap of 56"
        ]
    );
}

/// Two arcs leave under 15 degrees of everything that `delayed` opens before day 98.
#[test]
fn a_safe_arc_says_what_it_adds() {
    let arc = |movement: &str| {
        format!("[[operation.safe_arc]]\nmovement = \"{movement}\"\nup_to = \"10 deg\"\nuntil = \"day 98\"\n")
    };
    let record = format!("{LARGE}\n{}{}", arc("forward elevation"), arc("external rotation"));
    assert_eq!(
        cautions(Texts { record: &record, ..Texts::default() }),
        ["stiffness: what the safe arcs of the record close adds 56 days: 98 days in a row without passive motion of \
          the shoulder, over the cap of 42"]
    );
}

/// The surgeon's own choices are named as outside the proof, and what they come to is not.
#[test]
fn what_loosens_is_outside_the_proof() {
    assert_eq!(prescribe(Texts { record: SMALL, ..Texts::default() }).outside_the_proof, Vec::<String>::new());
    let settings = "home_margin = \"2 deg\"\nhome_margin_reason = \"a careful patient\"\n\
                    [[prefer]]\nchoice = \"external-rotation-limit\"\noption = \"30 deg\"\nreason = \"agreed\"\nconfirm = \"30 deg\"\n\
                    [[loosening]]\njoint = \"shoulder\"\nmovement = \"external rotation\"\nmode = \"passive\"\n\
                    from_day = 20\nuntil_day = 30\nup_to = \"35 deg\"\nreason = \"smooth on the table\"\n";
    let p = prescribe(Texts { record: SMALL, settings, ..Texts::default() });
    assert_eq!(p.outside_the_proof.len(), 3, "{:?}", p.outside_the_proof);
    for words in ["30 deg (agreed)", "2 in place of 5 degrees", "up to 35 degrees (smooth on the table)"] {
        assert!(p.outside_the_proof.iter().any(|line| line.contains(words)), "{words}: {:?}", p.outside_the_proof);
    }
    assert!(p.outside_the_proof.iter().all(|line| p.loosened.contains(line)));
}
