//! Each exercise as angles of joints: what one number of the set does to the whole arm.

use std::f64::consts::{FRAC_PI_2, TAU};

use glam::{DQuat, DVec3};

use crate::arm::{Joints, Lengths};
use crate::exercise::Exercise;
use crate::parameter::{Draws, Parameter, own};
use crate::person::Person;
use crate::repetitions::{Dose, HOLD};
use crate::smooth::Wander;

/// How somebody performs one exercise.
#[derive(Debug, Clone)]
pub struct Movement {
    exercise: Exercise,
    lengths: Lengths,
    /// The set that is asked for; the peak in degrees, for a shrug in centimeters, for a roll in turns.
    pub dose: Dose,
    /// The pose is held this far from its ideal, radians: raised, turned outward, elbow.
    off: [f64; 3],
    plane: f64,
    /// Where a turn begins, and how far the blade tilts the arm.
    start: f64,
    tilt: [f64; 2],
    lean: f64,
    tremor: [Wander; 3],
    sway: [Wander; 3],
    slack: [Wander; 3],
    roll: [f64; 2],
}

const RAISED_IN_POSE: Parameter = own("pose_arm_from_its_line", "deg", 1.0, 7.0);
const TURNED_IN_POSE: Parameter = own("pose_turned", "deg", -4.0, 4.0);
const ELBOW_IN_POSE: Parameter = own("pose_elbow", "deg", 0.0, 7.0);
const SLACK: Parameter = own("wander_of_other_joints_rms", "deg", 0.1, 0.8);
/// Share of the tremor that a joint at rest has: own choice.
const RESTING_TREMOR: f64 = 0.2;
const TILT_SIDE: Parameter = own("blade_tilts_arm_aside", "deg", 3.5, 8.0);
const TILT_AHEAD: Parameter = own("blade_tilts_arm_ahead", "deg", 3.5, 8.0);
const ROLL_AHEAD: Parameter = own("roll_ahead_and_back", "m", 0.012, 0.03);
const ROLL_UP: Parameter = own("roll_up_and_down", "m", 0.01, 0.022);

const fn peak(low: f64, high: f64) -> Parameter {
    own("peak_aimed_at", "deg", low, high)
}

const SCAPULAR_PLANE: Parameter = own("plane_of_elevation", "deg", 28.0, 42.0); // glossary: 30 to 40 degrees ahead
const NEAR_SIDE: Parameter = own("plane_of_elevation", "deg", -5.0, 12.0);
const NEAR_AHEAD: Parameter = own("plane_of_elevation", "deg", 78.0, 95.0);

impl Movement {
    /// Somebody's way of doing an exercise.
    pub fn draw(exercise: Exercise, person: &Person, draws: &mut Draws) -> Self {
        use Exercise as E;
        let peak = match exercise {
            E::StickExternalRotation => draws.draw(&peak(20.0, 60.0)),
            E::SupineElevation => draws.draw(&peak(50.0, 150.0)),
            E::ScapularPlaneElevation | E::ForwardElevation | E::Abduction => draws.draw(&peak(60.0, 155.0)),
            E::InternalRotation => draws.draw(&peak(40.0, 75.0)),
            E::ExternalRotation => draws.draw(&peak(35.0, 80.0)),
            E::ElbowFlexion => draws.draw(&peak(80.0, 130.0)),
            E::Row => draws.draw(&peak(50.0, 85.0)),
            E::TrapeziusExtension => draws.draw(&peak(28.0, 50.0)),
            E::Shrug => draws.draw(&own("peak_aimed_at", "cm", 2.5, 5.0)),
            E::ShoulderRoll | E::Pendulum => 1.0,
        };
        let holds = matches!(
            exercise,
            E::StickExternalRotation | E::SupineElevation | E::ScapularPlaneElevation | E::ForwardElevation | E::Shrug
        );
        let hold_s = if holds && draws.random().happens(0.6) { draws.draw(&HOLD) } else { 0.0 };
        // Nobody whips a repaired arm: the mean speed stays under 60 degrees a second. Own choice.
        let least_out_s = if matches!(exercise, E::Shrug) { 0.8 } else { peak / 60.0 };
        // The forearm's tilt is not in proportion to how far the hands are pulled up: it moves most at the start.
        let shallow = if matches!(exercise, E::Row) { 0.4 } else { 1.0 };
        let repetitions = draws.random().whole(5, 20);
        let plane = match exercise {
            E::StickExternalRotation | E::Abduction | E::Shrug | E::ShoulderRoll => draws.draw(&NEAR_SIDE),
            E::SupineElevation | E::ForwardElevation => draws.draw(&NEAR_AHEAD),
            E::ScapularPlaneElevation => draws.draw(&SCAPULAR_PLANE),
            E::TrapeziusExtension => -draws.draw(&NEAR_AHEAD),
            E::InternalRotation | E::ExternalRotation | E::ElbowFlexion | E::Row | E::Pendulum => {
                draws.draw(&own("plane_of_elevation", "deg", 5.0, 30.0))
            }
        };
        let start = match exercise {
            E::InternalRotation => draws.draw(&own("turned_outward_at_start", "deg", 0.0, 25.0)),
            E::ExternalRotation => draws.draw(&own("turned_outward_at_start", "deg", -45.0, -15.0)),
            _ => 0.0,
        };
        let off =
            [draws.draw(&RAISED_IN_POSE), draws.draw(&TURNED_IN_POSE), draws.draw(&ELBOW_IN_POSE)].map(f64::to_radians);
        let slack = draws.draw(&SLACK);
        // Lying down the trunk only breathes.
        let sway = if exercise.is_supine() { person.sway_deg * 0.2 } else { person.sway_deg };
        let tilt = [draws.draw(&TILT_SIDE), draws.draw(&TILT_AHEAD)].map(f64::to_radians);
        let roll = [draws.draw(&ROLL_AHEAD), draws.draw(&ROLL_UP)];
        let random = draws.random();
        let tremor = [(); 3].map(|()| Wander::new(random, person.tremor_deg.to_radians(), 5.0, 9.0));
        let slack = [(); 3].map(|()| Wander::new(random, slack.to_radians(), 0.05, 0.35));
        let sway = [(); 3].map(|()| Wander::new(random, sway.to_radians(), 0.08, 0.4));
        Self {
            exercise,
            lengths: person.lengths,
            dose: Dose { repetitions, peak, hold_s, least_out_s, shallow },
            off,
            plane: plane.to_radians(),
            start: start.to_radians(),
            tilt,
            lean: if exercise.is_supine() { 0.0 } else { person.lean_deg.to_radians() / 150.0_f64.to_radians() },
            tremor,
            sway,
            slack,
            roll,
        }
    }

    /// Whether the set needs a bent elbow that a standing person does not have.
    pub const fn prepares(&self) -> bool {
        matches!(self.exercise, Exercise::InternalRotation | Exercise::ExternalRotation)
    }

    /// The joints at a time, for a value of the set and for how far the preparation has come, 0 to 1.
    pub fn joints(&self, time: f64, value: f64, prepared: f64) -> Joints {
        use Exercise as E;
        let [raised, turned, elbow] = self.off;
        // A joint that does not work trembles less.
        let share = match self.exercise {
            E::ShoulderRoll => (value * TAU / 2.0).sin().abs(),
            _ => (value / self.dose.peak).clamp(0.0, 1.0),
        };
        let effort = RESTING_TREMOR + (1.0 - RESTING_TREMOR) * share;
        let tremor = |joint: usize| effort * self.tremor[joint].at(time);
        let slack = |joint: usize| self.slack[joint].at(time);
        let angle = value.to_radians() + tremor(0);
        let base = if self.exercise.is_supine() { Joints::supine() } else { Joints::standing(&self.lengths) };
        let mut joints = Joints {
            plane: self.plane,
            elevation: raised,
            outward: turned,
            elbow: elbow + 0.5 * tremor(2),
            forearm: 0.3 + slack(2),
            ..base
        };
        let mut lean = DQuat::IDENTITY;
        match self.exercise {
            E::Pendulum => {}
            E::StickExternalRotation => {
                joints.elevation = raised + 0.15 + 0.4 * slack(0);
                joints.outward = turned + angle;
                joints.elbow = FRAC_PI_2 + elbow - 0.06 + 0.4 * slack(1);
            }
            E::SupineElevation | E::ScapularPlaneElevation | E::ForwardElevation | E::Abduction => {
                joints.elevation = raised + angle;
                // Near hanging the plane means nothing; above it wanders.
                joints.plane += slack(0) * 2.0;
                joints.outward += slack(1) + 0.3 * angle.max(0.0);
                lean = self.lean_away(angle * self.lean);
            }
            E::InternalRotation | E::ExternalRotation => {
                let sign = if self.exercise == E::InternalRotation { -1.0 } else { 1.0 };
                joints.outward = turned + prepared * (self.start + sign * angle);
                joints.elbow = elbow + prepared * (FRAC_PI_2 - elbow + slack(0));
                joints.elevation = raised + 0.5 * slack(1);
            }
            E::ElbowFlexion => {
                joints.elbow = elbow + angle;
                joints.elevation = raised + 0.06 * angle + 0.3 * slack(0);
                joints.plane = FRAC_PI_2;
                joints.forearm = -1.0 + slack(2);
            }
            E::Row => {
                let share = angle / self.dose.peak.to_radians();
                joints.elevation = raised + angle;
                joints.outward = turned - 1.0 - 0.4 * share;
                joints.elbow = elbow + 0.15 + (1.75 + slack(0)) * share;
                lean = self.lean_away(angle * self.lean * 0.5);
            }
            E::TrapeziusExtension => {
                joints.elevation = raised + angle;
                lean = DQuat::from_rotation_y(0.5 * self.lean * angle);
            }
            E::Shrug => {
                joints.shoulder_shift = DVec3::Z * value / 100.0;
                joints.elevation = raised + tremor(0) + self.tilt[0] * value / self.dose.peak;
            }
            E::ShoulderRoll => {
                let phase = value * TAU;
                let [ahead, rise] = [phase.sin(), (1.0 - phase.cos()) / 2.0];
                joints.shoulder_shift = DVec3::new(self.roll[0] * ahead, 0.0, 2.0 * self.roll[1] * rise);
                // The arm goes aside as the blade rises, and ahead as it comes around the chest.
                let [aside, before] = [raised + self.tilt[0] * rise + tremor(0), self.tilt[1] * ahead + tremor(1)];
                joints.plane = before.atan2(aside);
                joints.elevation = aside.hypot(before);
            }
        }
        let [pitch, roll, yaw] = [0, 1, 2].map(|axis: usize| self.sway[axis].at(time));
        // People sway about their ankles: the trunk tilts and the hips move along.
        let sway = DQuat::from_scaled_axis(DVec3::new(roll, pitch, yaw));
        joints.hips = if self.exercise.is_supine() { joints.hips } else { sway * joints.hips };
        joints.trunk = sway * lean * joints.trunk;
        joints
    }

    /// The trunk leans away from an arm that is raised in this plane.
    fn lean_away(&self, by: f64) -> DQuat {
        DQuat::from_axis_angle(DVec3::new(self.plane.cos(), self.plane.sin(), 0.0), -by)
    }
}
