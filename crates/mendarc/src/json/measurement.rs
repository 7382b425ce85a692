//! The documents of `measure` and `tilt`.

use motion::{Measurement, PendulumPath, Task};
use schemars::JsonSchema;
use serde::Serialize;

use super::{Diagnostic, to_text, usual_cautions};

/// The schema of a measurement.
pub const SCHEMA: &str = "mendarc.measurement/1";
/// The schema of tilts.
pub const TILT_SCHEMA: &str = "mendarc.tilt/1";

/// What a measurement tells.
#[derive(Debug, Clone, Copy)]
pub struct Told<'t> {
    /// The measurement.
    pub measured: &'t Measurement,
    /// What was to be measured.
    pub task: &'t Task,
    /// Whether a record was looked at.
    pub checked: bool,
    /// The limit, where it came from the record.
    pub limit_from_record: Option<f64>,
}

/// An exercise measured from a phone's sensors.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Document {
    pub schema: String,
    pub exercise: &'static str,
    pub side: &'static str,
    pub worn: &'static str,
    pub axis: &'static str,
    /// Whether anything can be told; where it is false, every number is null.
    pub usable: bool,
    /// Why not, in words that don't change.
    pub why_not: Vec<&'static str>,
    pub repetitions: Option<u32>,
    /// Whether another way of counting disagrees, or too much is missing.
    pub repetitions_uncertain: bool,
    /// Completed turns of a pendulum as seen from above; null for everything else.
    pub by_direction: Option<ByDirection>,
    /// Against the pose as held, outward and upward positive.
    pub peaks_deg: Option<Vec<f64>>,
    pub holds_s: Option<Vec<f64>>,
    pub elevation_range_deg: Option<f64>,
    pub circle_diameter_cm: Option<f64>,
    pub circle_diameter_sigma_cm: Option<f64>,
    /// Set where no arm length was given and one was assumed.
    pub assumed_arm_length_cm: Option<f64>,
    /// circle or swing.
    pub path: Option<&'static str>,
    pub period_s: Option<f64>,
    /// What a hanging arm of this person would take by itself.
    pub natural_period_s: Option<f64>,
    /// One standard deviation of an angle. A trunk that leans is not in it.
    pub sigma_deg: Option<f64>,
    pub limit_deg: Option<f64>,
    pub limit_from_record: bool,
    pub events: Vec<Event>,
    pub each: Vec<Each>,
    pub tempo: Option<Tempo>,
    pub drop_off: Option<DropOff>,
    /// Experimental, never tried on people.
    pub effort: Option<Effort>,
    pub set_from_s: Option<f64>,
    pub set_until_s: Option<f64>,
    pub has_table: bool,
    pub has_pose: bool,
    pub gravity_sign_turned: bool,
    pub slip_deg: Option<f64>,
    /// Whether exercise and pose were checked against a day's limits.
    pub checked_against_record: bool,
    pub cautions: Vec<String>,
    pub diagnostics: Vec<Diagnostic>,
}

/// Turns each way.
#[derive(Debug, Serialize, JsonSchema)]
pub struct ByDirection {
    pub clockwise: u32,
    pub anticlockwise: u32,
}

/// Something that happened.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Event {
    pub t_s: f64,
    pub kind: &'static str,
    /// Degrees, degrees a second, centimeters or seconds, as the kind has it.
    pub value: f64,
}

/// One repetition.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Each {
    pub from_s: f64,
    pub top_s: f64,
    pub until_s: f64,
    pub fastest_deg_s: f64,
    /// Spectral arc length of the speed; nearer to 0 is smoother.
    pub smoothness: Option<f64>,
}

/// Mean seconds out and back.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Tempo {
    pub out_s: f64,
    pub back_s: f64,
}

/// How peaks change.
#[derive(Debug, Serialize, JsonSchema)]
pub struct DropOff {
    pub slope_deg_per_repetition: f64,
    pub last_over_first: f64,
}

/// Whether a hanging arm was driven.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Effort {
    pub across_m_s2: f64,
    pub moment_nm: Option<f64>,
    pub experimental: bool,
}

/// The document of a measurement.
pub fn document(told: &Told<'_>, diagnostics: Vec<Diagnostic>) -> String {
    to_text(&of(told, told.measured.is_usable(), diagnostics))
}

/// The document of a file that could not be read.
pub fn refused(told: &Told<'_>, diagnostics: Vec<Diagnostic>) -> String {
    let mut document = of(told, false, diagnostics);
    document.why_not.push("not-a-recording");
    to_text(&document)
}

fn of(told: &Told<'_>, usable: bool, diagnostics: Vec<Diagnostic>) -> Document {
    let Told { measured, task, .. } = told;
    let angle = |degrees: f64| rounded(degrees, 1e3);
    let time = |seconds: f64| rounded(seconds, 1e4);
    Document {
        schema: SCHEMA.into(),
        exercise: task.exercise.name(),
        side: task.side.name(),
        worn: task.worn.name(),
        axis: task.axis.name(),
        usable,
        why_not: measured.why_not.iter().map(|why| why.name()).collect(),
        repetitions: measured.repetitions,
        repetitions_uncertain: measured.uncertain,
        by_direction: measured.by_direction.map(|(clockwise, anticlockwise)| ByDirection { clockwise, anticlockwise }),
        peaks_deg: measured.peaks_deg().map(|peaks| peaks.into_iter().map(angle).collect()),
        holds_s: measured.holds_s().map(|holds| holds.into_iter().map(time).collect()),
        elevation_range_deg: measured.elevation_range_deg.map(angle),
        circle_diameter_cm: measured.circle_diameter_cm.map(angle),
        circle_diameter_sigma_cm: measured.circle_diameter_sigma_cm.map(angle),
        assumed_arm_length_cm: measured.assumed_arm_length_cm,
        path: measured.path.map(|path| match path {
            PendulumPath::Circle => "circle",
            PendulumPath::Swing => "swing",
        }),
        period_s: measured.period_s.map(time),
        natural_period_s: measured.path.and(task.arm).map(|arm| time(arm.natural_period_s())),
        sigma_deg: measured.sigma_deg.map(angle),
        limit_deg: task.limit_deg,
        limit_from_record: told.limit_from_record.is_some(),
        events: measured
            .events
            .iter()
            .map(|event| Event { t_s: time(event.t_s), kind: event.kind.name(), value: angle(event.value) })
            .collect(),
        each: measured
            .each
            .iter()
            .map(|one| Each {
                from_s: time(one.from_s),
                top_s: time(one.top_s),
                until_s: time(one.until_s),
                fastest_deg_s: angle(one.fastest_deg_s),
                smoothness: one.smoothness.map(angle),
            })
            .collect(),
        tempo: measured.tempo.map(|tempo| Tempo { out_s: time(tempo.out_s), back_s: time(tempo.back_s) }),
        drop_off: measured.drop_off.map(|drop| DropOff {
            slope_deg_per_repetition: angle(drop.slope_deg),
            last_over_first: angle(drop.last_over_first),
        }),
        effort: measured.effort.map(|effort| Effort {
            across_m_s2: angle(effort.across_m_s2),
            moment_nm: effort.moment_nm.map(angle),
            experimental: true,
        }),
        set_from_s: measured.set_s.map(|(from, _)| time(from)),
        set_until_s: measured.set_s.map(|(_, until)| time(until)),
        has_table: measured.has_table,
        has_pose: measured.has_pose,
        gravity_sign_turned: measured.sign_turned,
        slip_deg: measured.slip_deg.map(angle),
        checked_against_record: told.checked,
        cautions: usual_cautions(),
        diagnostics,
    }
}

fn rounded(value: f64, steps: f64) -> f64 {
    (value * steps).round() / steps
}

/// Up at every row; null where a row could not be used.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Tilts {
    pub schema: String,
    pub t_s: Vec<Option<f64>>,
    pub ux: Vec<Option<f64>>,
    pub uy: Vec<Option<f64>>,
    pub uz: Vec<Option<f64>>,
    pub cautions: Vec<String>,
    pub diagnostics: Vec<Diagnostic>,
}

/// The document of `tilt`.
pub fn tilt(times: &[Option<f64>], up: &[Option<[f64; 3]>], diagnostics: Vec<Diagnostic>) -> String {
    let part = |axis: usize| up.iter().map(|up| up.map(|up| rounded(up[axis], 1e9))).collect();
    to_text(&Tilts {
        schema: TILT_SCHEMA.into(),
        t_s: times.to_vec(),
        ux: part(0),
        uy: part(1),
        uz: part(2),
        cautions: usual_cautions(),
        diagnostics,
    })
}
