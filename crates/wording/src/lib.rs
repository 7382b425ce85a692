//! Messages by id, languages, and how hard a text is to read.
//!
//! A text is always a whole message of a language file, never joined from pieces in code;
//! numbers and dates come in as arguments.
#![deny(missing_docs)]

pub mod cautions;
pub mod dates;
pub mod first_days;
mod language;
mod messages;
mod readability;

pub use language::Language;
pub use messages::{Argument, Messages};
pub use readability::{Ease, grade, syllables};
