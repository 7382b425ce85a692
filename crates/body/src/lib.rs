//! The words of the body: joints, movements, positions, modes and sides.
//!
//! For now a vocabulary only; frames, angles and masses come with the body
//! model. A [`Key`] names one thing that a plan may limit.
#![deny(missing_docs)]

mod key;
mod words;

pub use key::{ALL_KEYS, Key, KeyError};
pub use words::{Joint, Mode, Movement, Position, Side};
