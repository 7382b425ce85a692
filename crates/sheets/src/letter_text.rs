//! The texts of clinicians' pages, and what every such page begins with.

use jiff::civil::Date;
use plan::{GoBack, Prescription, StageLine};
use wording::{Argument, Language};

use crate::desk::Desk;
use crate::document::{self, Block, Document, Fact, Field, Reader, Size};
use crate::limits_columns::next_gate;
use crate::limits_words::short;
use crate::texts::Texts;

/// The ids of what a kind of page is called.
pub(crate) struct Kind {
    /// The title.
    pub title: &'static str,
    /// The head of the pages after the first.
    pub running: &'static str,
    /// The same where the practice has a label of the patient.
    pub running_with_id: &'static str,
    /// The word for the operated side.
    pub side: &'static str,
}

/// A page for clinicians or employers, with nothing on it yet.
pub(crate) fn page(desk: &Desk<'_>, kind: &Kind) -> Document {
    let (say, of) = (Texts::of_clinicians(desk), desk.prescription);
    let side = say.get(kind.side);
    let mut told: Vec<(&str, Argument<'_>)> =
        vec![("side", side.clone().into()), ("date", short(of.operated_on).into())];
    let running = match &of.patient {
        Some(id) => {
            told.push(("id", id.as_str().into()));
            kind.running_with_id
        }
        None => kind.running,
    };
    Document {
        title: say.get(kind.title),
        language: Language::English.code(),
        reader: Reader::Clinician,
        size: Size::of(desk.settings),
        side: Some(document::Side { side: of.side.name(), shown: side }),
        running_head: say.with(running, &told),
        foot: say.get(wording::cautions::LINE),
        page_of: say.with("letter-page-of", &[("page", "{page}".into()), ("pages", "{pages}".into())]),
        blocks: Vec::new(),
    }
}

/// The head of the first page: its title, and who writes.
pub(crate) fn head(desk: &Desk<'_>, title_id: &str) -> Block {
    let practice = &desk.settings.practice;
    let parts: Vec<&str> =
        [&practice.name, &practice.surgeon, &practice.address].into_iter().flatten().map(String::as_str).collect();
    let say = Texts::of_clinicians(desk);
    let subtitle = if parts.is_empty() { say.get("letter-unnamed-practice") } else { parts.join(" · ") };
    Block::Head { title: say.get(title_id), subtitle }
}

/// A line to fill in by hand.
pub(crate) fn blank(label: &str) -> Field {
    Field { label: label.into(), value: String::new(), hint: String::new() }
}

/// A line that is filled in.
pub(crate) fn filled(label: &str, value: String) -> Field {
    Field { label: label.into(), value, hint: String::new() }
}

/// A label and its text.
pub(crate) fn fact(label: &str, text: String) -> Fact {
    Fact { label: label.into(), text }
}

/// Until when a page is good.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Validity<'p> {
    /// The next stage waits for its gate: until the visit at which it is decided, or else the gate.
    UntilNext { stage: &'p StageLine, gate: Date, visit: Option<Date> },
    /// A go-back comes before that: until the day of the go-back.
    UntilBack { gate: Option<Date>, back: &'p GoBack },
    /// The gate of the next stage has passed unopened: until the visit that still decides it, where one lies ahead.
    Waiting { stage: &'p StageLine, gate: Date, visit: Option<Date> },
    /// Everything is opened: until the end of the dated plan.
    AllOpened { until: Option<Date> },
}

impl<'p> Validity<'p> {
    /// The validity of what is printed on a day.
    ///
    /// # Method
    /// What is printed holds while the same stages are open, so it ends with the visit at which the
    /// surgeon decides on the first stage that is not.
    pub fn of(of: &'p Prescription, issued_on: Date) -> Self {
        let back = of.next_go_back(issued_on);
        let Some((stage, day, gate)) = next_gate(of) else {
            return match back {
                Some(back) => Self::UntilBack { gate: None, back },
                None => Self::AllOpened { until: of.spans.last().map(|span| span.until) },
            };
        };
        let purpose = format!("gate: {}", stage.id);
        let visit = of.visits.iter().find(|visit| visit.purpose == purpose && visit.due_day == day);
        let visit = visit.map(|visit| visit.date);
        let waits = gate <= issued_on;
        let until = if waits { visit.filter(|visit| *visit > issued_on) } else { visit.or(Some(gate)) };
        match back {
            Some(back) if until.is_none_or(|until| back.date <= until) => Self::UntilBack { gate: Some(gate), back },
            _ if waits => Self::Waiting { stage, gate, visit: until },
            _ => Self::UntilNext { stage, gate, visit },
        }
    }

    /// The gate of the stage that has to be opened next, where there is one.
    pub const fn gate(&self) -> Option<Date> {
        match self {
            Self::UntilNext { gate, .. } | Self::Waiting { gate, .. } => Some(*gate),
            Self::UntilBack { gate, .. } => *gate,
            Self::AllOpened { .. } => None,
        }
    }

    /// The last day it is good for.
    pub fn until(&self) -> Option<Date> {
        match self {
            Self::UntilNext { gate, visit, .. } => Some(visit.unwrap_or(*gate)),
            // The last day before it.
            Self::UntilBack { back, .. } => back.date.yesterday().ok(),
            Self::Waiting { visit, .. } => *visit,
            Self::AllOpened { until } => *until,
        }
    }

    /// It in a sentence.
    pub fn sentence(&self, say: &Texts<'_>) -> String {
        let until = self.until().map_or(String::new(), short);
        match self {
            Self::UntilBack { back, .. } => say.with(
                "letter-valid-until-back",
                &[("until", until.into()), ("back", short(back.date).into()), ("stage", back.stage.as_str().into())],
            ),
            Self::UntilNext { stage, visit, .. } => {
                let id = if visit.is_some() { "letter-valid" } else { "letter-valid-without-visit" };
                say.with(id, &[("until", until.into()), ("stage", stage.title.as_str().into())])
            }
            Self::Waiting { stage, gate, .. } => say.with(
                "letter-valid-waiting",
                &[
                    ("gate", short(*gate).into()),
                    ("stage", stage.title.as_str().into()),
                    ("until", if until.is_empty() { "________________".into() } else { until.into() }),
                ],
            ),
            Self::AllOpened { .. } => say.with("letter-valid-all-opened", &[("until", until.into())]),
        }
    }
}
