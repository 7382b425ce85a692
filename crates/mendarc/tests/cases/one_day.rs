//! One day with what is opened: the effective limits, and what they answer.

use plan::{Today, TodayBasis};
use prescription::Answer;

use crate::dated::{lines_hold, rows_say};
use crate::days::Words;
use crate::world::World;

/// `today DATE …`: `stage ID`, `basis opened|frozen`, `limit KEY VALUE`, `sling WEAR [POSITION]`,
/// `exercise ID [details]`, `no-exercise ID`, `goal ID`, `no-goal ID`, `not before STAGE DAY`, `not before nothing`.
pub fn today(world: &mut World<'_>, mut words: Words<'_>) -> Result<(), String> {
    let date = words.date()?;
    let issued = world.on(date)?;
    let operated_on = issued.operated_on;
    let today = issued.today.as_ref().ok_or("nothing is said of that day")?;
    match words.word()? {
        "stage" => is(&today.stage, words.rest()),
        "basis" => is(basis(today), words.rest()),
        "limit" => rows_say(&today.limits, words.rest()),
        "sling" => {
            let (wear, position) = (words.word()?, words.rest());
            is(today.sling.wear.name(), wear)?;
            if position.is_empty() { Ok(()) } else { is(today.sling.position.name(), position) }
        }
        "exercise" => lines_hold(&today.exercises, words),
        "no-exercise" => {
            let id = words.rest();
            let there = today.exercises.iter().any(|line| line.id == id);
            if there { Err("it is there".into()) } else { Ok(()) }
        }
        "goal" => has_goal(today, words.rest(), true),
        "no-goal" => has_goal(today, words.rest(), false),
        "not" if words.take("before") => {
            let Some(next) = &today.not_before else { return is("nothing", words.rest()) };
            let stage = words.word()?;
            is(&next.stage, stage)?;
            let day = words.day(operated_on)?;
            words.end()?;
            if next.day.count() == day { Ok(()) } else { Err(format!("it is {} ({})", next.date, next.day)) }
        }
        other => Err(format!("`{other}` is not understood")),
    }
}

fn basis(today: &Today) -> &'static str {
    match today.basis {
        TodayBasis::Opened => "opened",
        TodayBasis::Frozen => "frozen",
    }
}

fn is(is: &str, wanted: &str) -> Result<(), String> {
    if is == wanted { Ok(()) } else { Err(format!("it is {is}")) }
}

fn has_goal(today: &Today, id: &str, wanted: bool) -> Result<(), String> {
    if today.goals.iter().any(|goal| goal.id == id) == wanted {
        return Ok(());
    }
    let all: Vec<&str> = today.goals.iter().map(|goal| goal.id.as_str()).collect();
    Err(format!("the goals are {}", all.join(", ")))
}

/// `may DATE ACTIVITY yes`, `… ask`, `… not before DAY`, each with `[because RULE]`
pub fn may(world: &mut World<'_>, mut words: Words<'_>) -> Result<(), String> {
    let date = words.date()?;
    let activity = words.word()?;
    let operated_on = world.issued()?.operated_on;
    let answer = world.may(activity, date)?;
    let said = format!("{} {} ({})", answer.answer.name(), answer.date, answer.day);
    let wanted = match words.word()? {
        "yes" => Answer::Yes,
        "ask" => Answer::Ask,
        "not" if words.take("before") => {
            let day = words.day(operated_on)?;
            if answer.day.count() != day {
                return Err(said);
            }
            Answer::NotBefore
        }
        other => return Err(format!("`{other}` is no answer")),
    };
    if answer.answer != wanted {
        return Err(said);
    }
    if answer.because.is_empty() {
        return Err("the answer has no reason".into());
    }
    if words.take("because") {
        let rule = words.rest();
        if !answer.because.iter().any(|reason| reason.rule == rule) {
            let rules: Vec<&str> = answer.because.iter().map(|reason| reason.rule.as_str()).collect();
            return Err(format!("because {}", rules.join(", ")));
        }
    }
    words.end()
}
