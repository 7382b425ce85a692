//! Pictures: the person, the arc, the recovery line and plain charts, as SVG.
//!
//! Nothing here computes a clinical value: every angle, day and limit comes from the caller, and every text too,
//! already in the reader's language. The same string goes to the page and to the paper.
//!
//! # Conventions
//! Space as in [`body`]: X forward, Y up, Z to the right, in parts of stature. A picture counts in millimeters from
//! its upper left corner. Everything is drawn of a right arm; a left one is the exact mirror image.
#![deny(missing_docs)]

mod animation;
mod camera;
pub mod chart;
mod color;
pub mod figure;
mod label;
mod marks;
mod movement;
mod picture;
mod setting;
mod sheet;
mod svg;
mod swing;
mod view;

pub use animation::Tempo;
pub use camera::{Camera, Projected};
pub use color::Color;
pub use movement::{Arrow, Shown};
pub use picture::{NoPicture, Picture, Request, Words, draw, draw_moving};
pub use sheet::contact_sheet;
pub use svg::{Anchor, Ends, Lettering, Paint, Stroke, Svg, Weight};
pub use swing::Swing;
pub use view::{NumberPlace, SeenFrom, View};
