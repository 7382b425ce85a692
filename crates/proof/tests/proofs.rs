//! The proof of the shipped families, and that it sees what it is there to see.

use std::collections::HashSet;
use std::sync::LazyLock;
use std::sync::atomic::Ordering;

use diagnostic::{FileId, Sink};
use operative::{DIMENSIONS, DimensionId, dim};
use proof::{About, Finding, Manner, Proof, Space, TooMany, Watch, What, covers, points, prove, walk};
use protocol::file::{Choice, Condition};
use protocol::{Compiled, Family, Library, Requested, resolve};

static SHIPPED: LazyLock<Library> = LazyLock::new(|| {
    let mut next = 0..;
    Library::shipped(|_, _| FileId(next.next().unwrap_or_default()), &mut Sink::new())
});

fn family(id: &str) -> Family {
    SHIPPED.families.iter().find(|family| family.file.id == id).expect("it is shipped").clone()
}

fn proved(family: &Family) -> Proof<'_> {
    prove(family, None, Manner::ByRule, &Watch::default()).expect("it ends")
}

/// The findings of the cuff family after a change.
fn after(change: impl FnOnce(&mut Family)) -> Vec<Finding> {
    let mut family = family("cuff");
    change(&mut family);
    proved(&family).findings
}

fn protocol<'f>(family: &'f mut Family, id: &str) -> &'f mut protocol::file::ProtocolFile {
    family.protocols.iter_mut().find(|protocol| protocol.id == id).expect("a protocol")
}

fn rule<'f>(family: &'f mut Family, id: &str) -> &'f mut protocol::file::Rule {
    family.rules.rules.iter_mut().find(|rule| rule.id == id).expect("a rule")
}

#[test]
fn the_shipped_families_overload_nobody_and_hold_nobody_still() {
    for shipped in &SHIPPED.families {
        let proof = prove(shipped, Some(shipped), Manner::ByRule, &Watch::default()).expect("it ends");
        let told: Vec<&str> = proof.findings.iter().map(|finding| finding.message.as_str()).collect();
        assert_eq!(told, Vec::<&str>::new(), "{}", shipped.file.id);
        assert!(proof.holds());
        assert_eq!(proof.space.unread().count(), 0, "{}", shipped.file.id);
        let excluded: u64 = proof.walked.excluded.iter().map(|(_, records)| records).sum();
        assert_eq!(u128::from(proof.walked.records + excluded), proof.space.product(), "{}", shipped.file.id);
        let records: u64 = proof.walked.representatives.iter().map(|(_, records)| records).sum();
        assert_eq!(records, proof.walked.records, "each record has one plan");
    }
}

#[test]
fn hundreds_of_thousands_of_records_by_their_facts_alone() {
    let family = family("cuff");
    let walked = walk(&Space::of_facts(&family), Manner::ByRule, &Watch::default());
    // 5 sizes, 16 sets of tendons (12 for more than one... see `is_believable`), 3^4 of tissue, tension, construct and
    // revision, 4 of biceps, 4 of labrum, 3 of the clavicle, 3 answers.
    assert_eq!(walked.records, 5 * 16 * 81 * 4 * 4 * 3 * 3);
    assert_eq!(walked.unsound.len() + walked.looser.len(), 0);
}

#[test]
fn sharing_plans_and_composing_each_come_to_the_same() {
    let release = family("capsular-release");
    let cuff = family("cuff");
    for space in [Space::new(&release), Space::of_facts(&cuff)] {
        let shared = walk(&space, Manner::ByRule, &Watch::default());
        let singly = walk(&space, Manner::Singly, &Watch::default());
        let counts = |walked: &proof::Walked| {
            (
                walked.records,
                walked.distinct_plans(),
                walked.cover_comparisons,
                walked.unsound.len(),
                walked.looser.len(),
            )
        };
        assert_eq!(counts(&shared), counts(&singly));
        assert_eq!(singly.not_shared, 0);
        assert_eq!(shared.excluded, singly.excluded);
    }
}

#[test]
fn a_condition_that_forgets_the_worse_class_is_told_as_looser() {
    let findings = after(|family| {
        let dimension = dim::SUBSCAPULARIS;
        let upper = DIMENSIONS[usize::from(dimension.0)].has("upper part, arthroscopic").expect("a class");
        let when = &mut rule(family, "subscapularis-any").when;
        when.all = vec![Condition { mask: upper, ..when.all[0] }];
    });
    let finding = findings.iter().find(|finding| finding.about == About::Looser).expect("it is looser");
    assert_eq!(
        finding.message,
        "subscapularis: \"complete or open\" in place of \"upper part, arthroscopic\" loosens the plan: days 14 to 41, \
         passive placing of the scapula is free in place of not allowed"
    );
    assert_eq!((finding.from_day, finding.until_day), (14, 42));
    let read = |text: &str| operative::facts(&operative::read(FileId(0), text, &mut Sink::new()).expect("a record"));
    let worse = read(&finding.record);
    let milder = read(finding.compared_with.as_deref().expect("two records"));
    assert_eq!((worse.class(dim::SUBSCAPULARIS), milder.class(dim::SUBSCAPULARIS)), (2, 1));
    assert_eq!(worse.with(dim::SUBSCAPULARIS, 1), milder, "they differ in this one thing");
    assert_eq!(worse.classes.iter().map(|class| u32::from(*class)).sum::<u32>(), 2, "and are mild in all others");
}

#[test]
fn a_selection_that_forgets_the_larger_tear_is_told_as_looser() {
    let findings = after(|family| {
        let large = DIMENSIONS[usize::from(dim::TEAR_SIZE.0)].class("30 to 50 mm").expect("a class");
        family.file.selects[0].when.all[0].mask = 1 << large;
    });
    let told: Vec<&str> =
        findings.iter().filter(|finding| finding.about == About::Looser).map(|finding| finding.kind.as_str()).collect();
    assert!(told.contains(&"tear size: \"over 50 mm\" in place of \"30 to 50 mm\""), "{told:?}");
}

#[test]
fn a_sling_that_is_worn_too_long_is_told_as_stiffening() {
    let findings = after(|family| {
        let weaning = &mut protocol(family, "delayed").slings[1];
        weaning.until = Some(60);
        protocol(family, "delayed").slings[2].from = 60;
    });
    let told: Vec<&str> = findings.iter().map(|finding| finding.message.as_str()).collect();
    assert!(
        told.contains(&"the sling, weaning counted, days 0 to 59: 60 days in a row, 4 more than the cap of 56"),
        "{told:?}"
    );
    let mut abouts: Vec<About> = findings.iter().map(|finding| finding.about).collect();
    abouts.dedup();
    assert!(abouts.contains(&About::Stiffening));
}

#[test]
fn passive_motion_that_opens_later_than_promised_is_told_with_the_rule() {
    let findings = after(|family| {
        for limit in &mut rule(family, "teres-minor").limits {
            limit.steps[0].until = Some(110);
        }
    });
    let late = findings.iter().find(|finding| finding.kind == "passive-too-late").expect("it is late");
    assert_eq!(late.about, About::Stiffening);
    assert_eq!(late.rule.as_deref(), Some("teres-minor"));
    assert!(
        late.message.starts_with(
            "passive internal rotation has to be open from day 42 at the latest and opens on day 110, 68 days later"
        ),
        "{}",
        late.message
    );
    assert!(late.who.contains("teres minor repaired"), "{}", late.who);
    assert!(late.records > 1000);
}

#[test]
fn a_limit_that_nobody_lifts_is_told() {
    let findings = after(|family| {
        let limits = &mut protocol(family, "staged").limits;
        let limit = limits.iter_mut().find(|limit| limit.id == "resistance").expect("a limit");
        limit.steps[0].until = Some(300);
    });
    let kinds: HashSet<&str> = findings.iter().map(|finding| finding.kind.as_str()).collect();
    assert!(kinds.contains("limit-falls") && kinds.contains("limit-never-lifts"), "{kinds:?}");
}

#[test]
fn other_files_under_the_same_edition_are_told_as_who_when_and_by_how_much() {
    let shipped = family("cuff");
    let mut edited = shipped.clone();
    let degrees = |degrees| plan::Cell::up_to(plan::Bound::Angle(quantity::Degrees::whole(degrees)));
    let limits = &mut protocol(&mut edited, "staged").limits;
    limits.iter_mut().find(|limit| limit.id == "passive-elevation").expect("a limit").steps[0].cell = degrees(91);
    let proof = prove(&edited, Some(&shipped), Manner::ByRule, &Watch::default()).expect("it ends");
    let told: Vec<&str> = proof.findings.iter().map(|finding| finding.message.as_str()).collect();
    assert_eq!(
        told,
        ["days 14 to 41: passive forward elevation and passive scapular-plane elevation: allowed up to 91 degrees \
             where edition 2026-11 says allowed up to 90 degrees, 1 degree more"]
    );
    assert_eq!(proof.findings[0].about, About::Unsafe);
    assert_eq!(proof.findings[0].who, "tear size under 10 mm");
    // One new name among old ones is no new edition: the rules bind every protocol.
    let counts = |edited: &Family| {
        let proof = prove(edited, Some(&shipped), Manner::ByRule, &Watch::default()).expect("it ends");
        (proof.findings.len(), proof.new_edition.len())
    };
    protocol(&mut edited, "staged").edition = "2027-01".into();
    assert_eq!(counts(&edited), (1, 0));
    // Under a newer edition it is a change, and no finding; under an older name it is none.
    for (edition, expected) in [("2027-01", (0, 1)), ("2025-01", (1, 0)), ("2026-11 ", (1, 0))] {
        for protocol in &mut edited.protocols {
            protocol.edition = edition.into();
        }
        assert_eq!(counts(&edited), expected, "{edition}");
    }
}

#[test]
fn a_line_that_sets_no_limit_is_told_as_well() {
    let shipped = family("cuff");
    let mut edited = shipped.clone();
    protocol(&mut edited, "staged").returns[0].from = quantity::PostoperativeDay::new(42);
    let used = protocol(&mut edited, "early-passive").exercises.iter_mut().find(|used| used.id == "pendulum");
    used.expect("it is used").repetitions = Some((10, 21));
    let proof = prove(&edited, Some(&shipped), Manner::ByRule, &Watch::default()).expect("it ends");
    let told: Vec<&str> = proof.findings.iter().map(|finding| finding.message.as_str()).collect();
    assert!(told.contains(&"`staged`, return to drive: day 42 where the edition says day 56"), "{told:?}");
    assert_eq!(told.len(), 2, "{told:?}");
    assert!(proof.findings.iter().all(|finding| finding.about == About::Unsafe));
}

/// Lines by which a plan can be made looser without any of its limits being another.
#[test]
fn nothing_of_an_edition_changes_unseen() {
    let shipped = family("cuff");
    type Change = fn(&mut Family);
    let changes: [(&str, Change); 6] = [
        ("safe arcs that name no day: end when the stage passive opens", |f| {
            f.file.safe_arc_until_stage = "passive".into();
        }),
        ("`staged`, what the sling comes off for: any time, dressing", |f| {
            for step in &mut protocol(f, "staged").slings {
                step.except.push("any time".into());
            }
        }),
        ("the options of tenotomy: as tenodesis, early use, day 1", |f| {
            f.rules
                .choices
                .iter_mut()
                .find(|choice| choice.id == "tenotomy")
                .expect("a choice")
                .options
                .push("day 1".into());
        }),
        ("the question slower, not asked where the plan has: no protocol", |f| {
            f.file
                .questions
                .iter_mut()
                .find(|question| question.id == "slower")
                .expect("a question")
                .unless_capped_by = None;
        }),
        ("the rule poor-tissue is gone", |f| f.rules.rules.retain(|rule| rule.id != "poor-tissue")),
        ("`staged`, return to drive, the note: \"about day 21\"", |f| {
            protocol(f, "staged").returns[0].note = Some("about day 21".into());
        }),
    ];
    for (told, change) in changes {
        let mut edited = shipped.clone();
        change(&mut edited);
        // The family under another name is the same family.
        edited.file.id = "other".into();
        assert!(proof::is_edition_of(&edited, &shipped));
        let proof = prove(&edited, Some(&shipped), Manner::ByRule, &Watch::default()).expect("it ends");
        let messages: Vec<&str> = proof.findings.iter().map(|finding| finding.message.as_str()).collect();
        assert!(messages.iter().any(|message| message.starts_with(told)), "{told}: {messages:#?}");
    }
}

/// Lines that none of the ways to tell a difference has a word for: the place of the line is told all the same.
#[test]
fn a_line_that_differs_is_never_called_the_same() {
    let shipped = family("cuff");
    type Change = fn(&mut Family);
    let changes: [(&str, Change); 6] = [
        ("family, its head", |f| f.file.id = "cuffs".into()),
        ("staged, sling 3", |f| protocol(f, "staged").slings[2].position = plan::SlingPosition::InternalRotation),
        ("staged, sling 1", |f| protocol(f, "staged").slings[0].except.clear()),
        ("staged, posture 1", |f| protocol(f, "staged").postures[0].modes = vec![body::Mode::Passive]),
        ("staged, goal 1", |f| {
            protocol(f, "staged").goals[0].key = body::Key::parse("shoulder/extension/any/active").expect("a key");
        }),
        ("family, question 1", |f| f.file.questions[0].path = "surgeon.stiff_shoulder".into()),
    ];
    for (place, change) in changes {
        let mut edited = shipped.clone();
        change(&mut edited);
        let proof = prove(&edited, Some(&shipped), Manner::ByRule, &Watch::default()).expect("it ends");
        assert_eq!(proof.changed_lines, [place]);
        assert!(!proof.holds() && proof.findings.iter().any(Finding::is_of_edition), "{place}");
    }
    let proof = prove(&shipped, Some(&shipped), Manner::ByRule, &Watch::default()).expect("it ends");
    assert_eq!(proof.changed_lines, Vec::<String>::new());
}

/// Each side is compared under its own defaults.
#[test]
fn another_default_is_told_in_days_and_degrees() {
    let shipped = family("cuff");
    let mut edited = shipped.clone();
    let choices = &mut protocol(&mut edited, "staged").rules.choices;
    choices.iter_mut().find(|choice| choice.id == "external-rotation-limit").expect("a choice").options.reverse();
    let proof = prove(&edited, Some(&shipped), Manner::ByRule, &Watch::default()).expect("it ends");
    let told: Vec<&str> = proof.findings.iter().map(|finding| finding.message.as_str()).collect();
    assert!(
        told.contains(
            &"days 14 to 41: passive external rotation: allowed up to 45 degrees where edition 2026-11 says allowed up \
              to 20 degrees, 25 degrees more"
        ),
        "{told:#?}"
    );
}

#[test]
fn a_fact_that_no_rule_reads_is_named() {
    let mut family = family("cuff");
    family.file.questions.retain(|question| question.id != "slower");
    let space = Space::new(&family);
    let unread: Vec<&str> = space.unread().filter_map(|beside| Some(beside.dimension.get()?.name)).collect();
    assert_eq!(
        unread,
        ["retraction grade", "fatty infiltration", "pseudoparalysis", "delamination", "age over 70", "smoking"]
    );
}

#[test]
fn a_walk_that_is_stopped_says_that_it_proves_nothing() {
    let family = family("cuff");
    let watch = Watch::default();
    watch.stop.store(true, Ordering::Relaxed);
    let proof = prove(&family, None, Manner::ByRule, &watch).expect("it is stopped");
    assert!(proof.walked.partial && !proof.holds());
    assert!(proof.walked.records < proved(&family).walked.records);
}

#[test]
fn too_many_records_are_not_begun() {
    let mut family = family("cuff");
    let known = family.rules.choices[0].clone();
    for place in 0..60 {
        let options = vec!["one".into(), "two".into()];
        family.rules.choices.push(Choice { id: format!("choice-{place}"), options, ..known.clone() });
    }
    let space = Space::new(&family);
    let refused = prove(&family, None, Manner::Singly, &Watch::default()).expect_err("it would not end");
    let TooMany { points: many, dimensions } = refused;
    assert_eq!(many, points(&space, Manner::Singly));
    assert_eq!(many, dimensions.iter().map(|(_, classes)| *classes as u128).product::<u128>());
}

/// The order on classes, each dimension by itself.
#[test]
fn covers_order_every_class_and_what_is_not_recorded_stands_on_top() {
    for (place, dimension) in (0_u8..).zip(DIMENSIONS) {
        let id = DimensionId(place);
        let above = covers(id);
        let reaches = |from: u8, to: u8| {
            let mut reached = vec![from];
            let mut at = 0;
            while at < reached.len() {
                let next: Vec<u8> = above.iter().filter(|(a, _)| *a == reached[at]).map(|(_, b)| *b).collect();
                reached.extend(next.into_iter().filter(|class| !reached.contains(class)).collect::<Vec<_>>());
                at += 1;
            }
            reached[1..].contains(&to)
        };
        let classes = 0..dimension.classes.len() as u8;
        assert!(classes.clone().all(|class| !reaches(class, class)), "{} has a circle", dimension.name);
        if let Some(unknown) = dimension.unknown_class() {
            let below: Vec<u8> = classes.filter(|class| *class != unknown).collect();
            assert!(below.iter().all(|class| reaches(*class, unknown)), "{}", dimension.name);
        }
    }
    // As the policies write it: none < tenotomy, none < tenodesis, and neither below the other.
    assert_eq!(covers(dim::BICEPS), [(0, 1), (0, 2), (1, 3), (2, 3)]);
    assert_eq!(covers(dim::LABRUM), [(0, 1), (0, 2), (1, 3), (2, 3)]);
    assert_eq!(covers(dim::SUBSCAPULARIS), [(0, 1), (1, 2)]);
    assert_eq!(covers(dim::SLOWER), [(0, 2), (1, 2)]);
}

/// A point's plan is what the command composes for its record.
#[test]
fn a_point_of_the_space_is_the_record_it_is_written_as() {
    let family = family("cuff");
    let space = Space::new(&family);
    let walked = walk(&Space::of_facts(&family), Manner::ByRule, &Watch::default());
    let step = walked.representatives.len() / 50;
    for (point, _) in walked.representatives.iter().step_by(step.max(1)) {
        let facts = space.facts(point);
        let text = proof::record(&space, point);
        let read = operative::facts(&operative::read(FileId(0), &text, &mut Sink::new()).expect("a record"));
        assert_eq!(read, facts, "{text}");
        let compiled = Compiled::new(&family, space.choices(point), &[]);
        assert_eq!(resolve(&compiled, &read, Requested(None)).cells, proof::plan_at(&space, point).cells);
    }
    assert!(space.axes.iter().any(|axis| axis.what == What::Protocol));
}
