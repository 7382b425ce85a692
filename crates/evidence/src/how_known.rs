//! How honestly a value is known.

/// How a value of the table is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum HowKnown {
    /// Read in the source itself, at least in the part that holds the value.
    Read,
    /// Read in the abstract of the source.
    Abstract,
    /// Remembered, and not yet looked up: never sets a limit.
    Memory,
    /// What the trade commonly does; no source was found.
    CommonPractice,
    /// Chosen by this project, and said so.
    OwnChoice,
}

impl HowKnown {
    /// Every way of knowing with its word in the files.
    pub const WORDS: &'static [(&'static str, Self)] = &[
        ("read", Self::Read),
        ("abstract", Self::Abstract),
        ("memory", Self::Memory),
        ("common-practice", Self::CommonPractice),
        ("own-choice", Self::OwnChoice),
    ];

    /// The word used in files and output.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::Abstract => "abstract",
            Self::Memory => "memory",
            Self::CommonPractice => "common-practice",
            Self::OwnChoice => "own-choice",
        }
    }

    /// The mark that every page for clinicians shows beside the value; none where it was read.
    pub const fn mark(self) -> Option<&'static str> {
        match self {
            Self::Read | Self::Abstract => None,
            Self::Memory => Some("from memory"),
            Self::CommonPractice => Some("common practice, no source"),
            Self::OwnChoice => Some("own choice"),
        }
    }

    /// Whether a value known this way may set a limit.
    pub const fn may_set_limit(self) -> bool {
        !matches!(self, Self::Memory)
    }

    /// The name of the variant, as the generated table writes it.
    pub const fn variant(self) -> &'static str {
        match self {
            Self::Read => "Read",
            Self::Abstract => "Abstract",
            Self::Memory => "Memory",
            Self::CommonPractice => "CommonPractice",
            Self::OwnChoice => "OwnChoice",
        }
    }
}
