//! Lines, and cutting them where an area begins or ends.

use kurbo::{Point, Rect, Vec2};

use super::region::{Region, overlaps};

/// A line of straight pieces.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Line {
    pub(crate) points: Vec<Point>,
    /// Whether the last point leads back to the first, which is not repeated.
    pub(crate) shape: Ends,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Ends {
    Open,
    Closed,
}

/// A line cut by an area.
#[derive(Debug, Default)]
pub(crate) struct Cut {
    pub(crate) inside: Vec<Line>,
    pub(crate) outside: Vec<Line>,
}

impl Line {
    pub(crate) const fn open(points: Vec<Point>) -> Self {
        Self { points, shape: Ends::Open }
    }

    pub(crate) const fn closed(points: Vec<Point>) -> Self {
        Self { points, shape: Ends::Closed }
    }

    pub(crate) fn bounds(&self) -> Rect {
        let first = self.points.first().copied().unwrap_or_default();
        self.points.iter().fold(Rect::from_points(first, first), |rect, point| rect.union_pt(*point))
    }

    pub(crate) fn length(&self) -> f64 {
        let open: f64 = self.points.windows(2).map(|two| two[0].distance(two[1])).sum();
        match (self.shape, self.points.first(), self.points.last()) {
            (Ends::Closed, Some(first), Some(last)) => open + first.distance(*last),
            _ => open,
        }
    }

    /// What of it lies inside an area and what outside.
    pub(crate) fn cut(self, region: &Region) -> Cut {
        self.cut_by(&[region], |point, _| region.contains(point))
    }

    /// What of it is inside, and what outside, by a question asked between any two crossings of the areas' edges; the
    /// question is given a point and the direction of the line there.
    pub(crate) fn cut_by(self, regions: &[&Region], mut is_inside: impl FnMut(Point, Vec2) -> bool) -> Cut {
        let bounds = self.bounds().inflate(1e-6, 1e-6);
        let near: Vec<&Region> = regions.iter().copied().filter(|region| overlaps(bounds, region.bounds())).collect();
        if near.is_empty() {
            return Cut { inside: Vec::new(), outside: vec![self] };
        }
        let edges = Edges::near(&near, bounds);
        let mut cut = Cut::default();
        for run in runs(&self, &edges) {
            let (point, direction) = middle(&run);
            let side = if is_inside(point, direction) { &mut cut.inside } else { &mut cut.outside };
            side.push(run);
        }
        cut.inside = joined(cut.inside);
        cut.outside = joined(cut.outside);
        cut
    }
}

/// A point halfway along, between two corners, and the direction there.
fn middle(line: &Line) -> (Point, Vec2) {
    let half = line.length() / 2.0;
    let mut gone = 0.0;
    let nexts = line.points.iter().skip(1).chain(match line.shape {
        Ends::Closed => line.points.first(),
        Ends::Open => None,
    });
    for (from, to) in line.points.iter().zip(nexts) {
        let step = from.distance(*to);
        if gone + step >= half && step > 0.0 {
            return (from.lerp(*to, (half - gone) / step), *to - *from);
        }
        gone += step;
    }
    (line.points.first().copied().unwrap_or_default(), Vec2::ZERO)
}

/// The line in pieces that cross no edge.
fn runs(line: &Line, edges: &Edges) -> Vec<Line> {
    let count = line.points.len();
    let segments = match line.shape {
        Ends::Open => count.saturating_sub(1),
        Ends::Closed => count,
    };
    let mut done: Vec<Vec<Point>> = Vec::new();
    let mut run = vec![line.points[0]];
    let mut crossings = Vec::new();
    for at in 0..segments {
        let (from, to) = (line.points[at], line.points[(at + 1) % count]);
        crossings.clear();
        edges.cross(from, to, &mut crossings);
        crossings.sort_unstable_by(f64::total_cmp);
        for share in &crossings {
            let point = from.lerp(to, *share);
            run.push(point);
            done.push(std::mem::replace(&mut run, vec![point]));
        }
        run.push(to);
    }
    if line.shape == Ends::Closed {
        if done.is_empty() {
            return vec![line.clone()];
        }
        // What comes before the first crossing belongs to what came after the last one.
        run.extend(done[0].iter().skip(1));
        done[0] = run;
    } else {
        done.push(run);
    }
    done.into_iter().map(|points| Line::open(without_repeats(points))).filter(|line| line.points.len() > 1).collect()
}

fn without_repeats(mut points: Vec<Point>) -> Vec<Point> {
    points.dedup_by(|a, b| a.distance_squared(*b) < 1e-14);
    points
}

/// Pieces that follow each other without a gap become one.
fn joined(pieces: Vec<Line>) -> Vec<Line> {
    let mut out: Vec<Line> = Vec::with_capacity(pieces.len());
    for piece in pieces {
        match out.last_mut() {
            Some(before) if meets(before, &piece) => before.points.extend_from_slice(&piece.points[1..]),
            _ => out.push(piece),
        }
    }
    if out.len() > 1
        && meets(&out[out.len() - 1], &out[0])
        && let Some(mut last) = out.pop()
    {
        last.points.extend_from_slice(&out[0].points[1..]);
        out[0] = last;
    }
    out
}

fn meets(before: &Line, after: &Line) -> bool {
    let (Some(end), Some(start)) = (before.points.last(), after.points.first()) else { return false };
    before.shape == Ends::Open && after.shape == Ends::Open && end.distance_squared(*start) < 1e-14
}

/// The edges of an area, sorted into rows so that few are looked at for each piece of a line.
struct Edges {
    rows: Vec<Vec<(Point, Point)>>,
    low: f64,
    height: f64,
}

/// From one end of a piece to the other, with room for rounding.
const ENDS: std::ops::RangeInclusive<f64> = -1e-9..=1.0 + 1e-9;

/// Rows the edges are sorted into.
const ROWS: usize = 24;

impl Edges {
    fn near(regions: &[&Region], bounds: Rect) -> Self {
        let mut edges = Self { rows: vec![Vec::new(); ROWS], low: bounds.y0, height: bounds.height() };
        for (from, to) in regions.iter().flat_map(|region| region.edges()) {
            if overlaps(Rect::from_points(from, to).inflate(1e-9, 1e-9), bounds) {
                for row in edges.rows_of(from, to) {
                    edges.rows[row].push((from, to));
                }
            }
        }
        edges
    }

    fn rows_of(&self, from: Point, to: Point) -> std::ops::RangeInclusive<usize> {
        let row = |y: f64| {
            #[expect(clippy::cast_precision_loss, reason = "a few rows")]
            let rows = ROWS as f64;
            #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "kept between the rows")]
            let row = ((y - self.low) / self.height * rows).clamp(0.0, rows - 1.0) as usize;
            row
        };
        row(from.y.min(to.y))..=row(from.y.max(to.y))
    }

    /// Adds where on the way from one point to another an edge is crossed.
    fn cross(&self, from: Point, to: Point, shares: &mut Vec<f64>) {
        let way = to - from;
        let before = shares.len();
        for row in self.rows_of(from, to) {
            for &(a, b) in &self.rows[row] {
                if a.x.max(b.x) < from.x.min(to.x) || a.x.min(b.x) > from.x.max(to.x) {
                    continue;
                }
                let edge = b - a;
                let slant = way.cross(edge);
                if slant.abs() < 1e-18 {
                    continue;
                }
                let share = (a - from).cross(edge) / slant;
                let on_edge = (a - from).cross(way) / slant;
                // Both ends count, and a little beyond: a crossing at a corner must not fall between two pieces. One
                // found twice does no harm.
                let crosses = ENDS.contains(&share) && ENDS.contains(&on_edge);
                // An edge stands in several rows.
                if crosses && !shares[before..].iter().any(|known| (known - share).abs() < 1e-12) {
                    shares.push(share.clamp(0.0, 1.0));
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square() -> Region {
        Region::polygon(&[(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)].map(Point::from))
    }

    #[test]
    fn a_line_through_a_square_has_three_pieces() {
        let line = Line::open(vec![Point::new(-1.0, 0.5), Point::new(0.5, 0.5), Point::new(3.0, 0.5)]);
        let cut = line.cut(&square());
        assert_eq!(cut.inside.len(), 1);
        assert!((cut.inside[0].length() - 1.0).abs() < 1e-9);
        assert_eq!(cut.outside.len(), 2);
        assert!((cut.outside.iter().map(Line::length).sum::<f64>() - 3.0).abs() < 1e-9);
    }

    #[test]
    fn a_closed_line_has_no_seam_at_its_start() {
        // It starts outside, in the middle of its outer piece.
        let corners = [(2.0, 0.5), (2.0, 0.8), (0.5, 0.8), (0.5, 0.2), (2.0, 0.2)].map(Point::from);
        let cut = Line::closed(corners.to_vec()).cut(&square());
        assert_eq!((cut.inside.len(), cut.outside.len()), (1, 1));
        assert!((cut.inside[0].length() - 1.6).abs() < 1e-9);
    }

    #[test]
    fn what_never_crosses_stays_whole() {
        let inner = [(0.2, 0.2), (0.8, 0.2), (0.5, 0.8)].map(Point::from).to_vec();
        let cut = Line::closed(inner.clone()).cut(&square());
        assert_eq!((cut.inside, cut.outside.len()), (vec![Line::closed(inner)], 0));
    }

    proptest::proptest! {
        #[test]
        fn a_line_through_corners_is_cut_at_them(turn in 0.0..6.3, x in -0.3..0.3, step in 2_usize..6) {
            let center = Point::new(x, x / 3.0);
            let corners: Vec<Point> =
                (0..13).map(|at| center + Vec2::from_angle(turn + f64::from(at) * 0.4833) * 0.2).collect();
            let region = Region::polygon(&corners);
            // From outside through every so many corners, as they lie on the grid, and out again.
            let on_grid: Vec<Point> = region.contours().flatten().collect();
            let beyond = |at: usize| center + (on_grid[at % on_grid.len()] - center) * 1.7;
            let through = |at: usize| on_grid[at % on_grid.len()];
            let points: Vec<Point> = (0..6).flat_map(|at| [through(at * step), beyond(at * step + 1)]).collect();
            let length = Line::open(points.clone()).length();
            let cut = Line::open(points).cut(&region);
            let sum: f64 = cut.inside.iter().chain(&cut.outside).map(Line::length).sum();
            proptest::prop_assert!((sum - length).abs() < 1e-6, "{} {}", sum, length);
            for (runs, is_inside) in [(&cut.inside, true), (&cut.outside, false)] {
                for two in runs.iter().flat_map(|run| run.points.windows(2)) {
                    let middle = two[0].midpoint(two[1]);
                    let clear = |side: f64| region.contains(center + (middle - center) * side) == is_inside;
                    // A point on an edge belongs to both sides.
                    proptest::prop_assert!(clear(0.9999) || clear(1.0001), "{}", middle);
                }
            }
        }
    }
}
