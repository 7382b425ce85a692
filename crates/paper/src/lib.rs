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
mod png;
mod sheet;

pub use failure::Failure;
pub use png::png;

use serde_json::Value;
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
    let (json, drawings) = data(document)?;
    let sheet = Sheet::new(json.clone(), drawings);
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
    let (json, drawings) = data(document)?;
    let sheet = Sheet::new(json, drawings);
    let count = laid_out(&sheet).map(|pages| pages.pages().len());
    comemo::evict(REMEMBERED);
    count
}

/// The document as the templates read it, and its drawings, which the data name as files.
fn data(document: &Document) -> Result<(String, Vec<String>), Failure> {
    let mut json = serde_json::to_value(document).map_err(Failure::Document)?;
    let mut drawings = Vec::new();
    take_drawings(&mut json, &mut drawings);
    plain::prepare(&mut json)?;
    Ok((json.to_string(), drawings))
}

/// Puts the name of a file in the place of every drawing; one that comes again is one file.
fn take_drawings(value: &mut Value, drawings: &mut Vec<String>) {
    match value {
        Value::Array(items) => items.iter_mut().for_each(|item| take_drawings(item, drawings)),
        Value::Object(fields) => {
            for (name, field) in fields {
                let Value::String(svg) = field else {
                    take_drawings(field, drawings);
                    continue;
                };
                if name == "svg" {
                    let known = drawings.iter().position(|known| known == svg);
                    let order = known.unwrap_or(drawings.len());
                    let svg = std::mem::replace(svg, sheet::drawing_name(order));
                    if known.is_none() {
                        drawings.push(svg);
                    }
                }
            }
        }
        Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) => {}
    }
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
