//! The faces, read once.

use std::sync::LazyLock;

use typst::foundations::Bytes;
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;

/// The files of the faces.
pub static FILES: &[&[u8]] = &[
    include_bytes!("../fonts/SourceSans3-Regular.ttf"),
    include_bytes!("../fonts/SourceSans3-SemiBold.ttf"),
    include_bytes!("../fonts/SourceSans3-Bold.ttf"),
];

/// Their family.
pub const FAMILY: &str = "Source Sans 3";

static FACES: LazyLock<Faces> = LazyLock::new(Faces::read);

/// The faces that every sheet is set in.
pub struct Faces {
    fonts: Vec<Font>,
    book: LazyHash<FontBook>,
}

impl Faces {
    /// The faces; read at the first call.
    pub fn get() -> &'static Self {
        &FACES
    }

    fn read() -> Self {
        let fonts: Vec<Font> = FILES.iter().flat_map(|file| Font::iter(Bytes::new(*file))).collect();
        let book = LazyHash::new(FontBook::from_fonts(&fonts));
        Self { fonts, book }
    }

    /// What the typesetter chooses from.
    pub fn book(&self) -> &LazyHash<FontBook> {
        &self.book
    }

    /// The face at a place of the book.
    pub fn face(&self, index: usize) -> Option<Font> {
        self.fonts.get(index).cloned()
    }

    /// Whether every face holds the character.
    pub fn hold(&self, character: char) -> bool {
        self.fonts.iter().all(|font| font.info().coverage.contains(u32::from(character)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn three_faces_of_one_family_are_there() {
        let faces = Faces::get();
        let families: Vec<&str> = faces.fonts.iter().map(|font| font.info().family.as_str()).collect();
        assert_eq!(families, ["Source Sans 3"; 3]);
    }

    #[test]
    fn they_hold_what_european_texts_need_and_no_more() {
        // Signs that our own texts use, and names from Turkish, Polish, Vietnamese, Greek and Russian.
        for character in "≤≥°·–—…×½’“”¿¡ñÑßøğŁżếλЖ".chars() {
            assert!(Faces::get().hold(character), "{character}");
        }
        for character in "漢あ한אب🙂✂".chars() {
            assert!(!Faces::get().hold(character), "{character}");
        }
    }
}
