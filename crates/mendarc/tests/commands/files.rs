//! Files that are no record: too large, not text, empty, deep, or broken anywhere.

use crate::runs::{Written, mendarc, root};

#[track_caller]
fn refused(content: impl AsRef<[u8]>, code: &str) {
    let files = Written::new();
    let record = files.file("record.toml", content);
    for arguments in [
        &["prescribe", &record, "--json"][..],
        &["may", "drive", &record, "--on", "2026-04-20", "--json"],
        &["prescribe", "examples/small-cuff.toml", "--settings", &record, "--json"],
        &["prescribe", "examples/small-cuff.toml", "--opened", &record, "--json"],
        &["prescribe", "examples/small-cuff.toml", "--other", &record, "--json"],
    ] {
        let run = mendarc(arguments);
        assert_eq!(run.status, 1, "{arguments:?}: {}", run.stderr);
        assert_eq!(run.codes("error"), [code], "{arguments:?}");
    }
}

#[test]
fn a_file_over_a_mebibyte_is_refused_unread() {
    let mut text = "# nothing but remarks\n".repeat((1 << 20) / 22);
    text.push_str(&"#".repeat((1 << 20) + 1 - text.len()));
    assert_eq!(text.len(), (1 << 20) + 1);
    refused(&text, "file-too-large");
}

#[test]
fn a_record_of_a_mebibyte_is_still_read() {
    let mut text = std::fs::read_to_string(root().join("examples/small-cuff.toml")).expect("an example");
    text.push_str("# ");
    text.push_str(&"x".repeat((1 << 20) - text.len()));
    let files = Written::new();
    let run = mendarc(&["prescribe", &files.file("record.toml", text), "--json"]);
    assert_eq!(run.status, 0, "{}", run.stderr);
}

#[test]
fn text_that_is_none() {
    refused(b"[patient]\nid = \"\xff\xfe\"\n", "not-utf-8");
}

#[test]
fn an_empty_record_is_refused_and_empty_settings_are_as_good_as_none() {
    for content in ["", " \n\t\n"] {
        let files = Written::new();
        let empty = files.file("empty.toml", content);
        for arguments in [
            &["prescribe", &empty, "--json"][..],
            &["may", "drive", &empty, "--on", "2026-04-20", "--json"],
            &["prescribe", "examples/small-cuff.toml", "--other", &empty, "--json"],
        ] {
            let run = mendarc(arguments);
            assert_eq!(run.status, 1, "{arguments:?}: {}", run.stderr);
            assert_eq!(run.codes("error"), ["empty-file"], "{arguments:?}");
        }
        let plain = mendarc(&["prescribe", "examples/small-cuff.toml", "--json"]);
        for option in ["--settings", "--opened"] {
            let run = mendarc(&["prescribe", "examples/small-cuff.toml", option, &empty, "--json"]);
            assert_eq!((run.status, &run.stdout), (0, &plain.stdout), "{option}");
        }
    }
}

#[test]
fn text_that_is_no_toml() {
    refused("[patient\n", "toml-syntax");
    refused("a = 1\na = 2\n", "toml-syntax");
}

#[test]
fn deep_nesting_is_refused_and_not_followed() {
    for text in [format!("a = {}", "[".repeat(200_000)), format!("a = {}", "{a=".repeat(100_000))] {
        let files = Written::new();
        let run = mendarc(&["prescribe", &files.file("record.toml", text), "--json"]);
        assert_eq!(run.status, 1, "{}", run.stderr);
        let codes = run.codes("error");
        assert!(!codes.is_empty() && !codes.contains(&"internal-fault".to_owned()), "{codes:?}");
    }
}

#[test]
fn a_place_is_counted_in_lines_and_characters() {
    let text = std::fs::read_to_string(root().join("examples/small-cuff.toml")).expect("an example");
    let (old, new) = ("anteroposterior = \"18 mm\"", "anteroposterior = \"18\"  # é");
    assert_eq!(text.matches(old).count(), 1);
    let text = text.replace(old, new);
    let line = text.lines().position(|line| line.starts_with(new)).expect("the line") + 1;
    let files = Written::new();
    let path = files.file("record.toml", text);
    let run = mendarc(&["prescribe", &path, "--json"]);
    let found = run.document()["diagnostics"][0].clone();
    assert_eq!(found["code"], "length-without-unit");
    assert_eq!((found["line"].as_u64(), found["column"].as_u64()), (Some(line as u64), Some(19)), "{found}");
    assert_eq!(found["file"].as_str(), Some(&path[..]));
    assert!(found["helps"][0].as_str().is_some_and(|help| help.contains("\"18 mm\"")), "{found}");
    let spoken = mendarc(&["prescribe", &path]);
    assert!(spoken.stderr.contains("error[length-without-unit]"), "{}", spoken.stderr);
    assert!(spoken.stderr.contains(&format!("record.toml:{line}:19")), "{}", spoken.stderr);
}
