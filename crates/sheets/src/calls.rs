//! Whom to call, and when: the fixed texts, with the surgeon's own fever limit.

use prescription::Settings;
use wording::first_days::{arguments, fever, section};
use wording::{Argument, Language};

use crate::document::{Block, Fact, Tone};
use crate::household;
use crate::texts::Texts;

/// A handout without both numbers is not written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoNumber {
    /// Neither is set.
    Both,
    /// The day number is missing.
    Day,
    /// The night number is missing.
    Night,
}

/// The numbers to call by day and by night.
#[derive(Debug, Clone, Copy)]
pub struct Numbers<'s> {
    /// By day.
    pub day: &'s str,
    /// By night.
    pub night: &'s str,
}

impl<'s> Numbers<'s> {
    /// Both numbers of the settings.
    ///
    /// # Errors
    /// Which of them is missing.
    pub fn of(settings: &'s Settings) -> Result<Self, NoNumber> {
        match (settings.contact.day.as_deref(), settings.contact.night.as_deref()) {
            (Some(day), Some(night)) => Ok(Self { day, night }),
            (None, None) => Err(NoNumber::Both),
            (None, Some(_)) => Err(NoNumber::Day),
            (Some(_), None) => Err(NoNumber::Night),
        }
    }
}

/// The numbers that the fixed texts take from the table of evidence, and the surgeon's fever limit.
pub(crate) fn told(settings: &Settings, language: Language) -> Vec<(&'static str, Argument<'static>)> {
    let mut told = arguments();
    let fever = fever(settings.paper.fever.celsius()).map(|(name, value)| match value {
        Argument::Text(text) => (name, household::decimal(&text, language).into()),
        number => (name, number),
    });
    told.extend(fever);
    told
}

/// The two numbers, at the foot of every page: nobody has to look for the right one at night.
pub(crate) fn foot(texts: &Texts<'_>, numbers: Numbers<'_>) -> String {
    texts.with("handout-foot", &[("day", numbers.day.into()), ("night", numbers.night.into())])
}

/// The two numbers, large.
pub(crate) fn phones(texts: &Texts<'_>, numbers: Numbers<'_>) -> Block {
    Block::Phones {
        numbers: vec![
            Fact { label: texts.get("first-days-phone-day"), text: numbers.day.to_owned() },
            Fact { label: texts.get("first-days-phone-night"), text: numbers.night.to_owned() },
        ],
    }
}

/// Whether the nerve block may still work.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Numbness {
    /// In the first days it is expected for some hours.
    Expected,
    /// Later it never is.
    Unexpected,
}

/// What is asked in the first days alone, while the block may still work.
const OF_FIRST_DAYS: &[&str] = &["first-days-today-fever-again", "first-days-today-numb"];

/// The frames of "call now", "call the same day" and "call soon": the fixed texts of the first days, as long as they
/// hold.
pub(crate) fn frames(texts: &Texts<'_>, settings: &Settings, numbness: Numbness) -> Vec<Block> {
    let told = told(settings, texts.messages.language());
    let frame = |tone: Tone, title_id: &str| -> Block {
        let ids = section(title_id).map_or(&[][..], |section| section.paragraph_ids);
        let later = numbness == Numbness::Unexpected;
        let held = ids.iter().filter(|id| !(later && OF_FIRST_DAYS.contains(id)));
        let mut items: Vec<String> = held.map(|id| texts.with(id, &told)).collect();
        if later && ids.contains(&"first-days-today-numb") {
            items.push(texts.get("handout-today-numb"));
        }
        Block::Callout { tone, title: texts.with(title_id, &told), text: Vec::new(), items }
    };
    vec![
        frame(Tone::Danger, "first-days-emergency-title"),
        frame(Tone::Call, "first-days-today-title"),
        frame(Tone::Call, "first-days-soon-title"),
    ]
}
