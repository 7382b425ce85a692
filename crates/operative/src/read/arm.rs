//! The patient, the arm that has to help, the risks and the surgeon's answers.

use body::{PersonError, Side};
use diagnostic::{Diagnostic, Sink, Spanned};
use document::{Table, Value};
use evidence::ids;
use quantity::{Kilograms, Millimeters};

use super::require_table;
use crate::record::{OtherArm, Patient, Risk, SurgeonAnswers};
use crate::words::{Activity, BeyondDelayed, OtherShoulder, Sex, StiffShoulder};

const LONGEST_ID: usize = 64; // not medical: room on a printed line
const T_SCORE_GREATEST: f64 = ids::RECORD_T_SCORE_GREATEST.number();

pub(super) fn patient(top: &mut Table<'_>, sink: &mut Sink) -> Option<Patient> {
    let mut table = require_table(top, "patient", &["birth_date"], sink)?;
    let id = table.text("id", sink).filter(|id| id_is_fit(id, sink));
    let birth_date = table.require("birth_date", sink).and_then(|value| value.date(sink));
    let sex = table.word("sex", Sex::WORDS, sink);
    let dominant_arm = table.word("dominant_arm", Side::WORDS, sink);
    let stature = table.take("stature").and_then(|value| stature(value, sink));
    let mass = table.take("mass").and_then(|value| mass(value, sink));
    table.finish(sink);
    Some(Patient { id, birth_date: birth_date?, sex, dominant_arm, stature, mass })
}

fn stature(value: Value<'_>, sink: &mut Sink) -> Option<Spanned<Millimeters>> {
    let stature = value.quantity("length", "172 cm", Millimeters::parse, sink)?;
    match body::accepted_stature(stature.value) {
        Ok(_) => Some(stature),
        Err(refusal) => refuse("stature", &stature, refusal, sink),
    }
}

fn mass(value: Value<'_>, sink: &mut Sink) -> Option<Spanned<Kilograms>> {
    let mass = value.quantity("mass", "70 kg", Kilograms::parse, sink)?;
    match body::accepted_mass(mass.value) {
        Ok(_) => Some(mass),
        Err(refusal) => refuse("body mass", &mass, refusal, sink),
    }
}

fn refuse<T>(what: &str, at: &Spanned<T>, refusal: PersonError, sink: &mut Sink) -> Option<Spanned<T>> {
    sink.push(
        Diagnostic::error("out-of-range", format!("nobody has this {what}"))
            .at(at.span)
            .help(format!("{refusal}; where it was not measured, leave the key out")),
    );
    None
}

fn id_is_fit(id: &Spanned<String>, sink: &mut Sink) -> bool {
    let fits = !id.value.trim().is_empty()
        && id.value.chars().count() <= LONGEST_ID
        && !id.value.chars().any(char::is_control);
    if !fits {
        sink.push(
            Diagnostic::error("bad-id", format!("a patient's id is 1 to {LONGEST_ID} printable characters"))
                .at(id.span)
                .help("use the practice's own short label, or leave the key out"),
        );
    }
    fits
}

pub(super) fn other_arm(top: &mut Table<'_>, sink: &mut Sink) -> OtherArm {
    let Some(mut table) = top.table("other_arm", sink) else { return OtherArm::default() };
    let found = OtherArm {
        shoulder: table.word("shoulder", OtherShoulder::WORDS, sink),
        operated_on: table.date("operated_on", sink),
    };
    table.finish(sink);
    found
}

pub(super) fn risk(top: &mut Table<'_>, sink: &mut Sink) -> Risk {
    let Some(mut table) = top.table("risk", sink) else { return Risk::default() };
    let found = Risk {
        diabetes: table.boolean("diabetes", sink),
        smoking: table.boolean("smoking", sink),
        bone_density_t_score: table.number("bone_density_t_score", sink).filter(|score| t_score_is_fit(score, sink)),
        preoperative_stiffness: table.boolean("preoperative_stiffness", sink),
        activity: table.word("activity", Activity::WORDS, sink),
        pseudoparalysis: table.boolean("pseudoparalysis", sink),
    };
    table.finish(sink);
    found
}

fn t_score_is_fit(score: &Spanned<f64>, sink: &mut Sink) -> bool {
    let fits = score.value.abs() <= T_SCORE_GREATEST;
    if !fits {
        sink.push(
            Diagnostic::error(
                "implausible-value",
                format!("a T-score lies between -{T_SCORE_GREATEST} and {T_SCORE_GREATEST}"),
            )
            .at(score.span)
            .help("write the T-score in standard deviations, such as -1.0"),
        );
    }
    fits
}

pub(super) fn surgeon(top: &mut Table<'_>, sink: &mut Sink) -> SurgeonAnswers {
    let Some(mut table) = top.table("surgeon", sink) else { return SurgeonAnswers::default() };
    let found = SurgeonAnswers {
        slower: table.boolean("slower", sink),
        stiff_shoulder: table.word("stiff_shoulder", StiffShoulder::WORDS, sink),
        beyond_delayed: table.word("beyond_delayed", BeyondDelayed::WORDS, sink),
        safe_arc_kept: table.boolean("safe_arc_kept", sink),
    };
    table.finish(sink);
    found
}
