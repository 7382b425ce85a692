//! `mendarc explain`.
use crate::arguments::Explain;
use crate::outcome::Outcome;

pub fn run(_arguments: &Explain) -> Outcome {
    Outcome::CouldNotRun
}
