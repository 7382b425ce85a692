//! What a prescription is made of: limits, the sling, goals, doses, reasons,
//! and the [`Prescription`] itself.
//!
//! [`Plan`] is the dense form that rules are composed in: a value for every key
//! and every run of days. [`Prescription`] is the form that people and programs
//! read. Nothing here knows how a plan is made.
#![deny(missing_docs)]

pub mod words;

mod cell;
mod change;
mod grid;
mod prescription;
mod reason;
mod sling;

pub use cell::{Allowed, Bound, Cell};
pub use change::Change;
pub use grid::{Grid, LaneId, Plan, RuleSet};
pub use prescription::{
    Criterion, Dropped, ExerciseLine, FirstAllowed, GoBack, GoalLine, Index, LimitRow, NotBefore, Prescription,
    ProtocolUsed, Question, QuestionChange, Replacement, ReturnLine, SlingLine, SpanOfDays, StageLine, Today,
    TodayBasis, VisitLine,
};
pub use reason::{Reason, RecordPlace};
pub use sling::{SlingPosition, Wear};
