//! What the reader and the lint say of the latest day on which a movement is open passively.

use diagnostic::{FileId, Sink};

use super::catalogue;
use super::fixture::{check, rendered};
use crate::{Library, SHIPPED};

const ELEVATION: &str = "[[passive_by]]\nkeys = [\"shoulder/forward elevation\", \"shoulder/external rotation\"]";

#[test]
fn a_promise_names_movements_a_day_and_its_source() {
    let misspelt = |from: &str, to: &str, says: &str| check("quick", &[(from, to)], &[says]);
    misspelt(
        ELEVATION,
        "[[passive_by]]\nkeys = [\"shoulder/foward elevation\"]",
        "quick.toml:117 [\"shoulder/foward elevation\"] unknown-movement: `foward elevation` is not a movement / did you mean \"forward elevation\"?",
    );
    misspelt(
        ELEVATION,
        "[[passive_by]]\nkeys = [\"sholder/*\"]",
        "quick.toml:117 [\"sholder/*\"] unknown-joint: `sholder` is not a joint / did you mean \"shoulder\"?",
    );
    misspelt(
        ELEVATION,
        "[[passive_by]]\nkeys = [\"shoulder/inward turn against gravity\"]",
        "quick.toml:117 [\"shoulder/inward turn against gravity\"] no-such-key: `shoulder/inward turn against gravity` has none of these modes",
    );
    misspelt(
        ELEVATION,
        "[[passive_by]]\nkeys = []",
        "quick.toml:116 [[[passive_by]]] missing-key: `passive_by[0].keys` names nothing",
    );
    misspelt(
        &format!("{ELEVATION}\nday = \"day 14\""),
        &format!("{ELEVATION}\nday = \"week 2\""),
        "quick.toml:118 [\"week 2\"] not-a-quantity: `week 2` is not a day / write a day such as \"day 42\"",
    );
    misspelt(
        &format!("{ELEVATION}\nday = \"day 14\"\n"),
        &format!("{ELEVATION}\n"),
        "quick.toml:116 [[[passive_by]]] missing-key: `passive_by[0].day` is missing / add `day = …` here",
    );
    misspelt(
        &format!("{ELEVATION}\nday"),
        &format!("{ELEVATION}\nmodes = [\"active\"]\nday"),
        "quick.toml:118 [modes] unknown-key: `modes` is not a key of `passive_by[0]`",
    );
    misspelt(
        &format!("{ELEVATION}\nday = \"day 14\""),
        &format!("{ELEVATION}\nday = \"day 15\""),
        "quick.toml:118 [\"day 15\"] number-without-evidence: no cited evidence holds 15 day / cite the entry that holds it, or enter the number in the table of evidence with its source or mark",
    );
    // A day from memory promises nothing.
    misspelt(
        &format!("{ELEVATION}\nday = \"day 14\"\nevidence = [\"staged-passive-start\"]"),
        &format!("{ELEVATION}\nday = \"day 14\"\nevidence = [\"staged-passive-start\", \"consensus-week-2\"]"),
        "quick.toml:119 [\"consensus-week-2\"] memory-sets-limit: `consensus-week-2` is known from memory only / read the source and enter the value as read, or mark it as the practice's own choice",
    );
}

#[test]
fn every_movement_of_the_shoulder_is_promised_once() {
    check(
        "quick",
        &[(ELEVATION, "[[passive_by]]\nkeys = [\"shoulder/external rotation\"]")],
        &[
            "quick.toml:1 [i] no-latest-passive-day: `quick` promises no latest day for passive forward elevation / add a [[passive_by]] with the day from which the movement is open whatever was found",
        ],
    );
    check(
        "slow",
        &[(
            "[[passive_by]]\nkeys = [\"shoulder/scapular-plane elevation\", \"shoulder/abduction\", \"shoulder/extension\", \"shoulder/internal rotation\", \"shoulder/horizontal adduction\", ",
            "[[passive_by]]\nkeys = [",
        )],
        &[
            "slow.toml:1 [i] no-latest-passive-day: `slow` promises no latest day for passive scapular-plane elevation, passive abduction, passive extension, passive internal rotation and 1 more / add a [[passive_by]] with the day from which the movement is open whatever was found",
        ],
    );
    check(
        "quick",
        &[(
            "[[passive_by]]\nkeys = [\"shoulder/scapular-plane elevation\"",
            "[[passive_by]]\nkeys = [\"shoulder/external rotation\", \"shoulder/scapular-plane elevation\"",
        )],
        &[
            "quick.toml:121 [[[passive_by]]] contradiction: `quick` promises passive external rotation by day 14 and by day 42 / name each movement in one [[passive_by]] only",
        ],
    );
    // A part may promise for the protocol it is taken into.
    let promise =
        "[[passive_by]]\nkeys = [\"shoulder/abduction\"]\nday = \"day 42\"\nevidence = [\"staged-active-start\"]";
    check(
        "hand",
        &[("[[limit]]", &format!("{promise}\n\n[[limit]]"))],
        &[
            "hand.toml:1 [[[passive_by]]] contradiction: `quick` promises passive abduction by day 42 and by day 42 / name each movement in one [[passive_by]] only",
        ],
    );
}

#[test]
fn the_limits_of_a_protocol_keep_its_promise() {
    let promise = |day: &str, evidence: &str| format!("{ELEVATION}\nday = \"{day}\"\nevidence = [\"{evidence}\"]");
    check(
        "quick",
        &[(&promise("day 14", "staged-passive-start"), &promise("day 1", "early-passive-start"))],
        &[
            "quick.toml:116 [[[passive_by]]] passive-too-late: `quick` opens passive forward elevation on day 14 by its own limits, and promises day 1 at the latest / open the movement sooner, or promise the later day",
            "quick.toml:116 [[[passive_by]]] passive-too-late: `quick` opens passive external rotation on day 14 by its own limits, and promises day 1 at the latest / open the movement sooner, or promise the later day",
            "quick.toml:116 [[[passive_by]]] passive-too-late: `quick` opens passive external rotation on day 14 by its own limits where `outward` is \"30 deg\", and promises day 1 at the latest / open the movement sooner, or promise the later day",
        ],
    );
    // A promise that is kept with days to spare is no fault.
    check("quick", &[(&promise("day 14", "staged-passive-start"), &promise("day 42", "staged-active-start"))], &[]);
    // Only under one option.
    check(
        "quick",
        &[(
            "choice = { id = \"outward\", is = \"30 deg\" }\nsteps = [{ from = \"day 14\", until = \"day 42\", up_to = \"30 deg\" }, { from = \"day 42\", allowed = \"free\" }]",
            "choice = { id = \"outward\", is = \"30 deg\" }\nsteps = [{ from = \"day 42\", allowed = \"free\" }]",
        )],
        &[
            "quick.toml:116 [[[passive_by]]] passive-too-late: `quick` opens passive external rotation on day 42 by its own limits where `outward` is \"30 deg\", and promises day 14 at the latest / open the movement sooner, or promise the later day",
        ],
    );
    check(
        "quick",
        &[(&promise("day 14", "staged-passive-start"), &promise("day 365", "horizon"))],
        &[
            "quick.toml:116 [[[passive_by]]] passive-too-late: `quick` promises day 365 and ends on day 365 / name a day within the plan",
        ],
    );
}

#[test]
fn the_rules_of_a_family_keep_the_promise_of_each_protocol() {
    let later = "gates = [{ stage = \"passive\", day = \"day 28\" }]\nevidence = [\"biceps-active-start\"]";
    let closed_until = |day: &str, evidence: &str| {
        format!(
            "limits = [{{ keys = [\"shoulder/abduction\", \"shoulder/internal rotation\"], modes = [\"passive\"], steps = [{{ from = \"day 0\", until = \"{day}\", allowed = \"no\" }}] }}]\nevidence = [\"{evidence}\"]"
        )
    };
    check("rules", &[(later, &closed_until("day 42", "staged-active-start"))], &[]);
    // The slow protocol promises them by day 98 only, so it keeps its promise.
    check(
        "rules",
        &[(later, &closed_until("day 56", "biceps-resisted-start"))],
        &[
            "quick.toml:121 [[[passive_by]]] passive-too-late: `quick` opens passive abduction, passive internal rotation on day 56 under the rule `later`, and promises day 42 at the latest / open the movement sooner, or promise the later day",
        ],
    );
}

/// One day less than each promised day is a day too few, so no shipped promise is looser than its protocol.
#[test]
fn the_shipped_promises_are_the_earliest_that_are_kept() {
    let mut promised = Vec::new();
    for (file, (name, text)) in SHIPPED.iter().enumerate() {
        let starts = text.match_indices("[[passive_by]]").map(|(at, _)| at);
        for at in starts {
            let (before, after) = text.split_at(at);
            let written = after.split("day = \"day ").nth(1).and_then(|rest| rest.split('"').next()).expect("a day");
            let day: u16 = written.parse().expect("a number");
            promised.push((*name, day));
            let Some(sooner) = day.checked_sub(1) else { continue };
            let after = after.replacen(&format!("\"day {day}\""), &format!("\"day {sooner}\""), 1);
            let changed = format!("{before}{after}");
            let mut library_files = SHIPPED.to_vec();
            library_files[file].1 = &changed;
            let found = findings_beside(&library_files, "number-without-evidence");
            assert!(!found.is_empty() && found.iter().all(|fault| fault.contains(" passive-too-late: ")), "{found:?}");
        }
    }
    // As the policies have them: early-passive opens all else by day 56 after a large repair.
    assert_eq!(
        promised,
        [
            ("cuff/staged.toml", 14),
            ("cuff/staged.toml", 42),
            ("cuff/staged.toml", 84),
            ("cuff/delayed.toml", 42),
            ("cuff/delayed.toml", 98),
            ("cuff/early-passive.toml", 1),
            ("cuff/early-passive.toml", 56),
            ("cuff/early-passive.toml", 84),
            ("capsular-release/release.toml", 0),
        ]
    );
}

/// What is found besides a code, which does not keep the lint from looking further.
fn findings_beside(files: &[(&str, &str)], code: &str) -> Vec<String> {
    let mut sink = Sink::new();
    let numbered: Vec<_> = (0..).zip(files).map(|(id, (name, text))| (*name, FileId(id), *text)).collect();
    let library = Library::read(&numbered, &mut sink);
    assert!(sink.found().iter().all(|fault| fault.code == code), "only the number lacks its entry");
    let mut of_family = Sink::new();
    library.check(&catalogue(), &mut of_family);
    rendered(of_family.found(), files)
}
