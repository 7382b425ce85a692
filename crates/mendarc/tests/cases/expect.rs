//! One line of an expectation, handed to what can judge it.

use crate::days::Words;
use crate::world::World;
use crate::{dated, found, lines, one_day};

/// Judges one expectation.
pub fn check(world: &mut World<'_>, text: &str) -> Result<(), String> {
    let mut words = Words(text);
    let subject = words.word()?;
    if ["error", "warning", "note"].contains(&subject) {
        return found::check(world, text);
    }
    match subject {
        "today" => return one_day::today(world, words),
        "may" => return one_day::may(world, words),
        _ => {}
    }
    let issued = world.issued()?;
    match subject {
        "limit" => dated::limit(issued, words),
        "reason" => dated::reason(issued, words),
        "no-reason" => dated::no_reason(issued, words),
        "sling" => dated::sling(issued, words),
        "sling-off" => dated::sling_off(issued, words),
        "exercise" => dated::exercise(issued, words),
        "no-exercise" => dated::no_exercise(issued, words),
        "only" => dated::only(issued, words),
        "quiet" => dated::quiet(issued, &world.shelf.catalogue, words),
        "dropped" => dated::dropped(issued, words),
        "replaced" => dated::replaced(issued, words),
        "goal" => dated::goal(issued, words),
        "no-goal" => dated::no_goal(issued, words),
        "protocol" => lines::protocol(issued, words),
        "capped" => lines::capped(issued, words),
        "why" => lines::why(issued, words),
        "index" => lines::index(issued, words),
        "first" => lines::first(issued, words),
        "stage" => lines::stage(issued, words),
        "criteria" => lines::criteria(issued, words),
        "ends" => lines::ends(issued, words),
        "visit" => lines::visit(issued, words),
        "return" => lines::returns(issued, words),
        "question" => lines::question(issued, words),
        "no-question" => lines::no_question(issued, words),
        "questions" => lines::questions(issued, words),
        "completions" => lines::completions(issued, words),
        "caution" => lines::contains(&issued.cautions, words),
        "no-caution" => lines::contains_not(&issued.cautions, words),
        "loosened" => lines::contains(&issued.loosened, words),
        "moved" => lines::contains(&issued.moved, words),
        _ => Err(format!("`{subject}` is not an expectation")),
    }
}
