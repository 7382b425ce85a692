//! The tear of a record: its three lengths and its grades.

use evidence::ids;
use operative::{Facts, dim};
use quantity::Millimeters;

use super::page::{Page, quoted};
use super::{Edge, yes_no};

const STEP: Millimeters = Millimeters::from_steps(1);
const SMALL_BELOW: Millimeters = ids::TEAR_CLASS_SMALL_BELOW.millimeters();
const LARGE_FROM: Millimeters = ids::TEAR_CLASS_LARGE_FROM.millimeters();
const MASSIVE_ABOVE: Millimeters = ids::TEAR_CLASS_MASSIVE_ABOVE.millimeters();
const GREATEST: Millimeters = ids::RECORD_TEAR_SIZE_GREATEST.millimeters();
const UNLIKELY_UNDER: Millimeters = ids::RECORD_HIGH_PATTE_RETRACTION.millimeters();

// The grades of a scale are whole and few, so the numbers fit.
const RETRACTION_GRADE: u8 = ids::SLOWER_RETRACTION_GRADE.number() as u8;
const PATTE_HIGHEST: u8 = ids::PATTE_GRADE_HIGHEST.number() as u8;
const INFILTRATION_FROM: u8 = ids::SLOWER_INFILTRATION_FROM.number() as u8;
const GOUTALLIER_HIGHEST: u8 = ids::GOUTALLIER_GRADE_HIGHEST.number() as u8;

const TEAR: &str = "[operation.tear]";
const GRADES: &str = "[operation.fatty_infiltration]";

/// Writes the table of the tear; nothing where nothing is recorded.
pub(super) fn write(page: &mut Page, facts: &Facts, edge: Edge) {
    lengths(page, facts, edge);
    let patte = match facts.class(dim::RETRACTION_GRADE) {
        0 => Some(edge.of(1, 1, RETRACTION_GRADE - 1)),
        1 => Some(edge.of(RETRACTION_GRADE, RETRACTION_GRADE, PATTE_HIGHEST)),
        _ => None,
    };
    page.set_maybe(TEAR, "retraction_patte", patte.map(|grade| grade.to_string()));
    page.set_maybe(TEAR, "delamination", yes_no(facts, dim::DELAMINATION));
}

/// The lowest and the highest length of a class of size; `None` for `unknown`.
fn ends(class: u8) -> Option<(Millimeters, Millimeters)> {
    let below = |length: Millimeters| Millimeters::from_steps(length.steps() - STEP.steps());
    let above = |length: Millimeters| Millimeters::from_steps(length.steps() + STEP.steps());
    Some(match class {
        0 => (STEP, below(SMALL_BELOW)),
        1 => (SMALL_BELOW, below(LARGE_FROM)),
        2 => (LARGE_FROM, MASSIVE_ABOVE),
        3 => (above(MASSIVE_ABOVE), GREATEST), // not medical: the fourth class
        _ => return None,
    })
}

/// The size that decides, and one smaller length, so that the width counts as known.
///
/// Each edge has the deciding size in another of the three keys. An `unknown`
/// size of a repair is the front-to-back size alone, below the size that would
/// settle it; a release says nothing.
fn lengths(page: &mut Page, facts: &Facts, edge: Edge) {
    let mut set = |key, length: Millimeters| page.set(TEAR, key, quoted(&format!("{length} mm")));
    let whole_half = |length: Millimeters| Millimeters::whole(length.number() as i32 / 2);
    let at = |(lowest, highest): (Millimeters, Millimeters)| {
        let middle = whole_half(Millimeters::from_steps(lowest.steps() + highest.steps()));
        edge.of(lowest, middle, highest)
    };
    let Some(ends) = ends(facts.class(dim::TEAR_SIZE)) else {
        if facts.class(dim::PROCEDURE) == 0 {
            let settled = Millimeters::from_steps(LARGE_FROM.steps() - STEP.steps());
            set("anteroposterior", at((STEP, settled)));
        }
        return;
    };
    let size = at(ends);
    let smaller = whole_half(size).max(STEP);
    // A short retraction of the highest Patte grade is an unlikely pair, of which the reader would warn.
    let is_unlikely = facts.class(dim::RETRACTION_GRADE) == 1 && size < UNLIKELY_UNDER;
    match edge {
        Edge::Middle => {
            set("anteroposterior", size);
            set("mediolateral", smaller);
        }
        Edge::Highest if !is_unlikely => {
            set("anteroposterior", smaller);
            set("retraction", size);
        }
        Edge::Lowest | Edge::Highest => {
            set("anteroposterior", smaller);
            set("mediolateral", size);
        }
    }
}

/// Writes the Goutallier grades; nothing where none is recorded.
///
/// At the highest edge a second muscle has a lower grade, so that the greatest decides.
pub(super) fn write_grades(page: &mut Page, facts: &Facts, edge: Edge) {
    let grade = match facts.class(dim::FATTY_INFILTRATION) {
        0 => edge.of(0, 1, INFILTRATION_FROM - 1),
        1 => edge.of(INFILTRATION_FROM, INFILTRATION_FROM, GOUTALLIER_HIGHEST),
        _ => return,
    };
    page.set(GRADES, edge.of("supraspinatus", "infraspinatus", "teres_minor"), grade.to_string());
    if edge == Edge::Highest {
        page.set(GRADES, "infraspinatus", (grade - 1).to_string());
    }
}
