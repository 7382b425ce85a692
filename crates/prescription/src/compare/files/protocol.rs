//! A protocol by itself: what its file allows before any finding adds to it.

use body::{Joint, Key};
use exercise::{Catalogue, Supervision};
use plan::{Cell, ExerciseLine, SlingPosition, Wear};
use protocol::file::{ExerciseUse, ProtocolFile};
use protocol::{Choices, Compiled, Family};

use crate::compare::course::{Course, Exercise, Line, LineKind, Sling, Value, beside};
use crate::compare::words;

impl Course {
    /// A protocol of a family under the surgeon's choices.
    ///
    /// # Method
    /// Limits after the cascade of modes; exercises as the file lists them, from
    /// the gate of their stage on, whether or not a record's limits will hold them.
    pub(super) fn of_protocol(family: &Family, place: usize, choices: &Choices, catalogue: &Catalogue) -> Self {
        let compiled = Compiled::new(family, choices, &[]);
        let protocol = &family.protocols[place];
        let mut course = Self::empty(protocol.horizon.count(), Cell::NO);
        let lying = |key: Key, day: u16| key.joint == Joint::Shoulder && protocol.is_only_lying(key.mode, day);
        let grid = &compiled.grid;
        let alone = compiled.alone(place);
        for (key, cells) in grid.keys.iter().zip(alone.chunks(grid.columns())) {
            let runs = course.limits.entry(*key).or_default();
            for (days, &cell) in grid.days.windows(2).zip(cells) {
                runs.push(days[0], days[1], Value { cell, only_lying: cell.is_open() && lying(*key, days[0]) });
            }
        }
        for days in grid.days.windows(2) {
            course.sling.push(days[0], days[1], worn(protocol, choices, days[0]));
        }
        let mut uses: Vec<(u16, u16, &ExerciseUse)> =
            protocol.exercises.iter().filter_map(|used| given(protocol, used)).collect();
        uses.sort_by_key(|(from, ..)| *from);
        for (from, until, used) in uses {
            if let Some(exercise) = exercise(used, catalogue) {
                course.exercises.entry(used.id.clone()).or_default().push(from, until, exercise);
            }
        }
        course.lines = lines(protocol);
        for promise in &protocol.passive_by {
            let keys: Vec<String> = promise.keys.iter().map(Key::to_string).collect();
            course.say(beside::PASSIVE_BY, format!("by {}: {}", promise.day, keys.join(", ")));
        }
        for limit in protocol.limits.iter().filter(|limit| limit.opened_by_surgeon) {
            course.say(beside::SURGEON, limit.title.clone());
        }
        course.say(beside::HORIZON, format!("day {}", course.horizon.saturating_sub(1)));
        course
    }
}

/// The sling on a day; the last step of the file that covers it counts.
fn worn(protocol: &ProtocolFile, choices: &Choices, day: u16) -> Sling {
    let in_force = protocol.slings.iter().rev().find(|step| {
        step.choice.as_ref().is_none_or(|choice| choices.is(&choice.id, &choice.is))
            && step.from <= day
            && step.until.is_none_or(|until| day < until)
    });
    match in_force {
        Some(step) if step.wear != Wear::None => {
            Sling { wear: step.wear, position: step.position, except: step.except.clone() }
        }
        _ => Sling { wear: Wear::None, position: SlingPosition::Neutral, except: Vec::new() },
    }
}

/// The days on which an exercise is given.
fn given<'p>(protocol: &ProtocolFile, used: &'p ExerciseUse) -> Option<(u16, u16, &'p ExerciseUse)> {
    let gate = |id: &str| protocol.stages.iter().find(|stage| stage.id == id).map(|stage| stage.gate.count());
    let until = used.until_stage.as_deref().and_then(gate).unwrap_or(protocol.horizon.count());
    Some((gate(&used.stage)?, until, used))
}

fn exercise(used: &ExerciseUse, catalogue: &Catalogue) -> Option<Exercise> {
    let entry = catalogue.get(&used.id)?;
    let (target, dose) = entry.target().zip(entry.dose.as_ref())?;
    let (repetitions, repetitions_to) = used.repetitions_over(dose.repetitions);
    let mut remarks = Vec::new();
    remarks.extend(used.only_without.as_ref().map(|other| format!("only where {other} is not possible")));
    remarks.extend(used.without_measurement.then(|| "given without a measured value".to_owned()));
    let line = ExerciseLine {
        id: used.id.clone(),
        key: target.key,
        sets: dose.sets,
        repetitions,
        repetitions_to,
        hold_s: dose.hold_s,
        times_per_day: dose.times_per_day,
        days_per_week: dose.days_per_week,
        target: None,
        as_far_as_comfortable: false,
        load: None,
        supervised: entry.supervision == Supervision::Therapist,
        reasons: Vec::new(),
    };
    Some(Exercise { line, remarks })
}

fn lines(protocol: &ProtocolFile) -> Vec<Line> {
    let stages = protocol.stages.iter().map(|stage| {
        let criteria: Vec<String> = stage
            .criteria
            .iter()
            .map(|criterion| match criterion.measure {
                Some((key, least)) => format!("{} ({key} at least {least} degrees)", criterion.text),
                None => criterion.text.clone(),
            })
            .collect();
        Line {
            kind: LineKind::Stage,
            id: stage.id.clone(),
            title: stage.title.clone(),
            day: Some(stage.gate.count()),
            says: words::list(criteria.iter().map(String::as_str)),
        }
    });
    let goals = protocol.goals.iter().map(|goal| Line {
        kind: LineKind::Goal,
        id: goal.id.clone(),
        title: goal.key.to_string(),
        day: Some(goal.due.count()),
        says: format!(
            "{}{}",
            words::goal(goal.from, goal.to, goal.or_other_shoulder, false),
            goal.shown_from_stage.as_ref().map_or(String::new(), |stage| format!(", shown from stage {stage}"))
        ),
    });
    let visits = protocol.visits.iter().map(|visit| Line {
        kind: LineKind::Visit,
        id: visit.purpose.clone(),
        title: visit.purpose.clone(),
        day: Some(visit.due.count()),
        says: format!("no later than day {}", visit.latest.count()),
    });
    let returns = protocol.returns.iter().map(|line| Line {
        kind: LineKind::Return,
        id: line.activity.clone(),
        title: String::new(),
        day: Some(line.from.count()),
        says: words::return_to(line.opened_by_surgeon, line.note.as_deref()),
    });
    stages.chain(goals).chain(visits).chain(returns).collect()
}
