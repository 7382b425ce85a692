//! Where the heaviest exercise of its kind becomes much heavier at once.

use diagnostic::Diagnostic;
use evidence::ids;
use exercise::{Catalogue, Whose};
use jiff::civil::Date;
use plan::{Prescription, SpanOfDays};
use quantity::{Kilograms, PostoperativeDay};

use super::{Rung, Scale, Work};
use crate::reach;

/// A day from which the heaviest exercise of its kind is much heavier than any of that kind before.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// The day.
    pub day: PostoperativeDay,
    /// The day as a date.
    pub date: Date,
    /// The stage that day belongs to.
    pub stage: String,
    /// What is compared: raising with raising, and so on.
    pub work: Work,
    /// The exercise.
    pub exercise: String,
    /// What is held in the hand.
    pub held: Option<Kilograms>,
    /// What it asks at least, as a multiple of the own straight arm held level.
    pub ratio: f64,
    /// The heaviest of its kind before it; `None` where nothing of its kind held any weight.
    pub before: Option<Reached>,
    /// How many times what counted before.
    pub factor: f64,
    /// Weights that would divide the step into even parts; empty where nothing is held.
    pub between: Vec<Kilograms>,
    /// The body mass it was counted with.
    pub mass: Option<Kilograms>,
    /// Whether the tables leave a range, so that numbers are the least and the most.
    pub tables: Tables,
}

/// The heaviest exercise of a kind before a step.
#[derive(Debug, Clone, PartialEq)]
pub struct Reached {
    /// The exercise.
    pub exercise: String,
    /// What is held in the hand.
    pub held: Option<Kilograms>,
    /// What it asks at most, as a multiple of the own straight arm held level.
    pub ratio: f64,
}

/// How many tables of segments may fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tables {
    /// One.
    One,
    /// More than one.
    Several,
}

/// The days on which the heaviest exercise of a kind becomes heavier by more than the set factor.
///
/// # Method
/// Run of days by run of days, and each kind of [`Work`] by itself: the heaviest of what the own muscles hold against
/// gravity, over the heaviest of that kind on all days before. After a go-back only the days since count as before.
/// Only steps that are certain are told: the least that the new one asks over the most that an earlier one may have
/// asked, so that a helped arm counts in full before and not at all after. The own straight arm counts as reached from
/// the start, because from carried to own weight is the step a stage is for. Exercises whose load has no number are
/// left out, so with a body mass unknown no step of a weight in the hand is found.
///
/// # Source
/// `step-of-load`, `step-of-load-floor`, `weight-in-between`: own choices.
pub fn steep_steps<'c>(prescription: &'c Prescription, catalogue: &'c Catalogue, whose: Whose<'c>) -> Vec<Step> {
    let mut scale = Scale::new(catalogue, whose);
    let mut lived: Vec<(PostoperativeDay, Vec<Rung<'c>>)> = Vec::new();
    let mut steps = Vec::new();
    for span in &prescription.spans {
        let rungs = scale.of_span(span);
        let backs = prescription.go_backs.iter().map(|back| back.day).filter(|day| *day <= span.from_day);
        let since = backs.max();
        let counts = |until: PostoperativeDay| since.is_none_or(|since| until > since);
        for work in Work::ALL {
            let before = lived.iter().filter(|(until, _)| counts(*until)).flat_map(|(_, rungs)| rungs);
            steps.extend(step(span, (work, &rungs), before, &scale));
        }
        lived.push((span.until_day, rungs));
    }
    steps
}

/// The step of one kind of work on the first day of a run of days.
fn step<'r, 'c: 'r>(
    span: &SpanOfDays,
    (work, rungs): (&Work, &'r [Rung<'c>]),
    before: impl Iterator<Item = &'r Rung<'c>>,
    scale: &Scale<'c>,
) -> Option<Step> {
    let ratio = |rung: &Rung<'_>| rung.load.as_ref().ok().map(exercise::Load::ratio);
    let like = |rung: &&Rung<'_>| Work::of(rung.entry) == *work;
    let loads = rungs.iter().filter(like).filter_map(|rung| Some((rung, ratio(rung)?.least)));
    let (rung, least) = loads.max_by(|one, other| one.1.total_cmp(&other.1))?;
    let reached = before.filter(like).filter_map(|rung| {
        Some(Reached { exercise: rung.entry.id.clone(), held: rung.held, ratio: ratio(rung)?.most })
    });
    let reached = reached.max_by(|one, other| one.ratio.total_cmp(&other.ratio)).filter(|reached| reached.ratio > 0.0);
    let counted = reached.as_ref().map_or(0.0, |reached| reached.ratio).max(floor());
    let factor = least / counted;
    if factor <= ids::STEP_OF_LOAD.number() + ROUNDING {
        return None;
    }
    let (mass, tables) = match scale.whose {
        Whose::Known { person, tables } => (Some(person.mass()), tables),
        Whose::OfMass { mass, tables } => (Some(mass), tables),
        Whose::Anybody(tables) => (None, tables),
    };
    Some(Step {
        day: span.from_day,
        date: span.from,
        stage: span.stage.clone(),
        work: *work,
        exercise: rung.entry.id.clone(),
        held: rung.held,
        ratio: least,
        before: reached,
        factor,
        between: between(span, rung, (counted, least), scale),
        mass,
        tables: if tables.len() > 1 { Tables::Several } else { Tables::One },
    })
}

/// Weights that make even steps of a steep one, none of them above the set factor before it is rounded.
fn between(span: &SpanOfDays, rung: &Rung<'_>, (from, to): (f64, f64), scale: &Scale<'_>) -> Vec<Kilograms> {
    let Some(held) = rung.held.filter(|held| *held > Kilograms::whole(0)) else { return Vec::new() };
    let line = span.exercises.iter().find(|line| line.id == rung.entry.id);
    let target = line.and_then(|line| line.target);
    let bare = rung.entry.load(scale.whose, None, |demand| reach(rung.entry, demand, target, &span.limits));
    let Ok(bare) = bare.map(|load| load.ratio().least) else { return Vec::new() };
    let parts = ((to / from).ln() / ids::STEP_OF_LOAD.number().ln() - ROUNDING).ceil().max(2.0);
    let rounded_to = ids::WEIGHT_IN_BETWEEN.kilograms();
    let mut weights: Vec<Kilograms> = Vec::new();
    let mut part = 1.0;
    while part < parts {
        // The moment of what is held grows in step with its weight.
        let share = (from * (to / from).powf(part / parts) - bare) / (to - bare);
        let rounded = (share * held.number() / rounded_to.number()).round();
        // Between nothing and what is held, so that it fits.
        let weight = Kilograms::from_steps(rounded_to.steps() * rounded.clamp(0.0, f64::from(held.steps())) as i32);
        if weight > Kilograms::whole(0) && weight < held && !weights.contains(&weight) {
            weights.push(weight);
        }
        part += 1.0;
    }
    weights
}

impl Step {
    /// What a clinician reads under the cautions.
    ///
    /// # Units and shape
    /// `title_of` gives an exercise's title by its id.
    pub fn caution(&self, title_of: &dyn Fn(&str) -> String) -> String {
        let told = self.told(title_of);
        let advice = self.advice();
        format!("{told}. This is outer load, not tendon tension; no limit is broken by it. {}", capitalized(&advice))
    }

    /// The warning a prescription carries.
    ///
    /// # Units and shape
    /// As for [`Step::caution`].
    pub fn warning(&self, title_of: &dyn Fn(&str) -> String) -> Diagnostic {
        Diagnostic::warning("steep-step-of-load", self.told(title_of))
            .help(format!("this is outer load, not tendon tension, and no limit is broken by it; {}", self.advice()))
    }

    fn told(&self, title_of: &dyn Fn(&str) -> String) -> String {
        let day = format!("from {} (day {})", self.date, self.day.count());
        let title = title_of(&self.exercise);
        let allows = self.held.map_or_else(|| "is given".to_owned(), |held| format!("allows {held} kg"));
        let body = self.mass.map_or_else(|| "for this body".to_owned(), |mass| format!("for this body ({mass} kg)"));
        let [least, most] = match self.tables {
            Tables::One => ["", ""],
            Tables::Several => ["at least ", "at most "],
        };
        let until = match &self.before {
            None => "until then nothing of its kind held any of the arm's weight".to_owned(),
            Some(reached) => {
                let held = reached.held.map(|held| format!("{held} kg"));
                let other = (reached.exercise != self.exercise).then(|| format!("\"{}\"", title_of(&reached.exercise)));
                let which: Vec<String> = other.into_iter().chain(held).collect();
                let which = if which.is_empty() { String::new() } else { format!(" ({})", which.join(", ")) };
                format!("until then {most}{:.1}{which}", reached.ratio)
            }
        };
        format!(
            "{day} \"{title}\" {allows}: {body} that turns the shoulder {least}{:.1} times as hard as the own straight \
             arm held level, {until}",
            self.ratio
        )
    }

    fn advice(&self) -> String {
        let kilograms: Vec<String> = self.between.iter().map(|weight| format!("{weight} kg")).collect();
        match kilograms.as_slice() {
            [] => "consider to begin it lighter, agreed between surgeon and therapist".to_owned(),
            [one] => format!("consider a weight in between, e.g. {one}, agreed between surgeon and therapist"),
            [first @ .., last] => format!(
                "consider weights in between, e.g. {} and then {last}, agreed between surgeon and therapist",
                first.join(", ")
            ),
        }
    }
}

fn capitalized(sentence: &str) -> String {
    let mut signs = sentence.chars();
    signs.next().map_or_else(String::new, |first| first.to_uppercase().chain(signs).collect())
}

fn floor() -> f64 {
    const HUNDRED: f64 = 100.0; // not medical: the prefix of a percentage
    ids::STEP_OF_LOAD_FLOOR.number() / HUNDRED
}

const ROUNDING: f64 = 1e-9; // not medical: of the arithmetic
