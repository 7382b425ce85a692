//! What was measured.

use crate::events::Event;
use crate::pendulum::Path;
use crate::verdict::WhyNot;

body::words! {
    /// A direction as seen from above.
    Direction {
        /// As the hands of a clock on the floor.
        Clockwise = "clockwise",
        /// The other way.
        Anticlockwise = "anticlockwise",
    }
}

/// What a recording comes to. Of an unusable one everything but the reasons is empty.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Measurement {
    /// Why nothing can be told; empty where something can.
    pub why_not: Vec<WhyNot>,
    /// Repetitions, or turns, or cycles.
    pub repetitions: Option<u32>,
    /// Whether another way of counting says otherwise, or too much is missing.
    pub uncertain: bool,
    /// Turns of a pendulum that went around.
    pub by_direction: Option<(u32, u32)>,
    /// Each counted repetition; empty where angles can't be told.
    pub each: Vec<Repeated>,
    /// The largest less the smallest inclination of the limb's axis in the set.
    pub elevation_range_deg: Option<f64>,
    /// Mean of the two principal diameters at the hand.
    pub circle_diameter_cm: Option<f64>,
    /// One standard deviation of it.
    pub circle_diameter_sigma_cm: Option<f64>,
    /// The arm's length that was assumed, where none was given.
    pub assumed_arm_length_cm: Option<f64>,
    /// Around or to and fro.
    pub path: Option<Path>,
    /// Mean seconds of a turn or cycle.
    pub period_s: Option<f64>,
    /// One standard deviation of the angles.
    pub sigma_deg: Option<f64>,
    /// How far the pose after the set is from the one before.
    pub slip_deg: Option<f64>,
    /// Whether gravity came with the other sign, as the table told.
    pub sign_turned: bool,
    /// Whether there was a table, and a pose.
    pub has_table: bool,
    /// Whether angles have a pose to be measured from.
    pub has_pose: bool,
    /// When the set begins and ends.
    pub set_s: Option<(f64, f64)>,
    /// Out and back.
    pub tempo: Option<Tempo>,
    /// How peaks change over the set.
    pub drop_off: Option<DropOff>,
    /// Whether the arm was driven; experimental.
    pub effort: Option<Effort>,
    /// What somebody should know of, in order of time.
    pub events: Vec<Event>,
    /// The angle over time, for a plot.
    pub curve: Option<Curve>,
}

impl Measurement {
    /// Of a recording of which nothing can be told.
    pub fn unusable(why_not: Vec<WhyNot>) -> Self {
        Self { why_not, ..Self::default() }
    }

    /// Whether anything can be told.
    pub fn is_usable(&self) -> bool {
        self.why_not.is_empty()
    }

    /// Peaks of the counted repetitions, in order; `None` where angles can't be told.
    pub fn peaks_deg(&self) -> Option<Vec<f64>> {
        self.each.iter().map(|one| one.peak_deg).collect::<Option<Vec<f64>>>().filter(|peaks| !peaks.is_empty())
    }

    /// Holds of the counted repetitions, in order.
    pub fn holds_s(&self) -> Option<Vec<f64>> {
        self.each.iter().map(|one| one.hold_s).collect::<Option<Vec<f64>>>().filter(|holds| !holds.is_empty())
    }
}

/// One counted repetition.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Repeated {
    /// When it begins.
    pub from_s: f64,
    /// When it is highest.
    pub top_s: f64,
    /// When it is over.
    pub until_s: f64,
    /// How far, against the pose.
    pub peak_deg: Option<f64>,
    /// How long it was held there.
    pub hold_s: Option<f64>,
    /// Greatest angular speed, degrees a second.
    pub fastest_deg_s: f64,
    /// Spectral arc length of its speed.
    pub smoothness: Option<f64>,
}

/// Mean seconds of the way out and of the way back.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tempo {
    /// Out.
    pub out_s: f64,
    /// Back.
    pub back_s: f64,
}

/// How peaks change over the set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DropOff {
    /// The middle of all slopes between two peaks, degrees a repetition.
    pub slope_deg: f64,
    /// Mean of the last three over mean of the first three.
    pub last_over_first: f64,
}

/// Whether a hanging arm was driven by its own muscles. Experimental: never tried on people.
///
/// # Method
/// Of a stiff arm that hangs from a shoulder that moves, the specific force across the limb at the distance of the
/// center of oscillation is r·τ/I: what the trunk does falls out, what muscles do stays (evidence notes, "Active-effort
/// index"). It holds only for a phone at that distance, about 10 cm below the elbow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effort {
    /// Root mean square of the specific force across the limb, m/s².
    pub across_m_s2: f64,
    /// The moment at the shoulder that would make it, where the person's arm is known, newton meters.
    pub moment_nm: Option<f64>,
}

/// An angle over time.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Curve {
    /// The time of the first value.
    pub start_s: f64,
    /// Between two values.
    pub step_s: f64,
    /// Degrees.
    pub angle_deg: Vec<f64>,
    /// What the angle is, for a caption.
    pub of: &'static str,
}
