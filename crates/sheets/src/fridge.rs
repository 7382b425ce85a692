//! One sheet for each opened stage, to hang on the fridge.

use body::{Joint, Key, Mode, Movement};
use plan::ExerciseLine;
use wording::dates;

use crate::desk::Desk;
use crate::document::{Block, Captioned, TickRow, Tone};
use crate::exercises::{self, Run};
use crate::handout::{raised_to, step_title};
use crate::household;
use crate::parts::{Begins, Part, Period};
use crate::points::Points;
use crate::sling;
use crate::texts::Texts;

/// Of more exercises than these a day has one box each, so that the sheet stays a sheet.
const MOST_ROWS_OF_EACH_TIME: usize = 5; // not medical: room on a page

/// With more exercises than these the sheet leaves the rules to the first page.
const MOST_ROWS_BESIDE_RULES: usize = 8; // not medical: room on a page

/// Rules and rows of boxes that fit on a page together.
const MOST_LINES: usize = 13; // not medical: room on a page

/// The sheet of a part, with what is open after it; `ends` says of each exercise where it ends.
pub(crate) fn sheet(
    desk: &Desk<'_>,
    texts: &Texts<'_>,
    (part, following): (&Part<'_>, Option<&Part<'_>>),
    ends: &[String],
) -> Vec<Block> {
    let points = Points::of(&part.periods[0], desk.messages, desk.other_arm());
    let not: Vec<String> = points.not.iter().map(|point| point.text.clone()).collect();
    let mut blocks =
        vec![texts.heading(1, "handout-fridge-title"), Block::Heading { level: 2, text: step_title(texts, part) }];
    blocks.extend(valid(texts, part, following));
    blocks.extend(sling::sentences(texts, part));
    let runs = exercises::runs(part);
    // With many exercises the rules stand on the first page alone, so that the table fits under a magnet.
    let has_rules = !not.is_empty() && runs.len() <= MOST_ROWS_BESIDE_RULES;
    // A box for each time takes two rows of boxes.
    let is_long = runs.len() > MOST_ROWS_OF_EACH_TIME || (has_rules && not.len() + 2 * runs.len() > MOST_LINES);
    if has_rules {
        let title = texts.get("handout-not-title");
        blocks.push(Block::Callout { tone: Tone::Stop, title, text: Vec::new(), items: not });
        blocks.extend(height(texts, &part.periods[0]).map(|text| Block::Paragraph { tone: Tone::Strong, text }));
    } else {
        blocks.extend(limits(texts, &part.periods[0], &points));
    }
    // The exercises that have a page, in its order.
    let known = runs.iter().filter_map(|run| Some((run, desk.catalogue.get(&run.line.id)?)));
    let rows: Vec<TickRow> = known
        .zip(ends)
        .map(|((run, entry), end_text)| {
            let dates = exercises::dates(texts, part, run);
            TickRow {
                label: texts.get(&entry.message_id()),
                dose: [dates, dose(texts, run.line), load(texts, run.line), end(texts, end_text)]
                    .into_iter()
                    .filter(|line| !line.is_empty())
                    .collect::<Vec<_>>()
                    .join("\n"),
                boxes: if is_long { 1 } else { run.line.times_per_day },
            }
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
        blocks.extend(in_pictures(desk, texts, part, &runs));
    }
    blocks
}

/// The same exercises as drawings: which arm, which movement, how far, how often; above them when to stop.
fn in_pictures(desk: &Desk<'_>, texts: &Texts<'_>, part: &Part<'_>, runs: &[Run<'_>]) -> Vec<Block> {
    let drawn: Vec<Captioned> = runs
        .iter()
        .filter_map(|run| {
            let entry = desk.catalogue.get(&run.line.id)?;
            let drawing = exercises::picture(desk, texts, part, run, entry, CARD_ROOM_MM)?;
            let caption = format!("{}\n{}", texts.get(&entry.message_id()), exercises::dose(desk, texts, run.line));
            Some(Captioned { caption, drawing })
        })
        .collect();
    if drawn.is_empty() {
        return Vec::new();
    }
    let mut blocks = vec![
        Block::PageBreak,
        texts.heading(2, "handout-fridge-pictures"),
        Block::Heading { level: 2, text: step_title(texts, part) },
        texts.paragraph(Tone::Strong, "handout-fridge-stop", &[]),
    ];
    blocks.extend(drawn.chunks(CARDS_IN_A_ROW).map(|row| Block::Drawings { drawings: row.to_vec() }));
    blocks
}

/// Room for a drawing on the fridge sheet, in millimeters; three stand side by side.
const CARD_ROOM_MM: (f64, f64) = (54.0, 46.0);
const CARDS_IN_A_ROW: usize = 3; // not medical: on a page

/// The rules that matter most, where there is no room for all: own strength, height, and what the hand bears.
fn limits(texts: &Texts<'_>, period: &Period<'_>, points: &Points) -> Option<Block> {
    let shoulder = |key: &Key| key.joint == Joint::Shoulder && key.mode == Mode::Active;
    let of = |wanted: &dyn Fn(&Key) -> bool| {
        let point = points.not.iter().find(|point| point.claims.iter().any(|(key, _)| wanted(key)));
        point.map(|point| point.text.clone())
    };
    let loads = [Movement::HandLoad, Movement::WeightThroughTheArm, Movement::OverheadLoad];
    let mut items: Vec<String> = of(&shoulder).into_iter().collect();
    items.extend(height(texts, period));
    items.extend(loads.into_iter().filter_map(|load| of(&|key: &Key| key.movement == load)));
    // Where the shoulder is free the next limits take their place.
    for point in &points.not {
        if items.len() < LEAST_LIMITS && !items.contains(&point.text) {
            items.push(point.text.clone());
        }
    }
    let most = points.may.iter().filter(|point| point.claims.iter().any(|(key, _)| loads.contains(&key.movement)));
    for point in most {
        if items.len() < LEAST_LIMITS {
            items.push(point.text.clone());
        }
    }
    let title = texts.get("handout-fridge-limits-title");
    (!items.is_empty()).then(|| Block::Callout { tone: Tone::Stop, title, text: Vec::new(), items })
}

/// How high the arm may come, where that is an angle.
fn height(texts: &Texts<'_>, period: &Period<'_>) -> Option<String> {
    let angle = raised_to(period)?;
    let told = [
        ("bound", "degrees".into()),
        ("degrees", household::decimal(&angle.to_string(), texts.messages.language()).into()),
        ("landmark", household::hand_height(angle).into()),
    ];
    Some(texts.with("handout-how-high", &told))
}

/// So many rules stand on every sheet that has any.
const LEAST_LIMITS: usize = 3; // not medical: room on a page

/// Where the movement ends, in the words of the exercise's page.
fn end(texts: &Texts<'_>, end: &str) -> String {
    if end.is_empty() { String::new() } else { texts.with("handout-fridge-end", &[("end", end.to_owned().into())]) }
}

/// The weight: one exercise may stand twice with two of them.
fn load(texts: &Texts<'_>, line: &ExerciseLine) -> String {
    line.load.map_or_else(String::new, |load| {
        texts.with("handout-dose-load", &household::load(load, texts.messages.language()))
    })
}

/// From when until when it is used: a sheet hangs for months, so it ends by itself wherever something is open after it.
fn valid(texts: &Texts<'_>, part: &Part<'_>, following: Option<&Part<'_>>) -> Vec<Block> {
    let from = || ("from", texts.date(part.from()).into());
    let next = following.map(|next| (next.from(), step_title(texts, next)));
    let last = next.as_ref().and_then(|(next, _)| next.yesterday().ok());
    let last = last.map(|last| ("last", texts.date(last).into()));
    if let (Some(Begins::InOrder), Some(last)) = (following.map(|next| next.begins), last.clone()) {
        return vec![texts.paragraph(Tone::Lead, "handout-fridge-until", &[from(), last])];
    }
    let mut blocks = Vec::new();
    if let (Some(last), Some((next, step))) = (last, next) {
        let told = [last, ("next", texts.date(next).into()), ("step", step.into())];
        blocks.push(texts.paragraph(Tone::Stop, "handout-fridge-back", &told));
    }
    // What waits for its gate, up to a step back or for good.
    let goes_back_at_once = following.is_some_and(|next| part.until().is_some_and(|(_, until)| until == next.from()));
    match part.until() {
        _ if goes_back_at_once => blocks.push(texts.paragraph(Tone::Plain, "handout-fridge-from", &[from()])),
        Some((_, until)) => {
            let told = [from(), ("until", texts.date(until).into())];
            blocks.push(texts.paragraph(Tone::Lead, "handout-fridge-valid", &told));
        }
        None => blocks.push(texts.paragraph(Tone::Lead, "handout-fridge-open-end", &[from()])),
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
