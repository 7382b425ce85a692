//! Which day of the rules each day of the patient lives, counted one day after the other.

use body::Joint;

use super::{Held, WentBack};

/// No plan is followed for longer than this, in days.
const LONGEST: usize = 20_000; // not medical: bounds the memory of hostile settings

/// The day of the rules that each joint lives on each day.
#[derive(Debug)]
pub(super) struct Lived {
    by_joint: Vec<Vec<u16>>,
}

impl Lived {
    /// Counts the days.
    ///
    /// # Method
    /// Day 0 lives day 0. A day of a go-back lives the gate of its stage, or the day
    /// before where that is earlier. A held day lives the day that was lived before
    /// it; there is no day before day 0, so a hold from day 0 holds the days from
    /// day 1 on. Every other day lives the next day.
    pub(super) fn count(holds: &[Held], backs: &[WentBack], stages: &[(&str, u16)], horizon: u16) -> Self {
        let held: usize = holds.iter().map(|hold| usize::from(hold.days)).sum();
        let again: usize = backs.iter().map(|back| usize::from(back.day)).sum();
        let length = (usize::from(horizon) + held + again + 1).min(LONGEST);
        let gate = |id: &str| stages.iter().find(|(stage, _)| *stage == id).map(|(_, gate)| *gate);
        let of_joint = |joint: Joint| {
            let mut days: Vec<u16> = Vec::with_capacity(length);
            for day in 0..length {
                let Some(&before) = days.last() else {
                    days.push(0);
                    continue;
                };
                let back = backs.iter().rev().find(|back| usize::from(back.day) == day);
                let is_held = holds.iter().any(|hold| {
                    let from = usize::from(hold.from_day).max(1);
                    hold.joint.is_none_or(|only| only == joint) && (from..from + usize::from(hold.days)).contains(&day)
                });
                days.push(match back.and_then(|back| gate(&back.stage)) {
                    Some(gate) => before.min(gate),
                    None if is_held => before,
                    None => before + 1,
                });
            }
            days
        };
        Self { by_joint: Joint::ALL.iter().map(|joint| of_joint(*joint)).collect() }
    }

    /// The day of the rules that a joint lives on a day.
    pub(super) fn on(&self, joint: Joint, day: u16) -> u16 {
        let days = &self.by_joint[joint as usize];
        days.get(usize::from(day)).or(days.last()).copied().unwrap_or(day)
    }

    /// The day of the rules that the arm as a whole lives on a day: stages and the sling go by it.
    pub(super) fn arm(&self, day: u16) -> u16 {
        self.on(Joint::WholeArm, day)
    }

    /// The last day that is counted.
    pub(super) fn last(&self) -> u16 {
        self.by_joint[Joint::WholeArm as usize].len().saturating_sub(1) as u16
    }

    /// The first day from which on the arm as a whole has passed a day of the rules for good.
    pub(super) fn reaches(&self, of_rules: u16) -> u16 {
        self.reaches_within(of_rules, usize::MAX)
    }

    /// The same as it looks on a day: what still lies ahead of it counts for nothing.
    pub(super) fn reached_by(&self, of_rules: u16, today: u16) -> u16 {
        self.reaches_within(of_rules, usize::from(today) + 1)
    }

    fn reaches_within(&self, of_rules: u16, days: usize) -> u16 {
        let lived = &self.by_joint[Joint::WholeArm as usize];
        let lived = &lived[..days.min(lived.len())];
        let short_of_it = lived.iter().rposition(|lives| *lives < of_rules);
        short_of_it.map_or(0, |day| u16::try_from(day + 1).unwrap_or(u16::MAX))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const STAGES: &[(&str, u16)] = &[("protection", 0), ("passive", 14), ("active", 42)];

    fn held(from_day: u16, days: u16) -> Held {
        Held { from_day, days, joint: None }
    }

    /// Counted by hand: a hold keeps the day before it, and the day after it is the next.
    #[test]
    fn a_hold_lives_one_day_again_and_again() {
        let lived = Lived::count(&[held(40, 14), held(47, 14)], &[], STAGES, 100);
        assert_eq!([39, 40, 53, 60, 61, 64].map(|day| lived.arm(day)), [39, 39, 39, 39, 40, 43]);
        assert_eq!((lived.reaches(42), lived.reaches(14)), (63, 14));
        let from_surgery = Lived::count(&[held(0, 3)], &[], STAGES, 100);
        assert_eq!([0, 1, 3, 4].map(|day| from_surgery.arm(day)), [0, 0, 0, 1]);
    }

    #[test]
    fn a_go_back_starts_its_stage_again() {
        let back = WentBack { day: 50, stage: "passive".into() };
        let lived = Lived::count(&[], &[back], STAGES, 100);
        assert_eq!([49, 50, 64, 78].map(|day| lived.arm(day)), [49, 14, 28, 42]);
        assert_eq!((lived.reaches(42), lived.reached_by(42, 45)), (78, 42));
    }

    #[test]
    fn a_hold_of_one_joint_leaves_the_others() {
        let lived = Lived::count(&[Held { joint: Some(Joint::Elbow), ..held(10, 5) }], &[], STAGES, 100);
        assert_eq!((lived.on(Joint::Elbow, 20), lived.on(Joint::Shoulder, 20), lived.arm(20)), (15, 20, 20));
    }
}
