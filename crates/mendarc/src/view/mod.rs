//! What a person reads on the terminal.

pub mod check;
pub mod compare;
pub mod dates;
pub mod ladder;
pub mod may;
pub mod paint;
pub mod prescription;

/// What the questions amount to, in a sentence.
pub fn completions(limit_questions: usize, completions: u64) -> String {
    match (limit_questions, completions) {
        (0, 1) => "no fact is missing that could change a limit".into(),
        (0, many) => format!("the plan is the same for all {many} completions of this record"),
        (_, many) => format!("the plan was compared over the {many} completions of this record"),
    }
}
