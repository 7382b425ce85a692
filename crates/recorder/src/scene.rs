//! A recording from table to handling: what the limb does, and where the phone is all the while.

use glam::{DQuat, DVec3};

use crate::arm::{Lengths, Limbs, Place};
use crate::exercise::{Side, Worn};
use crate::parameter::{Draws, Parameter, own};
use crate::random::Random;
use crate::signal::STEP;
use crate::smooth::{Wander, minimum_jerk};

/// What comes before the set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Opening {
    /// The phone on a table, strapping it on, the pose.
    TableAndPose,
    /// The pose.
    Pose,
    /// Nothing.
    Nothing,
}

/// What comes after the set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ending {
    /// The pose, then the phone is taken off.
    PoseAndHandling,
    /// The pose.
    Pose,
    /// Nothing.
    Nothing,
}

/// How the elbow is in the pose of an exercise that turns a bent one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Elbow {
    /// Bent already: the first movement after the pose is the first repetition.
    Bent,
    /// Straight, and bent before the set.
    Straight,
}

/// A part of a recording, seconds from its start.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Phase {
    /// What it is: `table`, `strapping`, `pose`, `preparing`, `set`, `pose again`, `handling`.
    pub name: &'static str,
    /// When it begins.
    pub from_s: f64,
    /// When it ends.
    pub until_s: f64,
}

/// What the body does, one value for each step.
#[derive(Debug, Clone, Default)]
pub struct Track {
    /// The line of the worn limb where the phone sits, before strap and tissue.
    pub limb: Vec<Place>,
    /// Turn of the worn limb's bone about its own length, radians.
    pub axial: Vec<f64>,
    /// The shoulder against the trunk, meters: ahead, aside, up.
    pub shoulder_shift: Vec<DVec3>,
    /// The middle of the hand as seen from the shoulder.
    pub hand: Vec<DVec3>,
    /// The value of the set.
    pub value: Vec<f64>,
}

impl Track {
    /// Adds a step.
    pub fn push(&mut self, limbs: Limbs, worn: Worn, side: Side, lengths: &Lengths, extra: Extra) {
        let limbs = if side == Side::Left { limbs.mirrored() } else { limbs };
        self.limb.push(worn_place(&limbs, worn, lengths));
        self.hand.push(limbs.grip - limbs.upper_arm.at);
        self.axial.push(extra.axial);
        self.shoulder_shift.push(extra.shoulder_shift);
        self.value.push(extra.value);
    }
}

/// What a step holds beside the limbs.
#[derive(Debug, Clone, Copy, Default)]
pub struct Extra {
    /// Turn of the bone about its own length.
    pub axial: f64,
    /// The shoulder against the trunk.
    pub shoulder_shift: DVec3,
    /// The value of the set.
    pub value: f64,
}

/// Where on its limb the phone is worn.
fn worn_place(limbs: &Limbs, worn: Worn, lengths: &Lengths) -> Place {
    let down = |place: Place, by: f64| Place { at: place.point(DVec3::NEG_Z * by), turn: place.turn };
    match worn {
        Worn::UpperArm => down(limbs.upper_arm, lengths.upper_arm * 0.5),
        Worn::Forearm => down(limbs.forearm, 0.1_f64.min(lengths.forearm * 0.45)), // 10 cm below the elbow
        Worn::Wrist => down(limbs.forearm, lengths.forearm - 0.03),
        Worn::Hand => down(limbs.hand, lengths.grip),
    }
}

const TABLE: Parameter = own("time_on_table", "s", 3.3, 5.0);
const STRAPPING: Parameter = own("time_to_strap", "s", 6.0, 12.0);
const POSE: Parameter = own("time_of_pose", "s", 3.3, 5.0);
const POSE_AGAIN: Parameter = own("time_of_pose_again", "s", 3.3, 5.0);
const HANDLING: Parameter = own("time_of_handling", "s", 2.0, 7.0);
const TABLE_TILT: Parameter = own("table_tilt", "deg", 0.0, 0.6);
const PREPARING: f64 = 2.5;

/// The phases around a set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Around {
    opening: Opening,
    ending: Ending,
    table_s: f64,
    strapping_s: f64,
    pose_s: f64,
    preparing_s: f64,
    pose_again_s: f64,
    handling_s: f64,
    table: Place,
}

impl Around {
    /// How long everything takes, and how the phone lies on its table.
    pub fn draw(draws: &mut Draws, opening: Opening, ending: Ending, prepares: bool) -> Self {
        let mut time = |parameter, is_there: bool| if is_there { draws.draw(parameter) } else { 0.0 };
        let has_table = opening == Opening::TableAndPose;
        let [table_s, strapping_s] = [time(&TABLE, has_table), time(&STRAPPING, has_table)];
        let pose_s = time(&POSE, opening != Opening::Nothing);
        let pose_again_s = time(&POSE_AGAIN, ending != Ending::Nothing);
        let handling_s = time(&HANDLING, ending == Ending::PoseAndHandling);
        let preparing_s = if prepares { PREPARING } else { 0.0 };
        Self {
            opening,
            ending,
            table_s,
            strapping_s,
            pose_s,
            preparing_s,
            pose_again_s,
            handling_s,
            table: lying(draws),
        }
    }

    /// When the preparation begins, or the set where there is none.
    pub fn pose_end_s(&self) -> f64 {
        self.table_s + self.strapping_s + self.pose_s
    }

    /// When the set begins.
    pub fn set_from_s(&self) -> f64 {
        self.pose_end_s() + self.preparing_s
    }

    /// How far the preparation has come, 0 to 1, and back again after the set. Where there is none it is always done.
    pub fn prepared(&self, time: f64, set_until_s: f64) -> f64 {
        if self.preparing_s == 0.0 {
            return 1.0;
        }
        let way = PREPARING * 0.7;
        let before =
            if self.opening == Opening::Nothing { 1.0 } else { minimum_jerk((time - self.pose_end_s()) / way) };
        let after = if self.ending == Ending::Nothing { 0.0 } else { minimum_jerk((time - set_until_s) / way) };
        before - after
    }

    /// The phases, when the set ends at a time.
    pub fn phases(&self, set_until_s: f64) -> Vec<Phase> {
        let back = if self.ending == Ending::Nothing { 0.0 } else { self.preparing_s };
        let lengths = [
            ("table", self.table_s),
            ("strapping", self.strapping_s),
            ("pose", self.pose_s),
            ("preparing", self.preparing_s),
            ("set", set_until_s - self.set_from_s()),
            ("lowering", back),
            ("pose again", self.pose_again_s),
            ("handling", self.handling_s),
        ];
        let mut phases: Vec<Phase> = Vec::new();
        for (name, seconds) in lengths.into_iter().filter(|(_, seconds)| *seconds > 0.0) {
            let from_s = phases.last().map_or(0.0, |phase| phase.until_s);
            phases.push(Phase { name, from_s, until_s: from_s + seconds });
        }
        phases
    }

    /// The phone before, while and after it is worn.
    pub fn carry(&self, random: &mut Random, mut worn: Vec<Place>, set_until_s: f64) -> Vec<Place> {
        let from_table = Carrying::draw(random, self.strapping_s);
        let away = Carrying::draw(random, 6.0);
        let step = |time: f64| ((time / STEP) as usize).min(worn.len().saturating_sub(1));
        let (pose, again) = (step(self.pose_end_s() - self.pose_s), step(set_until_s));
        let (Some(first), Some(second)) = (worn.get(pose).copied(), worn.get(again).copied()) else { return worn };
        let off = self.phases(set_until_s).iter().find(|phase| phase.name == "handling").map(|phase| phase.from_s);
        for (index, place) in worn.iter_mut().enumerate() {
            let time = index as f64 * STEP;
            if self.opening == Opening::TableAndPose {
                let since = time - self.table_s;
                *place = from_table.between(self.table, first, *place, since);
            }
            if let Some(off) = off.filter(|off| time > *off) {
                // Backward from the limb to a table that is not reached before the recording ends.
                *place = away.between(self.table, second, *place, away.seconds - (time - off));
            }
        }
        worn
    }
}

/// A table with a phone on it, screen up.
pub fn lying(draws: &mut Draws) -> Place {
    let tilt = draws.draw(&TABLE_TILT).to_radians();
    let random = draws.random();
    let heading = random.uniform(0.0, std::f64::consts::TAU);
    let slope = random.uniform(0.0, std::f64::consts::TAU);
    let tilted = DQuat::from_axis_angle(DVec3::new(slope.cos(), slope.sin(), 0.0), tilt);
    Place { at: DVec3::new(0.4, 0.1, 0.75), turn: tilted * DQuat::from_rotation_z(heading) }
}

/// A phone that is carried about and never quite still.
#[derive(Debug, Clone)]
pub struct Carrying {
    seconds: f64,
    shift: [Wander; 3],
    turn: [Wander; 3],
}

impl Carrying {
    /// Something carried for some seconds.
    pub fn draw(random: &mut Random, seconds: f64) -> Self {
        Self {
            seconds,
            shift: [(); 3].map(|()| Wander::new(random, 0.03, 0.3, 1.4)),
            turn: [(); 3].map(|()| Wander::new(random, 0.15, 0.2, 1.1)),
        }
    }

    /// Where it is after some seconds, on its way from one place to another that may itself move (`now`, near `to`).
    pub fn between(&self, from: Place, to: Place, now: Place, since: f64) -> Place {
        let share = minimum_jerk(since / self.seconds);
        let lively = minimum_jerk(since / 0.6) * minimum_jerk((self.seconds - since) / 0.6);
        let vector = |wanders: &[Wander; 3]| DVec3::from_array([0, 1, 2].map(|axis: usize| wanders[axis].at(since)));
        let moved = DQuat::from_scaled_axis((to.turn.inverse() * now.turn).to_scaled_axis_short() * share);
        let turned = DQuat::from_scaled_axis((from.turn.inverse() * to.turn).to_scaled_axis_short() * share);
        Place {
            at: from.at.lerp(now.at, share) + vector(&self.shift) * lively,
            turn: from.turn * turned * moved * DQuat::from_scaled_axis(vector(&self.turn) * lively),
        }
    }
}

/// A turn as its axis times its angle, the short way round.
trait ShortWay {
    fn to_scaled_axis_short(self) -> DVec3;
}

impl ShortWay for DQuat {
    fn to_scaled_axis_short(self) -> DVec3 {
        if self.w < 0.0 { (-self).to_scaled_axis() } else { self.to_scaled_axis() }
    }
}
