//! The arc: what a joint may do, from its zero position.

mod geometry;
mod labels;
mod paint;
mod picture;
#[cfg(test)]
mod tests;
mod valid;

use body::Angle;

use super::error::ChartError;
use super::pen::Place;
use crate::svg::Svg;

pub use picture::ArcPicture;

/// The arc of one movement.
///
/// # Units and shape
/// Angles of the movement count from its zero position, as the surgeon counts them, between −90 and 180 degrees.
/// `zero` is where the limb points in the picture at the zero position: degrees from the picture's right, growing
/// upward, so that −90 points down. Lengths are in millimeters, Y down.
///
/// # Method
/// The allowed sector is solid; the goal a hatched band along its edge; the rest of the way outlined with dashes; the
/// limit a thick bar across the arc; a measured value a dot with its error on both sides. No two of them have the same
/// shape, so that the picture reads without color.
#[derive(Debug, Clone, PartialEq)]
pub struct Arc {
    /// The joint.
    pub center_mm: Place,
    /// From the joint to the edge of the sector.
    pub radius_mm: f64,
    /// Where the limb points at the zero position.
    pub zero: Angle,
    /// Which way the movement turns in the picture.
    pub turn: Turning,
    /// The whole way that is outlined.
    pub whole: [Angle; 2],
    /// What is allowed; none where nothing is.
    pub allowed: Option<[Angle; 2]>,
    /// Where the movement shall come to.
    pub goal: Option<([Angle; 2], String)>,
    /// Beyond which it must not go.
    pub limit: Option<(Angle, String)>,
    /// What was measured.
    pub measured: Vec<Measured>,
    /// Other angles that get a small tick and their degrees: where the allowed begins, where the way ends.
    pub notes: Vec<(Angle, String)>,
    /// What is written at the zero position; may be empty.
    pub zero_text: String,
}

/// Which way a movement turns in a picture.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turning {
    /// As the hands of a clock.
    Clockwise,
    /// Against the hands of a clock.
    Counterclockwise,
}

/// A measured value.
#[derive(Debug, Clone, PartialEq)]
pub struct Measured {
    /// The value.
    pub value: Angle,
    /// How far the true one may lie to both sides; none where nobody knows.
    pub error: Option<Angle>,
    /// What is written beside it; may be empty.
    pub text: String,
}

impl Arc {
    /// Draws it over a picture.
    ///
    /// # Units and shape
    /// `page_mm` is what the words must stay inside: left, top, right, bottom. `is_taken` says whether something of the
    /// picture lies at a place in millimeters; words look for places where nothing does.
    ///
    /// # Errors
    /// Angles out of range or order; a radius that is none; marks over the border of the page; a word that finds
    /// no place.
    pub fn paint(&self, svg: &mut Svg, page_mm: [f64; 4], is_taken: impl Fn(Place) -> bool) -> Result<(), ChartError> {
        valid::check(self)?;
        let [left, top, right, bottom] = page_mm;
        let page = crate::label::Space { left, top, right, bottom };
        let labels = labels::placed(self, page, &is_taken, f64::INFINITY)?;
        let labels = labels.ok_or(ChartError::NoRoom { width_mm: right - left, height_mm: bottom - top })?;
        paint::arc(svg, self, &labels);
        Ok(())
    }
}
