//! The commands, behind the binary of the same name.
//!
//! Files are opened and the terminal is written to here and nowhere below.

pub mod arguments;
pub mod command;
mod decimals;
pub mod desk;
pub mod explanations;
pub mod files;
pub mod folder;
pub mod json;
pub mod outcome;
pub mod render;
pub mod shelf;
pub mod view;
