//! Where the heaviest exercise becomes much heavier at once.

use diagnostic::Diagnostic;
use evidence::ids;
use exercise::{Catalogue, Whose};
use plan::Prescription;
use quantity::PostoperativeDay;

use super::Scale;

/// A day from which the heaviest exercise is much heavier than any before.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// The day.
    pub day: PostoperativeDay,
    /// The stage that day belongs to.
    pub stage: String,
    /// The exercise.
    pub exercise: String,
    /// What it asks at least, as a multiple of the own straight arm held level.
    pub ratio: f64,
    /// The heaviest before it, and what that asks at most; `None` where nothing before held any weight.
    pub before: Option<(String, f64)>,
    /// How many times what counted before.
    pub factor: f64,
}

/// The days on which the heaviest exercise becomes heavier by more than the set factor.
///
/// # Method
/// Run of days by run of days: the heaviest of what the own muscles hold against gravity, over the heaviest of all
/// days before. Only steps that are certain are told: the least that the new one asks over the most that an earlier one
/// may have asked, so that a helped arm counts in full before and not at all after. The own straight arm counts as
/// reached from the start, because from carried to own weight is the step a stage is for. Exercises whose load has no
/// number are left out, so with a body mass unknown no step of a weight in the hand is found.
///
/// # Source
/// `step-of-load`, `step-of-load-floor`: own choices.
pub fn steep_steps<'c>(prescription: &'c Prescription, catalogue: &'c Catalogue, whose: Whose<'c>) -> Vec<Step> {
    let mut scale = Scale::new(catalogue, whose);
    let mut steps = Vec::new();
    let mut heaviest: Option<(String, f64)> = None;
    for span in &prescription.spans {
        let rungs = scale.of_span(span);
        let loads = || rungs.iter().filter_map(|rung| Some((rung.entry.id.as_str(), rung.load.as_ref().ok()?.ratio())));
        let least = loads().map(|(id, ratio)| (id, ratio.least)).max_by(|one, other| one.1.total_cmp(&other.1));
        let most = loads().map(|(id, ratio)| (id, ratio.most)).max_by(|one, other| one.1.total_cmp(&other.1));
        let (Some((exercise, ratio)), Some((heavy, most))) = (least, most) else { continue };
        let counted = heaviest.as_ref().map_or(0.0, |before| before.1).max(floor());
        let factor = ratio / counted;
        if factor > ids::STEP_OF_LOAD.number() + ROUNDING {
            steps.push(Step {
                day: span.from_day,
                stage: span.stage.clone(),
                exercise: exercise.to_owned(),
                ratio,
                before: heaviest.clone().filter(|before| before.1 > 0.0),
                factor,
            });
        }
        if heaviest.as_ref().is_none_or(|before| most > before.1) {
            heaviest = Some((heavy.to_owned(), most));
        }
    }
    steps
}

impl Step {
    /// The warning a prescription carries.
    pub fn warning(&self) -> Diagnostic {
        let before = self.before.as_ref().map_or_else(
            || "nothing before it holds the arm's weight".to_owned(),
            |(exercise, ratio)| format!("the heaviest before it is `{exercise}` with {ratio:.2}"),
        );
        Diagnostic::warning(
            "steep-step-of-load",
            format!(
                "on day {} `{}` asks the shoulder to hold {:.2} times the weight of the straight arm, and {before}",
                self.day.count(),
                self.exercise,
                self.ratio
            ),
        )
        .help("start with a lighter weight, or put an exercise between the two; no limit is broken by it")
    }
}

fn floor() -> f64 {
    const HUNDRED: f64 = 100.0; // not medical: the prefix of a percentage
    ids::STEP_OF_LOAD_FLOOR.number() / HUNDRED
}

const ROUNDING: f64 = 1e-9; // not medical: of the arithmetic
