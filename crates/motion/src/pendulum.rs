//! The hanging arm: around or to and fro, which way, how wide, how long.

use glam::{DQuat, DVec3};

use crate::principal::in_plane;
use crate::sample::Grid;
use crate::smooth::{low_pass, median, moving_mean, period};

/// What a pendulum did.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Pendulum {
    /// Whether it went around or to and fro; `None` where it did neither.
    pub path: Option<Path>,
    /// Completed revolutions, clockwise as seen from above.
    pub clockwise: u32,
    /// And anticlockwise.
    pub anticlockwise: u32,
    /// Full cycles of a swing to and fro.
    pub cycles: u32,
    /// Mean of the two principal diameters over all counted turns, in parts of the arm's length.
    pub diameter: Option<f64>,
    /// Greatest diameter of a turn, the same.
    pub widest: Option<f64>,
    /// Lesser over greater diameter.
    pub roundness: Option<f64>,
    /// Mean seconds of a turn or cycle.
    pub period_s: Option<f64>,
    /// Each turn or cycle.
    pub turns: Vec<Turn>,
    /// How well the path repeats, from -1 to 1.
    pub likeness: f64,
    /// Whether a count lies so near the border between two that one more or less is as likely.
    pub near_a_border: bool,
}

/// One way around, or to and fro.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turn {
    /// The first step.
    pub from: usize,
    /// The step at which it is completed.
    pub until: usize,
    /// Greater and lesser principal diameter, in parts of the arm's length.
    pub diameters: [f64; 2],
    /// 1 anticlockwise, -1 clockwise, 0 to and fro.
    pub way: i8,
}

/// The two paths.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Path {
    /// Around.
    Circle,
    /// To and fro.
    Swing,
}

/// How a stretch begins and ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ends {
    /// With the arm hanging.
    Hanging,
    /// Somewhere on its way.
    Cut,
}

/// Below this ratio of diameters it is a swing (contract).
pub const SWING_BELOW: f64 = 0.3;
/// The smallest circle that is counted, meters at the hand (contract: 4 cm).
pub const SMALLEST_CIRCLE_M: f64 = 0.04;
/// Periods that a hanging arm can have, seconds (evidence notes, "Pendulum": 1.1 to 1.6 s free; slower when driven).
const PERIOD_S: [f64; 2] = [0.7, 5.0];
/// Turning back by this, radians, begins a run the other way (own choice).
const TURNS_BACK: f64 = std::f64::consts::FRAC_PI_2;
/// A run this much short of a whole turn is one: it begins and ends where the arm hangs (own choice).
const SHORT_OF_A_TURN: f64 = 0.06;
/// So near to the border between two counts, in turns, either is as likely (own choice).
const NEAR_A_BORDER: f64 = 0.06;
/// The same where the recording was cut to the set, so that some of the first and last turn is lost (own choice).
const SHORT_OF_A_CUT_TURN: f64 = 0.45;

/// The path of the limb's end, in the room's level plane, in parts of the limb's length.
pub fn path(turns: &[DQuat], limb_up: DVec3) -> Vec<DVec3> {
    turns
        .iter()
        .map(|turn| {
            let along = *turn * limb_up;
            DVec3::new(-along.x, -along.y, 0.0)
        })
        .collect()
}

/// Looks at one stretch without gaps; `smallest` is the smallest diameter that counts, in parts of the arm's length.
pub fn measure(grid: &Grid, turns: &[DQuat], limb_up: DVec3, from: usize, smallest: f64, ends: Ends) -> Pendulum {
    let raw = low_pass(&path(turns, limb_up), PATH_HZ, grid.step_s);
    let nothing = Pendulum::default();
    let Some((length, likeness)) = own_period(&raw, grid) else { return nothing };
    let center = moving_mean(&raw, ((length / 2.0).round() as usize).max(1));
    let around: Vec<DVec3> = raw.iter().zip(&center).map(|(place, center)| *place - *center).collect();
    let half = (length / 2.0).round() as usize;
    let local: Vec<[f64; 2]> =
        (0..around.len()).map(|at| diameters(&around, at.saturating_sub(half), at + half)).collect();
    let moving: Vec<usize> = (0..around.len()).filter(|at| local[*at][0] >= smallest * MOVING_PART).collect();
    let Some(roundness) = median(&moving.iter().map(|at| local[*at][1] / local[*at][0]).collect::<Vec<f64>>()) else {
        return nothing;
    };
    let mut result = if roundness < SWING_BELOW {
        swing(&around, &local, smallest)
    } else {
        circle(&around, &local, smallest, ends)
    };
    result.roundness = Some(roundness);
    result.likeness = likeness;
    for turn in &mut result.turns {
        turn.from += from;
        turn.until += from;
    }
    summarize(&mut result, grid.step_s);
    result
}

/// Faster than a hanging arm goes around (own choice).
const PATH_HZ: f64 = 4.0;
/// A window that is this part of the smallest circle wide is looked at for its shape (own choice).
const MOVING_PART: f64 = 0.8;

/// The usual period of the path in steps, and how well it repeats.
fn own_period(path: &[DVec3], grid: &Grid) -> Option<(f64, f64)> {
    // Slow wandering of the trunk is no part of a period.
    let slow = moving_mean(path, grid.steps(PERIOD_S[1] / 2.0));
    let channels = [|v: DVec3| v.x, |v: DVec3| v.y]
        .map(|part| path.iter().zip(&slow).map(|(v, s)| part(*v - *s)).collect::<Vec<f64>>());
    period(&channels, grid.steps(PERIOD_S[0]), grid.steps(PERIOD_S[1]))
}

/// The principal diameters of a stretch of path, greater first.
fn diameters(path: &[DVec3], from: usize, until: usize) -> [f64; 2] {
    let points: Vec<(f64, f64)> = path[from..until.min(path.len())].iter().map(|v| (v.x, v.y)).collect();
    let (power, _) = in_plane(&points);
    // The mean square of a sine is half the square of its height, and a diameter is twice a height.
    power.map(|power| 2.0 * (2.0 * power).sqrt())
}

fn circle(path: &[DVec3], local: &[[f64; 2]], smallest: f64, ends: Ends) -> Pendulum {
    let short = match ends {
        Ends::Hanging => SHORT_OF_A_TURN,
        Ends::Cut => SHORT_OF_A_CUT_TURN,
    };
    let mut result = Pendulum { path: Some(Path::Circle), ..Pendulum::default() };
    // A turn is looked at from before it is wide enough until after: what counts is the turn as a whole.
    let wide = |at: usize| (local[at][0] + local[at][1]) / 2.0 >= smallest * LOOKED_AT;
    let mut at = 0;
    while at < path.len() {
        if !wide(at) {
            at += 1;
            continue;
        }
        let end = (at..path.len()).find(|next| !wide(*next)).unwrap_or(path.len());
        runs(path, at, end, &mut result, short);
        at = end;
    }
    result.turns.retain(|turn| (turn.diameters[0] + turn.diameters[1]) / 2.0 >= smallest);
    let ways = |way: i8| u32::try_from(result.turns.iter().filter(|turn| turn.way == way).count()).unwrap_or(u32::MAX);
    (result.clockwise, result.anticlockwise) = (ways(-1), ways(1));
    result
}

/// Circles of this part of the smallest one are followed (own choice: their direction is still clear).
const LOOKED_AT: f64 = 0.35;

/// Runs of one direction in a stretch that is wide enough, and the whole turns in each.
fn runs(path: &[DVec3], from: usize, until: usize, result: &mut Pendulum, short: f64) {
    let mut phase = 0.0;
    let mut phases = Vec::with_capacity(until - from);
    phases.push(0.0);
    for at in from + 1..until {
        let [before, now] = [path[at - 1], path[at]];
        phase += (before.x * now.y - before.y * now.x).atan2(before.x * now.x + before.y * now.y);
        phases.push(phase);
    }
    let mut start = 0;
    let mut furthest = 0;
    for at in 1..=phases.len() {
        let ends = at == phases.len();
        let way = phases[furthest] - phases[start];
        let now = phases[at.min(phases.len() - 1)];
        if !ends && (now - phases[start]).abs() >= way.abs() && (way == 0.0 || (now - phases[start]) * way > 0.0) {
            furthest = at;
        } else if ends || (now - phases[furthest]).abs() > TURNS_BACK {
            whole_turns(&phases, start..=furthest, from, path, result, short);
            start = furthest;
            furthest = at.min(phases.len() - 1);
        }
    }
}

fn whole_turns(
    phases: &[f64],
    run: std::ops::RangeInclusive<usize>,
    from: usize,
    path: &[DVec3],
    result: &mut Pendulum,
    short: f64,
) {
    let [start, end] = [*run.start(), *run.end()];
    let total = (phases[end] - phases[start]) / std::f64::consts::TAU;
    let count = (total.abs() + short).floor();
    if count < 1.0 {
        return;
    }
    let part = (total.abs() + short).fract();
    result.near_a_border |= !(NEAR_A_BORDER..1.0 - NEAR_A_BORDER).contains(&part);
    let way: i8 = if total > 0.0 { 1 } else { -1 };
    let mut last = start;
    for turn in 1..=(count as usize) {
        let goal = std::f64::consts::TAU * turn as f64;
        let at = (last..=end).find(|at| (phases[*at] - phases[start]).abs() >= goal).unwrap_or(end);
        result.turns.push(Turn {
            from: from + last,
            until: from + at,
            diameters: diameters(path, from + last, from + at + 1),
            way,
        });
        last = at;
    }
}

/// Turns of a small path about the place it goes around, each from and until; rests between them don't matter.
pub fn around(grid: &Grid, turns: &[DQuat], limb_up: DVec3) -> Vec<(usize, usize)> {
    let raw = low_pass(&path(turns, limb_up), PATH_HZ / 2.0, grid.step_s);
    let speed: Vec<f64> =
        (0..raw.len()).map(|at| (raw[(at + 1).min(raw.len() - 1)] - raw[at.saturating_sub(1)]).length()).collect();
    let Some(quick) = crate::smooth::quantile(&speed, 0.6) else { return Vec::new() };
    let half = grid.steps(CENTER_S / 2.0);
    let weights: Vec<f64> = speed.iter().map(|speed| if *speed > 0.4 * quick { 1.0 } else { 0.01 }).collect();
    let weighted: Vec<DVec3> = raw.iter().zip(&weights).map(|(place, weight)| *place * *weight).collect();
    let [sums, counts] = [
        moving_mean(&weighted, half),
        moving_mean(&weights.iter().map(|weight| DVec3::X * *weight).collect::<Vec<DVec3>>(), half),
    ];
    let local: Vec<DVec3> =
        raw.iter().zip(sums.iter().zip(&counts)).map(|(place, (sum, count))| *place - *sum / count.x).collect();
    let points: Vec<(f64, f64)> = local.iter().map(|v| (v.x, v.y)).collect();
    // An ellipse seen as a circle: the phase runs evenly.
    let (power, angle) = in_plane(&points);
    let [long, short] = power.map(|power| power.sqrt().max(1e-6));
    if 2.0 * long * 2.0_f64.sqrt() < SMALLEST_TILT {
        return Vec::new();
    }
    let round: Vec<DVec3> = points
        .iter()
        .map(|(x, y)| {
            let [along, across] = [x * angle.cos() + y * angle.sin(), y * angle.cos() - x * angle.sin()];
            DVec3::new(along / long, across / short.max(0.15 * long), 0.0)
        })
        .collect();
    // Rests are left out: what a resting arm wanders is no turn.
    let moving: Vec<usize> = (0..round.len()).filter(|at| speed[*at] > RESTS_BELOW * quick).collect();
    let path: Vec<DVec3> = moving.iter().map(|at| round[*at]).collect();
    let mut result = Pendulum::default();
    if path.len() > 1 {
        runs(&path, 0, path.len(), &mut result, SHORT_OF_A_SMALL_TURN);
    }
    result.turns.iter().map(|turn| (moving[turn.from], moving[turn.until.min(moving.len() - 1)])).collect()
}

/// Slower than this part of the usual speed is rest (own choice).
const RESTS_BELOW: f64 = 0.35;
/// The center of a small circle is followed over this time (own choice: longer than three turns).
const CENTER_S: f64 = 16.0;
/// The greater diameter of the smallest tilt that is looked at, radians (own choice: two degrees).
const SMALLEST_TILT: f64 = 0.035;
/// A shoulder rests near the lowest place of its circle, where a small tilt has no clear phase (own choice).
const SHORT_OF_A_SMALL_TURN: f64 = 0.35;

fn swing(path: &[DVec3], local: &[[f64; 2]], smallest: f64) -> Pendulum {
    let mut result = Pendulum { path: Some(Path::Swing), ..Pendulum::default() };
    let points: Vec<(f64, f64)> = path.iter().map(|v| (v.x, v.y)).collect();
    let mut along = DVec3::X * in_plane(&points).1.cos() + DVec3::Y * in_plane(&points).1.sin();
    let half = 64;
    // The direction of a swing turns slowly; it is followed, so that none is lost where it has turned by a right angle.
    let mut state = 0_i8;
    let mut last_up = None;
    for (at, place) in path.iter().enumerate() {
        if at % half == 0 {
            let window: Vec<(f64, f64)> =
                points[at.saturating_sub(2 * half)..(at + 2 * half).min(points.len())].to_vec();
            let angle = in_plane(&window).1;
            let next = DVec3::new(angle.cos(), angle.sin(), 0.0);
            along = if next.dot(along) < 0.0 { -next } else { next };
        }
        let value = along.dot(*place);
        let gate = 0.25 * local[at][0] / 2.0;
        let wide = local[at][0] >= smallest * LOOKED_AT;
        let next = if !wide {
            0
        } else if value > gate {
            1
        } else if value < -gate {
            -1
        } else {
            state
        };
        if next == 1 && state != 1 {
            if let Some(before) = last_up {
                let diameters = diameters(path, before, at);
                result.turns.push(Turn { from: before, until: at, diameters, way: 0 });
            }
            last_up = Some(at);
        }
        if next == 0 && last_up.is_some() {
            close_swing(path, &mut last_up, at, &mut result);
        }
        state = next;
    }
    let end = path.len();
    close_swing(path, &mut last_up, end, &mut result);
    result.turns.retain(|turn| turn.diameters[0] >= smallest);
    result.cycles = u32::try_from(result.turns.len()).unwrap_or(u32::MAX);
    result
}

/// The last cycle of a swing ends without another beginning: it counts where it lasted as long as the one before.
fn close_swing(path: &[DVec3], last_up: &mut Option<usize>, at: usize, result: &mut Pendulum) {
    let Some(before) = last_up.take() else { return };
    let usual = result.turns.last().map_or(usize::MAX, |turn| turn.until - turn.from);
    if (at - before) as f64 >= 0.75 * usual as f64 {
        let until = (before + usual).min(path.len());
        result.turns.push(Turn { from: before, until, diameters: diameters(path, before, until), way: 0 });
    }
}

fn summarize(result: &mut Pendulum, step_s: f64) {
    let count = result.turns.len() as f64;
    if result.turns.is_empty() {
        return;
    }
    let means: Vec<f64> = result.turns.iter().map(|turn| (turn.diameters[0] + turn.diameters[1]) / 2.0).collect();
    result.diameter = Some(means.iter().sum::<f64>() / count);
    result.widest = Some(means.iter().copied().fold(0.0, f64::max));
    // A turn that was cut short at the end of a run is one less in time than in count.
    let mut lengths: Vec<usize> = result.turns.iter().map(|turn| turn.until - turn.from).collect();
    lengths.sort_unstable();
    let usual = lengths[lengths.len() / 2] as f64;
    let whole: Vec<f64> =
        lengths.iter().map(|steps| *steps as f64).filter(|steps| *steps > CUT_BELOW * usual).collect();
    result.period_s = Some(whole.iter().sum::<f64>() * step_s / whole.len() as f64);
}

/// A turn shorter than this part of the usual one was cut (own choice).
const CUT_BELOW: f64 = 0.9;

/// Puts the stretches of a set together.
pub fn joined(parts: Vec<Pendulum>) -> Pendulum {
    let path = parts.iter().max_by_key(|part| part.turns.len()).and_then(|part| part.path);
    let mut all = Pendulum { path, ..Pendulum::default() };
    let mut weights = 0.0;
    let (mut diameter, mut roundness, mut seconds) = (0.0, 0.0, 0.0);
    for part in parts.into_iter().filter(|part| part.path == path) {
        let weight = part.turns.len() as f64;
        if let (Some(d), Some(r), Some(p)) = (part.diameter, part.roundness, part.period_s) {
            diameter += d * weight;
            roundness += r * weight;
            seconds += p * weight;
            weights += weight;
        }
        all.likeness = all.likeness.max(part.likeness);
        all.clockwise += part.clockwise;
        all.anticlockwise += part.anticlockwise;
        all.cycles += part.cycles;
        all.widest = all.widest.into_iter().chain(part.widest).reduce(f64::max);
        all.near_a_border |= part.near_a_border;
        all.turns.extend(part.turns);
    }
    if weights > 0.0 {
        all.diameter = Some(diameter / weights);
        all.roundness = Some(roundness / weights);
        all.period_s = Some(seconds / weights);
    }
    all
}
