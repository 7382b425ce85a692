//! The sheet for going home, from date and side alone: the strictest common denominator, never a prescription.

use body::Side;
use exercise::Catalogue;
use jiff::civil::Date;
use prescription::Settings;
use quantity::PostoperativeDay;
use wording::first_days::{SECTIONS, Section, Shape};
use wording::{Argument, Language, Messages, dates};

use crate::calls::{self, NoNumber, Numbers, Numbness};
use crate::document::{Block, Document, ListMark, Reader, Size, Tone};
use crate::pictures;
use crate::texts::Texts;

/// Everything the texts of the first days are told.
pub(crate) fn told(
    operated_on: Date,
    settings: &Settings,
    numbers: Numbers<'_>,
    messages: &Messages,
) -> Vec<(&'static str, Argument<'static>)> {
    let date = |date: Date| Argument::from(dates::with_weekday(date, messages.language()));
    let (from, until) = settings.clinic.window(
        operated_on,
        evidence::ids::WOUND_VISIT_FROM.day(),
        evidence::ids::WOUND_VISIT_UNTIL.day(),
    );
    let mut told = calls::told(settings, messages.language());
    told.extend([
        ("operation_date", date(PostoperativeDay::SURGERY.date(operated_on))),
        ("visit_from", date(from)),
        ("visit_until", date(until)),
        ("dry_until", date(evidence::ids::WOUND_DRY_UNTIL.day().date(operated_on))),
        ("day_number", numbers.day.to_owned().into()),
        ("night_number", numbers.night.to_owned().into()),
    ]);
    told
}

/// A section of the sheet as text, for those who lay it out by themselves.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SectionText {
    /// Its title.
    pub title: String,
    /// How its paragraphs stand.
    pub shape: Shape,
    /// The surgeon's own words, which stand first.
    pub own: Option<String>,
    /// Its paragraphs or points in order.
    pub paragraphs: Vec<String>,
}

impl SectionText {
    fn of(
        section: &Section,
        texts: &Texts<'_>,
        settings: &Settings,
        told: &[(&str, Argument<'_>)],
        left_out: &[&str],
    ) -> Self {
        let is_of_tablets = section.title_id == "first-days-tablets-title";
        let ids = section.paragraph_ids.iter().filter(|id| !left_out.contains(id));
        Self {
            title: texts.with(section.title_id, told),
            shape: section.shape,
            own: is_of_tablets.then(|| tablets(settings, texts.messages)).flatten(),
            paragraphs: ids.map(|id| texts.with(id, told)).collect(),
        }
    }
}

/// Every section of the sheet in order, as text.
///
/// # Errors
/// The number that is missing: no sheet goes out without both.
pub fn first_days_sections(
    operated_on: Date,
    side: Side,
    settings: &Settings,
    messages: &Messages,
) -> Result<Vec<SectionText>, NoNumber> {
    let told = told(operated_on, settings, Numbers::of(settings)?, messages);
    let texts = Texts { messages, side };
    Ok(SECTIONS.iter().map(|section| SectionText::of(section, &texts, settings, &told, &[])).collect())
}

/// The surgeon's own words about tablets, which stand first in their section.
///
/// Where they were not written in the language of the sheet they stand as they were written: nobody here translates a
/// dose. [`is_untranslated`] tells.
fn tablets(settings: &Settings, messages: &Messages) -> Option<String> {
    let paper = &settings.paper;
    let tablets = match messages.language() {
        Language::English => paper.tablets.as_deref(),
        Language::Spanish => paper.tablets_es.as_deref().or(paper.tablets.as_deref()),
    }?;
    Some(messages.text("handout-tablets-own", &[("tablets", tablets.into())]))
}

/// Whether the words about tablets stand on a sheet of this language in another one.
pub fn is_untranslated(settings: &Settings, language: Language) -> bool {
    let paper = &settings.paper;
    language == Language::Spanish && paper.tablets.is_some() && paper.tablets_es.is_none()
}

/// A section of the sheet with its title and paragraphs, but those left out; the surgeon's own words about tablets
/// stand first.
pub(crate) fn section(
    section: &Section,
    texts: &Texts<'_>,
    settings: &Settings,
    catalogue: &Catalogue,
    told: &[(&str, Argument<'_>)],
    left_out: &[&str],
) -> Vec<Block> {
    let text = SectionText::of(section, texts, settings, told, left_out);
    let mut blocks = vec![Block::Heading { level: 2, text: text.title }];
    blocks.extend(text.own.map(|text| Block::Paragraph { tone: Tone::Strong, text }));
    match text.shape {
        Shape::Paragraphs => {
            blocks.extend(text.paragraphs.into_iter().map(|text| Block::Paragraph { tone: Tone::Plain, text }));
        }
        Shape::List => blocks.push(Block::List { mark: ListMark::Dot, items: text.paragraphs }),
    }
    let drawn = DRAWN.iter().find(|(title, _)| *title == section.title_id);
    blocks.extend(
        drawn.and_then(|(_, ids)| pictures::of_care(ids, catalogue, texts.side, settings.paper.look, texts.messages)),
    );
    vec![Block::Together { blocks }]
}

/// The care poses that are drawn beside a section.
const DRAWN: &[(&str, &[&str])] = &[
    ("first-days-sling-title", &["sling-neutral", "sling-internal", "sling-off-hang"]),
    ("first-days-wash-title", &["armpit-lean", "dress-shirt-first"]),
    ("first-days-sleep-title", &["sleep-recline", "sleep-other-side"]),
];

/// What must not be done in the first days.
const BANS: &[&str] =
    &["first-days-rules-shoulder", "first-days-rules-hold", "first-days-rules-lean", "first-days-rules-drive"];

/// Sections that stand in a frame of their own, or at the head.
const FRAMED: &[&str] = &[
    "first-days-title",
    "first-days-call-title",
    "first-days-rules-title",
    "first-days-emergency-title",
    "first-days-today-title",
    "first-days-soon-title",
    "first-days-sleep-title",
    "first-days-visit-title",
];

/// The sheet.
///
/// # Errors
/// The number that is missing: no sheet goes out without both.
pub fn first_days(
    operated_on: Date,
    side: Side,
    settings: &Settings,
    catalogue: &Catalogue,
    messages: &Messages,
) -> Result<Document, NoNumber> {
    let numbers = Numbers::of(settings)?;
    let texts = Texts { messages, side };
    let told = told(operated_on, settings, numbers, messages);
    let mut blocks = vec![
        Block::Head { title: texts.get("first-days-title"), subtitle: texts.with("first-days-surgery", &told) },
        Block::Fields { columns: 2, fields: vec![texts.blank("handout-name"), texts.blank("handout-birth")] },
        texts.paragraph(Tone::Plain, "first-days-until", &told),
        texts.paragraph(Tone::Plain, "first-days-stricter", &told),
    ];
    // What to do stands apart: a cross before "wear your sling" would be read as the opposite.
    blocks.push(texts.paragraph(Tone::Lead, "first-days-rules-sling", &told));
    blocks.push(Block::Callout {
        tone: Tone::Stop,
        title: texts.get("handout-not-title"),
        text: Vec::new(),
        items: BANS.iter().map(|id| texts.with(id, &told)).collect(),
    });
    blocks.push(texts.paragraph(Tone::Plain, "first-days-rules-pain", &told));
    blocks.push(calls::phones(&texts, numbers));
    blocks.push(texts.paragraph(Tone::Strong, "first-days-call-danger", &told));
    for of in ["first-days-sleep-title", "first-days-visit-title"].into_iter().filter_map(wording::first_days::section)
    {
        blocks.extend(section(of, &texts, settings, catalogue, &told, &[]));
    }
    blocks.push(Block::PageBreak);
    blocks.push(texts.heading(2, "handout-call-title"));
    blocks.extend(calls::frames(&texts, settings, Numbness::Expected));
    for of in SECTIONS.iter().filter(|section| !FRAMED.contains(&section.title_id)) {
        blocks.extend(section(of, &texts, settings, catalogue, &told, &[]));
    }
    Ok(Document {
        title: format!("{} – {}", texts.get("first-days-title"), texts.side_word().shown),
        language: messages.language().code(),
        reader: Reader::Patient,
        size: Size::of(settings),
        side: Some(texts.side_word()),
        running_head: texts.get("first-days-title"),
        foot: calls::foot(&texts, numbers),
        page_of: texts.get("handout-page"),
        blocks,
    })
}
