//! What a chart shows.

/// One thing shown.
///
/// # Units and shape
/// `x` and `y` count as the axes do; days where the axis counts weeks. `name` is written in the legend; where it is
/// empty the legend leaves it out. Lines are told apart by dash, marker and lightness, in the order in which they come.
#[derive(Debug, Clone, PartialEq)]
pub enum Series {
    /// Readings joined by a line; the line is broken where one is no plain value.
    Line {
        /// Its name.
        name: String,
        /// In order of `x`.
        readings: Vec<Reading>,
    },
    /// Readings without a line.
    Points {
        /// Its name.
        name: String,
        /// In any order.
        readings: Vec<Reading>,
    },
    /// A course with its spread: a tinted band with a dashed line in the middle.
    Band {
        /// Its name.
        name: String,
        /// In order of `x`; two or more.
        course: Vec<Spread>,
    },
    /// A value that holds from one place to the next, as a limit does over the days.
    Steps {
        /// Its name.
        name: String,
        /// In order of `from`.
        steps: Vec<Step>,
        /// Where the last ends.
        until: f64,
    },
    /// A line across the chart.
    Reference {
        /// What is written at its end.
        text: String,
        /// Where it lies.
        at: Bound,
    },
    /// A center and limits that may widen: the frame of a control chart or a funnel.
    Funnel {
        /// Its name.
        name: String,
        /// In order of `x`; two or more; `middle` is the center.
        limits: Vec<Spread>,
    },
}

/// A reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// When, or of what.
    pub x: f64,
    /// What was seen.
    pub seen: Seen,
}

/// What was seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Seen {
    /// A value.
    Value {
        /// The value.
        y: f64,
        /// How far the true one may lie to both sides; none where nobody knows.
        error: Option<f64>,
    },
    /// More than could be measured: an open arrow up from there.
    MoreThan(f64),
    /// Less than could be measured: an open arrow down from there.
    LessThan(f64),
    /// It was tried and could not be done: a cross in a strip of its own, at no value.
    CouldNot,
}

/// A place of a course: its middle and what lies around it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// Where.
    pub x: f64,
    /// The lower end.
    pub low: f64,
    /// The middle.
    pub middle: f64,
    /// The upper end.
    pub high: f64,
}

/// From where on a value holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// From where on.
    pub from: f64,
    /// The value.
    pub y: f64,
}

/// Where a line across a chart lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bound {
    /// At a value of the upright axis.
    Y(f64),
    /// At a value of the level axis.
    X(f64),
}

impl Series {
    /// Its name, or the text of a reference line.
    pub(super) fn name(&self) -> &str {
        match self {
            Self::Line { name, .. }
            | Self::Points { name, .. }
            | Self::Band { name, .. }
            | Self::Steps { name, .. }
            | Self::Funnel { name, .. }
            | Self::Reference { text: name, .. } => name,
        }
    }

    /// What was seen, where it holds readings.
    pub(super) fn readings(&self) -> &[Reading] {
        match self {
            Self::Line { readings, .. } | Self::Points { readings, .. } => readings,
            _ => &[],
        }
    }
}
