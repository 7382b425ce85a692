//! From where a movement is best seen.

use body::{Angle, ArmJoints, LegJoints, Pose, Skeleton, Vector};

use crate::camera::Camera;
use crate::figure::{Joints, OtherHand};
use crate::movement::Shown;
use crate::swing::Swing;

/// From where a movement is drawn, and where its degrees may stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct View {
    /// Of the picture.
    pub camera: Camera,
    /// Where the degrees stand.
    pub number: NumberPlace,
}

/// Where the degrees of a movement stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NumberPlace {
    /// The movement has none.
    Nowhere,
    /// At the arc in the picture itself.
    InThePicture,
    /// In a small picture beside, seen along the axis of the movement.
    InAnInset(Camera),
}

impl View {
    /// The view of a movement.
    ///
    /// # Units and shape
    /// `start` and `end` at the widest a movement goes, so that a picture does not change its view as the angle grows
    /// from week to week; `shown` is what moves between them.
    ///
    /// # Method
    /// Every ten degrees around the body and at some heights above level, then more closely around the best: what is
    /// best shows the arm unhidden and unshortened, the face, and the movement in its plane. Where no view is true to the
    /// angle, the degrees move to an inset whose camera stands on the axis.
    pub fn of(start: &Pose, end: &Pose, shown: &Shown) -> Self {
        let swing = match shown {
            Shown::Turn { swing, .. } => Some(swing),
            _ => None,
        };
        let scene = Scene::of(start, end, shown);
        let mut best = (f64::INFINITY, Camera::degrees(0.0, 0.0));
        let mut try_one = |azimuth: f64, elevation: f64| {
            let camera = Camera::degrees(azimuth, elevation);
            let cost = scene.cost(&camera);
            if cost < best.0 {
                best = (cost, camera);
            }
        };
        let heights: &[f64] = if scene.is_upright { &UPRIGHT } else { &LYING };
        for step in 0..AROUND {
            for &elevation in heights {
                try_one(f64::from(step) * COARSE - HALF_TURN, elevation);
            }
        }
        let found = best.1;
        let mut fine = (f64::INFINITY, found);
        for across in -FINE..=FINE {
            for up in -FINE..=FINE {
                let azimuth = found.azimuth.degrees() + f64::from(across) * STEP;
                let elevation = (found.elevation.degrees() + f64::from(up) * STEP).clamp(LEAST_UP, MOST_UP);
                let camera = Camera::degrees(azimuth, elevation);
                let cost = scene.cost(&camera);
                if cost < fine.0 - TINY {
                    fine = (cost, camera);
                }
            }
        }
        let camera = fine.1;
        let number = match swing {
            None => NumberPlace::Nowhere,
            Some(swing) if swing.may_carry_a_number(&camera) => NumberPlace::InThePicture,
            Some(swing) => NumberPlace::InAnInset(inset(swing, &camera)),
        };
        Self { camera, number }
    }
}

/// On the axis of a turn: never from below, else on the side from which the main picture is seen.
fn inset(swing: &Swing, main: &Camera) -> Camera {
    let from_below =
        if swing.axis.y.abs() > OBLIQUE { swing.axis.y < 0.0 } else { swing.axis.dot(main.toward_viewer()) < 0.0 };
    let toward = if from_below { -swing.axis } else { swing.axis };
    // Looking straight down, what is near in the main picture is down in the inset.
    let is_vertical = toward.y.abs() > ALMOST_VERTICAL;
    let azimuth = if is_vertical { main.azimuth } else { Angle::from_radians((-toward.z).atan2(toward.x)) };
    Camera { azimuth, elevation: Angle::from_radians(toward.y.clamp(-1.0, 1.0).asin()) }
}

/// What can hide an arm, and what should be seen of it.
struct Scene {
    /// Places along the arm, and how much each counts.
    points: Vec<(Vector, f64)>,
    bones: Vec<(Vector, Vector)>,
    hiders: Vec<Capsule>,
    face: Vector,
    swing: Option<Swing>,
    /// A direction that should be seen from the side.
    way: Option<Vector>,
    way_counts: f64,
    /// What circles go around, which should not be seen from the side.
    circles: Option<Vector>,
    is_upright: bool,
    /// Whether the hand ends behind the back.
    is_behind: bool,
    right: Vector,
    head: Vector,
}

struct Capsule {
    from: Vector,
    to: Vector,
    radius: f64,
}

impl Scene {
    fn of(start: &Pose, end: &Pose, shown: &Shown) -> Self {
        let swing = match shown {
            Shown::Turn { swing, .. } => Some(*swing),
            _ => None,
        };
        let way = match shown {
            Shown::Press { toward, .. } => Some(*toward),
            Shown::Way(places) => {
                places.first().zip(places.last()).and_then(|(from, to)| (*to - *from).try_normalize())
            }
            Shown::Twist(turn) => Some(turn.axis),
            Shown::Still | Shown::Turn { .. } | Shown::Circles { .. } => None,
        };
        let [first, last] = [start, end].map(|pose| Joints::of(pose, OtherHand::AsPosed).skeleton);
        // Where the arm itself goes nowhere the arrow is all there is to see.
        let moves = first.operated.grip.distance(last.operated.grip) > MOVES;
        let mut points = Vec::new();
        let mut bones = Vec::new();
        for (joints, counts) in [(&first.operated, GHOST_COUNTS), (&last.operated, 1.0)] {
            for (from, to) in bones_of(joints) {
                points.extend([0.4, 0.7, 1.0].map(|share| (from + (to - from) * share, counts)));
            }
            bones.extend(bones_of(joints));
        }
        let hand = last.trunk.inverse() * (last.operated.fingertip - last.neck);
        Self {
            is_behind: hand.x < BEHIND && hand.z.abs() < NEAR_THE_SPINE,
            points,
            bones,
            hiders: hiders(&last),
            face: last.trunk.x(),
            swing,
            way,
            circles: match shown {
                Shown::Circles { axis, .. } => Some(*axis),
                _ => None,
            },
            way_counts: if moves { WAY } else { ONLY_WAY },
            is_upright: end.posture.is_upright() && end.lean.degrees() < BENT,
            right: last.trunk.z(),
            head: last.trunk.y(),
        }
    }

    /// What is wrong with a view; the least is best.
    fn cost(&self, camera: &Camera) -> f64 {
        let all: f64 = self.points.iter().map(|(_, counts)| counts).sum();
        let hidden = self.points.iter().filter(|(point, _)| self.hides(*point, camera));
        let hidden = hidden.map(|(_, counts)| counts).sum::<f64>() / all;
        let shortened = self
            .bones
            .iter()
            .map(|(from, to)| {
                let bone = (*to - *from).normalize();
                1.0 - (1.0 - bone.dot(camera.toward_viewer()).powi(2)).sqrt()
            })
            .sum::<f64>()
            / self.bones.len() as f64;
        // A hand behind the back is seen from behind, and then nobody looks for the face.
        let front = self.face.dot(camera.toward_viewer());
        let face = if self.is_behind { front.max(0.0) } else { (FACE_SEEN - front).max(0.0) };
        // A little preference for the operated side, which decides between equals.
        let side = -self.right.dot(camera.toward_viewer());
        let turn = self.swing.map_or(0.0, |swing| {
            if swing.may_carry_a_number(camera) { swing.tilt(camera).degrees() / TILT_COUNTS } else { NEEDS_AN_INSET }
        });
        // Nobody knows a person again from above the crown of the head.
        let crown = (self.head.dot(camera.toward_viewer()) - CROWN).max(0.0);
        // Seen along its length, a lying body is a heap of knees.
        let along = (self.head.dot(camera.toward_viewer()).abs() - ALONG).max(0.0);
        let foreshortened = self.way.map_or(0.0, |way| way.dot(camera.toward_viewer()).powi(2));
        let edge_on = self.circles.map_or(0.0, |axis| (OPEN - axis.dot(camera.toward_viewer()).abs()).max(0.0));
        let wanted = if self.is_upright { UPRIGHT_FROM } else { LYING_FROM };
        let up = (camera.elevation.degrees() - wanted).abs() / UP_COUNTS;
        HIDDEN * hidden
            + SHORTENED * shortened
            + FACE * face
            + CROWN_SEEN * crown
            + SEEN_ALONG * along
            + SIDE * side
            + self.way_counts * foreshortened
            + EDGE_ON * edge_on
            + turn
            + up
    }

    fn hides(&self, point: Vector, camera: &Camera) -> bool {
        self.hiders.iter().any(|hider| hider.hides(point, camera.toward_viewer()))
    }
}

fn bones_of(arm: &ArmJoints) -> [(Vector, Vector); 3] {
    [(arm.shoulder, arm.elbow), (arm.elbow, arm.wrist), (arm.wrist, arm.fingertip)]
}

/// Trunk, head, thighs and the other arm, roughly.
fn hiders(body: &Skeleton) -> Vec<Capsule> {
    let capsule = |from, to, radius| Capsule { from, to, radius };
    let thigh = |leg: &LegJoints| capsule(leg.hip, leg.knee, THIGH);
    let shank = |leg: &LegJoints| capsule(leg.knee, leg.ankle, SHANK);
    vec![
        capsule(Vector::ZERO, body.neck, TRUNK),
        capsule(body.head, body.head, HEAD),
        thigh(&body.operated_leg),
        thigh(&body.other_leg),
        shank(&body.operated_leg),
        shank(&body.other_leg),
        capsule(body.other.shoulder, body.other.elbow, ARM),
        capsule(body.other.elbow, body.other.wrist, ARM),
    ]
}

impl Capsule {
    /// Whether it lies between a point and the viewer.
    fn hides(&self, point: Vector, toward: Vector) -> bool {
        // In the picture: the nearest place of the capsule's axis to the point, then which of the two is nearer.
        let flat = |way: Vector| way - toward * way.dot(toward);
        let axis = self.to - self.from;
        let [across, to_point] = [flat(axis), flat(point - self.from)];
        let length = across.length_squared();
        let share = if length > TINY { (to_point.dot(across) / length).clamp(0.0, 1.0) } else { 0.5 };
        let nearest = self.from + axis * share;
        flat(point - nearest).length() < self.radius && (nearest - point).dot(toward) > 0.0
    }
}

const HALF_TURN: f64 = 180.0;
const AROUND: u16 = 36;
const COARSE: f64 = 10.0;
const FINE: i32 = 3;
const STEP: f64 = 2.0;
/// Heights above level that are tried, in degrees.
const UPRIGHT: [f64; 4] = [4.0, 8.0, 14.0, 22.0];
const LYING: [f64; 5] = [6.0, 14.0, 22.0, 30.0, 38.0];
const LEAST_UP: f64 = 4.0;
const MOST_UP: f64 = 44.0;
const UPRIGHT_FROM: f64 = 6.0;
const LYING_FROM: f64 = 18.0;
/// A trunk that leans further is seen as one that lies.
const BENT: f64 = 60.0;
const ALMOST_VERTICAL: f64 = 0.995;
const OBLIQUE: f64 = 0.3;
const FACE_SEEN: f64 = 0.4;
// What counts how much; chosen by looking.
const HIDDEN: f64 = 4.0;
const GHOST_COUNTS: f64 = 0.25;
const SHORTENED: f64 = 1.6;
const FACE: f64 = 0.9;
const SIDE: f64 = 0.12;
const WAY: f64 = 1.2;
const ONLY_WAY: f64 = 4.0;
const OPEN: f64 = 0.34;
const EDGE_ON: f64 = 8.0;
const CROWN: f64 = 0.3;
const CROWN_SEEN: f64 = 6.0;
const ALONG: f64 = 0.76;
const SEEN_ALONG: f64 = 12.0;
const TILT_COUNTS: f64 = 40.0;
const NEEDS_AN_INSET: f64 = 1.6;
const UP_COUNTS: f64 = 60.0;
// Radii in parts of stature.
const TRUNK: f64 = 0.075;
const HEAD: f64 = 0.06;
const THIGH: f64 = 0.05;
const BEHIND: f64 = -0.04;
const NEAR_THE_SPINE: f64 = 0.2;
const SHANK: f64 = 0.035;
const ARM: f64 = 0.025;
const MOVES: f64 = 0.06;
const TINY: f64 = 1e-9;

body::words! {
    /// From where a small picture beside a drawing is seen, for its caption.
    SeenFrom {
        /// Straight from above.
        Above = "above",
        /// From where the feet are.
        Feet = "feet",
        /// From where the head is.
        Head = "head",
        /// From in front of the person.
        Front = "front",
        /// From behind the person.
        Behind = "behind",
        /// From one side.
        Side = "side",
    }
}

impl SeenFrom {
    /// The word that fits a camera best, for a body in a pose.
    pub fn of(camera: &Camera, pose: &Pose) -> Self {
        let trunk = pose.trunk();
        let toward = camera.toward_viewer();
        let choices = [
            // Above comes first: for somebody lying it is also in front or behind.
            (Self::Above, toward.y),
            (Self::Feet, -toward.dot(trunk.y())),
            (Self::Head, toward.dot(trunk.y())),
            (Self::Front, toward.dot(trunk.x())),
            (Self::Behind, -toward.dot(trunk.x())),
            (Self::Side, toward.dot(trunk.z()).abs()),
        ];
        let best =
            choices.iter().fold(choices[0], |best, choice| if choice.1 > best.1 + TINY { *choice } else { best });
        best.0
    }
}
