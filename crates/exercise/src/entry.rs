//! One entry of the catalogue.

use diagnostic::Span;
use quantity::Degrees;

use crate::{
    Demand, Equipment, Kind, MuscleActivity, Occasion, OtherArm, Positions, Posture, Purpose, SlingDuring, Supervision,
};

/// One exercise, activity, care pose or visit test.
#[derive(Debug, Clone)]
pub struct Entry {
    /// The name in files, commands and messages, in kebab case.
    pub id: String,
    /// What it is.
    pub kind: Kind,
    /// What it is for; exercises only.
    pub purpose: Option<Purpose>,
    /// How the body is placed.
    pub posture: Posture,
    /// What is needed; empty for nothing.
    pub equipment: Vec<Equipment>,
    /// What can stand in for the equipment, in free words.
    pub instead: Vec<String>,
    /// What the other arm does.
    pub other_arm: OtherArm,
    /// Who has to be there.
    pub supervision: Supervision,
    /// Whether the sling is on.
    pub sling: SlingDuring,
    /// What is asked of the operated arm. The target of an exercise belongs to the first.
    pub demands: Vec<Demand>,
    /// What is asked of the other arm.
    pub other_demands: Vec<Demand>,
    /// How often; every exercise has one.
    pub dose: Option<Dose>,
    /// What was measured of the muscles.
    pub muscle: MuscleActivity,
    /// The pose, held against the resting allowance and not against the limits:
    /// every care entry, and activities such as sleeping or dressing with the arm at rest.
    pub resting: Option<Resting>,
    /// Where the body is at the start and at the end; every exercise and every visit test has them.
    pub positions: Option<Positions>,
    /// Where the degrees, loads and efforts come from.
    pub evidence: Vec<&'static evidence::Entry>,
    /// Where it was written.
    pub span: Span,
}

impl Entry {
    /// The demand an exercise's target belongs to.
    pub fn target(&self) -> Option<&Demand> {
        self.demands.first()
    }

    /// The first part of the ids of its messages, such as `exercise-pendulum`.
    pub fn message_id(&self) -> String {
        format!("{}-{}", self.kind, self.id)
    }
}

/// How often an exercise is done.
#[derive(Debug, Clone, PartialEq)]
pub struct Dose {
    /// Sets at a time.
    pub sets: u16,
    /// Repetitions in a set; for a pendulum, circles each way.
    pub repetitions: u16,
    /// How long each repetition is held, in seconds; 0 for not at all.
    pub hold_s: u16,
    /// Times a day.
    pub times_per_day: u16,
    /// Days a week, where it is not every day.
    pub days_per_week: Option<u16>,
    /// Where the numbers come from.
    pub evidence: Vec<&'static evidence::Entry>,
    /// Where it was written.
    pub span: Span,
}

/// A care pose, as the resting allowance counts it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Resting {
    /// The greatest elevation, in any plane.
    pub elevation: Degrees,
    /// The furthest inward the arm is turned; 70 is about the forearm on the belly.
    pub rotation_internal: Degrees,
    /// The furthest outward the arm is turned; 0 is the forearm straight ahead.
    pub rotation_external: Degrees,
    /// What the pose is for.
    pub occasion: Occasion,
}
