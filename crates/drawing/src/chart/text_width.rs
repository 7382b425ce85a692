//! How wide a line of text is, so that no label is set where it has no room.
//!
//! # Source
//! Advance widths of Source Sans 3, version 3.052, as in `crates/paper/fonts`, read from its tables of glyphs; 1000 to
//! an em. Kerning is left out: it makes lines shorter far more often than longer. In another typeface a line is up to
//! a sixth wider.

use crate::svg::Weight;

/// Width of a line in millimeters at a height of type in millimeters.
pub(crate) fn width_mm(text: &str, size_mm: f64, weight: Weight) -> f64 {
    let thousandths: u32 = text.chars().map(|letter| u32::from(advance(letter, weight))).sum();
    f64::from(thousandths) / PER_EM * size_mm
}

/// The lines of a text no wider than a width, broken at plain spaces; `None` where a single word is wider.
pub(super) fn wrapped(text: &str, size_mm: f64, weight: Weight, width: f64) -> Option<Vec<String>> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        if width_mm(word, size_mm, weight) > width {
            return None;
        }
        let longer = lines.last().map(|line| format!("{line} {word}"));
        match longer.filter(|line| width_mm(line, size_mm, weight) <= width) {
            Some(line) => *lines.last_mut()? = line,
            None => lines.push(word.to_owned()),
        }
    }
    Some(lines)
}

fn advance(letter: char, weight: Weight) -> u16 {
    let table = match weight {
        Weight::Regular => &REGULAR,
        Weight::Bold => &BOLD,
    };
    let of = |ascii: char| table.get((ascii as usize).wrapping_sub(FIRST)).copied();
    of(base(letter)).unwrap_or(match (letter, weight) {
        // Marks set over the letter before.
        ('\u{300}'..='\u{36f}', _) => 0,
        ('°', Weight::Regular) => 331,
        ('°', Weight::Bold) => 365,
        ('\u{2009}', _) => 100,
        ('\u{202f}', _) => 120,
        ('–', _) => 480,
        ('—', _) => 800,
        ('→', _) => 619,
        ('²' | '³', _) => 376,
        ('½' | '¼' | '¾', _) => 846,
        _ => WIDEST,
    })
}

/// The letter whose width another has: an accent adds none.
const fn base(letter: char) -> char {
    match letter {
        'à'..='å' => 'a',
        'ç' => 'c',
        'è'..='ë' => 'e',
        'ì'..='ï' | 'ı' => 'i',
        'ñ' => 'n',
        'ò'..='ö' | 'ø' => 'o',
        'ù'..='ü' => 'u',
        'ý' | 'ÿ' => 'y',
        'ß' | 'µ' => 'n',
        'À'..='Å' => 'A',
        'Ç' => 'C',
        'È'..='Ë' => 'E',
        'Ì'..='Ï' => 'I',
        'Ñ' => 'N',
        'Ò'..='Ö' | 'Ø' => 'O',
        'Ù'..='Ü' => 'U',
        'Ý' => 'Y',
        '±' | '−' | '≥' | '≤' | '×' | '≈' | '÷' => '+',
        '’' | '‘' | '·' => '\'',
        '“' | '”' => '"',
        '•' => '(',
        '¿' => '?',
        '¡' => '!',
        '\u{a0}' => ' ',
        other => other,
    }
}

const PER_EM: f64 = 1000.0;
/// The first letter of the tables: the space.
const FIRST: usize = 32;
/// What a letter outside of the tables counts as: as wide as it is high, which no Latin letter is.
const WIDEST: u16 = 1000;

#[rustfmt::skip]
const REGULAR: [u16; 95] = [
    200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350,
    497, 497, 497, 497, 497, 497, 497, 497, 497, 497, 249, 249, 497, 497, 497, 425,
    847, 543, 588, 571, 615, 527, 494, 617, 652, 263, 479, 579, 486, 727, 647, 664,
    566, 664, 569, 534, 536, 645, 515, 786, 513, 476, 539, 303, 350, 303, 497, 500,
    542, 504, 553, 456, 555, 496, 292, 504, 544, 246, 247, 495, 255, 829, 547, 542,
    555, 555, 347, 419, 338, 544, 467, 719, 446, 467, 425, 303, 241, 303, 497,
];

#[rustfmt::skip]
const BOLD: [u16; 95] = [
    200, 340, 537, 528, 528, 857, 667, 300, 344, 344, 457, 528, 300, 332, 300, 339,
    528, 528, 528, 528, 528, 528, 528, 528, 528, 528, 300, 300, 528, 528, 528, 463,
    902, 573, 605, 582, 635, 548, 524, 638, 674, 301, 509, 614, 518, 762, 665, 684,
    596, 684, 613, 556, 556, 665, 556, 813, 567, 525, 541, 344, 339, 344, 528, 500,
    555, 527, 573, 468, 573, 518, 341, 534, 571, 276, 278, 548, 286, 857, 572, 555,
    573, 573, 398, 443, 383, 568, 523, 776, 514, 521, 460, 344, 268, 344, 528,
];

#[cfg(test)]
mod tests {
    use super::*;

    // Sums of the advances that fontTools reads from the two files: "Week 12" 3467 and 3653, "Año 90°" 3157 and 3321.
    #[test]
    fn a_line_is_as_wide_as_the_typeface_says() {
        let wide = |text, weight| (width_mm(text, PER_EM, weight)).round();
        assert_eq!([wide("Week 12", Weight::Regular), wide("Week 12", Weight::Bold)], [3467.0, 3653.0]);
        assert_eq!([wide("Año 90°", Weight::Regular), wide("Año 90°", Weight::Bold)], [3157.0, 3321.0]);
    }

    #[test]
    fn a_text_is_broken_between_words_only() {
        let lines = |width| wrapped("raise the arm", 3.0, Weight::Regular, width);
        assert_eq!(lines(60.0), Some(vec!["raise the arm".to_owned()]));
        assert_eq!(lines(11.0), Some(vec!["raise the".to_owned(), "arm".to_owned()]));
        assert_eq!(lines(4.0), None);
        let tight = wrapped("90°\u{a0}± 5", 3.0, Weight::Regular, 8.0);
        assert_eq!(tight, Some(vec!["90°\u{a0}±".to_owned(), "5".to_owned()]));
    }
}
