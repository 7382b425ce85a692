//! Many drawings on one sheet.

use crate::color::Color;
use crate::picture::Picture;
use crate::svg::{Anchor, Lettering, Svg, UNITS_PER_MM, Weight, decimal, units};

/// How many drawings stand side by side.
const COLUMNS: usize = 8;
/// Room for the name above a drawing, in millimeters.
const NAME_MM: f64 = 8.0;
const NAME_SIZE_MM: f64 = 3.0;

/// Drawings in rows, each with its name, in their order.
///
/// # Units and shape
/// `room_mm` is what each of them was given.
pub fn contact_sheet(pictures: &[(String, Picture)], room_mm: (f64, f64)) -> String {
    let columns = pictures.len().clamp(1, COLUMNS);
    let rows = pictures.len().div_ceil(columns);
    let [wide, high] = [room_mm.0, room_mm.1 + NAME_MM];
    // Fewer than a thousand of either.
    let mut svg = Svg::new(wide * columns as f64, high * rows as f64, "contact sheet", "");
    let lettering = Lettering {
        size_mm: NAME_SIZE_MM,
        color: Color::INK,
        weight: Weight::Regular,
        anchor: Anchor::Middle,
        halo_mm: None,
    };
    for (at, (name, picture)) in pictures.iter().enumerate() {
        let [column, row] = [at % columns, at / columns].map(|count| count as f64);
        let x = column * wide + (wide - picture.width_mm) / 2.0;
        let y = row * high + NAME_MM;
        svg.text(units(column * wide + wide / 2.0), units(row * high + NAME_MM * 0.7), name, &lettering);
        svg.raw(&nested(picture, x, y));
    }
    svg.finish()
}

/// A drawing inside another: at a place, and its size in units instead of millimeters.
fn nested(picture: &Picture, x_mm: f64, y_mm: f64) -> String {
    let [x, y, width, height] = [x_mm, y_mm, picture.width_mm, picture.height_mm].map(|mm| decimal(mm * UNITS_PER_MM));
    // The attributes of the outer element come before the first `viewBox`.
    let rest = picture.svg.find("viewBox").map_or("", |at| &picture.svg[at..]);
    format!("<svg x=\"{x}\" y=\"{y}\" width=\"{width}\" height=\"{height}\" {}", rest.trim_end())
}
