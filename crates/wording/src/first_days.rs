//! The sheet for the first days at home: its sections in order, and the numbers it takes
//! from the table of evidence.
//!
//! It is made from date and side alone, so it is the strictest of all plans: no shoulder
//! movement, nothing held, the sling always, the elbow only helped by the other hand.

use evidence::ids;

use crate::Argument;

/// How the paragraphs of a section stand on the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// One under the other.
    Paragraphs,
    /// As a list of points.
    List,
}

/// A section of the sheet: message ids.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Section {
    /// The title.
    pub title_id: &'static str,
    /// How the paragraphs stand.
    pub shape: Shape,
    /// The paragraphs in order.
    pub paragraph_ids: &'static [&'static str],
}

/// What the caller must tell beside [`arguments`]; all of it text.
///
/// `side` is `left` or `right`; dates are written as the reader shall read them.
pub const TOLD: &[&str] =
    &["side", "operation_date", "visit_from", "visit_until", "dry_until", "day_number", "night_number"];

/// The numbers of the sheet, out of the table of evidence.
///
/// # Units and shape
/// Hours, minutes, times a day, repetitions and days as their names say; the fever in
/// degrees Celsius and Fahrenheit with one decimal. A surgeon's own fever limit is told
/// after these: of two arguments with one name the later counts, see [`fever`].
pub fn arguments() -> Vec<(&'static str, Argument<'static>)> {
    let mut arguments = vec![
        ("block_usual_hours", ids::BLOCK_USUAL_LENGTH.number().into()),
        ("block_advice_hours", ids::BLOCK_ADVICE_AFTER.number().into()),
        ("block_call_hours", ids::BLOCK_CALL_AFTER.number().into()),
        ("leak_hours", ids::FRESH_LEAK_AFTER.number().into()),
        ("ice_minutes", ids::ICE_MINUTES.number().into()),
        ("ice_times", ids::ICE_TIMES.number().into()),
        ("pain_minutes", ids::PAIN_AFTER_EXERCISE.number().into()),
        ("sessions", ids::SESSIONS_A_DAY.number().into()),
        ("hand_repetitions", ids::EARLY_HAND_REPETITIONS.number().into()),
        ("fever_again_days", ids::FEVER_MEASURE_AGAIN_UNTIL.number().into()),
        ("soon_days", (ids::HAND_SWELLING_WITHIN.number() / HOURS_A_DAY).into()),
    ];
    arguments.extend(fever(ids::FEVER_SAME_DAY.number()));
    arguments
}

const HOURS_A_DAY: f64 = 24.0; // not medical: a day has 24 hours

/// The two arguments of a fever limit in degrees Celsius.
///
/// # Example
/// ```
/// let [celsius, fahrenheit] = wording::first_days::fever(38.3);
/// assert_eq!(celsius, ("fever_celsius", "38.3".into()));
/// assert_eq!(fahrenheit, ("fever_fahrenheit", "100.9".into()));
/// ```
pub fn fever(celsius: f64) -> [(&'static str, Argument<'static>); 2] {
    let fahrenheit = celsius * 9.0 / 5.0 + 32.0; // not medical: the Fahrenheit scale
    [("fever_celsius", format!("{celsius:.1}").into()), ("fever_fahrenheit", format!("{fahrenheit:.1}").into())]
}

/// Every section in order.
pub const SECTIONS: &[Section] = &[
    Section {
        title_id: "first-days-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &["first-days-arm", "first-days-surgery", "first-days-until", "first-days-stricter"],
    },
    Section {
        title_id: "first-days-call-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &["first-days-call-day", "first-days-call-night", "first-days-call-danger"],
    },
    Section {
        title_id: "first-days-rules-title",
        shape: Shape::List,
        paragraph_ids: &[
            "first-days-rules-sling",
            "first-days-rules-shoulder",
            "first-days-rules-hold",
            "first-days-rules-lean",
            "first-days-rules-pain",
            "first-days-rules-drive",
        ],
    },
    Section {
        title_id: "first-days-sling-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &[
            "first-days-sling-fit",
            "first-days-sling-hand",
            "first-days-sling-off",
            "first-days-sling-wedge",
            "first-days-sling-skin",
            "first-days-sling-balance",
        ],
    },
    Section {
        title_id: "first-days-numb-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &[
            "first-days-numb-usual",
            "first-days-numb-signs",
            "first-days-numb-prick",
            "first-days-numb-guard",
            "first-days-numb-ice",
            "first-days-numb-advice",
            "first-days-numb-pump",
        ],
    },
    Section {
        title_id: "first-days-tablets-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &["first-days-tablets-surgeon", "first-days-tablets-early"],
    },
    Section { title_id: "first-days-ice-title", shape: Shape::Paragraphs, paragraph_ids: &["first-days-ice-how"] },
    Section {
        title_id: "first-days-moves-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &[
            "first-days-moves-when",
            "first-days-moves-hand",
            "first-days-moves-wrist",
            "first-days-moves-elbow",
            "first-days-moves-palm",
            "first-days-moves-often",
            "first-days-moves-stop",
        ],
    },
    Section {
        title_id: "first-days-wash-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &[
            "first-days-wash-shower",
            "first-days-wash-armpit",
            "first-days-wash-dress",
            "first-days-wash-dressing",
            "first-days-wash-rings",
        ],
    },
    Section {
        title_id: "first-days-sleep-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &["first-days-sleep-sling", "first-days-sleep-how"],
    },
    Section {
        title_id: "first-days-emergency-title",
        shape: Shape::List,
        paragraph_ids: &[
            "first-days-emergency-chest",
            "first-days-emergency-breath",
            "first-days-emergency-blood",
            "first-days-emergency-collapse",
            "first-days-emergency-lips",
        ],
    },
    Section {
        title_id: "first-days-today-title",
        shape: Shape::List,
        paragraph_ids: &[
            "first-days-today-fever",
            "first-days-today-fever-again",
            "first-days-today-wound",
            "first-days-today-leak",
            "first-days-today-pain",
            "first-days-today-stiff",
            "first-days-today-fingers",
            "first-days-today-swelling",
            "first-days-today-sick",
            "first-days-today-numb",
            "first-days-today-fall",
        ],
    },
    Section { title_id: "first-days-soon-title", shape: Shape::List, paragraph_ids: &["first-days-soon-hand"] },
    Section {
        title_id: "first-days-visit-title",
        shape: Shape::Paragraphs,
        paragraph_ids: &["first-days-visit-when", "first-days-visit-bring"],
    },
];

/// The section of a title.
pub fn section(title_id: &str) -> Option<&'static Section> {
    SECTIONS.iter().find(|section| section.title_id == title_id)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Language, Messages, grade};

    fn everything() -> Vec<(&'static str, Argument<'static>)> {
        let mut told = arguments();
        told.extend([
            ("side", "left".into()),
            ("operation_date", "March 2, 2026".into()),
            ("visit_from", "March 12".into()),
            ("visit_until", "March 16".into()),
            ("dry_until", "March 12".into()),
            ("day_number", "555-0100".into()),
            ("night_number", "555-0101".into()),
        ]);
        told
    }

    #[test]
    fn every_paragraph_exists_and_is_told_all_it_needs() {
        let told = everything();
        for name in TOLD {
            assert!(told.iter().any(|(known, _)| known == name), "{name}");
        }
        for messages in Language::WORDS.iter().map(|(_, language)| Messages::of(*language)) {
            for id in SECTIONS.iter().flat_map(|section| section.paragraph_ids.iter().chain([&section.title_id])) {
                assert!(messages.has(id), "{id}");
                let text = messages.text(id, &told);
                assert!(!text.contains(['{', '}', '\u{2039}']), "{id}: {text}");
            }
        }
    }

    #[test]
    fn every_paragraph_is_at_or_under_grade_six() {
        let (messages, told) = (Messages::english(), everything());
        let greatest = ids::READING_GRADE_GREATEST.number() as f32;
        let hard: Vec<String> = SECTIONS
            .iter()
            .flat_map(|section| section.paragraph_ids)
            .map(|id| messages.text(id, &told))
            .filter(|text| grade(text) > greatest)
            .map(|text| format!("{:.1} {text}", grade(&text)))
            .collect();
        assert!(hard.is_empty(), "{hard:#?}");
    }

    #[test]
    fn the_side_is_a_word_in_capitals_and_never_guessed() {
        let of = |language, id: &str, side: &'static str| Messages::of(language).text(id, &[("side", side.into())]);
        for (side, english, spanish) in [
            ("left", "LEFT arm", "Brazo IZQUIERDO"),
            ("right", "RIGHT arm", "Brazo DERECHO"),
            ("", "(side not known) arm", "Brazo (lado no conocido)"),
        ] {
            assert_eq!(of(Language::English, "first-days-arm", side), english);
            assert_eq!(of(Language::Spanish, "first-days-arm", side), spanish);
        }
        for (language, expected) in [
            (Language::English, "Do not sleep on your operated side."),
            (Language::Spanish, "No duerma sobre el lado operado."),
        ] {
            let unknown = of(language, "first-days-sleep-how", "");
            assert!(unknown.ends_with(expected), "{unknown}");
        }
    }

    #[test]
    fn fever_in_both_scales() {
        // 38.0 °C is 100.4 °F, as the source of the value prints it.
        assert_eq!(fever(38.0)[1].1, "100.4".into());
    }
}
