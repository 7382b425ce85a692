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

    /// What the repetitions of an exercise count: "times" where its text says nothing else.
    pub fn counted(&self, id: &str) -> String {
        let entry = self.catalogue.get(id);
        entry
            .and_then(|entry| self.messages.attribute(&entry.message_id(), "counted"))
            .unwrap_or_else(|| self.messages.text("prescription-times", &[]))
    }

    /// The title of an entry of the catalogue.
    pub fn title(&self, id: &str) -> String {
        match self.catalogue.get(id) {
            Some(entry) => self.messages.text(&entry.message_id(), &[]),
            None => id.to_owned(),
        }
    }
}
