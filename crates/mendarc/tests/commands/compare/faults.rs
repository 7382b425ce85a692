//! Bad input: told, never a panic, nothing partial.

use diagnostic::{Sink, Sources};
use mendarc::json::stored;
use serde_json::{Value, json};

use super::{SMALL, prescribed, run, small_with};
use crate::runs::{Written, mendarc};

#[track_caller]
fn fails(arguments: &[&str], status: i32, code: &str) {
    let spoken = mendarc(&[&["compare"], arguments].concat());
    assert_eq!(spoken.status, status, "{arguments:?}: {}", spoken.stderr);
    assert_eq!(spoken.stdout, "", "{arguments:?}: nothing partial is printed");
    assert!(spoken.stderr.contains(&format!("error[{code}]")) || code == "usage", "{arguments:?}: {}", spoken.stderr);
    assert!(!spoken.stderr.contains("internal-fault"), "{}", spoken.stderr);
    let run = run(arguments);
    assert_eq!(run.status, status, "{arguments:?}: {}", run.stderr);
    assert!(run.codes("error").iter().any(|found| found == code), "{arguments:?}: {:?}", run.codes("error"));
    assert!(run.document().get("changes").is_none(), "{arguments:?}: changes of a run that failed");
}

#[test]
fn what_could_not_run_is_2() {
    let files = Written::new();
    let stored = prescribed(&files, SMALL, "stored.json");
    fails(&[SMALL, "examples/no-such-file.toml"], 2, "cannot-read");
    fails(&["examples/no-such-file.toml", SMALL], 2, "cannot-read");
    fails(&[SMALL], 2, "usage");
    fails(&[SMALL, SMALL, "--questions"], 2, "usage");
    fails(&[SMALL, SMALL, "--settings", &files.path("nothing.toml")], 2, "cannot-read");
    fails(&["examples", "examples"], 2, "no-family");
    fails(&[&stored, &stored, "--protocol", "staged"], 2, "usage");
    fails(&["protocols/cuff", "protocols/cuff", "--settings", "examples/practice.toml"], 2, "usage");
    let text = std::fs::read_to_string(crate::runs::root().join("protocols/cuff/staged.toml")).expect("a protocol");
    let (a, b) = (files.file("a.toml", &text), files.file("b.toml", &text));
    fails(&[&a, &b], 2, "no-family");
}

#[test]
fn what_was_found_is_1() {
    let files = Written::new();
    let stored = prescribed(&files, SMALL, "stored.json");
    fails(&[SMALL, &files.file("empty.toml", "")], 1, "empty-file");
    fails(&[SMALL, &files.file("large.toml", vec![b'#'; (1 << 20) + 1])], 1, "file-too-large");
    let mut large = vec![b' '; (16 << 20) + 1];
    large[0] = b'{';
    fails(&[&stored, &files.file("large.json", large)], 1, "file-too-large");
    let mut broken = vec![b' '; 1 << 20];
    broken.splice(0..0, *b"{\"schema\": \"\xff");
    fails(&[&stored, &files.file("broken.json", broken)], 1, "not-utf-8");
    fails(&[SMALL, &files.file("torn.toml", "[patient\n")], 1, "toml-syntax");
    fails(&[SMALL, "examples/practice.toml"], 1, "unknown-kind");
    fails(&["protocols/cuff/rules.toml", "protocols/cuff/rules.toml"], 1, "unknown-kind");
    fails(&["protocols/cuff/arm.toml", "protocols/cuff/arm.toml"], 1, "unknown-kind");
    fails(&[SMALL, "protocols/cuff/staged.toml"], 1, "two-kinds");
    fails(&[SMALL, &stored], 1, "two-kinds");
    fails(&["protocols/cuff", "protocols/cuff/staged.toml"], 1, "two-kinds");
    fails(&["protocols/cuff", "--questions"], 1, "two-kinds");
    fails(&["protocols/cuff/staged.toml", "protocols/capsular-release/release.toml"], 1, "two-families");
    fails(&["protocols/cuff", "protocols/capsular-release"], 1, "two-families");
    fails(&["protocols/cuff", "protocols/cuff", "--protocol", "stagged"], 1, "unknown-protocol");
    fails(&[SMALL, SMALL, "--protocol", "stagged"], 1, "unknown-protocol");
    fails(&[SMALL, SMALL, "--protocol", "early-passive"], 1, "choice-without-reason");
    let settings = files.file("settings.toml", "[contakt]\nday = \"555-0100\"\n");
    fails(&[SMALL, SMALL, "--settings", &settings], 1, "unknown-key");
    fails(&[SMALL, "--questions", "--settings", &settings], 1, "unknown-key");
    fails(&[&stored, &files.file("other.json", "{\"schema\": \"mendarc.first-days/1\"}")], 1, "not-a-prescription");
    fails(&[&stored, &files.file("number.json", "{\"schema\": 1}")], 1, "not-a-prescription");
    fails(&[&stored, &files.file("bare.json", "{}")], 1, "not-a-prescription");
    let failed = mendarc(&["prescribe", "examples/practice.toml", "--json"]).stdout;
    fails(&[&stored, &files.file("failed.json", failed)], 1, "not-a-prescription");
    let deep = format!("{{\"schema\": {}", "[".repeat(100_000));
    fails(&[&stored, &files.file("deep.json", deep)], 1, "json-syntax");
}

#[test]
fn the_faults_of_both_records_are_told_at_once() {
    let files = Written::new();
    let a = small_with(&files, "a.toml", &[("anteroposterior = \"18 mm\"", "anteroposterior = \"18\"")]);
    let b = small_with(&files, "b.toml", &[("tissue = \"good\"", "tissue = \"firm\"")]);
    let run = run(&[&a, &b]);
    assert_eq!(run.status, 1);
    assert_eq!(run.codes("error"), ["length-without-unit", "unknown-word"]);
    // One that is no TOML hides nothing of the other.
    let torn = files.file("torn.toml", "[patient\n");
    let run = super::run(&[&torn, &b]);
    assert!(["toml-syntax", "unknown-word"].iter().all(|code| run.codes("error").contains(&(*code).to_owned())));
    // What no protocol covers is told for each of the two.
    let c = small_with(&files, "c.toml", &[("other = []", "other = [\"graft\"]")]);
    let run = super::run(&[&c, &c]);
    assert_eq!((run.status, run.codes("error")), (1, vec!["no-protocol-covers".to_owned(); 2]), "{}", run.stderr);
}

/// A document with few rows, and with every kind of value in it.
fn small_document() -> Value {
    let mut document =
        mendarc(&["prescribe", "examples/sparse.toml", "--settings", "examples/practice.toml", "--json"]).document();
    let spans = document["spans"].as_array_mut().expect("spans");
    let with_goal = spans.iter().position(|span| span["goals"].as_array().is_some_and(|goals| !goals.is_empty()));
    let mut span = spans[with_goal.expect("a span with a goal")].clone();
    span["from_day"] = 0.into();
    let limits = span["limits"].as_array_mut().expect("limits");
    let kinds = ["max_deg", "max_load_kg", "max_effort_percent"];
    let first_of = |key: &str| limits.iter().find(|limit| !limit[key].is_null()).cloned();
    let mut kept: Vec<Value> = kinds.iter().filter_map(|key| first_of(key)).collect();
    kept.extend(limits.iter().find(|limit| limit["allowed"] == "no").cloned());
    *limits = kept;
    document["spans"] = json!([span]);
    leave_out_unread(&mut document);
    document
}

/// Takes out what a comparison does not read, and of long lists all but the start.
fn leave_out_unread(value: &mut Value) {
    match value {
        Value::Array(items) => {
            items.truncate(4);
            items.iter_mut().for_each(leave_out_unread);
        }
        Value::Object(fields) => {
            let unread =
                ["reasons", "why", "dropped", "replaced", "first_allowed", "diagnostics", "evidence", "missing"];
            fields.retain(|name, _| !unread.contains(&name.as_str()));
            fields.values_mut().for_each(leave_out_unread);
        }
        _ => {}
    }
}

fn read(text: &str) -> (bool, usize) {
    let (mut sources, mut sink) = (Sources::new(), Sink::new());
    let file = sources.add("stored.json", text);
    let stored = stored::read(file, text, &mut sink);
    (stored.is_some(), sink.errors())
}

/// Every value of a document in turn replaced by what does not belong there: read whole, or refused with an error.
#[test]
fn a_hostile_document_is_refused_and_never_half_read() {
    let document = small_document();
    assert_eq!(read(&document.to_string()), (true, 0));
    let mut places = Vec::new();
    pointers(&document, String::new(), &mut places);
    assert!(places.len() > 150, "{}", places.len());
    let odd = [
        json!(null),
        json!(true),
        json!(-1),
        json!(0.05),
        json!(1e300),
        json!(65_536),
        json!(u64::MAX),
        json!(""),
        json!("\u{1b}[2J\u{202e}x"),
        json!([]),
        json!([[]]),
        json!({}),
    ];
    let mut refused = 0;
    for place in &places {
        for value in &odd {
            let mut changed = document.clone();
            *changed.pointer_mut(place).expect("the place was found there") = value.clone();
            let (read_whole, errors) = read(&changed.to_string());
            assert_eq!(read_whole, errors == 0, "{place} = {value}");
            refused += usize::from(!read_whole);
        }
    }
    assert!(refused > 800, "only {refused} were refused");
    for (place, value) in [
        ("/spans/0/limits/0/max_deg", json!(181)),
        ("/spans/0/limits/0/max_deg", json!(90.05)),
        ("/spans/0/limits/0/max_load_kg", json!(2.27)),
        ("/spans/0/limits/0/allowed", json!("no")),
        ("/spans/0/limits/0/joint", json!("knee")),
        ("/spans/0/limits/0/movement", json!("squeeze")),
        ("/spans/0/from_day", json!(1)),
        ("/spans/0/until_day", json!(0)),
        ("/spans/0/until_day", json!(3651)),
        ("/spans/0/sling/wear", json!("sometimes")),
        ("/operation/date", json!("2026-02-29")),
        ("/operation/side", json!("both")),
    ] {
        let mut changed = document.clone();
        *changed.pointer_mut(place).expect("the place is there") = value.clone();
        assert_eq!(read(&changed.to_string()), (false, 1), "{place} = {value}");
    }
}

fn pointers(value: &Value, at: String, places: &mut Vec<String>) {
    match value {
        Value::Array(items) => {
            for (place, item) in items.iter().enumerate().take(2) {
                pointers(item, format!("{at}/{place}"), places);
            }
        }
        Value::Object(fields) => {
            for (name, field) in fields {
                pointers(field, format!("{at}/{}", name.replace('~', "~0").replace('/', "~1")), places);
            }
        }
        _ => {}
    }
    places.push(at);
}

/// Cut off anywhere, a document is no document.
#[test]
fn a_document_that_was_cut_off_is_refused() {
    let text = small_document().to_string();
    for length in (1..text.len()).step_by(97).filter(|&length| text.is_char_boundary(length)) {
        assert_eq!(read(&text[..length]), (false, 1), "cut after {length} bytes");
    }
}

/// Text of a document cannot move the cursor of the terminal it is shown on.
#[test]
fn what_a_document_says_is_shown_and_not_obeyed() {
    let files = Written::new();
    let document = small_document();
    let mut other = document.clone();
    other["cautions"] = json!(["\u{1b}[2J\u{202e}gone\r\n"]);
    other["visits"][0]["purpose"] = json!("\u{7}wound");
    let (a, b) = (files.file("a.json", document.to_string()), files.file("b.json", other.to_string()));
    let run = mendarc(&["compare", &a, &b]);
    assert_eq!(run.status, 0, "{}", run.stderr);
    assert!(run.stdout.contains("[2J\u{fffd}gone"), "{}", run.stdout);
    assert!(!run.stdout.contains(['\u{1b}', '\u{202e}', '\u{7}', '\r']), "{:?}", run.stdout);
}
