//! A sheet on paper: a [`sheets::Document`] becomes a PDF.
//!
//! The document goes to the templates as data (JSON), never as markup, so no
//! text can be anything but text. Fonts and templates are in the program;
//! nothing is read from files, and the same document gives the same bytes.
#![deny(missing_docs)]

#[cfg(test)]
mod edges;
mod failure;
mod fonts;
mod plain;
mod sheet;

pub use failure::Failure;

use sheets::Document;
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use sheet::Sheet;

/// How many documents something the typesetter remembers may go unused before it is forgotten.
const REMEMBERED: usize = 2;

/// The document as a PDF, tagged after PDF/UA-1.
///
/// # Method
/// No date and no random number goes in, so equal documents give equal bytes.
/// What the typesetter remembers between two documents is forgotten when unused,
/// so that the memory stays flat however many are printed.
///
/// # Errors
/// - [`Failure::NoGlyph`]: a text has signs that no face holds; nothing is printed.
/// - [`Failure::Layout`], [`Failure::Export`]: a fault of the templates.
pub fn pdf(document: &Document) -> Result<Vec<u8>, Failure> {
    let json = data(document)?;
    let sheet = Sheet::new(json.clone());
    let printed = print(&sheet, json);
    comemo::evict(REMEMBERED);
    printed
}

/// How many pages a document takes.
///
/// # Example
/// The blocks up to a signature take one page where the signature stands on the first.
///
/// # Errors
/// Those of [`pdf`], but for export.
pub fn page_count(document: &Document) -> Result<usize, Failure> {
    let sheet = Sheet::new(data(document)?);
    let count = laid_out(&sheet).map(|pages| pages.pages().len());
    comemo::evict(REMEMBERED);
    count
}

/// The document as the templates read it.
fn data(document: &Document) -> Result<String, Failure> {
    let mut json = serde_json::to_value(document).map_err(Failure::Document)?;
    plain::prepare(&mut json)?;
    Ok(json.to_string())
}

fn laid_out(sheet: &Sheet) -> Result<PagedDocument, Failure> {
    typst::compile::<PagedDocument>(sheet).output.map_err(|faults| Failure::layout(sheet, &faults))
}

fn print(sheet: &Sheet, identifier: String) -> Result<Vec<u8>, Failure> {
    let pages = laid_out(sheet)?;
    let standards =
        PdfStandards::new(&[PdfStandard::Ua_1]).map_err(|fault| Failure::Export(fault.message().to_string()))?;
    let options = PdfOptions {
        ident: typst::foundations::Smart::Custom(identifier),
        creator: typst::foundations::Smart::Custom(None),
        timestamp: None,
        standards,
        ..PdfOptions::default()
    };
    typst_pdf::pdf(&pages, &options).map_err(|faults| Failure::export(sheet, &faults))
}
