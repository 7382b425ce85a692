//! Both languages say the same, of the same things.

use std::collections::{BTreeMap, BTreeSet};

use wording::{Language, Messages};

use crate::files::{Choice, FOR_PATIENTS, Text, texts};

/// Each text of a file in English and in Spanish; none may be missing in either.
fn pairs(file: &str) -> Vec<(Text, Text)> {
    let [english, spanish] = [Language::English, Language::Spanish].map(|language| texts(language, file));
    let names = |texts: &[Text]| texts.iter().map(Text::name).collect::<BTreeSet<_>>();
    let (known, translated) = (names(&english), names(&spanish));
    let apart: Vec<_> = known.symmetric_difference(&translated).collect();
    assert!(apart.is_empty(), "{file}.ftl: in one language only: {apart:?}");
    let of_name = |name: String| spanish.iter().find(|text| text.name() == name).cloned().expect("compared above");
    english.into_iter().map(|text| (text.clone(), of_name(text.name()))).collect()
}

#[test]
fn the_spanish_files_have_no_fault() {
    let spanish = Messages::of(Language::Spanish);
    assert_eq!(spanish.faults(), [""; 0]);
    for text in FOR_PATIENTS.iter().flat_map(|file| texts(Language::English, file)) {
        assert!(text.attribute.is_some() || spanish.has(&text.id), "{} is not read", text.id);
    }
}

#[test]
fn each_text_takes_the_same_in_both_languages() {
    for (english, spanish) in FOR_PATIENTS.iter().flat_map(|file| pairs(file)) {
        let (asked, of_spanish) = (english.asked(), spanish.asked());
        assert_eq!(asked.variables, of_spanish.variables, "{}", english.name());
        assert_eq!(asked.messages, of_spanish.messages, "{}", english.name());
    }
}

#[test]
fn each_choice_of_english_is_one_of_spanish() {
    for (english, spanish) in FOR_PATIENTS.iter().flat_map(|file| pairs(file)) {
        let of_spanish = by_variable(spanish.asked().choices);
        for (variable, choices) in by_variable(english.asked().choices) {
            let others = of_spanish.get(&variable).unwrap_or_else(|| panic!("{}: {variable}", english.name()));
            for choice in choices {
                let is_same = |other: &Choice| other.keys.is_superset(&choice.keys) && other.default == choice.default;
                assert!(others.iter().any(is_same), "{}: {choice:?}", english.name());
            }
        }
    }
}

fn by_variable(choices: Vec<Choice>) -> BTreeMap<String, Vec<Choice>> {
    let mut by_variable: BTreeMap<String, Vec<Choice>> = BTreeMap::new();
    for choice in choices {
        by_variable.entry(choice.variable.clone()).or_default().push(choice);
    }
    by_variable
}

#[test]
fn written_numbers_are_the_same() {
    // A number that stands in the text itself, such as "1 lb" of a title, can't differ.
    let numbers = |text: &Text| {
        let said = text.asked().said.join(" ");
        let mut numbers: Vec<String> =
            said.split(|c: char| !c.is_ascii_digit()).filter(|n| !n.is_empty()).map(str::to_owned).collect();
        numbers.sort();
        numbers.dedup();
        numbers
    };
    for (english, spanish) in FOR_PATIENTS.iter().flat_map(|file| pairs(file)) {
        assert_eq!(numbers(&english), numbers(&spanish), "{}", english.name());
    }
}

#[test]
fn parts_in_words_are_the_same() {
    let words = |text: &Text| -> BTreeSet<String> {
        let said = text.asked().said.join(" ").to_lowercase();
        said.split(|c: char| !c.is_alphabetic()).map(str::to_owned).collect()
    };
    let parts: [(&[&str], &[&str]); 3] = [
        (&["third", "thirds"], &["tercio", "tercios"]),
        (&["quarter"], &["cuarto"]),
        (&["half", "halfway"], &["medio", "media", "mitad"]),
    ];
    let mut compared = 0;
    for (english, spanish) in FOR_PATIENTS.iter().flat_map(|file| pairs(file)) {
        let (said, in_spanish) = (words(&english), words(&spanish));
        for (part, other) in parts {
            let [has, given] =
                [part.iter().any(|word| said.contains(*word)), other.iter().any(|word| in_spanish.contains(*word))];
            assert_eq!(has, given, "{}: {part:?}", english.name());
            compared += usize::from(has);
        }
    }
    assert!(compared > 10, "{compared} parts");
}

#[test]
fn what_is_forbidden_stays_forbidden() {
    // As many words that forbid, deny or confine as English has, or more.
    let count = |text: &Text, words: &[&str]| {
        let said = text.asked().said.join(" ").to_lowercase().replace("n't", " not");
        said.split(|c: char| !c.is_alphabetic()).filter(|word| words.contains(word)).count()
    };
    let kinds: [(&[&str], &[&str]); 2] =
        [(&["not", "no", "nothing", "never"], &["no", "sin", "nada", "nadie", "ni", "nunca"]), (&["only"], &["solo"])];
    for (english, spanish) in FOR_PATIENTS.iter().flat_map(|file| pairs(file)) {
        for (words, of_spanish) in kinds {
            let [asked, given] = [count(&english, words), count(&spanish, of_spanish)];
            assert!(asked <= given, "{}: {asked} of {words:?}, {given} of {of_spanish:?}", english.name());
        }
    }
}

#[test]
fn spanish_speaks_to_the_reader_politely() {
    // "usted" throughout: no "tu", no "vosotros", and questions open as Spanish opens them.
    for (_, spanish) in FOR_PATIENTS.iter().flat_map(|file| pairs(file)) {
        let said = spanish.asked().said.join(" ");
        let words: Vec<String> = said.split(|c: char| !c.is_alphabetic()).map(str::to_lowercase).collect();
        for word in ["tu", "tus", "te", "ti", "vuestro", "vuestra", "os"] {
            assert!(!words.iter().any(|other| other == word), "{}: {word}", spanish.name());
        }
        assert_eq!(said.matches('?').count(), said.matches('¿').count(), "{}", spanish.name());
        assert_eq!(said.matches('!').count(), said.matches('¡').count(), "{}", spanish.name());
    }
}
