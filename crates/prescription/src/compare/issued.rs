//! The course of an issued prescription.

use plan::{Cell, ExerciseLine, GoalLine, Prescription};

use super::course::{Course, Exercise, Line, LineKind, Sling, Value, beside};
use super::words;

impl Course {
    /// The dated plan of a prescription, whatever is opened.
    pub fn of_prescription(of: &Prescription) -> Self {
        let horizon = of.spans.last().map_or(0, |span| span.until_day.count());
        let mut course = Self::empty(horizon, Cell::NO);
        for span in &of.spans {
            let (from, until) = (span.from_day.count(), span.until_day.count());
            for row in &span.limits {
                let value = Value { cell: row.allowed.into(), only_lying: row.only_lying };
                course.limits.entry(row.key).or_default().push(from, until, value);
            }
            let sling = &span.sling;
            let worn = Sling { wear: sling.wear, position: sling.position, except: sling.except.clone() };
            course.sling.push(from, until, worn);
            for line in &span.exercises {
                let line = ExerciseLine { reasons: Vec::new(), ..line.clone() };
                let runs = course.exercises.entry(line.id.clone()).or_default();
                runs.push(from, until, Exercise { line, remarks: Vec::new() });
            }
        }
        course.lines = stages(of).chain(goals(of)).chain(visits(of)).chain(returns(of)).collect();
        let protocol = words::protocol(&of.protocol.id, of.protocol.capped_by.iter().map(String::as_str));
        course.say(beside::PROTOCOL, protocol);
        for stage in of.stages.iter().filter(|stage| stage.opened || stage.closes_again.is_some()) {
            let closes = stage.closes_again.map(|(_, date)| date.to_string());
            course.say(beside::OPENED, words::opened(&stage.id, closes.as_deref()));
        }
        for index in &of.indices {
            course.say(beside::INDEX, words::index(index.id, index.low, index.high, index.of, &index.meaning));
        }
        for question in &of.questions {
            course.say(beside::QUESTION, words::question(&question.text, &question.path, question.changes.is_empty()));
        }
        let said = [(beside::LOOSENED, &of.loosened), (beside::MOVED, &of.moved), (beside::CAUTION, &of.cautions)];
        for (what, text) in said.into_iter().flat_map(|(what, texts)| texts.iter().map(move |text| (what, text))) {
            course.say(what, text.clone());
        }
        course.say(beside::HORIZON, format!("day {}", horizon.saturating_sub(1)));
        course
    }
}

fn stages(of: &Prescription) -> impl Iterator<Item = Line> {
    of.stages.iter().map(|stage| Line {
        kind: LineKind::Stage,
        id: stage.id.clone(),
        title: stage.title.clone(),
        day: Some(stage.from_day.count()),
        says: words::list(stage.criteria.iter().map(|criterion| criterion.text.as_str())),
    })
}

/// Each goal once: it says the same on every span it is shown on.
fn goals(of: &Prescription) -> impl Iterator<Item = Line> {
    let mut seen: Vec<&GoalLine> = Vec::new();
    for goal in of.spans.iter().flat_map(|span| &span.goals) {
        if !seen.iter().any(|known| known.id == goal.id && known.due == goal.due) {
            seen.push(goal);
        }
    }
    seen.into_iter().map(|goal| Line {
        kind: LineKind::Goal,
        id: goal.id.clone(),
        title: goal.key.to_string(),
        day: Some(goal.due.count()),
        says: words::goal(goal.from, goal.to, goal.or_other_shoulder, goal.held_by_limit),
    })
}

fn visits(of: &Prescription) -> impl Iterator<Item = Line> {
    of.visits.iter().map(|visit| Line {
        kind: LineKind::Visit,
        id: visit.purpose.clone(),
        title: visit.purpose.clone(),
        day: Some(visit.due_day.count()),
        says: words::clinic_day(visit.due_day.count(), visit.day.count()),
    })
}

fn returns(of: &Prescription) -> impl Iterator<Item = Line> {
    of.returns.iter().map(|line| Line {
        kind: LineKind::Return,
        id: line.activity.clone(),
        title: String::new(),
        day: line.day.map(|day| day.count()),
        says: words::return_to(line.opened_by_surgeon, line.note.as_deref()),
    })
}
