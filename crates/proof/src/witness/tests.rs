//! The record of some facts reads to those facts, and no record has others.

mod every_record;
mod near_borders;
mod round_trip;

use diagnostic::{FileId, Severity, Sink};
use operative::{DIMENSION_COUNT, DIMENSIONS, DimensionId, Facts, Record, SafeArcs, dim};

use super::{Edge, witness};

/// Everything recorded, nothing found: the first class of every dimension.
fn mildest() -> Facts {
    Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() }
}

/// A capsular release with nothing else found.
fn mildest_release() -> Facts {
    let unknown = |of: DimensionId| class(of, "unknown");
    mildest()
        .with(dim::PROCEDURE, class(dim::PROCEDURE, "capsular release"))
        .with(dim::TISSUE, unknown(dim::TISSUE))
        .with(dim::TENSION, unknown(dim::TENSION))
        .with(dim::REPAIR_CONSTRUCT, unknown(dim::REPAIR_CONSTRUCT))
        .with(dim::CAPSULAR_RELEASE, class(dim::CAPSULAR_RELEASE, "yes"))
}

fn class(of: DimensionId, name: &str) -> u8 {
    let found = of.get().and_then(|dimension| dimension.class(name));
    found.unwrap_or_else(|| panic!("no class {name}"))
}

/// Every dimension with its classes.
fn dimensions() -> impl Iterator<Item = (DimensionId, std::ops::Range<u8>)> {
    (0..).zip(DIMENSIONS).map(|(id, dimension)| (DimensionId(id), 0..dimension.classes.len() as u8))
}

/// Reads a text; the codes of its errors where it has any.
fn read(text: &str) -> Result<Record, Vec<&'static str>> {
    let mut sink = Sink::new();
    operative::read(FileId(0), text, &mut sink).ok_or_else(|| codes(&sink, Severity::Error))
}

fn codes(sink: &Sink, severity: Severity) -> Vec<&'static str> {
    sink.found().iter().filter(|found| found.severity == severity).map(|found| found.code).collect()
}

/// The record of these facts reads to them, whichever value of a class it takes.
///
/// It gives no warning either, but for the tendon that has to stand beside the
/// one of which nobody wrote down how it was fixed.
#[track_caller]
fn check(facts: &Facts) {
    for edge in Edge::ALL {
        let text = witness(facts, *edge);
        let mut sink = Sink::new();
        let found = operative::read(FileId(0), &text, &mut sink).map(|record| operative::facts(&record));
        assert_eq!(found, Some(*facts), "{edge:?} {:?}\n{text}", codes(&sink, Severity::Error));
        let beside_unfixed = facts.is_unknown(dim::REPAIR_CONSTRUCT) && facts.class(dim::REPAIRED_TENDONS) == 0;
        let allowed: &[_] =
            if beside_unfixed && facts.class(dim::PROCEDURE) == 0 { &["tendon-left-unrepaired"] } else { &[] };
        assert_eq!(codes(&sink, Severity::Warning), allowed, "{edge:?}\n{text}");
    }
}
