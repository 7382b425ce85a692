//! Our counters against independent ones; `checks/readability/README.md` tells how and what differs.

use std::fs;
use std::path::PathBuf;

use serde_json::{Map, Value};
use wording::{Ease, Language, syllables};

/// How far grades may lie apart.
const NEAR: f32 = 0.3;

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../checks/readability")
}

fn values(file: &str, section: &str) -> Map<String, Value> {
    let text = fs::read_to_string(folder().join(file)).expect("a file of values");
    let values: Value = serde_json::from_str(&text).expect("JSON");
    values[section].as_object().expect("a section of the file").clone()
}

/// A document of the corpus with what others count in it.
struct Document {
    name: String,
    ours: Ease,
    theirs: Value,
}

impl Document {
    fn value(&self, name: &str) -> f32 {
        self.theirs[name].as_f64().unwrap_or_else(|| panic!("{}: no {name}", self.name)) as f32
    }

    fn count(&self, name: &str) -> usize {
        self.theirs[name].as_u64().unwrap_or_else(|| panic!("{}: no {name}", self.name)) as usize
    }

    /// Textstat's counts as they are.
    fn as_counted(&self) -> Ease {
        Ease {
            words: self.count("words"),
            sentences: self.count("sentences"),
            syllables: self.count("syllables"),
            polysyllables: self.count("polysyllables"),
        }
    }

    /// Textstat's words, its sentences with those of one word or two, and the syllables of a
    /// dictionary: of a word that it pronounces in several ways, whichever is nearer to ours.
    fn as_mended(&self) -> Ease {
        let nearest = |name: &str, ours: usize| {
            let [least, most] = [0, 1].map(|end| self.theirs["by_dictionary"][name][end].as_u64().expect("a count"));
            ours.clamp(least as usize, most as usize)
        };
        Ease {
            words: self.count("words"),
            sentences: self.count("sentences_with_short"),
            syllables: nearest("syllables", self.ours.syllables),
            polysyllables: nearest("polysyllables", self.ours.polysyllables),
        }
    }
}

fn documents(language: Language) -> Vec<Document> {
    let of_language = |(name, _): &(String, Value)| name.starts_with(language.code());
    let documents: Vec<Document> = values("values.json", "documents")
        .into_iter()
        .filter(of_language)
        .map(|(name, theirs)| {
            let text = fs::read_to_string(folder().join("corpus").join(format!("{name}.txt"))).expect("a document");
            let ours = Ease::of(&text.lines().collect::<Vec<_>>(), language);
            Document { name, ours, theirs }
        })
        .collect();
    assert!(documents.len() > 9, "{} documents", documents.len());
    documents
}

/// The documents whose measure lies further apart than allowed, by name.
fn apart(documents: &[Document], allowed: f32, difference: impl Fn(&Document) -> f32) -> Vec<String> {
    let told = |document: &Document| {
        let difference = difference(document);
        (difference.is_nan() || difference.abs() > allowed).then(|| format!("{} {difference:+.2}", document.name))
    };
    documents.iter().filter_map(told).collect()
}

#[test]
fn the_formulas_are_those_of_textstat() {
    let same = |document: &Document| {
        let counts = document.as_counted();
        (counts.kincaid_grade() - document.value("flesch_kincaid_grade")).abs()
            + (counts.reading_ease() - document.value("flesch_reading_ease")).abs()
            + (counts.smog_grade() - document.value("smog_index")).abs()
    };
    assert_eq!(apart(&documents(Language::English), 1e-3, same), [""; 0]);
    let same = |document: &Document| document.as_counted().fernandez_huerta() - document.value("fernandez_huerta");
    assert_eq!(apart(&documents(Language::Spanish), 1e-3, same), [""; 0]);
}

#[test]
fn words_and_sentences_are_the_same() {
    for document in documents(Language::English).iter().chain(&documents(Language::Spanish)) {
        assert_eq!(document.ours.words, document.count("words"), "{}", document.name);
        assert_eq!(document.ours.sentences, document.count("sentences_with_short"), "{}", document.name);
    }
}

#[test]
fn english_grades_are_near_those_of_a_dictionary() {
    let english = documents(Language::English);
    let kincaid = |document: &Document| document.ours.kincaid_grade() - document.as_mended().kincaid_grade();
    assert_eq!(apart(&english, NEAR, kincaid), [""; 0]);
    let smog = |document: &Document| document.ours.smog_grade() - document.as_mended().smog_grade();
    assert_eq!(apart(&english, NEAR, smog), [""; 0]);
}

#[test]
fn spanish_ease_is_near_that_of_a_division_into_syllables() {
    // The ease has tenfold the steps of a grade.
    let huerta = |document: &Document| document.ours.fernandez_huerta() - document.as_mended().fernandez_huerta();
    assert_eq!(apart(&documents(Language::Spanish), 10.0 * NEAR, huerta), [""; 0]);
}

#[test]
fn every_word_is_counted_as_a_dictionary_does() {
    // Spelling has "ui" as one syllable, always; the program divides some words as they are spoken.
    let spoken: &[&str] = &["guiando", "guiar", "incluida", "luis"];
    for (language, apart) in [(Language::English, [].as_slice()), (Language::Spanish, spoken)] {
        let words = values("values.json", &format!("words_{}", language.code()));
        assert!(words.len() > 1000, "{} words", words.len());
        let ours_is_one = |word: &str, counts: &Value| {
            let ours = syllables(word, language) as u64;
            counts.as_array().expect("counts").iter().any(|count| count.as_u64() == Some(ours))
        };
        let others: Vec<&str> =
            words.iter().filter(|(word, counts)| !ours_is_one(word, counts)).map(|(word, _)| word.as_str()).collect();
        assert_eq!(others, apart, "{language:?}");
    }
}

/// Documents whose grade lies further from that of textstat 0.7.3, as it is.
const FURTHER: &[&str] = &[
    "en-care",
    "en-exercises-04",
    "en-exercises-06",
    "en-exercises-09",
    "en-handout-01",
    "en-handout-02",
    "en-handout-04",
    "en-own-02-bread",
    "en-own-03-ferry",
    "en-own-04-library",
    "en-own-05-bees",
    "en-own-06-tides",
    "en-own-07-museum",
    "en-own-08-contract",
    "en-own-09-statistics",
    "en-own-10-surgery",
];

/// Documents whose grade lies further from that of textstat 0.7.7, which asks a dictionary.
const FURTHER_LATER: &[&str] = &["en-exercises-04", "en-handout-02", "en-handout-04", "en-own-02-bread"];

#[test]
fn textstat_as_it_is_lies_further_where_we_know_it() {
    let english = documents(Language::English);
    let names =
        |further: &[String]| further.iter().filter_map(|told| Some(told.split(' ').next()?.to_owned())).collect();
    let kincaid = |document: &Document| document.ours.kincaid_grade() - document.value("flesch_kincaid_grade");
    let further = apart(&english, NEAR, kincaid);
    let found: Vec<String> = names(&further);
    assert_eq!(found, FURTHER, "{further:#?}");
    let later = values("later.json", "documents");
    let kincaid = |document: &Document| {
        let theirs = &later[&document.name]["flesch_kincaid_grade"];
        document.ours.kincaid_grade() - theirs.as_f64().expect("a grade") as f32
    };
    let further = apart(&english, NEAR, kincaid);
    let found: Vec<String> = names(&further);
    assert_eq!(found, FURTHER_LATER, "{further:#?}");
}

#[test]
fn only_short_sentences_make_ours_easier() {
    // Its hyphenation never divides after the first letter, so it loses syllables and finds none.
    let with_short = |document: &Document| {
        let sentences = document.count("sentences_with_short");
        Ease { sentences, ..document.as_counted() }.kincaid_grade()
    };
    for document in documents(Language::English) {
        assert!(document.ours.kincaid_grade() > with_short(&document) - 1e-3, "{}", document.name);
    }
}
