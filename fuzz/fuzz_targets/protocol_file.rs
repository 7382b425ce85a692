//! The reader of protocol files.
//!
//! `cargo +nightly fuzz run protocol_file` from the folder of the workspace,
//! with the files of `protocols/` as a first corpus.
#![no_main]

use diagnostic::{FileId, Sink};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    let mut sink = Sink::new();
    let _ = protocol::file::read(FileId(0), text, &mut sink);
});
