//! One fault in one file: what its reader says.

use diagnostic::{FileId, Sink};

use super::fixture::{FILES, check, findings, rendered};
use crate::file::read;

#[test]
fn misspelt_words_are_told_the_nearest() {
    check(
        "quick",
        &[("keys = [\"shoulder/forward elevation\"]", "keys = [\"shoulder/foward elevation\"]")],
        &[
            "quick.toml:49 [\"shoulder/foward elevation\"] unknown-movement: `foward elevation` is not a movement / did you mean \"forward elevation\"?",
        ],
    );
    check(
        "quick",
        &[("keys = [\"shoulder/forward elevation\"]", "keys = [\"sholder/forward elevation\"]")],
        &[
            "quick.toml:49 [\"sholder/forward elevation\"] unknown-joint: `sholder` is not a joint / did you mean \"shoulder\"?",
        ],
    );
    check(
        "quick",
        &[("keys = [\"shoulder/forward elevation\"]", "keys = [\"elbow/forward elevation\"]")],
        &[
            "quick.toml:49 [\"elbow/forward elevation\"] unknown-movement: `forward elevation` is not a movement of this joint",
        ],
    );
    check(
        "hand",
        &[("modes = [\"passive\"", "modes = [\"pasive\"")],
        &[
            "hand.toml:5 [\"pasive\"] unknown-word: `pasive` is not a value of `limit[0].modes[0]` / did you mean \"passive\"?",
        ],
    );
    check(
        "slow",
        &[("keys = [\"shoulder/*\"]", "keys = [\"shoulder/*\"]\nposition = \"at sid\"")],
        &[
            "slow.toml:56 [\"at sid\"] unknown-word: `at sid` is not a value of `limit[2].position` / did you mean \"at side\"?",
        ],
    );
    check(
        "slow",
        &[("wear = \"weaning\"", "wear = \"weening\"")],
        &[
            "slow.toml:33 [\"weening\"] unknown-word: `weening` is not a value of `sling[1].wear` / did you mean \"weaning\"?",
        ],
    );
    check(
        "quick",
        &[(
            "key = \"shoulder/forward elevation/any/passive\", at_least",
            "key = \"shoulder/foward elevation/any/passive\", at_least",
        )],
        &[
            "quick.toml:32 [\"shoulder/foward elevation/any/passive\"] no-such-key: `shoulder/foward elevation/any/passive` names no key / did you mean \"shoulder/forward elevation/any/passive\"?",
            "quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/foward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-shape: a measured criterion needs both `key` and `at_least`",
        ],
    );
    check(
        "quick",
        &[("key = \"shoulder/forward elevation/any/passive\"\n", "key = \"shoulder\"\n")],
        &["quick.toml:99 [\"shoulder\"] no-such-key: `shoulder` names no key"],
    );
}

#[test]
fn misspelt_findings_are_told_the_nearest() {
    check(
        "rules",
        &[("fact = \"subscapularis\"", "fact = \"subscapularus\"")],
        &[
            "rules.toml:4 [\"subscapularus\"] unknown-fact: `subscapularus` is not a fact of a record / did you mean \"subscapularis\"?",
            "rules.toml:1 [[[rule]]] rule-without-condition: `rule[0]` has no condition / write when = [{ fact = \"…\", has = \"…\" }]",
        ],
    );
    check(
        "rules",
        &[("has = \"tenodesis\"", "has = \"tenodisis\"")],
        &[
            "rules.toml:23 [\"tenodisis\"] unknown-class: `tenodisis` is not a class of `biceps` / did you mean \"tenodesis\"?",
            "rules.toml:20 [[[rule]]] rule-without-condition: `rule[2]` has no condition / write when = [{ fact = \"…\", has = \"…\" }]",
        ],
    );
    check(
        "rules",
        &[("has = \"tenodesis\"", "at_least = \"tenodesis\"")],
        &[
            "rules.toml:23 [\"tenodesis\"] no-order: the classes of `biceps` are not in one order / use `has` and name each class",
            "rules.toml:20 [[[rule]]] rule-without-condition: `rule[2]` has no condition / write when = [{ fact = \"…\", has = \"…\" }]",
        ],
    );
    check(
        "rules",
        &[("has = \"tenodesis\"", "lacks = \"tenodesis\"")],
        &[
            "rules.toml:23 [{ fact = \"biceps\", lacks = \"tenodesis\" }] condition-shape: a condition says either `has` or `at_least`",
            "rules.toml:23 [lacks] unknown-key: `lacks` is not a key of `rule[2].when[0]`",
            "rules.toml:20 [[[rule]]] rule-without-condition: `rule[2]` has no condition / write when = [{ fact = \"…\", has = \"…\" }]",
        ],
    );
    check(
        "rules",
        &[("has = \"tenodesis\"", "has = \"tenodesis\", at_least = \"none\"")],
        &[
            "rules.toml:23 [{ fact = \"biceps\", has = \"tenodesis\", at_least = \"none\" }] condition-shape: a condition says either `has` or `at_least`",
            "rules.toml:20 [[[rule]]] rule-without-condition: `rule[2]` has no condition / write when = [{ fact = \"…\", has = \"…\" }]",
        ],
    );
    check(
        "rules",
        &[("when = [{ fact = \"biceps\", has = \"tenodesis\" }]\n", "")],
        &[
            "rules.toml:20 [[[rule]]] rule-without-condition: `rule[2]` has no condition / write when = [{ fact = \"…\", has = \"…\" }]",
        ],
    );
    check(
        "family",
        &[("procedure = \"rotator cuff repair\"", "procedure = \"rotator cuff\"")],
        &["family.toml:3 [\"rotator cuff\"] unknown-class: `rotator cuff` is not a procedure"],
    );
    check(
        "family",
        &[("answered_by = \"slower\"", "answered_by = \"slowr\"")],
        &["family.toml:19 [\"slowr\"] unknown-fact: `slowr` is not a fact of a record / did you mean \"slower\"?"],
    );
}

#[test]
fn every_number_has_evidence_that_may_set_it() {
    check(
        "hand",
        &[("\"elbow-hand-from-the-start\"", "\"elbow-hand-from-the-strat\"")],
        &[
            "hand.toml:7 [\"elbow-hand-from-the-strat\"] unknown-evidence: `elbow-hand-from-the-strat` is not in the table of evidence / did you mean \"elbow-hand-from-the-start\"?",
        ],
    );
    check(
        "quick",
        &[("up_to = \"90 deg\"", "up_to = \"85 deg\"")],
        &[
            "quick.toml:51 [\"85 deg\"] number-without-evidence: no cited evidence holds 85 deg / cite the entry that holds it, or enter the number in the table of evidence with its source or mark",
        ],
    );
    check(
        "slow",
        &[("gate = \"day 42\"", "gate = \"day 43\"")],
        &[
            "slow.toml:16 [\"day 43\"] number-without-evidence: no cited evidence holds 43 day / cite the entry that holds it, or enter the number in the table of evidence with its source or mark",
        ],
    );
    // The right number in another unit is another number.
    check(
        "quick",
        &[("up_to = \"2.27 kg\"", "up_to = \"84 kg\"")],
        &[
            "quick.toml:94 [\"84 kg\"] number-without-evidence: no cited evidence holds 84 kg / cite the entry that holds it, or enter the number in the table of evidence with its source or mark",
        ],
    );
    check(
        "hand",
        &[("\"elbow-hand-from-the-start\"", "\"elbow-hand-from-the-start\", \"consensus-week-2\"")],
        &[
            "hand.toml:7 [\"consensus-week-2\"] memory-sets-limit: `consensus-week-2` is known from memory only / read the source and enter the value as read, or mark it as the practice's own choice",
        ],
    );
    // A goal may cite memory.
    check(
        "quick",
        &[(
            "evidence = [\"criterion-elevation\", \"staged-active-start\"]",
            "evidence = [\"criterion-elevation\", \"consensus-week-6\"]",
        )],
        &[],
    );
}

#[test]
fn days_run_forward_and_never_overlap() {
    check(
        "quick",
        &[(
            "from = \"day 14\", until = \"day 42\", up_to = \"90 deg\"",
            "from = \"day 42\", until = \"day 14\", up_to = \"90 deg\"",
        )],
        &[
            "quick.toml:51 [\"day 14\"] empty-span: day 42 until day 14 holds no day / `until` is the first day after the span",
        ],
    );
    check(
        "quick",
        &[(
            "{ from = \"day 42\", allowed = \"free\" }]\nevidence = [\"staged-passive-start\", \"staged-passive-elevation\"",
            "{ from = \"day 14\", allowed = \"free\" }]\nevidence = [\"staged-passive-start\", \"staged-passive-elevation\"",
        )],
        &[
            "quick.toml:51 [{ from = \"day 14\", allowed = \"free\" }] overlapping-days: these days overlap the days before them",
        ],
    );
    check(
        "quick",
        &[(
            "from = \"day 14\", until = \"day 42\", up_to = \"90 deg\"",
            "from = \"week 2\", until = \"day 42\", up_to = \"90 deg\"",
        )],
        &[
            "quick.toml:51 [\"week 2\"] not-a-quantity: `week 2` is not a day / write a day such as \"day 42\"",
            "quick.toml:51 [until] unknown-key: `until` is not a key of `limit[0].steps[0]`",
        ],
    );
}

#[test]
fn a_value_is_said_once_and_in_its_unit() {
    check(
        "quick",
        &[("up_to = \"90 deg\"", "up_to = \"90 deg\", allowed = \"free\"")],
        &["quick.toml:51 [\"90 deg\"] contradiction: both `allowed` and `up_to` are given"],
    );
    check(
        "quick",
        &[(", up_to = \"90 deg\"", "")],
        &[
            "quick.toml:51 [{ from = \"day 14\", until = \"day 42\" }] missing-key: `limit[0].steps[0]` says neither `allowed` nor `up_to` / write allowed = \"no\", allowed = \"free\", or up_to = \"20 deg\"",
        ],
    );
    check(
        "quick",
        &[("up_to = \"90 deg\"", "up_to = \"90\"")],
        &["quick.toml:51 [\"90\"] angle-without-unit: angle has no unit / if deg is meant, write \"90 deg\""],
    );
    check(
        "quick",
        &[("up_to = \"90 deg\"", "up_to = \"2.27 kg\""), ("\"staged-passive-elevation\"", "\"first-hand-load\"")],
        &[
            "quick.toml:51 [{ from = \"day 14\", until = \"day 42\", up_to = \"2.27 kg\" }] wrong-bound: this bound means nothing for `shoulder/forward elevation/any/passive`",
        ],
    );
    check(
        "quick",
        &[("up_to = \"2.27 kg\"", "up_to = \"0 kg\"")],
        &[
            "quick.toml:94 [\"0 kg\"] load-of-zero: a load of zero kilograms is written as not allowed / write allowed = \"no\"",
        ],
    );
    check(
        "hand",
        &[("allowed = \"free\"", "allowed = \"yes\"")],
        &[
            "hand.toml:6 [\"yes\"] unknown-word: `yes` is not a value of `limit[0].steps[0].allowed`",
            "hand.toml:6 [{ from = \"day 0\", allowed = \"yes\" }] missing-key: `limit[0].steps[0]` says neither `allowed` nor `up_to` / write allowed = \"no\", allowed = \"free\", or up_to = \"20 deg\"",
        ],
    );
    check(
        "quick",
        &[(", at_least = \"90 deg\"", "")],
        &[
            "quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/forward elevation/any/passive\", evidence = [\"criterion-elevation\"] }] criterion-shape: a measured criterion needs both `key` and `at_least`",
        ],
    );
}

#[test]
fn what_is_missing_or_unknown_is_named() {
    check(
        "hand",
        &[("id = \"hand\"\n", "")],
        &["hand.toml:1 [[[limit]]] missing-key: `limit[0].id` is missing / add `id = …` here"],
    );
    check(
        "hand",
        &[("steps = [{ from = \"day 0\", allowed = \"free\" }]", "steps = []")],
        &["hand.toml:1 [[[limit]]] missing-key: `limit[0].steps` names no days"],
    );
    check(
        "hand",
        &[("keys = [\"hand/flexion\", \"hand/extension\"]", "keys = []")],
        &["hand.toml:1 [[[limit]]] missing-key: `limit[0].keys` names nothing"],
    );
    check(
        "hand",
        &[("[[limit]]", "[[limits]]")],
        &["hand.toml:1 [limits] unknown-key: `limits` is not a key of this file / did you mean `limit`?"],
    );
    check(
        "slow",
        &[("wear = \"weaning\"", "wear = \"weaning\"\nuntill = \"day 56\"")],
        &["slow.toml:34 [untill] unknown-key: `untill` is not a key of `sling[1]` / did you mean `until`?"],
    );
    check(
        "rules",
        &[("cap = \"slow\"\n", "")],
        &["rules.toml:13 [[[rule]]] rule-without-effect: this rule changes nothing"],
    );
    check(
        "quick",
        &[("options = [\"20 deg\", \"30 deg\"]", "options = [\"20 deg\"]")],
        &["quick.toml:9 [[[choice]]] choice-of-one: a choice needs at least two options"],
    );
}

#[test]
fn a_file_that_cannot_be_used_leaves_the_family_out() {
    let with = |place: usize, text: &str| {
        let mut files = FILES;
        files[place].1 = text;
        findings(&files)
    };
    let missing = |file: &str, keys: &[&str]| {
        let line = |key: &&str| format!("{file}.toml:1 [] missing-key: `{key}` is missing / add `{key} = …` here");
        keys.iter().map(line).collect::<Vec<_>>()
    };
    assert_eq!(with(0, ""), missing("family", &["id", "title", "procedure", "default", "safe_arc_until_stage"]));
    assert_eq!(with(1, ""), missing("quick", &["id", "edition", "title", "summary", "horizon"]));
    let broken = with(1, "id = \"quick\nhorizon");
    assert!(!broken.is_empty() && broken.iter().all(|fault| fault.contains("toml-syntax")), "{broken:#?}");
    assert_eq!(findings(&FILES[1..]), ["no-family: the folder `plain` has no family.toml"]);
    // Rules are optional; a part that is named is not.
    assert_eq!(findings(&FILES[..4]), Vec::<String>::new());
    assert_eq!(findings(&FILES[..3]), ["quick.toml:1 [id = \"quick\"] no-such-file: `plain/hand.toml` is not there"]);
}

#[test]
fn a_deep_file_is_read_without_harm() {
    let deep = format!("id = {}", "[".repeat(20_000));
    let mut sink = Sink::new();
    assert!(read(FileId(0), &deep, &mut sink).is_none());
    assert_eq!(rendered(&sink.found()[..1], &[("deep.toml", &deep)]).len(), 1);
}
