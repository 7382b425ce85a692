//! The patient's handout of every step of every story: easy to read, never looser than the limits, and silent
//! about what is not opened.

use std::collections::BTreeMap;

use jiff::civil::Date;
use plan::Allowed;
use sheets::{Desk, Document, Points};
use wording::{Ease, Language, Messages, dates};

use crate::judged;
use crate::story;
use crate::world::World;

/// Calls a check with the desk of every step that gives a prescription; how many there were.
fn every_desk(messages: &Messages, mut check: impl FnMut(&str, &Desk<'_>)) -> usize {
    let shelf = crate::shelf();
    let mut count = 0;
    for path in judged::stories() {
        let text = std::fs::read_to_string(&path).expect("a case is text");
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        for step in story::read(&text).unwrap_or_default() {
            let Ok(world) = World::new(&step, &shelf) else { continue };
            if world.issued.is_none() {
                continue;
            }
            let name = format!("{name}:{}", step.line);
            let made = world.with_desk(messages, |desk| check(&name, desk));
            assert!(made.is_some(), "{name}: a prescription without a desk");
            count += 1;
        }
    }
    assert!(count > 60, "only {count} desks");
    count
}

fn handout(name: &str, desk: &Desk<'_>) -> Document {
    sheets::handout(desk).unwrap_or_else(|fault| panic!("{name}: {fault:?}"))
}

#[test]
fn every_handout_is_easy_to_read() {
    let messages = Messages::english();
    let mut hardest: BTreeMap<String, (f32, f32)> = BTreeMap::new();
    every_desk(&messages, |name, desk| {
        let document = handout(name, desk);
        let ease = Ease::of(&document.sentences(), Language::English);
        assert!(ease.sentences > 60, "{name}: only {} sentences", ease.sentences);
        hardest.insert(name.to_owned(), (ease.kincaid_grade(), ease.smog_grade()));
    });
    let too_hard: Vec<_> = hardest.iter().filter(|(_, (grade, smog))| *grade > 6.0 || *smog > 8.0).collect();
    assert!(too_hard.is_empty(), "{too_hard:?}");
    let most = |of: fn(&(f32, f32)) -> f32| hardest.values().map(of).fold(f32::MIN, f32::max);
    println!("{} handouts; hardest grade {:.2}, hardest SMOG {:.2}", hardest.len(), most(|e| e.0), most(|e| e.1));
}

/// Every text is a message that exists, with everything it asks for.
#[test]
fn no_text_is_missing() {
    let messages = Messages::english();
    every_desk(&messages, |name, desk| {
        for text in handout(name, desk).texts() {
            assert!(!text.contains(['‹', '›', '$']), "{name}: {text}");
            assert!(!text.contains("{}") && !text.contains("{ }"), "{name}: {text}");
        }
    });
}

/// No sentence lets a patient do more than the limits of any day it stands for, and none forbids what is allowed.
#[test]
fn no_sentence_is_looser_than_the_limits() {
    let messages = Messages::english();
    let mut compared = 0;
    every_desk(&messages, |name, desk| {
        for period in desk.parts().iter().flat_map(|part| &part.periods) {
            let points = Points::of(period, &messages);
            assert!(!points.may.is_empty() || !points.not.is_empty(), "{name}: nothing is said");
            for point in &points.may {
                assert!(!point.claims.is_empty(), "{name}: {} claims nothing", point.text);
                for (key, claimed) in &point.claims {
                    let row = period.limits.iter().find(|row| row.key == *key);
                    let named = period.limits.iter().filter(|row| row.key.in_position(key.position) == *key);
                    let allowed = row.map(|row| row.allowed).or(named.map(|row| row.allowed).min());
                    assert!(
                        *claimed <= allowed.unwrap_or(Allowed::No),
                        "{name}: {} claims {claimed:?} of {key}, allowed {allowed:?}",
                        point.text
                    );
                    compared += 1;
                }
            }
            for (point, key) in
                points.not.iter().flat_map(|point| point.claims.iter().map(move |claim| (point, claim.0)))
            {
                let open = period.limits.iter().any(|row| row.key == key && row.allowed != Allowed::No);
                assert!(!open, "{name}: {} forbids {key}, which is allowed", point.text);
                compared += 1;
            }
        }
    });
    assert!(compared > 2000, "{compared}");
}

/// A date on or after the gate of the first stage that is not open stands on the paper only as that gate, and as
/// the visit at which the surgeon looks whether it may be opened.
#[test]
fn nothing_unopened_has_a_date() {
    let messages = Messages::english();
    every_desk(&messages, |name, desk| {
        let Some(gate) = desk.prescription.stages.iter().find(|stage| !stage.opened) else { return };
        // Visits up to that gate fall on clinic days, and the wound stays dry whatever is opened.
        let mut known: Vec<Date> = sheets::visits_of_patient(desk).map(|visit| visit.date).collect();
        known.extend([gate.from, evidence::ids::WOUND_DRY_UNTIL.day().date(desk.prescription.operated_on)]);
        let text = handout(name, desk).texts().join("\n");
        let mut date: Date = gate.from;
        for _ in 0..500 {
            let written = dates::short(date, Language::English);
            let is_known = known.contains(&date) || date <= desk.issued_on;
            let stands = text.match_indices(&written).any(|(at, _)| {
                // "2 Mar 2026" stands in "12 Mar 2026" as well.
                !text[..at].ends_with(|c: char| c.is_ascii_digit())
            });
            assert!(is_known || !stands, "{name}: {written} is told, and {} is not opened", gate.id);
            date = date.tomorrow().expect("a day after");
        }
    });
}
