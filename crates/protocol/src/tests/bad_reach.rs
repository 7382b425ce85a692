//! What the lint says of goals, criteria and exercises that no day can meet.

use super::fixture::check;

#[test]
fn a_goal_lies_under_the_limit_of_its_day_and_of_the_day_before() {
    check(
        "quick",
        &[
            ("from = \"90 deg\"\ndue", "from = \"90 deg\"\nto = \"100 deg\"\ndue"),
            (
                "\"criterion-elevation\", \"staged-active-start\"]",
                "\"criterion-elevation\", \"delayed-passive-elevation\", \"staged-active-start\"]",
            ),
        ],
        &[
            "quick.toml:97 [[[goal]]] goal-above-limit: the goal `elevation` asks for 100 degrees of passive forward elevation by day 42, which is allowed up to 90 degrees on day 41 / lower the goal, or make it due after the limit has risen",
        ],
    );
    check(
        "quick",
        &[("key = \"shoulder/forward elevation/any/passive\"\nfrom", "key = \"shoulder/abduction/any/passive\"\nfrom")],
        &[
            "quick.toml:97 [[[goal]]] goal-above-limit: the goal `elevation` asks for passive abduction by day 42, which is not allowed on day 41 / lower the goal, or make it due after the limit has risen",
        ],
    );
    // A goal from memory binds nobody.
    check(
        "quick",
        &[
            (
                "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"",
                "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"120 deg\"",
            ),
            (
                "\"criterion-elevation\", \"staged-active-start\"]",
                "\"consensus-week-6-passive-elevation\", \"staged-active-start\"]",
            ),
        ],
        &[],
    );
}

#[test]
fn a_criterion_can_be_measured_before_its_gate() {
    let measure =
        "key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"]";
    check(
        "quick",
        &[(
            measure,
            "key = \"shoulder/abduction/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"]",
        )],
        &[
            "quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/abduction/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-out-of-reach: the criterion `elevation` of the stage `active` measures passive abduction, which is not allowed on day 41 / measure what is allowed before the gate, or open it sooner",
        ],
    );
    check(
        "quick",
        &[(
            measure,
            "key = \"shoulder/forward elevation/any/passive\", at_least = \"100 deg\", evidence = [\"delayed-criterion-elevation\"]",
        )],
        &[
            "quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/forward elevation/any/passive\", at_least = \"100 deg\", evidence = [\"delayed-criterion-elevation\"] }] criterion-out-of-reach: the criterion `elevation` of the stage `active` asks for 100 degrees of passive forward elevation, which is allowed up to 90 degrees on day 41 / ask for no more than the limit of the day before the gate",
        ],
    );
    check(
        "quick",
        &[(
            "id = \"protection\"\ntitle = \"Protection\"\ngate = \"day 0\"\n",
            &format!(
                "id = \"protection\"\ntitle = \"Protection\"\ngate = \"day 0\"\ncriteria = [{{ id = \"early\", text = \"early\", {measure} }}]\n"
            ),
        )],
        &[
            "quick.toml:19 [{ id = \"early\", text = \"early\", key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-out-of-reach: the criterion `early` of the stage `protection` is measured before surgery: its gate is day 0 / a stage that starts on the day of surgery has no measured criterion",
        ],
    );
    check(
        "quick",
        &[(
            measure,
            "key = \"hand/extension/any/active\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"]",
        )],
        &[
            "quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"hand/extension/any/active\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-out-of-reach: the criterion `elevation` of the stage `active` measures active extension of the hand, for which the catalogue has no visit test / add a [[test]] for it, or measure something a test shows",
        ],
    );
    // The test of this key takes the arm out to the side, which is closed.
    check(
        "quick",
        &[
            (
                measure,
                "key = \"shoulder/abduction with external rotation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"]",
            ),
            (
                "keys = [\"shoulder/forward elevation\"]",
                "keys = [\"shoulder/forward elevation\", \"shoulder/abduction with external rotation\"]",
            ),
            (
                ", \"shoulder/abduction with external rotation\"]\nmodes = [\"passive\"]\nsteps = [{ from = \"day 42\"",
                "]\nmodes = [\"passive\"]\nsteps = [{ from = \"day 42\"",
            ),
        ],
        &[
            "quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/abduction with external rotation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-out-of-reach: the criterion `elevation` of the stage `active` measures passive abduction with external rotation, but no test of it is allowed on day 41 / open what the test needs besides, or measure it in another pose",
        ],
    );
}

#[test]
fn an_exercise_is_allowed_on_some_day_of_its_stages() {
    check(
        "quick",
        &[(
            "id = \"pendulum\"\nstage = \"passive\"\nuntil_stage = \"active\"",
            "id = \"pendulum\"\nstage = \"protection\"\nuntil_stage = \"passive\"",
        )],
        &[
            "quick.toml:105 [[[exercise]]] exercise-never-allowed: `pendulum` is given from day 0 to day 13, where passive forward elevation is not allowed / start it with a later stage, or leave it out of the protocol",
        ],
    );
    check(
        "quick",
        &[(
            "id = \"pendulum\"\nstage = \"passive\"\nuntil_stage = \"active\"",
            "id = \"pendulum\"\nstage = \"active\"\nuntil_stage = \"passive\"",
        )],
        &[
            "quick.toml:105 [[[exercise]]] exercise-never-allowed: `pendulum` starts on day 42 and ends before it: its last stage is not after its first / name a later stage in `until_stage`, or leave it out",
        ],
    );
    check(
        "quick",
        &[("id = \"pendulum\"", "id = \"forward-elevation\"")],
        &[
            "quick.toml:105 [[[exercise]]] exercise-never-allowed: `forward-elevation` is given from day 14 to day 41, where active forward elevation is not allowed / start it with a later stage, or leave it out of the protocol",
        ],
    );
    check(
        "quick",
        &[("id = \"pendulum\"", "id = \"pendlum\"")],
        &[
            "quick.toml:105 [[[exercise]]] unknown-exercise: `pendlum` is not an exercise of the catalogue / did you mean \"pendulum\"?",
        ],
    );
    check(
        "quick",
        &[("id = \"pendulum\"", "id = \"drive\"")],
        &["quick.toml:105 [[[exercise]]] unknown-exercise: `drive` is not an exercise of the catalogue"],
    );
    check(
        "quick",
        &[("id = \"pendulum\"", "id = \"pendulum\"\nonly_without = \"table-slide\"")],
        &[
            "quick.toml:105 [[[exercise]]] unknown-exercise: `pendulum` stands in for `table-slide`, which `quick` does not give",
        ],
    );
    check(
        "quick",
        &[(
            "[[exercise]]",
            "[[posture]]\nid = \"lying\"\ntitle = \"only lying\"\nmodes = [\"passive\"]\nonly = \"lying on the back\"\nuntil = \"day 42\"\nevidence = [\"staged-active-start\"]\n\n[[exercise]]",
        )],
        &[
            "quick.toml:113 [[[exercise]]] exercise-never-allowed: `pendulum` is given from day 14 to day 41, where what it asks for is only allowed lying on the back / take it lying on the back, start it with a later stage, or leave it out of the protocol",
        ],
    );
    check(
        "quick",
        &[("activity = \"drive\"", "activity = \"dive\"")],
        &[
            "quick.toml:111 [[[return]]] unknown-activity: `dive` is not an activity of the catalogue / did you mean \"drive\"?",
        ],
    );
}

#[test]
fn every_option_is_looked_at() {
    let wider_first = ("options = [\"20 deg\", \"30 deg\"]", "options = [\"30 deg\", \"20 deg\"]");
    let aims_outward = (
        "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 42\"",
        "key = \"shoulder/external rotation/any/passive\"\nfrom = \"30 deg\"\ndue = \"day 42\"",
    );
    let evidence = (
        "[\"criterion-elevation\", \"staged-active-start\"]",
        "[\"external-rotation-wider\", \"staged-active-start\"]",
    );
    check(
        "quick",
        &[wider_first, aims_outward, evidence],
        &[
            "quick.toml:97 [[[goal]]] goal-above-limit: the goal `elevation` asks for 30 degrees of passive external rotation by day 42, which is allowed up to 20 degrees on day 41 where `outward` is \"20 deg\" / lower the goal, or make it due after the limit has risen",
        ],
    );
    check(
        "quick",
        &[("options = [\"20 deg\", \"30 deg\"]", "options = [\"20 deg\", \"30 deg\", \"45 deg\"]")],
        &[
            "quick.toml:1 [i] limit-never-lifts: `quick` never opens passive external rotation where `outward` is \"45 deg\" / add a [[limit]] that opens it, or one with allowed = \"no\" and opened_by_surgeon = true",
        ],
    );
}
