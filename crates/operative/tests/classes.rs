//! The boundaries of the classes, and what of the record led to them.

use diagnostic::{FileId, Sink};
use operative::{DIMENSIONS, DimensionId, Facts, Record, dim, dimension, facts};

const COMPLETE: &str = include_str!("../../../examples/small-cuff.toml");
const LARGE: &str = include_str!("../../../examples/large-cuff.toml");
const SPARSE: &str = include_str!("../../../examples/sparse.toml");
const SUBSCAPULARIS: &str = include_str!("../../../examples/subscapularis.toml");
const REVISION: &str = include_str!("../../../examples/left-revision.toml");
const TENODESIS: &str = include_str!("../../../examples/cuff-with-tenodesis.toml");
const RELEASE: &str = include_str!("../../../examples/capsular-release.toml");
const EXAMPLES: [&str; 7] = [COMPLETE, LARGE, SPARSE, SUBSCAPULARIS, REVISION, TENODESIS, RELEASE];

fn record(text: &str) -> Record {
    let mut sink = Sink::new();
    operative::read(FileId(0), text, &mut sink).unwrap_or_else(|| panic!("{:?}\n{text}", sink.found()))
}

fn classes(text: &str) -> Facts {
    facts(&record(text))
}

/// Changes places of a record, each of which stands there once, and compares one class.
#[track_caller]
fn check(base: &str, changes: &[(&str, &str)], name: &str, expect: &str) {
    let mut text = base.to_owned();
    for (old, new) in changes {
        assert_eq!(text.matches(old).count(), 1, "`{old}` stands in the record once");
        text = text.replacen(old, new, 1);
    }
    let of = dimension(name).unwrap_or_else(|| panic!("no dimension {name}"));
    assert_eq!(classes(&text).class_name(of), expect);
}

#[test]
fn the_size_class_is_that_of_the_greatest_length() {
    // Boundaries: the default policies (under 30 mm; 50 mm is not above 50 mm).
    for (size, expect) in [
        ("9.9 mm", "under 10 mm"),
        ("10 mm", "10 to under 30 mm"),
        ("29.9 mm", "10 to under 30 mm"),
        ("30.0 mm", "30 to 50 mm"),
        ("3 cm", "30 to 50 mm"),
        ("50.0 mm", "30 to 50 mm"),
        ("50.1 mm", "over 50 mm"),
        ("100 mm", "over 50 mm"),
    ] {
        for of in ["anteroposterior", "mediolateral", "retraction"] {
            let length = |key, small| format!("{key} = \"{}\" ", if of == key { size } else { small });
            let lengths =
                [length("anteroposterior", "1 mm"), length("mediolateral", "1 mm"), length("retraction", "0 mm")];
            check(
                COMPLETE,
                &[
                    ("anteroposterior = \"18 mm\" ", &lengths[0]),
                    ("mediolateral = \"10 mm\" ", &lengths[1]),
                    ("retraction = \"8 mm\" ", &lengths[2]),
                ],
                "tear size",
                expect,
            );
        }
    }
}

#[test]
fn a_width_that_nobody_wrote_down_is_unknown() {
    let size = |text: &str| [("\"14 mm\"", format!("\"{text}\""))];
    for (front_to_back, expect) in
        [("1 mm", "unknown"), ("29.9 mm", "unknown"), ("30 mm", "30 to 50 mm"), ("50.1 mm", "over 50 mm")]
    {
        let [(old, new)] = size(front_to_back);
        check(SPARSE, &[(old, &new)], "tear size", expect);
    }
    // One of the two stands for the other.
    check(SPARSE, &[("\"14 mm\"", "\"14 mm\"\nmediolateral = \"9 mm\"")], "tear size", "10 to under 30 mm");
    check(SPARSE, &[("\"14 mm\"", "\"9 mm\"\nretraction = \"9 mm\"")], "tear size", "under 10 mm");
}

#[test]
fn age_counts_completed_years_on_the_day() {
    for (birth, expect) in
        [("1956-03-02 ", "no"), ("1955-03-03 ", "no"), ("1955-03-02 ", "yes"), ("1906-03-03 ", "yes")]
    {
        check(COMPLETE, &[("1970-09-14 ", birth)], "age over 70", expect);
    }
    // Born on 29 February: 71 on 1 March of a common year, on the day itself in a leap year.
    for (on, expect) in [("2027-02-28", "no"), ("2027-03-01", "yes"), ("2028-02-28", "yes")] {
        let changes = [("1970-09-14 ", "1956-02-29 "), ("2026-03-02 ", &format!("{on} ")[..])];
        check(COMPLETE, &changes, "age over 70", expect);
    }
}

#[test]
fn the_subscapularis_class_needs_part_and_approach() {
    let of = "subscapularis";
    check(COMPLETE, &[], of, "not repaired");
    check(SUBSCAPULARIS, &[], of, "upper part, arthroscopic");
    check(SUBSCAPULARIS, &[("\"upper part\" ", "\"complete\" ")], of, "complete or open");
    check(SUBSCAPULARIS, &[("part = \"upper part\"  ", "#")], of, "complete or open");
    check(SUBSCAPULARIS, &[("\"arthroscopic\"", "\"mini-open\"")], of, "complete or open");
    check(SUBSCAPULARIS, &[("\"arthroscopic\"", "\"open\"")], of, "complete or open");
    check(SUBSCAPULARIS, &[("\"single row\"", "\"not repaired\"")], of, "not repaired");
    check(SUBSCAPULARIS, &[("\"single row\"", "\"not repaired\"")], "repaired tendons", "one");
    check(SUBSCAPULARIS, &[("repair = \"single row\"", "")], "repaired tendons", "more than one");
    check(SUBSCAPULARIS, &[("repair = \"single row\"", "")], "repair construct", "unknown");
}

#[test]
fn the_worst_repaired_tendon_decides() {
    let two = |tissue: [&str; 2]| {
        let (head, tail) = LARGE.split_once("tissue = \"good\"").unwrap_or_default();
        format!("{head}{}{}", tissue[0], tail.replacen("tissue = \"good\"", tissue[1], 1))
    };
    let (good, fair, poor, none) = ("tissue = \"good\"", "tissue = \"fair\"", "tissue = \"poor\"", "");
    for (tissue, expect) in [
        ([good, fair], "good or fair"),
        ([good, poor], "poor"),
        ([none, poor], "poor"),
        ([good, none], "unknown"),
        ([none, none], "unknown"),
    ] {
        check(&two(tissue), &[], "tissue", expect);
    }
    check(TENODESIS, &[], "tension", "low or moderate");
    check(REVISION, &[], "tension", "high");
    check(REVISION, &[], "repair construct", "partial repair");
    check(COMPLETE, &[], "repair construct", "complete");
}

#[test]
fn what_is_not_recorded_is_unknown_and_nothing_else_is() {
    let sparse = classes(SPARSE);
    let known: Vec<_> = (0..)
        .map(DimensionId)
        .map_while(|of| of.get().map(|dimension| (of, dimension.name)))
        .filter(|(of, _)| !sparse.is_unknown(*of))
        .map(|(_, name)| name)
        .collect();
    assert_eq!(
        known,
        [
            "procedure",
            "repaired tendons",
            "infraspinatus",
            "teres minor",
            "subscapularis",
            "repair construct",
            "age over 70",
            "other procedure",
            "slower",
            "stiff shoulder",
            "beyond delayed",
        ]
    );
    let complete = classes(COMPLETE);
    for (index, dimension) in (0..).zip(DIMENSIONS) {
        assert!(!complete.is_unknown(DimensionId(index)), "{}", dimension.name);
    }
}

#[test]
fn each_answer_has_its_class() {
    for (base, old, new, name, expect) in [
        (COMPLETE, "biceps = \"none\"", "biceps = \"tenotomy\"", "biceps", "tenotomy"),
        (COMPLETE, "labrum = \"none\"", "labrum = \"superior repair\"", "labrum", "superior repair"),
        (COMPLETE, "labrum = \"none\"", "labrum = \"anterior repair\"", "labrum", "anterior repair"),
        (COMPLETE, "capsular_release = false", "capsular_release = true", "capsular release", "yes"),
        (COMPLETE, "other = [] ", "other = [\"graft\"] ", "other procedure", "present"),
        (COMPLETE, "supraspinatus = 1\ninfra", "supraspinatus = 3\ninfra", "fatty infiltration", "3 or more"),
        (COMPLETE, "supraspinatus = 1\ninfra", "supraspinatus = 2\ninfra", "fatty infiltration", "below 3"),
        (COMPLETE, "retraction_patte = 1 ", "retraction_patte = 3 ", "retraction grade", "3"),
        (COMPLETE, "retraction_patte = 1 ", "retraction_patte = 2 ", "retraction grade", "below 3"),
        (COMPLETE, "shoulder = \"sound\" ", "shoulder = \"painful\" ", "other shoulder", "painful"),
        (COMPLETE, "shoulder = \"sound\" ", "operated_on = 2020-01-02 ", "other shoulder", "operated"),
        (SUBSCAPULARIS, "slower = false", "slower = true", "slower", "yes"),
        (SUBSCAPULARIS, "slower = false", "stiff_shoulder = \"loosened\"", "stiff shoulder", "loosened"),
        (SUBSCAPULARIS, "slower = false", "stiff_shoulder = \"as composed\"", "stiff shoulder", "as composed"),
        (COMPLETE, "pseudoparalysis = false", "pseudoparalysis = true", "pseudoparalysis", "yes"),
    ] {
        check(base, &[(old, new)], name, expect);
    }
    check(TENODESIS, &[], "biceps", "tenodesis");
    check(SUBSCAPULARIS, &[], "slower", "no");
    check(REVISION, &[], "beyond delayed", "as composed");
    check(REVISION, &[], "revision", "yes");
    check(RELEASE, &[], "procedure", "capsular release");
    check(RELEASE, &[], "capsular release", "yes");
    check(RELEASE, &[], "tear size", "unknown");
    check(LARGE, &[], "infraspinatus", "repaired");
}

#[test]
fn every_class_has_a_basis_in_the_record() {
    for text in EXAMPLES {
        let record = record(text);
        let facts = facts(&record);
        for (index, dimension) in (0..).zip(DIMENSIONS) {
            let of = DimensionId(index);
            let basis = record.basis(of);
            assert!(!basis.is_empty(), "{}", dimension.name);
            for basis in &basis {
                let written = basis.span.map(|span| &text[span.start as usize..span.end as usize]);
                assert!(written.is_none_or(|written| !written.is_empty()), "{basis:?}");
                assert!(!basis.shown.is_empty(), "{basis:?}");
            }
            let asked = record.missing(of);
            let is_open = facts.is_unknown(of) && record.applies(of);
            assert!(!is_open || !asked.is_empty(), "{} is unknown and nothing is asked", dimension.name);
            assert!(asked.iter().all(|missing| missing.text.ends_with('?')), "{asked:?}");
        }
    }
}

#[test]
fn the_basis_names_path_and_place() {
    let sparse = record(SPARSE);
    let shown: Vec<_> = sparse.basis(dim::TEAR_SIZE).into_iter().map(|b| (b.path, b.span.is_some(), b.shown)).collect();
    assert_eq!(
        shown,
        [
            ("operation.tear.anteroposterior".to_owned(), true, "14 mm".to_owned()),
            ("operation.tear.mediolateral".to_owned(), false, "not recorded".to_owned()),
            ("operation.tear.retraction".to_owned(), false, "not recorded".to_owned()),
        ]
    );
    let paths: Vec<_> = sparse.missing(dim::TEAR_SIZE).into_iter().map(|missing| missing.path).collect();
    assert_eq!(paths, ["operation.tear.mediolateral", "operation.tear.retraction"]);
    let paths: Vec<_> = record(SUBSCAPULARIS).basis(dim::SUBSCAPULARIS).into_iter().map(|b| b.path).collect();
    assert_eq!(
        paths,
        ["operation.tendon[1].name", "operation.tendon[1].repair", "operation.tendon[1].part", "operation.approach",]
    );
}

/// Only what has to be there, in dotted keys, so that any path can be written above it.
const DOTTED: &str = r#"
patient.birth_date = 1962-11-08
operation.date = 2026-03-16
operation.side = "left"
operation.approach = "arthroscopic"
operation.tear.anteroposterior = "14 mm"
operation.tendon = [{ name = "supraspinatus", thickness = "full", repair = "double row" }]
"#;

#[test]
fn an_answer_settles_the_question() {
    let answers: &[(&str, &str)] = &[
        ("operation.tear.mediolateral", "\"9 mm\""),
        ("operation.tear.retraction", "\"9 mm\""),
        ("operation.tear.retraction_patte", "1"),
        ("operation.tear.delamination", "false"),
        ("operation.tendon[0].tissue", "\"good\""),
        ("operation.tendon[0].tension", "\"low\""),
        ("operation.fatty_infiltration.infraspinatus", "0"),
        ("operation.fatty_infiltration.supraspinatus", "0"),
        ("operation.revision", "false"),
        ("operation.also.biceps", "\"none\""),
        ("operation.also.labrum", "\"none\""),
        ("operation.also.distal_clavicle_excision", "false"),
        ("operation.also.capsular_release", "false"),
        ("other_arm.shoulder", "\"sound\""),
        ("risk.diabetes", "false"),
        ("risk.smoking", "false"),
        ("risk.preoperative_stiffness", "false"),
        ("risk.pseudoparalysis", "false"),
    ];
    let sparse = record(DOTTED);
    assert_eq!(facts(&sparse), classes(SPARSE));
    let mut asked = 0;
    for of in (0..).take(DIMENSIONS.len()).map(DimensionId).filter(|of| facts(&sparse).is_unknown(*of)) {
        for missing in sparse.missing(of) {
            let answer = answers.iter().find(|(path, _)| *path == missing.path);
            let (_, answer) = answer.unwrap_or_else(|| panic!("no answer for {}", missing.path));
            let text = match missing.path.strip_prefix("operation.tendon[0].") {
                Some(key) => DOTTED.replace("{ name", &format!("{{ {key} = {answer}, name")),
                None => format!("{} = {answer}\n{DOTTED}", missing.path),
            };
            assert!(!classes(&text).is_unknown(of), "{} settles it", missing.path);
            asked += 1;
        }
    }
    assert_eq!(asked, answers.len());
}

/// A class is named after its boundary; the boundary itself comes from the table of evidence.
#[test]
fn the_names_of_the_classes_agree_with_the_evidence() {
    use evidence::ids;
    let names =
        |of: DimensionId| of.get().map(|d| d.classes.iter().map(|c| c.name).collect::<Vec<_>>()).unwrap_or_default();
    let (small, large, massive) = (
        ids::TEAR_CLASS_SMALL_BELOW.millimeters(),
        ids::TEAR_CLASS_LARGE_FROM.millimeters(),
        ids::TEAR_CLASS_MASSIVE_ABOVE.millimeters(),
    );
    assert_eq!(
        names(dim::TEAR_SIZE),
        [
            format!("under {small} mm"),
            format!("{small} to under {large} mm"),
            format!("{large} to {massive} mm"),
            format!("over {massive} mm"),
            "unknown".to_owned(),
        ]
    );
    let grade = ids::SLOWER_RETRACTION_GRADE.number();
    assert_eq!(names(dim::RETRACTION_GRADE), [format!("below {grade}"), grade.to_string(), "unknown".to_owned()]);
    let grade = ids::SLOWER_INFILTRATION_FROM.number();
    assert_eq!(names(dim::FATTY_INFILTRATION)[..2], [format!("below {grade}"), format!("{grade} or more")]);
    assert_eq!(dimension(&format!("age over {}", ids::SLOWER_AGE_OVER.years())), Some(dim::AGE_OVER_70));
}
