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
/// Two quarters of SHA-256 in hexadecimal with a hyphen between: one over whose visit it is (the
/// label of the patient, or without one the operation), one over all parts. Each part has its
/// length before it, so that no two subjects run together.
pub fn uid(subject: &Subject<'_>) -> String {
    let (date, order) = (subject.operated_on.to_string(), subject.order.to_string());
    let person = match subject.patient {
        Some(label) => quarter(&["mendarc patient", label]),
        None => quarter(&["mendarc operation", &date, subject.side]),
    };
    let visit = quarter(&["mendarc visit", &person, &date, subject.side, subject.purpose, &order]);
    format!("{person}-{visit}")
}

/// Whether two visits are of one person, as far as their ids tell.
pub(super) fn of_one_person(one: &str, other: &str) -> bool {
    let person = |uid: &str| uid.split_once('-').map(|(person, _)| person.to_owned());
    person(one).is_some() && person(one) == person(other)
}

fn quarter(parts: &[&str]) -> String {
    let mut hash = Sha256::new();
    for part in parts {
        hash.update(part.len().to_string());
        hash.update(":");
        hash.update(part);
    }
    let digest = hash.finalize();
    let octets = digest.len() / 2 / 2;
    digest.iter().take(octets).map(|octet| format!("{octet:02x}")).collect()
}
