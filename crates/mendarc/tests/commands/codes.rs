//! Every diagnostic code that the sources can say is explained, and every explanation is of such a code.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use diagnostic::{Sink, Sources};
use mendarc::explanations;

use crate::runs::root;

const CALLS: [&str; 4] = ["Diagnostic::error(", "Diagnostic::warning(", "Diagnostic::question(", "Diagnostic::note("];

/// The sources of the crates, without their tests.
fn sources() -> Vec<(PathBuf, String)> {
    let mut open = vec![root().join("crates")];
    let mut found = Vec::new();
    while let Some(folder) = open.pop() {
        for item in std::fs::read_dir(&folder).expect("a folder of sources") {
            let path = item.expect("an item of the folder").path();
            let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
            if path.is_dir() && !["tests", "benches"].contains(&name.as_str()) {
                open.push(path);
            } else if name.ends_with(".rs") && name != "tests.rs" && in_sources(&path) {
                let text = std::fs::read_to_string(&path).expect("a source is text");
                let text = text.split("#[cfg(test)]\nmod tests {").next().unwrap_or_default().to_owned();
                found.push((path, text));
            }
        }
    }
    found
}

fn in_sources(path: &Path) -> bool {
    path.components().any(|part| part.as_os_str() == "src")
}

/// Kebab words between quotes.
fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split('"').skip(1).step_by(2).filter(|word| {
        !word.is_empty()
            && word.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
            && !word.starts_with('-')
    })
}

/// Codes with a file that says each.
fn said() -> BTreeMap<String, PathBuf> {
    let mut codes = BTreeMap::new();
    for (path, text) in sources() {
        for call in CALLS {
            for (at, _) in text.match_indices(call) {
                let argument = text[at + call.len()..].trim_start();
                if argument.starts_with('"') {
                    codes.extend(words(argument).next().map(|code| (code.to_owned(), path.clone())));
                } else {
                    // A code chosen by a line or a function above: every word it can give.
                    let name: String = argument.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect();
                    let chosen = chosen_by(&text, &name);
                    assert!(!chosen.is_empty(), "{}: where does `{name}` come from?", path.display());
                    codes.extend(chosen.into_iter().map(|code| (code, path.clone())));
                }
            }
        }
        for (at, pattern) in text.match_indices("\"code\": ") {
            codes.extend(words(&text[at + pattern.len()..]).next().map(|code| (code.to_owned(), path.clone())));
        }
    }
    codes
}

fn chosen_by(text: &str, name: &str) -> Vec<String> {
    let body = if let Some(at) = text.find(&format!("let {name} = ")) {
        text[at..].split(';').next().unwrap_or_default()
    } else if let Some(at) = text.find(&format!("fn {name}(")) {
        text[at..].split("\n}").next().unwrap_or_default()
    } else {
        ""
    };
    words(body).filter(|word| word.contains('-')).map(str::to_owned).collect()
}

#[test]
fn every_code_is_explained() {
    let said = said();
    assert!(said.len() > 60, "only {} codes were found in the sources", said.len());
    for known in ["length-without-unit", "internal-fault", "cannot-read", "unknown-movement", "before-surgery"] {
        assert!(said.contains_key(known), "the sources say `{known}`, and it was not found");
    }
    let explained = explained();
    let missing: Vec<String> = said
        .iter()
        .filter(|(code, _)| !explained.contains(*code))
        .map(|(code, path)| format!("{code} ({})", path.file_name().unwrap_or_default().to_string_lossy()))
        .collect();
    assert!(missing.is_empty(), "{} codes have no explanation: {}", missing.len(), missing.join(", "));
}

#[test]
fn every_explanation_is_of_a_code_that_is_said() {
    let said = said();
    let stale: Vec<String> = explained().into_iter().filter(|code| !said.contains_key(code)).collect();
    assert!(stale.is_empty(), "nothing says {}", stale.join(", "));
}

fn explained() -> BTreeSet<String> {
    let mut sink = Sink::new();
    let all = explanations::all(&mut Sources::new(), &mut sink);
    assert!(!sink.has_errors(), "{:?}", sink.found());
    let codes: BTreeSet<String> = all.iter().map(|explanation| explanation.code.clone()).collect();
    assert_eq!(codes.len(), all.len(), "a code is explained twice");
    codes
}
