//! Names that one line of a family uses and another must give.

use diagnostic::{Diagnostic, Sink, Span};
use exercise::{Catalogue, Kind};

use super::words::{did_you_mean, start_of};
use crate::Family;
use crate::file::{ChoiceIs, ProtocolFile};

/// Checks every name that a family uses.
pub(super) fn check(family: &Family, catalogue: &Catalogue, sink: &mut Sink) {
    protocols(family, sink);
    stages_of_family(family, sink);
    for protocol in &family.protocols {
        stages(protocol, sink);
        uses(protocol, catalogue, sink);
    }
    choices(family, sink);
}

fn protocols(family: &Family, sink: &mut Sink) {
    let file = &family.file;
    let whole = start_of(file.span);
    let mut named: Vec<(&str, String, Span)> = vec![(&file.default, "the default".into(), whole)];
    for select in &file.selects {
        named.push((&select.protocol, format!("the selection `{}`", select.id), select.span));
    }
    for request in &file.on_request {
        let span = request.confirm_large.as_ref().map_or(whole, |(condition, _)| condition.span);
        named.push((&request.protocol, "what is only given on request".into(), span));
    }
    for question in &file.questions {
        for id in question.unless_capped_by.iter().chain(&question.only_when_chosen) {
            named.push((id, format!("the question `{}`", question.id), question.span));
        }
    }
    for (_, rule) in family.rules() {
        if let Some(cap) = &rule.cap {
            named.push((cap, format!("the rule `{}`", rule.id), rule.span));
        }
    }
    if file.on_request.iter().any(|request| request.protocol == file.default) {
        sink.push(
            Diagnostic::error(
                "default-on-request",
                format!("`{}` is only given on request, and is the default", file.default),
            )
            .at(whole)
            .help("take another protocol as the default"),
        );
    }
    for (id, by, span) in named {
        if family.protocol(id).is_none() {
            let fault = Diagnostic::error(
                "unknown-protocol",
                format!("{by} names `{id}`, which is no protocol of this family"),
            )
            .at(span)
            .fact(format!("protocols: {}", file.protocols.join(", ")));
            sink.push(did_you_mean(fault, id, file.protocols.iter().map(String::as_str)));
        }
    }
}

fn has_stage(protocol: &ProtocolFile, id: &str) -> bool {
    protocol.stages.iter().any(|stage| stage.id == id)
}

fn unknown_stage(id: &str, by: &str, protocol: &ProtocolFile, span: Span) -> Diagnostic {
    let ids = || protocol.stages.iter().map(|stage| stage.id.as_str());
    let fault =
        Diagnostic::error("unknown-stage", format!("{by} names `{id}`, which is no stage of `{}`", protocol.id))
            .at(span)
            .fact(format!("stages: {}", ids().collect::<Vec<_>>().join(", ")));
    did_you_mean(fault, id, ids())
}

/// The stage that ends safe arcs must be in every protocol, or such an arc would bind for good.
fn stages_of_family(family: &Family, sink: &mut Sink) {
    let ends = &family.file.safe_arc_until_stage;
    if let Some(protocol) = family.protocols.iter().find(|protocol| !has_stage(protocol, ends)) {
        sink.push(
            unknown_stage(ends, "`safe_arc_until_stage`", protocol, start_of(family.file.span))
                .help("a safe arc without a day would never end in that protocol"),
        );
    }
    for (own, rule) in family.rules() {
        for (stage, _) in &rule.gates {
            let of: Vec<&ProtocolFile> = match own {
                Some(place) => vec![&family.protocols[place]],
                None => family.protocols.iter().collect(),
            };
            if !of.iter().any(|protocol| has_stage(protocol, stage))
                && let Some(protocol) = of.first()
            {
                sink.push(unknown_stage(stage, &format!("the rule `{}`", rule.id), protocol, rule.span));
            }
        }
    }
}

fn stages(protocol: &ProtocolFile, sink: &mut Sink) {
    let of_uses = protocol.exercises.iter().flat_map(|used| {
        std::iter::once(&used.stage)
            .chain(&used.until_stage)
            .map(move |stage| (stage, format!("the exercise `{}`", used.id), used.span))
    });
    let of_goals = protocol.goals.iter().filter_map(|goal| {
        goal.shown_from_stage.as_ref().map(|stage| (stage, format!("the goal `{}`", goal.id), goal.span))
    });
    for (stage, by, span) in of_uses.chain(of_goals) {
        if !has_stage(protocol, stage) {
            sink.push(unknown_stage(stage, &by, protocol, span));
        }
    }
}

fn uses(protocol: &ProtocolFile, catalogue: &Catalogue, sink: &mut Sink) {
    for used in &protocol.exercises {
        if catalogue.get(&used.id).is_none_or(|entry| entry.kind != Kind::Exercise) {
            let fault =
                Diagnostic::error("unknown-exercise", format!("`{}` is not an exercise of the catalogue", used.id))
                    .at(used.span);
            sink.push(did_you_mean(fault, &used.id, catalogue.ids(Kind::Exercise)));
        }
        if let Some(other) = &used.only_without
            && !protocol.exercises.iter().any(|listed| listed.id == *other)
        {
            let fault = Diagnostic::error(
                "unknown-exercise",
                format!("`{}` stands in for `{other}`, which `{}` does not give", used.id, protocol.id),
            )
            .at(used.span);
            sink.push(did_you_mean(fault, other, protocol.exercises.iter().map(|listed| listed.id.as_str())));
        }
    }
    for line in &protocol.returns {
        if catalogue.get(&line.activity).is_none_or(|entry| entry.kind != Kind::Activity) {
            let fault = Diagnostic::error(
                "unknown-activity",
                format!("`{}` is not an activity of the catalogue", line.activity),
            )
            .at(line.span);
            sink.push(did_you_mean(fault, &line.activity, catalogue.ids(Kind::Activity)));
        }
    }
}

/// Every line that stands under an option, with its place.
fn under_options(family: &Family) -> impl Iterator<Item = (&ChoiceIs, Span)> {
    let of_protocols = family.protocols.iter().flat_map(|protocol| {
        let of_limits = protocol.limits.iter().map(|limit| (limit.choice.as_ref(), limit.span));
        of_limits.chain(protocol.slings.iter().map(|step| (step.choice.as_ref(), step.span)))
    });
    let of_rules = family.rules().flat_map(|(_, rule)| {
        let of_slings = rule.slings.iter().map(|step| (step.choice.as_ref(), step.span));
        std::iter::once((rule.choice.as_ref(), rule.span)).chain(of_slings)
    });
    of_protocols.chain(of_rules).filter_map(|(choice, span)| Some((choice?, span)))
}

/// Options that change nothing; asked last, since a line that is missing or misspelt leaves its option idle.
pub(super) fn idle_options(family: &Family, sink: &mut Sink) {
    let is_read =
        |id: &str, option: &str| under_options(family).any(|(choice, _)| choice.id == id && choice.is == option);
    // The first option is what holds without a line; every other one has to change something.
    for choice in family.choices() {
        let idle = choice.options.iter().skip(1).find(|option| !is_read(&choice.id, option));
        if let Some(option) = idle {
            sink.push(
                Diagnostic::error(
                    "option-without-line",
                    format!("no line is under the option \"{option}\" of `{}`", choice.id),
                )
                .at(choice.span)
                .help("add the line that it stands for, or take the option out"),
            );
        }
    }
}

fn choices(family: &Family, sink: &mut Sink) {
    for (ChoiceIs { id, is }, span) in under_options(family) {
        let Some(known) = family.choices().find(|choice| choice.id == *id) else {
            let fault = Diagnostic::error("unknown-choice", format!("`{id}` is not a choice of this family")).at(span);
            sink.push(did_you_mean(fault, id, family.choices().map(|choice| choice.id.as_str())));
            continue;
        };
        if !known.options.contains(is) {
            let fault = Diagnostic::error("unknown-option", format!("`{is}` is not an option of the choice `{id}`"))
                .at(span)
                .fact(format!("options: {}", known.options.join(", ")));
            sink.push(did_you_mean(fault, is, known.options.iter().map(String::as_str)));
        }
    }
}
