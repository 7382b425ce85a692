//! One check for each diagnostic of the record: what is written, what is said, and where.

use diagnostic::{FileId, Sink};

const COMPLETE: &str = include_str!("../../../examples/small-cuff.toml");
const ARC: &str = include_str!("../../../examples/subscapularis.toml");
const RELEASE: &str = include_str!("../../../examples/capsular-release.toml");
const SPARSE: &str = include_str!("../../../examples/sparse.toml");

/// What reading says: severity, code, message, the text under the span, and the ways out.
fn said(text: &str) -> Vec<String> {
    let mut sink = Sink::new();
    let record = operative::read(FileId(0), text, &mut sink);
    assert_eq!(record.is_none(), sink.has_errors(), "a record exactly where there is no error");
    sink.into_sorted()
        .iter()
        .map(|d| {
            let at = d.span.map_or("", |span| &text[span.start as usize..span.end as usize]);
            let line = format!("{}[{}]: {} <{at}> {}", d.severity.name(), d.code, d.message, d.helps.join(" / "));
            line.trim_end().to_owned()
        })
        .collect()
}

/// Changes one place of a record and compares everything that is said.
#[track_caller]
fn check_in(base: &str, old: &str, new: &str, expect: &[&str]) {
    assert_eq!(base.matches(old).count(), 1, "`{old}` stands in the record once");
    assert_eq!(said(&base.replacen(old, new, 1)), expect);
}

#[track_caller]
fn check(old: &str, new: &str, expect: &[&str]) {
    check_in(COMPLETE, old, new, expect);
}

#[test]
fn a_complete_record_says_nothing() {
    assert_eq!(said(COMPLETE), [""; 0]);
}

#[test]
fn misspelt_keys_and_words_are_told_the_nearest() {
    check(
        "revision =",
        "revison =",
        &["error[unknown-key]: `revison` is not a key of `operation` <revison> did you mean `revision`?"],
    );
    check("[risk]", "[rissk]", &["error[unknown-key]: `rissk` is not a key of this file <rissk> did you mean `risk`?"]);
    for (old, new, table) in [
        ("sex =", "sexx =", "patient"),
        ("delamination =", "delaminaton =", "operation.tear"),
        ("tissue =", "tisue =", "operation.tendon[0]"),
        ("infraspinatus = 1", "infraspinatis = 1", "operation.fatty_infiltration"),
        ("labrum =", "labrun =", "operation.also"),
        ("shoulder =", "sholder =", "other_arm"),
        ("smoking =", "smokin =", "risk"),
    ] {
        let found = said(&COMPLETE.replacen(old, new, 1));
        let (old, new) = (old.split(' ').next().unwrap_or(""), new.split(' ').next().unwrap_or(""));
        let expect = format!("error[unknown-key]: `{new}` is not a key of `{table}` <{new}> did you mean `{old}`?");
        assert_eq!(found, [expect]);
    }
    check(
        "name = \"supraspinatus\"",
        "name = \"supraspinatous\"",
        &["error[unknown-word]: `supraspinatous` is not a value of `operation.tendon[0].name` <\"supraspinatous\"> \
         did you mean \"supraspinatus\"?"],
    );
    check(
        "\"right\"\napproach",
        "\"both\"\napproach",
        &["error[unknown-word]: `both` is not a value of `operation.side` <\"both\">"],
    );
}

#[test]
fn dates_that_cannot_be() {
    check(
        "1970-09-14 ",
        "1899-12-31 ",
        &["error[impossible-date]: a birth on 1899-12-31 is before 1900 <1899-12-31> mend the date"],
    );
    check(
        "2026-03-02 ",
        "1989-12-31 ",
        &["error[impossible-date]: an operation on 1989-12-31 is before 1990 <1989-12-31> mend the date"],
    );
    check(
        "1970-09-14 ",
        "2026-03-03 ",
        &["error[impossible-date]: the operation on 2026-03-02 is before the birth <2026-03-02> mend the date"],
    );
    check(
        "1970-09-14 ",
        "1905-03-02 ",
        &["error[impossible-date]: the patient would have been 121 years old <1905-03-02> mend the date"],
    );
    check("1970-09-14 ", "1905-03-03 ", &[]);
    check(
        "1970-09-14 ",
        "\"1970-09-14\" ",
        &["error[wrong-type]: `patient.birth_date` is text, not a date <\"1970-09-14\"> \
         write the date without quotes: 2026-03-02"],
    );
    let never = said(&COMPLETE.replace("2026-03-02 ", "2026-02-29 "));
    assert_eq!(never.len(), 1);
    assert!(never[0].contains("<2026-02-29>"), "{never:?}");
}

#[test]
fn sizes_and_grades_that_cannot_be() {
    check("\"18 mm\"", "18", &["error[length-without-unit]: length has no unit <18> if mm is meant, write \"18 mm\""]);
    check("\"18 mm\"", "\"100 mm\"", &[]);
    let too_large =
        "101 mm is larger than any tear <\"101 mm\"> a size above 100 mm is taken for a slip; is the unit right?";
    check("\"18 mm\"", "\"101 mm\"", &[&format!("error[implausible-size]: {too_large}")]);
    check("\"8 mm\"", "\"101 mm\"", &[&format!("error[implausible-size]: {too_large}")]);
    check("\"8 mm\"", "\"0 mm\"", &[]);
    for size in ["\"18 mm\"", "\"10 mm\""] {
        check(
            size,
            "\"0 mm\"",
            &["error[implausible-size]: a torn tendon has a tear of some size <\"0 mm\"> \
             write the measured size; where it was not measured, leave the key out"],
        );
    }
    for grade in ["0", "4", "-1", "9999999999"] {
        check(
            "retraction_patte = 1 ",
            &format!("retraction_patte = {grade} "),
            &[&format!(
                "error[no-such-grade]: {grade} is no Patte grade <{grade}> \
             a Patte grade is 1 to 3; where it was not graded, leave the key out"
            )],
        );
    }
    check("infraspinatus = 1", "infraspinatus = 4", &[]);
    for grade in ["-1", "5"] {
        check(
            "infraspinatus = 1",
            &format!("infraspinatus = {grade}"),
            &[&format!(
                "error[no-such-grade]: {grade} is no Goutallier grade <{grade}> \
             a Goutallier grade is 0 to 4; where it was not graded, leave the key out"
            )],
        );
    }
    check(
        "supraspinatus = 1",
        "teres_minor = 1\n\"teres minor\" = 2",
        &["error[written-twice]: the grade of the teres minor is written twice <2> keep one of them"],
    );
    check("supraspinatus = 1", "\"teres minor\" = 1", &[]);
    for score in ["8.1", "-80", "1e300"] {
        check(
            "= -1.0",
            &format!("= {score}"),
            &[&format!(
                "error[implausible-value]: a T-score lies between -8 and 8 <{score}> \
             write the T-score in standard deviations, such as -1.0"
            )],
        );
    }
    let never = said(&COMPLETE.replace("= -1.0", "= nan"));
    assert!(never.len() == 1 && never[0].starts_with("error[out-of-range]") && never[0].contains("<nan>"), "{never:?}");
    check("= -1.0", "= -8", &[]);
}

#[test]
fn tendons_that_cannot_be() {
    let second = |tendon: &str| format!("[[operation.tendon]]\n{tendon}\n[operation.fatty_infiltration] ");
    let check = |tendon: &str, expect: &[&str]| check("[operation.fatty_infiltration] ", &second(tendon), expect);
    let known = "tissue = \"good\"\ntension = \"low\"";
    check(
        &format!("name = \"supraspinatus\"\nthickness = \"full\"\nrepair = \"double row\"\n{known}"),
        &[
            "error[duplicate-tendon]: supraspinatus is listed twice <\"supraspinatus\"> write one entry for each torn tendon",
        ],
    );
    check(
        &format!(
            "name = \"infraspinatus\"\nthickness = \"full\"\nrepair = \"double row\"\npart = \"complete\"\n{known}"
        ),
        &["error[contradiction]: `part` is told apart for the subscapularis only, not for the infraspinatus \
         <\"complete\"> take the line out, or mend the name"],
    );
    check(
        "thickness = \"full\"",
        &["error[missing-key]: `operation.tendon[1].name` is missing <[[operation.tendon]]> add `name = …` here"],
    );
    check(
        "name = \"infraspinatus\"\nthickness = \"full\"\nrepair = \"not repaired\"",
        &["warning[tendon-left-unrepaired]: the infraspinatus was torn and left <\"not repaired\">"],
    );
    // Beside a complete entry the rest of another is a note.
    check(
        &format!("name = \"subscapularis\"\n{known}"),
        &["note[not-recorded]: 3 facts are not recorded <[operation]> \
         add what is known; the prescription asks for what would change it"],
    );
}

#[test]
fn one_tendon_has_to_say_what_was_done() {
    let entry =
        &COMPLETE[COMPLETE.find("[[operation.tendon]]").unwrap_or(0)..COMPLETE.find("[operation.fatty").unwrap_or(0)];
    check(
        entry,
        "",
        &["error[no-tendon]: a rotator cuff repair needs at least one tendon <[operation]> \
         add [[operation.tendon]] with name, thickness and repair"],
    );
    check(
        "repair = \"double row\"",
        "",
        &[
            "error[missing-key]: `operation.tendon[0].repair` is missing <\"supraspinatus\"> add `repair = …` to this tendon",
        ],
    );
    check(
        "name = \"supraspinatus\"",
        "name = \"subscapularis\"",
        &[
            "error[missing-key]: `operation.tendon[0].part` is missing <\"subscapularis\"> add `part = …` to this tendon",
        ],
    );
    check(
        "\"double row\"",
        "\"not repaired\"",
        &["error[contradiction]: a rotator cuff repair in which no tendon was repaired <\"not repaired\"> \
         say how the repaired tendon was fixed"],
    );
    check(
        "[[operation.tendon]] ",
        "[operation.tendon] ",
        &["error[wrong-type]: `operation.tendon` is one table, not a list of tables <[operation.tendon]> \
         write [[operation.tendon]] with two brackets on each side"],
    );
    let many = "[[operation.tendon]]\nname = \"supraspinatus\"\n".repeat(2000);
    let found =
        said(&COMPLETE.replace("[operation.fatty_infiltration] ", &format!("{many}[operation.fatty_infiltration] ")));
    assert!(found[0].starts_with("error[duplicate-tendon]") && found.len() < 10, "{}", found.len());
    assert!(found.iter().any(|line| line.starts_with("error[too-many]")));
}

#[test]
fn arcs_that_cannot_be() {
    let check = |old: &str, new: &str, expect: &[&str]| check_in(ARC, old, new, expect);
    check(
        "\"external rotation\"",
        "\"external rotaton\"",
        &["error[unknown-word]: `external rotaton` is not a value of `operation.safe_arc[0].movement` \
         <\"external rotaton\"> did you mean \"external rotation\"?"],
    );
    check(
        "\"external rotation\"",
        "\"hand behind back\"",
        &[
            "error[unknown-word]: `hand behind back` is not a value of `operation.safe_arc[0].movement` <\"hand behind back\">",
        ],
    );
    check(
        "\"15 deg\"",
        "\"15\"",
        &["error[angle-without-unit]: angle has no unit <\"15\"> if deg is meant, write \"15 deg\""],
    );
    check(
        "\"15 deg\"",
        "\"121 deg\"",
        &["error[implausible-angle]: 121 deg is no external rotation of a shoulder <\"121 deg\"> \
         write an angle from -120 to 120 deg"],
    );
    check("\"15 deg\"", "\"-10 deg\"", &[]);
    check(
        "\"day 42\"",
        "\"day 0\"",
        &["error[arc-never-binds]: a safe arc until day 0 would never bind <\"day 0\"> \
         write the first day it no longer binds, day 1 or later"],
    );
    check("\"day 42\"", "\"day 1\"", &[]);
    for day in ["\"42\"", "42", "\"week 6\"", "\"day -1\"", "\"day 99999\""] {
        check(
            "\"day 42\"",
            day,
            &[&format!(
                "error[not-a-day]: a day counted from the operation is needed here <{day}> \
             write \"day 42\"; day 0 is the day of surgery"
            )],
        );
    }
    let arc = "[[operation.safe_arc]]\nmovement = \"abduction\"\nup_to = \"60 deg\"\n";
    let with = |count: usize| said(&ARC.replace("[other_arm]", &format!("{}[other_arm]", arc.repeat(count))));
    assert_eq!(with(7), [""; 0]);
    assert_eq!(
        with(8),
        ["error[too-many]: more than 8 safe arcs <[[operation.safe_arc]]> keep the narrowest arc of each movement"]
    );
}

#[test]
fn statements_that_cannot_both_be_true() {
    check(
        "shoulder = \"sound\" ",
        "shoulder = \"sound\"\noperated_on = 2019-10-22 ",
        &["error[contradiction]: the other shoulder is sound and was operated on <\"sound\"> \
         write `shoulder = \"operated\"`, or take `operated_on` out"],
    );
    check(
        "shoulder = \"sound\" ",
        "shoulder = \"operated\"\noperated_on = 1970-09-13 ",
        &[
            "error[impossible-date]: the other arm's operation on 1970-09-13 is before the birth <1970-09-13> mend the date",
        ],
    );
    check(
        "shoulder = \"sound\" ",
        "shoulder = \"operated\" ",
        &["warning[operated-when]: the other shoulder was operated on, and the day is not recorded <\"operated\"> \
         add `operated_on = …` so that the two plans can be checked together"],
    );
    check("approach = \"arthroscopic\" ", "procedure = \"capsular release\"\napproach = \"arthroscopic\" ", &[
        "error[contradiction]: the procedure is a capsular release, and none was done <false> take one of the two out",
        "error[contradiction]: a capsular release with a repaired tendon is a rotator cuff repair <\"capsular release\"> \
         leave `procedure` out and write `capsular_release = true` under [operation.also]",
    ]
    .iter()
    .rev()
    .copied()
    .collect::<Vec<_>>());
}

#[test]
fn unlikely_pairs_are_warnings() {
    let partial = COMPLETE.replace("thickness = \"full\" ", "thickness = \"partial-bursal\" ");
    let look = "look at both once more; the plan is made as written";
    check_in(
        &partial,
        "\"8 mm\"",
        "\"10 mm\" ",
        &[&format!("warning[unlikely-pair]: a partial-thickness tear that drew back 10 mm <\"10 mm\"> {look}")],
    );
    check_in(&partial, "\"8 mm\"", "\"9.9 mm\"", &[]);
    check_in(
        &partial,
        "retraction_patte = 1 ",
        "retraction_patte = 2 ",
        &[&format!("warning[unlikely-pair]: a partial-thickness tear of Patte grade 2 <2> {look}")],
    );
    check(
        "retraction_patte = 1 ",
        "retraction_patte = 3 ",
        &[&format!("warning[unlikely-pair]: Patte grade 3 with a retraction of 8 mm <3> {look}")],
    );
}

#[test]
fn labels_and_lists_stay_short() {
    let bad_id = "a patient's id is 1 to 64 printable characters";
    for id in ["\" \"".to_owned(), format!("\"{}\"", "x".repeat(65)), "\"a\\nb\"".to_owned()] {
        check(
            "\"harbor-01\"",
            &id,
            &[&format!("error[bad-id]: {bad_id} <{id}> use the practice's own short label, or leave the key out")],
        );
    }
    check("\"harbor-01\"", &format!("\"{}\"", "é".repeat(64)), &[]);
    check(
        "other = [] ",
        "other = [\" \"] ",
        &["error[bad-text]: an other procedure needs a short name <\" \"> \
         name it in a few words, or write `other = []` where there was none"],
    );
    let many = format!("[{}]", "\"graft\", ".repeat(21));
    check(
        "other = [] ",
        &format!("other = {many} "),
        &[&format!("error[too-many]: more than 20 other procedures <{many}>")],
    );
}

#[test]
fn what_is_not_recorded_is_one_note() {
    let mut sink = Sink::new();
    operative::read(FileId(0), SPARSE, &mut sink);
    let found = sink.into_sorted();
    assert_eq!(found.iter().map(|d| d.code).collect::<Vec<_>>(), ["not-recorded", "other-not-recorded"]);
    assert_eq!(
        found[0].notes.last().map(String::as_str),
        Some(
            "not recorded: patient.sex, patient.dominant_arm, operation.revision, operation.tear.mediolateral, \
             operation.tear.retraction, operation.tear.retraction_patte, operation.tear.delamination, \
             operation.tendon[0].tissue, operation.tendon[0].tension, operation.fatty_infiltration.infraspinatus, \
             operation.also.biceps, operation.also.labrum, operation.also.distal_clavicle_excision, \
             operation.also.subacromial_decompression, operation.also.capsular_release, other_arm.shoulder, \
             risk.diabetes, risk.smoking, risk.bone_density_t_score, risk.preoperative_stiffness, risk.activity, \
             risk.pseudoparalysis"
        )
    );
    // A capsular release has no repair to describe.
    let mut sink = Sink::new();
    operative::read(FileId(0), RELEASE, &mut sink);
    let notes: Vec<_> = sink.found().iter().flat_map(|d| d.notes.clone()).collect();
    assert_eq!(notes.last().map(String::as_str), Some("not recorded: risk.bone_density_t_score"));
}

#[test]
fn every_fault_of_a_file_is_told_at_once() {
    assert_eq!(
        said("[operation]\ndate = 2026-01-05\nside = \"left\"\n[operation.tear]\nretraction = 3\n"),
        [
            "error[missing-key]: `patient.birth_date` is missing <> add `birth_date = …` under [patient]",
            "error[missing-key]: `operation.approach` is missing <[operation]> add `approach = …` here",
            "error[no-tendon]: a rotator cuff repair needs at least one tendon <[operation]> \
         add [[operation.tendon]] with name, thickness and repair",
            "error[missing-key]: `operation.tear.anteroposterior` is missing <[operation.tear]> add `anteroposterior = …` here",
            "error[length-without-unit]: length has no unit <3> if mm is meant, write \"3 mm\"",
        ]
    );
    assert_eq!(said("").len(), 5);
}
