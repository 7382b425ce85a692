//! Ids that stand for two things, so that a reason could not be looked up.

use diagnostic::{Diagnostic, Sink, Span};

use super::words::start_of;
use crate::Family;

/// Checks the ids of a family and of each of its protocols.
pub(super) fn check(family: &Family, sink: &mut Sink) {
    let whole = start_of(family.file.span);
    let file = &family.file;
    once("protocol", file.protocols.iter().map(|id| (id.as_str(), whole)), sink);
    once("selection", file.selects.iter().map(|select| (select.id.as_str(), select.span)), sink);
    once("question", file.questions.iter().map(|question| (question.id.as_str(), question.span)), sink);
    once("choice", family.choices().map(|choice| (choice.id.as_str(), choice.span)), sink);
    once("rule", family.rules().map(|(_, rule)| (rule.id.as_str(), rule.span)), sink);
    for choice in family.choices() {
        once("option", choice.options.iter().map(|option| (option.as_str(), choice.span)), sink);
    }
    for protocol in &family.protocols {
        once("stage", protocol.stages.iter().map(|stage| (stage.id.as_str(), stage.span)), sink);
        once("limit", protocol.limits.iter().map(|limit| (limit.id.as_str(), limit.span)), sink);
        once("goal", protocol.goals.iter().map(|goal| (goal.id.as_str(), goal.span)), sink);
        once("visit", protocol.visits.iter().map(|visit| (visit.purpose.as_str(), visit.span)), sink);
        once("return", protocol.returns.iter().map(|line| (line.activity.as_str(), line.span)), sink);
        once("posture", protocol.postures.iter().map(|gate| (gate.id.as_str(), gate.span)), sink);
        for stage in &protocol.stages {
            once("criterion", stage.criteria.iter().map(|c| (c.id.as_str(), c.span)), sink);
        }
    }
}

/// Demands that every id stands once.
fn once<'i>(what: &str, ids: impl Iterator<Item = (&'i str, Span)>, sink: &mut Sink) {
    let mut seen: Vec<(&str, Span)> = Vec::new();
    for (id, span) in ids {
        match seen.iter().find(|(known, _)| *known == id) {
            Some((_, first)) => sink.push(
                Diagnostic::error("duplicate-id", format!("the {what} `{id}` stands here twice"))
                    .at(span)
                    .also(*first, "the first one")
                    .help("give each its own id: reasons are looked up by it"),
            ),
            None => seen.push((id, span)),
        }
    }
}
