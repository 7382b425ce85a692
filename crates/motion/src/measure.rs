//! A whole recording, measured.

use body::HangingArm;
use glam::{DQuat, DVec3};

use crate::events::{self, Event, Kind};
use crate::measurement::{Curve, DropOff, Effort, Measurement, Repeated, Tempo};
use crate::orientation::{Turns, offline_turns, up};
use crate::pendulum::{self, Ends, Path, Pendulum};
use crate::repetition::{Repetition, hold_s};
use crate::sample::{FASTEST_HZ, GAP_SPLITS_S, GAP_TOLD_S, Gap, Grid, Recording, SLOWEST_HZ};
use crate::set::{self, Counted};
use crate::setup::{Calm, Layout, Pose, Still, is_table_again, stillnesses, table};
use crate::signal;
use crate::smooth::{low_pass, median, slope};
use crate::smoothness::spectral_arc_length;
use crate::steps;
use crate::task::{Held, Task, Tells};
use crate::uncertainty;
use crate::verdict::WhyNot;

/// Measures a recording.
pub fn measure(recording: &Recording, task: &Task) -> Measurement {
    let mut why_not = of_the_rows(recording);
    if !why_not.is_empty() {
        return Measurement::unusable(why_not);
    }
    let Some(grid) = Grid::of(recording) else { return Measurement::unusable(vec![WhyNot::Gaps]) };
    let gaps = recording.gaps(GAP_TOLD_S.max(2.5 * grid.step_s));
    let seen = Seen::of(grid, gaps, task);
    why_not.extend(seen.of_the_whole());
    if !why_not.is_empty() {
        return Measurement::unusable(why_not);
    }
    let mut measured = if task.exercise.tells() == Tells::Circle { seen.pendulum(task) } else { seen.set(task) };
    if recording.left_out().backward > 0 {
        measured.uncertain = true;
    }
    if measured.is_usable() { measured } else { Measurement::unusable(measured.why_not) }
}

/// The shortest recording that is looked at, seconds (own choice).
const SHORTEST_S: f64 = 2.0;
/// Rows that may be no readings, and rows that may go back in time, as parts of all (own choices).
const MOST_BAD: f64 = 0.05;
const MOST_BACKWARD: f64 = 0.005;
/// What may be missing of a set (evidence notes, "Signal quality": 5 percent is poor; a tenth is refused here).
const MOST_MISSING: f64 = 0.1;

/// What is wrong before anything is measured.
fn of_the_rows(recording: &Recording) -> Vec<WhyNot> {
    let left_out = recording.left_out();
    let rows = recording.places().len().max(1) as f64;
    let mut why_not = Vec::new();
    if left_out.unbelievable as f64 > MOST_BAD * rows {
        why_not.push(WhyNot::BadRows);
    }
    if left_out.backward as f64 > MOST_BACKWARD * rows {
        why_not.push(WhyNot::TimeBackward);
    }
    let Some(step_s) = recording.step_s().filter(|_| recording.duration_s() >= SHORTEST_S) else {
        why_not.push(WhyNot::TooShort);
        return why_not;
    };
    if 1.0 / step_s < SLOWEST_HZ {
        why_not.push(WhyNot::TooSlow);
    }
    if 1.0 / step_s > FASTEST_HZ {
        why_not.push(WhyNot::TooFast);
    }
    why_not
}

/// A recording with its orientation and its layout.
struct Seen {
    grid: Grid,
    gaps: Vec<Gap>,
    turns: Turns,
    layout: Layout,
    sign_turned: bool,
}

/// Mean vertical specific force of anything that stays on earth is gravity, within this, m/s² (own choice).
const GRAVITY_WITHIN: f64 = 1.5;
const GRAVITY: f64 = 9.81;
/// Less turning than this in a whole set is no movement, degrees a second, root mean square (evidence notes, "Signal
/// quality": a variance of 0.2; a person who holds still is above).
const STILL_DEG_S: f64 = 1.0;
/// A vertical limb is within about this of vertical in its pose, a level one of level (own choice: strap, lean, and a
/// bed that is not flat).
const POSE_WITHIN_DEG: f64 = 40.0;

impl Seen {
    fn of(grid: Grid, gaps: Vec<Gap>, task: &Task) -> Self {
        let turns = offline_turns(&grid);
        let calm = match task.exercise.tells() {
            Tells::SmallTurn | Tells::SmallCircle => [Calm::Strict, Calm::Usual, Calm::Generous],
            _ => [Calm::Usual, Calm::Generous, Calm::Generous],
        };
        let stills = stillnesses(&grid, &turns.bias, calm[0]);
        let on_table = table(&grid, &stills);
        let whole = Layout::whole(grid.len());
        let mut seen = Self { grid, gaps, turns, layout: whole, sign_turned: false };
        if let Some((_, sign)) = on_table
            && sign < 0.0
        {
            seen.grid.force.iter_mut().for_each(|force| *force = -*force);
            seen.turns = offline_turns(&seen.grid);
            seen.sign_turned = true;
        }
        if let Some((lying, _)) = on_table {
            seen.layout = Layout { table: Some(lying), set: (lying.until, seen.grid.len()), ..whole };
        }
        // A limb that trembles or sways is looked for more generously, where not both poses are found to be still.
        let lying = on_table.map(|(still, _)| still);
        let mut posed = None;
        for calm in calm {
            let stills = stillnesses(&seen.grid, &seen.turns.bias, calm);
            let found = seen.posed(&stills, lying, task);
            if found.is_some_and(|layout| layout.again.is_some()) {
                posed = found;
                break;
            }
            posed = posed.or(found);
        }
        seen.layout = posed.unwrap_or(seen.layout);
        if seen.layout.pose.is_none()
            && on_table.is_none()
            && let Some(layout) = Layout::from_the_beginning(&seen.turns.turns, &seen.turns.bias, &seen.grid)
        {
            seen.layout = layout;
        }
        if task.exercise.tells() == Tells::Turn {
            let set = set::in_position(&seen.turns.turns, &seen.layout);
            if set != seen.layout.set {
                seen.layout = Layout { set, position_since: Some(set.0), ..seen.layout };
            }
        }
        seen
    }

    /// The layout with the first stillness after the table as the pose; `None` where that leaves no set. Without a
    /// table the pose is at the very beginning, or there is none; then a rest like the beginning serves to measure from.
    fn posed(&self, stills: &[Still], on_table: Option<Still>, task: &Task) -> Option<Layout> {
        let turns = &self.turns.turns;
        let worn: Vec<Still> = match on_table {
            Some(lying) => stills
                .iter()
                .filter(|still| still.from >= lying.until && !is_table_again(&self.grid, turns, **still, lying))
                .copied()
                .collect(),
            None => stills.to_vec(),
        };
        let first = *worn.first()?;
        let layout = Layout::with_pose(turns, &worn, on_table, first, &self.grid);
        let at_the_beginning = on_table.is_some() || first.from <= self.grid.steps(LATE_POSE_S);
        if at_the_beginning {
            let layout = if self.goes_on(&layout, task) { layout.to_the_end(self.grid.len()) } else { layout };
            return (self.quick_count(&layout, task) > 0).then_some(layout);
        }
        let begins = up(turns[0]);
        let is_rest =
            |still: &&Still| Pose::of(turns, **still).up.angle_between(begins).to_degrees() < LIKE_THE_BEGINNING_DEG;
        let rest = worn.iter().find(is_rest)?;
        Some(Layout::with_rest(turns, *rest, &self.grid))
    }

    /// Whether what follows the last rest is one more repetition like the others, and no handling.
    fn goes_on(&self, layout: &Layout, task: &Task) -> bool {
        // The pose is held for 3 s or more (contract); a shorter rest may be one between repetitions.
        let long = self.grid.steps(SURELY_A_POSE_S);
        let Some(again) = layout.again.filter(|again| again.still.until - again.still.from < long) else {
            return false;
        };
        let longer = layout.to_the_end(self.grid.len());
        let starts = again.still.until.saturating_sub(layout.set.0 + self.grid.steps(1.0));
        if task.exercise.tells() == Tells::Circle {
            let turns = self.look_at_pendulum(&longer, task).turns;
            return turns.iter().filter(|turn| turn.from >= again.still.until).count() > 2;
        }
        let (Some(short), Some(long)) = (self.counted(layout, task), self.counted(&longer, task)) else { return false };
        let band = [1.0 - MORE_OF_THE_SAME, 1.0 + MORE_OF_THE_SAME].map(|part| part * short.usual);
        let lengths: Vec<f64> = short.found.iter().map(|one| (one.until - one.from) as f64).collect();
        let usual_length = median(&lengths).unwrap_or(0.0);
        short.found.len() > 1
            && long.found.iter().any(|one| {
                let length = (one.until - one.from) as f64;
                one.from >= starts
                    && !one.cut
                    && (band[0]..band[1]).contains(&one.peak)
                    && (0.6 * usual_length..1.7 * usual_length).contains(&length)
            })
    }

    fn quick_count(&self, layout: &Layout, task: &Task) -> usize {
        if task.exercise.tells() == Tells::Circle {
            let found = self.look_at_pendulum(layout, task);
            return found.turns.len();
        }
        self.counted(layout, task).map_or(0, |counted| counted.found.len())
    }

    fn counted(&self, layout: &Layout, task: &Task) -> Option<Counted> {
        let Turns { turns, bias } = &self.turns;
        if task.exercise.tells() == Tells::SmallCircle {
            set::around(&self.grid, turns, layout)
        } else if layout.pose.is_some() {
            set::from_pose(&self.grid, turns, bias, layout, task)
        } else {
            set::from_what_repeats(&self.grid, turns, bias, layout.set, task)
        }
    }

    /// What is wrong with the recording as a whole.
    fn of_the_whole(&self) -> Vec<WhyNot> {
        let mut why_not = Vec::new();
        let (from, until) = self.layout.set;
        let count = (until - from).max(1) as f64;
        let upward = (from..until).map(|at| (self.turns.turns[at] * self.grid.force[at]).z).sum::<f64>() / count;
        if (upward - GRAVITY).abs() > GRAVITY_WITHIN {
            why_not.push(WhyNot::NoGravity);
        }
        let slow = low_pass(&self.rate(from, until), signal::MOVEMENT_HZ, self.grid.step_s);
        let power = slow.iter().map(|rate| rate.length_squared()).sum::<f64>() / count;
        if power.sqrt().to_degrees() < STILL_DEG_S || until <= from + 4 {
            why_not.push(WhyNot::NoMovement);
        }
        let [from_s, until_s] = [from, until].map(|at| self.grid.time(at));
        let missing: f64 = self.gaps.iter().map(|gap| (gap.to_s.min(until_s) - gap.from_s.max(from_s)).max(0.0)).sum();
        if missing > MOST_MISSING * (until_s - from_s).max(self.grid.step_s) {
            why_not.push(WhyNot::Gaps);
        }
        why_not
    }

    fn rate(&self, from: usize, until: usize) -> Vec<DVec3> {
        (from..until).map(|at| self.grid.rate[at] - self.turns.bias[at]).collect()
    }

    /// Whether the limb is held as the exercise's pose wants it.
    fn is_posed(&self, task: &Task) -> bool {
        let Some(pose) = self.layout.pose else { return true };
        let upright = pose.up.dot(task.axis.direction()).abs();
        match task.exercise.held() {
            Held::Upright => upright >= POSE_WITHIN_DEG.to_radians().cos(),
            Held::Level => upright <= POSE_WITHIN_DEG.to_radians().sin(),
            Held::Either => true,
        }
    }

    /// What every measurement says of the recording.
    fn frame(&self, task: &Task) -> Measurement {
        let (from, until) = self.layout.set;
        let [from_s, until_s] = [from, until.saturating_sub(1)].map(|at| self.grid.time(at));
        let mut events = events::gaps(&self.gaps, from_s, until_s);
        events.extend(events::too_fast(&self.grid, from, until));
        let slip_deg = self.layout.slip_deg();
        if let (Some(slip), Some(again)) = (slip_deg.filter(|slip| *slip > events::SLIPPED_DEG), self.layout.again) {
            events.push(Event { t_s: self.grid.time(again.still.from), kind: Kind::Slipped, value: slip });
        }
        Measurement {
            elevation_range_deg: self.inclination_range(task),
            slip_deg,
            sign_turned: self.sign_turned,
            has_table: self.layout.table.is_some(),
            has_pose: self.layout.pose.is_some(),
            set_s: Some((from_s, until_s)),
            events,
            why_not: if self.is_posed(task) { Vec::new() } else { vec![WhyNot::NotWorn] },
            ..Measurement::default()
        }
    }

    fn inclination_range(&self, task: &Task) -> Option<f64> {
        let (from, until) = self.layout.set;
        let axis = task.axis.direction();
        let angles: Vec<f64> = self.turns.turns[from..until]
            .iter()
            .map(|turn| up(*turn).dot(axis).clamp(-1.0, 1.0).asin().to_degrees())
            .collect();
        let angles = low_pass(&angles, signal::MOVEMENT_HZ, self.grid.step_s);
        let most = angles.iter().copied().reduce(f64::max)?;
        let least = angles.iter().copied().reduce(f64::min)?;
        Some(most - least)
    }

    /// Missing seconds inside the set, the longest at one place.
    fn longest_gap(&self) -> f64 {
        let (from, until) = self.layout.set;
        let [from_s, until_s] = [from, until].map(|at| self.grid.time(at));
        self.gaps.iter().filter(|gap| gap.touches(from_s, until_s)).map(|gap| gap.seconds()).fold(0.0, f64::max)
    }
}

/// Without a pose a movement has to come again this often, and be this like itself, to be a set (own choices: the open
/// wrist recordings of seven exercises are at 0.58 and more).
const FEWEST_WITHOUT_POSE: usize = 3;
const LIKE_ITSELF: f64 = 0.45;
/// A hanging arm goes around more evenly than that (own choice: the open recordings are at 0.74 and more).
const PATH_LIKE_ITSELF: f64 = 0.6;
const SURELY_A_POSE_S: f64 = 2.7;
/// Like the others is within this part of the usual peak (own choice).
const MORE_OF_THE_SAME: f64 = 0.25;
/// An arm does not swing this far in a stride (own choice).
const MORE_THAN_A_STRIDE_DEG: f64 = 100.0;
/// Without a table, a pose that begins later than this may be a rest within the set (own choice).
const LATE_POSE_S: f64 = 1.0;
/// A rest within this of how the recording begins is where the movement starts from (own choice).
const LIKE_THE_BEGINNING_DEG: f64 = 12.0;

impl Seen {
    /// Any exercise but the pendulum.
    fn set(&self, task: &Task) -> Measurement {
        let mut measured = self.frame(task);
        let turns = &self.turns.turns;
        let Some(counted) = self.counted(&self.layout, task).filter(|counted| !counted.found.is_empty()) else {
            measured.why_not.push(WhyNot::NothingRepeats);
            return measured;
        };
        measured.why_not.extend(self.against(&counted, measured.elevation_range_deg.unwrap_or(0.0), task));
        measured.repetitions = u32::try_from(counted.found.len()).ok();
        measured.uncertain = self.is_uncertain(&counted);
        let from = self.layout.set.0;
        let sigma = uncertainty::sigma_deg(task.exercise, task.worn, measured.slip_deg.unwrap_or(0.0));
        let tells_angle = counted.from_pose && task.exercise.tells_angle();
        measured.sigma_deg = tells_angle.then_some(sigma);
        measured.each = self.each(&counted, from, tells_angle);
        measured.tempo = tempo(&measured.each);
        measured.drop_off = measured.peaks_deg().as_deref().and_then(drop_off);
        if tells_angle {
            if let Some(limit) = task.limit_deg {
                measured.events.extend(events::limit(&self.grid, from, &counted.signal, limit, sigma));
            }
            if let (Some(signed), Some(pose)) = (&counted.signed, self.layout.pose) {
                let part = &turns[from..from + signed.len()];
                measured.events.extend(events::behind_back(&self.grid, from, signed, part, pose.up));
            }
        }
        measured.events.sort_by(|a, b| a.t_s.total_cmp(&b.t_s));
        measured.curve = Some(Curve {
            start_s: self.grid.time(from),
            step_s: self.grid.step_s,
            angle_deg: counted.signal,
            of: if counted.from_pose { "degrees from the pose" } else { "degrees, the mean of each period is zero" },
        });
        measured
    }

    /// What speaks against a set that was counted.
    fn against(&self, counted: &Counted, range_deg: f64, task: &Task) -> Option<WhyNot> {
        let set_up = self.layout.table.is_some();
        let whole = if set_up { None } else { self.whole_movement(task) };
        let periods = [Some(counted.period_s), whole.map(|(_, period_s)| period_s)];
        if range_deg < MORE_THAN_A_STRIDE_DEG && periods.into_iter().flatten().any(|period_s| self.walks(period_s)) {
            return Some(WhyNot::Walking);
        }
        if task.exercise.tells() != Tells::SmallCircle && is_irregular(&counted.found) {
            return Some(WhyNot::NothingRepeats);
        }
        let too_few = !set_up && counted.found.len() < FEWEST_WITHOUT_POSE;
        if too_few || whole.is_some_and(|(likeness, _)| likeness < LIKE_ITSELF) {
            return Some(WhyNot::NothingRepeats);
        }
        None
    }

    /// How well the whole movement repeats, and after how many seconds.
    fn whole_movement(&self, task: &Task) -> Option<(f64, f64)> {
        let Turns { turns, bias } = &self.turns;
        let whole = set::from_what_repeats(&self.grid, turns, bias, self.layout.set, task)?;
        Some((whole.likeness?, whole.period_s))
    }

    fn walks(&self, period_s: f64) -> bool {
        let (from, until) = self.layout.set;
        let ups: Vec<DVec3> = self.turns.turns[from..until].iter().map(|turn| up(*turn)).collect();
        period_s > 0.0
            && steps::are_taken(
                &self.grid.force[from..until],
                &ups,
                &self.rate(from, until),
                period_s,
                self.grid.step_s,
            )
    }

    fn is_uncertain(&self, counted: &Counted) -> bool {
        let count = counted.found.len() as f64;
        let usual = median(&counted.found.iter().map(|one| (one.until - one.from) as f64).collect::<Vec<f64>>());
        let usual_s = usual.unwrap_or(0.0) * self.grid.step_s;
        let others = counted.others;
        let alike =
            others.by_likeness.is_none_or(|other| (other - count - others.partial as f64).abs() <= 1.5 + 0.1 * count);
        let strokes = others.by_strokes.is_none_or(|other| (other as f64 - count).abs() <= 1.0 + others.partial as f64);
        // A gap this long can hide a repetition.
        let hidden = self.longest_gap() > GAP_SPLITS_S.max(0.4 * usual_s);
        !(alike && strokes) || hidden
    }

    fn each(&self, counted: &Counted, from: usize, tells_angle: bool) -> Vec<Repeated> {
        let speed: Vec<f64> = slope(&counted.signal, self.grid.step_s).iter().map(|speed| speed.abs()).collect();
        counted
            .found
            .iter()
            .map(|one| {
                let until = one.until.min(speed.len());
                let part = &speed[one.from..until];
                Repeated {
                    from_s: self.grid.time(from + one.from),
                    top_s: self.grid.time(from + one.top),
                    until_s: self.grid.time(from + until),
                    peak_deg: tells_angle.then_some(one.peak),
                    hold_s: tells_angle.then(|| hold_s(&counted.signal, one, self.grid.step_s)),
                    fastest_deg_s: part.iter().copied().fold(0.0, f64::max),
                    smoothness: spectral_arc_length(part, self.grid.step_s),
                }
            })
            .collect()
    }
}

/// Whether repetitions differ so much from each other that they are none (own choices).
fn is_irregular(found: &[Repetition]) -> bool {
    let spread = |of: &dyn Fn(&Repetition) -> f64| {
        let values: Vec<f64> = found.iter().map(of).collect();
        let middle = median(&values).unwrap_or(0.0);
        let off: Vec<f64> = values.iter().map(|value| (value - middle).abs()).collect();
        median(&off).unwrap_or(0.0) / middle.abs().max(f64::MIN_POSITIVE)
    };
    let lengths = spread(&|one| (one.until - one.from) as f64);
    found.len() >= FEWEST_TO_COMPARE
        && (lengths > MOST_SPREAD_OF_LENGTH || spread(&|one| one.peak) > MOST_SPREAD_OF_PEAK)
}

const FEWEST_TO_COMPARE: usize = 3;
const MOST_SPREAD_OF_LENGTH: f64 = 0.35;
const MOST_SPREAD_OF_PEAK: f64 = 0.3;

fn tempo(each: &[Repeated]) -> Option<Tempo> {
    let count = each.len() as f64;
    if each.is_empty() {
        return None;
    }
    let mean = |of: fn(&Repeated) -> f64| each.iter().map(of).sum::<f64>() / count;
    Some(Tempo { out_s: mean(|one| one.top_s - one.from_s), back_s: mean(|one| one.until_s - one.top_s) })
}

/// Theil and Sen's slope, and the last three over the first three; of six peaks or more.
fn drop_off(peaks: &[f64]) -> Option<DropOff> {
    if peaks.len() < 6 {
        return None;
    }
    let mut slopes = Vec::new();
    for (later, peak) in peaks.iter().enumerate() {
        for (earlier, before) in peaks[..later].iter().enumerate() {
            slopes.push((peak - before) / (later - earlier) as f64);
        }
    }
    let mean = |three: &[f64]| three.iter().sum::<f64>() / three.len() as f64;
    let first = mean(&peaks[..3]);
    Some(DropOff { slope_deg: median(&slopes)?, last_over_first: mean(&peaks[peaks.len() - 3..]) / first })
}

/// From the shoulder to the middle of the hand, where nobody measured it, meters (evidence notes, "Per exercise": 0.386
/// of stature, here of 1.70 m). Said with every diameter that rests on it.
const ASSUMED_ARM_M: f64 = 0.656;
/// And how far off that may be, as a part.
const ASSUMED_ARM_PART: f64 = 0.1;
/// This much of the poses is looked at with a pendulum (own choice).
const HANGING_S: f64 = 2.5;
/// A pendulum hangs: its mean direction is within this of the pose (own choice).
const HANGS_WITHIN_DEG: f64 = 40.0;

impl Seen {
    /// The limb's upward direction in the phone's axes: as it hung in the pose, or on the mean.
    fn limb(&self, layout: &Layout) -> DVec3 {
        layout.pose.map_or_else(
            || {
                let (from, until) = layout.set;
                self.turns.turns[from..until].iter().map(|turn| up(*turn)).sum::<DVec3>().normalize_or(DVec3::Y)
            },
            |pose| pose.up,
        )
    }

    fn look_at_pendulum(&self, layout: &Layout, task: &Task) -> Pendulum {
        let length = task.arm_length_m.unwrap_or(ASSUMED_ARM_M);
        let limb = self.limb(layout);
        // A path needs a while on both sides for its center; the arm hangs there in the poses.
        let margin = self.grid.steps(HANGING_S);
        let from = layout.pose.map_or(layout.set.0, |pose| pose.still.from.max(layout.set.0.saturating_sub(margin)));
        let until = layout.again.map_or(layout.set.1, |again| again.still.until.min(layout.set.1 + margin));
        let ends_as = if layout.pose.is_some() { Ends::Hanging } else { Ends::Cut };
        let parts = self.grid.stretches.iter().filter_map(|(begins, ends)| {
            let [begins, ends] = [(*begins).max(from), (*ends).min(until)];
            (begins + self.grid.steps(1.0) < ends).then(|| {
                let turns: &[DQuat] = &self.turns.turns[begins..ends];
                pendulum::measure(&self.grid, turns, limb, begins, pendulum::SMALLEST_CIRCLE_M / length, ends_as)
            })
        });
        pendulum::joined(parts.collect())
    }

    fn pendulum(&self, task: &Task) -> Measurement {
        let mut measured = self.frame(task);
        let found = self.look_at_pendulum(&self.layout, task);
        let Some(path) = found.path.filter(|_| !found.turns.is_empty()) else {
            measured.why_not.push(WhyNot::NothingRepeats);
            return measured;
        };
        let (from, until) = self.layout.set;
        let limb = self.limb(&self.layout);
        let mean = self.turns.turns[from..until].iter().map(|turn| up(*turn)).sum::<DVec3>();
        if mean.angle_between(limb).to_degrees() > HANGS_WITHIN_DEG {
            measured.why_not.push(WhyNot::WrongExercise);
        }
        let set_up = self.layout.table.is_some();
        if !set_up && (found.likeness < PATH_LIKE_ITSELF || found.turns.len() < FEWEST_WITHOUT_POSE) {
            measured.why_not.push(WhyNot::NothingRepeats);
        }
        if found.period_s.is_some_and(|period| self.walks(period)) {
            measured.why_not.push(WhyNot::Walking);
        }
        let length = task.arm_length_m.unwrap_or(ASSUMED_ARM_M);
        let part = if task.arm_length_m.is_some() { uncertainty::LENGTH_PART } else { ASSUMED_ARM_PART };
        measured.path = Some(path);
        match path {
            Path::Circle => {
                measured.by_direction = Some((found.clockwise, found.anticlockwise));
                measured.repetitions = Some(found.clockwise + found.anticlockwise);
                measured.events.extend(events::wide_circles(&self.grid, &found, length));
            }
            Path::Swing => measured.repetitions = Some(found.cycles),
        }
        measured.circle_diameter_cm = found.diameter.map(|diameter| diameter * length * 100.0);
        measured.circle_diameter_sigma_cm = measured.circle_diameter_cm.map(|diameter| diameter * part);
        measured.assumed_arm_length_cm = task.arm_length_m.is_none().then_some(ASSUMED_ARM_M * 100.0);
        measured.period_s = found.period_s;
        measured.uncertain = found.near_a_border || self.longest_gap() >= LOST_S;
        measured.effort = self.effort(limb, task.arm);
        measured.events.sort_by(|a, b| a.t_s.total_cmp(&b.t_s));
        let path = pendulum::path(&self.turns.turns[from..until], limb);
        measured.curve = Some(Curve {
            start_s: self.grid.time(from),
            step_s: self.grid.step_s,
            angle_deg: path.iter().map(|place| place.length().min(1.0).asin().to_degrees()).collect(),
            of: "degrees from where the arm hung",
        });
        measured
    }

    fn effort(&self, limb: DVec3, arm: Option<HangingArm>) -> Option<Effort> {
        let (from, until) = self.layout.set;
        let across: Vec<DVec3> =
            self.grid.force[from..until].iter().map(|force| *force - limb * force.dot(limb)).collect();
        let across = low_pass(&across, signal::MOVEMENT_HZ, self.grid.step_s);
        let power = across.iter().map(|v| v.length_squared()).sum::<f64>() / across.len().max(1) as f64;
        let across_m_s2 = power.sqrt();
        let moment_nm = arm.map(|arm| arm.inertia_kg_m2() / arm.center_of_oscillation_m() * across_m_s2);
        Some(Effort { across_m_s2, moment_nm })
    }
}

/// This much missing during a pendulum can hide a turn or a change of direction (contract).
const LOST_S: f64 = 0.3;
