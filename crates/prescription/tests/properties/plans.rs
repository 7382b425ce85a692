//! Prescribing, and looking at a prescription day by day.

use std::sync::LazyLock;

use body::{ALL_KEYS, Joint, Key, Position};
use diagnostic::{FileId, Sink};
use exercise::Catalogue;
use jiff::ToSpan;
use jiff::civil::Date;
use plan::{Allowed, Cell, LimitRow, Prescription, SlingLine, SpanOfDays};
use prescription::{Case, May, Settings};
use protocol::Library;

/// What comes with the program.
pub static SHIPPED: LazyLock<(Library, Catalogue)> = LazyLock::new(|| {
    let mut sink = Sink::new();
    let library = Library::shipped(|_, _| FileId(0), &mut sink);
    let catalogue = exercise::shipped(&mut sink, |_, _| FileId(0));
    assert!(!sink.has_errors(), "{:?}", sink.found());
    (library, catalogue)
});

/// The texts of a case.
#[derive(Debug, Clone, Copy, Default)]
pub struct Texts<'t> {
    pub record: &'t str,
    pub settings: &'t str,
    pub opened: &'t str,
    pub other: &'t str,
    pub on: Option<Date>,
}

/// The prescription of texts that have to be right.
#[track_caller]
pub fn prescribe(texts: Texts<'_>) -> Prescription {
    let mut sink = Sink::new();
    match attempt(texts, &mut sink) {
        Some(prescription) => prescription,
        None => panic!("{:?}\n{}\n{}\n{}", sink.found(), texts.record, texts.settings, texts.opened),
    }
}

fn attempt(texts: Texts<'_>, sink: &mut Sink) -> Option<Prescription> {
    let made = with_case(texts, sink, prescription::prescribe);
    made?
}

/// The answer for an activity on the day of the texts.
#[track_caller]
pub fn may(texts: Texts<'_>, activity: &str) -> May {
    let mut sink = Sink::new();
    let on = texts.on.expect("a day is asked about");
    match with_case(texts, &mut sink, |case, sink| prescription::may(case, activity, on, sink)).flatten() {
        Some(answer) => answer,
        None => panic!("{:?}\n{}\n{}\n{}", sink.found(), texts.record, texts.settings, texts.opened),
    }
}

fn with_case<T>(texts: Texts<'_>, sink: &mut Sink, then: impl FnOnce(&Case<'_>, &mut Sink) -> T) -> Option<T> {
    let record = operative::read(FileId(0), texts.record, sink)?;
    let settings = match texts.settings {
        "" => Settings::default(),
        text => prescription::read_settings(FileId(1), text, sink)?,
    };
    let openings = match texts.opened {
        "" => prescription::Openings::default(),
        text => prescription::read_opened(FileId(2), text, sink)?,
    };
    let other = match texts.other {
        "" => None,
        text => Some(operative::read(FileId(3), text, sink)?),
    };
    let case = Case {
        openings: &openings,
        on: texts.on,
        other: other.as_ref(),
        ..Case::new(&SHIPPED.0, &SHIPPED.1, &record, &settings)
    };
    Some(then(&case, sink))
}

/// The run of days that a day lies in.
pub fn span(of: &Prescription, day: u16) -> &SpanOfDays {
    let found = of.spans.iter().find(|span| span.from_day.count() <= day && day < span.until_day.count());
    found.unwrap_or_else(|| panic!("day {day} lies in no run of days"))
}

/// What governs a key among rows: its own position where one is written, else any; no row is not allowed.
pub fn governing(rows: &[LimitRow], key: Key) -> Cell {
    let row = |key: Key| rows.iter().find(|row| row.key == key);
    let row = row(key).or_else(|| row(key.in_position(Position::Any)));
    Cell::from(row.map_or(Allowed::No, |row| row.allowed))
}

/// Every key, in any position and, at the shoulder, at the side and in abduction.
pub fn every_key() -> impl Iterator<Item = Key> {
    ALL_KEYS.iter().flat_map(|&key| {
        let named = [Position::AtSide, Position::Abduction90].into_iter();
        let named = named.filter(move |_| key.joint == Joint::Shoulder).map(move |position| key.in_position(position));
        std::iter::once(key).chain(named)
    })
}

/// Days on which either of two prescriptions may change.
pub fn days_of(one: &Prescription, other: &Prescription) -> Vec<u16> {
    let mut days: Vec<u16> = one.spans.iter().chain(&other.spans).map(|span| span.from_day.count()).collect();
    days.sort_unstable();
    days.dedup();
    days
}

/// Where rows are looser than others, or a sling is worn less.
pub fn looser(rows: &[LimitRow], sling: &SlingLine, than: (&[LimitRow], &SlingLine)) -> Option<String> {
    let key = every_key().find(|&key| governing(rows, key) > governing(than.0, key));
    if let Some(key) = key {
        let (is, was) = (governing(rows, key).allowed(key), governing(than.0, key).allowed(key));
        return Some(format!("{key} is {is:?} in place of {was:?}"));
    }
    (sling.wear < than.1.wear).then(|| format!("the sling is {:?} in place of {:?}", sling.wear, than.1.wear))
}

/// The first day on which one prescription is looser than another.
pub fn looser_day(one: &Prescription, than: &Prescription) -> Option<String> {
    days_of(one, than).into_iter().find_map(|day| {
        let (one, than) = (span(one, day), span(than, day));
        looser(&one.limits, &one.sling, (&than.limits, &than.sling)).map(|how| format!("day {day}: {how}"))
    })
}

/// The first `count` stages after the first, each opened some days after its gate.
pub fn opened(p: &Prescription, count: usize, late: i64) -> String {
    let stages = p.stages.iter().skip(1).take(count);
    stages
        .map(|stage| {
            let on = stage.from.saturating_add(late.days()).max(p.operated_on);
            format!("[[opened]]\nstage = \"{}\"\non = {on}\nby = \"surgeon\"\n", stage.id)
        })
        .collect()
}
