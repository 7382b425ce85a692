//! The shipped protocols, catalogue and texts, read once a run.

use diagnostic::{Sink, Sources};
use exercise::Catalogue;
use protocol::Library;
use wording::Messages;

/// Everything that comes with the program.
#[derive(Debug)]
pub struct Shelf {
    /// The families of protocols.
    pub library: Library,
    /// The catalogue.
    pub catalogue: Catalogue,
    /// The texts.
    pub messages: Messages,
}

impl Shelf {
    /// Reads what is shipped; a fault in it is a fault of the program, and the tests keep it out.
    pub fn new(sources: &mut Sources, sink: &mut Sink) -> Self {
        let library = Library::shipped(|name, text| sources.add(format!("protocols/{name}"), text), sink);
        let catalogue = exercise::shipped(sink, |name, text| sources.add(format!("exercises/{name}"), text));
        Self { library, catalogue, messages: Messages::english() }
    }

    /// The title of an entry of the catalogue.
    pub fn title(&self, id: &str) -> String {
        match self.catalogue.get(id) {
            Some(entry) => self.messages.text(&entry.message_id(), &[]),
            None => id.to_owned(),
        }
    }
}
