//! Activities of daily life, work and sport, held against the limits of their day.

use exercise::{Entry, Kind, SlingDuring};
use plan::{Cell, ReturnLine, Wear};

use super::fitting::{NO_MARGIN, asks_too_much};
use super::found::{Found, Wrong};
use super::sling::{Rest, least_wear};
use super::today::since;
use super::{Judge, governing};
use crate::file::Return;

/// Judges every line of return to an activity.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    for line in &judge.issued.prescription.returns {
        let dates = dates(judge, &line.activity);
        let day = line.day.map_or(judge.horizon, |day| day.count());
        let mut wrong = |message: String| found.on(day, about(&line.activity, "return-too-early", message));
        if dates.is_empty() {
            wrong("no protocol in force dates it".into());
        }
        if dates.iter().any(|date| date.opened_by_surgeon) && !line.opened_by_surgeon {
            wrong("the surgeon opens it, and the line does not say so".into());
        }
        if line.day.map(|day| day.date(judge.issued.prescription.operated_on)) != line.date {
            wrong("its date is not its day".into());
        }
        let Some(day) = line.day.map(|day| day.count()) else { continue };
        let Some(entry) = activity(judge, line) else {
            wrong("the catalogue has no such activity".into());
            continue;
        };
        for message in not_allowed(judge, entry, &dates, day) {
            wrong(message);
        }
    }
}

/// Judges the answer that an activity is allowed on a day.
pub(super) fn judge_permission(judge: &Judge<'_>, id: &str, day: u16, found: &mut Found) {
    let Some(entry) = judge.issued.catalogue.get(id) else {
        return found.on(day, about(id, "permission-too-early", "the catalogue has no such activity".into()));
    };
    let within = day.min(judge.horizon.saturating_sub(1));
    let dates = dates(judge, id);
    let days = since(judge, day).map_or(within, |since| since.min(within))..=within;
    for lives_like in days {
        for message in not_allowed(judge, entry, &dates, lives_like) {
            found.on(day, about(id, "permission-too-early", message));
        }
    }
}

fn about(activity: &str, kind: &'static str, message: String) -> Wrong {
    Wrong::overload(kind, format!("{activity}: {message}")).of_rule(activity.into())
}

fn activity<'c>(judge: &Judge<'c>, line: &ReturnLine) -> Option<&'c Entry> {
    judge.issued.catalogue.get(&line.activity).filter(|entry| entry.kind == Kind::Activity)
}

/// The dates that the protocols in force give an activity.
fn dates<'c>(judge: &Judge<'c>, activity: &str) -> Vec<&'c Return> {
    let of_protocols = judge.in_force.protocols.iter().flat_map(|(_, protocol)| &protocol.returns);
    of_protocols.filter(|line| line.activity == activity).collect()
}

/// Why an activity is not allowed on a day: its date, the limits, the pose, the sling.
fn not_allowed(judge: &Judge<'_>, entry: &Entry, dates: &[&Return], day: u16) -> Vec<String> {
    let mut messages = Vec::new();
    let latest = dates.iter().map(|date| date.from.count()).max();
    if let Some(latest) = latest.filter(|latest| judge.lived.arm(day) < *latest) {
        let early = latest - judge.lived.arm(day);
        messages.push(format!("the first day for it is day {}: {early} days too early", judge.lived.reaches(latest)));
    }
    let limit = |key| {
        if day < judge.horizon {
            judge.span_at(day).map_or(Cell::NO, |(_, span)| governing(&span.limits, key))
        } else {
            judge.sheet.place(key).map_or(Cell::NO, |place| judge.cap(place, day))
        }
    };
    messages.extend(
        entry.demands.iter().filter_map(|demand| asks_too_much(demand, limit(demand.key), NO_MARGIN)),
    );
    if entry.resting.as_ref().is_some_and(|pose| !Rest::on(judge, day).holds(pose)) {
        messages.push("a safe arc does not allow even this resting pose".into());
    }
    let worn = judge.span_at(day).map_or(Wear::Always, |(_, span)| span.sling.wear).max(least_wear(judge, day));
    if worn == Wear::Always && entry.sling == SlingDuring::Off && entry.resting.is_none() {
        messages.push("the sling is worn at all times and does not come off for it".into());
    }
    messages
}
