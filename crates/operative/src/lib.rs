//! The operative record: text, to places in the text, to a checked record, to
//! the classes that rules ask about.
//!
//! [`read`] turns text into a [`Record`] and puts everything it finds wrong
//! into a sink. [`facts`] sorts a record into the classes of [`DIMENSIONS`];
//! it cannot fail. What is not recorded is a class of its own and is never
//! read as good or none. Nothing here opens a file, reads a clock, or knows a
//! protocol.
#![deny(missing_docs)]

mod age;
mod arcs;
mod asked;
mod basis;
mod basis_tendons;
mod check;
mod dimension;
mod dimensions;
mod facts;
mod healing;
mod missing;
mod read;
mod record;
mod words;

pub use age::completed_years;
pub use arcs::{MAX_SAFE_ARCS, SafeArc, SafeArcs};
pub use asked::ProtectedMuscles;
pub use basis::Basis;
pub use check::is_believable_operation;
pub use dimension::{Class, Dimension, DimensionId, Order, Unknown};
pub use dimensions::{DIMENSION_COUNT, DIMENSIONS, dim, dimension};
pub use facts::{Facts, facts};
pub use healing::{HealingIndex, healing_index};
pub use missing::Missing;
pub use read::read;
pub use record::{
    Also, FattyInfiltration, Muscle, Operation, OtherArm, Patient, Record, Risk, SafeArcEntry, SurgeonAnswers, Tear,
    TendonEntry,
};
pub use words::{
    Activity, Approach, BeyondDelayed, Biceps, Labrum, OtherShoulder, Part, Procedure, Repair, Sex, StiffShoulder,
    Tendon, Tension, Thickness, Tissue,
};
