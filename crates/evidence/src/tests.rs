//! The readings, the lookups, and what must hold of every entry.

use super::*;
use quantity::{Degrees, Kilograms, Percent};

const fn example(value: Option<f64>, unit: Unit) -> Entry {
    Entry { value, ..Entry::new("example", "example", "an example", unit, HowKnown::OwnChoice) }
}

#[test]
fn readings_are_exact() {
    // 5 lb and 10 lb as the sheets print them; 0.1 + 0.2 would show a float passing through.
    assert_eq!(example(Some(2.27), Unit::Kilograms).kilograms(), Kilograms::from_steps(227));
    assert_eq!(example(Some(4.54), Unit::Kilograms).kilograms(), Kilograms::from_steps(454));
    assert_eq!(example(Some(-7.5), Unit::Degrees).degrees(), Degrees::from_steps(-75));
    assert_eq!(example(Some(0.3), Unit::PercentMvic).percent(), Percent::from_steps(3));
    assert_eq!(example(Some(4.0), Unit::Points).points(), 4);
    assert_eq!(example(Some(70.0), Unit::Years).years(), 70);
    assert_eq!(example(Some(20.0), Unit::Repetitions).repetitions(), 20);
}

#[test]
fn a_range_holds_its_ends_and_its_unit_only() {
    let entry = Entry { low: Some(10.0), high: Some(20.0), ..example(None, Unit::Repetitions) };
    for (number, unit, expected) in [
        (10.0, Unit::Repetitions, true),
        (15.0, Unit::Repetitions, true),
        (20.0, Unit::Repetitions, true),
        (20.1, Unit::Repetitions, false),
        (9.9, Unit::Repetitions, false),
        (15.0, Unit::Sets, false),
    ] {
        assert_eq!(entry.holds(number, unit), expected, "{number} {unit:?}");
    }
    assert!(!Entry { low: Some(1.0), ..example(None, Unit::Days) }.holds(1.0, Unit::Days));
}

#[test]
fn the_table_is_sorted_and_every_lookup_finds_its_own() {
    assert!(ENTRIES.windows(2).all(|pair| pair[0].id < pair[1].id));
    assert!(SOURCES.windows(2).all(|pair| pair[0].key < pair[1].key));
    for expected in ENTRIES {
        assert_eq!(entry(expected.id), Some(expected));
    }
    for expected in SOURCES {
        assert_eq!(source(expected.key), Some(expected));
    }
}

#[test]
fn every_entry_names_known_sources_and_parents_or_carries_a_mark() {
    for entry in ENTRIES {
        for key in entry.sources {
            assert!(source(key).is_some(), "{}: {key}", entry.id);
        }
        for parent in entry.derived_from {
            assert!(super::entry(parent).is_some(), "{}: {parent}", entry.id);
        }
        let unsourced = matches!(entry.how_known, HowKnown::CommonPractice | HowKnown::OwnChoice);
        assert!(unsourced || !entry.sources.is_empty(), "{} has no source", entry.id);
    }
}

#[test]
fn memory_is_marked_and_sets_no_limit() {
    for (_, how) in HowKnown::WORDS {
        assert_eq!(how.may_set_limit(), *how != HowKnown::Memory);
    }
    assert_eq!(HowKnown::Memory.mark(), Some("from memory"));
    assert_eq!(HowKnown::CommonPractice.mark(), Some("common practice, no source"));
    assert_eq!(HowKnown::OwnChoice.mark(), Some("own choice"));
    assert_eq!(HowKnown::Abstract.mark(), None);
}
