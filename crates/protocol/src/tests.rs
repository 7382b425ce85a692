//! The shipped files, composed; and files with one fault each.

mod arcs;
mod bad_days;
mod bad_files;
mod bad_limits;
mod bad_names;
mod bad_offers;
mod bad_passive;
mod bad_reach;
mod composed;
mod composition;
mod fixture;
mod gates;
mod mutated;
mod properties;

use diagnostic::{FileId, Sink};

use crate::*;

/// The shipped catalogue.
pub(crate) fn catalogue() -> exercise::Catalogue {
    let mut sink = Sink::new();
    let catalogue = exercise::shipped(&mut sink, |_, _| FileId(u16::MAX));
    assert!(!sink.has_errors());
    catalogue
}

/// The shipped families; any fault in them fails the test.
pub(crate) fn shipped() -> Library {
    let mut sink = Sink::new();
    let mut next = 0..;
    let library = Library::shipped(|_, _| FileId(next.next().expect("few files")), &mut sink);
    library.check(&catalogue(), &mut sink);
    assert_eq!(fixture::rendered(sink.found(), SHIPPED), Vec::<String>::new());
    library
}

#[test]
fn the_shipped_files_have_no_fault() {
    assert_eq!(shipped().families.len(), 2);
}
