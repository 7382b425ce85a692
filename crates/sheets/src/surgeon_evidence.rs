//! Values without a source that stand on the patient's paper: the surgeon sees them above the signature.

use std::collections::BTreeMap;

use evidence::{Entry, ids};

use crate::desk::Desk;
use crate::document::{Block, Column, Print};
use crate::limits_table::plain;
use crate::reasons_list::{ReasonsList, measure};

/// The values that patients' texts take from the table by themselves: fixed texts, landmarks, windows of visits.
const OF_TEXTS: &[&Entry] = &[
    ids::BLOCK_ADVICE_AFTER,
    ids::BLOCK_CALL_AFTER,
    ids::BLOCK_USUAL_LENGTH,
    ids::EARLY_HAND_REPETITIONS,
    ids::FEVER_MEASURE_AGAIN_UNTIL,
    ids::FEVER_SAME_DAY,
    ids::FRESH_LEAK_AFTER,
    ids::HAND_AT_BELLY_BUTTON,
    ids::HAND_AT_CHEST,
    ids::HAND_AT_CHIN,
    ids::HAND_AT_EYES,
    ids::HAND_AT_HIP,
    ids::HAND_AT_SHOULDER,
    ids::HAND_AT_TOP_OF_HEAD,
    ids::HAND_AT_TOP_OF_THIGH,
    ids::HAND_SWELLING_WITHIN,
    ids::HOME_MARGIN,
    ids::ICE_MINUTES,
    ids::ICE_TIMES,
    ids::LIGHT_PRESS,
    ids::PAIN_AFTER_EXERCISE,
    ids::SESSIONS_A_DAY,
    ids::TURNED_OUT_A_THIRD,
    ids::TURNED_OUT_HALF,
    ids::TURNED_OUT_TO_THE_SIDE,
    ids::TURNED_OUT_TWO_THIRDS,
    ids::WOUND_DRY_UNTIL,
    ids::WOUND_VISIT_FROM,
    ids::WOUND_VISIT_UNTIL,
];

/// Every entry that the patient's paper of this desk rests on and that was not read in a source, each once.
///
/// # Method
/// The reasons of limits, sling and exercises of the opened parts; the demands and doses of their exercises; the
/// activities that are answered; and what patients' texts take from the table themselves.
pub(crate) fn marked(desk: &Desk<'_>) -> Vec<&'static Entry> {
    let mut list = ReasonsList::default();
    for period in desk.parts().iter().flat_map(|part| &part.periods) {
        let limits = period.limits.iter().flat_map(|row| &row.reasons);
        let exercises = period.exercises.iter().flat_map(|line| &line.reasons);
        list.refer(limits.chain(exercises).chain(&period.sling.reasons));
    }
    let mut entries: BTreeMap<&str, &'static Entry> = BTreeMap::new();
    let mut add = |entry: &'static Entry| {
        if entry.how_known.mark().is_some() {
            entries.insert(entry.id, entry);
        }
    };
    list.entries().into_iter().for_each(&mut add);
    OF_TEXTS.iter().copied().for_each(&mut add);
    let exercises = desk.parts().into_iter().flat_map(|part| part.periods).flat_map(|period| period.exercises);
    let exercised = exercises.filter_map(|line| desk.catalogue.get(&line.id));
    for entry in exercised {
        entry.evidence.iter().copied().for_each(&mut add);
        entry.dose.iter().flat_map(|dose| &dose.evidence).copied().for_each(&mut add);
    }
    let answered = desk.answers.iter().flatten();
    for may in answered {
        let entry = desk.catalogue.get(&may.activity);
        entry.iter().flat_map(|entry| &entry.evidence).copied().for_each(&mut add);
        may.because.iter().flat_map(|reason| &reason.evidence).copied().for_each(&mut add);
    }
    entries.into_values().collect()
}

/// The marked values as a table.
pub(crate) fn table(alt: String, marked: &[&'static Entry]) -> Block {
    let columns = vec![
        Column { title: "value".into(), share: 5 }, // not medical: widths
        Column { title: "is".into(), share: 0 },
        Column { title: "known how".into(), share: 2 },
        Column { title: "id".into(), share: 3 }, // not medical: widths
    ];
    let rows = marked
        .iter()
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
