//! Short ways to the texts of a sheet.

use body::Side;
use jiff::civil::Date;
use wording::{Argument, Language, Messages, dates};

use crate::desk::Desk;
use crate::document::{self, Block, Fact, Field, ListMark, Tone};

/// The texts of one reader, with what every message of a sheet may ask for.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Texts<'m> {
    pub messages: &'m Messages,
    pub side: Side,
}

static ENGLISH: std::sync::LazyLock<Messages> = std::sync::LazyLock::new(Messages::english);

impl<'m> Texts<'m> {
    /// The texts of the desk's reader.
    pub const fn of_patient(desk: &Desk<'m>) -> Self {
        Self { messages: desk.messages, side: desk.prescription.side }
    }

    /// Clinicians' texts: English, whatever the patient reads.
    pub fn of_clinicians(desk: &Desk<'m>) -> Self {
        let messages = if desk.messages.language() == Language::English { desk.messages } else { &*ENGLISH };
        Self { messages, side: desk.prescription.side }
    }
}

impl Texts<'_> {
    /// A message without arguments of its own.
    pub fn get(&self, id: &str) -> String {
        self.with(id, &[])
    }

    /// A message with arguments; the side is always told.
    pub fn with(&self, id: &str, told: &[(&str, Argument<'_>)]) -> String {
        let mut all = vec![("side", Argument::from(self.side.name()))];
        all.extend(told.iter().cloned());
        self.messages.text(id, &all)
    }

    /// A date as it stands in a sentence.
    pub fn date(&self, date: Date) -> String {
        dates::with_weekday(date, self.messages.language())
    }

    /// The operated side as a word.
    pub fn side_word(&self) -> document::Side {
        document::Side { side: self.side.name(), shown: self.get("handout-side") }
    }

    pub fn heading(&self, level: u8, id: &str) -> Block {
        Block::Heading { level, text: self.get(id) }
    }

    pub fn paragraph(&self, tone: Tone, id: &str, told: &[(&str, Argument<'_>)]) -> Block {
        Block::Paragraph { tone, text: self.with(id, told) }
    }

    /// A field to fill in by hand.
    pub fn blank(&self, id: &str) -> Field {
        Field { label: self.get(id), value: String::new(), hint: String::new() }
    }

    /// A label and its text.
    pub fn fact(&self, id: &str, text: String) -> Fact {
        Fact { label: self.get(id), text }
    }
}

/// A list with a sign before each point; none where there is no point.
pub(crate) fn list(mark: ListMark, items: Vec<String>) -> Option<Block> {
    (!items.is_empty()).then_some(Block::List { mark, items })
}
