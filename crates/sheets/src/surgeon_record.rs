//! What the plan rests on beside the operation: the other arm, what may slow healing, the surgeon's answers.

use operative::Record;

use crate::document::Fact;
use crate::letter_done::{NOT_RECORDED, flag};
use crate::letter_safety::other_arm;
use crate::letter_text::fact;

/// The rows below those of the operation.
pub(crate) fn facts(record: &Record) -> Vec<Fact> {
    let mut rows = vec![fact("Other arm", other_arm(record)), fact("Risk", risk(record))];
    let answers = answers(record);
    let told = if answers.is_empty() { "none recorded".into() } else { answers.join("; ") };
    rows.push(fact("Surgeon's answers", told));
    rows
}

fn risk(record: &Record) -> String {
    let risk = &record.risk;
    let score = risk.bone_density_t_score.map_or(NOT_RECORDED.into(), |score| format!("T-score {}", score.value));
    [
        format!("diabetes: {}", flag(risk.diabetes.map(|v| v.value))),
        format!("smoking: {}", flag(risk.smoking.map(|v| v.value))),
        format!("bone density: {score}"),
        format!("stiff before surgery: {}", flag(risk.preoperative_stiffness.map(|v| v.value))),
        format!("work and leisure: {}", risk.activity.map_or(NOT_RECORDED, |v| v.value.name())),
        format!("pseudoparalysis: {}", flag(risk.pseudoparalysis.map(|v| v.value))),
    ]
    .join("; ")
}

fn answers(record: &Record) -> Vec<String> {
    let given = &record.surgeon;
    [
        given.slower.map(|v| format!("slower: {}", flag(Some(v.value)))),
        given.stiff_shoulder.map(|v| format!("stiff or released shoulder: {}", v.value)),
        given.beyond_delayed.map(|v| format!("beyond the delayed protocol: {}", v.value)),
        given.safe_arc_kept.map(|v| format!("safe arc kept: {}", flag(Some(v.value)))),
    ]
    .into_iter()
    .flatten()
    .collect()
}
