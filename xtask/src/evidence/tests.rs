//! Each fault of the evidence folder, and its code.

use super::*;

const SOURCES: &str = r#"
[[source]]
key = "AB1"
shown_as = "a study"
kind = "paper"
how = "abstract"

[[source]]
key = "NR1"
shown_as = "another study"
kind = "paper"
how = "not read"
"#;

fn check(entries: &str) -> Vec<String> {
    let files = [("evidence/sources.toml".into(), SOURCES.into()), ("evidence/topic.toml".into(), entries.into())];
    read(&files).found.iter().map(|fault| fault.code.to_owned()).collect()
}

fn entry(changes: &[(&str, &str)]) -> String {
    let mut keys = vec![
        ("id", "\"an-id\""),
        ("what", "\"what it is\""),
        ("value", "42"),
        ("unit", "\"day\""),
        ("how_known", "\"abstract\""),
        ("sources", "[\"AB1\"]"),
    ];
    for (key, value) in changes {
        keys.retain(|(known, _)| known != key);
        if !value.is_empty() {
            keys.push((key, value));
        }
    }
    let lines: Vec<_> = keys.iter().map(|(key, value)| format!("{key} = {value}\n")).collect();
    format!("[[entry]]\n{}\n", lines.concat())
}

#[test]
fn a_whole_entry_has_no_fault() {
    assert_eq!(check(&entry(&[])), [""; 0]);
}

#[test]
fn each_fault_is_found_once() {
    for (changes, code) in [
        (vec![("id", "\"An_Id\"")], "id-not-kebab"),
        (vec![("unit", "")], "missing-key"),
        (vec![("unit", "\"fortnights\"")], "unknown-word"),
        (vec![("how_known", "\"guess\"")], "unknown-word"),
        (vec![("sources", "")], "reference-missing"),
        (vec![("sources", "[]"), ("how_known", "\"memory\"")], "reference-missing"),
        (vec![("sources", "[\"AB2\"]")], "unknown-source"),
        (vec![("sources", "[\"NR1\"]")], "nobody-read-it"),
        (vec![("how_known", "\"read\"")], "only-the-abstract"),
        (vec![("value", "41.5")], "day-not-whole"),
        (vec![("low", "50"), ("high", "40")], "range-upside-down"),
        (vec![("derived", "{ from = [\"no-such\"], formula = \"a + b\" }")], "unknown-parent"),
        (vec![("derived", "{ from = [\"an-id\"], formula = \"itself\" }")], "unknown-parent"),
        (vec![("vlaue", "1")], "unknown-key"),
    ] {
        assert_eq!(check(&entry(&changes)), [code], "{changes:?}");
    }
    assert_eq!(check(&[entry(&[]), entry(&[])].concat()), ["duplicate-id"]);
}

#[test]
fn a_mark_stands_in_for_a_source() {
    for how in ["\"common-practice\"", "\"own-choice\""] {
        assert_eq!(check(&entry(&[("sources", ""), ("how_known", how)])), [""; 0]);
    }
    assert_eq!(check(&entry(&[("sources", "[\"NR1\"]"), ("how_known", "\"memory\"")])), [""; 0]);
}

#[test]
fn a_name_never_reaches_a_screen() {
    let sheet = "[[source]]\nkey = \"S\"\nshown_as = \"sheet of Doe\"\nauthors = \"Doe, Roe\"\n\
                 kind = \"surgeon's protocol\"\nhow = \"read\"\n";
    let found = read(&[("evidence/sources.toml".into(), sheet.into())]).found;
    assert_eq!(found.iter().map(|fault| fault.code).collect::<Vec<_>>(), ["name-on-screen"]);
}

#[test]
fn the_page_carries_the_mark_and_keeps_its_cells() {
    let text = entry(&[("what", "\"a | b\""), ("how_known", "\"own-choice\"")]);
    let reading = read(&[("evidence/sources.toml".into(), SOURCES.into()), ("evidence/t.toml".into(), text)]);
    let page = page::page(&reading.table);
    assert!(page.contains("| `an-id` | a \\| b | day 42 | own choice | AB1 |  |"), "{page}");
}
