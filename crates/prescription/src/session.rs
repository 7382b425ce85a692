//! The exercises of a day: what the protocol lists, held against the limits.

use body::{Joint, Key, Mode, Movement, Position};
use diagnostic::Spanned;
use evidence::ids;
use exercise::{ActivityClass, Amount, Catalogue, Demand, Entry, Kind, MuscleActivity, OtherArm, Supervision};
use jiff::civil::Date;
use plan::{Cell, Dropped, ExerciseLine, LaneId, Reason, Replacement};
use protocol::file::ExerciseUse;
use quantity::{Degrees, PostoperativeDay};

use crate::dated::Dated;
use crate::fits::{Fit, Margin, first_misfit, fit, lies_on_the_back};
use crate::reasons::Reasons;
use crate::rows::only_lying;

/// The exercises of one day.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Session {
    pub exercises: Vec<ExerciseLine>,
    pub dropped: Vec<Dropped>,
    pub replaced: Vec<Replacement>,
}

/// The plan of the other shoulder, where there is one.
pub(crate) struct Other<'c> {
    pub dated: &'c Dated<'c>,
    pub operated_on: Date,
    pub requested: protocol::Requested,
}

/// Composes sessions.
pub(crate) struct Sessions<'c> {
    pub dated: &'c Dated<'c>,
    pub catalogue: &'c Catalogue,
    pub reasons: &'c Reasons<'c>,
    pub operated_on: Date,
    pub home_margin: Option<Spanned<Degrees>>,
    pub other: Option<Other<'c>>,
}

/// A day of this plan, and the day the patient lives.
#[derive(Debug, Clone, Copy)]
struct Day {
    plan: u16,
    lived: u16,
}

/// The highest class of muscle activity that a day allows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Ceiling {
    pub class: ActivityClass,
    /// Before the first day of active motion an exercise needs a measured value.
    pub early: bool,
}

impl Sessions<'_> {
    /// The sessions of all days, one for each run of days on which nothing changes.
    ///
    /// # Method
    /// Day by day in order, because the ceiling of a day depends on what has been
    /// open for some days before it.
    pub(crate) fn all(&self) -> Vec<(u16, Session)> {
        let mut days = self.dated.change_days();
        if let Some(other) = &self.other {
            let shift = days_between(self.operated_on, other.operated_on);
            let of_other = other.dated.change_days().into_iter().map(|day| i64::from(day) + shift);
            days.extend(of_other.filter_map(|day| u16::try_from(day).ok()).filter(|&day| day < self.dated.horizon()));
        }
        days.sort_unstable();
        days.dedup();
        let settling = ids::CLASS_SETTLING.days().count();
        let mut reached: Vec<(u16, ActivityClass)> = Vec::new();
        let mut sessions = Vec::new();
        let mut at = 0;
        while let Some(&day) = days.get(at) {
            at += 1;
            let settled = reached.iter().filter(|(since, _)| since + settling <= day).map(|(_, class)| *class).max();
            // Back before active motion: what had been open before no longer counts.
            let active = self.active_on(day);
            if !active {
                reached.clear();
            }
            let ceiling = ceiling(active, settled.filter(|_| active));
            let session = self.on(day, day, ceiling, |lane| self.dated.cell(lane, day));
            if let Some(class) = self.highest(&session)
                && reached.iter().all(|(_, known)| *known < class)
            {
                reached.push((day, class));
                let settles = day + settling;
                if settles < self.dated.horizon()
                    && let Err(place) = days.binary_search(&settles)
                {
                    days.insert(place, settles);
                }
            }
            sessions.push((day, session));
        }
        sessions
    }

    /// The session of one day under given values, such as the frozen ones.
    ///
    /// `lived` is the calendar day the other arm is asked about; it differs from `day` where an unopened gate
    /// holds this plan at an earlier day.
    pub(crate) fn on(&self, day: u16, lived: u16, ceiling: Ceiling, value: impl Fn(LaneId) -> Cell) -> Session {
        let day = Day { plan: day, lived };
        let mut session = Session::default();
        let protocol = self.dated.compiled.protocol(self.dated.plan.protocol);
        let listed: Vec<&ExerciseUse> = protocol.exercises.iter().filter(|used| self.in_time(used, day.plan)).collect();
        let mut wanting: Vec<(&Entry, &ExerciseUse)> = Vec::new();
        for used in &listed {
            let Some(entry) = self.catalogue.get(&used.id) else { continue };
            if let Some(instead_of) = &used.only_without
                && session.exercises.iter().any(|line| line.id == *instead_of)
            {
                continue;
            }
            match self.line(entry, Some(used), day, ceiling, &value) {
                Ok(line) => session.exercises.push(line),
                Err(_) if self.not_yet(entry, day.plan) => {}
                Err(dropped) => {
                    session.dropped.push(dropped);
                    wanting.push((entry, used));
                }
            }
        }
        // An alternative that is not needed is not "dropped".
        session.dropped.retain(|dropped| {
            let used = listed.iter().find(|used| used.id == dropped.id);
            used.and_then(|used| used.only_without.as_ref())
                .is_none_or(|other| !session.exercises.iter().any(|line| line.id == *other))
        });
        for (entry, _) in wanting {
            self.replace(entry, &listed, day, ceiling, &value, &mut session);
        }
        session
    }

    /// Takes an exercise of the same purpose from the catalogue, where none is left.
    fn replace(
        &self,
        entry: &Entry,
        listed: &[&ExerciseUse],
        day: Day,
        ceiling: Ceiling,
        value: &impl Fn(LaneId) -> Cell,
        session: &mut Session,
    ) {
        let Some((purpose, mode)) = entry.purpose.zip(entry.target().map(|target| target.key.mode)) else { return };
        let covered = session
            .exercises
            .iter()
            .any(|line| self.catalogue.get(&line.id).is_some_and(|kept| kept.purpose == Some(purpose)));
        if covered {
            return;
        }
        let candidates = self.catalogue.of(Kind::Exercise).filter(|candidate| {
            candidate.purpose == Some(purpose)
                && candidate.supervision == Supervision::Home
                && candidate.target().zip(entry.target()).is_some_and(|(target, dropped)| {
                    // Below the shoulder another movement is no substitute.
                    let same = target.key.joint == dropped.key.joint && target.key.movement == dropped.key.movement;
                    target.key.mode <= mode && (same || operative::Facts::protects(dropped.key.joint))
                })
                && !listed.iter().any(|used| used.id == candidate.id)
        });
        for candidate in candidates {
            if let Ok(mut line) = self.line(candidate, None, day, ceiling, value) {
                line.reasons.insert(
                    0,
                    Reason {
                        rule: "replacement".into(),
                        text: format!("stands in for {}, which these days do not allow", entry.id),
                        evidence: Vec::new(),
                        record: Vec::new(),
                    },
                );
                session.exercises.push(line);
                session.replaced.push(Replacement { dropped: entry.id.clone(), taken: candidate.id.clone() });
                return;
            }
        }
    }

    /// Whether the protocol itself, with nothing added, does not allow the exercise yet: then nothing was left out.
    fn not_yet(&self, entry: &Entry, day: u16) -> bool {
        let grid = &self.dated.plan.grid;
        entry.demands.iter().any(|demand| {
            grid.governing(demand.key).is_some_and(|lane| {
                let column = self.dated.column(demand.key.joint, day);
                !self.dated.compiled.own_value(self.dated.plan.protocol, lane, column).is_open()
            })
        })
    }

    fn in_time(&self, used: &ExerciseUse, day: u16) -> bool {
        let gate = |id: &str| {
            self.dated
                .compiled
                .stages
                .iter()
                .position(|stage| *stage == id)
                .and_then(|stage| self.dated.gate_on(stage, day))
        };
        gate(&used.stage).is_some_and(|from| from <= day)
            && used.until_stage.as_deref().and_then(gate).is_none_or(|until| day < until)
    }

    /// One exercise under the limits of a day, or why it is left out.
    fn line(
        &self,
        entry: &Entry,
        used: Option<&ExerciseUse>,
        day: Day,
        ceiling: Ceiling,
        value: &impl Fn(LaneId) -> Cell,
    ) -> Result<ExerciseLine, Dropped> {
        let of_key = |key: Key| self.dated.plan.grid.governing(key).map_or(Cell::NO, value);
        let supervised = entry.supervision == Supervision::Therapist;
        let margin = if supervised {
            Margin::NONE
        } else {
            Margin(self.home_margin.map_or(ids::HOME_MARGIN.degrees(), |margin| margin.value))
        };
        let drop =
            |because: &str, reasons: Vec<Reason>| Dropped { id: entry.id.clone(), because: because.into(), reasons };
        if let Some((demand, misfit)) = first_misfit(&entry.demands, margin, of_key) {
            let reasons = self.dated.plan.grid.governing(demand.key).map(|lane| self.reasons.of_limit(lane, day.plan));
            return Err(drop(&why(demand, misfit), reasons.unwrap_or_default()));
        }
        if let Some(demand) = entry.demands.iter().find(|demand| {
            demand.key.joint == Joint::Shoulder
                && only_lying(self.dated, demand.key.mode, day.plan)
                && !lies_on_the_back(entry.posture)
        }) {
            return Err(drop(&format!("{} motion only lying on the back on these days", demand.key.mode), Vec::new()));
        }
        if needs_neutral(entry) && of_key(OUTWARD) < NEUTRAL && of_key(OUTWARD).is_open() {
            return Err(drop("the arm may not be turned out as far as this exercise holds it", Vec::new()));
        }
        if let Err(because) = self.under(ceiling, entry, used) {
            return Err(drop(&because, vec![ceiling_reason()]));
        }
        let target = entry.target();
        let (goes_to, load) = match target.map(|target| fit(target, of_key(target.key), margin)) {
            Some(Fit::Yes { target, load }) => (target, load),
            _ => (None, None),
        };
        if let Err(because) = self.other_arm(entry, day.lived, goes_to) {
            return Err(drop(&because, Vec::new()));
        }
        let load = load.or_else(|| {
            entry.demands.iter().find_map(|demand| match fit(demand, of_key(demand.key), Margin::NONE) {
                Fit::Yes { load, .. } => load,
                _ => None,
            })
        });
        let Some((target, dose)) = target.zip(entry.dose.as_ref()) else {
            return Err(drop("the catalogue gives no dose for it", Vec::new()));
        };
        let protocol = &self.dated.compiled.protocol(self.dated.plan.protocol).id;
        let mut evidence: Vec<&'static evidence::Entry> = dose.evidence.clone();
        evidence.extend(used.into_iter().flat_map(|used| used.evidence.iter().copied()));
        let mut reasons = vec![Reason {
            rule: format!("{protocol}/exercise/{}", entry.id),
            text: "listed by the protocol for this stage, inside the limits of these days".into(),
            evidence,
            record: Vec::new(),
        }];
        if used.is_none() {
            reasons[0].rule = format!("catalogue/{}", entry.id);
            reasons[0].text = "from the catalogue, inside the limits of these days".into();
        }
        if let Some(lane) = self.dated.plan.grid.governing(target.key)
            && goes_to.is_some()
        {
            reasons.extend(self.reasons.of_limit(lane, day.plan));
        }
        let usual = dose.repetitions;
        let (repetitions, repetitions_to) = used.map_or((usual, None), |used| used.repetitions_over(usual));
        Ok(ExerciseLine {
            id: entry.id.clone(),
            key: target.key,
            sets: dose.sets,
            repetitions,
            repetitions_to,
            hold_s: dose.hold_s,
            times_per_day: dose.times_per_day,
            days_per_week: dose.days_per_week,
            target: goes_to,
            as_far_as_comfortable: matches!(target.amount, Amount::AngleToLimit { .. }) && goes_to.is_none(),
            load,
            supervised,
            reasons,
        })
    }

    /// Whether an exercise stays under the ceiling of muscle activity.
    ///
    /// # Source
    /// At most the low class until active motion opens, and only measured values
    /// or exercises the protocol names: policy, own choice where no study says so.
    /// Exercises that ask nothing of shoulder or blade are outside the ceiling.
    fn under(&self, ceiling: Ceiling, entry: &Entry, used: Option<&ExerciseUse>) -> Result<(), String> {
        if !entry.demands.iter().any(|demand| operative::Facts::protects(demand.key.joint)) {
            return Ok(());
        }
        let behind = self.dated.facts.protected().infraspinatus;
        let MuscleActivity { supraspinatus, infraspinatus, .. } = entry.muscle;
        for (muscle, measured) in
            [("supraspinatus", Some(supraspinatus)), ("infraspinatus", behind.then_some(infraspinatus))]
        {
            let Some(measured) = measured else { continue };
            match measured {
                // The study gives no value, only a bound above the ceiling: as good as not measured.
                Some(measured) if ceiling.early && excepted(used) && measured.evidence.value.is_none() => {}
                Some(measured) if measured.class > ceiling.class => {
                    return Err(format!(
                        "works the {muscle} in the {} class, above these days' ceiling",
                        measured.class.name()
                    ));
                }
                Some(measured) if ceiling.early && !measured.may_permit() && !excepted(used) => {
                    return Err(format!("its quietness for the {muscle} is known from memory only"));
                }
                None if ceiling.early && !excepted(used) => {
                    return Err(format!("nobody measured how hard it works the {muscle}"));
                }
                _ => {}
            }
        }
        Ok(())
    }

    /// Whether the other arm can do its part, where the operated one goes as far as `goes_to`.
    fn other_arm(&self, entry: &Entry, day: u16, goes_to: Option<Degrees>) -> Result<(), String> {
        let facts = &self.dated.facts;
        if entry.other_arm == OtherArm::None {
            return Ok(());
        }
        // Its own plan, from the day of its operation on.
        let date = PostoperativeDay::new(day).date(self.operated_on);
        let planned =
            self.other.as_ref().and_then(|other| Some((other.dated, PostoperativeDay::of(date, other.operated_on)?)));
        if let Some((other, their_day)) = planned {
            let value = |key: Key| other.value(key, their_day.count());
            let demands = of_other_arm(entry, goes_to);
            if let Some((demand, _)) = first_misfit(&demands, Margin::NONE, value) {
                return Err(format!("asks of the other arm what its own plan does not allow that day: {}", demand.key));
            }
            // An arm that is known to be operated is judged by its plan; any other word of the record stands beside it.
            if facts.other_arm_operated() {
                return Ok(());
            }
        }
        let leans_on_it = match entry.other_arm {
            OtherArm::None => return Ok(()),
            OtherArm::Steadies => facts.other_arm_operated() || (!facts.other_arm_helps() && leans_hard(entry)),
            OtherArm::Helps | OtherArm::Drives => !facts.other_arm_helps(),
        };
        if leans_on_it { Err("needs the other arm, which is not known to be sound".into()) } else { Ok(()) }
    }

    /// Whether any active motion of the shoulder is allowed on a day.
    pub(crate) fn active_on(&self, day: u16) -> bool {
        (0_u8..)
            .map(LaneId)
            .zip(&self.dated.plan.grid.keys)
            .filter(|(_, key)| key.joint == Joint::Shoulder && key.mode == Mode::Active)
            .any(|(lane, _)| self.dated.cell(lane, day).is_open())
    }

    /// The highest class measured among the exercises of a session.
    fn highest(&self, session: &Session) -> Option<ActivityClass> {
        let behind = self.dated.facts.protected().infraspinatus;
        let entries = session.exercises.iter().filter_map(|line| self.catalogue.get(&line.id));
        let classes = entries.flat_map(|entry| {
            [entry.muscle.supraspinatus, entry.muscle.infraspinatus.filter(|_| behind)].into_iter().flatten()
        });
        classes.map(|measured| measured.class).max()
    }
}

/// The ceiling of a day, from the class that has settled.
///
/// # Source
/// `class-step` and `class-settling`: own choice.
pub(crate) fn ceiling(active: bool, settled: Option<ActivityClass>) -> Ceiling {
    if !active {
        return Ceiling { class: ActivityClass::Low, early: true };
    }
    let mut class = settled.unwrap_or(ActivityClass::Low);
    for _ in 0..ids::CLASS_STEP.repetitions() {
        class = class.next();
    }
    Ceiling { class, early: false }
}

const OUTWARD: Key = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::Passive);

static NEUTRAL: Cell = Cell::up_to_zero_degrees();

/// What is asked of the other arm; "to the limit" is as far as the operated arm is taken.
fn of_other_arm(entry: &Entry, goes_to: Option<Degrees>) -> Vec<Demand> {
    let own = goes_to.or_else(|| entry.target().and_then(|target| target.amount.greatest_angle()));
    let asked = |amount: Amount| match amount {
        Amount::AngleToLimit { from, most } => Amount::Angle { from, to: own.map_or(most, |own| own.min(most)) },
        amount => amount,
    };
    entry.other_demands.iter().map(|demand| Demand { amount: asked(demand.amount), ..*demand }).collect()
}

/// Whether more than a light lean goes through the other arm.
fn leans_hard(entry: &Entry) -> bool {
    entry.other_demands.iter().any(|demand| {
        demand.key.movement == Movement::WeightThroughTheArm
            && !matches!(demand.amount, Amount::Load(load) if load <= ids::WEIGHT_THROUGH_ARM_LEAN.kilograms())
    })
}

/// An effort at the side holds the forearm straight ahead.
fn needs_neutral(entry: &Entry) -> bool {
    entry.demands.iter().any(|demand| {
        demand.key.joint == Joint::Shoulder
            && demand.key.position == Position::AtSide
            && matches!(demand.amount, Amount::Effort(_))
    })
}

fn excepted(used: Option<&ExerciseUse>) -> bool {
    used.is_some_and(|used| used.without_measurement)
}

fn ceiling_reason() -> Reason {
    Reason {
        rule: "exercise-ceiling".into(),
        text: "no exercise above the class of muscle activity that these days allow".into(),
        evidence: vec![ids::EMG_CLASS_LOW_TOP, ids::CLASS_STEP, ids::CLASS_SETTLING],
        record: Vec::new(),
    }
}

fn why(demand: &Demand, misfit: Fit) -> String {
    let Key { movement, mode, .. } = demand.key;
    match misfit {
        Fit::TooFar => format!("needs more {mode} {movement} than these days allow"),
        Fit::TooLittleArc => {
            format!("less than {} degrees of {movement} would be left", ids::LEAST_USEFUL_ARC.degrees())
        }
        _ => format!("{mode} {movement} is not allowed on these days"),
    }
}

/// Days from one date to another.
pub(crate) fn days_between(from: Date, to: Date) -> i64 {
    from.until((jiff::Unit::Day, to)).map_or(0, |span| i64::from(span.get_days()))
}
