//! What each answer to an open question would change.

use serde_json::Value;

use super::{LISTS, SMALL, compared, list, of_key, small_with};
use crate::runs::{Written, example_records, mendarc};

fn question<'v>(document: &'v Value, path: &str) -> &'v Value {
    let of_path = |question: &&Value| list(question, "asked").iter().any(|asked| asked["path"] == path);
    list(document, "questions").iter().find(of_path).unwrap_or_else(|| panic!("no question about {path}"))
}

fn answers(question: &Value) -> Vec<(String, &Value)> {
    let words = |answer: &Value| {
        list(answer, "answers").iter().map(|word| word.as_str().unwrap_or_default()).collect::<Vec<_>>().join(" or ")
    };
    list(question, "answers").iter().map(|answer| (words(answer), answer)).collect()
}

/// "Unknowns": tissue counts as poor, so an answer of good or fair takes the delayed cap away, and poor changes nothing.
#[test]
fn tissue_that_is_not_recorded_counts_as_poor() {
    let files = Written::new();
    let open = small_with(&files, "open.toml", &[("tissue = \"good\"\n", "")]);
    let document = compared(&[&open, "--questions"]);
    assert_eq!((document["kind"].as_str(), document["b"].is_null()), (Some("questions"), true));
    for name in LISTS {
        assert_eq!(list(&document, name), [] as [Value; 0]);
    }
    let tissue = question(&document, "operation.tendon[0].tissue");
    assert_eq!(tissue["blocks_signing"], false);
    let answers = answers(tissue);
    let words: Vec<&str> = answers.iter().map(|(words, _)| words.as_str()).collect();
    assert_eq!(words, ["good or fair", "poor"]);
    let (_, good) = &answers[0];
    assert_eq!(list(good, "together"), [] as [Value; 0], "everything else is recorded");
    // Rows "passive" of `delayed` and of `staged`, the other way round.
    assert_eq!(
        of_key(good, "shoulder/forward elevation/any/passive"),
        [
            (14, 42, "no".to_owned(), "90 deg".to_owned(), Some(28)),
            (42, 70, "100 deg".to_owned(), "free".to_owned(), Some(56)),
            (70, 98, "120 deg".to_owned(), "free".to_owned(), Some(56)),
        ]
    );
    assert!(list(good, "changes").iter().all(|change| change["looser"] == "b"));
    for name in ["changes", "sling", "first_allowed", "stages"] {
        assert_eq!(list(answers[1].1, name), [] as [Value; 0], "poor changes nothing: {name}");
    }
    let page = mendarc(&["compare", &open, "--questions"]).stdout;
    assert!(page.contains("  if good or fair:\n") && page.contains("  if poor: nothing changes\n"), "{page}");
}

/// Answering is what the comparison of the two records says: limits, sling and gates alike.
#[test]
fn an_answer_changes_what_the_answered_record_changes() {
    let files = Written::new();
    for (line, path, word) in [
        ("tissue = \"good\"\n", "operation.tendon[0].tissue", "good or fair"),
        ("biceps = \"none\"\n", "operation.also.biceps", "none"),
        ("labrum = \"none\"\n", "operation.also.labrum", "none"),
        ("revision = false\n", "operation.revision", "no"),
    ] {
        let open = small_with(&files, "open.toml", &[(line, "")]);
        let questions = compared(&[&open, "--questions"]);
        let answers = answers(question(&questions, path));
        let (_, answer) = answers.iter().find(|(words, _)| words == word).expect("the answer of the example");
        let answered = compared(&[&open, SMALL]);
        for name in ["changes", "sling", "first_allowed"] {
            assert_eq!(answer[name], answered[name], "{path}: {name}");
        }
        assert!(!list(answer, "changes").is_empty(), "{path}");
    }
}

/// Poor tissue, high tension and a revision count once: with all three open, one answer alone changes nothing.
#[test]
fn an_answer_that_needs_others_names_them() {
    let files = Written::new();
    let open = small_with(&files, "open.toml", &[("tissue = \"good\"\n", ""), ("tension = \"low\"\n", "")]);
    let document = compared(&[&open, "--questions"]);
    let answers = answers(question(&document, "operation.tendon[0].tissue"));
    let (words, good) = &answers[0];
    assert_eq!(words, "good or fair");
    let together: Vec<(&str, &str)> = list(good, "together")
        .iter()
        .filter_map(|other| Some((other["fact"].as_str()?, other["answer"].as_str()?)))
        .collect();
    assert_eq!(together, [("tension", "low or moderate")]);
    assert!(!list(good, "changes").is_empty());
}

/// A question before signing whose answer caps the plan: row "retraction Patte 3, …", `surgeon.slower`.
#[test]
fn slower_caps_with_the_delayed_protocol() {
    let files = Written::new();
    let smoker = small_with(&files, "smoker.toml", &[("smoking = false", "smoking = true")]);
    let document = compared(&[&smoker, "--questions"]);
    let slower = question(&document, "surgeon.slower");
    assert_eq!(slower["blocks_signing"], true);
    let answers = answers(slower);
    let words: Vec<&str> = answers.iter().map(|(words, _)| words.as_str()).collect();
    assert_eq!(words, ["no", "yes"]);
    assert_eq!(list(answers[0].1, "changes"), [] as [Value; 0]);
    assert_eq!(
        of_key(answers[1].1, "shoulder/abduction/any/active"),
        [(42, 98, "free".to_owned(), "no".to_owned(), Some(56))]
    );
}

/// Every question of a prescription whose answer would change a limit is among them, and nothing else is.
#[test]
fn the_questions_are_those_of_the_prescription() {
    for record in example_records() {
        let prescription = mendarc(&["prescribe", &record, "--json"]).document();
        let mut expected: Vec<&str> =
            list(&prescription, "questions").iter().filter_map(|question| question["path"].as_str()).collect();
        let document = compared(&[&record, "--questions"]);
        let mut asked: Vec<&str> = list(&document, "questions")
            .iter()
            .flat_map(|question| list(question, "asked"))
            .filter_map(|asked| asked["path"].as_str())
            .collect();
        // A safe arc that keeps the shoulder still is asked about, and its answer is not a fact that rules read.
        expected.retain(|path| *path != "surgeon.safe_arc_kept");
        expected.sort_unstable();
        asked.sort_unstable();
        asked.dedup();
        assert_eq!(asked, expected, "{record}");
        let page = mendarc(&["compare", &record, "--questions"]);
        assert_eq!(page.status, 0, "{}", page.stderr);
    }
}
