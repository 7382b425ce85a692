//! `mendarc check`: the files, the proof, and what a changed line of a protocol is told as.

use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;

use serde_json::Value;

use crate::runs::{Run, mendarc, root};

/// A copy of the shipped families in a folder of its own.
struct Copied(tempfile::TempDir);

impl Copied {
    fn new() -> Self {
        let folder = tempfile::tempdir().expect("a folder can be made");
        for family in ["cuff", "capsular-release"] {
            let to = folder.path().join(family);
            std::fs::create_dir(&to).expect("a folder can be made");
            for file in std::fs::read_dir(root().join("protocols").join(family)).expect("it is there") {
                let path = file.expect("a file of it").path();
                std::fs::copy(&path, to.join(path.file_name().expect("a name"))).expect("it can be copied");
            }
        }
        Self(folder)
    }

    fn path(&self) -> &Path {
        self.0.path()
    }

    /// Changes the first place of a text in a file.
    fn change(&self, file: &str, from: &str, to: &str) {
        let path = self.path().join(file);
        let text = std::fs::read_to_string(&path).expect("it is text");
        assert!(text.contains(from), "{file} does not hold {from}");
        std::fs::write(&path, text.replacen(from, to, 1)).expect("it can be written");
    }

    fn check(&self, more: &[&str]) -> Run {
        let path = self.path().to_string_lossy().into_owned();
        let arguments: Vec<&str> = ["check", &path].into_iter().chain(more.iter().copied()).collect();
        mendarc(&arguments)
    }
}

fn messages(document: &Value, list: &str) -> Vec<String> {
    let all = document[list].as_array().expect("a list");
    all.iter().map(|finding| finding["message"].as_str().expect("a text").to_owned()).collect()
}

#[test]
fn the_shipped_files_are_sound() {
    let run = mendarc(&["check", "protocols"]);
    assert_eq!((run.status, run.stderr.as_str()), (0, ""));
    assert!(run.stdout.contains("staged (edition 2026-11)"), "{}", run.stdout);
    // A file stands for the family it is in.
    assert_eq!(mendarc(&["check", "protocols/cuff/staged.toml"]).status, 0);
    assert_eq!(mendarc(&["check", "protocols/cuff", "protocols/cuff/rules.toml"]).status, 0);
}

#[test]
fn the_shipped_families_are_proved() {
    let run = mendarc(&["check", "protocols", "--every-record", "--json"]);
    assert_eq!(run.status, 0, "{}", run.stderr);
    let document = run.document();
    let families = document["families"].as_array().expect("families");
    assert_eq!(families.len(), 2);
    let mut records = 0;
    for family in families {
        let product: u64 = family["dimensions"]
            .as_array()
            .expect("dimensions")
            .iter()
            .map(|dimension| {
                let classes = dimension["classes"].as_array().expect("classes");
                let because = dimension["because"].as_array().expect("reasons");
                assert_eq!(classes.len(), because.len(), "{dimension}");
                assert!(because.iter().all(|reason| !reason.as_str().expect("a text").is_empty()), "{dimension}");
                classes.len() as u64
            })
            .product();
        let excluded: u64 = family["excluded"]
            .as_array()
            .expect("excluded")
            .iter()
            .map(|excluded| excluded["records"].as_u64().expect("a count"))
            .sum();
        assert_eq!(family["records"].as_u64(), Some(product - excluded), "{}", family["family"]);
        for list in ["unsafe", "looser", "stiffening"] {
            assert_eq!(family[list].as_array().map(Vec::len), Some(0), "{}", family["family"]);
        }
        assert_eq!((&family["proved"], &family["partial"]), (&Value::Bool(true), &Value::Bool(false)));
        records += family["records"].as_u64().expect("a count");
    }
    assert_eq!(document["records"].as_u64(), Some(records));
    assert!(records > 200_000, "{records}");
    for key in ["distinct_plans", "cover_comparisons", "breakpoints", "threads"] {
        assert!(document[key].as_u64().is_some_and(|count| count > 0), "{key}");
    }
    assert!(document["elapsed_s"].as_f64().is_some_and(|seconds| seconds > 0.0));
}

#[test]
fn a_changed_number_is_told_as_who_is_harmed_when_and_by_how_much() {
    // Own choice of edits; what is expected follows from the edit alone.
    let cases = [
        (
            "cuff/staged.toml",
            "up_to = \"90 deg\"",
            "up_to = \"95 deg\"",
            "unsafe",
            "days 14 to 41: passive forward elevation and passive scapular-plane elevation: allowed up to 95 degrees \
             where edition 2026-11 says allowed up to 90 degrees, 5 degrees more",
        ),
        (
            "cuff/delayed.toml",
            "until = \"day 42\"\nwear = \"always\"",
            "until = \"day 41\"\nwear = \"always\"",
            "unsafe",
            "day 41: the sling is worn \"none\" where edition 2026-11 says \"always\"",
        ),
        (
            "cuff/delayed.toml",
            "{ from = \"day 42\", until = \"day 70\", up_to = \"30 deg\" }",
            "{ from = \"day 43\", until = \"day 70\", up_to = \"30 deg\" }",
            "stiffening",
            "day 42: passive external rotation: not allowed where edition 2026-11 says allowed up to 30 degrees",
        ),
        (
            "capsular-release/release.toml",
            "until = \"day 42\", up_to = \"2.27 kg\"",
            "until = \"day 42\", up_to = \"3 kg\"",
            "unsafe",
            "days 14 to 41: hand load: allowed up to 3 kg where edition 2026-11 says allowed up to 2.27 kg, 0.73 kg more",
        ),
    ];
    for (file, from, to, list, message) in cases {
        let copied = Copied::new();
        copied.change(file, from, to);
        let run = copied.check(&["--every-record", "--json"]);
        assert_eq!(run.status, 1, "{to}: {}", run.stderr);
        assert!(run.codes("error").contains(&"number-without-evidence".to_owned()), "{:?}", run.codes("error"));
        let document = run.document();
        let told = messages(&document, list);
        let place = told.iter().position(|told| told == message).unwrap_or_else(|| panic!("{message}\n{told:#?}"));
        let finding = &document[list][place];
        assert!(finding["records"].as_u64().is_some_and(|records| records > 0), "{finding}");
        let record = finding["record"].as_str().expect("a record");
        let mut sink = diagnostic::Sink::new();
        assert!(operative::read(diagnostic::FileId(0), record, &mut sink).is_some() && !sink.has_errors(), "{record}");
    }
}

#[test]
fn the_shortest_explanation_stands_first() {
    let copied = Copied::new();
    copied.change(
        "cuff/rules.toml",
        "id = \"subscapularis-complete\"\ntitle = \"subscapularis repair, complete or open: external rotation opens in slow steps\"\nwhen = [{ fact = \"subscapularis\", at_least = \"complete or open\" }]",
        "id = \"subscapularis-complete\"\ntitle = \"subscapularis repair, complete or open: external rotation opens in slow steps\"\nwhen = [{ fact = \"subscapularis\", has = \"upper part, arthroscopic\" }]",
    );
    let run = copied.check(&["--every-record"]);
    assert_eq!(run.status, 1);
    let text = run.stdout.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(
        text.contains("subscapularis: \"complete or open\" in place of \"upper part, arthroscopic\" loosens the plan:"),
        "{text}"
    );
    let place = |what: &str| run.stdout.find(what).unwrap_or(usize::MAX);
    assert!(place("loosens the plan") < place("[patient]"), "words before the record");
    assert!(place("[patient]") < place("what was gone through"), "findings before the counts");
}

#[test]
fn what_cannot_be_checked_is_told() {
    let nothing = tempfile::tempdir().expect("a folder can be made");
    let path = nothing.path().to_string_lossy().into_owned();
    let cases: [(&[&str], i32, &str); 5] = [
        (&["check", &path], 2, "no-family"),
        (&["check", "no/such/folder"], 2, "cannot-read"),
        (&["check", "examples/small-cuff.toml"], 2, "no-family"),
        (&["check"], 2, "usage"),
        (&["check", "protocols", "--singly"], 2, "usage"),
    ];
    for (arguments, status, code) in cases {
        let run = mendarc(arguments);
        assert_eq!((run.status, run.stdout.as_str()), (status, ""), "{arguments:?}: {}", run.stderr);
        let with_json: Vec<&str> = arguments.iter().copied().chain(["--json"]).collect();
        let run = mendarc(&with_json);
        assert_eq!(run.status, status, "{arguments:?}");
        assert_eq!(run.codes("error"), [code], "{arguments:?}");
    }
    let copied = Copied::new();
    copied.change("cuff/staged.toml", "[[stage]]", "[[stage");
    let run = copied.check(&["--every-record", "--json"]);
    assert_eq!(run.status, 1);
    assert!(run.document().get("records").is_none(), "no numbers of a proof that was not begun");
    copied.change("cuff/staged.toml", "[[stage", &"=".repeat(1 << 20));
    let run = copied.check(&["--every-record", "--json"]);
    assert_eq!(run.status, 1);
    assert!(run.codes("error").contains(&"file-too-large".to_owned()), "{:?}", run.codes("error"));
}

#[test]
fn two_folders_of_one_family_are_told() {
    let copied = Copied::new();
    let path = copied.path().join("cuff").to_string_lossy().into_owned();
    let run = mendarc(&["check", "protocols/cuff", &path, "--json"]);
    assert_eq!((run.status, run.codes("error")), (1, vec!["duplicate-id".to_owned()]));
}

#[test]
fn a_proof_that_is_interrupted_leaves_a_partial_report() {
    let mut running = Command::new(assert_cmd::cargo::cargo_bin!("mendarc"))
        .current_dir(root())
        .args(["check", "protocols/cuff", "--every-record", "--singly", "--json"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the binary runs");
    // Every record by itself takes minutes, so that it is still at work after a moment.
    std::thread::sleep(Duration::from_secs(2));
    let id = running.id().to_string();
    let stopped = Command::new("kill").args(["-INT", &id]).status().expect("a signal can be sent");
    assert!(stopped.success() && running.try_wait().is_ok_and(|ended| ended.is_none()), "it had ended by itself");
    let output = running.wait_with_output().expect("it ends");
    assert_eq!(output.status.code(), Some(1), "{}", String::from_utf8_lossy(&output.stderr));
    let document: Value = serde_json::from_slice(&output.stdout).expect("one whole document");
    assert_eq!((&document["partial"], &document["proved"]), (&Value::Bool(true), &Value::Bool(false)));
    let codes: Vec<&str> =
        document["diagnostics"].as_array().expect("a list").iter().filter_map(|found| found["code"].as_str()).collect();
    assert_eq!(codes, ["proof-stopped"]);
}
