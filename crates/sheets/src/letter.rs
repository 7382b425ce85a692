//! The letter to the treating therapist: one page to work from, a strip to send back, and the reasons.

use plan::{Prescription, Question};

use crate::desk::Desk;
use crate::document::{Block, Cell, Column, Document, Fact, ListMark, Print, Tone};
use crate::letter_orders::permissions;
use crate::letter_strip::strip;
use crate::letter_text::{Kind, Validity, blank, fact, filled, head, page};
use crate::letter_words::in_trade_words;
use crate::limits_columns::Days;
use crate::limits_table::{LimitsTable, is_first, plain};
use crate::limits_words::on;
use crate::reasons_list::ReasonsList;
use crate::texts::Texts;
use crate::{letter_arcs, letter_done, letter_gates, letter_safety, sling_words};

const KIND: Kind = Kind {
    title: "letter-title",
    running: "letter-running",
    running_with_id: "letter-running-with-id",
    side: "letter-side",
};

/// The letter to the therapist.
///
/// # Method
/// Nothing is decided here: limits, dates, gates and questions are those of the prescription. The
/// letter is valid until the visit at which the next stage is decided, because what it says is open
/// may be other after that visit. A test that the limits of that time do not allow has no line on the strip.
pub fn letter(desk: &Desk<'_>) -> Document {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let mut reasons = ReasonsList::default();
    let mut document = page(desk, &KIND);
    let mut blocks = vec![head(desk, "letter-title"), who(desk), done(desk, &say, &mut reasons)];
    let validity = Validity::of(of, desk.issued_on).sentence(&say);
    blocks.push(Block::Callout { tone: Tone::Strong, title: validity, text: Vec::new(), items: Vec::new() });
    // Above the box, so that it stands on the first page however long the box is.
    blocks.push(signature(&say, of));
    blocks.push(letter_safety::call(desk, &say));
    blocks.push(say.heading(2, "letter-box-title"));
    let first = LimitsTable::of(of, Days::Ahead, |key| is_first(of, key));
    blocks.extend(first.blocks(&say.get("letter-box-alt"), &mut reasons));
    blocks.push(say.paragraph(Tone::Faint, "letter-box-legend", &[]));
    blocks.push(permissions(desk));
    blocks.extend(letter_gates::next(&say, of, &mut reasons));
    blocks.extend(questions(&say, of));
    blocks.push(strip(desk));
    blocks.extend(letter_arcs::arcs(desk, &say));
    blocks.extend(letter_gates::all(&say, of, &mut reasons));
    blocks.push(say.heading(2, "letter-rest-title"));
    let rest = LimitsTable::of(of, Days::Ahead, |key| !is_first(of, key));
    blocks.extend(rest.blocks(&say.get("letter-box-alt"), &mut reasons));
    blocks.extend(letter_safety::at_home(desk, &say));
    blocks.extend(every_loosening(&say, of));
    blocks.extend(every_question(&say, of));
    blocks.push(say.heading(2, "letter-reasons-title"));
    blocks.push(say.paragraph(Tone::Faint, "letter-reasons-text", &[]));
    blocks.extend(reasons.blocks(&say));
    document.blocks = blocks;
    document
}

/// Whom it is about: two identifiers are written in by hand.
fn who(desk: &Desk<'_>) -> Block {
    let label = desk.prescription.patient.clone().unwrap_or_default();
    Block::Fields {
        columns: 4, // not medical: side by side
        fields: vec![
            blank("Patient's name"),
            blank("Date of birth"),
            filled("Practice's label", label),
            blank("Authorization no."),
        ],
    }
}

fn day_of(desk: &Desk<'_>) -> quantity::PostoperativeDay {
    quantity::PostoperativeDay::of(desk.issued_on, desk.prescription.operated_on)
        .unwrap_or(quantity::PostoperativeDay::new(0))
}

/// What was done, and what follows from it for the whole time; the first row is the operation.
fn done(desk: &Desk<'_>, say: &Texts<'_>, reasons: &mut ReasonsList) -> Block {
    let of = desk.prescription;
    let mut facts = letter_done::facts(desk.record).into_iter();
    let date = on(of.operated_on, quantity::PostoperativeDay::new(0));
    let columns = match facts.next() {
        Some(first) => {
            vec![Column { title: first.label, share: 0 }, Column { title: format!("{}; {date}", first.text), share: 1 }]
        }
        None => vec![Column { title: String::new(), share: 0 }, Column { title: date, share: 1 }],
    };
    let mut rows: Vec<Fact> = facts.collect();
    let why = reasons.refer(&of.protocol.why);
    let capped = match &of.protocol.capped_by[..] {
        [] => String::new(),
        by => format!(", every limit, start and the sling capped by {}", by.join(", ")),
    };
    let issued = on(desk.issued_on, day_of(desk));
    let (id, edition) = (&of.protocol.id, &of.protocol.edition);
    rows.push(fact("Protocol", format!("{id}, edition {edition}{capped} (why: {why}); letter issued {issued}")));
    let why = reasons.refer(of.spans.iter().flat_map(|span| &span.sling.reasons));
    rows.push(fact("Sling", format!("{} (why: {why})", sling_words::line(of))));
    if let Some(first) = of.loosened.first() {
        let more = of.loosened.len() - 1;
        let text = if more > 0 { format!("{first}; and {more} more on the next pages") } else { first.clone() };
        rows.push(fact("Loosened", in_trade_words(&text)));
    }
    rows.extend(of.moved.iter().map(|line| fact("Moved", line.clone())));
    rows.extend(letter_safety::rows(desk.record, of));
    let rows = rows.into_iter().map(|row| vec![Cell { strong: true, ..plain(row.label) }, plain(row.text)]).collect();
    Block::Table { alt: say.get("letter-done-alt"), print: Print::Smaller, columns, rows }
}

/// How many questions are open; they stand in full on the next pages.
fn questions(say: &Texts<'_>, of: &Prescription) -> Option<Block> {
    let many = |questions: usize| u16::try_from(questions).unwrap_or(u16::MAX);
    let blocking = of.questions.iter().filter(|question| question.changes.is_empty()).count();
    let told = [("count", many(of.questions.len()).into()), ("blocking", many(blocking).into())];
    (!of.questions.is_empty()).then(|| say.paragraph(Tone::Strong, "letter-questions", &told))
}

/// Every loosening of the surgeon's in words, where the first page had no room for all.
fn every_loosening(say: &Texts<'_>, of: &Prescription) -> Vec<Block> {
    if of.loosened.len() < 2 {
        return Vec::new();
    }
    let items = of.loosened.iter().map(|line| in_trade_words(line)).collect();
    vec![say.heading(2, "surgeon-loosened-title"), Block::List { mark: ListMark::Dot, items }]
}

/// All questions in full, beside the reasons.
fn every_question(say: &Texts<'_>, of: &Prescription) -> Vec<Block> {
    if of.questions.is_empty() {
        return Vec::new();
    }
    let items = of
        .questions
        .iter()
        .map(|question| in_trade_words(&format!("{}{} ({})", mark(question), question.text, question.path)));
    vec![say.heading(2, "letter-questions-full-title"), Block::List { mark: ListMark::Dot, items: items.collect() }]
}

const fn mark(question: &Question) -> &'static str {
    if question.changes.is_empty() { "before signing: " } else { "" }
}

fn signature(say: &Texts<'_>, of: &Prescription) -> Block {
    let is_blocked = of.questions.iter().any(|question| question.changes.is_empty());
    Block::Signature {
        // That it is not valid unsigned stands above the box already.
        text: if is_blocked { say.get("letter-sign-blocked") } else { String::new() },
        labels: vec!["Surgeon's signature".into(), "Name".into(), "Date".into()],
    }
}
