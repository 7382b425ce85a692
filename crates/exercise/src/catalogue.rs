//! All entries together, and how they are found.

use std::collections::BTreeMap;

use diagnostic::{FileId, Sink};

use crate::{Entry, Kind, Purpose, check, reader};

/// Every entry of the files that were read.
#[derive(Debug, Clone, Default)]
pub struct Catalogue {
    entries: Vec<Entry>,
    by_id: BTreeMap<String, usize>,
}

impl Catalogue {
    /// The entry of this id, whatever its kind.
    pub fn get(&self, id: &str) -> Option<&Entry> {
        self.by_id.get(id).and_then(|&at| self.entries.get(at))
    }

    /// Every entry, in the order of the files.
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// The entries of one kind, in the order of the files.
    pub fn of(&self, kind: Kind) -> impl Iterator<Item = &Entry> {
        self.entries.iter().filter(move |entry| entry.kind == kind)
    }

    /// The exercises that serve one purpose, in the order of the files.
    pub fn of_purpose(&self, purpose: Purpose) -> impl Iterator<Item = &Entry> {
        self.entries.iter().filter(move |entry| entry.purpose == Some(purpose))
    }

    /// The ids of one kind, for messages that name the nearest.
    pub fn ids(&self, kind: Kind) -> impl Iterator<Item = &str> {
        self.of(kind).map(|entry| entry.id.as_str())
    }
}

/// Reads a catalogue from the text of its files.
///
/// # Units and shape
/// Each file holds any number of `[[exercise]]`, `[[activity]]`, `[[care]]` and
/// `[[test]]`. Faults go to the sink; an entry that lacks something it can't do
/// without is left out, the others are kept.
///
/// # Errors
/// - `missing-key`, `wrong-type`, `unknown-key`, `unknown-word` and the faults of quantities
/// - `bad-id`: an id that is not in kebab case
/// - `duplicate-id`: two entries of one id
/// - `unknown-evidence`: an id the table of evidence does not hold
/// - `number-without-evidence`: a number that stands in no cited entry
/// - `not-muscle-activity`: a muscle entry without a percentage of a maximal effort
/// - `no-such-key`: words that name nothing together
/// - `wrong-amount`: degrees for a load, a load for a movement, and the like
/// - `beyond-the-joint`: more than any shoulder does
/// - `angle-backwards`: an arc that ends before it starts
/// - `other-arm-demand`: the other arm works and its demand is missing, or the reverse
/// - `same-exercise`: two entries with the same demand, posture and equipment
pub fn read(files: &[(FileId, &str)], sink: &mut Sink) -> Catalogue {
    let mut catalogue = Catalogue::default();
    for (file, text) in files {
        let Some(mut table) = document::read(*file, text, sink) else { continue };
        for (key, kind) in
            [("exercise", Kind::Exercise), ("activity", Kind::Activity), ("care", Kind::Care), ("test", Kind::Test)]
        {
            for item in table.tables(key, sink) {
                catalogue.entries.extend(reader::entry(kind, item, sink));
            }
        }
        table.finish(sink);
    }
    check::duplicates(&mut catalogue.entries, sink);
    check::same_demand(&catalogue.entries, sink);
    catalogue.by_id = catalogue.entries.iter().enumerate().map(|(at, entry)| (entry.id.clone(), at)).collect();
    catalogue
}
