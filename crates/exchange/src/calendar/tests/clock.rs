//! Times across the changes of the clock, read back by the description that stands in the text.

use jiff::Timestamp;
use jiff::civil::date;
use jiff::tz::{Offset, TimeZoneDatabase};

use super::*;

/// One change as the text describes it: the local onset, seconds before and after.
type Change = (DateTime, i32, i32);

fn described(text: &str) -> Vec<Change> {
    let seconds = |value: &str| {
        let sign = if value.starts_with('-') { -1 } else { 1 };
        let number = |range: std::ops::Range<usize>| value.get(range).map_or(0, |part| part.parse().expect("digits"));
        sign * (number(1..3) * 3600 + number(3..5) * 60 + number(5..7))
    };
    let zone = text.split("END:VTIMEZONE").next().expect("a time zone");
    let onsets = values(zone, "DTSTART");
    let from = values(zone, "TZOFFSETFROM");
    let to = values(zone, "TZOFFSETTO");
    assert!(onsets.len() == from.len() && from.len() == to.len());
    let onsets = onsets.iter().map(|onset| DateTime::strptime("%Y%m%dT%H%M%S", onset).expect("a time"));
    onsets.zip(from.iter().zip(&to)).map(|(onset, (from, to))| (onset, seconds(from), seconds(to))).collect()
}

/// RFC 5545, 3.6.5: the observance with the last onset at or before the local time is in force; the
/// onset is told in the offset before it.
fn instant(changes: &[Change], time: DateTime) -> Timestamp {
    let (_, _, offset) = changes.iter().rev().find(|(onset, ..)| *onset <= time).expect("described from before");
    Offset::from_seconds(*offset).and_then(|offset| offset.to_timestamp(time)).expect("in range")
}

#[test]
fn the_changes_of_berlin_new_york_and_sydney() {
    let changes = |zone, start: DateTime| {
        let mut calendar = calendar(vec![timed("wound", start)]);
        calendar.time_zone = zone;
        let all = described(&written(&calendar));
        all.into_iter().filter(|(onset, ..)| onset.year() == start.year()).collect::<Vec<_>>()
    };
    let at = |month, day, hour| date(2026, month, day).at(hour, 0, 0, 0);
    // Dates of 2026 by the laws: last Sundays of March and October (EU); second Sunday of March and
    // first of November (US); first Sundays of April and October (New South Wales).
    let berlin = changes("Europe/Berlin", at(6, 1, 9));
    assert_eq!(berlin, [(at(3, 29, 2), 3600, 7200), (at(10, 25, 3), 7200, 3600)]);
    let new_york = changes("America/New_York", at(6, 1, 9));
    assert_eq!(new_york, [(at(3, 8, 2), -18000, -14400), (at(11, 1, 2), -14400, -18000)]);
    let sydney = changes("Australia/Sydney", at(6, 1, 9));
    assert_eq!(sydney, [(at(4, 5, 3), 39600, 36000), (at(10, 4, 2), 36000, 39600)]);
}

#[test]
fn every_hour_near_a_change_is_the_instant_the_tz_database_gives() {
    let zones = ["Europe/Berlin", "America/New_York", "Australia/Sydney", "Australia/Lord_Howe", "Asia/Kolkata", "UTC"];
    for name in zones {
        let zone = TimeZoneDatabase::bundled().get(name).expect("a zone");
        let mut compared = 0;
        let mut calendar = calendar(vec![timed("wound", date(2026, 6, 1).at(9, 0, 0, 0))]);
        calendar.time_zone = name;
        let changes = described(&written(&calendar));
        let mut time = date(2026, 1, 1).at(0, 30, 0, 0);
        while time.year() == 2026 {
            // Where a change skips or repeats a time the offset before it counts (RFC 5545, 3.3.5).
            let given = zone.to_ambiguous_timestamp(time);
            let is_plain = !given.is_ambiguous();
            if is_plain {
                assert_eq!(instant(&changes, time), given.compatible().expect("in range"), "{name} {time}");
                compared += 1;
            }
            time = time.checked_add(jiff::SignedDuration::from_hours(1)).expect("in range");
        }
        // 8760 hours a year, less one skipped and one repeated.
        assert!((8757..=8760).contains(&compared), "{name}: {compared}");
    }
}

#[test]
fn an_offset_with_seconds_is_written_with_them() {
    let mut calendar = calendar(vec![timed("wound", date(1930, 1, 7).at(9, 0, 0, 0))]);
    calendar.time_zone = "Africa/Monrovia";
    // Monrovia kept 44 min 30 s west of Greenwich until 1972 (tz database, file africa).
    assert_eq!(values(&written(&calendar), "TZOFFSETTO").last().map(String::as_str), Some("-004430"));
}

#[test]
fn a_zone_without_changes_is_described_once() {
    for (name, offset) in [("UTC", "+0000"), ("Asia/Kolkata", "+0530"), ("Etc/GMT+5", "-0500")] {
        let mut calendar = calendar(vec![timed("wound", date(2026, 6, 1).at(9, 0, 0, 0))]);
        calendar.time_zone = name;
        let text = written(&calendar);
        assert_eq!(values(&text, "TZOFFSETTO"), [offset], "{name}");
        assert!(text.contains(&format!("DTSTART;TZID={name}:20260601T090000\r\n")), "{text}");
    }
}
