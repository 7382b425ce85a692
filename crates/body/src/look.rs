//! Whom a drawn figure looks like, in words.

crate::words! {
    /// How somebody in a drawing is built; chosen by the caller, never guessed from a record.
    #[derive(Default)]
    Build {
        /// Neither slim nor broad.
        #[default]
        Medium = "medium",
        /// Slim.
        Slim = "slim",
        /// Broad and strong.
        Broad = "broad",
        /// Round and soft.
        Round = "round",
        /// With a waist and wider hips.
        Curved = "curved",
    }
}

crate::words! {
    /// What somebody in a drawing has on the head.
    #[derive(Default)]
    Hair {
        /// Short hair.
        #[default]
        Short = "short",
        /// No hair.
        Bald = "bald",
        /// Hair to the chin.
        Bob = "bob",
        /// Long hair, tied up.
        Tied = "tied",
        /// A headscarf.
        Scarf = "scarf",
    }
}

/// Whom a drawn figure looks like.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Look {
    /// How the figure is built.
    pub build: Build,
    /// What is on its head.
    pub hair: Hair,
}
