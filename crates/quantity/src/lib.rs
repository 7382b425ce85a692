//! Units of the trade as types: degrees, kilograms, percent of maximal effort,
//! millimeters, and the postoperative day.
//!
//! Every quantity is a fixed-point integer, so that a limit of 2.27 kg compares
//! exactly and prints as it was written. Nothing here knows the shoulder, reads
//! a clock, or holds a medical number.
#![deny(missing_docs)]

mod day;
mod decimal;
mod measure;

pub use day::{Days, PostoperativeDay};
pub use decimal::QuantityError;
pub use measure::{Degrees, Kilograms, Millimeters, Percent};
