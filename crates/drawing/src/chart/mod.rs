//! The arc, the recovery line and plain charts.
//!
//! Every text and every number comes from the caller, the texts in the reader's language. A picture is right or there
//! is none: what can't be drawn as it is comes back as a [`ChartError`]. Nothing is told by color alone.

mod arc;
mod error;
mod hatch;
mod lanes;
mod pen;
mod plot;
#[cfg(test)]
mod reading;
mod recovery;
mod scale;
pub(crate) mod text_width;
mod tones;

pub use arc::{Arc, ArcPicture, Measured, Turning};
pub use error::ChartError;
pub use plot::{
    Axis, Bound, CensoredWords, Chart, Count, Multiples, Numbering, Panel, Reading, Seen, Series, Spread, Step,
};
pub use recovery::{Event, EventKind, Label, RecoveryLine, SlingSpan, SlingWear, StageSpan, StageState};
