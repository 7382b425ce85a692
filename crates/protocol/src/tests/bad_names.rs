//! What the lint says of names, ids and the size of a family.

use super::fixture::{FILES, check, findings};

#[test]
fn an_id_stands_for_one_thing() {
    check(
        "quick",
        &[("id = \"outward-wider\"", "id = \"outward\"")],
        &[
            "quick.toml:63 [[[limit]]] duplicate-id: the limit `outward` stands here twice / give each its own id: reasons are looked up by it",
        ],
    );
    check(
        "slow",
        &[("id = \"passive\"\ntitle = \"Passive\"", "id = \"protection\"\ntitle = \"Passive\"")],
        &[
            "slow.toml:13 [[[stage]]] duplicate-id: the stage `protection` stands here twice / give each its own id: reasons are looked up by it",
        ],
    );
    check(
        "rules",
        &[("id = \"later\"", "id = \"poor-tissue\"")],
        &[
            "rules.toml:20 [[[rule]]] duplicate-id: the rule `poor-tissue` stands here twice / give each its own id: reasons are looked up by it",
        ],
    );
    check(
        "quick",
        &[("options = [\"20 deg\", \"30 deg\"]", "options = [\"20 deg\", \"30 deg\", \"20 deg\"]")],
        &[
            "quick.toml:9 [[[choice]]] duplicate-id: the option `20 deg` stands here twice / give each its own id: reasons are looked up by it",
        ],
    );
}

#[test]
fn two_lines_of_one_id_are_told_where_they_stand() {
    let select = "[[select]]\nid = \"large\"\ntitle = \"t\"\nprotocol = \"slow\"\nwhen = [{ fact = \"tear size\", at_least = \"30 to 50 mm\" }]\nevidence = [\"delayed-from-size\"]\n\n[[question]]";
    let question = "id = \"slower\"\npath = \"surgeon.slower\"\ntext = \"slower?\"\nanswered_by = \"slower\"\nwhen = [{ fact = \"smoking\", has = \"yes\" }]\nevidence = [\"slower-opinion\"]\n\n[[question]]";
    check(
        "family",
        &[("[[question]]", select)],
        &[
            "family.toml:15 [[[select]]] duplicate-id: the selection `large` stands here twice / give each its own id: reasons are looked up by it",
        ],
    );
    check(
        "family",
        &[("[[question]]", &format!("[[question]]\n{question}"))],
        &[
            "family.toml:23 [[[question]]] duplicate-id: the question `slower` stands here twice / give each its own id: reasons are looked up by it",
        ],
    );
    let visit = "[[visit]]\npurpose = \"wound\"\ndue = \"day 10\"\nlatest = \"day 14\"\nevidence = [\"wound-visit-from\", \"wound-visit-until\"]\n\n";
    let posture = "[[posture]]\nid = \"lying\"\ntitle = \"only lying\"\nmodes = [\"active-assisted\"]\nonly = \"lying on the back\"\nuntil = \"day 42\"\nevidence = [\"staged-active-start\"]\n\n";
    check(
        "quick",
        &[("[[return]]", &format!("{visit}{visit}{posture}{posture}[[return]]"))],
        &[
            "quick.toml:117 [[[visit]]] duplicate-id: the visit `wound` stands here twice / give each its own id: reasons are looked up by it",
            "quick.toml:131 [[[posture]]] duplicate-id: the posture `lying` stands here twice / give each its own id: reasons are looked up by it",
        ],
    );
}

#[test]
fn stages_that_are_named_exist() {
    check(
        "quick",
        &[("stage = \"passive\"\nuntil_stage", "stage = \"pasive\"\nuntil_stage")],
        &[
            "quick.toml:105 [[[exercise]]] unknown-stage: the exercise `pendulum` names `pasive`, which is no stage of `quick` / did you mean \"passive\"?",
        ],
    );
    check(
        "quick",
        &[("until_stage = \"active\"", "until_stage = \"activ\"")],
        &[
            "quick.toml:105 [[[exercise]]] unknown-stage: the exercise `pendulum` names `activ`, which is no stage of `quick` / did you mean \"active\"?",
        ],
    );
    check(
        "quick",
        &[("shown_from_stage = \"passive\"", "shown_from_stage = \"late\"")],
        &["quick.toml:97 [[[goal]]] unknown-stage: the goal `elevation` names `late`, which is no stage of `quick`"],
    );
    check(
        "rules",
        &[("stage = \"passive\", day", "stage = \"passiv\", day")],
        &[
            "rules.toml:20 [[[rule]]] unknown-stage: the rule `later` names `passiv`, which is no stage of `quick` / did you mean \"passive\"?",
        ],
    );
    check(
        "family",
        &[("safe_arc_until_stage = \"active\"", "safe_arc_until_stage = \"actve\"")],
        &[
            "family.toml:1 [i] unknown-stage: `safe_arc_until_stage` names `actve`, which is no stage of `quick` / did you mean \"active\"? / a safe arc without a day would never end in that protocol",
        ],
    );
}

#[test]
fn protocols_that_are_named_exist() {
    check(
        "family",
        &[("default = \"quick\"", "default = \"quik\"")],
        &[
            "family.toml:1 [i] unknown-protocol: the default names `quik`, which is no protocol of this family / did you mean \"quick\"?",
        ],
    );
    check(
        "family",
        &[("protocol = \"slow\"", "protocol = \"slwo\"")],
        &[
            "family.toml:8 [[[select]]] unknown-protocol: the selection `large` names `slwo`, which is no protocol of this family / did you mean \"slow\"?",
        ],
    );
    check(
        "family",
        &[("unless_capped_by = \"slow\"", "unless_capped_by = \"slo\"")],
        &[
            "family.toml:15 [[[question]]] unknown-protocol: the question `slower` names `slo`, which is no protocol of this family / did you mean \"slow\"?",
        ],
    );
    check(
        "family",
        &[("[[question]]", "[[on_request]]\nprotocol = \"other\"\n\n[[question]]")],
        &[
            "family.toml:1 [i] unknown-protocol: what is only given on request names `other`, which is no protocol of this family",
        ],
    );
    check(
        "rules",
        &[("cap = \"slow\"", "cap = \"slov\"")],
        &[
            "rules.toml:13 [[[rule]]] unknown-protocol: the rule `poor-tissue` names `slov`, which is no protocol of this family / did you mean \"slow\"?",
        ],
    );
    check(
        "family",
        &[("protocols = [\"quick\", \"slow\"]", "protocols = [\"quick\", \"slow\", \"slow\"]")],
        &[
            "family.toml:1 [i] duplicate-id: the protocol `slow` stands here twice / give each its own id: reasons are looked up by it",
        ],
    );
    check(
        "family",
        &[("protocols = [\"quick\", \"slow\"]", "protocols = [\"quick\", \"slowly\"]")],
        &["family.toml:1 [id = \"plain\"] no-such-file: `plain/slowly.toml` is not there / did you mean \"slow\"?"],
    );
}

#[test]
fn choices_that_are_named_exist() {
    check(
        "rules",
        &[("cap = \"slow\"", "cap = \"slow\"\nchoice = { id = \"outwards\", is = \"20 deg\" }")],
        &[
            "rules.toml:13 [[[rule]]] unknown-choice: `outwards` is not a choice of this family / did you mean \"outward\"?",
        ],
    );
    check(
        "rules",
        &[("cap = \"slow\"", "cap = \"slow\"\nchoice = { id = \"outward\", is = \"25 deg\" }")],
        &[
            "rules.toml:13 [[[rule]]] unknown-option: `25 deg` is not an option of the choice `outward` / did you mean \"20 deg\"?",
        ],
    );
}

#[test]
fn an_option_changes_something() {
    let idle = "[[choice]]\nid = \"idle\"\ntitle = \"idle\"\noptions = [\"one\", \"two\"]\nevidence = [\"slower-principle\"]\n";
    let mut files = FILES;
    let text = format!("{}\n{idle}", files[4].1);
    files[4].1 = &text;
    let found = findings(&files);
    assert_eq!(found.len(), 1, "{found:#?}");
    assert!(found[0].contains("option-without-line: no line is under the option \"two\" of `idle`"), "{found:#?}");
}

#[test]
fn what_is_given_on_request_is_no_default() {
    let mut files = FILES;
    let text = format!("{}\n[[on_request]]\nprotocol = \"quick\"\nevidence = [\"slower-principle\"]\n", files[0].1);
    files[0].1 = &text;
    let found = findings(&files);
    assert_eq!(found.len(), 1, "{found:#?}");
    assert!(
        found[0].contains("default-on-request: `quick` is only given on request, and is the default"),
        "{found:#?}"
    );
}

#[test]
fn a_visit_ends_after_it_begins() {
    let visit = "[[visit]]\npurpose = \"wound\"\ndue = \"day 14\"\nlatest = \"day 10\"\nevidence = [\"wound-visit-from\", \"wound-visit-until\"]\n";
    let mut files = FILES;
    let text = format!("{}\n{visit}", files[1].1);
    files[1].1 = &text;
    let found = findings(&files);
    assert_eq!(found.len(), 1, "{found:#?}");
    assert!(
        found[0].contains("visit-ends-first: the wound visit is due from day 14 on, and its last day is day 10"),
        "{found:#?}"
    );
}

#[test]
fn a_family_fits_the_tables_of_a_plan() {
    let rule = |n: usize| {
        format!(
            "[[rule]]\nid = \"r{n}\"\ntitle = \"r\"\nwhen = [{{ fact = \"tissue\", at_least = \"poor\" }}]\ncap = \"slow\"\nevidence = [\"slower-principle\"]\n"
        )
    };
    let rules: String = (0..129).map(rule).collect();
    let mut files = FILES;
    files[4].1 = &rules;
    assert_eq!(
        findings(&files),
        [
            "family.toml:1 [i] family-too-large: the family `plain` has 129 rules; 128 fit / split the family by operation, or let lines share their days"
        ]
    );
    let fewer: String = (0..128).map(rule).collect();
    files[4].1 = &fewer;
    assert_eq!(findings(&files), Vec::<String>::new());
}
