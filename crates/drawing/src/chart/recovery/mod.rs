//! The recovery line: weeks from surgery, the sling as a bar, the stages as spans, today as a mark.

mod bands;

mod layout;
mod paint;
mod symbols;
#[cfg(test)]
mod tests;
mod valid;

use super::error::{self, ChartError};
use crate::svg::Svg;

/// The spine of every page: what happens when, in weeks from surgery.
///
/// # Units and shape
/// Days count from surgery, which is day 0; spans are half open. Widths from 60 mm (a telephone) to 180 mm (a page);
/// the height follows from what is shown. Every text comes ready from the caller.
///
/// # Method
/// Below, the line itself with its weeks and dates; on it, the sling as a bar and the stages as spans; above, what
/// happens, in lanes, each with a hairline down to its day. Nothing that is written lies on anything else written:
/// a name stands inside its span where it fits, in two lines or in its short form where it must, and else in a lane;
/// numbers of weeks and dates are left out at even steps until the rest fits. Without color, an opened stage is filled
/// and an unopened one dashed, and each kind of mark has its own shape.
///
/// # Example
/// ```
/// use drawing::chart::{Label, RecoveryLine, StageSpan, StageState};
/// let line = RecoveryLine {
///     stages: vec![StageSpan { days: [0, 42], name: Label::new("Protect"), state: StageState::Opened }],
///     ..RecoveryLine::new("Your recovery", "Six weeks.", 80.0, 84, "week")
/// };
/// assert!(line.draw().is_ok());
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct RecoveryLine {
    /// Title of the picture.
    pub title: String,
    /// What it shows, in words, for those who can't see it.
    pub description: String,
    /// Its width in millimeters.
    pub width_mm: f64,
    /// The first day after the line.
    pub until_day: u16,
    /// The word before the number of the first week.
    pub week_word: String,
    /// How the sling is worn; in order.
    pub sling: Vec<SlingSpan>,
    /// The stages; in order.
    pub stages: Vec<StageSpan>,
    /// Dates under the line, in order; those for which there is no room are left out at even steps.
    pub dates: Vec<(u16, String)>,
    /// Visits, gates and what changed the course.
    pub events: Vec<Event>,
    /// Today.
    pub today: Option<(u16, Label)>,
}

/// A text, and a shorter one for where it does not fit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Label {
    /// As it is written where there is room.
    pub text: String,
    /// A shorter form.
    pub short: Option<String>,
}

/// A run of days with one way of wearing the sling.
#[derive(Debug, Clone, PartialEq)]
pub struct SlingSpan {
    /// The first day, and the first day after.
    pub days: [u16; 2],
    /// How it is worn.
    pub wear: SlingWear,
    /// What is written on the bar.
    pub name: Label,
}

/// How the sling is worn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SlingWear {
    /// Day and night: a solid bar.
    Always,
    /// For a part of the day: a hatched bar.
    Weaning,
    /// Not planned for yet, or planned and not opened: a dashed outline.
    Planned,
}

/// A stage.
#[derive(Debug, Clone, PartialEq)]
pub struct StageSpan {
    /// The first day, and the first day after.
    pub days: [u16; 2],
    /// Its name.
    pub name: Label,
    /// Whether it has been opened.
    pub state: StageState,
}

/// Whether a stage has been opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StageState {
    /// Signed and open: filled.
    Opened,
    /// Not opened: a dashed outline.
    NotOpened,
}

/// Something on a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// The day.
    pub day: u16,
    /// What it is.
    pub kind: EventKind,
    /// What is written beside the mark.
    pub label: Label,
}

/// What happens on a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EventKind {
    /// A visit that took place: a filled circle.
    VisitDone,
    /// A visit to come: an open circle.
    VisitPlanned,
    /// A gate whose criteria are met: a filled diamond.
    GateMet,
    /// A gate whose criteria are not met: a crossed diamond.
    GateNotMet,
    /// A gate that waits to be looked at: an open diamond.
    GateWaiting,
    /// The course is held until a day: two bars and a bracket.
    Hold {
        /// The first day after.
        until_day: u16,
    },
    /// A step back to what was allowed earlier: an arrow to the left.
    StepBack,
}

impl Label {
    /// A text without a shorter form.
    pub fn new(text: &str) -> Self {
        Self { text: text.to_owned(), short: None }
    }

    /// A text with a shorter form.
    pub fn with_short(text: &str, short: &str) -> Self {
        Self { text: text.to_owned(), short: Some(short.to_owned()) }
    }

    /// The long form, then the short one.
    pub(super) fn forms(&self) -> impl Iterator<Item = &str> {
        std::iter::once(self.text.as_str()).chain(self.short.as_deref())
    }
}

impl RecoveryLine {
    /// A line with nothing on it yet.
    pub fn new(title: &str, description: &str, width_mm: f64, until_day: u16, week_word: &str) -> Self {
        Self {
            title: title.to_owned(),
            description: description.to_owned(),
            width_mm,
            until_day,
            week_word: week_word.to_owned(),
            sling: Vec::new(),
            stages: Vec::new(),
            dates: Vec::new(),
            events: Vec::new(),
            today: None,
        }
    }

    /// The picture.
    ///
    /// # Errors
    /// A width that is none or too small; a day outside of the line; spans that overlap or end before they begin;
    /// dates not in order; a text that fits nowhere.
    pub fn draw(&self) -> Result<Svg, ChartError> {
        error::size(self.width_mm, NARROWEST, [NARROWEST; 2])?;
        valid::check(self)?;
        let layout = layout::Layout::of(self)?;
        Ok(paint::picture(self, &layout))
    }
}

/// No line is narrower, in millimeters.
const NARROWEST: f64 = 60.0;
