//! Hair: an inflated skull above a hairline, traced as a curve.
//!
//! Own choice, drawn by eye.

use kurbo::{Point, Vec2};

use super::head::{Head, SIZE};
use super::loft::{Bead, Cap, FINE, Loft, Ring, Shell, Solid};
use super::part::Tone;
use super::region::Region;
use crate::camera::Axes;
use body::Hair;

/// Height above the middle of the head, how far forward, how far backward, half breadth of the hair's surface.
const SHORT: [[f64; 4]; 9] = [
    [-0.0460, 0.0500, -0.0390, 0.0350],
    [-0.0300, 0.0515, -0.0540, 0.0430],
    [-0.0100, 0.0530, -0.0640, 0.0485],
    [0.0100, 0.0545, -0.0690, 0.0505],
    [0.0300, 0.0555, -0.0695, 0.0505],
    [0.0480, 0.0545, -0.0655, 0.0480],
    [0.0630, 0.0440, -0.0550, 0.0395],
    [0.0725, 0.0290, -0.0410, 0.0265],
    [0.0765, 0.0150, -0.0270, 0.0140],
];

const BOB: [[f64; 4]; 9] = [
    [-0.0640, 0.0380, -0.0640, 0.0560],
    [-0.0480, 0.0440, -0.0690, 0.0590],
    [-0.0200, 0.0500, -0.0720, 0.0590],
    [0.0100, 0.0545, -0.0720, 0.0565],
    [0.0300, 0.0560, -0.0705, 0.0535],
    [0.0480, 0.0535, -0.0655, 0.0480],
    [0.0620, 0.0420, -0.0535, 0.0380],
    [0.0700, 0.0280, -0.0395, 0.0255],
    [0.0735, 0.0150, -0.0270, 0.0140],
];

/// Degrees away from straight ahead, height of the hairline there; a parting raises it on one side.
const SHORT_LINE: [[f64; 2]; 18] = [
    [-180.0, -0.0440],
    [-135.0, -0.0380],
    [-108.0, -0.0140],
    [-88.0, -0.0080],
    [-74.0, -0.0080],
    [-64.0, 0.0080],
    [-52.0, 0.0290],
    [-34.0, 0.0400],
    [-20.0, 0.0455],
    [4.0, 0.0400],
    [28.0, 0.0350],
    [50.0, 0.0260],
    [64.0, 0.0060],
    [74.0, -0.0080],
    [88.0, -0.0080],
    [108.0, -0.0140],
    [135.0, -0.0380],
    [180.0, -0.0440],
];

const TIED_LINE: [[f64; 2]; 15] = [
    [-180.0, -0.0340],
    [-140.0, -0.0280],
    [-115.0, -0.0080],
    [-92.0, 0.0060],
    [-70.0, 0.0110],
    [-52.0, 0.0290],
    [-28.0, 0.0400],
    [-8.0, 0.0470],
    [12.0, 0.0420],
    [28.0, 0.0365],
    [52.0, 0.0270],
    [70.0, 0.0110],
    [92.0, 0.0060],
    [115.0, -0.0080],
    [140.0, -0.0280],
];

const BOB_LINE: [[f64; 2]; 13] = [
    [-180.0, -0.0630],
    [-62.0, -0.0600],
    [-56.0, -0.0400],
    [-48.0, -0.0020],
    [-38.0, 0.0260],
    [-22.0, 0.0420],
    [-10.0, 0.0480],
    [18.0, 0.0380],
    [36.0, 0.0240],
    [48.0, -0.0020],
    [56.0, -0.0400],
    [62.0, -0.0600],
    [180.0, -0.0630],
];

/// Hair as seen.
#[derive(Debug)]
pub(crate) struct SeenHair {
    pub(crate) region: Region,
    pub(crate) shell: Shell,
    /// What is tied up behind the head.
    pub(crate) bun: Option<Shell>,
    pub(crate) tone: Tone,
}

/// What is on a head, as a camera sees it; nothing for a bald one.
pub(crate) fn seen(head: &Head, hair: Hair, view: &Axes) -> Option<SeenHair> {
    let (table, line): (&[[f64; 4]], &[[f64; 2]]) = match hair {
        Hair::Bald => return None,
        Hair::Scarf => return Some(scarf(head, view)),
        Hair::Short => (&SHORT, &SHORT_LINE),
        Hair::Tied => (&SHORT, &TIED_LINE),
        Hair::Bob => (&BOB, &BOB_LINE),
    };
    let low = table[0][0];
    let high = table[table.len() - 1][0];
    let rings: Vec<Ring> = (0..=14).map(|step| head.ring(table, low + (high - low) * f64::from(step) / 14.0)).collect();
    let shell = Solid::Loft(Loft::new(&rings, FINE + 4, [Cap::Open, Cap::Round(0.002)])).seen(view);
    let hulls = shell.hulls();
    let all = Region::union_of(hulls.iter().map(Vec::as_slice));
    let region = above_the_line(head, table, line, view, &all);
    let bun = (hair == Hair::Tied).then(|| bun(head).seen(view));
    Some(SeenHair { region, shell, bun, tone: Tone::Hair })
}

/// A scarf around head and neck, open before the face.
const SCARF: [[f64; 4]; 11] = [
    [-0.1120, 0.0480, -0.0640, 0.0740],
    [-0.1000, 0.0440, -0.0620, 0.0620],
    [-0.0800, 0.0440, -0.0590, 0.0490],
    [-0.0620, 0.0500, -0.0570, 0.0465],
    [-0.0350, 0.0560, -0.0620, 0.0480],
    [0.0000, 0.0580, -0.0690, 0.0520],
    [0.0300, 0.0575, -0.0700, 0.0515],
    [0.0480, 0.0540, -0.0650, 0.0470],
    [0.0620, 0.0420, -0.0540, 0.0380],
    [0.0710, 0.0280, -0.0400, 0.0255],
    [0.0745, 0.0150, -0.0270, 0.0140],
];

fn scarf(head: &Head, view: &Axes) -> SeenHair {
    let rings: Vec<Ring> = (0..=18).map(|step| head.ring(&SCARF, -0.112 + 0.1865 * f64::from(step) / 18.0)).collect();
    let shell = Solid::Loft(Loft::new(&rings, FINE + 4, [Cap::Closed, Cap::Round(0.002)])).seen(view);
    let hulls = shell.hulls();
    let all = Region::union_of(hulls.iter().map(Vec::as_slice));
    // An egg before the face; where its edge is out of sight it is led outward.
    let edge: Vec<(Point, bool)> = (0..48)
        .map(|step| {
            let (sine, cosine) = (std::f64::consts::TAU * f64::from(step) / 48.0).sin_cos();
            let up = if sine > 0.0 { -0.014 + 0.055 * sine } else { -0.014 + 0.047 * sine };
            let (place, outward) = head.surface(&SCARF, up, 57.0 * cosine);
            let is_seen = outward.dot(view.toward) > 0.0;
            let aside = view.point(outward).to_vec2().normalize() * if is_seen { 0.0 } else { FAR };
            (view.point(place) + aside, is_seen)
        })
        .collect();
    let corners: Vec<Point> = edge.iter().map(|place| place.0).collect();
    let is_open = edge.iter().any(|place| place.1);
    let region = if is_open { all.difference(&Region::polygon(&corners)) } else { all };
    SeenHair { region, shell, bun: None, tone: Tone::Shoes }
}

fn bun(head: &Head) -> Solid {
    let bead = |ahead, up, radius| Bead { center: head.at(ahead, up, 0.0), radius: radius * SIZE };
    Solid::Chain(vec![bead(-0.0640, 0.0340, 0.0150), bead(-0.0820, 0.0400, 0.0240)])
}

/// Steps around the hairline.
const STEPS: u32 = 90;

/// What of the hair's outline lies above the hairline.
///
/// # Method
/// Each visible stretch of the hairline cuts the outline: where it passes out of sight, it is led on straight outward and
/// around. The side that is kept is the one toward which the surface rises.
fn above_the_line(head: &Head, table: &[[f64; 4]], line: &[[f64; 2]], view: &Axes, all: &Region) -> Region {
    let at = |step: u32, rise: f64| {
        let degrees = -180.0 + 360.0 * f64::from(step) / f64::from(STEPS);
        let [_, up] = super::stations::between(line, degrees);
        head.surface(table, up + rise, degrees)
    };
    let seen: Vec<bool> = (0..STEPS).map(|step| at(step, 0.0).1.dot(view.toward) > 0.0).collect();
    let Some(start) = seen.iter().position(|seen| !seen) else { return all.clone() };
    let mut region = all.clone();
    let mut stretch: Vec<u32> = Vec::new();
    let mut cuts = 0;
    for offset in 0..=STEPS {
        let step = (start as u32 + offset) % STEPS;
        if seen[step as usize] && offset < STEPS {
            stretch.push(step);
            continue;
        }
        if stretch.len() > 2 {
            let places: Vec<(Point, Vec2)> = stretch
                .iter()
                .map(|step| {
                    let (place, outward) = at(*step, 0.0);
                    (view.point(place), view.point(outward).to_vec2())
                })
                .collect();
            let inside = view.point(at(stretch[stretch.len() / 2], 0.004).0);
            region = kept_side(&region, &places, view.point(head.middle), inside);
            cuts += 1;
        }
        stretch.clear();
    }
    let crown_is_near = head.frame.y().dot(view.toward) > 0.0;
    if cuts == 0 && !crown_is_near { Region::EMPTY } else { region }
}

/// The side of a cut on which a point lies.
fn kept_side(region: &Region, cut: &[(Point, Vec2)], middle: Point, inside: Point) -> Region {
    let outward = |(end, outward): (Point, Vec2)| end + outward.normalize() * FAR;
    let (Some(&first), Some(&last)) = (cut.first(), cut.last()) else { return region.clone() };
    let mut corners: Vec<Point> = cut.iter().map(|place| place.0).collect();
    let [from, to] = [outward(last), outward(first)].map(|end| (end - middle).atan2());
    corners.push(outward(last));
    let turn = (to - from).rem_euclid(std::f64::consts::TAU);
    corners.extend((1..8).map(|step| middle + Vec2::from_angle(from + turn * f64::from(step) / 8.0) * FAR * 1.5));
    corners.push(outward(first));
    let side = Region::polygon(&corners);
    if side.contains(inside) { region.intersection(&side) } else { region.difference(&side) }
}

/// Beyond every head.
const FAR: f64 = 0.25;

/// Where the hair goes up from on the skull: used to know whether an ear is covered.
pub(crate) const fn covers_ears(hair: Hair) -> bool {
    matches!(hair, Hair::Bob | Hair::Scarf)
}
