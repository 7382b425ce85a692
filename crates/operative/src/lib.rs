//! The operative record: text, to places in the text, to a checked record, to
//! the classes that rules ask about.
//!
//! [`read`] turns text into a [`Record`] and puts everything it finds wrong
//! into a sink. [`facts`] sorts a record into the classes of [`DIMENSIONS`];
//! it cannot fail. What is not recorded is a class of its own and is never
//! read as good or none. Nothing here opens a file, reads a clock, or knows a
//! protocol.
#![deny(missing_docs)]

mod words;
mod record;
mod dimension;
mod dimensions;
mod arcs;
mod facts;
mod asked;
mod basis;
mod basis_tendons;
mod missing;
mod age;
mod healing;
mod read;
mod check;

pub use age::completed_years;
pub use asked::ProtectedMuscles;
pub use arcs::{SafeArc, SafeArcs, MAX_SAFE_ARCS};
pub use basis::Basis;
pub use dimension::{Class, Dimension, DimensionId, Order, Unknown};
pub use dimensions::{dim, dimension, DIMENSIONS, DIMENSION_COUNT};
pub use facts::{facts, Facts};
pub use healing::{healing_index, HealingIndex};
pub use missing::Missing;
pub use read::read;
pub use record::{
    Also, FattyInfiltration, Muscle, Operation, OtherArm, Patient, Record, Risk, SafeArcEntry, SurgeonAnswers, Tear,
    TendonEntry,
};
pub use words::{
    Activity, Approach, Biceps, BeyondDelayed, Labrum, OtherShoulder, Part, Procedure, Repair, Sex, StiffShoulder,
    Tendon, Tension, Thickness, Tissue,
};
