//! The text itself, line by line.

use jiff::civil::date;

use super::*;
use crate::calendar::Unwritable;

#[test]
fn a_day_and_a_time_as_they_are_written() {
    let mut wound = all_day("wound", date(2026, 3, 12));
    wound.description = "Harbor Shoulder Practice, by day: 555-0100";
    let mut calendar = calendar(vec![wound, timed("gate: active", date(2026, 4, 13).at(9, 30, 0, 0))]);
    let mut gone = all_day("gate: passive", date(2026, 3, 16));
    gone.sequence = 2;
    calendar.cancelled.push(gone);
    let text = written(&calendar);
    assert_eq!(text.matches("\r\n").count(), text.matches('\n').count(), "every line ends with CRLF");
    // The onsets and offsets are those of the European Union: the last Sunday of March and of
    // October at 01:00 UTC (directive 2000/84/EC).
    insta::assert_snapshot!(text.replace("\r\n", "\n"), @r"
    BEGIN:VCALENDAR
    VERSION:2.0
    PRODID:-//mendarc//visits//EN
    CALSCALE:GREGORIAN
    METHOD:PUBLISH
    X-WR-CALNAME:Visits
    BEGIN:VTIMEZONE
    TZID:Europe/Berlin
    BEGIN:STANDARD
    DTSTART:20241027T030000
    TZOFFSETFROM:+0200
    TZOFFSETTO:+0100
    TZNAME:CET
    END:STANDARD
    BEGIN:DAYLIGHT
    DTSTART:20250330T020000
    TZOFFSETFROM:+0100
    TZOFFSETTO:+0200
    TZNAME:CEST
    END:DAYLIGHT
    BEGIN:STANDARD
    DTSTART:20251026T030000
    TZOFFSETFROM:+0200
    TZOFFSETTO:+0100
    TZNAME:CET
    END:STANDARD
    BEGIN:DAYLIGHT
    DTSTART:20260329T020000
    TZOFFSETFROM:+0100
    TZOFFSETTO:+0200
    TZNAME:CEST
    END:DAYLIGHT
    BEGIN:STANDARD
    DTSTART:20261025T030000
    TZOFFSETFROM:+0200
    TZOFFSETTO:+0100
    TZNAME:CET
    END:STANDARD
    BEGIN:DAYLIGHT
    DTSTART:20270328T020000
    TZOFFSETFROM:+0100
    TZOFFSETTO:+0200
    TZNAME:CEST
    END:DAYLIGHT
    BEGIN:STANDARD
    DTSTART:20271031T030000
    TZOFFSETFROM:+0200
    TZOFFSETTO:+0100
    TZNAME:CET
    END:STANDARD
    END:VTIMEZONE
    BEGIN:VEVENT
    UID:7cacaa2a46b0d13e-24caf39fb6c3a23d
    DTSTAMP:20260302T000000Z
    SEQUENCE:0
    DTSTART;VALUE=DATE:20260312
    DTEND;VALUE=DATE:20260313
    TRANSP:TRANSPARENT
    SUMMARY:Visit
    DESCRIPTION:Harbor Shoulder Practice\, by day: 555-0100
    CLASS:PRIVATE
    STATUS:CONFIRMED
    BEGIN:VALARM
    ACTION:DISPLAY
    DESCRIPTION:Visit
    TRIGGER:-PT15H
    END:VALARM
    END:VEVENT
    BEGIN:VEVENT
    UID:7cacaa2a46b0d13e-fed6c3462a9ac0a5
    DTSTAMP:20260302T000000Z
    SEQUENCE:0
    DTSTART;TZID=Europe/Berlin:20260413T093000
    DURATION:PT30M
    SUMMARY:Visit
    CLASS:PRIVATE
    STATUS:CONFIRMED
    BEGIN:VALARM
    ACTION:DISPLAY
    DESCRIPTION:Visit
    TRIGGER:-P1D
    END:VALARM
    END:VEVENT
    BEGIN:VEVENT
    UID:7cacaa2a46b0d13e-a75fe84003f069f7
    DTSTAMP:20260302T000000Z
    SEQUENCE:2
    DTSTART;VALUE=DATE:20260316
    DTEND;VALUE=DATE:20260317
    TRANSP:TRANSPARENT
    SUMMARY:Visit
    CLASS:PRIVATE
    STATUS:CANCELLED
    END:VEVENT
    END:VCALENDAR
    ");
}

#[test]
fn a_reminder_wakes_nobody() {
    let day = |days| {
        let mut visit = all_day("wound", date(2026, 3, 12));
        visit.remind_days_before = days;
        values(&written(&calendar(vec![visit])), "TRIGGER")
    };
    // Nine in the morning of the day itself, and one and three days before.
    assert_eq!(day(Some(0)), ["PT9H"]);
    assert_eq!(day(Some(1)), ["-PT15H"]);
    assert_eq!(day(Some(3)), ["-P2DT15H"]);
    assert_eq!(day(None), Vec::<String>::new());
    let time = timed("wound", date(2026, 3, 12).at(9, 0, 0, 0));
    assert_eq!(values(&written(&calendar(vec![time])), "TRIGGER"), ["-P1D"]);
}

#[test]
fn a_day_needs_no_time_zone_and_the_last_day_no_next() {
    let text = written(&calendar(vec![all_day("wound", date(2026, 3, 12))]));
    assert!(!text.contains("VTIMEZONE"), "{text}");
    // 2028 is a leap year.
    let text = written(&calendar(vec![all_day("wound", date(2028, 2, 28)), all_day("leap", date(2028, 2, 29))]));
    assert_eq!(values(&text, "DTEND"), ["20280229", "20280301"]);
    let text = written(&calendar(vec![all_day("wound", Date::MAX)]));
    assert_eq!((values(&text, "DTSTART"), values(&text, "DTEND")), (vec!["99991231".into()], vec![]));
}

#[test]
fn what_cannot_be_written_is_said() {
    let mut elsewhere = calendar(vec![all_day("wound", date(2026, 3, 12))]);
    for name in ["Europe/Atlantis", "", "Etc/Unknown", "../../etc/passwd", "Europe/Berlin\r\nX:1"] {
        elsewhere.time_zone = name;
        assert_eq!(elsewhere.to_text(), Err(Unwritable::UnknownTimeZone(name.into())));
    }
    let twice = calendar(vec![all_day("wound", date(2026, 3, 12)), all_day("wound", date(2026, 3, 13))]);
    assert_eq!(twice.to_text(), Err(Unwritable::RepeatedUid(uid(&subject("wound", 0)))));
    for edge in [DateTime::MIN, DateTime::MAX] {
        assert_eq!(calendar(vec![timed("wound", edge)]).to_text(), Err(Unwritable::OutOfRange(edge)));
    }
}

#[test]
fn an_id_is_of_the_visit_and_not_of_its_date() {
    let id = uid(&subject("wound", 0));
    // From Python's hashlib: the first 16 digits of sha256(b"15:mendarc patient10:example-07") and of
    // sha256(b"13:mendarc visit16:7cacaa2a46b0d13e10:2026-03-025:right5:wound1:0").
    assert_eq!(id, "7cacaa2a46b0d13e-24caf39fb6c3a23d");
    let other = [
        subject("wound", 1),
        subject("gate: active", 0),
        Subject { patient: Some("example-08"), ..subject("wound", 0) },
        Subject { patient: Some(""), ..subject("wound", 0) },
        Subject { patient: None, ..subject("wound", 0) },
        Subject { side: "left", ..subject("wound", 0) },
        Subject { operated_on: date(2026, 3, 3), ..subject("wound", 0) },
        // The same letters, parted elsewhere.
        Subject { side: "righ", purpose: "twound", ..subject("wound", 0) },
    ];
    let mut all: Vec<String> = other.iter().map(uid).chain([id]).collect();
    let told = all.len();
    all.sort();
    all.dedup();
    assert_eq!(all.len(), told);
}
