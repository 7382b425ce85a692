//! A calendar that is issued again.

use jiff::ToSpan;
use jiff::civil::date;

use super::*;
use crate::calendar::{Known, previous};

fn issued(calendar: &Calendar<'_>) -> Vec<Known> {
    previous(&written(calendar)).expect("a calendar of ours")
}

/// `UID`'s place in the visits, sequence and status of each event.
fn told(text: &str) -> Vec<(String, String, String)> {
    let zip = values(text, "UID").into_iter().zip(values(text, "SEQUENCE")).zip(values(text, "STATUS"));
    zip.map(|((uid, sequence), status)| (uid, sequence, status)).collect()
}

fn row(purpose: &str, sequence: &str, status: &str) -> (String, String, String) {
    (uid(&subject(purpose, 0)), sequence.into(), status.into())
}

#[test]
fn what_was_written_is_read() {
    let mut first = all_day("wound", date(2026, 3, 12));
    first.sequence = 7;
    first.description = "line one\nline; two, \\n";
    let mut calendar = calendar(vec![first, timed("gate: active", date(2026, 4, 13).at(9, 30, 0, 0))]);
    calendar.cancelled.push(all_day("gate: passive", date(2026, 3, 16)));
    let known = |purpose, sequence, start, description: &str, cancelled| Known {
        uid: uid(&subject(purpose, 0)),
        sequence,
        start,
        title: "Visit".into(),
        description: description.into(),
        cancelled,
    };
    assert_eq!(
        issued(&calendar),
        [
            known("wound", 7, VisitTime::AllDay(date(2026, 3, 12)), "line one\nline; two, \\n", false),
            known("gate: active", 0, VisitTime::At(date(2026, 4, 13).at(9, 30, 0, 0), 30), "", false),
            known("gate: passive", 0, VisitTime::AllDay(date(2026, 3, 16)), "", true),
        ]
    );
}

#[test]
fn only_what_changed_is_raised() {
    let wound = || all_day("wound", date(2026, 3, 12));
    let gate = |day| all_day("gate: active", date(2026, 4, day));
    let first = written(&calendar(vec![wound(), gate(13)]));
    assert_eq!(told(&first), [row("wound", "0", "CONFIRMED"), row("gate: active", "0", "CONFIRMED")]);

    // The same again: the same text.
    let known = previous(&first).expect("ours");
    assert_eq!(written(&calendar(vec![wound(), gate(13)]).following(&known)), first);

    // A hold moves the gate.
    let second = written(&calendar(vec![wound(), gate(27)]).following(&known));
    assert_eq!(told(&second), [row("wound", "0", "CONFIRMED"), row("gate: active", "1", "CONFIRMED")]);

    // The gate is gone: cancelled once, and it stays so.
    let known = previous(&second).expect("ours");
    let third = written(&calendar(vec![wound()]).following(&known));
    assert_eq!(told(&third), [row("wound", "0", "CONFIRMED"), row("gate: active", "2", "CANCELLED")]);
    assert_eq!(values(&third, "DTSTART"), ["20260312", "20260427"], "a cancellation tells the day it was to be");
    let known = previous(&third).expect("ours");
    assert_eq!(written(&calendar(vec![wound()]).following(&known)), third);

    // It comes back, on the day it had: still a change.
    let fourth = written(&calendar(vec![wound(), gate(27)]).following(&known));
    assert_eq!(told(&fourth), [row("wound", "0", "CONFIRMED"), row("gate: active", "3", "CONFIRMED")]);
}

#[test]
fn a_new_telephone_number_a_time_and_a_length_are_changes() {
    let at = |hour, minutes| VisitTime::At(date(2026, 3, 12).at(hour, 0, 0, 0), minutes);
    let with = |description, start| Visit { description, ..visit("wound", start) };
    let before = with("call 555-0100", at(9, 30));
    let known = issued(&calendar(vec![before.clone()]));
    let sequence = |visit| calendar(vec![visit]).following(&known).visits[0].sequence;
    assert_eq!(sequence(before), 0);
    assert_eq!(sequence(with("call 555-0101", at(9, 30))), 1);
    assert_eq!(sequence(with("call 555-0100", at(10, 30))), 1);
    assert_eq!(sequence(with("call 555-0100", at(9, 45))), 1);
    assert_eq!(sequence(with("call 555-0100", VisitTime::AllDay(date(2026, 3, 12)))), 1);
}

#[test]
fn a_visit_every_day_of_a_leap_year() {
    let day = |order: usize| date(2028, 1, 1).checked_add(i64::try_from(order).expect("small").days());
    let visits = (0..366).map(|order| {
        let mut visit = all_day("daily", day(order).expect("a date"));
        visit.uid = uid(&subject("daily", order));
        visit
    });
    let calendar = calendar(visits.collect());
    let known = issued(&calendar);
    assert_eq!(known.len(), 366);
    assert_eq!(known[59].start, VisitTime::AllDay(date(2028, 2, 29)));
    assert_eq!(known[365].start, VisitTime::AllDay(date(2028, 12, 31)));
    // All but one gone: as many cancellations.
    let one = Calendar { visits: calendar.visits[..1].to_vec(), ..calendar.clone() }.following(&known);
    assert_eq!((one.visits.len(), one.cancelled.len()), (1, 365));
}

#[test]
fn one_patients_visits_are_not_cancelled_on_anothers_phone() {
    let of = |patient, operated_on| {
        let subject = Subject { patient, operated_on, ..subject("wound", 0) };
        Visit { uid: uid(&subject), ..all_day("wound", date(2026, 3, 12)) }
    };
    let cancelled = |before, after| {
        let known = issued(&calendar(vec![before]));
        calendar(vec![after]).following(&known).cancelled.len()
    };
    let (here, later) = (date(2026, 3, 2), date(2026, 3, 9));
    assert_eq!(cancelled(of(Some("example-07"), here), of(Some("example-08"), here)), 0);
    assert_eq!(cancelled(of(None, here), of(None, later)), 0);
    // The operation was put off: the old visits are no more.
    assert_eq!(cancelled(of(Some("example-07"), here), of(Some("example-07"), later)), 1);
    // With nobody to compare with nothing is said.
    let known = issued(&calendar(vec![of(None, here)]));
    assert_eq!(calendar(Vec::new()).following(&known).cancelled, Vec::new());
}
