//! What the lint says of days: slings, steps and stages.

use super::fixture::{FILES, check, findings};

fn ends_at_once(protocol: &str) -> String {
    protocol.replacen("horizon = \"day 365\"", "horizon = \"day 0\"", 1)
}

#[test]
fn two_slings_for_one_day_contradict() {
    check(
        "slow",
        &[("until = \"day 42\"\nwear = \"always\"", "wear = \"always\"")],
        &[
            "slow.toml:30 [[[sling]]] contradiction: `slow` has two sling lines for day 42 / let the earlier line end on the day the later one starts",
        ],
    );
}

#[test]
fn a_day_without_a_sling_line_is_a_gap() {
    check(
        "quick",
        &[
            (
                "until = \"day 42\"\nwear = \"always\"",
                "until = \"day 28\"\nwear = \"always\"\nchoice = { id = \"outward\", is = \"30 deg\" }",
            ),
            ("evidence = [\"sling-always-until\"]", "evidence = [\"small-tear-sling-until\"]"),
        ],
        &[
            "quick.toml:1 [i] gap: `quick` says nothing of the sling from day 0 to day 41 where `outward` is \"20 deg\" / add a [[sling]] line for these days; without a sling write wear = \"none\"",
        ],
    );
    check(
        "slow",
        &[
            ("from = \"day 42\"\nwear = \"weaning\"", "from = \"day 42\"\nuntil = \"day 56\"\nwear = \"weaning\""),
            ("\"sling-always-until\"]\n\n[[limit]]", "\"sling-always-until\", \"sling-weaning-until\"]\n\n[[limit]]"),
        ],
        &[
            "slow.toml:31 [[[sling]]] gap: `slow` says nothing of the sling from day 56 to day 364 / add a [[sling]] line for these days; without a sling write wear = \"none\"",
        ],
    );
}

#[test]
fn a_hole_between_steps_is_a_gap() {
    check(
        "quick",
        &[
            ("until = \"day 42\", up_to = \"90 deg\" }", "until = \"day 28\", up_to = \"90 deg\" }"),
            (
                "\"staged-passive-elevation\", \"staged-active-start\"]",
                "\"staged-passive-elevation\", \"staged-assisted-start\", \"staged-active-start\"]",
            ),
            (
                "[[goal]]\nid = \"elevation\"\nkey = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 42\"\nshown_from_stage = \"passive\"\nevidence = [\"criterion-elevation\", \"staged-active-start\"]\n",
                "",
            ),
            (
                "criteria = [\n  { id = \"elevation\", text = \"90 degrees\", key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] },\n]\n",
                "",
            ),
        ],
        &[
            "quick.toml:48 [{ from = \"day 42\", allowed = \"free\" }] gap: nothing is said of day 28 to day 41 / let the steps meet, or write allowed = \"no\" for the days between",
        ],
    );
    // Said in so many words it is no hole, but a limit that falls.
    check(
        "quick",
        &[
            (
                "until = \"day 42\", up_to = \"90 deg\" }, ",
                "until = \"day 28\", up_to = \"90 deg\" }, { from = \"day 28\", until = \"day 42\", allowed = \"no\" }, ",
            ),
            (
                "\"staged-passive-elevation\", \"staged-active-start\"]",
                "\"staged-passive-elevation\", \"staged-assisted-start\", \"staged-active-start\"]",
            ),
            (
                "[[goal]]\nid = \"elevation\"\nkey = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 42\"\nshown_from_stage = \"passive\"\nevidence = [\"criterion-elevation\", \"staged-active-start\"]\n",
                "",
            ),
            (
                "criteria = [\n  { id = \"elevation\", text = \"90 degrees\", key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] },\n]\n",
                "",
            ),
        ],
        &[
            "quick.toml:48 [{ from = \"day 28\", until = \"day 42\", allowed = \"no\" }] limit-falls: passive forward elevation is allowed up to 90 degrees before day 28 and not allowed from then on / limits rise as the repair heals; a setback is a hold in the settings",
        ],
    );
    check(
        "rules",
        &[
            (
                "{ from = \"day 28\", until = \"day 42\", up_to = \"45 deg\" }",
                "{ from = \"day 42\", until = \"day 56\", up_to = \"90 deg\" }",
            ),
            (
                "\"subscapularis-second-step\", \"subscapularis-upper-first\"]",
                "\"subscapularis-second-step\", \"subscapularis-third-step\", \"subscapularis-upper-second\"]",
            ),
        ],
        &[
            "rules.toml:8 [{ from = \"day 42\", until = \"day 56\", up_to = \"90 deg\" }] gap: nothing is said of day 28 to day 41 / let the steps meet, or write allowed = \"no\" for the days between",
        ],
    );
}

#[test]
fn stages_start_with_surgery_and_stand_in_order() {
    check(
        "slow",
        &[(
            "id = \"protection\"\ntitle = \"Protection\"\ngate = \"day 0\"",
            "id = \"protection\"\ntitle = \"Protection\"\ngate = \"day 14\"\nevidence = [\"staged-passive-start\"]",
        )],
        &[
            "slow.toml:8 [[[stage]]] gap: the first stage of `slow` starts on day 14 / the first stage starts on the day of surgery: gate = \"day 0\"",
        ],
    );
    check(
        "slow",
        &[(
            "gate = \"day 42\"\nevidence = [\"delayed-passive-start\"]",
            "gate = \"day 98\"\nevidence = [\"delayed-active-start\"]",
        )],
        &[
            "slow.toml:19 [[[stage]]] gap: `active` opens on day 98, not after `passive` on day 98 / stages stand in the order of their gates",
        ],
    );
    // The rule is for both protocols; in the slow one the next stage opens later.
    check(
        "rules",
        &[(
            "day = \"day 28\" }]\nevidence = [\"biceps-active-start\"]",
            "day = \"day 56\" }]\nevidence = [\"biceps-resisted-start\"]",
        )],
        &[
            "rules.toml:20 [[[rule]]] gap: the rule `later` moves `passive` to day 56, but `active` opens on day 42 in `quick` / move the later gates as well",
        ],
    );
    let mut files = FILES;
    let bare: String = files[2].1.split("[[stage]]").next().expect("the head").to_owned()
        + "[[sling]]\nfrom = \"day 0\"\nwear = \"always\"\n";
    files[2].1 = &bare;
    let found = findings(&files);
    assert!(
        found.contains(&"slow.toml:1 [i] gap: `slow` has no stage / add a [[stage]] with gate = \"day 0\"".to_owned()),
        "{found:#?}"
    );
}

#[test]
fn a_plan_reaches_past_its_last_gate() {
    check(
        "quick",
        &[("horizon = \"day 365\"", "horizon = \"day 0\"")],
        &[
            "slow.toml:1 [i] horizons-differ: `slow` ends on day 365 and `quick` on day 0 / give every protocol of a family the same horizon",
            "quick.toml:26 [[[stage]]] gap: `quick` ends on day 0, before its stage `active` opens / the horizon lies after the last gate, such as horizon = \"day 365\"",
        ],
    );
    let mut files = FILES;
    let (quick, slow) = (ends_at_once(files[1].1), ends_at_once(files[2].1));
    (files[1].1, files[2].1) = (&quick, &slow);
    let found = findings(&files);
    assert!(found.iter().any(|fault| fault.contains("no protocol of the family `plain` reaches beyond")), "{found:#?}");
}
