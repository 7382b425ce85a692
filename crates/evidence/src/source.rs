//! What is known about a source.

/// Where a value was published.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Source {
    /// The short key that entries cite.
    pub key: &'static str,
    /// What a screen or a printout may show: never the name of a surgeon, clinic or hospital.
    pub shown_as: &'static str,
    /// Authors or issuing body.
    pub authors: Option<&'static str>,
    /// Year of publication.
    pub year: Option<i16>,
    /// Title, or what the source is.
    pub title: Option<&'static str>,
    /// Journal with volume and pages, as far as known.
    pub journal: Option<&'static str>,
    /// Digital object identifier.
    pub doi: Option<&'static str>,
    /// Where it was found.
    pub address: Option<&'static str>,
    /// What kind of source it is.
    pub kind: SourceKind,
    /// How much of it was read.
    pub how: Reading,
}

impl Source {
    /// A source of which nothing but key, shown name, kind and reading is known.
    pub(crate) const fn new(key: &'static str, shown_as: &'static str, kind: SourceKind, how: Reading) -> Self {
        Self {
            key,
            shown_as,
            authors: None,
            year: None,
            title: None,
            journal: None,
            doi: None,
            address: None,
            kind,
            how,
        }
    }
}

macro_rules! words {
    ($(#[$meta:meta])* $name:ident { $($(#[$doc:meta])* $variant:ident = $text:literal,)+ }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name {
            $($(#[$doc])* $variant,)+
        }

        impl $name {
            /// Every value with its word in the files.
            pub const WORDS: &'static [(&'static str, Self)] = &[$(($text, Self::$variant),)+];

            /// The word used in files and output.
            pub const fn name(self) -> &'static str {
                match self {
                    $(Self::$variant => $text,)+
                }
            }

            /// The name of the variant, as the generated table writes it.
            pub const fn variant(self) -> &'static str {
                match self {
                    $(Self::$variant => stringify!($variant),)+
                }
            }
        }
    };
}

words! {
    /// What kind of source a source is.
    SourceKind {
        /// A consensus or guideline of a society.
        Consensus = "consensus",
        /// A paper in a journal, or an abstract of a meeting.
        Paper = "paper",
        /// A health service, an authority, a charity.
        PublicBody = "public body",
        /// A professional society's own text.
        Society = "society",
        /// A hospital's own page.
        Hospital = "hospital",
        /// A sheet of a surgeon or of a private clinic.
        SurgeonsProtocol = "surgeon's protocol",
        /// A page or book that retells papers.
        Summary = "summary",
    }
}

words! {
    /// How much of a source was read.
    Reading {
        /// The text itself, at least in part.
        Read = "read",
        /// The abstract only.
        Abstract = "abstract",
        /// What another text says about it.
        SecondHand = "second-hand",
        /// Nothing yet.
        NotRead = "not read",
    }
}
