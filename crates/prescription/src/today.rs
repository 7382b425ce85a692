//! One day, with what the surgeon has opened: the effective limits.

use body::Joint;
use diagnostic::{Diagnostic, Sink};
use document::nearest;
use jiff::civil::Date;
use plan::{Cell, LaneId, NotBefore, Today, TodayBasis, Wear};
use quantity::PostoperativeDay;

use crate::dated::Dated;
use crate::goals::DatedGoal;
use crate::issue::Context;
use crate::moves::Moves;
use crate::opened::{Opening, Openings};
use crate::rows;
use crate::session::{Ceiling, Session, ceiling};

/// What was opened, sorted out against the stages of the plan.
#[derive(Debug, Clone)]
pub(crate) struct Opened {
    stages: Vec<StageOpenings>,
    moves: Moves,
}

#[derive(Debug, Clone)]
struct StageOpenings {
    place: usize,
    /// The gate on a day of the composed plan.
    plan_gate: u16,
    /// The days it was opened on.
    opened_on: Vec<u16>,
    /// The days a go-back closed it again.
    closed_on: Vec<u16>,
}

impl StageOpenings {
    /// Whether it was opened by a day, and not closed again since.
    fn is_open_by(&self, day: u16) -> bool {
        self.is_open_on(day, day)
    }

    /// Whether what was signed by one day opens it on another: an opening counts only up to the next go-back.
    fn is_open_on(&self, day: u16, signed_by: u16) -> bool {
        let closed = self.closed_by(day);
        self.opened_on.iter().any(|&opened| opened <= signed_by.min(day) && closed.is_none_or(|closed| opened > closed))
    }

    /// The last day up to a day on which a go-back closed it.
    fn closed_by(&self, day: u16) -> Option<u16> {
        self.closed_on.iter().copied().filter(|&closed| closed <= day).max()
    }
}

impl Opened {
    /// Sorts openings out; what cannot be is a diagnostic.
    pub(crate) fn new(
        dated: &Dated<'_>,
        openings: &Openings,
        backs: &[(usize, u16)],
        operated_on: Date,
        sink: &mut Sink,
    ) -> Self {
        let places: Vec<usize> = dated.stages().into_iter().map(|(place, _)| place).collect();
        let names: Vec<&str> = places.iter().map(|&place| dated.compiled.stages[place]).collect();
        for opening in &openings.0 {
            check(opening, &names, operated_on, sink);
        }
        let mut stages: Vec<StageOpenings> = Vec::new();
        for (order, (&place, name)) in places.iter().zip(&names).enumerate() {
            let of_stage = || openings.0.iter().filter(|opening| opening.stage.value == *name);
            let opened_on: Vec<u16> = of_stage()
                .filter_map(|opening| PostoperativeDay::of(opening.on.value, operated_on))
                .map(PostoperativeDay::count)
                .collect();
            // Signed while the stage before it was not open: nobody can have looked at its criteria.
            let before = stages.last().filter(|_| order > 1);
            let early = of_stage().find_map(|opening| {
                let day = PostoperativeDay::of(opening.on.value, operated_on)?.count();
                before.filter(|before| !before.is_open_by(day)).map(|before| (opening, before.closed_by(day)))
            });
            if let Some((opening, closed)) = early {
                sink.push(out_of_order(opening, names[order - 1], closed, operated_on));
            }
            let opened_on = opened_on.into_iter().filter(|&day| before.is_none_or(|before| before.is_open_by(day)));
            let opened_on: Vec<u16> = opened_on.collect();
            let closed_on = backs
                .iter()
                .filter(|(stage, _)| {
                    places.iter().position(|place| place == stage).is_some_and(|back_to| back_to < order)
                })
                .map(|(_, day)| *day)
                .collect();
            stages.push(StageOpenings { place, plan_gate: dated.plan.gates[place].unwrap_or(0), opened_on, closed_on });
        }
        Self { stages, moves: dated.moves.clone() }
    }

    /// Each stage on a day: its place, its gate, and whether it is open.
    ///
    /// # Method
    /// The first stage is open. A stage opened before its gate takes effect at
    /// the gate. A stage is not open while the one before it is not. A go-back
    /// closes every stage after its own; only an opening after that day counts
    /// again.
    fn on(&self, day: u16) -> Vec<(usize, u16, bool)> {
        let mut before = true;
        self.stages
            .iter()
            .enumerate()
            .map(|(order, stage)| {
                let gate = self.moves.reached_by(stage.plan_gate, day);
                let opened = order == 0 || stage.is_open_by(day);
                before = before && opened && gate <= day;
                (stage.place, gate, before)
            })
            .collect()
    }

    /// Whether a stage was opened by a day for the gate it has for good: no go-back, past or ahead, has closed it since.
    pub(crate) fn is_open_for_good(&self, place: usize, day: u16) -> bool {
        let Some(order) = self.stages.iter().position(|stage| stage.place == place) else { return false };
        order == 0 || self.stages[order].is_open_on(u16::MAX, day)
    }

    /// The go-back ahead of a day that closes a stage again which is opened on it.
    pub(crate) fn closes_again(&self, place: usize, day: u16) -> Option<u16> {
        let stage = self.stages.iter().find(|stage| stage.place == place)?;
        let next = stage.closed_on.iter().copied().filter(|&closed| closed > day).min();
        next.filter(|_| stage.is_open_by(day))
    }

    /// The stage in force on a day: the last one that is open.
    pub(crate) fn stage_on(&self, day: u16) -> usize {
        self.on(day).into_iter().take_while(|(.., open)| *open).last().map_or(0, |(place, ..)| place)
    }

    /// The stage that comes next after a day, with its gate: the one that waits, else the first that the dated plan
    /// reaches and that is not open on that day, or has to be opened anew by then.
    pub(crate) fn next_on(&self, day: u16) -> Option<(usize, u16)> {
        self.waiting_on(day).or_else(|| {
            let open: Vec<bool> = self.on(day).into_iter().map(|(.., open)| open).collect();
            (day..self.moves.horizon()).skip(1).find_map(|ahead| {
                let is_new = |(order, stage): &(usize, &StageOpenings)| {
                    let reached = self.moves.lives(Joint::WholeArm, ahead) >= stage.plan_gate;
                    *order > 0 && reached && (!open[*order] || !stage.is_open_on(ahead, day))
                };
                self.stages.iter().enumerate().find(is_new).map(|(_, stage)| (stage.place, ahead))
            })
        })
    }

    /// The stage whose gate has passed unopened on a day, with its gate.
    fn waiting_on(&self, day: u16) -> Option<(usize, u16)> {
        let next = self.on(day).into_iter().find(|(.., open)| !open);
        next.filter(|(_, gate, _)| *gate <= day).map(|(place, gate, _)| (place, gate))
    }

    /// The last day before the unopened gate, where a gate holds the plan on this day.
    pub(crate) fn frozen_at(&self, day: u16) -> Option<u16> {
        self.waiting_on(day).map(|(_, gate)| gate.saturating_sub(1))
    }
}

/// An opening that nobody can have signed after looking at its criteria: the stage before it was not open.
fn out_of_order(opening: &Opening, before: &str, closed: Option<u16>, operated_on: Date) -> Diagnostic {
    let (name, on) = (&opening.stage.value, opening.on.value);
    match closed.map(|day| PostoperativeDay::new(day).date(operated_on)) {
        Some(closed) => Diagnostic::error(
            "stage-out-of-order",
            format!("`{name}` is opened on {on}, and the go-back of {closed} had closed `{before}` before it"),
        )
        .help(format!("open `{before}` again first, and then `{name}` with a day of its own")),
        None => Diagnostic::error("stage-out-of-order", format!("`{name}` is opened while the stage before it is not"))
            .help("open the stages in their order"),
    }
    .at(opening.stage.span)
}

/// An opening names a stage of the plan, and a day from the operation on.
fn check(opening: &Opening, names: &[&str], operated_on: Date, sink: &mut Sink) {
    if !names.contains(&opening.stage.value.as_str()) {
        let mut fault =
            Diagnostic::error("unknown-stage", format!("`{}` is not a stage of this plan", opening.stage.value))
                .at(opening.stage.span)
                .fact(format!("stages: {}", names.join(", ")));
        if let Some(near) = nearest(&opening.stage.value, names.iter().copied()) {
            fault = fault.help(format!("did you mean \"{near}\"?"));
        }
        sink.push(fault);
    }
    if opening.on.value < operated_on {
        sink.push(
            Diagnostic::error("opened-before-surgery", format!("{} is before the operation", opening.on.value))
                .at(opening.on.span),
        );
    }
}

/// The effective limits of a day.
pub(crate) struct Effective<'d> {
    pub dated: &'d Dated<'d>,
    pub day: u16,
    pub frozen_at: Option<u16>,
}

impl Effective<'_> {
    /// The effective value of a lane: the lowest since the last day before the unopened gate.
    pub(crate) fn cell(&self, lane: LaneId) -> Cell {
        match self.frozen_at {
            Some(since) => self.dated.lowest(lane, since, self.day),
            None => self.dated.cell(lane, self.day),
        }
    }

    /// The day whose limit is the effective one, for its reasons.
    pub(crate) fn day_of(&self, lane: LaneId) -> u16 {
        let Some(since) = self.frozen_at else { return self.day };
        let value = self.cell(lane);
        let days = self.dated.change_days();
        days.into_iter()
            .filter(|&day| since < day && day <= self.day)
            .chain([since])
            .find(|&day| self.dated.cell(lane, day) == value)
            .unwrap_or(since)
    }

    /// How much the sling is worn: the most since the last day before the unopened gate.
    pub(crate) fn wear(&self) -> Wear {
        let since = self.frozen_at.unwrap_or(self.day);
        let days = self.dated.change_days().into_iter().filter(|&day| since < day && day <= self.day);
        days.chain([since, self.day]).map(|day| self.dated.wear(day)).max().unwrap_or(Wear::Always)
    }

    /// The day whose sling is the effective one.
    pub(crate) fn day_of_sling(&self) -> u16 {
        let since = self.frozen_at.unwrap_or(self.day);
        let wear = self.wear();
        let days = self.dated.change_days().into_iter().filter(|&day| since < day && day <= self.day);
        std::iter::once(since).chain(days).find(|&day| self.dated.wear(day) == wear).unwrap_or(self.day)
    }
}

/// Composes the day that was asked for.
pub(crate) fn compose(
    context: &Context<'_>,
    opened: &Opened,
    date: Date,
    sessions: &[(u16, Session)],
    goals: &[DatedGoal],
) -> Option<Today> {
    let dated = context.dated;
    let day = PostoperativeDay::of(date, context.operated_on)?.count();
    let within = day.min(dated.horizon().saturating_sub(1));
    let frozen_at = opened.frozen_at(day).map(|since| since.min(within));
    let effective = Effective { dated, day: within, frozen_at };
    let limits = rows::of_day(
        dated,
        |lane| effective.cell(lane),
        |lane| context.reasons.of_limit(lane, effective.day_of(lane)),
        effective.frozen_at.unwrap_or(within),
    );
    let exercise_day = effective.frozen_at.unwrap_or(within);
    let planned = sessions.iter().rev().find(|(from, _)| *from <= exercise_day).map(|(_, session)| session);
    // The frozen day's own ceiling: what was in force then is allowed, nothing above it.
    let highest = ceiling(context.sessions.active_on(exercise_day), None);
    let frozen_ceiling = Ceiling { class: exercise::ActivityClass::VeryHigh, ..highest };
    let exercises = match effective.frozen_at {
        None => planned.map(|session| session.exercises.clone()).unwrap_or_default(),
        Some(_) => {
            let again = context.sessions.on(exercise_day, within, frozen_ceiling, |lane| effective.cell(lane));
            let kept = |id: &str| planned.is_some_and(|session| session.exercises.iter().any(|line| line.id == id));
            again.exercises.into_iter().filter(|line| kept(&line.id)).collect()
        }
    };
    let mut sling = rows::sling(dated, context.reasons, effective.day_of_sling());
    sling.wear = effective.wear();
    let stage = opened.stage_on(day);
    Some(Today {
        day: PostoperativeDay::new(day),
        date,
        stage: dated.compiled.stages[stage].to_owned(),
        basis: if effective.frozen_at.is_some() { TodayBasis::Frozen } else { TodayBasis::Opened },
        sling,
        limits,
        exercises,
        goals: goals.iter().filter(|goal| goal.is_shown_on(exercise_day)).map(|goal| goal.line.clone()).collect(),
        not_before: opened.next_on(day).map(|(place, gate)| NotBefore {
            stage: dated.compiled.stages[place].to_owned(),
            day: PostoperativeDay::new(gate),
            date: PostoperativeDay::new(gate).date(context.operated_on),
        }),
    })
}
