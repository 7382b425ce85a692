//! The sheet for going home, the list of activities, and explanations of what stands in a prescription.

use std::collections::BTreeSet;

use serde_json::Value;

use crate::runs::{Written, mendarc};

#[test]
fn no_sheet_goes_out_without_both_numbers() {
    let files = Written::new();
    let base = ["first-days", "--date", "2026-03-02", "--side", "right"];
    let with = |settings: &str| {
        let path = files.file("settings.toml", settings);
        let folder = files.path("out");
        let arguments: Vec<&str> =
            base.iter().copied().chain(["--settings", &path, "--out", &folder, "--json"]).collect();
        let run = mendarc(&arguments);
        assert!(!std::path::Path::new(&folder).exists(), "{settings}");
        (run.status, run.codes("error"))
    };
    let refused = |settings| assert_eq!(with(settings), (1, vec!["no-number-to-call".to_owned()]), "{settings}");
    refused("[contact]\nday = \"555-0100\"\n");
    refused("[contact]\nnight = \"555-0101\"\n");
    refused("[clinic]\ndays = [\"Mon\"]\n");
    assert!(with("[contact]\nday = \"\"\nnight = \"555-0101\"\n").1.contains(&"no-number".to_owned()));
    let bare = mendarc(&base);
    assert_eq!((bare.status, &bare.stdout[..]), (1, ""));
}

#[test]
fn the_sheet_carries_side_date_and_both_numbers() {
    let files = Written::new();
    let folder = files.path("out");
    let arguments = ["first-days", "--date", "2026-03-02", "--side", "left", "--settings", "examples/practice.toml"];
    let run = mendarc(&arguments);
    assert_eq!(run.status, 0, "{}", run.stderr);
    for wanted in ["LEFT", "2 Mar 2026", "555-0100", "555-0101"] {
        assert!(run.stdout.contains(wanted), "{wanted}: {}", run.stdout);
    }
    assert!(!run.stdout.contains("RIGHT"), "{}", run.stdout);
    let out: Vec<&str> = arguments.iter().copied().chain(["--out", &folder]).collect();
    assert_eq!(mendarc(&out).status, 0);
    let written = std::fs::read_to_string(format!("{folder}/first-days.txt")).expect("the sheet was written");
    assert!(written.contains("555-0100") && written.contains("LEFT"));
    let json: Vec<&str> = arguments.iter().copied().chain(["--json"]).collect();
    let document = mendarc(&json).document();
    let text = document.to_string();
    for wanted in ["LEFT", "555-0100", "555-0101"] {
        assert!(text.contains(wanted), "{wanted}");
    }
    assert!(document["cautions"].as_array().is_some_and(|cautions| !cautions.is_empty()));
}

/// From date and side alone: the sheet names no degrees and no exercise of the shoulder's.
#[test]
fn the_sheet_is_no_prescription() {
    let run =
        mendarc(&["first-days", "--date", "2026-03-02", "--side", "left", "--settings", "examples/practice.toml"]);
    let text = run.stdout.to_lowercase();
    for word in ["pendulum", "stick", "degrees", " deg"] {
        assert!(!text.contains(word), "{word}: {text}");
    }
}

#[test]
fn activities_are_listed_and_each_has_an_answer() {
    let document = mendarc(&["may", "--list", "--json"]).document();
    let activities = document["activities"].as_array().expect("a list");
    assert!(activities.len() >= 30, "{}", activities.len());
    let ids: Vec<&str> = activities.iter().filter_map(|activity| activity["id"].as_str()).collect();
    for wanted in ["drive", "desk-work", "manual-work"] {
        assert!(ids.contains(&wanted), "{wanted}");
    }
    for activity in activities {
        let title = activity["title"].as_str().unwrap_or_default();
        assert!(!title.is_empty() && !title.contains("activity-"), "{activity}");
    }
    assert!(mendarc(&["may", "--list"]).stdout.contains("desk-work"));
    for id in ids {
        let run = mendarc(&["may", id, "examples/small-cuff.toml", "--on", "2026-03-05", "--json"]);
        assert_eq!(run.status, 0, "{id}: {}", run.stderr);
        let answer = run.document();
        assert!(["yes", "not before", "ask"].contains(&answer["answer"].as_str().unwrap_or("")), "{answer}");
        let reasons = answer["because"].as_array().expect("a list of reasons");
        assert!(!reasons.is_empty() || answer["answer"] == "yes", "{id} has no reason");
        assert!(answer["day"].is_u64() && answer["date"].is_string(), "{answer}");
    }
}

/// Why of a number is a lookup: every exercise and every rule behind a limit is explained, and some of each
/// hundred ids of evidence; that all of those are in the table is asked of the table.
#[test]
fn whatever_stands_behind_a_limit_can_be_explained() {
    let document = mendarc(&["prescribe", "examples/cuff-with-tenodesis.toml", "--json"]).document();
    let mut ids = BTreeSet::new();
    evidence_of(&document, &mut ids);
    assert!(ids.len() > 50, "{}", ids.len());
    let mut topics: BTreeSet<String> = ids.iter().step_by(10).cloned().collect();
    for id in &ids {
        assert!(evidence::entry(id).is_some(), "{id} is not in the table of evidence");
    }
    for span in document["spans"].as_array().expect("spans") {
        let lines = span["exercises"].as_array().expect("exercises");
        topics.extend(lines.iter().filter_map(|line| line["id"].as_str()).map(str::to_owned));
        let limits = span["limits"].as_array().expect("limits");
        let reasons = limits.iter().flat_map(|limit| limit["reasons"].as_array().expect("reasons"));
        topics.extend(reasons.filter_map(|reason| reason["rule"].as_str()).map(str::to_owned));
    }
    for topic in topics {
        let run = mendarc(&["explain", &topic, "--json"]);
        assert_eq!(run.status, 0, "`{topic}` is not explained: {}", run.stderr);
        assert!(run.document().to_string().contains(&topic), "{topic}");
    }
}

/// Every id of the table of evidence that a document names.
fn evidence_of(value: &Value, topics: &mut BTreeSet<String>) {
    match value {
        Value::Array(items) => items.iter().for_each(|item| evidence_of(item, topics)),
        Value::Object(fields) => {
            for (key, field) in fields {
                match field {
                    Value::Array(ids) if key == "evidence" => {
                        topics.extend(ids.iter().filter_map(Value::as_str).map(str::to_owned));
                    }
                    _ => evidence_of(field, topics),
                }
            }
        }
        _ => {}
    }
}

#[test]
fn tablets_in_another_language_than_the_sheet_are_told_and_never_translated() {
    let files = crate::runs::Written::new();
    let numbers = "[contact]\nday = \"555-0100\"\nnight = \"555-0101\"\n[paper]\ntablets = \"One white tablet at 8\"\n";
    let one = files.file("one.toml", numbers);
    let both = files.file("both.toml", format!("{numbers}tablets_es = \"Una pastilla blanca a las 8\"\n"));
    let run = |settings: &str, language: &str| {
        let arguments =
            ["first-days", "--date", "2026-03-02", "--side", "left", "--settings", settings, "--language", language];
        crate::runs::mendarc(&[&arguments[..], &["--json"]].concat())
    };
    for (settings, language, warned, told) in [
        (&one, "en", 0, "One white tablet at 8"),
        (&one, "es", 1, "One white tablet at 8"),
        (&both, "en", 0, "One white tablet at 8"),
        (&both, "es", 0, "Una pastilla blanca a las 8"),
    ] {
        let run = run(settings, language);
        assert_eq!((run.status, run.codes("warning").len()), (0, warned), "{language}: {}", run.stdout);
        assert!(run.stdout.contains(told), "{language}: {}", run.stdout);
        assert_eq!(run.stdout.contains("white tablet"), told.starts_with("One"), "{language}");
    }
}
