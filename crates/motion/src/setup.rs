//! What a recording holds: table, pose, set, pose again.

use glam::{DQuat, DVec3};

use crate::orientation::up;
use crate::sample::Grid;
use crate::smooth::moving_mean;

/// A stretch of stillness.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Still {
    /// The first step of it.
    pub from: usize,
    /// The first step after it.
    pub until: usize,
}

impl Still {
    /// The inner part, in which nothing has begun or just ended.
    pub const fn inner(self) -> (usize, usize) {
        let margin = (self.until - self.from) / 8;
        (self.from + margin, self.until - margin)
    }
}

/// How still counts as still.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Calm {
    /// Where movements of a few degrees are what is looked for.
    Strict,
    /// A limb held still by a person.
    Usual,
    /// A limb that trembles.
    Generous,
}

impl Calm {
    /// Degrees a second of the slow part of the angular rate. The evidence notes give 0.3 for a table; a person's limb
    /// sways, and these are own choices.
    const fn most_deg_s(self) -> f64 {
        match self {
            Self::Strict => 1.8,
            Self::Usual => 5.0,
            Self::Generous => 9.0,
        }
    }
}

/// A pose is the first stillness of 2 s or more (contract), less the ends that smoothing takes away.
const POSE_S: f64 = 1.7;
/// The table is 3 s or more (contract), less the same.
const TABLE_S: f64 = 2.4;
/// The window in which the angular rate is averaged, so that tremor of 4 Hz and more is no movement (own choice).
const AVERAGED_S: f64 = 0.5;
/// A break this short does not end a stillness (own choice).
const BREAK_S: f64 = 0.25;
/// On a table the axis out of the screen is within about ten degrees of vertical (own choice).
const TABLE_UPRIGHT: f64 = 0.985;
/// Spread of the angular rate on a table, degrees a second, and of the specific force, m/s² (evidence notes, "Notes" of
/// part b: 0.3 and 0.1, with room for noise and rounding of browsers).
const TABLE_RATE_SPREAD: f64 = 0.5;
const TABLE_FORCE_SPREAD: f64 = 0.15;
/// The pose that is held again after the set is within this of the first (own choice: more is no longer the pose).
const SAME_POSE_DEG: f64 = 35.0;
/// The longest handling after the pose (contract: a few seconds; own choice).
const HANDLING_S: f64 = 12.0;
/// Of a pose of 3 s (contract) this much surely is one.
const SURELY_HELD_S: f64 = 1.5;
/// A recording without poses begins and ends at rest where the limb is this slow for this long, and lies the same
/// within this (own choices).
const SHORT_REST_S: f64 = 0.35;
const SHORT_REST_DEG_S: f64 = 8.0;
const SHORT_REST_DEG: f64 = 12.0;
/// Between the poses lies at least this much movement (own choice).
const SET_S: f64 = 1.0;

/// The stillnesses of a recording, in order.
pub fn stillnesses(grid: &Grid, bias: &[DVec3], calm: Calm) -> Vec<Still> {
    let rate: Vec<DVec3> = grid.rate.iter().zip(bias).map(|(rate, bias)| *rate - *bias).collect();
    let slow = moving_mean(&rate, grid.steps(AVERAGED_S / 2.0));
    let most = calm.most_deg_s().to_radians();
    let mut runs: Vec<Still> = Vec::new();
    let mut from = None;
    for at in 0..=slow.len() {
        let is_still = slow.get(at).is_some_and(|rate| rate.length() < most);
        match (from, is_still) {
            (None, true) => from = Some(at),
            (Some(start), false) => {
                runs.push(Still { from: start, until: at });
                from = None;
            }
            _ => {}
        }
    }
    let mut joined: Vec<Still> = Vec::new();
    for run in runs {
        match joined.last_mut() {
            Some(last) if run.from - last.until <= grid.steps(BREAK_S) => last.until = run.until,
            _ => joined.push(run),
        }
    }
    joined.retain(|run| (run.until - run.from) as f64 * grid.step_s >= POSE_S);
    joined
}

/// The table at the beginning: a stillness that no person holds, screen up or down by the sign.
///
/// # Method
/// The phone lies with its screen up (contract), so the axis out of the screen must read +9.81; where it reads the
/// opposite, this phone gives gravity with the other sign.
pub fn table(grid: &Grid, stills: &[Still]) -> Option<(Still, f64)> {
    let first = *stills.first()?;
    if (first.until - first.from) as f64 * grid.step_s < TABLE_S {
        return None;
    }
    let (from, until) = first.inner();
    let (force, force_spread) = spread(&grid.force[from..until]);
    let (_, rate_spread) = spread(&grid.rate[from..until]);
    let upright = force.z.abs() / force.length().max(f64::MIN_POSITIVE);
    let lies =
        upright > TABLE_UPRIGHT && rate_spread < TABLE_RATE_SPREAD.to_radians() && force_spread < TABLE_FORCE_SPREAD;
    lies.then_some((first, force.z.signum()))
}

/// Whether a stillness is the phone back on the table: as still as a table, and lying as it lay.
pub fn is_table_again(grid: &Grid, turns: &[DQuat], still: Still, lay: Still) -> bool {
    let (from, until) = still.inner();
    let (_, force_spread) = spread(&grid.force[from..until]);
    let (_, rate_spread) = spread(&grid.rate[from..until]);
    let lies = rate_spread < TABLE_RATE_SPREAD.to_radians() && force_spread < TABLE_FORCE_SPREAD;
    lies && Pose::of(turns, still).up.angle_between(Pose::of(turns, lay).up).to_degrees() < SAME_TABLE_DEG
}

/// A phone that is put back lies within this of how it lay (own choice).
const SAME_TABLE_DEG: f64 = 3.0;

/// The mean and the greatest standard deviation of an axis.
fn spread(values: &[DVec3]) -> (DVec3, f64) {
    let count = (values.len() as f64).max(1.0);
    let mean = values.iter().sum::<DVec3>() / count;
    let squares = values.iter().map(|value| (*value - mean) * (*value - mean)).sum::<DVec3>() / count;
    (mean, squares.max_element().sqrt())
}

/// A pose that was held.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pose {
    /// When.
    pub still: Still,
    /// Up in the phone's axes.
    pub up: DVec3,
    /// The turn of the phone.
    pub turn: DQuat,
}

impl Pose {
    /// Of a stillness.
    pub fn of(turns: &[DQuat], still: Still) -> Self {
        let (from, until) = still.inner();
        let mean = turns[from..until].iter().map(|turn| up(*turn)).sum::<DVec3>();
        Self { still, up: mean.normalize_or(DVec3::Z), turn: turns[(from + until) / 2] }
    }
}

/// Where things are in a recording.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layout {
    /// The table.
    pub table: Option<Still>,
    /// The exercise's pose before the set.
    pub pose: Option<Pose>,
    /// The same pose after it.
    pub again: Option<Pose>,
    /// The set, from and until.
    pub set: (usize, usize),
    /// Where the limb was brought into another position after the pose, when it was there.
    pub position_since: Option<usize>,
}

impl Layout {
    /// The whole recording is the set.
    pub const fn whole(grid_len: usize) -> Self {
        Self { table: None, pose: None, again: None, set: (0, grid_len), position_since: None }
    }

    /// With the pose at one of the stillnesses.
    pub fn with_pose(turns: &[DQuat], stills: &[Still], table: Option<Still>, pose: Still, grid: &Grid) -> Self {
        let pose = Pose::of(turns, pose);
        let begins = pose.still.until;
        // After the pose there are a few seconds of handling at most (contract); what goes on for longer is the set.
        let late = grid.len().saturating_sub(grid.steps(HANDLING_S));
        let again = stills
            .iter()
            .rev()
            .filter(|still| still.from >= begins + grid.steps(SET_S) && still.until >= late)
            .map(|still| Pose::of(turns, *still))
            .find(|again| again.up.angle_between(pose.up).to_degrees() < SAME_POSE_DEG);
        let ends = again.map_or(grid.len(), |again| again.still.from);
        Self { table, pose: Some(pose), again, set: (begins, ends), position_since: None }
    }

    /// With a recording that begins and ends at rest, though not for long: the beginning is what angles are from.
    pub fn from_the_beginning(turns: &[DQuat], bias: &[DVec3], grid: &Grid) -> Option<Self> {
        let short = grid.steps(SHORT_REST_S);
        let len = grid.len();
        if len < 8 * short {
            return None;
        }
        let mean_rate = |from: usize| {
            let sum = (from..from + short).map(|at| grid.rate[at] - bias[at]).sum::<DVec3>();
            (sum / short as f64).length().to_degrees()
        };
        let [first, last] = [
            Pose::of(turns, Still { from: 0, until: short }),
            Pose::of(turns, Still { from: len - short, until: len }),
        ];
        let rests = mean_rate(0) < SHORT_REST_DEG_S && mean_rate(len - short) < SHORT_REST_DEG_S;
        let same = first.up.angle_between(last.up).to_degrees() < SHORT_REST_DEG;
        (rests && same).then(|| Self { pose: Some(first), ..Self::whole(len) })
    }

    /// With a rest inside the recording to measure angles from, where nothing was set up: everything is the set.
    pub fn with_rest(turns: &[DQuat], rest: Still, grid: &Grid) -> Self {
        Self { pose: Some(Pose::of(turns, rest)), ..Self::whole(grid.len()) }
    }

    /// The set with most of the poses around it: a movement of a few degrees begins and ends within what looks still.
    #[must_use]
    pub fn with_poses(self, grid: &Grid) -> Self {
        let held = grid.steps(SURELY_HELD_S);
        let from = self.pose.map_or(self.set.0, |pose| self.set.0.min(pose.still.from + held));
        let until = self.again.map_or(self.set.1, |again| self.set.1.max(again.still.until.saturating_sub(held)));
        Self { set: (from, until), ..self }
    }

    /// The same without the pose after the set: the set goes on to the end.
    #[must_use]
    pub const fn to_the_end(self, grid_len: usize) -> Self {
        Self { again: None, set: (self.set.0, grid_len), ..self }
    }

    /// How far the pose after the set is from the one before it.
    pub fn slip_deg(&self) -> Option<f64> {
        Some(self.pose?.up.angle_between(self.again?.up).to_degrees())
    }
}
