//! Every document for patients is easy to read: as a whole, and exercise by exercise.

use evidence::ids;
use wording::{Ease, Language, Messages};

use crate::files::{Text, texts};

/// Files that are documents of their own. The cautions are not: they stand on clinicians'
/// pages too and keep the words of codes; what a prescription adds is one word.
const DOCUMENTS: &[&str] = &["exercises", "activities", "care", "tests", "first-days", "handout"];

/// SMOG asks for full understanding, and reads about two grades above Kincaid's for one text.
const SMOG_GREATEST: f32 = 8.0;
/// From here on a Spanish text is "somewhat easy", and for the sixth grade, in Fernández Huerta's table.
const HUERTA_LEAST: f32 = 70.0;

fn ease_of(texts: &[Text], messages: &Messages) -> Ease {
    let shown: Vec<String> = texts.iter().map(|text| text.shown(messages)).collect();
    Ease::of(&shown.iter().map(String::as_str).collect::<Vec<_>>(), messages.language())
}

/// What is too hard in it, in words; none where nothing is.
fn too_hard(name: &str, ease: Ease, language: Language) -> Option<String> {
    let kincaid_greatest = ids::READING_GRADE_GREATEST.number() as f32;
    let is_easy = match language {
        Language::English => ease.kincaid_grade() <= kincaid_greatest && ease.smog_grade() <= SMOG_GREATEST,
        Language::Spanish => ease.fernandez_huerta() >= HUERTA_LEAST,
    };
    let measures = [ease.kincaid_grade(), ease.smog_grade(), ease.fernandez_huerta()];
    (!is_easy).then(|| format!("{name}: {measures:.1?}, {ease:?}"))
}

#[test]
fn every_document_is_easy() {
    for messages in [Messages::english(), Messages::of(Language::Spanish)] {
        let language = messages.language();
        let hard: Vec<String> = DOCUMENTS
            .iter()
            .filter_map(|file| too_hard(file, ease_of(&texts(language, file), &messages), language))
            .collect();
        assert!(hard.is_empty(), "{hard:#?}");
    }
}

#[test]
fn every_exercise_is_easy_by_itself() {
    for messages in [Messages::english(), Messages::of(Language::Spanish)] {
        let language = messages.language();
        let all = texts(language, "exercises");
        let one_by_one: Vec<&[Text]> = all.chunk_by(|before, after| before.id == after.id).collect();
        assert!(one_by_one.len() > 100, "{} exercises", one_by_one.len());
        let hard: Vec<String> =
            one_by_one.iter().filter_map(|own| too_hard(&own[0].id, ease_of(own, &messages), language)).collect();
        assert!(hard.is_empty(), "{hard:#?}");
    }
}

#[test]
fn no_sentence_is_long() {
    // Own choice after a study of leaflets: 15 words; Spanish needs about a tenth more for the same.
    // The handout's and the first days' own limits stand with their texts, grade by grade.
    for (messages, greatest) in [(Messages::english(), 15), (Messages::of(Language::Spanish), 17)] {
        for file in ["exercises", "activities", "care", "tests"] {
            for text in texts(messages.language(), file) {
                let shown = text.shown(&messages);
                for sentence in shown.split_inclusive(['.', '?', '!']) {
                    let words = sentence.split_whitespace().count();
                    assert!(words <= greatest, "{}: {words} words: {}", text.name(), sentence.trim());
                }
            }
        }
    }
}
