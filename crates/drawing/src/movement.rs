//! What moves in a drawing, and how it is shown.

use body::{Angle, Joint, Key, Movement, Pose, Posture, Skeleton, Vector};
use exercise::{Entry, Path};

use crate::figure::{Joints, OtherHand};
use crate::swing::Swing;

/// How the movement of an exercise is shown.
#[derive(Debug, Clone, PartialEq)]
pub enum Shown {
    /// Nothing moves and nothing presses.
    Still,
    /// A turn whose degrees are told.
    Turn {
        /// The turn, to the end of the movement.
        swing: Swing,
        /// What moves along it.
        arrow: Arrow,
    },
    /// The way of the hand or of the shoulder, place by place.
    Way(Vec<Vector>),
    /// Circles under the hand or beside the shoulder.
    Circles {
        /// Their middle.
        center: Vector,
        /// Their radius, parts of stature.
        radius: f64,
        /// What they go around.
        axis: Vector,
    },
    /// A turn of the forearm about its own length.
    Twist(Swing),
    /// Effort without movement: where it presses, and which way.
    Press {
        /// Where.
        at: Vector,
        /// Which way, length one.
        toward: Vector,
    },
}

/// How the movement along a turn is shown.
#[derive(Debug, Clone, PartialEq)]
pub enum Arrow {
    /// Around the same center, from an angle counted as the turn is.
    From(Angle),
    /// Along the way of the hand, because the trunk leans along and carries the center with it.
    Way(Vec<Vector>),
}

impl Shown {
    /// How the movement between the poses of an entry is shown.
    ///
    /// # Units and shape
    /// `start` and `end` are the poses of the entry at the prescribed angles.
    pub fn of(entry: &Entry, start: &Pose, end: &Pose) -> Self {
        let [first, last] = [start, end].map(placed);
        let key = entry.target().map(|target| target.key);
        if entry.positions.is_some_and(|positions| positions.path == Path::Circles) {
            return circles(end.posture, &last, key);
        }
        if start == end {
            return key.map_or(Self::Still, |key| held(key, end, &last));
        }
        let forearm_turned = (end.operated.forearm - start.operated.forearm).abs() > NOTICED;
        if let Some(Key { joint: Joint::Forearm, .. }) = key
            && forearm_turned
        {
            return Self::Twist(about_the_forearm(start, end, &first));
        }
        // Only degrees that are prescribed are told.
        let is_told = entry.target().is_some_and(|target| target.amount.greatest_angle().is_some());
        let turn = key.filter(|_| is_told).and_then(|key| {
            let swing = Swing::of(end, key).filter(|swing| swing.angle > NOTICED)?;
            if (end.lean - start.lean).abs() > NOTICED {
                let Self::Way(places) = way(start, end) else { return None };
                return Some(Self::Turn { swing, arrow: Arrow::Way(places) });
            }
            // A movement that begins outside the plane of the turn has no start on the arc.
            let begins = swing.angle_of(start, key)?;
            (swing.angle - begins > NOTICED).then_some(Self::Turn { swing, arrow: Arrow::From(begins) })
        });
        turn.unwrap_or_else(|| way(start, end))
    }
}

/// The joints as they are drawn.
fn placed(pose: &Pose) -> Skeleton {
    Joints::of(pose, OtherHand::AsPosed).skeleton
}

/// Under a hanging hand, level; beside the shoulder, for a rolling shoulder.
fn circles(posture: Posture, body: &Skeleton, key: Option<Key>) -> Shown {
    let arm = &body.operated;
    if posture == Posture::BentForward || key.is_some_and(|key| key.joint == Joint::Shoulder) {
        let hand = arm.fingertip;
        return Shown::Circles {
            center: Vector::new(hand.x, hand.y - UNDER, hand.z),
            radius: SMALL_CIRCLE,
            axis: Vector::Y,
        };
    }
    // Beside the shoulder, seen from its side.
    let out = body.trunk.z();
    Shown::Circles { center: arm.shoulder + out * BESIDE_SHOULDER, radius: ROLL, axis: out }
}

/// Where an effort that moves nothing acts, and which way.
fn held(key: Key, pose: &Pose, body: &Skeleton) -> Shown {
    let trunk = pose.trunk();
    let arm = &body.operated;
    let [ahead, right] = [trunk.x(), trunk.z()];
    let (at, toward) = match (key.joint, key.movement) {
        _ if !matches!(key.mode, body::Mode::Isometric) => return Shown::Still,
        (Joint::Shoulder, Movement::ExternalRotation) => (arm.wrist, right),
        (Joint::Shoulder, Movement::InternalRotation) => (arm.wrist, -right),
        (Joint::Shoulder, Movement::Abduction) => (arm.elbow, right),
        (Joint::Shoulder, Movement::ForwardElevation) => (arm.grip, ahead),
        (Joint::Shoulder, Movement::Extension) => (arm.elbow, -ahead),
        _ => return Shown::Still,
    };
    // From the skin outward.
    Shown::Press { at: at + toward * (OUTSIDE + PRESS), toward }
}

/// The turn of the forearm, at the wrist.
fn about_the_forearm(start: &Pose, end: &Pose, body: &Skeleton) -> Swing {
    let arm = &body.operated;
    let along = (arm.wrist - arm.elbow).normalize();
    let turned = end.operated.forearm - start.operated.forearm;
    // Palm down turns the thumb inward: about the forearm's length from wrist to elbow for a right arm.
    let axis = if turned > Angle::ZERO { -along } else { along };
    let thumb = start.trunk() * (start.operated.hand_frame().x());
    let zero = (thumb - axis * thumb.dot(axis)).normalize();
    Swing { center: arm.wrist + along * HALF_HAND, zero, axis, angle: turned.abs(), reach: AROUND_WRIST }
}

/// The way of what moves most: the hand, or the shoulder of an arm that is carried along.
fn way(start: &Pose, end: &Pose) -> Shown {
    let steps = || (0..=STEPS).map(|step| f64::from(step) / f64::from(STEPS));
    let bodies: Vec<Skeleton> = steps().map(|share| placed(&Pose::between(start, end, share))).collect();
    let along = |of: &dyn Fn(&Skeleton) -> Vector| bodies.iter().map(of).collect::<Vec<_>>();
    let length = |places: &[Vector]| places.windows(2).map(|pair| pair[0].distance(pair[1])).sum::<f64>();
    let shoulder = along(&|body| body.operated.shoulder);
    let hand = along(&|body| body.operated.grip);
    if length(&along(&|body| body.operated.wrist)) < MOVES && length(&hand) >= MOVES {
        return Shown::Way(along(&|body| body.operated.fingertip));
    }
    // Where the blade alone moves, the hand only comes along.
    let alike = (length(&hand) - length(&shoulder)).abs() < ALONG_WITH && length(&shoulder) > MOVES;
    if alike || length(&hand) < MOVES {
        let [Some(from), Some(to)] = [shoulder.first(), shoulder.last()] else { return Shown::Still };
        let moved = *to - *from;
        if moved.length() < MOVES {
            let tip = along(&|body| body.operated.fingertip);
            return if length(&tip) < MOVES { Shown::Still } else { Shown::Way(tip) };
        }
        // A shoulder moves a few centimeters: the arrow shows the way and not how far.
        let way = moved.normalize();
        let up = end.trunk().y();
        let out = end.trunk().z();
        let foot = *from + (up + out) * BESIDE_SHOULDER;
        return Shown::Way(vec![foot, foot + way * (SHOULDER_ARROW * 0.5), foot + way * SHOULDER_ARROW]);
    }
    Shown::Way(hand)
}

/// Less than this is no movement.
const NOTICED: Angle = Angle::from_degrees(3.0);
const STEPS: u8 = 8;
// Parts of stature.
const SMALL_CIRCLE: f64 = 0.058;
const UNDER: f64 = 0.02;
const ROLL: f64 = 0.06;
const OUTSIDE: f64 = 0.025;
/// How long the arrow of an effort is.
pub(crate) const PRESS: f64 = 0.09;
const HALF_HAND: f64 = 0.05;
const AROUND_WRIST: f64 = 0.07;
const MOVES: f64 = 0.012;
const ALONG_WITH: f64 = 0.008;
const BESIDE_SHOULDER: f64 = 0.055;
const SHOULDER_ARROW: f64 = 0.1;

#[cfg(test)]
mod tests {
    use super::*;
    use diagnostic::{Sink, Sources};

    fn shown(id: &str) -> Shown {
        let mut sources = Sources::new();
        let catalogue = exercise::shipped(&mut Sink::new(), |name, text| sources.add(name, text));
        let entry = catalogue.get(id).expect("in the catalogue");
        let (start, end) = entry.widest_poses().expect("poses");
        Shown::of(entry, &start, &end)
    }

    #[test]
    fn each_kind_of_movement_has_its_mark() {
        let begins = |id: &str| match shown(id) {
            Shown::Turn { arrow: Arrow::From(begins), .. } => Some(begins.degrees().round()),
            _ => None,
        };
        assert_eq!(begins("forward-elevation"), Some(0.0));
        // From the forearm on the belly, inward of where the angle counts from.
        assert_eq!(begins("side-lying-external-rotation"), Some(-70.0));
        assert!(matches!(shown("stick-external-rotation"), Shown::Turn { .. }));
        // No angle is prescribed at the elbow, so none is told.
        assert!(matches!(shown("elbow-flexion"), Shown::Way(_)));
        assert!(matches!(shown("pendulum"), Shown::Circles { .. }));
        assert!(matches!(shown("shrug"), Shown::Way(_)));
        assert!(matches!(shown("forearm-turn"), Shown::Twist(_)));
        assert!(matches!(shown("isometric-external-rotation"), Shown::Press { .. }));
        assert!(matches!(shown("wrist-circles"), Shown::Way(_)));
        assert!(matches!(shown("carry-walk"), Shown::Still));
        assert!(matches!(shown("table-slide"), Shown::Turn { arrow: Arrow::Way(_), .. }));
    }
}
