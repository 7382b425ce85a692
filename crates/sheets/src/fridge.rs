//! One sheet for each opened stage, to hang on the fridge.

use plan::ExerciseLine;
use wording::dates;

use crate::desk::Desk;
use crate::document::{Block, TickRow, Tone};
use crate::exercises;
use crate::handout::step_title;
use crate::parts::Part;
use crate::points::Points;
use crate::sling;
use crate::texts::Texts;

/// Of more exercises than these a day has one box each, so that the sheet stays a sheet.
const MOST_ROWS_OF_EACH_TIME: usize = 5; // not medical: room on a page

/// With more exercises than these the sheet leaves the rules to the first page.
const MOST_ROWS_BESIDE_RULES: usize = 8; // not medical: room on a page

/// Rules and rows of boxes that fit on a page together.
const MOST_LINES: usize = 13; // not medical: room on a page

/// The sheet of a part.
pub(crate) fn sheet(desk: &Desk<'_>, texts: &Texts<'_>, part: &Part<'_>) -> Vec<Block> {
    let valid = match part.until() {
        Some((_, until)) => texts.with(
            "handout-fridge-valid",
            &[("from", texts.date(part.from()).into()), ("until", texts.date(until).into())],
        ),
        None => texts.with("handout-fridge-open-end", &[("from", texts.date(part.from()).into())]),
    };
    let not: Vec<String> =
        Points::of(&part.periods[0], desk.messages, desk.other_arm()).not.into_iter().map(|point| point.text).collect();
    let mut blocks = vec![
        texts.heading(1, "handout-fridge-title"),
        Block::Heading { level: 2, text: step_title(texts, part) },
        Block::Paragraph { tone: Tone::Lead, text: valid },
    ];
    blocks.extend(sling::sentences(texts, part));
    let runs = exercises::runs(part);
    // With many exercises the rules stand on the first page alone, so that the table fits under a magnet.
    let has_rules = !not.is_empty() && runs.len() <= MOST_ROWS_BESIDE_RULES;
    // A box for each time takes two rows of boxes.
    let is_long = runs.len() > MOST_ROWS_OF_EACH_TIME || (has_rules && not.len() + 2 * runs.len() > MOST_LINES);
    if has_rules {
        let title = texts.get("handout-not-title");
        blocks.push(Block::Callout { tone: Tone::Stop, title, text: Vec::new(), items: not });
    }
    let rows: Vec<TickRow> = runs
        .iter()
        .filter_map(|run| {
            let entry = desk.catalogue.get(&run.line.id)?;
            let dates = exercises::dates(texts, part, run);
            Some(TickRow {
                label: texts.get(&entry.message_id()),
                dose: [dates, dose(texts, run.line)]
                    .into_iter()
                    .filter(|line| !line.is_empty())
                    .collect::<Vec<_>>()
                    .join("\n"),
                boxes: if is_long { 1 } else { run.line.times_per_day },
            })
        })
        .collect();
    if !rows.is_empty() {
        let tick = if is_long { "handout-fridge-tick-day" } else { "handout-fridge-tick" };
        blocks.push(texts.paragraph(Tone::Plain, tick, &[]));
        let lasts = part.until().is_none_or(|(day, _)| day.count() > part.from_day().count() + DAYS_A_WEEK);
        let week = if lasts { "handout-fridge-copy" } else { "handout-fridge-week" };
        blocks.push(texts.paragraph(Tone::Plain, week, &[]));
        blocks.push(Block::Ticks {
            alt: texts.get("handout-fridge-alt"),
            corner: texts.get("handout-fridge-corner"),
            days: weekdays(texts),
            rows,
        });
    }
    blocks
}

/// How often, and on how many days where that is not every day.
fn dose(texts: &Texts<'_>, line: &ExerciseLine) -> String {
    let times = ("times", line.times_per_day.into());
    match line.days_per_week {
        Some(days) => texts.with("handout-fridge-dose-week", &[times, ("days", days.into())]),
        None => texts.with("handout-fridge-dose", &[times]),
    }
}

const DAYS_A_WEEK: u16 = 7; // not medical: a week has seven days

/// The days of a week from Monday on.
fn weekdays(texts: &Texts<'_>) -> Vec<String> {
    let monday = jiff::civil::date(2024, 1, 1); // not medical: any Monday
    let mut day = Some(monday);
    let mut names = Vec::new();
    while let Some(date) = day.filter(|_| names.len() < usize::from(DAYS_A_WEEK)) {
        names.push(dates::weekday_short(date, texts.messages.language()).to_owned());
        day = date.tomorrow().ok();
    }
    names
}
