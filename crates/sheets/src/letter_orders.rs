//! What the surgeon orders of the therapist beside the box.

use body::{Joint, Key, Mode, Movement};
use plan::{Allowed, Prescription};
use prescription::{Permission, Therapy};

use crate::desk::Desk;
use crate::document::{Block, Column, Print};
use crate::letter_text::Say;
use crate::limits_table::{plain, value_on};
use crate::limits_words::on;

const TO_FILL_IN: &str = "____________";

/// Yes or no with a date, for what is not an exercise.
pub(crate) fn permissions(desk: &Desk<'_>) -> Block {
    let (say, of, therapy) = (Say::at(desk), desk.prescription, &desk.settings.therapy);
    let orders = [
        ("manual therapy", permission(&say, of, therapy.manual_therapy)),
        ("end-range stretch", stretch(&say, of)),
        ("pool", permission(&say, of, therapy.pool)),
        ("traction", permission(&say, of, therapy.traction)),
        ("therapy", frequency(&say, therapy)),
    ];
    let columns = orders.iter().map(|(title, _)| Column { title: (*title).into(), share: 1 }).collect();
    let row = orders.into_iter().map(|(_, text)| plain(text)).collect();
    Block::Table { alt: say.get("letter-orders-alt"), print: Print::Smaller, columns, rows: vec![row] }
}

/// A permission of the settings; what the surgeon has not said is a line to fill in.
pub(crate) fn permission(say: &Say<'_>, of: &Prescription, permission: Option<Permission>) -> String {
    match permission {
        Some(Permission::No) => say.get("letter-no-order"),
        Some(Permission::From(day)) => {
            say.with("letter-yes-from", &[("from", on(day.date(of.operated_on), day).into())])
        }
        None => format!("{} {TO_FILL_IN}", say.get("letter-as-the-surgeon-writes")),
    }
}

/// End-range stretch of the shoulder from the limits: the first day, movement by movement where they differ.
fn stretch(say: &Say<'_>, of: &Prescription) -> String {
    let mut days: Vec<(Option<&plan::SpanOfDays>, Vec<&'static str>)> = Vec::new();
    for &movement in Movement::ALL {
        let key = Key::any(Joint::Shoulder, movement, Mode::EndRangeStretch);
        if !key.exists() {
            continue;
        }
        let first = of.spans.iter().find(|span| value_on(span, key).allowed != Allowed::No);
        let same = days.iter_mut().find(|(known, _)| known.map(|s| s.from_day) == first.map(|s| s.from_day));
        match same {
            Some((_, movements)) => movements.push(movement.name()),
            None => days.push((first, vec![movement.name()])),
        }
    }
    let answer = |first: Option<&plan::SpanOfDays>| match first {
        Some(span) => say.with("letter-yes-from", &[("from", on(span.from, span.from_day).into())]),
        None => say.get("letter-stretch-never"),
    };
    match &days[..] {
        [(first, _)] => answer(*first),
        many => {
            let parts: Vec<String> =
                many.iter().map(|(first, movements)| format!("{}: {}", movements.join(", "), answer(*first))).collect();
            parts.join("; ")
        }
    }
}

/// How often and for how long; what the surgeon has not said is a line to fill in.
fn frequency(say: &Say<'_>, therapy: &Therapy) -> String {
    let number = |number: Option<u16>| number.map_or("_____".to_owned(), |number| number.to_string());
    let (times, weeks) = (number(therapy.times_a_week), number(therapy.weeks));
    say.with("letter-frequency", &[("times", times.into()), ("weeks", weeks.into())])
}
