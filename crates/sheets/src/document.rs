//! A sheet as blocks of text, one under the other.

use serde::Serialize;

/// One sheet or booklet.
///
/// Every text is plain text: it is printed as it stands, whatever signs are in it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Document {
    /// The title of the file and of the first page.
    pub title: String,
    /// The language of its texts, such as `en`.
    pub language: &'static str,
    /// Who reads it: patients get large print.
    pub reader: Reader,
    /// The size of the paper.
    pub size: Size,
    /// The operated side, told on every page; none where a sheet is for no side.
    pub side: Option<Side>,
    /// The line at the head of every page after the first.
    pub running_head: String,
    /// The small print at the foot of every page.
    pub foot: String,
    /// "Page {page} of {pages}": the two words in braces are replaced where it is laid out.
    pub page_of: String,
    /// What stands on it.
    pub blocks: Vec<Block>,
}

/// Who reads a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Reader {
    /// A patient: large print, much air.
    Patient,
    /// A clinician: a page holds much.
    Clinician,
}

/// How large something is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Print {
    /// The size of the sheet.
    Usual,
    /// Smaller: sources, footnotes.
    Smaller,
}

/// The size of the paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Size {
    /// 210 by 297 mm.
    #[default]
    A4,
    /// 8.5 by 11 inches.
    Letter,
}

impl Size {
    /// What a practice prints on.
    pub const fn of(settings: &prescription::Settings) -> Self {
        match settings.paper.size {
            prescription::PaperSize::A4 => Self::A4,
            prescription::PaperSize::Letter => Self::Letter,
        }
    }
}

/// The operated side, as a word for the reader.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Side {
    /// `left` or `right`.
    pub side: &'static str,
    /// The word in capitals, such as "RIGHT arm".
    pub shown: String,
}

/// How loud a text is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tone {
    /// As the rest.
    Plain,
    /// What has to be seen first.
    Strong,
    /// A remark.
    Faint,
    /// An opening sentence, larger.
    Lead,
    /// Danger to life: the emergency number.
    Danger,
    /// Call the practice.
    Call,
    /// What must not be done.
    Stop,
}

/// What stands before each point of a list; a drawn sign beside a word, never a color alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ListMark {
    /// A dot.
    Dot,
    /// 1, 2, 3.
    Number,
    /// A check: may, do.
    Do,
    /// A cross: don't.
    Dont,
    /// An empty box to tick.
    Box,
}

/// One part of a sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Block {
    /// The head of the first page: what it is, for which side.
    Head {
        /// Large.
        title: String,
        /// Under it; may be empty.
        subtitle: String,
    },
    /// A heading; 1 is a part of the sheet, 2 a section, 3 a paragraph's title.
    Heading {
        /// 1, 2 or 3.
        level: u8,
        /// The text.
        text: String,
    },
    /// A paragraph.
    Paragraph {
        /// How loud.
        tone: Tone,
        /// The text.
        text: String,
    },
    /// Points.
    List {
        /// The sign before each.
        mark: ListMark,
        /// The points.
        items: Vec<String>,
    },
    /// Short points side by side, row by row: what has to wait.
    Brief {
        /// The sign before each.
        mark: ListMark,
        /// The points.
        items: Vec<String>,
    },
    /// A frame that is seen first: red flags, whom to call, the one line about what comes next.
    Callout {
        /// Danger, call, stop or strong.
        tone: Tone,
        /// Its title.
        title: String,
        /// Sentences above the points; may be empty.
        text: Vec<String>,
        /// Points; may be empty.
        items: Vec<String>,
    },
    /// Lines to fill in by hand, or filled in.
    Fields {
        /// How many stand side by side.
        columns: u8,
        /// The fields.
        fields: Vec<Field>,
    },
    /// A label and its text, row by row.
    Facts {
        /// The rows.
        rows: Vec<Fact>,
    },
    /// The numbers to call, large.
    Phones {
        /// The label and the number, in order.
        numbers: Vec<Fact>,
    },
    /// The recovery line: weeks from surgery, the sling as a bar, the stages as spans, a day as a mark.
    RecoveryLine {
        /// What it shows, in words, for those who can't see it.
        alt: String,
        /// The word before the numbers of weeks.
        week: String,
        /// The word before the bar of the sling.
        sling_word: String,
        /// The first day after the line.
        until_day: u16,
        /// The sling.
        sling: Vec<SlingRun>,
        /// The stages; empty on a sheet that shows the sling alone.
        stages: Vec<StageRun>,
        /// Dates written under the line: the day and its words.
        dates: Vec<(u16, String)>,
        /// The day that is marked, with its word.
        mark: Option<(u16, String)>,
    },
    /// Exercises, each a band across the page.
    Bands {
        /// The exercises in order.
        bands: Vec<Band>,
    },
    /// Small drawings side by side, each with its words under it.
    Drawings {
        /// The drawings in order.
        drawings: Vec<Captioned>,
    },
    /// A table.
    Table {
        /// What it holds, in words.
        alt: String,
        /// How large it is printed.
        print: Print,
        /// Its columns with their titles.
        columns: Vec<Column>,
        /// Its rows; the spans of the cells of a row add up to the columns.
        rows: Vec<Vec<Cell>>,
    },
    /// A sheet to tick: a row for each exercise, a column for each day.
    Ticks {
        /// What it is, in words.
        alt: String,
        /// The title of the first column.
        corner: String,
        /// The heads of the other columns.
        days: Vec<String>,
        /// The rows.
        rows: Vec<TickRow>,
    },
    /// A strip to cut off and send back.
    Strip {
        /// Its title.
        title: String,
        /// What to do with it.
        text: String,
        /// The fields to fill in, with unit or hint in the value.
        fields: Vec<Field>,
    },
    /// Lines to sign on.
    Signature {
        /// What is signed, in a sentence; may be empty.
        text: String,
        /// The label under each line.
        labels: Vec<String>,
    },
    /// Blocks that stay on one page where they fit on one.
    Together {
        /// What stays together.
        blocks: Vec<Block>,
    },
    /// A new page starts here.
    PageBreak,
}

/// A line to fill in, or filled in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Field {
    /// What belongs there.
    pub label: String,
    /// What is printed there; empty to be filled in by hand.
    pub value: String,
    /// A unit or hint after the line; may be empty.
    pub hint: String,
}

/// A label and its text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Fact {
    /// The label.
    pub label: String,
    /// The text.
    pub text: String,
}

/// A run of days with one way of wearing the sling.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SlingRun {
    /// First day.
    pub from_day: u16,
    /// First day after.
    pub until_day: u16,
    /// `always`, `weaning` or `none`.
    pub wear: &'static str,
    /// The word written on the bar.
    pub shown: String,
}

/// A stage on the recovery line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct StageRun {
    /// First day.
    pub from_day: u16,
    /// First day after.
    pub until_day: u16,
    /// Its name.
    pub shown: String,
    /// Whether the surgeon has opened it.
    pub opened: bool,
}

/// An exercise as a band across the page.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Band {
    /// Its id in the catalogue; the drawing is found by it.
    pub id: String,
    /// Its title.
    pub title: String,
    /// What it is good for, in a sentence; may be empty.
    pub purpose: String,
    /// From when until when, where that is not the whole stage; may be empty.
    pub dates: String,
    /// That it is known already, and where it stands in full; empty where it stands here in full.
    pub again: String,
    /// How to start: the word and the sentence; none where it stands in full elsewhere.
    pub start: Option<Fact>,
    /// Where it ends: the word and the sentence.
    pub end: Option<Fact>,
    /// The steps in order.
    pub steps: Vec<String>,
    /// How often, as a sentence.
    pub dose: String,
    /// What to look out for: the word, and the points.
    pub mistakes_title: String,
    /// Common mistakes; may be empty.
    pub mistakes: Vec<String>,
    /// When to stop: the word and the sentence.
    pub stop: Fact,
    /// The drawing; none where the exercise stands in full elsewhere.
    pub picture: Option<Drawing>,
}

/// A drawing and the words under it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Captioned {
    /// The words.
    pub caption: String,
    /// The drawing.
    pub drawing: Drawing,
}

/// A drawing in a document.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Drawing {
    /// The SVG.
    pub svg: String,
    /// Its width in millimeters.
    pub width_mm: f64,
    /// Its height in millimeters.
    pub height_mm: f64,
    /// What it shows, in words.
    pub alt: String,
}

/// A column of a table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Column {
    /// Its title; lines are parted by `\n`.
    pub title: String,
    /// Its width: 0 as wide as its text, else a share of what is left.
    pub share: u8,
}

/// A cell of a table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Cell {
    /// The text; lines are parted by `\n`.
    pub text: String,
    /// How many columns it spans, at least 1.
    pub span: u8,
    /// How dark its ground is; the text says the same.
    pub shade: Shade,
    /// Whether it is printed strong.
    pub strong: bool,
}

/// How dark the ground of a cell is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Shade {
    /// White.
    None,
    /// A little.
    Light,
    /// More.
    Middle,
    /// Hatched: not allowed.
    Closed,
}

/// A row of a sheet to tick.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct TickRow {
    /// What is done.
    pub label: String,
    /// The dose, short.
    pub dose: String,
    /// How many boxes a day has.
    pub boxes: u16,
}

impl Document {
    /// Every text of the sheet in reading order, without labels of the layout.
    pub fn texts(&self) -> Vec<&str> {
        let mut texts = Vec::new();
        for block in &self.blocks {
            block.texts(&mut texts);
        }
        texts
    }
}

impl Document {
    /// The sentences of the sheet in reading order: what is read, without titles, labels, dates and heads of tables.
    ///
    /// How hard a sheet is to read is measured by these; a heading of two words would make it look easier than it is.
    pub fn sentences(&self) -> Vec<&str> {
        let mut sentences = Vec::new();
        for block in &self.blocks {
            block.sentences(&mut sentences);
        }
        sentences
    }
}

impl Block {
    fn sentences<'a>(&'a self, into: &mut Vec<&'a str>) {
        match self {
            Self::Paragraph { text, .. } => into.push(text),
            Self::List { items, .. } => into.extend(items.iter().map(String::as_str)),
            Self::Callout { text, items, .. } => into.extend(text.iter().chain(items).map(String::as_str)),
            Self::Bands { bands } => into.extend(bands.iter().flat_map(Band::sentences)),
            Self::Table { rows, .. } => {
                let lines = rows.iter().flatten().flat_map(|cell| cell.text.lines());
                into.extend(lines.filter(|line| line.ends_with(['.', '?', '!'])));
            }
            Self::Strip { text, .. } => into.push(text),
            Self::Together { blocks } => blocks.iter().for_each(|block| block.sentences(into)),
            _ => {}
        }
    }

    fn texts<'a>(&'a self, into: &mut Vec<&'a str>) {
        let mut push = |text: &'a str| {
            if !text.is_empty() {
                into.push(text);
            }
        };
        match self {
            Self::Head { title, subtitle } => [title, subtitle].into_iter().for_each(|text| push(text)),
            Self::Heading { text, .. } | Self::Paragraph { text, .. } => push(text),
            Self::List { items, .. } | Self::Brief { items, .. } => items.iter().for_each(|text| push(text)),
            Self::Callout { title, text, items, .. } => {
                std::iter::once(title).chain(text).chain(items).for_each(|text| push(text));
            }
            Self::Fields { fields, .. } => {
                fields.iter().flat_map(|field| [&field.label, &field.value, &field.hint]).for_each(|text| push(text));
            }
            Self::Facts { rows } => rows.iter().flat_map(|row| [&row.label, &row.text]).for_each(|text| push(text)),
            Self::Phones { numbers } => {
                numbers.iter().flat_map(|row| [&row.label, &row.text]).for_each(|text| push(text));
            }
            Self::RecoveryLine { sling, stages, dates, .. } => {
                sling.iter().for_each(|run| push(&run.shown));
                stages.iter().for_each(|run| push(&run.shown));
                dates.iter().for_each(|(_, text)| push(text));
            }
            Self::Drawings { drawings } => drawings.iter().for_each(|it| push(&it.caption)),
            Self::Bands { bands } => bands.iter().flat_map(Band::texts).for_each(push),
            Self::Table { columns, rows, .. } => {
                columns.iter().for_each(|column| push(&column.title));
                rows.iter().flatten().for_each(|cell| push(&cell.text));
            }
            Self::Ticks { corner, days, rows, .. } => {
                push(corner);
                days.iter().for_each(|text| push(text));
                rows.iter().flat_map(|row| [&row.label, &row.dose]).for_each(|text| push(text));
            }
            Self::Strip { title, text, fields } => {
                push(title);
                push(text);
                fields.iter().flat_map(|field| [&field.label, &field.value, &field.hint]).for_each(|text| push(text));
            }
            Self::Signature { text, labels } => std::iter::once(text).chain(labels).for_each(|text| push(text)),
            Self::Together { blocks } => blocks.iter().for_each(|block| block.texts(into)),
            Self::PageBreak => {}
        }
    }
}

impl Band {
    fn sentences(&self) -> impl Iterator<Item = &str> {
        [&self.purpose, &self.again]
            .into_iter()
            .chain(self.start.iter().map(|start| &start.text))
            .chain(&self.steps)
            .chain(self.end.iter().map(|end| &end.text))
            .chain([&self.dose])
            .chain(&self.mistakes)
            .chain([&self.stop.text])
            .map(String::as_str)
            .filter(|text| !text.is_empty())
    }

    fn texts(&self) -> impl Iterator<Item = &str> {
        [&self.title, &self.purpose, &self.again, &self.dates]
            .into_iter()
            .chain(self.start.iter().flat_map(|start| [&start.label, &start.text]))
            .chain(&self.steps)
            .chain(self.end.iter().flat_map(|end| [&end.label, &end.text]))
            .chain([&self.dose, &self.mistakes_title])
            .chain(&self.mistakes)
            .chain([&self.stop.label, &self.stop.text])
            .map(String::as_str)
    }
}
