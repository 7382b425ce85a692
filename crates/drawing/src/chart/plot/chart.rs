//! A chart, and several that share their axes.

use super::super::error::ChartError;
use super::{Axis, Series, layout, paint, valid};
use crate::svg::Svg;

/// A chart.
///
/// # Units and shape
/// The size is in millimeters and includes titles and legend. The title of the upright axis stands level above it; that
/// of the level axis below.
///
/// # Example
/// ```
/// use drawing::chart::{Axis, Chart, Reading, Seen, Series};
/// let readings = vec![Reading { x: 42.0, seen: Seen::Value { y: 71.0, error: Some(5.0) } }];
/// let chart = Chart::new(
///     "Elevation",
///     "One value.",
///     [90.0, 60.0],
///     Axis::weeks("weeks from surgery", 0.0, 84.0),
///     Axis::new("passive elevation (degrees)").between(0.0, 180.0),
/// );
/// let chart = chart.with(Series::Line { name: String::new(), readings });
/// assert!(chart.draw().is_ok());
/// ```
#[derive(Debug, Clone)]
pub struct Chart(Multiples);

/// Charts side by side that share both axes.
#[derive(Debug, Clone)]
pub struct Multiples {
    /// Title of the picture.
    pub title: String,
    /// What it shows, in words.
    pub description: String,
    /// Its size in millimeters.
    pub size_mm: [f64; 2],
    /// How many stand side by side.
    pub columns: u8,
    /// The level axis.
    pub x: Axis,
    /// The upright axis.
    pub y: Axis,
    /// The charts, row by row.
    pub panels: Vec<Panel>,
    /// What the marks of readings that are no plain value mean.
    pub censored: CensoredWords,
}

/// One chart of several.
#[derive(Debug, Clone, PartialEq)]
pub struct Panel {
    /// What stands above it; may be empty.
    pub heading: String,
    /// What it shows.
    pub series: Vec<Series>,
}

/// What the legend says to readings that are no plain value; each is needed only where such a reading is shown.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct CensoredWords {
    /// To [`super::Seen::MoreThan`].
    pub more_than: String,
    /// To [`super::Seen::LessThan`].
    pub less_than: String,
    /// To [`super::Seen::CouldNot`].
    pub could_not: String,
}

impl Chart {
    /// A chart with nothing in it yet.
    pub fn new(title: &str, description: &str, size_mm: [f64; 2], x: Axis, y: Axis) -> Self {
        Self(Multiples {
            title: title.to_owned(),
            description: description.to_owned(),
            size_mm,
            columns: 1,
            x,
            y,
            panels: vec![Panel { heading: String::new(), series: Vec::new() }],
            censored: CensoredWords::default(),
        })
    }

    /// The same with one thing more.
    pub fn with(mut self, series: Series) -> Self {
        if let Some(panel) = self.0.panels.first_mut() {
            panel.series.push(series);
        }
        self
    }

    /// The same with words for readings that are no plain value.
    pub fn saying(mut self, censored: CensoredWords) -> Self {
        self.0.censored = censored;
        self
    }

    /// The picture.
    ///
    /// # Errors
    /// As [`Multiples::draw`].
    pub fn draw(&self) -> Result<Svg, ChartError> {
        self.0.draw()
    }
}

impl Multiples {
    /// The picture.
    ///
    /// # Errors
    /// Nothing to show; numbers that are none, infinite or huge; values outside of a range that was said; values that
    /// are all one where no range was said; courses of one place or out of order; more lines than can be told apart;
    /// missing texts; a size in which it does not all fit.
    pub fn draw(&self) -> Result<Svg, ChartError> {
        let ranges = valid::ranges(self)?;
        let layout = layout::Layout::of(self, ranges)?;
        Ok(paint::picture(self, &layout))
    }
}
