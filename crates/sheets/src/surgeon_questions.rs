//! What the surgeon is asked, and what an answer could change.

use plan::{Prescription, Question};
use wording::Messages;

use crate::document::{Block, ListMark, Tone};
use crate::letter_words::in_trade_words;
use crate::texts::Texts;

/// What an answer could change, in a sentence; empty for a question that blocks signing.
///
/// # Method
/// When the arm may be moved stands for the rest, else the weightiest change.
pub fn question_effect(question: &Question, messages: &Messages) -> String {
    let told_first = ["shoulder/forward elevation/any/passive", "elbow/flexion/any/active"];
    let most = told_first
        .iter()
        .find_map(|key| question.changes.iter().find(|change| change.key == *key))
        .or_else(|| question.changes.first());
    let Some(most) = most else { return String::new() };
    let many = u16::try_from(question.changes.len()).unwrap_or(u16::MAX);
    let key = body::Key::parse(&most.key).map_or_else(|_| format!("the {}", most.key), plan::words::of_key);
    let mut told = vec![
        ("count", many.into()),
        ("key", key.into()),
        ("from", most.from_day.count().to_string().into()),
        ("until", most.until_day.count().saturating_sub(1).to_string().into()),
    ];
    // Between "no" and "free" lie as many degrees as a circle's half: nobody counts those.
    let from_no_to_free = quantity::Degrees::whole(180); // not medical: how a change counts "free"
    match most.degrees {
        Some(degrees) if degrees == from_no_to_free => messages.text("surgeon-question-effect-open", &told),
        Some(degrees) => {
            told.push(("degrees", degrees.to_string().into()));
            messages.text("surgeon-question-effect-degrees", &told)
        }
        None => messages.text("surgeon-question-effect", &told),
    }
}

/// What the questions amount to: over how many completions of the record the plan was compared.
pub fn completions(limiting: usize, completions: u64, messages: &Messages) -> String {
    let count = ("count", completions.to_string().into());
    match (limiting, completions) {
        (0, 1) => messages.text("surgeon-questions-none", &[]),
        (0, _) => messages.text("surgeon-questions-same", &[count]),
        _ => messages.text("surgeon-questions-compared", &[count]),
    }
}

/// Whether nothing may be signed before it is answered.
pub(crate) fn is_blocking(question: &Question) -> bool {
    question.changes.is_empty()
}

/// What has to be answered before anything is signed.
pub(crate) fn blocking(say: &Texts<'_>, of: &Prescription) -> Option<Block> {
    let items: Vec<String> = of
        .questions
        .iter()
        .filter(|question| is_blocking(question))
        .map(|question| in_trade_words(&format!("{} ({})", question.text, question.path)))
        .collect();
    (!items.is_empty()).then(|| Block::Callout {
        tone: Tone::Stop,
        title: say.get("surgeon-blocked-title"),
        text: Vec::new(),
        items,
    })
}

/// Questions whose answer could change a limit, with what it could change.
pub(crate) fn limiting(say: &Texts<'_>, of: &Prescription) -> Vec<Block> {
    let limiting: Vec<&Question> = of.questions.iter().filter(|question| !is_blocking(question)).collect();
    let of_question = |question: &&Question| {
        let effect = question_effect(question, say.messages);
        in_trade_words(&format!("{} ({}): {effect}", question.text, question.path))
    };
    let items: Vec<String> = limiting.iter().map(of_question).collect();
    let summary = completions(limiting.len(), of.completions, say.messages);
    let mut blocks = vec![say.heading(2, "surgeon-questions-title")];
    if !items.is_empty() {
        blocks.push(Block::List { mark: ListMark::Dot, items });
    }
    blocks.push(Block::Paragraph { tone: Tone::Faint, text: summary });
    blocks
}
