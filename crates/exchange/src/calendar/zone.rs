//! The time zone as a component of the calendar.

use jiff::civil::{Date, DateTime};
use jiff::tz::{Dst, Offset, TimeZone, TimeZoneDatabase, TimeZoneTransition};
use jiff::{SignedDuration, Timestamp};

use super::content::Lines;
use super::write::{Unwritable, basic};

/// The time zone of that name in the tz database that is compiled in.
pub(super) fn named(name: &str) -> Result<TimeZone, Unwritable> {
    let unknown = || Unwritable::UnknownTimeZone(name.to_owned());
    // "Etc/Unknown" is a zone of the library's that stands for none.
    let zone = TimeZoneDatabase::bundled().get(name).map_err(|_| unknown())?;
    if zone.is_unknown() { Err(unknown()) } else { Ok(zone) }
}

/// Its name as the tz database writes it.
pub(super) fn id(zone: &TimeZone) -> &str {
    zone.iana_name().unwrap_or("UTC")
}

/// Writes the time zone where a time needs it: every change of its clock in the years of these
/// times, each on its own, and the one that was in force before them.
pub(super) fn write(lines: &mut Lines, zone: &TimeZone, times: &[DateTime]) -> Result<(), Unwritable> {
    let (Some(first), Some(last)) = (times.iter().min(), times.iter().max()) else { return Ok(()) };
    let instant = |time: DateTime| zone.to_timestamp(time).map_err(|_| Unwritable::OutOfRange(time));
    for time in times {
        instant(*time)?;
    }
    // The year before and the year after, so that no time stands at the edge.
    let from = instant(start_of_year(*first, -1))?;
    let until = instant(start_of_year(*last, 2))?;
    lines.component("VTIMEZONE", |lines| {
        lines.words("TZID", id(zone))?;
        let before = zone.preceding(from).next();
        let after = zone.following(from).take_while(|change| change.timestamp() < until);
        let changes: Vec<_> = before.into_iter().chain(after).collect();
        match changes.first() {
            None => always(lines, zone, from),
            Some(_) => changes.iter().try_for_each(|change| observance(lines, zone, change)),
        }
    })
}

/// The first moment of a year near the year of this time.
fn start_of_year(time: DateTime, later: i16) -> DateTime {
    let year = time.year().saturating_add(later).clamp(Date::MIN.year(), Date::MAX.year());
    Date::new(year, 1, 1).map_or(time, |date| date.to_datetime(jiff::civil::Time::midnight()))
}

/// One change of the clock: from when, from which offset, to which.
fn observance(lines: &mut Lines, zone: &TimeZone, change: &TimeZoneTransition<'_>) -> Result<(), Unwritable> {
    let before = change.timestamp().saturating_sub(SignedDuration::from_secs(1));
    let from = before.map_or(change.offset(), |moment| zone.to_offset(moment));
    // The onset is told in the time that was in force until then.
    let onset = from.to_datetime(change.timestamp());
    write_observance(lines, change.dst(), onset, (from, change.offset()), change.abbreviation())
}

/// A zone whose clock never changes.
fn always(lines: &mut Lines, zone: &TimeZone, from: Timestamp) -> Result<(), Unwritable> {
    let info = zone.to_offset_info(from);
    let onset = info.offset().to_datetime(from);
    write_observance(lines, info.dst(), onset, (info.offset(), info.offset()), info.abbreviation())
}

fn write_observance(
    lines: &mut Lines,
    dst: Dst,
    onset: DateTime,
    (from, to): (Offset, Offset),
    name: &str,
) -> Result<(), Unwritable> {
    let kind = match dst {
        Dst::Yes => "DAYLIGHT",
        Dst::No => "STANDARD",
    };
    lines.component(kind, |lines| {
        lines.property("DTSTART", basic(onset))?;
        lines.property("TZOFFSETFROM", utc_offset(from))?;
        lines.property("TZOFFSETTO", utc_offset(to))?;
        lines.words("TZNAME", name)?;
        Ok(())
    })
}

/// An offset as RFC 5545 (3.3.14) writes it: `+0100`, with seconds only where there are any.
fn utc_offset(offset: Offset) -> String {
    const MINUTE: u32 = 60;
    let seconds = offset.seconds();
    let sign = if seconds < 0 { '-' } else { '+' };
    let whole = seconds.unsigned_abs();
    let (hours, minutes, rest) = (whole / MINUTE / MINUTE, whole / MINUTE % MINUTE, whole % MINUTE);
    match rest {
        0 => format!("{sign}{hours:02}{minutes:02}"),
        _ => format!("{sign}{hours:02}{minutes:02}{rest:02}"),
    }
}
