//! Another date, another side, a hold, a go-back.

use jiff::ToSpan;
use plan::Prescription;
use proptest::prelude::*;

use crate::plans::{Texts, looser_day, prescribe};
use crate::records::{choice, record};

/// Whether two prescriptions are the same in every day, whatever their dates and sides.
#[track_caller]
fn same_days(a: &Prescription, b: &Prescription) {
    assert_eq!(a.protocol.id, b.protocol.id);
    assert_eq!(a.spans.len(), b.spans.len());
    for (a, b) in a.spans.iter().zip(&b.spans) {
        assert_eq!((a.from_day, a.until_day, &a.stage), (b.from_day, b.until_day, &b.stage));
        assert_eq!(a.limits, b.limits);
        assert_eq!(a.sling, b.sling);
        assert_eq!(a.goals, b.goals);
        assert_eq!(a.exercises, b.exercises);
        assert_eq!((&a.dropped, &a.replaced), (&b.dropped, &b.replaced));
    }
    let stages = |p: &Prescription| p.stages.iter().map(|stage| (stage.id.clone(), stage.from_day)).collect::<Vec<_>>();
    assert_eq!(stages(a), stages(b));
    let first = |p: &Prescription| p.first_allowed.iter().map(|first| (first.key, first.day)).collect::<Vec<_>>();
    assert_eq!(first(a), first(b));
    let visits = |p: &Prescription| p.visits.iter().map(|v| (v.purpose.clone(), v.due_day, v.day)).collect::<Vec<_>>();
    assert_eq!(visits(a), visits(b));
    let returns = |p: &Prescription| p.returns.iter().map(|line| (line.activity.clone(), line.day)).collect::<Vec<_>>();
    assert_eq!(returns(a), returns(b));
    assert_eq!(a.questions, b.questions);
    assert_eq!(a.loosened, b.loosened);
}

/// Whether every date of a prescription is its day counted from the operation.
#[track_caller]
fn dates_are_counted(p: &Prescription) {
    let date = |day: quantity::PostoperativeDay| p.operated_on.saturating_add(i64::from(day.count()).days());
    for span in &p.spans {
        assert_eq!((span.from, span.until), (date(span.from_day), date(span.until_day)));
    }
    assert_eq!(p.spans.first().map(|span| span.from), Some(p.operated_on));
    assert!(p.spans.windows(2).all(|pair| pair[0].until == pair[1].from), "no gap");
    assert_eq!(p.spans.last().map(|span| span.until_day.count()), Some(365));
    for stage in &p.stages {
        assert_eq!(stage.from, date(stage.from_day));
    }
    for first in &p.first_allowed {
        assert_eq!(first.date, date(first.day));
    }
    for visit in &p.visits {
        assert_eq!(visit.date, date(visit.day));
    }
    for line in &p.returns {
        assert_eq!(line.date, line.day.map(date));
    }
}

proptest! {
    #![proptest_config(crate::config())]

    #[test]
    fn another_date_shifts_every_date_alike(written in record(), settings in choice(), days in -3000..3000_i64) {
        let mut shifted = written.clone();
        shifted.date = shifted.date.saturating_add(days.days());
        let plan = |record: &str| prescribe(Texts { record, settings, ..Texts::default() });
        let (here, there) = (plan(&written.text()), plan(&shifted.text()));
        dates_are_counted(&here);
        dates_are_counted(&there);
        same_days(&here, &there);
    }

    #[test]
    fn left_and_right_have_the_same_days(written in record(), settings in choice()) {
        let mut other = written.clone();
        other.side = if written.side == "left" { "right" } else { "left" };
        let plan = |record: &str| prescribe(Texts { record, settings, ..Texts::default() });
        let (here, there) = (plan(&written.text()), plan(&other.text()));
        same_days(&here, &there);
        prop_assert_eq!(here.side.other(), there.side);
    }

    #[test]
    fn a_hold_raises_no_limit_and_brings_no_date_forward(
        written in record(),
        settings in choice(),
        holds in prop::collection::vec((0..250_u16, 1..60_u16, any::<bool>()), 1..4),
        back in prop::option::of((43..200_u16, any::<bool>())),
    ) {
        let mut moved = settings.to_owned();
        for (from, days, elbow) in &holds {
            moved += &format!("[[hold]]\nfrom_day = {from}\ndays = {days}\nreason = \"wound\"\n");
            if *elbow {
                moved += "joint = \"elbow\"\n";
            }
        }
        let record = written.text();
        let usual = prescribe(Texts { record: &record, settings, ..Texts::default() });
        if let Some((day, to_start)) = back {
            let early = usual.stages.iter().filter(|stage| stage.from_day.count() <= 42).count();
            let stage = &usual.stages[if to_start { 0 } else { early - 1 }];
            let held: u16 = holds.iter().map(|(_, days, _)| days).sum();
            // Late enough that the stage was reached whatever is held.
            moved += &format!("[[back]]\nstage = \"{}\"\nday = {}\nreason = \"fall\"\n", stage.id, day + held);
        }
        let held = prescribe(Texts { record: &record, settings: &moved, ..Texts::default() });
        dates_are_counted(&held);
        prop_assert_eq!(looser_day(&held, &usual), None, "{}\n{}", record, moved);
        for (stage, before) in held.stages.iter().zip(&usual.stages) {
            prop_assert!(stage.from >= before.from, "{} on {}", stage.id, stage.from);
        }
        for first in &held.first_allowed {
            let before = usual.first_allowed.iter().find(|before| before.key == first.key);
            prop_assert!(before.is_some_and(|before| first.date >= before.date), "{} on {}", first.key, first.date);
        }
        for (line, before) in held.returns.iter().zip(&usual.returns) {
            let earlier = before.date.is_none_or(|before| line.date.is_some_and(|date| date < before));
            prop_assert!(line.date.is_none() || !earlier, "{} on {:?}", line.activity, line.date);
        }
        for visit in held.visits.iter().filter(|visit| visit.purpose.starts_with("gate")) {
            let before = usual.visits.iter().find(|before| before.purpose == visit.purpose);
            prop_assert!(before.is_some_and(|before| visit.date >= before.date), "{} on {}", visit.purpose, visit.date);
        }
    }
}
