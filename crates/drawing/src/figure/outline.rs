//! What of a piece's outline is drawn.

use kurbo::{Point, Vec2};

use super::layers::Lost;
use super::lines::Line;
use super::part::{Ink, Kind, Part, Rim, Scene};
use super::region::{Region, overlaps};

/// The lines of a piece: its outline, open where it flows into a neighbor, its seams, and its own lines; each as far as
/// nothing lies over it.
pub(crate) fn lines(scene: &Scene, at: usize, lost: &[Lost]) -> Vec<(Line, Ink)> {
    let (part, mine) = (&scene.parts[at], &lost[at]);
    let outline = part.region.contours().map(Line::closed).collect();
    let (kept, seams) = opened(scene, at, lost, outline);
    let is_hand = part.kinds.iter().any(|kind| kind.is_hand());
    let (kept, fine) = if is_hand { fine(scene, part, kept) } else { (kept, Vec::new()) };
    let mut lines = Vec::new();
    for (some, ink) in [(kept, part.ink), (seams, Ink::Seam), (fine, Ink::Fine)] {
        lines.extend(uncovered(some, mine.areas()).into_iter().map(|line| (line, ink)));
    }
    for (line, ink) in &part.extra {
        lines.extend(uncovered(vec![line.clone()], mine.areas()).into_iter().map(|line| (line, *ink)));
    }
    lines.extend(rims(scene, part, mine));
    lines.retain(is_long_enough);
    lines
}

/// Whether a line is more than a dot.
pub(crate) fn is_long_enough((line, ink): &(Line, Ink)) -> bool {
    let shortest = match ink {
        Ink::Eye | Ink::Face => 0.0,
        Ink::Body => 0.0060,
        _ => 0.0035,
    };
    line.length() > shortest
}

/// What of some lines nothing lies over.
fn uncovered<'a>(lines: Vec<Line>, areas: impl Iterator<Item = &'a Region>) -> Vec<Line> {
    let areas: Vec<&Region> = areas.collect();
    let is_covered = |point: Point, _: Vec2| areas.iter().any(|area| area.contains(point));
    lines.into_iter().flat_map(|line| line.cut_by(&areas, is_covered).outside).collect()
}

/// Lines between the fingers of one hand are finer than its outline.
fn fine(scene: &Scene, part: &Part, lines: Vec<Line>) -> (Vec<Line>, Vec<Line>) {
    let arm = part.kinds.iter().find_map(|kind| kind.arm());
    let others = scene.parts.iter().filter(|other| {
        other.kinds[0] != part.kinds[0] && other.kinds.iter().any(|kind| kind.is_hand() && kind.arm() == arm)
    });
    let others: Vec<&Region> = others.map(|other| &other.region).collect();
    let (mut outer, mut inner) = (Vec::new(), Vec::new());
    for line in lines {
        let cut = line.cut_by(&others, |point, _| others.iter().any(|other| other.contains(point)));
        outer.extend(cut.outside);
        inner.extend(cut.inside);
    }
    (outer, inner)
}

/// The outline without what lies inside a joined piece near the joint, and apart the seams: what was taken out between
/// two colors.
fn opened(scene: &Scene, at: usize, lost: &[Lost], outline: Vec<Line>) -> (Vec<Line>, Vec<Line>) {
    let part = &scene.parts[at];
    let bounds = part.region.bounds();
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
        let round = Region::disk(joint.center, joint.radius);
        if (!same_tone && !is_outer) || !overlaps(round.bounds(), bounds) {
            continue;
        }
        // Only where nothing else lies between the two.
        let between = lost[at_other].of_others(at);
        let between: Vec<&Region> = between.filter(|area| overlaps(area.bounds(), round.bounds())).collect();
        let flows = |point: Point, along: Vec2| {
            // Where both outlines run alike, one of them stays: that of the inner piece.
            let outward = Vec2::new(along.y, -along.x).normalize() * if is_outer { 0.0 } else { ALIKE };
            point.distance(joint.center) < joint.radius
                && other.region.contains(point + outward)
                && other.region.contains(point)
                && !between.iter().any(|area| area.contains(point))
        };
        let edges: Vec<&Region> = [&other.region, &round].into_iter().chain(between.iter().copied()).collect();
        let mut rest = Vec::new();
        for line in kept {
            if !overlaps(line.bounds(), round.bounds()) {
                rest.push(line);
                continue;
            }
            let cut = line.cut_by(&edges, flows);
            rest.extend(cut.outside);
            if !same_tone {
                seams.extend(cut.inside);
            }
        }
        kept = rest;
    }
    for rim in scene.rims.iter().filter(|rim| part.is(rim.limb)) {
        kept = without_beginning(scene, rim, kept);
    }
    (kept, seams)
}

/// Outlines nearer to each other than this run alike.
const ALIKE: f64 = 0.001;

/// The outline of a limb without where it begins inside its garment.
fn without_beginning(scene: &Scene, rim: &Rim, lines: Vec<Line>) -> Vec<Line> {
    let hidden = if rim.faces_viewer {
        let first = Region::polygon(&rim.limb_start);
        first.grown(BAND).difference(&first.grown(-BAND))
    } else {
        let Some(garment) = scene.parts.iter().find(|part| part.is(rim.garment)) else { return lines };
        garment.region.clone()
    };
    lines.into_iter().flat_map(|line| line.cut(&hidden).outside).collect()
}

/// An outline this near to where a limb begins inside its garment is only that beginning.
const BAND: f64 = 0.0025;

/// The open ends of a garment that face the viewer: their near half always, their far half where no limb covers it.
fn rims(scene: &Scene, part: &Part, lost: &Lost) -> Vec<(Line, Ink)> {
    let mut lines = Vec::new();
    for rim in scene.rims.iter().filter(|rim| rim.faces_viewer && part.is(rim.garment)) {
        let Some(at_limb) = scene.parts.iter().position(|part| part.is(rim.limb)) else { continue };
        let count = rim.edge.len();
        let start = (0..count).find(|&at| rim.edge[at].1 && !rim.edge[(at + count - 1) % count].1).unwrap_or(0);
        let turned: Vec<(Point, bool)> = (0..=count).map(|at| rim.edge[(start + at) % count]).collect();
        let near: Vec<Point> = turned.iter().take_while(|edge| edge.1).map(|edge| edge.0).collect();
        let far: Vec<Point> = turned[near.len().saturating_sub(1)..].iter().map(|edge| edge.0).collect();
        let mut edges = vec![Line::open(near)];
        if rim.is_wide_open {
            edges.extend(Line::open(far).cut(&scene.parts[at_limb].region).outside);
        }
        // What hides the garment hides its rim, except the limb that comes out of it.
        lines.extend(uncovered(edges, lost.of_others(at_limb)).into_iter().map(|line| (line, part.ink)));
    }
    lines
}

/// Narrow remains of a limb beside what lies over it, other than its own neighbor: they are not drawn.
pub(crate) fn slivers(scene: &Scene, at: usize, lost: &Lost) -> Vec<Region> {
    let part = &scene.parts[at];
    let is_limb = matches!(part.kinds[0], Kind::UpperArm(_) | Kind::Forearm(_) | Kind::Thigh(_) | Kind::Shank(_));
    let is_foreign = |winner: usize| {
        let other = &scene.parts[winner];
        !scene.joints.iter().any(|joint| {
            (part.is(joint.outer) && other.is(joint.inner)) || (part.is(joint.inner) && other.is(joint.outer))
        })
    };
    let bounds = part.region.bounds();
    let foreign = lost.hidden.iter().filter(|(winner, area)| is_foreign(*winner) && overlaps(bounds, area.bounds()));
    let foreign: Vec<&Region> = foreign.map(|(_, area)| area).collect();
    if !is_limb || foreign.is_empty() {
        return Vec::new();
    }
    let is_sliver = |piece: &Region| {
        let around: f64 = piece.contours().map(|contour| Line::closed(contour).length()).sum();
        2.0 * piece.area() < NARROW * around
    };
    part.region
        .without(foreign)
        .pieces()
        .filter(is_sliver)
        .map(|piece| piece.grown(2.0 * super::layers::HAIR))
        .collect()
}

/// What is narrower is a sliver: under half a millimeter at the usual size.
const NARROW: f64 = 0.006;
