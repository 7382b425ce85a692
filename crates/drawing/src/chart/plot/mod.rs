//! Plain charts.

mod axis;
mod chart;
mod layout;
mod legend;
mod marks;
mod paint;
mod series;
mod styles;
#[cfg(test)]
mod tests;
mod valid;

pub use axis::{Axis, Count, Numbering};
pub use chart::{CensoredWords, Chart, Multiples, Panel};
pub use series::{Bound, Reading, Seen, Series, Spread, Step};
