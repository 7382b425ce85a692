//! The sling of what is opened: its bar, and what to do with it.

use plan::{SlingLine, SlingPosition, TodayBasis, Wear};

use crate::desk::Desk;
use crate::document::{Block, SlingRun, Tone};
use crate::parts::Part;
use crate::texts::Texts;

/// How many days of an open end are drawn.
const OPEN_END: u16 = 28; // not medical: room on a page

/// The days of the opened parts on a line from the day of surgery, with the sling as a bar.
///
/// Days before the first part are those that are over; they are drawn as the dated plan had them.
pub(crate) fn bar(desk: &Desk<'_>, texts: &Texts<'_>, parts: &[Part<'_>]) -> Option<Block> {
    let first = parts.first()?.from_day().count();
    let last = parts.last()?;
    let until =
        last.until().map_or_else(|| last.periods.last().map_or(0, |p| p.from_day.count()) + OPEN_END, |u| u.0.count());
    let mut runs: Vec<SlingRun> = Vec::new();
    let mut push = |from: u16, until: u16, wear: Wear| match runs.last_mut() {
        _ if from >= until => {}
        Some(run) if run.wear == wear.name() => run.until_day = until,
        _ => runs.push(SlingRun { from_day: from, until_day: until, wear: wear.name(), shown: texts.get(word(wear)) }),
    };
    // While a gate waits, the sling that was worn before it goes on.
    let waiting = desk.prescription.today.as_ref().filter(|today| today.basis == TodayBasis::Frozen);
    let gate = waiting.and_then(|today| today.not_before.as_ref()).map_or(first, |next| next.day.count()).min(first);
    for span in &desk.prescription.spans {
        push(span.from_day.count(), span.until_day.count().min(gate), span.sling.wear);
    }
    if let Some(today) = waiting {
        push(gate, first, today.sling.wear);
    }
    let periods = || parts.iter().flat_map(|part| &part.periods);
    let nexts = periods().skip(1).map(|next| Some(next.from_day.count())).chain([None]);
    for (period, next) in periods().zip(nexts) {
        // Where a gate waits between two of them, what is worn goes on.
        let until = next.unwrap_or_else(|| period.until.map_or(until, |(day, _)| day.count()));
        push(period.from_day.count(), until, period.sling.wear);
    }
    let mut dates = vec![(0, texts.date(desk.prescription.operated_on))];
    let changes =
        periods().map(|period| (period.from_day, period.from)).chain(periods().filter_map(|period| period.until));
    for (day, date) in
        changes.filter(|(day, _)| runs.iter().any(|run| run.from_day == day.count() || run.until_day == day.count()))
    {
        if !dates.iter().any(|(known, _)| *known == day.count()) {
            dates.push((day.count(), texts.date(date)));
        }
    }
    // What is worn to the end of the line is worn beyond it: an end would be read as leave to stop.
    if let Some(last) = runs.last_mut() {
        last.shown = match last.wear {
            "always" => texts.get("handout-sling-bar-always-on"),
            "weaning" => texts.get("handout-sling-bar-weaning-on"),
            _ => last.shown.clone(),
        };
    }
    let told: Vec<String> = runs.iter().map(|run| run.shown.clone()).collect();
    Some(Block::RecoveryLine {
        alt: texts.with("handout-sling-bar-alt", &[("text", told.join(", ").into())]),
        week: texts.get("handout-sling-bar-week"),
        sling_word: texts.get("handout-sling-bar"),
        until_day: until,
        sling: runs,
        stages: Vec::new(),
        dates,
        mark: None,
    })
}

const fn word(wear: Wear) -> &'static str {
    match wear {
        Wear::Always => "handout-sling-bar-always",
        Wear::Weaning => "handout-sling-bar-weaning",
        Wear::None => "handout-sling-bar-none",
    }
}

/// What to do with the sling in a part, change by change.
pub(crate) fn sentences(texts: &Texts<'_>, part: &Part<'_>) -> Vec<Block> {
    let mut blocks: Vec<Block> = Vec::new();
    let mut last: Option<Wear> = None;
    for period in &part.periods {
        let wear = period.sling.wear;
        if last == Some(wear) {
            continue;
        }
        let text = how(texts, period.sling);
        let text = match last {
            None => text,
            Some(_) => {
                texts.with("handout-sling-from", &[("date", texts.date(period.from).into()), ("text", text.into())])
            }
        };
        blocks.push(Block::Paragraph { tone: if last.is_none() { Tone::Strong } else { Tone::Plain }, text });
        last = Some(wear);
    }
    blocks
}

fn how(texts: &Texts<'_>, sling: &SlingLine) -> String {
    texts.get(match sling.wear {
        Wear::Always => "handout-sling-always",
        Wear::Weaning => "handout-sling-weaning",
        Wear::None => "handout-sling-none",
    })
}

/// The care pose that shows how the sling holds the arm.
pub(crate) const fn care_pose(position: SlingPosition) -> &'static str {
    match position {
        SlingPosition::Neutral => "care-sling-neutral",
        SlingPosition::InternalRotation => "care-sling-internal",
    }
}
