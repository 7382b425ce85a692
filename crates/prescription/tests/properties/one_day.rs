//! One day with what is opened: never more than the dated plan, and the dated plan itself where all is opened.

use exercise::{Amount, Demand, Entry, Kind};
use jiff::ToSpan;
use jiff::civil::Date;
use plan::{Allowed, Bound, LimitRow, Prescription, Today, TodayBasis};
use prescription::Answer;
use proptest::prelude::*;

use crate::inside::fault;
use crate::plans::{SHIPPED, Texts, governing, looser, may, opened, prescribe, span};
use crate::records::{choice, record};

fn on_day(p: &Prescription, day: u16) -> Date {
    p.operated_on.saturating_add(i64::from(day).days())
}

fn today(record: &str, settings: &str, opened: &str, on: Date) -> Today {
    let p = prescribe(Texts { record, settings, opened, on: Some(on), ..Texts::default() });
    p.today.expect("a day was asked for")
}

/// Whether rows allow what an activity asks for, without any margin.
fn allows(rows: &[LimitRow], demand: &Demand) -> bool {
    match (demand.amount, governing(rows, demand.key).allowed(demand.key)) {
        (_, Allowed::No) => false,
        (_, Allowed::Free) | (Amount::Movement, _) => true,
        (Amount::Angle { to, .. }, Allowed::UpTo(Bound::Angle(limit))) => to <= limit,
        (Amount::Load(load), Allowed::UpTo(Bound::Load(limit))) => load <= limit,
        (Amount::Effort(effort), Allowed::UpTo(Bound::Effort(limit))) => effort <= limit,
        // What follows the limit asks for no more than it.
        (amount, Allowed::UpTo(_)) => amount.follows_the_limit(),
    }
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

    /// An activity that is allowed asks for nothing that the day does not allow; one that is dated is allowed on
    /// its date once every stage is opened, and not on the day before.
    #[test]
    fn an_answer_lies_inside_the_limits_of_its_day(
        written in record(),
        settings in choice(),
        place in any::<prop::sample::Index>(),
        count in 0..6_usize,
        day in 0..365_u16,
    ) {
        let text = written.text();
        let p = prescribe(Texts { record: &text, settings, ..Texts::default() });
        let activities: Vec<&Entry> = SHIPPED.1.of(Kind::Activity).collect();
        let activity = place.get(&activities);
        let ask = |opened: &str, day: u16| {
            may(Texts { record: &text, settings, opened, on: Some(on_day(&p, day)), ..Texts::default() }, &activity.id)
        };
        let openings = opened(&p, count, 0);
        let answer = ask(&openings, day);
        let today = today(&text, settings, &openings, on_day(&p, day));
        let misfit = activity.demands.iter().find(|demand| !allows(&today.limits, demand));
        match answer.answer {
            Answer::Yes => prop_assert!(misfit.is_none(), "{} on day {day}: {misfit:?}\n{text}{openings}", activity.id),
            Answer::NotBefore => {
                let all = opened(&p, usize::MAX, 0);
                let first = answer.day.count();
                prop_assert!(first > day, "{} on day {first}", activity.id);
                prop_assert!(ask(&all, first).answer != Answer::NotBefore, "{} on day {first}\n{text}", activity.id);
                prop_assert!(ask(&all, first - 1).answer != Answer::Yes, "{} before day {first}\n{text}", activity.id);
            }
            Answer::Ask => {}
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
