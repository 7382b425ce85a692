//! What goes to other programs in their own formats: visits as iCalendar text.
//!
//! Text in, text out: nothing here opens a file or reads the clock, and no type
//! of a foreign format reaches further in.
#![deny(missing_docs)]

pub mod calendar;
