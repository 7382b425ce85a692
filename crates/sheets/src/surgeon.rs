//! The surgeon's page: everything that is issued, with the reason of every line, above what is signed.

use plan::Prescription;

use crate::desk::Desk;
use crate::document::{Block, Document, ListMark, Tone};
use crate::letter_done;
use crate::letter_text::{Kind, fact, filled, head, page};
use crate::letter_words::{in_trade_words, of_path};
use crate::limits_columns::Days;
use crate::limits_table::LimitsTable;
use crate::limits_words::{on, short};
use crate::reasons_list::ReasonsList;
use crate::texts::Texts;
use crate::{
    sling_words, surgeon_evidence, surgeon_exercises, surgeon_line, surgeon_lists, surgeon_questions, surgeon_record,
    surgeon_settings,
};

const KIND: Kind = Kind {
    title: "surgeon-title",
    running: "surgeon-running",
    running_with_id: "surgeon-running-with-id",
    side: "letter-side",
};

/// The surgeon's page.
///
/// # Units and shape
/// `sha256` is the digest of the written `prescription.json` in hexadecimal digits; it is what the
/// signature stands for.
pub fn surgeon_page(desk: &Desk<'_>, sha256: &str) -> Document {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let mut reasons = ReasonsList::default();
    let mut document = page(desk, &KIND);
    let mut blocks = vec![head(desk, "surgeon-title"), who(desk)];
    let record = letter_done::facts(desk.record).into_iter().chain(surgeon_record::facts(desk.record));
    blocks.push(Block::Facts { rows: record.collect() });
    blocks.extend(surgeon_questions::blocking(&say, of));
    blocks.push(say.heading(2, "surgeon-why-title"));
    blocks.extend(why(&say, of, &mut reasons));
    blocks.extend(loosened(&say, of));
    blocks.extend(listed(&say, "surgeon-moved-title", of.moved.clone()));
    blocks.push(say.heading(2, "surgeon-settings-title"));
    blocks.push(match surgeon_settings::differences(desk.settings) {
        none if none.is_empty() => say.paragraph(Tone::Plain, "surgeon-settings-none", &[]),
        items => Block::List { mark: ListMark::Dot, items },
    });
    blocks.extend(surgeon_questions::limiting(&say, of));
    blocks.extend(listed(&say, "surgeon-cautions-title", of.cautions.clone()));
    blocks.push(say.heading(2, "surgeon-line-title"));
    blocks.push(surgeon_line::recovery_line(&say, desk));
    blocks.push(say.heading(2, "surgeon-sling-title"));
    let sling = reasons.refer(of.spans.iter().flat_map(|span| &span.sling.reasons));
    blocks.push(Block::Paragraph { tone: Tone::Plain, text: format!("{} (why: {sling})", sling_words::line(of)) });
    blocks.push(say.heading(2, "surgeon-box-title"));
    let table = LimitsTable::of(of, Days::All, |_| true);
    blocks.extend(table.blocks(&say.get("letter-box-alt"), &mut reasons));
    blocks.push(say.paragraph(Tone::Faint, "letter-box-legend", &[]));
    blocks.push(say.heading(2, "surgeon-gates-title"));
    blocks.push(say.paragraph(Tone::Faint, "surgeon-gates-text", &[]));
    blocks.push(surgeon_lists::gates(desk, &mut reasons));
    blocks.push(say.heading(2, "surgeon-visits-title"));
    if desk.settings.clinic.days.is_empty() {
        blocks.push(say.paragraph(Tone::Faint, "surgeon-visits-no-days", &[]));
    }
    blocks.push(surgeon_lists::visits(&say, of));
    if let Some(returns) = surgeon_lists::returns(desk, &mut reasons) {
        blocks.extend([say.heading(2, "surgeon-returns-title"), returns]);
    }
    blocks.push(say.heading(2, "surgeon-exercises-title"));
    blocks.push(surgeon_exercises::over_time(desk, &mut reasons));
    if let Some(left_out) = surgeon_exercises::left_out(desk, &mut reasons) {
        blocks.extend([say.heading(2, "surgeon-left-out-title"), left_out]);
    }
    if let Some(goals) = surgeon_lists::goals(desk, &mut reasons) {
        blocks.extend([say.heading(2, "surgeon-goals-title"), say.paragraph(Tone::Faint, "surgeon-goals-text", &[])]);
        blocks.push(goals);
    }
    blocks.extend(signature(desk, &say, sha256));
    blocks.push(say.heading(2, "surgeon-reasons-title"));
    blocks.push(say.paragraph(Tone::Faint, "surgeon-reasons-text", &[]));
    blocks.extend(reasons.blocks(&say));
    document.blocks = blocks;
    document
}

fn who(desk: &Desk<'_>) -> Block {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let capped = match &of.protocol.capped_by[..] {
        [] => String::new(),
        by => format!(", capped by {}", by.join(", ")),
    };
    Block::Fields {
        columns: 3, // not medical: side by side
        fields: vec![
            filled("Practice's label", of.patient.clone().unwrap_or_default()),
            filled("Side", say.get("letter-side")),
            filled("Operated (day 0)", short(of.operated_on)),
            filled("Protocol", format!("{}{capped}", of.protocol.id)),
            filled("Edition", format!("{}, evidence {}", of.protocol.edition, evidence::EDITION)),
            filled("Issued", short(desk.issued_on)),
        ],
    }
}

fn why(say: &Texts<'_>, of: &Prescription, reasons: &mut ReasonsList) -> Vec<Block> {
    let mut items: Vec<String> =
        of.protocol.why.iter().map(|reason| format!("{} (why: {})", reason.text, reasons.number(reason))).collect();
    for index in &of.indices {
        let told = [
            ("of", u16::from(index.of).into()),
            ("low", u16::from(index.low).into()),
            ("high", u16::from(index.high).into()),
            ("score", u16::from(index.score.unwrap_or(index.low)).into()),
            ("meaning", index.meaning.as_str().into()),
            ("missing", index.missing.iter().map(|path| of_path(path)).collect::<Vec<_>>().join(", ").into()),
            ("evidence", reasons.refer_entries(&index.evidence).into()),
        ];
        items.push(say.with(if index.score.is_some() { "surgeon-index-score" } else { "surgeon-index-range" }, &told));
    }
    vec![Block::List { mark: ListMark::Dot, items }]
}

/// Loosenings: printed wherever the plan is.
fn loosened(say: &Texts<'_>, of: &Prescription) -> Vec<Block> {
    let mut items: Vec<String> = of
        .loosened
        .iter()
        .map(|line| {
            if of.outside_the_proof.contains(line) {
                say.with("surgeon-outside", &[("line", line.as_str().into())])
            } else {
                line.clone()
            }
        })
        .collect();
    let beside = of.outside_the_proof.iter().filter(|line| !of.loosened.contains(line));
    items.extend(beside.map(|line| say.with("surgeon-outside", &[("line", line.as_str().into())])));
    listed(say, "surgeon-loosened-title", items)
}

/// A heading and its points; neither where there is no point.
fn listed(say: &Texts<'_>, title: &str, items: Vec<String>) -> Vec<Block> {
    let items: Vec<String> = items.iter().map(|item| in_trade_words(item)).collect();
    if items.is_empty() {
        return Vec::new();
    }
    vec![say.heading(2, title), Block::List { mark: ListMark::Dot, items }]
}

/// What is taken on without a source, and the signature.
fn signature(desk: &Desk<'_>, say: &Texts<'_>, sha256: &str) -> Vec<Block> {
    let of = desk.prescription;
    let mut blocks = vec![say.heading(2, "surgeon-marked-title")];
    blocks.extend(surgeon_evidence::blocks(desk, say));
    let mut signed = vec![say.heading(2, "surgeon-signature-title")];
    let opened: Vec<String> = of
        .stages
        .iter()
        .filter_map(|stage| match stage.closes_again {
            _ if stage.opened => Some(format!("{} from {}", stage.title, on(stage.from, stage.from_day))),
            Some((day, date)) => Some(format!("{} up to the go-back on {}", stage.title, on(date, day))),
            None => None,
        })
        .collect();
    signed.push(Block::Facts { rows: vec![fact("Opened", opened.join("; ")), fact("SHA-256", in_groups(sha256))] });
    if of.questions.iter().any(surgeon_questions::is_blocking) {
        signed.push(say.paragraph(Tone::Stop, "surgeon-blocked", &[]));
    }
    let told = [("side", say.get("letter-side").into())];
    signed.push(Block::Signature {
        text: say.with("surgeon-sign", &told),
        labels: vec!["Signature".into(), "Name".into(), "Date".into()],
    });
    blocks.push(Block::Together { blocks: signed });
    blocks
}

/// Groups of eight, so that two can be compared by eye.
fn in_groups(digest: &str) -> String {
    const GROUP: usize = 8; // not medical: characters
    let signs: Vec<char> = digest.chars().collect();
    signs.chunks(GROUP).map(|group| group.iter().collect::<String>()).collect::<Vec<_>>().join(" ")
}
