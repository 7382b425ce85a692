//! A person in one picture, composed once.

use std::sync::OnceLock;

use body::Vector;
use kurbo::{BezPath, Point, Rect, Shape as _, Vec2};

use super::build::Shape;
use super::joints::{Flank, Joints, OtherHand};
use super::layers::{Seen, flatten};
use super::lines::Line;
use super::merge::join_limbs;
use super::part::{Ink, Kind, Part, Scene, Tone};
use super::person::Person;
use super::region::Region;
use super::spec::{FigureSpec, Mark};
use super::trace::trace;
use crate::camera::{Axes, Camera};

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
pub(crate) enum Whose {
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
    pub(super) joints: Joints,
    pub(super) view: Axes,
    /// What is visible, piece by piece.
    pieces: Vec<(Role, Region)>,
    /// The same put together, once it is asked for.
    areas: [OnceLock<Region>; Role::ALL.len()],
    /// Everything that hides the paper.
    pub(super) silhouette: BezPath,
    pub(super) fills: Vec<(Tone, Whose, BezPath)>,
    pub(super) lines: Vec<(Ink, Whose, BezPath)>,
    pub(super) hatched: Region,
    pub(super) hatch_direction: Vec2,
    bounds: Rect,
    covered: Region,
    /// What the figure would show if nothing lay over it, for the checks.
    pub(super) wholes: Vec<(Role, Region)>,
    pub(super) other_hand: OtherHand,
    /// Ends of the sticks in the room.
    pub(super) sticks: Vec<[Vector; 2]>,
}

impl Figure {
    /// A figure as a camera sees it.
    pub fn compose(spec: &FigureSpec, camera: &Camera) -> Composition {
        let view = camera.axes();
        let joints = Joints::of(&spec.pose, spec.other_hand);
        let arm_tone = if spec.mark == Mark::OperatedArm { Tone::Operated } else { Tone::Skin };
        let shape = Shape::of(spec.build);
        let person = Person { joints: &joints, shape: &shape, hair: spec.hair, arm_tone, view, legs: spec.legs };
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
        let composition = Composition::of(joints, view, &scene);
        Composition { other_hand: spec.other_hand, sticks: person.sticks(&spec.things), ..composition }
    }
}

impl Composition {
    fn of(joints: Joints, view: Axes, scene: &Scene) -> Self {
        let (seen, covered) = flatten(scene);
        let tones =
            [Tone::Top, Tone::Side, Tone::Wood, Tone::Shirt, Tone::Shorts, Tone::Shoes, Tone::Hair, Tone::Operated];
        let fills = tones.into_iter().filter_map(|tone| {
            let of_tone: Vec<&Region> =
                seen.iter().flat_map(|part| &part.areas).filter(|area| area.1 == tone).map(|area| &area.0).collect();
            let region = Region::union_all(of_tone);
            (!region.is_empty()).then_some((tone, region))
        });
        let tones: Vec<(Tone, Region)> = fills.collect();
        let whose = |tone: Tone| if tone == Tone::Operated { Whose::OperatedArm } else { Whose::Rest };
        let fills = tones.iter().map(|(tone, region)| (*tone, whose(*tone), curves(region))).collect();
        let hatched = tones.into_iter().find(|(tone, _)| *tone == Tone::Operated).map(|(_, region)| region);
        let hatched = hatched.unwrap_or(Region::EMPTY);
        let lines = line_paths(&seen);
        let bounds = covered.bounds();
        let bounds = lines.iter().fold(bounds, |bounds, (_, _, path)| bounds.union(path.bounding_box()));
        let hatch_direction = direction_of_hatch(&joints, &view);
        let silhouette = curves(&covered);
        let pieces = seen.into_iter().flat_map(|part| {
            let role = Role::of(part.kinds[0]);
            part.areas.into_iter().map(move |(region, _)| (role, region))
        });
        let (pieces, areas) = (pieces.collect(), Default::default());
        let whole = |part: &Part| (Role::of(part.kinds[0]), part.region.clone());
        let bears = |part: &&Part| !part.is(Kind::Ghost) && matches!(whole(part).0, Role::OperatedArm | Role::Head);
        let wholes = scene.parts.iter().filter(bears).map(whole).collect();
        let (other_hand, sticks) = (OtherHand::AsPosed, Vec::new());
        Self {
            joints,
            view,
            pieces,
            areas,
            silhouette,
            fills,
            lines,
            hatched,
            hatch_direction,
            bounds,
            covered,
            wholes,
            other_hand,
            sticks,
        }
    }

    /// What is visible of something.
    pub fn area(&self, role: Role) -> &Region {
        self.areas[role as usize]
            .get_or_init(|| Region::union_all(self.pieces.iter().filter(|piece| piece.0 == role).map(|piece| &piece.1)))
    }

    /// Everything that hides the paper.
    pub const fn covered(&self) -> &Region {
        &self.covered
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
