//! What a therapist has to have in sight beside the box: when to call, how the words are meant, the other arm.

use operative::{OtherShoulder, Record};
use plan::Prescription;

use crate::desk::Desk;
use crate::document::{Block, Fact, ListMark, Tone};
use crate::letter_text::fact;
use crate::letter_words::in_trade_words;
use crate::limits_words::short;
use crate::surgeon_exercises::dose;
use crate::texts::Texts;

/// Whom to call, and for what; a number that is not set is a line to fill in.
pub(crate) fn call(desk: &Desk<'_>, say: &Texts<'_>) -> Block {
    const TO_FILL_IN: &str = "____________";
    let contact = &desk.settings.contact;
    let number = |number: &Option<String>| number.clone().unwrap_or_else(|| TO_FILL_IN.into());
    let told = [("day", number(&contact.day).into()), ("night", number(&contact.night).into())];
    say.paragraph(Tone::Strong, "letter-call", &told)
}

/// The other arm, and each caution in a row of its own.
pub(crate) fn rows(record: &Record, of: &Prescription) -> Vec<Fact> {
    let mut rows = vec![fact("Other arm", other_arm(record))];
    let titles = std::iter::once("Cautions").chain(std::iter::repeat(""));
    rows.extend(titles.zip(&of.cautions).map(|(title, caution)| fact(title, in_trade_words(caution))));
    rows
}

/// How the other shoulder is, as the record says.
pub(crate) fn other_arm(record: &Record) -> String {
    match record.other_arm.shoulder.map(|shoulder| shoulder.value) {
        Some(OtherShoulder::Operated) => match record.other_arm_operated_on() {
            Some(date) => format!("operated on {}", short(date)),
            None => "operated, date not recorded".into(),
        },
        Some(shoulder) => shoulder.name().into(),
        None => "not recorded, so it is not asked to help".into(),
    }
}

/// What the patient does at home on the day of issue, so that it is known what a substitute stands for.
pub(crate) fn at_home(desk: &Desk<'_>, say: &Texts<'_>) -> Vec<Block> {
    let Some(today) = &desk.prescription.today else { return Vec::new() };
    let title = say.heading(2, "letter-home-title");
    if today.exercises.is_empty() {
        return vec![title, say.paragraph(Tone::Plain, "letter-home-none", &[])];
    }
    let items = today.exercises.iter().map(|line| dose(desk, line)).collect();
    vec![title, Block::List { mark: ListMark::Dot, items }]
}
