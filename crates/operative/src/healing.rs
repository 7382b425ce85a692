//! The healing index of 2019: how likely the repair is to heal, as an interval
//! over what is not recorded.

use evidence::{Entry, ids};
use quantity::Millimeters;

use crate::age::completed_years;
use crate::record::Record;
use crate::words::{Activity, Procedure};

const AGE_OVER: i16 = ids::HEALING_INDEX_AGE_OVER.years();
const ANTEROPOSTERIOR_OVER: Millimeters = ids::HEALING_INDEX_ANTEROPOSTERIOR_OVER.millimeters();
const FIRST_STEP: Millimeters = ids::HEALING_INDEX_RETRACTION_FIRST_STEP.millimeters();
const SECOND_STEP: Millimeters = ids::HEALING_INDEX_RETRACTION_SECOND_STEP.millimeters();
const THIRD_STEP: Millimeters = ids::HEALING_INDEX_RETRACTION_THIRD_STEP.millimeters();
const INFILTRATION_FROM: f64 = ids::HEALING_INDEX_INFILTRATION_FROM.number();
const BONE_DENSITY_AT_MOST: f64 = ids::HEALING_INDEX_BONE_DENSITY_AT_MOST.number();
const TOTAL: u8 = ids::HEALING_INDEX_TOTAL.points();

/// The healing index of a record; for clinicians only, and it changes no plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HealingIndex {
    /// Whether the index speaks of this operation: not where no tendon was repaired.
    pub applies: bool,
    /// The score, where nothing it reads is missing.
    pub score: Option<u8>,
    /// The lowest score over what is not recorded.
    pub low: u8,
    /// The highest score over what is not recorded.
    pub high: u8,
    /// The paths of what it reads and does not find.
    pub missing: Vec<String>,
    /// The highest score there is.
    pub of: u8,
    /// What was seen in repairs of this score, in a plain sentence without full stop.
    pub meaning: String,
    /// The evidence it rests on.
    pub evidence: Vec<&'static str>,
}

/// One item of the index: what it found, what it can give at most, and what it rests on.
struct Item {
    path: &'static str,
    points: Option<u8>,
    most: u8,
    evidence: &'static [&'static Entry],
}

impl Item {
    /// An item that gives all its points or none.
    fn whole(path: &'static str, found: Option<bool>, evidence: &'static [&'static Entry; 2]) -> Self {
        let most = evidence[1].points();
        Self { path, points: found.map(|counts| if counts { most } else { 0 }), most, evidence }
    }
}

/// The healing index of a record.
///
/// # Units and shape
/// Points from 0 to 15; `low` and `high` are equal where nothing is missing.
///
/// # Method
/// Six items: age in completed years on the day of surgery, front-to-back size
/// of the tear, retraction in three steps, infiltration of the infraspinatus,
/// bone density, and heavy work or activity. What is not recorded gives none
/// of its points in `low` and all of them in `high`.
///
/// # Source
/// The `healing-index-…` entries; which percentage belongs to which band is an own choice.
pub fn healing_index(record: &Record) -> HealingIndex {
    if record.procedure() == Procedure::CapsularRelease {
        return HealingIndex {
            applies: false,
            score: None,
            low: 0,
            high: TOTAL,
            missing: Vec::new(),
            of: TOTAL,
            meaning: "the index speaks of repaired tendons only".to_owned(),
            evidence: vec![ids::HEALING_INDEX_TOTAL.id],
        };
    }
    let items = items(record);
    let low: u8 = items.iter().map(|item| item.points.unwrap_or(0)).sum();
    let high: u8 = items.iter().map(|item| item.points.unwrap_or(item.most)).sum();
    let missing: Vec<_> = items.iter().filter(|item| item.points.is_none()).map(|item| item.path.to_owned()).collect();
    let mut evidence: Vec<_> = items.iter().flat_map(|item| item.evidence.iter().map(|entry| entry.id)).collect();
    evidence.push(ids::HEALING_INDEX_TOTAL.id);
    for band in BANDS {
        evidence.extend(band.until.map(|entry| entry.id));
        evidence.push(band.healed.id);
    }
    HealingIndex {
        applies: true,
        score: missing.is_empty().then_some(low),
        low,
        high,
        missing,
        of: TOTAL,
        meaning: meaning(low, high),
        evidence,
    }
}

fn items(record: &Record) -> Vec<Item> {
    let (tear, risk) = (&record.operation.tear, &record.risk);
    let age = completed_years(record.patient.birth_date.value, record.operation_date());
    let grade = record.operation.fatty_infiltration.infraspinatus;
    vec![
        Item::whole(
            "patient.birth_date",
            Some(age > AGE_OVER),
            &[ids::HEALING_INDEX_AGE_OVER, ids::HEALING_INDEX_AGE_POINTS],
        ),
        Item::whole(
            "operation.tear.anteroposterior",
            tear.anteroposterior.map(|size| size.value > ANTEROPOSTERIOR_OVER),
            &[ids::HEALING_INDEX_ANTEROPOSTERIOR_OVER, ids::HEALING_INDEX_ANTEROPOSTERIOR_POINTS],
        ),
        Item {
            path: "operation.tear.retraction",
            points: tear.retraction.map(|length| retraction_points(length.value)),
            most: ids::HEALING_INDEX_RETRACTION_THIRD_POINTS.points(),
            evidence: &[
                ids::HEALING_INDEX_RETRACTION_FIRST_STEP,
                ids::HEALING_INDEX_RETRACTION_FIRST_POINTS,
                ids::HEALING_INDEX_RETRACTION_SECOND_STEP,
                ids::HEALING_INDEX_RETRACTION_SECOND_POINTS,
                ids::HEALING_INDEX_RETRACTION_THIRD_STEP,
                ids::HEALING_INDEX_RETRACTION_THIRD_POINTS,
            ],
        },
        Item::whole(
            "operation.fatty_infiltration.infraspinatus",
            grade.map(|grade| f64::from(grade.value) >= INFILTRATION_FROM),
            &[ids::HEALING_INDEX_INFILTRATION_FROM, ids::HEALING_INDEX_INFILTRATION_POINTS],
        ),
        Item::whole(
            "risk.bone_density_t_score",
            risk.bone_density_t_score.map(|score| score.value <= BONE_DENSITY_AT_MOST),
            &[ids::HEALING_INDEX_BONE_DENSITY_AT_MOST, ids::HEALING_INDEX_BONE_DENSITY_POINTS],
        ),
        Item {
            path: "risk.activity",
            points: risk.activity.map(|activity| match activity.value {
                Activity::Heavy => ids::HEALING_INDEX_ACTIVITY_POINTS.points(),
                Activity::Light | Activity::Moderate => 0,
            }),
            most: ids::HEALING_INDEX_ACTIVITY_POINTS.points(),
            evidence: &[ids::HEALING_INDEX_ACTIVITY_POINTS],
        },
    ]
}

fn retraction_points(length: Millimeters) -> u8 {
    if length >= THIRD_STEP {
        ids::HEALING_INDEX_RETRACTION_THIRD_POINTS.points()
    } else if length >= SECOND_STEP {
        ids::HEALING_INDEX_RETRACTION_SECOND_POINTS.points()
    } else if length >= FIRST_STEP {
        ids::HEALING_INDEX_RETRACTION_FIRST_POINTS.points()
    } else {
        0
    }
}

/// A run of scores and the share that had healed; the last has no end.
struct Band {
    until: Option<&'static Entry>,
    healed: &'static Entry,
}

static BANDS: &[Band] = &[
    Band { until: Some(ids::HEALING_INDEX_FIRST_BAND_UNTIL), healed: ids::HEALING_INDEX_FIRST_BAND_HEALED },
    Band { until: Some(ids::HEALING_INDEX_SECOND_BAND_UNTIL), healed: ids::HEALING_INDEX_SECOND_BAND_HEALED },
    Band { until: Some(ids::HEALING_INDEX_THIRD_BAND_UNTIL), healed: ids::HEALING_INDEX_THIRD_BAND_HEALED },
    Band { until: None, healed: ids::HEALING_INDEX_FOURTH_BAND_HEALED },
];

/// The healed share of the band of a score.
fn healed(score: u8) -> &'static Entry {
    let band = BANDS.iter().find(|band| band.until.is_none_or(|until| score <= until.points()));
    band.map_or(ids::HEALING_INDEX_FOURTH_BAND_HEALED, |band| band.healed)
}

fn meaning(low: u8, high: u8) -> String {
    let (best, worst) = (healed(low), healed(high));
    if best.id == worst.id {
        format!("in the study group with such a score about {} % of the repairs had healed", best.percent())
    } else {
        format!(
            "what is not recorded decides between study groups in which about {} % and about {} % of the repairs had healed",
            best.percent(),
            worst.percent()
        )
    }
}
