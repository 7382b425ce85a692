//! Round bodies made of cross-sections, and how they look from a camera.

use body::Vector;
use kurbo::{Point, Rect};

use super::region::{circle, overlaps, twice_area};
use crate::camera::{Axes, Projected};

/// One cross-section: an ellipse, or something between an ellipse and a rectangle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Ring {
    pub(crate) center: Vector,
    /// One half axis.
    pub(crate) a: Vector,
    /// The other half axis.
    pub(crate) b: Vector,
    /// 2 for an ellipse, more for squarer corners.
    pub(crate) power: f64,
}

impl Ring {
    pub(crate) const fn ellipse(center: Vector, a: Vector, b: Vector) -> Self {
        Self { center, a, b, power: 2.0 }
    }

    fn scaled(self, center: Vector, factor: f64) -> Self {
        Self { center, a: self.a * factor, b: self.b * factor, ..self }
    }

    /// Places around it.
    pub(crate) fn around(&self, corners: usize) -> impl Iterator<Item = Vector> + '_ {
        #[expect(clippy::cast_precision_loss, reason = "a few dozen corners")]
        let turn = std::f64::consts::TAU / corners as f64;
        let bend = 2.0 / self.power;
        (0..corners).map(move |corner| {
            #[expect(clippy::cast_precision_loss, reason = "a few dozen corners")]
            let (sine, cosine) = (turn * corner as f64).sin_cos();
            let rounded = |value: f64| if bend == 1.0 { value } else { value.abs().powf(bend).copysign(value) };
            self.center + self.a * rounded(cosine) + self.b * rounded(sine)
        })
    }
}

/// How a loft ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Cap {
    /// Open, as a garment.
    Open,
    /// Flat, as a block.
    Closed,
    /// Rounded, this far beyond the last ring.
    Round(f64),
}

/// A chain of cross-sections.
#[derive(Debug, Clone, Default)]
pub(crate) struct Loft {
    rings: Vec<Ring>,
    corners: usize,
}

/// Corners of a ring of a limb or the trunk.
pub(crate) const FINE: usize = 20;
/// Corners of a ring of a finger.
pub(crate) const COARSE: usize = 10;

impl Loft {
    /// Rings in order, with caps beyond the first and the last.
    pub(crate) fn new(rings: &[Ring], corners: usize, caps: [Cap; 2]) -> Self {
        let mut all = Vec::with_capacity(rings.len() + 2 * CAP.len());
        if let ([first, second, ..], [.., before, last]) = (rings, rings) {
            all.extend(cap(*first, first.center - second.center, caps[0]).into_iter().rev());
            all.extend_from_slice(rings);
            all.extend(cap(*last, last.center - before.center, caps[1]));
        }
        Self { rings: all, corners }
    }

    /// Places around the first cross-section.
    pub(crate) fn start(&self) -> Vec<Vector> {
        self.rings.first().map_or_else(Vec::new, |ring| ring.around(self.corners).collect())
    }

    /// A block: the rectangle around its middle that `a` and `b` reach half across, as thick as `c` reaches half.
    pub(crate) fn block(middle: Vector, a: Vector, b: Vector, c: Vector) -> Self {
        let face = |center| Ring::ellipse(center, a + b, b - a);
        Self::new(&[face(middle - c), face(middle + c)], 4, [Cap::Closed; 2])
    }

    fn seen(&self, view: &Axes) -> Shell {
        let rings: Vec<Vec<Corner>> = self
            .rings
            .iter()
            .map(|ring| {
                let corner = |place| {
                    let seen = view.project(place);
                    Corner { point: seen.point(), depth: seen.depth }
                };
                ring.around(self.corners).map(corner).collect()
            })
            .collect();
        Shell::new(rings)
    }
}

/// A ball of a chain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Bead {
    pub(crate) center: Vector,
    pub(crate) radius: f64,
}

/// A body of the picture.
#[derive(Debug, Clone)]
pub(crate) enum Solid {
    /// Cross-sections.
    Loft(Loft),
    /// Balls, each joined to the next, as a finger.
    Chain(Vec<Bead>),
}

impl Solid {
    /// Places around the first cross-section; none for a chain of balls.
    pub(crate) fn start(&self) -> Vec<Vector> {
        match self {
            Self::Loft(loft) => loft.start(),
            Self::Chain(_) => Vec::new(),
        }
    }

    /// As a camera sees it.
    pub(crate) fn seen(&self, view: &Axes) -> Shell {
        match self {
            Self::Loft(loft) => loft.seen(view),
            Self::Chain(beads) => {
                let seen = |bead: &Bead| (view.project(bead.center), bead.radius);
                Shell::Beads(beads.iter().map(seen).collect())
            }
        }
    }

    /// The same in a mirror between left and right.
    pub(crate) fn mirrored(mut self) -> Self {
        match &mut self {
            Self::Loft(loft) => {
                for ring in &mut loft.rings {
                    for place in [&mut ring.center, &mut ring.a, &mut ring.b] {
                        place.z = -place.z;
                    }
                }
            }
            Self::Chain(beads) => beads.iter_mut().for_each(|bead| bead.center.z = -bead.center.z),
        }
        self
    }
}

/// Turns of a rounded end, in shares of a quarter of a circle, as sine and cosine.
const CAP: [(f64, f64); 4] = [(0.5, 0.866), (0.866, 0.5), (0.985, 0.17), (1.0, 0.0)];

fn cap(end: Ring, outward: Vector, cap: Cap) -> Vec<Ring> {
    match cap {
        Cap::Open => Vec::new(),
        Cap::Closed => vec![end.scaled(end.center, 0.0)],
        Cap::Round(reach) => {
            let outward = outward.normalize_or_zero() * reach;
            CAP.map(|(sine, cosine)| end.scaled(end.center + outward * sine, cosine)).to_vec()
        }
    }
}

/// A corner of a ring, projected.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Corner {
    point: Point,
    depth: f64,
}

/// A solid, projected.
#[derive(Debug, Clone)]
pub(crate) enum Shell {
    /// Rings, and the bounds of each two neighboring ones.
    Rings(Vec<Vec<Corner>>, Vec<Rect>),
    /// Balls with their radii.
    Beads(Vec<(Projected, f64)>),
}

impl Shell {
    fn new(rings: Vec<Vec<Corner>>) -> Self {
        let of_ring = |ring: &Vec<Corner>| {
            let mut points = ring.iter().map(|corner| corner.point);
            let first = points.next().unwrap_or(Point::ZERO);
            points.fold(Rect::from_points(first, first), |rect, point| rect.union_pt(point))
        };
        let each: Vec<Rect> = rings.iter().map(of_ring).collect();
        let bounds = each.windows(2).map(|two| two[0].union(two[1])).collect();
        Self::Rings(rings, bounds)
    }

    /// The convex outlines of each two neighboring rings or balls; together they cover the solid.
    pub(crate) fn hulls(&self) -> Vec<Vec<Point>> {
        match self {
            Self::Rings(rings, _) => {
                let rings: Vec<Vec<Point>> = rings.iter().map(|ring| ring_outline(ring)).collect();
                runs(&rings)
            }
            Self::Beads(beads) => beads
                .windows(2)
                .map(|two| {
                    let around = |(place, radius): &(Projected, f64)| circle(place.point(), *radius, BEAD_CORNERS);
                    convex_hull(&mut two.iter().flat_map(around).collect::<Vec<_>>())
                })
                .collect(),
        }
    }

    /// The depth of the surface that is nearest to the viewer.
    pub(crate) fn front(&self, point: Point) -> Option<f64> {
        let nearest = |before: Option<f64>, depth: f64| Some(before.map_or(depth, |before| before.max(depth)));
        match self {
            Self::Rings(rings, bounds) => {
                let here = Rect::from_center_size(point, (TOUCH, TOUCH));
                let near = rings.windows(2).zip(bounds).filter(|(_, bounds)| overlaps(**bounds, here));
                near.flat_map(|(two, _)| (0..two[0].len()).filter_map(move |at| depth_of_quad(two, at, point)))
                    .fold(None, nearest)
            }
            Self::Beads(beads) => {
                beads.windows(2).filter_map(|two| depth_between(two[0], two[1], point)).fold(None, nearest)
            }
        }
    }
}

fn ring_outline(ring: &[Corner]) -> Vec<Point> {
    convex_hull(&mut ring.iter().map(|corner| corner.point).collect::<Vec<_>>())
}

/// The outlines of as few runs of rings as cover the solid and nothing else: neighbors are put together while their
/// common outline is hardly larger than they are.
fn runs(rings: &[Vec<Point>]) -> Vec<Vec<Point>> {
    let hull = |a: &[Point], b: &[Point]| convex_hull(&mut a.iter().chain(b).copied().collect::<Vec<_>>());
    let area = |outline: &[Point]| twice_area(outline) / 2.0;
    let mut done = Vec::new();
    let mut run: Option<Vec<Point>> = None;
    for two in rings.windows(2) {
        let next = hull(&two[0], &two[1]);
        run = Some(match run {
            None => next,
            Some(before) => {
                let both = hull(&before, &two[1]);
                // What the two have in common is at least the ring between them.
                let extra = area(&both) - (area(&before) + area(&next) - area(&two[0]));
                if extra < HARDLY {
                    both
                } else {
                    done.push(before);
                    next
                }
            }
        });
    }
    done.extend(run);
    done
}

/// An area too small to be seen along an outline.
const HARDLY: f64 = 1.2e-5;

/// Corners of the outline of a ball.
const BEAD_CORNERS: u32 = 14;

/// The depth of the surface between two rings, from one corner to the next.
fn depth_of_quad(two: &[Vec<Corner>], at: usize, point: Point) -> Option<f64> {
    let (lower, upper) = (&two[0], &two[1]);
    let next = if at + 1 == lower.len() { 0 } else { at + 1 };
    let [a, b, c, d] = [lower[at], lower[next], upper[next], upper[at]];
    let beside = |x: fn(Point) -> f64| {
        let [low, high] = [f64::min, f64::max]
            .map(|pick: fn(f64, f64) -> f64| pick(pick(x(a.point), x(b.point)), pick(x(c.point), x(d.point))));
        x(point) < low - TOUCH || x(point) > high + TOUCH
    };
    if beside(|point| point.x) || beside(|point| point.y) {
        return None;
    }
    match (depth_in([a, b, c], point), depth_in([a, c, d], point)) {
        (Some(first), Some(second)) => Some(first.max(second)),
        (first, second) => first.or(second),
    }
}

fn depth_between(first: (Projected, f64), second: (Projected, f64), point: Point) -> Option<f64> {
    let (start, along) = (first.0.point(), second.0.point() - first.0.point());
    let share = ((point - start).dot(along) / along.hypot2().max(TOUCH)).clamp(0.0, 1.0);
    let radius = first.1 + share * (second.1 - first.1);
    let aside = (point - (start + share * along)).hypot2();
    let rise = radius * radius - aside;
    (rise >= 0.0).then(|| first.0.depth + share * (second.0.depth - first.0.depth) + rise.sqrt())
}

/// Size of what stands for a point where rectangles are compared.
const TOUCH: f64 = 1e-9;

fn depth_in(triangle: [Corner; 3], point: Point) -> Option<f64> {
    let [a, b, c] = triangle;
    let (ab, ac, ap) = (b.point - a.point, c.point - a.point, point - a.point);
    let whole = ab.cross(ac);
    if whole.abs() < 1e-14 {
        return None;
    }
    let (share_b, share_c) = (ap.cross(ac) / whole, ab.cross(ap) / whole);
    let is_inside = share_b >= -EDGE && share_c >= -EDGE && share_b + share_c <= 1.0 + EDGE;
    is_inside.then_some(a.depth + share_b * (b.depth - a.depth) + share_c * (c.depth - a.depth))
}

/// How far beyond a triangle's edge a point still belongs to it, in shares of the triangle.
const EDGE: f64 = 1e-6;

/// The corners of the smallest convex shape around some points, going around to the left.
pub(crate) fn convex_hull(points: &mut [Point]) -> Vec<Point> {
    points.sort_unstable_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    let mut hull: Vec<Point> = Vec::with_capacity(points.len());
    let mut half = |points: &mut dyn Iterator<Item = Point>| {
        let start = hull.len();
        for point in points {
            while let [.., a, b] = hull[start..] {
                if (b - a).cross(point - b) > 0.0 {
                    break;
                }
                hull.pop();
            }
            hull.push(point);
        }
        // The last corner of one half is the first of the other.
        hull.pop();
    };
    half(&mut points.iter().copied());
    half(&mut points.iter().rev().copied());
    hull
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::camera::Camera;
    use crate::figure::region::Region;

    #[test]
    fn a_hull_goes_around_the_outermost() {
        let mut points = [(0.0, 0.0), (1.0, 0.0), (0.5, 0.5), (1.0, 1.0), (0.0, 1.0), (0.5, 0.0)].map(Point::from);
        let hull = convex_hull(&mut points);
        assert_eq!(hull, [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)].map(Point::from));
    }

    #[test]
    fn a_ball_looks_the_same_from_everywhere() {
        let ring = |y: f64| Ring::ellipse(Vector::Y * y, Vector::X * 0.1, Vector::Z * 0.1);
        let ball = Solid::Loft(Loft::new(&[ring(-1e-4), ring(1e-4)], 40, [Cap::Round(0.1); 2]));
        for camera in [Camera::degrees(0.0, 0.0), Camera::degrees(33.0, 20.0), Camera::degrees(-120.0, 85.0)] {
            let shell = ball.seen(&camera.axes());
            let hulls = shell.hulls();
            let area = Region::union_of(hulls.iter().map(Vec::as_slice)).area();
            // A disk of that radius, less what a chain of flat faces lacks.
            assert!((0.0295..0.0315).contains(&area), "{area}");
            let front = shell.front(Point::ZERO);
            assert!(front.is_some_and(|depth| (0.085..0.101).contains(&depth)), "{front:?}");
        }
    }
}
