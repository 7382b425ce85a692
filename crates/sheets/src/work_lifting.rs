//! What may be lifted at work, by ranges of dates.

use body::Movement;
use jiff::civil::Date;
use plan::{Allowed, LimitRow, Prescription};

use crate::document::{Block, Column, Print, Tone};
use crate::letter_text::Validity;
use crate::limits_columns::frozen;
use crate::limits_table::{load_of, plain, value_in};
use crate::limits_words::{load, short};
use crate::texts::Texts;
use crate::work::load_key;

/// A run of days with one load in the hand and one overhead.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Lift {
    /// First day.
    pub from: Date,
    /// First day after; `None` where it lasts until the surgeon says more.
    pub before: Option<Date>,
    /// What the hand may hold.
    pub hand: Allowed,
    /// What it may hold above the shoulder.
    pub overhead: Allowed,
    /// Whether a stage that is not open has to be opened first.
    pub later: bool,
}

/// What may be lifted, from the day of issue on.
///
/// # Method
/// While a passed gate waits, the limits of the day of issue last, and nothing later is told: no day
/// of the dated plan after that gate holds.
pub(crate) fn lifts(of: &Prescription, issued_on: Date) -> Vec<Lift> {
    let pair = |limits: &[LimitRow]| {
        let of = |movement| value_in(limits, load_key(movement)).allowed;
        // What may be held overhead is never more than what may be held at all.
        (of(Movement::HandLoad), of(Movement::OverheadLoad).min(of(Movement::HandLoad)))
    };
    if let Some(today) = frozen(of) {
        let (hand, overhead) = pair(&today.limits);
        return vec![Lift { from: issued_on, before: None, hand, overhead, later: false }];
    }
    let gate = Validity::of(of, issued_on).gate();
    let mut lifts: Vec<Lift> = Vec::new();
    for span in of.spans.iter().filter(|span| span.until > issued_on) {
        let (hand, overhead) = pair(&span.limits);
        let later = gate.is_some_and(|gate| span.from >= gate);
        match lifts.last_mut() {
            Some(last)
                if (last.hand, last.overhead) == (hand, overhead) && (last.later == later || hand == Allowed::No) => {}
            last => {
                if let Some(last) = last {
                    last.before = Some(span.from);
                }
                lifts.push(Lift { from: span.from.max(issued_on), before: None, hand, overhead, later });
            }
        }
    }
    lifts
}

/// The loads as a table, and below it that a planned line is no permission.
pub(crate) fn lifting(say: &Texts<'_>, of: &Prescription, issued_on: Date) -> Vec<Block> {
    let columns = vec![
        Column { title: say.get("work-lift-from"), share: 2 },
        Column { title: say.get("work-lift-before"), share: 3 }, // not medical: widths
        Column { title: say.get("work-lift-hand"), share: 3 },   // not medical: widths
        Column { title: say.get("work-lift-overhead"), share: 3 }, // not medical: widths
        Column { title: say.get("work-lift-holds"), share: 2 },
    ];
    let lifts = lifts(of, issued_on);
    let rows = lifts
        .iter()
        .map(|lift| {
            vec![
                plain(short(lift.from)),
                plain(lift.before.map_or_else(|| say.get("work-lift-open-end"), short)),
                plain(most(say, lift.hand)),
                plain(most(say, lift.overhead)),
                plain(say.get(if lift.later { "work-lift-earliest" } else { "work-lift-now" })),
            ]
        })
        .collect();
    let table = Block::Table { alt: say.get("work-lift-alt"), print: Print::Usual, columns, rows };
    let more = lifts.iter().any(|lift| lift.later).then(|| say.paragraph(Tone::Plain, "work-lift-more", &[]));
    std::iter::once(table).chain(more).collect()
}

fn most(say: &Texts<'_>, allowed: Allowed) -> String {
    match (allowed, load_of(allowed)) {
        (_, Some(most)) => {
            let [kilograms, pounds] = load(most);
            say.with("work-lift-most", &[("kilograms", kilograms.into()), ("pounds", pounds.into())])
        }
        (Allowed::Free, _) => say.get("work-lift-free"),
        _ => say.get("work-lift-nothing"),
    }
}
