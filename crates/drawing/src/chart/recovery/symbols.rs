//! The marks of what happens on a day, each with its own shape.

use super::super::pen::{Pen, Place, edged};
use super::super::tones::{EDGE, LINE, cut};
use super::EventKind;
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Paint, Stroke};

/// Half the width of a mark in a lane, in millimeters.
pub(super) const HALF: f64 = 1.4;
/// Half the width of a mark on the line.
pub(super) const ON_LINE: f64 = 1.0;

/// Whether it is drawn over the days it lasts too.
pub(super) const fn has_bracket(kind: EventKind) -> bool {
    matches!(kind, EventKind::Hold { .. } | EventKind::StepBack)
}

/// Which mark stands on the line where several fall on one day: the highest.
pub(super) const fn rank(kind: EventKind) -> u8 {
    match kind {
        EventKind::VisitDone | EventKind::VisitPlanned => 0,
        EventKind::Hold { .. } | EventKind::StepBack => 1,
        EventKind::GateMet | EventKind::GateNotMet | EventKind::GateWaiting => 2,
    }
}

/// A mark, `half` as wide to each side.
pub(super) fn paint(pen: &mut Pen<'_>, kind: EventKind, at: Place, half: f64) {
    let [x, y] = at;
    let line = Stroke::new(Color::INK, EDGE);
    let open = edged(Color::WHITE, line);
    let full = edged(Color::INK, line);
    let diamond = [[x, y - half], [x + half, y], [x, y + half], [x - half, y]];
    let round = half * ROUND;
    match kind {
        EventKind::VisitDone => pen.disk(at, round, &full),
        EventKind::VisitPlanned => pen.disk(at, round, &open),
        EventKind::GateMet => pen.closed(&diamond, &full),
        EventKind::GateWaiting => pen.closed(&diamond, &open),
        EventKind::GateNotMet => {
            pen.closed(&diamond, &open);
            let arm = half * CROSS;
            let one = [[x - arm, y - arm], [x + arm, y + arm]];
            let other = [[x - arm, y + arm], [x + arm, y - arm]];
            pen.lines(&[one, other], Stroke::new(Color::INK, EDGE));
        }
        EventKind::Hold { .. } => {
            let clear = Space { left: x - half, top: y - half, right: x + half, bottom: y + half };
            pen.rectangle(clear, &Paint::filled(Color::WHITE));
            let bar = |x: f64| [[x, y - half], [x, y + half]];
            pen.lines(&[bar(x - half / 2.0), bar(x + half / 2.0)], cut(Color::INK, half * BAR));
        }
        EventKind::StepBack => {
            pen.closed(&[[x - half, y], [x + half * POINT, y - half], [x + half * POINT, y + half]], &full);
        }
    }
}

/// An arrow that says that the course goes back, or a bracket over the days of a hold.
pub(super) fn bracket(pen: &mut Pen<'_>, kind: EventKind, [from, until]: [f64; 2], y: f64) {
    match kind {
        EventKind::Hold { .. } => {
            let end = |x: f64| [[x, y - BRACKET], [x, y + BRACKET]];
            pen.lines(&[[[from, y], [until, y]], end(from), end(until)], cut(Color::INK, LINE));
        }
        EventKind::StepBack => {
            let tip = (from - ARROW).max(0.0);
            pen.line([from, y], [tip + BRACKET, y], cut(Color::INK, LINE));
            let head = [[tip, y], [tip + HEAD, y - BRACKET], [tip + HEAD, y + BRACKET]];
            pen.closed(&head, &Paint::filled(Color::INK));
        }
        _ => {}
    }
}

/// A disk looks as large as a diamond when it is a little smaller.
const ROUND: f64 = 0.86;
const CROSS: f64 = 0.45;
const BAR: f64 = 0.5;
const POINT: f64 = 0.7;
/// Half the height of a bracket.
const BRACKET: f64 = 0.9;
const ARROW: f64 = 6.0;
const HEAD: f64 = 1.9;
