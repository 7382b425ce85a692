//! What is to be seen in a drawing, before it has a place on a page.

use body::{Angle, Joint, Pose, Vector};
use exercise::Demand;
use kurbo::{Point, Rect};
use quantity::Degrees;

use super::{NoPicture, Request};
use crate::camera::Camera;
use crate::figure::things::Thing;
use crate::figure::{Composition, Figure, FigureSpec, Joints, Legs, OtherHand};
use crate::marks::Turn;
use crate::movement::Shown;
use crate::setting::Setting;
use crate::swing::Swing;
use crate::view::{NumberPlace, View};

/// What is to be seen, before it has a place on a page.
pub(super) struct Scene {
    pub(super) figure: Composition,
    pub(super) shown: Shown,
    pub(super) view: View,
    pub(super) end: Pose,
    pub(super) limit: Option<Angle>,
    pub(super) inset: Option<Inset>,
    /// Whether the picture ends at the thighs, because what moves is small.
    pub(super) is_cut: bool,
    pub(super) start: Pose,
}

/// A small round picture along the axis of a turn.
pub(super) struct Inset {
    pub(super) figure: Composition,
    pub(super) camera: Camera,
    pub(super) middle: Vector,
}

impl Scene {
    pub(super) fn of(request: &Request<'_>) -> Result<Self, NoPicture> {
        let entry = request.entry;
        let (start, end) = entry.poses(request.reach).ok_or(NoPicture::NoPoses)?;
        let (usual_start, usual_end) = entry.poses(usual).ok_or(NoPicture::NoPoses)?;
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
        let usually = Shown::of(entry, &usual_start, &usual_end);
        let view = View::of(&usual_start, &usual_end, &usually);
        let setting = Setting::of(entry, &start, &end, &shown);
        let moves = matches!(shown, Shown::Turn { .. } | Shown::Way(_)) && is_apart(&start, &end);
        let figure = Figure::compose(&spec(request, setting.clone(), end, moves.then_some(start)), &view.camera);
        let inset = match (view.number, swing) {
            (NumberPlace::InAnInset(camera), Some(swing)) => Some(Inset {
                figure: Figure::compose(
                    &FigureSpec { legs: Legs::LeftOut, ..spec(request, beside(setting), end, None) },
                    &camera,
                ),
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

    pub(super) fn turn(&self) -> Option<Turn<'_>> {
        match &self.shown {
            Shown::Turn { swing, arrow } => {
                let radius = if swing.reach > ARM { SHOULDER_ARC } else { ELBOW_ARC };
                Some(Turn { swing, arrow, limit: self.limit, radius: radius.min(swing.reach * 0.8) })
            }
            _ => None,
        }
    }

    pub(super) fn swing(&self) -> Option<&Swing> {
        match &self.shown {
            Shown::Turn { swing, .. } => Some(swing),
            _ => None,
        }
    }

    /// What no word may cover beside the figure: the dashed outline and the marks.
    pub(super) fn obstacles(&self) -> Vec<(Point, f64)> {
        let mut found: Vec<(Point, f64)> = Vec::new();
        if is_apart(&self.start, &self.end) {
            let arm = Joints::of(&self.start, OtherHand::AsPosed).skeleton.operated;
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
    pub(super) fn bounds(&self) -> Rect {
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

/// The angle an entry's view is chosen at: most of the way.
fn usual(demand: &Demand) -> Degrees {
    let most = demand.amount.greatest_angle().unwrap_or_default();
    if !demand.amount.follows_the_limit() {
        return most;
    }
    let least = demand.amount.start_angle().unwrap_or_default();
    Degrees::from_steps(least.steps() + (most.steps() - least.steps()) * USUAL_SHARE.0 / USUAL_SHARE.1)
}

/// Whether a dashed outline of the start would be seen beside the end.
fn is_apart(start: &Pose, end: &Pose) -> bool {
    let [first, last] = [start, end].map(|pose| Joints::of(pose, OtherHand::AsPosed).skeleton);
    first.operated.grip.distance(last.operated.grip) > GHOST_FROM
}

/// For a small picture: what is in the hands, and nothing that stands around.
fn beside(setting: Setting) -> Setting {
    let is_held =
        |thing: &Thing| matches!(thing, Thing::Stick { .. } | Thing::Weight(_) | Thing::Band(_) | Thing::Roll { .. });
    Setting { things: setting.things.into_iter().filter(is_held).collect(), ..setting }
}

pub(super) fn spec(request: &Request<'_>, setting: Setting, pose: Pose, ghost: Option<Pose>) -> FigureSpec {
    FigureSpec {
        ghost,
        other_hand: setting.other_hand,
        things: setting.things,
        build: request.look.build,
        hair: request.look.hair,
        ..FigureSpec::new(pose)
    }
}

const USUAL_SHARE: (i32, i32) = (2, 3);
const MOST_ANGLE: Degrees = Degrees::whole(180);
const ROUNDING: Angle = Angle::from_degrees(0.05);
// Parts of stature.
const ARM: f64 = 0.25;
const SHOULDER_ARC: f64 = 0.13;
const ELBOW_ARC: f64 = 0.1;
const GHOST_FROM: f64 = 0.06;
const CUT_AT: f64 = -0.13;
const ARM_BREADTH: f64 = 0.03;
const MARK_BREADTH: f64 = 0.012;
