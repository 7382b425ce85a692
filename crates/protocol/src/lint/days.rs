//! Days: the sling covers each of them once, stages come in order, steps have no hole.

use diagnostic::{Diagnostic, Sink};

use super::words::start_of;
use crate::file::{ChoiceIs, Limit, ProtocolFile, Rule, SlingStep};
use crate::library::chosen;
use crate::{Choices, Family};

/// Options of several choices that the sling of one protocol is looked at under, at most.
const MOST_COMBINATIONS: usize = 256; // not medical: keeps the check quick on files nobody would write

/// Checks the days of every protocol and rule.
pub(super) fn check(family: &Family, sink: &mut Sink) {
    horizons(family, sink);
    for (place, protocol) in family.protocols.iter().enumerate() {
        two_slings(protocol, sink);
        days_without_sling(family, protocol, sink);
        stages(family, place, protocol, sink);
        visits(protocol, sink);
        protocol.limits.iter().for_each(|limit| holes(limit, sink));
    }
    for (_, rule) in family.rules() {
        rule.limits.iter().for_each(|limit| holes(limit, sink));
    }
}

/// One family, one last day: plans run to the latest, so that an earlier one would mean nothing.
fn horizons(family: &Family, sink: &mut Sink) {
    let Some(first) = family.protocols.first() else { return };
    for protocol in family.protocols.iter().filter(|protocol| protocol.horizon != first.horizon) {
        sink.push(
            Diagnostic::error(
                "horizons-differ",
                format!("`{}` ends on {} and `{}` on {}", protocol.id, protocol.horizon, first.id, first.horizon),
            )
            .at(start_of(protocol.span))
            .help("give every protocol of a family the same horizon"),
        );
    }
}

fn visits(protocol: &ProtocolFile, sink: &mut Sink) {
    for visit in protocol.visits.iter().filter(|visit| visit.latest < visit.due) {
        sink.push(
            Diagnostic::error(
                "visit-ends-first",
                format!(
                    "the {} visit is due from {} on, and its last day is {}",
                    visit.purpose, visit.due, visit.latest
                ),
            )
            .at(visit.span)
            .help("name the first day in `due` and the last in `latest`"),
        );
    }
}

/// Whether two lines can be in force at once.
pub(super) fn together(a: Option<&ChoiceIs>, b: Option<&ChoiceIs>) -> bool {
    match (a, b) {
        (Some(a), Some(b)) => a.id != b.id || a.is == b.is,
        _ => true,
    }
}

fn two_slings(protocol: &ProtocolFile, sink: &mut Sink) {
    for (place, step) in protocol.slings.iter().enumerate() {
        let other = protocol.slings[..place].iter().find(|other| {
            together(step.choice.as_ref(), other.choice.as_ref())
                && other.until.is_none_or(|until| step.from < until)
                && step.until.is_none_or(|until| other.from < until)
        });
        if let Some(other) = other {
            let day = step.from.max(other.from);
            sink.push(
                Diagnostic::error("contradiction", format!("`{}` has two sling lines for day {day}", protocol.id))
                    .at(step.span)
                    .also(other.span, "the other line")
                    .help("let the earlier line end on the day the later one starts"),
            );
        }
    }
}

fn days_without_sling(family: &Family, protocol: &ProtocolFile, sink: &mut Sink) {
    let horizon = protocol.horizon.count();
    let gap = combinations(family, &protocol.slings).into_iter().find_map(|(choices, option)| {
        let mut steps: Vec<&SlingStep> =
            protocol.slings.iter().filter(|step| chosen(step.choice.as_ref(), &choices)).collect();
        steps.sort_by_key(|step| step.from);
        first_gap(&steps, horizon).map(|(from, until, after)| (from, until, after, option))
    });
    if let Some((from, until, after, option)) = gap {
        let span = after.map_or_else(|| start_of(protocol.span), |step| step.span);
        sink.push(
            Diagnostic::error(
                "gap",
                format!("`{}` says nothing of the sling from day {from} to day {}{option}", protocol.id, until - 1),
            )
            .at(span)
            .help("add a [[sling]] line for these days; without a sling write wear = \"none\""),
        );
    }
}

/// The first days no step covers, with the step before them.
fn first_gap<'s>(steps: &[&'s SlingStep], horizon: u16) -> Option<(u16, u16, Option<&'s SlingStep>)> {
    let mut covered = 0;
    let mut last = None;
    for step in steps {
        if step.from > covered {
            break;
        }
        if step.until.unwrap_or(horizon) > covered {
            covered = step.until.unwrap_or(horizon);
            last = Some(*step);
        }
    }
    let next = steps.iter().map(|step| step.from).find(|&from| from > covered).unwrap_or(horizon);
    (covered < horizon).then_some((covered, next.min(horizon), last))
}

/// Every combination of the options that the steps depend on, with its name.
fn combinations(family: &Family, steps: &[SlingStep]) -> Vec<(Choices, String)> {
    let mut all = vec![(Choices::of(family), String::new())];
    let used = |id: &str| steps.iter().any(|step| step.choice.as_ref().is_some_and(|choice| choice.id == id));
    for choice in family.choices().filter(|choice| used(&choice.id)) {
        all = all
            .iter()
            .flat_map(|(choices, name)| {
                choice.options.iter().map(move |option| {
                    let mut choices = choices.clone();
                    choices.take(&choice.id, option);
                    (choices, format!("{name} where `{}` is \"{option}\"", choice.id))
                })
            })
            .take(MOST_COMBINATIONS)
            .collect();
    }
    all
}

fn stages(family: &Family, place: usize, protocol: &ProtocolFile, sink: &mut Sink) {
    let Some(first) = protocol.stages.first() else {
        sink.push(
            Diagnostic::error("gap", format!("`{}` has no stage", protocol.id))
                .at(start_of(protocol.span))
                .help("add a [[stage]] with gate = \"day 0\""),
        );
        return;
    };
    if first.gate.count() != 0 {
        sink.push(
            Diagnostic::error("gap", format!("the first stage of `{}` starts on {}", protocol.id, first.gate))
                .at(first.span)
                .help("the first stage starts on the day of surgery: gate = \"day 0\""),
        );
    }
    for pair in protocol.stages.windows(2) {
        if pair[1].gate <= pair[0].gate {
            sink.push(
                Diagnostic::error(
                    "gap",
                    format!(
                        "`{}` opens on {}, not after `{}` on {}",
                        pair[1].id, pair[1].gate, pair[0].id, pair[0].gate
                    ),
                )
                .at(pair[1].span)
                .also(pair[0].span, "the stage before it")
                .help("stages stand in the order of their gates"),
            );
            return;
        }
    }
    if let Some(last) = protocol.stages.last().filter(|last| last.gate >= protocol.horizon) {
        sink.push(
            Diagnostic::error(
                "gap",
                format!("`{}` ends on {}, before its stage `{}` opens", protocol.id, protocol.horizon, last.id),
            )
            .at(last.span)
            .help("the horizon lies after the last gate, such as horizon = \"day 365\""),
        );
    }
    // A rule for every protocol, and the protocol's own, may move a gate past the next one.
    for (_, rule) in family.rules().filter(|(own, _)| own.is_none_or(|own| own == place)) {
        moved_past(protocol, rule, sink);
    }
}

fn moved_past(protocol: &ProtocolFile, rule: &Rule, sink: &mut Sink) {
    let gate = |place: usize| {
        let stage = &protocol.stages[place];
        let moved = rule.gates.iter().filter(|(id, _)| *id == stage.id).map(|(_, day)| *day).max();
        moved.map_or(stage.gate, |day| day.max(stage.gate))
    };
    let past = (1..protocol.stages.len()).find(|&place| gate(place) <= gate(place - 1));
    if let Some(place) = past {
        let (before, after) = (&protocol.stages[place - 1], &protocol.stages[place]);
        sink.push(
            Diagnostic::error(
                "gap",
                format!(
                    "the rule `{}` moves `{}` to {}, but `{}` opens on {} in `{}`",
                    rule.id,
                    before.id,
                    gate(place - 1),
                    after.id,
                    gate(place),
                    protocol.id
                ),
            )
            .at(rule.span)
            .also(after.span, "the stage after it")
            .help("move the later gates as well"),
        );
    }
}

fn holes(limit: &Limit, sink: &mut Sink) {
    for pair in limit.steps.windows(2) {
        if let Some(until) = pair[0].until
            && until < pair[1].from
        {
            sink.push(
                Diagnostic::error("gap", format!("nothing is said of day {until} to day {}", pair[1].from - 1))
                    .at(pair[1].span)
                    .also(pair[0].span, "the step before")
                    .help("let the steps meet, or write allowed = \"no\" for the days between"),
            );
        }
    }
}
