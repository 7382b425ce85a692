//! What the clinician should know beside the limits.

use body::Movement;
use diagnostic::{Diagnostic, Sink};
use evidence::ids;
use exercise::Purpose;
use operative::Record;
use plan::{Cell, LaneId, SpanOfDays, Wear};
use quantity::PostoperativeDay;

use crate::issue::Context;
use crate::resting::Allowance;
use crate::rows;
use crate::settings::Settings;
use crate::stiffness::{self, Count, StillLanes};
use crate::today::Opened;

/// Purposes a patient should not be left without while the protocol lists an exercise for them.
const NEEDED: [(Purpose, &str); 3] = // not medical: a list of purposes
    [(Purpose::Elevation, "elevation"), (Purpose::ExternalRotation, "outward rotation"), (Purpose::Elbow, "elbow")];

/// Every caution of a prescription.
pub(crate) fn all(
    context: &Context<'_>,
    (record, settings): (&Record, &Settings),
    spans: &[SpanOfDays],
    opened: &Opened,
    on: Option<u16>,
    others_settings: bool,
    sink: &mut Sink,
) -> Vec<String> {
    let mut cautions = remarks(context);
    cautions.extend(of_findings(context, record));
    cautions.extend(slower_not_recorded(context, record));
    cautions.extend(left_without(context, spans));
    cautions.extend(stiffness::cautions(context.dated, settings));
    cautions.extend(waiting(context, opened, on));
    if context.sessions.other.is_some() {
        let settings = if others_settings {
            "its holds, go-backs, options and protocol are taken from its settings, and its loosenings are left aside"
        } else {
            "its own settings (holds, another protocol, options) were not given"
        };
        cautions.push(format!(
            "the plan of the other shoulder is taken as dated, as if each of its stages were opened at its gate: where one is not, ask before an exercise leans on that arm; {settings}"
        ));
    }
    sling_between(context, spans, sink);
    cautions
}

/// Remarks of the files; one that invites a looser plan only where the fact is recorded and nothing asks for a slower one.
fn remarks(context: &Context<'_>) -> Vec<String> {
    let dated = context.dated;
    let capping = !dated.compiled.capping_rules(&dated.plan).is_empty();
    let of_family = dated.compiled.family.rules.cautions.iter();
    of_family
        .chain(rows::protocols(dated).flat_map(|protocol| &protocol.rules.cautions))
        .filter(|remark| remark.when.holds(&dated.facts))
        .filter(|remark| {
            let recorded = remark.when.holding(&dated.facts).all(|c| !dated.facts.is_unknown(c.dimension));
            !remark.invites || (recorded && !capping)
        })
        .map(|remark| remark.title.clone())
        .collect()
}

fn of_findings(context: &Context<'_>, record: &Record) -> Vec<String> {
    let dated = context.dated;
    let mut cautions = Vec::new();
    let done = record.without_effect();
    if !done.is_empty() {
        cautions.push(format!("{}: {}", done.join(", "), ids::DECOMPRESSION_NO_CHANGE.what));
    }
    let active = dated.compiled.safe_arc_end(&dated.plan);
    for arc in dated.facts.safe_arcs.iter() {
        if let (Some(until), Some(active)) = (arc.until.map(PostoperativeDay::count), active)
            && until > active
        {
            cautions.push(format!(
                "the safe arc of {} binds until day {until}, {} days after active motion opens: is the day meant?",
                arc.movement,
                until - active
            ));
        }
    }
    for arc in dated.facts.safe_arcs.iter().filter(|arc| arc.until.is_none()) {
        if let Some(day) = dated.arc_ends(&arc) {
            let date = PostoperativeDay::new(dated.moves.reaches(day)).date(context.operated_on);
            cautions.push(format!(
                "the safe arc of {} names no day: it binds until active motion opens ({date})",
                arc.movement
            ));
        }
    }
    cautions
}

/// Findings that would only raise a question, and are not recorded: named, and nothing more.
fn slower_not_recorded(context: &Context<'_>, record: &Record) -> Vec<String> {
    let dated = context.dated;
    let facts = &dated.facts;
    let family = &dated.compiled.family;
    let mut cautions = Vec::new();
    for question in &family.file.questions {
        let capped = question
            .unless_capped_by
            .as_ref()
            .is_some_and(|id| rows::protocols(dated).any(|protocol| protocol.id == *id));
        if capped || facts.class(question.answered_by) > 0 || question.when.holds(facts) {
            continue;
        }
        let open: Vec<String> = question
            .when
            .all
            .iter()
            .chain(&question.when.any)
            .filter(|condition| facts.is_unknown(condition.dimension))
            .flat_map(|condition| record.missing(condition.dimension))
            .map(|missing| missing.path)
            .collect();
        if !open.is_empty() {
            cautions.push(format!(
                "not recorded, and would raise the question of a slower plan if found: {}",
                open.join(", ")
            ));
        }
    }
    cautions
}

/// Runs of days on which an exercise was left out and none of its purpose remains.
fn left_without(context: &Context<'_>, spans: &[SpanOfDays]) -> Vec<String> {
    let mut cautions = Vec::new();
    for (purpose, name) in NEEDED {
        let of_purpose = |id: &str| context.catalogue.get(id).is_some_and(|entry| entry.purpose == Some(purpose));
        let mut runs: Vec<(u16, u16, String)> = Vec::new();
        for span in spans {
            let Some(dropped) = span.dropped.iter().find(|dropped| of_purpose(&dropped.id)) else { continue };
            if span.exercises.iter().any(|line| of_purpose(&line.id)) {
                continue;
            }
            match runs.last_mut() {
                Some((_, until, _)) if *until == span.from_day.count() => *until = span.until_day.count(),
                _ => runs.push((span.from_day.count(), span.until_day.count(), dropped.because.clone())),
            }
        }
        cautions.extend(runs.into_iter().map(|(from, until, because)| {
            format!(
                "days {from} to {}: no {name} exercise to do alone is left ({because}); a therapist may move the arm inside the limits",
                until - 1
            )
        }));
    }
    cautions
}

/// A gate that waits for the surgeon, and what the waiting adds to still days.
fn waiting(context: &Context<'_>, opened: &Opened, on: Option<u16>) -> Option<String> {
    let asked = on?;
    let day = asked.min(context.dated.horizon().saturating_sub(1));
    let frozen_at = opened.frozen_at(asked)?.min(day);
    let (stage, gate) = opened.next_on(asked)?;
    let added: Vec<String> = Count::ALL
        .into_iter()
        .filter_map(|count| {
            let (run, added) = added_by_waiting(context, count, frozen_at, day);
            let adds = stiffness::adds(&["this gate alone".into()], added);
            (added > 0).then(|| format!("; {adds}: {}", count.in_words(run)))
        })
        .collect();
    Some(format!(
        "waiting for the surgeon: the gate of `{}` was due on day {gate} and is not opened{}",
        context.dated.compiled.stages[stage],
        added.concat()
    ))
}

/// The run of still days that a day lies at the end of while a gate waits, and how many of them only the waiting makes.
fn added_by_waiting(context: &Context<'_>, count: Count, frozen_at: u16, day: u16) -> (u16, u16) {
    let dated = context.dated;
    let lanes = StillLanes::of(&dated.plan);
    let still = |cell: &dyn Fn(LaneId) -> Cell, wear: Wear| match count {
        Count::WithoutPassive => lanes.passive_still(cell),
        Count::InSling => wear != Wear::None,
        Count::WithoutElbow => lanes.elbow_still(cell),
    };
    let as_dated = |day: u16| still(&|lane| dated.cell(lane, day), dated.wear(day));
    let before = (0..frozen_at).rev().take_while(|day| as_dated(*day)).count() as u16;
    let mut lowest: Vec<(LaneId, Cell)> = lanes.all().map(|lane| (lane, Cell::FREE)).collect();
    let mut worn = Wear::None;
    let (mut run, mut added) = (before, 0);
    for day in frozen_at..=day {
        lowest.iter_mut().for_each(|(lane, cell)| *cell = (*cell).min(dated.cell(*lane, day)));
        worn = worn.max(dated.wear(day));
        let cell = |lane: LaneId| lowest.iter().find(|(known, _)| *known == lane).map_or(Cell::NO, |(_, cell)| *cell);
        if still(&cell, worn) {
            run += 1;
            added += u16::from(!as_dated(day));
        } else {
            (run, added) = (0, 0);
        }
    }
    (run, added)
}

/// Days on which neither sling position lies inside the resting allowance.
fn sling_between(context: &Context<'_>, spans: &[SpanOfDays], sink: &mut Sink) {
    let between = spans.iter().find(|span| {
        span.sling.wear != Wear::None
            && !Allowance::on(context.dated, span.from_day.count()).holds_sling(span.sling.position)
    });
    if let Some(span) = between {
        sink.push(
            Diagnostic::warning(
                "sling-between-two-limits",
                format!("from day {} no sling position lies inside the limits", span.from_day.count()),
            )
            .help("the safe arcs leave neither neutral nor the forearm on the belly: the surgeon decides"),
        );
    }
    // A rule that shuts inward turning while an arc shuts outward turning leaves the sling in between as well.
    let inward = body::Key::any(body::Joint::Shoulder, Movement::InternalRotation, body::Mode::Passive);
    let shut = spans.iter().find(|span| {
        span.sling.position == plan::SlingPosition::InternalRotation
            && span.sling.wear != Wear::None
            && span.limits.iter().any(|row| {
                row.key == inward
                    && row.allowed == plan::Allowed::No
                    && row.reasons.iter().any(|reason| {
                        !reason.rule.contains('/')
                            && !["closed-world", "safe-arc", "hold", "loosening"].contains(&reason.rule.as_str())
                    })
            })
    });
    if let Some(span) = shut.filter(|_| between.is_none()) {
        sink.push(
            Diagnostic::warning(
                "sling-between-two-limits",
                format!(
                    "from day {} a safe arc wants the forearm on the belly and a rule shuts inward rotation",
                    span.from_day.count()
                ),
            )
            .help("the surgeon decides how the sling holds the arm"),
        );
    }
}
