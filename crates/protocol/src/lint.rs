//! What only a whole family can show: contradictions, gaps, and lines that can
//! never come true.
//!
//! That a rule loosens is not among the faults: rules are composed with the
//! protocol by the lowest value, so a rule that names a higher one changes nothing.
//!
//! Each protocol is looked at under the options that count by default and under
//! every other option, one at a time.

mod caps;
mod days;
mod demands;
mod duplicates;
mod exercises;
mod limits;
mod names;
mod offers;
mod passive;
mod reach;
mod size;
mod under;
mod words;

use diagnostic::{FileId, Severity, Sink};
use exercise::Catalogue;

use crate::Family;
pub(crate) use size::fits;
use under::Under;

/// Checks a family against itself and the catalogue.
///
/// # Method
/// A family with a file that could not be read whole is left for the next time:
/// every line that is missing would be told as a gap.
///
/// # Errors
/// - `unknown-stage`, `unknown-protocol`, `unknown-choice`, `unknown-option`, `unknown-exercise`, `unknown-activity`
/// - `duplicate-id`: an id that stands for two things
/// - `contradiction`: two limits for one key, or two sling lines for one day
/// - `gap`: days without a sling line, steps with a hole, stages that do not start with surgery or are out of order
/// - `horizons-differ`: protocols of one family that end on different days
/// - `option-without-line`: an option that changes nothing; `visit-ends-first`: a window that ends before it begins
/// - `limit-falls`: a limit that gets stricter as the days go by
/// - `limit-never-lifts`: a limit that ends neither by a day nor by the surgeon, or a movement never opened
/// - `modes-upside-down`: a mode that goes further than the mode it rests on
/// - `goal-above-limit`, `criterion-out-of-reach`, `exercise-never-allowed`
/// - `goal-without-exercise`: a stage with a goal and no exercise for it that its own limits allow
/// - `no-latest-passive-day`, `passive-too-late`: a movement whose latest day is not promised, or not kept
/// - `cap-not-stricter`: a cap that allows what the default does not
/// - `family-too-large`: more than the tables of a plan hold
pub(crate) fn family(family: &Family, catalogue: &Catalogue, sink: &mut Sink) {
    if !was_read_whole(family, sink) {
        return;
    }
    let errors = sink.errors();
    names::check(family, catalogue, sink);
    duplicates::check(family, sink);
    days::check(family, sink);
    limits::check(family, sink);
    passive::names(family, sink);
    if !size::fits(family, sink) {
        return;
    }
    let alternatives = Under::all(family);
    if sink.errors() == errors {
        limits::check_options(&alternatives, sink);
    }
    // After a limit that is missing or doubled these would only tell its consequences.
    if sink.errors() == errors {
        limits::check_modes(&alternatives, sink);
        caps::check(&alternatives, sink);
        passive::days(&alternatives, sink);
    }
    reach::goals(&alternatives, sink);
    reach::criteria(&alternatives, catalogue, sink);
    exercises::check(&alternatives, catalogue, sink);
    // A goal out of reach or an exercise that is never allowed has its own message.
    if sink.errors() == errors {
        offers::check(&alternatives, catalogue, sink);
        names::idle_options(family, sink);
    }
}

fn was_read_whole(family: &Family, sink: &Sink) -> bool {
    let of_protocols = family
        .protocols
        .iter()
        .flat_map(|protocol| std::iter::once(protocol.span).chain(protocol.limits.iter().map(|limit| limit.span)));
    let of_rules = family.rules().map(|(_, rule)| rule.span);
    let files: Vec<FileId> =
        std::iter::once(family.file.span).chain(of_protocols).chain(of_rules).map(|span| span.file).collect();
    !sink
        .found()
        .iter()
        .any(|fault| fault.severity == Severity::Error && fault.span.is_some_and(|span| files.contains(&span.file)))
}
