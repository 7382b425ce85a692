//! One day with what is opened: never more than the dated plan, and the dated plan itself where all is opened.

use jiff::civil::Date;
use jiff::ToSpan;
use plan::{Prescription, Today, TodayBasis};
use proptest::prelude::*;

use crate::inside::fault;
use crate::plans::{looser, prescribe, span, Texts};
use crate::records::{choice, record};

/// The first `count` stages after the first, each opened some days after its gate.
fn opened(p: &Prescription, count: usize, late: i64) -> String {
    let stages = p.stages.iter().skip(1).take(count);
    stages
        .map(|stage| {
            let on = stage.from.saturating_add(late.days()).max(p.operated_on);
            format!("[[opened]]\nstage = \"{}\"\non = {on}\nby = \"surgeon\"\n", stage.id)
        })
        .collect()
}

fn on_day(p: &Prescription, day: u16) -> Date {
    p.operated_on.saturating_add(i64::from(day).days())
}

fn today(record: &str, settings: &str, opened: &str, on: Date) -> Today {
    let p = prescribe(Texts { record, settings, opened, on: Some(on) });
    p.today.expect("a day was asked for")
}

proptest! {
    #![proptest_config(crate::config())]

    #[test]
    fn a_day_never_allows_more_than_the_dated_plan(
        written in record(),
        settings in choice(),
        count in 0..6_usize,
        late in -20..20_i64,
        day in 0..365_u16,
    ) {
        let text = written.text();
        let p = prescribe(Texts { record: &text, settings, ..Texts::default() });
        let openings = opened(&p, count, late);
        let today = today(&text, settings, &openings, on_day(&p, day));
        let dated = span(&p, day);
        let more = looser(&today.limits, &today.sling, (&dated.limits, &dated.sling));
        prop_assert_eq!(more, None, "day {}\n{}{}{}", day, text, settings, openings);
        for line in &today.exercises {
            prop_assert_eq!(fault(line, &today.limits), None, "day {}\n{}{}{}", day, text, settings, openings);
        }
        prop_assert_eq!(today.day.count(), day);
        prop_assert!(p.stages.iter().any(|stage| stage.id == today.stage && stage.from_day.count() <= day));
        let next_gate = today.not_before.as_ref().map(|next| next.day.count());
        let frozen = next_gate.is_some_and(|gate| gate <= day);
        prop_assert_eq!(today.basis == TodayBasis::Frozen, frozen, "day {}\n{}", day, openings);
        // An unopened gate holds everything at or below the last day before it.
        if let Some(gate) = next_gate.filter(|_| frozen) {
            let before = span(&p, gate - 1);
            let more = looser(&today.limits, &today.sling, (&before.limits, &before.sling));
            prop_assert_eq!(more, None, "day {} against day {}\n{}{}{}", day, gate - 1, text, settings, openings);
        }
    }

    #[test]
    fn with_every_stage_opened_a_day_is_the_dated_plan(written in record(), settings in choice(), day in 0..365_u16) {
        let text = written.text();
        let p = prescribe(Texts { record: &text, settings, ..Texts::default() });
        let today = today(&text, settings, &opened(&p, usize::MAX, 0), on_day(&p, day));
        let dated = span(&p, day);
        prop_assert_eq!(today.basis, TodayBasis::Opened);
        prop_assert_eq!(&today.stage, &dated.stage);
        prop_assert_eq!(&today.limits, &dated.limits);
        prop_assert_eq!(&today.sling, &dated.sling);
        prop_assert_eq!(&today.exercises, &dated.exercises);
        prop_assert_eq!(&today.goals, &dated.goals);
        let next = p.stages.iter().find(|stage| stage.from_day.count() > day);
        prop_assert_eq!(
            today.not_before.as_ref().map(|next| (&next.stage, next.date)),
            next.map(|stage| (&stage.id, stage.from))
        );
    }
}
