//! The answer to "may I …?".

use std::fmt::Write as _;

use prescription::{Answer, May};

use crate::shelf::Shelf;
use crate::view::dates;
use crate::view::paint::{FAINT, HEADING, paint, wrapped};
use crate::view::prescription::reason_lines;

/// The answer with its reasons.
pub fn answer(of: &May, shelf: &Shelf) -> String {
    let mut page = String::new();
    let title = shelf.title(&of.activity);
    let said = match of.answer {
        Answer::Yes => "yes, on this day".to_owned(),
        Answer::NotBefore => {
            format!("not before {} (day {})", dates::with_weekday(of.date), of.day.count())
        }
        Answer::Ask => "ask the surgeon's office".to_owned(),
    };
    let _ = writeln!(page, "{}: {}", paint(HEADING, &title), paint(HEADING, &said));
    if let Some(stage) = &of.waiting_for_stage {
        let _ = writeln!(page, "  the stage `{stage}` has not been opened; until it is, the limits before it hold");
    }
    for line in reason_lines(&of.because, 2) {
        let _ = writeln!(page, "  {line}");
    }
    let caution = shelf.messages.text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "\n{}", paint(FAINT, &wrapped(&caution, 96, "")));
    page
}

/// Every activity.
pub fn list(activities: &[(String, String)], shelf: &Shelf) -> String {
    let width = activities.iter().map(|(id, _)| id.len()).max().unwrap_or(0);
    let mut page = activities.iter().fold(String::new(), |mut page, (id, title)| {
        let _ = writeln!(page, "{id:width$}  {title}");
        page
    });
    let caution = shelf.messages.text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "\n{}", paint(FAINT, &wrapped(&caution, 96, "")));
    page
}
