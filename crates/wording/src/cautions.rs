//! The usual cautions, in order.

/// The title above the cautions.
pub const TITLE: &str = "cautions-title";

/// The cautions one by one.
pub const ALL: &[&str] =
    &["cautions-care", "cautions-decides", "cautions-practice", "cautions-emergency", "cautions-time"];

/// All of them in one short paragraph, for the foot of an output.
pub const LINE: &str = "cautions-line";

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Language, Messages};

    #[test]
    fn every_caution_exists() {
        for messages in Language::WORDS.iter().map(|(_, language)| Messages::of(*language)) {
            for id in ALL.iter().chain([&TITLE, &LINE]) {
                assert!(messages.has(id), "{id}");
            }
        }
    }
}
