//! The document of `ladder`.

use ::diagnostic::{Diagnostic as Found, Sources};
use ::prescription::ladder::{Agreement, Rung, Step, agreement};
use body::{HangingArm, Moments, SegmentTable, Spread};
use exercise::{Measured, NoLoad, Whose};
use schemars::JsonSchema;
use serde::Serialize;

use super::{Diagnostic, diagnostics, to_text, usual_cautions};
use crate::shelf::Shelf;
use crate::view::ladder::Told;

/// The schema of this document.
pub const SCHEMA: &str = "mendarc.ladder/1";

/// Exercises by what they ask an arm to hold against gravity.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Ladder<'a> {
    pub schema: &'a str,
    /// Null where stature or body mass is not known.
    pub person: Option<Whom>,
    /// The published tables of segments that were used.
    pub tables: Vec<&'static str>,
    /// The moment of the straight arm held level, in newton meters; null where nobody in particular is asked about.
    pub straight_level_arm_nm: Option<Range>,
    /// The same by the handbook's table of cadavers, kept as a check.
    pub straight_level_arm_check_nm: Option<f64>,
    /// The straight arm that hangs loose; null where nobody in particular is asked about.
    pub hanging_arm: Option<Hanging>,
    /// Lightest first, those without a number last; with a record each stage's exercises stand together, each once for
    /// every load it comes to in the stage.
    pub exercises: Vec<Exercise>,
    /// Days on which the heaviest exercise of its kind becomes much heavier; says nothing of what `steps_leave_out` names.
    pub steps: Vec<SteepStep>,
    /// Exercises whose load has no number, so that no step of theirs can be found.
    pub steps_leave_out: Vec<LeftOut>,
    pub agreement: Vec<Agrees>,
    pub cautions: Vec<String>,
    pub diagnostics: Vec<Diagnostic>,
}

/// An arm that swings from the shoulder and that nothing drives.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Hanging {
    pub natural_period_s: Range,
    /// Below the shoulder.
    pub center_of_oscillation_cm: Range,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Whom {
    pub stature_cm: f64,
    pub mass_kg: f64,
}

/// What the tables, and a weight that is partly carried, leave open.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Range {
    pub low: f64,
    pub high: f64,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Exercise {
    pub id: String,
    pub title: String,
    pub stage: Option<String>,
    /// The first postoperative day of this load in the stage.
    pub from_day: Option<u16>,
    /// The same day as a date.
    pub from: Option<String>,
    /// What holds the arm: own, forearm, shared, carried, hanging; null where gravity is not what the arm works against.
    pub weight: Option<&'static str>,
    pub held_kg: Option<f64>,
    /// The greatest gravitational moment at the shoulder that the arm's own muscles hold: by the heavier table where sex
    /// is not known, and with the middle of what a helped arm may hold.
    pub peak_moment_nm: Option<f64>,
    pub peak_moment_range_nm: Option<Range>,
    /// The same as a multiple of the own straight arm held level.
    pub relative: Option<f64>,
    pub relative_range: Option<Range>,
    /// The same if nothing were carried.
    pub relative_uncarried: Option<f64>,
    /// How far up the arm is where it is heaviest.
    pub at_elevation_deg: Option<f64>,
    /// Why there is no number.
    pub not_known: Option<&'static str>,
    /// What asks something of the shoulder that gravity does not tell; where there is any, there is no number.
    pub beyond_gravity: Vec<&'static str>,
    pub muscles: Muscles,
}

/// Null is "not measured".
#[derive(Debug, Serialize, JsonSchema)]
pub struct Muscles {
    pub supraspinatus: Option<Activity>,
    pub infraspinatus: Option<Activity>,
    pub subscapularis: Option<Activity>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Activity {
    pub class: &'static str,
    pub evidence: &'static str,
    /// Set where nobody here has read the source.
    pub mark: Option<&'static str>,
}

/// A day from which the heaviest exercise of its kind is much heavier than any of that kind before.
#[derive(Debug, Serialize, JsonSchema)]
pub struct SteepStep {
    pub day: u16,
    pub date: String,
    pub stage: String,
    /// What is compared: raising, turning, moving back, arm at the side.
    pub kind: &'static str,
    pub exercise: String,
    pub held_kg: Option<f64>,
    pub relative: f64,
    /// The heaviest of its kind before it, since the last go-back.
    pub before: Option<Before>,
    /// Over what counted before: the own straight arm held level, or `before` where that is more.
    pub factor: f64,
    /// Weights that would divide the step into even parts.
    pub between_kg: Vec<f64>,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct LeftOut {
    pub exercise: String,
    pub why: &'static str,
}

#[derive(Debug, Serialize, JsonSchema)]
pub struct Before {
    pub exercise: String,
    pub held_kg: Option<f64>,
    pub relative: f64,
}

/// How far the order by weight agrees with muscle activity.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Agrees {
    pub muscle: &'static str,
    pub exercises: usize,
    pub pairs_that_agree: usize,
    pub pairs_that_disagree: usize,
    pub pairs_that_tell_nothing: usize,
    pub out_of_order: Vec<Misplaced>,
}

/// An exercise that works the muscle harder than a heavier one does.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Misplaced {
    pub exercise: String,
    pub relative: f64,
    pub class: &'static str,
    pub heavier: String,
    pub heavier_relative: f64,
    pub heavier_class: &'static str,
    pub why: Vec<&'static str>,
}

/// The document.
pub fn document(told: &Told<'_>, shelf: &Shelf, found: &[Found], sources: &Sources) -> String {
    let (person, tables) = match told.whose {
        Whose::Known { person, tables } => (Some(person), tables),
        Whose::OfMass { tables, .. } | Whose::Anybody(tables) => (None, tables),
    };
    let level = person.and_then(|person| {
        let of = |table: &SegmentTable| Moments::straight_level_arm(person.by(*table)).shoulder.newton_meters();
        Spread::of(tables.iter().map(of))
    });
    to_text(&Ladder {
        schema: SCHEMA,
        person: person
            .map(|person| Whom { stature_cm: person.stature().number() / 10.0, mass_kg: person.mass().number() }),
        tables: tables.iter().map(|table| table.name()).collect(),
        straight_level_arm_nm: level.map(range),
        straight_level_arm_check_nm: person.map(|person| {
            rounded(Moments::straight_level_arm(person.by(SegmentTable::Cadavers)).shoulder.newton_meters())
        }),
        hanging_arm: person.and_then(|person| {
            let arms = || tables.iter().map(|table| HangingArm::of(person.by(*table), quantity::Kilograms::whole(0)));
            Some(Hanging {
                natural_period_s: range(Spread::of(arms().map(HangingArm::natural_period_s))?),
                center_of_oscillation_cm: range(Spread::of(arms().map(|arm| arm.center_of_oscillation_m() * 100.0))?),
            })
        }),
        exercises: told.rungs.iter().map(|rung| exercise(rung, told, shelf)).collect(),
        steps: told.steps.iter().map(step).collect(),
        steps_leave_out: left_out(told),
        agreement: agreement(told.rungs).iter().map(agrees).collect(),
        cautions: usual_cautions(),
        diagnostics: diagnostics::all(found, sources),
    })
}

/// Each exercise without a number once.
fn left_out(told: &Told<'_>) -> Vec<LeftOut> {
    let mut left_out: Vec<LeftOut> = Vec::new();
    for rung in told.rungs {
        if let Err(why) = &rung.load
            && !left_out.iter().any(|known| known.exercise == rung.entry.id)
        {
            left_out.push(LeftOut { exercise: rung.entry.id.clone(), why: not_known(*why) });
        }
    }
    left_out
}

fn exercise(rung: &Rung<'_>, told: &Told<'_>, shelf: &Shelf) -> Exercise {
    let load = rung.load.as_ref().ok();
    let moment = load.and_then(exercise::Load::moment_nm);
    Exercise {
        id: rung.entry.id.clone(),
        title: shelf.title(&rung.entry.id),
        stage: rung.stage.map(str::to_owned),
        from_day: rung.from_day.map(quantity::PostoperativeDay::count),
        from: rung
            .from_day
            .zip(told.prescription)
            .map(|(day, prescription)| day.date(prescription.operated_on).to_string()),
        weight: rung.entry.holder().map(exercise::Holder::name),
        held_kg: rung.held.map(quantity::Kilograms::number),
        peak_moment_nm: load.and_then(exercise::Load::middle_nm).map(rounded),
        peak_moment_range_nm: moment.map(range),
        relative: load.map(|load| rounded(load.middle())),
        relative_range: load.map(|load| range(load.ratio())),
        relative_uncarried: load.map(|load| rounded(load.uncarried().most)),
        at_elevation_deg: load.map(|load| rounded(load.elevation.degrees())),
        not_known: rung.load.as_ref().err().map(|why| not_known(*why)),
        beyond_gravity: rung.entry.beyond_gravity().iter().map(|beyond| beyond.name()).collect(),
        muscles: Muscles {
            supraspinatus: activity(rung.entry.muscle.supraspinatus),
            infraspinatus: activity(rung.entry.muscle.infraspinatus),
            subscapularis: activity(rung.entry.muscle.subscapularis),
        },
    }
}

/// Why a load has no number.
pub(crate) const fn not_known(why: NoLoad) -> &'static str {
    match why {
        NoLoad::MassUnknown => "a weight is held and the body mass is not known",
        NoLoad::NotGravity => "its load is not gravity",
        NoLoad::NotAnExercise | NoLoad::NoTable => "it has no poses",
    }
}

fn activity(measured: Option<Measured>) -> Option<Activity> {
    measured.map(|measured| Activity {
        class: measured.class.name(),
        evidence: measured.evidence.id,
        mark: measured.evidence.how_known.mark(),
    })
}

fn step(step: &Step) -> SteepStep {
    SteepStep {
        day: step.day.count(),
        date: step.date.to_string(),
        stage: step.stage.clone(),
        kind: step.work.name(),
        exercise: step.exercise.clone(),
        held_kg: step.held.map(quantity::Kilograms::number),
        relative: rounded(step.ratio),
        before: step.before.as_ref().map(|reached| Before {
            exercise: reached.exercise.clone(),
            held_kg: reached.held.map(quantity::Kilograms::number),
            relative: rounded(reached.ratio),
        }),
        factor: rounded(step.factor),
        between_kg: step.between.iter().map(|weight| weight.number()).collect(),
    }
}

fn agrees(found: &Agreement) -> Agrees {
    Agrees {
        muscle: found.muscle.name(),
        exercises: found.measured,
        pairs_that_agree: found.agree,
        pairs_that_disagree: found.disagree,
        pairs_that_tell_nothing: found.tied,
        out_of_order: found
            .out_of_order
            .iter()
            .map(|misplaced| Misplaced {
                exercise: misplaced.exercise.clone(),
                relative: rounded(misplaced.ratio),
                class: misplaced.class.name(),
                heavier: misplaced.heavier.clone(),
                heavier_relative: rounded(misplaced.heavier_ratio),
                heavier_class: misplaced.heavier_class.name(),
                why: misplaced.why.iter().map(|why| why.name()).collect(),
            })
            .collect(),
    }
}

fn range(spread: Spread) -> Range {
    Range { low: rounded(spread.least), high: rounded(spread.most) }
}

/// To three places: finer than the tables agree.
fn rounded(number: f64) -> f64 {
    (number * 1000.0).round() / 1000.0
}
