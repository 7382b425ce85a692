//! `mendarc ladder`: what is ranked, for whom, and what is refused.

use serde_json::Value;

use crate::runs::{Written, example_records, mendarc};

fn exercises(document: &Value) -> &[Value] {
    document["exercises"].as_array().expect("a list of exercises")
}

/// The moments of those that have one; those that have none stand after them and say why.
fn ranked(document: &Value) -> Vec<f64> {
    let all = exercises(document);
    let moments: Vec<f64> = all.iter().filter_map(|one| one["peak_moment_nm"].as_f64()).collect();
    for one in &all[moments.len()..] {
        assert!(one["peak_moment_nm"].is_null() && one["relative"].is_null() && one["weight"].is_null(), "{one}");
        assert_eq!(one["not_known"], "its load is not gravity", "{one}");
        assert!(!one["beyond_gravity"].as_array().expect("a list").is_empty(), "{one}");
    }
    assert!(all[..moments.len()].iter().all(|one| one["beyond_gravity"] == serde_json::json!([])));
    moments
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
        let ranked = ranked(&document);
        assert!(ranked.len() > 70 && ranked.is_sorted(), "{ranked:?}");
        // Push-ups, bands, presses and throws.
        assert!(exercises(&document).len() > ranked.len() + 20);
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
    let ranked = ranked(&document);
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
        // Once for each load it comes to.
        ranked.dedup();
        assert_eq!(ranked, given, "{record}");
        assert!(document["person"].is_null(), "{record}");
        for one in exercises(&document) {
            assert!(one["peak_moment_nm"].is_null(), "{one}");
            // A number for the ratio, or why there is none: never both, never neither.
            assert_eq!(one["relative"].is_null(), !one["not_known"].is_null(), "{one}");
            let is_gravity = one["beyond_gravity"] == serde_json::json!([]);
            assert_eq!(one["not_known"].is_null(), is_gravity && one["held_kg"].is_null(), "{one}");
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
        let is_gravity = one["beyond_gravity"] == serde_json::json!([]);
        assert!(one["peak_moment_nm"].is_null() && one["not_known"].is_null() == is_gravity, "{one}");
    }
    assert_eq!(alone["steps"], with_stature["steps"]);
    assert!(!alone["steps"].as_array().expect("a list").is_empty());
}

/// A woman of 45 kg: the record of `cases/light-arm-heavy-weight.md`, here from the small example.
fn light(files: &Written) -> String {
    let text = std::fs::read_to_string(crate::runs::root().join("examples/small-cuff.toml")).expect("an example");
    files.file("light.toml", text.replace("[patient]", "[patient]\nmass = \"45 kg\"\nstature = \"152 cm\""))
}

#[test]
fn every_load_stands_at_its_own_day() {
    let files = Written::new();
    let record = light(&files);
    let document = mendarc(&["ladder", &record, "--json"]).document();
    let of = |id: &str| -> Vec<(u64, Value)> {
        let all = exercises(&document).iter().filter(|one| one["id"] == id && one["stage"] == "strengthening");
        all.map(|one| (one["from_day"].as_u64().expect("a day"), one["held_kg"].clone())).collect()
    };
    // The load ladder of the staged protocol: 2.27 kg from day 84, 4.54 kg from day 112.
    assert_eq!(of("biceps-curl"), [(84, serde_json::json!(2.27)), (112, serde_json::json!(4.54))]);
    // And what a day's prescription gives is what the ladder has told of that day or before.
    let plan = mendarc(&["prescribe", &record, "--json"]).document();
    for span in plan["spans"].as_array().expect("spans") {
        for line in span["exercises"].as_array().expect("exercises") {
            let from = |one: &&Value| {
                one["id"] == line["id"]
                    && one["stage"] == span["stage"]
                    && one["from_day"].as_u64() <= span["from_day"].as_u64()
                    && (line["load_kg"].is_null() || one["held_kg"] == line["load_kg"])
            };
            assert!(exercises(&document).iter().any(|one| from(&one)), "{line} on day {}", span["from_day"]);
        }
    }
    let page = mendarc(&["ladder", &record]).stdout;
    let curls: Vec<&str> = page.lines().filter(|line| line.trim().starts_with("Elbow bends with a weight  ")).collect();
    assert!(!curls[0].contains("(day ") && curls[0].contains("2.27 kg"), "{page}");
    assert!(curls[1].contains("22 Jun 2026 (day 112)") && curls[1].contains("4.54 kg"), "{page}");
    let press = page.lines().find(|line| line.contains("Press outward")).expect("it is given");
    assert!(press.contains("20 Apr 2026 (day 49)") && press.contains('–'), "{press}");
}

#[test]
fn columns_stay_apart() {
    for options in [["170", "70"], ["152", "45"]] {
        let page = mendarc(&["ladder", "--stature-cm", options[0], "--mass-kg", options[1]]).stdout;
        let head = page.lines().find(|line| line.trim_start().starts_with("weight  ")).expect("the columns");
        let [weight, times] = ["weight", "times"].map(|name| head.find(name).expect("a column"));
        let (mut rows, mut ungraded) = (0, 0);
        for line in page.lines().skip_while(|line| *line != head).skip(1).take_while(|line| !line.is_empty()) {
            if line.trim_start().starts_with("Not ranked") {
                continue;
            }
            let signs: Vec<char> = line.chars().collect();
            let between = |end: usize| signs[end - 2..end].iter().collect::<String>();
            let is_ranked = !line.contains('–');
            assert_eq!(between(weight), "  ", "{line}");
            assert!(!is_ranked || between(times) == "  ", "{line}");
            rows += 1;
            ungraded += usize::from(!is_ranked);
            // No number runs into its neighbor.
            let cells: Vec<&str> = line.split("  ").map(str::trim).filter(|cell| !cell.is_empty()).collect();
            let numbers = cells.iter().filter(|cell| cell.starts_with(|sign: char| sign.is_ascii_digit()));
            assert!(numbers.clone().all(|cell| cell.matches('.').count() <= 2), "{line}");
        }
        assert!(rows > 100 && ungraded > 20, "{page}");
    }
}

#[test]
fn where_nothing_is_known_of_a_step_none_is_not_said() {
    let page = mendarc(&["ladder", "examples/small-cuff.toml"]).stdout;
    let steps = page.split("\nSteps\n").nth(1).and_then(|rest| rest.split("\n\n").next()).expect("the steps");
    assert!(!steps.contains("none"), "{steps}");
    assert!(steps.contains("exercises with a weight have no number (give mass)"), "{steps}");
    assert!(steps.contains("Bands, presses, body weight and speed are not measured here."), "{steps}");
    let document = mendarc(&["ladder", "examples/small-cuff.toml", "--json"]).document();
    assert_eq!(document["steps"], serde_json::json!([]));
    let left_out = document["steps_leave_out"].as_array().expect("a list");
    let why = |id: &str| &left_out.iter().find(|one| one["exercise"] == id).expect("it is left out")["why"];
    assert_eq!(why("biceps-curl"), "a weight is held and the body mass is not known");
    assert_eq!(why("wall-push-up"), "its load is not gravity");
}

#[test]
fn a_raise_is_compared_with_raises() {
    // Until day 140 the arm is raised without a weight; that elbows were bent with 4.54 kg does not count.
    let options = ["examples/small-cuff.toml", "--stature-cm", "170", "--mass-kg", "70"];
    let document = mendarc(&[&["ladder"], &options[..], &["--json"]].concat()).document();
    let steps = document["steps"].as_array().expect("a list");
    let raise = steps.iter().find(|step| step["kind"] == "raising").expect("a step");
    assert_eq!((&raise["day"], &raise["exercise"]), (&serde_json::json!(140), &serde_json::json!("full-can")));
    assert!((number(&raise["before"], "relative") - 1.0).abs() < 1e-9, "{raise}");
    // Even steps of the moment: (√2.40 − 1) / 1.40 of 2.27 kg is 0.9 kg, to the nearest half.
    assert_eq!(raise["between_kg"], serde_json::json!([1.0]));
    let page = mendarc(&[&["ladder"], &options[..]].concat()).stdout;
    let words = page.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains("2.5 times the heaviest before it (Raise a little out to the side: 1.00)"), "{page}");
}

#[test]
fn reasons_of_a_disagreement_are_true() {
    let document = mendarc(&["ladder", "--stature-cm", "170", "--mass-kg", "70", "--json"]).document();
    let pairs: Vec<&Value> = document["agreement"]
        .as_array()
        .expect("muscles")
        .iter()
        .flat_map(|of| of["out_of_order"].as_array().expect("a list"))
        .collect();
    let weight =
        |id: &Value| &exercises(&document).iter().find(|one| one["id"] == *id).expect("in the catalogue")["weight"];
    for pair in &pairs {
        let why = pair["why"].to_string();
        assert_eq!(why.contains("turning lifts"), *weight(&pair["exercise"]) == "forearm", "{pair}");
        let helped = [&pair["exercise"], &pair["heavier"]].iter().any(|id| *weight(id) == "shared");
        assert_eq!(why.contains("assumed half"), helped, "{pair}");
        assert!(!["diagonal-band"].iter().any(|id| pair["exercise"] == *id || pair["heavier"] == *id), "{pair}");
    }
    let why = |id: &str| pairs.iter().find(|pair| pair["exercise"] == id).expect("out of order")["why"].to_string();
    assert!(why("external-rotation").contains("upright, the turn meets no weight"));
    assert!(why("shrug").contains("a blade exercise: its number is only the arm's weight"));
}
