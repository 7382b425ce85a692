//! The work note promises no more than the prescription.

use body::{Joint, Key, Mode, Movement};
use jiff::civil::Date;
use plan::{Allowed, Bound};

use crate::document::{Block, Document};
use crate::letter_world::{Made, dates_in, dates_of, world};
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
