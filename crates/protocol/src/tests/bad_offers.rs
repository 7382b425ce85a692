//! What the lint says of stages that set a goal and give no exercise for it.

use super::fixture::check;

const PENDULUM: &str = "[[exercise]]\nid = \"pendulum\"\nstage = \"passive\"\nuntil_stage = \"active\"\nevidence = [\"staged-passive-start\"]";

fn used(id: &str, stage: &str) -> String {
    format!("[[exercise]]\nid = \"{id}\"\nstage = \"{stage}\"\nevidence = [\"staged-passive-start\"]")
}

#[test]
fn a_stage_gives_an_exercise_for_the_degrees_that_open_the_next() {
    // The criterion of `active` and the goal due on the day it opens are both worked on in `passive`.
    let without = [
        "quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] goal-without-exercise: the stage `passive` of `quick` works towards the criterion `elevation` of `active`, but gives no exercise of elevation in any plane that it allows from day 14 to day 41 / list an exercise for it in this stage, or leave the goal to a later one",
        "quick.toml:97 [[[goal]]] goal-without-exercise: the stage `passive` of `quick` works towards the goal `elevation`, but gives no exercise of elevation in any plane that it allows from day 14 to day 41 / list an exercise for it in this stage, or leave the goal to a later one",
    ];
    check("quick", &[(PENDULUM, &used("hand-open-close", "passive"))], &without);
    // An exercise of the movement in a later stage is none of this one.
    check("quick", &[(PENDULUM, &used("forward-elevation", "active"))], &without);
    // Raised in another plane is raised.
    let slide = used("table-slide", "passive");
    check("quick", &[(PENDULUM, &slide)], &[]);
}

#[test]
fn a_goal_is_worked_on_in_the_stage_before_the_day_it_is_due() {
    let outward = (
        "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 42\"",
        "key = \"shoulder/external rotation/any/passive\"\nfrom = \"20 deg\"\ndue = \"day 42\"",
    );
    let evidence = (
        "[\"criterion-elevation\", \"staged-active-start\"]",
        "[\"criterion-external-rotation\", \"staged-active-start\"]",
    );
    check(
        "quick",
        &[outward, evidence],
        &[
            "quick.toml:97 [[[goal]]] goal-without-exercise: the stage `passive` of `quick` works towards the goal `elevation`, but gives no exercise of external rotation that it allows from day 14 to day 41 / list an exercise for it in this stage, or leave the goal to a later one",
        ],
    );
    // One day later it belongs to the stage that opened on day 42.
    let later = (
        "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 42\"",
        "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 56\"",
    );
    let later_evidence =
        ("[\"criterion-elevation\", \"staged-active-start\"]", "[\"criterion-elevation\", \"sling-weaning-until\"]");
    check(
        "quick",
        &[later, later_evidence],
        &[
            "quick.toml:97 [[[goal]]] goal-without-exercise: the stage `active` of `quick` works towards the goal `elevation`, but gives no exercise of elevation in any plane that it allows from day 42 to day 364 / list an exercise for it in this stage, or leave the goal to a later one",
        ],
    );
    // A goal from memory binds nobody.
    let memory =
        ("[\"criterion-elevation\", \"staged-active-start\"]", "[\"criterion-elevation\", \"consensus-week-9\"]");
    let in_memory = (later.0, "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 63\"");
    check("quick", &[in_memory, memory], &[]);
}

#[test]
fn an_exercise_counts_only_where_the_limits_allow_it() {
    // Under 20 degrees, five of home margin leave the least arc of 15; the wider option is no help to the narrower.
    let outward = (
        "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 42\"",
        "key = \"shoulder/external rotation/any/passive\"\nfrom = \"20 deg\"\ndue = \"day 42\"",
    );
    let evidence = (
        "[\"criterion-elevation\", \"staged-active-start\"]",
        "[\"criterion-external-rotation\", \"staged-active-start\"]",
    );
    let stick = used("stick-external-rotation", "passive");
    let both = format!("{PENDULUM}\n\n{stick}");
    check("quick", &[outward, evidence, (PENDULUM, &both)], &[]);
    // The band needs resistance, which opens on day 42: given from the passive stage on, it serves the last one only.
    let band = used("band-external-rotation", "passive");
    let both = format!("{PENDULUM}\n\n{band}");
    check(
        "quick",
        &[outward, evidence, (PENDULUM, &both)],
        &[
            "quick.toml:97 [[[goal]]] goal-without-exercise: the stage `passive` of `quick` works towards the goal `elevation`, but gives no exercise of external rotation that it allows from day 14 to day 41 / list an exercise for it in this stage, or leave the goal to a later one",
        ],
    );
}
