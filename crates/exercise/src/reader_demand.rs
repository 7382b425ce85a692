//! Reading what an entry asks of an arm.

use body::{Joint, Key, Mode, Movement, Position};
use diagnostic::{Diagnostic, Sink, Span, Spanned};
use document::{Table, Value};
use quantity::{Degrees, Kilograms, Percent, QuantityError};

use crate::check::{self, Number};
use crate::{Amount, Demand};

/// A quantity as written, or "as far as the limit".
#[derive(Debug, Clone, Copy)]
enum UpTo<Q> {
    Fixed(Q),
    Limit,
}

fn up_to<Q>(parse: impl Fn(&str) -> Result<Q, QuantityError>) -> impl Fn(&str) -> Result<UpTo<Q>, QuantityError> {
    move |text| if text.trim() == "limit" { Ok(UpTo::Limit) } else { parse(text).map(UpTo::Fixed) }
}

/// An angle.
pub(crate) fn angle(value: Value<'_>, sink: &mut Sink) -> Option<Spanned<Degrees>> {
    value.quantity("angle", "40 deg", Degrees::parse, sink)
}

/// The list of demands under a key; faulty ones are left out with their diagnostics.
pub(crate) fn demands(
    table: &mut Table<'_>,
    key: &'static str,
    numbers: &mut Vec<Number>,
    sink: &mut Sink,
) -> Vec<Demand> {
    let Some(value) = table.take(key) else { return Vec::new() };
    let items = value.list(sink).unwrap_or_default();
    items.into_iter().filter_map(|item| demand(item.table(sink)?, numbers, sink)).collect()
}

fn demand(mut table: Table<'_>, numbers: &mut Vec<Number>, sink: &mut Sink) -> Option<Demand> {
    let span = table.span;
    let joint = table.require("joint", sink).and_then(|value| value.word(Joint::WORDS, sink));
    let movement = table.require("movement", sink).and_then(|value| value.word(Movement::WORDS, sink));
    let mode = table.require("mode", sink).and_then(|value| value.word(Mode::WORDS, sink));
    let position = table.word("position", Position::WORDS, sink);
    let before = sink.errors();
    let amount = amount(&mut table, span, numbers, sink);
    table.finish(sink);
    let key = Key {
        joint: joint?.value,
        movement: movement?.value,
        position: position.map_or(Position::Any, |position| position.value),
        mode: mode?.value,
    };
    if !key.exists() {
        sink.push(
            Diagnostic::error("no-such-key", format!("`{key}` names nothing: the joint has no such movement or mode"))
                .at(span)
                .help("loads are written as joint \"whole arm\" in mode \"resisted\""),
        );
        return None;
    }
    let amount = amount?;
    if sink.errors() > before || !check::fits(key, amount, span, sink) {
        return None;
    }
    Some(Demand { key, amount, span })
}

fn amount(table: &mut Table<'_>, span: Span, numbers: &mut Vec<Number>, sink: &mut Sink) -> Option<Amount> {
    let from = table.take("from").map(|value| angle(value, sink));
    let to = table.take("to").map(|value| value.quantity("angle", "40 deg", up_to(Degrees::parse), sink));
    let load = table.take("load").map(|value| value.quantity("load", "0.5 kg", up_to(Kilograms::parse), sink));
    let effort = table.take("effort").map(|value| value.quantity("effort", "30 %", Percent::parse, sink));
    let most = table.take("most");
    match (to, load, effort) {
        (None, None, None) => {
            if from.is_some() || most.is_some() {
                sink.push(
                    Diagnostic::error("wrong-amount", "`from` and `most` need a `to` or a `load`")
                        .at(span)
                        .help("write to = \"limit\" or to = \"40 deg\""),
                );
                return None;
            }
            Some(Amount::Movement)
        }
        (Some(to), None, None) => {
            // The zero position is where an arc starts unless another start is written.
            let from = match from {
                Some(from) => from?,
                None => Spanned::new(Degrees::whole(0), span),
            };
            numbers.push(Number::degrees(from.value, from.span));
            match to?.value {
                UpTo::Fixed(to_angle) if most.is_none() => {
                    numbers.push(Number::degrees(to_angle, to?.span));
                    Some(Amount::Angle { from: from.value, to: to_angle })
                }
                UpTo::Limit => {
                    let most = angle(needed(most, span, sink)?, sink)?;
                    numbers.push(Number::degrees(most.value, most.span));
                    Some(Amount::AngleToLimit { from: from.value, most: most.value })
                }
                UpTo::Fixed(_) => surplus_most(span, sink),
            }
        }
        (None, Some(load), None) if from.is_none() => match load?.value {
            UpTo::Fixed(kilograms) if most.is_none() => {
                numbers.push(Number::kilograms(kilograms, load?.span));
                Some(Amount::Load(kilograms))
            }
            UpTo::Limit => {
                let most = needed(most, span, sink)?.quantity("load", "0.5 kg", Kilograms::parse, sink)?;
                numbers.push(Number::kilograms(most.value, most.span));
                Some(Amount::LoadToLimit { most: most.value })
            }
            UpTo::Fixed(_) => surplus_most(span, sink),
        },
        (None, None, Some(effort)) if from.is_none() && most.is_none() => {
            let effort = effort?;
            numbers.push(Number::percent(effort.value, effort.span));
            Some(Amount::Effort(effort.value))
        }
        _ => {
            sink.push(
                Diagnostic::error("wrong-amount", "a demand has one amount: degrees, a load, or an effort")
                    .at(span)
                    .help("write two demands"),
            );
            None
        }
    }
}

fn needed<'s>(most: Option<Value<'s>>, span: Span, sink: &mut Sink) -> Option<Value<'s>> {
    if most.is_none() {
        sink.push(
            Diagnostic::error("missing-key", "\"limit\" needs a `most`, for the day when everything is free")
                .at(span)
                .help("add most = \"…\""),
        );
    }
    most
}

fn surplus_most(span: Span, sink: &mut Sink) -> Option<Amount> {
    sink.push(
        Diagnostic::error("wrong-amount", "`most` stands beside a fixed amount")
            .at(span)
            .help("leave `most` out, or write \"limit\""),
    );
    None
}
