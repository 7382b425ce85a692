//! Reading the TOML that people write: every value with its place, every fault
//! as a diagnostic, and all faults of a file at once.
//!
//! A [`Table`] remembers which keys were asked for; [`Table::finish`] then
//! reports the keys nobody asked for, with the nearest name. Nothing here opens
//! a file: text comes in as bytes or as a string.
#![deny(missing_docs)]

mod bytes;
mod nearest;
mod table;
mod value;

pub use bytes::{MAX_FILE_BYTES, text_of, too_large};
pub use nearest::nearest;
pub use table::{Table, read};
pub use value::{Value, quantity_fault};
