//! Sheets of every kind come out as tagged PDF/UA-1, whatever is in their texts.

use paper::{Failure, pdf};
use sheets::{Block, Cell, Column, Document, Print, Reader, Shade, Size, Tone};

mod sample;

fn printed(document: &Document) -> Vec<u8> {
    pdf(document).expect("printed")
}

fn holds(bytes: &[u8], text: &str) -> bool {
    bytes.windows(text.len()).any(|window| window == text.as_bytes())
}

/// Dictionaries of pages, which are written without compression.
fn pages(bytes: &[u8]) -> usize {
    let text = String::from_utf8_lossy(bytes);
    text.matches("/Type/Page/").count() + text.matches("/Type /Page\n").count() + text.matches("/Type/Page\n").count()
}

fn one(block: Block) -> Document {
    sample::sheet(Reader::Patient, Size::A4, vec![block])
}

#[test]
fn every_kind_prints_for_both_readers_on_both_papers() {
    for reader in [Reader::Patient, Reader::Clinician] {
        for size in [Size::A4, Size::Letter] {
            let bytes = printed(&sample::sheet(reader, size, sample::every_kind()));
            assert!(bytes.starts_with(b"%PDF-1."), "{reader:?} {size:?}");
            // XMP of PDF/UA (ISO 14289-1, clause 5), and the marks of a tagged file (ISO 32000-1, 14.7 and 14.8).
            for needed in
                ["<pdfuaid:part>1</pdfuaid:part>", "/StructTreeRoot", "/Marked true", "/Lang", "/ViewerPreferences"]
            {
                assert!(holds(&bytes, needed), "{reader:?} {size:?}: {needed}");
            }
        }
    }
}

#[test]
fn equal_documents_give_equal_bytes_and_others_do_not() {
    let document = sample::sheet(Reader::Patient, Size::A4, sample::every_kind());
    let first = printed(&document);
    assert_eq!(first, printed(&document));
    assert!(!holds(&first, "CreationDate") && !holds(&first, "ModDate"), "a date is in it");
    let other = Document { foot: "Other small print.".into(), ..document };
    assert_ne!(first, printed(&other));
}

#[test]
fn no_text_is_markup() {
    let hostile = [
        "#panic(\"out\")",
        "#set page(width: 1pt)",
        "$x^2$ *bold* _italic_ `code` <label> @reference",
        "= no heading",
        "- no list\n+ nor this\n/ nor: this",
        "\\ \\u{41} \\#",
        "// no comment /* nor this */",
        "#eval(\"1\") #include \"main.typ\" #image(\"/etc/passwd\")",
        "{page} {pages} {{",
        "\u{202E}reversed\u{202C} \u{200B}\u{FEFF} \t\r\0",
        "…—–≤≥→°½ñß",
    ];
    for text in hostile {
        let mut document = sample::sheet(
            Reader::Patient,
            Size::A4,
            vec![
                Block::Head { title: text.into(), subtitle: text.into() },
                sample::heading(3, text),
                sample::paragraph(Tone::Stop, text),
                Block::Facts { rows: vec![sample::fact(text, text)] },
                Block::Phones { numbers: vec![sample::fact(text, text)] },
                Block::Fields { columns: 2, fields: vec![sample::field(text, text, text)] },
            ],
        );
        document.title = text.into();
        document.running_head = text.into();
        document.foot = text.into();
        document.page_of = text.into();
        printed(&document);
    }
}

/// What the templates leave as they are, they leave in all: a word's width is never told by its letters.
#[test]
fn a_text_without_blanks_breaks_and_a_long_one_goes_on() {
    let word = "w".repeat(10_000);
    let long = "A sentence that goes on. ".repeat(400);
    for text in [word.as_str(), long.as_str()] {
        let callout = Block::Callout {
            tone: Tone::Danger,
            title: "Danger".into(),
            text: vec![text.into()],
            items: vec![text.into()],
        };
        for block in [
            sample::paragraph(Tone::Plain, text),
            callout,
            Block::Together { blocks: vec![sample::paragraph(Tone::Plain, text)] },
        ] {
            // 10,000 letters of 15 points fill more than two pages; on one they would run over its end.
            assert!(pages(&printed(&one(block))) >= 3);
        }
    }
    let mut band = sample::band(0);
    band.steps = vec![word];
    assert!(pages(&printed(&one(Block::Bands { bands: vec![band] }))) >= 3);
}

#[test]
fn signs_without_a_glyph_are_refused_by_name() {
    let refused = pdf(&one(sample::paragraph(Tone::Plain, "Take 漢 two times."))).expect_err("refused");
    let Failure::NoGlyph { sample, characters } = &refused else { panic!("{refused}") };
    assert_eq!((sample.as_str(), characters.as_slice()), ("Take 漢 two times.", &['漢'][..]));
}

#[test]
fn two_hundred_exercises_print() {
    let document = one(Block::Bands { bands: (0..200).map(sample::band).collect() });
    // At most three stand on a page.
    assert!(pages(&printed(&document)) >= 67);
}

#[test]
fn rows_that_do_not_add_up_are_filled_or_cut() {
    let cell = |span| Cell { text: "x".into(), span, shade: Shade::Closed, strong: false };
    let columns = || (0..3).map(|_| Column { title: "a\nb".into(), share: 1 }).collect::<Vec<_>>();
    for (columns, row) in [
        (columns(), vec![cell(9)]),
        (columns(), vec![cell(0)]),
        (columns(), vec![cell(2), cell(2), cell(2)]),
        (Vec::new(), vec![cell(1)]),
    ] {
        printed(&one(Block::Table { alt: "x".into(), print: Print::Usual, columns, rows: vec![row] }));
    }
}

#[test]
fn empty_blocks_print() {
    let nothing = String::new;
    let blocks = vec![
        Block::List { mark: sheets::ListMark::Box, items: Vec::new() },
        Block::Fields { columns: 0, fields: Vec::new() },
        Block::Facts { rows: Vec::new() },
        Block::Phones { numbers: Vec::new() },
        Block::Bands { bands: Vec::new() },
        Block::Table { alt: nothing(), print: Print::Usual, columns: Vec::new(), rows: Vec::new() },
        Block::Ticks { alt: nothing(), corner: nothing(), days: Vec::new(), rows: Vec::new() },
        Block::Brief { mark: sheets::ListMark::Dont, items: Vec::new() },
        Block::Strip { title: nothing(), text: nothing(), fields: Vec::new() },
        Block::Signature { text: nothing(), labels: Vec::new() },
        Block::Together { blocks: Vec::new() },
        Block::Callout { tone: Tone::Plain, title: nothing(), text: Vec::new(), items: Vec::new() },
        Block::RecoveryLine {
            alt: "Nothing.".into(),
            week: nothing(),
            sling_word: nothing(),
            until_day: 0,
            sling: Vec::new(),
            stages: Vec::new(),
            dates: Vec::new(),
            mark: None,
        },
        Block::PageBreak,
    ];
    let mut document = sample::sheet(Reader::Clinician, Size::A4, blocks);
    document.side = None;
    printed(&document);
    document.blocks = Vec::new();
    printed(&document);
}
