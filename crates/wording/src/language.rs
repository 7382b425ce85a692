//! The languages that exist.

/// A language of the texts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Language {
    /// English as spelt in America.
    English,
    /// Spanish as understood on both sides of the Atlantic.
    Spanish,
}

impl Language {
    /// Every language with its code.
    pub const WORDS: &'static [(&'static str, Self)] = &[("en", Self::English), ("es", Self::Spanish)];

    /// The language of this code; a language without texts is no language yet.
    ///
    /// # Example
    /// ```
    /// use wording::Language;
    /// assert_eq!(Language::named("en"), Some(Language::English));
    /// assert_eq!(Language::named("es"), Some(Language::Spanish));
    /// assert_eq!(Language::named("fr"), None);
    /// ```
    pub fn named(code: &str) -> Option<Self> {
        Self::WORDS.iter().find(|(word, _)| *word == code).map(|(_, language)| *language)
    }

    /// The code of the language.
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }
}
