//! One set: its signal and its repetitions.

use glam::{DQuat, DVec3};

use crate::orientation::up;
use crate::pendulum;
use crate::principal::Principal;
use crate::repetition::{self, Repetition};
use crate::sample::Grid;
use crate::setup::{Layout, Pose};
use crate::signal;
use crate::smooth::{low_pass, median, moving_mean_to_the_ends, period};
use crate::task::{Task, Tells};

/// What the set's own signal says.
#[derive(Debug, Clone, Default)]
pub struct Counted {
    /// Degrees, from the beginning of the set.
    pub signal: Vec<f64>,
    /// Whether zero is the pose.
    pub from_pose: bool,
    /// Repetitions; steps from the beginning of the set.
    pub found: Vec<Repetition>,
    /// The median peak.
    pub usual: f64,
    /// What other counts say.
    pub others: Others,
    /// How well the movement repeats, where that was looked at.
    pub likeness: Option<f64>,
    /// How long a repetition lasts, seconds, from the beginning of one to the next.
    pub period_s: f64,
    /// The signed tilt, where the signal itself has no sign.
    pub signed: Option<Vec<f64>>,
}

/// Counts that do not use the thresholds.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Others {
    /// By what repeats.
    pub by_likeness: Option<f64>,
    /// By strokes outward.
    pub by_strokes: Option<usize>,
    /// Smaller movements that were not counted.
    pub partial: usize,
}

/// The smallest movement that is a repetition, degrees (evidence notes, "Rep counter": 10 degrees).
const LEAST_DEG: f64 = 10.0;
/// The same of the shoulder blade, whose movements turn a phone by a few degrees (own choice).
const LEAST_SMALL_DEG: f64 = 1.2;
/// Poses that differ by more than this are followed as a slip (own choice: what a person can't repeat is less).
const FOLLOWED_SLIP_DEG: f64 = 4.0;
/// Nearer to rest than this is rest, when a slip is looked for (own choice).
const NEAR_REST_DEG: f64 = 6.0;

/// Reads a set with a pose.
pub fn from_pose(grid: &Grid, turns: &[DQuat], bias: &[DVec3], layout: &Layout, task: &Task) -> Option<Counted> {
    let pose = layout.pose?;
    let (from, until) = layout.set;
    if until <= from + 4 {
        return None;
    }
    if task.exercise.tells() == Tells::SmallCircle {
        return around(grid, turns, layout);
    }
    let layout = &if task.exercise.tells() == Tells::SmallTurn { layout.with_poses(grid) } else { *layout };
    let (from, until) = layout.set;
    let pose = if layout.position_since.is_some() { Pose { turn: turns[from], ..pose } } else { pose };
    let part = &turns[from..until];
    let rate: Vec<DVec3> = (from..until).map(|at| grid.rate[at] - bias[at]).collect();
    let axis = signal::turning_axis(&rate, grid.step_s)?;
    let level = (axis - pose.up * axis.dot(pose.up)).normalize_or(axis);
    let slip = layout.slip_deg().filter(|slip| *slip > FOLLOWED_SLIP_DEG);
    let again = layout.again.filter(|_| slip.is_some());
    let mut signed = None;
    let mut raw = match task.exercise.tells() {
        Tells::Cone => {
            let mut tilt = signal::plane(part, pose.up, level);
            signal::outward_positive(&mut tilt);
            signed = Some(tilt);
            let first = signal::cone(part, pose.up);
            match again {
                Some(again) => switched(first, &signal::cone(part, again.up)),
                None => first,
            }
        }
        Tells::Plane => {
            let first = signal::plane(part, pose.up, level);
            match again {
                Some(again) => switched(first, &signal::plane(part, again.up, level)),
                None => first,
            }
        }
        Tells::Raised => {
            let raise = |pose: &Pose| raised(part, pose, level, task, grid.step_s);
            match again {
                Some(again) => switched(raise(&pose), &raise(&again)),
                None => raise(&pose),
            }
        }
        Tells::Turn | Tells::SmallTurn | Tells::SmallCircle | Tells::Circle => signal::turn(part, pose.turn, axis),
    };
    signal::outward_positive(&mut raw);
    let mut smooth = low_pass(&raw, signal::MOVEMENT_HZ, grid.step_s);
    let least = least(task);
    let (mut found, mut usual) = repetition::find(&smooth, grid.step_s, least);
    if matches!(task.exercise.tells(), Tells::Turn | Tells::SmallTurn) {
        for _ in 0..2 {
            back_to_start(&mut smooth, &found);
            (found, usual) = repetition::find(&smooth, grid.step_s, least);
        }
    }
    if layout.pose.is_some_and(|pose| pose.still.from > from) {
        // The set begins with the recording: what it begins inside of was not seen.
        found.retain(|one| !(one.cut && one.from == 0));
    }
    let others = Others {
        by_likeness: repetition::by_likeness(&smooth, grid.step_s, &found),
        by_strokes: Some(repetition::by_strokes(&smooth, usual)),
        partial: repetition::partial(&smooth, grid.step_s, usual),
    };
    let found_tops: Vec<usize> = found.iter().map(|one| one.top).collect();
    Some(Counted {
        signal: smooth,
        from_pose: true,
        found,
        usual,
        others,
        likeness: None,
        period_s: spacing_s(&found_tops, grid.step_s),
        signed,
    })
}

/// The usual time between two tops.
fn spacing_s(tops: &[usize], step_s: f64) -> f64 {
    let spaces: Vec<f64> = tops.windows(2).map(|pair| (pair[1] - pair[0]) as f64 * step_s).collect();
    median(&spaces).unwrap_or(0.0)
}

/// A limb that is raised from lying: its rests by the tilt about one axis, then how far it is from where it lay.
fn raised(part: &[DQuat], pose: &Pose, level: DVec3, task: &Task, step_s: f64) -> Vec<f64> {
    let mut tilt = signal::plane(part, pose.up, level);
    signal::outward_positive(&mut tilt);
    let tilt = low_pass(&tilt, signal::MOVEMENT_HZ, step_s);
    let (found, _) = repetition::find(&tilt, step_s, least(task));
    let line = signal::limb_line(part, task.axis.direction());
    let rests = rests(&tilt, &found);
    signal::raised(part, pose.up, line, &rests)
}

/// The lowest place before the first, between each two, and after the last of some repetitions.
fn rests(signal: &[f64], found: &[Repetition]) -> Vec<usize> {
    let (Some(first), Some(last)) = (found.first(), found.last()) else { return vec![0] };
    let lowest = |from: usize, until: usize| {
        (from..until.max(from + 1)).min_by(|a, b| signal[*a].total_cmp(&signal[*b])).unwrap_or(from)
    };
    let mut rests = vec![lowest(0, first.top)];
    rests.extend(found.windows(2).map(|pair| lowest(pair[0].top, pair[1].top)));
    rests.push(lowest(last.top, signal.len()));
    rests
}

fn least(task: &Task) -> f64 {
    match task.exercise.tells() {
        Tells::SmallTurn | Tells::SmallCircle => LEAST_SMALL_DEG,
        _ => LEAST_DEG,
    }
}

/// Takes away what an integral drifts by: between two repetitions the limb is back where it started.
fn back_to_start(signal: &mut [f64], found: &[Repetition]) {
    if found.is_empty() {
        return;
    }
    let knots = rests(signal, found);
    let levels: Vec<f64> = knots.iter().map(|at| signal[*at]).collect();
    // One return that overshoots is no drift: the middle of three.
    let level = |at: usize| {
        let three = &levels[at.saturating_sub(1)..(at + 2).min(levels.len())];
        median(three).unwrap_or(0.0)
    };
    let smoothed: Vec<f64> = (0..levels.len()).map(level).collect();
    let mut next = 0;
    for (at, value) in signal.iter_mut().enumerate() {
        while next < knots.len() && knots[next] < at {
            next += 1;
        }
        let base = match (next.checked_sub(1), smoothed.get(next)) {
            (None, Some(after)) => *after,
            (Some(before), None) => smoothed[before],
            (Some(before), Some(after)) => {
                let share = (at - knots[before]) as f64 / (knots[next] - knots[before]).max(1) as f64;
                smoothed[before] + (after - smoothed[before]) * share
            }
            (None, None) => 0.0,
        };
        *value -= base;
    }
}

/// The part of a set in which a limb that was brought into position first stays there.
///
/// # Method
/// Turns of a bent forearm about a vertical axis leave up where it is. Where up is far from the pose for most of the
/// set, the limb was brought there after the pose, and what counts is the time it stays.
pub fn in_position(turns: &[DQuat], layout: &Layout) -> (usize, usize) {
    let (from, until) = layout.set;
    let Some(pose) = layout.pose.filter(|_| until > from + 4) else { return layout.set };
    let ups: Vec<DVec3> = turns[from..until].iter().map(|turn| up(*turn)).collect();
    let away: Vec<f64> = ups.iter().map(|now| now.angle_between(pose.up).to_degrees()).collect();
    if median(&away).unwrap_or(0.0) < BROUGHT_DEG {
        return layout.set;
    }
    let part = |of: fn(DVec3) -> f64| median(&ups.iter().map(|now| of(*now)).collect::<Vec<f64>>()).unwrap_or(0.0);
    let usual = DVec3::new(part(|v| v.x), part(|v| v.y), part(|v| v.z)).normalize_or(pose.up);
    let stays = |now: &DVec3| now.angle_between(usual).to_degrees() < STAYS_DEG;
    match (ups.iter().position(stays), ups.iter().rposition(stays)) {
        (Some(first), Some(last)) if last > first + 4 => (from + first, from + last),
        _ => layout.set,
    }
}

/// A limb this far from its pose was brought somewhere else (own choice: half of a right angle).
const BROUGHT_DEG: f64 = 45.0;
/// And within this of the usual it stays there (own choice).
const STAYS_DEG: f64 = 20.0;

/// Shoulders that go around: each way around is one.
///
/// # Method
/// The limb's direction goes around a center with the blade; the center is where the path is on the mean while it moves.
/// Turns are counted as for a pendulum, in runs of one direction.
pub fn around(grid: &Grid, turns: &[DQuat], layout: &Layout) -> Option<Counted> {
    let (from, until) = layout.set;
    if until <= from + 4 {
        return None;
    }
    let part = &turns[from..until];
    let limb = layout
        .pose
        .map_or_else(|| part.iter().map(|turn| up(*turn)).sum::<DVec3>().normalize_or(DVec3::Y), |pose| pose.up);
    let found = pendulum::around(grid, part, limb);
    let signal: Vec<f64> =
        pendulum::path(part, limb).iter().map(|place| place.length().min(1.0).asin().to_degrees()).collect();
    let signal = low_pass(&signal, signal::MOVEMENT_HZ, grid.step_s);
    let found: Vec<Repetition> = found
        .into_iter()
        .map(|(a, b)| {
            let top = (a..b.max(a + 1)).max_by(|x, y| signal[*x].total_cmp(&signal[*y])).unwrap_or(a);
            Repetition { from: a, top, until: b, peak: signal[top], cut: false }
        })
        .collect();
    let tops: Vec<usize> = found.iter().map(|one| one.until).collect();
    let period_s = spacing_s(&tops, grid.step_s);
    let usual = median(&found.iter().map(|one| one.peak).collect::<Vec<f64>>()).unwrap_or(0.0);
    Some(Counted { signal, from_pose: layout.pose.is_some(), found, usual, period_s, ..Counted::default() })
}

/// One signal up to the moment of a slip, the other after it: the moment for which rest is nearest to zero.
fn switched(mut before: Vec<f64>, after: &[f64]) -> Vec<f64> {
    let cost = |value: f64| value.abs().min(NEAR_REST_DEG);
    let mut sum: f64 = after.iter().map(|value| cost(*value)).sum();
    let (mut best, mut at) = (sum, 0);
    for (place, (first, second)) in before.iter().zip(after).enumerate() {
        sum += cost(*first) - cost(*second);
        if sum < best {
            (best, at) = (sum, place + 1);
        }
    }
    before[at..].copy_from_slice(&after[at..]);
    before
}

/// Reads a set of which no pose is known: how often the whole movement comes again.
///
/// # Method
/// The period at which angular rate and specific force repeat together; the angular rate low-passed above it, its
/// principal direction, integrated and freed of drift; half-way passes of that.
pub fn from_what_repeats(
    grid: &Grid,
    turns: &[DQuat],
    bias: &[DVec3],
    set: (usize, usize),
    task: &Task,
) -> Option<Counted> {
    let (from, until) = set;
    let rate: Vec<DVec3> = (from..until).map(|at| grid.rate[at] - bias[at]).collect();
    // Up turns with the limb; what is left of the force is how the limb is moved.
    let moved: Vec<DVec3> = (from..until).map(|at| grid.force[at] - up(turns[at]) * GRAVITY).collect();
    let slow = |values: &[DVec3]| -> Vec<DVec3> { low_pass(values, signal::MOVEMENT_HZ, grid.step_s) };
    let mut channels = Vec::new();
    let ups: Vec<DVec3> = (from..until).map(|at| up(turns[at])).collect();
    for values in [slow(&rate), slow(&moved), ups] {
        let mean = values.iter().sum::<DVec3>() / values.len() as f64;
        let power = values.iter().map(|v| (*v - mean).length_squared()).sum::<f64>() / values.len() as f64;
        let scale = 1.0 / power.sqrt().max(1e-9);
        for axis in DVec3::AXES {
            channels.push(values.iter().map(|v| (*v - mean).dot(axis) * scale).collect::<Vec<f64>>());
        }
    }
    let (length, likeness) = period(&channels, grid.steps(SHORTEST_S), grid.steps(LONGEST_S))?;
    let seconds = length * grid.step_s;
    let slower = low_pass(&rate, (ABOVE_THE_PERIOD / seconds).min(signal::MOVEMENT_HZ), grid.step_s);
    let axis = Principal::of(slower.iter().copied())?.axes[0];
    let mut sum = 0.0;
    let integral: Vec<f64> = slower
        .iter()
        .map(|rate| {
            sum += rate.dot(axis).to_degrees() * grid.step_s;
            sum
        })
        .collect();
    let half = (length / 2.0).round().max(1.0) as usize;
    let drift = moving_mean_to_the_ends(&integral, half);
    let signal: Vec<f64> = integral.iter().zip(&drift).map(|(value, drift)| value - drift).collect();
    let found = half_way_passes(&signal, least(task));
    let usual = median(&found.iter().map(|one| one.peak).collect::<Vec<f64>>()).unwrap_or(0.0);
    let count = found.len();
    let others = Others { by_likeness: Some((until - from) as f64 / length), by_strokes: None, partial: 0 };
    let enough = count > 0;
    Some(Counted {
        signal,
        from_pose: false,
        found: if enough { found } else { Vec::new() },
        usual,
        others,
        likeness: Some(likeness),
        period_s: seconds,
        signed: None,
    })
}

const GRAVITY: f64 = 9.81;
/// Periods that are looked for (evidence notes, "Rep counter").
const SHORTEST_S: f64 = 0.7;
const LONGEST_S: f64 = 12.0;
/// What is faster than this many times the period is no part of the movement as a whole (own choice).
const ABOVE_THE_PERIOD: f64 = 1.8;

/// Tops and dips of a signal about zero, each at least half as high as usual; of tops and dips the more numerous: a
/// recording that begins and ends in a movement cuts one of them.
fn half_way_passes(signal: &[f64], least: f64) -> Vec<Repetition> {
    let tops = tops(signal, least);
    let negated: Vec<f64> = signal.iter().map(|value| -value).collect();
    let dips = self::tops(&negated, least);
    let mut found = if dips.len() > tops.len() { dips } else { tops };
    // As many tops as dips, and both ends in a stroke: half a repetition at each end is one more.
    let equal = found.len() > 1 && self::tops(signal, least).len() == self::tops(&negated, least).len();
    if let Some(last) = found.last().copied().filter(|_| equal && half_at_both_ends(signal)) {
        found.push(Repetition {
            from: last.until,
            top: signal.len() - 1,
            until: signal.len(),
            peak: last.peak,
            cut: true,
        });
    }
    found
}

/// Whether a signal begins and ends about half-way, so that both ends hold half a repetition.
fn half_at_both_ends(signal: &[f64]) -> bool {
    let [low, high] = [0.05, 0.95].map(|part| crate::smooth::quantile(signal, part).unwrap_or(0.0));
    let inner = |value: f64| value > low + 0.2 * (high - low) && value < high - 0.2 * (high - low);
    match (signal.first(), signal.last()) {
        (Some(first), Some(last)) => inner(*first) && inner(*last),
        _ => false,
    }
}

fn tops(signal: &[f64], least: f64) -> Vec<Repetition> {
    let high = crate::smooth::quantile(signal, 0.95).unwrap_or(0.0);
    let low = crate::smooth::quantile(signal, 0.05).unwrap_or(0.0);
    if high - low < least {
        return Vec::new();
    }
    let gate = SWING_GATE * (high - low);
    let mut found = Vec::new();
    // Up by the gate from the lowest, then down by it from the highest.
    let (mut lowest, mut from) = (f64::INFINITY, 0);
    let (mut highest, mut top) = (f64::NEG_INFINITY, 0);
    let mut rising = false;
    for (at, value) in signal.iter().enumerate() {
        if rising {
            if *value > highest {
                (highest, top) = (*value, at);
            } else if *value < highest - gate {
                found.push(Repetition { from, top, until: at, peak: highest - low, cut: false });
                rising = false;
                (lowest, from) = (*value, at);
            }
        } else if *value < lowest {
            (lowest, from) = (*value, at);
        } else if *value > lowest + gate {
            rising = true;
            (highest, top) = (*value, at);
        }
    }
    if rising && signal.len() - top > 1 && found.last().is_some_and(|last| highest > last.peak + low - gate) {
        found.push(Repetition { from, top, until: signal.len(), peak: highest - low, cut: true });
    }
    found
}

/// A way of this part of the usual range is a stroke (own choice).
const SWING_GATE: f64 = 0.4;
