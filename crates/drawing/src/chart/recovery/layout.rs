//! Where everything of a recovery line stands.

use super::super::error::ChartError;
use super::super::lanes::{self, Block, Side, Wish};
use super::super::pen::Word;
use super::super::scale::Scale;
use super::super::text_width::width_mm;
use super::super::tones::{ABOVE, BELOW, GAP, LARGE, PITCH, SMALL};
use super::bands::{self, Name};
use super::{EventKind, Label, RecoveryLine, SlingSpan, StageState, symbols};
use crate::label::Space;
use crate::svg::{Anchor, Weight};

/// Everything in millimeters from the upper left corner.
#[derive(Debug)]
pub(super) struct Layout {
    pub(super) height: f64,
    /// From a day to its place.
    pub(super) days: Scale,
    /// Upper and lower edge of the stages.
    pub(super) stages: Option<[f64; 2]>,
    /// Upper and lower edge of the bar of the sling.
    pub(super) sling: Option<[f64; 2]>,
    /// The line itself.
    pub(super) axis: f64,
    /// Where hairlines end.
    pub(super) foot: f64,
    /// Height of the brackets of holds.
    pub(super) brackets: f64,
    /// Days with a number or date.
    pub(super) named_days: Vec<u16>,
    /// The flag of today.
    pub(super) flag: Option<(Space, String)>,
    /// What each event's mark stands at, and the names of stages that stand in lanes: x, middle of the mark, lowest.
    pub(super) marks: Vec<Mark>,
    /// Swatches of the key.
    pub(super) key: Vec<(Space, usize)>,
    /// What is written.
    pub(super) words: Vec<Word>,
    /// Names inside the bar of the sling, with their spans.
    pub(super) on_sling: Vec<(usize, Word)>,
}

/// A hairline with what stands at its end.
#[derive(Debug)]
pub(super) struct Mark {
    pub(super) at: [f64; 2],
    /// None for the name of a stage.
    pub(super) kind: Option<EventKind>,
}

/// Lanes, the flag and their labels, before it is known how high the lanes are.
struct Above<'l> {
    wishes: Vec<Wish<'l>>,
    places: Vec<lanes::Place>,
    flag: Option<([f64; 2], String)>,
    lanes: usize,
}

impl Layout {
    pub(super) fn of(line: &RecoveryLine) -> Result<Self, ChartError> {
        let ends = [EDGE, line.width_mm - EDGE];
        let days = Scale::new([0.0, f64::from(line.until_day)], [MARGIN, line.width_mm - MARGIN]);
        let today = line.today.as_ref().map(|(day, _)| days.at(f64::from(*day)));
        let span = |[from, until]: [u16; 2]| [days.at(f64::from(from)), days.at(f64::from(until))];

        let named = |most| -> Vec<Option<Name>> {
            let inside = |stage: &super::StageSpan| {
                bands::inside(span(stage.days), today, &stage.name, weight(stage.state), most)
            };
            line.stages.iter().map(inside).collect()
        };
        let names = named(2);
        let stage_lines = names.iter().flatten().map(|name| name.lines.len()).max().unwrap_or(1);
        let outside = line.stages.iter().zip(&names).filter(|(_, name)| name.is_none());
        let outside = outside.map(|(stage, _)| {
            let [from, until] = bands::clear(span(stage.days), today);
            Wish { x: f64::midpoint(from, until), mark: 0.0, label: &stage.name, weight: weight(stage.state) }
        });
        let on_sling: Option<Vec<Name>> =
            line.sling.iter().map(|run| bands::inside(span(run.days), today, &run.name, Weight::Bold, 1)).collect();

        let above = Above::of(line, &days, ends, outside.collect())?;
        let lanes_height = above.lanes as f64 * LANE;
        let mut words = Vec::new();

        // From above.
        let lanes_foot = EDGE + lanes_height;
        let has_brackets = line.events.iter().any(|event| symbols::has_bracket(event.kind));
        let brackets = lanes_foot + UNDER_LANES + if has_brackets { BRACKETS / 2.0 } else { 0.0 };
        let foot = lanes_foot + UNDER_LANES + if has_brackets { BRACKETS } else { 0.0 };
        let mut y = foot;
        let stages = (!line.stages.is_empty()).then(|| {
            let top = y;
            y += STAGE + (stage_lines - 1) as f64 * SMALL * PITCH;
            [top, y]
        });
        let sling = (!line.sling.is_empty()).then(|| {
            let top = y + if stages.is_some() { BETWEEN } else { 0.0 };
            y = top + SLING;
            [top, y]
        });
        let axis = y + BETWEEN + symbols::ON_LINE;

        // Names in the spans.
        if let Some(band) = stages {
            for (stage, name) in line.stages.iter().zip(&names) {
                let Some(name) = name else { continue };
                words.extend(lines_inside(name, band, weight(stage.state)));
            }
        }
        let mut sling_words = Vec::new();
        if let (Some(band), Some(names)) = (sling, &on_sling) {
            for (index, name) in names.iter().enumerate() {
                sling_words.extend(lines_inside(name, band, Weight::Bold).into_iter().map(|word| (index, word)));
            }
        }

        // Under the line.
        let weeks = bands::weeks(line, &days, ends);
        let dates = bands::dates(line, &days, ends);
        let mut named_days: Vec<u16> = Vec::new();
        let mut bottom = axis + TICK;
        for row in [weeks, dates] {
            if row.is_empty() {
                continue;
            }
            let base = bottom + UNDER_TICK + SMALL * ABOVE;
            bottom = base + SMALL * BELOW;
            named_days.extend(row.iter().map(|under| under.day));
            words.extend(row.iter().map(|under| Word::new(&under.text, [under.x, base], SMALL, Anchor::Start)));
        }
        let mut key = Vec::new();
        if on_sling.is_none() {
            bottom = key_rows(&line.sling, bottom + BETWEEN, ends, &mut key, &mut words)?;
        }

        // The lanes.
        let lane_base = |lane: usize| lanes_foot - lane as f64 * LANE - SMALL * BELOW - (LANE - SMALL) / 2.0;
        let mut marks = Vec::new();
        for (index, (wish, place)) in above.wishes.iter().zip(&above.places).enumerate() {
            let [left, right] = place.across(wish);
            let (x, anchor) = match place.side {
                Side::Right => (left, Anchor::Start),
                Side::Left => (right, Anchor::End),
            };
            for (down, text) in place.lines.iter().enumerate() {
                let base = lane_base(place.top() - 1 - down);
                words.push(Word::new(text, [x, base], SMALL, anchor).weighing(wish.weight));
            }
            let middle = lane_base(place.top() - 1) - SMALL * CAPITAL / 2.0;
            marks.push(Mark { at: [wish.x, middle], kind: line.events.get(index).map(|event| event.kind) });
        }
        let flag = above.flag.map(|([left, right], text)| {
            let bottom = lanes_foot;
            (Space { left, top: bottom - FLAG, right, bottom }, text)
        });
        let height = bottom + EDGE;
        Ok(Self {
            height,
            days,
            stages,
            sling,
            axis,
            foot,
            brackets,
            named_days,
            flag,
            marks,
            key,
            words,
            on_sling: sling_words,
        })
    }
}

impl<'l> Above<'l> {
    fn of(line: &'l RecoveryLine, days: &Scale, ends: [f64; 2], names: Vec<Wish<'l>>) -> Result<Self, ChartError> {
        let events = line.events.iter().map(|event| Wish {
            x: days.at(f64::from(event.day)),
            mark: symbols::HALF,
            label: &event.label,
            weight: Weight::Regular,
        });
        let wishes: Vec<Wish<'l>> = events.chain(names).collect();
        let flag = match &line.today {
            Some((day, label)) => Some(flag(days.at(f64::from(*day)), label, &wishes, ends)?),
            None => None,
        };
        let taken: Vec<Block> =
            flag.iter().map(|(across, _)| Block { across: *across, lanes: [0, FLAG_LANES] }).collect();
        let places = lanes::places(&wishes, &taken, ends)?;
        let tops = places.iter().map(lanes::Place::top).chain(taken.iter().map(|block| block.lanes[1]));
        let lanes = tops.max().unwrap_or(0);
        Ok(Self { wishes, places, flag, lanes })
    }
}

/// The flag of today: over its line, and away from the hairlines of other days.
fn flag(x: f64, label: &Label, wishes: &[Wish<'_>], ends: [f64; 2]) -> Result<([f64; 2], String), ChartError> {
    let mut best: Option<(f64, [f64; 2], &str)> = None;
    for (form, shortened) in label.forms().zip([0.0, 1.0]) {
        let half = width_mm(form, LARGE, Weight::Bold) / 2.0 + FLAG_PAD;
        if ends[1] - ends[0] < half * 2.0 {
            continue;
        }
        for shift in SHIFTS {
            let middle = (x + shift * (half - FLAG_PAD)).clamp(ends[0] + half, ends[1] - half);
            let across = [middle - half, middle + half];
            let behind = wishes.iter().filter(|wish| {
                across[0] - GAP < wish.x && wish.x < across[1] + GAP && (wish.x - x).abs() > symbols::HALF
            });
            let cost = behind.count() as f64 * 2.0 + shift.abs() / 2.0 + shortened;
            if best.is_none_or(|(least, ..)| cost < least) {
                best = Some((cost, across, form));
            }
        }
    }
    let (_, across, form) = best.ok_or_else(|| ChartError::NoRoomForText(label.text.clone()))?;
    Ok((across, form.to_owned()))
}

fn lines_inside(name: &Name, [top, bottom]: [f64; 2], weight: Weight) -> Vec<Word> {
    let count = name.lines.len() as f64;
    let first = f64::midpoint(top, bottom) + SMALL * CAPITAL / 2.0 - (count - 1.0) * SMALL * PITCH / 2.0;
    let word = |(index, text): (usize, &String)| {
        Word::new(text, [name.x, first + index as f64 * SMALL * PITCH], SMALL, Anchor::Start).weighing(weight)
    };
    name.lines.iter().enumerate().map(word).collect()
}

/// The key to the bar of the sling, in rows; gives where it ends.
fn key_rows(
    sling: &[SlingSpan],
    top: f64,
    ends: [f64; 2],
    key: &mut Vec<(Space, usize)>,
    words: &mut Vec<Word>,
) -> Result<f64, ChartError> {
    let mut x = ends[0];
    let mut base = top + SMALL * ABOVE;
    let mut known: Vec<&SlingSpan> = Vec::new();
    for (index, run) in sling.iter().enumerate() {
        if known.iter().any(|other| other.wear == run.wear && other.name == run.name) {
            continue;
        }
        known.push(run);
        let room = ends[1] - ends[0] - SWATCH - GAP;
        let form = run.name.forms().find(|form| width_mm(form, SMALL, Weight::Regular) <= room);
        let form = form.ok_or_else(|| ChartError::NoRoomForText(run.name.text.clone()))?;
        let width = SWATCH + GAP + width_mm(form, SMALL, Weight::Regular);
        if x > ends[0] && x + width > ends[1] {
            x = ends[0];
            base += SMALL * PITCH;
        }
        let swatch = Space { left: x, top: base - SMALL * CAPITAL, right: x + SWATCH, bottom: base };
        key.push((swatch, index));
        words.push(Word::new(form, [x + SWATCH + GAP, base], SMALL, Anchor::Start));
        x += width + GAP * 2.0;
    }
    Ok(base + SMALL * BELOW)
}

pub(super) const fn weight(state: StageState) -> Weight {
    match state {
        StageState::Opened => Weight::Bold,
        StageState::NotOpened => Weight::Regular,
    }
}

/// Free at the border of the picture, in millimeters.
const EDGE: f64 = 0.5;
/// From the border to the ends of the line: half a mark.
pub(super) const MARGIN: f64 = 2.0;
/// Height of a lane.
const LANE: f64 = 4.0;
/// Lanes that the flag takes.
const FLAG_LANES: usize = 2;
const FLAG: f64 = 5.6;
const FLAG_PAD: f64 = 1.6;
const UNDER_LANES: f64 = 1.4;
const BRACKETS: f64 = 3.2;
const STAGE: f64 = 6.0;
const SLING: f64 = 4.8;
const BETWEEN: f64 = 1.2;
/// Length of a tick with a number.
pub(super) const TICK: f64 = 2.2;
const UNDER_TICK: f64 = 0.7;
const SWATCH: f64 = 6.0;
/// Height of a capital, in heights of type.
const CAPITAL: f64 = 0.66;
/// Where the flag may stand against its line, in halves of its width; the best first.
const SHIFTS: [f64; 9] = [0.0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1.0, -1.0];
