//! One fault in an invented family: what the lint says of it.

use super::fixture::{check, findings, FILES};

fn ends_at_once(protocol: &str) -> String {
    protocol.replacen("horizon = \"day 365\"", "horizon = \"day 0\"", 1)
}

#[test]
fn two_limits_for_one_key_contradict() {
    check("quick", &[("\"shoulder/scapular-plane elevation\", ", "\"shoulder/forward elevation\", \"shoulder/scapular-plane elevation\", ")], &["quick.toml:72 [[[limit]]] contradiction: `elevation` and `other` both give a limit for passive forward elevation / keep one of the two, or put each under its own option of a choice"]);
    // A part adds its limits to the protocol.
    check("hand", &[("keys = [\"hand/flexion\"", "keys = [\"shoulder/abduction\"")], &["hand.toml:1 [[[limit]]] contradiction: `other` and `hand` both give a limit for passive abduction / keep one of the two, or put each under its own option of a choice", "hand.toml:1 [[[limit]]] contradiction: `work` and `hand` both give a limit for active-assisted abduction / keep one of the two, or put each under its own option of a choice"]);
    // Under the same option of a choice; under two options they never meet.
    check("quick", &[("is = \"30 deg\"", "is = \"20 deg\"")], &["quick.toml:63 [[[limit]]] contradiction: `outward` and `outward-wider` both give a limit for passive external rotation / keep one of the two, or put each under its own option of a choice"]);
}

#[test]
fn two_slings_for_one_day_contradict() {
    check("slow", &[("until = \"day 42\"\nwear = \"always\"", "wear = \"always\"")], &["slow.toml:30 [[[sling]]] contradiction: `slow` has two sling lines for day 42 / let the earlier line end on the day the later one starts"]);
}

#[test]
fn an_id_stands_for_one_thing() {
    check("quick", &[("id = \"outward-wider\"", "id = \"outward\"")], &["quick.toml:63 [[[limit]]] duplicate-id: the limit `outward` stands here twice / give each its own id: reasons are looked up by it"]);
    check("slow", &[("id = \"passive\"\ntitle = \"Passive\"", "id = \"protection\"\ntitle = \"Passive\"")], &["slow.toml:13 [[[stage]]] duplicate-id: the stage `protection` stands here twice / give each its own id: reasons are looked up by it"]);
    check("rules", &[("id = \"later\"", "id = \"poor-tissue\"")], &["rules.toml:20 [[[rule]]] duplicate-id: the rule `poor-tissue` stands here twice / give each its own id: reasons are looked up by it"]);
    check("quick", &[("options = [\"20 deg\", \"30 deg\"]", "options = [\"20 deg\", \"30 deg\", \"20 deg\"]")], &["quick.toml:9 [[[choice]]] duplicate-id: the option `20 deg` stands here twice / give each its own id: reasons are looked up by it"]);
}

#[test]
fn a_day_without_a_sling_line_is_a_gap() {
    check("quick", &[("until = \"day 42\"\nwear = \"always\"", "until = \"day 28\"\nwear = \"always\"\nchoice = { id = \"outward\", is = \"30 deg\" }"), ("evidence = [\"sling-always-until\"]", "evidence = [\"small-tear-sling-until\"]")], &["quick.toml:1 [i] gap: `quick` says nothing of the sling from day 0 to day 41 where `outward` is \"20 deg\" / add a [[sling]] line for these days; without a sling write wear = \"none\""]);
    check("slow", &[("from = \"day 42\"\nwear = \"weaning\"", "from = \"day 42\"\nuntil = \"day 56\"\nwear = \"weaning\""), ("\"sling-always-until\"]\n\n[[limit]]", "\"sling-always-until\", \"sling-weaning-until\"]\n\n[[limit]]")], &["slow.toml:31 [[[sling]]] gap: `slow` says nothing of the sling from day 56 to day 364 / add a [[sling]] line for these days; without a sling write wear = \"none\""]);
}

#[test]
fn a_hole_between_steps_is_a_gap() {
    check("quick", &[("until = \"day 42\", up_to = \"90 deg\" }", "until = \"day 28\", up_to = \"90 deg\" }"), ("\"staged-passive-elevation\", \"staged-active-start\"]", "\"staged-passive-elevation\", \"staged-assisted-start\", \"staged-active-start\"]"), ("[[goal]]\nid = \"elevation\"\nkey = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 42\"\nshown_from_stage = \"passive\"\nevidence = [\"criterion-elevation\", \"staged-active-start\"]\n", ""), ("criteria = [\n  { id = \"elevation\", text = \"90 degrees\", key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] },\n]\n", "")], &["quick.toml:48 [{ from = \"day 42\", allowed = \"free\" }] gap: nothing is said of day 28 to day 41 / let the steps meet, or write allowed = \"no\" for the days between"]);
    // Said in so many words it is no hole, but a limit that falls.
    check("quick", &[("until = \"day 42\", up_to = \"90 deg\" }, ", "until = \"day 28\", up_to = \"90 deg\" }, { from = \"day 28\", until = \"day 42\", allowed = \"no\" }, "), ("\"staged-passive-elevation\", \"staged-active-start\"]", "\"staged-passive-elevation\", \"staged-assisted-start\", \"staged-active-start\"]"), ("[[goal]]\nid = \"elevation\"\nkey = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"\ndue = \"day 42\"\nshown_from_stage = \"passive\"\nevidence = [\"criterion-elevation\", \"staged-active-start\"]\n", ""), ("criteria = [\n  { id = \"elevation\", text = \"90 degrees\", key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] },\n]\n", "")], &["quick.toml:48 [{ from = \"day 28\", until = \"day 42\", allowed = \"no\" }] limit-falls: passive forward elevation is allowed up to 90 degrees before day 28 and not allowed from then on / limits rise as the repair heals; a setback is a hold in the settings"]);
    check("rules", &[("{ from = \"day 28\", until = \"day 42\", up_to = \"45 deg\" }", "{ from = \"day 42\", until = \"day 56\", up_to = \"90 deg\" }"), ("\"subscapularis-second-step\", \"subscapularis-upper-first\"]", "\"subscapularis-second-step\", \"subscapularis-third-step\", \"subscapularis-upper-second\"]")], &["rules.toml:8 [{ from = \"day 42\", until = \"day 56\", up_to = \"90 deg\" }] gap: nothing is said of day 28 to day 41 / let the steps meet, or write allowed = \"no\" for the days between"]);
}

#[test]
fn stages_start_with_surgery_and_stand_in_order() {
    check("slow", &[("id = \"protection\"\ntitle = \"Protection\"\ngate = \"day 0\"", "id = \"protection\"\ntitle = \"Protection\"\ngate = \"day 14\"\nevidence = [\"staged-passive-start\"]")], &["slow.toml:8 [[[stage]]] gap: the first stage of `slow` starts on day 14 / the first stage starts on the day of surgery: gate = \"day 0\""]);
    check("slow", &[("gate = \"day 42\"\nevidence = [\"delayed-passive-start\"]", "gate = \"day 98\"\nevidence = [\"delayed-active-start\"]")], &["slow.toml:19 [[[stage]]] gap: `active` opens on day 98, not after `passive` on day 98 / stages stand in the order of their gates"]);
    // The rule is for both protocols; in the slow one the next stage opens later.
    check("rules", &[("day = \"day 28\" }]\nevidence = [\"biceps-active-start\"]", "day = \"day 56\" }]\nevidence = [\"biceps-resisted-start\"]")], &["rules.toml:20 [[[rule]]] gap: the rule `later` moves `passive` to day 56, but `active` opens on day 42 in `quick` / move the later gates as well"]);
    let mut files = FILES;
    let bare: String = files[2].1.split("[[stage]]").next().expect("the head").to_owned() + "[[sling]]\nfrom = \"day 0\"\nwear = \"always\"\n";
    files[2].1 = &bare;
    let found = findings(&files);
    assert!(found.contains(&"slow.toml:1 [i] gap: `slow` has no stage / add a [[stage]] with gate = \"day 0\"".to_owned()), "{found:#?}");
}

#[test]
fn a_goal_lies_under_the_limit_of_its_day_and_of_the_day_before() {
    check("quick", &[("from = \"90 deg\"\ndue", "from = \"90 deg\"\nto = \"100 deg\"\ndue"), ("\"criterion-elevation\", \"staged-active-start\"]", "\"criterion-elevation\", \"delayed-passive-elevation\", \"staged-active-start\"]")], &["quick.toml:97 [[[goal]]] goal-above-limit: the goal `elevation` asks for 100 degrees of passive forward elevation by day 42, which is allowed up to 90 degrees on day 41 / lower the goal, or make it due after the limit has risen"]);
    check("quick", &[("key = \"shoulder/forward elevation/any/passive\"\nfrom", "key = \"shoulder/abduction/any/passive\"\nfrom")], &["quick.toml:97 [[[goal]]] goal-above-limit: the goal `elevation` asks for passive abduction by day 42, which is not allowed on day 41 / lower the goal, or make it due after the limit has risen"]);
    // A goal from memory binds nobody.
    check("quick", &[("key = \"shoulder/forward elevation/any/passive\"\nfrom = \"90 deg\"", "key = \"shoulder/forward elevation/any/passive\"\nfrom = \"120 deg\""), ("\"criterion-elevation\", \"staged-active-start\"]", "\"consensus-week-6-passive-elevation\", \"staged-active-start\"]")], &[]);
}

#[test]
fn a_criterion_can_be_measured_before_its_gate() {
    let measure = "key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"]";
    check("quick", &[(measure, "key = \"shoulder/abduction/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"]")], &["quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/abduction/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-out-of-reach: the criterion `elevation` of the stage `active` measures passive abduction, which is not allowed on day 41 / measure what is allowed before the gate, or open it sooner"]);
    check("quick", &[(measure, "key = \"shoulder/forward elevation/any/passive\", at_least = \"100 deg\", evidence = [\"delayed-criterion-elevation\"]")], &["quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/forward elevation/any/passive\", at_least = \"100 deg\", evidence = [\"delayed-criterion-elevation\"] }] criterion-out-of-reach: the criterion `elevation` of the stage `active` asks for 100 degrees of passive forward elevation, which is allowed up to 90 degrees on day 41 / ask for no more than the limit of the day before the gate"]);
    check("quick", &[("id = \"protection\"\ntitle = \"Protection\"\ngate = \"day 0\"\n", &format!("id = \"protection\"\ntitle = \"Protection\"\ngate = \"day 0\"\ncriteria = [{{ id = \"early\", text = \"early\", {measure} }}]\n"))], &["quick.toml:19 [{ id = \"early\", text = \"early\", key = \"shoulder/forward elevation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-out-of-reach: the criterion `early` of the stage `protection` is measured before surgery: its gate is day 0 / a stage that starts on the day of surgery has no measured criterion"]);
    check("quick", &[(measure, "key = \"hand/extension/any/active\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"]")], &["quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"hand/extension/any/active\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-out-of-reach: the criterion `elevation` of the stage `active` measures active extension of the hand, for which the catalogue has no visit test / add a [[test]] for it, or measure something a test shows"]);
    // The test of this key takes the arm out to the side, which is closed.
    check("quick", &[(measure, "key = \"shoulder/abduction with external rotation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"]"), ("keys = [\"shoulder/forward elevation\"]", "keys = [\"shoulder/forward elevation\", \"shoulder/abduction with external rotation\"]"), (", \"shoulder/abduction with external rotation\"]\nmodes = [\"passive\"]\nsteps = [{ from = \"day 42\"", "]\nmodes = [\"passive\"]\nsteps = [{ from = \"day 42\"")], &["quick.toml:32 [{ id = \"elevation\", text = \"90 degrees\", key = \"shoulder/abduction with external rotation/any/passive\", at_least = \"90 deg\", evidence = [\"criterion-elevation\"] }] criterion-out-of-reach: the criterion `elevation` of the stage `active` measures passive abduction with external rotation, but no test of it is allowed on day 41 / open what the test needs besides, or measure it in another pose"]);
}

#[test]
fn an_exercise_is_allowed_on_some_day_of_its_stages() {
    check("quick", &[("id = \"pendulum\"\nstage = \"passive\"\nuntil_stage = \"active\"", "id = \"pendulum\"\nstage = \"protection\"\nuntil_stage = \"passive\"")], &["quick.toml:105 [[[exercise]]] exercise-never-allowed: `pendulum` is given from day 0 to day 13, where passive forward elevation is not allowed / start it with a later stage, or leave it out of the protocol"]);
    check("quick", &[("id = \"pendulum\"\nstage = \"passive\"\nuntil_stage = \"active\"", "id = \"pendulum\"\nstage = \"active\"\nuntil_stage = \"passive\"")], &["quick.toml:105 [[[exercise]]] exercise-never-allowed: `pendulum` starts on day 42 and ends before it: its last stage is not after its first / name a later stage in `until_stage`, or leave it out"]);
    check("quick", &[("id = \"pendulum\"", "id = \"forward-elevation\"")], &["quick.toml:105 [[[exercise]]] exercise-never-allowed: `forward-elevation` is given from day 14 to day 41, where active forward elevation is not allowed / start it with a later stage, or leave it out of the protocol"]);
    check("quick", &[("id = \"pendulum\"", "id = \"pendlum\"")], &["quick.toml:105 [[[exercise]]] unknown-exercise: `pendlum` is not an exercise of the catalogue / did you mean \"pendulum\"?"]);
    check("quick", &[("id = \"pendulum\"", "id = \"drive\"")], &["quick.toml:105 [[[exercise]]] unknown-exercise: `drive` is not an exercise of the catalogue"]);
    check("quick", &[("id = \"pendulum\"", "id = \"pendulum\"\nonly_without = \"table-slide\"")], &["quick.toml:105 [[[exercise]]] unknown-exercise: `pendulum` stands in for `table-slide`, which `quick` does not give"]);
    check("quick", &[("[[exercise]]", "[[posture]]\nid = \"lying\"\ntitle = \"only lying\"\nmodes = [\"passive\"]\nonly = \"lying on the back\"\nuntil = \"day 42\"\nevidence = [\"staged-active-start\"]\n\n[[exercise]]")], &["quick.toml:113 [[[exercise]]] exercise-never-allowed: `pendulum` is given from day 14 to day 41, where what it asks for is only allowed lying on the back / take it lying on the back, start it with a later stage, or leave it out of the protocol"]);
    check("quick", &[("activity = \"drive\"", "activity = \"dive\"")], &["quick.toml:111 [[[return]]] unknown-activity: `dive` is not an activity of the catalogue / did you mean \"drive\"?"]);
}

#[test]
fn a_limit_lifts_in_the_end() {
    check("quick", &[("opened_by_surgeon = true\n", "")], &["quick.toml:93 [{ from = \"day 84\", up_to = \"2.27 kg\" }] limit-never-lifts: hand load stays allowed up to 2.27 kg for good / add a step with allowed = \"free\", or opened_by_surgeon = true where the surgeon names the next value"]);
    check("slow", &[("up_to = \"30 deg\" }, { from = \"day 98\", allowed = \"free\" }", "up_to = \"30 deg\" }")], &["slow.toml:41 [{ from = \"day 42\", until = \"day 98\", up_to = \"30 deg\" }] limit-falls: passive forward elevation is not allowed again from day 98 / leave `until` out of the last step"]);
    check("slow", &[("until = \"day 98\", up_to = \"30 deg\" }, { from = \"day 98\", allowed = \"free\" }", "up_to = \"30 deg\" }")], &["slow.toml:41 [{ from = \"day 42\", up_to = \"30 deg\" }] limit-never-lifts: passive forward elevation stays allowed up to 30 degrees for good / add a step with allowed = \"free\", or opened_by_surgeon = true where the surgeon names the next value"]);
    check("slow", &[("\"shoulder/abduction\", \"shoulder/extension\", ", "")], &["slow.toml:1 [i] limit-never-lifts: `slow` never opens passive abduction, passive extension / add a [[limit]] that opens it, or one with allowed = \"no\" and opened_by_surgeon = true"]);
    check("quick", &[("modes = [\"end-range stretch\", \"active-assisted\", \"active\", \"isometric\", \"resisted\"]", "modes = [\"end-range stretch\", \"active-assisted\", \"active\", \"resisted\"]")], &["quick.toml:1 [i] limit-never-lifts: `quick` never opens isometric forward elevation, isometric scapular-plane elevation, isometric abduction, isometric extension and 5 more / add a [[limit]] that opens it, or one with allowed = \"no\" and opened_by_surgeon = true"]);
    check("quick", &[("choice = { id = \"outward\", is = \"20 deg\" }\n", "choice = { id = \"outward\", is = \"20 degrees\" }\n")], &["quick.toml:54 [[[limit]]] unknown-option: `20 degrees` is not an option of the choice `outward`"]);
    check("rules", &[("{ from = \"day 28\", until = \"day 42\", up_to = \"45 deg\" }", "{ from = \"day 28\", up_to = \"45 deg\" }")], &["rules.toml:8 [{ from = \"day 28\", up_to = \"45 deg\" }] limit-never-lifts: passive external rotation stays allowed up to 45 degrees for good under \"external rotation opens in steps\" / end the last step with `until`; from that day the protocol alone decides"]);
}

#[test]
fn a_limit_never_falls() {
    check("rules", &[("up_to = \"0 deg\"", "up_to = \"90 deg\""), ("\"subscapularis-upper-first\"]", "\"subscapularis-upper-first\", \"subscapularis-upper-second\"]")], &["rules.toml:8 [{ from = \"day 28\", until = \"day 42\", up_to = \"45 deg\" }] limit-falls: passive external rotation is allowed up to 90 degrees before day 28 and only allowed up to 45 degrees from then on / limits rise as the repair heals; a setback is a hold in the settings"]);
}

#[test]
fn a_mode_goes_no_further_than_the_mode_it_rests_on() {
    let from = |day: &str, evidence: &str| {
        format!("\"resisted\"]\nsteps = [{{ from = \"{day}\", allowed = \"free\" }}]\nevidence = [\"{evidence}\"]")
    };
    check("slow", &[(&from("day 98", "delayed-active-start"), &from("day 42", "delayed-passive-start"))], &["slow.toml:52 [[[limit]]] modes-upside-down: on day 42 end-range stretch forward elevation is free while passive forward elevation is allowed up to 30 degrees / write the value that holds: no mode goes further than the mode it rests on"]);
}

#[test]
fn stages_that_are_named_exist() {
    check("quick", &[("stage = \"passive\"\nuntil_stage", "stage = \"pasive\"\nuntil_stage")], &["quick.toml:105 [[[exercise]]] unknown-stage: the exercise `pendulum` names `pasive`, which is no stage of `quick` / did you mean \"passive\"?"]);
    check("quick", &[("until_stage = \"active\"", "until_stage = \"activ\"")], &["quick.toml:105 [[[exercise]]] unknown-stage: the exercise `pendulum` names `activ`, which is no stage of `quick` / did you mean \"active\"?"]);
    check("quick", &[("shown_from_stage = \"passive\"", "shown_from_stage = \"late\"")], &["quick.toml:97 [[[goal]]] unknown-stage: the goal `elevation` names `late`, which is no stage of `quick`"]);
    check("rules", &[("stage = \"passive\", day", "stage = \"passiv\", day")], &["rules.toml:20 [[[rule]]] unknown-stage: the rule `later` names `passiv`, which is no stage of `quick` / did you mean \"passive\"?"]);
    check("family", &[("safe_arc_until_stage = \"active\"", "safe_arc_until_stage = \"actve\"")], &["family.toml:1 [i] unknown-stage: `safe_arc_until_stage` names `actve`, which is no stage of `quick` / did you mean \"active\"? / a safe arc without a day would never end in that protocol"]);
}

#[test]
fn protocols_that_are_named_exist() {
    check("family", &[("default = \"quick\"", "default = \"quik\"")], &["family.toml:1 [i] unknown-protocol: the default names `quik`, which is no protocol of this family / did you mean \"quick\"?"]);
    check("family", &[("protocol = \"slow\"", "protocol = \"slwo\"")], &["family.toml:12 [{ fact = \"tear size\", at_least = \"30 to 50 mm\" }] unknown-protocol: the selection `large` names `slwo`, which is no protocol of this family / did you mean \"slow\"?"]);
    check("family", &[("unless_capped_by = \"slow\"", "unless_capped_by = \"slo\"")], &["family.toml:21 [{ fact = \"smoking\", has = \"yes\" }] unknown-protocol: the question `slower` names `slo`, which is no protocol of this family / did you mean \"slow\"?"]);
    check("family", &[("[[question]]", "[[on_request]]\nprotocol = \"other\"\n\n[[question]]")], &["family.toml:1 [i] unknown-protocol: what is only given on request names `other`, which is no protocol of this family"]);
    check("rules", &[("cap = \"slow\"", "cap = \"slov\"")], &["rules.toml:13 [[[rule]]] unknown-protocol: the rule `poor-tissue` names `slov`, which is no protocol of this family / did you mean \"slow\"?"]);
    check("family", &[("protocols = [\"quick\", \"slow\"]", "protocols = [\"quick\", \"slow\", \"slow\"]")], &["family.toml:1 [i] duplicate-id: the protocol `slow` stands here twice / give each its own id: reasons are looked up by it"]);
    check("family", &[("protocols = [\"quick\", \"slow\"]", "protocols = [\"quick\", \"slowly\"]")], &["family.toml:1 [id = \"plain\"] no-such-file: `plain/slowly.toml` is not there / did you mean \"slow\"?"]);
}

#[test]
fn choices_that_are_named_exist() {
    check("rules", &[("cap = \"slow\"", "cap = \"slow\"\nchoice = { id = \"outwards\", is = \"20 deg\" }")], &["rules.toml:13 [[[rule]]] unknown-choice: `outwards` is not a choice of this family / did you mean \"outward\"?"]);
    check("rules", &[("cap = \"slow\"", "cap = \"slow\"\nchoice = { id = \"outward\", is = \"25 deg\" }")], &["rules.toml:13 [[[rule]]] unknown-option: `25 deg` is not an option of the choice `outward` / did you mean \"20 deg\"?"]);
}

#[test]
fn a_protocol_that_caps_is_the_stricter_one() {
    check("rules", &[("cap = \"slow\"", "cap = \"quick\"")], &[]);
    check("slow", &[("until = \"day 42\"\nwear = \"always\"", "until = \"day 28\"\nwear = \"always\""), ("from = \"day 42\"\nwear", "from = \"day 28\"\nwear"), ("evidence = [\"sling-always-until\"]", "evidence = [\"small-tear-sling-until\"]"), ("evidence = [\"sling-always-until\"]", "evidence = [\"small-tear-sling-until\"]")], &["rules.toml:13 [[[rule]]] cap-not-stricter: `slow` is to make plans stricter, but on day 28 the sling is worn \"weaning\" in it and \"always\" in the default / a protocol that caps is at least as strict as the default in every limit, gate and sling day"]);
    check("slow", &[("{ from = \"day 42\", until = \"day 98\", up_to = \"30 deg\" }, ", "{ from = \"day 14\", until = \"day 98\", up_to = \"30 deg\" }, "), ("\"delayed-passive-start\", \"delayed-passive-external-rotation\"", "\"staged-passive-start\", \"delayed-passive-external-rotation\"")], &["rules.toml:13 [[[rule]]] cap-not-stricter: `slow` is to make plans stricter, but on day 14 passive external rotation is allowed up to 30 degrees in it and allowed up to 20 degrees in the default / a protocol that caps is at least as strict as the default in every limit, gate and sling day"]);
    check("slow", &[("gate = \"day 42\"\nevidence = [\"delayed-passive-start\"]", "gate = \"day 1\"\nevidence = [\"early-passive-start\"]")], &["rules.toml:13 [[[rule]]] cap-not-stricter: `slow` is to make plans stricter, but the stage `passive` opens on day 1 in it and on day 14 in the default / a protocol that caps is at least as strict as the default in every limit, gate and sling day"]);
}

#[test]
fn a_family_fits_the_tables_of_a_plan() {
    let rule = |n: usize| format!("[[rule]]\nid = \"r{n}\"\ntitle = \"r\"\nwhen = [{{ fact = \"tissue\", at_least = \"poor\" }}]\ncap = \"slow\"\nevidence = [\"slower-principle\"]\n");
    let rules: String = (0..129).map(rule).collect();
    let mut files = FILES;
    files[4].1 = &rules;
    assert_eq!(findings(&files), ["family.toml:1 [i] family-too-large: the family `plain` has 129 rules; 128 fit / split the family by operation, or let lines share their days"]);
    let fewer: String = (0..128).map(rule).collect();
    files[4].1 = &fewer;
    assert_eq!(findings(&files), Vec::<String>::new());
}

#[test]
fn a_plan_reaches_past_its_last_gate() {
    check("quick", &[("horizon = \"day 365\"", "horizon = \"day 0\"")], &["quick.toml:26 [[[stage]]] gap: `quick` ends on day 0, before its stage `active` opens / the horizon lies after the last gate, such as horizon = \"day 365\""]);
    let mut files = FILES;
    let (quick, slow) = (ends_at_once(files[1].1), ends_at_once(files[2].1));
    (files[1].1, files[2].1) = (&quick, &slow);
    let found = findings(&files);
    assert!(found.iter().any(|fault| fault.contains("no protocol of the family `plain` reaches beyond")), "{found:#?}");
}
