//! Activities of daily life, work and sport, held against the limits of their day.

use exercise::{Demand, Entry, Kind, SlingDuring};
use plan::{ReturnLine, Wear};

use super::Judge;
use super::fitting::{NO_MARGIN, asks_too_much};
use super::found::{Found, Wrong};
use super::sling::{Rest, least_wear};
use super::today::since;
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
        let messages = not_allowed(judge, entry, day);
        before_its_date(judge, &dates, day).into_iter().chain(messages).for_each(wrong);
    }
}

/// Judges the answer that an activity is allowed on a day.
pub(super) fn judge_permission(judge: &Judge<'_>, id: &str, day: u16, found: &mut Found) {
    let Some(entry) = judge.issued.catalogue.get(id) else {
        return found.on(day, about(id, "permission-too-early", "the catalogue has no such activity".into()));
    };
    let within = day.min(judge.horizon.saturating_sub(1));
    if let Some(message) = before_its_date(judge, &dates(judge, id), day) {
        found.on(day, about(id, "permission-too-early", message));
    }
    let days = since(judge, day).map_or(within, |since| since.min(within))..=within;
    for lives_like in days {
        for message in not_allowed(judge, entry, lives_like) {
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

/// The date that has not come yet.
fn before_its_date(judge: &Judge<'_>, dates: &[&Return], day: u16) -> Option<String> {
    let latest = dates.iter().map(|date| date.from.count()).max()?;
    let early = latest.checked_sub(judge.lived.arm(day)).filter(|early| *early > 0)?;
    Some(format!("the first day for it is day {}: {early} days too early", judge.lived.reaches(latest)))
}

/// Why an activity is not allowed on a day: the limits, the pose, the sling.
fn not_allowed(judge: &Judge<'_>, entry: &Entry, day: u16) -> Vec<String> {
    let limit = |demand: &Demand| judge.value(demand.key, day);
    let mut messages: Vec<String> =
        entry.demands.iter().filter_map(|demand| asks_too_much(demand, limit(demand), NO_MARGIN)).collect();
    if entry.resting.as_ref().is_some_and(|pose| !Rest::on(judge, day).holds(pose)) {
        messages.push("a safe arc does not allow even this resting pose".into());
    }
    // After the last day of the dated plan there is no run of days to ask, only the files.
    let span = judge.span_at(day).map(|(_, span)| span).filter(|_| day < judge.horizon);
    let worn = span.map_or(Wear::None, |span| span.sling.wear).max(least_wear(judge, day));
    if worn == Wear::Always && entry.sling == SlingDuring::Off && entry.resting.is_none() {
        messages.push("the sling is worn at all times and does not come off for it".into());
    }
    messages
}
