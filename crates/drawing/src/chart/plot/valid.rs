//! What can't be drawn as a chart, and the ranges of what can.

use super::super::error::{self, ChartError, drawable};
use super::super::pen::is_written;
use super::super::scale::{DAYS_A_WEEK, round_range};
use super::{Axis, Bound, Count, Multiples, Reading, Seen, Series, Spread};

/// The ends of the level and of the upright axis.
pub(super) fn ranges(of: &Multiples) -> Result<[[f64; 2]; 2], ChartError> {
    let [width, height] = of.size_mm;
    error::size(width, height, [LEAST; 2])?;
    for (what, text) in [("title", &of.title), ("description", &of.description)] {
        written(what, text)?;
    }
    for (what, axis) in [("level axis", &of.x), ("upright axis", &of.y)] {
        written(what, &axis.title)?;
    }
    if of.panels.is_empty() || of.columns == 0 {
        return Err(ChartError::Empty("charts"));
    }
    let mut values = Values::default();
    for panel in &of.panels {
        if panel.series.is_empty() {
            return Err(ChartError::Empty("chart"));
        }
        for series in &panel.series {
            values.add(series, of)?;
        }
    }
    Ok([range("level axis", &of.x, &values.x)?, range("upright axis", &of.y, &values.y)?])
}

/// All values that have to find a place.
#[derive(Default)]
struct Values {
    x: Vec<f64>,
    y: Vec<f64>,
}

impl Values {
    fn add(&mut self, series: &Series, of: &Multiples) -> Result<(), ChartError> {
        match series {
            Series::Line { readings, .. } => {
                if !readings.is_sorted_by(|one, other| one.x <= other.x) {
                    return Err(in_order_or_finite("line", readings.iter().map(|reading| reading.x)));
                }
                self.readings(readings, of)
            }
            Series::Points { readings, .. } => self.readings(readings, of),
            Series::Band { course, .. } => self.course("band", course),
            Series::Funnel { limits, .. } => self.course("funnel", limits),
            Series::Steps { steps, until, .. } => {
                if steps.is_empty() {
                    return Err(ChartError::Empty("steps"));
                }
                let places: Vec<f64> = steps.iter().map(|step| step.from).chain([*until]).collect();
                if !places.is_sorted_by(|one, other| one < other) {
                    return Err(in_order_or_finite("steps", places.into_iter()));
                }
                self.x.extend(places);
                self.y.extend(steps.iter().map(|step| step.y));
                Ok(())
            }
            Series::Reference { text, at } => {
                written("reference line", text)?;
                match at {
                    Bound::X(x) => self.x.push(*x),
                    Bound::Y(y) => self.y.push(*y),
                }
                Ok(())
            }
        }
    }

    fn readings(&mut self, readings: &[Reading], of: &Multiples) -> Result<(), ChartError> {
        if readings.is_empty() {
            return Err(ChartError::Empty("readings"));
        }
        for reading in readings {
            self.x.push(reading.x);
            match reading.seen {
                Seen::Value { y, error } => {
                    let error = drawable("error of a reading", error.unwrap_or(0.0))?;
                    if error < 0.0 {
                        return Err(ChartError::Reversed("error of a reading"));
                    }
                    self.y.extend([y - error, y + error]);
                }
                Seen::MoreThan(y) => {
                    written("what is more than could be measured", &of.censored.more_than)?;
                    self.y.push(y);
                }
                Seen::LessThan(y) => {
                    written("what is less than could be measured", &of.censored.less_than)?;
                    self.y.push(y);
                }
                Seen::CouldNot => written("what could not be done", &of.censored.could_not)?,
            }
        }
        Ok(())
    }

    fn course(&mut self, what: &'static str, course: &[Spread]) -> Result<(), ChartError> {
        if course.len() < 2 {
            return Err(ChartError::OnePlace(what));
        }
        if !course.is_sorted_by(|one, other| one.x < other.x) {
            return Err(in_order_or_finite(what, course.iter().map(|spread| spread.x)));
        }
        for Spread { x, low, middle, high } in course.iter().copied() {
            let ends = [drawable(what, low)?, drawable(what, middle)?, drawable(what, high)?];
            if !ends.is_sorted() {
                return Err(ChartError::Reversed(what));
            }
            self.x.push(x);
            self.y.extend(ends);
        }
        Ok(())
    }
}

/// What is wrong with places of which one does not lie after the other.
fn in_order_or_finite(what: &'static str, places: impl Iterator<Item = f64>) -> ChartError {
    let fault = places.map(|place| drawable(what, place)).find_map(Result::err);
    fault.unwrap_or(ChartError::NotInOrder(what))
}

fn range(what: &'static str, axis: &Axis, values: &[f64]) -> Result<[f64; 2], ChartError> {
    for value in values {
        drawable(what, *value)?;
    }
    let Some([from, until]) = axis.range else {
        let [low, high] = round_range(what, values.iter().copied())?;
        return Ok(match axis.count {
            Count::Numbers | Count::Degrees => [low, high],
            Count::Weeks => {
                let [low, high] = values.iter().fold([f64::MAX, f64::MIN], |[a, b], v| [a.min(*v), b.max(*v)]);
                [(low / DAYS_A_WEEK).floor() * DAYS_A_WEEK, (high / DAYS_A_WEEK).ceil() * DAYS_A_WEEK]
            }
        });
    };
    let (from, until) = (drawable(what, from)?, drawable(what, until)?);
    if until <= from {
        return Err(ChartError::Reversed(what));
    }
    // A range so narrow that its ends are hardly two numbers has no places in between.
    if until - from <= from.abs().max(until.abs()) * NARROW {
        return Err(ChartError::NoRange(what));
    }
    match values.iter().find(|value| **value < from || until < **value) {
        Some(value) => Err(ChartError::Outside { what, value: *value }),
        None => Ok([from, until]),
    }
}

fn written(what: &'static str, text: &str) -> Result<(), ChartError> {
    if is_written(text) { Ok(()) } else { Err(ChartError::NoText(what)) }
}

/// No chart is smaller, in millimeters.
const LEAST: f64 = 20.0;
const NARROW: f64 = 1e-9;
