//! Activities of daily life, work and sport against the limits of a day.

use exercise::{Entry, SlingDuring};
use plan::{Cell, LaneId, Reason, ReturnLine, Wear};
use quantity::PostoperativeDay;

use crate::dated::Dated;
use crate::fits::{Margin, first_misfit};
use crate::issue::Context;
use crate::resting::Allowance;
use crate::rows::protocols;

/// What a day offers an activity.
pub(crate) struct DayOffers<'d, V> {
    pub dated: &'d Dated<'d>,
    pub day: u16,
    /// The day whose resting allowance holds: an earlier one where an unopened gate holds the plan.
    pub rests_on: u16,
    pub wear: Wear,
    pub value: V,
}

/// What stands in the way of an activity on a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Obstacle {
    /// A date of the protocol.
    Date,
    /// The sling is worn at all times.
    Sling,
    /// A safe arc does not even allow the pose.
    Pose,
    /// A limit.
    Limit(LaneId),
}

/// The date a protocol gives an activity; the latest of the protocols in force.
#[derive(Debug, Clone)]
pub(crate) struct Dateline {
    /// The day of the composed plan.
    pub plan_day: u16,
    /// The day it is reached for good.
    pub from: u16,
    pub opened_by_surgeon: bool,
    pub note: Option<String>,
    pub reason: Reason,
}

pub(crate) fn dateline(dated: &Dated<'_>, activity: &str) -> Option<Dateline> {
    let lines: Vec<_> = protocols(dated)
        .flat_map(|protocol| protocol.returns.iter().map(move |line| (protocol, line)))
        .filter(|(_, line)| line.activity == activity)
        .collect();
    let opened_by_surgeon = lines.iter().any(|(_, line)| line.opened_by_surgeon);
    let (protocol, line) = lines.into_iter().max_by_key(|(_, line)| line.from)?;
    Some(Dateline {
        plan_day: line.from.count(),
        from: dated.moves.reaches(line.from.count()),
        opened_by_surgeon,
        note: line.note.clone(),
        reason: Reason {
            rule: format!("{}/return/{}", protocol.id, activity),
            text: "the first day the protocol gives for this".into(),
            evidence: line.evidence.clone(),
            record: Vec::new(),
        },
    })
}

impl<V: Fn(LaneId) -> Cell> DayOffers<'_, V> {
    /// What stands in the way of an activity; nothing where it is allowed.
    ///
    /// # Method
    /// The dateline, the sling, then every demand against the limits of the day.
    /// While the sling is worn at all times it comes off only for what the plan
    /// names, and the catalogue marks activities that belong to washing or dressing.
    pub(crate) fn obstacle(&self, entry: &Entry, dateline: Option<&Dateline>) -> Option<Obstacle> {
        if dateline.is_some_and(|line| self.day < self.dated.moves.reached_by(line.plan_day, self.day)) {
            return Some(Obstacle::Date);
        }
        let grid = &self.dated.plan.grid;
        let value = |key| grid.governing(key).map_or(Cell::NO, &self.value);
        if let Some((demand, _)) = first_misfit(&entry.demands, Margin::NONE, value) {
            return Some(grid.governing(demand.key).map_or(Obstacle::Date, Obstacle::Limit));
        }
        if let Some(pose) = &entry.resting
            && !Allowance::on(self.dated, self.rests_on).holds(pose)
        {
            return Some(Obstacle::Pose);
        }
        if self.wear == Wear::Always && entry.sling == SlingDuring::Off && !comes_off_for(entry) {
            return Some(Obstacle::Sling);
        }
        None
    }
}

/// Whether the sling may come off for it even while it is worn at all times: washing, dressing, rest.
fn comes_off_for(entry: &Entry) -> bool {
    entry.resting.is_some()
}

/// The first day from `from` on, by the dated plan, on which nothing stands in the way.
pub(crate) fn first_day(dated: &Dated<'_>, entry: &Entry, dateline: Option<&Dateline>, from: u16) -> Option<u16> {
    let mut days = dated.change_days();
    days.extend(dateline.into_iter().flat_map(|line| [line.from, dated.moves.reached_by(line.plan_day, from)]));
    days.push(from);
    days.sort_unstable();
    days.into_iter().filter(|&day| day >= from).find(|&day| {
        let offers =
            DayOffers { dated, day, rests_on: day, wear: dated.wear(day), value: |lane| dated.cell(lane, day) };
        offers.obstacle(entry, dateline).is_none()
    })
}

/// The lines of return to activities that the protocol dates.
pub(crate) fn all(context: &Context<'_>) -> Vec<ReturnLine> {
    let dated = context.dated;
    let protocol = dated.compiled.protocol(dated.plan.protocol);
    protocol
        .returns
        .iter()
        .filter_map(|line| {
            let entry = context.catalogue.get(&line.activity)?;
            let dateline = dateline(dated, &line.activity)?;
            let day = first_day(dated, entry, Some(&dateline), 0);
            let mut reasons = vec![dateline.reason.clone()];
            if let Some(before) = day.filter(|&day| day > dateline.from).map(|day| day - 1) {
                let offers = DayOffers {
                    dated,
                    day: before,
                    rests_on: before,
                    wear: dated.wear(before),
                    value: |lane| dated.cell(lane, before),
                };
                match offers.obstacle(entry, Some(&dateline)) {
                    Some(Obstacle::Limit(lane)) => reasons.extend(context.reasons.of_limit(lane, before)),
                    Some(Obstacle::Sling) => reasons.extend(context.reasons.of_sling(before)),
                    _ => {}
                }
            }
            let day = day.map(PostoperativeDay::new);
            Some(ReturnLine {
                activity: line.activity.clone(),
                day,
                date: day.map(|day| day.date(context.operated_on)),
                opened_by_surgeon: dateline.opened_by_surgeon,
                note: dateline.note.clone(),
                reasons,
            })
        })
        .collect()
}
