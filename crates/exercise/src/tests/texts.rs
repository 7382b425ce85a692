//! Every entry has its messages, and they stay plain.

use std::collections::{BTreeMap, BTreeSet};

use super::catalogue;
use crate::Kind;

const TEXTS: &[&str] = &[
    include_str!("../../../../locales/en/exercises.ftl"),
    include_str!("../../../../locales/en/activities.ftl"),
    include_str!("../../../../locales/en/care.ftl"),
    include_str!("../../../../locales/en/tests.ftl"),
];

/// Title and attributes of each message; the files use nothing else of Fluent.
fn messages() -> BTreeMap<String, BTreeMap<String, String>> {
    let mut all: BTreeMap<String, BTreeMap<String, String>> = BTreeMap::new();
    let mut current = String::new();
    for line in TEXTS.iter().flat_map(|text| text.lines()) {
        if line.trim().is_empty() || line.starts_with('#') {
            continue;
        }
        let (name, value) = line.split_once(" = ").unwrap_or_else(|| panic!("not a message: {line}"));
        if let Some(attribute) = name.strip_prefix("    .") {
            let message = all.get_mut(&current).expect("an attribute after its message");
            let before = message.insert(attribute.to_owned(), value.to_owned());
            assert!(before.is_none(), "{current}.{attribute} twice");
        } else {
            current = name.to_owned();
            let before = all.insert(current.clone(), BTreeMap::from([(String::new(), value.to_owned())]));
            assert!(before.is_none(), "{current} twice");
        }
    }
    all
}

#[test]
fn every_entry_has_its_messages_and_every_message_its_entry() {
    let catalogue = catalogue();
    let messages = messages();
    for entry in catalogue.entries() {
        let id = entry.message_id();
        let message = messages.get(&id).unwrap_or_else(|| panic!("no message {id}"));
        let needed: &[&str] = match entry.kind {
            Kind::Exercise => &["", "purpose", "start", "step-1", "step-2", "mistake-1", "stop"],
            Kind::Activity => &[""],
            Kind::Care => &["", "start", "step-1"],
            Kind::Test => &["", "start", "step-1"],
        };
        for attribute in needed {
            assert!(message.get(*attribute).is_some_and(|text| !text.is_empty()), "{id} lacks .{attribute}");
        }
        for family in ["step-", "mistake-"] {
            let count = message.keys().filter(|key| key.starts_with(family)).count();
            for number in 1..=count {
                assert!(message.contains_key(&format!("{family}{number}")), "{id}: a gap in .{family}");
            }
        }
    }
    let ids: BTreeSet<_> = catalogue.entries().iter().map(crate::Entry::message_id).collect();
    let astray: Vec<_> = messages.keys().filter(|id| !ids.contains(*id)).collect();
    assert!(astray.is_empty(), "{astray:?}");
}

#[test]
fn sentences_are_short() {
    // Own choice after a study of leaflets: sentences of 15 words or fewer.
    let mut long = Vec::new();
    for (id, message) in messages() {
        for (attribute, text) in message {
            for sentence in text.split_inclusive(['.', '?', '!']) {
                if sentence.split_whitespace().count() > 15 {
                    long.push(format!("{id}.{attribute}: {}", sentence.trim()));
                }
            }
        }
    }
    assert!(long.is_empty(), "{}", long.join("\n"));
}

/// Syllables as groups of vowels; a silent e at the end does not count.
fn syllables(word: &str) -> usize {
    let word: String = word.chars().filter(|c| c.is_alphabetic()).collect::<String>().to_lowercase();
    let mut groups = 0;
    let mut vowel_before = false;
    for letter in word.chars() {
        let vowel = "aeiouy".contains(letter);
        groups += usize::from(vowel && !vowel_before);
        vowel_before = vowel;
    }
    if word.ends_with('e') && !word.ends_with("le") && groups > 1 {
        groups -= 1;
    }
    groups.max(1)
}

#[test]
fn patients_texts_stay_at_or_under_grade_6() {
    // Flesch and Kincaid: 0.39 words per sentence + 11.8 syllables per word - 15.59; per kind, steps and hints.
    for kind in ["exercise-", "activity-", "care-", "test-"] {
        let (mut sentences, mut words, mut parts) = (0.0, 0.0, 0.0);
        for (_, message) in messages().iter().filter(|(id, _)| id.starts_with(kind)) {
            for (_, text) in message.iter().filter(|(attribute, _)| !attribute.is_empty()) {
                sentences += text.matches(['.', '?', '!']).count().max(1) as f64;
                for word in text.split_whitespace() {
                    words += 1.0;
                    parts += syllables(word) as f64;
                }
            }
        }
        let grade = 0.39 * words / sentences + 11.8 * parts / words - 15.59;
        assert!(grade <= 6.0, "{kind} reads at grade {grade:.1}");
    }
}
