//! Protocol files, and the one function that composes them into a plan.
//!
//! [`Library`] reads the files of every family; [`Compiled`] turns a family
//! into integer tables; [`resolve`] composes a plan for the facts of a record.
//! Why a value is what it is, is looked up afterwards with [`Compiled::binding`].
//! Nothing here names a finding, reads a clock, or opens a file.
#![deny(missing_docs)]

pub mod checker;
pub mod file;

mod binding;
mod choices;
mod compile;
mod decide;
mod library;
mod lint;
mod resolve;
mod shipped;

pub use binding::Binding;
pub use choices::Choices;
pub use compile::Compiled;
pub use decide::{Answers, Decider};
pub use library::{Family, Library};
pub use resolve::{Requested, resolve, resolve_into};
pub use shipped::SHIPPED;

#[cfg(test)]
mod tests;
