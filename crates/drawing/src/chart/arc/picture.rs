//! The arc alone, with a small sign for the joint.

use body::Angle;

use super::super::error::{self, ChartError};
use super::super::pen::{Pen, Place, Word, is_written};
use super::super::text_width::wrapped;
use super::super::tones::{ABOVE, BELOW, LARGE, PITCH, SMALL, THIN};
use super::{Arc, labels, paint, valid};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Anchor, Stroke, Svg, Weight};

/// An arc as a picture of its own.
///
/// # Units and shape
/// Center and radius of the arc are found here: a large arc whose words all find a place near
/// their marks. Those of `arc` are not
/// used.
#[derive(Debug, Clone, PartialEq)]
pub struct ArcPicture {
    /// Title of the picture.
    pub title: String,
    /// What it shows, in words.
    pub description: String,
    /// Its size in millimeters.
    pub size_mm: [f64; 2],
    /// The side, in words: it stands in every picture.
    pub side: String,
    /// The movement.
    pub heading: String,
    /// What is drawn.
    pub arc: Arc,
}

impl ArcPicture {
    /// The picture.
    ///
    /// # Errors
    /// As [`Arc::paint`]; a size that is none or too small; a side or heading without a word.
    pub fn draw(&self) -> Result<Svg, ChartError> {
        let [width, height] = self.size_mm;
        error::size(width, height, [LEAST; 2])?;
        let texts = [(&self.title, "title"), (&self.description, "description"), (&self.side, "side")];
        for (text, what) in texts.into_iter().chain([(&self.heading, "heading")]) {
            if !is_written(text) {
                return Err(ChartError::NoText(what));
            }
        }
        let (head, top) = self.head(width)?;
        let page = Space { left: EDGE, top, right: width - EDGE, bottom: height - EDGE };
        let (arc, labels) = largest(&self.arc, page)?;
        let mut svg = Svg::new(width, height, &self.title, &self.description);
        let mut pen = Pen(&mut svg);
        for word in &head {
            pen.word(word);
        }
        limb(&mut svg, &arc);
        paint::arc(&mut svg, &arc, &labels);
        Ok(svg)
    }

    /// The side and the movement, and where they end.
    fn head(&self, width: f64) -> Result<(Vec<Word>, f64), ChartError> {
        let mut words = Vec::new();
        let mut top = EDGE;
        let rows = [(&self.side, LARGE, Weight::Bold), (&self.heading, SMALL, Weight::Regular)];
        for (text, size, weight) in rows {
            let lines = wrapped(text, size, weight, width - EDGE * 2.0);
            for line in lines.ok_or_else(|| ChartError::NoRoomForText(text.clone()))? {
                let base = top + size * ABOVE;
                words.push(Word::new(&line, [EDGE, base], size, Anchor::Start).weighing(weight));
                top += size * PITCH;
            }
        }
        Ok((words, top + SMALL * BELOW))
    }
}

/// An arc whose words all find a place, with them: large, its words near their marks.
fn largest(arc: &Arc, page: Space) -> Result<(Arc, labels::Labels), ChartError> {
    let [width, height] = [page.right - page.left, page.bottom - page.top];
    let mut arc = Arc { center_mm: [0.0; 2], radius_mm: 1.0, ..arc.clone() };
    let extent = extent(&Arc { radius_mm: valid::SMALLEST, ..arc.clone() })?;
    let mut radius = (width / (extent.right - extent.left)).min(height / (extent.bottom - extent.top));
    let mut fault = ChartError::NoRoom { width_mm: width, height_mm: height };
    let mut best: Option<(f64, Arc, labels::Labels)> = None;
    // Smaller ones can't be better any more.
    while radius >= LEAST_RADIUS && best.as_ref().is_none_or(|(most, ..)| *most < radius) {
        arc.radius_mm = radius;
        let free = [width - (extent.right - extent.left) * radius, height - (extent.bottom - extent.top) * radius];
        for [across, down] in SHARES {
            arc.center_mm =
                [page.left - extent.left * radius + free[0] * across, page.top - extent.top * radius + free[1] * down];
            // What its words may cost so that it is better than the best.
            let aside = ((across - MIDDLE).abs() + (down - MIDDLE).abs()) * ASIDE;
            let most = best.as_ref().map_or(f64::INFINITY, |(most, ..)| (radius - aside - most) / DISTANCE);
            if most <= 0.0 {
                continue;
            }
            match labels::placed(&arc, page, &|_: Place| false, most) {
                Ok(None) => {}
                Ok(Some(labels)) => best = Some((radius - aside - labels.cost * DISTANCE, arc.clone(), labels)),
                Err(found) => fault = found,
            }
        }
        radius *= SMALLER;
    }
    best.map(|(_, arc, labels)| (arc, labels)).ok_or(fault)
}

/// What an arc of radius 1 around 0 covers.
fn extent(arc: &Arc) -> Result<Space, ChartError> {
    valid::check(arc)?;
    let mut space = Space { left: 0.0, top: 0.0, right: 0.0, bottom: 0.0 };
    for at in Arc::steps(arc.whole, arc.radius_mm, arc.radius_mm * FINE) {
        let [x, y] = arc.place(at, 1.0);
        space.left = space.left.min(x);
        space.right = space.right.max(x);
        space.top = space.top.min(y);
        space.bottom = space.bottom.max(y);
    }
    Ok(space)
}

/// A small limb at the zero position, so that the joint is seen as one.
fn limb(svg: &mut Svg, arc: &Arc) {
    let width = WIDTH.min(arc.radius_mm * NARROW);
    let end = arc.place(Angle::ZERO, arc.radius_mm * LIMB);
    let mut pen = Pen(svg);
    pen.line(arc.center_mm, end, Stroke::new(Color::GHOST, width));
    pen.line(arc.center_mm, end, Stroke::new(Color::WHITE, width - THIN * 2.0));
}

/// Free at the border, in millimeters.
const EDGE: f64 = 0.6;
/// No picture of an arc is smaller.
const LEAST: f64 = 25.0;
const LEAST_RADIUS: f64 = 8.0;
/// From one radius tried to the next.
const SMALLER: f64 = 0.93;
/// A turn of this many radians is looked at each time.
const FINE: f64 = 0.02;
/// How the room that is left is shared, across and down.
const SHARES: [[f64; 2]; 9] =
    [[0.5, 0.5], [0.5, 0.3], [0.5, 0.7], [0.3, 0.5], [0.7, 0.5], [0.3, 0.3], [0.7, 0.3], [0.15, 0.5], [0.85, 0.5]];
const MIDDLE: f64 = 0.5;
/// What a place aside costs, and a word far from its mark, in millimeters of the radius.
const ASIDE: f64 = 1.5;
const DISTANCE: f64 = 0.25;
/// The limb: its width in millimeters, at most in radii, and its length in radii.
const WIDTH: f64 = 3.4;
const NARROW: f64 = 0.2;
const LIMB: f64 = 0.7;
