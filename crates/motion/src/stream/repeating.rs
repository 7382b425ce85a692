//! Repetitions counted as they happen.

use crate::repetition::{REACHES, RETURNS};
use crate::task::{Exercise, Tells};

/// So many of the last peaks tell what is usual.
const REMEMBERED: usize = 9;
/// What is taken for usual before there is a peak, degrees, and of the shoulder blade (own choices).
const FIRST_USUAL_DEG: f64 = 24.0;
const FIRST_USUAL_SMALL_DEG: f64 = 3.0;
const LEAST_DEG: f64 = 10.0;
const LEAST_SMALL_DEG: f64 = 1.2;
const SHORTEST_S: f64 = 0.6;

/// The state machine of repetitions with thresholds that follow the last peaks.
#[derive(Debug, Clone, Copy)]
pub struct Repeating {
    least: f64,
    peaks: [f64; REMEMBERED],
    count: u32,
    top: Option<f64>,
    out_for_s: f64,
    was_at_rest: bool,
    last: f64,
}

impl Repeating {
    pub const fn new(exercise: Exercise) -> Self {
        let least = match exercise.tells() {
            Tells::SmallTurn | Tells::SmallCircle => LEAST_SMALL_DEG,
            _ => LEAST_DEG,
        };
        Self { least, peaks: [0.0; REMEMBERED], count: 0, top: None, out_for_s: 0.0, was_at_rest: false, last: 0.0 }
    }

    pub const fn least(&self) -> f64 {
        self.least
    }

    pub const fn count(&self) -> u32 {
        self.count
    }

    pub fn last_peak(&self) -> Option<f64> {
        let at = (self.count as usize).checked_sub(1)?;
        self.peaks.get(at % REMEMBERED).copied()
    }

    fn usual(&self) -> f64 {
        let known = (self.count as usize).min(REMEMBERED);
        if known == 0 {
            return if self.least < LEAST_DEG { FIRST_USUAL_SMALL_DEG } else { FIRST_USUAL_DEG };
        }
        let mut sorted = self.peaks;
        sorted[..known].sort_by(f64::total_cmp);
        sorted[known / 2].max(self.least)
    }

    pub fn step(&mut self, angle: f64, step_s: f64) {
        let usual = self.usual();
        self.last = angle;
        if let Some(top) = self.top {
            self.top = Some(top.max(angle));
            self.out_for_s += step_s;
        }
        if angle < RETURNS * usual {
            self.was_at_rest = true;
            self.close();
        } else if angle >= (REACHES * usual).max(self.least / 2.0) && self.top.is_none() && self.was_at_rest {
            self.top = Some(angle);
            self.out_for_s = 0.0;
        }
    }

    fn close(&mut self) {
        let Some(top) = self.top.take() else { return };
        if self.out_for_s < SHORTEST_S / 2.0 || top < self.least {
            return;
        }
        self.peaks[self.count as usize % REMEMBERED] = top;
        self.count += 1;
    }

    pub fn finish(&mut self) {
        if self.last < REACHES * self.usual() {
            self.close();
        }
    }
}
