//! The reader of operative records, and everything that is asked of a record.
//!
//! `cargo +nightly fuzz run record` from the folder of the workspace, with the
//! files of `examples/` as a first corpus.
#![no_main]

use diagnostic::{FileId, Sink};
use libfuzzer_sys::fuzz_target;
use operative::{facts, healing_index, DimensionId, DIMENSIONS};

fuzz_target!(|text: &str| {
    let mut sink = Sink::new();
    let record = operative::read(FileId(0), text, &mut sink);
    assert_eq!(record.is_none(), sink.has_errors());
    let Some(record) = record else { return };
    let facts = facts(&record);
    for (index, dimension) in (0..).zip(DIMENSIONS) {
        assert!(usize::from(facts.class(DimensionId(index))) < dimension.classes.len());
        assert!(!record.basis(DimensionId(index)).is_empty());
        record.missing(DimensionId(index));
    }
    let index = healing_index(&record);
    assert!(index.low <= index.high && index.high <= index.of);
});
