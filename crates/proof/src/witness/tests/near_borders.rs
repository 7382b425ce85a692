//! Every border holds on both of its sides.

use std::collections::BTreeMap;

use super::super::{Expected, borders};
use super::read;

#[test]
fn every_border_holds() {
    for border in borders() {
        let written = format!("{} ({})\n{}", border.written, border.source, border.text);
        match (read(&border.text), border.expected) {
            (Ok(record), Expected::Class(class)) => {
                assert_eq!(operative::facts(&record).class_name(border.dimension), class, "{written}");
            }
            (Err(errors), Expected::Refused(code)) => assert_eq!(errors, [code], "{written}"),
            (Ok(record), Expected::Refused(_)) => {
                panic!("{} was taken: {written}", operative::facts(&record).class_name(border.dimension));
            }
            (Err(errors), Expected::Class(_)) => panic!("{errors:?} {written}"),
        }
    }
}

/// Nothing but the dimension of the border moves, so a border is seen alone.
#[test]
fn a_border_moves_one_dimension_only() {
    let mut known: BTreeMap<u8, operative::Facts> = BTreeMap::new();
    for border in borders() {
        let Ok(record) = read(&border.text) else { continue };
        let mut others = operative::facts(&record).with(border.dimension, 0);
        if border.dimension == operative::dim::TEAR_SIZE {
            // A tear that is written anew has no grades.
            others = others.with(operative::dim::RETRACTION_GRADE, 0).with(operative::dim::DELAMINATION, 0);
        }
        let first = known.entry(border.dimension.0).or_insert(others);
        assert_eq!(*first, others, "{}", border.written);
    }
    assert_eq!(known.len(), 4, "size, retraction, infiltration, age");
}

/// Every measured class is reached, from both of its sides where it has two.
#[test]
fn every_measured_class_is_among_them() {
    let mut seen: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for border in borders() {
        let (Some(dimension), Expected::Class(class)) = (border.dimension.get(), border.expected) else { continue };
        let classes = seen.entry(dimension.name).or_default();
        if !classes.contains(&class) {
            classes.push(class);
        }
    }
    let expected = [
        ("age over 70", vec!["no", "yes"]),
        ("fatty infiltration", vec!["below 3", "3 or more"]),
        ("retraction grade", vec!["below 3", "3"]),
        ("tear size", vec!["under 10 mm", "10 to under 30 mm", "30 to 50 mm", "over 50 mm", "unknown"]),
    ];
    assert_eq!(seen, BTreeMap::from(expected));
}
