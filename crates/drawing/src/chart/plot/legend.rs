//! The legend: a sample and a name each, in rows.

use super::super::error::ChartError;
use super::super::pen::{Pen, Place, Word, edged, is_written};
use super::super::text_width::{width_mm, wrapped};
use super::super::tones::{ABOVE, BELOW, GAP, SMALL, THIN, TINT};
use super::marks::{self, Censored};
use super::styles::{CENTER, FUNNELS, Kind, MIDDLE, Names, READINGS, STEPS};
use super::{Multiples, Seen, Series};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Anchor, Stroke, Weight};

/// What a sample shows.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Sample {
    Line(usize),
    Points(usize),
    Band,
    Steps(usize),
    Funnel(usize),
    Censored(Censored),
}

/// A legend in its place.
#[derive(Debug, Default)]
pub(super) struct Legend {
    samples: Vec<(Sample, Place)>,
    words: Vec<Word>,
    pub(super) height: f64,
}

impl Legend {
    /// Its entries in rows as wide as the picture, counted from 0 down.
    pub(super) fn of(of: &Multiples, names: &Names, [left, right]: [f64; 2]) -> Result<Self, ChartError> {
        let mut legend = Self::default();
        let entries = entries(of, names);
        let mut x = left;
        let mut base = SMALL * ABOVE;
        for (sample, name) in entries {
            let room = right - left - SAMPLE - GAP;
            let too_long = || ChartError::NoRoomForText(name.clone());
            let lines = wrapped(&name, SMALL, Weight::Regular, room).ok_or_else(too_long)?;
            let widest = lines.iter().map(|line| width_mm(line, SMALL, Weight::Regular)).fold(0.0, f64::max);
            let width = SAMPLE + GAP + widest;
            if x > left && x + width > right {
                x = left;
                base += ROW;
            }
            legend.samples.push((sample, [x, base - SMALL * MIDDLE_OF_TYPE]));
            for (index, line) in lines.iter().enumerate() {
                base += if index > 0 { ROW } else { 0.0 };
                legend.words.push(Word::new(line, [x + SAMPLE + GAP, base], SMALL, Anchor::Start));
            }
            // After several lines the row is full.
            x = if lines.len() > 1 { right } else { x + width + GAP * 2.5 };
            legend.height = base + SMALL * BELOW;
        }
        Ok(legend)
    }

    pub(super) fn paint(&self, pen: &mut Pen<'_>, top: f64) {
        for (sample, [x, y]) in &self.samples {
            paint(pen, *sample, [*x, y + top]);
        }
        for word in &self.words {
            pen.word(&Word { at: [word.at[0], word.at[1] + top], ..word.clone() });
        }
    }
}

fn entries(of: &Multiples, names: &Names) -> Vec<(Sample, String)> {
    let all = || of.panels.iter().flat_map(|panel| &panel.series);
    let mut entries = Vec::new();
    for (kind, name, place) in names.all().filter(|(_, name, _)| is_written(name)) {
        let is_line = || all().any(|series| matches!(series, Series::Line { name: own, .. } if own == name));
        let sample = match kind {
            Kind::Readings if is_line() => Sample::Line(place),
            Kind::Readings => Sample::Points(place),
            Kind::Band => Sample::Band,
            Kind::Steps => Sample::Steps(place),
            Kind::Funnel => Sample::Funnel(place),
            Kind::Reference => continue,
        };
        entries.push((sample, name.to_owned()));
    }
    let seen = |is: fn(&Seen) -> bool| all().flat_map(Series::readings).any(|reading| is(&reading.seen));
    let words = &of.censored;
    let censored = [
        (seen(|seen| matches!(seen, Seen::MoreThan(_))), Censored::Up, &words.more_than),
        (seen(|seen| matches!(seen, Seen::LessThan(_))), Censored::Down, &words.less_than),
        (seen(|seen| matches!(seen, Seen::CouldNot)), Censored::Not, &words.could_not),
    ];
    let censored = censored.into_iter().filter(|(is_seen, ..)| *is_seen);
    entries.extend(censored.map(|(_, mark, text)| (Sample::Censored(mark), text.clone())));
    entries
}

/// A sample from a place on its left, at half its height.
fn paint(pen: &mut Pen<'_>, sample: Sample, [x, y]: Place) {
    let (middle, right) = (x + SAMPLE / 2.0, x + SAMPLE);
    match sample {
        Sample::Line(place) => {
            let look = READINGS[place];
            pen.line([x, y], [right, y], look.line);
            marks::marker(pen, look, [middle, y]);
        }
        Sample::Points(place) => marks::marker(pen, READINGS[place], [middle, y]),
        Sample::Band => {
            let space = Space { left: x, top: y - HALF, right, bottom: y + HALF };
            pen.rectangle(space, &edged(TINT, Stroke::new(Color::GHOST, THIN)));
            pen.line([x, y], [right, y], MIDDLE);
        }
        Sample::Steps(place) => {
            let [low, high] = [y + HALF * STEP, y - HALF * STEP];
            pen.open(&[[x, low], [middle, low], [middle, high], [right, high]], STEPS[place]);
        }
        Sample::Funnel(place) => {
            pen.line([x, y], [right, y], CENTER);
            let limit = |sign: f64| [[x, y + HALF * sign], [right, y + HALF * sign]];
            pen.lines(&[limit(1.0), limit(-1.0)], FUNNELS[place]);
        }
        Sample::Censored(mark) => marks::censored(pen, mark, READINGS[0].line.color, [middle, y + mark.foot()]),
    }
}

/// Width of a sample in millimeters.
const SAMPLE: f64 = 8.0;
/// Half its height.
const HALF: f64 = 1.3;
const STEP: f64 = 0.7;
/// From one row to the next: an arrow stands clear of the row above.
const ROW: f64 = 4.2;
/// The middle of a small letter above the base line, in heights of type.
const MIDDLE_OF_TYPE: f64 = 0.27;
