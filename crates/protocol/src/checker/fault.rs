//! What the checker finds, in a surgeon's words.

use std::fmt;

use body::Key;

/// Which of the two harms a fault does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Harm {
    /// It loads or moves the repair more than a rule allows.
    Overload,
    /// It leaves the shoulder, the elbow or the patient still for longer than the caps allow.
    Stiffness,
}

/// Something a plan does that it must not do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// Which harm.
    pub harm: Harm,
    /// What kind of fault, as a kebab word.
    pub kind: &'static str,
    /// What it is about, where it is about one key.
    pub key: Option<Key>,
    /// The first day of it.
    pub from_day: u16,
    /// The first day after it.
    pub until_day: u16,
    /// The fault in a sentence: which finding, which days, which movement, by how much.
    pub message: String,
    /// The rule that is not kept, by its id.
    pub rule: String,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)
    }
}
