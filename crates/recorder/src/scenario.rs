//! What is to be recorded, and how badly.

use crate::exercise::{Axis, Exercise, Negative, Side, Subject, Worn};
use crate::pendulum::{Figure, Way};
use crate::phone::{Gravity, RateUnit, Rounding, Sensors};
use crate::random::Random;
use crate::scene::{Elbow, Ending, Opening};
use crate::strap::{Fit, Grip};

/// Rows that are lost in a run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// Where in the set it begins, as a share of the set.
    pub at: f64,
    /// How long it is.
    pub seconds: f64,
}

/// Everything that decides a recording. The same scenario gives the same recording.
#[derive(Debug, Clone, PartialEq)]
pub struct Scenario {
    /// Of person, phone, strap and set.
    pub seed: u64,
    /// What happens.
    pub subject: Subject,
    /// The arm.
    pub side: Side,
    /// Where the phone is worn.
    pub worn: Worn,
    /// The sensor's axis along the limb.
    pub axis: Axis,
    /// The figure of a pendulum.
    pub figure: Figure,
    /// The elbow in the pose of internal and external rotation.
    pub elbow: Elbow,
    /// What comes before the set.
    pub opening: Opening,
    /// What comes after the set.
    pub ending: Ending,
    /// Rows a second.
    pub rate_hz: f64,
    /// Sign of gravity.
    pub gravity: Gravity,
    /// Rounding.
    pub rounding: Rounding,
    /// The unit of the angular rate in the file.
    pub rate_unit: RateUnit,
    /// Whether the sensors err.
    pub sensors: Sensors,
    /// Whether strap and tissue are real.
    pub fit: Fit,
    /// Whether the strap holds.
    pub grip: Grip,
    /// Rows lost in a run.
    pub gaps: Vec<Gap>,
    /// How long something lasts that is no exercise, seconds; a minute takes some 20 MB of memory.
    pub seconds: f64,
}

/// Shares of recordings with a fault: own choice.
const SLIPS: f64 = 0.04;
const HAS_GAP: f64 = 0.08;
const OPPOSITE_GRAVITY: f64 = 0.35;
const ELBOW_STRAIGHT: f64 = 0.3;

impl Scenario {
    /// A usual recording: a phone in a browser at 60 Hz, an exercise with all its poses.
    pub fn usual(seed: u64, subject: Subject) -> Self {
        let worn = match subject {
            Subject::Exercise(exercise) => exercise.places()[0],
            Subject::Negative(_) => Worn::Forearm,
        };
        // What is no exercise has no poses around it.
        let (opening, ending) = match subject {
            Subject::Exercise(_) => (Opening::TableAndPose, Ending::PoseAndHandling),
            Subject::Negative(_) => (Opening::Nothing, Ending::Nothing),
        };
        Self {
            seed,
            subject,
            side: Side::Right,
            worn,
            axis: Axis::Y,
            figure: Figure::Circles(Way::Clockwise),
            elbow: Elbow::Bent,
            opening,
            ending,
            rate_hz: 60.0,
            gravity: Gravity::Specified,
            rounding: Rounding::Tenths,
            rate_unit: RateUnit::Radians,
            sensors: Sensors::Real,
            fit: Fit::Real,
            grip: Grip::Holds,
            gaps: Vec::new(),
            seconds: 60.0,
        }
    }

    /// Perfect sensors on a perfect strap: for tests of everything but errors.
    pub fn perfect(seed: u64, subject: Subject) -> Self {
        Self { rounding: Rounding::None, sensors: Sensors::Perfect, fit: Fit::Perfect, ..Self::usual(seed, subject) }
    }

    /// A recording as it may come, of this subject: side, place, phone, poses and faults by chance.
    pub fn draw(seed: u64, subject: Subject) -> Self {
        let random = &mut Random::new(seed, "scenario");
        let usual = Self::usual(seed, subject);
        let way = random.one_of(&[Way::Clockwise, Way::Anticlockwise]);
        let is_exercise = matches!(subject, Subject::Exercise(_));
        let opening = match random.uniform(0.0, 1.0) {
            _ if !is_exercise => Opening::Nothing,
            chance if chance < 0.8 => Opening::TableAndPose,
            chance if chance < 0.92 => Opening::Pose,
            _ => Opening::Nothing,
        };
        let ending = match (opening, random.uniform(0.0, 1.0)) {
            (Opening::Nothing, _) => Ending::Nothing,
            (_, chance) if chance < 0.7 => Ending::PoseAndHandling,
            _ => Ending::Pose,
        };
        let gravity = if opening == Opening::TableAndPose && random.happens(OPPOSITE_GRAVITY) {
            Gravity::Opposite
        } else {
            // Without the table nothing tells the sign, so the specification's is assumed.
            Gravity::Specified
        };
        let gaps = if is_exercise && random.happens(HAS_GAP) {
            (0..random.whole(1, 2))
                .map(|_| Gap { at: random.uniform(0.1, 0.9), seconds: random.uniform(0.15, 2.0) })
                .collect()
        } else {
            Vec::new()
        };
        Self {
            side: random.one_of(Side::ALL),
            worn: match subject {
                Subject::Exercise(exercise) => random.one_of(exercise.places()),
                Subject::Negative(_) => random.one_of(&[Worn::Forearm, Worn::Wrist, Worn::UpperArm]),
            },
            axis: random.one_of(&[Axis::Y, Axis::Y, Axis::Y, Axis::X]),
            figure: random.one_of(&[
                Figure::Circles(way),
                Figure::Circles(way),
                Figure::BothWays(way),
                Figure::Ellipses(way),
                Figure::Swings,
            ]),
            elbow: if random.happens(ELBOW_STRAIGHT) { Elbow::Straight } else { Elbow::Bent },
            opening,
            ending,
            rate_hz: random.one_of(&[60.0, 60.0, 60.0, 60.0, 60.0, 25.0, 50.0, 100.0, 200.0]),
            gravity,
            rounding: if random.happens(0.8) { Rounding::Tenths } else { Rounding::None },
            grip: if is_exercise && ending != Ending::Nothing && random.happens(SLIPS) {
                Grip::Slips
            } else {
                Grip::Holds
            },
            rate_unit: random.one_of(&[RateUnit::Radians, RateUnit::Radians, RateUnit::Radians, RateUnit::Degrees]),
            gaps,
            seconds: random.uniform(60.0, 180.0),
            ..usual
        }
    }

    /// The subject of the recording with this number, when no exercise is asked for: four exercises, then something
    /// that is none.
    pub fn subject_in_turn(number: usize) -> Subject {
        let (round, place) = (number / 5, number % 5);
        if place == 4 {
            Subject::Negative(Negative::ALL[round % Negative::ALL.len()])
        } else {
            Subject::Exercise(Exercise::ALL[(round * 4 + place) % Exercise::ALL.len()])
        }
    }
}
