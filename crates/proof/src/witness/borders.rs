//! Records on, just under and just over every measured border, with the class
//! that the policies give them. A table that was written by hand.
//!
//! The classes here are *not* computed: they say a second time, from the
//! policies and not from the code, where each class ends. A change of a border
//! in the table of evidence has to be made here again, on purpose.

use operative::{DIMENSION_COUNT, DimensionId, Facts, SafeArcs, dim};

use super::page::{Page, quoted};
use super::{Edge, page};

/// One value near a border, written as a record.
#[derive(Debug, Clone)]
pub struct Border {
    /// The dimension whose border it is.
    pub dimension: DimensionId,
    /// What is written, for a person: `mediolateral = "29.9 mm"`.
    pub written: String,
    /// The record.
    pub text: String,
    /// What has to come of it.
    pub expected: Expected,
    /// Where the border comes from.
    pub source: &'static str,
}

/// What has to come of a record near a border.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Expected {
    /// The class of this name.
    Class(&'static str),
    /// The reader refuses the value with this code: there is no such value.
    Refused(&'static str),
}

use Expected::{Class, Refused};

/// Every border of every measured class, one unit and one finest step to both of its sides.
///
/// # Units and shape
/// Lengths by a millimeter and by a tenth of one, each as front-to-back size,
/// mediolateral size and retraction; grades by one; age by a year and by a day.
/// The ends of what the reader believes are borders too.
///
/// # Source
/// The default policies and the meaning written beside each class; named with each record.
pub fn borders() -> Vec<Border> {
    let mut found = sizes();
    found.extend(sizes_alone());
    found.extend(grades());
    found.extend(ages());
    found
}

const TEAR: &str = "[operation.tear]";

/// The mildest record, to be changed in one place.
fn mildest() -> Page {
    page(&Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() }, Edge::Middle)
}

const UNDER_10: Expected = Class("under 10 mm");
const TO_30: Expected = Class("10 to under 30 mm");
const TO_50: Expected = Class("30 to 50 mm");
const OVER_50: Expected = Class("over 50 mm");
const UNKNOWN: Expected = Class("unknown");
const IMPLAUSIBLE: Expected = Refused("implausible-size");

const SIZE_10: &str =
    "default policies, early-passive: under 10 mm, then 10 to 29 mm; 10 mm itself: own choice (tear-class-small-below)";
const SIZE_30: &str = "default policies: staged under 30 mm, delayed from 30 mm (tear-class-large-from)";
const SIZE_50: &str = "default policies: confirmed twice above 50 mm (tear-class-massive-above)";
const SIZE_100: &str = "own choice: above 100 mm is a slip (record-tear-size-greatest); a tear has some size";

/// A size and its class where the width of the tear is known.
#[rustfmt::skip]
const SIZES: &[(&str, Expected, &str)] = &[
    ("0.1 mm", UNDER_10, SIZE_100),
    ("9 mm", UNDER_10, SIZE_10),
    ("9.9 mm", UNDER_10, SIZE_10),
    ("10 mm", TO_30, SIZE_10),
    ("1.0 cm", TO_30, SIZE_10),
    ("10.1 mm", TO_30, SIZE_10),
    ("11 mm", TO_30, SIZE_10),
    ("29 mm", TO_30, SIZE_30),
    ("29.9 mm", TO_30, SIZE_30),
    ("2.99 cm", TO_30, SIZE_30),
    ("30 mm", TO_50, SIZE_30),
    ("3 cm", TO_50, SIZE_30),
    ("30.1 mm", TO_50, SIZE_30),
    ("31 mm", TO_50, SIZE_30),
    ("49 mm", TO_50, SIZE_50),
    ("49.9 mm", TO_50, SIZE_50),
    ("50 mm", TO_50, SIZE_50),
    ("5 cm", TO_50, SIZE_50),
    ("50.1 mm", OVER_50, SIZE_50),
    ("51 mm", OVER_50, SIZE_50),
    ("99.9 mm", OVER_50, SIZE_100),
    ("100 mm", OVER_50, SIZE_100),
    ("100.1 mm", IMPLAUSIBLE, SIZE_100),
    ("101 mm", IMPLAUSIBLE, SIZE_100),
];

/// Each size in each of the three keys, the others small; and beside the front-to-back size alone.
fn sizes() -> Vec<Border> {
    let keys_beside: &[(&'static str, &[(&'static str, &str)])] = &[
        ("anteroposterior", &[("mediolateral", "1 mm"), ("retraction", "0 mm")]),
        ("mediolateral", &[("anteroposterior", "1 mm"), ("retraction", "0 mm")]),
        ("retraction", &[("anteroposterior", "1 mm"), ("mediolateral", "1 mm")]),
        ("mediolateral", &[("anteroposterior", "1 mm")]),
        ("retraction", &[("anteroposterior", "1 mm")]),
    ];
    let mut found = Vec::new();
    for (key, beside) in keys_beside {
        for (size, expected, source) in SIZES {
            let mut lengths = beside.to_vec();
            lengths.push((*key, *size));
            found.push(tear(&lengths, *expected, source));
        }
    }
    for (key, beside) in [("anteroposterior", "mediolateral"), ("mediolateral", "anteroposterior")] {
        found.push(tear(&[(beside, "1 mm"), (key, "0 mm")], IMPLAUSIBLE, SIZE_100));
    }
    found.push(tear(&[("anteroposterior", "0.1 mm"), ("retraction", "0 mm")], UNDER_10, SIZE_100));
    found
}

const ALONE: &str = "default policies, unknowns: where neither mediolateral size nor retraction is recorded it counts as 30 mm or more; the class is named where the front-to-back size alone is that large";

/// The front-to-back size where nothing else is recorded.
#[rustfmt::skip]
const SIZES_ALONE: &[(&str, Expected)] = &[
    ("0.1 mm", UNKNOWN),
    ("9 mm", UNKNOWN),
    ("9.9 mm", UNKNOWN),
    ("10 mm", UNKNOWN),
    ("10.1 mm", UNKNOWN),
    ("29 mm", UNKNOWN),
    ("29.9 mm", UNKNOWN),
    ("30 mm", TO_50),
    ("30.1 mm", TO_50),
    ("31 mm", TO_50),
    ("49.9 mm", TO_50),
    ("50 mm", TO_50),
    ("50.1 mm", OVER_50),
    ("51 mm", OVER_50),
];

fn sizes_alone() -> Vec<Border> {
    SIZES_ALONE.iter().map(|(size, expected)| tear(&[("anteroposterior", size)], *expected, ALONE)).collect()
}

/// The mildest record with these lengths of the tear and no others.
fn tear(lengths: &[(&'static str, &str)], expected: Expected, source: &'static str) -> Border {
    let mut page = mildest().without(TEAR);
    for (key, length) in lengths {
        page.set(TEAR, key, quoted(length));
    }
    let written: Vec<_> = lengths.iter().map(|(key, length)| format!("{key} = {}", quoted(length))).collect();
    Border { dimension: dim::TEAR_SIZE, written: written.join(", "), text: page.print(), expected, source }
}

const PATTE: &str =
    "default policies: retraction Patte 3; the scale ends there (slower-retraction-grade, patte-grade-highest)";
const GOUTALLIER: &str =
    "default policies: infiltration 3 or more (slower-infiltration-from, goutallier-grade-highest)";
const NO_GRADE: Expected = Refused("no-such-grade");

const PATTE_GRADES: &[(&str, Expected)] =
    &[("0", NO_GRADE), ("1", Class("below 3")), ("2", Class("below 3")), ("3", Class("3")), ("4", NO_GRADE)];

const GOUTALLIER_GRADES: &[(&str, Expected)] = &[
    ("-1", NO_GRADE),
    ("0", Class("below 3")),
    ("1", Class("below 3")),
    ("2", Class("below 3")),
    ("3", Class("3 or more")),
    ("4", Class("3 or more")),
    ("5", NO_GRADE),
];

/// Each grade; infiltration for each muscle alone and beside one that was spared.
fn grades() -> Vec<Border> {
    let grades = "[operation.fatty_infiltration]";
    let mut found = Vec::new();
    for (grade, expected) in PATTE_GRADES {
        let mut page = mildest();
        page.set(TEAR, "retraction_patte", (*grade).into());
        let written = format!("retraction_patte = {grade}");
        let dimension = dim::RETRACTION_GRADE;
        found.push(Border { dimension, written, text: page.print(), expected: *expected, source: PATTE });
    }
    let muscles = ["supraspinatus", "infraspinatus", "teres_minor", "subscapularis"];
    for (muscle, spared) in muscles.into_iter().zip(muscles.into_iter().cycle().skip(1)) {
        for (grade, expected) in GOUTALLIER_GRADES {
            let mut page = mildest().without(grades);
            let dimension = dim::FATTY_INFILTRATION;
            page.set(grades, muscle, (*grade).into());
            let (written, text) = (format!("{muscle} = {grade}"), page.print());
            found.push(Border { dimension, written, text, expected: *expected, source: GOUTALLIER });
            page.set(grades, spared, "0".into());
            let (written, text) = (format!("{muscle} = {grade}, {spared} = 0"), page.print());
            found.push(Border { dimension, written, text, expected: *expected, source: GOUTALLIER });
        }
    }
    found
}

const AGE: &str = "default policies: age over 70 in completed years (slower-age-over)";
const LEAP: &str = "default policies: born on 29 February, the birthday is on 1 March in other years";
const AGE_END: &str = "own choice: over 120 years, or born after the operation, is a slip (record-age-greatest)";
const SEVENTY: Expected = Class("no");
const SEVENTY_ONE: Expected = Class("yes");
const IMPOSSIBLE: Expected = Refused("impossible-date");

/// A birth, an operation, and whether the patient is over 70 on that day.
#[rustfmt::skip]
const AGES: &[(&str, &str, Expected, &str)] = &[
    // A year to both sides of the border: 69, 70, 71 and 72 on the birthday.
    ("1957-03-02", "2026-03-02", SEVENTY, AGE),
    ("1956-03-02", "2026-03-02", SEVENTY, AGE),
    ("1955-03-02", "2026-03-02", SEVENTY_ONE, AGE),
    ("1954-03-02", "2026-03-02", SEVENTY_ONE, AGE),
    // A day to both sides: the 71st birthday is tomorrow, today, yesterday.
    ("1955-03-03", "2026-03-02", SEVENTY, AGE),
    ("1955-03-01", "2026-03-02", SEVENTY_ONE, AGE),
    // The same by the day of the operation, and over the turn of the year.
    ("1955-03-02", "2026-03-01", SEVENTY, AGE),
    ("1955-03-02", "2026-03-03", SEVENTY_ONE, AGE),
    ("1955-01-01", "2025-12-31", SEVENTY, AGE),
    ("1955-01-01", "2026-01-01", SEVENTY_ONE, AGE),
    ("1954-12-31", "2025-12-30", SEVENTY, AGE),
    ("1954-12-31", "2025-12-31", SEVENTY_ONE, AGE),
    ("1954-12-31", "2026-01-01", SEVENTY_ONE, AGE),
    // Born on 29 February: the 71st birthday is never in a leap year, so it is 1 March.
    ("1956-02-29", "2027-02-27", SEVENTY, LEAP),
    ("1956-02-29", "2027-02-28", SEVENTY, LEAP),
    ("1956-02-29", "2027-03-01", SEVENTY_ONE, LEAP),
    ("1956-02-29", "2027-03-02", SEVENTY_ONE, LEAP),
    // In leap years the day is there: the 68th and the 72nd birthday.
    ("1956-02-29", "2024-02-29", SEVENTY, LEAP),
    ("1956-02-29", "2026-02-28", SEVENTY, LEAP),
    ("1956-02-29", "2028-02-28", SEVENTY_ONE, LEAP),
    ("1956-02-29", "2028-02-29", SEVENTY_ONE, LEAP),
    ("1956-02-29", "2028-03-01", SEVENTY_ONE, LEAP),
    // Operated on 29 February: the birthdays on both of its sides.
    ("1957-02-28", "2028-02-29", SEVENTY_ONE, AGE),
    ("1957-03-01", "2028-02-29", SEVENTY, AGE),
    ("1957-03-01", "2028-03-01", SEVENTY_ONE, AGE),
    // 1900 and 2100 are no leap years, 2000 is one.
    ("2028-02-29", "2099-02-28", SEVENTY, LEAP),
    ("2028-02-29", "2099-03-01", SEVENTY_ONE, LEAP),
    ("2029-03-01", "2100-02-28", SEVENTY, LEAP),
    ("2029-03-01", "2100-03-01", SEVENTY_ONE, LEAP),
    // The ends: born on the day and the day after; 120 and 121 years.
    ("2026-03-02", "2026-03-02", SEVENTY, AGE_END),
    ("2026-03-03", "2026-03-02", IMPOSSIBLE, AGE_END),
    ("1905-03-03", "2026-03-02", SEVENTY_ONE, AGE_END),
    ("1905-03-02", "2026-03-02", IMPOSSIBLE, AGE_END),
];

fn ages() -> Vec<Border> {
    let age = |(birth, operation, expected, source): &(&str, &str, Expected, &'static str)| {
        let mut page = mildest();
        page.set("[patient]", "birth_date", (*birth).into());
        page.set("[operation]", "date", (*operation).into());
        let written = format!("birth_date = {birth}, date = {operation}");
        Border { dimension: dim::AGE_OVER_70, written, text: page.print(), expected: *expected, source }
    };
    AGES.iter().map(age).collect()
}
