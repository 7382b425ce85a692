//! Changes worked out by hand from the rows of the policies.

use serde_json::Value;

use super::{LISTS, SMALL, compared, list, of_key, prescribed, small_with};
use crate::runs::{Written, mendarc};

fn rows(expected: &[(u64, u64, &str, &str, Option<u64>)]) -> Vec<(u64, u64, String, String, Option<u64>)> {
    expected.iter().map(|(from, until, a, b, by)| (*from, *until, (*a).to_owned(), (*b).to_owned(), *by)).collect()
}

/// Row "poor tissue, high tension, …": `delayed` caps every key, start and the sling.
#[test]
fn poor_tissue_waits_as_the_delayed_protocol_does() {
    let files = Written::new();
    let poor = small_with(&files, "poor.toml", &[("tissue = \"good\"", "tissue = \"poor\"")]);
    let document = compared(&[SMALL, &poor]);
    assert_eq!(
        (document["schema"].as_str(), document["kind"].as_str()),
        (Some("mendarc.comparison/1"), Some("records"))
    );
    assert_eq!(document["same"], false);
    // Rows "passive" of `staged` (14–41 at most 90 and 20, free from 42) and of `delayed` (42–69 at most 100 and 30,
    // 70–97 at most 120 and 45, free from 98).
    let elevation = rows(&[
        (14, 42, "90 deg", "no", Some(28)),
        (42, 70, "free", "100 deg", Some(56)),
        (70, 98, "free", "120 deg", Some(56)),
    ]);
    for movement in ["forward elevation", "scapular-plane elevation"] {
        assert_eq!(of_key(&document, &format!("shoulder/{movement}/any/passive")), elevation);
    }
    assert_eq!(
        of_key(&document, "shoulder/external rotation/any/passive"),
        rows(&[
            (14, 42, "20 deg", "no", Some(28)),
            (42, 70, "free", "30 deg", Some(56)),
            (70, 98, "free", "45 deg", Some(56)),
        ])
    );
    // Rows "active-assisted": 28–41 the same degrees, only lying on the back until 34; `delayed` from 70.
    assert_eq!(
        of_key(&document, "shoulder/forward elevation/any/active-assisted"),
        rows(&[
            (28, 35, "90 deg lying", "no", Some(42)),
            (35, 42, "90 deg", "no", Some(35)),
            (42, 70, "free", "no", Some(56)),
            (70, 98, "free", "120 deg", Some(56)),
        ])
    );
    // Rows "active": 42 and 98; "hand load": 84 and 112, 126 and 154; "shoulder blade": 14 and 42.
    assert_eq!(of_key(&document, "shoulder/abduction/any/active"), rows(&[(42, 98, "free", "no", Some(56))]));
    assert_eq!(of_key(&document, "scapula/shrug/any/active"), rows(&[(14, 42, "free", "no", Some(28))]));
    assert_eq!(
        of_key(&document, "whole arm/hand load/any/resisted"),
        rows(&[
            (84, 112, "2.27 kg", "no", Some(42)),
            (112, 126, "4.54 kg", "no", Some(42)),
            (126, 154, "4.54 kg", "2.27 kg", Some(42)),
        ])
    );
    // Row "isometric": 49 at the side under 30 percent; `delayed` from 98.
    assert_eq!(
        of_key(&document, "shoulder/abduction/at side/isometric"),
        rows(&[(49, 84, "30 %", "no", Some(49)), (98, 126, "free", "30 %", Some(42))])
    );
    assert!(list(&document, "changes").iter().all(|change| change["looser"] == "a"), "a finding never loosens");
    // Both wear the sling 0–41 always and 42–55 weaning.
    assert_eq!(list(&document, "sling"), [] as [Value; 0]);
    let gates: Vec<(&str, u64, u64)> = list(&document, "stages")
        .iter()
        .map(|stage| {
            let day = |side: &str| stage[side]["day"].as_u64().expect("a gate");
            (stage["id"].as_str().expect("an id"), day("a"), day("b"))
        })
        .collect();
    assert_eq!(
        gates,
        [
            ("passive", 14, 42),
            ("assisted", 28, 70),
            ("active", 42, 98),
            ("strengthening", 84, 126),
            ("return", 140, 182)
        ]
    );
    // Rows "return": manual work not before 91, and 182; sport 182, and 210.
    let back: Vec<(&str, u64, u64)> = list(&document, "returns")
        .iter()
        .filter_map(|line| Some((line["id"].as_str()?, line["a"]["day"].as_u64()?, line["b"]["day"].as_u64()?)))
        .filter(|(id, ..)| ["manual-work", "sport"].contains(id))
        .collect();
    assert_eq!(back, [("manual-work", 91, 182), ("sport", 182, 210)]);
}

/// The same in words, with both days of a run and the dates of the operation they share.
#[test]
fn the_page_says_it_in_words() {
    let files = Written::new();
    let poor = small_with(&files, "poor.toml", &[("tissue = \"good\"", "tissue = \"poor\"")]);
    let page = mendarc(&["compare", SMALL, &poor]);
    assert_eq!(page.status, 0, "{}", page.stderr);
    let text = page.stdout.split_whitespace().collect::<Vec<_>>().join(" ");
    // 2 March 2026 plus 14 and plus 41 days.
    for said in [
        "the plans differ",
        "shoulder: forward elevation, scapular-plane elevation passive days 14 to 41 (16 Mar 2026 to 12 Apr 2026): \
         up to 90 degrees in A, not allowed in B (28 days later)",
        "Passive motion: day 14 (16 Mar 2026) in A, day 42 (13 Apr 2026) in B (28 days later)",
        "only in A: Table slide, to 85°",
        "Only under the care of the operating surgeon",
    ] {
        assert!(text.contains(said), "`{said}` is not in\n{}", page.stdout);
    }
    assert!(page.stderr.is_empty(), "{}", page.stderr);
}

#[test]
fn two_of_the_same_are_the_same_plan() {
    let files = Written::new();
    let stored = prescribed(&files, SMALL, "prescription.json");
    for pair in [
        [SMALL, SMALL],
        ["examples/sparse.toml", "examples/sparse.toml"],
        ["protocols/cuff/delayed.toml", "protocols/cuff/delayed.toml"],
        ["protocols/cuff", "protocols/cuff"],
        ["protocols/capsular-release", "protocols/capsular-release/family.toml"],
        [&stored, &stored],
    ] {
        let document = compared(&pair);
        assert_eq!((document["same"].as_bool(), document["note"].as_str()), (Some(true), Some("the same plan")));
        for name in LISTS {
            assert_eq!(list(&document, name), [] as [Value; 0], "{pair:?}: {name}");
        }
        assert!(mendarc(&["compare", pair[0], pair[1]]).stdout.contains("\nthe same plan\n"), "{pair:?}");
    }
}

/// Another day and another side are no change of the plan, and no dates are printed that would be one side's alone.
#[test]
fn dates_and_sides_compare_by_the_day_after_the_operation() {
    let files = Written::new();
    let later = small_with(&files, "later.toml", &[("date = 2026-03-02 ", "date = 2026-05-11 ")]);
    let left = small_with(
        &files,
        "left.toml",
        &[("side = \"right\"", "side = \"left\""), ("tissue = \"good\"", "tissue = \"poor\"")],
    );
    let document = compared(&[SMALL, &later]);
    assert_eq!(document["same"], true);
    let document = compared(&[&later, &left]);
    assert_eq!((document["a"]["date"].as_str(), document["b"]["side"].as_str()), (Some("2026-05-11"), Some("left")));
    assert_eq!(of_key(&document, "shoulder/abduction/any/active"), rows(&[(42, 98, "free", "no", Some(56))]));
    let page = mendarc(&["compare", &later, &left]).stdout;
    assert!(page.contains("compared by the day after the operation, without dates"), "{page}");
    assert!(page.contains("days 42 to 97: free in A, not allowed in B (56 days later)"), "{page}");
    assert!(!page.contains(" 2026)"), "{page}");
}

/// Row "biceps tenodesis": elbow flexion and supination assisted and active from 28; no end-range elbow extension 0–41.
#[test]
fn a_tenodesis_changes_the_elbow_alone() {
    let files = Written::new();
    let fixed = small_with(&files, "fixed.toml", &[("biceps = \"none\"", "biceps = \"tenodesis\"")]);
    let document = compared(&[SMALL, &fixed]);
    let keys: Vec<&str> = list(&document, "changes").iter().filter_map(|change| change["key"].as_str()).collect();
    assert_eq!(
        keys,
        [
            "elbow/extension/any/end-range stretch",
            "elbow/flexion/any/active-assisted",
            "elbow/flexion/any/active",
            "forearm/supination/any/active-assisted",
            "forearm/supination/any/active",
        ]
    );
    assert_eq!(of_key(&document, keys[2]), rows(&[(0, 28, "free", "no", Some(28))]));
    // An arm with no tenodesis may be stretched from 14 only: what was shut before stays out of it.
    assert_eq!(of_key(&document, keys[0]), rows(&[(14, 42, "free", "no", Some(28))]));
}

/// Rows "sling" and "passive" of `early-passive` against `staged`: from day 1, and a shorter sling.
#[test]
fn two_protocols_compare_whatever_the_record() {
    let document = compared(&["protocols/cuff/staged.toml", "protocols/cuff/early-passive.toml"]);
    assert_eq!(document["kind"], "protocols");
    let own = |key: &str| {
        let mut document = document.clone();
        let changes = document["changes"].as_array_mut().expect("a list");
        changes.retain(|change| change.get("rule").is_none() && change.get("option").is_none());
        of_key(&document, key)
    };
    assert_eq!(own("shoulder/forward elevation/any/passive"), rows(&[(1, 14, "no", "90 deg", Some(13))]));
    assert_eq!(
        own("shoulder/external rotation/any/passive"),
        rows(&[(1, 14, "no", "45 deg", Some(41)), (14, 42, "20 deg", "45 deg", Some(41))])
    );
    // "Before E nothing else of the shoulder is allowed", E = 42.
    assert_eq!(
        own("shoulder/external rotation/any/active-assisted"),
        rows(&[(28, 35, "20 deg lying", "no", Some(14)), (35, 42, "20 deg", "no", Some(7))])
    );
    // Under 10 mm: always 0–27, weaning 28–41.
    let sling: Vec<(u64, u64, &str, &str)> = list(&document, "sling")
        .iter()
        .filter(|change| change.get("rule").is_none() && change.get("option").is_none())
        .filter_map(|change| {
            let days = (change["from_day"].as_u64()?, change["until_day"].as_u64()?);
            Some((days.0, days.1, change["a"]["wear"].as_str()?, change["b"]["wear"].as_str()?))
        })
        .collect();
    assert_eq!(sling, [(28, 42, "always", "weaning"), (42, 56, "weaning", "none")]);
    // "For the last group 56": a rule of the protocol's own.
    let large = list(&document, "changes")
        .iter()
        .find(|change| change["rule"] == "early-large" && change["key"] == "shoulder/abduction/any/active");
    let large = large.expect("the rule for large tears");
    assert_eq!((large["from_day"].as_u64(), large["until_day"].as_u64()), (Some(0), Some(56)));
    assert_eq!((large["a"]["allowed"].as_str(), large["b"]["allowed"].as_str()), (Some("free"), Some("no")));
}

#[test]
fn settings_and_a_protocol_hold_for_both_records() {
    let files = Written::new();
    let poor = small_with(&files, "poor.toml", &[("tissue = \"good\"", "tissue = \"poor\"")]);
    // Both on `delayed`: poor tissue then changes nothing in the limits.
    let document = compared(&[SMALL, &poor, "--protocol", "delayed"]);
    assert_eq!(list(&document, "changes"), [] as [Value; 0]);
    assert_eq!(document["a"]["protocol"], "delayed");
    // A hold of 14 days from 40 moves the later starts of both: 42 becomes 56, and 98 becomes 112.
    let hold = files.file("hold.toml", "[[hold]]\nfrom_day = 40\ndays = 14\nreason = \"wound\"\n");
    let document = compared(&[SMALL, &poor, "--settings", &hold]);
    assert_eq!(of_key(&document, "shoulder/abduction/any/active"), rows(&[(56, 112, "free", "no", Some(56))]));
}
