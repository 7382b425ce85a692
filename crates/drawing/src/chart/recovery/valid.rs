//! What can't be drawn as a line of recovery.

use super::super::error::ChartError;
use super::super::pen::is_written;
use super::{EventKind, Label, RecoveryLine};

/// The first fault.
pub(super) fn check(line: &RecoveryLine) -> Result<(), ChartError> {
    if line.until_day == 0 {
        return Err(ChartError::Empty("recovery line"));
    }
    let text = |what, text: &str| if is_written(text) { Ok(()) } else { Err(ChartError::NoText(what)) };
    text("title", &line.title)?;
    text("description", &line.description)?;
    text("word for the week", &line.week_word)?;
    let written = |what, label: &Label| label.forms().try_for_each(|form| text(what, form));
    spans("sling", line.sling.iter().map(|span| span.days), line.until_day)?;
    line.sling.iter().try_for_each(|span| written("sling", &span.name))?;
    spans("stage", line.stages.iter().map(|span| span.days), line.until_day)?;
    line.stages.iter().try_for_each(|span| written("stage", &span.name))?;
    for (day, date) in &line.dates {
        inside("date", *day, line.until_day)?;
        text("date", date)?;
    }
    if !line.dates.is_sorted_by(|(one, _), (other, _)| one < other) {
        return Err(ChartError::NotInOrder("date"));
    }
    for event in &line.events {
        inside("event", event.day, line.until_day)?;
        written("event", &event.label)?;
        if let EventKind::Hold { until_day } = event.kind {
            spans("hold", std::iter::once([event.day, until_day]), line.until_day)?;
        }
    }
    if let Some((day, label)) = &line.today {
        inside("today", *day, line.until_day)?;
        written("today", label)?;
    }
    Ok(())
}

fn inside(what: &'static str, day: u16, until: u16) -> Result<(), ChartError> {
    match day <= until {
        true => Ok(()),
        false => Err(ChartError::Outside { what, value: f64::from(day) }),
    }
}

fn spans(what: &'static str, days: impl Iterator<Item = [u16; 2]>, until: u16) -> Result<(), ChartError> {
    let mut last = 0;
    for [from, to] in days {
        if to <= from {
            return Err(ChartError::Reversed(what));
        }
        inside(what, to, until)?;
        if from < last {
            return Err(ChartError::Overlap(what));
        }
        last = to;
    }
    Ok(())
}
