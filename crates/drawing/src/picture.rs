//! One drawing of an exercise: the figure, what moves, how far, and where it stops.

use body::{Angle, Joint, Look, Pose, Side, Skeleton, Vector};
use exercise::{Demand, Entry};
use kurbo::{Point, Rect};
use quantity::Degrees;

use crate::animation::{self, Tempo};
use crate::camera::Camera;
use crate::color::Color;
use crate::figure::{Build, Composition, Fade, Figure, FigureSpec, Hair, Placing, Role};
use crate::label::{Space, settle};
use crate::marks::{self, Plot, Turn};
use crate::movement::Shown;
use crate::svg::{Anchor, Lettering, Paint, Svg, UNITS_PER_MM, Weight, units};
use crate::swing::Swing;
use crate::view::{NumberPlace, SeenFrom, View};

/// What is drawn.
#[derive(Clone, Copy)]
pub struct Request<'a> {
    /// The exercise, activity, care pose or test.
    pub entry: &'a Entry,
    /// How far each demand goes.
    pub reach: &'a dyn Fn(&Demand) -> Degrees,
    /// Where the movement must stop.
    pub limit: Option<Degrees>,
    /// The operated side.
    pub side: Side,
    /// Whom the figure looks like.
    pub look: Look,
    /// What is written, in the reader's language.
    pub words: &'a Words<'a>,
    /// Room on the page, in millimeters.
    pub room_mm: (f64, f64),
}

/// What is written in and beside a drawing.
#[derive(Clone, Copy)]
pub struct Words<'a> {
    /// The title, for those who can't see it.
    pub title: &'a str,
    /// What it shows, for those who can't see it.
    pub description: &'a str,
    /// The operated side, as a word.
    pub side: &'a str,
    /// The degrees of an angle.
    pub degrees: &'a dyn Fn(Degrees) -> String,
    /// At the line that must not be crossed.
    pub stop: &'a str,
    /// From where a small picture is seen.
    pub seen_from: &'a dyn Fn(SeenFrom) -> String,
}

/// A drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// The SVG.
    pub svg: String,
    /// Its width in millimeters.
    pub width_mm: f64,
    /// Its height in millimeters.
    pub height_mm: f64,
}

/// Why there is no drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoPicture {
    /// The entry has no poses.
    NoPoses,
    /// The room is less than a drawing can be read in, or no number.
    NoRoom,
    /// An angle is none that a joint can have.
    BeyondTheJoint(Degrees),
    /// The movement goes beyond the limit that is to be drawn.
    BeyondTheLimit,
}

/// Draws.
///
/// # Method
/// The view is chosen at the widest the movement can go, so that it stays the same from week to week. The picture is
/// built of a right arm and every place turned over for a left one, so that both are exact mirror images but for the words.
///
/// # Errors
/// [`NoPicture`]; never a wrong picture.
pub fn draw(request: &Request<'_>) -> Result<Picture, NoPicture> {
    let [width, height] = [request.room_mm.0, request.room_mm.1];
    if !(width >= LEAST_ROOM && height >= LEAST_ROOM && width <= MOST_ROOM && height <= MOST_ROOM) {
        return Err(NoPicture::NoRoom);
    }
    let scene = Scene::of(request)?;
    let layout = Layout::of(&scene, [width, height]);
    Ok(layout.paint(&scene, request))
}

/// Draws a movement that is seen moving, at a tempo; an entry that stands still is drawn as [`draw`] does.
///
/// # Errors
/// As [`draw`].
pub fn draw_moving(request: &Request<'_>, tempo: &Tempo) -> Result<Picture, NoPicture> {
    let still = draw(request)?;
    let scene = Scene::of(request)?;
    let moves = matches!(scene.shown, Shown::Turn { .. } | Shown::Way(_) | Shown::Circles { .. } | Shown::Twist(_));
    if !moves || scene.start == scene.end && !matches!(scene.shown, Shown::Circles { .. }) {
        return Ok(still);
    }
    let poses = animation::poses(&scene.start, &scene.end, &scene.shown);
    let figures: Vec<Composition> =
        poses.iter().map(|pose| Figure::compose(&spec(request, *pose, None), &scene.view.camera)).collect();
    let layout = Layout::of(&scene, [request.room_mm.0, request.room_mm.1]);
    Ok(layout.paint_moving(&scene, request, &figures, tempo))
}

/// What is to be seen, before it has a place on a page.
struct Scene {
    figure: Composition,
    shown: Shown,
    view: View,
    end: Pose,
    limit: Option<Angle>,
    inset: Option<Inset>,
    /// Whether the picture ends at the thighs, because what moves is small.
    is_cut: bool,
    start: Pose,
}

/// A small round picture along the axis of a turn.
struct Inset {
    figure: Composition,
    camera: Camera,
    middle: Vector,
}

impl Scene {
    fn of(request: &Request<'_>) -> Result<Self, NoPicture> {
        let entry = request.entry;
        let (start, end) = entry.poses(request.reach).ok_or(NoPicture::NoPoses)?;
        let (widest_start, widest_end) = entry.widest_poses().ok_or(NoPicture::NoPoses)?;
        for demand in &entry.demands {
            let angle = demand.amount.greatest_angle().map(|_| (request.reach)(demand));
            if let Some(angle) = angle.filter(|angle| !(Degrees::whole(0)..=MOST_ANGLE).contains(angle)) {
                return Err(NoPicture::BeyondTheJoint(angle));
            }
        }
        let shown = Shown::of(entry, &start, &end);
        let limit = request.limit.map(Angle::from);
        let swing = match &shown {
            Shown::Turn { swing, .. } => Some(*swing),
            _ => None,
        };
        if let (Some(limit), Some(swing)) = (limit, swing)
            && swing.angle > limit + ROUNDING
        {
            return Err(NoPicture::BeyondTheLimit);
        }
        let widest = Shown::of(entry, &widest_start, &widest_end);
        let view = View::of(&widest_start, &widest_end, &widest);
        let moves = matches!(shown, Shown::Turn { .. } | Shown::Way(_)) && is_apart(&start, &end);
        let figure = Figure::compose(&spec(request, end, moves.then_some(start)), &view.camera);
        let inset = match (view.number, swing) {
            (NumberPlace::InAnInset(camera), Some(swing)) => Some(Inset {
                figure: Figure::compose(&spec(request, end, None), &camera),
                camera,
                middle: swing.place(swing.angle * 0.5, swing.reach * 0.4),
            }),
            _ => None,
        };
        let small = entry.target().is_some_and(|target| {
            matches!(target.key.joint, Joint::Scapula | Joint::Forearm | Joint::Wrist | Joint::Hand)
        });
        let is_cut = end.posture.is_upright()
            && end.lean == Angle::ZERO
            && matches!(entry.kind, exercise::Kind::Exercise | exercise::Kind::Test)
            && (small || matches!(shown, Shown::Press { .. }));
        Ok(Self { figure, shown, view, end, limit, inset, is_cut, start })
    }

    fn turn(&self) -> Option<Turn<'_>> {
        match &self.shown {
            Shown::Turn { swing, arrow } => {
                let radius = if swing.reach > ARM { SHOULDER_ARC } else { ELBOW_ARC };
                Some(Turn { swing, arrow, limit: self.limit, radius: radius.min(swing.reach * 0.8) })
            }
            _ => None,
        }
    }

    fn swing(&self) -> Option<&Swing> {
        match &self.shown {
            Shown::Turn { swing, .. } => Some(swing),
            _ => None,
        }
    }

    /// What no word may cover beside the figure: the dashed outline and the marks.
    fn obstacles(&self) -> Vec<(Point, f64)> {
        let mut found: Vec<(Point, f64)> = Vec::new();
        if is_apart(&self.start, &self.end) {
            let arm = Skeleton::of(&self.start).operated;
            for (from, to) in [(arm.shoulder, arm.elbow), (arm.elbow, arm.wrist), (arm.wrist, arm.fingertip)] {
                let along = (0..=6).map(|at| from + (to - from) * (f64::from(at) / 6.0));
                found.extend(along.map(|place| (self.figure.project(place), ARM_BREADTH)));
            }
        }
        let marks: Vec<Vector> = match &self.shown {
            Shown::Turn { .. } if self.inset.is_none() => self.turn().iter().flat_map(Turn::covers).collect(),
            Shown::Turn { .. } => self.turn().iter().flat_map(Turn::touches).collect(),
            Shown::Way(way) => way.clone(),
            Shown::Press { at, toward } => vec![*at, *at - *toward * 0.04, *at - *toward * 0.08],
            Shown::Twist(swing) => vec![swing.place(Angle::ZERO, swing.reach), swing.place(swing.angle, swing.reach)],
            Shown::Circles { center, .. } => vec![*center],
            Shown::Still => Vec::new(),
        };
        found.extend(marks.into_iter().map(|place| (self.figure.project(place), MARK_BREADTH)));
        found
    }

    /// Around the figure and everything drawn with it, in parts of stature, Y up.
    fn bounds(&self) -> Rect {
        let mut places: Vec<Vector> = Vec::new();
        match &self.shown {
            Shown::Turn { .. } => places.extend(self.turn().iter().flat_map(Turn::touches)),
            Shown::Way(way) => places.extend(way),
            Shown::Circles { center, radius, axis } => {
                let one = axis.any_orthonormal_vector() * *radius;
                let other = axis.cross(one);
                places.extend([*center + one, *center - one, *center + other, *center - other]);
            }
            Shown::Twist(swing) => places.push(swing.center),
            Shown::Press { at, toward } => places.push(*at + *toward * 0.03),
            Shown::Still => {}
        }
        let grown = |bounds: Rect, place: &Vector| bounds.union_pt(self.figure.project(*place));
        let bounds = places.iter().fold(self.figure.bounds(), grown);
        if self.is_cut { Rect { y0: bounds.y0.max(CUT_AT), ..bounds } } else { bounds }
    }
}

/// Whether a dashed outline of the start would be seen beside the end.
fn is_apart(start: &Pose, end: &Pose) -> bool {
    let [first, last] = [start, end].map(body::Skeleton::of);
    first.operated.grip.distance(last.operated.grip) > GHOST_FROM
}

/// Where everything goes on the page; millimeters, Y down.
struct Layout {
    size: [f64; 2],
    mm_per_stature: f64,
    /// Where the middle between the hips is.
    at: [f64; 2],
    /// Middle of the round picture.
    inset_at: [f64; 2],
}

impl Layout {
    fn of(scene: &Scene, [width, height]: [f64; 2]) -> Self {
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
        let page = [width, (high * scale + 2.0 * MARGIN + WORD + caption).min(height)];
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

    fn paint(&self, scene: &Scene, request: &Request<'_>) -> Picture {
        let mirrored = request.side == Side::Left;
        let words = request.words;
        let mut svg = Svg::new(self.size[0], self.size[1], words.title, words.description);
        let turned = |[x, y]: [f64; 2]| if mirrored { [self.size[0] - x, y] } else { [x, y] };
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

    fn paint_moving(&self, scene: &Scene, request: &Request<'_>, figures: &[Composition], tempo: &Tempo) -> Picture {
        let words = request.words;
        let mirrored = request.side == Side::Left;
        let mut svg = Svg::new(self.size[0], self.size[1], words.title, words.description);
        let name = format!("{}-{}-", request.entry.id, request.side);
        let goes_around = matches!(scene.shown, Shown::Circles { .. });
        svg.raw(&format!("<style>{}</style>", animation::style(&name, tempo, goes_around)));
        let x = if mirrored { self.size[0] - self.at[0] } else { self.at[0] };
        let placing = Placing {
            at_mm: (x, self.at[1]),
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

    fn plot<'c>(&self, camera: &'c Camera, at: [f64; 2], is_mirrored: bool) -> Plot<'c> {
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
    fn inset_origin(&self, inset: &Inset) -> [f64; 2] {
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
            svg.open_group("class=\"angle\"");
            Turn { limit: None, ..turn }.paint_angle(svg, &plot);
            svg.close_group();
        }
    }

    fn paint_words(&self, svg: &mut Svg, scene: &Scene, request: &Request<'_>, taken: &mut Vec<Space>) {
        let words = request.words;
        let page =
            Space { left: 0.0, top: 0.0, right: self.size[0] * UNITS_PER_MM, bottom: self.size[1] * UNITS_PER_MM };
        let page = page.grown(-4.0);
        let mirrored = request.side == Side::Left;
        let mut write = |svg: &mut Svg, [x, y]: [f64; 2], text: &str, size: f64, color: Color| {
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
        if let Some(turn) = scene.turn() {
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

fn spec(request: &Request<'_>, pose: Pose, ghost: Option<Pose>) -> FigureSpec {
    FigureSpec { ghost, build: build_of(request.look.build), hair: hair_of(request.look.hair), ..FigureSpec::new(pose) }
}

fn covers(figure: &Composition, roles: &[Role], place: Point) -> bool {
    roles.iter().any(|role| figure.area(*role).contains(place))
}

const fn build_of(build: body::Build) -> Build {
    match build {
        body::Build::Medium => Build::Medium,
        body::Build::Slim => Build::Slim,
        body::Build::Broad => Build::Broad,
        body::Build::Round => Build::Round,
        body::Build::Curved => Build::Curved,
    }
}

const fn hair_of(hair: body::Hair) -> Hair {
    match hair {
        body::Hair::Short => Hair::Short,
        body::Hair::Bald => Hair::Bald,
        body::Hair::Bob => Hair::Bob,
        body::Hair::Tied => Hair::Tied,
        body::Hair::Scarf => Hair::Scarf,
    }
}

/// As it was prescribed: tenths.
fn degrees(angle: Angle) -> Degrees {
    Degrees::from_steps((angle.degrees() * 10.0).round() as i32)
}

/// The width of a bold word in units.
fn width_of(text: &str, size_mm: f64) -> f64 {
    text.chars().count() as f64 * size_mm * 0.58 * UNITS_PER_MM
}

const LEAST_ROOM: f64 = 20.0;
const MOST_ROOM: f64 = 400.0;
const MOST_ANGLE: Degrees = Degrees::whole(180);
const ROUNDING: Angle = Angle::from_degrees(0.05);
// Millimeters.
const MARGIN: f64 = 1.5;
const WORD: f64 = 4.0;
const CAPTION: f64 = 4.0;
const LARGEST: f64 = 110.0;
const DEGREES_MM: f64 = 3.8;
const WORD_MM: f64 = 3.0;
const CAPTION_MM: f64 = 2.8;
// Parts of stature.
const INSET: f64 = 0.225;
const INSET_GAP: f64 = 0.03;
const ARM: f64 = 0.25;
const SHOULDER_ARC: f64 = 0.13;
const ELBOW_ARC: f64 = 0.1;
const GHOST_FROM: f64 = 0.06;
const CUT_AT: f64 = -0.13;
const ARM_BREADTH: f64 = 0.03;
const MARK_BREADTH: f64 = 0.012;
