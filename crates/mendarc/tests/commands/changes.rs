//! Change one line of a record, and only what that line decides changes.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use crate::runs::{Written, mendarc, root};

/// The document of the small example with one line changed.
fn with(changes: &[(&str, &str)]) -> Value {
    let mut text = std::fs::read_to_string(root().join("examples/small-cuff.toml")).expect("an example");
    for (old, new) in changes {
        assert_eq!(text.matches(old).count(), 1, "`{old}`");
        text = text.replace(old, new);
    }
    let files = Written::new();
    let run = mendarc(&["prescribe", &files.file("record.toml", text), "--json"]);
    assert_eq!(run.status, 0, "{}", run.stderr);
    run.document()
}

/// What the limits say of every key on every day.
fn limits(document: &Value) -> BTreeMap<(String, u64), String> {
    let mut said = BTreeMap::new();
    for span in document["spans"].as_array().expect("spans") {
        let days = span["from_day"].as_u64().expect("a day")..span["until_day"].as_u64().expect("a day");
        for limit in span["limits"].as_array().expect("limits") {
            let key =
                ["joint", "movement", "position", "mode"].map(|key| limit[key].as_str().unwrap_or_default()).join("/");
            let value = ["allowed", "max_deg", "max_load_kg", "max_effort_percent"].map(|key| limit[key].to_string());
            for day in days.clone() {
                said.insert((key.clone(), day), value.join(" "));
            }
        }
    }
    said
}

/// The keys whose limit differs on any day.
fn changed_keys(before: &Value, after: &Value) -> BTreeSet<String> {
    let (before, after) = (limits(before), limits(after));
    let keys = before.keys().chain(after.keys()).cloned().collect::<BTreeSet<_>>();
    keys.into_iter().filter(|key| before.get(key) != after.get(key)).map(|(key, _)| key).collect()
}

/// The sling and the exercises of every day, by what is asked about.
fn by_day<T: Ord>(document: &Value, pick: impl Fn(&Value) -> Vec<T>) -> BTreeMap<u64, Vec<T>> {
    let spans = document["spans"].as_array().expect("spans");
    spans
        .iter()
        .flat_map(|span| {
            let days = span["from_day"].as_u64().expect("a day")..span["until_day"].as_u64().expect("a day");
            days.map(|day| (day, pick(span))).collect::<Vec<_>>()
        })
        .collect()
}

fn sling(span: &Value) -> Vec<String> {
    vec![span["sling"]["wear"].to_string(), span["sling"]["position"].to_string()]
}

/// Exercises of a joint with their dose, without reasons.
fn exercises(span: &Value, joints: &[&str]) -> Vec<String> {
    let all = span["exercises"].as_array().expect("exercises").iter();
    all.filter(|line| joints.contains(&line["joint"].as_str().unwrap_or_default()))
        .map(|line| ["id", "sets", "repetitions", "target_deg", "load_kg"].map(|key| line[key].to_string()).join(" "))
        .collect()
}

#[test]
fn a_tenodesis_changes_the_elbow_and_the_palm_alone() {
    let before = with(&[]);
    let after = with(&[("biceps = \"none\"", "biceps = \"tenodesis\"")]);
    let expected: BTreeSet<String> = [
        "elbow/flexion/any/active-assisted",
        "elbow/flexion/any/active",
        "elbow/extension/any/end-range stretch",
        "forearm/supination/any/active-assisted",
        "forearm/supination/any/active",
    ]
    .map(str::to_owned)
    .into();
    let changed = changed_keys(&before, &after);
    // Stretch of bending rests on passive bending, which stays open.
    assert_eq!(changed, expected);
    for key in ["operation", "stages", "visits", "indices", "questions", "returns"] {
        assert_eq!(before[key], after[key], "{key}");
    }
    assert_eq!(before["protocol"], after["protocol"]);
    assert_eq!(by_day(&before, sling), by_day(&after, sling));
    let shoulder = |span: &Value| exercises(span, &["shoulder", "scapula", "wrist", "hand", "whole arm"]);
    assert_eq!(by_day(&before, shoulder), by_day(&after, shoulder));
    let elbow = |span: &Value| exercises(span, &["elbow", "forearm"]);
    assert_ne!(by_day(&before, elbow), by_day(&after, elbow));
}

#[test]
fn the_other_arm_changes_exercises_and_no_limit() {
    let before = with(&[]);
    let after = with(&[("shoulder = \"sound\"", "shoulder = \"painful\"")]);
    assert_eq!(changed_keys(&before, &after), BTreeSet::new());
    assert_eq!(by_day(&before, sling), by_day(&after, sling));
    let all = |span: &Value| exercises(span, &["shoulder"]);
    assert_ne!(by_day(&before, all), by_day(&after, all));
}

#[test]
fn what_only_the_index_reads_changes_the_index_alone() {
    let before = with(&[]);
    let after = with(&[("bone_density_t_score = -1.0", "bone_density_t_score = -2.5")]);
    assert_eq!(after["indices"][0]["score"].as_u64(), Some(2));
    for key in ["protocol", "stages", "spans", "first_allowed", "questions", "visits", "returns"] {
        assert_eq!(before[key], after[key], "{key}");
    }
}

#[test]
fn the_patients_label_and_side_change_nothing_else() {
    let before = with(&[]);
    let after = with(&[("side = \"right\"", "side = \"left\""), ("id = \"harbor-01\"", "id = \"quay-17\"")]);
    for key in ["protocol", "stages", "spans", "first_allowed", "indices", "questions", "visits", "returns"] {
        assert_eq!(before[key], after[key], "{key}");
    }
}

#[test]
fn a_millimeter_at_the_border_changes_the_protocol() {
    let below = with(&[("anteroposterior = \"18 mm\"", "anteroposterior = \"29.9 mm\"")]);
    let at = with(&[("anteroposterior = \"18 mm\"", "anteroposterior = \"30.0 mm\"")]);
    let id = |document: &Value| document["protocol"]["id"].as_str().map(str::to_owned);
    assert_eq!((id(&below).as_deref(), id(&at).as_deref()), (Some("staged"), Some("delayed")));
}
