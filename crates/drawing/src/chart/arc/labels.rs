//! Where the words of an arc stand.

use body::Angle;

use super::super::error::ChartError;
use super::super::pen::{Place, Word, is_written};
use super::super::text_width::{width_mm, wrapped};
use super::super::tones::{ABOVE, LARGE, PITCH, SMALL};
use super::Arc;
use super::paint::{self, Levels};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Anchor, Weight};

/// The words of an arc, and hairlines to those that stand further away.
#[derive(Debug, Default)]
pub(super) struct Labels {
    pub(super) words: Vec<Word>,
    pub(super) hairlines: Vec<[Place; 2]>,
    /// How far the words stand from their marks, in millimeters, and what that costs beside.
    pub(super) cost: f64,
    /// How far out each measured value stands.
    pub(super) levels: Levels,
}

/// A word that wants a place.
struct Wish<'t> {
    text: &'t str,
    at: Angle,
    /// From where its hairline goes, from the joint.
    from: f64,
    size: f64,
    weight: Weight,
    color: Color,
}

/// Places for all words; none where they would cost more than `most` together.
///
/// # Method
/// The limit first, then what was measured, then the goal, other angles, and zero. Each word goes to the cheapest place
/// outside of the arc: near its angle, near the edge, in one line, on nothing drawn. No word ever lies on another word,
/// on a mark or on a hairline, or reaches over the border.
pub(super) fn placed(
    arc: &Arc,
    page: Space,
    is_taken: &impl Fn(Place) -> bool,
    most: f64,
) -> Result<Option<Labels>, ChartError> {
    let levels = Levels::of(arc);
    let mut blocks = paint::covered(arc, &levels);
    if !blocks.iter().all(|mark| page.holds(mark)) {
        return Err(ChartError::NoRoom { width_mm: page.right - page.left, height_mm: page.bottom - page.top });
    }
    let mut labels = Labels { levels, ..Labels::default() };
    for wish in wishes(arc, &labels.levels) {
        let forms = forms(&wish);
        let best = cheapest(candidates(arc, page, &wish, &forms), &blocks, &labels.words, is_taken);
        let best = best.ok_or_else(|| ChartError::NoRoomForText(wish.text.to_owned()))?;
        labels.cost += best.cost;
        if labels.cost > most {
            return Ok(None);
        }
        blocks.push(best.space);
        if let Some(line) = best.hairline {
            blocks.extend(along(line).map(|place| Space::around(place, SPECK, SPECK)));
            labels.hairlines.push(line);
        }
        let middle = f64::midpoint(best.space.left, best.space.right);
        for (index, line) in forms[best.form].lines.iter().enumerate() {
            let base = best.space.top + wish.size * (ABOVE + PITCH * index as f64);
            let word = Word::new(line, [middle, base], wish.size, Anchor::Middle);
            labels.words.push(word.weighing(wish.weight).colored(wish.color).with_halo(HALO));
        }
    }
    Ok(Some(labels))
}

/// The cheapest place on which nothing lies.
fn cheapest(
    mut candidates: Vec<Candidate>,
    blocks: &[Space],
    words: &[Word],
    is_taken: &impl Fn(Place) -> bool,
) -> Option<Candidate> {
    candidates.sort_by(|one, other| one.cost.total_cmp(&other.cost));
    let mut best: Option<Candidate> = None;
    for candidate in candidates {
        // What lies on nothing costs no more than this; those that follow cost at least as much.
        if best.as_ref().is_some_and(|best| best.cost <= candidate.cost) {
            break;
        }
        let room = candidate.space.grown(CLEAR);
        let is_blocked = blocks.iter().any(|block| block.meets(&room));
        if is_blocked || candidate.hairline.is_some_and(|line| crosses(words, line)) {
            continue;
        }
        let cost = candidate.cost + share(candidate.space, is_taken) * TAKEN;
        if best.as_ref().is_none_or(|best| cost < best.cost) {
            best = Some(Candidate { cost, ..candidate });
        }
    }
    best
}

fn wishes<'a>(arc: &'a Arc, levels: &Levels) -> Vec<Wish<'a>> {
    let mut wishes = Vec::new();
    let edge = arc.radius_mm;
    if let Some((at, text)) = &arc.limit {
        let (weight, color) = (Weight::Bold, Color::STOP);
        wishes.push(Wish { text, at: *at, from: edge + paint::STOP_OUT, size: LARGE, weight, color });
    }
    for (measured, level) in arc.measured.iter().zip(&levels.0) {
        let (weight, color) = (Weight::Regular, Color::INK);
        wishes.push(Wish { text: &measured.text, at: measured.value, from: *level, size: SMALL, weight, color });
    }
    if let Some(([from, to], text)) = &arc.goal {
        let at = Angle::from_degrees(f64::midpoint(from.degrees(), to.degrees()));
        let (weight, color) = (Weight::Regular, Color::MOVEMENT);
        wishes.push(Wish { text, at, from: edge, size: SMALL, weight, color });
    }
    let (weight, color) = (Weight::Regular, Color::INK);
    for (at, text) in &arc.notes {
        wishes.push(Wish { text, at: *at, from: edge + paint::NOTE, size: SMALL, weight, color });
    }
    wishes.push(Wish { text: &arc.zero_text, at: Angle::ZERO, from: edge, size: SMALL, weight, color });
    wishes.retain(|wish| is_written(wish.text));
    wishes
}

/// A place for a word.
#[derive(Debug, Clone, Copy)]
struct Candidate {
    cost: f64,
    space: Space,
    hairline: Option<[Place; 2]>,
    form: usize,
}

/// A way to write a word.
struct Form {
    lines: Vec<String>,
    width: f64,
    height: f64,
    cost: f64,
}

/// Places within the page, in no order.
fn candidates(arc: &Arc, page: Space, wish: &Wish<'_>, forms: &[Form]) -> Vec<Candidate> {
    let anchor = arc.place(wish.at, wish.from);
    let [x, y] = arc.center_mm;
    let mut candidates = Vec::with_capacity(forms.len() * OFFSETS.len() * usize::from(FAR));
    for degrees in OFFSETS {
        let direction = arc.direction(wish.at + Angle::from_degrees(degrees));
        let [right, up] = [direction.cos(), direction.sin()];
        for (form, Form { width, height, cost, .. }) in forms.iter().enumerate() {
            // The nearest corner of the word clears the edge.
            let near = wish.from + NEAR + right.abs() * width / 2.0 + up.abs() * height / 2.0;
            for far in 0..FAR {
                let radius = near + f64::from(far) * FURTHER;
                let space = Space::around([x + right * radius, y - up * radius], *width, *height);
                if !page.holds(&space) {
                    continue;
                }
                let nearest = [anchor[0].clamp(space.left, space.right), anchor[1].clamp(space.top, space.bottom)];
                let length = (nearest[0] - anchor[0]).hypot(nearest[1] - anchor[1]);
                let hairline = (length > UNLED).then_some([anchor, nearest]);
                let cost = cost + length + if hairline.is_some() { LED } else { 0.0 };
                candidates.push(Candidate { cost, space, hairline, form });
            }
        }
    }
    candidates
}

/// In one line; in two of much the same length.
fn forms(wish: &Wish<'_>) -> Vec<Form> {
    let half = width_mm(wish.text, wish.size, wish.weight) * 0.6;
    let one = wrapped(wish.text, wish.size, wish.weight, f64::INFINITY);
    let two = wrapped(wish.text, wish.size, wish.weight, half).filter(|lines| lines.len() == 2);
    let form = |(lines, cost): (Vec<String>, f64)| {
        let width = lines.iter().map(|line| width_mm(line, wish.size, wish.weight)).fold(0.0, f64::max);
        let height = wish.size * (1.0 + PITCH * (lines.len() - 1) as f64);
        Form { lines, width, height, cost }
    };
    one.map(|lines| (lines, 0.0)).into_iter().chain(two.map(|lines| (lines, ANOTHER_LINE))).map(form).collect()
}

/// Whether a hairline would go through a word.
fn crosses(words: &[Word], line: [Place; 2]) -> bool {
    along(line).any(|place| {
        let speck = Space::around(place, SPECK, SPECK);
        words.iter().any(|word| word.space().meets(&speck))
    })
}

fn along([from, to]: [Place; 2]) -> impl Iterator<Item = Place> {
    let length = (to[0] - from[0]).hypot(to[1] - from[1]);
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "no hairline is that long")]
    let count = (length / SPECK).ceil().max(1.0) as u16;
    (0..=count).map(move |index| {
        let share = f64::from(index) / f64::from(count);
        [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]
    })
}

/// The part of a space on which something lies already.
fn share(space: Space, is_taken: &impl Fn(Place) -> bool) -> f64 {
    let mut taken = 0.0;
    for row in 0..ROWS {
        for column in 0..COLUMNS {
            let [x, y] = [f64::from(column) / f64::from(COLUMNS - 1), f64::from(row) / f64::from(ROWS - 1)];
            let place = [space.left + (space.right - space.left) * x, space.top + (space.bottom - space.top) * y];
            taken += f64::from(u8::from(is_taken(place)));
        }
    }
    taken / f64::from(ROWS * COLUMNS)
}

const ROWS: u8 = 3;
const COLUMNS: u8 = 9;
/// Between a mark and its word, in millimeters.
const NEAR: f64 = 0.9;
/// What stays free around a word.
const CLEAR: f64 = 0.5;
const HALO: f64 = 0.5;
/// The side of a piece of a hairline.
const SPECK: f64 = 0.5;
/// How far a word may stand from its mark without a hairline.
const UNLED: f64 = 3.2;
/// Angles tried, from that of the mark, in degrees.
const OFFSETS: [f64; 17] =
    [0.0, 4.0, -4.0, 8.0, -8.0, 13.0, -13.0, 18.0, -18.0, 24.0, -24.0, 31.0, -31.0, 40.0, -40.0, 50.0, -50.0];
/// Distances tried, and from one to the next.
const FAR: u8 = 16;
const FURTHER: f64 = 1.3;

// What a place costs, in millimeters from its mark.
const TAKEN: f64 = 40.0;
const LED: f64 = 6.0;
const ANOTHER_LINE: f64 = 1.0;
