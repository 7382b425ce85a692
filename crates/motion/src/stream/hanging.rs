//! A pendulum counted as it swings.

use glam::DVec3;

/// Over this time the center of the path is followed, and its shape looked at, seconds (own choice: about two turns).
const CENTER_S: f64 = 3.0;
const SHAPE_S: f64 = 1.5;
/// Turning back by this begins the other way.
const TURNS_BACK: f64 = std::f64::consts::FRAC_PI_2;
/// A run this much short of a whole turn is one.
const SHORT_OF_A_TURN: f64 = 0.12;
/// The arm's length where nobody gave it, meters, as for stored recordings.
const ASSUMED_ARM_M: f64 = 0.656;

/// Turns and cycles of a path around a center that wanders.
#[derive(Debug, Clone, Copy)]
pub struct Hanging {
    smallest: f64,
    center: Option<DVec3>,
    last: Option<DVec3>,
    /// Mean squares and product about the center.
    shape: [f64; 3],
    phase: f64,
    start: f64,
    furthest: f64,
    clockwise: u32,
    anticlockwise: u32,
    side: i8,
    half_cycles: u32,
    swings_s: f64,
    circles_s: f64,
}

impl Hanging {
    pub fn new(arm_length_m: Option<f64>) -> Self {
        Self {
            smallest: crate::pendulum::SMALLEST_CIRCLE_M / arm_length_m.unwrap_or(ASSUMED_ARM_M),
            center: None,
            last: None,
            shape: [0.0; 3],
            phase: 0.0,
            start: 0.0,
            furthest: 0.0,
            clockwise: 0,
            anticlockwise: 0,
            side: 0,
            half_cycles: 0,
            swings_s: 0.0,
            circles_s: 0.0,
        }
    }

    pub fn step(&mut self, place: DVec3, step_s: f64) {
        let part = 1.0 - (-step_s / CENTER_S).exp();
        let center = self.center.map_or(place, |center| center + (place - center) * part);
        self.center = Some(center);
        let now = place - center;
        let part = 1.0 - (-step_s / SHAPE_S).exp();
        for (mean, value) in self.shape.iter_mut().zip([now.x * now.x, now.y * now.y, now.x * now.y]) {
            *mean += part * (value - *mean);
        }
        let [xx, yy, xy] = self.shape;
        let (half, root) = ((xx + yy) / 2.0, ((xx - yy) / 2.0).hypot(xy));
        let [long, short] = [half + root, (half - root).max(0.0)].map(|power| 2.0 * (2.0 * power).sqrt());
        let last = self.last.replace(now);
        if long < self.smallest {
            self.close();
            return;
        }
        if short < crate::pendulum::SWING_BELOW * long {
            self.swings_s += step_s;
        } else {
            self.circles_s += step_s;
        }
        let angle = 0.5 * (2.0 * xy).atan2(xx - yy);
        let along = now.x * angle.cos() + now.y * angle.sin();
        let gate = 0.125 * long;
        let side = if along > gate {
            1
        } else if along < -gate {
            -1
        } else {
            self.side
        };
        self.half_cycles += u32::from(side != self.side && self.side != 0);
        self.side = side;
        let Some(last) = last else { return };
        self.phase += (last.x * now.y - last.y * now.x).atan2(last.dot(now));
        let way = self.furthest - self.start;
        if way == 0.0 || (self.phase - self.furthest) * way > 0.0 {
            self.furthest = self.phase;
        } else if (self.phase - self.furthest).abs() > TURNS_BACK {
            self.close();
        }
    }

    fn running(&self) -> (u32, bool) {
        let turns = (self.furthest - self.start) / std::f64::consts::TAU;
        ((turns.abs() + SHORT_OF_A_TURN).floor() as u32, turns > 0.0)
    }

    fn close(&mut self) {
        let (turns, anticlockwise) = self.running();
        if anticlockwise {
            self.anticlockwise += turns;
        } else {
            self.clockwise += turns;
        }
        self.start = self.furthest;
        self.furthest = self.phase;
    }

    /// After a gap nobody knows where the path went on.
    pub fn forget(&mut self) {
        self.close();
        self.start = self.phase;
        self.furthest = self.phase;
        self.last = None;
        self.center = None;
    }

    pub fn finish(&mut self) {
        self.close();
        self.start = self.phase;
        self.furthest = self.phase;
    }

    fn swings(&self) -> bool {
        self.swings_s > self.circles_s
    }

    pub fn by_direction(&self) -> Option<(u32, u32)> {
        if self.swings() {
            return None;
        }
        let (turns, anticlockwise) = self.running();
        let running = if anticlockwise { (0, turns) } else { (turns, 0) };
        Some((self.clockwise + running.0, self.anticlockwise + running.1))
    }

    pub fn count(&self) -> u32 {
        match self.by_direction() {
            Some((clockwise, anticlockwise)) => clockwise + anticlockwise,
            None => self.half_cycles.div_ceil(2),
        }
    }
}
