//! Where axes, panels, words and legend stand.

use super::super::error::ChartError;
use super::super::lanes::{self, Side, Wish};
use super::super::pen::{Place, Word, is_written};
use super::super::recovery::Label;
use super::super::scale::Scale;
use super::super::text_width::{width_mm, wrapped};
use super::super::tones::{ABOVE, BELOW, GAP, PITCH, SMALL};
use super::legend::Legend;
use super::styles::Names;
use super::{Axis, Bound, Multiples, Panel, Seen, Series, marks};
use crate::label::Space;
use crate::svg::{Anchor, Weight};

/// Everything in millimeters from the upper left corner.
#[derive(Debug)]
pub(super) struct Layout {
    pub(super) frames: Vec<Frame>,
    /// Values with a tick, level and upright.
    pub(super) ticks: [Vec<f64>; 2],
    pub(super) words: Vec<Word>,
    pub(super) legend: Legend,
    pub(super) legend_top: f64,
    pub(super) names: Names,
}

/// One panel in its place.
#[derive(Debug)]
pub(super) struct Frame {
    /// What the axes enclose, without the strip.
    pub(super) space: Space,
    pub(super) x: Scale,
    pub(super) y: Scale,
    /// Where readings stand that could not be taken.
    pub(super) strip: Option<Space>,
    /// Bent hairlines from the ends of reference lines to their texts.
    pub(super) hairlines: Vec<Vec<Place>>,
}

/// How much room each panel gives away around its frame.
struct Room {
    left: f64,
    right: f64,
    above: f64,
    strip: f64,
}

impl Layout {
    pub(super) fn of(of: &Multiples, [across, up]: [[f64; 2]; 2]) -> Result<Self, ChartError> {
        let [width, height] = of.size_mm;
        let no_room = || ChartError::NoRoom { width_mm: width, height_mm: height };
        let ends = [EDGE, width - EDGE];
        let names = Names::of(of)?;
        let legend = Legend::of(of, &names, ends)?;
        let mut words = Vec::new();

        // From below: the legend, the title of the level axis, its numbers.
        let legend_top = height - EDGE - legend.height;
        let below = if legend.height > 0.0 { legend_top - GAP } else { legend_top };
        let x_title = broken(&of.x.title, ends[1] - ends[0])?;
        let foot = below - x_title.len() as f64 * SMALL * PITCH - SMALL - TICK - UNDER_TICK * 2.0;
        // From above: the title of the upright axis.
        let mut top = EDGE;
        for line in broken(&of.y.title, ends[1] - ends[0])? {
            words.push(Word::new(&line, [ends[0], top + SMALL * ABOVE], SMALL, Anchor::Start));
            top += SMALL * PITCH;
        }
        top += GAP;

        let columns = usize::from(of.columns).min(of.panels.len());
        let rows = of.panels.len().div_ceil(columns);
        let [cell_width, cell_height] = [(ends[1] - ends[0]) / columns as f64, (foot - top) / rows as f64];
        let has = |is: fn(&Seen) -> bool| {
            of.panels.iter().flat_map(|p| &p.series).flat_map(Series::readings).any(|reading| is(&reading.seen))
        };
        let y_ticks = most_ticks(&of.y, up, |ticks| {
            let step = (ticks[1] - ticks[0]) / (up[1] - up[0]) * (cell_height - SMALL);
            step >= SMALL * ROWS_A_TICK
        });
        let y_ticks = y_ticks.ok_or_else(no_room)?;
        let number = |text: &str| width_mm(text, SMALL, Weight::Regular);
        let numbers = y_ticks.iter().map(|tick| number(&of.y.words(*tick))).fold(0.0, f64::max);
        let margin = margin_texts(of, (cell_width * MARGIN).max(MARGIN_LEAST))?;
        let has_headings = of.panels.iter().any(|panel| is_written(&panel.heading));
        let left = numbers + TICK + UNDER_TICK;
        let right = margin + if margin > 0.0 { ELBOW + GAP } else { SMALL * HALF_NUMBER };
        let inner = [left, cell_width - right];
        let lanes = lanes_above(of, &Scale::new(across, inner), inner)?;
        let room = Room {
            left,
            right,
            above: lanes as f64 * LANE + if has_headings { SMALL * PITCH } else { 0.0 } + GAP / 2.0,
            strip: if has(|seen| *seen == Seen::CouldNot) { STRIP } else { 0.0 },
        };
        let inset = [
            if has(|seen| matches!(seen, Seen::MoreThan(_))) { marks::ARROW + GAP / 2.0 } else { 0.0 },
            if has(|seen| matches!(seen, Seen::LessThan(_))) { marks::ARROW + GAP / 2.0 } else { 0.0 },
        ];

        let mut frames = Vec::new();
        for (index, panel) in of.panels.iter().enumerate() {
            let (column, row) = (index % columns, index / columns);
            let left = ends[0] + column as f64 * cell_width + room.left;
            let cell_top = top + row as f64 * cell_height;
            let space = Space {
                left,
                top: cell_top + room.above,
                right: ends[0] + (column + 1) as f64 * cell_width - room.right,
                bottom: cell_top + cell_height - room.strip - if row + 1 < rows { BETWEEN_ROWS } else { 0.0 },
            };
            if space.right - space.left < LEAST || space.bottom - space.top < LEAST {
                return Err(no_room());
            }
            let strip =
                (room.strip > 0.0).then_some(Space { top: space.bottom, bottom: space.bottom + room.strip, ..space });
            let x = Scale::new(across, [space.left, space.right]);
            let y = Scale::new(up, [space.bottom - inset[1], space.top + inset[0]]);
            let mut frame = Frame { space, x, y, strip, hairlines: Vec::new() };
            if is_written(&panel.heading) {
                let too_long = || ChartError::NoRoomForText(panel.heading.clone());
                let heading = wrapped(&panel.heading, SMALL, Weight::Bold, space.right - space.left + room.right);
                let heading = heading.filter(|lines| lines.len() == 1).ok_or_else(too_long)?;
                words.push(Word::new(&heading[0], [left, cell_top + SMALL * ABOVE], SMALL, Anchor::Start).bold());
            }
            beside(&mut frame, panel, margin, &mut words)?;
            over(&mut frame, panel, &mut words)?;
            frames.push(frame);
        }
        let first = frames.first().ok_or_else(no_room)?;
        let x_ticks = most_ticks(&of.x, across, |ticks| row_fits(&of.x, &first.x, ticks, columns > 1));
        let ticks = [x_ticks.ok_or_else(no_room)?, y_ticks];
        if !steps_are_apart(&first.y, &ticks[1]) {
            return Err(no_room());
        }
        for (index, frame) in frames.iter().enumerate() {
            if index + columns >= frames.len() {
                let bottom = frame.strip.map_or(frame.space.bottom, |strip| strip.bottom);
                let base = bottom + TICK + UNDER_TICK + SMALL * ABOVE;
                words.extend(
                    ticks[0]
                        .iter()
                        .map(|tick| Word::new(&of.x.words(*tick), [frame.x.at(*tick), base], SMALL, Anchor::Middle)),
                );
            }
            if index % columns == 0 {
                words.extend(ticks[1].iter().map(|tick| {
                    let base = frame.y.at(*tick) + SMALL * CAPITAL / 2.0;
                    Word::new(&of.y.words(*tick), [frame.space.left - TICK - UNDER_TICK, base], SMALL, Anchor::End)
                }));
            }
        }
        for (index, line) in x_title.iter().enumerate() {
            let base = below - (x_title.len() - index) as f64 * SMALL * PITCH + SMALL * ABOVE;
            words.push(Word::new(line, [ends[1], base], SMALL, Anchor::End));
        }
        Ok(Self { frames, ticks, words, legend, legend_top, names })
    }
}

fn broken(text: &str, width: f64) -> Result<Vec<String>, ChartError> {
    wrapped(text, SMALL, Weight::Regular, width).ok_or_else(|| ChartError::NoRoomForText(text.to_owned()))
}

/// As many ticks as fit, two or more.
fn most_ticks(axis: &Axis, range: [f64; 2], fits: impl Fn(&[f64]) -> bool) -> Option<Vec<f64>> {
    let some = (1..=MOST_TICKS).rev().map(|most| axis.ticks(range, most));
    let mut some = some.filter(|ticks| ticks.len() >= 2 && !ticks.is_empty());
    some.find(|ticks| fits(ticks))
}

/// Whether the numbers of a level axis stand apart, and, where another panel follows, clear of the next one's.
fn row_fits(axis: &Axis, scale: &Scale, ticks: &[f64], has_neighbor: bool) -> bool {
    let half = |tick: &f64| width_mm(&axis.words(*tick), SMALL, Weight::Regular) / 2.0;
    let apart = |one: &f64, other: &f64| scale.at(*one) + half(one) + GAP <= scale.at(*other) - half(other);
    let ends_fit = ticks.first().zip(ticks.last()).is_none_or(|(first, last)| {
        // Numbers are narrow; a longer one at an end needs a chart of its own.
        !has_neighbor || half(first) + half(last) <= SMALL * HALF_NUMBER * 2.0
    });
    ticks.windows(2).all(|pair| apart(&pair[0], &pair[1])) && ends_fit
}

fn steps_are_apart(scale: &Scale, ticks: &[f64]) -> bool {
    ticks.windows(2).all(|pair| (scale.at(pair[0]) - scale.at(pair[1])).abs() >= SMALL)
}

/// The widest text beside a panel, not wider than there is room for.
fn margin_texts(of: &Multiples, most: f64) -> Result<f64, ChartError> {
    let mut widest: f64 = 0.0;
    for series in of.panels.iter().flat_map(|panel| &panel.series) {
        if let Series::Reference { text, at: Bound::Y(_) } = series {
            for line in broken(text, most)? {
                widest = widest.max(width_mm(&line, SMALL, Weight::Regular));
            }
        }
    }
    Ok(widest)
}

/// The texts of level reference lines, beside the frame.
fn beside(frame: &mut Frame, panel: &Panel, margin: f64, words: &mut Vec<Word>) -> Result<(), ChartError> {
    let mut texts: Vec<(f64, Vec<String>)> = Vec::new();
    for series in &panel.series {
        if let Series::Reference { text, at: Bound::Y(y) } = series {
            texts.push((frame.y.at(*y), broken(text, margin + GAP / 2.0)?));
        }
    }
    texts.sort_by(|one, other| one.0.total_cmp(&other.0));
    let height = |lines: &Vec<String>| lines.len() as f64 * SMALL * PITCH;
    // Each as high as its line, pushed down by the one above, then all pushed up from below.
    let mut tops: Vec<f64> = Vec::new();
    let mut free = f64::MIN;
    for (y, lines) in &texts {
        let top = (y - height(lines) / 2.0).max(free);
        free = top + height(lines);
        tops.push(top);
    }
    let mut floor = frame.strip.map_or(frame.space.bottom, |strip| strip.bottom) + SMALL * PITCH / 2.0;
    for (top, (_, lines)) in tops.iter_mut().zip(&texts).rev() {
        *top = top.min(floor - height(lines));
        floor = *top;
    }
    if floor < frame.space.top - SMALL * PITCH {
        let longest = texts.first().map(|(_, lines)| lines.join(" "));
        return Err(ChartError::NoRoomForText(longest.unwrap_or_default()));
    }
    let x = frame.space.right;
    for ((y, lines), top) in texts.iter().zip(tops) {
        let middle = top + height(lines) / 2.0;
        frame.hairlines.push(vec![[x, *y], [x + ELBOW * 0.3, *y], [x + ELBOW * 0.8, middle], [x + ELBOW, middle]]);
        for (index, line) in lines.iter().enumerate() {
            let base = top + SMALL * (PITCH * index as f64 + ABOVE + (PITCH - 1.0) / 2.0);
            words.push(Word::new(line, [x + ELBOW + GAP / 2.0, base], SMALL, Anchor::Start));
        }
    }
    Ok(())
}

/// Labels of upright reference lines of a panel.
fn upright(panel: &Panel) -> Vec<(f64, Label)> {
    let of = |series: &Series| match series {
        Series::Reference { text, at: Bound::X(x) } => Some((*x, Label::new(text))),
        _ => None,
    };
    panel.series.iter().filter_map(of).collect()
}

/// How many lanes the texts of upright reference lines need above the panels.
fn lanes_above(of: &Multiples, x: &Scale, ends: [f64; 2]) -> Result<usize, ChartError> {
    let mut most = 0;
    for panel in &of.panels {
        let labels = upright(panel);
        let places = lanes::places(&wishes(&labels, x), &[], ends)?;
        most = places.iter().map(lanes::Place::top).fold(most, usize::max);
    }
    Ok(most)
}

fn wishes<'l>(labels: &'l [(f64, Label)], scale: &Scale) -> Vec<Wish<'l>> {
    let wish = |(x, label): &'l (f64, Label)| Wish { x: scale.at(*x), mark: 0.0, label, weight: Weight::Regular };
    labels.iter().map(wish).collect()
}

/// The texts of upright reference lines, above the frame.
fn over(frame: &mut Frame, panel: &Panel, words: &mut Vec<Word>) -> Result<(), ChartError> {
    let labels = upright(panel);
    let wishes = wishes(&labels, &frame.x);
    let places = lanes::places(&wishes, &[], [frame.space.left, frame.space.right])?;
    for (wish, place) in wishes.iter().zip(&places) {
        let [left, right] = place.across(wish);
        let (x, anchor) = if place.side == Side::Right { (left, Anchor::Start) } else { (right, Anchor::End) };
        let base = |lane: usize| frame.space.top - GAP / 2.0 - lane as f64 * LANE - SMALL * BELOW;
        for (down, line) in place.lines.iter().enumerate() {
            words.push(Word::new(line, [x, base(place.top() - 1 - down)], SMALL, anchor));
        }
        let tip = base(place.top() - 1) - SMALL * CAPITAL;
        frame.hairlines.push(vec![[wish.x, tip], [wish.x, frame.space.top]]);
    }
    Ok(())
}

/// Free at the border, in millimeters.
const EDGE: f64 = 0.8;
/// Length of a tick.
pub(super) const TICK: f64 = 1.2;
const UNDER_TICK: f64 = 0.7;
/// The least distance of two ticks, in heights of type.
const ROWS_A_TICK: f64 = 1.7;
const MOST_TICKS: u16 = 40;
/// The part of a panel that texts beside it take at most, and at least, in millimeters.
const MARGIN: f64 = 0.3;
const MARGIN_LEAST: f64 = 18.0;
/// From the end of a reference line to its text.
const ELBOW: f64 = 3.0;
/// Half of a number of three digits, in heights of type.
const HALF_NUMBER: f64 = 0.75;
const BETWEEN_ROWS: f64 = 3.0;
const STRIP: f64 = 4.2;
const LANE: f64 = 3.8;
/// No frame is smaller.
const LEAST: f64 = 9.0;
const CAPITAL: f64 = 0.66;
