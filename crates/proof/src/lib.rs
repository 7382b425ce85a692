//! Every record that a family of protocols accepts, composed and checked.
//!
//! A family's rules ask a record a few questions, each with a few answers. All
//! answers together are a closed [`Space`]; [`walk`] goes through the whole of it
//! with the one function that composes plans, holds each plan against the checker,
//! and compares it with the plan of every record that is worse in one thing.
#![deny(missing_docs)]

mod count;
mod edition;
mod finding;
mod groups;
mod lines;
mod proof;
mod space;
mod walk;
mod whole;
mod witness;

pub use edition::{differences, is_edition_of, is_newer, name_of};
pub use finding::{About, Finding, findings, plan_at, record, who};
pub use groups::{Group, Groups, Link};
pub use proof::{Proof, TooMany, prove, threads};
pub use space::{Axis, AxisClass, Beside, Space, What, covers};
pub use walk::{LooserThan, Manner, Unsound, Walked, Watch, faults_at, is_stricter, points, walk};
pub use witness::{Border, EXCLUSIONS, Edge, Exclusion, Expected, borders, excluded_by, is_believable, witness};
