//! The runs of days and their limits: no gap, no row twice, and no value above a rule.

use body::{Joint, Key, Position};
use plan::words::{of_cell, of_difference, of_key};
use plan::{Cell, LimitRow, SpanOfDays};
use quantity::PostoperativeDay;

use super::found::{Found, Wrong};
use super::{Judge, governing};
use crate::checker::rulebook::Says;
use crate::file::ProtocolFile;

/// Judges the limits of every run of days.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    the_protocol(judge, found);
    gapless(judge, found);
    for (place, span) in judge.issued.prescription.spans.iter().enumerate() {
        let days = (span.from_day.count(), span.until_day.count());
        written_once(&span.limits, days, found);
        under_the_rules(judge, place, days, found);
        modes_rest(judge, &judge.values[place], days, found);
        lying(judge, &span.limits, days, |day| day, found);
    }
    first_days(judge, found);
    lifted(judge, found);
    in_time(judge, found);
}

/// The protocol that is named, and those that are named to cap it.
fn the_protocol(judge: &Judge<'_>, found: &mut Found) {
    let named = &judge.issued.prescription.protocol;
    let followed = judge.followed();
    let mut caps: Vec<&str> = judge.in_force.protocols.iter().skip(1).map(|(_, capping)| capping.id.as_str()).collect();
    let mut said: Vec<&str> = named.capped_by.iter().map(String::as_str).collect();
    caps.sort_unstable();
    said.sort_unstable();
    if named.id != followed.id || caps != said {
        let with =
            |caps: &[&str]| if caps.is_empty() { String::new() } else { format!(" capped by {}", caps.join(", ")) };
        let message = format!(
            "the plan is called `{}`{} where the record takes `{}`{}",
            named.id,
            with(&said),
            followed.id,
            with(&caps)
        );
        found.on_days(0, judge.horizon, Wrong::overload("not-the-protocol", message));
    }
}

/// From the day of surgery to the last day of the plan, each day once.
fn gapless(judge: &Judge<'_>, found: &mut Found) {
    let prescription = judge.issued.prescription;
    let mut next = 0;
    let mut gap = |from: u16, until: u16, what: &str| {
        let (from, until) = (from.min(until), until.max(from));
        found.on_days(from, until.max(from + 1), Wrong::overload("days-left-out", format!("the plan {what}")));
    };
    for span in &prescription.spans {
        let (from, until) = (span.from_day.count(), span.until_day.count());
        if from > next {
            gap(next, from, "says nothing about these days");
        }
        if from < next || until <= from {
            gap(from, next, "says two things about these days");
        }
        next = until;
    }
    if next != judge.horizon {
        gap(next, judge.horizon, &format!("ends here and not with day {}", judge.horizon.saturating_sub(1)));
    }
    for span in &prescription.spans {
        for (day, date) in [(span.from_day, span.from), (span.until_day, span.until)] {
            if day.date(prescription.operated_on) != date {
                let message = format!("{date} is not day {} after surgery", day.count());
                found.on(day.count(), Wrong::overload("date-not-counted", message));
            }
        }
    }
}

fn written_once(rows: &[LimitRow], (from, until): (u16, u16), found: &mut Found) {
    for (place, row) in rows.iter().enumerate() {
        if rows[..place].iter().any(|other| other.key == row.key) {
            let message = format!("{} is written twice", of_key(row.key));
            found.on_days(from, until, Wrong::overload("limit-written-twice", message).about(row.key));
        }
    }
}

/// Every value at or under every line in force, on the day itself and on the day that is lived.
fn under_the_rules(judge: &Judge<'_>, span: usize, (from, until): (u16, u16), found: &mut Found) {
    for (place, (key, issued)) in judge.sheet.keys.iter().zip(&judge.values[span]).enumerate() {
        for day in from..until {
            if judge.cap(place, day) < *issued {
                found.on(day, above(judge, place, *key, *issued, day));
            }
        }
    }
}

/// Which line a value lies above, and by how much.
pub(super) fn above(judge: &Judge<'_>, place: usize, key: Key, issued: Cell, day: u16) -> Wrong {
    let lives = judge.lived.on(key.joint, day);
    let (lines, at) = (judge.sheet.lines(place), |day: u16| day.min(judge.horizon.saturating_sub(1)));
    let held = judge.sheet.most(place, lives) < judge.sheet.most(place, day);
    let line = lines.strictest(at(if held { lives } else { day }));
    let (most, title, rule) = line.map_or((Cell::NO, "the ground rule".into(), String::new()), |line| {
        (line.cell, line.says.title(), line.says.id())
    });
    let because = if held { " (the plan is held or gone back)" } else { "" };
    let by_how_much = of_difference(issued, most, key).map_or_else(String::new, |by| format!(": {by} too much"));
    let message = format!(
        "{} is {} where {title} says {}{because}{by_how_much}",
        of_key(key),
        of_cell(issued, key),
        of_cell(most, key)
    );
    Wrong::overload("limit-above-rule", message).about(key).of_rule(rule)
}

/// No mode further than the mode it rests on.
pub(super) fn modes_rest(judge: &Judge<'_>, values: &[Cell], (from, until): (u16, u16), found: &mut Found) {
    for (key, own) in judge.sheet.keys.iter().zip(values) {
        let below = key.mode.rests_on().map(|mode| key.in_mode(mode)).filter(|below| below.exists());
        let Some(place) = below.and_then(|below| judge.sheet.place(below)) else { continue };
        let (below, most) = (judge.sheet.keys[place], values[place]);
        if *own > most {
            let message = format!(
                "{} is {} while {} is {}",
                of_key(*key),
                of_cell(*own, *key),
                of_key(below),
                of_cell(most, below)
            );
            found.on_days(from, until, Wrong::overload("wider-than-its-mode", message).about(*key));
        }
    }
}

/// A mode that is allowed only lying on the back says so.
///
/// `of_plan` gives the day whose rules hold: an earlier one where an unopened gate holds the plan.
pub(super) fn lying(
    judge: &Judge<'_>,
    rows: &[LimitRow],
    (from, until): (u16, u16),
    of_plan: impl Fn(u16) -> u16,
    found: &mut Found,
) {
    for day in from..until {
        let lives = judge.lived.on(Joint::Shoulder, of_plan(day));
        for (_, protocol) in &judge.in_force.protocols {
            for gate in protocol.postures.iter().filter(|gate| lives < gate.until.count()) {
                let unsaid = rows.iter().find(|row| {
                    row.key.joint == Joint::Shoulder
                        && gate.modes.contains(&row.key.mode)
                        && Cell::from(row.allowed).is_open()
                        && !row.only_lying
                });
                if let Some(row) = unsaid {
                    let message = format!(
                        "{} is not marked as only lying on the back, as \"{}\" of `{}` says",
                        of_key(row.key),
                        gate.title,
                        protocol.id
                    );
                    found.on(day, Wrong::overload("lying-not-said", message).about(row.key).of_rule(gate.id.clone()));
                }
            }
        }
    }
}

/// The first days that are listed are the first open days of the limits.
fn first_days(judge: &Judge<'_>, found: &mut Found) {
    let prescription = judge.issued.prescription;
    let opens = |key: Key| {
        let of_key = |at: &Key| at.in_position(Position::Any) == key;
        let open = |(span, values): (&SpanOfDays, &Vec<Cell>)| {
            let keys = judge.sheet.keys.iter().zip(values);
            keys.filter(|(at, _)| of_key(at)).any(|(_, cell)| cell.is_open()).then_some(span.from_day)
        };
        prescription.spans.iter().zip(&judge.values).find_map(open)
    };
    let in_words =
        |day: Option<PostoperativeDay>| day.map_or("on no day".into(), |day| format!("on day {}", day.count()));
    for key in judge.sheet.keys.iter().filter(|key| key.position == Position::Any) {
        let listed = prescription.first_allowed.iter().find(|first| first.key == *key);
        let (said, is) = (listed.map(|first| first.day), opens(*key));
        if said != is {
            let message =
                format!("{} is said to open {} and its limits open {}", of_key(*key), in_words(said), in_words(is));
            let day = said.or(is).map_or(0, PostoperativeDay::count);
            found.on(day, Wrong::overload("first-day-is-not-the-limits", message).about(*key));
        }
        if let Some(first) = listed.filter(|first| first.day.date(prescription.operated_on) != first.date) {
            let message = format!("{} is not day {} after surgery", first.date, first.day.count());
            found.on(first.day.count(), Wrong::overload("date-not-counted", message).about(*key));
        }
    }
}

/// Whatever is still bound on the last day has a line that says until when, or that the surgeon lifts it.
fn lifted(judge: &Judge<'_>, found: &mut Found) {
    let last = judge.horizon.saturating_sub(1);
    let Some(values) = judge.values.last() else { return };
    for (place, (key, cell)) in judge.sheet.keys.iter().zip(values).enumerate() {
        let lives = judge.lived.on(key.joint, last);
        let declared = judge.sheet.lines(place).on(lives).any(|line| match line.says {
            Says::Protocol(_, limit) => limit.opened_by_surgeon && line.cell >= *cell,
            Says::SafeArc(_) => true,
            Says::NotListed(_) | Says::Rule(_) => false,
        });
        // What the surgeon loosened on that day the surgeon lifts.
        if *cell == Cell::FREE || declared || lives < last || judge.loosened(*key, last).is_some() {
            continue;
        }
        let message =
            format!("{} is still {} on day {last}, and nothing says who lifts it", of_key(*key), of_cell(*cell, *key));
        found.on(last, Wrong::stiffness("limit-never-lifts", message).about(*key));
    }
}

/// Every movement is open passively by the day that the slowest protocol in force promises.
fn in_time(judge: &Judge<'_>, found: &mut Found) {
    let promised = |protocol: &ProtocolFile, key: Key| {
        let lines = protocol.passive_by.iter().filter(|line| line.keys.contains(&key));
        lines.map(|line| line.day.count()).max()
    };
    for key in &judge.sheet.keys {
        let of_protocols = judge.in_force.protocols.iter().filter_map(|(_, protocol)| promised(protocol, *key));
        let Some(latest) = of_protocols.max() else { continue };
        let day = judge.lived.reaches(latest);
        let Some((_, span)) = judge.span_at(day).filter(|_| day < judge.horizon) else { continue };
        if !governing(&span.limits, *key).is_open() {
            let message = format!("{} has to be open from day {day} at the latest, and is not", of_key(*key));
            found.on(day, Wrong::stiffness("passive-too-late", message).about(*key));
        }
    }
}
