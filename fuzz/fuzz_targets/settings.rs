//! The reader of settings files.
//!
//! `cargo +nightly fuzz run settings` from the folder of the workspace.
#![no_main]

use diagnostic::{FileId, Sink};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    let mut sink = Sink::new();
    let _ = prescription::read_settings(FileId(0), text, &mut sink);
});
