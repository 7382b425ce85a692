//! The catalogue that is shipped.

use diagnostic::{FileId, Sink};

use crate::{Catalogue, read};

macro_rules! files {
    ($($name:literal,)+) => {
        /// Every shipped file: its name and its text.
        pub static SHIPPED: &[(&str, &str)] =
            &[$((concat!("exercises/", $name), include_str!(concat!("../../../exercises/", $name))),)+];
    };
}

files! {
    "passive.toml",
    "assisted.toml",
    "active.toml",
    "isometric.toml",
    "stretch.toml",
    "resisted.toml",
    "elbow-hand.toml",
    "blade.toml",
    "sport.toml",
    "activities-sling.toml",
    "activities-self-care.toml",
    "activities-home.toml",
    "activities-away.toml",
    "care.toml",
    "tests.toml",
}

/// Reads the shipped catalogue; `add` gives each file its number among the sources of the run.
pub fn shipped(sink: &mut Sink, mut add: impl FnMut(&str, &'static str) -> FileId) -> Catalogue {
    let files: Vec<_> = SHIPPED.iter().map(|&(name, text)| (add(name, text), text)).collect();
    read(&files, sink)
}
