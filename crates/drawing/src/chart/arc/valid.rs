//! What can't be drawn as an arc.

use body::Angle;

use super::super::error::{ChartError, drawable};
use super::Arc;

/// The first fault.
pub(super) fn check(arc: &Arc) -> Result<(), ChartError> {
    for place in arc.center_mm {
        drawable("place of the joint", place)?;
    }
    drawable("radius", arc.radius_mm)?;
    if arc.radius_mm < SMALLEST {
        return Err(ChartError::NoRoom { width_mm: arc.radius_mm, height_mm: arc.radius_mm });
    }
    drawable("zero position", arc.zero.degrees())?;
    let [from, to] = ordered("whole way", arc.whole)?;
    inside("whole way", from, FULL)?;
    inside("whole way", to, FULL)?;
    if from == to {
        return Err(ChartError::Empty("whole way"));
    }
    let whole = [from, to];
    if let Some(allowed) = arc.allowed {
        ordered("allowed", allowed)?.into_iter().try_for_each(|end| inside("allowed", end, whole))?;
    }
    if let Some((goal, _)) = &arc.goal {
        ordered("goal", *goal)?.into_iter().try_for_each(|end| inside("goal", end, whole))?;
        if goal[0] == goal[1] {
            return Err(ChartError::Empty("goal"));
        }
    }
    if let Some((limit, _)) = arc.limit {
        inside("limit", finite("limit", limit)?, whole)?;
        // A picture that allows what it forbids is wrong whatever the numbers say.
        if let Some([_, to]) = arc.allowed {
            inside("allowed", to.degrees(), [from, limit.degrees()])?;
        }
    }
    for (at, _) in &arc.notes {
        inside("note", finite("note", *at)?, whole)?;
    }
    for measured in &arc.measured {
        inside("measured", finite("measured", measured.value)?, whole)?;
        if let Some(error) = measured.error {
            inside("error of a measured value", finite("error of a measured value", error)?, ERROR)?;
        }
    }
    Ok(())
}

fn finite(what: &'static str, angle: Angle) -> Result<f64, ChartError> {
    drawable(what, angle.degrees())
}

fn ordered(what: &'static str, ends: [Angle; 2]) -> Result<[f64; 2], ChartError> {
    let [from, to] = [finite(what, ends[0])?, finite(what, ends[1])?];
    if to < from { Err(ChartError::Reversed(what)) } else { Ok([from, to]) }
}

fn inside(what: &'static str, value: f64, [from, to]: [f64; 2]) -> Result<(), ChartError> {
    match from - SLACK <= value && value <= to + SLACK {
        true => Ok(()),
        false => Err(ChartError::Outside { what, value }),
    }
}

/// A smaller arc can't be read, in millimeters.
pub(super) const SMALLEST: f64 = 6.0;
/// The ways of all joints, in degrees from their zero positions.
const FULL: [f64; 2] = [-90.0, 180.0];
/// A larger error says that nothing was measured.
const ERROR: [f64; 2] = [0.0, 45.0];
/// Degrees that come of counting in radians.
const SLACK: f64 = 1e-9;
