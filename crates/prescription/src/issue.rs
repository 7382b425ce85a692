//! Putting a prescription together.

use diagnostic::{Diagnostic, Sink, Span};
use document::nearest;
use exercise::Catalogue;
use jiff::civil::Date;
use operative::{Facts, Record, facts};
use plan::{GoBack, GoalLine, Prescription, ProtocolUsed, SpanOfDays};
use protocol::{Compiled, Library, resolve};
use quantity::PostoperativeDay;

use crate::cautions;
use crate::checked;
use crate::choose;
use crate::dated::Dated;
use crate::goals;
use crate::ladder;
use crate::lines;
use crate::loosen;
use crate::moves::{BackTo, Moves};
use crate::opened::Openings;
use crate::questions;
use crate::reasons::Reasons;
use crate::rows;
use crate::session::{Other, Sessions};
use crate::settings::Settings;
use crate::today::{self, Opened};
use crate::{returns, visits};

/// Gives the line of a place in the record's file.
pub type LineOf<'c> = &'c dyn Fn(Span) -> usize;

/// Gives an exercise's title, for clinicians, by its id.
pub type TitleOf<'c> = &'c dyn Fn(&str) -> String;

/// Everything a prescription is made from.
pub struct Case<'c> {
    /// The families of protocols.
    pub library: &'c Library,
    /// The catalogue of exercises.
    pub catalogue: &'c Catalogue,
    /// The operative record.
    pub record: &'c Record,
    /// The surgeon's settings.
    pub settings: &'c Settings,
    /// A protocol asked for beside the settings.
    pub protocol: Option<&'c str>,
    /// What is opened; without it only the first stage is.
    pub openings: &'c Openings,
    /// The day asked about.
    pub on: Option<Date>,
    /// The record of the other shoulder's live prescription.
    pub other: Option<&'c Record>,
    /// The settings of the other shoulder's prescription; its loosenings are left aside, which is the stricter side.
    pub other_settings: Option<&'c Settings>,
    /// Lines of the record's file.
    pub line_of: LineOf<'c>,
    /// The titles of exercises; without them cautions name the id.
    pub title_of: TitleOf<'c>,
}

/// Nothing opened beyond the first stage.
static NOTHING_OPENED: Openings = Openings(Vec::new());

impl<'c> Case<'c> {
    /// A record under settings: nothing opened, no day asked about, no other shoulder, no lines of a file, no titles.
    pub fn new(library: &'c Library, catalogue: &'c Catalogue, record: &'c Record, settings: &'c Settings) -> Self {
        Self {
            library,
            catalogue,
            record,
            settings,
            protocol: None,
            openings: &NOTHING_OPENED,
            on: None,
            other: None,
            other_settings: None,
            line_of: &|_| 0,
            title_of: &|id| id.to_owned(),
        }
    }
}

impl std::fmt::Debug for Case<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Case").field("operated_on", &self.record.operation_date()).finish_non_exhaustive()
    }
}

/// What the parts of a prescription share while it is put together.
pub(crate) struct Context<'c> {
    pub dated: &'c Dated<'c>,
    pub catalogue: &'c Catalogue,
    pub reasons: &'c Reasons<'c>,
    pub sessions: &'c Sessions<'c>,
    pub operated_on: Date,
}

/// Makes the prescription of a record.
///
/// # Errors
/// `None` with at least one error in the sink: no protocol covers the record, a
/// choice or loosening lacks its reason or confirmation, the day asked for is
/// before the operation, or the plan fails its check. Nothing partial is ever given.
pub fn prescribe(case: &Case<'_>, sink: &mut Sink) -> Option<Prescription> {
    let errors = sink.errors();
    let prescription = with_context(case, sink, |context, opened, extras| {
        let mut own_sink = Sink::new();
        let mut prescription = compose(case, context, opened, extras, &mut own_sink);
        checked::refuse(&checked::faults(case, context, extras, &prescription), &mut own_sink);
        for step in ladder::steep_steps(&prescription, case.catalogue, ladder::whose(case.record)) {
            own_sink.push(step.warning(case.title_of));
            prescription.cautions.push(step.caution(case.title_of));
        }
        (prescription, own_sink)
    });
    let (prescription, own_sink) = prescription?;
    sink.extend(own_sink.into_sorted());
    (sink.errors() == errors).then_some(prescription)
}

/// What was found while the plan was composed.
pub(crate) struct Extras {
    pub loosened: Vec<String>,
    pub outside_the_proof: Vec<String>,
    pub moved: Vec<String>,
    pub go_backs: Vec<GoBack>,
    pub requested: protocol::Requested,
}

/// Composes the dated plan of a case and hands it on.
pub(crate) fn with_context<T>(
    case: &Case<'_>,
    sink: &mut Sink,
    then: impl FnOnce(&Context<'_>, &Opened, &Extras) -> T,
) -> Option<T> {
    let errors = sink.errors();
    if let Some(on) = case.on {
        day_of(on, case.record.operation_date(), sink)?;
    }
    let facts = facts(case.record);
    let family = case.library.family(&facts).or_else(|| {
        sink.push(Diagnostic::error("no-protocol-covers", "no shipped protocol covers this operation"));
        None
    })?;
    let choices = choose::options(family, case.settings, sink);
    let extra_days = arc_days(&facts);
    let compiled = Compiled::new(family, &choices, &extra_days);
    refuse(family, case.record, &facts, sink);
    let chosen = choose::protocol(&compiled, &facts, case.settings, case.protocol, sink)?;
    let mut loosened = chosen.loosened;
    // Of a choice of protocol the first line names it, and the others say what it comes to.
    let mut outside_the_proof: Vec<String> = loosened.first().cloned().into_iter().collect();
    let options = choose::check_options(family, case.settings, &facts, chosen.requested, sink);
    outside_the_proof.extend(options.iter().cloned());
    loosened.extend(options);
    if sink.errors() > errors {
        return None;
    }
    let plan = resolve(&compiled, &facts, chosen.requested);
    let horizon = plan.grid.days.last().copied().unwrap_or(0);
    let backs = backs_of(case.settings, &compiled, &plan, sink);
    let back_days: Vec<BackTo> = backs.iter().map(|(_, back)| *back).collect();
    let mut dated = Dated {
        compiled: &compiled,
        choices: &choices,
        facts,
        moves: Moves::new(&case.settings.holds, &back_days, horizon),
        plan,
        loosened: Vec::new(),
    };
    let margin = choose::home_margin(case.settings, sink);
    outside_the_proof.extend(margin.clone());
    loosened.extend(margin);
    beyond_the_plan(case.settings, horizon, sink);
    let moved = moved(case.settings);
    let shown = loosen::loosen(&mut dated, case.settings, sink);
    outside_the_proof.extend(shown.iter().cloned());
    loosened.extend(shown);
    let back_stages: Vec<(usize, u16)> = backs.iter().map(|(stage, back)| (*stage, back.day)).collect();
    let go_backs = go_backs(&back_stages, &compiled, horizon, case.record.operation_date());
    let opened = Opened::new(&dated, case.openings, &back_stages, case.record.operation_date(), sink);
    if sink.errors() > errors {
        return None;
    }
    let other = OtherPlan::new(case, sink)?;
    let other_compiled =
        other.as_ref().map(|other| Compiled::new(other.family, &other.choices, &arc_days(&other.facts)));
    let no_settings = Settings::default();
    let of_other = case.other_settings.unwrap_or(&no_settings);
    let mut other_requested = protocol::Requested(None);
    let mut other_dated = None;
    if let Some((other, compiled)) = other.as_ref().zip(other_compiled.as_ref()) {
        other_requested = choose::protocol(compiled, &other.facts, of_other, None, sink)?.requested;
        let plan = resolve(compiled, &other.facts, other_requested);
        let days: Vec<BackTo> = backs_of(of_other, compiled, &plan, sink).into_iter().map(|(_, back)| back).collect();
        let moves = Moves::new(&of_other.holds, &days, horizon);
        let choices = &other.choices;
        other_dated = Some(Dated { compiled, choices, facts: other.facts, moves, plan, loosened: Vec::new() });
    }
    if sink.errors() > errors {
        return None;
    }
    let reasons = Reasons { dated: &dated, record: case.record, line_of: case.line_of };
    let sessions = Sessions {
        dated: &dated,
        catalogue: case.catalogue,
        reasons: &reasons,
        operated_on: case.record.operation_date(),
        home_margin: case.settings.home_margin,
        other: other_dated.as_ref().zip(case.other).map(|(dated, record)| Other {
            dated,
            operated_on: record.operation_date(),
            requested: other_requested,
        }),
    };
    let context = Context {
        dated: &dated,
        catalogue: case.catalogue,
        reasons: &reasons,
        sessions: &sessions,
        operated_on: case.record.operation_date(),
    };
    let requested = chosen.requested;
    Some(then(&context, &opened, &Extras { loosened, outside_the_proof, moved, go_backs, requested }))
}

/// The postoperative day of a date that is asked about.
///
/// # Errors
/// `before-surgery` and `date-too-far`.
pub(crate) fn day_of(on: Date, operated_on: Date, sink: &mut Sink) -> Option<PostoperativeDay> {
    let day = PostoperativeDay::of(on, operated_on);
    if day.is_none() {
        sink.push(if on < operated_on {
            Diagnostic::error("before-surgery", format!("{on} is before the operation on {operated_on}"))
                .help("ask for a day from the operation on")
        } else {
            Diagnostic::error("date-too-far", format!("{on} lies too far after the operation"))
        });
    }
    day
}

/// The other shoulder's plan, from its record alone.
struct OtherPlan<'c> {
    family: &'c protocol::Family,
    choices: protocol::Choices,
    facts: Facts,
}

impl<'c> OtherPlan<'c> {
    /// `Some(None)` where there is no other record; `None` with a diagnostic where it cannot be used.
    fn new(case: &Case<'c>, sink: &mut Sink) -> Option<Option<Self>> {
        let Some(record) = case.other else { return Some(None) };
        if record.side() == case.record.side() {
            sink.push(
                Diagnostic::error("same-side", format!("both records are of the {} shoulder", record.side()))
                    .at(record.operation.side.span)
                    .help("`--other` is the record of the other shoulder"),
            );
            return None;
        }
        let (own_id, other_id) = (case.record.patient_id(), record.patient_id());
        let births = (case.record.patient.birth_date.value, record.patient.birth_date.value);
        if own_id.zip(other_id).is_some_and(|(own, other)| own != other) {
            sink.push(
                Diagnostic::warning("two-labels", "the two records carry different labels of the patient")
                    .at(record.patient.birth_date.span)
                    .help("make sure that both are of one person"),
            );
        }
        if births.0 != births.1 {
            sink.push(
                Diagnostic::error("two-persons", "the two records are not of one person")
                    .at(record.patient.birth_date.span)
                    .fact("the date of birth differs")
                    .help("`--other` is the record of the other shoulder of the same person"),
            );
            return None;
        }
        let facts = facts(record);
        let Some(family) = case.library.family(&facts) else {
            sink.push(Diagnostic::error("no-protocol-covers", "no shipped protocol covers the other operation"));
            return None;
        };
        let errors = sink.errors();
        refuse(family, record, &facts, sink);
        if record.operation_date() <= case.record.operation_date() && operative::facts(case.record).other_arm_helps() {
            sink.push(
                Diagnostic::warning(
                    "other-arm-called-sound",
                    "the record calls the other shoulder sound, and its own record says it was operated on",
                )
                .at(record.operation.date.span)
                .help("write other_arm.shoulder = \"operated\"; until then the stricter of the two is taken"),
            );
        }
        let choices = match case.other_settings {
            Some(settings) => choose::options(family, settings, sink),
            None => protocol::Choices::of(family),
        };
        (sink.errors() == errors).then_some(Some(Self { family, choices, facts }))
    }
}

fn arc_days(facts: &Facts) -> Vec<u16> {
    facts.safe_arcs.iter().filter_map(|arc| arc.until).map(|day| day.count()).collect()
}

/// What no protocol covers is refused, with the place that says so.
fn refuse(family: &protocol::Family, record: &Record, facts: &Facts, sink: &mut Sink) {
    for refusal in &family.rules.refusals {
        if !refusal.when.holds(facts) {
            continue;
        }
        let mut fault = Diagnostic::error("no-protocol-covers", refusal.title.clone())
            .help("this patient's plan is the surgeon's own; nothing is printed");
        for condition in refusal.when.holding(facts) {
            for basis in record.basis(condition.dimension) {
                fault = fault.fact(format!("{}: {}", basis.path, basis.shown));
                fault = fault.at_maybe(basis.span);
            }
        }
        sink.push(fault);
    }
}

/// Go-backs with their gates; one that would go forward is a fault.
fn backs_of(settings: &Settings, compiled: &Compiled<'_>, plan: &plan::Plan, sink: &mut Sink) -> Vec<(usize, BackTo)> {
    let mut backs = Vec::new();
    for back in &settings.backs {
        let place = compiled.stages.iter().position(|stage| *stage == back.stage.value);
        let gate = place.and_then(|place| plan.gates[place]);
        let (Some(place), Some(gate)) = (place, gate) else {
            let mut fault =
                Diagnostic::error("unknown-stage", format!("`{}` is not a stage of this plan", back.stage.value))
                    .at(back.stage.span)
                    .fact(format!("stages: {}", compiled.stages.join(", ")));
            if let Some(near) = nearest(&back.stage.value, compiled.stages.iter().copied()) {
                fault = fault.help(format!("did you mean \"{near}\"?"));
            }
            sink.push(fault);
            continue;
        };
        let before: Vec<BackTo> = backs.iter().map(|(_, back)| *back).collect();
        let moves = Moves::new(&settings.holds, &before, back.day.saturating_add(1));
        if moves.lives(body::Joint::WholeArm, back.day) < gate {
            sink.push(
                Diagnostic::error(
                    "back-goes-forward",
                    format!("on day {} the plan has not reached `{}` yet", back.day, back.stage.value),
                )
                .at(back.stage.span)
                .help("a go-back names a stage that was already reached"),
            );
            continue;
        }
        backs.push((place, BackTo { day: back.day, gate }));
    }
    backs
}

/// Go-backs on days of the plan, in their order.
fn go_backs(backs: &[(usize, u16)], compiled: &Compiled<'_>, horizon: u16, operated_on: Date) -> Vec<GoBack> {
    let mut backs: Vec<GoBack> = backs
        .iter()
        .filter(|(_, day)| *day < horizon)
        .map(|(stage, day)| {
            let day = PostoperativeDay::new(*day);
            GoBack { stage: compiled.stages[*stage].to_owned(), day, date: day.date(operated_on) }
        })
        .collect();
    backs.sort_by_key(|back| back.day);
    backs
}

/// A hold or a go-back after the last day of the dated plan does nothing, and says so.
fn beyond_the_plan(settings: &Settings, horizon: u16, sink: &mut Sink) {
    let holds = settings.holds.iter().map(|hold| ("hold", hold.from_day));
    let backs = settings.backs.iter().map(|back| ("go-back", back.day));
    for (what, day) in holds.chain(backs).filter(|(_, day)| *day >= horizon) {
        sink.push(
            Diagnostic::warning(
                "beyond-the-plan",
                format!("the {what} on day {day} lies after the last day of the plan"),
            )
            .fact(format!("the dated plan ends before day {horizon}")),
        );
    }
}

fn moved(settings: &Settings) -> Vec<String> {
    let holds = settings.holds.iter().map(|hold| {
        let what = hold.joint.map_or_else(|| "the whole arm".to_owned(), |joint| format!("the {joint}"));
        format!("hold from day {} for {} days, {what}: {}", hold.from_day, hold.days, hold.reason)
    });
    let backs =
        settings.backs.iter().map(|back| format!("back to {} on day {}: {}", back.stage.value, back.day, back.reason));
    holds.chain(backs).collect()
}

fn compose(case: &Case<'_>, context: &Context<'_>, opened: &Opened, extras: &Extras, sink: &mut Sink) -> Prescription {
    let dated = context.dated;
    let operated_on = context.operated_on;
    let adopted: Vec<String> = case.settings.adopted_goals.iter().map(|goal| goal.value.clone()).collect();
    check_adopted(case, dated, sink);
    let goals = goals::all(dated, &adopted);
    let sessions = context.sessions.all();
    let asked = questions::all(dated.compiled, case.record, &dated.facts, extras.requested);
    let mut all_questions = questions::blocking(
        context.reasons,
        dated.loosened.iter().any(|l| l.key.joint == body::Joint::Shoulder && l.key.mode == body::Mode::Passive),
    );
    all_questions.extend(questions::safe_arc_too_still(dated, case.record));
    all_questions.extend(asked.questions);
    let spans = spans(context, &goals, &sessions);
    let protocol = dated.compiled.protocol(dated.plan.protocol);
    let today = case.on.and_then(|on| today::compose(context, opened, on, &sessions, &goals));
    Prescription {
        patient: case.record.patient_id().map(str::to_owned),
        operated_on,
        side: case.record.side(),
        protocol: ProtocolUsed {
            id: protocol.id.clone(),
            title: protocol.title.clone(),
            edition: protocol.edition.clone(),
            capped_by: (0_u8..)
                .zip(&dated.compiled.family.protocols)
                .filter(|(place, _)| dated.plan.caps & (1 << place) != 0)
                .map(|(_, capping)| capping.id.clone())
                .collect(),
            why: lines::why(context, extras, case),
        },
        stages: lines::stage_lines(context, opened, case.on),
        first_allowed: lines::first_allowed(context),
        indices: lines::index(case.record),
        questions: all_questions,
        completions: asked.completions,
        visits: visits::all(dated, operated_on, &case.settings.clinic, sink),
        returns: returns::all(context),
        cautions: cautions::all(
            context,
            (case.record, case.settings),
            &spans,
            opened,
            case.on.and_then(|on| PostoperativeDay::of(on, operated_on)).map(PostoperativeDay::count),
            case.other_settings.is_some(),
            sink,
        ),
        loosened: extras.loosened.clone(),
        outside_the_proof: extras.outside_the_proof.clone(),
        moved: extras.moved.clone(),
        go_backs: extras.go_backs.clone(),
        today,
        spans,
    }
}

/// Runs of days within which nothing changes.
fn spans(
    context: &Context<'_>,
    goals: &[goals::DatedGoal],
    sessions: &[(u16, crate::session::Session)],
) -> Vec<SpanOfDays> {
    let dated = context.dated;
    let mut days = dated.change_days();
    days.extend(sessions.iter().map(|(day, _)| *day));
    days.extend(dated.stages().iter().map(|(_, gate)| *gate));
    days.extend(goals.iter().flat_map(|goal| [goal.shown_from, goal.line.due.count()]));
    days.retain(|&day| day < dated.horizon());
    days.sort_unstable();
    days.dedup();
    let mut spans: Vec<SpanOfDays> = Vec::new();
    for (place, &day) in days.iter().enumerate() {
        let until = days.get(place + 1).copied().unwrap_or(dated.horizon());
        let session = sessions.iter().rev().find(|(from, _)| *from <= day).map(|(_, session)| session.clone());
        let session = session.unwrap_or_default();
        let shown: Vec<GoalLine> =
            goals.iter().filter(|goal| goal.is_shown_on(day)).map(|goal| goal.line.clone()).collect();
        let span = SpanOfDays {
            from_day: PostoperativeDay::new(day),
            until_day: PostoperativeDay::new(until),
            from: PostoperativeDay::new(day).date(context.operated_on),
            until: PostoperativeDay::new(until).date(context.operated_on),
            stage: dated.compiled.stages[dated.stage_on(day)].to_owned(),
            sling: rows::sling(dated, context.reasons, day),
            limits: rows::of_day(dated, |lane| dated.cell(lane, day), |lane| context.reasons.of_limit(lane, day), day),
            goals: shown,
            exercises: session.exercises,
            dropped: session.dropped,
            replaced: session.replaced,
        };
        match spans.last_mut() {
            Some(last) if same(last, &span) => {
                (last.until_day, last.until) = (span.until_day, span.until);
            }
            _ => spans.push(span),
        }
    }
    spans
}

fn same(a: &SpanOfDays, b: &SpanOfDays) -> bool {
    a.stage == b.stage
        && a.sling == b.sling
        && a.limits == b.limits
        && a.goals == b.goals
        && a.exercises == b.exercises
        && a.dropped == b.dropped
        && a.replaced == b.replaced
}

fn check_adopted(case: &Case<'_>, dated: &Dated<'_>, sink: &mut Sink) {
    let protocol = dated.compiled.protocol(dated.plan.protocol);
    for goal in &case.settings.adopted_goals {
        if !protocol.goals.iter().any(|known| known.id == goal.value) {
            let mut fault =
                Diagnostic::error("unknown-goal", format!("`{}` is not a goal of this protocol", goal.value))
                    .at(goal.span);
            if let Some(near) = nearest(&goal.value, protocol.goals.iter().map(|goal| goal.id.as_str())) {
                fault = fault.help(format!("did you mean \"{near}\"?"));
            }
            sink.push(fault);
        }
    }
}
