//! Which piece hides which, and what is left to see of areas and outlines.
//!
//! # Method
//! No order from back to front is sought, so no circle of pieces that hide each other can break it (a hand around a
//! stick is one: palm behind, thumb before it, both one hand). Instead the overlap of every two pieces is taken apart
//! into its connected pieces, and each is given to the one whose surface is nearer to the viewer there, or to the one a
//! rule names. What a piece loses is taken from its area and from its outline. The picture is then flat: areas that
//! touch but do not overlap, and lines that end where something lies over them.

use kurbo::Point;

use super::lines::Line;
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
struct Lost {
    /// Areas in which others lie over it, each with the place of the other in the list.
    hidden: Vec<(usize, Region)>,
}

impl Lost {
    fn areas(&self) -> impl Iterator<Item = &Region> {
        self.hidden.iter().map(|(_, area)| area)
    }
}

/// Everything as it is seen.
pub(crate) fn flatten(scene: &Scene) -> Vec<Seen> {
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
    fill_holes(scene, &mut all);
    all
}

/// Who of two lies over the other.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Front {
    First,
    Second,
}

fn meet(scene: &Scene, pair: [usize; 2], lost: &mut [Lost]) {
    let [first, second] = pair.map(|at| &scene.parts[at]);
    let shared = first.region.intersection(&second.region);
    if shared.is_empty() {
        return;
    }
    let mut give = |front: Front, area: Region| {
        let [winner, loser] = if front == Front::First { pair } else { [pair[1], pair[0]] };
        lost[loser].hidden.push((winner, area));
    };
    if let Some((rim, garment)) = rim_between(scene, first, second) {
        let limb = if garment == Front::First { Front::Second } else { Front::First };
        if rim.faces_viewer {
            let opening = opening(rim);
            give(limb, shared.intersection(&opening).grown(HAIR));
            for piece in shared.difference(&opening).pieces() {
                give(nearer(&piece, first, second), piece.grown(HAIR));
            }
        } else {
            give(garment, shared.grown(HAIR));
        }
        return;
    }
    if let Some(front) = ruled(scene, first, second) {
        give(front, winner_area(front, first, second));
        return;
    }
    let disk = joint_between(scene, first, second);
    let mut pieces: Vec<(Region, Front)> = Vec::new();
    match disk {
        Some((joint, outer)) => {
            let round = Region::disk(joint.center, joint.radius);
            let outside = shared.difference(&round);
            pieces.extend(outside.pieces().map(|piece| (piece.clone(), nearer(&piece, first, second))));
            let inside = shared.intersection(&round);
            if !inside.is_empty() {
                let front = inside_front(&inside, &pieces, [first, second], joint.outer_wins.then_some(outer));
                pieces.push((inside, front));
            }
        }
        None => pieces.extend(shared.pieces().map(|piece| (piece.clone(), nearer(&piece, first, second)))),
    }
    match pieces.split_first() {
        Some(((_, front), rest)) if rest.iter().all(|piece| piece.1 == *front) => {
            give(*front, winner_area(*front, first, second));
        }
        _ => pieces.into_iter().for_each(|(area, front)| give(front, area.grown(HAIR))),
    }
}

/// By how much a lost piece is grown, so that an outline along its edge counts as inside it.
const HAIR: f64 = 0.0002;

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

fn opening(rim: &Rim) -> Region {
    let corners: Vec<Point> = rim.edge.iter().map(|edge| edge.0).collect();
    Region::polygon(&corners)
}

/// The rim between two pieces, and which of them is the garment.
fn rim_between<'s>(scene: &'s Scene, first: &Part, second: &Part) -> Option<(&'s Rim, Front)> {
    scene.rims.iter().find_map(|rim| {
        if first.is(rim.garment) && second.is(rim.limb) {
            Some((rim, Front::First))
        } else if second.is(rim.garment) && first.is(rim.limb) {
            Some((rim, Front::Second))
        } else {
            None
        }
    })
}

/// The joint between two pieces, and which of them is the outer one.
fn joint_between<'s>(scene: &'s Scene, first: &Part, second: &Part) -> Option<(&'s JointDisk, Front)> {
    scene.joints.iter().find_map(|joint| {
        if first.is(joint.outer) && second.is(joint.inner) {
            Some((joint, Front::First))
        } else if second.is(joint.outer) && first.is(joint.inner) {
            Some((joint, Front::Second))
        } else {
            None
        }
    })
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
    scene.over.iter().find_map(|&(over, under)| {
        if first.is(over) && second.is(under) {
            Some(Front::First)
        } else if second.is(over) && first.is(under) {
            Some(Front::Second)
        } else {
            None
        }
    })
}

/// A ghost never lies over an arm or the head.
fn ghost_rule(first: &Part, second: &Part) -> Option<Front> {
    let (other, front) = if first.is(Kind::Ghost) { (second, Front::Second) } else { (first, Front::First) };
    let hides = other.kinds.iter().any(|kind| kind.arm().is_some() || kind.is_head());
    hides.then_some(front)
}

/// Which surface is nearer to the viewer in an area both cover.
fn nearer(area: &Region, first: &Part, second: &Part) -> Front {
    let mut sum = 0.0;
    for point in samples(area) {
        if let (Some(a), Some(b)) = (first.front(point), second.front(point)) {
            sum += (a - b).clamp(-CLEAR, CLEAR);
        }
    }
    if sum >= 0.0 { Front::First } else { Front::Second }
}

/// A difference of depth that counts fully.
const CLEAR: f64 = 0.02;

/// Points to each side of an area's sampling grid.
const SAMPLES: u32 = 6;

/// Some points inside an area.
fn samples(area: &Region) -> Vec<Point> {
    let bounds = area.bounds();
    let place = |low: f64, length: f64, step: u32| low + length * (f64::from(step) + 0.5) / f64::from(SAMPLES);
    let mut points = Vec::new();
    for row in 0..SAMPLES {
        for column in 0..SAMPLES {
            let x = place(bounds.x0, bounds.width(), column);
            let point = Point::new(x, place(bounds.y0, bounds.height(), row));
            if area.contains(point) {
                points.push(point);
            }
        }
    }
    if points.len() < 4 {
        // A sliver: halfway between its corners.
        for contour in area.contours() {
            let half = contour.len() / 2;
            points.extend((0..half).map(|at| contour[at].midpoint(contour[contour.len() - 1 - at])));
        }
    }
    points
}

/// What no piece was given, because several hide each other in a circle, goes to the one that is nearest there.
fn fill_holes(scene: &Scene, all: &mut [Seen]) {
    let solid = |part: &&Part| part.tone() != Tone::None && part.order == Order::ByDepth;
    let covered = Region::union_all(scene.parts.iter().filter(solid).map(|part| &part.region));
    let given = Region::union_all(all.iter().flat_map(|seen| seen.areas.iter().map(|area| &area.0)));
    for hole in covered.difference(&given.grown(HAIR)).pieces() {
        let points = samples(&hole);
        let depth =
            |part: &Part| points.iter().filter_map(|point| part.front(*point)).fold(f64::NEG_INFINITY, f64::max);
        let nearest = (0..scene.parts.len())
            .filter(|&at| solid(&&scene.parts[at]))
            .max_by(|&a, &b| depth(&scene.parts[a]).total_cmp(&depth(&scene.parts[b])));
        if let Some(area) = nearest.and_then(|at| all[at].areas.first_mut()) {
            area.0 = area.0.union(&hole.grown(2.0 * HAIR));
        }
    }
}

fn seen(scene: &Scene, at: usize, lost: &[Lost]) -> Seen {
    let (part, mine) = (&scene.parts[at], &lost[at]);
    let areas =
        part.areas.iter().filter(|(_, tone)| *tone != Tone::None).map(|(area, tone)| {
            (if mine.hidden.is_empty() { area.clone() } else { area.without(mine.areas()) }, *tone)
        });
    let mut lines = Vec::new();
    let outline = part.region.contours().map(Line::closed).collect();
    let (kept, seams) = opened(scene, at, lost, outline);
    let (kept, fine) =
        if part.kinds.iter().any(|kind| kind.is_hand()) { fine(scene, part, kept) } else { (kept, vec![]) };
    for (some, ink) in [(kept, part.ink), (seams, Ink::Seam), (fine, Ink::Fine)] {
        lines.extend(uncovered(some, mine).into_iter().map(|line| (line, ink)));
    }
    for (line, ink) in &part.extra {
        lines.extend(uncovered(vec![line.clone()], mine).into_iter().map(|line| (line, *ink)));
    }
    lines.extend(rims(scene, part, mine));
    lines.retain(|(line, ink)| line.length() > shortest(*ink));
    let mut seen = Seen { kinds: part.kinds.clone(), areas: areas.collect(), lines };
    if is_limb(part) {
        without_slivers(&mut seen, &slivers(scene, at, mine));
    }
    seen
}

/// Lines between the fingers of one hand are finer than its outline.
fn fine(scene: &Scene, part: &Part, lines: Vec<Line>) -> (Vec<Line>, Vec<Line>) {
    let arm = part.kinds.iter().find_map(|kind| kind.arm());
    let others = scene.parts.iter().filter(|other| {
        other.kinds[0] != part.kinds[0] && other.kinds.iter().any(|kind| kind.is_hand() && kind.arm() == arm)
    });
    let (mut outer, mut inner) = (lines, Vec::new());
    for other in others {
        let mut rest = Vec::new();
        for line in outer {
            let cut = line.cut(&other.region);
            rest.extend(cut.outside);
            inner.extend(cut.inside);
        }
        outer = rest;
    }
    (outer, inner)
}

fn is_limb(part: &Part) -> bool {
    matches!(part.kinds[0], Kind::UpperArm(_) | Kind::Forearm(_) | Kind::Thigh(_) | Kind::Shank(_))
}

/// Narrow remains of a limb beside what lies over it, other than its own neighbor.
fn slivers(scene: &Scene, at: usize, lost: &Lost) -> Vec<Region> {
    let part = &scene.parts[at];
    let is_foreign = |winner: usize| joint_between(scene, part, &scene.parts[winner]).is_none();
    let foreign: Vec<&Region> =
        lost.hidden.iter().filter(|(winner, _)| is_foreign(*winner)).map(|(_, area)| area).collect();
    if foreign.is_empty() {
        return Vec::new();
    }
    let is_sliver = |piece: &Region| {
        let around: f64 = piece.contours().map(|contour| Line::closed(contour).length()).sum();
        2.0 * piece.area() < NARROW * around
    };
    part.region.without(foreign).pieces().filter(is_sliver).map(|piece| piece.grown(2.0 * HAIR)).collect()
}

/// Slivers are not drawn, neither area nor line.
fn without_slivers(seen: &mut Seen, slivers: &[Region]) {
    if slivers.is_empty() {
        return;
    }
    for (area, _) in &mut seen.areas {
        *area = area.without(slivers);
    }
    for sliver in slivers {
        for (line, ink) in std::mem::take(&mut seen.lines) {
            seen.lines.extend(line.cut(sliver).outside.into_iter().map(|line| (line, ink)));
        }
    }
    seen.lines.retain(|(line, ink)| line.length() > shortest(*ink));
}

/// What is narrower is a sliver: under half a millimeter at the usual size.
const NARROW: f64 = 0.006;

/// A line shorter than this is not drawn.
const fn shortest(ink: Ink) -> f64 {
    match ink {
        Ink::Eye | Ink::Face => 0.0,
        Ink::Body => 0.0060,
        _ => 0.0035,
    }
}

/// What of some lines nothing lies over.
fn uncovered(mut lines: Vec<Line>, lost: &Lost) -> Vec<Line> {
    for area in lost.areas() {
        lines = lines.into_iter().flat_map(|line| line.cut(area).outside).collect();
    }
    lines
}

/// The outline without what lies inside a joined piece near the joint, and apart the seams: what was taken out between
/// two colors.
fn opened(scene: &Scene, at: usize, lost: &[Lost], outline: Vec<Line>) -> (Vec<Line>, Vec<Line>) {
    let part = &scene.parts[at];
    let mut kept = outline;
    let mut seams = Vec::new();
    for joint in &scene.joints {
        let (other, is_outer) = match (part.is(joint.outer), part.is(joint.inner)) {
            (true, false) => (joint.inner, true),
            (false, true) => (joint.outer, false),
            _ => continue,
        };
        let Some(at_other) = scene.parts.iter().position(|part| part.is(other)) else { continue };
        let other = &scene.parts[at_other];
        let same_tone = other.tone() == part.tone();
        if !same_tone && !is_outer {
            continue;
        }
        // Only where nothing else lies between the two.
        let between = lost[at_other].hidden.iter().filter(|(winner, _)| *winner != at).map(|(_, area)| area);
        let round = Region::disk(joint.center, joint.radius);
        let open = other.region.intersection(&round).without(between);
        // Where both outlines run alike, one of them stays.
        let open = if is_outer { open } else { open.grown(-ALIKE) };
        let mut rest = Vec::new();
        for line in kept {
            let cut = line.cut(&open);
            rest.extend(cut.outside);
            if !same_tone {
                seams.extend(cut.inside);
            }
        }
        kept = rest;
    }
    for rim in scene.rims.iter().filter(|rim| part.is(rim.limb)) {
        // A limb has no end inside its garment.
        if let Some(garment) = scene.parts.iter().find(|part| part.is(rim.garment)) {
            let mut ends = vec![garment.region.clone()];
            if rim.faces_viewer {
                let first = Region::polygon(&rim.limb_start);
                ends = vec![first.grown(BAND).difference(&first.grown(-BAND))];
            }
            for inside in ends {
                kept = kept.into_iter().flat_map(|line| line.cut(&inside).outside).collect();
            }
        }
    }
    (kept, seams)
}

/// Outlines nearer to each other than this run alike.
const ALIKE: f64 = 0.001;

/// An outline this near to where a limb begins inside its garment is only that beginning.
const BAND: f64 = 0.0025;

/// The open ends of a garment that face the viewer: their near half always, their far half where no limb covers it.
fn rims(scene: &Scene, part: &Part, lost: &Lost) -> Vec<(Line, Ink)> {
    let mut lines = Vec::new();
    for rim in scene.rims.iter().filter(|rim| rim.faces_viewer && part.is(rim.garment)) {
        let Some(at_limb) = scene.parts.iter().position(|part| part.is(rim.limb)) else { continue };
        let limb = &scene.parts[at_limb];
        let count = rim.edge.len();
        let start = (0..count).find(|&at| rim.edge[at].1 && !rim.edge[(at + count - 1) % count].1).unwrap_or(0);
        let turned: Vec<(Point, bool)> = (0..=count).map(|at| rim.edge[(start + at) % count]).collect();
        let near: Vec<Point> = turned.iter().take_while(|edge| edge.1).map(|edge| edge.0).collect();
        let far: Vec<Point> = turned[near.len().saturating_sub(1)..].iter().map(|edge| edge.0).collect();
        let elsewhere = |lines: Vec<Line>| -> Vec<Line> {
            // What hides the garment hides its rim, except the limb that comes out of it.
            let others = lost.hidden.iter().filter(|(winner, _)| *winner != at_limb);
            let mut lines = lines;
            for (_, area) in others {
                lines = lines.into_iter().flat_map(|line| line.cut(area).outside).collect();
            }
            lines
        };
        lines.extend(elsewhere(vec![Line::open(near)]).into_iter().map(|line| (line, part.ink)));
        if rim.is_wide_open {
            let far = Line::open(far).cut(&limb.region).outside;
            lines.extend(elsewhere(far).into_iter().map(|line| (line, part.ink)));
        }
    }
    lines
}
