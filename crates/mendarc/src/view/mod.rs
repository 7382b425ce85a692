//! What a person reads on the terminal.

pub mod angles;
pub mod check;
pub mod compare;
pub mod dates;
pub mod ladder;
mod ladder_rows;
mod ladder_steps;
pub mod may;
pub mod measurement;
pub mod paint;
pub mod prescription;
