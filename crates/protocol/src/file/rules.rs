//! Reading rules, choices, refusals and cautions.

use diagnostic::{Diagnostic, FileId, Sink};
use document::{Table, nearest};
use operative::{DIMENSIONS, dimension};
use quantity::PostoperativeDay;

use super::evidence_of::{self, UseOf};
use super::steps::{self, choice_is, day_number};
use super::{Choice, Condition, Limit, Remark, Rule, RulesFile, When, keys};

/// Reads a file of rules.
///
/// # Errors
/// `None` where the file is not TOML; every other fault is a diagnostic and the
/// faulty entry is left out.
pub fn read(file: FileId, text: &str, sink: &mut Sink) -> Option<RulesFile> {
    let mut table = document::read(file, text, sink)?;
    let rules = read_tables(&mut table, sink);
    table.finish(sink);
    Some(rules)
}

/// Reads the tables of rules that stand in a file, also within a protocol.
pub(super) fn read_tables(table: &mut Table<'_>, sink: &mut Sink) -> RulesFile {
    RulesFile {
        choices: table.tables("choice", sink).into_iter().filter_map(|choice| read_choice(choice, sink)).collect(),
        rules: table.tables("rule", sink).into_iter().filter_map(|rule| read_rule(rule, sink)).collect(),
        refusals: table.tables("refusal", sink).into_iter().filter_map(|remark| read_remark(remark, sink)).collect(),
        cautions: table.tables("caution", sink).into_iter().filter_map(|remark| read_remark(remark, sink)).collect(),
    }
}

fn read_choice(mut table: Table<'_>, sink: &mut Sink) -> Option<Choice> {
    let span = table.span;
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let options: Vec<_> = table.texts("options", sink).into_iter().map(|text| text.value).collect();
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    if options.len() < 2 {
        sink.push(Diagnostic::error("choice-of-one", "a choice needs at least two options").at(span));
    }
    table.finish(sink);
    Some(Choice { id: id?, title: title?, options, evidence, span })
}

fn read_rule(mut table: Table<'_>, sink: &mut Sink) -> Option<Rule> {
    let span = table.span;
    let mut numbers = Vec::new();
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let when = read_when(&mut table, sink);
    let choice = choice_is(&mut table, sink);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    let mut limits = Vec::new();
    for mut limit in table.tables("limits", sink) {
        let span = limit.span;
        let keys = keys::read(&mut limit, sink);
        let steps = steps::read(&mut limit, &mut numbers, sink);
        limit.finish(sink);
        let (id, title) = (id.clone().unwrap_or_default(), title.clone().unwrap_or_default());
        limits.push(Limit {
            id,
            title,
            keys,
            steps,
            choice: None,
            opened_by_surgeon: false,
            evidence: evidence.clone(),
            span,
        });
    }
    let cap = table.text("cap", sink).map(|text| text.value);
    let slings: Vec<_> = table
        .tables("sling", sink)
        .into_iter()
        .filter_map(|step| steps::sling_step(step, &mut numbers, sink))
        .map(|step| super::SlingStep { evidence: evidence.clone(), ..step })
        .collect();
    let mut gates = Vec::new();
    for mut gate in table.tables("gates", sink) {
        let stage = text_of(&mut gate, "stage", sink);
        let day = gate.quantity("day", "day", "day 42", PostoperativeDay::parse, sink);
        gate.finish(sink);
        if let (Some(stage), Some(day)) = (stage, day) {
            numbers.push(day_number(day.value, day.span));
            gates.push((stage, day.value));
        }
    }
    if limits.is_empty() && cap.is_none() && slings.is_empty() && gates.is_empty() {
        sink.push(Diagnostic::error("rule-without-effect", "this rule changes nothing").at(span));
    }
    evidence_of::demand(&numbers, &evidence, sink);
    table.finish(sink);
    Some(Rule { id: id?, title: title?, when, choice, limits, cap, slings, gates, evidence, span })
}

fn read_remark(mut table: Table<'_>, sink: &mut Sink) -> Option<Remark> {
    let span = table.span;
    let id = text_of(&mut table, "id", sink);
    let title = text_of(&mut table, "title", sink);
    let when = read_when(&mut table, sink);
    let invites = table.boolean("invites", sink).is_some_and(|invites| invites.value);
    let evidence = evidence_of::read(&mut table, UseOf::Goal, sink);
    table.finish(sink);
    Some(Remark { id: id?, title: title?, when, invites, evidence, span })
}

/// Reads `when` (all of them) and `when_any` (at least one); there must be one of the two.
pub(super) fn read_when(table: &mut Table<'_>, sink: &mut Sink) -> When {
    let all: Vec<_> = table.tables("when", sink).into_iter().filter_map(|c| read_condition(c, sink)).collect();
    let any: Vec<_> = table.tables("when_any", sink).into_iter().filter_map(|c| read_condition(c, sink)).collect();
    if all.is_empty() && any.is_empty() {
        sink.push(
            Diagnostic::error("rule-without-condition", format!("`{}` has no condition", table.path))
                .at(table.span)
                .help("write when = [{ fact = \"…\", has = \"…\" }]"),
        );
    }
    When { all, any }
}

fn read_condition(mut table: Table<'_>, sink: &mut Sink) -> Option<Condition> {
    let condition = condition_of(&mut table, sink);
    table.finish(sink);
    condition
}

/// Reads `fact` with `has` or `at_least`; there is no negation.
pub(super) fn condition_of(table: &mut Table<'_>, sink: &mut Sink) -> Option<Condition> {
    let fact = table.require("fact", sink)?.text(sink)?;
    let has = table.text("has", sink);
    let at_least = table.text("at_least", sink);
    let Some(id) = dimension(&fact.value) else {
        let mut fault =
            Diagnostic::error("unknown-fact", format!("`{}` is not a fact of a record", fact.value)).at(fact.span);
        if let Some(near) = nearest(&fact.value, DIMENSIONS.iter().map(|dimension| dimension.name)) {
            fault = fault.help(format!("did you mean \"{near}\"?"));
        }
        sink.push(fault);
        return None;
    };
    let known = &DIMENSIONS[usize::from(id.0)];
    let (mask, written) = match (&has, &at_least) {
        (Some(class), None) => (known.has(&class.value), class),
        (None, Some(class)) => (known.at_least(&class.value), class),
        _ => {
            sink.push(
                Diagnostic::error("condition-shape", "a condition says either `has` or `at_least`").at(table.span),
            );
            return None;
        }
    };
    let Some(mask) = mask else {
        let is_class = known.class(&written.value).is_some();
        let mut fault = if is_class {
            Diagnostic::error("no-order", format!("the classes of `{}` are not in one order", known.name))
                .help("use `has` and name each class")
        } else {
            Diagnostic::error("unknown-class", format!("`{}` is not a class of `{}`", written.value, known.name)).fact(
                format!("classes: {}", known.classes.iter().map(|class| class.name).collect::<Vec<_>>().join(", ")),
            )
        };
        if !is_class && let Some(near) = nearest(&written.value, known.classes.iter().map(|class| class.name)) {
            fault = fault.help(format!("did you mean \"{near}\"?"));
        }
        sink.push(fault.at(written.span));
        return None;
    };
    Some(Condition { dimension: id, mask, span: table.span })
}

/// A text that must be there.
pub(super) fn text_of(table: &mut Table<'_>, key: &'static str, sink: &mut Sink) -> Option<String> {
    table.require(key, sink)?.text(sink).map(|text| text.value)
}
