//! Who a visit is, whenever it is.

use jiff::civil::Date;
use sha2::{Digest, Sha256};

/// What tells one visit from every other, and does not change when its date moves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Subject<'a> {
    /// The practice's label of the patient, where there is one.
    pub patient: Option<&'a str>,
    /// The day of surgery.
    pub operated_on: Date,
    /// The operated side.
    pub side: &'a str,
    /// What the visit is for, in the words of the protocol's file; never translated.
    pub purpose: &'a str,
    /// Which of the visits with that purpose it is, from 0.
    pub order: usize,
}

/// The `UID` of a visit: the same for the same subject on every machine and in every year, and
/// not to be turned back into it.
///
/// # Method
/// The first half of a SHA-256 over all parts, each with its length before it so that no two
/// subjects run together; in hexadecimal.
pub fn uid(subject: &Subject<'_>) -> String {
    let (labelled, label) = match subject.patient {
        Some(label) => ("labelled", label),
        None => ("unlabelled", ""),
    };
    let parts = [
        "mendarc visit",
        labelled,
        label,
        &subject.operated_on.to_string(),
        subject.side,
        subject.purpose,
        &subject.order.to_string(),
    ];
    let mut hash = Sha256::new();
    for part in parts {
        hash.update(part.len().to_string());
        hash.update(":");
        hash.update(part);
    }
    let digest = hash.finalize();
    let half = digest.len() / 2;
    digest.iter().take(half).map(|byte| format!("{byte:02x}")).collect()
}
