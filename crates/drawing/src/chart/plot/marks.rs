//! Markers of readings.

use super::super::pen::{Pen, Place, edged};
use super::super::tones::{EDGE, cut};
use super::styles::{Look, Marker};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Paint, Stroke};

/// A reading that is no plain value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Censored {
    Up,
    Down,
    Not,
}

impl Censored {
    /// How far below its middle its value lies.
    pub(super) const fn foot(self) -> f64 {
        match self {
            Self::Up => ARROW / 2.0,
            Self::Down => -ARROW / 2.0,
            Self::Not => 0.0,
        }
    }
}

/// The marker of a reading.
pub(super) fn marker(pen: &mut Pen<'_>, look: Look, at: Place) {
    let [x, y] = at;
    let line = Stroke::new(look.line.color, EDGE);
    let full = edged(look.line.color, line);
    let open = edged(Color::WHITE, line);
    match look.marker {
        Marker::Disk => pen.disk(at, HALF * 0.9, &full),
        Marker::OpenSquare => pen.rectangle(Space::around(at, HALF * 1.7, HALF * 1.7), &open),
        Marker::Triangle => {
            let side = HALF * 1.1;
            pen.closed(&[[x, y - side], [x + side, y + HALF * 0.9], [x - side, y + HALF * 0.9]], &full);
        }
        Marker::OpenDiamond => {
            let half = HALF * 1.25;
            pen.closed(&[[x, y - half], [x + half, y], [x, y + half], [x - half, y]], &open);
        }
    }
}

/// The error of a reading, to both sides.
pub(super) fn whisker(pen: &mut Pen<'_>, color: Color, x: f64, [top, bottom]: [f64; 2]) {
    let cap = |y: f64| [[x - CAP, y], [x + CAP, y]];
    pen.lines(&[[[x, top], [x, bottom]], cap(top), cap(bottom)], cut(color, EDGE));
}

/// A bar where the value lies beyond, with an arrow; or a cross.
pub(super) fn censored(pen: &mut Pen<'_>, mark: Censored, color: Color, [x, y]: Place) {
    let stroke = cut(color, EDGE * 1.2);
    let sign = match mark {
        Censored::Up => -1.0,
        Censored::Down => 1.0,
        Censored::Not => {
            let arm = HALF * 0.9;
            let lines = [[[x - arm, y - arm], [x + arm, y + arm]], [[x - arm, y + arm], [x + arm, y - arm]]];
            pen.lines(&lines, stroke);
            return;
        }
    };
    let tip = y + sign * ARROW;
    let neck = tip - sign * HEAD;
    pen.lines(&[[[x - HALF, y], [x + HALF, y]], [[x, y], [x, neck]]], stroke);
    let head = [[x, tip], [x + HEAD * 0.55, neck], [x - HEAD * 0.55, neck]];
    pen.closed(&head, &edged(Color::WHITE, Stroke::new(color, EDGE)));
}

/// What a reading in its strip stands on.
pub(super) fn strip(pen: &mut Pen<'_>, space: Space) {
    pen.rectangle(space, &Paint::filled(Color::SHIRT));
    pen.line([space.left, space.top], [space.right, space.top], cut(Color::GHOST, EDGE / 2.0));
}

/// Half the size of a marker in millimeters.
pub(super) const HALF: f64 = 0.95;
const CAP: f64 = 0.8;
/// Length of the arrow of a value that lies beyond.
pub(super) const ARROW: f64 = 3.4;
const HEAD: f64 = 1.7;
