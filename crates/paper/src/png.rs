//! A picture as pixels.

use std::sync::{Arc, LazyLock};

use resvg::tiny_skia::{Color, Pixmap, Transform};
use resvg::usvg::{self, Tree, fontdb};

use crate::Failure;
use crate::fonts;

/// The faces of the paper and no others: the same picture on every machine.
static FACES: LazyLock<Arc<fontdb::Database>> = LazyLock::new(|| {
    let mut faces = fontdb::Database::new();
    for file in fonts::FILES {
        faces.load_font_data(file.to_vec());
    }
    Arc::new(faces)
});

/// Larger pictures are refused: what is asked for is a mistake, and memory is not endless.
const MOST_PIXELS: f64 = 100_000_000.0;

/// Millimeters in one unit of a picture without a size of its own.
const MM_PER_UNIT: f64 = 25.4 / 96.0;

/// An SVG as a PNG on white ground.
///
/// # Units and shape
/// `pixels_per_mm` is how finely it is drawn: 12 is about 300 to an inch.
///
/// # Errors
/// [`Failure::Picture`]: the text is no SVG, or the picture would have no pixel or more than a hundred million.
pub fn png(svg: &str, pixels_per_mm: f64) -> Result<Vec<u8>, Failure> {
    let fault = |told: String| Failure::Picture(told);
    let options =
        usvg::Options { fontdb: Arc::clone(&FACES), font_family: fonts::FAMILY.to_owned(), ..usvg::Options::default() };
    let tree = Tree::from_str(svg, &options).map_err(|error| fault(error.to_string()))?;
    let scale = pixels_per_mm * MM_PER_UNIT;
    let [width, height] = [tree.size().width(), tree.size().height()].map(|side| (f64::from(side) * scale).round());
    if !(width >= 1.0 && height >= 1.0 && width * height <= MOST_PIXELS) {
        return Err(fault(format!("a picture of {width} by {height} pixels")));
    }
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between 1 and a hundred million")]
    let pixels = Pixmap::new(width as u32, height as u32);
    let mut pixels = pixels.ok_or_else(|| fault("no memory for the picture".to_owned()))?;
    pixels.fill(Color::WHITE);
    #[expect(clippy::cast_possible_truncation, reason = "a scale of a few pixels")]
    let scale = scale as f32;
    resvg::render(&tree, Transform::from_scale(scale, scale), &mut pixels.as_mut());
    pixels.encode_png().map_err(|error| fault(error.to_string()))
}

#[cfg(test)]
mod tests {
    use super::*;

    const SQUARE: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"5mm\" \
        viewBox=\"0 0 100 50\"><path d=\"M0 0H50V50H0Z\" fill=\"#000\"/></svg>";

    #[test]
    fn a_picture_has_the_size_that_was_asked_for() {
        let png = png(SQUARE, 8.0).expect("a picture");
        // Width and height stand at bytes 16 and 20 of every PNG (W3C, PNG 11.2.2).
        let number = |at: usize| u32::from_be_bytes(png[at..at + 4].try_into().expect("four bytes"));
        assert_eq!([number(16), number(20)], [80, 40]);
    }

    #[test]
    fn no_picture_of_no_size() {
        for pixels_per_mm in [0.0, -1.0, f64::NAN, 1e9] {
            assert!(matches!(png(SQUARE, pixels_per_mm), Err(Failure::Picture(_))), "{pixels_per_mm}");
        }
        assert!(matches!(png("no picture", 8.0), Err(Failure::Picture(_))));
    }
}
