//! Exit statuses: 0 done, 1 findings, 2 could not run; and one document whatever happened.

use crate::runs::{Written, example_records, mendarc};

const SMALL: &str = "examples/small-cuff.toml";

/// A run with its status, in human form and with `--json`, where one error has the code.
#[track_caller]
fn fails(arguments: &[&str], status: i32, code: &str) {
    let spoken = mendarc(arguments);
    assert_eq!(spoken.status, status, "{arguments:?}: {}", spoken.stderr);
    assert_eq!(spoken.stdout, "", "{arguments:?}: nothing partial is printed");
    assert!(!spoken.stderr.is_empty(), "{arguments:?}: stderr says why");
    assert!(!spoken.stderr.contains("panicked") && !spoken.stderr.contains("internal-fault"), "{}", spoken.stderr);
    let with_json: Vec<&str> = arguments.iter().copied().chain(["--json"]).collect();
    let run = mendarc(&with_json);
    assert_eq!(run.status, status, "{with_json:?}: {}", run.stderr);
    assert!(run.codes("error").iter().any(|found| found == code), "{with_json:?}: {:?}", run.codes("error"));
    let document = run.document();
    for key in ["protocol", "spans", "answer", "sections"] {
        assert!(document.get(key).is_none(), "{with_json:?}: `{key}` in a document of a run that failed");
    }
    for found in document["diagnostics"].as_array().expect("a list") {
        for key in ["code", "severity", "message", "file", "line", "column", "helps"] {
            assert!(found.get(key).is_some(), "`{key}` is missing in {found}");
        }
        assert_eq!(found["line"].is_null(), found["file"].is_null(), "{found}");
    }
}

#[test]
fn every_example_prescribes() {
    for record in example_records() {
        for settings in [&[][..], &["--settings", "examples/practice.toml"]] {
            let arguments: Vec<&str> = ["prescribe", &record].into_iter().chain(settings.iter().copied()).collect();
            let run = mendarc(&arguments);
            assert_eq!(run.status, 0, "{record}: {}", run.stderr);
            assert!(run.stdout.contains("Only under the care of the operating surgeon"), "{record}");
        }
    }
}

#[test]
fn what_could_not_run_is_2() {
    let files = Written::new();
    fails(&["prescribe", "examples/no-such-file.toml"], 2, "cannot-read");
    fails(&["prescribe", "examples"], 2, "cannot-read");
    fails(&["prescribe", SMALL, "--settings", &files.path("nothing.toml")], 2, "cannot-read");
    fails(&["prescribe", SMALL, "--opened", "examples"], 2, "cannot-read");
    fails(&["prescribe", SMALL, "--other", "examples/no-such-file.toml"], 2, "cannot-read");
    fails(&["prescribe", SMALL, "--language", "fr"], 2, "language-not-there");
    fails(&["prescribe", SMALL, "--on", "20.4.2026"], 2, "usage");
    fails(&["prescribe", SMALL, "--on", "2026-02-29"], 2, "usage");
    fails(&["prescribe", SMALL, "--no-such-option"], 2, "usage");
    fails(&["prescribe"], 2, "usage");
    fails(&["may", "drive", SMALL], 2, "usage");
    fails(&["may", "drive", SMALL, "--on", "2026-04-31"], 2, "usage");
    fails(&["first-days", "--date", "2026-03-02", "--side", "both"], 2, "usage");
    fails(&["first-days", "--date", "2026-3-2", "--side", "left"], 2, "usage");
    fails(&["no-such-command"], 2, "usage");
    fails(&[], 2, "usage");
    let taken = files.file("taken", "a file, not a folder");
    fails(&["prescribe", SMALL, "--out", &taken], 2, "cannot-write");
}

#[test]
fn what_was_found_is_1() {
    let files = Written::new();
    let faulty = files.file("faulty.toml", "[patient]\nbirth_date = 1970-01-01\n");
    fails(&["prescribe", &faulty], 1, "missing-key");
    fails(&["may", "drive", &faulty, "--on", "2026-04-20"], 1, "missing-key");
    fails(&["prescribe", SMALL, "--on", "2026-03-01"], 1, "before-surgery");
    fails(&["may", "drive", SMALL, "--on", "2026-03-01"], 1, "before-surgery");
    fails(&["may", "fly", SMALL, "--on", "2026-04-20"], 1, "unknown-activity");
    fails(&["prescribe", SMALL, "--protocol", "stagged"], 1, "unknown-protocol");
    fails(&["prescribe", SMALL, "--protocol", "early-passive"], 1, "choice-without-reason");
    fails(&["prescribe", SMALL, "--other", SMALL], 1, "same-side");
    fails(&["explain", "no-such-code-at-all"], 1, "no-such-topic");
    let settings = files.file("settings.toml", "[contakt]\nday = \"555-0100\"\n");
    fails(&["prescribe", SMALL, "--settings", &settings], 1, "unknown-key");
    fails(&["first-days", "--date", "2026-03-02", "--side", "left", "--settings", &settings], 1, "unknown-key");
    let opened = files.file("opened.toml", "[[opened]]\nstage = \"passive\"\n");
    fails(&["prescribe", SMALL, "--opened", &opened], 1, "missing-key");
}

#[test]
fn questions_notes_and_answers_leave_it_0() {
    let run = mendarc(&["prescribe", "examples/sparse.toml", "--json"]);
    assert_eq!(run.status, 0, "{}", run.stderr);
    let document = run.document();
    assert!(document["questions"].as_array().is_some_and(|questions| !questions.is_empty()));
    assert!(run.codes("note").contains(&"not-recorded".to_owned()));
    let run = mendarc(&["may", "drive", SMALL, "--on", "2026-04-20", "--json"]);
    assert_eq!((run.status, run.document()["answer"].as_str()), (0, Some("not before")));
    assert_eq!((run.document()["day"].as_u64(), run.document()["date"].as_str()), (Some(56), Some("2026-04-27")));
    // A stricter protocol is not a loosening, and may be asked for without a reason.
    let run = mendarc(&["prescribe", SMALL, "--protocol", "delayed", "--json"]);
    assert_eq!((run.status, run.document()["protocol"]["id"].as_str()), (0, Some("delayed")), "{}", run.stderr);
    for help in [&["--help"][..], &["-h"], &["prescribe", "--help"], &["--version"]] {
        let run = mendarc(help);
        assert_eq!((run.status, run.stdout.is_empty()), (0, false), "{help:?}");
    }
    assert!(mendarc(&["prescribe", "--help"]).stdout.contains("Not an emergency service"));
}
