//! The shipped files, composed.
use diagnostic::{FileId, Sink};

use crate::*;

pub(crate) fn shipped() -> Library {
    let mut sink = Sink::new();
    let mut next = 0;
    let library = Library::shipped(
        |_, _| {
            next += 1;
            FileId(next)
        },
        &mut sink,
    );
    let found: Vec<_> = sink.found().iter().map(|d| {
        let file = d.span.map_or("", |s| SHIPPED[usize::from(s.file.0) - 1].0);
        let text = d.span.map_or(String::new(), |s| SHIPPED[usize::from(s.file.0) - 1].1[s.start as usize..s.end as usize].chars().take(80).collect());
        format!("{file}: {} {} [{text}]", d.code, d.message)}).collect();
    assert!(found.is_empty(), "{found:#?}");
    library
}

#[test]
fn the_shipped_files_have_no_fault() {
    assert_eq!(shipped().families.len(), 2);
}
