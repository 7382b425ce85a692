//! Which piece hides which, and what is left to see.
//!
//! # Method
//! No order from back to front is sought, so no circle of pieces that hide each other can break it (a hand around a
//! stick is one: palm behind, thumb before it, both one hand). Instead the overlap of every two pieces is taken apart
//! into its connected pieces, and each is given to the one whose surface is nearer to the viewer there, or to the one a
//! rule names. What a piece loses is taken from its area and from its outline. The picture is then flat: areas that
//! touch but do not overlap, and lines that end where something lies over them.

use kurbo::Point;

use super::lines::Line;
use super::nearer::{Front, Verdict, glance, nearer, samples};
use super::outline;
use super::part::{Ink, JointDisk, Kind, Order, Part, Rim, Scene, Tone};
use super::region::{Region, overlaps};

/// A piece as it is seen.
#[derive(Debug)]
pub(crate) struct Seen {
    pub(crate) kinds: Vec<Kind>,
    pub(crate) areas: Vec<(Region, Tone)>,
    pub(crate) lines: Vec<(Line, Ink)>,
}

/// What a piece loses to others.
#[derive(Debug, Default)]
pub(crate) struct Lost {
    /// Areas in which others lie over it, each with the place of the other in the list.
    pub(crate) hidden: Vec<(usize, Region)>,
}

impl Lost {
    pub(crate) fn areas(&self) -> impl Iterator<Item = &Region> {
        self.hidden.iter().map(|(_, area)| area)
    }

    /// Without what is lost to one of them.
    pub(crate) fn of_others(&self, than: usize) -> impl Iterator<Item = &Region> {
        self.hidden.iter().filter(move |(winner, _)| *winner != than).map(|(_, area)| area)
    }
}

/// Everything as it is seen, and all that is covered.
pub(crate) fn flatten(scene: &Scene) -> (Vec<Seen>, Region) {
    let count = scene.parts.len();
    let mut lost: Vec<Lost> = (0..count).map(|_| Lost::default()).collect();
    let bounds: Vec<_> = scene.parts.iter().map(|part| part.region.bounds()).collect();
    for first in 0..count {
        for second in first + 1..count {
            if overlaps(bounds[first], bounds[second]) {
                meet(scene, [first, second], &mut lost);
            }
        }
    }
    let mut all: Vec<Seen> = (0..count).map(|at| seen(scene, at, &lost)).collect();
    let silhouette = fill_holes(scene, &mut all);
    (all, silhouette)
}

/// By how much a lost piece is grown, so that an outline along its edge counts as inside it.
pub(crate) const HAIR: f64 = 0.0002;

fn meet(scene: &Scene, pair: [usize; 2], lost: &mut [Lost]) {
    let [first, second] = pair.map(|at| &scene.parts[at]);
    let mut give = |front: Front, area: Region| {
        let [winner, loser] = if front == Front::First { pair } else { [pair[1], pair[0]] };
        lost[loser].hidden.push((winner, area));
    };
    if let Some((rim, garment)) = rim_between(scene, first, second) {
        emerge(rim, garment, [first, second], &mut give);
        return;
    }
    let joint = joint_between(scene, first, second);
    let known = ruled(scene, first, second).or_else(|| match (joint, glance(first, second)) {
        (None, Verdict::Clear(front)) => Some(front),
        _ => None,
    });
    if let Some(front) = known {
        give(front, winner_area(front, first, second));
        return;
    }
    let shared = first.region.intersection(&second.region);
    if shared.is_empty() {
        return;
    }
    let mut pieces: Vec<(Region, Front)> = Vec::new();
    let mut judge = |area: &Region| {
        pieces.extend(area.pieces().map(|piece| {
            let front = nearer(&piece, first, second);
            (piece, front)
        }));
    };
    match joint {
        Some((joint, outer)) => {
            let round = Region::disk(joint.center, joint.radius);
            judge(&shared.difference(&round));
            let inside = shared.intersection(&round);
            if !inside.is_empty() {
                let rule = joint.outer_wins.then_some(outer);
                let front = inside_front(&inside, &pieces, [first, second], rule);
                pieces.push((inside, front));
            }
        }
        None => judge(&shared),
    }
    match pieces.split_first() {
        Some(((_, front), rest)) if rest.iter().all(|piece| piece.1 == *front) => {
            give(*front, winner_area(*front, first, second));
        }
        _ => pieces.into_iter().for_each(|(area, front)| give(front, area.grown(HAIR))),
    }
}

/// A limb that comes out of a garment: inside the opening, if one looks into it, the limb is seen; elsewhere the garment,
/// or what is nearer.
fn emerge(rim: &Rim, garment: Front, [first, second]: [&Part; 2], give: &mut impl FnMut(Front, Region)) {
    if !rim.faces_viewer {
        give(garment, winner_area(garment, first, second));
        return;
    }
    let limb = if garment == Front::First { Front::Second } else { Front::First };
    let shared = first.region.intersection(&second.region);
    let corners: Vec<Point> = rim.edge.iter().map(|edge| edge.0).collect();
    let opening = Region::polygon(&corners);
    give(limb, shared.intersection(&opening).grown(HAIR));
    for piece in shared.difference(&opening).pieces() {
        give(nearer(&piece, first, second), piece.grown(HAIR));
    }
}

fn winner_area(front: Front, first: &Part, second: &Part) -> Region {
    if front == Front::First { first.region.clone() } else { second.region.clone() }
}

/// Inside a joint: as outside of it, if that is of one mind; else as a rule says.
fn inside_front(inside: &Region, outside: &[(Region, Front)], pair: [&Part; 2], rule: Option<Front>) -> Front {
    match (outside.split_first(), rule) {
        (Some(((_, front), rest)), _) if rest.iter().all(|piece| piece.1 == *front) => *front,
        (_, Some(front)) => front,
        _ => nearer(inside, pair[0], pair[1]),
    }
}

/// The rim between two pieces, and which of them is the garment.
fn rim_between<'s>(scene: &'s Scene, first: &Part, second: &Part) -> Option<(&'s Rim, Front)> {
    scene.rims.iter().find_map(|rim| Some((rim, which(first, second, rim.garment, rim.limb)?)))
}

/// The joint between two pieces, and which of them is the outer one.
fn joint_between<'s>(scene: &'s Scene, first: &Part, second: &Part) -> Option<(&'s JointDisk, Front)> {
    scene.joints.iter().find_map(|joint| Some((joint, which(first, second, joint.outer, joint.inner)?)))
}

/// Which of two pieces is the one kind, if the other is the other kind.
fn which(first: &Part, second: &Part, one: Kind, other: Kind) -> Option<Front> {
    if first.is(one) && second.is(other) {
        Some(Front::First)
    } else if second.is(one) && first.is(other) {
        Some(Front::Second)
    } else {
        None
    }
}

fn ruled(scene: &Scene, first: &Part, second: &Part) -> Option<Front> {
    match (first.order, second.order) {
        (Order::Behind, Order::ByDepth) => return Some(Front::Second),
        (Order::ByDepth, Order::Behind) => return Some(Front::First),
        _ => {}
    }
    if first.is(Kind::Ghost) || second.is(Kind::Ghost) {
        return ghost_rule(first, second);
    }
    scene.over.iter().find_map(|&(over, under)| which(first, second, over, under))
}

/// A ghost never lies over an arm or the head.
fn ghost_rule(first: &Part, second: &Part) -> Option<Front> {
    let (other, front) = if first.is(Kind::Ghost) { (second, Front::Second) } else { (first, Front::First) };
    let hides = other.kinds.iter().any(|kind| kind.arm().is_some() || kind.is_head());
    hides.then_some(front)
}

/// What no piece was given, because several hide each other in a circle, goes to the one that is nearest there.
/// Returns everything that is covered at all.
fn fill_holes(scene: &Scene, all: &mut [Seen]) -> Region {
    let solid = |part: &&Part| part.tone() != Tone::None;
    let covered = Region::union_all(scene.parts.iter().filter(solid).map(|part| &part.region));
    let sum: f64 = all.iter().flat_map(|seen| &seen.areas).map(|area| area.0.area()).sum();
    if covered.area() - sum < HOLE {
        return covered;
    }
    let given = Region::union_all(all.iter().flat_map(|seen| seen.areas.iter().map(|area| &area.0)));
    for hole in covered.difference(&given.grown(HAIR)).pieces() {
        let points = samples(&hole);
        let depth =
            |part: &Part| points.iter().filter_map(|point| part.front(*point)).fold(f64::NEG_INFINITY, f64::max);
        let nearest = (0..scene.parts.len())
            .filter(|&at| solid(&&scene.parts[at]))
            .max_by(|&a, &b| depth(&scene.parts[a]).total_cmp(&depth(&scene.parts[b])));
        if let Some(area) = nearest.and_then(|at| all[at].areas.first_mut()) {
            area.0 = area.0.union(&hole.grown(2.0 * HAIR).intersection(&covered));
        }
    }
    covered
}

/// Less than this is lost to rounding and to slivers.
const HOLE: f64 = 3e-4;

fn seen(scene: &Scene, at: usize, lost: &[Lost]) -> Seen {
    let (part, mine) = (&scene.parts[at], &lost[at]);
    let solid = part.areas.iter().filter(|(_, tone)| *tone != Tone::None);
    let mut areas: Vec<(Region, Tone)> = solid.map(|(area, tone)| (area.without(mine.areas()), *tone)).collect();
    let mut lines = outline::lines(scene, at, lost);
    let slivers = outline::slivers(scene, at, mine);
    if !slivers.is_empty() {
        for (area, _) in &mut areas {
            *area = area.without(&slivers);
        }
        for sliver in &slivers {
            lines = lines
                .into_iter()
                .flat_map(|(line, ink)| line.cut(sliver).outside.into_iter().map(move |line| (line, ink)))
                .collect();
        }
        lines.retain(outline::is_long_enough);
    }
    Seen { kinds: part.kinds.clone(), areas, lines }
}
