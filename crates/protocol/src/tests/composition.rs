//! The ground rules of composition, on an invented family whose rules need them.
//!
//! The shipped files are written so that most of these never decide; a practice's own may not be.

use diagnostic::{FileId, Sink};
use operative::Facts;
use plan::{Plan, Wear};

use super::catalogue;
use super::composed::{facts, says};
use super::fixture::{FILES, rendered};
use crate::{Binding, Choices, Compiled, Library, Requested, resolve};

/// The plan of the invented family with one more rule, which fires for a revision.
#[track_caller]
fn with_rule(rule: &str, facts: &Facts, look: impl FnOnce(&Compiled<'_>, &Plan)) {
    let rules = format!(
        "{}\n[[rule]]\nid = \"added\"\ntitle = \"added\"\nwhen = [{{ fact = \"revision\", has = \"yes\" }}]\n{rule}\n",
        FILES[4].1
    );
    let mut files = FILES;
    files[4].1 = &rules;
    let mut sink = Sink::new();
    let numbered: Vec<_> = (0..).zip(&files).map(|(id, (name, text))| (*name, FileId(id), *text)).collect();
    let library = Library::read(&numbered, &mut sink);
    library.check(&catalogue(), &mut sink);
    // An added rule may open a movement later than the family promises; here only the composition is looked at.
    let found: Vec<_> = sink.found().iter().filter(|fault| fault.code != "passive-too-late").cloned().collect();
    assert_eq!(rendered(&found, &files), Vec::<String>::new());
    let family = &library.families[0];
    let compiled = Compiled::new(family, &Choices::of(family), &[]);
    look(&compiled, &resolve(&compiled, facts, Requested(None)));
}

fn revision() -> Facts {
    facts(&[("revision", "yes")])
}

#[test]
fn what_is_closed_passively_is_closed_in_every_mode_that_rests_on_it() {
    let rule = "limits = [{ keys = [\"shoulder/external rotation\"], modes = [\"passive\"], steps = [{ from = \"day 0\", until = \"day 56\", allowed = \"no\" }] }]\nevidence = [\"biceps-resisted-start\"]";
    with_rule(rule, &revision(), |compiled, plan| {
        for mode in ["passive", "end-range stretch", "active-assisted", "active", "resisted"] {
            let key = format!("shoulder/external rotation/any/{mode}");
            assert_eq!([55, 56].map(|day| says(plan, &key, day)), ["no", "free"], "{mode}");
            let lane = plan.grid.lane(body::Key::parse(&key).expect("a key")).expect("a lane");
            let bound = compiled.binding(plan, &revision(), lane, plan.grid.column(50));
            assert!(matches!(&bound[..], [Binding::Rule { rule }] if rule.id == "added"), "{mode}: {bound:?}");
        }
        let effort = [41, 42].map(|day| says(plan, "shoulder/external rotation/any/isometric", day));
        assert_eq!(effort, ["no", "free"], "effort without movement rests on nothing");
    });
}

#[test]
fn a_bound_comes_down_the_modes_as_well() {
    let rule = "limits = [{ keys = [\"shoulder/abduction\"], modes = [\"active-assisted\"], steps = [{ from = \"day 42\", until = \"day 84\", up_to = \"90 deg\" }] }]\nevidence = [\"staged-active-start\", \"staged-strengthening-gate\", \"staged-passive-elevation\"]";
    with_rule(rule, &revision(), |_, plan| {
        let modes = ["passive", "end-range stretch", "active-assisted", "active", "resisted"];
        let values = modes.map(|mode| says(plan, &format!("shoulder/abduction/any/{mode}"), 83));
        assert_eq!(values, ["free", "free", "90 deg", "90 deg", "90 deg"]);
    });
}

#[test]
fn a_rule_lengthens_the_sling_and_never_shortens_it() {
    let sling = |wear: &str, from: u16, until: u16, ids: &str| {
        format!("sling = [{{ from = \"day {from}\", until = \"day {until}\", wear = \"{wear}\" }}]\nevidence = [{ids}]")
    };
    let worn = |plan: &Plan| [0, 27, 28, 41, 42, 55, 56].map(|day| plan.wear[plan.grid.column(day)]);
    let (always, weaning, none) = (Wear::Always, Wear::Weaning, Wear::None);
    with_rule(&sling("weaning", 0, 28, "\"biceps-active-start\""), &revision(), |_, plan| {
        assert_eq!(worn(plan), [always, always, always, always, none, none, none]);
    });
    with_rule(
        &sling("weaning", 28, 56, "\"biceps-active-start\", \"biceps-resisted-start\""),
        &revision(),
        |_, plan| {
            assert_eq!(worn(plan), [always, always, always, always, weaning, weaning, none]);
        },
    );
}

#[test]
fn a_rule_moves_a_gate_later_and_never_sooner() {
    let gate =
        |day: u16, id: &str| format!("gates = [{{ stage = \"active\", day = \"day {day}\" }}]\nevidence = [\"{id}\"]");
    with_rule(&gate(28, "biceps-active-start"), &revision(), |_, plan| {
        assert_eq!(plan.gates, [0, 14, 42].map(Some));
    });
    let later = gate(112, "staged-second-hand-load-start");
    with_rule(&later, &revision(), |_, plan| assert_eq!(plan.gates, [0, 14, 112].map(Some)));
    // With the slow protocol capping the plan too, the latest of the three counts.
    let both = facts(&[("revision", "yes"), ("tissue", "poor")]);
    with_rule(&later, &both, |_, plan| assert_eq!(plan.gates, [0, 42, 112].map(Some)));
}

#[test]
fn a_limit_for_one_position_binds_every_position() {
    let rule = "limits = [{ keys = [\"shoulder/abduction\"], modes = [\"isometric\"], position = \"at side\", steps = [{ from = \"day 0\", until = \"day 56\", allowed = \"no\" }] }]\nevidence = [\"biceps-resisted-start\"]";
    with_rule(rule, &revision(), |_, plan| {
        for position in ["at side", "any"] {
            let effort = [55, 56].map(|day| says(plan, &format!("shoulder/abduction/{position}/isometric"), day));
            assert_eq!(effort, ["no", "free"], "{position}");
        }
        assert_eq!(says(plan, "shoulder/extension/any/isometric", 42), "free");
    });
}

#[test]
fn a_rule_that_allows_more_changes_nothing() {
    let rule = "limits = [{ keys = [\"shoulder/forward elevation\"], modes = [\"passive\"], steps = [{ from = \"day 0\", until = \"day 98\", up_to = \"120 deg\" }] }]\nevidence = [\"delayed-later-elevation\", \"delayed-active-start\"]";
    with_rule(rule, &revision(), |_, plan| {
        let passive = [13, 14, 41, 42, 98].map(|day| says(plan, "shoulder/forward elevation/any/passive", day));
        assert_eq!(passive, ["no", "90 deg", "90 deg", "120 deg", "free"]);
    });
}
