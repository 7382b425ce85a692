//! The other harm: how long a plan leaves shoulder, sling and elbow still.

use body::{Joint, Key, Mode, Movement};
use evidence::ids;
use plan::words::of_days as days;
use plan::{Allowed, Bound, Cell, Plan, Wear};

use super::fault::{Fault, Harm};

/// The longest run of days of each kind, with the day it starts on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Stillness {
    /// Without a passive movement of the shoulder that leaves a useful arc.
    pub without_passive: Run,
    /// In the sling, weaning counted.
    pub in_sling: Run,
    /// Without active motion of the elbow.
    pub without_elbow: Run,
}

/// A run of days.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Run {
    /// The first day.
    pub from: u16,
    /// How many days.
    pub days: u16,
}

impl Stillness {
    /// The longest runs of days, each day judged by itself.
    ///
    /// # Units and shape
    /// `value` gives the limit of a key on a day, `wear` the sling; both from day 0
    /// to the horizon, which is not included.
    pub fn of_days(keys: &[Key], horizon: u16, value: impl Fn(Key, u16) -> Cell, wear: impl Fn(u16) -> Wear) -> Self {
        let passive: Vec<Key> = keys.iter().copied().filter(|key| is_passive_shoulder(*key)).collect();
        let runs = (0..horizon).map(|day| (day, 1));
        let still = |day: u16| !passive.iter().any(|key| leaves_an_arc(*key, value(*key, day)));
        Self {
            without_passive: longest(runs.clone().map(|(day, count)| (day, count, still(day)))),
            in_sling: longest(runs.clone().map(|(day, count)| (day, count, wear(day) != Wear::None))),
            without_elbow: longest(runs.map(|(day, count)| (day, count, !value(ELBOW, day).is_open()))),
        }
    }

    /// What exceeds the caps; what a safe arc of the record holds still is a question to the surgeon and no fault.
    pub fn beyond_caps_under(&self, safe_arcs: bool) -> Vec<Fault> {
        let mut faults = self.beyond_caps();
        // Arcs bind the shoulder alone: the sling and the elbow keep their caps.
        faults.retain(|fault| !safe_arcs || fault.kind != WITHOUT_PASSIVE);
        faults
    }

    /// What exceeds the caps.
    ///
    /// # Source
    /// `cap-without-passive-motion`, `cap-in-sling`, `cap-without-elbow-motion`: own choice.
    pub fn beyond_caps(&self) -> Vec<Fault> {
        let caps = [
            (
                self.without_passive,
                ids::CAP_WITHOUT_PASSIVE_MOTION,
                WITHOUT_PASSIVE,
                "no passive motion of the shoulder that is of use",
            ),
            (self.in_sling, ids::CAP_IN_SLING, "too-long-in-the-sling", "the sling, weaning counted"),
            (
                self.without_elbow,
                ids::CAP_WITHOUT_ELBOW_MOTION,
                "too-long-without-elbow-motion",
                "no active motion of the elbow",
            ),
        ];
        let beyond = caps.into_iter().filter(|(run, cap, ..)| run.days > cap.days().count());
        beyond
            .map(|(run, cap, kind, what)| {
                let (until, cap_days) = (run.from + run.days, cap.days().count());
                Fault {
                    harm: Harm::Stiffness,
                    kind,
                    key: None,
                    from_day: run.from,
                    until_day: until,
                    message: format!(
                        "{what}, {}: {} days in a row, {} more than the cap of {cap_days}",
                        days(run.from, until),
                        run.days,
                        run.days - cap_days
                    ),
                    rule: cap.id.into(),
                }
            })
            .collect()
    }
}

const WITHOUT_PASSIVE: &str = "too-long-without-passive-motion";

const ELBOW: Key = Key::any(Joint::Elbow, Movement::Flexion, Mode::Active);

/// The longest runs of a composed plan.
pub fn still_days(plan: &Plan) -> Stillness {
    let grid = &plan.grid;
    let columns =
        || (0..grid.columns()).map(|column| (column, grid.days[column], grid.days[column + 1] - grid.days[column]));
    let mut moves = vec![false; grid.columns()];
    let mut elbow = None;
    for (lane, key) in (0_u8..).map(plan::LaneId).zip(&grid.keys) {
        if is_passive_shoulder(*key) {
            let cells = moves.iter_mut().zip(plan.lane(lane));
            cells.for_each(|(moves, cell)| *moves |= leaves_an_arc(*key, *cell));
        } else if *key == ELBOW {
            elbow = Some(plan.lane(lane));
        }
    }
    Stillness {
        without_passive: longest(columns().map(|(column, day, count)| (day, count, !moves[column]))),
        in_sling: longest(columns().map(|(column, day, count)| (day, count, plan.wear[column] != Wear::None))),
        without_elbow: longest(
            columns().map(|(column, day, count)| (day, count, elbow.is_none_or(|elbow| !elbow[column].is_open()))),
        ),
    }
}

fn is_passive_shoulder(key: Key) -> bool {
    key.joint == Joint::Shoulder && key.mode == Mode::Passive
}

/// Whether a limit leaves the least useful arc.
///
/// # Source
/// `least-useful-arc`: own choice.
fn leaves_an_arc(key: Key, cell: Cell) -> bool {
    match cell.allowed(key) {
        Allowed::No => false,
        Allowed::Free => true,
        Allowed::UpTo(Bound::Angle(angle)) => angle >= ids::LEAST_USEFUL_ARC.degrees(),
        Allowed::UpTo(_) => false,
    }
}

/// The longest run of still days; each item is a first day, a count of days, and whether they are still.
fn longest(columns: impl Iterator<Item = (u16, u16, bool)>) -> Run {
    let (mut run, mut longest) = (Run::default(), Run::default());
    for (day, count, still) in columns {
        if !still {
            run = Run::default();
            continue;
        }
        run = Run { from: if run.days == 0 { day } else { run.from }, days: run.days + count };
        if run.days > longest.days {
            longest = run;
        }
    }
    longest
}
