//! The project's own chores: generating what is generated, and checking what a compiler can't.
//!
//! Nothing here is needed when the program runs.

pub mod evidence;
mod lexer;
mod output;
pub mod recordings;
mod report;
pub mod schema;
pub mod tidy;

pub use output::{Mode, Output};
pub use report::print;
