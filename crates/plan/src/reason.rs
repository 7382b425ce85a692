//! Why a line of a prescription says what it says.

use evidence::Entry;

/// The rule, the evidence, and the part of the record that led to a line.
#[derive(Debug, Clone, PartialEq)]
pub struct Reason {
    /// The rule by its id, such as `staged/passive-elevation`.
    pub rule: String,
    /// What the rule says, in one line.
    pub text: String,
    /// Where its numbers come from.
    pub evidence: Vec<&'static Entry>,
    /// What of the record led to it; empty for a ground rule.
    pub record: Vec<RecordPlace>,
}

/// A place of the operative record, written or missing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RecordPlace {
    /// The path, such as `operation.tear.anteroposterior`.
    pub path: String,
    /// What stands there, or "not recorded".
    pub shown: String,
    /// The line in the record's file, from 1; `None` where nothing is written.
    pub line: Option<usize>,
}
