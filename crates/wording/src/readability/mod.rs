//! How hard a text is to read.

mod english;
mod spanish;

use crate::Language;

/// What the measures of reading ease are counted from.
///
/// # Units and shape
/// Counts over a whole document. The measures were made for running text of 100 words or
/// more; SMOG for 30 sentences or more. A measure of a document without a word is no number,
/// so that it is within no bound.
///
/// # Method
/// A word stands between spaces and has a letter or a digit; "and/or", "90-day" and "38.0" are
/// one word each. A sentence ends at `.`, `!` or `?` before a space, and at the end of each
/// text, so that a heading and a point of a list are sentences. `.` after "Dr." and the like
/// ends none. A colon and a semicolon end none either: some of the authors count them, which
/// makes a text look easier.
///
/// # Example
/// ```
/// use wording::{Ease, Language};
/// let ease = Ease::of(&["Your sling", "Keep it on when you sleep. Sleep on your back."], Language::English);
/// assert_eq!((ease.words, ease.sentences, ease.syllables, ease.polysyllables), (12, 3, 12, 0));
/// assert!(ease.kincaid_grade() < 1.0 && ease.reading_ease() > 100.0);
/// assert!(Ease::of(&[], Language::English).kincaid_grade().is_nan());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ease {
    /// Words.
    pub words: usize,
    /// Sentences.
    pub sentences: usize,
    /// Syllables of all words; a number counts as one, as common counters do.
    pub syllables: usize,
    /// Words of three syllables or more.
    pub polysyllables: usize,
}

impl Ease {
    /// Counts the texts of a document: paragraphs, points of lists, headings.
    pub fn of(texts: &[&str], language: Language) -> Self {
        let mut ease = Self { words: 0, sentences: 0, syllables: 0, polysyllables: 0 };
        for text in texts {
            let mut is_open = false;
            for word in text.split_whitespace().filter(|word| is_word(word)) {
                let count = syllables(word, language);
                ease.words += 1;
                ease.syllables += count;
                ease.polysyllables += usize::from(count > 2);
                is_open = !ends_sentence(word);
                ease.sentences += usize::from(!is_open);
            }
            ease.sentences += usize::from(is_open);
        }
        ease
    }

    /// The grade by Flesch and Kincaid, in school years of the United States; may be negative.
    ///
    /// # Method
    /// 0.39 × words per sentence + 11.8 × syllables per word − 15.59.
    ///
    /// # Source
    /// Kincaid, Fishburne, Rogers, Chissom 1975, Naval Technical Training Command, research
    /// branch report 8-75. The numbers of this and of the other formulas belong to them and are
    /// not medical.
    pub fn kincaid_grade(self) -> f32 {
        0.39 * self.words_per_sentence() + 11.8 * self.syllables_per_word() - 15.59 // not medical: the formula
    }

    /// The reading ease of an English text by Flesch: about 0 to 100, more is easier.
    ///
    /// # Method
    /// 206.835 − 1.015 × words per sentence − 84.6 × syllables per word.
    ///
    /// # Source
    /// Flesch 1948, A new readability yardstick, Journal of Applied Psychology 32.
    pub fn reading_ease(self) -> f32 {
        206.835 - 1.015 * self.words_per_sentence() - 84.6 * self.syllables_per_word() // not medical: the formula
    }

    /// The grade of an English text by SMOG, in school years of the United States.
    ///
    /// # Method
    /// 1.043 × √(polysyllables × 30 / sentences) + 3.1291. Below 30 sentences it is an estimate.
    ///
    /// # Source
    /// McLaughlin 1969, SMOG grading, Journal of Reading 12.
    pub fn smog_grade(self) -> f32 {
        let in_thirty = self.polysyllables as f32 * 30.0 / self.sentences as f32; // not medical: the formula
        1.043 * in_thirty.sqrt() + 3.1291 // not medical: the formula
    }

    /// The reading ease of a Spanish text by Fernández Huerta: about 0 to 100, more is easier.
    ///
    /// # Method
    /// 206.84 − 0.60 × syllables in 100 words − 1.02 × words per sentence. Many print the last
    /// factor as sentences in 100 words; then shorter sentences would make a text harder, and
    /// Flesch's measure, from which this one was made, has words per sentence (Law 2011,
    /// LINGUIST List 22.2332).
    ///
    /// # Source
    /// Fernández Huerta 1959, Medidas sencillas de lecturabilidad, Consigna 214, 29–32, as
    /// others print it; the paper itself was not read.
    pub fn fernandez_huerta(self) -> f32 {
        let in_hundred = 100.0 * self.syllables_per_word(); // not medical: the formula
        206.84 - 0.60 * in_hundred - 1.02 * self.words_per_sentence() // not medical: the formula
    }

    fn words_per_sentence(self) -> f32 {
        self.words as f32 / self.sentences as f32
    }

    fn syllables_per_word(self) -> f32 {
        self.syllables as f32 / self.words as f32
    }
}

/// The grade of one English text by Flesch and Kincaid; 0 without a word.
///
/// # Example
/// ```
/// assert!(wording::grade("Keep the sling on when you sleep.") < 3.0);
/// assert!(wording::grade("Postoperative immobilization necessitates uninterrupted supervision.") > 12.0);
/// ```
pub fn grade(text: &str) -> f32 {
    let ease = Ease::of(&[text], Language::English);
    if ease.words == 0 { 0.0 } else { ease.kincaid_grade() }
}

/// The number of syllables of a word, at least 1.
///
/// # Method
/// Parts joined by a hyphen, a dash or a slash count each for itself; a part without a letter
/// counts one.
///
/// # Example
/// ```
/// use wording::{Language, syllables};
/// assert_eq!(syllables("temperature", Language::English), 4);
/// assert_eq!(syllables("cirugía", Language::Spanish), 4);
/// ```
pub fn syllables(word: &str, language: Language) -> usize {
    let of_letters = |part: &str| {
        let letters: String = part.chars().filter(|c| c.is_alphabetic()).flat_map(char::to_lowercase).collect();
        match language {
            _ if letters.is_empty() => 1,
            Language::English => english::syllables(&letters),
            Language::Spanish => spanish::syllables(&letters),
        }
    };
    word.split(['-', '/', '\u{2013}']).filter(|part| is_word(part)).map(of_letters).sum::<usize>().max(1)
}

fn is_word(word: &str) -> bool {
    word.chars().any(char::is_alphanumeric)
}

/// Short forms of titles; the full stop belongs to them.
const SHORT_FORMS: &[&str] = &["Dr.", "Dra.", "Mr.", "Mrs.", "Ms.", "Sr.", "Sra."];

fn ends_sentence(word: &str) -> bool {
    let bare = word.trim_end_matches(['"', ')', '\'', '\u{201d}', '\u{bb}']);
    bare.ends_with(['.', '!', '?', '\u{2026}']) && !SHORT_FORMS.contains(&bare)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(value: f32, expected: f32) {
        assert!((value - expected).abs() < 1e-3, "{value} and not {expected}");
    }

    #[test]
    fn the_formulas_give_their_published_values() {
        // 0.39 × 12 + 11.8 × 1.3 − 15.59 = 4.430 and 206.835 − 1.015 × 12 − 84.6 × 1.3 = 84.675.
        let ease = Ease { words: 120, sentences: 10, syllables: 156, polysyllables: 0 };
        near(ease.kincaid_grade(), 4.430);
        near(ease.reading_ease(), 84.675);
        // 206.84 − 0.60 × 130 − 1.02 × 12 = 116.60.
        near(ease.fernandez_huerta(), 116.60);
        // 1.043 × √12 + 3.1291 = 6.742.
        near(Ease { words: 300, sentences: 30, syllables: 450, polysyllables: 12 }.smog_grade(), 6.742);
    }

    #[test]
    fn numbers_and_signs() {
        assert_eq!(syllables("38.0", Language::English), 1);
        assert_eq!(syllables("—", Language::English), 1);
        assert_eq!(grade(""), 0.0);
        assert_eq!(grade("— …"), 0.0);
        // "38.0" ends no sentence.
        assert_eq!(grade("A fever of 38.0 or more."), grade("A fever of 38 or more."));
    }

    #[test]
    fn a_sentence_ends_where_it_does() {
        let sentences = |texts: &[&str]| Ease::of(texts, Language::English).sentences;
        assert_eq!(sentences(&["Is it red? Call (by day)."]), 2);
        assert_eq!(sentences(&["Call Dr. Falk. Ask."]), 2);
        assert_eq!(sentences(&["Hand: open it"]), 1);
        // A heading and a point end at their end, with a full stop or without.
        assert_eq!(sentences(&["Your sling", "Wear it.", ""]), 2);
        assert_eq!(sentences(&["Wear it. \u{2014}"]), 1);
    }

    #[test]
    fn a_document_without_a_word_is_within_no_bound() {
        let nothing = Ease::of(&["\u{2014}"], Language::Spanish);
        assert_eq!(nothing.words, 0);
        for measure in
            [nothing.kincaid_grade(), nothing.reading_ease(), nothing.smog_grade(), nothing.fernandez_huerta()]
        {
            assert!(measure.is_nan());
        }
    }
}
