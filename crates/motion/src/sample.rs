//! Samples of a phone's sensors, put in order: time that runs forward, gaps, one rate.

use glam::DVec3;

/// One reading of accelerometer and gyroscope.
///
/// # Units and shape
/// Time in seconds; specific force in m/s² (at rest the axis that points up reads +9.81); angular rate in rad/s; all in
/// the phone's own axes: x to the right of the screen, y to its top, z out of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// When, in seconds.
    pub t_s: f64,
    /// Specific force.
    pub force: DVec3,
    /// Angular rate.
    pub rate: DVec3,
}

impl Sample {
    /// From the numbers of a row.
    pub const fn new(t_s: f64, force: [f64; 3], rate: [f64; 3]) -> Self {
        Self { t_s, force: DVec3::from_array(force), rate: DVec3::from_array(rate) }
    }

    /// Whether every number is one a phone can give.
    pub fn is_believable(&self) -> bool {
        let force = self.force.is_finite() && self.force.abs().max_element() <= GREATEST_FORCE;
        let rate = self.rate.is_finite() && self.rate.abs().max_element() <= GREATEST_RATE;
        self.t_s.is_finite() && self.t_s.abs() <= GREATEST_TIME && force && rate
    }

    /// The same reading of a phone that gives gravity with the other sign.
    #[must_use]
    pub fn with_force_times(self, sign: f64) -> Self {
        Self { force: self.force * sign, ..self }
    }
}

/// Accelerometers of phones end at 16 g; far above is another quantity.
const GREATEST_FORCE: f64 = 1000.0;
/// Gyroscopes of phones end at 2000 degrees a second, 35 rad/s; degrees taken for radians are far above.
const GREATEST_RATE: f64 = 100.0;
/// Three years in seconds, and time stamps in milliseconds for as many hours.
const GREATEST_TIME: f64 = 1e8;

/// What putting rows in order had to leave out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct LeftOut {
    /// Rows that no sensor gives: not finite, or beyond every range.
    pub unbelievable: usize,
    /// Rows whose time is before the row above.
    pub backward: usize,
    /// Rows with the time of the row above.
    pub repeated: usize,
}

impl LeftOut {
    /// All of them.
    pub const fn total(self) -> usize {
        self.unbelievable + self.backward + self.repeated
    }
}

/// Samples whose time runs forward.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Recording {
    samples: Vec<Sample>,
    /// For every row that came in, the sample it became.
    places: Vec<Option<usize>>,
    left_out: LeftOut,
}

impl Recording {
    /// From rows as they were read; a row that could not be read is `None`.
    ///
    /// # Method
    /// A row whose time is not after that of the last row kept is left out and counted: of two rows that claim one
    /// time nobody can say which is right, and the first is kept.
    pub fn of(rows: impl IntoIterator<Item = Option<Sample>>) -> Self {
        let mut recording = Self::default();
        for row in rows {
            let kept = row.filter(Sample::is_believable);
            let last = recording.samples.last().map(|sample| sample.t_s);
            let place = match (kept, last) {
                (None, _) => {
                    recording.left_out.unbelievable += 1;
                    None
                }
                (Some(sample), Some(last)) if sample.t_s < last => {
                    recording.left_out.backward += 1;
                    None
                }
                (Some(sample), Some(last)) if sample.t_s <= last => {
                    recording.left_out.repeated += 1;
                    None
                }
                (Some(sample), _) => {
                    recording.samples.push(sample);
                    Some(recording.samples.len() - 1)
                }
            };
            recording.places.push(place);
        }
        recording
    }

    /// The samples, in the order of time.
    pub fn samples(&self) -> &[Sample] {
        &self.samples
    }

    /// For every row that came in, the sample it became.
    pub fn places(&self) -> &[Option<usize>] {
        &self.places
    }

    /// What was left out.
    pub const fn left_out(&self) -> LeftOut {
        self.left_out
    }

    /// Seconds from the first to the last sample.
    pub fn duration_s(&self) -> f64 {
        match (self.samples.first(), self.samples.last()) {
            (Some(first), Some(last)) => last.t_s - first.t_s,
            _ => 0.0,
        }
    }

    /// The usual step between samples in seconds: the mean of those near the median; none of fewer than two samples.
    pub fn step_s(&self) -> Option<f64> {
        let mut steps: Vec<f64> = self.samples.windows(2).map(|pair| pair[1].t_s - pair[0].t_s).collect();
        if steps.is_empty() {
            return None;
        }
        steps.sort_by(f64::total_cmp);
        let median = steps[steps.len() / 2];
        let near = steps.iter().filter(|step| **step > median / 2.0 && **step < median * NEAR_THE_USUAL);
        let (count, sum) = near.fold((0_u32, 0.0), |(count, sum), step| (count + 1, sum + step));
        Some(whole_rate(if count == 0 { median } else { sum / f64::from(count) }))
    }

    /// Whether steps are alike but for rounding and jitter, so that one step serves all.
    pub fn is_even(&self, step_s: f64) -> bool {
        self.samples.windows(2).all(|pair| ((pair[1].t_s - pair[0].t_s) / step_s - 1.0).abs() < EVEN_WITHIN)
    }

    /// Places where samples are missing for longer than `longest_s`.
    pub fn gaps(&self, longest_s: f64) -> Vec<Gap> {
        let pairs = self.samples.windows(2);
        pairs
            .filter(|pair| pair[1].t_s - pair[0].t_s > longest_s)
            .map(|pair| Gap { from_s: pair[0].t_s, to_s: pair[1].t_s })
            .collect()
    }

    /// The same samples with gravity's sign as given.
    #[must_use]
    pub fn with_force_times(&self, sign: f64) -> Self {
        let samples = self.samples.iter().map(|sample| sample.with_force_times(sign)).collect();
        Self { samples, ..self.clone() }
    }
}

/// A step so near to that of a whole number of samples a second that it is meant to be: time stamps are rounded, and
/// where a filter has started or rests is asked with its step.
fn whole_rate(step_s: f64) -> f64 {
    let rate = (1.0 / step_s).round();
    let whole = 1.0 / rate;
    if rate >= 1.0 && (whole / step_s - 1.0).abs() < WHOLE_WITHIN { whole } else { step_s }
}

/// One millisecond of rounding in ten seconds (own choice).
const WHOLE_WITHIN: f64 = 1e-4;
/// A step half as long again still belongs to the usual ones; one of double length is a sample that is missing.
const NEAR_THE_USUAL: f64 = 1.5;
/// Time stamps in whole milliseconds at 60 Hz are off by four percent; a tenth is more than rounding.
const EVEN_WITHIN: f64 = 0.1;

/// A time in which samples are missing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// The last sample before it.
    pub from_s: f64,
    /// The first sample after it.
    pub to_s: f64,
}

impl Gap {
    /// How long.
    pub fn seconds(self) -> f64 {
        self.to_s - self.from_s
    }

    /// Whether any of it lies between two times.
    pub fn touches(self, from_s: f64, to_s: f64) -> bool {
        self.to_s > from_s && self.from_s < to_s
    }
}

/// A gap this long is told (evidence notes on sensing with a phone, "Notes" of the orientation part; own choice there).
pub const GAP_TOLD_S: f64 = 0.1;
/// After a gap this long orientation starts anew from gravity (same place).
pub const GAP_SPLITS_S: f64 = 0.5;
/// The slowest recording that is read; half a hertz of grace (contract).
pub const SLOWEST_HZ: f64 = 9.5;
/// The fastest recording that is read, with the same grace (contract).
pub const FASTEST_HZ: f64 = 525.0;
/// Faster recordings are averaged down to about this before repetitions are looked for (own choice: movements of an arm
/// end at 10 Hz).
const WORKING_HZ: f64 = 100.0;
/// A recording whose gaps are longer than this many times what was recorded is not laid on a grid (own choice).
const MOST_EMPTY: f64 = 4.0;

/// Samples at even steps, interpolated.
#[derive(Debug, Clone, PartialEq)]
pub struct Grid {
    /// Time of the first.
    pub start_s: f64,
    /// Between two.
    pub step_s: f64,
    /// Specific force, m/s².
    pub force: Vec<DVec3>,
    /// Angular rate, rad/s.
    pub rate: Vec<DVec3>,
    /// Stretches without a gap that splits, from and until; they cover the grid.
    pub stretches: Vec<(usize, usize)>,
}

impl Grid {
    /// Lays a recording on even steps; `None` where it is too short, too slow or mostly empty.
    ///
    /// # Method
    /// Linear interpolation. Above 150 Hz as many steps as make about 100 Hz are averaged first.
    pub fn of(recording: &Recording) -> Option<Self> {
        let step_s = recording.step_s()?;
        let averaged = ((1.0 / step_s) / WORKING_HZ).round().max(1.0);
        Self::with_step(recording, step_s, averaged as usize)
    }

    /// Lays a recording on its own usual step.
    pub fn fine(recording: &Recording) -> Option<Self> {
        Self::with_step(recording, recording.step_s()?, 1)
    }

    fn with_step(recording: &Recording, step_s: f64, averaged: usize) -> Option<Self> {
        let samples = recording.samples();
        let first = samples.first()?;
        let count = (recording.duration_s() / step_s + ROUNDING).floor() + 1.0;
        if count > (samples.len() as f64) * (1.0 + MOST_EMPTY) || count < 2.0 {
            return None;
        }
        let count = count as usize;
        let mut grid = Self {
            start_s: first.t_s,
            step_s,
            force: Vec::with_capacity(count),
            rate: Vec::with_capacity(count),
            stretches: Vec::new(),
        };
        let mut after = 1;
        let mut from = 0;
        for place in 0..count {
            let t = first.t_s + step_s * place as f64;
            while after + 1 < samples.len() && samples[after].t_s < t {
                after += 1;
            }
            let [before, next] = [samples[after - 1], samples[after]];
            let length = next.t_s - before.t_s;
            let share = ((t - before.t_s) / length).clamp(0.0, 1.0);
            grid.force.push(before.force.lerp(next.force, share));
            grid.rate.push(before.rate.lerp(next.rate, share));
            if length > GAP_SPLITS_S && place > from && t >= before.t_s + length / 2.0 {
                let previous = grid.start_s + step_s * (place as f64 - 1.0);
                if previous < before.t_s + length / 2.0 {
                    grid.stretches.push((from, place));
                    from = place;
                }
            }
        }
        grid.stretches.push((from, count));
        Some(if averaged > 1 { grid.averaged(averaged) } else { grid })
    }

    fn averaged(self, by: usize) -> Self {
        let mean = |values: &[DVec3]| -> Vec<DVec3> {
            values.chunks(by).map(|chunk| chunk.iter().sum::<DVec3>() / chunk.len() as f64).collect()
        };
        let force = mean(&self.force);
        let mut stretches: Vec<(usize, usize)> =
            self.stretches.iter().map(|(from, until)| (from / by, until / by)).filter(|(a, b)| a < b).collect();
        let count = force.len();
        match stretches.last_mut() {
            Some(last) => last.1 = count,
            None => stretches.push((0, count)),
        }
        Self {
            // The mean of a chunk stands in its middle.
            start_s: self.start_s + self.step_s * (by as f64 - 1.0) / 2.0,
            step_s: self.step_s * by as f64,
            force,
            rate: mean(&self.rate),
            stretches,
        }
    }

    /// How many steps.
    pub fn len(&self) -> usize {
        self.force.len()
    }

    /// Whether there is none.
    pub fn is_empty(&self) -> bool {
        self.force.is_empty()
    }

    /// The time of a step.
    pub fn time(&self, place: usize) -> f64 {
        self.start_s + self.step_s * place as f64
    }

    /// The step nearest to a time.
    pub fn place(&self, t_s: f64) -> usize {
        let place = ((t_s - self.start_s) / self.step_s).round();
        (place.max(0.0) as usize).min(self.len().saturating_sub(1))
    }

    /// So many steps as fit into a time, at least one.
    pub fn steps(&self, seconds: f64) -> usize {
        ((seconds / self.step_s).round() as usize).max(1)
    }
}

/// Of the arithmetic.
const ROUNDING: f64 = 1e-6;
