//! Files with faults: each fault gives its one message, nothing panics.

use diagnostic::{FileId, Sink};
use proptest::prelude::*;

use super::findings;
use crate::{SHIPPED, read};

const GOOD: &str = r#"[[exercise]]
id = "slide"
purpose = "elevation"
posture = "sitting"
equipment = ["table"]
other_arm = "none"
supervision = "home"
sling = "off"
demands = [ { joint = "shoulder", movement = "forward elevation", mode = "passive", from = "40 deg", to = "limit", most = "180 deg" } ]
positions = { weight = "carried", start = { upper_arm = "forward elevation", elbow = "on the table" }, end = { trunk = "over the table" } }
dose = { sets = 1, repetitions = 10, hold_s = 5, times_per_day = 3, evidence = ["dose-stick-repetitions", "dose-one-set", "dose-short-hold", "dose-stick-times"] }
muscle = { supraspinatus = "emg-table-slide-supraspinatus" }
evidence = ["table-slide-start", "range-elevation-most"]
"#;

/// Reads [`GOOD`] with one piece replaced.
fn check(from: &str, to: &str, expect: &[&str]) {
    assert!(GOOD.contains(from), "{from}");
    let (_, found) = findings(&GOOD.replacen(from, to, 1));
    assert_eq!(found, expect);
}

#[test]
fn the_good_file_is_good() {
    let (catalogue, found) = findings(GOOD);
    assert_eq!(found, Vec::<String>::new());
    assert!(catalogue.get("slide").is_some());
}

#[test]
fn words_are_told_the_nearest() {
    check("\"sitting\"", "\"siting\"", &["unknown-word [\"siting\"] did you mean \"sitting\"?"]);
    check("[\"table\"]", "[\"tabel\"]", &["unknown-word [\"tabel\"] did you mean \"table\"?"]);
    check("sling =", "slimg =", &["unknown-key [slimg] did you mean `sling`? it is needed here"]);
    check(
        "\"table-slide-start\"",
        "\"table-slide-strat\"",
        &["unknown-evidence [\"table-slide-strat\"] did you mean \"table-slide-start\"?"],
    );
    check("id = \"slide\"", "id = \"Slide it\"", &["bad-id [\"Slide it\"] write it like \"table-slide\""]);
}

#[test]
fn a_number_needs_its_evidence() {
    let help = "cite the entry it comes from, or add one to the table of evidence";
    check("\"40 deg\"", "\"41 deg\"", &[&format!("number-without-evidence [\"41 deg\"] {help}")]);
    check("\"180 deg\"", "\"175 deg\"", &[&format!("number-without-evidence [\"175 deg\"] {help}")]);
    check("repetitions = 10", "repetitions = 21", &[&format!("number-without-evidence [21] {help}")]);
    // In the range the sources give (10 to 20).
    check("repetitions = 10", "repetitions = 20", &[]);
    // Right number, wrong unit: three times a day does not hold three seconds.
    check("hold_s = 5", "hold_s = 10", &[&format!("number-without-evidence [10] {help}")]);
    check("\"40 deg\"", "\"0 deg\"", &[]);
}

#[test]
fn amounts_must_fit_what_they_belong_to() {
    check("to = \"limit\", most = \"180 deg\"", "to = \"limit\", most = \"190 deg\"", &["out-of-range [\"190 deg\"] "]);
    check(
        "mode = \"passive\"",
        "mode = \"isometric\"",
        &[
            "wrong-amount [{ joint = \"shoulder\", movement = \"forward elevation\", mode = \"isometric\", from = \"40 deg\", to = \"limit\", most = \"180 deg\" }] loads are in kilograms, efforts in percent, movements in degrees",
        ],
    );
    check(
        ", most = \"180 deg\"",
        "",
        &[
            "missing-key [{ joint = \"shoulder\", movement = \"forward elevation\", mode = \"passive\", from = \"40 deg\", to = \"limit\" }] add most = \"…\"",
        ],
    );
    check(
        "movement = \"forward elevation\"",
        "movement = \"shrug\"",
        &[
            "no-such-key [{ joint = \"shoulder\", movement = \"shrug\", mode = \"passive\", from = \"40 deg\", to = \"limit\", most = \"180 deg\" }] loads are written as joint \"whole arm\" in mode \"resisted\"",
        ],
    );
    check(
        "\"forward elevation\", mode = \"passive\", from = \"40 deg\", to = \"limit\", most = \"180 deg\"",
        "\"external rotation\", mode = \"passive\", to = \"150 deg\"",
        &[
            "beyond-the-joint [{ joint = \"shoulder\", movement = \"external rotation\", mode = \"passive\", to = \"150 deg\" }] the most that is accepted is 120 deg",
        ],
    );
    check(
        "from = \"40 deg\", to = \"limit\", most = \"180 deg\"",
        "from = \"180 deg\", to = \"40 deg\"",
        &[
            "angle-backwards [{ joint = \"shoulder\", movement = \"forward elevation\", mode = \"passive\", from = \"180 deg\", to = \"40 deg\" }] ",
        ],
    );
    check("\"40 deg\"", "40", &["angle-without-unit [40] if deg is meant, write \"40 deg\""]);
}

#[test]
fn the_other_arm_must_be_told_of_twice() {
    check(
        "other_arm = \"none\"",
        "other_arm = \"drives\"",
        &["other-arm-demand [[[exercise]]] keep `other_arm` and `other_demands` together"],
    );
}

#[test]
fn muscles_and_doses_are_checked() {
    check(
        "\"emg-table-slide-supraspinatus\"",
        "\"table-slide-start\"",
        &["not-muscle-activity [\"table-slide-start\"] cite an entry in % MVIC, or leave the muscle out: not measured"],
    );
    check("sets = 1", "sets = 0", &["out-of-range [0] "]);
    let without = GOOD.lines().filter(|line| !line.starts_with("dose")).collect::<Vec<_>>().join("\n");
    assert_eq!(findings(&without).1, ["missing-key [[[exercise]]] add `dose = …` here"]);
}

#[test]
fn two_names_for_one_exercise_are_a_fault() {
    let twice = format!("{GOOD}\n{}", GOOD.replace("\"slide\"", "\"glide\""));
    assert_eq!(findings(&twice).1, ["same-exercise [[[exercise]]] leave one out, or say what sets them apart"]);
    let other_place =
        format!("{GOOD}\n{}", GOOD.replace("\"slide\"", "\"glide\"").replace("\"sitting\"", "\"standing\""));
    assert_eq!(findings(&other_place).1, Vec::<String>::new());
    let same_id = format!("{GOOD}\n{}", GOOD.replace("\"sitting\"", "\"standing\""));
    assert_eq!(findings(&same_id).1, ["duplicate-id [[[exercise]]] "]);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_mutated_file_never_panics(
        file in 0..SHIPPED.len(),
        at in any::<prop::sample::Index>(),
        cut in 0_usize..40,
        put in "[\\PC\n]{0,12}",
    ) {
        let text = SHIPPED[file].1;
        let boundary = |mut offset: usize| {
            while !text.is_char_boundary(offset) { offset -= 1; }
            offset
        };
        let start = boundary(at.index(text.len()));
        let end = boundary((start + cut).min(text.len())).max(start);
        let mutated = format!("{}{put}{}", &text[..start], &text[end..]);
        let mut sink = Sink::new();
        let catalogue = read(&[(FileId(0), &mutated)], &mut sink);
        // A fault never makes entries: at most as many as the text names.
        prop_assert!(catalogue.entries().len() <= mutated.matches("id = ").count().max(mutated.matches("[[").count()));
        for fault in sink.found() {
            if let Some(span) = fault.span {
                prop_assert!(span.start <= span.end && (span.end as usize) <= mutated.len());
            }
        }
    }
}
