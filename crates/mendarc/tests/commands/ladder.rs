//! `mendarc ladder`: what is ranked, for whom, and what is refused.

use serde_json::Value;

use crate::runs::{Written, example_records, mendarc};

fn exercises(document: &Value) -> &[Value] {
    document["exercises"].as_array().expect("a list of exercises")
}

fn number(of: &Value, key: &str) -> f64 {
    of[key].as_f64().unwrap_or_else(|| panic!("`{key}` is no number in {of}"))
}

#[test]
fn the_catalogue_is_ranked_for_the_people_of_the_calculation() {
    // 12.7 and 8.6 N·m: the project's evidence on motion, computed apart from this code with the table of 1996.
    for (sex, stature, mass, level) in [("male", "175", "80", 12.7), ("female", "163", "65", 8.6)] {
        let run = mendarc(&["ladder", "--stature-cm", stature, "--mass-kg", mass, "--sex", sex, "--json"]);
        assert_eq!(run.status, 0, "{}", run.stderr);
        let document = run.document();
        assert_eq!(document["schema"], "mendarc.ladder/1");
        assert!((number(&document["straight_level_arm_nm"], "high") - level).abs() < 0.05, "{sex}");
        let ranked: Vec<f64> = exercises(&document).iter().map(|one| number(one, "peak_moment_nm")).collect();
        assert!(ranked.len() > 100 && ranked.is_sorted(), "{ranked:?}");
        let full = exercises(&document).iter().find(|one| one["id"] == "forward-elevation").expect("in the catalogue");
        assert!((number(full, "peak_moment_nm") - level).abs() < 0.05);
        assert_eq!(full["muscles"]["supraspinatus"]["class"], "moderate");
    }
}

#[test]
fn without_a_sex_both_tables_are_told() {
    let run = mendarc(&["ladder", "--stature-cm", "170", "--mass-kg", "70.5", "--json"]);
    let document = run.document();
    assert_eq!(document["tables"], serde_json::json!(["men", "women"]));
    let level = &document["straight_level_arm_nm"];
    assert!(number(level, "low") < number(level, "high"), "{level}");
    // An unknown sex counts as the heavier.
    let full = exercises(&document).iter().find(|one| one["id"] == "forward-elevation").expect("in the catalogue");
    assert!((number(full, "peak_moment_nm") - number(level, "high")).abs() < 0.002, "{full}");
    let ranked: Vec<f64> = exercises(&document).iter().map(|one| number(one, "peak_moment_nm")).collect();
    assert!(ranked.is_sorted(), "{ranked:?}");
}

#[test]
fn a_record_gives_its_stages_in_order_and_what_is_unknown_has_no_number() {
    for record in example_records() {
        let run = mendarc(&["ladder", &record, "--json"]);
        assert_eq!(run.status, 0, "{record}: {}", run.stderr);
        let (document, plan) = (run.document(), mendarc(&["prescribe", &record, "--json"]).document());
        let stages: Vec<&Value> = plan["stages"].as_array().expect("stages").iter().map(|stage| &stage["id"]).collect();
        let place = |one: &Value| stages.iter().position(|stage| **stage == one["stage"]).expect("a stage of the plan");
        assert!(exercises(&document).iter().map(place).is_sorted(), "{record}");
        // Every exercise of every stage, and no other.
        let mut given: Vec<(usize, String)> = plan["spans"]
            .as_array()
            .expect("spans")
            .iter()
            .flat_map(|span| {
                let lines = span["exercises"].as_array().expect("exercises");
                lines.iter().map(|line| (place(span), line["id"].to_string())).collect::<Vec<_>>()
            })
            .collect();
        given.sort();
        given.dedup();
        let mut ranked: Vec<(usize, String)> =
            exercises(&document).iter().map(|one| (place(one), one["id"].to_string())).collect();
        ranked.sort();
        assert_eq!(ranked, given, "{record}");
        assert!(document["person"].is_null(), "{record}");
        for one in exercises(&document) {
            assert!(one["peak_moment_nm"].is_null(), "{one}");
            // A number for the ratio, or why there is none: never both, never neither.
            assert_eq!(one["relative"].is_null(), !one["not_known"].is_null(), "{one}");
            assert_eq!(one["not_known"].is_null(), one["held_kg"].is_null(), "{one}");
        }
    }
}

#[test]
fn a_mirrored_record_has_the_same_ladder() {
    let written = Written::new();
    let text = std::fs::read_to_string(crate::runs::root().join("examples/small-cuff.toml")).expect("an example");
    assert!(text.contains("side = \"right\""));
    let left = written.file("left.toml", text.replace("side = \"right\"", "side = \"left\""));
    let of = |record: &str| mendarc(&["ladder", record, "--stature-cm", "170", "--mass-kg", "60", "--json"]).document();
    assert_eq!(of("examples/small-cuff.toml")["exercises"], of(&left)["exercises"]);
}

#[test]
fn absurd_people_are_refused_with_the_range() {
    for (stature, mass, range) in [
        ("0", "80", "from 100 to 230 cm"),
        ("99.9", "80", "from 100 to 230 cm"),
        ("175", "0", "from 25 to 250 kg"),
        ("175", "250.1", "from 25 to 250 kg"),
    ] {
        let run = mendarc(&["ladder", "--stature-cm", stature, "--mass-kg", mass, "--json"]);
        assert_eq!((run.status, run.codes("error")), (1, vec!["out-of-range".to_owned()]), "{stature} {mass}");
        assert!(run.stdout.contains(range), "{}", run.stdout);
    }
    for (stature, mass) in [("-175", "80"), ("NaN", "80"), ("175", "1e9"), ("", "80"), ("175", "eighty")] {
        let run = mendarc(&["ladder", "--stature-cm", stature, "--mass-kg", mass, "--json"]);
        assert_eq!((run.status, run.codes("error").len()), (1, 1), "{stature} {mass}");
    }
    assert_eq!(mendarc(&["ladder", "--stature-cm", "175"]).status, 2);
    // In a record the fault has its place.
    let written = Written::new();
    let text = std::fs::read_to_string(crate::runs::root().join("examples/small-cuff.toml")).expect("an example");
    let record =
        written.file("tall.toml", text.replace("[patient]", "[patient]\nstature = \"17.5 cm\"\nmass = \"8 kg\""));
    let run = mendarc(&["ladder", &record, "--json"]);
    assert_eq!((run.status, run.codes("error")), (1, vec!["out-of-range".to_owned(); 2]));
    assert!(run.document()["diagnostics"].as_array().expect("a list").iter().all(|found| found["line"].is_u64()));
}

#[test]
fn a_body_mass_alone_gives_ratios_with_a_weight_in_the_hand() {
    let files = Written::new();
    let text = std::fs::read_to_string(crate::runs::root().join("examples/small-cuff.toml")).expect("an example");
    let light = files.file("light.toml", text.replace("[patient]", "[patient]\nmass = \"45 kg\""));
    let both = files.file("both.toml", text.replace("[patient]", "[patient]\nmass = \"45 kg\"\nstature = \"152 cm\""));
    let of = |record: &str| mendarc(&["ladder", record, "--json"]).document();
    let (alone, with_stature) = (of(&light), of(&both));
    assert!(alone["person"].is_null());
    for (one, other) in exercises(&alone).iter().zip(exercises(&with_stature)) {
        assert_eq!((&one["id"], &one["relative"]), (&other["id"], &other["relative"]));
        assert!(one["peak_moment_nm"].is_null() && one["not_known"].is_null(), "{one}");
    }
    assert_eq!(alone["steps"], with_stature["steps"]);
    assert!(!alone["steps"].as_array().expect("a list").is_empty());
}
