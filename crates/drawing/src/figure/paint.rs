//! Painting a composition: on any side and at any size.

use kurbo::{BezPath, Point};

use super::composition::{Composition, Whose};
use super::hatch::hatch;
use super::part::{Ink, Tone};
use super::path::{Grid, commands};
use crate::color::Color;
use crate::svg::{Paint, Stroke, Svg, units};

/// Where and how a composition is painted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placing {
    /// Where the middle between the hips is in the picture, in millimeters from its upper left corner.
    pub at_mm: (f64, f64),
    /// Millimeters of the picture for one stature.
    pub mm_per_stature: f64,
    /// Which arm was operated; a left one is the exact mirror image.
    pub side: body::Side,
    /// What stands back.
    pub fade: Fade,
}

/// What of a figure stands back.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Fade {
    /// Nothing.
    #[default]
    None,
    /// Everything but the operated arm.
    AllButOperatedArm,
}

impl Composition {
    /// Paints the figure.
    pub fn paint(&self, svg: &mut Svg, placing: &Placing) {
        let grid = placing.grid();
        svg.path(&commands(&self.silhouette, &grid), &Paint::filled(Color::WHITE));
        let faded = placing.fade == Fade::AllButOperatedArm;
        if faded {
            svg.open_group("opacity=\"0.38\"");
        }
        self.paint_of(svg, placing, Whose::Rest);
        if faded {
            svg.close_group();
        }
        self.paint_of(svg, placing, Whose::OperatedArm);
    }

    fn paint_of(&self, svg: &mut Svg, placing: &Placing, whose: Whose) {
        let grid = placing.grid();
        for (tone, _, path) in self.fills.iter().filter(|fill| fill.1 == whose) {
            svg.path(&commands(path, &grid), &Paint::filled(color(*tone)));
        }
        if whose == Whose::OperatedArm && !self.hatched.is_empty() {
            let pitch = placing.line_mm(HATCH_PITCH_MM) / placing.mm_per_stature;
            let inset = placing.line_mm(HATCH_MM) / placing.mm_per_stature;
            let mut path = BezPath::new();
            for (from, to) in hatch(&self.hatched, self.hatch_direction, pitch, inset) {
                path.move_to(from);
                path.line_to(to);
            }
            svg.path(&commands(&path, &grid), &Paint::line(Color::HATCH, placing.line_mm(HATCH_MM)));
        }
        for (ink, _, path) in self.lines.iter().filter(|line| line.1 == whose) {
            let stroke = stroke(*ink, placing);
            svg.path(&commands(path, &grid), &Paint { stroke: Some(stroke), ..Paint::default() });
        }
    }
}

/// Distance and width of the hatching at the usual size.
const HATCH_PITCH_MM: f64 = 1.3;
const HATCH_MM: f64 = 0.32;

/// The stature at which line widths are as written.
const USUAL_MM: f64 = 75.0;

/// No line is thinner.
const THINNEST_MM: f64 = 0.15;

impl Placing {
    /// A right arm, nothing faded.
    pub const fn new(at_mm: (f64, f64), mm_per_stature: f64) -> Self {
        Self { at_mm, mm_per_stature, side: body::Side::Right, fade: Fade::None }
    }

    /// Where a place of the composition falls in the picture, in units.
    pub fn place(&self, point: Point) -> (i32, i32) {
        self.grid().place(point)
    }

    /// The width of a line in millimeters, from its width at the usual size.
    pub fn line_mm(&self, at_usual_size: f64) -> f64 {
        (at_usual_size * (self.mm_per_stature / USUAL_MM).sqrt()).max(THINNEST_MM)
    }

    fn grid(&self) -> Grid {
        Grid {
            origin: (units(self.at_mm.0), units(self.at_mm.1)),
            units_per_stature: self.mm_per_stature * crate::svg::UNITS_PER_MM,
            across: if self.side == body::Side::Left { -1 } else { 1 },
        }
    }
}

const fn color(tone: Tone) -> Color {
    match tone {
        Tone::Skin | Tone::None => Color::WHITE,
        Tone::Operated => Color::OPERATED,
        Tone::Shirt => Color::SHIRT,
        Tone::Shorts => Color::SHORTS,
        Tone::Shoes => Color::SHOES,
        Tone::Hair => Color::HAIR,
        Tone::Wood => Color::WOOD,
        Tone::Top => Color::TOP,
        Tone::Side => Color::SIDE,
    }
}

fn stroke(ink: Ink, placing: &Placing) -> Stroke {
    let (color, mm) = match ink {
        Ink::Body => (Color::INK, 0.44),
        Ink::Hand => (Color::INK, 0.34),
        Ink::Thing => (Color::INK, 0.31),
        Ink::Hair => (Color::INK, 0.31),
        Ink::Face => (Color::INK, 0.26),
        Ink::Seam => (Color::INK, 0.18),
        Ink::Fine => (Color::INK, 0.18),
        Ink::Furniture => (Color::INK, 0.26),
        Ink::Eye => (Color::INK, 0.62),
        Ink::Ghost => (Color::GHOST, 0.26),
    };
    let dash_mm = (ink == Ink::Ghost).then_some((0.9, 0.8));
    Stroke { dash_mm, ..Stroke::new(color, placing.line_mm(mm)) }
}
