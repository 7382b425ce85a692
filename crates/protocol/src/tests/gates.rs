//! Days and degrees of the shipped files against the sheets and papers they come from.
//!
//! Each row names its source: a key of the table of sources, "C" for common
//! practice without a source, "O" for the project's own choice.

use plan::{Plan, SlingPosition, Wear};

use super::composed::{composed, cuff, facts, says};

/// Source, key, and the values from each day on: the value holds up to the day before the next.
type Row<'r> = (&'r str, &'r str, &'r [(u16, &'r str)]);

#[track_caller]
fn expect(plan: &Plan, rows: &[Row<'_>]) {
    for (source, key, values) in rows {
        for (place, (day, value)) in values.iter().enumerate() {
            let last = values.get(place + 1).map_or(364, |(next, _)| next - 1);
            for day in [*day, last] {
                assert_eq!(says(plan, key, day), *value, "{key} on day {day} ({source})");
            }
        }
    }
}

#[track_caller]
fn expect_sling(plan: &Plan, always_until: u16, weaning_until: u16) {
    let wear = |day: u16| plan.wear[plan.grid.column(day)];
    for day in 0..365 {
        let due = if day < always_until {
            Wear::Always
        } else if day < weaning_until {
            Wear::Weaning
        } else {
            Wear::None
        };
        assert_eq!(wear(day), due, "day {day}");
    }
}

const FORWARD: &str = "shoulder/forward elevation/any/passive";
const PLANE: &str = "shoulder/scapular-plane elevation/any/passive";
const OUTWARD: &str = "shoulder/external rotation/any/passive";

#[test]
fn staged_keeps_the_days_of_its_sources() {
    let plan = composed(&facts(&[]), None, &[]);
    assert_eq!(cuff().protocols[usize::from(plan.protocol)].id, "staged");
    // MGH-S days 14, 28, 42; T16 day 84; EV day 140
    assert_eq!(plan.gates, [0, 14, 28, 42, 84, 140].map(Some));
    expect_sling(&plan, 42, 56); // AG, T16
    expect(
        &plan,
        &[
            ("MGH-S, WI, KUO; start T16", FORWARD, &[(0, "no"), (14, "90 deg"), (42, "free")]),
            ("MGH-S, WI, KUO; start T16", PLANE, &[(0, "no"), (14, "90 deg"), (42, "free")]),
            ("MGH-S, WI, KUO; start T16", OUTWARD, &[(0, "no"), (14, "20 deg"), (42, "free")]),
            ("T16", "shoulder/abduction/any/passive", &[(0, "no"), (42, "free")]),
            ("T16", "shoulder/internal rotation/any/passive", &[(0, "no"), (42, "free")]),
            ("MGH-S", "shoulder/forward elevation/any/active-assisted", &[(0, "no"), (28, "90 deg"), (42, "free")]),
            ("MGH-S", "shoulder/external rotation/any/active-assisted", &[(0, "no"), (28, "20 deg"), (42, "free")]),
            ("T16", "shoulder/forward elevation/any/active", &[(0, "no"), (42, "free")]),
            ("T16", "shoulder/external rotation/any/active", &[(0, "no"), (42, "free")]),
            ("T16", "shoulder/internal rotation/any/active", &[(0, "no"), (42, "free")]),
            ("KUO (3 weeks), rest O", "shoulder/hand behind back/any/passive", &[(0, "no"), (42, "free")]),
            ("KUO (3 weeks), rest O", "shoulder/extension/any/passive", &[(0, "no"), (42, "free")]),
            ("KUO (3 weeks), rest O", "shoulder/horizontal adduction/any/active", &[(0, "no"), (42, "free")]),
            ("BMC11", "shoulder/abduction with external rotation/any/passive", &[(0, "no"), (84, "free")]),
            ("BMC11", "shoulder/abduction with external rotation/any/active", &[(0, "no"), (84, "free")]),
            ("T16", "shoulder/forward elevation/any/end-range stretch", &[(0, "no"), (84, "free")]),
            ("KUO, BMC11", "shoulder/external rotation/at side/isometric", &[(0, "no"), (49, "30 %"), (84, "free")]),
            ("KUO, BMC11: arm at side", "shoulder/external rotation/any/isometric", &[(0, "no"), (84, "free")]),
            ("T16", "shoulder/abduction/any/resisted", &[(0, "no"), (84, "free")]),
            ("T16", "scapula/squeeze/any/resisted", &[(0, "no"), (84, "free")]),
            ("MGH-S", "scapula/shrug/any/active", &[(0, "no"), (14, "free")]),
            ("C", "elbow/flexion/any/active", &[(0, "free")]),
            ("O", "elbow/flexion/any/resisted", &[(0, "no"), (56, "free")]),
            ("MGH-S", "hand/squeeze/any/resisted", &[(0, "no"), (14, "free")]),
            (
                "T16, WI; from 112 O",
                "whole arm/hand load/any/resisted",
                &[(0, "no"), (84, "2.27 kg"), (112, "4.54 kg")],
            ),
            ("O", "whole arm/overhead load/any/resisted", &[(0, "no"), (140, "4.54 kg")]),
            ("AG, extension O", "whole arm/weight through the arm/any/resisted", &[(0, "no"), (84, "free")]),
        ],
    );
}

#[test]
fn the_options_of_staged_change_what_they_name() {
    for (option, value) in [("30 deg", "30 deg"), ("45 deg", "45 deg")] {
        let plan = composed(&facts(&[]), None, &[("external-rotation-limit", option)]);
        expect(
            &plan,
            &[
                ("policies: settings 30, 45", OUTWARD, &[(0, "no"), (14, value), (42, "free")]),
                (
                    "MGH-S: assisted the same",
                    "shoulder/external rotation/any/active-assisted",
                    &[(0, "no"), (28, value), (42, "free")],
                ),
            ],
        );
    }
    let short = [("small-tear-sling", "28 days")];
    expect_sling(&composed(&facts(&[]), None, &short), 28, 42); // policies: setting "small tear: 28 days"
    expect_sling(&composed(&facts(&[("tear size", "10 to under 30 mm")]), None, &short), 42, 56);
    expect_sling(&composed(&facts(&[("tear size", "unknown")]), None, &short), 42, 56);
}

#[test]
fn delayed_keeps_the_days_of_its_sources() {
    let size = facts(&[("tear size", "30 to 50 mm")]);
    for by in [size, facts(&[("repaired tendons", "more than one")]), facts(&[("tear size", "unknown")])] {
        let plan = composed(&by, None, &[]);
        assert_eq!(cuff().protocols[usize::from(plan.protocol)].id, "delayed");
        // MGH-L days 42, 70, 98, 126; PB day 182
        assert_eq!(plan.gates, [0, 42, 70, 98, 126, 182].map(Some));
        expect_sling(&plan, 42, 56); // MGH-L
        expect(
            &plan,
            &[
                ("MGH-L; second step O", FORWARD, &[(0, "no"), (42, "100 deg"), (70, "120 deg"), (98, "free")]),
                ("MGH-L; second step O", OUTWARD, &[(0, "no"), (42, "30 deg"), (70, "45 deg"), (98, "free")]),
                (
                    "MGH-L",
                    "shoulder/forward elevation/any/active-assisted",
                    &[(0, "no"), (70, "120 deg"), (98, "free")],
                ),
                ("MGH-L", "shoulder/external rotation/any/active-assisted", &[(0, "no"), (70, "45 deg"), (98, "free")]),
                ("MGH-L", "shoulder/forward elevation/any/active", &[(0, "no"), (98, "free")]),
                ("MGH-L", "shoulder/abduction/at side/isometric", &[(0, "no"), (98, "30 %"), (126, "free")]),
                ("O", "shoulder/forward elevation/any/end-range stretch", &[(0, "no"), (126, "free")]),
                ("O", "shoulder/extension/any/passive", &[(0, "no"), (98, "free")]),
                ("O", "shoulder/abduction with external rotation/any/passive", &[(0, "no"), (98, "free")]),
                ("O: source says week 10", "shoulder/hand behind back/any/passive", &[(0, "no"), (98, "free")]),
                ("MGH-L", "shoulder/internal rotation/any/resisted", &[(0, "no"), (126, "free")]),
                ("O from MGH-S", "scapula/roll/any/active", &[(0, "no"), (42, "free")]),
                ("PB, MGH-L", "whole arm/hand load/any/resisted", &[(0, "no"), (126, "2.27 kg"), (154, "4.54 kg")]),
                ("O", "whole arm/overhead load/any/resisted", &[(0, "no"), (182, "4.54 kg")]),
                ("O", "whole arm/weight through the arm/any/resisted", &[(0, "no"), (126, "free")]),
            ],
        );
    }
}

#[test]
fn slower_findings_let_delayed_cap_the_plan_once() {
    let delayed = composed(&facts(&[("tear size", "30 to 50 mm")]), None, &[]);
    for finding in [
        ("tissue", "poor"),
        ("tissue", "unknown"),
        ("tension", "high"),
        ("repair construct", "partial repair"),
        ("revision", "unknown"),
        ("slower", "yes"),
    ] {
        let plan = composed(&facts(&[finding]), None, &[]);
        assert_eq!(cuff().protocols[usize::from(plan.protocol)].id, "staged", "the id stays: policies, staged");
        assert_eq!(plan.cells, delayed.cells, "{finding:?}");
        assert_eq!(plan.gates, delayed.gates, "{finding:?}");
    }
    let findings = ["tissue", "tension", "repair construct", "revision"];
    let all = findings.map(|name| (name, "unknown"));
    assert_eq!(composed(&facts(&all), None, &[]).cells, delayed.cells, "counts once however many: policies");
}

#[test]
fn early_passive_is_the_common_practice_it_says_it_is() {
    let sizes = [
        ("under 10 mm", (28, 42), 42),
        ("10 to under 30 mm", (42, 56), 42),
        ("30 to 50 mm", (56, 56), 56),
        ("unknown", (56, 56), 56),
    ];
    for (size, (always, weaning), opens) in sizes {
        let plan = composed(&facts(&[("tear size", size)]), Some("early-passive"), &[]);
        expect_sling(&plan, always, weaning); // C: 4 to 8 weeks by extent
        let then_free = [(0, "no"), (opens, "free")];
        expect(
            &plan,
            &[
                ("C; degrees KUO, MGH-S", FORWARD, &[(0, "no"), (1, "90 deg"), (opens, "free")]),
                ("C; degrees KUO, MGH-S", PLANE, &[(0, "no"), (1, "90 deg"), (opens, "free")]),
                ("C; degrees KUO, MGH-S", OUTWARD, &[(0, "no"), (1, "45 deg"), (opens, "free")]),
                ("C: only passive before", "shoulder/forward elevation/any/active-assisted", &then_free),
                ("C: only passive before", "shoulder/external rotation/any/active", &then_free),
                ("C: no hand behind the back", "shoulder/hand behind back/any/passive", &then_free),
                ("C", "scapula/shrug/any/active", &[(0, "no"), (1, "free")]),
                ("C: nothing else before", "scapula/placing/any/active", &then_free),
                ("C", "elbow/flexion/any/active", &[(0, "free")]),
            ],
        );
    }
    let early = &cuff().protocols[cuff().protocol("early-passive").expect("it is shipped")];
    let repetitions = |id: &str| early.exercises.iter().find(|used| used.id == id).and_then(|used| used.repetitions);
    assert_eq!(repetitions("pendulum"), Some((10, 20))); // C: circles each way
    for id in [
        "stick-external-rotation",
        "stick-elevation-scapular-plane",
        "elbow-flexion",
        "wrist-circles",
        "hand-open-close",
    ] {
        assert_eq!(repetitions(id), Some((10, 15)), "{id}"); // C
    }
}

#[test]
fn a_subscapularis_repair_opens_outward_rotation_in_steps() {
    // Under early-passive the ladders lie below the protocol, so they show as they are.
    let upper = composed(&facts(&[("subscapularis", "upper part, arthroscopic")]), Some("early-passive"), &[]);
    expect(&upper, &[("CH", OUTWARD, &[(0, "no"), (1, "0 deg"), (28, "45 deg"), (42, "90 deg"), (56, "free")])]);
    let complete = composed(&facts(&[("subscapularis", "complete or open")]), Some("early-passive"), &[]);
    expect(
        &complete,
        &[(
            "CH",
            OUTWARD,
            &[(0, "no"), (1, "0 deg"), (28, "30 deg"), (42, "45 deg"), (56, "60 deg"), (70, "90 deg"), (84, "free")],
        )],
    );
    // Under staged the lower of the two counts.
    let staged = composed(&facts(&[("subscapularis", "complete or open")]), None, &[]);
    expect(
        &staged,
        &[
            (
                "CH, MGH-S",
                OUTWARD,
                &[
                    (0, "no"),
                    (14, "0 deg"),
                    (28, "20 deg"),
                    (42, "45 deg"),
                    (56, "60 deg"),
                    (70, "90 deg"),
                    (84, "free"),
                ],
            ),
            ("CH, MGH-S; durations O", "shoulder/internal rotation/any/active", &[(0, "no"), (42, "free")]),
            ("CH, MGH-S; durations O", "shoulder/extension/any/active", &[(0, "no"), (42, "free")]),
            ("CH, MGH-S; durations O", "shoulder/hand behind back/any/passive", &[(0, "no"), (42, "free")]),
            ("SM6; durations O", "scapula/shrug/any/active", &[(0, "no"), (42, "free")]),
            (
                "CH, MGH-S; durations O",
                "shoulder/internal rotation/at side/isometric",
                &[(0, "no"), (56, "30 %"), (84, "free")],
            ),
            ("CH, MGH-S; durations O", "shoulder/inward turn against gravity/any/active", &[(0, "no"), (56, "free")]),
        ],
    );
    assert!(
        staged.sling_position.iter().all(|held| *held == SlingPosition::Neutral),
        "0 is the forearm straight ahead"
    );
    let later =
        composed(&facts(&[("subscapularis", "complete or open")]), None, &[("subscapularis-inward-effort", "day 84")]);
    expect(
        &later,
        &[
            ("policies: setting 84", "shoulder/internal rotation/at side/isometric", &[(0, "no"), (84, "free")]),
            ("policies: setting 84", "shoulder/inward turn against gravity/any/active", &[(0, "no"), (84, "free")]),
        ],
    );
}

#[test]
fn biceps_work_opens_the_elbow_in_steps() {
    let steps: &[Row<'_>] = &[
        ("ME, WI, HO", "elbow/flexion/any/passive", &[(0, "free")]),
        ("ME, WI, HO", "elbow/flexion/any/active-assisted", &[(0, "no"), (28, "free")]),
        ("ME, WI, HO", "elbow/flexion/any/active", &[(0, "no"), (28, "free")]),
        ("ME, WI, HO", "forearm/supination/any/active", &[(0, "no"), (28, "free")]),
        ("ME, WI, HO", "elbow/flexion/any/resisted", &[(0, "no"), (56, "free")]),
        ("ME, WI, HO", "forearm/supination/any/isometric", &[(0, "no"), (56, "free")]),
        ("TEN", "elbow/extension/any/end-range stretch", &[(0, "no"), (42, "free")]),
        ("C", "elbow/extension/any/active", &[(0, "free")]),
        ("C", "forearm/pronation/any/active", &[(0, "free")]),
        ("T16, WI: later wins", "whole arm/hand load/any/resisted", &[(0, "no"), (84, "2.27 kg"), (112, "4.54 kg")]),
    ];
    // Policies: biceps work not recorded as tenodesis; tenotomy as tenodesis.
    for class in ["tenodesis", "unknown", "tenotomy"] {
        expect(&composed(&facts(&[("biceps", class)]), None, &[]), steps);
    }
    // The option is for a tenotomy that is recorded: not recorded still counts as a tenodesis too.
    expect(&composed(&facts(&[("biceps", "unknown")]), None, &[("tenotomy", "early use")]), steps);
    let early = composed(&facts(&[("biceps", "tenotomy")]), None, &[("tenotomy", "early use")]);
    expect(
        &early,
        &[
            ("MGH-S", "elbow/flexion/any/active", &[(0, "free")]),
            ("C: 42, and the arm's own day 56", "elbow/flexion/any/resisted", &[(0, "no"), (56, "free")]),
        ],
    );
}

#[test]
fn a_labral_repair_keeps_the_biceps_and_outward_rotation_back() {
    // BR for the superior repair; the same for an anterior one, or one not recorded: O.
    for class in ["superior repair", "anterior repair", "unknown"] {
        let plan = composed(&facts(&[("labrum", class)]), Some("early-passive"), &[]);
        expect(
            &plan,
            &[
                ("BR", OUTWARD, &[(0, "no"), (1, "0 deg"), (42, "free")]),
                ("BR", "elbow/flexion/any/resisted", &[(0, "no"), (84, "free")]),
                ("BR", "elbow/flexion/any/isometric", &[(0, "no"), (84, "free")]),
                ("BR", "forearm/supination/any/resisted", &[(0, "no"), (84, "free")]),
                ("BR", "shoulder/abduction with external rotation/any/passive", &[(0, "no"), (84, "free")]),
                ("C", "elbow/flexion/any/active", &[(0, "free")]),
            ],
        );
    }
}

#[test]
fn other_findings_bind_what_they_name() {
    let teres = composed(&facts(&[("teres minor", "repaired")]), None, &[]);
    expect(
        &teres,
        &[
            ("EV, MGH-S; O", "scapula/squeeze/any/active", &[(0, "no"), (42, "free")]),
            ("MGH-S", "scapula/shrug/any/active", &[(0, "no"), (14, "free")]),
            ("EV, MGH-S", "shoulder/internal rotation/any/passive", &[(0, "no"), (42, "free")]),
            ("EV, MGH-S", "shoulder/external rotation/any/active", &[(0, "no"), (42, "free")]),
        ],
    );
    for class in ["yes", "unknown"] {
        let clavicle = composed(&facts(&[("distal clavicle excision", class)]), None, &[]);
        expect(
            &clavicle,
            &[
                ("O", "shoulder/horizontal adduction/any/resisted", &[(0, "no"), (84, "free")]),
                ("KUO, rest O: not loaded", "shoulder/horizontal adduction/any/passive", &[(0, "no"), (42, "free")]),
            ],
        );
    }
    // Fair tissue, moderate tension, decompression and the like change nothing: policies.
    let nothing = [("infraspinatus", "repaired"), ("capsular release", "yes"), ("preoperative stiffness", "yes")];
    assert_eq!(composed(&facts(&nothing), None, &[]).cells, composed(&facts(&[]), None, &[]).cells);
    let asked = ["retraction grade", "fatty infiltration", "pseudoparalysis", "delamination", "smoking", "diabetes"];
    let asked = asked.map(|name| (name, "unknown"));
    assert_eq!(composed(&facts(&asked), None, &[]).cells, composed(&facts(&[]), None, &[]).cells);
}
