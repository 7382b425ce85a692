//! The document of a prescription: its keys, its days without a gap, and the file `--out` writes.

use serde_json::Value;

use crate::runs::{Written, example_records, mendarc};

#[track_caller]
fn has(object: &Value, keys: &[&str]) {
    for key in keys {
        assert!(object.get(key).is_some(), "`{key}` is missing in {object}");
    }
}

fn items<'v>(object: &'v Value, key: &str) -> &'v [Value] {
    object[key].as_array().unwrap_or_else(|| panic!("`{key}` is no list in {object}"))
}

#[test]
fn every_example_has_the_keys_of_the_contract_and_no_gap() {
    for record in example_records() {
        let run = mendarc(&["prescribe", &record, "--json"]);
        let document = run.document();
        assert_eq!(document["schema"], "mendarc.prescription/1");
        has(&document, &["operation", "protocol", "stages", "spans", "first_allowed", "indices", "questions"]);
        has(&document, &["visits", "cautions", "diagnostics"]);
        has(&document["operation"], &["date", "side"]);
        has(&document["protocol"], &["id", "edition", "sha256", "why"]);
        assert_eq!(document["protocol"]["sha256"].as_str().map(str::len), Some(64), "{record}");
        assert!(!items(&document["protocol"], "why").is_empty(), "{record}");
        assert!(!items(&document, "cautions").is_empty(), "{record}");
        for stage in items(&document, "stages") {
            has(stage, &["id", "title", "from_day", "from", "opened", "criteria"]);
        }
        let mut next = 0;
        for span in items(&document, "spans") {
            has(span, &["from_day", "until_day", "from", "until", "stage", "sling", "limits", "goals", "exercises"]);
            assert_eq!(span["from_day"].as_u64(), Some(next), "{record}: a gap");
            next = span["until_day"].as_u64().expect("a day");
            assert!(next > span["from_day"].as_u64().unwrap_or(0), "{record}: an empty run of days");
            has(&span["sling"], &["wear", "position", "except", "reasons"]);
            rows(span, &record);
        }
        assert_eq!(next, 365, "{record}");
        for first in items(&document, "first_allowed") {
            has(first, &["joint", "movement", "mode", "day", "date", "reasons"]);
        }
    }
}

fn rows(span: &Value, record: &str) {
    for limit in items(span, "limits") {
        has(
            limit,
            &["joint", "movement", "position", "mode", "allowed", "max_deg", "max_load_kg", "max_effort_percent"],
        );
        let bounds = ["max_deg", "max_load_kg", "max_effort_percent"].map(|key| limit[key].as_f64());
        let counted = bounds.iter().flatten().count();
        assert_eq!(counted, usize::from(limit["allowed"] == "up_to"), "{record}: {limit}");
        if limit["joint"] == "whole arm" {
            assert_eq!(
                (limit["position"].as_str(), limit["mode"].as_str()),
                (Some("any"), Some("resisted")),
                "{limit}"
            );
            assert_ne!(limit["max_load_kg"].as_f64(), Some(0.0), "{limit}");
        }
        let reasons = items(limit, "reasons");
        assert!(!reasons.is_empty(), "{record}: a limit without a reason: {limit}");
        for reason in reasons {
            has(reason, &["rule", "evidence", "record"]);
        }
    }
    let mut seen = std::collections::BTreeSet::new();
    for exercise in items(span, "exercises") {
        has(exercise, &["id", "title", "joint", "movement", "position", "mode", "sets", "repetitions", "hold_s"]);
        has(exercise, &["times_per_day", "target_deg", "load_kg", "reasons"]);
        assert!(seen.insert(exercise["id"].to_string()), "{record}: {} twice", exercise["id"]);
        assert!(!items(exercise, "reasons").is_empty(), "{record}: {exercise}");
    }
    for goal in items(span, "goals") {
        has(
            goal,
            &["joint", "movement", "position", "mode", "from_deg", "to_deg", "due_day", "held_by_limit", "reasons"],
        );
    }
}

/// Every key of the shoulder in every run of days; where named positions allow more, theirs.
#[test]
fn every_key_of_the_shoulder_is_listed_in_every_run_of_days() {
    for record in example_records() {
        let document = mendarc(&["prescribe", &record, "--json"]).document();
        for span in items(&document, "spans") {
            for key in body::ALL_KEYS.iter().filter(|key| key.joint == body::Joint::Shoulder) {
                let listed = items(span, "limits").iter().any(|limit| {
                    limit["joint"] == "shoulder"
                        && limit["movement"] == key.movement.name()
                        && limit["mode"] == key.mode.name()
                });
                assert!(listed, "{record}: {key} from day {}", span["from_day"]);
            }
        }
    }
}

#[test]
fn a_day_has_its_effective_limits_and_what_comes_next() {
    let arguments = ["prescribe", "examples/small-cuff.toml", "--opened", "examples/opened.toml", "--on", "2026-04-20"];
    let with_json: Vec<&str> = arguments.iter().copied().chain(["--json"]).collect();
    let document = mendarc(&with_json).document();
    let today = &document["today"];
    has(today, &["day", "stage", "basis", "sling", "limits", "exercises", "goals", "not_before"]);
    assert_eq!((today["day"].as_u64(), today["basis"].as_str()), (Some(49), Some("frozen")));
    assert_eq!(today["stage"], "assisted");
    assert_eq!(today["not_before"]["stage"], "active");
    assert_eq!(
        (today["not_before"]["day"].as_u64(), today["not_before"]["date"].as_str()),
        (Some(42), Some("2026-04-13"))
    );
    assert!(mendarc(&["prescribe", "examples/small-cuff.toml", "--json"]).document()["today"].is_null());
    let spoken = mendarc(&arguments);
    assert!(spoken.stdout.contains("not before Mon 13 Apr 2026"), "{}", spoken.stdout);
}

/// A run that fails writes no file.
#[test]
fn out_writes_nothing_partial() {
    let files = Written::new();
    let record = files.file("record.toml", "[patient]\n");
    let folder = files.path("out");
    assert_eq!(mendarc(&["prescribe", &record, "--out", &folder]).status, 1);
    assert!(!std::path::Path::new(&folder).exists());
}

#[test]
fn the_same_files_give_the_same_bytes() {
    let run = || mendarc(&["prescribe", "examples/subscapularis.toml", "--json"]).stdout;
    assert_eq!(run(), run());
    let page = || mendarc(&["prescribe", "examples/subscapularis.toml", "--why"]).stdout;
    assert_eq!(page(), page());
}

#[test]
fn a_page_that_is_no_terminal_has_no_color() {
    for arguments in
        [&["prescribe", "examples/small-cuff.toml"][..], &["may", "--list"], &["explain", "staged-passive-start"]]
    {
        let run = mendarc(arguments);
        assert!(!run.stdout.contains('\u{1b}') && !run.stderr.contains('\u{1b}'), "{arguments:?}");
    }
}

/// The other arm's plan is the one its own settings make: a hold there keeps the stick away longer.
///
/// By hand: the left shoulder, operated on 16 February, has active motion from its day 42, which is 30 March and day 28
/// of the right one. Held for 14 days it has it from 13 April, day 42 of the right one, where the stick ends.
#[test]
fn the_settings_of_the_other_shoulder_count() {
    let written = Written::new();
    let own = std::fs::read_to_string(crate::runs::root().join("examples/small-cuff.toml")).expect("an example");
    let operated = own.replace("shoulder = \"sound\"", "shoulder = \"operated\"\noperated_on = 2026-02-16");
    assert_ne!(own, operated);
    let record = written.file("record.toml", &operated);
    let other = own.replace("side = \"right\"", "side = \"left\"").replace("date = 2026-03-02", "date = 2026-02-16");
    let other = written.file("other.toml", other.replace("shoulder = \"sound\"", "shoulder = \"painful\""));
    let held = written.file("held.toml", "[[hold]]\nfrom_day = 20\ndays = 14\nreason = \"wound\"\n");
    let has_stick = |more: &[&str]| {
        let arguments: Vec<&str> =
            ["prescribe", &record, "--other", &other, "--json"].into_iter().chain(more.iter().copied()).collect();
        let run = mendarc(&arguments);
        assert_eq!(run.status, 0, "{}", run.stderr);
        let document = run.document();
        let spans = document["spans"].as_array().expect("spans").clone();
        let on_day = spans.iter().find(|span| {
            span["from_day"].as_u64().is_some_and(|day| day <= 30)
                && span["until_day"].as_u64().is_some_and(|day| day > 30)
        });
        let lines = on_day.expect("day 30")["exercises"].as_array().expect("exercises").clone();
        lines.iter().any(|line| line["id"] == "stick-external-rotation")
    };
    assert!(has_stick(&[]));
    assert!(!has_stick(&["--other-settings", &held]));
    let run = mendarc(&["prescribe", &record, "--other-settings", &held, "--json"]);
    assert_eq!(run.status, 2, "settings of another shoulder need its record");
}
