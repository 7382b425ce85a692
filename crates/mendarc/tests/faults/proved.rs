//! What the proof over every record says of changed files.

use proof::{Manner, Watch, prove};
use protocol::Family;

/// The first harm that the proof finds: an overload, a plan that loosens with a finding, or a stiff shoulder.
///
/// The edition that is shipped is not handed over: that a text differs from it is no harm.
pub fn by_proof(family: &Family) -> Option<String> {
    match prove(family, None, Manner::ByRule, &Watch::default()) {
        Ok(proof) if proof.holds() => None,
        Ok(proof) => {
            let told = proof.findings.first().map(|finding| format!("{}: {}", finding.kind, finding.message));
            Some(told.unwrap_or_else(|| "the proof does not hold".into()))
        }
        Err(many) => Some(format!("{} points are too many", many.points)),
    }
}
