//! Painting a recovery line.

use super::super::hatch::{self, HATCH_WIDTH};
use super::super::pen::{Pen, Word, edged, stroked};
use super::super::scale::DAYS_A_WEEK;
use super::super::tones::{CASING, EDGE, HAIR, HEAVY, LARGE, LINE, THIN, TINT, cut, dashed};
use super::layout::{Layout, TICK};
use super::{EventKind, RecoveryLine, SlingWear, StageState, symbols};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Anchor, Paint, Stroke, Svg};

pub(super) fn picture(line: &RecoveryLine, layout: &Layout) -> Svg {
    let mut svg = Svg::new(line.width_mm, layout.height, &line.title, &line.description);
    let mut pen = Pen(&mut svg);
    hairlines(&mut pen, line, layout);
    spans(&mut pen, line, layout);
    axis(&mut pen, line, layout);
    today(&mut pen, line, layout);
    for word in &layout.words {
        pen.word(word);
    }
    for mark in &layout.marks {
        if let Some(kind) = mark.kind {
            symbols::paint(&mut pen, kind, mark.at, symbols::HALF);
        }
    }
    svg
}

fn hairlines(pen: &mut Pen<'_>, line: &RecoveryLine, layout: &Layout) {
    let lines: Vec<_> = layout.marks.iter().map(|mark| [mark.at, [mark.at[0], layout.foot]]).collect();
    pen.lines(&lines, cut(Color::GHOST, THIN));
    for event in line.events.iter().filter(|event| symbols::has_bracket(event.kind)) {
        let from = layout.days.at(f64::from(event.day));
        let until = match event.kind {
            EventKind::Hold { until_day } => layout.days.at(f64::from(until_day)),
            _ => from,
        };
        symbols::bracket(pen, event.kind, [from, until], layout.brackets);
    }
    // Where a hairline has to go behind a text, the text stays whole.
    for word in &layout.words {
        let behind = |at: [f64; 2]| {
            let space = word.space();
            space.left < at[0] && at[0] < space.right && at[1] < space.top
        };
        if layout.marks.iter().any(|mark| behind(mark.at)) {
            pen.rectangle(word.space(), &Paint::filled(Color::WHITE));
        }
    }
}

fn spans(pen: &mut Pen<'_>, line: &RecoveryLine, layout: &Layout) {
    let across = |[from, until]: [u16; 2], [top, bottom]: [f64; 2]| Space {
        left: layout.days.at(f64::from(from)),
        top,
        right: layout.days.at(f64::from(until)),
        bottom,
    };
    if let Some(band) = layout.stages {
        stages(pen, line, layout, band);
    }
    if let Some(band) = layout.sling {
        for run in &line.sling {
            sling(pen, run.wear, across(run.days, band));
        }
        for (index, word) in &layout.on_sling {
            let wear = line.sling.get(*index).map(|run| run.wear);
            if wear == Some(SlingWear::Weaning) {
                pen.rectangle(word.space().grown(PLATE), &Paint::filled(Color::WHITE));
            }
            let color = if wear == Some(SlingWear::Always) { Color::WHITE } else { Color::INK };
            pen.word(&word.clone().colored(color));
        }
    }
    for (swatch, index) in &layout.key {
        if let Some(run) = line.sling.get(*index) {
            sling(pen, run.wear, *swatch);
        }
    }
}

fn stages(pen: &mut Pen<'_>, line: &RecoveryLine, layout: &Layout, [top, bottom]: [f64; 2]) {
    let at = |day: u16| layout.days.at(f64::from(day));
    let (opened, others): (Vec<_>, Vec<_>) = line.stages.iter().partition(|stage| stage.state == StageState::Opened);
    let mut dashes: Vec<[[f64; 2]; 2]> = Vec::new();
    let mut borders: Vec<u16> = Vec::new();
    for stage in others {
        let [left, right] = stage.days.map(at);
        dashes.extend([[[left, top], [right, top]], [[left, bottom], [right, bottom]]]);
        borders.extend(stage.days);
    }
    // One line between neighbors, and none beside a solid edge.
    borders.dedup();
    borders.retain(|day| !opened.iter().any(|stage| stage.days.contains(day)));
    dashes.extend(borders.into_iter().map(|day| [[at(day), top], [at(day), bottom]]));
    pen.lines(&dashes, dashed(Color::GHOST, EDGE, 1.4, 1.0));
    for stage in opened {
        let [left, right] = stage.days.map(at);
        pen.rectangle(Space { left, top, right, bottom }, &edged(TINT, Stroke::new(Color::INK, LINE)));
    }
}

fn sling(pen: &mut Pen<'_>, wear: SlingWear, space: Space) {
    let edge = Stroke::new(Color::INK, EDGE);
    match wear {
        SlingWear::Always => pen.rectangle(space, &edged(Color::INK, edge)),
        SlingWear::Weaning => {
            pen.rectangle(space, &Paint::filled(Color::WHITE));
            pen.lines(&hatch::over(space), cut(Color::INK, HATCH_WIDTH));
            pen.rectangle(space, &stroked(edge));
        }
        SlingWear::Planned => pen.rectangle(space, &edged(Color::WHITE, dashed(Color::GHOST, EDGE, 1.4, 1.0))),
    }
}

fn axis(pen: &mut Pen<'_>, line: &RecoveryLine, layout: &Layout) {
    let y = layout.axis;
    let until = f64::from(line.until_day);
    let at = |day: f64| layout.days.at(day);
    pen.line([at(0.0), y], [at(until), y], cut(Color::INK, LINE));
    let is_named = |day: f64| layout.named_days.iter().any(|named| f64::from(*named) == day);
    // Weeks without a number have a short tick where they are far enough apart.
    let is_wide = at(DAYS_A_WEEK) - at(0.0) >= WEEK;
    let weeks = (0..=line.until_day).step_by(DAYS_A_WEEK as usize).map(f64::from);
    let short: Vec<_> =
        weeks.filter(|day| is_wide && !is_named(*day)).map(|day| tick(at(day), y, TICK / 2.0)).collect();
    pen.lines(&short, cut(Color::INK, HAIR));
    let long: Vec<_> = layout.named_days.iter().map(|day| tick(at(f64::from(*day)), y, TICK)).collect();
    pen.lines(&long, cut(Color::INK, THIN));
    let mut events: Vec<_> = line.events.iter().collect();
    events.sort_by_key(|event| (event.day, std::cmp::Reverse(symbols::rank(event.kind))));
    events.dedup_by_key(|event| event.day);
    for event in events {
        symbols::paint(pen, event.kind, [at(f64::from(event.day)), y], symbols::ON_LINE);
    }
}

fn tick(x: f64, y: f64, length: f64) -> [[f64; 2]; 2] {
    [[x, y], [x, y + length]]
}

fn today(pen: &mut Pen<'_>, line: &RecoveryLine, layout: &Layout) {
    let (Some((day, _)), Some((flag, text))) = (&line.today, &layout.flag) else { return };
    let x = layout.days.at(f64::from(*day));
    let (top, bottom) = (flag.bottom, layout.axis);
    let foot = bottom + TICK;
    pen.line([x, top], [x, foot], cut(Color::WHITE, HEAVY + CASING));
    pen.line([x, top - HEAVY], [x, foot - HEAVY], cut(Color::INK, HEAVY));
    let head = [[x, bottom - HEAVY], [x + FOOT, foot], [x - FOOT, foot]];
    pen.closed(&head, &edged(Color::INK, Stroke::new(Color::WHITE, CASING / 2.0)));
    pen.closed(&head, &Paint::filled(Color::INK));
    pen.rectangle(*flag, &Paint::filled(Color::INK));
    let base = f64::midpoint(flag.top, flag.bottom) + LARGE * 0.33;
    let middle = f64::midpoint(flag.left, flag.right);
    pen.word(&Word::new(text, [middle, base], LARGE, Anchor::Middle).bold().colored(Color::WHITE));
}

/// A week needs this much room for a tick of its own, in millimeters.
const WEEK: f64 = 1.6;
/// Half the width of the foot on which the mark of today stands.
const FOOT: f64 = 1.7;
/// What a white plate reaches beyond its text.
const PLATE: f64 = 0.5;
