//! The healing index over every class of its six items, each recorded or not,
//! against a table written here a second time.
//!
//! Source of the expected points and cut-offs: the page that reports the 2019
//! index (`healing-index-…` in the table of evidence); bands as there.

use diagnostic::{FileId, Sink};
use operative::{HealingIndex, healing_index};

type Choice = (Option<&'static str>, u8, u8);

/// What is written, and the lowest and highest points it gives.
const AGE: &[Choice] = &[(Some("1955-03-03"), 0, 0), (Some("1955-03-02"), 2, 2), (Some("1954-03-02"), 2, 2)];
const ANTEROPOSTERIOR: &[Choice] = &[(Some("\"25 mm\""), 0, 0), (Some("\"25.1 mm\""), 2, 2)];
const RETRACTION: &[Choice] = &[
    (None, 0, 4),
    (Some("\"0 mm\""), 0, 0),
    (Some("\"9.9 mm\""), 0, 0),
    (Some("\"10 mm\""), 1, 1),
    (Some("\"19.9 mm\""), 1, 1),
    (Some("\"2 cm\""), 2, 2),
    (Some("\"29.9 mm\""), 2, 2),
    (Some("\"30.0 mm\""), 4, 4),
];
const INFILTRATION: &[Choice] =
    &[(None, 0, 3), (Some("0"), 0, 0), (Some("1"), 0, 0), (Some("2"), 3, 3), (Some("4"), 3, 3)];
const BONE_DENSITY: &[Choice] = &[(None, 0, 2), (Some("-2.4"), 0, 0), (Some("-2.5"), 2, 2), (Some("-3"), 2, 2)];
const ACTIVITY: &[Choice] =
    &[(None, 0, 2), (Some("\"light\""), 0, 0), (Some("\"moderate\""), 0, 0), (Some("\"heavy\""), 2, 2)];

fn index_of(text: &str) -> HealingIndex {
    let mut sink = Sink::new();
    let record = operative::read(FileId(0), text, &mut sink);
    healing_index(&record.unwrap_or_else(|| panic!("{:?}\n{text}", sink.found())))
}

fn record(choices: [Choice; 6]) -> String {
    let [age, anteroposterior, retraction, infiltration, bone_density, activity] = choices.map(|choice| choice.0);
    let line = |key: &str, value: Option<&str>| value.map_or_else(String::new, |value| format!("{key} = {value}\n"));
    format!(
        "[patient]\n{}[operation]\ndate = 2026-03-02\nside = \"left\"\napproach = \"open\"\n\
         [operation.tear]\n{}{}[[operation.tendon]]\nname = \"supraspinatus\"\nthickness = \"full\"\n\
         repair = \"single row\"\n[operation.fatty_infiltration]\n{}[risk]\n{}{}",
        line("birth_date", age),
        line("anteroposterior", anteroposterior),
        line("retraction", retraction),
        line("infraspinatus", infiltration),
        line("bone_density_t_score", bone_density),
        line("activity", activity),
    )
}

/// The band of a score and the share that had healed, as printed beside it.
fn band(score: u8) -> &'static str {
    match score {
        0..=4 => "94 %",
        5 | 6 => "68 %",
        7..=9 => "38 %",
        10..=15 => "14 %",
        _ => "beyond the index",
    }
}

fn check(choices: [Choice; 6]) -> (u8, u8) {
    let text = record(choices);
    let found = index_of(&text);
    let low = choices.iter().map(|choice| choice.1).sum();
    let high = choices.iter().map(|choice| choice.2).sum();
    assert_eq!((found.low, found.high, found.of), (low, high, 15), "{text}");
    let missing = choices.iter().filter(|choice| choice.0.is_none()).count();
    assert_eq!(found.missing.len(), missing, "{text}");
    assert_eq!(found.score, (missing == 0).then_some(low), "{text}");
    assert!(found.meaning.contains(band(low)) && found.meaning.contains(band(high)), "{}", found.meaning);
    assert_eq!(found.meaning.matches('%').count(), if band(low) == band(high) { 1 } else { 2 }, "{}", found.meaning);
    (low, high)
}

#[test]
fn every_class_with_and_without_what_is_not_recorded() {
    let (mut records, mut seen) = (0, [false; 16]);
    for &age in AGE {
        for &anteroposterior in ANTEROPOSTERIOR {
            for &retraction in RETRACTION {
                for &infiltration in INFILTRATION {
                    for &bone_density in BONE_DENSITY {
                        for &activity in ACTIVITY {
                            let (low, high) =
                                check([age, anteroposterior, retraction, infiltration, bone_density, activity]);
                            records += 1;
                            seen[usize::from(low)] = true;
                            seen[usize::from(high)] = true;
                        }
                    }
                }
            }
        }
    }
    assert_eq!(records, 3 * 2 * 8 * 5 * 4 * 4);
    // No sum of the items gives 14: nothing but a whole item can be taken off the 15.
    let never: Vec<_> = seen.iter().enumerate().filter(|(_, seen)| !**seen).map(|(score, _)| score).collect();
    assert_eq!(never, [14]);
}

#[test]
fn the_missing_items_are_named() {
    let found = index_of(include_str!("../../../examples/sparse.toml"));
    assert_eq!((found.low, found.high, found.score), (0, 11, None));
    assert_eq!(
        found.missing,
        [
            "operation.tear.retraction",
            "operation.fatty_infiltration.infraspinatus",
            "risk.bone_density_t_score",
            "risk.activity",
        ]
    );
    assert_eq!(
        found.meaning,
        "what is not recorded decides between study groups in which about 94 % and about 14 % of the repairs had healed"
    );
}

#[test]
fn the_worked_records_have_their_score() {
    let score = |text| index_of(text).score;
    assert_eq!(score(include_str!("../../../examples/small-cuff.toml")), Some(0));
    assert_eq!(score(include_str!("../../../examples/large-cuff.toml")), Some(15));
}

#[test]
fn a_capsular_release_has_no_index() {
    let found = index_of(include_str!("../../../examples/capsular-release.toml"));
    assert!(!found.applies);
    assert_eq!((found.score, found.low, found.high), (None, 0, 15));
}

#[test]
fn every_id_it_rests_on_is_in_the_table() {
    let found = index_of(include_str!("../../../examples/small-cuff.toml"));
    assert_eq!(found.evidence.len(), 2 + 2 + 6 + 2 + 2 + 1 + 1 + 3 + 4);
    for id in found.evidence {
        assert!(evidence::entry(id).is_some(), "{id}");
    }
}
