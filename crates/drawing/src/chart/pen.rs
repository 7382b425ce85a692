//! Drawing in millimeters.

use std::fmt::Write as _;

use super::text_width::width_mm;
use super::tones::{ABOVE, BELOW};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Anchor, Lettering, Paint, Stroke, Svg, Weight, units};

/// A place in millimeters from the upper left corner, Y down.
pub(super) type Place = [f64; 2];

/// A line of text at its place.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Word {
    pub(super) text: String,
    /// On the base line.
    pub(super) at: Place,
    pub(super) size: f64,
    pub(super) weight: Weight,
    pub(super) anchor: Anchor,
    pub(super) color: Color,
    pub(super) halo: Option<f64>,
}

impl Word {
    /// In ink, beginning at a place.
    pub(super) fn new(text: &str, at: Place, size: f64, anchor: Anchor) -> Self {
        let text = text.to_owned();
        Self { text, at, size, weight: Weight::Regular, anchor, color: Color::INK, halo: None }
    }

    pub(super) const fn bold(mut self) -> Self {
        self.weight = Weight::Bold;
        self
    }

    pub(super) const fn weighing(mut self, weight: Weight) -> Self {
        self.weight = weight;
        self
    }

    pub(super) const fn colored(mut self, color: Color) -> Self {
        self.color = color;
        self
    }

    pub(super) const fn with_halo(mut self, mm: f64) -> Self {
        self.halo = Some(mm);
        self
    }

    /// What it covers.
    pub(super) fn space(&self) -> Space {
        let width = width_mm(&self.text, self.size, self.weight);
        let left = match self.anchor {
            Anchor::Start => self.at[0],
            Anchor::Middle => self.at[0] - width / 2.0,
            Anchor::End => self.at[0] - width,
        };
        let (top, bottom) = (self.at[1] - self.size * ABOVE, self.at[1] + self.size * BELOW);
        Space { left, top, right: left + width, bottom }
    }
}

/// Writes into a picture, in millimeters.
#[derive(Debug)]
pub(super) struct Pen<'s>(pub(super) &'s mut Svg);

impl Pen<'_> {
    pub(super) fn word(&mut self, word: &Word) {
        let Word { size, weight, anchor, color, halo, .. } = *word;
        let lettering = Lettering { size_mm: size, color, weight, anchor, halo_mm: halo };
        self.0.text(units(word.at[0]), units(word.at[1]), &word.text, &lettering);
    }

    pub(super) fn line(&mut self, from: Place, to: Place, stroke: Stroke) {
        self.path(&[from, to], "", &stroked(stroke));
    }

    pub(super) fn open(&mut self, places: &[Place], stroke: Stroke) {
        self.path(places, "", &stroked(stroke));
    }

    pub(super) fn closed(&mut self, places: &[Place], paint: &Paint) {
        self.path(places, "Z", paint);
    }

    pub(super) fn rectangle(&mut self, space: Space, paint: &Paint) {
        let [left, top, right, bottom] = [space.left, space.top, space.right, space.bottom].map(units);
        self.0.path(&format!("M{left} {top}H{right}V{bottom}H{left}Z"), paint);
    }

    pub(super) fn disk(&mut self, at: Place, radius: f64, paint: &Paint) {
        self.0.circle(units(at[0]), units(at[1]), units(radius), paint);
    }

    /// Lines that have nothing to do with one another, as one path.
    pub(super) fn lines(&mut self, lines: &[[Place; 2]], stroke: Stroke) {
        let mut commands = String::new();
        for [from, to] in lines {
            let [a, b, c, d] = [from[0], from[1], to[0], to[1]].map(units);
            let _ = write!(commands, "M{a} {b}L{c} {d}");
        }
        if !commands.is_empty() {
            self.0.path(&commands, &stroked(stroke));
        }
    }

    fn path(&mut self, places: &[Place], end: &str, paint: &Paint) {
        let mut commands = String::new();
        for (index, place) in places.iter().enumerate() {
            let letter = if index == 0 { 'M' } else { 'L' };
            let [x, y] = place.map(units);
            let _ = write!(commands, "{letter}{x} {y}");
        }
        commands.push_str(end);
        self.0.path(&commands, paint);
    }
}

pub(super) fn stroked(stroke: Stroke) -> Paint {
    Paint { stroke: Some(stroke), ..Paint::default() }
}

/// An inside with a line around it.
pub(super) fn edged(fill: Color, stroke: Stroke) -> Paint {
    Paint { stroke: Some(stroke), ..Paint::filled(fill) }
}

/// Whether anything is written in it that can be seen.
pub(super) fn is_written(text: &str) -> bool {
    !text.trim().is_empty()
}
