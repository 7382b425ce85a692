//! What `--out` leaves in a folder, and what it leaves of it when something is in the way.

use std::process::Command;

use serde_json::Value;

use crate::runs::{Written, mendarc, root};

const ALL: [&str; 6] = ["patient.pdf", "prescription.json", "surgeon.pdf", "therapist.pdf", "visits.ics", "work.pdf"];
const PRACTICE: &str = "examples/practice.toml";

/// The names in a folder, hidden ones too.
fn names(folder: &str) -> Vec<String> {
    let files = std::fs::read_dir(folder).expect("the folder can be listed");
    let mut names: Vec<String> =
        files.map(|file| file.expect("a file").file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

fn read(folder: &str, name: &str) -> Vec<u8> {
    std::fs::read(format!("{folder}/{name}")).expect("the file was written")
}

#[test]
fn every_file_is_there_and_nothing_unfinished() {
    let files = Written::new();
    let folder = files.path("made/on the way");
    let arguments = ["prescribe", "examples/large-cuff.toml", "--settings", PRACTICE, "--json", "--out", &folder];
    let run = mendarc(&arguments);
    assert_eq!(run.status, 0, "{}", run.stderr);
    assert_eq!(names(&folder), ALL);
    let written: Value = serde_json::from_slice(&read(&folder, "prescription.json")).expect("it is JSON");
    assert_eq!(written, run.document());
    for name in ALL.iter().filter(|name| name.ends_with(".pdf")) {
        assert!(read(&folder, name).starts_with(b"%PDF-"), "{name}");
    }
    // The same again gives the same bytes: no clock, no chance.
    let first: Vec<Vec<u8>> = ALL.iter().map(|name| read(&folder, name)).collect();
    assert_eq!(mendarc(&arguments).status, 0);
    let second: Vec<Vec<u8>> = ALL.iter().map(|name| read(&folder, name)).collect();
    assert!(first == second, "a second run gave other bytes");
}

#[test]
fn without_both_numbers_everything_but_the_handout_is_written() {
    let files = Written::new();
    let folder = files.path("out");
    let settings = files.file("settings.toml", "[contact]\nday = \"555-0100\"\n");
    let run = mendarc(&["prescribe", "examples/small-cuff.toml", "--settings", &settings, "--json", "--out", &folder]);
    assert_eq!((run.status, run.codes("error")), (1, vec!["no-number-to-call".to_owned()]));
    assert!(run.stderr.contains("no night number"), "{}", run.stderr);
    assert!(run.document()["spans"].as_array().is_some_and(|spans| !spans.is_empty()));
    let but_one: Vec<&str> = ALL.into_iter().filter(|name| *name != "patient.pdf").collect();
    assert_eq!(names(&folder), but_one);
}

/// A handout of an earlier run does not stay beside sheets it does not belong to.
#[test]
fn an_older_handout_does_not_outlive_its_plan() {
    let files = Written::new();
    let folder = files.path("out");
    let run = |settings: &[&str]| {
        let base = ["prescribe", "examples/small-cuff.toml", "--out", &folder];
        let arguments: Vec<&str> = base.iter().copied().chain(settings.iter().copied()).collect();
        mendarc(&arguments).status
    };
    assert_eq!(run(&["--settings", PRACTICE]), 0);
    assert!(names(&folder).contains(&"patient.pdf".to_owned()));
    assert_eq!(run(&[]), 1);
    assert!(!names(&folder).contains(&"patient.pdf".to_owned()));
}

#[test]
fn a_moved_visit_keeps_its_id_and_is_counted_up() {
    let files = Written::new();
    let folder = files.path("out");
    let opened =
        files.file("opened.toml", "[[opened]]\nstage = \"passive\"\non = 2026-03-16\nby = \"Dr. Imke Falk\"\n");
    let held = files.file(
        "held.toml",
        "[contact]\nday = \"1\"\nnight = \"2\"\n[clinic]\ntime_zone = \"Europe/Berlin\"\n\
         [[hold]]\nfrom_day = 16\ndays = 14\nreason = \"wound\"\n",
    );
    let free =
        files.file("free.toml", "[contact]\nday = \"1\"\nnight = \"2\"\n[clinic]\ntime_zone = \"Europe/Berlin\"\n");
    let issue = |settings: &str, more: &[&str]| {
        let base = ["prescribe", "examples/small-cuff.toml", "--settings", settings, "--out", &folder];
        let arguments: Vec<&str> = base.iter().copied().chain(more.iter().copied()).collect();
        assert_eq!(mendarc(&arguments).status, 0);
        let text = String::from_utf8(read(&folder, "visits.ics")).expect("text");
        exchange::calendar::previous(&text).expect("a calendar of this program")
    };
    let first = issue(&free, &["--opened", &opened]);
    let second = issue(&held, &["--opened", &opened]);
    let third = issue(&held, &[]);
    let ids = |known: &[exchange::calendar::Known]| known.iter().map(|known| known.uid.clone()).collect::<Vec<_>>();
    // Wound, gate passive, gate assisted: the last is moved by the hold, and is not told once nothing is opened.
    assert_eq!((first.len(), ids(&second), ids(&third)), (3, ids(&first), ids(&first)));
    let counted = |known: &[exchange::calendar::Known]| {
        known.iter().map(|known| (known.sequence, known.cancelled)).collect::<Vec<_>>()
    };
    assert_eq!(counted(&first), [(0, false), (0, false), (0, false)]);
    assert_eq!(counted(&second), [(0, false), (0, false), (1, false)]);
    assert_eq!(counted(&third), [(0, false), (0, false), (2, true)]);
}

#[test]
fn a_calendar_of_another_program_is_replaced_and_that_is_told() {
    let files = Written::new();
    let folder = files.path("out");
    std::fs::create_dir(&folder).expect("a folder");
    std::fs::write(format!("{folder}/visits.ics"), "BEGIN:VCALENDAR\r\nPRODID:other\r\nEND:VCALENDAR\r\n")
        .expect("a file");
    let run = mendarc(&["prescribe", "examples/small-cuff.toml", "--settings", PRACTICE, "--json", "--out", &folder]);
    assert_eq!((run.status, run.codes("warning").contains(&"calendar-replaced".to_owned())), (0, true));
    assert!(read(&folder, "visits.ics").starts_with(b"BEGIN:VCALENDAR\r\nVERSION:2.0"));
}

#[test]
fn a_time_zone_that_is_none_stops_everything() {
    let files = Written::new();
    let folder = files.path("out");
    let settings = files
        .file("settings.toml", "[clinic]\ntime_zone = \"Europe/Nowhere\"\n[contact]\nday = \"1\"\nnight = \"2\"\n");
    let run = mendarc(&["prescribe", "examples/small-cuff.toml", "--settings", &settings, "--json", "--out", &folder]);
    assert_eq!((run.status, run.codes("error")), (1, vec!["no-time-zone".to_owned()]));
    assert_eq!(names(&folder), [""; 0]);
}

/// Markup, commands of typesetters and quotes are letters like others; a script without letters in the fonts is refused.
#[test]
fn hostile_texts_are_printed_as_text_or_refused() {
    let files = Written::new();
    let own = std::fs::read_to_string(root().join("examples/small-cuff.toml")).expect("an example");
    let with_label = |label: &str| {
        let record = own.replace("id = \"harbor-01\"", &format!("id = '{label}'"));
        assert_ne!(record, own);
        let record = files.file("record.toml", &record);
        let folder = files.path("out");
        let run = mendarc(&["prescribe", &record, "--settings", PRACTICE, "--json", "--out", &folder]);
        (run.status, run.codes("error"))
    };
    for label in [
        r#"#panic("x") $a$ \ ` [*_"#,
        "<script>alert(1)</script>",
        "#include \"/etc/passwd\"",
        "Łukasz Ørsted Ωμέγα Ёж",
    ] {
        assert_eq!(with_label(label), (0, vec![]), "{label}");
    }
    assert_eq!(with_label("影山 飛雄"), (1, vec!["cannot-print".to_owned()]));
    assert_eq!(with_label("\u{202e}gnorw"), (1, vec!["invisible-character".to_owned()]));
    let long = files.file("long.toml", format!("[paper]\ntablets = \"{}\"\n", "a".repeat(10_000)));
    let run = mendarc(&["prescribe", "examples/small-cuff.toml", "--settings", &long, "--json"]);
    assert_eq!((run.status, run.codes("error")), (1, vec!["text-too-long".to_owned()]));
    assert!(run.stderr.contains("long.toml:2:11"), "{}", run.stderr);
}

#[test]
fn a_folder_that_cannot_be_written_to_is_told() {
    let files = Written::new();
    let file = files.file("file", "no folder");
    for folder in [file.clone(), format!("{file}/inside")] {
        let run =
            mendarc(&["prescribe", "examples/small-cuff.toml", "--settings", PRACTICE, "--json", "--out", &folder]);
        assert_eq!((run.status, run.codes("error")), (2, vec!["cannot-write".to_owned()]), "{folder}");
    }
}

/// No room: a limit on the size of files stands for a disk that is full.
#[test]
#[cfg(unix)]
fn a_full_disk_leaves_what_was_there() {
    let files = Written::new();
    let folder = files.path("out");
    assert_eq!(mendarc(&["prescribe", "examples/small-cuff.toml", "--settings", PRACTICE, "--out", &folder]).status, 0);
    let before: Vec<Vec<u8>> = ALL.iter().map(|name| read(&folder, name)).collect();
    let binary = assert_cmd::cargo::cargo_bin!("mendarc");
    let script = r#"trap "" XFSZ; ulimit -f 64; exec "$0" prescribe examples/large-cuff.toml --settings examples/practice.toml --out "$1""#;
    let run =
        Command::new("bash").current_dir(root()).args(["-c", script]).arg(binary).arg(&folder).output().expect("bash");
    let told = String::from_utf8_lossy(&run.stderr);
    assert_eq!(run.status.code(), Some(2), "{told}");
    assert!(told.contains("cannot write") && !told.contains("panicked"), "{told}");
    assert_eq!(names(&folder), ALL, "nothing half-written stays");
    let after: Vec<Vec<u8>> = ALL.iter().map(|name| read(&folder, name)).collect();
    assert!(before == after, "the older files are as they were");
}

/// Two patients' sheets never stand in one folder, and what a killed run left goes.
#[test]
fn runs_into_one_folder_wait_for_each_other() {
    let files = Written::new();
    let folder = files.path("out");
    std::fs::create_dir(&folder).expect("a folder");
    std::fs::write(format!("{folder}/.patient.pdf.1.unfinished"), "half").expect("a file");
    let runs: Vec<_> = ["small-cuff", "large-cuff", "subscapularis"]
        .map(|name| {
            let mut command = Command::new(assert_cmd::cargo::cargo_bin!("mendarc"));
            let record = format!("examples/{name}.toml");
            let arguments = ["prescribe", &record, "--settings", PRACTICE, "--out", &folder];
            let run = command.current_dir(root()).args(arguments).stdout(std::process::Stdio::null()).spawn();
            run.expect("the binary runs")
        })
        .into_iter()
        .collect();
    for mut run in runs {
        assert!(run.wait().expect("it ends").success());
    }
    assert_eq!(names(&folder), ALL);
    // The hash on the surgeon's page is too deep in a PDF to read here; the calendar's ids are of the JSON's patient.
    let json: Value = serde_json::from_slice(&read(&folder, "prescription.json")).expect("it is JSON");
    let subject = exchange::calendar::Subject {
        patient: json["operation"]["patient"].as_str(),
        operated_on: json["operation"]["date"].as_str().expect("a date").parse().expect("a date"),
        side: json["operation"]["side"].as_str().expect("a side"),
        purpose: "wound",
        order: 0,
    };
    let calendar = String::from_utf8(read(&folder, "visits.ics")).expect("text");
    assert!(calendar.contains(&exchange::calendar::uid(&subject)), "{calendar}");
}
