//! Two editions of one family, and a draft of one protocol.

use serde_json::Value;

use super::{changed, compared, list, of_key, run};
use crate::runs::{Written, mendarc, root};

/// The cuff's family in a folder of its own, with texts of one file changed.
#[track_caller]
fn edition(files: &Written, file: &str, changes: &[(&str, &str)]) -> String {
    let folder = files.path("cuff");
    std::fs::create_dir_all(&folder).expect("a folder can be made");
    for item in std::fs::read_dir(root().join("protocols/cuff")).expect("the family") {
        let path = item.expect("a file of the family").path();
        let name = path.file_name().expect("a name").to_string_lossy().into_owned();
        std::fs::copy(&path, format!("{folder}/{name}")).expect("a file can be copied");
    }
    changed(files, &format!("protocols/cuff/{file}"), &format!("cuff/{file}"), changes);
    folder
}

fn told(document: &Value) -> Vec<(String, u64, u64, String, String)> {
    list(document, "changes")
        .iter()
        .map(|change| {
            let text = |key: &str| change.get(key).and_then(Value::as_str).unwrap_or("").to_owned();
            let day = |key: &str| change[key].as_u64().expect("a day");
            let about = [text("protocol"), text("rule"), text("option")];
            let about: Vec<String> = about.into_iter().filter(|part| !part.is_empty()).collect();
            (text("key"), day("from_day"), day("until_day"), text("looser"), about.join("; "))
        })
        .collect()
}

const OWN: &str = "steps = [{ from = \"day 14\", until = \"day 42\", up_to = \"90 deg\" }, { from = \"day 42\", allowed = \"free\" }]";

/// One number of one protocol: exactly its two movements, and a draft without a source still compares.
#[test]
fn a_changed_number_changes_its_keys_alone() {
    let files = Written::new();
    let folder = edition(&files, "staged.toml", &[(OWN, &OWN.replace("90 deg", "85 deg"))]);
    let run = run(&["protocols/cuff", &folder]);
    assert_eq!((run.status, run.codes("error")), (1, vec!["number-without-evidence".to_owned()]), "{}", run.stderr);
    let document = run.document();
    assert_eq!((document["kind"].as_str(), document["same"].as_bool()), (Some("editions"), Some(false)));
    // What is passive bounds what is assisted, which starts on 28 and only lying on the back until 34.
    let rows = |movement: &str| {
        let row = |mode: &str, from: u64, until: u64| {
            (format!("shoulder/{movement}/any/{mode}"), from, until, "a".to_owned(), "staged".to_owned())
        };
        [row("passive", 14, 42), row("active-assisted", 28, 35), row("active-assisted", 35, 42)]
    };
    assert_eq!(told(&document), [rows("forward elevation"), rows("scapular-plane elevation")].concat());
    // 85 degrees are passed when 42 opens everything; 90 were there from 14.
    assert_eq!(
        of_key(&document, "shoulder/forward elevation/any/passive"),
        [(14, 42, "90 deg".to_owned(), "85 deg".to_owned(), Some(28))]
    );
    for name in ["sling", "first_allowed", "stages", "goals", "visits", "returns", "beside", "exercises"] {
        assert_eq!(list(&document, name), [] as [Value; 0], "{name}");
    }
    // The other protocols of the edition did not change.
    let other = mendarc(&["compare", "protocols/cuff", &folder, "--protocol", "delayed", "--json"]).document();
    assert_eq!(other["same"], true);
}

/// A line that only another option reads is told with that option.
#[test]
fn a_number_behind_a_choice_is_told_with_the_choice() {
    let files = Written::new();
    let wide = "steps = [{ from = \"day 14\", until = \"day 42\", up_to = \"45 deg\" }, { from = \"day 42\", allowed = \"free\" }]";
    let folder = edition(&files, "staged.toml", &[(wide, &wide.replace("45 deg", "40 deg"))]);
    let document = run(&["protocols/cuff", &folder]).document();
    let row = |mode: &str, from: u64, until: u64| {
        let key = format!("shoulder/external rotation/any/{mode}");
        (key, from, until, "a".to_owned(), "staged; external-rotation-limit: 45 deg".to_owned())
    };
    assert_eq!(
        told(&document),
        [row("passive", 14, 42), row("active-assisted", 28, 35), row("active-assisted", 35, 42)]
    );
}

/// A rule is told as a cap: `free` is where it leaves a key alone.
#[test]
fn a_changed_rule_is_told_by_its_name() {
    let files = Written::new();
    let step = "{ from = \"day 70\", until = \"day 84\", up_to = \"90 deg\" },\n";
    let folder = edition(&files, "rules.toml", &[(step, "")]);
    let document = compared(&["protocols/cuff", &folder]);
    let told = told(&document);
    assert!(!told.is_empty());
    for (key, from, until, looser, about) in &told {
        assert!(key.starts_with("shoulder/external rotation/any/"), "{key}");
        assert_eq!((*from, *until, looser.as_str(), about.as_str()), (70, 84, "b", "subscapularis-complete"));
    }
    assert_eq!(
        of_key(&document, "shoulder/external rotation/any/passive"),
        [(70, 84, "90 deg".to_owned(), "free".to_owned(), Some(14))]
    );
    let page = mendarc(&["compare", "protocols/cuff", &folder]).stdout;
    assert!(page.contains("only where the rule subscapularis-complete fires"), "{page}");
    assert!(page.contains("up to 90 degrees in A, left alone in B"), "{page}");
}

/// Who gets a rule is a change of the plan, though no number changed.
#[test]
fn a_changed_condition_is_not_the_same_plan() {
    let files = Written::new();
    let at = "title = \"high tension: the delayed protocol caps the plan\"\nwhen = [{ fact = \"tension\", at_least = \"high\" }]";
    let looser = at.replace("fact = \"tension\", at_least = \"high\"", "fact = \"revision\", has = \"yes\"");
    let folder = edition(&files, "rules.toml", &[(at, &looser)]);
    let document = compared(&["protocols/cuff", &folder]);
    assert_eq!(document["same"], false);
    let beside = list(&document, "beside");
    let [line] = beside else { panic!("{beside:?}") };
    assert_eq!((line["what"].as_str(), line["rule"].as_str()), (Some("rule"), Some("high-tension")));
    assert_eq!(line["only_in_a"][0], "fires where tension high/unknown; delayed caps the plan");
    assert_eq!(line["only_in_b"][0], "fires where revision yes/unknown; delayed caps the plan");
}

/// A file that stands alone is read with the family of the other one.
#[test]
fn a_draft_of_one_protocol_compares_with_the_file_it_came_from() {
    let files = Written::new();
    let title = "title = \"passive elevation\"";
    let same =
        changed(&files, "protocols/cuff/staged.toml", "draft.toml", &[(title, "title = \"raised by the other arm\"")]);
    let document = compared(&["protocols/cuff/staged.toml", &same]);
    assert_eq!(
        (document["same"].as_bool(), document["note"].as_str()),
        (Some(true), Some("the same plan; the files differ in words or sources alone"))
    );
    let gate = changed(&files, "protocols/cuff/staged.toml", "gate.toml", &[(OWN, &OWN.replacen("14", "21", 1))]);
    let document = run(&[&gate, "protocols/cuff/staged.toml"]).document();
    assert_eq!(
        of_key(&document, "shoulder/forward elevation/any/passive"),
        [(14, 21, "no".to_owned(), "90 deg".to_owned(), Some(7))]
    );
}
