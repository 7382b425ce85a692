//! The sling on the operated arm: a pouch around the forearm and a strap around the neck.
//!
//! Own choice, drawn by eye, of a plain sling.

use body::Vector;

use super::pieces::chain;
use crate::figure::joints::Flank;
use crate::figure::loft::{Cap, FINE, Loft, Ring, Solid};
use crate::figure::part::{Ink, Kind, Part, Scene, Tone};
use crate::figure::person::Person;

/// Half the breadth of the strap.
const STRAP: f64 = 0.0085;

/// Adds pouch and strap.
pub(crate) fn add(at: usize, person: &Person<'_>, scene: &mut Scene) {
    let skeleton = &person.joints.skeleton;
    let arm = skeleton.operated;
    let along = (arm.wrist - arm.elbow).normalize_or(Vector::X);
    let upper = (arm.shoulder - arm.elbow).normalize_or(Vector::Y);
    let up = (upper - along * upper.dot(along)).normalize_or(Vector::Y);
    let aside = along.cross(up);
    let girth = person.shape.arms;
    // From behind the elbow to the knuckles.
    let sections = [(-0.022, 0.024, 0.024), (0.0, 0.036, 0.031), (0.05, 0.037, 0.031), (0.10, 0.031, 0.026)]
        .into_iter()
        .chain([(0.146, 0.0265, 0.0225), (0.185, 0.026, 0.024), (0.200, 0.022, 0.022)]);
    let rings: Vec<Ring> = sections
        .map(|(place, high, broad)| {
            let center = arm.elbow + along * place - up * 0.002;
            Ring { center, a: up * (high * girth), b: aside * (broad * girth), power: 2.4 }
        })
        .collect();
    let pouch = Solid::Loft(Loft::new(&rings, FINE, [Cap::Round(0.010), Cap::Closed])).seen(&person.view);
    scene.parts.push(Part::of(Kind::Thing(at), Tone::Side, Ink::Thing, vec![pouch]));
    let pouch = Kind::Thing(at);
    for kind in [Kind::Forearm(Flank::Operated), Kind::UpperArm(Flank::Operated), Kind::Palm(Flank::Operated)] {
        scene.over.push((pouch, kind));
    }
    let trunk = person.trunk();
    let front = arm.wrist + along * 0.01 + up * 0.024;
    let before = [
        front,
        trunk.on_chest(0.700, -0.020),
        trunk.on_chest(0.760, -0.036),
        trunk.at(0.034, 0.812, -0.050),
        trunk.at(-0.008, 0.8375, -0.046),
    ];
    let behind = [
        trunk.at(-0.008, 0.8375, -0.046),
        trunk.at(-0.052, 0.800, -0.030),
        trunk.on_back(0.740, 0.020),
        trunk.on_back(0.680, 0.064),
        arm.elbow + up * 0.034 - along * 0.004,
    ];
    for places in [before, behind] {
        let shell = chain(places.into_iter(), STRAP).seen(&person.view);
        scene.parts.push(Part::of(Kind::Thing(at), Tone::Side, Ink::Thing, vec![shell]));
    }
}
