//! The latest day on which a movement is open passively, as a protocol promises it.

use body::{Key, Mode};
use diagnostic::{Sink, Span};
use document::Table;
use evidence::Entry;
use quantity::PostoperativeDay;

use super::evidence_of::{self, UseOf};
use super::{keys, protocol::day_of};

/// A promise against stiffness: from this day on the movements may be moved passively, whatever was found.
///
/// # Method
/// "May be moved" is any limit but `no`. Where another protocol caps the plan, the later
/// day of the two is the promise.
#[derive(Debug, Clone)]
pub struct PassiveBy {
    /// The movements, each as its passive key in any position.
    pub keys: Vec<Key>,
    /// The latest first day.
    pub day: PostoperativeDay,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// Reads one `[[passive_by]]` table.
pub(super) fn read(mut table: Table<'_>, sink: &mut Sink) -> Option<PassiveBy> {
    let span = table.span;
    let mut numbers = Vec::new();
    let keys = keys::read_in_modes(&mut table, &[Mode::Passive], sink);
    let day = day_of(&mut table, "day", &mut numbers, sink);
    let evidence = evidence_of::read(&mut table, UseOf::Limit, sink);
    evidence_of::demand(&numbers, &evidence, sink);
    table.finish(sink);
    Some(PassiveBy { keys, day: day?, evidence, span })
}
