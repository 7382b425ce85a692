//! The checker: whether a plan keeps every rule of the files, judged without
//! the code that composed it.
//!
//! Nothing in this folder knows how a plan is put together. It reads the files
//! of a family as they were written, asks of each line whether it is in force
//! for the facts of a record, and holds what was issued under each of them by
//! itself. A fault in the composition and a fault here would have to be the
//! same fault to stay unseen; a test keeps the two from naming one another.

mod arcs;
mod dense;
mod explain;
mod fault;
mod issued;
mod rulebook;
mod stillness;

pub use dense::DenseRules;
pub use explain::faults_of_plan;
pub use fault::{Fault, Harm};
pub use issued::{
    Basis, Held, Issued, Loosening, Opening, OtherShoulder, WentBack, faults_of_permission, faults_of_prescription,
};
pub use rulebook::{InForce, Line, Lines, Rulebook, Says};
pub use stillness::{Run, Stillness, still_days};

#[cfg(test)]
mod tests;
