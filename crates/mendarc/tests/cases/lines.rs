//! What a prescription says once: protocol, index, gates, visits, returns, questions.

use plan::{Index, Prescription, Question};

use crate::dated::told;
use crate::days::{self, Words};

fn unless(holds: bool, is: impl FnOnce() -> String) -> Result<(), String> {
    if holds { Ok(()) } else { Err(is()) }
}

/// `protocol ID`
pub fn protocol(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let id = words.rest();
    unless(of.protocol.id == id, || format!("it is {}", of.protocol.id))
}

/// `capped by ID`, or `capped by nothing`
pub fn capped(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    unless(words.take("by"), || "`by` is missing".into())?;
    let wanted = words.rest();
    let is = if of.protocol.capped_by.is_empty() { "nothing".into() } else { of.protocol.capped_by.join(", ") };
    unless(is == wanted, || format!("it is capped by {is}"))
}

/// `why RULE [record PATH [line N]]`: a reason of the selection, or of what caps it.
pub fn why(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let text = words.rest();
    let (rule, place) = text.split_once(" record ").map_or((text, None), |(rule, place)| (rule, Some(place)));
    let found = of
        .protocol
        .why
        .iter()
        .any(|reason| reason.rule == rule && place.is_none_or(|place| crate::dated::stands_at(reason, place)));
    unless(found, || of.protocol.why.iter().map(told).collect::<Vec<_>>().join("; "))
}

/// `index 15`, `index 2 to 9 missing PATH, PATH`, `index none`
pub fn index(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    if words.take("none") {
        return unless(of.indices.is_empty(), || "there is one".into());
    }
    let [Index { score, low, high, missing, .. }] = &of.indices[..] else { return Err("there is none".into()) };
    let first: u8 = words.number()?;
    if !words.take("to") {
        words.end()?;
        let is = (*score, *low, *high);
        return unless(is == (Some(first), first, first) && missing.is_empty(), || {
            format!("it is {is:?}, {missing:?}")
        });
    }
    let last: u8 = words.number()?;
    unless((*score, *low, *high) == (None, first, last), || format!("it is {low} to {high}, score {score:?}"))?;
    unless(words.take("missing"), || "what is missing has to be named".into())?;
    let wanted: Vec<&str> = words.rest().split(',').map(str::trim).collect();
    unless(missing.iter().map(String::as_str).eq(wanted), || format!("missing: {}", missing.join(", ")))
}

/// `first JOINT/MOVEMENT/MODE DAY`, or `… never`
pub fn first(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let text = words.rest();
    // The key ends where the day begins.
    let (key, when) = match text.rfind(" day ") {
        Some(at) => text.split_at(at),
        None => text.rsplit_once(' ').ok_or("a key and a day are needed")?,
    };
    let (base, mode) = key.trim().rsplit_once('/').ok_or("a key is joint/movement/mode")?;
    let day = if when == "never" { None } else { Some(Words(when).day(of.operated_on)?) };
    for key in days::keys(&format!("{base}/any/{mode}"))? {
        let line = of.first_allowed.iter().find(|line| line.key == key);
        unless(line.map(|line| line.day.count()) == day, || match line {
            Some(line) => format!("{key} opens on {} ({})", line.date, line.day),
            None => format!("{key} never opens"),
        })?;
        unless(line.is_none_or(|line| !line.reasons.is_empty()), || format!("{key} opens without a reason"))?;
    }
    Ok(())
}

/// `stage ID DAY [opened|closed]`, or `stage ID never`
pub fn stage(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let id = words.word()?;
    let stage = of.stages.iter().find(|stage| stage.id == id);
    if words.take("never") {
        return unless(stage.is_none(), || "there is such a stage".into());
    }
    let stage = stage.ok_or("there is no such stage")?;
    let day = words.day(of.operated_on)?;
    unless(stage.from_day.count() == day, || format!("its gate is {} ({})", stage.from, stage.from_day))?;
    match words.rest() {
        "" => Ok(()),
        "opened" => unless(stage.opened, || "it is closed".into()),
        "closed" => unless(!stage.opened, || "it is opened".into()),
        other => Err(format!("`{other}` is not understood")),
    }
}

/// `criteria STAGE ID, ID, …` in their order, or `criteria STAGE none`
pub fn criteria(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let id = words.word()?;
    let wanted = words.rest();
    let stage = of.stages.iter().find(|stage| stage.id == id).ok_or("there is no such stage")?;
    let all: Vec<&str> = stage.criteria.iter().map(|criterion| criterion.id.as_str()).collect();
    let is = if all.is_empty() { "none".to_owned() } else { all.join(", ") };
    unless(is == wanted, || format!("they are {is}"))
}

/// `ends DAY`: the first day that no line of the plan is about.
pub fn ends(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let wanted = words.day(of.operated_on)?;
    words.end()?;
    let is = of.spans.last().map(|span| span.until_day.count());
    unless(is == Some(wanted), || format!("it ends on {is:?}"))
}

/// `visit PURPOSE due DAY [on DAY]`
pub fn visit(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let (purpose, when) = words.rest().split_once(" due ").ok_or("`due` is missing")?;
    let visit = of.visits.iter().find(|visit| visit.purpose == purpose).ok_or_else(|| {
        let all: Vec<&str> = of.visits.iter().map(|visit| visit.purpose.as_str()).collect();
        format!("the visits are {}", all.join(", "))
    })?;
    let mut when = Words(when);
    let due = when.day(of.operated_on)?;
    let on = if when.take("on") { when.day(of.operated_on)? } else { due };
    when.end()?;
    unless((visit.due_day.count(), visit.day.count()) == (due, on), || {
        format!("it is due on {} and falls on {} ({})", visit.due_day, visit.date, visit.day)
    })
}

/// `return ACTIVITY DAY [by-surgeon]`
pub fn returns(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let activity = words.word()?;
    let line = of.returns.iter().find(|line| line.activity == activity).ok_or("nothing is said of it")?;
    let day = words.day(of.operated_on)?;
    let by_surgeon = words.take("by-surgeon");
    words.end()?;
    unless(line.day.map(|day| day.count()) == Some(day), || format!("it is {:?}, {:?}", line.date, line.day))?;
    unless(line.opened_by_surgeon == by_surgeon, || format!("opened by the surgeon: {}", line.opened_by_surgeon))
}

fn asked<'p>(of: &'p Prescription, path: &str) -> Result<&'p Question, String> {
    of.questions.iter().find(|question| question.path == path).ok_or_else(|| {
        let all: Vec<&str> = of.questions.iter().map(|question| question.path.as_str()).collect();
        format!("the questions are {}", all.join(", "))
    })
}

/// `question PATH [blocking | changes KEY | names TEXT]`
pub fn question(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let question = asked(of, words.word()?)?;
    let Ok(word) = words.word() else { return Ok(()) };
    let rest = words.rest();
    match word {
        "blocking" => unless(question.changes.is_empty(), || "it does not block signing".into()),
        "changes" => unless(question.changes.iter().any(|change| change.key == rest), || {
            let all: Vec<&str> = question.changes.iter().map(|change| change.key.as_str()).collect();
            format!("it changes {}", all.join(", "))
        }),
        "names" => unless(question.text.contains(rest), || question.text.clone()),
        other => Err(format!("`{other}` is not understood")),
    }
}

/// `no-question PATH`
pub fn no_question(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let path = words.rest();
    if path.is_empty() {
        return Err("a path is needed".into());
    }
    unless(asked(of, path).is_err(), || "it is asked".into())
}

/// `questions none`, or `questions PATH, PATH, …` in their order
pub fn questions(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let wanted = words.rest();
    let all: Vec<&str> = of.questions.iter().map(|question| question.path.as_str()).collect();
    let is = if all.is_empty() { "none".to_owned() } else { all.join(", ") };
    unless(is == wanted, || format!("they are {is}"))
}

/// `completions N`: over how many completions of the record the plan was compared.
pub fn completions(of: &Prescription, mut words: Words<'_>) -> Result<(), String> {
    let wanted: u64 = words.number()?;
    words.end()?;
    unless(of.completions == wanted, || format!("they are {}", of.completions))
}

/// A line of a list that contains a text.
pub fn contains(list: &[String], mut words: Words<'_>) -> Result<(), String> {
    let wanted = words.rest();
    if wanted == "none" {
        return unless(list.is_empty(), || list.join("; "));
    }
    unless(list.iter().any(|line| line.contains(wanted)), || list.join("; "))
}

/// No line of a list contains a text.
pub fn contains_not(list: &[String], mut words: Words<'_>) -> Result<(), String> {
    let unwanted = words.rest();
    unless(!unwanted.is_empty(), || "a text is needed".into())?;
    unless(!list.iter().any(|line| line.contains(unwanted)), || list.join("; "))
}
