//! What an arm weighs: gravitational moments at the shoulder and the elbow.

use evidence::ids;
use quantity::Kilograms;

use crate::angle::Angle;
use crate::arm::Shoulder;
use crate::person::Person;
use crate::pose::Pose;
use crate::posture::Posture;
use crate::rotation::Vector;

/// A moment.
///
/// # Units and shape
/// Newton meters; never negative here: how much, not which way.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Moment(f64);

impl Moment {
    /// From newton meters.
    pub const fn from_newton_meters(newton_meters: f64) -> Self {
        Self(newton_meters)
    }

    /// In newton meters.
    pub const fn newton_meters(self) -> f64 {
        self.0
    }

    /// How many times another moment this one is; `None` beside no moment at all.
    pub fn over(self, other: Self) -> Option<f64> {
        (other.0 > 0.0).then(|| self.0 / other.0)
    }

    /// A part of it.
    pub fn times(self, share: f64) -> Self {
        Self(self.0 * share)
    }
}

/// The gravitational moments of an arm in a pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moments {
    /// At the shoulder.
    pub shoulder: Moment,
    /// At the elbow.
    pub elbow: Moment,
    /// About the humerus's own length, from what is beyond the elbow: what turning the arm has to hold while the upper
    /// arm rests on something.
    pub turning: Moment,
}

impl Moments {
    /// Of the operated arm of a pose, with something held in the hand.
    ///
    /// # Method
    /// Each segment's weight acts at its center of mass; the moment about a joint is gravity times the horizontal
    /// way from the joint to where the weights act, added as vectors. What the arm rests on is not known here: it
    /// is the moment of an arm that nothing carries. A held weight acts in the middle of the grip.
    ///
    /// # Source
    /// `gravity`; masses and centers by the person's [`crate::SegmentTable`]; `grip-center` (own choice).
    pub fn of(person: Person, pose: &Pose, held: Kilograms) -> Self {
        let trunk = pose.trunk();
        let arm = &pose.operated;
        let table = person.table().arm();
        let [stature, mass] = [person.meters(), person.mass().number()];
        let [upper, fore, hand] =
            [arm.upper_arm_direction(), arm.forearm_direction(), arm.hand_direction()].map(|way| trunk * way * stature);
        let to_elbow = upper * table.upper_arm.length;
        let to_wrist = fore * table.forearm.length;
        // Kilogram meters about the elbow, then about the shoulder.
        let of_hand = (to_wrist + hand * table.hand.center) * (table.hand.mass * mass);
        let of_held = (to_wrist + hand * ids::GRIP_CENTER.number()) * held.number();
        let elbow = fore * (table.forearm.center * table.forearm.mass * mass) + of_hand + of_held;
        let below = (table.forearm.mass + table.hand.mass) * mass + held.number();
        let shoulder = upper * (table.upper_arm.center * table.upper_arm.mass * mass) + to_elbow * below + elbow;
        let turning = Vector::new(elbow.z, 0.0, -elbow.x).dot(upper.normalize()).abs();
        Self {
            shoulder: horizontal(shoulder),
            elbow: horizontal(elbow),
            turning: Moment(turning * ids::GRAVITY.number()),
        }
    }

    /// The greatest of one of them on the way from one pose to another.
    ///
    /// # Method
    /// Looked at in even steps, then more closely around the greatest of these; of equal ones the first.
    pub fn greatest_between(
        person: Person,
        first: &Pose,
        second: &Pose,
        held: Kilograms,
        which: impl Fn(&Self) -> Moment,
    ) -> Peak {
        let at = |share: f64| which(&Self::of(person, &Pose::between(first, second, share), held));
        let mut peak = Peak { moment: at(0.0), at: 0.0 };
        let step = 1.0 / f64::from(STEPS);
        for count in 1..=STEPS {
            let share = f64::from(count) * step;
            let moment = at(share);
            if moment.0 > peak.moment.0 * (1.0 + ROUNDING) {
                peak = Peak { moment, at: share };
            }
        }
        let [mut low, mut high] = [(peak.at - step).max(0.0), (peak.at + step).min(1.0)];
        for _ in 0..CLOSER {
            let third = (high - low) / THREE;
            if at(low + third).0 < at(high - third).0 { low += third } else { high -= third }
        }
        let share = (low + high) / 2.0;
        let moment = at(share);
        if moment.0 > peak.moment.0 * (1.0 + ROUNDING) { Peak { moment, at: share } } else { peak }
    }

    /// Of the person's own straight arm held level: what every exercise is compared with.
    pub fn straight_level_arm(person: Person) -> Self {
        let mut pose = Pose::at_rest(Posture::Standing);
        pose.operated.shoulder = Shoulder { elevation: LEVEL, ..Shoulder::HANGING };
        Self::of(person, &pose, Kilograms::whole(0))
    }
}

/// The greatest moment of a movement.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Peak {
    /// How much.
    pub moment: Moment,
    /// Where on the way, from 0 to 1.
    pub at: f64,
}

/// A straight arm that hangs from the shoulder and swings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HangingArm {
    /// Moment of inertia about the shoulder, kilogram square meters.
    inertia: f64,
    /// Mass times distance, kilogram meters.
    weighted: f64,
}

impl HangingArm {
    /// The hanging arm of a person, with something in the hand.
    pub fn of(person: Person, held: Kilograms) -> Self {
        let table = person.table().arm();
        let [stature, mass] = [person.meters(), person.mass().number()];
        let elbow = table.upper_arm.length;
        let wrist = elbow + table.forearm.length;
        let mut inertia = 0.0;
        let mut weighted = 0.0;
        for (segment, from) in [(table.upper_arm, 0.0), (table.forearm, elbow), (table.hand, wrist)] {
            let [own, center, gyration] =
                [segment.mass * mass, (from + segment.center) * stature, segment.gyration * stature];
            inertia += own * (center * center + gyration * gyration);
            weighted += own * center;
        }
        let grip = (wrist + ids::GRIP_CENTER.number()) * stature;
        Self { inertia: inertia + held.number() * grip * grip, weighted: weighted + held.number() * grip }
    }

    /// Seconds of one small swing to and fro that nothing drives.
    ///
    /// # Method
    /// A stiff pendulum: 2π √(I / (g S)). It leaves out the muscles, the clothes, and that a shoulder moves.
    pub fn natural_period_s(self) -> f64 {
        std::f64::consts::TAU * (self.inertia / (self.weighted * ids::GRAVITY.number())).sqrt()
    }

    /// Meters from the shoulder to the center of oscillation: where a simple pendulum of this period would end.
    pub fn center_of_oscillation_m(self) -> f64 {
        self.inertia / self.weighted
    }

    /// The moment of inertia about the shoulder, in kilogram square meters.
    pub const fn inertia_kg_m2(self) -> f64 {
        self.inertia
    }
}

/// What a person's data leave open: the least and the most that the published tables give.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// By the table that gives least.
    pub least: f64,
    /// By the table that gives most.
    pub most: f64,
}

impl Spread {
    /// From the least to the most of some values; `None` of none.
    pub fn of(values: impl IntoIterator<Item = f64>) -> Option<Self> {
        let mut values = values.into_iter();
        let first = values.next()?;
        Some(values.fold(Self { least: first, most: first }, |spread, value| Self {
            least: spread.least.min(value),
            most: spread.most.max(value),
        }))
    }
}

fn horizontal(way: Vector) -> Moment {
    Moment(way.x.hypot(way.z) * ids::GRAVITY.number())
}

const LEVEL: Angle = Angle::from_degrees(90.0); // not medical: a right angle
/// A movement of 180 degrees is looked at every five degrees.
const STEPS: u16 = 36; // not medical: how finely a movement is looked at
/// Each look around the greatest narrows by a third: from five degrees to under a hundredth of one.
const CLOSER: u32 = 16; // not medical: as said
const THREE: f64 = 3.0; // not medical: thirds
/// Two moments closer than this part are one.
const ROUNDING: f64 = 1e-12; // not medical: of the arithmetic
