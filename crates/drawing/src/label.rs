//! Where a word finds room in a picture.

/// A rectangle in units of the picture, Y down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Space {
    pub(crate) left: f64,
    pub(crate) top: f64,
    pub(crate) right: f64,
    pub(crate) bottom: f64,
}

impl Space {
    /// Around a middle.
    pub(crate) fn around([x, y]: [f64; 2], width: f64, height: f64) -> Self {
        let [half, up] = [width / 2.0, height / 2.0];
        Self { left: x - half, top: y - up, right: x + half, bottom: y + up }
    }

    /// Whether two have a place in common.
    pub(crate) fn meets(&self, other: &Self) -> bool {
        self.left < other.right && other.left < self.right && self.top < other.bottom && other.top < self.bottom
    }

    /// Whether another lies wholly inside.
    pub(crate) fn holds(&self, other: &Self) -> bool {
        self.left <= other.left && other.right <= self.right && self.top <= other.top && other.bottom <= self.bottom
    }

    /// The same, larger on every side.
    pub(crate) fn grown(&self, by: f64) -> Self {
        Self { left: self.left - by, top: self.top - by, right: self.right + by, bottom: self.bottom + by }
    }

    /// Places spread evenly over it.
    fn samples(&self) -> impl Iterator<Item = [f64; 2]> {
        let Self { left, top, right, bottom } = *self;
        let share = |at: u8, of: u8| f64::from(at) / f64::from(of - 1);
        let row = move |row: u8| {
            (0..COLUMNS).map(move |column| {
                [left + (right - left) * share(column, COLUMNS), top + (bottom - top) * share(row, ROWS)]
            })
        };
        (0..ROWS).flat_map(row)
    }
}

/// The middle of the first place that is free, or of the one that covers least.
///
/// # Units and shape
/// `places` are middles, the best first; `is_taken` says whether something of the picture lies at a place; `others` are
/// words that stand already; `page` is what the word must stay inside.
pub(crate) fn settle(
    places: &[[f64; 2]],
    [width, height]: [f64; 2],
    is_taken: impl Fn([f64; 2]) -> bool,
    others: &[Space],
    page: Space,
) -> Option<[f64; 2]> {
    let mut best: Option<(f64, [f64; 2])> = None;
    for (rank, place) in places.iter().enumerate() {
        let space = Space::around(*place, width, height);
        if !page.holds(&space) || others.iter().any(|other| other.meets(&space)) {
            continue;
        }
        let count = f64::from(ROWS) * f64::from(COLUMNS);
        let covered = space.samples().filter(|sample| is_taken(*sample)).count() as f64 / count;
        // A little worse for being further down the list.
        let cost = covered * COVERED + rank as f64 / places.len() as f64;
        if best.is_none_or(|(least, _)| cost < least) {
            best = Some((cost, *place));
        }
    }
    best.map(|(_, place)| place)
}

const COLUMNS: u8 = 7;
const ROWS: u8 = 4;
/// How much worse a covered word is than one that stands further away.
const COVERED: f64 = 8.0;

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: Space = Space { left: 0.0, top: 0.0, right: 100.0, bottom: 100.0 };

    #[test]
    fn a_free_place_is_taken_before_a_covered_one() {
        let covered = |place: [f64; 2]| place[0] < 50.0;
        let found = settle(&[[20.0, 20.0], [80.0, 20.0]], [10.0, 5.0], covered, &[], PAGE);
        assert_eq!(found, Some([80.0, 20.0]));
    }

    #[test]
    fn no_word_stands_on_another_or_beyond_the_page() {
        let places = [[98.0, 50.0], [50.0, 50.0], [50.0, 80.0]];
        let other = Space::around([50.0, 50.0], 20.0, 10.0);
        assert_eq!(settle(&places, [10.0, 5.0], |_| false, &[other], PAGE), Some([50.0, 80.0]));
        assert_eq!(settle(&places[..2], [10.0, 5.0], |_| false, &[other], PAGE), None);
    }
}
