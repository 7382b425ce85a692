//! Areas of the picture: the only file that knows how polygons are combined.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay::{IntOverlayOptions, Overlay, ShapeType};
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::core::solver::Solver;
use i_overlay::i_float::int::point::IntPoint;
use i_overlay::i_shape::int::shape::{IntContour, IntShapes};
use i_overlay::mesh::int::arc::ArcOptions;
use i_overlay::mesh::int::outline::offset::IntOutlineOffset;
use i_overlay::mesh::int::style::{IntLineJoin, IntOutlineStyle};
use kurbo::{Point, Rect};

use super::hollow;

/// An area with any number of pieces and holes.
///
/// # Units and shape
/// In parts of stature, y up. Corners lie on a grid of one hundred-thousandth of stature, so that the same areas give
/// the same result on every machine. Outer edges go around to the left, edges of holes to the right.
#[derive(Debug, Clone, Default)]
pub struct Region {
    shapes: IntShapes<i32>,
}

/// Steps of the grid in one stature.
const GRID: f64 = 100_000.0;

/// Pieces below this area, in steps of the grid squared, are dropped: a square of a thousandth of stature.
const SPECK: u64 = 10_000;

impl Region {
    /// No area.
    pub const EMPTY: Self = Self { shapes: Vec::new() };

    /// The inside of a closed line that may cross itself.
    pub fn polygon(corners: &[Point]) -> Self {
        Self::union_of([corners])
    }

    /// Everything inside at least one of some closed lines.
    pub fn union_of<'a>(polygons: impl IntoIterator<Item = &'a [Point]>) -> Self {
        let mut overlay = overlay(EDGES);
        for polygon in polygons {
            // Every one the same way around: what one covers, another never takes away.
            let backward = twice_area(polygon) < 0.0;
            let corners = polygon.iter().map(|corner| on_grid(*corner));
            if backward {
                overlay.add_path_iter(corners.rev(), ShapeType::Subject);
            } else {
                overlay.add_path_iter(corners, ShapeType::Subject);
            }
        }
        Self { shapes: overlay.overlay(OverlayRule::Subject, FillRule::NonZero) }
    }

    /// A disk.
    pub fn disk(center: Point, radius: f64) -> Self {
        Self::simple(&circle(center, radius, DISK_CORNERS))
    }

    /// The inside of a closed line that is known not to cross itself.
    pub(crate) fn simple(corners: &[Point]) -> Self {
        let mut contour: IntContour<i32> = corners.iter().copied().map(on_grid).collect();
        contour.dedup();
        if twice_area(corners) < 0.0 {
            contour.reverse();
        }
        if contour.len() < 3 { Self::EMPTY } else { Self { shapes: vec![vec![contour]] } }
    }

    /// Everything inside at least one of some areas.
    pub fn union_all<'a>(regions: impl IntoIterator<Item = &'a Self>) -> Self {
        let regions: Vec<&Self> = regions.into_iter().filter(|region| !region.is_empty()).collect();
        if let [only] = regions.as_slice() {
            return (*only).clone();
        }
        let mut overlay = overlay(EDGES);
        for region in regions {
            overlay.add_source(&region.shapes, ShapeType::Subject);
        }
        Self { shapes: overlay.overlay(OverlayRule::Subject, FillRule::NonZero) }
    }

    /// This area together with another.
    pub fn union(&self, other: &Self) -> Self {
        Self::union_all([self, other])
    }

    /// What this area and another share.
    pub fn intersection(&self, other: &Self) -> Self {
        if !overlaps(self.bounds(), other.bounds()) {
            return Self::EMPTY;
        }
        self.combined([other], OverlayRule::Intersect)
    }

    /// This area without another.
    pub fn difference(&self, other: &Self) -> Self {
        self.without([other])
    }

    /// This area without any of some others.
    pub fn without<'a>(&self, others: impl IntoIterator<Item = &'a Self>) -> Self {
        let bounds = self.bounds();
        let mut near = others.into_iter().filter(|other| overlaps(bounds, other.bounds())).peekable();
        if self.is_empty() || near.peek().is_none() {
            return self.clone();
        }
        self.combined(near, OverlayRule::Difference)
    }

    fn combined<'a>(&self, others: impl IntoIterator<Item = &'a Self>, rule: OverlayRule) -> Self {
        let mut overlay = overlay(EDGES);
        overlay.add_source(&self.shapes, ShapeType::Subject);
        for other in others {
            overlay.add_source(&other.shapes, ShapeType::Clip);
        }
        Self { shapes: overlay.overlay(rule, FillRule::NonZero) }
    }

    /// Grown by a distance with round corners; a negative distance shrinks.
    pub fn grown(&self, distance: f64) -> Self {
        #[expect(clippy::cast_possible_truncation, reason = "a small part of stature")]
        let steps = (distance * GRID).round() as i32;
        let style = IntOutlineStyle::new(steps).line_join(IntLineJoin::Round(ArcOptions::default()));
        // The only error is a place beyond the grid, and every place was put inside it.
        self.shapes.outline_custom(&style, options()).map_or(Self::EMPTY, |shapes| Self { shapes })
    }

    /// Its size, in parts of stature squared.
    pub fn area(&self) -> f64 {
        self.contours().map(|contour| twice_area(&contour)).sum::<f64>() / 2.0
    }

    /// Whether nothing is in it.
    pub const fn is_empty(&self) -> bool {
        self.shapes.is_empty()
    }

    /// The stretches of a level line that lie inside, from left to right.
    pub(crate) fn stretches(&self, y: f64) -> Vec<(f64, f64)> {
        let crossings = self.edges().filter(|(a, b)| (a.y > y) != (b.y > y));
        let mut crossings: Vec<f64> = crossings.map(|(a, b)| a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x)).collect();
        crossings.sort_unstable_by(f64::total_cmp);
        crossings.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect()
    }

    /// Its hollows rounded: a sharp inner corner becomes a curve that begins this far from it. Where a disk is given, only
    /// corners inside it.
    pub(crate) fn with_round_hollows(&self, reach: f64, within: Option<(Point, f64)>) -> Self {
        let round = |contour: Vec<Point>| -> IntContour<i32> {
            hollow::rounded(&contour, reach, within).into_iter().map(on_grid).collect()
        };
        let shapes = self
            .shapes
            .iter()
            .map(|shape| shape.iter().map(|contour| round(contour.iter().copied().map(off_grid).collect())).collect());
        Self { shapes: shapes.collect() }
    }

    /// Whether a point lies inside.
    pub fn contains(&self, point: Point) -> bool {
        let mut inside = false;
        for corners in self.shapes.iter().flatten() {
            let Some(last) = corners.last() else { continue };
            let mut before = off_grid(*last);
            for corner in corners {
                let here = off_grid(*corner);
                if (here.y > point.y) != (before.y > point.y) {
                    let share = (point.y - here.y) / (before.y - here.y);
                    inside ^= point.x < here.x + share * (before.x - here.x);
                }
                before = here;
            }
        }
        inside
    }

    /// The smallest upright rectangle around it; one without size where there is none.
    pub fn bounds(&self) -> Rect {
        let mut corners = self.shapes.iter().filter_map(|shape| shape.first()).flatten().copied();
        let Some(first) = corners.next() else { return Rect::ZERO };
        let [mut low, mut high] = [first, first];
        for corner in corners {
            low = IntPoint::new(low.x.min(corner.x), low.y.min(corner.y));
            high = IntPoint::new(high.x.max(corner.x), high.y.max(corner.y));
        }
        Rect::from_points(off_grid(low), off_grid(high))
    }

    /// Its pieces, each with its holes.
    pub fn pieces(&self) -> impl Iterator<Item = Self> + '_ {
        self.shapes.iter().map(|shape| Self { shapes: vec![shape.clone()] })
    }

    /// Its edges as closed lines, the last corner not repeated.
    pub fn contours(&self) -> impl Iterator<Item = Vec<Point>> + '_ {
        self.shapes.iter().flatten().map(|contour| contour.iter().copied().map(off_grid).collect())
    }

    /// The straight edges of all its lines.
    pub(crate) fn edges(&self) -> impl Iterator<Item = (Point, Point)> + '_ {
        self.shapes.iter().flatten().flat_map(edges_of)
    }
}

/// Room for the edges of a usual area.
const EDGES: usize = 512;

/// Corners of what stands for a disk.
const DISK_CORNERS: u32 = 32;

/// The corners of a circle.
pub(crate) fn circle(center: Point, radius: f64, corners: u32) -> Vec<Point> {
    let turn = std::f64::consts::TAU / f64::from(corners);
    (0..corners).map(|corner| center + radius * kurbo::Vec2::from_angle(turn * f64::from(corner))).collect()
}

/// Twice the area inside a closed line; negative where it goes around to the right.
pub(crate) fn twice_area(corners: &[Point]) -> f64 {
    let Some(last) = corners.last() else { return 0.0 };
    let mut before = *last;
    let mut sum = 0.0;
    for corner in corners {
        sum += before.to_vec2().cross(corner.to_vec2());
        before = *corner;
    }
    sum
}

/// Whether two rectangles share more than an edge.
pub(crate) fn overlaps(a: Rect, b: Rect) -> bool {
    a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1
}

fn edges_of(contour: &IntContour<i32>) -> impl Iterator<Item = (Point, Point)> + '_ {
    let nexts = contour.iter().skip(1).chain(contour.first());
    contour.iter().zip(nexts).map(|(a, b)| (off_grid(*a), off_grid(*b)))
}

fn overlay(capacity: usize) -> Overlay<i32> {
    Overlay::new_custom(capacity, options(), Solver::LIST)
}

fn options() -> IntOverlayOptions<u64> {
    IntOverlayOptions { min_output_area: SPECK, ..IntOverlayOptions::default() }
}

/// The nearest place of the grid; what lies far outside the picture is put on its border.
fn on_grid(point: Point) -> IntPoint<i32> {
    #[expect(clippy::cast_possible_truncation, reason = "put on the border before")]
    let step = |value: f64| (value.clamp(-BORDER, BORDER) * GRID).round() as i32;
    IntPoint::new(step(point.x), step(point.y))
}

/// How far from the middle a picture reaches at most, in statures.
const BORDER: f64 = 100.0;

fn off_grid(point: IntPoint<i32>) -> Point {
    Point::new(f64::from(point.x) / GRID, f64::from(point.y) / GRID)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(x: f64, y: f64, side: f64) -> Region {
        let corners = [(x, y), (x + side, y), (x + side, y + side), (x, y + side)];
        Region::polygon(&corners.map(Point::from))
    }

    #[test]
    fn squares_combine_as_squares_do() {
        let [a, b] = [square(0.0, 0.0, 0.2), square(0.1, 0.1, 0.2)];
        let close = |found: f64, expected: f64| assert!((found - expected).abs() < 1e-9, "{found} {expected}");
        close(a.union(&b).area(), 0.07);
        close(a.intersection(&b).area(), 0.01);
        close(a.difference(&b).area(), 0.03);
        close(square(0.0, 0.0, 0.3).difference(&square(0.1, 0.1, 0.1)).area(), 0.08);
        close(a.grown(-0.05).area(), 0.01);
        assert_eq!(a.union(&square(0.5, 0.5, 0.1)).pieces().count(), 2);
    }

    #[test]
    fn a_hole_is_outside() {
        let frame = square(0.0, 0.0, 0.3).difference(&square(0.1, 0.1, 0.1));
        assert!(frame.contains(Point::new(0.05, 0.15)));
        assert!(!frame.contains(Point::new(0.15, 0.15)));
        assert!(!frame.contains(Point::new(0.35, 0.15)));
    }

    #[test]
    fn a_line_the_other_way_around_is_the_same_area() {
        let corners = [(0.0, 0.0), (0.0, 0.1), (0.1, 0.1), (0.1, 0.0)].map(Point::from);
        assert!((Region::polygon(&corners).area() - 0.01).abs() < 1e-9);
    }

    #[test]
    fn specks_are_dropped() {
        assert!(square(0.0, 0.0, 0.0005).is_empty());
        assert!(!square(0.0, 0.0, 0.002).is_empty());
    }
}
