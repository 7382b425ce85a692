//! `angles`: rows in their order, faults with their line, files of any length.

use serde_json::Value;

use crate::runs::{Run, Written, mendarc};

const HEADER: &str = "r11,r12,r13,r21,r22,r23,r31,r32,r33\n";
const IDENTITY: &str = "1,0,0,0,1,0,0,0,1\n";

/// The matrices of the evidence: 40/120/−50; X-Z-Y (−35, 50, −20); pure flexion 60.
const KNOWN: &str = ".246202,-.55667,-.793412,.663414,-.5,.55667,-.706588,-.663414,.246202\n\
                     .604023,-.766044,-.219846,.785838,.526541,.324366,-.13272,-.368688,.92003\n\
                     0.5,-0.8660254037844386,0,0.8660254037844386,0.5,0,0,0,1\n";

fn run(text: impl AsRef<[u8]>, arguments: &[&str]) -> Run {
    let files = Written::new();
    let path = files.file("matrices.csv", text);
    let mut all = vec!["angles", path.as_str()];
    all.extend(arguments);
    mendarc(&all)
}

fn rows(document: &Value) -> &[Value] {
    document["rows"].as_array().expect("there are always rows")
}

#[track_caller]
fn reads(row: &Value, expected: [f64; 4]) {
    let keys = ["plane_of_elevation_deg", "elevation_deg", "axial_rotation_deg", "y_sum_deg"];
    for (key, expected) in keys.into_iter().zip(expected) {
        let ours = row[key].as_f64().unwrap_or_else(|| panic!("{key} in {row}"));
        assert!((ours - expected).abs() < 1e-3, "{key}: {ours} and {expected}");
    }
    assert_eq!(row["defined"], true);
}

#[test]
fn known_matrices_read_as_the_evidence_says() {
    let run = run(format!("{HEADER}{KNOWN}"), &["--side", "right", "--json"]);
    assert_eq!(run.status, 0, "{}", run.stderr);
    let document = run.document();
    assert_eq!((document["schema"].as_str(), document["side"].as_str()), (Some("mendarc.angles/1"), Some("right")));
    let [first, second, third] = rows(&document) else { panic!("three rows: {document}") };
    reads(first, [40.0, 120.0, -50.0, -10.0]);
    reads(second, [64.299, 58.228, -67.571, -3.272]);
    reads(third, [90.0, 60.0, -90.0, 0.0]);
    assert_eq!(third["clinical"]["movement"], "forward elevation");
    assert_eq!(document["diagnostics"], Value::Array(Vec::new()));
    // The handbook and a page that retells it disagree, and both are there.
    let movements = document["summary"]["movements"].as_array().expect("a list");
    let forward = movements.iter().find(|seen| seen["movement"] == "forward elevation").expect("it was seen");
    let usual = forward["usual"].as_array().expect("a list");
    let of = |id: &str| usual.iter().find(|usual| usual["evidence"] == id).map(|usual| usual["deg"].as_f64());
    assert_eq!(of("normal-forward-elevation-impairment-guide"), Some(Some(180.0)));
    assert_eq!(of("normal-forward-elevation-impairment-guide-retold"), Some(Some(150.0)));
}

#[test]
fn a_left_arm_is_mirrored_and_an_unnamed_one_is_said_to_be_read_as_right() {
    let right = run(format!("{HEADER}{KNOWN}"), &["--side", "right", "--json"]).document();
    // Mirrored by hand: the sign of every entry with one index of the axis that points right.
    let mirrored: String =
        KNOWN
            .lines()
            .map(|line| {
                let cells: Vec<String> =
                    line.split(',')
                        .enumerate()
                        .map(|(at, cell)| {
                            if [2, 5, 6, 7].contains(&at) { format!("-{cell}").replace("--", "") } else { cell.into() }
                        })
                        .collect();
                cells.join(",") + "\n"
            })
            .collect();
    let left = run(format!("{HEADER}{mirrored}"), &["--side", "left", "--json"]).document();
    assert_eq!(rows(&left), rows(&right));
    let unnamed = run(format!("{HEADER}{KNOWN}"), &["--json"]);
    assert_eq!(unnamed.status, 0, "{}", unnamed.stderr);
    assert_eq!(unnamed.codes("warning"), ["side-not-given"]);
    let unnamed = unnamed.document();
    assert_eq!((&unnamed["side"], unnamed["read_as"].as_str()), (&Value::Null, Some("right")));
    assert_eq!(rows(&unnamed), rows(&right));
    assert!(run(format!("{HEADER}{KNOWN}"), &[]).stdout.contains("because no side was given"));
}

#[test]
fn at_both_ends_only_the_sum_has_a_value() {
    let text = format!("{HEADER}{IDENTITY}-1,0,0,0,-1,0,0,0,1\n0.8,0,0.6,0,1,0,-0.6,0,0.8\n");
    let run = run(text, &["--side", "right", "--json"]);
    assert_eq!(run.status, 0, "{}", run.stderr);
    let document = run.document();
    for row in rows(&document) {
        assert_eq!(row["defined"], false, "{row}");
        assert!(row["plane_of_elevation_deg"].is_null() && row["axial_rotation_deg"].is_null(), "{row}");
        assert!(row["y_sum_deg"].is_number() && row["elevation_deg"].is_number(), "{row}");
    }
    // At the side, turned inward by the angle whose sine is 0.6.
    let turned = rows(&document)[2]["y_sum_deg"].as_f64().expect("a number");
    assert!((turned - 36.869_897_645_8).abs() < 1e-9, "{turned}");
}

#[test]
fn faults_keep_their_place_and_are_told_with_their_line() {
    let faulty = [
        ("nan,0,0,0,1,0,0,0,1", "cell-not-finite"),
        ("1,0,0,0,inf,0,0,0,1", "cell-not-finite"),
        ("1,0,0,0,1,0,0,0,1e999", "cell-not-finite"),
        ("1,0,0,0,x,0,0,0,1", "cell-not-a-number"),
        ("1,0,0,0,,0,0,0,1", "cell-not-a-number"),
        ("1,0,0,0,1,0,0,0", "cells-in-row"),
        ("1,0,0,0,1,0,0,0,1,0", "cells-in-row"),
        ("1;0;0;0;1;0;0;0;1", "cells-in-row"),
        ("", "cells-in-row"),
        ("1,0,0,0,1,0,0,0,1e50", "out-of-range"),
        ("1,0,0,0,1,0,0,0,-1", "frame-left-handed"),
        ("1,0,0,0,1,0,0,0,0", "frame-flat"),
    ];
    let mut text = String::from(HEADER);
    for (row, _) in faulty {
        text += row;
        text += "\n";
        text += IDENTITY;
    }
    let run = run(text, &["--side", "right", "--json"]);
    assert_eq!(run.status, 1);
    let document = run.document();
    assert_eq!(rows(&document).len(), 2 * faulty.len());
    let told = document["diagnostics"].as_array().expect("a list");
    assert_eq!(told.len(), faulty.len());
    for (at, (row, code)) in faulty.iter().enumerate() {
        let line = 2 + 2 * at as u64;
        let found = &rows(&document)[2 * at];
        assert_eq!((found["fault"].as_str(), found["line"].as_u64()), (Some(*code), Some(line)), "{row}");
        assert!(found["elevation_deg"].is_null() && found["clinical"].is_null(), "{row}: {found}");
        assert_eq!(rows(&document)[2 * at + 1]["elevation_deg"], 0.0, "the row after {row}");
        let of_line = told.iter().find(|found| found["line"].as_u64() == Some(line)).expect("it is told");
        assert_eq!((of_line["code"].as_str(), of_line["severity"].as_str()), (Some(*code), Some("error")), "{row}");
        assert!(run.stderr.contains(&format!("matrices.csv:{line}:")), "{}", run.stderr);
    }
}

#[test]
fn off_orthonormal_is_a_warning_and_the_row_stays() {
    let text = format!("{HEADER}1.0004,0,0,0,1,0,0,0,1\n1.001,0,0,0,1,0,0,0,1\n");
    let run = run(text, &["--side", "right", "--json"]);
    assert_eq!((run.status, run.codes("warning")), (0, vec!["frame-not-orthonormal".to_owned()]), "{}", run.stderr);
    let document = run.document();
    let defects: Vec<Option<f64>> = rows(&document).iter().map(|row| row["frame_defect"].as_f64()).collect();
    let [None, Some(defect)] = defects[..] else { panic!("{defects:?}") };
    assert!((defect - (1.001_f64 * 1.001 - 1.0)).abs() < 1e-12, "{defect}");
    assert_eq!(rows(&document)[1]["elevation_deg"], 0.0);
}

#[test]
fn files_that_are_none_say_why() {
    let refused = |text: &[u8], code: &str| {
        let spoken = run(text, &["--side", "right"]);
        assert_eq!((spoken.status, spoken.stdout.as_str()), (1, ""), "{code}: {}", spoken.stderr);
        let run = run(text, &["--side", "right", "--json"]);
        assert_eq!((run.status, run.codes("error")), (1, vec![code.to_owned()]), "{}", run.stderr);
        assert!(run.document().get("rows").is_none());
    };
    refused(b"", "empty-file");
    refused(b"\n \n", "empty-file");
    refused(b"a,b,c\n1,2,3\n", "matrix-header");
    refused(KNOWN.as_bytes(), "matrix-header");
    refused(HEADER.replace(',', ";").as_bytes(), "matrix-header");
    refused(b"\xff\xfer\x001\x00,\x00\n", "not-utf-8");
    let only_header = run(HEADER, &["--side", "right", "--json"]);
    assert_eq!((only_header.status, only_header.codes("error")), (1, vec!["no-matrices".to_owned()]));
    assert!(rows(&only_header.document()).is_empty());
    for path in ["examples", "examples/no-such-file.csv"] {
        let run = mendarc(&["angles", path, "--json"]);
        assert_eq!((run.status, run.codes("error")), (2, vec!["cannot-read".to_owned()]));
    }
}

#[test]
fn dresses_of_a_file_change_nothing() {
    let plain = run(format!("{HEADER}{KNOWN}"), &["--side", "right", "--json"]).document();
    let dressed = [
        format!("\u{feff}{HEADER}{KNOWN}"),
        format!("{HEADER}{KNOWN}").replace('\n', "\r\n"),
        format!("{HEADER}{KNOWN}\n\n  \r\n\n"),
        format!("{HEADER}{}", KNOWN.trim_end()),
        format!("{}{}", HEADER.to_uppercase(), KNOWN.replace(',', " , ")),
        format!("{HEADER}{}", KNOWN.replace(',', "\",\"").replace('\n', "\"\n").replace("\"\n.", "\"\n\"."))
            .replace("\n.2", "\n\".2")
            .replace("\n0.5", "\n\"0.5"),
    ];
    for text in dressed {
        let run = run(&text, &["--side", "right", "--json"]);
        assert_eq!(run.status, 0, "{text}\n{}", run.stderr);
        assert_eq!(run.document(), plain, "{text}");
    }
}

/// A file of many pieces with one bad row: the order is kept, and only that row has no angles.
#[test]
fn many_rows_with_one_bad_one() {
    const ROWS: usize = 60_000;
    const BAD: usize = 41_234;
    let mut text = String::from(HEADER);
    for at in 0..ROWS {
        let angle = (at as f64 * 0.002).to_radians();
        let (sine, cosine) = angle.sin_cos();
        if at == BAD {
            text += "1,0,0,oops,1,0,0,0,1\n";
        } else {
            text += &format!("{cosine},{},0,{sine},{cosine},0,0,0,1\n", -sine);
        }
    }
    let run = run(&text, &["--side", "right", "--json"]);
    assert_eq!((run.status, run.codes("error")), (1, vec!["cell-not-a-number".to_owned()]));
    let document = run.document();
    assert_eq!(document["diagnostics"][0]["line"].as_u64(), Some(BAD as u64 + 2));
    assert_eq!(rows(&document).len(), ROWS);
    for (at, row) in rows(&document).iter().enumerate() {
        if at == BAD {
            assert!(row["elevation_deg"].is_null());
        } else {
            let elevation = row["elevation_deg"].as_f64().expect("a number");
            assert!((elevation - at as f64 * 0.002).abs() < 1e-8, "{at}: {elevation}");
        }
    }
    assert_eq!(document["summary"]["with_angles"].as_u64(), Some(ROWS as u64 - 1));
    let page = run_table(&text);
    assert!(page.contains("no angles: cell-not-a-number") && page.contains("Rows: 60000."), "{}", &page[..500]);
}

fn run_table(text: &str) -> String {
    let run = run(text, &["--side", "right"]);
    assert_eq!(run.status, 1);
    run.stdout
}

#[test]
fn many_bad_rows_are_told_twenty_times_and_counted() {
    let text = HEADER.to_owned() + &"1,2,3\n".repeat(5000);
    let run = run(text, &["--side", "right", "--json"]);
    assert_eq!(run.status, 1);
    let document = run.document();
    assert_eq!((rows(&document).len(), run.codes("error").len()), (5000, 20));
    let told = document["diagnostics"].as_array().expect("a list");
    let last = told.last().expect("there are some");
    assert_eq!(last["code"], "more-findings");
    assert_eq!(last["message"], "4980 more rows have `cells-in-row`, the last in line 5001");
}

#[test]
fn a_table_is_read_by_a_therapist() {
    let page = run(format!("{HEADER}{KNOWN}{IDENTITY}"), &["--side", "right"]).stdout;
    for part in [
        "scapular-plane elevation 120, turned outward 10",
        "forward elevation 60, not turned",
        "near the side, not turned",
        "Elevation from 0.0 (line 5) to 120.0 (line 2).",
        "usual by one reference or another, 150 to 188:",
        "5th edition, 2016",
    ] {
        assert!(page.contains(part), "`{part}` is missing in\n{page}");
    }
    for line in page.lines() {
        assert!(!line.contains("NaN") && !line.contains("-0.0"), "{line}");
    }
}

/// The example holds poses made by the clinical rule of the evidence: swing in a plane, then a turn outward.
#[test]
fn the_example_reads_as_what_it_was_made_of() {
    let run = mendarc(&["angles", "examples/matrices.csv", "--side", "right"]);
    assert_eq!((run.status, run.stderr.as_str()), (0, ""));
    let said: Vec<&str> =
        run.stdout.lines().skip_while(|line| !line.contains("as a therapist")).skip(1).take(10).collect();
    let expected = [
        "near the side, not turned",
        "near the side, turned outward 30",
        "forward elevation 30, not turned",
        "forward elevation 60, not turned",
        "forward elevation 120, turned outward 10",
        "scapular-plane elevation 80, not turned",
        "abduction 90, not turned",
        "abduction 90, turned outward 80",
        "horizontal adduction 20 at elevation 90, turned inward 20",
        "extension 30, not turned",
    ];
    for (said, expected) in said.iter().zip(expected) {
        assert!(said.ends_with(&format!("   {expected}")), "{said}");
    }
    assert_eq!(said.len(), expected.len());
}

#[test]
fn explain_shows_every_reference_of_a_motion() {
    for topic in ["normal-external-rotation", "normal-external-rotation-impairment-guide"] {
        let run = mendarc(&["explain", topic]);
        assert_eq!(run.status, 0, "{}", run.stderr);
        assert!(run.stdout.contains("60 to 108 degrees"), "{}", run.stdout);
        for id in ["surgeons-handbook = 90", "impairment-guide = 60", "women-18-to-59 = 108", "active-men = 63"] {
            assert!(run.stdout.contains(&format!("normal-external-rotation-{id}")), "{id}: {}", run.stdout);
        }
    }
}
