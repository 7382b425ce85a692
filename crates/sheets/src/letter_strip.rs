//! The strip that comes back: ten answers, and no test of what is not allowed.

use exercise::{Amount, Demand, Entry, Posture};
use jiff::civil::Date;
use plan::{Allowed, Bound, LimitRow, SpanOfDays, TodayBasis};

use crate::desk::Desk;
use crate::document::{Block, Field};
use crate::letter_text::{Validity, blank, filled};
use crate::limits_table::{Value, value_in};
use crate::limits_words::short;
use crate::texts::Texts;

/// When a test of the catalogue may be made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Testing {
    /// From this day on, while the letter is valid.
    From(Date),
    /// The stage that allows it is not open; by the dated plan not before this day.
    NotYet(Date),
    /// No dated day allows it.
    Never,
}

/// The strip.
pub(crate) fn strip(desk: &Desk<'_>) -> Block {
    let say = Texts::of_clinicians(desk);
    let angle = |label: &str, test: &str| match testing(desk, test) {
        Testing::From(from) => Field {
            label: label.into(),
            value: String::new(),
            hint: say.with("letter-strip-from", &[("date", short(from).into())]),
        },
        Testing::NotYet(date) => Field {
            label: label.into(),
            value: say.get("letter-strip-not-yet"),
            hint: say.with("letter-strip-not-before", &[("date", short(date).into())]),
        },
        Testing::Never => filled(label, say.get("letter-strip-never")),
    };
    let hinted = |label: &str, hint: &str| Field { label: label.into(), value: String::new(), hint: hint.into() };
    let worry = match &desk.settings.contact.day {
        Some(number) => say.with("letter-strip-worry", &[("number", number.as_str().into())]),
        None => say.get("letter-strip-worry-no-number"),
    };
    Block::Strip {
        title: say.get("letter-strip-title"),
        text: whose(desk, &say),
        fields: vec![
            blank("Date seen"),
            angle("Forward elevation, passive", "forward-elevation-passive"),
            angle("External rotation at side, passive", "external-rotation-passive"),
            angle("Forward elevation, active", "forward-elevation-active"),
            angle("External rotation at side, active", "external-rotation-active"),
            hinted("Pain at rest", "0 to 10"),
            hinted("Pain at night", "0 to 10"),
            hinted("Sling", "hours a day"),
            hinted("Exercises done", "days of the last 7"),
            hinted("Anything that worries you", &worry),
        ],
    }
}

/// Whose strip it is, since it comes back alone, and how to fill it in.
fn whose(desk: &Desk<'_>, say: &Texts<'_>) -> String {
    let of = desk.prescription;
    let told = [
        ("shown", say.get("letter-side").into()),
        ("date", short(of.operated_on).into()),
        ("label", of.patient.as_deref().unwrap_or("________").into()),
    ];
    say.with("letter-strip-text", &told)
}

/// When a test may be made: only what is open while the letter is valid.
pub(crate) fn testing(desk: &Desk<'_>, test: &str) -> Testing {
    let of = desk.prescription;
    let Some(entry) = desk.catalogue.get(test) else { return Testing::Never };
    let by_plan = |after: Option<Date>| {
        let allows = |span: &&SpanOfDays| allows(entry, &span.limits) && after.is_none_or(|after| span.until > after);
        of.spans.iter().find(allows).map(|span| span.from)
    };
    if let Some(today) = of.today.as_ref().filter(|today| today.basis == TodayBasis::Frozen) {
        return match (allows(entry, &today.limits), by_plan(None)) {
            (true, _) => Testing::From(today.date),
            (false, Some(date)) => Testing::NotYet(date),
            (false, None) => Testing::Never,
        };
    }
    let gate = Validity::of(of, desk.issued_on).gate();
    match by_plan(Some(desk.issued_on)) {
        Some(date) if gate.is_none_or(|gate| date < gate) => Testing::From(date.max(desk.issued_on)),
        Some(date) => Testing::NotYet(date),
        None => Testing::Never,
    }
}

/// Whether limits allow everything an entry asks of the operated arm.
pub(crate) fn allows(entry: &Entry, limits: &[LimitRow]) -> bool {
    entry.demands.iter().all(|demand| fits(demand, value_in(limits, demand.key), entry.posture))
}

fn fits(demand: &Demand, value: Value, posture: Posture) -> bool {
    if value.only_lying && posture != Posture::LyingOnTheBack {
        return false;
    }
    match (demand.amount, value.allowed) {
        (_, Allowed::No) => false,
        (_, Allowed::Free) | (Amount::Movement | Amount::LoadToLimit { .. }, _) => true,
        (Amount::Angle { to, .. }, Allowed::UpTo(Bound::Angle(limit))) => to <= limit,
        (Amount::AngleToLimit { from, .. }, Allowed::UpTo(Bound::Angle(limit))) => from <= limit,
        (Amount::Load(load), Allowed::UpTo(Bound::Load(limit))) => load <= limit,
        (Amount::Effort(effort), Allowed::UpTo(Bound::Effort(limit))) => effort <= limit,
        // A bound of another kind can't be compared: the safe answer is no.
        _ => false,
    }
}
