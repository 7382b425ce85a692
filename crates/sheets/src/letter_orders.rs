//! What the surgeon orders of the therapist beside the box: manual therapy, stretch, pool, traction; and the gates.

use body::{Joint, Key, Mode, Movement};
use plan::{Allowed, Prescription, StageLine};
use prescription::{Permission, Therapy};

use crate::desk::Desk;
use crate::document::{Block, Fact, Field};
use crate::letter_text::{Say, blank, fact, filled};
use crate::limits_table::value_on;
use crate::limits_words::{on, short};

const TO_FILL_IN: &str = "____________";

/// Yes or no with a date, for what is not an exercise.
pub(crate) fn permissions(desk: &Desk<'_>) -> Vec<Fact> {
    let (say, therapy) = (Say::at(desk), &desk.settings.therapy);
    vec![
        fact("Manual therapy", permission(&say, desk.prescription, therapy.manual_therapy)),
        fact("End-range stretch", stretch(&say, desk.prescription)),
        fact("Pool", permission(&say, desk.prescription, therapy.pool)),
        fact("Traction", permission(&say, desk.prescription, therapy.traction)),
    ]
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
        [(first, _)] => format!("shoulder: {}", answer(*first)),
        many => {
            let parts: Vec<String> =
                many.iter().map(|(first, movements)| format!("{}: {}", movements.join(", "), answer(*first))).collect();
            parts.join("; ")
        }
    }
}

/// The order of therapy: how often, for how long, and the authorization.
pub(crate) fn order(therapy: &Therapy) -> Block {
    let unit = |label: &str, value: Option<u16>, unit: &str| match value {
        Some(value) => filled(label, format!("{value} {unit}")),
        None => Field { label: label.into(), value: String::new(), hint: unit.into() },
    };
    Block::Fields {
        columns: 3, // not medical: side by side
        fields: vec![
            unit("Frequency", therapy.times_a_week, "times a week"),
            unit("For", therapy.weeks, "weeks"),
            blank("Authorization no."),
        ],
    }
}

/// One line for each gate: from when, the visit, whether it is opened, and what is looked at.
pub(crate) fn gates(desk: &Desk<'_>) -> Vec<Fact> {
    let of = desk.prescription;
    of.stages
        .iter()
        .filter(|stage| stage.from_day.count() > 0)
        .map(|stage| fact(&stage.title, gate(desk, stage)))
        .collect()
}

fn gate(desk: &Desk<'_>, stage: &StageLine) -> String {
    let of = desk.prescription;
    let criteria: Vec<&str> = stage.criteria.iter().map(|criterion| criterion.text.as_str()).collect();
    let state = if stage.opened {
        let opening = desk.openings.0.iter().rev().find(|opening| opening.stage.value == stage.id);
        opening.map_or("opened".into(), |opening| format!("opened {} by {}", short(opening.on.value), opening.by))
    } else {
        let purpose = format!("gate: {}", stage.id);
        let visit = of.visits.iter().find(|visit| visit.purpose == purpose);
        visit.map_or("not opened".into(), |visit| format!("not opened, visit {}", short(visit.date)))
    };
    let gate = on(stage.from, stage.from_day);
    if criteria.is_empty() { format!("{gate}; {state}") } else { format!("{gate}; {state}: {}", criteria.join(" · ")) }
}
