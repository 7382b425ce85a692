//! What holds on days of the plan: limits, sling, exercises and goals.

use body::{Joint, Key, Position};
use exercise::Catalogue;
use plan::{Allowed, ExerciseLine, GoalLine, LimitRow, Prescription, Reason, SpanOfDays};

use crate::days::{self, Words};

/// The runs of days that an expectation is about, each with the first of its days that is asked for.
fn spans<'p>(of: &'p Prescription, words: &mut Words<'_>) -> Result<Vec<(u16, &'p SpanOfDays)>, String> {
    let horizon = of.spans.last().map_or(0, |span| span.until_day.count());
    let mut found: Vec<(u16, &SpanOfDays)> = Vec::new();
    for day in words.days(of.operated_on, horizon)? {
        let mut holding = of.spans.iter().filter(|span| span.from_day.count() <= day && day < span.until_day.count());
        match (holding.next(), holding.next()) {
            (Some(span), None) if found.last().is_some_and(|(_, last)| std::ptr::eq(*last, span)) => {}
            (Some(span), None) => found.push((day, span)),
            _ => return Err(format!("day {day} lies in no run of days, or in two")),
        }
    }
    Ok(found)
}

/// The row that governs a key: its own position where one is written, else any position; none means not allowed.
pub fn governing(rows: &[LimitRow], key: Key) -> Option<&LimitRow> {
    let row = |key: Key| rows.iter().find(|row| row.key == key);
    row(key).or_else(|| row(key.in_position(Position::Any)))
}

/// Whether rows give keys a value.
pub fn rows_say(rows: &[LimitRow], text: &str) -> Result<(), String> {
    let (text, lying) = match text.trim().strip_suffix(" lying") {
        Some(text) => (text, true),
        None => (text, false),
    };
    let (keys, value) = days::keys_and_value(text)?;
    for key in keys {
        let row = governing(rows, key);
        let is = row.map_or(Allowed::No, |row| row.allowed);
        if is != days::allowed(&value, key)? {
            return Err(format!("{key} is {}", days::shown(is)));
        }
        if row.is_some_and(|row| row.only_lying) != lying {
            return Err(format!("{key} is allowed {}", if lying { "not only lying" } else { "only lying" }));
        }
    }
    Ok(())
}

/// `limit DAYS KEY VALUE [lying]`
pub fn limit(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let text = words.rest();
    for (day, span) in spans {
        rows_say(&span.limits, text).map_err(|fault| format!("on day {day} {fault}"))?;
    }
    Ok(())
}

/// The reasons of a key on the days of a run; `sling` stands for a key, and each key answers for itself.
fn reasons_of<'s>(span: &'s SpanOfDays, key: &str) -> Result<Vec<(String, Vec<&'s Reason>)>, String> {
    if key == "sling" {
        return Ok(vec![(key.to_owned(), span.sling.reasons.iter().collect())]);
    }
    let of_key = |key: Key| {
        let row = governing(&span.limits, key);
        (key.to_string(), row.into_iter().flat_map(|row| &row.reasons).collect())
    };
    Ok(days::keys(key)?.into_iter().map(of_key).collect())
}

/// `reason DAYS KEY RULE [evidence ID] [record PATH [line N]]`; `sling` stands for a key.
pub fn reason(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let text = words.rest();
    let (text, place) = text.split_once(" record ").map_or((text, None), |(text, place)| (text, Some(place)));
    let (text, evidence) = text.split_once(" evidence ").map_or((text, None), |(text, id)| (text, Some(id)));
    let (key, rule) = text.rsplit_once(' ').ok_or("a key and a rule are needed")?;
    let fits = |reason: &&Reason| {
        reason.rule == rule
            && evidence.is_none_or(|id| reason.evidence.iter().any(|entry| entry.id == id))
            && place.is_none_or(|place| stands_at(reason, place))
    };
    for (day, span) in spans {
        for (key, reasons) in reasons_of(span, key)? {
            if !reasons.iter().any(fits) {
                let said: Vec<String> = reasons.iter().map(|reason| told(reason)).collect();
                return Err(format!("on day {day} {key}: {}", said.join("; ")));
            }
        }
    }
    Ok(())
}

/// `no-reason DAYS KEY RULE`
pub fn no_reason(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let (key, rule) = words.rest().rsplit_once(' ').ok_or("a key and a rule are needed")?;
    for (day, span) in spans {
        for (key, reasons) in reasons_of(span, key)? {
            if reasons.iter().any(|reason| reason.rule == rule) {
                return Err(format!("on day {day} it binds {key}"));
            }
        }
    }
    Ok(())
}

/// Whether a reason points at a place: `PATH`, or `PATH line N`.
pub fn stands_at(reason: &Reason, place: &str) -> bool {
    let (path, line) = match place.split_once(" line ") {
        Some((path, line)) => (path, line.parse::<usize>().ok()),
        None => (place, None),
    };
    reason.record.iter().any(|at| at.path == path && (line.is_none() || at.line == line))
}

/// A reason in a line.
pub fn told(reason: &Reason) -> String {
    let evidence: Vec<&str> = reason.evidence.iter().map(|entry| entry.id).collect();
    let places: Vec<String> =
        reason.record.iter().map(|at| format!("{} line {}", at.path, at.line.unwrap_or(0))).collect();
    format!("{} [{}] ({})", reason.rule, evidence.join(", "), places.join(", "))
}

/// `sling DAYS WEAR [POSITION]`
pub fn sling(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let (wear, position) = (words.word()?, words.rest());
    for (day, span) in spans {
        let is = (span.sling.wear.name(), span.sling.position.name());
        if is.0 != wear || (!position.is_empty() && is.1 != position) {
            return Err(format!("on day {day} it is {} {}", is.0, is.1));
        }
    }
    Ok(())
}

/// `sling-off DAYS WHAT, WHAT, …`: what the sling comes off for.
pub fn sling_off(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let wanted = words.rest();
    match spans.into_iter().find(|(_, span)| span.sling.except.join(", ") != wanted) {
        Some((day, span)) => Err(format!("on day {day} it comes off for {}", span.sling.except.join(", "))),
        None => Ok(()),
    }
}

/// Whether lines hold `ID [repetitions N [to M]] [target 15 deg] [load 2.27 kg] [comfortable] [supervised]`.
pub fn lines_hold(lines: &[ExerciseLine], mut words: Words<'_>) -> Result<(), String> {
    let id = words.word()?;
    let Some(line) = lines.iter().find(|line| line.id == id) else {
        let listed: Vec<&str> = lines.iter().map(|line| line.id.as_str()).collect();
        return Err(format!("the exercises are {}", listed.join(", ")));
    };
    let unless = |holds: bool, is: String| if holds { Ok(()) } else { Err(is) };
    while let Ok(word) = words.word() {
        match word {
            "repetitions" => {
                let low: u16 = words.number()?;
                let high: Option<u16> = if words.take("to") { Some(words.number()?) } else { None };
                let is = (line.repetitions, line.repetitions_to);
                unless(is == (low, high), format!("the repetitions are {is:?}"))?;
            }
            "target" => {
                let degrees: f64 = words.number()?;
                let fault = format!("the target is {:?}", line.target);
                unless(words.take("deg") && line.target.is_some_and(|target| target.number() == degrees), fault)?;
            }
            "load" => {
                let kilograms: f64 = words.number()?;
                let fault = format!("the load is {:?}", line.load);
                unless(words.take("kg") && line.load.is_some_and(|load| load.number() == kilograms), fault)?;
            }
            "comfortable" => unless(line.as_far_as_comfortable, "it has an end".into())?,
            "supervised" => unless(line.supervised, "nobody has to be there".into())?,
            other => return Err(format!("`{other}` is not understood")),
        }
    }
    Ok(())
}

/// `exercise DAYS ID [details]`
pub fn exercise(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    for (day, span) in spans(of, &mut words)? {
        lines_hold(&span.exercises, words).map_err(|fault| format!("on day {day} {fault}"))?;
    }
    Ok(())
}

/// `no-exercise DAYS ID`
pub fn no_exercise(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let id = words.word()?;
    words.end()?;
    match spans.into_iter().find(|(_, span)| span.exercises.iter().any(|line| line.id == id)) {
        Some((day, _)) => Err(format!("on day {day} it is there")),
        None => Ok(()),
    }
}

/// `only DAYS JOINT, JOINT: ID, ID, …`: the exercises of these joints are these and no others.
pub fn only(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let (joints, ids) = words.rest().split_once(':').ok_or("joints, a colon, and exercises are needed")?;
    let joints: Vec<Joint> = joints
        .split(',')
        .map(|joint| Joint::named(joint.trim()).ok_or_else(|| format!("`{joint}` is no joint")))
        .collect::<Result<_, _>>()?;
    let mut wanted: Vec<&str> = ids.split(',').map(str::trim).filter(|id| !id.is_empty() && *id != "none").collect();
    wanted.sort_unstable();
    for (day, span) in spans {
        let of_joints = span.exercises.iter().filter(|line| joints.contains(&line.key.joint));
        let mut listed: Vec<&str> = of_joints.map(|line| line.id.as_str()).collect();
        listed.sort_unstable();
        if listed != wanted {
            return Err(format!("on day {day} they are {}", listed.join(", ")));
        }
    }
    Ok(())
}

/// `quiet DAYS`: nothing measured above the low class of supraspinatus activity, and no active motion of the shoulder.
///
/// An exercise without a measured value does not count here; which of those a protocol may
/// name stands in the policy.
pub fn quiet(of: &Prescription, catalogue: &Catalogue, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    words.end()?;
    let top = evidence::ids::EMG_CLASS_LOW_TOP.percent().number();
    for (day, span) in spans {
        for line in &span.exercises {
            let entry = catalogue.get(&line.id).ok_or_else(|| format!("`{}` is not in the catalogue", line.id))?;
            let measured = entry.muscle.supraspinatus.map(|measured| measured.evidence);
            let least = measured.and_then(|evidence| evidence.value.or(evidence.low));
            if let Some(percent) = least.filter(|percent| *percent > top) {
                return Err(format!("on day {day} {} works the supraspinatus at {percent} %", line.id));
            }
            let moves = entry
                .demands
                .iter()
                .find(|demand| demand.key.joint == Joint::Shoulder && demand.key.mode >= body::Mode::Active);
            if let Some(demand) = moves {
                return Err(format!("on day {day} {} asks for {}", line.id, demand.key));
            }
        }
    }
    Ok(())
}

/// `dropped DAYS ID`
pub fn dropped(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let id = words.word()?;
    words.end()?;
    for (day, span) in spans {
        if !span.dropped.iter().any(|dropped| dropped.id == id && !dropped.because.is_empty()) {
            let listed: Vec<&str> = span.dropped.iter().map(|dropped| dropped.id.as_str()).collect();
            return Err(format!("on day {day} dropped are: {}", listed.join(", ")));
        }
    }
    Ok(())
}

/// `replaced DAYS ID by ID`
pub fn replaced(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let gone = words.word()?;
    if !words.take("by") {
        return Err("`by` is missing".into());
    }
    let taken = words.word()?;
    words.end()?;
    for (day, span) in spans {
        let both = span.replaced.iter().any(|pair| pair.dropped == gone && pair.taken == taken);
        if !both || !span.exercises.iter().any(|line| line.id == taken) {
            return Err(format!("on day {day} replaced are: {:?}", span.replaced));
        }
    }
    Ok(())
}

/// Whether goals hold `ID [from 60 to 90] [due DAY] [held]`.
fn goals_hold(goals: &[GoalLine], of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let id = words.word()?;
    let goal = goals.iter().find(|goal| goal.id == id).ok_or_else(|| {
        let listed: Vec<&str> = goals.iter().map(|goal| goal.id.as_str()).collect();
        format!("the goals are {}", listed.join(", "))
    })?;
    let mut held = false;
    while let Ok(word) = words.word() {
        match word {
            "from" => {
                let from: f64 = words.number()?;
                let to: Option<f64> = if words.take("to") { Some(words.number()?) } else { None };
                if (goal.from.number(), goal.to.map(|to| to.number())) != (from, to) {
                    return Err(format!("it goes from {} to {:?}", goal.from, goal.to));
                }
            }
            "due" => {
                let due = words.day(of.operated_on)?;
                if goal.due.count() != due {
                    return Err(format!("it is due on {}", goal.due));
                }
            }
            "held" => held = true,
            "or-other-shoulder" if goal.or_other_shoulder => {}
            "adopted" if goal.adopted => {}
            "not-adopted" if !goal.adopted => {}
            other => return Err(format!("`{other}` does not hold")),
        }
    }
    if goal.held_by_limit == held { Ok(()) } else { Err(format!("held by a limit: {}", goal.held_by_limit)) }
}

/// `goal DAYS ID [details]`
pub fn goal(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    for (day, span) in spans(of, &mut words)? {
        goals_hold(&span.goals, of, words).map_err(|fault| format!("on day {day} {fault}"))?;
    }
    Ok(())
}

/// `no-goal DAYS ID`
pub fn no_goal(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let spans = spans(of, &mut words)?;
    let id = words.word()?;
    words.end()?;
    match spans.into_iter().find(|(_, span)| span.goals.iter().any(|goal| goal.id == id)) {
        Some((day, _)) => Err(format!("on day {day} it is there")),
        None => Ok(()),
    }
}
