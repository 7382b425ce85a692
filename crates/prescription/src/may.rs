//! "May I …?": a lookup against the effective limits of a day, nothing more.

use diagnostic::{Diagnostic, Sink};
use document::nearest;
use exercise::{Entry, Kind};
use jiff::civil::Date;
use plan::Reason;
use quantity::PostoperativeDay;

use crate::issue::{Case, Context, day_of, with_context};
use crate::returns::{DayOffers, Obstacle, dateline, first_day};
use crate::today::{Effective, Opened};

/// The answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Answer {
    /// The limits of the day allow it.
    Yes,
    /// The dated plan allows it from a later day on.
    NotBefore,
    /// Only the surgeon's office can say.
    Ask,
}

impl Answer {
    /// The words of the contract.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Yes => "yes",
            Self::NotBefore => "not before",
            Self::Ask => "ask",
        }
    }
}

/// An answer with its day and its reasons.
#[derive(Debug, Clone)]
pub struct May {
    /// The activity.
    pub activity: String,
    /// The answer.
    pub answer: Answer,
    /// The day asked about for yes and ask; the first day for not before.
    pub day: PostoperativeDay,
    /// That day as a date.
    pub date: Date,
    /// Whether an unopened stage stands in the way.
    pub waiting_for_stage: Option<String>,
    /// Why.
    pub because: Vec<Reason>,
}

/// Answers whether an activity is allowed on a day.
///
/// # Errors
/// `None` with a diagnostic: unknown activity (with the nearest name), a day
/// before the operation, or a record that gives no plan.
pub fn may(case: &Case<'_>, activity: &str, on: Date, sink: &mut Sink) -> Option<May> {
    let Some(entry) = case.catalogue.get(activity).filter(|entry| entry.kind == Kind::Activity) else {
        let mut fault = Diagnostic::error("unknown-activity", format!("`{activity}` is not an activity"))
            .help("`mendarc may --list` names them all");
        if let Some(near) = nearest(activity, case.catalogue.of(Kind::Activity).map(|entry| entry.id.as_str())) {
            fault = fault.help(format!("did you mean `{near}`?"));
        }
        sink.push(fault);
        return None;
    };
    let asked = day_of(on, case.record.operation_date(), sink)?;
    with_context(case, sink, |context, opened, _| answer(context, opened, entry, asked))
}

/// Answers for every activity of the catalogue on each of some days, in their order.
///
/// # Errors
/// `None` with a diagnostic: a day before the operation, or a record that gives no plan.
pub fn may_all(case: &Case<'_>, on: &[Date], sink: &mut Sink) -> Option<Vec<Vec<May>>> {
    let asked: Option<Vec<PostoperativeDay>> =
        on.iter().map(|&on| day_of(on, case.record.operation_date(), sink)).collect();
    let asked = asked?;
    with_context(case, sink, |context, opened, _| {
        let of_day = |&day: &PostoperativeDay| {
            case.catalogue.of(Kind::Activity).map(|entry| answer(context, opened, entry, day)).collect()
        };
        asked.iter().map(of_day).collect()
    })
}

fn answer(context: &Context<'_>, opened: &Opened, entry: &Entry, asked: PostoperativeDay) -> May {
    let activity = entry.id.as_str();
    let dated = context.dated;
    let day = asked.count().min(dated.horizon().saturating_sub(1));
    let frozen_at = opened.frozen_at(asked.count()).map(|since| since.min(day));
    let effective = Effective { dated, day, frozen_at };
    let line = dateline(dated, activity);
    let offers = DayOffers {
        dated,
        day,
        rests_on: frozen_at.unwrap_or(day),
        wear: effective.wear(),
        value: |lane| effective.cell(lane),
    };
    let obstacle = offers.obstacle(entry, line.as_ref());
    let by_surgeon = line.as_ref().is_some_and(|line| line.opened_by_surgeon);
    let mut because: Vec<Reason> = Vec::new();
    match &obstacle {
        Some(Obstacle::Limit(lane)) => because.extend(context.reasons.of_limit(*lane, effective.day_of(*lane))),
        Some(Obstacle::Sling) => because.extend(context.reasons.of_sling(effective.day_of_sling())),
        Some(Obstacle::Pose) => because.push(pose_reason()),
        Some(Obstacle::Date) | None => {}
    }
    because.extend(line.as_ref().map(|line| line.reason.clone()));
    if because.is_empty() && entry.resting.is_some() {
        because.push(Reason {
            text: "a pose of washing, dressing or rest inside the resting allowance".into(),
            ..pose_reason()
        });
    }
    if because.is_empty() {
        because.extend(
            entry
                .demands
                .iter()
                .filter_map(|demand| dated.plan.grid.governing(demand.key))
                .take(1)
                .flat_map(|lane| context.reasons.of_limit(lane, effective.day_of(lane))),
        );
    }
    let first = first_day(dated, entry, line.as_ref(), day);
    let waiting = effective
        .frozen_at
        .and_then(|_| opened.next_on(asked.count()))
        .map(|(place, _)| dated.compiled.stages[place].to_owned());
    let (answer, first) = match (obstacle, first) {
        (None, _) if by_surgeon => (Answer::Ask, day),
        (None, _) => (Answer::Yes, day),
        (Some(_), Some(first)) if first > day => (Answer::NotBefore, first),
        (Some(_), _) => (Answer::Ask, day),
    };
    let shown = if answer == Answer::NotBefore { PostoperativeDay::new(first) } else { asked };
    May {
        activity: activity.to_owned(),
        answer,
        day: shown,
        date: shown.date(context.operated_on),
        waiting_for_stage: waiting.filter(|_| answer != Answer::Yes),
        because,
    }
}

/// Why a pose of washing, dressing or rest is not allowed.
fn pose_reason() -> Reason {
    Reason {
        rule: "resting-allowance".into(),
        text: "a safe arc of the record does not allow even this resting pose".into(),
        evidence: vec![evidence::ids::RESTING_ELEVATION, evidence::ids::RESTING_INTERNAL_ROTATION],
        record: Vec::new(),
    }
}
