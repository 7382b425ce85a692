//! How the sling is worn.

/// How much the sling is worn; a longer wear is the safer one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Wear {
    /// No sling.
    #[default]
    None,
    /// Less every day.
    Weaning,
    /// Day and night, off only for what the plan names.
    Always,
}

impl Wear {
    /// Every value with its word.
    pub const WORDS: &'static [(&'static str, Self)] =
        &[("none", Self::None), ("weaning", Self::Weaning), ("always", Self::Always)];

    /// The word in files and output.
    pub const fn name(self) -> &'static str {
        match self {
            Self::None => "none",
            Self::Weaning => "weaning",
            Self::Always => "always",
        }
    }
}

/// How the sling holds the arm.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum SlingPosition {
    /// Forearm straight ahead.
    #[default]
    Neutral,
    /// Forearm across the belly.
    InternalRotation,
}

impl SlingPosition {
    /// Every value with its word.
    pub const WORDS: &'static [(&'static str, Self)] =
        &[("neutral", Self::Neutral), ("internal rotation", Self::InternalRotation)];

    /// The word in files and output.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Neutral => "neutral",
            Self::InternalRotation => "internal rotation",
        }
    }
}
