//! The hanging arm as a spherical pendulum, integrated from its equations.

use glam::{DQuat, DVec3};

use crate::exercise::Side;
use crate::parameter::{Draws, Parameter, own};
use crate::person::{Person, gravity};
use crate::signal::STEP;
use crate::smooth::{Wander, minimum_jerk};

/// What is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Figure {
    /// Circles one way.
    Circles(Way),
    /// Circles one way, then the other.
    BothWays(Way),
    /// Ellipses one way.
    Ellipses(Way),
    /// To and fro.
    Swings,
}

/// Direction of a revolution, seen from above.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Way {
    /// As a clock's hands.
    Clockwise,
    /// Against them.
    Anticlockwise,
}

impl Way {
    /// The other one.
    pub const fn other(self) -> Self {
        match self {
            Self::Clockwise => Self::Anticlockwise,
            Self::Anticlockwise => Self::Clockwise,
        }
    }

    /// The direction of a turning angle; X ahead and Y to the left make rising angles anticlockwise.
    pub const fn of(turning: f64) -> Self {
        if turning > 0.0 { Self::Anticlockwise } else { Self::Clockwise }
    }

    const fn sign(self) -> f64 {
        match self {
            Self::Clockwise => -1.0,
            Self::Anticlockwise => 1.0,
        }
    }
}

/// Who does the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Driver {
    /// The trunk sways and the arm hangs from it.
    Trunk,
    /// The muscles of the shoulder.
    Muscle,
}

/// A stretch of time in which something drives the arm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drive {
    /// When it begins and ends, seconds.
    pub from_s: f64,
    /// The end.
    pub until_s: f64,
    /// Angular frequency, radians a second.
    pub frequency: f64,
    /// Greatest acceleration along the longer diameter, at the center of oscillation.
    pub major: f64,
    /// Across it; positive is anticlockwise.
    pub minor: f64,
    /// Direction of the longer diameter from straight ahead, radians.
    pub plane: f64,
    /// Who does it.
    pub driver: Driver,
}

impl Drive {
    /// Strength of the drive at a time, from 0 to 1.
    fn strength(&self, time: f64) -> f64 {
        let ramp = 2.0 * std::f64::consts::TAU / self.frequency;
        minimum_jerk((time - self.from_s) / ramp) * minimum_jerk((self.until_s - time) / (ramp / 2.0))
    }

    fn push(&self, time: f64, unsteady: f64) -> DVec3 {
        let phase = self.frequency * (time - self.from_s) + unsteady;
        let (sin, cos) = self.plane.sin_cos();
        let [along, across] = [self.major * phase.cos(), self.minor * phase.sin()];
        DVec3::new(along * cos - across * sin, along * sin + across * cos, 0.0) * self.strength(time)
    }
}

/// A hanging arm and all that acts on it.
#[derive(Debug, Clone)]
pub struct Pendulum {
    /// Length of the simple pendulum, meters.
    pub length: f64,
    /// Damping, as a share of critical.
    pub damping: f64,
    /// The drives, one after the other.
    pub drives: Vec<Drive>,
    /// How much harder the arm is damped while nothing drives it.
    pub brake: f64,
    /// Sway of the shoulder ahead and aside, meters.
    pub sway: [Wander; 2],
    /// Unsteadiness of the drive's phase, radians.
    pub unsteady: Wander,
}

/// How the arm went.
#[derive(Debug, Clone)]
pub struct Course {
    /// Where it points, from the shoulder on, one for each step.
    pub direction: Vec<DVec3>,
    /// The shoulder against its mean place, meters.
    pub shoulder: Vec<DVec3>,
    /// Acceleration that the muscles alone would give at the center of oscillation.
    pub muscle: Vec<DVec3>,
}

impl Pendulum {
    /// Where the shoulder is against its mean place.
    fn shoulder(&self, time: f64) -> DVec3 {
        let sway = DVec3::new(self.sway[0].at(time), self.sway[1].at(time), 0.0);
        let drives = self.drives.iter().filter(|drive| drive.driver == Driver::Trunk);
        sway + drives
            .map(|drive| drive.push(time, self.unsteady.at(time)) / (drive.frequency * drive.frequency))
            .sum::<DVec3>()
    }

    fn muscle(&self, time: f64) -> DVec3 {
        let drives = self.drives.iter().filter(|drive| drive.driver == Driver::Muscle);
        drives.map(|drive| drive.push(time, self.unsteady.at(time))).sum()
    }

    fn is_driven(&self, time: f64) -> bool {
        self.drives.iter().any(|drive| (drive.from_s..drive.until_s).contains(&time))
    }

    /// Lets it go from rest for some seconds.
    ///
    /// # Method
    /// For the unit vector a along the arm of length l, hanging from a shoulder at s:
    /// a″ = P((g − s″ + m) / l) − |a′|² a − 2 ζ ω a′, where P takes away the part along a and m is what the muscles do;
    /// fourth order of Runge and Kutta in steps of a millisecond, a kept at length 1.
    pub fn course(&self, seconds: f64) -> Course {
        let steps = (seconds / STEP).round() as usize;
        // What pushes, at every half step.
        let pushes: Vec<DVec3> = (0..=2 * steps).map(|half| self.acting(half as f64 * STEP / 2.0)).collect();
        let mut state = State { direction: DVec3::NEG_Z, rate: DVec3::ZERO };
        let mut course = Course { direction: Vec::new(), shoulder: Vec::new(), muscle: Vec::new() };
        for step in 0..steps {
            let time = step as f64 * STEP;
            course.direction.push(state.direction);
            course.shoulder.push(self.shoulder(time));
            course.muscle.push(self.muscle(time));
            let brake = if self.is_driven(time) { 1.0 } else { self.brake };
            state = self.after(state, [pushes[2 * step], pushes[2 * step + 1], pushes[2 * step + 2]], brake);
        }
        course
    }

    /// All accelerations but gravity, at the center of oscillation.
    fn acting(&self, time: f64) -> DVec3 {
        let h = STEP;
        let shoulder = self.shoulder(time - h) - 2.0 * self.shoulder(time) + self.shoulder(time + h);
        self.muscle(time) - shoulder / (h * h)
    }

    fn after(&self, state: State, push: [DVec3; 3], brake: f64) -> State {
        let slope = |state: State, push: DVec3| {
            let force = (push - DVec3::Z * gravity()) / self.length;
            let across = force - state.direction * force.dot(state.direction);
            let frequency = (gravity() / self.length).sqrt();
            State {
                direction: state.rate,
                rate: across
                    - state.direction * state.rate.length_squared()
                    - 2.0 * self.damping * brake * frequency * state.rate,
            }
        };
        let first = slope(state, push[0]);
        let second = slope(state.along(first, STEP / 2.0), push[1]);
        let third = slope(state.along(second, STEP / 2.0), push[1]);
        let fourth = slope(state.along(third, STEP), push[2]);
        let mean = first.along(second, 2.0).along(third, 2.0).along(fourth, 1.0);
        let next = state.along(mean, STEP / 6.0);
        let direction = next.direction.normalize();
        State { direction, rate: next.rate - direction * next.rate.dot(direction) }
    }
}

#[derive(Debug, Clone, Copy)]
struct State {
    direction: DVec3,
    rate: DVec3,
}

impl State {
    fn along(self, slope: Self, by: f64) -> Self {
        Self { direction: self.direction + slope.direction * by, rate: self.rate + slope.rate * by }
    }
}

/// The turn of a hanging arm that points somewhere: the short way from hanging, without a turn about its own length.
pub fn arm_turn(direction: DVec3) -> DQuat {
    DQuat::from_rotation_arc(DVec3::NEG_Z, direction)
}

/// A pendulum set as somebody does it.
#[derive(Debug, Clone)]
pub struct PendulumSet {
    /// What swings.
    pub pendulum: Pendulum,
    /// When it has come to rest again.
    pub end_s: f64,
}

// Small circles are about 20 cm, large ones 51 cm (`motion.md`, from memory there); smaller ones are own choice.
const DIAMETER: Parameter = own("diameter_aimed_at", "m", 0.05, 0.4);
const SWING: Parameter = own("swing_aimed_at", "m", 0.08, 0.45);
const TRUNK_TEMPO: Parameter = own("drive_over_natural_frequency", "ratio", 0.94, 1.03);
const MUSCLE_TEMPO: Parameter = own("drive_over_natural_frequency", "ratio", 0.55, 1.05);
const CIRCLE_RATIO: Parameter = own("shorter_over_longer_drive", "ratio", 0.88, 1.0);
const ELLIPSE_RATIO: Parameter = own("shorter_over_longer_drive", "ratio", 0.45, 0.75);
const SWING_RATIO: Parameter = own("shorter_over_longer_drive", "ratio", -0.08, 0.08);
const PLANE: Parameter = own("plane_of_longer_diameter", "deg", -90.0, 90.0);
const REVOLUTIONS: (usize, usize) = (8, 20);
const BRAKE: Parameter = own("brake", "times the damping", 2.0, 6.0);
const SHOULDER_SWAY: Parameter = own("shoulder_sway_rms", "m", 0.001, 0.006);
const UNSTEADY: Parameter = own("unsteadiness_of_phase_rms", "rad", 0.0, 0.15);
/// The hand moves less than this when the arm is at rest, meters.
const RESTS_BELOW: f64 = 0.0015;

impl PendulumSet {
    /// The set of a person, beginning at a time.
    pub fn draw(person: &Person, figure: Figure, draws: &mut Draws, from: f64) -> Self {
        let natural = person.hanging.frequency();
        let driver = if draws.random().happens(0.6) { Driver::Trunk } else { Driver::Muscle };
        let frequency = natural
            * match driver {
                Driver::Trunk => draws.draw(&TRUNK_TEMPO),
                Driver::Muscle => draws.draw(&MUSCLE_TEMPO),
            };
        let (ratio, ways): (f64, Vec<Way>) = match figure {
            Figure::Circles(way) => (draws.draw(&CIRCLE_RATIO), vec![way]),
            Figure::BothWays(way) => (draws.draw(&CIRCLE_RATIO), vec![way, way.other()]),
            Figure::Ellipses(way) => (draws.draw(&ELLIPSE_RATIO), vec![way]),
            Figure::Swings => (draws.draw(&SWING_RATIO), vec![Way::Anticlockwise]),
        };
        let wide = if figure == Figure::Swings { draws.draw(&SWING) } else { draws.draw(&DIAMETER) };
        // The mean of the two diameters is aimed at, but for swings.
        let longer = if figure == Figure::Swings { wide } else { wide * 2.0 / (1.0 + ratio) };
        let reach = person.hanging.length() * longer / 2.0 / person.lengths.arm();
        let plane = draws.draw(&PLANE).to_radians();
        let brake = draws.draw(&BRAKE);
        let settle = (wide / RESTS_BELOW).ln() / (person.damping * brake * natural);
        // Greatest acceleration that keeps this amplitude going at this frequency.
        let resonance = (natural * natural - frequency * frequency).hypot(2.0 * person.damping * natural * frequency);
        let mut drives = Vec::new();
        let mut start = from + draws.random().uniform(0.6, 1.5);
        for way in ways {
            let many = draws.random().whole(REVOLUTIONS.0, REVOLUTIONS.1) as f64 + 1.5;
            let until_s = start + many * std::f64::consts::TAU / frequency;
            let major = reach * resonance;
            drives.push(Drive {
                from_s: start,
                until_s,
                frequency,
                major,
                minor: major * ratio * way.sign(),
                plane,
                driver,
            });
            start = until_s + settle * draws.random().uniform(0.3, 1.0);
        }
        let end_s = drives.last().map_or(from, |drive| drive.until_s + settle);
        let [size, unsteady] = [draws.draw(&SHOULDER_SWAY), draws.draw(&UNSTEADY)];
        let random = draws.random();
        let sway = [(); 2].map(|()| Wander::new(random, size, 0.1, 0.4));
        let unsteady = Wander::new(random, unsteady, 0.05, 0.3);
        let pendulum =
            Pendulum { length: person.hanging.length(), damping: person.damping, drives, brake, sway, unsteady };
        Self { pendulum, end_s }
    }
}

/// The side has no say in where a pendulum swings: this only places it beside the trunk.
pub const fn beside(side: Side, lateral: f64) -> f64 {
    match side {
        Side::Right => -lateral,
        Side::Left => lateral,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::random::Random;

    fn still() -> Wander {
        Wander::new(&mut Random::new(0, "still"), 0.0, 0.1, 0.2)
    }

    fn free(damping: f64, drives: Vec<Drive>) -> Pendulum {
        Pendulum { length: 0.42, damping, drives, brake: 1.0, sway: [still(), still()], unsteady: still() }
    }

    /// Runs undriven from a state and gives all states.
    fn run(pendulum: &Pendulum, mut state: State, steps: usize) -> Vec<State> {
        (0..steps)
            .map(|_| {
                state = pendulum.after(state, [DVec3::ZERO; 3], 1.0);
                state
            })
            .collect()
    }

    #[test]
    fn energy_and_spin_stay_without_damping() {
        let pendulum = free(0.0, Vec::new());
        let direction = DVec3::new(0.5, 0.0, -0.75_f64.sqrt());
        let start = State { direction, rate: DVec3::new(0.0, 1.7, 0.0) };
        // Per mass and length: l |a′|² / 2 + g · height.
        let energy = |s: &State| 0.42 * s.rate.length_squared() / 2.0 + gravity() * s.direction.z;
        let spin = |s: &State| s.direction.cross(s.rate).z;
        for state in run(&pendulum, start, 60_000) {
            assert!((energy(&state) - energy(&start)).abs() < 1e-8, "{}", energy(&state) - energy(&start));
            assert!((spin(&state) - spin(&start)).abs() < 1e-9);
        }
    }

    #[test]
    fn a_cone_keeps_its_circle_and_period() {
        // A conical pendulum of half-angle α turns with ω² = g / (l cos α).
        let half = 22.2_f64.to_radians();
        let rate = (gravity() / (0.42 * half.cos())).sqrt();
        let direction = DVec3::new(half.sin(), 0.0, -half.cos());
        let states =
            run(&free(0.0, Vec::new()), State { direction, rate: DVec3::new(0.0, half.sin() * rate, 0.0) }, 10_000);
        let turned =
            states.windows(2).map(|s| s[0].direction.truncate().angle_to(s[1].direction.truncate())).sum::<f64>();
        assert!((turned - rate * 9.999).abs() < 1e-5, "{turned} against {}", rate * 9.999);
        assert!(states.iter().all(|s| (s.direction.truncate().length() - half.sin()).abs() < 1e-8));
    }

    #[test]
    fn swings_die_down_as_the_damping_says() {
        let small = 0.02_f64;
        let start = State { direction: DVec3::new(small.sin(), 0.0, -small.cos()), rate: DVec3::ZERO };
        let states = run(&free(0.05, Vec::new()), start, 20_000);
        // Envelope exp(−ζ ω t) after 20 s, within a swing's own size.
        let wanted = small * (-0.05 * (gravity() / 0.42).sqrt() * 20.0).exp();
        let late = states[18_700..].iter().map(|s| s.direction.x.abs()).fold(0.0, f64::max);
        assert!((late / wanted - 1.0).abs() < 0.35, "{late} {wanted}");
    }

    #[test]
    fn a_steady_drive_reaches_the_diameter_of_the_linear_theory() {
        let frequency = 0.8 * (gravity() / 0.42_f64).sqrt();
        let natural = (gravity() / 0.42_f64).sqrt();
        let resonance = (natural.powi(2) - frequency.powi(2)).hypot(2.0 * 0.08 * natural * frequency);
        for (driver, sign) in [(Driver::Muscle, 1.0), (Driver::Trunk, -1.0)] {
            let major = 0.03 * resonance;
            let drive = Drive { from_s: 0.0, until_s: 90.0, frequency, major, minor: sign * major, plane: 0.3, driver };
            let course = free(0.08, vec![drive]).course(60.0);
            let late = &course.direction[40_000..];
            let mean = late.iter().map(|a| a.truncate().length() * 0.42).sum::<f64>() / late.len() as f64;
            assert!((mean / 0.03 - 1.0).abs() < 0.02, "{driver:?}: {mean}");
            let turned: f64 = late.windows(2).map(|a| a[0].truncate().angle_to(a[1].truncate())).sum();
            assert_eq!(Way::of(turned), Way::of(sign));
        }
    }
}
