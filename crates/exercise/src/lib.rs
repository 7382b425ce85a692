//! The catalogue: exercises, daily-life activities, care poses and visit tests,
//! each told as what it demands of the arm.
//!
//! A demand is humerus relative to thorax, plus what the hand holds and what
//! weight goes through the arm, for the operated arm and for the other one.
//! Every degree, load, effort and dose written in `exercises/*.toml` must stand
//! in an entry of the table of evidence that the same exercise cites.
//!
//! Nothing here knows a stage, a limit of a day, or a patient.
#![deny(missing_docs)]

mod catalogue;
mod check;
mod demand;
mod entry;
mod load;
mod muscle;
mod pose;
mod pose_reader;
mod pose_words;
mod reader;
mod reader_demand;
mod reader_dose;
mod shipped;
mod words;

pub use body::Posture;
pub use catalogue::{Catalogue, read};
pub use demand::{Amount, Demand};
pub use entry::{Dose, Entry, Resting};
pub use load::{Beyond, Holder, Load, NoLoad, Whose};
pub use muscle::{ActivityClass, Measured, MuscleActivity};
pub use pose::{Hold, Positions};
pub use pose_words::{BladeHold, Elbow, Forearm, Other, Path, Trunk, Turn, UpperArm, Weight, Wrist};
pub use shipped::{SHIPPED, shipped};
pub use words::{Equipment, Kind, Occasion, OtherArm, Purpose, SlingDuring, Supervision};

#[cfg(test)]
mod tests;
