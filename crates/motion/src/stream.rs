//! Measuring while it happens: one sample at a time, in memory that never grows.

mod hanging;
mod repeating;

use glam::{DQuat, DVec3};

use crate::events::{Event, Kind};
use crate::orientation::{Causal, Steps, up};
use crate::principal::Principal;
use crate::sample::{GAP_SPLITS_S, GAP_TOLD_S, Sample};
use crate::signal::{cone_of, plane_of};
use crate::task::{Exercise, Task, Tells};
use crate::uncertainty::sigma_deg;
use hanging::Hanging;
use repeating::Repeating;

body::words! {
    /// What is going on.
    Stage {
        /// Nothing is still yet.
        Waiting = "waiting",
        /// The phone lies on a table.
        Table = "table",
        /// It is moved to the limb.
        Strapping = "strapping",
        /// The pose is held.
        Pose = "pose",
        /// The set goes on.
        Set = "set",
    }
}

/// What is known so far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct State {
    /// What is going on.
    pub stage: Stage,
    /// The angle against the pose now; `None` where there is none.
    pub angle_deg: Option<f64>,
    /// One standard deviation of it.
    pub sigma_deg: f64,
    /// Repetitions, turns or cycles so far.
    pub count: u32,
    /// Turns of a pendulum, clockwise and anticlockwise as seen from above.
    pub by_direction: Option<(u32, u32)>,
    /// Whether the angle may be at the limit now.
    pub at_limit: bool,
    /// The last peak.
    pub last_peak_deg: Option<f64>,
    /// Gaps so far.
    pub gaps: u32,
    /// Whether gravity came with the other sign, as the table told.
    pub sign_turned: bool,
    /// Whether the count can't be vouched for.
    pub uncertain: bool,
}

/// A measurement that goes on. [`Stream::push`] takes no memory.
#[derive(Debug)]
pub struct Stream {
    task: Task,
    step_s: f64,
    filter: Causal,
    sign: f64,
    sign_turned: bool,
    last: Option<Sample>,
    stage: Stage,
    still: Still,
    had_table: bool,
    pose: Option<(DVec3, DQuat)>,
    /// Sums of products of the angular rate in the set.
    moments: [DVec3; 3],
    turning: DVec3,
    outward: f64,
    angle: Option<f64>,
    smooth: LowPass,
    fast: LowPass,
    fast_for_s: f64,
    repeating: Repeating,
    hanging: Hanging,
    at_limit: bool,
    gaps: u32,
    uncertain: bool,
}

/// A stillness that goes on: for how long, and what it is like.
#[derive(Debug, Clone, Copy, Default)]
struct Still {
    rate: DVec3,
    seconds: f64,
    count: f64,
    force: DVec3,
    force_squares: DVec3,
    rates: DVec3,
    rate_squares: DVec3,
    up: DVec3,
}

/// Two low-passes of first order in a row, 3 Hz together.
#[derive(Debug, Clone, Copy, Default)]
struct LowPass {
    first: Option<f64>,
    second: f64,
}

impl LowPass {
    fn step(&mut self, value: f64, step_s: f64) -> f64 {
        let part = 1.0 - (-step_s * std::f64::consts::TAU * PASSES_HZ).exp();
        let first = self.first.map_or(value, |first| first + part * (value - first));
        self.second = if self.first.is_none() { value } else { self.second + part * (first - self.second) };
        self.first = Some(first);
        self.second
    }
}

/// Each of two in a row, so that together they pass 3 Hz as the notes have it.
const PASSES_HZ: f64 = 4.7;
/// The slow part of the angular rate, as for stored recordings: five degrees a second over half a second.
const STILL_DEG_S: f64 = 5.0;
const STILL_OVER_S: f64 = 0.25;
const POSE_S: f64 = 2.0;
const TABLE_S: f64 = 2.5;
const TABLE_UPRIGHT: f64 = 0.985;
const TABLE_RATE_DEG_S: f64 = 0.5;
const TABLE_FORCE: f64 = 0.15;
/// Past this the first movement is outward.
const FIRST_OUT_DEG: f64 = 8.0;
/// Faster for this long is fast.
const FAST_FOR_S: f64 = 0.15;

impl Stream {
    /// For samples that come about every `usual_step_s` seconds.
    pub fn new(task: Task, usual_step_s: f64) -> Self {
        Self {
            task,
            step_s: usual_step_s,
            filter: Causal::new(usual_step_s, Steps::Measured),
            sign: 1.0,
            sign_turned: false,
            last: None,
            stage: Stage::Waiting,
            still: Still::default(),
            had_table: false,
            pose: None,
            moments: [DVec3::ZERO; 3],
            turning: DVec3::ZERO,
            outward: 0.0,
            angle: None,
            smooth: LowPass::default(),
            fast: LowPass::default(),
            fast_for_s: 0.0,
            repeating: Repeating::new(task.exercise),
            hanging: Hanging::new(task.arm_length_m),
            at_limit: false,
            gaps: 0,
            uncertain: false,
        }
    }

    /// Takes one sample; gives what somebody should be told now.
    pub fn push(&mut self, sample: Sample) -> Option<Event> {
        if !sample.is_believable() {
            return None;
        }
        let passed = self.last.map_or(self.step_s, |last| sample.t_s - last.t_s);
        if passed <= 0.0 {
            self.uncertain |= passed < 0.0;
            return None;
        }
        let mut event = None;
        if self.last.is_some() && passed > GAP_TOLD_S.max(2.5 * self.step_s) {
            self.gaps += 1;
            event = Some(Event { t_s: sample.t_s - passed, kind: Kind::Gap, value: passed });
            self.after_gap(passed);
        }
        self.last = Some(sample);
        let sample = sample.with_force_times(self.sign);
        let turn = self.filter.update(sample.t_s, sample.force, sample.rate);
        let now = up(turn);
        let (bias, _) = self.filter.bias();
        let step = passed.min(GAP_SPLITS_S);
        self.look_for_stillness(&sample, now, turn, bias, step);
        if let Some((pose_up, pose_turn)) = self.pose {
            let told = self.in_set(&sample, (now, turn), (pose_up, pose_turn), bias, step);
            event = told.or(event);
        }
        event
    }

    fn after_gap(&mut self, passed: f64) {
        if self.stage == Stage::Set {
            let around = self.task.exercise.tells() == Tells::Circle;
            self.uncertain |= passed > GAP_SPLITS_S || around && passed >= LOST_S;
            self.hanging.forget();
        }
        if passed > GAP_SPLITS_S {
            // Gravity has to be found anew.
            self.filter = Causal::new(self.step_s, Steps::Measured);
        }
    }

    fn look_for_stillness(&mut self, sample: &Sample, now: DVec3, turn: DQuat, bias: DVec3, step: f64) {
        let part = 1.0 - (-step / STILL_OVER_S).exp();
        self.still.rate += (sample.rate - bias - self.still.rate) * part;
        if self.still.rate.length().to_degrees() > STILL_DEG_S {
            if self.stage == Stage::Table {
                self.stage = Stage::Strapping;
            }
            if self.stage == Stage::Pose {
                self.stage = Stage::Set;
            }
            self.still = Still { rate: self.still.rate, ..Still::default() };
            return;
        }
        let still = &mut self.still;
        still.seconds += step;
        still.count += 1.0;
        still.force += sample.force;
        still.force_squares += sample.force * sample.force;
        still.rates += sample.rate;
        still.rate_squares += sample.rate * sample.rate;
        still.up += now;
        if self.stage == Stage::Waiting && still.seconds >= TABLE_S && still.is_on_table() {
            self.had_table = true;
            self.stage = Stage::Table;
            if still.force.z < 0.0 {
                self.sign = -self.sign;
                self.sign_turned = true;
                self.filter = Causal::new(self.step_s, Steps::Measured);
                still.up = -still.up;
            }
        } else if matches!(self.stage, Stage::Waiting | Stage::Strapping)
            && still.seconds >= POSE_S
            && !(still.is_on_table() && (self.had_table || still.seconds < TABLE_S + POSE_S))
        {
            self.pose = Some((still.up.normalize_or(now), turn));
            self.stage = Stage::Pose;
        }
    }

    fn in_set(
        &mut self,
        sample: &Sample,
        (now, turn): (DVec3, DQuat),
        (pose_up, pose_turn): (DVec3, DQuat),
        bias: DVec3,
        step: f64,
    ) -> Option<Event> {
        let rate = sample.rate - bias;
        let mut event = None;
        let speed = self.fast.step(rate.length().to_degrees(), step);
        if speed > evidence::ids::MOTION_TOO_FAST.number() {
            let before = self.fast_for_s;
            self.fast_for_s += step;
            if before < FAST_FOR_S && self.fast_for_s >= FAST_FOR_S {
                event = Some(Event { t_s: sample.t_s, kind: Kind::TooFast, value: speed });
            }
        } else {
            self.fast_for_s = 0.0;
        }
        if self.task.exercise.tells() == Tells::Circle {
            let along = turn * pose_up;
            self.hanging.step(DVec3::new(-along.x, -along.y, 0.0), step);
            self.angle = Some(cone_of(now, pose_up));
            return event;
        }
        for (row, moment) in self.moments.iter_mut().enumerate() {
            *moment += rate * rate[row] * step;
        }
        // The axis is found anew now and then: it settles within the first movement.
        let axis = Principal::of_moments(self.moments).axes[0];
        self.turning = if axis.dot(self.turning) < 0.0 { -axis } else { axis };
        let raw = match self.task.exercise.tells() {
            Tells::Cone => cone_of(now, pose_up),
            Tells::Plane | Tells::Raised => {
                let level = (self.turning - pose_up * self.turning.dot(pose_up)).normalize_or(self.turning);
                plane_of(now, pose_up, level)
            }
            _ => {
                let passed = pose_turn.inverse() * turn;
                let about = self.turning.dot(DVec3::new(passed.x, passed.y, passed.z));
                let raw = 2.0 * about.atan2(passed.w).to_degrees();
                if raw.abs() > 180.0 { raw - 360.0 * raw.signum() } else { raw }
            }
        };
        let least = self.repeating.least();
        if self.outward == 0.0 && raw.abs() > FIRST_OUT_DEG.min(least) {
            self.outward = raw.signum();
        }
        let angle = self.smooth.step(raw * if self.outward < 0.0 { -1.0 } else { 1.0 }, step);
        self.angle = Some(angle);
        self.repeating.step(angle, step);
        let sigma = sigma_deg(self.task.exercise, self.task.worn, 0.0);
        if let Some(limit) = self.task.limit_deg.filter(|_| self.task.exercise.tells_angle()) {
            // The faster of the two: a low-pass comes late, and a warning must not.
            let reaches = angle.max(self.smooth.first.unwrap_or(angle)) + 2.0 * sigma >= limit;
            if reaches && !self.at_limit {
                event = Some(Event { t_s: sample.t_s, kind: Kind::Limit, value: angle });
            }
            self.at_limit = reaches || self.at_limit && angle + 2.0 * sigma > limit - crate::events::REARMED_DEG;
        }
        event
    }

    /// What is known so far.
    pub fn state(&self) -> State {
        let is_pendulum = self.task.exercise == Exercise::Pendulum;
        State {
            stage: self.stage,
            angle_deg: self.angle,
            sigma_deg: sigma_deg(self.task.exercise, self.task.worn, 0.0),
            count: if is_pendulum { self.hanging.count() } else { self.repeating.count() },
            by_direction: if is_pendulum { self.hanging.by_direction() } else { None },
            at_limit: self.at_limit,
            last_peak_deg: self.repeating.last_peak().filter(|_| self.task.exercise.tells_angle()),
            gaps: self.gaps,
            sign_turned: self.sign_turned,
            uncertain: self.uncertain,
        }
    }

    /// Ends the set: a repetition that is on its way back is counted as the stored measurement does.
    pub fn finish(&mut self) -> State {
        self.repeating.finish();
        self.hanging.finish();
        self.state()
    }
}

/// This much missing during a pendulum can hide a turn (contract).
const LOST_S: f64 = 0.3;

impl Still {
    fn is_on_table(&self) -> bool {
        let spread = |sum: DVec3, squares: DVec3| {
            let mean = sum / self.count;
            (squares / self.count - mean * mean).max_element().max(0.0).sqrt()
        };
        let upright = self.force.z.abs() / self.force.length().max(f64::MIN_POSITIVE);
        upright > TABLE_UPRIGHT
            && spread(self.force, self.force_squares) < TABLE_FORCE
            && spread(self.rates, self.rate_squares).to_degrees() < TABLE_RATE_DEG_S
    }
}
