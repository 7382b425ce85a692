//! What stands on each sheet of paper, as data: the patient's handout, the
//! sheet for the first days, the therapist's letter, the surgeon's page and the
//! work note.
//!
//! A sheet is a [`Document`] of [`Block`]s with texts in them. How it looks is
//! decided elsewhere; nothing here knows fonts, colors or page breaks beyond
//! "a new page starts here". Every clinical value comes from the prescription.
#![deny(missing_docs)]

mod document;

pub use document::{
    Band, Block, Cell, Column, Document, Fact, Field, ListMark, Print, Reader, Shade, Side, Size, SlingRun, StageRun,
    TickRow, Tone,
};
