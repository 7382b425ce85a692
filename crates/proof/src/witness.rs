//! A readable record for the classes of some facts.
//!
//! The proof walks over classes; a person reads records. Every class result can
//! therefore be turned back into an operative record that reads to exactly
//! those classes, and every border of a class has records on both of its sides.

mod believable;
mod borders;
mod page;
mod tear;
mod tendons;
#[cfg(test)]
mod tests;

use evidence::ids;
use jiff::ToSpan;
use jiff::civil::Date;
use operative::{DimensionId, Facts, dim};

use page::{Page, quoted};

pub use believable::{EXCLUSIONS, Exclusion, excluded_by, is_believable};
pub use borders::{Border, Expected, borders};

/// Which record of a class is written, where a class has more than one.
///
/// A class with measured ends (a size, a grade, an age) has a lowest and a
/// highest value that the reader of records accepts. Where several words mean
/// one class (`good` and `fair`, a part of the subscapularis and its approach)
/// and where several tendons share one class, the edges also take turns through
/// those.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Edge {
    /// The lowest value that is of the class.
    Lowest,
    /// A value inside it: the record to show to a person.
    #[default]
    Middle,
    /// The highest value that is of the class.
    Highest,
}

impl Edge {
    /// Every edge, lowest first.
    pub const ALL: &'static [Self] = &[Self::Lowest, Self::Middle, Self::Highest];

    /// The value of this edge.
    fn of<T>(self, lowest: T, middle: T, highest: T) -> T {
        match self {
            Self::Lowest => lowest,
            Self::Middle => middle,
            Self::Highest => highest,
        }
    }
}

/// The text of an invented record that has these facts.
///
/// # Units and shape
/// TOML as `operative::read` takes it, with a comment that says it is invented;
/// the patient has a day of birth and neither label nor name.
///
/// # Method
/// Only what a class rests on is written, so what no dimension asks for (sex,
/// bone density, activity) is left out. An `unknown` is a key that is left out.
/// For facts that are [believable](is_believable), reading the text gives no
/// error, and the facts of the record are these facts, safe arcs and all. Of
/// facts that are not believable there is no record; some text comes all the
/// same, and it reads to an error or to other facts.
///
/// # Example
/// ```
/// use diagnostic::{FileId, Sink};
/// use operative::{DIMENSION_COUNT, Facts, SafeArcs, dim};
/// use proof::{Edge, witness};
///
/// let mildest = Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() };
/// let old = mildest.with(dim::AGE_OVER_70, 1);
/// let text = witness(&old, Edge::Lowest);
/// // The 71st birthday is the day of surgery.
/// assert!(text.contains("birth_date = 1955-03-02") && text.contains("date = 2026-03-02"));
/// let record = operative::read(FileId(0), &text, &mut Sink::new());
/// assert_eq!(record.map(|record| operative::facts(&record)), Some(old));
/// ```
///
/// # Source
/// Borders: the entries of evidence that `operative::facts` reads. Every other
/// value is invented.
pub fn witness(facts: &Facts, edge: Edge) -> String {
    page(facts, edge).print()
}

/// The record as a page that can still be changed.
fn page(facts: &Facts, edge: Edge) -> Page {
    let mut page = Page::default();
    let is_release = facts.class(dim::PROCEDURE) > 0;
    let date = edge.of(
        Date::constant(2026, 3, 2),   // not medical: an invented day
        Date::constant(2026, 5, 11),  // not medical: an invented day
        Date::constant(2027, 11, 29), // not medical: an invented day
    );
    let birth = birth_date(facts.class(dim::AGE_OVER_70) > 0, edge, date);
    page.set("[patient]", "birth_date", birth.to_string());

    page.set("[operation]", "date", date.to_string());
    page.set("[operation]", "side", quoted(edge.of("right", "right", "left")));
    page.set("[operation]", "approach", quoted(tendons::approach(facts, edge)));
    if is_release {
        page.set("[operation]", "procedure", quoted(facts.class_name(dim::PROCEDURE)));
    }
    page.set_maybe("[operation]", "revision", yes_no(facts, dim::REVISION));

    tear::write(&mut page, facts, edge);
    tendons::write(&mut page, facts, edge);
    tear::write_grades(&mut page, facts, edge);
    also(&mut page, facts, edge);
    safe_arcs(&mut page, facts);
    other_arm(&mut page, facts, edge, birth);

    page.set_maybe("[risk]", "diabetes", yes_no(facts, dim::DIABETES));
    page.set_maybe("[risk]", "smoking", yes_no(facts, dim::SMOKING));
    page.set_maybe("[risk]", "preoperative_stiffness", yes_no(facts, dim::PREOPERATIVE_STIFFNESS));
    page.set_maybe("[risk]", "pseudoparalysis", yes_no(facts, dim::PSEUDOPARALYSIS));

    let answer = |of: DimensionId| (facts.class(of) > 0).then(|| facts.class_name(of));
    page.set_maybe("[surgeon]", "slower", answer(dim::SLOWER).map(|slower| (slower == "yes").to_string()));
    page.set_maybe("[surgeon]", "stiff_shoulder", answer(dim::STIFF_SHOULDER).map(quoted));
    page.set_maybe("[surgeon]", "beyond_delayed", answer(dim::BEYOND_DELAYED).map(quoted));
    page
}

const AGE_OVER: i16 = ids::SLOWER_AGE_OVER.years();
const AGE_GREATEST: i16 = ids::RECORD_AGE_GREATEST.years();

/// A day of birth for an operation on a day.
///
/// The lowest age of a class is a birthday on the day of surgery, the highest
/// the day before the next birthday.
fn birth_date(over: bool, edge: Edge, operation: Date) -> Date {
    let years_before = |years: i16| operation.saturating_sub(years.years());
    let eve_of = |years: i16| years_before(years + 1).saturating_add(1.day());
    if over {
        let usual = years_before(AGE_OVER + 6).saturating_sub(100.days()); // not medical: an invented age over the border
        edge.of(years_before(AGE_OVER + 1), usual, eve_of(AGE_GREATEST))
    } else {
        let usual = years_before(AGE_OVER - 12).saturating_sub(100.days()); // not medical: an invented age under the border
        edge.of(operation, usual, eve_of(AGE_OVER))
    }
}

/// A key of `true` or `false`; `None` where the class is `unknown`.
fn yes_no(facts: &Facts, of: DimensionId) -> Option<String> {
    recorded(facts, of).map(|class| (class == "yes").to_string())
}

/// The name of the class, unless it is `unknown`.
fn recorded(facts: &Facts, of: DimensionId) -> Option<&'static str> {
    (!facts.is_unknown(of)).then(|| facts.class_name(of))
}

fn also(page: &mut Page, facts: &Facts, edge: Edge) {
    let also = "[operation.also]";
    page.set_maybe(also, "biceps", recorded(facts, dim::BICEPS).map(quoted));
    page.set_maybe(also, "labrum", recorded(facts, dim::LABRUM).map(quoted));
    page.set_maybe(also, "distal_clavicle_excision", yes_no(facts, dim::DISTAL_CLAVICLE_EXCISION));
    if facts.class(dim::PROCEDURE) == 0 {
        page.set_maybe(also, "capsular_release", yes_no(facts, dim::CAPSULAR_RELEASE));
    }
    let present = edge.of("graft", "tendon transfer", "balloon");
    let other = if facts.class(dim::OTHER_PROCEDURE) > 0 { format!("[{}]", quoted(present)) } else { "[]".into() };
    page.set(also, "other", other);
}

fn safe_arcs(page: &mut Page, facts: &Facts) {
    for arc in facts.safe_arcs.iter() {
        let table = page.push("[[operation.safe_arc]]");
        table.set("movement", quoted(arc.movement.name()));
        table.set("up_to", quoted(&format!("{} deg", arc.up_to)));
        if let Some(until) = arc.until {
            table.set("until", quoted(&until.to_string()));
        }
    }
}

/// A day of operation says `operated` even where the word is not written.
fn other_arm(page: &mut Page, facts: &Facts, edge: Edge, birth: Date) {
    let Some(shoulder) = recorded(facts, dim::OTHER_SHOULDER) else { return };
    let is_operated = shoulder == "operated";
    if !is_operated || edge != Edge::Lowest {
        page.set("[other_arm]", "shoulder", quoted(shoulder));
    }
    if is_operated {
        let usual = Date::constant(2019, 10, 22); // not medical: an invented day
        page.set("[other_arm]", "operated_on", usual.max(birth).to_string());
    }
}
