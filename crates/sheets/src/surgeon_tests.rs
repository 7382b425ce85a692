//! The surgeon's page names what it rests on, in the words of the trade.

use jiff::civil::date;

use crate::document::{Block, ListMark};
use crate::letter_world::{BACK, OPENED_TO_ACTIVE, SMALL, world};
use crate::surgeon_page;

const DIGEST: &str = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

#[test]
fn no_text_carries_a_name_of_the_machine() {
    let (world, all) = world();
    for made in all {
        for document in [surgeon_page(&world.desk(made), DIGEST), crate::letter(&world.desk(made))] {
            // In the list of reasons the rule stands in brackets, by its own name.
            let told = document.blocks.iter().filter(|block| !matches!(block, Block::Table { .. }));
            let told = crate::Document { blocks: told.cloned().collect(), ..document.clone() };
            for text in told.texts() {
                for name in ["tendon[", "operation.", "risk.", "surgeon.s", "shoulder/", "elbow/", "/any/"] {
                    assert!(!text.contains(name), "{}: {text}", made.name);
                }
            }
        }
    }
}

#[test]
fn no_effect_of_a_question_is_half_a_turn() {
    let (world, all) = world();
    let mut opened = 0;
    for made in all {
        for text in surgeon_page(&world.desk(made), DIGEST).texts() {
            assert!(!text.contains("by up to 180°"), "{}: {text}", made.name);
            opened += usize::from(text.ends_with("between no and free"));
        }
    }
    assert!(opened > 0);
}

#[test]
fn the_record_and_the_answers_are_told() {
    let (world, all) = world();
    for made in all {
        let document = surgeon_page(&world.desk(made), DIGEST);
        let facts: Vec<&str> = document
            .blocks
            .iter()
            .filter_map(|block| match block {
                Block::Facts { rows } => Some(rows),
                _ => None,
            })
            .flatten()
            .map(|row| row.label.as_str())
            .collect();
        for label in ["Other arm", "Risk", "Surgeon's answers"] {
            assert!(facts.contains(&label), "{}: {label}", made.name);
        }
        let answers = &made.record.surgeon;
        if answers.slower.is_some() {
            assert!(document.texts().iter().any(|text| text.starts_with("slower: ")), "{}", made.name);
        }
        let signed = document.texts().into_iter().find(|text| text.contains("What is signed"));
        assert!(signed.expect("what is signed").starts_with("Not valid unsigned. "), "{}", made.name);
        if !made.prescription.indices.is_empty() {
            let index = document.texts().into_iter().find(|text| text.starts_with("Healing index"));
            assert!(index.expect("the index").contains("own choice"), "{}", made.name);
        }
    }
}

/// No heading stands over nothing, and what moved the plan is not told as loosened.
#[test]
fn holds_and_go_backs_have_a_heading_of_their_own() {
    let (world, all) = world();
    let (moved_title, loosened_title) =
        (world.messages.text("surgeon-moved-title", &[]), world.messages.text("surgeon-loosened-title", &[]));
    let (mut moved, mut loosened) = (0, 0);
    for made in all {
        let document = surgeon_page(&world.desk(made), DIGEST);
        let items_under = |title: &str| {
            let place = document
                .blocks
                .iter()
                .position(|block| matches!(block, Block::Heading { text, .. } if text == title))?;
            match &document.blocks[place + 1] {
                Block::List { mark: ListMark::Dot, items } => Some(items.clone()),
                _ => None,
            }
        };
        for block in &document.blocks {
            assert!(!matches!(block, Block::List { items, .. } if items.is_empty()), "{}", made.name);
        }
        assert_eq!(items_under(&moved_title).unwrap_or_default(), made.prescription.moved, "{}", made.name);
        let told = items_under(&loosened_title).unwrap_or_default();
        assert_eq!(told.is_empty(), made.prescription.loosened.is_empty(), "{}", made.name);
        moved += made.prescription.moved.len();
        loosened += told.len();
    }
    assert!(moved > 0 && loosened > 0);
}

/// Desk work with both hands opens on day 49; back to passive (day 14 of the plan) on day 50, it takes 35 days more.
#[test]
fn a_return_that_is_shut_again_has_its_day_for_good() {
    let back = world().0.made("back", SMALL, BACK, OPENED_TO_ACTIVE, Some(date(2026, 4, 25)));
    let document = surgeon_page(&world().0.desk(&back), DIGEST);
    let told: Vec<&str> = document.texts().into_iter().filter(|text| text.contains("shut again")).collect();
    assert_eq!(told, ["20 Apr 2026 (day 49); shut again after it, for good from 26 May 2026 (day 85)"]);
}

/// 4.54 kg from day 112 and a raise with 2.27 kg from day 140, for somebody of 45 kg: whoever signs and whoever treats
/// reads of it, by the exercise's title.
#[test]
fn a_step_in_load_stands_under_the_cautions_of_both_pages() {
    let (world, _) = world();
    let light = SMALL.replace("[patient]", "[patient]\nmass = \"45 kg\"");
    let made = world.made("light", &light, crate::letter_world::PRACTICE, "", None);
    let steps: Vec<&String> =
        made.prescription.cautions.iter().filter(|caution| caution.contains("turns the shoulder")).collect();
    assert_eq!(steps.len(), 2, "{:?}", made.prescription.cautions);
    for document in [surgeon_page(&world.desk(&made), DIGEST), crate::letter(&world.desk(&made))] {
        let texts = document.texts();
        for (title, weight, day) in [
            ("Elbow bends with a weight", "4.54 kg", "day 112"),
            ("Raise with a weight, thumb up", "2.27 kg", "day 140"),
        ] {
            let told = texts.iter().filter(|text| [title, weight, day, "45 kg"].iter().all(|part| text.contains(part)));
            let told: Vec<_> = told.filter(|text| text.contains("not tendon tension")).collect();
            assert_eq!(told.len(), 1, "{title}: {told:?}");
            assert!(told[0].contains("in between, e.g."), "{}", told[0]);
        }
    }
    // Without a mass nothing is known, and nothing is told.
    let small = world.made("small", SMALL, crate::letter_world::PRACTICE, "", None);
    assert!(!small.prescription.cautions.iter().any(|caution| caution.contains("turns the shoulder")));
}
