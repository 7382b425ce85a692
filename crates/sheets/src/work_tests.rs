//! The work note promises no more than the prescription.

use body::{Joint, Key, Mode, Movement};
use jiff::civil::Date;
use plan::{Allowed, Bound, Wear};

use crate::document::{Block, Document};
use crate::letter_world::{BACK, Made, OPENED_TO_ACTIVE, SMALL, dates_in, dates_of, world};
use crate::limits_table::value_on;
use crate::limits_words::short;
use crate::work_note;

fn key(movement: Movement) -> Key {
    Key::any(Joint::WholeArm, movement, Mode::Resisted)
}

/// The date of the prescription that is written as this text.
fn date_named(made: &Made, text: &str) -> Date {
    let of = &made.prescription;
    let days = 0..=of.spans.last().map_or(0, |span| span.until_day.count());
    let mut dates = days.map(|day| quantity::PostoperativeDay::new(day).date(of.operated_on));
    dates.find(|date| short(*date) == text).unwrap_or_else(|| panic!("{}: {text}", made.name))
}

fn kilograms(text: &str) -> f64 {
    match text {
        "nothing" => 0.0,
        "no set limit" => f64::INFINITY,
        other => other.split(' ').nth(2).expect("a number").parse().expect("a number"),
    }
}

fn limit(allowed: Allowed) -> f64 {
    match allowed {
        Allowed::No => 0.0,
        Allowed::Free => f64::INFINITY,
        Allowed::UpTo(Bound::Load(load)) => load.number(),
        Allowed::UpTo(other) => panic!("{other:?}"),
    }
}

#[test]
fn no_load_is_above_the_limit_on_any_day() {
    let (world, all) = world();
    let mut compared = 0;
    for made in all {
        let of = &made.prescription;
        let document = work_note(&world.desk(made));
        let rows = document.blocks.iter().find_map(|block| match block {
            Block::Table { columns, rows, .. } if columns.len() == 5 => Some(rows),
            _ => None,
        });
        let frozen = of.today.as_ref().is_some_and(|today| today.basis == plan::TodayBasis::Frozen);
        for row in rows.expect("the loads") {
            let from = date_named(made, &row[0].text);
            let until = dates_in(&[&row[1].text]).first().map(|text| date_named(made, text));
            for span in of.spans.iter().filter(|s| s.until > from && until.is_none_or(|until| s.from < until)) {
                let value = |movement| limit(value_on(span, key(movement)).allowed);
                let hand = kilograms(&row[2].text);
                assert!(hand <= value(Movement::HandLoad), "{}: {} from {from}", made.name, row[2].text);
                let overhead = kilograms(&row[3].text);
                assert!(overhead <= value(Movement::OverheadLoad).min(hand), "{}: {}", made.name, row[3].text);
                compared += 1;
            }
            // Only what lies before the gate of an unopened stage is called in force.
            let gate = of.stages.iter().find(|stage| !stage.opened).map(|stage| stage.from);
            if row[4].text == world.messages.text("work-lift-now", &[]) && !frozen && hand_is_open(&row[2].text) {
                assert!(gate.is_none_or(|gate| from < gate), "{}: {from}", made.name);
            }
        }
    }
    assert!(compared > 300, "only {compared}");
}

fn hand_is_open(text: &str) -> bool {
    kilograms(text) > 0.0
}

/// The first day on a ladder, as it is printed.
fn ladder(document: &Document) -> &str {
    let title = world().0.messages.text("work-ladder", &[]);
    let row = document.blocks.iter().find_map(|block| match block {
        Block::Table { rows, .. } => rows.iter().find(|row| row[0].text == title),
        _ => None,
    });
    &row.expect("the ladder")[1].text
}

/// A ladder needs both, on the day told and on every later one.
#[test]
fn no_ladder_before_both_of_its_limits_are_open() {
    let (world, all) = world();
    let mut dated = 0;
    for made in all {
        let document = work_note(&world.desk(made));
        let Some(from) = dates_in(&[ladder(&document)]).first().map(|text| date_named(made, text)) else { continue };
        dated += 1;
        for span in made.prescription.spans.iter().filter(|span| span.until > from) {
            for movement in [Movement::OverheadLoad, Movement::WeightThroughTheArm] {
                assert_ne!(value_on(span, key(movement)).allowed, Allowed::No, "{}: {movement}", made.name);
            }
        }
    }
    assert!(dated > 10, "only {dated}");
}

/// The shipped protocols open weight through the arm before the overhead load: here it stays shut.
#[test]
fn no_ladder_while_weight_through_the_arm_is_shut() {
    let (world, all) = world();
    for made in all {
        let mut made = made.clone();
        let rows = made.prescription.spans.iter_mut().flat_map(|span| &mut span.limits);
        for row in rows.filter(|row| row.key == key(Movement::WeightThroughTheArm)) {
            row.allowed = Allowed::No;
        }
        let document = work_note(&world.desk(&made));
        let text = ladder(&document);
        assert_eq!(text, world.messages.text("work-not-dated", &[]), "{}", made.name);
    }
}

#[test]
fn every_date_is_one_of_the_prescription_and_nothing_is_told_of_findings() {
    let (world, all) = world();
    for made in all {
        let document = work_note(&world.desk(made));
        let known = dates_of(made);
        for date in dates_in(&document.texts()) {
            assert!(known.contains(&date), "{}: {date}", made.name);
        }
        let all = document.texts().join(" ").to_lowercase();
        for word in ["tendon", "cuff", "tear", "shoulder repair", "biceps", "labrum", "diabetes", "exercise"] {
            assert!(!all.contains(word), "{}: {word}", made.name);
        }
    }
}

/// Plain enough to be handed over: at or under grade 8, as the whole note.
#[test]
fn the_note_is_plain() {
    let (world, all) = world();
    for made in all {
        let document = work_note(&world.desk(made));
        let sentences: Vec<String> =
            document.texts().iter().map(|text| format!("{}.", text.trim_end_matches('.'))).collect();
        let grade = wording::grade(&sentences.join(" "));
        assert!(grade <= 8.0, "{}: {grade:.1}", made.name);
    }
}

fn cells<'d>(document: &'d Document, title: &str) -> Option<&'d str> {
    let title = world().0.messages.text(title, &[]);
    document.blocks.iter().find_map(|block| match block {
        Block::Table { rows, .. } => rows.iter().find(|row| row[0].text == title).map(|row| row[1].text.as_str()),
        _ => None,
    })
}

/// What is told as allowed, from its day on, is shut by no later limit and by no later sling.
#[test]
fn nothing_is_told_as_allowed_that_is_shut_again() {
    let (world, all) = world();
    let back = world.made("back", SMALL, BACK, OPENED_TO_ACTIVE, Some(jiff::civil::date(2026, 4, 25)));
    let ahead = world.made("back", SMALL, BACK, "", None);
    let now = world.messages.text("work-may", &[]);
    let tasks = [
        ("work-desk-sling", "desk-work"),
        ("work-desk-both", "desk-work-both-hands"),
        ("work-drive", "drive"),
        ("work-manual", "manual-work"),
    ];
    let (mut compared, mut allowed) = (0, 0);
    for made in all.iter().chain([&back, &ahead]) {
        let document = work_note(&world.desk(made));
        for (title, activity) in tasks {
            let Some(text) = cells(&document, title) else { continue };
            let is_now = text == now;
            let from = match dates_in(&[text]).first() {
                Some(shown) => date_named(made, shown),
                None if is_now => made.issued_on,
                None => continue,
            };
            let entry = world.catalogue.get(activity).expect(activity);
            for span in made.prescription.spans.iter().filter(|span| span.until > from) {
                let is_worn = span.sling.wear == Wear::Always && entry.sling == exercise::SlingDuring::Off;
                let fits = crate::letter_strip::allows(entry, &span.limits);
                assert!(fits && !is_worn, "{}: {activity}, {text}, on {}", made.name, span.from);
                compared += 1;
            }
            if is_now {
                allowed += 1;
                assert!(
                    crate::limits_for_good::is_allowed_now(&world.desk(made), activity),
                    "{}: {activity}",
                    made.name
                );
            }
        }
    }
    assert!(compared > 300 && allowed > 10, "{compared}, {allowed}");
    // The plan has come to day 49 on 20 April, and again 35 days after the go-back on day 50.
    for made in [&back, &ahead] {
        let document = work_note(&world.desk(made));
        assert_eq!(cells(&document, "work-desk-both"), Some("not before 26 May 2026"));
    }
}

/// Back to passive on day 50 puts the sling on again until day 78.
#[test]
fn every_run_of_the_sling_is_told() {
    let back = world().0.made("back", SMALL, BACK, "", None);
    let told = crate::work_sling::worn(&back.prescription, back.issued_on);
    let days: Vec<(Wear, i32)> = told.iter().map(|run| (run.wear, (run.from - back.issued_on).get_days())).collect();
    let expected = [(Wear::Always, 0), (Wear::Weaning, 42), (Wear::Always, 50), (Wear::Weaning, 78), (Wear::None, 92)];
    assert_eq!(days, expected);
    let document = work_note(&world().0.desk(&back));
    let sling = document.texts().into_iter().find(|text| text.contains("worn all the time again")).expect("the sling");
    let shown: Vec<String> = dates_in(&[sling]);
    assert_eq!(shown, ["13 Apr 2026", "13 Apr 2026", "21 Apr 2026", "19 May 2026", "19 May 2026", "2 Jun 2026"]);
}

#[test]
fn a_note_that_may_not_be_signed_says_so() {
    let (world, all) = world();
    let sentence = world.messages.text("work-sign-blocked", &[]);
    let (mut blocked, mut free) = (0, 0);
    for made in all {
        let is_blocked = made.prescription.questions.iter().any(|question| question.changes.is_empty());
        let document = work_note(&world.desk(made));
        assert_eq!(document.texts().contains(&sentence.as_str()), is_blocked, "{}", made.name);
        *(if is_blocked { &mut blocked } else { &mut free }) += 1;
    }
    assert!(blocked > 0 && free > 0);
}

/// After a gate that is not opened no line of loads is in force, and the note says where more will stand.
#[test]
fn a_planned_line_is_marked() {
    let (world, all) = world();
    let [planned, more] = ["work-lift-earliest", "work-lift-more"].map(|id| world.messages.text(id, &[]));
    let mut marked = 0;
    for made in all {
        let document = work_note(&world.desk(made));
        let texts = document.texts();
        let has_planned = texts.contains(&planned.as_str());
        assert_eq!(texts.contains(&more.as_str()), has_planned, "{}", made.name);
        let lifts = crate::work_lifting::lifts(&made.prescription, made.issued_on);
        let gate = made.prescription.stages.iter().find(|stage| !stage.opened).map(|stage| stage.from);
        for lift in lifts.iter().filter(|lift| lift.hand != Allowed::No && lift.from > made.issued_on) {
            assert_eq!(lift.later, gate.is_some_and(|gate| lift.from >= gate), "{}: {}", made.name, lift.from);
            marked += usize::from(lift.later);
        }
    }
    assert!(marked > 20, "{marked}");
}

#[test]
fn a_release_is_told_in_its_own_words() {
    let (world, all) = world();
    let mut releases = 0;
    for made in all.iter().filter(|made| made.name.starts_with("release")) {
        let document = work_note(&world.desk(made));
        let texts = document.texts().join("\n");
        assert!(!texts.contains("heals") && texts.contains("moved again"), "{}", made.name);
        assert!(!texts.contains("sling on"), "{}: the sling is off by then", made.name);
        let letter = crate::letter(&world.desk(made)).texts().join("\n");
        assert!(!letter.contains("capsular release: not recorded"), "{}", made.name);
        releases += 1;
    }
    assert!(releases > 1);
}

/// Work with the other hand alone is told only where that arm is sound.
#[test]
fn the_other_hand_works_only_where_it_is_sound() {
    let (world, all) = world();
    let (mut told, mut left_out) = (0, 0);
    for made in all {
        let document = work_note(&world.desk(made));
        let row = cells(&document, "work-one-hand").or_else(|| cells(&document, "work-one-hand-no-sling"));
        let is_sound = made.record.other_arm.shoulder.is_some_and(|v| v.value == operative::OtherShoulder::Sound);
        assert_eq!(row.is_some(), is_sound, "{}", made.name);
        *(if is_sound { &mut told } else { &mut left_out }) += 1;
        let first = document.texts().into_iter().find(|text| text.starts_with("No work with this arm"));
        let now = world.messages.text("work-may", &[]);
        let has_work = document.blocks.iter().any(|block| match block {
            Block::Table { rows, .. } => {
                let one_hand = world.messages.text("work-one-hand-no-sling", &[]);
                rows.iter().any(|row| row[1].text == now && !row[0].text.starts_with(&one_hand))
            }
            _ => false,
        });
        assert_eq!(first.is_none(), has_work, "{}", made.name);
    }
    assert!(told > 0 && left_out > 0);
}
