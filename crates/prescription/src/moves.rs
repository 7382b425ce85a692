//! Holds and go-backs: which day of the composed plan a day lives.

use body::Joint;

use crate::settings::Hold;

/// A go-back with its stage's gate looked up.
#[derive(Debug, Clone, Copy)]
pub(crate) struct BackTo {
    pub day: u16,
    pub gate: u16,
}

/// For every joint and every day up to the horizon, the day of the composed plan it lives.
///
/// # Method
/// Each day lives the day after the one before it; a held day lives the same
/// day as the day before it, so holds that overlap join; on the day of a
/// go-back, the gate of its stage. A hold on day 0 keeps day 0.
///
/// # Source
/// `hold-keeps-limits`: own choice.
#[derive(Debug, Clone)]
pub(crate) struct Moves {
    lived: Vec<Vec<u16>>,
}

/// No plan is followed for longer than this, in days.
const LONGEST: usize = 20_000; // not medical: bounds the memory of hostile settings

impl Moves {
    pub(crate) fn new(holds: &[Hold], backs: &[BackTo], horizon: u16) -> Self {
        // Far enough that the last day of the composed plan is reached, whatever is held.
        let moved = holds.iter().map(|hold| usize::from(hold.days)).sum::<usize>();
        let again = backs.iter().map(|back| usize::from(back.day)).sum::<usize>();
        let length = (usize::from(horizon) + moved + again + 1).min(LONGEST);
        let lived = Joint::ALL
            .iter()
            .map(|&joint| {
                let mut edges = vec![0_i32; length + 1];
                for hold in holds.iter().filter(|hold| hold.joint.is_none_or(|only| only == joint)) {
                    // There is no day before the day of surgery: a hold from it keeps day 0 and moves the rest by its whole length.
                    let from = usize::from(hold.from_day).clamp(1, length);
                    edges[from] += 1;
                    edges[(from + usize::from(hold.days)).min(length)] -= 1;
                }
                let mut held = 0;
                let mut lives = 0_u16;
                let mut days = Vec::with_capacity(length);
                for (day, edge) in edges.into_iter().take(length).enumerate() {
                    held += edge;
                    if let Some(back) = backs.iter().rev().find(|back| usize::from(back.day) == day) {
                        lives = lives.min(back.gate);
                    } else if day > 0 && held == 0 {
                        lives += 1;
                    }
                    days.push(lives);
                }
                days
            })
            .collect();
        Self { lived }
    }

    /// The day of the composed plan that a joint lives on a day.
    pub(crate) fn lives(&self, joint: Joint, day: u16) -> u16 {
        let days = &self.lived[joint as usize];
        days.get(usize::from(day)).or(days.last()).copied().unwrap_or(day)
    }

    /// The first day after the last one that is counted.
    pub(crate) fn horizon(&self) -> u16 {
        self.lived[Joint::WholeArm as usize].len() as u16
    }

    /// The first day from which on the whole arm has reached a day of the composed plan for good.
    pub(crate) fn reaches(&self, plan_day: u16) -> u16 {
        let days = &self.lived[Joint::WholeArm as usize];
        let last_before = days.iter().rposition(|&lives| lives < plan_day);
        last_before.map_or(0, |day| day as u16 + 1)
    }

    /// The day a day of the composed plan was reached for good, as it looks on a day.
    ///
    /// A go-back that still lies ahead of `today` does not hide a gate that was passed before it.
    pub(crate) fn reached_by(&self, plan_day: u16, today: u16) -> u16 {
        let days = &self.lived[Joint::WholeArm as usize];
        let until_today = &days[..days.len().min(usize::from(today) + 1)];
        if until_today.last().is_none_or(|&lives| lives < plan_day) {
            return self.reaches(plan_day);
        }
        until_today.iter().rposition(|&lives| lives < plan_day).map_or(0, |day| day as u16 + 1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hold(from_day: u16, days: u16) -> Hold {
        Hold { from_day, days, reason: "wound".into(), joint: None }
    }

    #[test]
    fn a_hold_keeps_the_day_before_it_and_moves_the_rest() {
        let moves = Moves::new(&[hold(40, 14)], &[], 365);
        let lives = |day| moves.lives(Joint::Shoulder, day);
        assert_eq!((lives(39), lives(40), lives(53), lives(54), lives(56)), (39, 39, 39, 40, 42));
        assert_eq!(moves.reaches(42), 56);
        assert_eq!(moves.reaches(14), 14);
    }

    #[test]
    fn a_day_after_the_horizon_is_still_counted() {
        let moves = Moves::new(&[hold(40, 300)], &[], 365);
        assert_eq!((moves.reaches(84), moves.reaches(140)), (384, 440));
        let back = Moves::new(&[], &[BackTo { day: 240, gate: 14 }], 365);
        assert_eq!(back.reaches(140), 366);
        assert_eq!(back.reaches(182), 408);
    }

    #[test]
    fn holds_that_overlap_join() {
        let moves = Moves::new(&[hold(40, 14), hold(47, 14)], &[], 365);
        assert_eq!(moves.reaches(42), 42 + 21);
        let twice = Moves::new(&[hold(40, 14), hold(40, 14)], &[], 365);
        assert_eq!(twice.reaches(42), 56);
    }

    #[test]
    fn a_go_back_starts_a_stage_again() {
        let moves = Moves::new(&[], &[BackTo { day: 50, gate: 14 }], 365);
        let lives = |day| moves.lives(Joint::Shoulder, day);
        assert_eq!((lives(49), lives(50), lives(64)), (49, 14, 28));
        assert_eq!(moves.reaches(42), 78);
    }

    #[test]
    fn a_hold_of_one_joint_leaves_the_others() {
        let only = Hold { joint: Some(Joint::Elbow), ..hold(10, 5) };
        let moves = Moves::new(&[only], &[], 100);
        assert_eq!(moves.lives(Joint::Elbow, 20), 15);
        assert_eq!(moves.lives(Joint::Shoulder, 20), 20);
    }

    #[test]
    fn a_hold_on_the_day_of_surgery_keeps_day_0() {
        let moves = Moves::new(&[hold(0, 3)], &[], 100);
        assert_eq!([0, 1, 2, 3, 4, 5].map(|day| moves.lives(Joint::Shoulder, day)), [0, 0, 0, 0, 1, 2]);
    }
}
