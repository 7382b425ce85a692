//! Runs of days and the values on them.

use diagnostic::{Diagnostic, Sink, Span};
use document::Table;
use evidence::Unit;
use plan::{Bound, Cell, SlingPosition, Wear};
use quantity::{Degrees, Kilograms, Percent, PostoperativeDay};

use super::evidence_of::{self, Number, UseOf};
use super::{ChoiceIs, Counts, SlingStep, Step};

/// A run of days with the numbers it was written with.
pub(super) struct Run {
    pub from: u16,
    pub until: Option<u16>,
}

/// Reads `from` and `until`.
pub(super) fn run(table: &mut Table<'_>, numbers: &mut Vec<Number>, sink: &mut Sink) -> Option<Run> {
    let from = table.require("from", sink)?.quantity("day", "day 42", PostoperativeDay::parse, sink)?;
    let until = match table.take("until") {
        Some(value) => Some(value.quantity("day", "day 42", PostoperativeDay::parse, sink)?),
        None => None,
    };
    numbers.push(day_number(from.value, from.span));
    if let Some(until) = until {
        numbers.push(day_number(until.value, until.span));
        if until.value <= from.value {
            sink.push(
                Diagnostic::error("empty-span", format!("{} until {} holds no day", from.value, until.value))
                    .at(until.span)
                    .help("`until` is the first day after the span"),
            );
            return None;
        }
    }
    Some(Run { from: from.value.count(), until: until.map(|until| until.value.count()) })
}

/// A day as a number that wants evidence.
pub(super) fn day_number(day: PostoperativeDay, span: Span) -> Number {
    Number { value: f64::from(day.count()), unit: Unit::Day, span }
}

/// Reads the steps of a limit.
pub(super) fn read(table: &mut Table<'_>, numbers: &mut Vec<Number>, sink: &mut Sink) -> Vec<Step> {
    let mut steps: Vec<Step> = Vec::new();
    let tables = table.tables("steps", sink);
    if tables.is_empty() {
        sink.push(Diagnostic::error("missing-key", format!("`{}.steps` names no days", table.path)).at(table.span));
    }
    for mut step in tables {
        let span = step.span;
        let run = run(&mut step, numbers, sink);
        let value = value(&mut step, numbers, sink);
        step.finish(sink);
        let (Some(run), Some((cell, counts))) = (run, value) else { continue };
        if let Some(before) = steps.last()
            && before.until.is_none_or(|until| run.from < until)
        {
            sink.push(
                Diagnostic::error("overlapping-days", "these days overlap the days before them".to_owned())
                    .at(span)
                    .also(before.span, "the days before"),
            );
            continue;
        }
        steps.push(Step { from: run.from, until: run.until, cell, counts, span });
    }
    steps
}

/// Reads `up_to = "20 deg"` or `allowed = "no" | "free"`.
fn value(table: &mut Table<'_>, numbers: &mut Vec<Number>, sink: &mut Sink) -> Option<(Cell, Counts)> {
    let allowed = table.word("allowed", &[("no", Cell::NO), ("free", Cell::FREE)], sink);
    let bound = table.text("up_to", sink);
    match (allowed, bound) {
        (Some(allowed), None) => Some((allowed.value, Counts::Nothing)),
        (None, Some(text)) => {
            let (bound, counts, number, unit) = match parse_bound(&text.value) {
                Ok(parsed) => parsed,
                Err(error) => {
                    sink.push(document::quantity_fault("angle", "20 deg", &text, &error));
                    return None;
                }
            };
            numbers.push(Number { value: number, unit, span: text.span });
            if counts == Counts::Kilograms && number == 0.0 {
                sink.push(
                    Diagnostic::error("load-of-zero", "a load of zero kilograms is written as not allowed")
                        .at(text.span)
                        .help("write allowed = \"no\""),
                );
                return None;
            }
            Some((Cell::up_to(bound), counts))
        }
        (Some(allowed), Some(bound)) => {
            sink.push(
                Diagnostic::error("contradiction", "both `allowed` and `up_to` are given")
                    .at(bound.span)
                    .also(allowed.span, "the other value"),
            );
            None
        }
        (None, None) => {
            sink.push(
                Diagnostic::error("missing-key", format!("`{}` says neither `allowed` nor `up_to`", table.path))
                    .at(table.span)
                    .help("write allowed = \"no\", allowed = \"free\", or up_to = \"20 deg\""),
            );
            None
        }
    }
}

/// Reads an angle, a load or an effort.
fn parse_bound(text: &str) -> Result<(Bound, Counts, f64, Unit), quantity::QuantityError> {
    if let Ok(load) = Kilograms::parse(text) {
        return Ok((Bound::Load(load), Counts::Kilograms, load.number(), Unit::Kilograms));
    }
    if let Ok(effort) = Percent::parse(text) {
        return Ok((Bound::Effort(effort), Counts::Percent, effort.number(), Unit::Percent));
    }
    let angle = Degrees::parse(text)?;
    Ok((Bound::Angle(angle), Counts::Degrees, angle.number(), Unit::Degrees))
}

/// Reads one `[[sling]]` table of a protocol, with its own evidence.
pub(super) fn sling(mut table: Table<'_>, sink: &mut Sink) -> Option<SlingStep> {
    let mut numbers = Vec::new();
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    let step = sling_step(table, &mut numbers, sink)?;
    evidence_of::demand(&numbers, &evidence, sink);
    Some(SlingStep { evidence, ..step })
}

/// Reads the days, wear and position of a sling step.
pub(super) fn sling_step(mut table: Table<'_>, numbers: &mut Vec<Number>, sink: &mut Sink) -> Option<SlingStep> {
    let span = table.span;
    let run = run(&mut table, numbers, sink);
    let wear = table.require("wear", sink).and_then(|value| value.word(Wear::WORDS, sink));
    let position = table.word("position", SlingPosition::WORDS, sink).map_or(SlingPosition::Neutral, |word| word.value);
    let except = table.texts("except", sink).into_iter().map(|text| text.value).collect();
    let choice = choice_is(&mut table, sink);
    table.finish(sink);
    let (run, wear) = (run?, wear?);
    Some(SlingStep {
        from: run.from,
        until: run.until,
        wear: wear.value,
        position,
        except,
        choice,
        evidence: Vec::new(),
        span,
    })
}

/// Reads `choice = { id = "...", is = "..." }`.
pub(super) fn choice_is(table: &mut Table<'_>, sink: &mut Sink) -> Option<ChoiceIs> {
    let mut choice = table.table("choice", sink)?;
    let id = choice.require("id", sink).and_then(|value| value.text(sink));
    let is = choice.require("is", sink).and_then(|value| value.text(sink));
    choice.finish(sink);
    Some(ChoiceIs { id: id?.value, is: is?.value })
}
