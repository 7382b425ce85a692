//! A person in one picture: composed once, painted on any side and at any size.

use body::{Pose, Vector};
use kurbo::{BezPath, Point, Rect, Shape as _, Vec2};

use super::build::{Build, Hair};
use super::hatch::hatch;
use super::joints::{Flank, Joints, OtherHand};
use super::layers::{Seen, flatten};
use super::lines::Line;
use super::merge::join_limbs;
use super::part::{Ink, Kind, Part, Scene, Tone};
use super::path::{Grid, commands};
use super::person::Person;
use super::region::Region;
use super::things::Thing;
use super::trace::trace;
use crate::camera::{Axes, Camera};
use crate::color::Color;
use crate::svg::{Paint, Stroke, Svg, units};

/// What a figure shows.
#[derive(Debug, Clone, PartialEq)]
pub struct FigureSpec {
    /// The pose, the operated arm being the right one.
    pub pose: Pose,
    /// Where the movement starts: drawn as a dashed outline of the arm.
    pub ghost: Option<Pose>,
    /// How the person is built.
    pub build: Build,
    /// What is on the head.
    pub hair: Hair,
    /// What the other arm does.
    pub other_hand: OtherHand,
    /// What the person holds, leans on, sits on or lies on.
    pub things: Vec<Thing>,
    /// Whether the operated arm is told apart by tone and hatching.
    pub mark: Mark,
}

/// What is told apart by tone and hatching.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Mark {
    /// The operated arm.
    #[default]
    OperatedArm,
    /// Nothing.
    Nothing,
}

impl FigureSpec {
    /// A pose, everything else plain.
    pub fn new(pose: Pose) -> Self {
        Self {
            pose,
            ghost: None,
            build: Build::default(),
            hair: Hair::default(),
            other_hand: OtherHand::default(),
            things: Vec::new(),
            mark: Mark::default(),
        }
    }
}

/// The maker of compositions.
#[derive(Debug, Clone, Copy)]
pub struct Figure;

/// What a visible area belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Role {
    /// The operated arm, from the shoulder to the fingertips.
    OperatedArm,
    /// The other arm.
    OtherArm,
    /// Trunk and hips, in shirt and shorts.
    Trunk,
    /// Head and neck.
    Head,
    /// Legs and shoes.
    Legs,
    /// Things the person holds or stands, sits or lies on.
    Thing,
}

impl Role {
    /// All of them.
    pub const ALL: [Self; 6] = [Self::OperatedArm, Self::OtherArm, Self::Trunk, Self::Head, Self::Legs, Self::Thing];

    const fn of(kind: Kind) -> Self {
        match kind {
            Kind::Skull | Kind::Ear(_) | Kind::Hair | Kind::Bun | Kind::Neck => Self::Head,
            Kind::Shirt | Kind::Hips => Self::Trunk,
            Kind::Shorts(_) | Kind::Thigh(_) | Kind::Shank(_) | Kind::Shoe(_) => Self::Legs,
            Kind::Thing(_) => Self::Thing,
            Kind::Ghost => Self::OperatedArm,
            Kind::UpperArm(flank) | Kind::Forearm(flank) | Kind::Palm(flank) | Kind::Finger(flank, _) => match flank {
                Flank::Operated => Self::OperatedArm,
                Flank::Other => Self::OtherArm,
            },
        }
    }
}

/// Whether a curve belongs to the operated arm.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Whose {
    Rest,
    OperatedArm,
}

/// A person in one picture.
///
/// # Units and shape
/// Areas that touch but do not overlap, and lines that end where something lies over them; all as smooth curves, in
/// parts of stature.
#[derive(Debug, Clone)]
pub struct Composition {
    joints: Joints,
    view: Axes,
    areas: Vec<(Role, Region)>,
    /// Everything that hides the paper.
    silhouette: BezPath,
    fills: Vec<(Tone, Whose, BezPath)>,
    lines: Vec<(Ink, Whose, BezPath)>,
    hatched: Region,
    hatch_direction: Vec2,
    bounds: Rect,
}

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

impl Figure {
    /// A figure as a camera sees it.
    pub fn compose(spec: &FigureSpec, camera: &Camera) -> Composition {
        let view = camera.axes();
        let joints = Joints::of(&spec.pose, spec.other_hand);
        let arm_tone = if spec.mark == Mark::OperatedArm { Tone::Operated } else { Tone::Skin };
        let shape = spec.build.shape();
        let person = Person { joints: &joints, shape: &shape, hair: spec.hair, arm_tone, view };
        let mut scene = person.scene(&spec.things);
        if let Some(ghost) = &spec.ghost {
            let start = Joints::of(ghost, spec.other_hand);
            // Where the whole body moves, an arm that stayed behind would tell nothing.
            if (start.tilt, start.floor) == (joints.tilt, joints.floor) {
                let shells = Person { joints: &start, ..person }.arm_shells(Flank::Operated, &spec.things);
                scene.parts.push(Part::of(Kind::Ghost, Tone::None, Ink::Ghost, shells));
            }
        }
        join_limbs(&mut scene);
        Composition::of(joints, view, &scene)
    }
}

impl Composition {
    fn of(joints: Joints, view: Axes, scene: &Scene) -> Self {
        let seen = flatten(scene);
        let areas: Vec<(Role, Region)> = Role::ALL
            .into_iter()
            .map(|role| {
                let of_role = seen.iter().filter(|part| Role::of(part.kinds[0]) == role);
                (role, Region::union_all(of_role.flat_map(|part| part.areas.iter().map(|area| &area.0))))
            })
            .collect();
        let silhouette = Region::union_all(seen.iter().flat_map(|part| part.areas.iter().map(|area| &area.0)));
        let tones =
            [Tone::Top, Tone::Side, Tone::Wood, Tone::Shirt, Tone::Shorts, Tone::Shoes, Tone::Hair, Tone::Operated];
        let fills = tones.into_iter().filter_map(|tone| {
            let of_tone = seen.iter().flat_map(|part| &part.areas).filter(|area| area.1 == tone);
            let region = Region::union_all(of_tone.map(|area| &area.0));
            let whose = if tone == Tone::Operated { Whose::OperatedArm } else { Whose::Rest };
            (!region.is_empty()).then(|| (tone, whose, curves(&region)))
        });
        let fills = fills.collect();
        let hatched = Region::union_all(
            seen.iter().flat_map(|part| &part.areas).filter(|area| area.1 == Tone::Operated).map(|area| &area.0),
        );
        let lines = line_paths(&seen);
        let bounds = silhouette.bounds();
        let bounds = lines.iter().fold(bounds, |bounds, (_, _, path)| bounds.union(path.bounding_box()));
        let hatch_direction = direction_of_hatch(&joints, &view);
        let silhouette = curves(&silhouette);
        Self { joints, view, areas, silhouette, fills, lines, hatched, hatch_direction, bounds }
    }

    /// What is visible of something.
    pub fn area(&self, role: Role) -> &Region {
        // One for each role, in their order.
        &self.areas[role as usize].1
    }

    /// The joints in the room.
    pub const fn joints(&self) -> &Joints {
        &self.joints
    }

    /// Where a place of the room is in the picture.
    pub fn project(&self, place: Vector) -> Point {
        self.view.point(place)
    }

    /// Around everything that is drawn, without the width of the lines.
    pub const fn bounds(&self) -> Rect {
        self.bounds
    }

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
            let mut path = BezPath::new();
            for (from, to) in hatch(&self.hatched, self.hatch_direction, pitch) {
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

fn curves(region: &Region) -> BezPath {
    let mut path = BezPath::new();
    for contour in region.contours() {
        trace(&Line::closed(contour), &mut path);
    }
    path
}

/// All lines of one ink and one owner as one path.
fn line_paths(seen: &[Seen]) -> Vec<(Ink, Whose, BezPath)> {
    let mut paths: std::collections::BTreeMap<(Ink, Whose), BezPath> = std::collections::BTreeMap::new();
    for part in seen {
        let whose = match Role::of(part.kinds[0]) {
            Role::OperatedArm => Whose::OperatedArm,
            _ => Whose::Rest,
        };
        for (line, ink) in &part.lines {
            trace(line, paths.entry((*ink, whose)).or_default());
        }
    }
    paths.into_iter().map(|((ink, whose), path)| (ink, whose, path)).collect()
}

/// Falling to the right, or rising where the upper arm itself falls that way.
fn direction_of_hatch(joints: &Joints, view: &Axes) -> Vec2 {
    let arm = joints.skeleton.operated;
    let along = view.point(arm.elbow) - view.point(arm.shoulder);
    let rising = Vec2::new(1.0, 1.0);
    let near = along.cross(rising).abs() / (along.hypot() * rising.hypot()).max(1e-9);
    // The sine of twenty degrees.
    if near < 0.342 { Vec2::new(1.0, -1.0) } else { rising }
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
