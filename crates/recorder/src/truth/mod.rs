//! What really happened, taken from the noise-free movement by the definitions of the contract.

mod figures;
mod repetitions;

use serde_json::{Value, json};

pub use figures::{Revolution, cycles, revolutions};
pub use repetitions::{Repetition, counted, longest_hold, percentile_95};

use crate::pendulum::Way;

/// What really happened in a recording.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Truth {
    /// Repetitions that count; for a pendulum completed revolutions, or full cycles of a swing.
    pub repetitions: usize,
    /// Repetitions that were planned to count; nobody plans when a pendulum comes round.
    pub planned: Option<usize>,
    /// Repetitions that were planned to fall short.
    pub partial: usize,
    /// When each repetition began, peaked and ended.
    pub spans: Vec<Repetition>,
    /// Greatest angle of each.
    pub peaks_deg: Option<Vec<f64>>,
    /// The 95th percentile of the angle in each.
    pub peaks_95_deg: Option<Vec<f64>>,
    /// Hold of each.
    pub holds_s: Option<Vec<f64>>,
    /// Clockwise and anticlockwise revolutions of a pendulum that circles.
    pub by_direction: Option<(usize, usize)>,
    /// Backward and forward rolls of the shoulders.
    pub rolls: Option<(usize, usize)>,
    /// Largest less smallest inclination of the sensor's axis in the set.
    pub elevation_range_deg: Option<f64>,
    /// The same of the limb itself.
    pub limb_elevation_range_deg: Option<f64>,
    /// Every revolution or cycle, also those too small to count.
    pub revolutions: Vec<Revolution>,
    /// Mean of the two principal diameters over all counted revolutions.
    pub circle_diameter_cm: Option<f64>,
    /// Shorter over longer principal diameter, mean over all counted revolutions.
    pub axis_ratio: Option<f64>,
    /// Mean time of a counted revolution or cycle.
    pub period_s: Option<f64>,
    /// Root mean square of the moment of the shoulder's muscles while a pendulum is driven, newton meters.
    pub muscle_moment_nm: Option<f64>,
    /// By how much the strap slipped.
    pub slipped_deg: Option<f64>,
}

impl Truth {
    /// Counts revolutions or cycles that are large enough.
    pub fn take_revolutions(&mut self, found: Vec<Revolution>, directed: bool) {
        let counted: Vec<&Revolution> = found.iter().filter(|revolution| revolution.counts()).collect();
        let many = counted.len();
        let ways = |way| counted.iter().filter(|revolution| revolution.way == way).count();
        self.repetitions = many;
        self.by_direction = directed.then(|| (ways(Way::Clockwise), ways(Way::Anticlockwise)));
        if many > 0 {
            let mean = |of: fn(&Revolution) -> f64| Some(counted.iter().map(|one| of(one)).sum::<f64>() / many as f64);
            self.period_s = mean(|one| one.until_s - one.from_s);
            self.circle_diameter_cm = mean(|one| one.mean_diameter_cm()).filter(|_| directed);
            self.axis_ratio = mean(|one| one.shorter_cm / one.longer_cm);
        }
        self.revolutions = found;
    }

    /// Moves every time by what the phone's clock showed at the start.
    pub fn shift(&mut self, by: f64) {
        for span in &mut self.spans {
            span.shift(by);
        }
        for revolution in &mut self.revolutions {
            revolution.from_s += by;
            revolution.until_s += by;
        }
    }

    /// For the truth file.
    pub fn to_json(&self) -> Value {
        let pair = |first: &str, second: &str, pair: Option<(usize, usize)>| {
            pair.map(|(one, other)| json!({ first: one, second: other }))
        };
        json!({
            "repetitions": self.repetitions,
            "planned": self.planned,
            "partial": self.partial,
            "by_direction": pair("clockwise", "anticlockwise", self.by_direction),
            "rolls": pair("backward", "forward", self.rolls),
            "peaks_deg": self.peaks_deg,
            "peaks_95_deg": self.peaks_95_deg,
            "holds_s": self.holds_s,
            "elevation_range_deg": self.elevation_range_deg,
            "limb_elevation_range_deg": self.limb_elevation_range_deg,
            "circle_diameter_cm": self.circle_diameter_cm,
            "axis_ratio": self.axis_ratio,
            "period_s": self.period_s,
            "muscle_moment_nm": self.muscle_moment_nm,
            "slipped_deg": self.slipped_deg,
            "spans": self.spans.iter().map(|span| json!([span.from_s, span.peak_s, span.until_s])).collect::<Vec<_>>(),
            "revolutions": self.revolutions.iter().copied().map(Revolution::to_json).collect::<Vec<_>>(),
        })
    }
}
