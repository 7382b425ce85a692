//! The words in a drawing: degrees, stop, the side, and from where a small picture is seen.

use body::{Angle, Side};
use kurbo::Point;
use quantity::Degrees;

use super::Request;
use super::layout::{CAPTION, INSET, Layout};
use super::scene::Scene;
use crate::chart::text_width::width_mm;
use crate::color::Color;
use crate::figure::{Composition, Role};
use crate::label::{Space, settle};
use crate::marks::Plot;
use crate::svg::{Anchor, Lettering, Svg, UNITS_PER_MM, Weight};
use crate::view::SeenFrom;

impl Layout {
    pub(super) fn paint_words(&self, svg: &mut Svg, scene: &Scene, request: &Request<'_>, taken: &mut Vec<Space>) {
        let words = request.words;
        let page =
            Space { left: 0.0, top: 0.0, right: self.size[0] * UNITS_PER_MM, bottom: self.size[1] * UNITS_PER_MM };
        let page = page.grown(-4.0);
        let mirrored = request.side == Side::Left;
        let write = |svg: &mut Svg, [x, y]: [f64; 2], text: &str, size: f64, color: Color| {
            let x = if mirrored { page.right + page.left - x } else { x };
            let lettering =
                Lettering { size_mm: size, color, weight: Weight::Bold, anchor: Anchor::Middle, halo_mm: Some(0.45) };
            // A capital is about two thirds of the type's height.
            svg.text(x.round() as i32, (y + size * UNITS_PER_MM * 0.33).round() as i32, text, &lettering);
        };
        // Everything here is told of a right arm, in units.
        let main = self.plot(&scene.view.camera, self.at, false);
        let from =
            |plot: &Plot<'_>, place: [f64; 2]| [f64::from(plot.at[0]) + place[0], f64::from(plot.at[1]) + place[1]];
        let obstacles = scene.obstacles();
        let is_drawn = |place: [f64; 2]| {
            let x = (place[0] / UNITS_PER_MM - self.at[0]) / self.mm_per_stature;
            let y = (self.at[1] - place[1] / UNITS_PER_MM) / self.mm_per_stature;
            let place = Point::new(x, y);
            obstacles.iter().any(|(at, breadth)| at.distance(place) < *breadth)
                || covers(&scene.figure, &Role::ALL, place)
        };
        if let Some(turn) = scene.turn().filter(|turn| !(words.degrees)(degrees(turn.swing.angle)).is_empty()) {
            let text = (words.degrees)(degrees(turn.swing.angle));
            let room = [width_of(&text, DEGREES_MM), DEGREES_MM * 0.8 * UNITS_PER_MM];
            let (found, inside) = match &scene.inset {
                None => {
                    let places: Vec<_> = turn.label_places(&main).into_iter().map(|place| from(&main, place)).collect();
                    (settle(&places, room, is_drawn, taken, page), places)
                }
                Some(inset) => {
                    let origin = self.inset_origin(inset);
                    let plot = self.plot(&inset.camera, origin, false);
                    let places: Vec<_> = turn.label_places(&plot).into_iter().map(|place| from(&plot, place)).collect();
                    let is_drawn = |place: [f64; 2]| {
                        let x = (place[0] / UNITS_PER_MM - origin[0]) / self.mm_per_stature;
                        let y = (origin[1] - place[1] / UNITS_PER_MM) / self.mm_per_stature;
                        covers(&inset.figure, &[Role::OperatedArm], Point::new(x, y))
                    };
                    (settle(&places, room, is_drawn, &[], page), places)
                }
            };
            if let Some(place) = found.or_else(|| inside.first().copied()) {
                write(svg, place, &text, DEGREES_MM, Color::MOVEMENT);
                taken.push(Space::around(place, room[0], room[1]));
            }
            if turn.limit.is_some() {
                let room = [width_of(words.stop, WORD_MM), WORD_MM * 0.8 * UNITS_PER_MM];
                let places: Vec<_> = turn.stop_places(&main).into_iter().map(|place| from(&main, place)).collect();
                if let Some(place) = settle(&places, room, is_drawn, taken, page) {
                    write(svg, place, words.stop, WORD_MM, Color::STOP);
                    taken.push(Space::around(place, room[0], room[1]));
                }
            }
        }
        if let Some(inset) = &scene.inset {
            let text = (words.seen_from)(SeenFrom::of(&inset.camera, &scene.end));
            let below = self.inset_at[1] + INSET * self.mm_per_stature + CAPTION * 0.55;
            let half = width_of(&text, CAPTION_MM) / 2.0;
            let x =
                (self.inset_at[0] * UNITS_PER_MM).clamp(page.left + half, (page.right - half).max(page.left + half));
            write(svg, [x, below * UNITS_PER_MM], &text, CAPTION_MM, Color::GHOST);
            taken.push(Space::around([x, below * UNITS_PER_MM], half * 2.0, CAPTION_MM * UNITS_PER_MM));
        }
        // The side stands above the operated arm, or wherever on that line there is room.
        let room = [width_of(words.side, WORD_MM), WORD_MM * 0.8 * UNITS_PER_MM];
        let arm = scene.figure.joints().skeleton.operated;
        let near = [arm.shoulder, arm.elbow, arm.wrist].map(|place| from(&main, main.place(place)));
        let mut places: Vec<[f64; 2]> = Vec::new();
        for distance in [0.07, 0.1, 0.14, 0.19, 0.25, 0.32] {
            for place in near {
                for turn in 0..12 {
                    let angle = f64::from(turn) * std::f64::consts::TAU / 12.0;
                    let far = distance * main.units_per_stature + room[0] * 0.4 * angle.sin().abs();
                    places.push([place[0] + far * angle.sin(), place[1] - far * angle.cos()]);
                }
            }
        }
        if let Some(place) = settle(&places, room, is_drawn, taken, page) {
            write(svg, place, words.side, WORD_MM, Color::HATCH);
        } else {
            write(svg, [page.left + room[0], page.top + room[1]], words.side, WORD_MM, Color::HATCH);
        }
    }
}

fn covers(figure: &Composition, roles: &[Role], place: Point) -> bool {
    roles.iter().any(|role| figure.area(*role).contains(place))
}

/// As it was prescribed: tenths.
fn degrees(angle: Angle) -> Degrees {
    Degrees::from_steps((angle.degrees() * 10.0).round() as i32)
}

/// The width of a bold word in units.
fn width_of(text: &str, size_mm: f64) -> f64 {
    width_mm(text, size_mm, Weight::Bold) * UNITS_PER_MM
}

// Millimeters.
const DEGREES_MM: f64 = 3.8;
const WORD_MM: f64 = 3.0;
const CAPTION_MM: f64 = 2.8;
