//! Reading a stored prescription, `mendarc.prescription/1`, back from its document.

mod shape;

use std::collections::BTreeSet;

use ::diagnostic::{Diagnostic, FileId, Sink, Span};
use ::prescription::compare::{Course, Exercise, Line, LineKind, Sling, Value, beside, words};
use body::{Joint, Key, Mode, Movement, Position, Side};
use jiff::civil::Date;
use plan::{Bound, Cell, ExerciseLine, SlingPosition, Wear};
use quantity::{Degrees, Kilograms, Percent};

use super::PRESCRIPTION_SCHEMA;

/// A prescription that was read back: what is compared, and what stands at its head.
#[derive(Debug)]
pub struct Stored {
    pub course: Course,
    pub operated_on: Date,
    pub side: Side,
    pub protocol: String,
    pub edition: String,
}

/// No dated plan is longer than this, in days.
const LONGEST: u16 = 3650; // not medical: as far as a day can be written in a file

/// Reads a stored prescription.
///
/// # Errors
/// `None` with at least one error in the sink: `json-syntax`, or `not-a-prescription` with the place that is not
/// as a prescription has it.
pub fn read(file: FileId, text: &str, sink: &mut Sink) -> Option<Stored> {
    let probe: shape::Probe = from_json(file, text, sink)?;
    let schema = probe.schema.as_ref().map(|schema| schema.as_str().map_or_else(|| schema.to_string(), str::to_owned));
    let whole = Span { file, start: 0, end: 1 };
    if schema.as_deref() != Some(PRESCRIPTION_SCHEMA) {
        let message = match schema {
            Some(other) => format!("the document is `{}` and not a prescription", clean(&shortened(&other))),
            None => "the document does not say that it is a prescription".to_owned(),
        };
        sink.push(
            Diagnostic::error("not-a-prescription", message)
                .at(whole)
                .fact(format!("a prescription has \"schema\": \"{PRESCRIPTION_SCHEMA}\""))
                .help("make one with `mendarc prescribe RECORD.toml --json`"),
        );
        return None;
    }
    if probe.spans.is_none() {
        sink.push(
            Diagnostic::error("not-a-prescription", "the document is of a run that gave no prescription")
                .at(whole)
                .help("its `diagnostics` say what to mend in the record"),
        );
        return None;
    }
    let document: shape::Prescription = from_json(file, text, sink)?;
    let errors = sink.errors();
    let stored = Reader { whole, sink }.prescription(&document);
    (sink.errors() == errors).then_some(stored).flatten()
}

/// The document, or where it stops to be one.
fn from_json<T: serde::de::DeserializeOwned>(file: FileId, text: &str, sink: &mut Sink) -> Option<T> {
    let error = match serde_json::from_str(text) {
        Ok(document) => return Some(document),
        Err(error) => error,
    };
    let before = text.split_inclusive('\n').take(error.line().saturating_sub(1)).map(str::len).sum::<usize>();
    let at = (before + error.column().saturating_sub(1)).min(text.len().saturating_sub(1)) as u32;
    let span = Span { file, start: at, end: at + 1 };
    let said = clean(&shortened(&error.to_string()));
    sink.push(match error.classify() {
        serde_json::error::Category::Data => Diagnostic::error("not-a-prescription", said)
            .at(span)
            .help("compare documents as `mendarc prescribe --json` wrote them"),
        _ => Diagnostic::error("json-syntax", said).at(span).help("the file may have been cut off; write it again"),
    });
    None
}

/// So much of a text that nobody of us wrote is repeated in a message.
const MOST_REPEATED: usize = 200;

fn shortened(text: &str) -> String {
    text.chars().take(MOST_REPEATED).collect()
}

/// Text of a document as it may stand on a terminal: nothing that moves the cursor or turns the line around.
fn clean(text: &str) -> String {
    let hidden = |c: char| {
        c.is_control() || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{206f}')
    };
    text.chars().map(|c| if hidden(c) { '\u{fffd}' } else { c }).collect()
}

struct Reader<'s> {
    whole: Span,
    sink: &'s mut Sink,
}

impl Reader<'_> {
    fn fault(&mut self, place: &str, what: impl std::fmt::Display) {
        let message = clean(&shortened(&format!("{place}: {what}")));
        self.sink.push(
            Diagnostic::error("not-a-prescription", message)
                .at(self.whole)
                .help("compare documents as `mendarc prescribe --json` wrote them"),
        );
    }

    fn word<T>(&mut self, place: &str, word: &str, named: impl Fn(&str) -> Option<T>) -> Option<T> {
        let value = named(word);
        if value.is_none() {
            self.fault(place, format_args!("`{word}` is not a word of a prescription"));
        }
        value
    }

    fn prescription(mut self, of: &shape::Prescription) -> Option<Stored> {
        let operated_on = self.word("operation.date", &of.operation.date, |text| text.parse::<Date>().ok());
        let side = self.word("operation.side", &of.operation.side, Side::named);
        let horizon = of.spans.last().map_or(0, |span| span.until_day);
        if horizon == 0 || horizon > LONGEST {
            self.fault("spans", "they end on no day of a dated plan");
            return None;
        }
        let mut course = Course::empty(horizon, Cell::NO);
        let mut next = 0;
        for (place, span) in of.spans.iter().enumerate() {
            if span.from_day != next || span.until_day <= span.from_day {
                let days = format!("day {} to day {} after day {next}", span.from_day, span.until_day);
                self.fault(&format!("spans[{place}]"), format_args!("{days}: spans follow one another without a gap"));
                return None;
            }
            next = span.until_day;
            self.span(&format!("spans[{place}]"), span, &mut course);
        }
        self.lines(of, &mut course);
        remarks(of, &mut course);
        Some(Stored {
            course,
            operated_on: operated_on?,
            side: side?,
            protocol: clean(&of.protocol.id),
            edition: clean(&of.protocol.edition),
        })
    }

    fn span(&mut self, place: &str, span: &shape::Span, course: &mut Course) {
        let mut seen = BTreeSet::new();
        for (row, limit) in span.limits.iter().enumerate() {
            let place = format!("{place}.limits[{row}]");
            let Some(key) = self.key(&place, &limit.key) else { continue };
            if !seen.insert(key) {
                self.fault(&place, format_args!("{key} has two rows on the same days"));
                continue;
            }
            let Some(cell) = self.cell(&place, key, limit) else { continue };
            let value = Value { cell, only_lying: limit.only_lying };
            course.limits.entry(key).or_default().push(span.from_day, span.until_day, value);
        }
        let place_of_sling = format!("{place}.sling");
        let wear = self.word(&place_of_sling, &span.sling.wear, |text| named(Wear::WORDS, text));
        let position = self.word(&place_of_sling, &span.sling.position, |text| named(SlingPosition::WORDS, text));
        if let Some((wear, position)) = wear.zip(position) {
            let except = span.sling.except.iter().map(|text| clean(text)).collect();
            course.sling.push(span.from_day, span.until_day, Sling { wear, position, except });
        }
        for (row, exercise) in span.exercises.iter().enumerate() {
            let place = format!("{place}.exercises[{row}]");
            let Some(line) = self.exercise(&place, exercise) else { continue };
            let runs = course.exercises.entry(line.id.clone()).or_default();
            runs.push(span.from_day, span.until_day, Exercise { line, remarks: Vec::new() });
        }
    }

    fn key(&mut self, place: &str, words: &shape::Key) -> Option<Key> {
        let joint = self.word(place, &words.joint, Joint::named);
        let movement = self.word(place, &words.movement, Movement::named);
        let position = self.word(place, &words.position, Position::named);
        let mode = self.word(place, &words.mode, Mode::named);
        let key = Key { joint: joint?, movement: movement?, position: position?, mode: mode? };
        if !key.exists() {
            self.fault(place, format_args!("{key} is not a limit that there is"));
            return None;
        }
        Some(key)
    }

    fn cell(&mut self, place: &str, key: Key, limit: &shape::Limit) -> Option<Cell> {
        let bound = match (limit.max_deg, limit.max_load_kg, limit.max_effort_percent) {
            (None, None, None) => None,
            (Some(angle), None, None) if !key.is_load() && !key.is_effort() => {
                Some(self.degrees(place, angle).map(Bound::Angle)?)
            }
            (None, Some(load), None) if key.is_load() => Some(self.kilograms(place, load).map(Bound::Load)?),
            (None, None, Some(effort)) if key.is_effort() => Some(self.percent(place, effort).map(Bound::Effort)?),
            _ => {
                self.fault(place, format_args!("the bound does not fit {key}"));
                return None;
            }
        };
        match (limit.allowed.as_str(), bound) {
            ("no", None) => Some(Cell::NO),
            ("free", None) => Some(Cell::FREE),
            ("up_to", Some(bound)) => Some(Cell::up_to(bound)),
            (other, _) => {
                self.fault(place, format_args!("`{other}` does not go with the bound beside it"));
                None
            }
        }
    }

    fn degrees(&mut self, place: &str, number: f64) -> Option<Degrees> {
        let angle = Degrees::parse(&format!("{number} deg")).ok();
        if angle.is_none() {
            self.fault(place, format_args!("{number:e} is not an angle of a prescription"));
        }
        angle
    }

    fn kilograms(&mut self, place: &str, number: f64) -> Option<Kilograms> {
        let load = Kilograms::parse(&format!("{number} kg")).ok();
        if load.is_none() {
            self.fault(place, format_args!("{number:e} is not a load of a prescription"));
        }
        load
    }

    fn percent(&mut self, place: &str, number: f64) -> Option<Percent> {
        let effort = Percent::parse(&format!("{number} %")).ok();
        if effort.is_none() {
            self.fault(place, format_args!("{number:e} is not an effort of a prescription"));
        }
        effort
    }

    fn exercise(&mut self, place: &str, of: &shape::Exercise) -> Option<ExerciseLine> {
        let key = self.key(place, &of.key);
        let target = match of.target_deg {
            Some(angle) => Some(self.degrees(place, angle)?),
            None => None,
        };
        let load = match of.load_kg {
            Some(load) => Some(self.kilograms(place, load)?),
            None => None,
        };
        Some(ExerciseLine {
            id: clean(&of.id),
            key: key?,
            sets: of.sets,
            repetitions: of.repetitions,
            repetitions_to: of.repetitions_to,
            hold_s: of.hold_s,
            times_per_day: of.times_per_day,
            days_per_week: of.days_per_week,
            target,
            as_far_as_comfortable: of.as_far_as_comfortable,
            load,
            supervised: of.supervised,
            reasons: Vec::new(),
        })
    }

    fn lines(&mut self, of: &shape::Prescription, course: &mut Course) {
        course.lines.extend(of.stages.iter().map(|stage| Line {
            kind: LineKind::Stage,
            id: clean(&stage.id),
            title: clean(&stage.title),
            day: Some(stage.from_day),
            says: clean(&words::list(stage.criteria.iter().map(|criterion| criterion.text.as_str()))),
        }));
        let mut seen = BTreeSet::new();
        for (place, goal) in of.spans.iter().flat_map(|span| span.goals.iter().enumerate()) {
            let place = format!("goals[{place}]");
            if !seen.insert((&goal.id, goal.due_day)) {
                continue;
            }
            let Some(key) = self.key(&place, &goal.key) else { continue };
            let Some(from) = self.degrees(&place, goal.from_deg) else { continue };
            let to = goal.to_deg.and_then(|to| self.degrees(&place, to));
            course.lines.push(Line {
                kind: LineKind::Goal,
                id: clean(&goal.id),
                title: key.to_string(),
                day: Some(goal.due_day),
                says: words::goal(from, to, goal.or_other_shoulder, goal.held_by_limit),
            });
        }
        course.lines.extend(of.visits.iter().map(|visit| Line {
            kind: LineKind::Visit,
            id: clean(&visit.purpose),
            title: clean(&visit.purpose),
            day: Some(visit.due_day),
            says: words::clinic_day(visit.due_day, visit.day),
        }));
        course.lines.extend(of.returns.iter().map(|line| Line {
            kind: LineKind::Return,
            id: clean(&line.activity),
            title: String::new(),
            day: line.day,
            says: clean(&words::return_to(line.opened_by_surgeon, line.note.as_deref())),
        }));
    }
}

fn named<T: Copy>(words: &[(&str, T)], text: &str) -> Option<T> {
    words.iter().find(|(word, _)| *word == text).map(|(_, value)| *value)
}

fn remarks(of: &shape::Prescription, course: &mut Course) {
    let caps = of.protocol.capped_by.iter().map(String::as_str);
    course.say(beside::PROTOCOL, clean(&words::protocol(&of.protocol.id, caps)));
    for stage in of.stages.iter().filter(|stage| stage.opened || stage.closes_again.is_some()) {
        course.say(beside::OPENED, clean(&words::opened(&stage.id, stage.closes_again.as_deref())));
    }
    for index in &of.indices {
        course.say(beside::INDEX, clean(&words::index(&index.id, index.low, index.high, index.of, &index.meaning)));
    }
    for question in &of.questions {
        let blocks = question.changes.is_empty();
        course.say(beside::QUESTION, clean(&words::question(&question.text, &question.path, blocks)));
    }
    let said = [(beside::LOOSENED, &of.loosened), (beside::MOVED, &of.moved), (beside::CAUTION, &of.cautions)];
    for (what, text) in said.into_iter().flat_map(|(what, texts)| texts.iter().map(move |text| (what, text))) {
        course.say(what, clean(text));
    }
    course.say(beside::HORIZON, format!("day {}", course.horizon.saturating_sub(1)));
}
