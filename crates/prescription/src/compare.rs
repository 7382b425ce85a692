//! What changes for the patient between two plans, day by day.
//!
//! Both sides are laid out as a [`Course`] first: issued prescriptions, the
//! protocols of a family as their files have them, and prescriptions that were
//! stored as documents all have the same shape there. [`compare`] then walks
//! the days of both. Nothing is dated: two plans of different operations, or of
//! different sides, compare by the postoperative day.

mod change;
mod course;
mod files;
mod issued;
mod runs;
pub mod words;

pub use change::{
    BesideChange, Comparison, ExerciseChange, FirstChange, LimitChange, LineChange, SlingChange, Which, compare,
};
pub use course::{Beside, Course, Exercise, Line, LineKind, Sling, Value, beside};
pub use files::{Edition, Folders, Scope, Scoped, compare_editions, compare_protocols};
pub use runs::{Run, Runs};
