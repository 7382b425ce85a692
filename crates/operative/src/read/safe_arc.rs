//! What the surgeon saw was safe on the table.

use body::{Movement, Position};
use diagnostic::{Diagnostic, Sink, Spanned};
use document::{Table, Value};
use evidence::ids;
use quantity::{Degrees, PostoperativeDay};

use crate::arcs::MAX_SAFE_ARCS;
use crate::record::SafeArcEntry;

/// The movements of the shoulder that are counted in degrees, with the bounds of belief.
const MOVEMENTS: &[(Movement, Degrees, Degrees)] = {
    const NONE: Degrees = Degrees::whole(0);
    const ELEVATION: Degrees = ids::RECORD_ELEVATION_GREATEST.degrees();
    const ROTATION: Degrees = ids::RECORD_ROTATION_GREATEST.degrees();
    const INWARD: Degrees = Degrees::from_steps(-ROTATION.steps());
    &[
        (Movement::ForwardElevation, NONE, ELEVATION),
        (Movement::ScapularPlaneElevation, NONE, ELEVATION),
        (Movement::Abduction, NONE, ELEVATION),
        (Movement::Extension, NONE, ids::RECORD_EXTENSION_GREATEST.degrees()),
        (Movement::ExternalRotation, INWARD, ROTATION),
        (Movement::InternalRotation, INWARD, ROTATION),
        (Movement::HorizontalAdduction, NONE, ids::RECORD_HORIZONTAL_ADDUCTION_GREATEST.degrees()),
        (Movement::AbductionWithExternalRotation, NONE, ELEVATION),
    ]
};

pub(super) fn safe_arcs(operation: &mut Table<'_>, sink: &mut Sink) -> Vec<SafeArcEntry> {
    let mut tables = operation.tables("safe_arc", sink);
    if tables.len() > MAX_SAFE_ARCS {
        sink.push(
            Diagnostic::error("too-many", format!("more than {MAX_SAFE_ARCS} safe arcs"))
                .at(tables[MAX_SAFE_ARCS].span)
                .help("keep the narrowest arc of each movement"),
        );
        tables.truncate(MAX_SAFE_ARCS);
    }
    (0..).zip(tables).filter_map(|(index, table)| safe_arc(index, table, sink)).collect()
}

fn safe_arc(index: u8, mut table: Table<'_>, sink: &mut Sink) -> Option<SafeArcEntry> {
    let span = table.span;
    let words: Vec<_> = MOVEMENTS.iter().map(|(movement, ..)| (movement.name(), *movement)).collect();
    let movement = table.require("movement", sink).and_then(|value| value.word(&words, sink));
    let position = table.word("position", Position::WORDS, sink);
    let up_to = table.require("up_to", sink).and_then(|value| value.quantity("angle", "40 deg", Degrees::parse, sink));
    let until = table.take("until").and_then(|value| until(value, sink));
    table.finish(sink);
    let (movement, up_to) = (movement?, up_to?);
    within_the_joint(movement, up_to, sink);
    Some(SafeArcEntry { index, span, movement, position, up_to, until })
}

fn within_the_joint(movement: Spanned<Movement>, up_to: Spanned<Degrees>, sink: &mut Sink) {
    let Some((_, least, greatest)) = MOVEMENTS.iter().find(|(known, ..)| *known == movement.value) else { return };
    if up_to.value < *least || up_to.value > *greatest {
        sink.push(
            Diagnostic::error(
                "implausible-angle",
                format!("{} deg is no {} of a shoulder", up_to.value, movement.value),
            )
            .at(up_to.span)
            .also(movement.span, "this movement")
            .help(format!("write an angle from {least} to {greatest} deg")),
        );
    }
}

/// The first day the arc no longer binds.
fn until(value: Value<'_>, sink: &mut Sink) -> Option<Spanned<PostoperativeDay>> {
    let not_a_day = |span| {
        Diagnostic::error("not-a-day", "a day counted from the operation is needed here")
            .at(span)
            .help("write \"day 42\"; day 0 is the day of surgery")
    };
    if !value.is_text() {
        sink.push(not_a_day(value.span));
        return None;
    }
    let text = value.text(sink)?;
    match PostoperativeDay::parse(&text.value) {
        Ok(PostoperativeDay::SURGERY) => {
            sink.push(
                Diagnostic::error("arc-never-binds", "a safe arc until day 0 would never bind")
                    .at(text.span)
                    .help("write the first day it no longer binds, day 1 or later"),
            );
            None
        }
        Ok(day) => Some(text.map(|_| day)),
        Err(_) => {
            sink.push(not_a_day(text.span));
            None
        }
    }
}
