//! The other harm: how long the plan leaves the shoulder, the sling and the elbow still.

use body::{Joint, Key, Mode, Movement};
use evidence::ids;
use plan::{Allowed, Bound, Wear};

use crate::dated::Dated;

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

impl Runs {
    /// The runs of a dated plan.
    ///
    /// # Source
    /// `least-useful-arc`: own choice.
    pub(crate) fn of(dated: &Dated<'_>) -> Self {
        let keys = &dated.plan.grid.keys;
        let passive: Vec<Key> =
            keys.iter().copied().filter(|key| key.joint == Joint::Shoulder && key.mode == Mode::Passive).collect();
        let elbow = Key::any(Joint::Elbow, Movement::Flexion, Mode::Active);
        let days = 0..dated.horizon();
        Self {
            without_passive: longest(
                days.clone().map(|day| !passive.iter().any(|key| leaves_an_arc(dated, *key, day))),
            ),
            in_sling: longest(days.clone().map(|day| dated.wear(day) != Wear::None)),
            without_elbow: longest(days.map(|day| !dated.value(elbow, day).is_open())),
        }
    }

    /// What exceeds the caps, in words.
    ///
    /// # Source
    /// `cap-without-passive-motion`, `cap-in-sling`, `cap-without-elbow-motion`: own choice.
    pub(crate) fn beyond_caps(self) -> Vec<String> {
        let caps = [
            (
                self.without_passive,
                ids::CAP_WITHOUT_PASSIVE_MOTION,
                "days in a row without passive motion of the shoulder",
            ),
            (self.in_sling, ids::CAP_IN_SLING, "days in a row with the sling, weaning counted"),
            (self.without_elbow, ids::CAP_WITHOUT_ELBOW_MOTION, "days in a row without active motion of the elbow"),
        ];
        caps.into_iter()
            .filter(|(run, cap, _)| *run > cap.days().count())
            .map(|(run, cap, what)| format!("stiffness: {run} {what}, over the cap of {}", cap.days().count()))
            .collect()
    }
}

fn leaves_an_arc(dated: &Dated<'_>, key: Key, day: u16) -> bool {
    match dated.value(key, day).allowed(key) {
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
}
