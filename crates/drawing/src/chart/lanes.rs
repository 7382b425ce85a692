//! Lanes above the line: which label stands in which, so that none lies on another.

use super::error::ChartError;
use super::recovery::Label;
use super::text_width::{width_mm, wrapped};
use super::tones::{GAP, SMALL};
use crate::svg::Weight;

/// A label that wants a place above a day.
#[derive(Debug, Clone)]
pub(super) struct Wish<'l> {
    /// Where its hairline stands.
    pub(super) x: f64,
    /// Half the width of its mark; zero for a name without one.
    pub(super) mark: f64,
    pub(super) label: &'l Label,
    pub(super) weight: Weight,
}

/// Where a label stands.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Place {
    /// Its lines, from above.
    pub(super) lines: Vec<String>,
    pub(super) side: Side,
    /// The lane of its last line; 0 is the lowest.
    pub(super) lane: usize,
}

/// On which side of its hairline a label stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Side {
    Right,
    Left,
}

/// What is taken: from left to right, from the lowest lane to the first free one above.
#[derive(Debug, Clone, Copy)]
pub(super) struct Block {
    pub(super) across: [f64; 2],
    pub(super) lanes: [usize; 2],
}

impl Block {
    fn meets(&self, other: &Self, gap: f64) -> bool {
        self.across[0] < other.across[1] + gap
            && other.across[0] < self.across[1] + gap
            && self.lanes[0] < other.lanes[1]
            && other.lanes[0] < self.lanes[1]
    }
}

impl Place {
    /// The first lane above it.
    pub(super) const fn top(&self) -> usize {
        self.lane + self.lines.len()
    }

    /// From left to right what its text covers.
    pub(super) fn across(&self, wish: &Wish<'_>) -> [f64; 2] {
        let width = self.lines.iter().map(|line| width_mm(line, SMALL, wish.weight)).fold(0.0, f64::max);
        match self.side {
            Side::Right => [wish.x + wish.mark + BESIDE, wish.x + wish.mark + BESIDE + width],
            Side::Left => [wish.x - wish.mark - BESIDE - width, wish.x - wish.mark - BESIDE],
        }
    }

    fn blocks(&self, wish: &Wish<'_>) -> Blocks {
        let half = wish.mark.max(HAIRLINE);
        Blocks {
            text: Block { across: self.across(wish), lanes: [self.lane, self.top()] },
            mark: Block { across: [wish.x - half, wish.x + half], lanes: [self.top() - 1, self.top()] },
            line: Block { across: [wish.x - HAIRLINE, wish.x + HAIRLINE], lanes: [0, self.top()] },
        }
    }
}

/// What one label takes.
#[derive(Debug, Clone, Copy)]
struct Blocks {
    text: Block,
    mark: Block,
    line: Block,
}

/// A place for every wish between two ends of the picture, beside what is taken.
///
/// # Method
/// One after the other, each at the cheapest place: low, in one line, long, to the right. A hairline goes behind a text
/// only where nothing else is left. From the left, from the right, and in some mixed orders, always the same ones: the
/// cheapest outcome is taken.
pub(super) fn places(wishes: &[Wish<'_>], taken: &[Block], ends: [f64; 2]) -> Result<Vec<Place>, ChartError> {
    let mut from_left: Vec<usize> = (0..wishes.len()).collect();
    from_left.sort_by(|one, other| wishes[*one].x.total_cmp(&wishes[*other].x));
    let mut orders = vec![from_left.iter().rev().copied().collect(), from_left.clone()];
    let mut mix = Mix(1);
    let mixed = if wishes.len() > 2 { MIXED } else { 0 };
    orders.extend((0..mixed).map(|_| mix.shuffled(&from_left)));
    let mut best: Option<(f64, Vec<Place>)> = None;
    for order in orders {
        let most = best.as_ref().map_or(f64::INFINITY, |(least, _)| *least);
        if let Some(cheaper) = in_order(&order, wishes, taken, ends, most)? {
            best = Some(cheaper);
        }
    }
    Ok(best.map(|(_, places)| places).unwrap_or_default())
}

/// The same mixed orders every time: a linear congruence.
struct Mix(u32);

impl Mix {
    fn shuffled(&mut self, of: &[usize]) -> Vec<usize> {
        let mut keyed: Vec<(u32, usize)> = of.iter().map(|index| (self.next(), *index)).collect();
        keyed.sort_unstable();
        keyed.into_iter().map(|(_, index)| index).collect()
    }

    const fn next(&mut self) -> u32 {
        // Multiplier and increment of Numerical Recipes; the high bits are the mixed ones.
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        self.0 >> 8
    }
}

/// The places of one order with their cost; none where that is no less than `most`.
fn in_order(
    order: &[usize],
    wishes: &[Wish<'_>],
    taken: &[Block],
    ends: [f64; 2],
    most: f64,
) -> Result<Option<(f64, Vec<Place>)>, ChartError> {
    let mut placed: Vec<(usize, Place, Blocks)> = Vec::new();
    let mut sum = 0.0;
    for (turn, index) in order.iter().enumerate() {
        let wish = &wishes[*index];
        let later = &order[turn + 1..];
        let highest = placed.iter().map(|(_, place, _)| place.top());
        let highest = highest.chain(taken.iter().map(|block| block.lanes[1])).max().unwrap_or(0);
        let mut best: Option<(f64, Place)> = None;
        for (lines, price) in forms(wish, ends) {
            for (side, lane) in [Side::Right, Side::Left].into_iter().flat_map(|s| (0..=highest).map(move |l| (s, l))) {
                let place = Place { lines: lines.clone(), side, lane };
                let Some(crossed) = crossed(&place, wish, &placed, taken, ends) else { continue };
                let to_left = if side == Side::Left { LEFT } else { 0.0 };
                let ahead = forced(&place, wish, later.iter().map(|later| wishes[*later].x));
                let cost = price + (place.top() - 1) as f64 + to_left + crossed + ahead;
                if best.as_ref().is_none_or(|(least, _)| cost < *least) {
                    best = Some((cost, place));
                }
            }
        }
        let (cost, place) = best.ok_or_else(|| ChartError::NoRoomForText(wish.label.text.clone()))?;
        sum += cost;
        if sum >= most {
            return Ok(None);
        }
        let blocks = place.blocks(wish);
        placed.push((*index, place, blocks));
    }
    placed.sort_by_key(|(index, ..)| *index);
    Ok(Some((sum, placed.into_iter().map(|(_, place, _)| place).collect())))
}

/// The price of what its hairline would cross; `None` where the text has no room.
fn crossed(
    place: &Place,
    wish: &Wish<'_>,
    placed: &[(usize, Place, Blocks)],
    taken: &[Block],
    ends: [f64; 2],
) -> Option<f64> {
    let own = place.blocks(wish);
    if own.text.across[0] < ends[0] || ends[1] < own.text.across[1] {
        return None;
    }
    let mut cost = 0.0;
    for block in taken {
        if own.text.meets(block, GAP) || own.mark.meets(block, GAP) {
            return None;
        }
        cost += if own.line.meets(block, 0.0) { BEHIND } else { 0.0 };
    }
    for (_, _, other) in placed {
        let on_text = own.text.meets(&other.text, GAP) || own.text.meets(&other.mark, GAP);
        if on_text || own.mark.meets(&other.text, GAP) || own.mark.meets(&other.mark, 0.0) {
            return None;
        }
        if own.text.meets(&other.line, GAP / 2.0) {
            return None;
        }
        cost += if own.line.meets(&other.text, GAP / 2.0) { BEHIND } else { 0.0 };
        // Two marks of one day stand above one another on one hairline.
        let is_same_day = (own.line.across[0] - other.line.across[0]).abs() < HAIRLINE;
        let touches = own.line.meets(&other.mark, 0.0) || own.mark.meets(&other.line, 0.0);
        cost += if touches && !is_same_day { TOUCHES } else { 0.0 };
    }
    Some(cost)
}

/// The price of what a text makes harder for labels still to come: a hairline that has to pass a text in the lowest lane
/// has nowhere to go, one above may stay below it.
fn forced(place: &Place, wish: &Wish<'_>, later: impl Iterator<Item = f64>) -> f64 {
    let [left, right] = place.across(wish);
    let price = if place.lane == 0 { FORCED } else { HARDER };
    later.filter(|x| left - GAP / 2.0 < *x && *x < right + GAP / 2.0).count() as f64 * price
}

/// The ways to write a label, each with its price.
fn forms(wish: &Wish<'_>, ends: [f64; 2]) -> Vec<(Vec<String>, f64)> {
    let room = [ends[1] - wish.x - wish.mark - BESIDE, wish.x - wish.mark - BESIDE - ends[0]];
    let comfortable = ((ends[1] - ends[0]) * MOSTLY).max(NARROW);
    let mut forms: Vec<(Vec<String>, f64)> = Vec::new();
    for (form, shortened) in wish.label.forms().zip([0.0, SHORTENED]) {
        // A little more than half: two lines of much the same length.
        let half = width_mm(form, SMALL, wish.weight) * 0.6;
        for width in [f64::INFINITY, comfortable, half, room[0], room[1]] {
            let Some(lines) = wrapped(form, SMALL, wish.weight, width) else { continue };
            if lines.is_empty() || forms.iter().any(|(known, _)| *known == lines) {
                continue;
            }
            let more = lines.len().saturating_sub(1) as f64;
            forms.push((lines, shortened + more * ANOTHER_LINE));
        }
    }
    forms
}

/// Between a mark and its text, in millimeters.
const BESIDE: f64 = 0.7;
/// Half of what a hairline keeps free.
const HAIRLINE: f64 = 0.3;
/// The part of the width that a label takes at most before it is broken.
const MOSTLY: f64 = 0.34;
/// No label is broken to be narrower than this for looks.
const NARROW: f64 = 26.0;

/// How many mixed orders are tried.
const MIXED: u8 = 40;

// What a place costs, in lanes.
const LEFT: f64 = 0.4;
const ANOTHER_LINE: f64 = 0.5;
const SHORTENED: f64 = 1.6;
const TOUCHES: f64 = 4.0;
const FORCED: f64 = 15.0;
const HARDER: f64 = 1.5;
const BEHIND: f64 = 40.0;

#[cfg(test)]
mod tests {
    use super::*;

    fn placed(days: &[f64]) -> Vec<Place> {
        let label = Label::new("visit");
        let wish = |x: &f64| Wish { x: *x, mark: 1.4, label: &label, weight: Weight::Regular };
        places(&days.iter().map(wish).collect::<Vec<_>>(), &[], [0.0, 80.0]).expect("there is room")
    }

    #[test]
    fn marks_of_one_day_stand_above_one_another() {
        let lanes: Vec<usize> = placed(&[40.0, 40.0, 41.0]).iter().map(|place| place.lane).collect();
        for (index, lane) in lanes.iter().enumerate() {
            assert!(!lanes[..index].contains(lane), "{lanes:?}");
        }
        // 1.4 mm to each side: marks 2.9 mm apart stand side by side, and their texts on both sides.
        let lanes: Vec<usize> = placed(&[40.0, 42.9]).iter().map(|place| place.lane).collect();
        assert_eq!(lanes, [0, 0]);
    }

    #[test]
    fn a_label_that_fits_nowhere_is_said() {
        let label = Label::new("Rehabilitationsmaßnahmenbesprechung");
        let wish = Wish { x: 10.0, mark: 1.4, label: &label, weight: Weight::Regular };
        assert!(matches!(places(&[wish], &[], [0.0, 20.0]), Err(ChartError::NoRoomForText(_))));
    }
}
