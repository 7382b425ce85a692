//! Reading a protocol, or a part that protocols share.

use diagnostic::{Diagnostic, FileId, Sink};
use document::Table;
use evidence::Unit;
use quantity::{Degrees, PostoperativeDay};

use super::evidence_of::{self, Number, UseOf};
use super::rules::{read_tables, text_of};
use super::steps::{self, choice_is, day_number};
use super::{
    ExerciseUse, Goal, Limit, PostureGate, ProtocolFile, Return, Stage, StageCriterion, Visit, keys, passive_by,
};

/// Reads a protocol file.
///
/// # Errors
/// `None` where the file is not TOML or has no id, title or edition; every fault is a diagnostic.
pub fn read(file: FileId, text: &str, sink: &mut Sink) -> Option<ProtocolFile> {
    let mut table = document::read(file, text, sink)?;
    let id = text_of(&mut table, "id", sink);
    let edition = text_of(&mut table, "edition", sink);
    let title = text_of(&mut table, "title", sink);
    let summary = text_of(&mut table, "summary", sink);
    let horizon = table.require("horizon", sink);
    let horizon = horizon.and_then(|value| value.quantity("day", "day 365", PostoperativeDay::parse, sink));
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    if let Some(horizon) = horizon {
        evidence_of::demand(&[day_number(horizon.value, horizon.span)], &evidence, sink);
    }
    let mut body = read_body(&mut table, sink);
    table.finish(sink);
    body.id = id?;
    body.edition = edition?;
    body.title = title?;
    body.summary = summary?;
    body.horizon = horizon?.value;
    Some(body)
}

/// Reads a part: limits, exercises and so on, without the head of a protocol.
///
/// # Errors
/// `None` where the file is not TOML.
pub fn read_part(file: FileId, text: &str, sink: &mut Sink) -> Option<ProtocolFile> {
    let mut table = document::read(file, text, sink)?;
    let body = read_body(&mut table, sink);
    table.finish(sink);
    Some(body)
}

fn read_body(table: &mut Table<'_>, sink: &mut Sink) -> ProtocolFile {
    let span = table.span;
    let parts = table.texts("parts", sink).into_iter().map(|text| text.value).collect();
    let stages = table.tables("stage", sink).into_iter().filter_map(|stage| read_stage(stage, sink)).collect();
    let slings = table.tables("sling", sink).into_iter().filter_map(|step| steps::sling(step, sink)).collect();
    let limits = table.tables("limit", sink).into_iter().filter_map(|limit| read_limit(limit, sink)).collect();
    let passive_by =
        table.tables("passive_by", sink).into_iter().filter_map(|line| passive_by::read(line, sink)).collect();
    let goals = table.tables("goal", sink).into_iter().filter_map(|goal| read_goal(goal, sink)).collect();
    let exercises = table.tables("exercise", sink).into_iter().filter_map(|used| read_use(used, sink)).collect();
    let visits = table.tables("visit", sink).into_iter().filter_map(|visit| read_visit(visit, sink)).collect();
    let returns = table.tables("return", sink).into_iter().filter_map(|line| read_return(line, sink)).collect();
    let postures = table.tables("posture", sink).into_iter().filter_map(|gate| read_posture(gate, sink)).collect();
    let rules = read_tables(table, sink);
    ProtocolFile {
        id: String::new(),
        edition: String::new(),
        title: String::new(),
        summary: String::new(),
        parts,
        horizon: PostoperativeDay::SURGERY,
        stages,
        slings,
        limits,
        passive_by,
        goals,
        exercises,
        visits,
        returns,
        postures,
        rules,
        span,
    }
}

pub(super) fn day_of(
    table: &mut Table<'_>,
    key: &'static str,
    numbers: &mut Vec<Number>,
    sink: &mut Sink,
) -> Option<PostoperativeDay> {
    let day = table.require(key, sink)?.quantity("day", "day 42", PostoperativeDay::parse, sink)?;
    numbers.push(day_number(day.value, day.span));
    Some(day.value)
}

fn angle_of(table: &mut Table<'_>, key: &'static str, numbers: &mut Vec<Number>, sink: &mut Sink) -> Option<Degrees> {
    let angle = table.quantity(key, "angle", "90 deg", Degrees::parse, sink)?;
    numbers.push(Number { value: angle.value.number(), unit: Unit::Degrees, span: angle.span });
    Some(angle.value)
}

fn read_stage(mut table: Table<'_>, sink: &mut Sink) -> Option<Stage> {
    let span = table.span;
    let mut numbers = Vec::new();
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let gate = day_of(&mut table, "gate", &mut numbers, sink);
    let criteria = table.tables("criteria", sink).into_iter().filter_map(|c| read_criterion(c, sink)).collect();
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    table.finish(sink);
    Some(Stage { id: id?, title: title?, gate: gate?, criteria, evidence, span })
}

fn read_criterion(mut table: Table<'_>, sink: &mut Sink) -> Option<StageCriterion> {
    let span = table.span;
    let mut numbers = Vec::new();
    let id = text_of(&mut table, "id", sink);
    let text = text_of(&mut table, "text", sink);
    let key = keys::read_key(&mut table, "key", sink);
    let at_least = angle_of(&mut table, "at_least", &mut numbers, sink);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    let measure = match (key, at_least) {
        (Some(key), Some(angle)) => Some((key.value, angle)),
        (None, None) => None,
        _ => {
            sink.push(
                Diagnostic::error("criterion-shape", "a measured criterion needs both `key` and `at_least`").at(span),
            );
            None
        }
    };
    table.finish(sink);
    Some(StageCriterion { id: id?, text: text?, measure, evidence, span })
}

fn read_limit(mut table: Table<'_>, sink: &mut Sink) -> Option<Limit> {
    let span = table.span;
    let mut numbers = Vec::new();
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let keys = keys::read(&mut table, sink);
    let steps = steps::read(&mut table, &mut numbers, sink);
    let choice = choice_is(&mut table, sink);
    let opened_by_surgeon = table.boolean("opened_by_surgeon", sink).is_some_and(|flag| flag.value);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    for (step, key) in steps.iter().flat_map(|step| keys.iter().map(move |key| (step, key))) {
        if !step.counts.fits(*key) {
            sink.push(Diagnostic::error("wrong-bound", format!("this bound means nothing for `{key}`")).at(step.span));
            break;
        }
    }
    table.finish(sink);
    Some(Limit { id: id?, title: title?, keys, steps, choice, opened_by_surgeon, evidence, span })
}

fn read_goal(mut table: Table<'_>, sink: &mut Sink) -> Option<Goal> {
    let span = table.span;
    let mut numbers = Vec::new();
    let id = text_of(&mut table, "id", sink);
    let key = keys::read_key(&mut table, "key", sink);
    let from = angle_of(&mut table, "from", &mut numbers, sink);
    let to = angle_of(&mut table, "to", &mut numbers, sink);
    let due = day_of(&mut table, "due", &mut numbers, sink);
    let shown_from_stage = table.text("shown_from_stage", sink).map(|text| text.value);
    let or_other_shoulder = table.boolean("or_other_shoulder", sink).is_some_and(|flag| flag.value);
    let evidence = evidence_of::read(&mut table, UseOf::Goal, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    table.finish(sink);
    Some(Goal {
        id: id?,
        key: key?.value,
        from: from?,
        to,
        due: due?,
        shown_from_stage,
        or_other_shoulder,
        evidence,
        span,
    })
}

fn read_use(mut table: Table<'_>, sink: &mut Sink) -> Option<ExerciseUse> {
    let span = table.span;
    let mut numbers = Vec::new();
    let id = text_of(&mut table, "id", sink);
    let stage = text_of(&mut table, "stage", sink);
    let until_stage = table.text("until_stage", sink).map(|text| text.value);
    let only_without = table.text("only_without", sink).map(|text| text.value);
    let without_measurement = table.boolean("without_measurement", sink).is_some_and(|flag| flag.value);
    let mut repetitions = None;
    if let Some(mut dose) = table.table("dose", sink) {
        let mut count = |key: &'static str, dose: &mut Table<'_>, sink: &mut Sink| {
            let number = dose.require(key, sink)?.integer(sink)?;
            numbers.push(Number { value: number.value as f64, unit: Unit::Repetitions, span: number.span });
            u16::try_from(number.value).ok()
        };
        let (low, high) = (count("repetitions", &mut dose, sink), count("repetitions_to", &mut dose, sink));
        dose.finish(sink);
        repetitions = low.zip(high);
    }
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    table.finish(sink);
    Some(ExerciseUse {
        id: id?,
        stage: stage?,
        until_stage,
        only_without,
        without_measurement,
        repetitions,
        evidence,
        span,
    })
}

fn read_visit(mut table: Table<'_>, sink: &mut Sink) -> Option<Visit> {
    let span = table.span;
    let mut numbers = Vec::new();
    let purpose = text_of(&mut table, "purpose", sink);
    let due = day_of(&mut table, "due", &mut numbers, sink);
    let latest = day_of(&mut table, "latest", &mut numbers, sink);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    table.finish(sink);
    Some(Visit { purpose: purpose?, due: due?, latest: latest?, evidence, span })
}

fn read_return(mut table: Table<'_>, sink: &mut Sink) -> Option<Return> {
    let span = table.span;
    let mut numbers = Vec::new();
    let activity = text_of(&mut table, "activity", sink);
    let from = day_of(&mut table, "from", &mut numbers, sink);
    let opened_by_surgeon = table.boolean("opened_by_surgeon", sink).is_some_and(|flag| flag.value);
    let note = table.text("note", sink).map(|text| text.value);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    table.finish(sink);
    Some(Return { activity: activity?, from: from?, opened_by_surgeon, note, evidence, span })
}

fn read_posture(mut table: Table<'_>, sink: &mut Sink) -> Option<PostureGate> {
    let span = table.span;
    let mut numbers = Vec::new();
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let modes = keys::read_modes(&mut table, sink);
    table.word("only", &[("lying on the back", ())], sink);
    let until = day_of(&mut table, "until", &mut numbers, sink);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    table.finish(sink);
    Some(PostureGate { id: id?, title: title?, modes, until: until?, evidence, span })
}
