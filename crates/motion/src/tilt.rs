//! Where up is at every row of a recording.

use crate::orientation::{Turns, causal, offline, offline_turns};
use crate::sample::{Grid, Recording};
use crate::setup::{Calm, stillnesses, table};

/// Live or stored.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Estimate {
    /// As it is known at the time of each sample.
    Causal,
    /// With what came later.
    Offline,
}

/// Up in the phone's axes.
#[derive(Debug, Clone, PartialEq)]
pub struct Tilt {
    /// A unit vector for every row; `None` for a row that could not be used.
    pub up: Vec<Option<[f64; 3]>>,
    /// Whether the table told that gravity came with the other sign, which was turned.
    pub sign_turned: bool,
    /// Whether there was a table.
    pub has_table: bool,
}

/// Estimates up at every row; `None` where gravity is missing, so that nothing points up.
pub fn tilt(recording: &Recording, estimate: Estimate) -> Option<Tilt> {
    let mut lengths: Vec<f64> = recording.samples().iter().map(|sample| sample.force.length()).collect();
    lengths.sort_by(f64::total_cmp);
    if lengths.get(lengths.len() / 2).is_none_or(|middle| *middle < LEAST_FORCE) {
        return None;
    }
    let sign = table_sign(recording);
    let turned = recording.with_force_times(sign.unwrap_or(1.0));
    let ups = match estimate {
        Estimate::Causal => causal(&turned),
        Estimate::Offline => offline(&turned),
    };
    let at = |place: &Option<usize>| place.and_then(|place| ups.get(place)).map(|up| up.to_array());
    Some(Tilt {
        up: recording.places().iter().map(at).collect(),
        sign_turned: sign.is_some_and(|sign| sign < 0.0),
        has_table: sign.is_some(),
    })
}

/// Half of gravity: what is below for most of the time has no gravity in it (own choice).
const LEAST_FORCE: f64 = 4.9;

/// The sign of gravity that the table at the beginning tells, where there is one.
pub fn table_sign(recording: &Recording) -> Option<f64> {
    let grid = Grid::of(recording)?;
    let Turns { bias, .. } = offline_turns(&grid);
    table(&grid, &stillnesses(&grid, &bias, Calm::Usual)).map(|(_, sign)| sign)
}
