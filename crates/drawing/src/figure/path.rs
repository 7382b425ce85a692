//! Curves as SVG writes them: whole tenths of a millimeter, each place relative to the one before.

use std::fmt::Write as _;

use kurbo::{BezPath, PathEl, Point};

/// Whole units of the picture from parts of stature.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Grid {
    pub(crate) origin: (i32, i32),
    pub(crate) units_per_stature: f64,
    /// 1, or −1 for the mirror image.
    pub(crate) across: i32,
}

impl Grid {
    /// The unit a place falls on. The mirror image is taken after rounding, so that it is exact.
    pub(crate) fn place(&self, point: Point) -> (i32, i32) {
        #[expect(clippy::cast_possible_truncation, reason = "stops at the border")]
        let unit = |length: f64| (length * self.units_per_stature).round() as i32;
        let (x, y) = (unit(point.x).saturating_mul(self.across), unit(point.y));
        (self.origin.0.saturating_add(x), self.origin.1.saturating_sub(y))
    }
}

/// The commands of some paths, one after the other.
pub(crate) fn commands(path: &BezPath, grid: &Grid) -> String {
    let mut writer = Writer::default();
    let mut start = (0, 0);
    for element in path.elements() {
        match *element {
            PathEl::MoveTo(to) => {
                let to = grid.place(to);
                writer.command(if writer.text.is_empty() { 'M' } else { 'm' });
                writer.pair(to);
                writer.at = to;
                start = to;
            }
            PathEl::LineTo(to) => {
                let to = grid.place(to);
                if to != writer.at {
                    writer.command('l');
                    writer.pair(to);
                    writer.at = to;
                }
            }
            PathEl::CurveTo(a, b, to) => {
                let [a, b, to] = [a, b, to].map(|point| grid.place(point));
                if [a, b, to] == [writer.at; 3] {
                    continue;
                }
                writer.command('c');
                for place in [a, b, to] {
                    writer.pair(place);
                }
                writer.at = to;
            }
            PathEl::ClosePath => {
                writer.command('z');
                writer.at = start;
            }
            PathEl::QuadTo(..) => {}
        }
    }
    writer.text
}

#[derive(Default)]
struct Writer {
    text: String,
    at: (i32, i32),
    last: Option<char>,
}

impl Writer {
    /// Begins a command; the letter is left out where the one before goes on.
    fn command(&mut self, letter: char) {
        let goes_on = self.last == Some(letter) && matches!(letter, 'c' | 'l');
        if !goes_on {
            self.text.push(letter);
        }
        self.last = Some(letter);
    }

    fn pair(&mut self, place: (i32, i32)) {
        let way = if self.text == "M" { place } else { (place.0 - self.at.0, place.1 - self.at.1) };
        for number in [way.0, way.1] {
            let after_digit = self.text.ends_with(|letter: char| letter.is_ascii_digit());
            if after_digit && number >= 0 {
                self.text.push(' ');
            }
            let _ = write!(self.text, "{number}");
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const GRID: Grid = Grid { origin: (100, 200), units_per_stature: 10.0, across: 1 };

    #[test]
    fn numbers_stand_as_close_as_they_can() {
        let mut path = BezPath::new();
        path.move_to((0.0, 0.0));
        path.curve_to((1.0, 0.0), (2.0, -1.0), (2.0, -2.0));
        path.line_to((-1.0, -2.0));
        path.close_path();
        path.move_to((1.0, 1.0));
        path.line_to((1.0, 2.0));
        assert_eq!(commands(&path, &GRID), "M100 200c10 0 20 10 20 20l-30 0zm10-10l0-10");
    }

    #[test]
    fn a_mirror_changes_only_the_sign_of_x() {
        let mirror = Grid { across: -1, ..GRID };
        for x in [0.25, 0.3449, -0.55, 1.25] {
            let [a, b] = [&GRID, &mirror].map(|grid| grid.place(Point::new(x, 0.3)));
            assert_eq!((a.0 - 100, a.1), (100 - b.0, b.1));
        }
    }
}
