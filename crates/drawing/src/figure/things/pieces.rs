//! Things as pieces of the picture.

use body::Vector;
use kurbo::Point;

use super::{Block, BlockPlace, Spot, Thing, sling};
use crate::camera::Axes;
use crate::figure::grip::Grips;
use crate::figure::lines::Line;
use crate::figure::loft::{Bead, COARSE, Cap, FINE, Loft, Ring, Solid};
use crate::figure::part::{Ink, Kind, Order, Part, Scene, Tone};
use crate::figure::person::Person;
use crate::figure::region::Region;

/// Half the thickness of a stick, near 27 mm for somebody of 173 cm.
pub(crate) const STICK: f64 = 0.0078;
const BAND: f64 = 0.0040;
const CORD: f64 = 0.0022;

/// Adds the pieces of a thing.
pub(crate) fn add(thing: &Thing, at: usize, grips: &Grips, person: &Person<'_>, scene: &mut Scene) {
    let view = &person.view;
    let mut solid = |solid: Solid, tone: Tone| {
        scene.parts.push(Part::of(Kind::Thing(at), tone, Ink::Thing, vec![solid.seen(view)]));
    };
    let place = |spot: &Spot| grips.place(*spot);
    match thing {
        Thing::Stick { .. } => {
            if let Some([from, to]) = stick_ends(thing, grips) {
                solid(rod(from, to, STICK), Tone::Wood);
            }
        }
        Thing::Band(along) => solid(chain(along.iter().map(place), BAND), Tone::Side),
        Thing::Cord(along) => solid(chain(along.iter().map(place), CORD), Tone::Side),
        Thing::Weight(spot) => {
            let (middle, axis) = (place(spot), grips.axis(*spot));
            solid(rod(middle - axis * 0.034, middle + axis * 0.034, 0.0075), Tone::Side);
            for side in [-1.0, 1.0] {
                let [near, far] = [0.030, 0.056].map(|out| middle + axis * (side * out));
                solid(rod(near, far, 0.0200), Tone::Side);
            }
        }
        Thing::Ball { at: spot, radius } => {
            let middle = place(spot) + grips.palmward(*spot) * (radius - STICK).max(0.0);
            let bead = |aside: f64| Bead { center: middle + Vector::Y * aside, radius: *radius };
            solid(Solid::Chain(vec![bead(-1e-5), bead(1e-5)]), Tone::Side);
        }
        Thing::Cloth(spot) => {
            let (middle, axis, out) = (place(spot), grips.axis(*spot), grips.palmward(*spot));
            let along = axis.cross(out);
            solid(cushion(middle + out * 0.004, [along * 0.042, out * 0.007, axis * 0.036]), Tone::Top);
        }
        Thing::Roll { ends, radius } => solid(rod(ends[0], ends[1], *radius), Tone::Top),
        Thing::Post { ends, radius } => solid(rod(ends[0], ends[1], *radius), Tone::Wood),
        Thing::Cushion(block) => {
            let shell = cushion(block.middle, block.half).seen(view);
            let mut part = Part::of(Kind::Thing(at), Tone::Top, Ink::Furniture, vec![shell]);
            part.order = order(block);
            scene.parts.push(part);
        }
        Thing::Block(block) => scene.parts.push(faces(block, at, view)),
        Thing::Ground { at: middle, half } => {
            let right = Vector::new(view.right.x, 0.0, view.right.z).normalize_or(Vector::X);
            let ends = [*middle - right * *half, *middle + right * *half].map(|end| view.point(end));
            let mut part = Part::with_region(Kind::Thing(at), Tone::None, Ink::Furniture, vec![], Region::EMPTY);
            part.extra.push((Line::open(ends.to_vec()), Ink::Furniture));
            part.order = Order::Behind;
            scene.parts.push(part);
        }
        Thing::Sling => sling::add(at, person, scene),
    }
}

/// Where a stick begins and ends.
pub(crate) fn stick_ends(thing: &Thing, grips: &Grips) -> Option<[Vector; 2]> {
    let Thing::Stick { ends, beyond } = thing else { return None };
    let [from, to] = [grips.place(ends[0]), grips.place(ends[1])];
    let along = (to - from).normalize_or(grips.axis(ends[0]));
    Some([from - along * beyond[0], to + along * beyond[1]])
}

const fn order(block: &Block) -> Order {
    match block.place {
        BlockPlace::Behind => Order::Behind,
        BlockPlace::Among => Order::ByDepth,
    }
}

/// A block as its visible faces and the edges between them.
fn faces(block: &Block, at: usize, view: &Axes) -> Part {
    let [ahead, up, right] = block.half;
    let shell = Solid::Loft(Loft::block(block.middle, ahead, right, up)).seen(view);
    let mut part = Part::of(Kind::Thing(at), Tone::Side, Ink::Furniture, vec![shell]);
    part.order = order(block);
    part.areas.clear();
    for (outward, a, b, tone) in [
        (up, ahead, right, Tone::Top),
        (-up, ahead, right, Tone::Side),
        (ahead, up, right, Tone::Side),
        (-ahead, up, right, Tone::Side),
        (right, up, ahead, Tone::Side),
        (-right, up, ahead, Tone::Side),
    ] {
        if outward.dot(view.toward) <= 1e-9 {
            continue;
        }
        let middle = block.middle + outward;
        let corners = [middle + a + b, middle + a - b, middle - a - b, middle - a + b].map(|place| view.point(place));
        part.areas.push((Region::polygon(&corners), tone));
        part.extra.extend(edges(&corners, &part.region));
    }
    part
}

/// The edges of a face that lie inside the outline.
fn edges(corners: &[Point; 4], outline: &Region) -> Vec<(Line, Ink)> {
    let inside = outline.grown(-0.001);
    let sides = (0..4).map(|at| [corners[at], corners[(at + 1) % 4]]);
    let is_inner = |side: &[Point; 2]| inside.contains(side[0].midpoint(side[1]));
    sides.filter(is_inner).map(|side| (Line::open(side.to_vec()), Ink::Furniture)).collect()
}

fn rod(from: Vector, to: Vector, radius: f64) -> Solid {
    let along = (to - from).normalize_or(Vector::Y);
    let (a, b) = along.any_orthonormal_pair();
    let ring = |center| Ring::ellipse(center, a * radius, b * radius);
    let corners = if radius > 0.015 { FINE } else { COARSE };
    Solid::Loft(Loft::new(&[ring(from), ring(to)], corners, [Cap::Round(radius * 0.35); 2]))
}

pub(super) fn chain(places: impl Iterator<Item = Vector>, radius: f64) -> Solid {
    Solid::Chain(places.map(|center| Bead { center, radius }).collect())
}

/// A soft block: its corners and edges are round.
fn cushion(middle: Vector, half: [Vector; 3]) -> Solid {
    let [along, thick, across] = half;
    const PLACES: [(f64, f64); 9] = [
        (-1.0, 0.50),
        (-0.96, 0.72),
        (-0.86, 0.88),
        (-0.60, 0.98),
        (0.0, 1.0),
        (0.60, 0.98),
        (0.86, 0.88),
        (0.96, 0.72),
        (1.0, 0.50),
    ];
    let rings = PLACES.map(|(place, size)| {
        // It stays broad to the end and gets thin there.
        let broad = 0.86 + 0.14 * size;
        Ring { center: middle + along * place, a: thick * size, b: across * broad, power: 2.8 }
    });
    Solid::Loft(Loft::new(&rings, FINE, [Cap::Closed; 2]))
}
