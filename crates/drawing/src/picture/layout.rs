//! Where everything of a drawing goes on the page.

use body::Side;

use super::scene::{Inset, Scene};
use super::{Picture, Request};
use crate::animation::{self, Tempo};
use crate::camera::Camera;
use crate::color::Color;
use crate::figure::{Composition, Fade, Placing};
use crate::label::Space;
use crate::marks::{self, Plot, Turn};
use crate::movement::Shown;
use crate::svg::{Paint, Svg, UNITS_PER_MM, units};

/// Where everything goes on the page; millimeters, Y down.
pub(super) struct Layout {
    pub(super) size: [f64; 2],
    pub(super) mm_per_stature: f64,
    /// Where the middle between the hips is.
    pub(super) at: [f64; 2],
    /// Middle of the round picture.
    pub(super) inset_at: [f64; 2],
}

impl Layout {
    pub(super) fn of(scene: &Scene, [width, height]: [f64; 2]) -> Self {
        let bounds = scene.bounds();
        let is_tall = bounds.height() > bounds.width();
        let ring = 2.0 * INSET + INSET_GAP;
        // What figure and round picture take together, in parts of stature.
        let [wide, high] = match (&scene.inset, is_tall) {
            (None, _) => [bounds.width(), bounds.height()],
            (Some(_), true) => [bounds.width() + ring, bounds.height().max(ring)],
            (Some(_), false) => [bounds.width().max(ring), bounds.height() + ring],
        };
        let caption = if scene.inset.is_some() && !is_tall { CAPTION } else { 0.0 };
        let [room_x, room_y] = [width - 2.0 * MARGIN, height - 2.0 * MARGIN - WORD - caption];
        let scale = (room_x / wide).min(room_y / high).min(LARGEST);
        // No wider than it needs to be: what is left of the room is the text's.
        let page = [
            (wide * scale + 2.0 * (MARGIN + BESIDE)).min(width),
            (high * scale + 2.0 * MARGIN + WORD + caption).min(height),
        ];
        let left = (page[0] - wide * scale) / 2.0;
        let top = MARGIN + WORD;
        let beside = scene.inset.is_some() && is_tall;
        let below = scene.inset.is_some() && !is_tall;
        let across = if below { (wide - bounds.width()) / 2.0 * scale } else { 0.0 };
        let at = [left + across - bounds.x0 * scale, top + bounds.y1 * scale];
        let radius = INSET * scale;
        let inset_at = if beside {
            [left + (bounds.width() + INSET_GAP) * scale + radius, top + radius]
        } else {
            [page[0] / 2.0, top + (bounds.height() + INSET_GAP) * scale + radius]
        };
        Self { size: page, mm_per_stature: scale, at, inset_at }
    }

    pub(super) fn paint(&self, scene: &Scene, request: &Request<'_>) -> Picture {
        let mirrored = request.side == Side::Left;
        let words = request.words;
        let mut svg = Svg::new(self.size[0], self.size[1], words.title, words.description);
        let turned = |at: [f64; 2]| self.turned(at, mirrored);
        let placing = |at: [f64; 2], fade| {
            let at = turned(at);
            Placing { at_mm: (at[0], at[1]), mm_per_stature: self.mm_per_stature, side: request.side, fade }
        };
        scene.figure.paint(&mut svg, &placing(self.at, Fade::None));
        let main = self.plot(&scene.view.camera, self.at, mirrored);
        self.paint_marks(&mut svg, scene, &main);
        let mut taken: Vec<Space> = Vec::new();
        if let Some(inset) = &scene.inset {
            self.paint_inset(&mut svg, scene, inset, request, &placing);
            let radius = INSET * self.mm_per_stature * UNITS_PER_MM;
            taken.push(Space::around(self.inset_at.map(|mm| mm * UNITS_PER_MM), 2.0 * radius, 2.0 * radius));
        }
        self.paint_words(&mut svg, scene, request, &mut taken);
        Picture { svg: svg.finish(), width_mm: self.size[0], height_mm: self.size[1] }
    }

    pub(super) fn paint_moving(
        &self,
        scene: &Scene,
        request: &Request<'_>,
        figures: &[Composition],
        tempo: &Tempo,
    ) -> Picture {
        let words = request.words;
        let mirrored = request.side == Side::Left;
        let mut svg = Svg::new(self.size[0], self.size[1], words.title, words.description);
        let name = format!("{}-{}-", request.entry.id, request.side);
        let goes_around = matches!(scene.shown, Shown::Circles { .. });
        svg.raw(&format!("<style>{}</style>", animation::style(&name, tempo, goes_around)));
        let at = self.turned(self.at, mirrored);
        let placing = Placing {
            at_mm: (at[0], at[1]),
            mm_per_stature: self.mm_per_stature,
            side: request.side,
            fade: Fade::None,
        };
        for (frame, figure) in figures.iter().enumerate() {
            svg.open_group(&format!("class=\"{name}\" id=\"{name}{frame}\""));
            figure.paint(&mut svg, &placing);
            svg.close_group();
        }
        let main = self.plot(&scene.view.camera, self.at, mirrored);
        self.paint_marks(&mut svg, scene, &main);
        let mut taken: Vec<Space> = Vec::new();
        self.paint_words(&mut svg, scene, request, &mut taken);
        Picture { svg: svg.finish(), width_mm: self.size[0], height_mm: self.size[1] }
    }

    /// A place of a right arm's picture, or where it lands in a left one's: turned over in whole units.
    fn turned(&self, [x, y]: [f64; 2], mirrored: bool) -> [f64; 2] {
        if mirrored { [f64::from(units(self.size[0]) - units(x)) / UNITS_PER_MM, y] } else { [x, y] }
    }

    pub(super) fn plot<'c>(&self, camera: &'c Camera, at: [f64; 2], is_mirrored: bool) -> Plot<'c> {
        let x = units(at[0]);
        Plot {
            camera,
            at: [if is_mirrored { units(self.size[0]) - x } else { x }, units(at[1])],
            units_per_stature: self.mm_per_stature * UNITS_PER_MM,
            is_mirrored,
        }
    }

    fn paint_marks(&self, svg: &mut Svg, scene: &Scene, plot: &Plot<'_>) {
        svg.open_group("class=\"marks\"");
        match &scene.shown {
            Shown::Still => {}
            Shown::Turn { .. } => {
                if let Some(turn) = scene.turn() {
                    if scene.inset.is_none() {
                        turn.paint_angle(svg, plot);
                    }
                    turn.paint_movement(svg, plot);
                }
            }
            Shown::Way(way) => marks::paint_way(svg, plot, way),
            Shown::Circles { center, radius, axis } => marks::paint_circle(svg, plot, *center, *radius, *axis),
            Shown::Twist(turn) => marks::paint_twist(svg, plot, turn),
            Shown::Press { at, toward } => marks::paint_press(svg, plot, *at, *toward),
        }
        svg.close_group();
    }

    /// Where the round picture's own middle between the hips is.
    pub(super) fn inset_origin(&self, inset: &Inset) -> [f64; 2] {
        let seen = inset.camera.project(inset.middle);
        [self.inset_at[0] - seen.x * self.mm_per_stature, self.inset_at[1] + seen.y * self.mm_per_stature]
    }

    fn paint_inset(
        &self,
        svg: &mut Svg,
        scene: &Scene,
        inset: &Inset,
        request: &Request<'_>,
        placing: &dyn Fn([f64; 2], Fade) -> Placing,
    ) {
        let mirrored = request.side == Side::Left;
        let radius = units(INSET * self.mm_per_stature);
        let x = units(self.inset_at[0]);
        let center = [if mirrored { units(self.size[0]) - x } else { x }, units(self.inset_at[1])];
        // Unique among the pictures of a page that are not the same anyway.
        let clip = format!(
            "{}-{}-{}",
            request.entry.id,
            request.side,
            scene.swing().map_or(0, |swing| { units(swing.angle.degrees()) })
        );
        svg.raw(&format!(
            "<clipPath id=\"{clip}\"><circle cx=\"{}\" cy=\"{}\" r=\"{radius}\"/></clipPath>",
            center[0], center[1]
        ));
        svg.circle(center[0], center[1], radius, &Paint::filled(Color::WHITE));
        svg.open_group(&format!("clip-path=\"url(#{clip})\""));
        let origin = self.inset_origin(inset);
        inset.figure.paint(svg, &placing(origin, Fade::AllButOperatedArm));
        svg.close_group();
        svg.circle(center[0], center[1], radius, &Paint::line(Color::GHOST, 0.26));
        let plot = self.plot(&inset.camera, origin, mirrored);
        if let Some(turn) = scene.turn() {
            svg.open_group("class=\"inset\"");
            Turn { limit: None, ..turn }.paint_angle(svg, &plot);
            svg.close_group();
        }
    }
}

// Millimeters.
const MARGIN: f64 = 1.5;
const WORD: f64 = 4.0;
const BESIDE: f64 = 8.0;
pub(super) const CAPTION: f64 = 4.0;
const LARGEST: f64 = 110.0;
// Parts of stature.
pub(super) const INSET: f64 = 0.225;
const INSET_GAP: f64 = 0.03;
