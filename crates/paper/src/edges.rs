//! Nothing printed runs over an edge of the page.

use sheets::{Block, Document, Reader, Size, Tone};
use typst::layout::{Abs, Frame, FrameItem, Point};
use typst::text::TextItem;
use typst_layout::PagedDocument;

use crate::sheet::Sheet;

#[path = "../tests/sample/mod.rs"]
mod sample;

/// The smallest white edge, in points: no page has less than 12 mm.
const EDGE: f64 = 34.0;

/// A text on a page: where it begins and ends, its size, and what it says.
struct Printed {
    left: f64,
    right: f64,
    baseline: f64,
    size: f64,
    text: String,
}

fn walk(frame: &Frame, at: Point, into: &mut Vec<Printed>) {
    for (place, item) in frame.items() {
        let at = at + *place;
        match item {
            FrameItem::Group(group) => {
                let moved = Point::new(group.transform.tx, group.transform.ty);
                walk(&group.frame, at + moved, into);
            }
            FrameItem::Text(text) => into.push(printed(text, at)),
            _ => {}
        }
    }
}

fn printed(text: &TextItem, at: Point) -> Printed {
    let points = |length: Abs| length.to_pt();
    Printed {
        left: points(at.x),
        right: points(at.x + text.width()),
        baseline: points(at.y),
        size: points(text.size),
        text: text.text.to_string(),
    }
}

/// The texts of each page, with the width and height of the page.
fn set(document: &Document) -> Vec<(f64, f64, Vec<Printed>)> {
    let (json, drawings) = crate::data(document).expect("data");
    let pages = typst::compile::<PagedDocument>(&Sheet::new(json, drawings)).output.expect("laid out");
    let of_page = |frame: &Frame| {
        let mut texts = Vec::new();
        walk(frame, Point::zero(), &mut texts);
        (frame.width().to_pt(), frame.height().to_pt(), texts)
    };
    pages.pages().iter().map(|page| of_page(&page.frame)).collect()
}

fn check(document: &Document) {
    for (number, (width, height, texts)) in set(document).into_iter().enumerate() {
        for text in texts {
            let inside = text.left >= EDGE && text.right <= width - EDGE && text.baseline <= height - EDGE / 2.0;
            let Printed { left, right, baseline, size, text } = text;
            assert!(
                inside,
                "page {}: \"{text}\" of {size} pt from {left:.0} to {right:.0} at {baseline:.0}",
                number + 1
            );
        }
    }
}

#[test]
fn every_kind_stays_on_the_page() {
    for reader in [Reader::Patient, Reader::Clinician] {
        for size in [Size::A4, Size::Letter] {
            check(&sample::sheet(reader, size, sample::every_kind()));
        }
    }
}

#[test]
fn no_word_is_too_long_for_its_place() {
    let word = "W".repeat(10_000);
    let mut band = sample::band(1);
    band.title = word.clone();
    band.mistakes = vec![word.clone()];
    band.start = Some(sample::fact("Start", &word));
    let again = sheets::Band { again: word.clone(), ..sample::band_again(0) };
    let blocks = vec![
        Block::Head { title: word[..300].to_owned(), subtitle: word.clone() },
        sample::paragraph(Tone::Lead, &word),
        Block::Brief { mark: sheets::ListMark::Dont, items: vec![word.clone(), word.clone()] },
        Block::Fields { columns: 2, fields: vec![sample::field(&word, &word, "")] },
        Block::Bands { bands: vec![band, again] },
    ];
    check(&sample::sheet(Reader::Patient, Size::A4, blocks));
}

/// Short bands are not measured; whatever the length, none runs over the end of a page.
#[test]
fn bands_of_every_length_stay_on_the_page() {
    for steps in 1..24 {
        let mut band = sample::band(0);
        band.steps = (0..steps).map(|_| "RAISE THE ARM SLOWLY, WAIT A MOMENT, AND COME DOWN.".to_owned()).collect();
        band.mistakes = vec!["LETTING THE ARM DROP ON THE WAY DOWN.".into(); steps / 3];
        for size in [Size::A4, Size::Letter] {
            check(&sample::sheet(
                Reader::Patient,
                size,
                vec![Block::Bands { bands: vec![band.clone(), band.clone()] }],
            ));
        }
    }
}

/// 14 pt is the least for a patient (the practice's promise of large print), 7.5 pt for a clinician.
#[test]
fn no_print_is_too_small_for_its_reader() {
    for (reader, least) in [(Reader::Patient, 14.0), (Reader::Clinician, 7.5)] {
        let sizes: Vec<f64> = set(&sample::sheet(reader, Size::A4, sample::every_kind()))
            .into_iter()
            .flat_map(|(_, _, texts)| texts)
            .map(|text| text.size)
            .collect();
        assert!(sizes.len() > 100, "{reader:?}: {} texts", sizes.len());
        let smallest = sizes.iter().copied().fold(f64::INFINITY, f64::min);
        assert!(smallest >= least - 0.01, "{reader:?}: {smallest}");
    }
}

#[test]
fn the_side_stands_on_every_page_and_pages_are_counted() {
    let pages = set(&sample::handout());
    let count = pages.len();
    assert!((8..=20).contains(&count), "{count} pages");
    for (number, (_, _, texts)) in pages.into_iter().enumerate() {
        let all: String = texts.iter().map(|text| text.text.as_str()).collect();
        assert!(all.contains("RIGHT arm"), "page {}: {all}", number + 1);
        assert!(all.contains(&format!("Page {} of {count}", number + 1)), "page {}: {all}", number + 1);
    }
}

/// A heading at the foot of a page, with what it heads on the next one, is read as the end.
#[test]
fn no_heading_stands_alone_at_the_foot() {
    let filled = |lines: usize| {
        let mut blocks: Vec<Block> = (0..lines).map(|_| sample::paragraph(Tone::Plain, "A line.")).collect();
        blocks.push(sample::heading(2, "Headline"));
        blocks.push(Block::Bands { bands: vec![sample::band(0)] });
        sample::sheet(Reader::Patient, Size::A4, blocks)
    };
    for lines in (10..40).step_by(3) {
        let pages = set(&filled(lines));
        let of = |wanted: &str| {
            pages.iter().position(|(_, _, texts)| texts.iter().any(|text| text.text.contains(wanted))).expect("printed")
        };
        assert_eq!(of("Headline"), of("Lift with"), "{lines} lines");
    }
}
