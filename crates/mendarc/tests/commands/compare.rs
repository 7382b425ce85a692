//! `mendarc compare`: what changes for the patient, against the rows of the policies and day by day.

mod by_hand;
mod day_by_day;
mod editions;
mod faults;
mod questions;

use serde_json::Value;

use crate::runs::{Run, Written, mendarc, root};

pub const SMALL: &str = "examples/small-cuff.toml";

/// The document of a comparison that gave something.
#[track_caller]
pub fn compared(arguments: &[&str]) -> Value {
    let run = run(arguments);
    assert_eq!(run.status, 0, "{arguments:?}: {}", run.stderr);
    run.document()
}

#[track_caller]
pub fn run(arguments: &[&str]) -> Run {
    let all: Vec<&str> = ["compare"].into_iter().chain(arguments.iter().copied()).chain(["--json"]).collect();
    mendarc(&all)
}

/// The small example with some lines changed, as a file.
#[track_caller]
pub fn small_with(files: &Written, name: &str, changes: &[(&str, &str)]) -> String {
    changed(files, SMALL, name, changes)
}

/// A file of the workspace with some texts changed, each of which stands in it once.
#[track_caller]
pub fn changed(files: &Written, of: &str, name: &str, changes: &[(&str, &str)]) -> String {
    let mut text = std::fs::read_to_string(root().join(of)).expect("a file of the workspace");
    for (old, new) in changes {
        assert_eq!(text.matches(old).count(), 1, "`{old}`");
        text = text.replace(old, new);
    }
    files.file(name, text)
}

/// A prescription as a file.
#[track_caller]
pub fn prescribed(files: &Written, record: &str, name: &str) -> String {
    let run = mendarc(&["prescribe", record, "--json"]);
    assert_eq!(run.status, 0, "{}", run.stderr);
    files.file(name, run.stdout)
}

/// A limit in short: `no`, `free`, `90 deg`, `2.27 kg`, `30 %`, with `lying` where it is only lying on the back.
pub fn short(limit: &Value) -> String {
    let bound = [("max_deg", "deg"), ("max_load_kg", "kg"), ("max_effort_percent", "%")]
        .into_iter()
        .find_map(|(key, unit)| limit[key].as_f64().map(|number| format!("{number} {unit}")));
    let text = bound.unwrap_or_else(|| limit["allowed"].as_str().unwrap_or_default().to_owned());
    if limit["only_lying"] == true { format!("{text} lying") } else { text }
}

/// The changes of a key: first day, first day after, both values, and how many days the stricter side is behind.
pub fn of_key(document: &Value, key: &str) -> Vec<(u64, u64, String, String, Option<u64>)> {
    list(document, "changes")
        .iter()
        .filter(|change| change["key"] == key)
        .map(|change| {
            let day = |key: &str| change[key].as_u64().expect("a day");
            let later = change["days_later"].as_u64();
            (day("from_day"), day("until_day"), short(&change["a"]), short(&change["b"]), later)
        })
        .collect()
}

#[track_caller]
pub fn list<'v>(document: &'v Value, key: &str) -> &'v [Value] {
    document[key].as_array().unwrap_or_else(|| panic!("`{key}` is no list"))
}

/// Everything that a comparison lists.
pub const LISTS: [&str; 9] =
    ["changes", "sling", "exercises", "first_allowed", "stages", "goals", "visits", "returns", "beside"];
