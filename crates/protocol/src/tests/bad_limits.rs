//! What the lint says of limits among themselves.

use super::fixture::check;

#[test]
fn two_limits_for_one_key_contradict() {
    check(
        "quick",
        &[(
            "\"shoulder/scapular-plane elevation\", ",
            "\"shoulder/forward elevation\", \"shoulder/scapular-plane elevation\", ",
        )],
        &[
            "quick.toml:72 [[[limit]]] contradiction: `elevation` and `other` both give a limit for passive forward elevation / keep one of the two, or put each under its own option of a choice",
        ],
    );
    // A part adds its limits to the protocol.
    check(
        "hand",
        &[("keys = [\"hand/flexion\"", "keys = [\"shoulder/abduction\"")],
        &[
            "hand.toml:1 [[[limit]]] contradiction: `other` and `hand` both give a limit for passive abduction / keep one of the two, or put each under its own option of a choice",
            "hand.toml:1 [[[limit]]] contradiction: `work` and `hand` both give a limit for active-assisted abduction / keep one of the two, or put each under its own option of a choice",
        ],
    );
    // Under the same option of a choice; under two options they never meet.
    check(
        "quick",
        &[("is = \"30 deg\"", "is = \"20 deg\"")],
        &[
            "quick.toml:63 [[[limit]]] contradiction: `outward` and `outward-wider` both give a limit for passive external rotation / keep one of the two, or put each under its own option of a choice",
        ],
    );
}

#[test]
fn a_limit_lifts_in_the_end() {
    check(
        "quick",
        &[("opened_by_surgeon = true\n", "")],
        &[
            "quick.toml:93 [{ from = \"day 84\", up_to = \"2.27 kg\" }] limit-never-lifts: hand load stays allowed up to 2.27 kg for good / add a step with allowed = \"free\", or opened_by_surgeon = true where the surgeon names the next value",
        ],
    );
    check(
        "slow",
        &[("up_to = \"30 deg\" }, { from = \"day 98\", allowed = \"free\" }", "up_to = \"30 deg\" }")],
        &[
            "slow.toml:41 [{ from = \"day 42\", until = \"day 98\", up_to = \"30 deg\" }] limit-falls: passive forward elevation is not allowed again from day 98 / leave `until` out of the last step",
        ],
    );
    check(
        "slow",
        &[(
            "until = \"day 98\", up_to = \"30 deg\" }, { from = \"day 98\", allowed = \"free\" }",
            "up_to = \"30 deg\" }",
        )],
        &[
            "slow.toml:41 [{ from = \"day 42\", up_to = \"30 deg\" }] limit-never-lifts: passive forward elevation stays allowed up to 30 degrees for good / add a step with allowed = \"free\", or opened_by_surgeon = true where the surgeon names the next value",
        ],
    );
    check(
        "slow",
        &[("\"shoulder/abduction\", \"shoulder/extension\", ", "")],
        &[
            "slow.toml:1 [i] limit-never-lifts: `slow` never opens passive abduction, passive extension / add a [[limit]] that opens it, or one with allowed = \"no\" and opened_by_surgeon = true",
        ],
    );
    check(
        "quick",
        &[(
            "modes = [\"end-range stretch\", \"active-assisted\", \"active\", \"isometric\", \"resisted\"]",
            "modes = [\"end-range stretch\", \"active-assisted\", \"active\", \"resisted\"]",
        )],
        &[
            "quick.toml:1 [i] limit-never-lifts: `quick` never opens isometric forward elevation, isometric scapular-plane elevation, isometric abduction, isometric extension and 5 more / add a [[limit]] that opens it, or one with allowed = \"no\" and opened_by_surgeon = true",
        ],
    );
    check(
        "quick",
        &[("choice = { id = \"outward\", is = \"20 deg\" }\n", "choice = { id = \"outward\", is = \"20 degrees\" }\n")],
        &["quick.toml:54 [[[limit]]] unknown-option: `20 degrees` is not an option of the choice `outward`"],
    );
    check(
        "rules",
        &[(
            "{ from = \"day 28\", until = \"day 42\", up_to = \"45 deg\" }",
            "{ from = \"day 28\", up_to = \"45 deg\" }",
        )],
        &[
            "rules.toml:8 [{ from = \"day 28\", up_to = \"45 deg\" }] limit-never-lifts: passive external rotation stays allowed up to 45 degrees for good under \"external rotation opens in steps\" / end the last step with `until`; from that day the protocol alone decides",
        ],
    );
}

#[test]
fn a_limit_never_falls() {
    check(
        "rules",
        &[
            ("up_to = \"0 deg\"", "up_to = \"90 deg\""),
            ("\"subscapularis-upper-first\"]", "\"subscapularis-upper-first\", \"subscapularis-upper-second\"]"),
        ],
        &[
            "rules.toml:8 [{ from = \"day 28\", until = \"day 42\", up_to = \"45 deg\" }] limit-falls: passive external rotation is allowed up to 90 degrees before day 28 and only allowed up to 45 degrees from then on / limits rise as the repair heals; a setback is a hold in the settings",
        ],
    );
}

#[test]
fn a_mode_goes_no_further_than_the_mode_it_rests_on() {
    let from = |day: &str, evidence: &str| {
        format!("\"resisted\"]\nsteps = [{{ from = \"{day}\", allowed = \"free\" }}]\nevidence = [\"{evidence}\"]")
    };
    check(
        "slow",
        &[(&from("day 98", "delayed-active-start"), &from("day 42", "delayed-passive-start"))],
        &[
            "slow.toml:52 [[[limit]]] modes-upside-down: on day 42 end-range stretch forward elevation is free while passive forward elevation is allowed up to 30 degrees / write the value that holds: no mode goes further than the mode it rests on",
        ],
    );
}

#[test]
fn a_protocol_that_caps_is_the_stricter_one() {
    check("rules", &[("cap = \"slow\"", "cap = \"quick\"")], &[]);
    check(
        "slow",
        &[
            ("until = \"day 42\"\nwear = \"always\"", "until = \"day 28\"\nwear = \"always\""),
            ("from = \"day 42\"\nwear", "from = \"day 28\"\nwear"),
            ("evidence = [\"sling-always-until\"]", "evidence = [\"small-tear-sling-until\"]"),
            ("evidence = [\"sling-always-until\"]", "evidence = [\"small-tear-sling-until\"]"),
        ],
        &[
            "rules.toml:13 [[[rule]]] cap-not-stricter: `slow` is to make plans stricter, but on day 28 the sling is worn \"weaning\" in it and \"always\" in the default / a protocol that caps is at least as strict as the default in every limit, gate and sling day",
        ],
    );
    check(
        "slow",
        &[
            (
                "{ from = \"day 42\", until = \"day 98\", up_to = \"30 deg\" }, ",
                "{ from = \"day 14\", until = \"day 98\", up_to = \"30 deg\" }, ",
            ),
            (
                "\"delayed-passive-start\", \"delayed-passive-external-rotation\"",
                "\"staged-passive-start\", \"delayed-passive-external-rotation\"",
            ),
        ],
        &[
            "rules.toml:13 [[[rule]]] cap-not-stricter: `slow` is to make plans stricter, but on day 14 passive external rotation is allowed up to 30 degrees in it and allowed up to 20 degrees in the default / a protocol that caps is at least as strict as the default in every limit, gate and sling day",
        ],
    );
    check(
        "slow",
        &[(
            "gate = \"day 42\"\nevidence = [\"delayed-passive-start\"]",
            "gate = \"day 1\"\nevidence = [\"early-passive-start\"]",
        )],
        &[
            "rules.toml:13 [[[rule]]] cap-not-stricter: `slow` is to make plans stricter, but the stage `passive` opens on day 1 in it and on day 14 in the default / a protocol that caps is at least as strict as the default in every limit, gate and sling day",
        ],
    );
}
