//! The files of a step put through the library.

use std::collections::BTreeMap;

use diagnostic::{Diagnostic, Sink, Sources, Span};
use jiff::civil::Date;
use mendarc::shelf::Shelf;
use operative::Record;
use plan::Prescription;
use prescription::{Case, May, Openings, Settings};

use crate::story::{State, Step};

/// What came of a step.
pub struct World<'s> {
    pub shelf: &'s Shelf,
    pub sources: Sources,
    pub found: Vec<Diagnostic>,
    pub issued: Option<Prescription>,
    record: Option<Record>,
    settings: Settings,
    openings: Openings,
    other: Option<Record>,
    protocol: Option<String>,
    asked_on: Option<Date>,
    days: BTreeMap<Date, Prescription>,
}

/// What the command of a step asks for.
#[derive(Default)]
struct Asked {
    protocol: Option<String>,
    on: Option<Date>,
}

impl<'s> World<'s> {
    /// Reads the files and makes the prescription.
    pub fn new(step: &Step, shelf: &'s Shelf) -> Result<Self, String> {
        let state = &step.state;
        let asked = asked(state)?;
        let mut sources = Sources::new();
        let mut sink = Sink::new();
        let text = state.record.as_ref().ok_or("no record stands before these expectations")?;
        let file = sources.add("record.toml", text.as_str());
        let record = operative::read(file, text, &mut sink);
        let settings = match &state.settings {
            Some(text) => prescription::read_settings(sources.add("settings.toml", text.as_str()), text, &mut sink),
            None => Some(Settings::default()),
        };
        let openings = match &state.opened {
            Some(text) => prescription::read_opened(sources.add("opened.toml", text.as_str()), text, &mut sink),
            None => Some(Openings::default()),
        };
        let other =
            state.other.as_ref().map(|text| operative::read(sources.add("other.toml", text.as_str()), text, &mut sink));
        let unread = record.is_none() || settings.is_none() || openings.is_none() || matches!(other, Some(None));
        let mut world = Self {
            shelf,
            sources,
            found: Vec::new(),
            issued: None,
            record,
            settings: settings.unwrap_or_default(),
            openings: openings.unwrap_or_default(),
            other: other.flatten(),
            protocol: asked.protocol,
            asked_on: asked.on,
            days: BTreeMap::new(),
        };
        if !unread && !sink.has_errors() {
            world.issued = world.prescribe(asked.on, &mut sink);
        }
        world.found = sink.into_sorted();
        Ok(world)
    }

    /// The prescription, or why there is none.
    pub fn issued(&self) -> Result<&Prescription, String> {
        self.issued.as_ref().ok_or_else(|| {
            let why: Vec<String> =
                self.found.iter().map(|found| format!("{}: {}", found.code, found.message)).collect();
            format!("nothing was prescribed ({})", why.join("; "))
        })
    }

    /// The prescription as it is asked for on a day.
    pub fn on(&mut self, date: Date) -> Result<&Prescription, String> {
        if !self.days.contains_key(&date) {
            let mut sink = Sink::new();
            let issued = self.prescribe(Some(date), &mut sink);
            let issued = issued.ok_or_else(|| format!("nothing was prescribed for {date}: {:?}", sink.found()))?;
            self.days.insert(date, issued);
        }
        Ok(&self.days[&date])
    }

    /// Asks whether an activity is allowed.
    pub fn may(&self, activity: &str, date: Date) -> Result<May, String> {
        let mut sink = Sink::new();
        let answer = self.with_case(Some(date), |case| prescription::may(case, activity, date, &mut sink));
        answer.flatten().ok_or_else(|| format!("no answer: {:?}", sink.found()))
    }

    /// The desk of the sheets of this step, with numbers to call where the story has none.
    pub fn with_desk<T>(
        &self,
        messages: &wording::Messages,
        on: Option<Date>,
        then: impl FnOnce(&Case<'_>, &sheets::Desk<'_>) -> T,
    ) -> Option<T> {
        let mut settings = self.settings.clone();
        settings.contact.day.get_or_insert_with(|| "555-0100".into());
        settings.contact.night.get_or_insert_with(|| "555-0101".into());
        let mut sink = Sink::new();
        self.with_case(on.or(self.asked_on), |case| {
            let case = Case { settings: &settings, ..*case };
            mendarc::desk::with_desk(&case, messages, &mut sink, |desk| then(&case, desk))
        })
        .flatten()
    }

    fn prescribe(&self, on: Option<Date>, sink: &mut Sink) -> Option<Prescription> {
        self.with_case(on, |case| prescription::prescribe(case, sink))?
    }

    fn with_case<T>(&self, on: Option<Date>, then: impl FnOnce(&Case<'_>) -> T) -> Option<T> {
        let line_of = |span: Span| self.sources.get(span.file).map_or(0, |source| source.position(span.start).line);
        let title_of = |id: &str| self.shelf.title(id);
        let case = Case {
            protocol: self.protocol.as_deref(),
            openings: &self.openings,
            on,
            other: self.other.as_ref(),
            line_of: &line_of,
            title_of: &title_of,
            ..Case::new(&self.shelf.library, &self.shelf.catalogue, self.record.as_ref()?, &self.settings)
        };
        Some(then(&case))
    }
}

/// Reads the command of a step, which has to name exactly the files that the story gives.
fn asked(state: &State) -> Result<Asked, String> {
    let Some(command) = &state.command else { return Ok(Asked::default()) };
    let mut words = command.split_whitespace();
    if [words.next(), words.next(), words.next()] != [Some("mendarc"), Some("prescribe"), Some("record.toml")] {
        return Err("the command is `mendarc prescribe record.toml …`".into());
    }
    let mut asked = Asked::default();
    let mut named = Vec::new();
    while let Some(option) = words.next() {
        let value = words.next().ok_or_else(|| format!("`{option}` without a value"))?;
        match (option, value) {
            ("--protocol", id) => asked.protocol = Some(id.to_owned()),
            ("--on", date) => asked.on = Some(date.parse().map_err(|_| format!("`{date}` is no date"))?),
            ("--settings", "settings.toml") | ("--opened", "opened.toml") | ("--other", "other.toml") => {
                named.push(option);
            }
            _ => return Err(format!("`{option} {value}` is not known here")),
        }
    }
    let given = [("--settings", &state.settings), ("--opened", &state.opened), ("--other", &state.other)];
    for (option, text) in given {
        if text.is_some() != named.contains(&option) {
            return Err(format!("the command and the story disagree on `{option}`"));
        }
    }
    Ok(asked)
}
