//! What is drawn over a figure: arcs, arrows, the line that says stop.

use std::fmt::Write as _;

use body::{Angle, Vector};

use crate::camera::Camera;
use crate::color::Color;
use crate::movement::{Arrow, PRESS};
use crate::svg::{Ends, Paint, Stroke, Svg};
use crate::swing::Swing;

/// Where space lands on a picture.
///
/// # Units and shape
/// `at` is where the middle between the hips lands, in units of the picture. A mirrored plot turns every way to the right
/// into one to the left by the same whole number of units, so that a left arm is the exact mirror image of a right one.
#[derive(Debug, Clone, Copy)]
pub struct Plot<'c> {
    /// From where.
    pub camera: &'c Camera,
    /// Where the middle between the hips lands.
    pub at: [i32; 2],
    /// Units of the picture in a stature.
    pub units_per_stature: f64,
    /// Whether left and right are changed.
    pub is_mirrored: bool,
}

/// A place on the picture before it is rounded: units from the middle between the hips, Y down.
pub(crate) type Place = [f64; 2];

impl Plot<'_> {
    pub(crate) fn place(&self, place: Vector) -> Place {
        let seen = self.camera.project(place);
        [seen.x * self.units_per_stature, -seen.y * self.units_per_stature]
    }

    /// Where a place of space lands, in units from the picture's upper left corner.
    pub fn lands(&self, place: Vector) -> [i32; 2] {
        self.round(self.place(place))
    }

    #[expect(clippy::cast_possible_truncation, reason = "a cast stops at the border, far outside of any picture")]
    fn round(&self, [x, y]: Place) -> [i32; 2] {
        let across = x.round() as i32;
        let across = if self.is_mirrored { -across } else { across };
        [self.at[0].saturating_add(across), self.at[1].saturating_add(y.round() as i32)]
    }

    /// The length of an arrow's head, parts of stature: never too small to be seen.
    fn head(&self) -> f64 {
        HEAD.max(LEAST_HEAD * crate::svg::UNITS_PER_MM / self.units_per_stature)
    }

    /// Lines get thinner more slowly than a picture gets smaller.
    fn weight(&self, mm: f64) -> f64 {
        let stature_mm = self.units_per_stature / crate::svg::UNITS_PER_MM;
        (mm * (stature_mm / DRAWN_AT).sqrt()).max(THINNEST)
    }
}

/// A path being written.
#[derive(Debug, Default)]
struct Path(String);

impl Path {
    fn start(&mut self, [x, y]: [i32; 2]) {
        let _ = write!(self.0, "M{x} {y}");
    }

    fn line(&mut self, [x, y]: [i32; 2]) {
        let _ = write!(self.0, "L{x} {y}");
    }

    fn curve(&mut self, [one, other, end]: [[i32; 2]; 3]) {
        let _ = write!(self.0, "C{} {} {} {} {} {}", one[0], one[1], other[0], other[1], end[0], end[1]);
    }

    fn close(&mut self) {
        self.0.push('Z');
    }
}

/// A turn with its degrees.
#[derive(Debug, Clone, Copy)]
pub struct Turn<'s> {
    /// The turn, to where the movement ends.
    pub swing: &'s Swing,
    /// What moves along it.
    pub arrow: &'s Arrow,
    /// Beyond which it must not go.
    pub limit: Option<Angle>,
    /// Radius of the arc, in parts of stature.
    pub radius: f64,
}

impl Turn<'_> {
    /// The ray from zero, the sector, the arc and the joint.
    pub fn paint_angle(&self, svg: &mut Svg, plot: &Plot<'_>) {
        svg.open_group("class=\"arc\"");
        let swing = self.swing;
        let center = plot.lands(swing.center);
        let mut sector = Path::default();
        sector.start(center);
        sector.line(plot.lands(swing.place(Angle::ZERO, self.radius)));
        curves(&mut sector, plot, swing, [Angle::ZERO, swing.angle], self.radius);
        sector.close();
        svg.path(&sector.0, &Paint { fill_opacity: Some(SECTOR), ..Paint::filled(Color::MOVEMENT) });
        let mut ray = Path::default();
        ray.start(center);
        ray.line(plot.lands(swing.place(Angle::ZERO, self.radius * RAY)));
        let dotted = Stroke {
            color: Color::MOVEMENT,
            width_mm: plot.weight(ARC),
            dash_mm: Some((0.0, plot.weight(DOTS))),
            ends: Ends::Round,
        };
        svg.path(&ray.0, &Paint { stroke: Some(dotted), ..Paint::default() });
        let arc = self.arc(plot, [Angle::ZERO, swing.angle], self.radius);
        svg.path(&arc, &Paint::line(Color::WHITE, plot.weight(ARC) + CASING));
        svg.path(&arc, &Paint::line(Color::MOVEMENT, plot.weight(ARC)));
        let radius = crate::svg::units(plot.weight(JOINT));
        let ring = Stroke::new(Color::MOVEMENT, plot.weight(ARC));
        svg.circle(center[0], center[1], radius, &Paint { stroke: Some(ring), ..Paint::filled(Color::WHITE) });
        svg.close_group();
    }

    /// The arrow along the way of the hand, and the line it must not cross.
    pub fn paint_movement(&self, svg: &mut Svg, plot: &Plot<'_>) {
        let swing = self.swing;
        let reach = swing.reach + BEYOND;
        match self.arrow {
            Arrow::Way(places) => paint_way(svg, plot, places),
            Arrow::From(start) => self.paint_arrow(svg, plot, *start, reach),
        }
        if let Some(limit) = self.limit {
            let mut bar = Path::default();
            bar.start(plot.lands(swing.place(limit, reach - STOP[0])));
            bar.line(plot.lands(swing.place(limit, reach + STOP[1])));
            svg.path(&bar.0, &Paint::line(Color::WHITE, plot.weight(STOP_WIDTH) + CASING));
            let stroke = Stroke { ends: Ends::Cut, ..Stroke::new(Color::STOP, plot.weight(STOP_WIDTH)) };
            svg.path(&bar.0, &Paint { stroke: Some(stroke), ..Paint::default() });
        }
    }

    fn paint_arrow(&self, svg: &mut Svg, plot: &Plot<'_>, start: Angle, reach: f64) {
        let swing = self.swing;
        let gap = Angle::from_radians(GAP / reach);
        let (from, to) = (start + gap, swing.angle - gap * HEAD_GAP);
        let head = Angle::from_radians(plot.head() / reach);
        let arc = self.arc(plot, [from, to - head * NECK], reach);
        // Seen along its plane an arrow is shorter than its own head.
        let seen = (plot.place(swing.place(from, reach)), plot.place(swing.place(to, reach)));
        if to > from && distance(seen.0, seen.1) > SHORT * plot.head() * plot.units_per_stature {
            let tip = plot.place(swing.place(to, reach));
            let neck = plot.place(swing.place(to - head * NECK, reach));
            arrow(svg, plot, &arc, neck, tip);
        }
    }

    /// Places along the arc and its ray, which no word may cover.
    pub fn covers(&self) -> Vec<Vector> {
        let swing = self.swing;
        let share = |at: u8| f64::from(at) / 12.0;
        let arc = (0..=12).map(|at| swing.place(swing.angle * share(at), self.radius));
        let ray = (0..=6).map(|at| swing.place(Angle::ZERO, self.radius * RAY * share(at) * 2.0));
        arc.chain(ray).chain(self.touches()).collect()
    }

    /// Places that the marks of the movement touch.
    pub fn touches(&self) -> Vec<Vector> {
        let swing = self.swing;
        let reach = swing.reach + BEYOND;
        let mut places = match self.arrow {
            Arrow::Way(places) => places.clone(),
            Arrow::From(start) => {
                let share = |at: u8| f64::from(at) / 8.0;
                (0..=8).map(|at| swing.place(*start + (swing.angle - *start) * share(at), reach + HEAD)).collect()
            }
        };
        places.extend(self.limit.map(|limit| swing.place(limit, reach + STOP[1])));
        places
    }

    /// Where the word at the stop line may stand.
    pub fn stop_places(&self, plot: &Plot<'_>) -> Vec<Place> {
        let Some(limit) = self.limit else { return Vec::new() };
        let swing = self.swing;
        let reach = swing.reach + BEYOND + STOP[1];
        let near = |beyond: f64, turned: f64| swing.place(limit + Angle::from_degrees(turned), reach + beyond);
        let places = [(0.03, 0.0), (0.03, 8.0), (0.0, 8.0), (-0.05, 9.0), (0.05, 14.0), (0.05, -10.0), (0.08, 0.0)];
        places.map(|(beyond, turned)| plot.place(near(beyond, turned))).to_vec()
    }

    /// Where the degrees may stand: places around the middle of the arc, the best first.
    pub fn label_places(&self, plot: &Plot<'_>) -> Vec<Place> {
        let shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, -0.15, 1.15];
        let radii = [1.4, 1.15, 1.7, 0.62, 2.1, 2.5];
        let places = radii.into_iter().flat_map(|far| shares.map(|share| (far, share)));
        places.map(|(far, share)| plot.place(self.swing.place(self.swing.angle * share, self.radius * far))).collect()
    }

    fn arc(&self, plot: &Plot<'_>, ends: [Angle; 2], radius: f64) -> String {
        let mut arc = Path::default();
        arc.start(plot.lands(self.swing.place(ends[0], radius)));
        curves(&mut arc, plot, self.swing, ends, radius);
        arc.0
    }
}

/// An arc in space as Bézier curves: exact to a few thousandths of its radius, and a projection keeps them curves.
fn curves(path: &mut Path, plot: &Plot<'_>, swing: &Swing, [from, to]: [Angle; 2], radius: f64) {
    let pieces = ((to - from).degrees().abs() / PIECE).ceil().max(1.0);
    let step = (to - from) * (1.0 / pieces);
    let pull = 4.0 / 3.0 * (step * 0.25).sin() / (step * 0.25).cos() * radius;
    let mut piece = 0.0;
    while piece < pieces {
        let [begin, end] = [from + step * piece, from + step * (piece + 1.0)];
        let quarter = Angle::from_degrees(90.0);
        let along = |at: Angle| swing.direction(at + quarter) * pull;
        let controls = [
            swing.place(begin, radius) + along(begin),
            swing.place(end, radius) - along(end),
            swing.place(end, radius),
        ];
        path.curve(controls.map(|place| plot.lands(place)));
        piece += 1.0;
    }
}

/// An arrow along places in space, its tip at the last.
///
/// # Units and shape
/// Parts of stature. Nothing is drawn of a way that is too short to be seen, such as one straight toward the viewer.
pub fn paint_way(svg: &mut Svg, plot: &Plot<'_>, places: &[Vector]) {
    let seen: Vec<Place> = places.iter().map(|place| plot.place(*place)).collect();
    let Some((tip, before)) = seen.split_last() else { return };
    let length: f64 = seen.windows(2).map(|pair| distance(pair[0], pair[1])).sum();
    if length < SHORTEST * plot.units_per_stature {
        return;
    }
    // Cut the end off, so that the head replaces it.
    let head = plot.head() * plot.units_per_stature * NECK;
    let mut kept: Vec<Place> = before.to_vec();
    while kept.len() > 1 && kept.last().is_some_and(|last| distance(*last, *tip) < head) {
        kept.pop();
    }
    let Some(last) = kept.last().copied() else { return };
    let far = distance(last, *tip);
    let neck = between(last, *tip, ((far - head) / far).max(0.0));
    kept.push(neck);
    let mut shaft = Path::default();
    through(&mut shaft, plot, &kept);
    arrow(svg, plot, &shaft.0, neck, *tip);
}

/// A smooth line through places: at each it goes the way of its neighbors.
fn through(path: &mut Path, plot: &Plot<'_>, places: &[Place]) {
    let Some(first) = places.first() else { return };
    path.start(plot.round(*first));
    for at in 1..places.len() {
        let near = |at: usize| places[at.min(places.len() - 1)];
        let [before, from, to, after] = [near(at.saturating_sub(2)), near(at - 1), near(at), near(at + 1)];
        let one = [from[0] + (to[0] - before[0]) / 6.0, from[1] + (to[1] - before[1]) / 6.0];
        let other = [to[0] - (after[0] - from[0]) / 6.0, to[1] - (after[1] - from[1]) / 6.0];
        path.curve([one, other, to].map(|place| plot.round(place)));
    }
}

/// A circle in space with an arrow head on either side: once around, and it may go both ways.
pub fn paint_circle(svg: &mut Svg, plot: &Plot<'_>, center: Vector, radius: f64, axis: Vector) {
    let zero = axis.any_orthonormal_vector();
    let around = Swing { center, zero, axis, angle: Angle::ZERO, reach: radius };
    for from in [Angle::from_degrees(20.0), Angle::from_degrees(200.0)] {
        let to = from + Angle::from_degrees(125.0);
        let mut shaft = Path::default();
        shaft.start(plot.lands(around.place(from, radius)));
        curves(&mut shaft, plot, &around, [from, to], radius);
        let tip = around.place(to + Angle::from_radians(plot.head() * NECK / radius), radius);
        arrow(svg, plot, &shaft.0, plot.place(around.place(to, radius)), plot.place(tip));
    }
}

/// A turn about the length of a limb: an arrow half around it.
pub fn paint_twist(svg: &mut Svg, plot: &Plot<'_>, turn: &Swing) {
    let head = Angle::from_radians(plot.head() / turn.reach);
    let mut shaft = Path::default();
    shaft.start(plot.lands(turn.place(Angle::ZERO, turn.reach)));
    let neck = turn.angle - head * NECK;
    curves(&mut shaft, plot, turn, [Angle::ZERO, neck], turn.reach);
    let [neck, tip] = [neck, turn.angle].map(|at| plot.place(turn.place(at, turn.reach)));
    arrow(svg, plot, &shaft.0, neck, tip);
}

/// Effort without movement: a short thick arrow that ends at a bar.
pub fn paint_press(svg: &mut Svg, plot: &Plot<'_>, at: Vector, toward: Vector) {
    let [from, tip] = [at - toward * PRESS, at].map(|place| plot.place(place));
    let length = distance(from, tip);
    if length < SHORTEST * plot.units_per_stature * HALF {
        return;
    }
    let neck = between(tip, from, (plot.head() * NECK * plot.units_per_stature / length).min(0.9));
    let mut shaft = Path::default();
    shaft.start(plot.round(from));
    shaft.line(plot.round(neck));
    arrow(svg, plot, &shaft.0, neck, tip);
    let way = [(tip[0] - from[0]) / length, (tip[1] - from[1]) / length];
    let half = plot.head() * plot.units_per_stature;
    let mut bar = Path::default();
    bar.start(plot.round([tip[0] - way[1] * half, tip[1] + way[0] * half]));
    bar.line(plot.round([tip[0] + way[1] * half, tip[1] - way[0] * half]));
    svg.path(&bar.0, &Paint::line(Color::MOVEMENT, plot.weight(ARROW)));
}

/// The shaft with a white rim, and the head.
fn arrow(svg: &mut Svg, plot: &Plot<'_>, shaft: &str, neck: Place, tip: Place) {
    svg.path(shaft, &Paint::line(Color::WHITE, plot.weight(ARROW) + CASING));
    svg.path(shaft, &Paint::line(Color::MOVEMENT, plot.weight(ARROW)));
    let length = distance(neck, tip);
    if length <= 0.0 {
        return;
    }
    let way = [(tip[0] - neck[0]) / length, (tip[1] - neck[1]) / length];
    let [long, wide] = [plot.head(), plot.head() * HEAD_WIDTH * HALF].map(|size| size * plot.units_per_stature);
    let back = |along: f64, across: f64| {
        plot.round([tip[0] - way[0] * along - way[1] * across, tip[1] - way[1] * along + way[0] * across])
    };
    let mut head = Path::default();
    head.start(plot.round(tip));
    head.line(back(long, wide));
    head.line(back(long * NECK, 0.0));
    head.line(back(long, -wide));
    head.close();
    let rim = Stroke::new(Color::WHITE, CASING * HALF);
    svg.path(&head.0, &Paint { stroke: Some(rim), ..Paint::filled(Color::MOVEMENT) });
}

fn distance(one: Place, other: Place) -> f64 {
    (one[0] - other[0]).hypot(one[1] - other[1])
}

fn between(one: Place, other: Place, share: f64) -> Place {
    [one[0] + (other[0] - one[0]) * share, one[1] + (other[1] - one[1]) * share]
}

// Millimeters at a drawn stature of 75 mm.
const DRAWN_AT: f64 = 75.0;
const ARC: f64 = 0.32;
const ARROW: f64 = 0.46;
const STOP_WIDTH: f64 = 1.1;
const CASING: f64 = 0.6;
const DOTS: f64 = 0.8;
const JOINT: f64 = 0.7;
const THINNEST: f64 = 0.15;
// Parts of stature.
const BEYOND: f64 = 0.03;
const GAP: f64 = 0.014;
const HEAD: f64 = 0.03;
const STOP: [f64; 2] = [0.035, 0.045];
const SHORTEST: f64 = 0.05;
/// The least length of an arrow's head, in millimeters.
const LEAST_HEAD: f64 = 2.1;
// Parts of something else.
const HEAD_WIDTH: f64 = 0.9;
const RAY: f64 = 1.3;
const NECK: f64 = 0.72;
const HEAD_GAP: f64 = 0.73;
/// A way that is shorter than this many heads of an arrow has none.
const SHORT: f64 = 1.3;
const SECTOR: f64 = 0.12;
const HALF: f64 = 0.5;
/// Degrees of arc in one Bézier curve.
const PIECE: f64 = 45.0;
