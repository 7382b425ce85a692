//! Values without a source that stand on the patient's paper: the surgeon sees them above the signature.

use std::collections::BTreeMap;

use evidence::{Entry, ids};
use plan::Reason;

use crate::desk::Desk;
use crate::document::{Block, Column, Print, Tone};
use crate::limits_table::plain;
use crate::reasons_list::measure;
use crate::texts::Texts;

/// The values that patients' texts take from the table by themselves: fixed texts, landmarks, windows of visits.
const OF_TEXTS: &[&Entry] = &[
    ids::BLOCK_ADVICE_AFTER,
    ids::BLOCK_CALL_AFTER,
    ids::BLOCK_USUAL_LENGTH,
    ids::CHEST_HEIGHT,
    ids::CHIN_HEIGHT,
    ids::EARLY_HAND_REPETITIONS,
    ids::EYE_HEIGHT,
    ids::FEVER_MEASURE_AGAIN_UNTIL,
    ids::FEVER_SAME_DAY,
    ids::FOREARM_LENGTH,
    ids::FRESH_LEAK_AFTER,
    ids::GRIP_CENTER,
    ids::HAND_SWELLING_WITHIN,
    ids::HIP_HEIGHT,
    ids::HOME_MARGIN,
    ids::ICE_MINUTES,
    ids::ICE_TIMES,
    ids::LIGHT_PRESS,
    ids::NAVEL_HEIGHT,
    ids::NEXT_STEP_ON_PAPER,
    ids::NOTHING_LOOSER_BEFORE_A_GO_BACK,
    ids::PAIN_AFTER_EXERCISE,
    ids::SESSIONS_A_DAY,
    ids::SHOULDER_CENTER_HEIGHT,
    ids::THIGH_TOP_HEIGHT,
    ids::TURNED_OUT_A_FIFTH,
    ids::TURNED_OUT_A_SIXTH,
    ids::TURNED_OUT_A_THIRD,
    ids::TURNED_OUT_HALF,
    ids::TURNED_OUT_TO_THE_SIDE,
    ids::TURNED_OUT_TWO_THIRDS,
    ids::UPPER_ARM_LENGTH,
    ids::WOUND_DRY_UNTIL,
    ids::WOUND_VISIT_FROM,
    ids::WOUND_VISIT_UNTIL,
];

/// What the patient's paper of a desk rests on and was not read in a source.
#[derive(Debug, Clone, Default)]
pub(crate) struct Marked {
    /// Behind limits, the sling, exercises, dates and texts.
    pub plan: BTreeMap<&'static str, &'static Entry>,
    /// Behind the angles and loads of daily activities alone.
    pub activities: BTreeMap<&'static str, &'static Entry>,
}

impl Marked {
    /// Every such entry, each once.
    ///
    /// # Method
    /// The reasons of limits, sling and exercises of the opened parts; the demands and doses of their
    /// exercises; the activities that are answered; and what patients' texts take from the table themselves.
    pub fn of(desk: &Desk<'_>) -> Self {
        let mut plan: Vec<&'static Entry> = OF_TEXTS.to_vec();
        let mut of_reasons = |reasons: &[Reason]| plan.extend(reasons.iter().flat_map(|reason| &reason.evidence));
        let parts = desk.parts();
        let periods = || parts.iter().flat_map(|part| &part.periods);
        for period in periods() {
            of_reasons(&period.sling.reasons);
            period.limits.iter().for_each(|row| of_reasons(&row.reasons));
            period.exercises.iter().for_each(|line| of_reasons(&line.reasons));
        }
        desk.answers.iter().flatten().for_each(|may| of_reasons(&may.because));
        let exercises = periods().flat_map(|period| period.exercises);
        for entry in exercises.filter_map(|line| desk.catalogue.get(&line.id)) {
            plan.extend(&entry.evidence);
            plan.extend(entry.dose.iter().flat_map(|dose| &dose.evidence));
        }
        let answered = desk.answers.iter().flatten().filter_map(|may| desk.catalogue.get(&may.activity));
        let activities: Vec<&'static Entry> = answered.flat_map(|entry| &entry.evidence).copied().collect();
        let marked = |entries: Vec<&'static Entry>| -> BTreeMap<&'static str, &'static Entry> {
            let marked = entries.into_iter().filter(|entry| entry.how_known.mark().is_some());
            marked.map(|entry| (entry.id, entry)).collect()
        };
        let (plan, mut activities) = (marked(plan), marked(activities));
        activities.retain(|id, _| !plan.contains_key(id));
        Self { plan, activities }
    }
}

/// The marked values: those of the plan as a table, those of activities in a paragraph.
pub(crate) fn blocks(desk: &Desk<'_>, say: &Texts<'_>) -> Vec<Block> {
    let marked = Marked::of(desk);
    if marked.plan.is_empty() && marked.activities.is_empty() {
        return vec![say.paragraph(Tone::Plain, "surgeon-marked-none", &[])];
    }
    let mut blocks = vec![say.paragraph(Tone::Plain, "surgeon-marked-text", &[])];
    if !marked.plan.is_empty() {
        blocks.push(table(say.get("surgeon-marked-alt"), &marked.plan));
    }
    if !marked.activities.is_empty() {
        let values: Vec<String> = marked
            .activities
            .values()
            .map(|entry| match (measure(entry), entry.how_known.mark()) {
                (Some(value), Some(mark)) => format!("{} = {value} [{mark}]", entry.id),
                (_, mark) => format!("{} [{}]", entry.id, mark.unwrap_or_default()),
            })
            .collect();
        let told = [("values", values.join("; ").into())];
        blocks.push(say.paragraph(Tone::Faint, "surgeon-marked-activities", &told));
    }
    blocks
}

fn table(alt: String, marked: &BTreeMap<&'static str, &'static Entry>) -> Block {
    let columns = vec![
        Column { title: "value".into(), share: 5 }, // not medical: widths
        Column { title: "is".into(), share: 0 },
        Column { title: "known how".into(), share: 0 },
        Column { title: "id".into(), share: 3 }, // not medical: widths
    ];
    let rows = marked
        .values()
        .map(|entry| {
            vec![
                plain(entry.what.to_owned()),
                plain(measure(entry).unwrap_or_default()),
                plain(entry.how_known.mark().unwrap_or_default().to_owned()),
                plain(entry.id.to_owned()),
            ]
        })
        .collect();
    Block::Table { alt, print: Print::Smaller, columns, rows }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A value that a patient's text begins to use has to be listed here.
    #[test]
    fn what_the_sources_name_is_listed() {
        let sources = [
            include_str!("household.rs"),
            include_str!("points.rs"),
            include_str!("handout.rs"),
            include_str!("first_days.rs"),
            include_str!("fridge.rs"),
            include_str!("calls.rs"),
            include_str!("exercises.rs"),
            include_str!("activities.rs"),
            include_str!("sling.rs"),
            include_str!("../../wording/src/first_days.rs"),
        ];
        let mut named = 0;
        for source in sources {
            let shipped = source.split("#[cfg(test)]").next().unwrap_or(source);
            for text in shipped.split("ids::").skip(1) {
                let name: String =
                    text.chars().take_while(|c| c.is_ascii_uppercase() || *c == '_' || c.is_ascii_digit()).collect();
                if name.is_empty() {
                    continue;
                }
                named += 1;
                let id = name.to_lowercase().replace('_', "-");
                assert!(OF_TEXTS.iter().any(|entry| entry.id == id), "{id} is not listed");
            }
        }
        assert!(named > 20, "only {named} were found");
    }
}
