//! The other harm: how long the plan leaves the shoulder, the sling and the elbow still, and what adds to it.
//!
//! The checker counts the same runs by code of its own, so that a fault of one of the two does not hide in both.

use body::{Joint, Key, Mode, Movement};
use evidence::ids;
use operative::{Facts, SafeArcs};
use plan::{Allowed, Bound, Cell, LaneId, Plan, Wear};
use protocol::{Requested, resolve};
use quantity::Days;

use crate::dated::Dated;
use crate::settings::Settings;

/// The longest runs of a plan that only immobilizes, in days.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Runs {
    /// Without a passive movement of the shoulder that leaves a useful arc.
    pub without_passive: u16,
    /// In the sling, weaning counted.
    pub in_sling: u16,
    /// Without active motion of the elbow.
    pub without_elbow: u16,
}

/// What is counted, with its cap and its words.
///
/// # Source
/// `cap-without-passive-motion`, `cap-in-sling`, `cap-without-elbow-motion`: own choice.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Count {
    WithoutPassive,
    InSling,
    WithoutElbow,
}

impl Count {
    pub(crate) const ALL: [Self; 3] = // not medical: three counts
        [Self::WithoutPassive, Self::InSling, Self::WithoutElbow];

    pub(crate) fn of(self, runs: Runs) -> u16 {
        match self {
            Self::WithoutPassive => runs.without_passive,
            Self::InSling => runs.in_sling,
            Self::WithoutElbow => runs.without_elbow,
        }
    }

    fn cap(self) -> Days {
        match self {
            Self::WithoutPassive => ids::CAP_WITHOUT_PASSIVE_MOTION.days(),
            Self::InSling => ids::CAP_IN_SLING.days(),
            Self::WithoutElbow => ids::CAP_WITHOUT_ELBOW_MOTION.days(),
        }
    }

    /// "70 days in a row with the sling, weaning counted, over the cap of 56".
    pub(crate) fn in_words(self, run: u16) -> String {
        let what = match self {
            Self::WithoutPassive => "without passive motion of the shoulder",
            Self::InSling => "with the sling, weaning counted",
            Self::WithoutElbow => "without active motion of the elbow",
        };
        let against = if self.is_over(run) { "over" } else { "within" };
        format!("{run} days in a row {what}, {against} the cap of {}", self.cap().count())
    }

    pub(crate) fn is_over(self, run: u16) -> bool {
        run > self.cap().count()
    }
}

impl Runs {
    /// The runs of a dated plan.
    ///
    /// # Source
    /// `least-useful-arc`: own choice.
    pub(crate) fn of(dated: &Dated<'_>) -> Self {
        Self::counted(&dated.plan, |lane, day| dated.cell(lane, day), |day| dated.wear(day))
    }

    /// The runs of a plan whose every day lives itself: nothing held, gone back or loosened.
    fn unmoved(plan: &Plan) -> Self {
        let column = |day: u16| plan.grid.column(day);
        Self::counted(plan, |lane, day| plan.cell(lane, column(day)), |day| plan.wear[column(day)])
    }

    fn counted(plan: &Plan, cell: impl Fn(LaneId, u16) -> Cell, wear: impl Fn(u16) -> Wear) -> Self {
        let lanes = StillLanes::of(plan);
        let days = 0..plan.grid.days.last().copied().unwrap_or(0);
        Self {
            without_passive: longest(days.clone().map(|day| lanes.passive_still(|lane| cell(lane, day)))),
            in_sling: longest(days.clone().map(|day| wear(day) != Wear::None)),
            without_elbow: longest(days.map(|day| lanes.elbow_still(|lane| cell(lane, day)))),
        }
    }
}

/// The lanes that the counts look at.
pub(crate) struct StillLanes {
    passive: Vec<(LaneId, Key)>,
    elbow: Option<LaneId>,
}

impl StillLanes {
    pub(crate) fn of(plan: &Plan) -> Self {
        let lanes = (0_u8..).map(LaneId).zip(plan.grid.keys.iter().copied());
        let passive = lanes.filter(|(_, key)| key.joint == Joint::Shoulder && key.mode == Mode::Passive).collect();
        Self { passive, elbow: plan.grid.governing(Key::any(Joint::Elbow, Movement::Flexion, Mode::Active)) }
    }

    /// Whether no passive movement of the shoulder leaves a useful arc.
    pub(crate) fn passive_still(&self, cell: impl Fn(LaneId) -> Cell) -> bool {
        !self.passive.iter().any(|(lane, key)| leaves_an_arc(cell(*lane), *key))
    }

    /// Whether the elbow may not be moved actively.
    pub(crate) fn elbow_still(&self, cell: impl Fn(LaneId) -> Cell) -> bool {
        self.elbow.is_none_or(|lane| !cell(lane).is_open())
    }

    /// Every lane that is looked at.
    pub(crate) fn all(&self) -> impl Iterator<Item = LaneId> {
        self.passive.iter().map(|(lane, _)| *lane).chain(self.elbow)
    }
}

/// What holds, go-backs and safe arcs add to still days, and every run beyond its cap.
pub(crate) fn cautions(dated: &Dated<'_>, settings: &Settings) -> Vec<String> {
    let runs = Runs::of(dated);
    let moved = !settings.holds.is_empty() || !settings.backs.is_empty();
    let unmoved = if moved { Runs::unmoved(&dated.plan) } else { runs };
    let over = Count::ALL.into_iter().any(|count| count.is_over(count.of(unmoved)));
    let without_arcs = if over && !dated.facts.safe_arcs.is_empty() { without_arcs(dated) } else { unmoved };
    let mut cautions = Vec::new();
    for count in Count::ALL {
        let (run, before, bare) = (count.of(runs), count.of(unmoved), count.of(without_arcs));
        let (by_moves, by_arcs) = (run.saturating_sub(before), before.saturating_sub(bare));
        if by_moves == 0 && !count.is_over(run) {
            continue;
        }
        let mut added = Vec::new();
        if by_moves > 0 {
            added.push(adds(&movers(settings, count), by_moves));
        }
        if by_arcs > 0 && count.is_over(before) {
            added.push(adds(&["what the safe arcs of the record close".into()], by_arcs));
        }
        let kind = if count.is_over(run) { "stiffness" } else { "still days" };
        let because = if added.is_empty() { String::new() } else { format!("{}: ", added.join(", ")) };
        cautions.push(format!("{kind}: {because}{}", count.in_words(run)));
    }
    cautions
}

/// Holds and go-backs that bear on a count, each with its reason.
fn movers(settings: &Settings, count: Count) -> Vec<String> {
    let bears = |joint: Option<Joint>| joint.is_none_or(|joint| count == Count::WithoutElbow && joint == Joint::Elbow);
    let holds = settings.holds.iter().filter(|hold| bears(hold.joint));
    let holds = holds.map(|hold| format!("the hold from day {} ({})", hold.from_day, hold.reason));
    let backs = settings.backs.iter().map(|back| format!("the go-back on day {} ({})", back.day, back.reason));
    holds.chain(backs).collect()
}

/// "the hold from day 40 (wound) adds 14 days".
pub(crate) fn adds(what: &[String], days: u16) -> String {
    let verb = if what.len() == 1 { "adds" } else { "add" };
    format!("{} {verb} {days} {}", what.join(" and "), if days == 1 { "day" } else { "days" })
}

/// The runs of the plan without the safe arcs of the record.
fn without_arcs(dated: &Dated<'_>) -> Runs {
    let facts = Facts { safe_arcs: SafeArcs::default(), ..dated.facts };
    Runs::unmoved(&resolve(dated.compiled, &facts, Requested(Some(dated.plan.protocol))))
}

fn leaves_an_arc(cell: Cell, key: Key) -> bool {
    match cell.allowed(key) {
        Allowed::No => false,
        Allowed::Free => true,
        Allowed::UpTo(Bound::Angle(angle)) => angle >= ids::LEAST_USEFUL_ARC.degrees(),
        Allowed::UpTo(_) => false,
    }
}

fn longest(still: impl Iterator<Item = bool>) -> u16 {
    let (mut run, mut longest) = (0_u16, 0_u16);
    for still in still {
        run = if still { run + 1 } else { 0 };
        longest = longest.max(run);
    }
    longest
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_longest_run_is_counted() {
        assert_eq!(longest([true, true, false, true, true, true].into_iter()), 3);
        assert_eq!(longest([false, false].into_iter()), 0);
        assert_eq!(longest(std::iter::empty()), 0);
    }

    /// The caps of the default policies: 42, 56 and 28 days.
    #[test]
    fn a_run_is_said_with_its_cap() {
        let words = Count::InSling.in_words(70);
        assert_eq!(words, "70 days in a row with the sling, weaning counted, over the cap of 56");
        assert!(Count::WithoutPassive.in_words(42).ends_with("within the cap of 42"));
        assert!(Count::WithoutElbow.is_over(29) && !Count::WithoutElbow.is_over(28));
        assert_eq!(adds(&["the hold from day 40 (wound)".into()], 1), "the hold from day 40 (wound) adds 1 day");
    }
}
