//! What a person reads on the terminal.

pub mod angles;
pub mod check;
pub mod compare;
pub mod dates;
pub mod ladder;
pub mod may;
pub mod paint;
pub mod prescription;
