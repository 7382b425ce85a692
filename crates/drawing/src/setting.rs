//! What stands around a figure: what it sits or lies on, what it holds, and where the other hand is.
//!
//! The catalogue names the equipment; where it is follows from the pose. Everything here is own choice, drawn by eye.

use body::{Pose, Posture, Vector};
use exercise::{Entry, Equipment, Kind, Other, OtherArm, SlingDuring, Supervision};

use crate::figure::things::{self, Block, BlockPlace, Spot, Thing};
use crate::figure::{Joints, OtherHand};
use crate::movement::Shown;

/// What stands around a figure.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Setting {
    pub(crate) other_hand: OtherHand,
    pub(crate) things: Vec<Thing>,
}

impl Setting {
    /// Around somebody at the end of a movement.
    pub(crate) fn of(entry: &Entry, start: &Pose, end: &Pose, shown: &Shown) -> Self {
        let joints = Joints::of(end, OtherHand::AsPosed);
        let scene = Scene { entry, start: Joints::of(start, OtherHand::AsPosed), end: joints, shown };
        let mut things = scene.rests_on();
        let other_hand = scene.other_hand();
        things.extend(entry.equipment.iter().flat_map(|equipment| scene.place(*equipment, other_hand)));
        if entry.sling == SlingDuring::On {
            things.push(Thing::Sling);
        }
        Self { other_hand, things }
    }
}

struct Scene<'e> {
    entry: &'e Entry,
    start: Joints,
    end: Joints,
    shown: &'e Shown,
}

impl Scene<'_> {
    fn has(&self, equipment: Equipment) -> bool {
        self.entry.equipment.contains(&equipment)
    }

    /// A bed, a seat or the ground.
    fn rests_on(&self) -> Vec<Thing> {
        let joints = &self.end;
        let stands_on_hands = joints.tilt != body::Rotation::NONE;
        match joints.pose.posture {
            _ if self.has(Equipment::SwimmingPool) => Vec::new(),
            Posture::LyingOnTheFront if stands_on_hands || joints.pose.operated.elbow.degrees() > 60.0 => {
                vec![Thing::Ground { at: Vector::new(0.0, joints.floor, 0.0), half: 0.5 }]
            }
            Posture::LyingOnTheBack
            | Posture::LyingOnTheFront
            | Posture::LyingOnTheSoundSide
            | Posture::LyingOnTheOperatedSide => [things::bed(joints), things::pillow_under_head(joints)].concat(),
            Posture::Kneeling => vec![Thing::Ground { at: Vector::new(0.0, joints.floor, 0.0), half: 0.42 }],
            Posture::Sitting if self.has(Equipment::Toilet) || self.has(Equipment::Bicycle) => things::stool(joints),
            Posture::Sitting => things::chair(joints),
            Posture::Standing | Posture::BentForward => things::ground(joints),
        }
    }

    /// Where the other hand is.
    fn other_hand(&self) -> OtherHand {
        let entry = self.entry;
        let same = entry.positions.is_some_and(|positions| positions.other == Other::Same);
        let joints = &self.end.skeleton;
        let [grip, right] = [joints.operated.grip, joints.trunk.z()];
        let shoulder = joints.other.shoulder;
        let ahead = joints.trunk.x();
        let up = joints.trunk.y();
        if entry.posture == Posture::BentForward && (self.has(Equipment::Table) || self.has(Equipment::Chair)) {
            return OtherHand::On(self.support());
        }
        if same {
            return OtherHand::AsPosed;
        }
        let target = if self.has(Equipment::Stick) {
            let beside = grip - right * STICK_APART;
            // With the arm out to the side the stick comes from the other hip.
            if beside.distance(shoulder) <= REACH { beside } else { shoulder - up * 0.24 + ahead * 0.12 }
        } else if self.has(Equipment::Pulley) {
            shoulder - up * 0.06 + ahead * 0.19
        } else if self.has(Equipment::Towel) && self.is_behind() {
            shoulder + up * 0.05 - ahead * 0.08 + right * 0.03
        } else if matches!(entry.other_arm, OtherArm::Drives | OtherArm::Helps)
            && entry.supervision != Supervision::Therapist
            && matches!(entry.kind, Kind::Exercise | Kind::Test)
            && !self.has(Equipment::Table)
        {
            let along = (joints.operated.wrist - joints.operated.elbow) * 0.15;
            let wrist = joints.operated.wrist - along;
            if wrist.distance(shoulder) <= REACH { wrist } else { joints.operated.elbow }
        } else {
            return OtherHand::AsPosed;
        };
        if target.distance(shoulder) <= REACH { OtherHand::At(target) } else { OtherHand::AsPosed }
    }

    fn is_behind(&self) -> bool {
        let body = &self.end.skeleton;
        (body.operated.grip - body.neck).dot(body.trunk.x()) < -0.02
    }

    /// Where the other hand leans on something in front of somebody bent forward.
    fn support(&self) -> Vector {
        Vector::new(0.34, -0.06, -0.13)
    }

    fn place(&self, equipment: Equipment, other_hand: OtherHand) -> Vec<Thing> {
        let body = &self.end.skeleton;
        let arm = &body.operated;
        let floor = self.end.floor;
        let [ahead, up, right] = [body.trunk.x(), body.trunk.y(), body.trunk.z()];
        let both = [Spot::OperatedHand, Spot::OtherHand];
        let holds = !matches!(other_hand, OtherHand::AsPosed) || self.end.pose.other == self.end.pose.operated;
        match equipment {
            Equipment::Stick if holds => vec![Thing::Stick { ends: both, beyond: [0.06, 0.08] }],
            Equipment::Stick => {
                vec![Thing::Stick { ends: [Spot::OperatedHand, Spot::At(arm.grip - right * 0.3)], beyond: [0.06, 0.0] }]
            }
            Equipment::Pulley => {
                let top = Vector::new(body.neck.x + 0.05, body.neck.y + 0.42, 0.0);
                vec![Thing::Cord(vec![Spot::OperatedHand, Spot::At(top), Spot::OtherHand])]
            }
            Equipment::Towel if self.is_behind() => match other_hand {
                OtherHand::At(other) => vec![Thing::Roll { ends: [arm.grip, other], radius: 0.012 }],
                _ => Vec::new(),
            },
            Equipment::Towel | Equipment::Washcloth => vec![Thing::Cloth(Spot::OperatedHand)],
            Equipment::RolledTowel => vec![self.rolled_towel()],
            Equipment::Pillow => self.pillow(),
            Equipment::Table => self.table(),
            Equipment::Chair if self.entry.posture == Posture::BentForward => self.table(),
            Equipment::Wall => self.wall(),
            Equipment::DoorFrame | Equipment::Door if !self.has(Equipment::ElasticBand) => {
                // The hand holds it with the fingers; it goes on above and below, as far as it hides nobody's face.
                let at = arm.fingertip + ahead * 0.012;
                let top = at.y.max(0.0) + 0.14;
                vec![Thing::Post {
                    ends: [Vector::new(at.x, floor, at.z), Vector::new(at.x, top, at.z)],
                    radius: 0.016,
                }]
            }
            Equipment::ElasticBand => self.band(),
            Equipment::SmallWeight => vec![Thing::Weight(Spot::OperatedHand)],
            Equipment::SoftBall => vec![Thing::Ball { at: Spot::OperatedHand, radius: 0.02 }],
            Equipment::LargeBall => {
                let at = arm.grip + arm.palm * 0.062;
                vec![Thing::Ball { at: Spot::At(at), radius: 0.055 }]
            }
            Equipment::Bag => {
                let middle = arm.grip - Vector::Y * 0.1;
                vec![Thing::Block(Block::upright(middle, 0.05, 0.07, 0.028, BlockPlace::Among))]
            }
            Equipment::Broom | Equipment::VacuumCleaner => {
                let foot = Vector::new(arm.grip.x + 0.22, floor + 0.02, arm.grip.z);
                let handle = arm.grip + (arm.grip - foot).normalize_or(Vector::Y) * 0.06;
                vec![
                    Thing::Post { ends: [foot, handle], radius: 0.007 },
                    Thing::Block(Block::upright(foot, 0.04, 0.014, 0.06, BlockPlace::Among)),
                ]
            }
            Equipment::HighShelf => {
                let middle = Vector::new(arm.grip.x + 0.04, arm.grip.y - 0.035, 0.06);
                vec![Thing::Block(Block::upright(middle, 0.08, 0.008, 0.2, BlockPlace::Among))]
            }
            Equipment::Cup => {
                vec![Thing::Post { ends: [arm.grip - up * 0.02, arm.grip + up * 0.035], radius: 0.02 }]
            }
            Equipment::Cutlery | Equipment::Toothbrush | Equipment::Razor | Equipment::Comb | Equipment::Pen => {
                let along = (ahead * -0.3 + up * 0.6 - right * 0.5).normalize();
                vec![Thing::Post { ends: [arm.grip - along * 0.02, arm.grip + along * 0.055], radius: 0.005 }]
            }
            Equipment::Telephone => {
                let middle = arm.grip + arm.palm * 0.012;
                vec![Thing::Block(Block {
                    middle,
                    half: [ahead * 0.008, up * 0.04, right * 0.02],
                    place: BlockPlace::Among,
                })]
            }
            _ => Vec::new(),
        }
    }

    /// Between the elbow and the body, or under the upper arm of somebody lying.
    fn rolled_towel(&self) -> Thing {
        let body = &self.end.skeleton;
        let arm = &body.operated;
        let elbow = arm.elbow + (arm.shoulder - arm.elbow) * 0.2;
        let (middle, along) = match self.end.pose.posture {
            Posture::LyingOnTheBack => (Vector::new(elbow.x, self.end.floor + 0.02, elbow.z), body.trunk.z()),
            Posture::LyingOnTheSoundSide => (elbow - Vector::Y * 0.045, body.trunk.x()),
            _ => (elbow - body.trunk.z() * 0.045, body.trunk.x()),
        };
        Thing::Roll { ends: [middle - along * 0.055, middle + along * 0.055], radius: 0.02 }
    }

    /// Under the forearm, or where an effort presses.
    fn pillow(&self) -> Vec<Thing> {
        let arm = &self.end.skeleton.operated;
        if let Shown::Press { at, toward } = self.shown {
            let half = [*toward * 0.018, Vector::Y * 0.05, toward.cross(Vector::Y) * 0.05];
            return vec![Thing::Cushion(Block { middle: *at, half, place: BlockPlace::Among })];
        }
        let middle = (arm.elbow + arm.wrist) / 2.0 - Vector::Y * 0.055;
        let lies = !self.end.pose.posture.is_upright();
        // Of somebody lying it is under the head, unless the arm rests low enough to lie on one too.
        if middle.y - 0.03 < self.end.floor || (lies && arm.elbow.y - self.end.floor > 0.16) {
            return Vec::new();
        }
        vec![Thing::Cushion(Block::upright(middle, 0.08, 0.028, 0.08, BlockPlace::Among))]
    }

    /// Under the hand, before somebody who sits, or where somebody bent forward leans.
    fn table(&self) -> Vec<Thing> {
        let arm = &self.end.skeleton.operated;
        let floor = self.end.floor;
        if self.entry.posture == Posture::BentForward {
            let top = self.support() + Vector::new(0.08, 0.0, 0.03);
            return things::table(top, 0.12, 0.16, floor);
        }
        if !self.end.pose.posture.is_upright() {
            return Vec::new();
        }
        // The hand lies on it where the exercise says so, else it stands at its usual height.
        let lies = self.entry.kind == Kind::Exercise && arm.palm.y < -0.5;
        let under_hand = if self.has(Equipment::LargeBall) { 0.122 } else { 0.018 };
        let height = if lies { arm.grip.y - under_hand } else { USUAL_TABLE };
        let near = self.start.skeleton.operated.grip.x.min(arm.grip.x);
        let far = self.start.skeleton.operated.grip.x.max(arm.grip.x);
        let [from, to] = if lies { [(near - 0.1).max(0.1), far + 0.12] } else { [0.24, 0.62] };
        things::table(Vector::new((from + to) / 2.0, height, 0.06), (to - from) / 2.0, 0.22, floor)
    }

    /// Where the hand is, or where an effort presses.
    fn wall(&self) -> Vec<Thing> {
        let arm = &self.end.skeleton.operated;
        let floor = self.end.floor;
        match self.shown {
            Shown::Press { at, toward } if self.has(Equipment::Pillow) => {
                things::wall(*at + *toward * 0.02, -*toward, floor)
            }
            Shown::Press { at, toward } => things::wall(*at, -*toward, floor),
            // Raised beside a wall that is behind the back.
            _ if self.entry.kind == Kind::Exercise && arm.fingertip.x < 0.3 => {
                things::wall(Vector::X * -0.11, Vector::X, floor)
            }
            _ => {
                let reach = if self.has(Equipment::LargeBall) || self.has(Equipment::SoftBall) { 0.22 } else { 0.02 };
                things::wall(Vector::new(arm.fingertip.x.max(arm.grip.x) + reach, 0.0, arm.grip.z), -Vector::X, floor)
            }
        }
    }

    /// From the hand to where it is tied: back along the way the hand came.
    fn band(&self) -> Vec<Thing> {
        let from = self.start.skeleton.operated.grip;
        let to = self.end.skeleton.operated.grip;
        let back = Vector::new(from.x - to.x, (from.y - to.y) * 0.4, from.z - to.z).normalize_or(Vector::X);
        vec![Thing::Band(vec![Spot::OperatedHand, Spot::At(from + back * 0.22)])]
    }
}

/// How far a drawn arm reaches without being stretched out, from shoulder to grip.
const REACH: f64 = 0.345;
const STICK_APART: f64 = 0.24;
/// A table before somebody who sits, above the hips.
const USUAL_TABLE: f64 = 0.1;
