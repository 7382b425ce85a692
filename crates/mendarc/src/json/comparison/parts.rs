//! The lines of a comparison as data.

use ::prescription::compare::{
    BesideChange, ExerciseChange, FirstChange, LimitChange, Line, LineChange, LineKind, Scope, SlingChange, Which,
};
use ::prescription::{OpenQuestion, QuestionAnswer};
use plan::Allowed;

use super::{
    About, Answer, Asked, Beside, Change, Dose, Exercise, First, Limit, Point, Question, Said, Sling, Together, Worn,
};
use crate::json::Bounds;
use crate::shelf::Shelf;

pub(super) fn about(scope: &Scope) -> About {
    About {
        protocol: scope.protocol.clone(),
        rule: scope.rule.clone(),
        option: scope.option.as_ref().map(|(choice, option)| format!("{choice}: {option}")),
    }
}

fn which(which: Option<Which>) -> Option<&'static str> {
    which.map(|which| match which {
        Which::A => "a",
        Which::B => "b",
    })
}

pub(super) fn change(of: &LimitChange, about: &About) -> Change {
    let value = |value: ::prescription::compare::Value| limit(value.cell.allowed(of.key), value.only_lying);
    Change {
        key: of.key.to_string(),
        from_day: of.from_day,
        until_day: of.until_day,
        a: value(of.a),
        b: value(of.b),
        looser: which(of.looser),
        days_later: of.days_later,
        about: about.clone(),
    }
}

fn limit(allowed: Allowed, only_lying: bool) -> Limit {
    let Bounds { word, deg, kg, percent } = Bounds::of(allowed);
    Limit { allowed: word, max_deg: deg, max_load_kg: kg, max_effort_percent: percent, only_lying }
}

pub(super) fn sling(of: &SlingChange, about: &About) -> Sling {
    let worn = |sling: &Option<::prescription::compare::Sling>| {
        sling.as_ref().map(|sling| Worn {
            wear: sling.wear.name(),
            position: sling.position.name(),
            except: sling.except.clone(),
        })
    };
    Sling {
        from_day: of.from_day,
        until_day: of.until_day,
        a: worn(&of.a),
        b: worn(&of.b),
        looser: which(of.looser),
        about: about.clone(),
    }
}

pub(super) fn exercise(of: &ExerciseChange, about: &About, shelf: &Shelf) -> Exercise {
    let dose = |exercise: &Option<::prescription::compare::Exercise>| {
        exercise.as_ref().map(|exercise| {
            let line = &exercise.line;
            Dose {
                sets: line.sets,
                repetitions: line.repetitions,
                repetitions_to: line.repetitions_to,
                hold_s: line.hold_s,
                times_per_day: line.times_per_day,
                days_per_week: line.days_per_week,
                target_deg: line.target.map(|target| target.number()),
                as_far_as_comfortable: line.as_far_as_comfortable,
                load_kg: line.load.map(|load| load.number()),
                supervised: line.supervised,
                remarks: exercise.remarks.clone(),
            }
        })
    };
    Exercise {
        title: shelf.title(&of.id),
        id: of.id.clone(),
        from_day: of.from_day,
        until_day: of.until_day,
        a: dose(&of.a),
        b: dose(&of.b),
        about: about.clone(),
    }
}

pub(super) fn first(of: &FirstChange, about: &About) -> First {
    First {
        joint: of.key.joint.name(),
        movement: of.key.movement.name(),
        mode: of.key.mode.name(),
        a: of.a,
        b: of.b,
        about: about.clone(),
    }
}

pub(super) fn point(of: &LineChange, about: &About, shelf: &Shelf) -> Point {
    let said = |line: &Option<Line>| line.as_ref().map(|line| Said { day: line.day, says: line.says.clone() });
    Point { id: of.id.clone(), title: title(of, shelf), a: said(&of.a), b: said(&of.b), about: about.clone() }
}

/// The title of a line; an activity's stands in the catalogue.
pub fn title(of: &LineChange, shelf: &Shelf) -> String {
    match of.kind {
        LineKind::Return => shelf.title(&of.id),
        _ => of.a.as_ref().or(of.b.as_ref()).map(|line| line.title.clone()).unwrap_or_default(),
    }
}

pub(super) fn beside(of: &BesideChange, about: &About) -> Beside {
    Beside { what: of.what, only_in_a: of.a.clone(), only_in_b: of.b.clone(), about: about.clone() }
}

pub(super) fn question(of: &OpenQuestion, shelf: &Shelf) -> Question {
    let about = about(&Scope::default());
    let answer = |answer: &QuestionAnswer| Answer {
        answers: answer.words.clone(),
        together: answer.together.iter().map(|other| Together { fact: other.fact, answer: other.answer }).collect(),
        changes: answer.comparison.limits.iter().map(|of| change(of, &about)).collect(),
        sling: answer.comparison.sling.iter().map(|of| sling(of, &about)).collect(),
        first_allowed: answer.comparison.first_allowed.iter().map(|of| first(of, &about)).collect(),
        stages: answer.comparison.lines.iter().map(|of| point(of, &about, shelf)).collect(),
    };
    Question {
        asked: of.asked.iter().map(|(path, text)| Asked { path: path.clone(), text: text.clone() }).collect(),
        blocks_signing: of.blocks_signing,
        answers: of.answers.iter().map(answer).collect(),
    }
}
