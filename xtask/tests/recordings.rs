//! The invented recordings are written as ordered.

use std::fs;
use std::path::Path;

use recorder::Subject;
use xtask::recordings::{Order, run};

#[test]
fn each_recording_is_three_files_and_comes_out_alike() {
    let files = |folder: &str| {
        let out = Path::new(env!("CARGO_TARGET_TMPDIR")).join(folder);
        let order = Order { out: out.clone(), seed: 11, count: 2, subject: Subject::from_word("elbow-flexion") };
        assert!(run(&order).expect("it writes"));
        let mut files: Vec<(String, String)> = fs::read_dir(&out)
            .expect("the folder")
            .map(|entry| entry.expect("an entry").path())
            .map(|path| {
                (
                    path.file_name().expect("a name").to_string_lossy().into_owned(),
                    fs::read_to_string(path).expect("text"),
                )
            })
            .collect();
        files.sort();
        files
    };
    let found = files("recordings");
    let names: Vec<&str> = found.iter().map(|(name, _)| name.as_str()).collect();
    let wanted = ["csv", "json", "known.csv"];
    let wanted =
        ["0001", "0002"].iter().flat_map(|number| wanted.map(|ending| format!("{number}-elbow-flexion.{ending}")));
    assert_eq!(names, wanted.collect::<Vec<_>>());
    let rows = |index: usize| found[index].1.lines().count();
    assert!(rows(0) > 500 && rows(0) == rows(2));
    let truth: serde_json::Value = serde_json::from_str(&found[1].1).expect("JSON");
    assert_eq!((&truth["invented"], &truth["subject"]), (&true.into(), &"elbow-flexion".into()));
    assert_eq!(found, files("recordings-again"));
}
