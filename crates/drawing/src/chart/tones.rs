//! Tones, weights of lines and sizes of type that all charts have in common.

use crate::color::Color;
use crate::svg::{Ends, Stroke};

/// The ground of an opened stage and of an expected course: light enough for text, dark enough to be seen.
pub(super) const TINT: Color = Color(0xd3, 0xe1, 0xee);

/// Height of type of labels in millimeters: 8.2 points.
pub(super) const SMALL: f64 = 2.9;
/// Height of type of what has to be seen first.
pub(super) const LARGE: f64 = 3.4;
/// From one line of a text to the next, in heights of type.
pub(super) const PITCH: f64 = 1.2;
/// What a line of text covers above its base line, in heights of type.
pub(super) const ABOVE: f64 = 0.76;
/// What it covers below its base line.
pub(super) const BELOW: f64 = 0.24;
/// The least distance between two labels in millimeters.
pub(super) const GAP: f64 = 1.2;

/// Widths of lines in millimeters.
pub(super) const HAIR: f64 = 0.15;
pub(super) const THIN: f64 = 0.25;
pub(super) const EDGE: f64 = 0.4;
pub(super) const LINE: f64 = 0.55;
pub(super) const HEAVY: f64 = 1.1;
/// What a white casing adds on both sides together.
pub(super) const CASING: f64 = 0.9;

/// A line with gaps.
pub(super) const fn dashed(color: Color, width_mm: f64, dash: f64, gap: f64) -> Stroke {
    Stroke { color, width_mm, dash_mm: Some((dash, gap)), ends: Ends::Cut }
}

/// A line of dots.
pub(super) const fn dotted(color: Color, width_mm: f64, gap: f64) -> Stroke {
    Stroke { color, width_mm, dash_mm: Some((0.0, gap)), ends: Ends::Round }
}

/// A line whose ends are cut off.
pub(super) const fn cut(color: Color, width_mm: f64) -> Stroke {
    Stroke { color, width_mm, dash_mm: None, ends: Ends::Cut }
}
