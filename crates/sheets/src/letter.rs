//! The letter to the treating therapist: one page to work from, a strip to send back, and the reasons.

use plan::{Prescription, Question};

use crate::desk::Desk;
use crate::document::{Block, Document, ListMark, Tone};
use crate::letter_done;
use crate::letter_orders::{gates, order, permissions};
use crate::letter_strip::strip;
use crate::letter_text::{Kind, Say, Validity, blank, fact, filled, head, page};
use crate::limits_table::LimitsTable;
use crate::limits_words::on;
use crate::reasons_list::ReasonsList;
use crate::sling_words;

const KIND: Kind = Kind {
    title: "letter-title",
    running: "letter-running",
    running_with_id: "letter-running-with-id",
    side: "letter-side",
};

/// So many open questions stand on the first page.
const MOST_QUESTIONS: usize = 2;

/// The letter to the therapist.
///
/// # Method
/// Nothing is decided here: limits, dates, gates and questions are those of the prescription. The
/// letter is valid until the visit at which the next stage is decided, because what it says is open
/// may be other after that visit. A test that the limits of that time do not allow has no line on the strip.
pub fn letter(desk: &Desk<'_>) -> Document {
    let (say, of) = (Say::at(desk), desk.prescription);
    let mut reasons = ReasonsList::default();
    let mut document = page(desk, &KIND);
    let mut blocks = vec![head(desk, "letter-title"), who(desk)];
    blocks.push(Block::Facts { rows: done(desk, &mut reasons) });
    let validity = Validity::of(of, desk.issued_on).sentence(&say);
    blocks.push(Block::Callout { tone: Tone::Strong, title: validity, text: Vec::new(), items: Vec::new() });
    blocks.push(say.heading(2, "letter-box-title"));
    blocks.push(say.paragraph(Tone::Plain, "letter-box-rule", &[]));
    blocks.extend(LimitsTable::of(of).blocks(of, &say.get("letter-box-alt"), &mut reasons));
    blocks.push(Block::Facts { rows: permissions(desk) });
    blocks.push(say.heading(2, "letter-gates-title"));
    blocks.push(Block::Facts { rows: gates(desk) });
    blocks.extend(questions(&say, of));
    blocks.push(order(&desk.settings.therapy));
    blocks.push(signature(&say, of));
    blocks.push(strip(desk));
    for stage in &of.stages {
        reasons.refer(stage.reasons.iter().chain(stage.criteria.iter().flat_map(|criterion| &criterion.reasons)));
    }
    blocks.push(say.heading(2, "letter-reasons-title"));
    blocks.push(say.paragraph(Tone::Faint, "letter-reasons-text", &[]));
    blocks.extend(every_question(of));
    blocks.push(reasons.block(say.get("letter-reasons-alt")));
    document.blocks = blocks;
    document
}

/// Whom it is about: two identifiers are written in by hand.
fn who(desk: &Desk<'_>) -> Block {
    let (say, of) = (Say::at(desk), desk.prescription);
    Block::Fields {
        columns: 3, // not medical: side by side
        fields: vec![
            blank("Patient's name"),
            blank("Date of birth"),
            filled("Practice's label", of.patient.clone().unwrap_or_default()),
            filled("Operated (day 0)", crate::limits_words::short(of.operated_on)),
            filled("Side", say.get("letter-side")),
            filled("Issued", on(desk.issued_on, day_of(desk))),
        ],
    }
}

fn day_of(desk: &Desk<'_>) -> quantity::PostoperativeDay {
    quantity::PostoperativeDay::of(desk.issued_on, desk.prescription.operated_on)
        .unwrap_or(quantity::PostoperativeDay::new(0))
}

fn done(desk: &Desk<'_>, reasons: &mut ReasonsList) -> Vec<crate::Fact> {
    let of = desk.prescription;
    let mut rows = letter_done::facts(desk.record);
    let why = reasons.refer(&of.protocol.why);
    let capped = match &of.protocol.capped_by[..] {
        [] => String::new(),
        by => format!(", every limit, start and the sling capped by {}", by.join(", ")),
    };
    rows.push(fact("Protocol", format!("{}, edition {}{capped} (why: {why})", of.protocol.id, of.protocol.edition)));
    let why = reasons.refer(of.spans.iter().flat_map(|span| &span.sling.reasons));
    rows.push(fact("Sling", format!("{} (why: {why})", sling_words::line(of))));
    for line in of.loosened.iter().take(MOST_QUESTIONS) {
        rows.push(fact("Loosened by the surgeon", line.clone()));
    }
    for line in &of.moved {
        rows.push(fact("Moved", line.clone()));
    }
    rows
}

/// The first questions, in short.
fn questions(say: &Say<'_>, of: &Prescription) -> Vec<Block> {
    if of.questions.is_empty() {
        return Vec::new();
    }
    let mut items: Vec<String> = of.questions.iter().take(MOST_QUESTIONS).map(short_question).collect();
    let more = of.questions.len().saturating_sub(MOST_QUESTIONS);
    if more > 0 {
        items.push(say.with("letter-questions-more", &[("count", (more as f64).into())]));
    }
    vec![say.heading(2, "letter-questions-title"), Block::List { mark: ListMark::Dot, items }]
}

/// All questions in full, beside the reasons.
fn every_question(of: &Prescription) -> Vec<Block> {
    if of.questions.is_empty() {
        return Vec::new();
    }
    let items = of.questions.iter().map(|question| format!("{}{} ({})", mark(question), question.text, question.path));
    vec![Block::List { mark: ListMark::Dot, items: items.collect() }]
}

/// The question itself, without what was found and what is offered.
fn short_question(question: &Question) -> String {
    let end = question.text.find(" (found: ").or_else(|| question.text.find("; ")).unwrap_or(question.text.len());
    format!("{}{}", mark(question), &question.text[..end])
}

const fn mark(question: &Question) -> &'static str {
    if question.changes.is_empty() { "before signing: " } else { "" }
}

fn signature(say: &Say<'_>, of: &Prescription) -> Block {
    let is_blocked = of.questions.iter().any(|question| question.changes.is_empty());
    Block::Signature {
        text: say.get(if is_blocked { "letter-sign-blocked" } else { "letter-sign" }),
        labels: vec!["Surgeon's signature".into(), "Name".into(), "Date".into()],
    }
}
