//! Pieces of one limb become one outline where they only meet at their joint.

use super::part::{JointDisk, Kind, Part, Scene};
use super::region::Region;

/// Overlap outside the joint up to which two pieces are one, in parts of stature squared.
const OVERLAP: f64 = 2.5e-4;

/// How far the hollow of an elbow or a knee is rounded, and that of a wrist.
const HOLLOW: f64 = 0.016;
const WRIST_HOLLOW: f64 = 0.010;

/// Joins knees, elbows and wrists.
pub(crate) fn join_limbs(scene: &mut Scene) {
    let joints = scene.joints.clone();
    for joint in &joints {
        let hollow = match (joint.outer, joint.inner) {
            (Kind::Shank(_), Kind::Thigh(_)) | (Kind::Forearm(_), Kind::UpperArm(_)) => HOLLOW,
            (Kind::Palm(_), Kind::Forearm(_)) => WRIST_HOLLOW,
            _ => continue,
        };
        if differs_over_shirt(scene, joint) {
            continue;
        }
        let find = |kind: Kind| scene.parts.iter().position(|part| part.is(kind));
        let (Some(outer), Some(inner)) = (find(joint.outer), find(joint.inner)) else { continue };
        if outer == inner {
            continue;
        }
        let disk = Region::disk(joint.center, joint.radius);
        let shared = scene.parts[outer].region.intersection(&scene.parts[inner].region).difference(&disk);
        if shared.area() > OVERLAP {
            continue;
        }
        let outer = scene.parts.remove(outer);
        if let Some(inner) = scene.parts.iter_mut().find(|part| part.is(joint.inner)) {
            absorb(inner, outer, joint, hollow);
        }
    }
}

/// Whether one of the two lies over the shirt by rule and the other does not: then they must stay apart.
fn differs_over_shirt(scene: &Scene, joint: &JointDisk) -> bool {
    let rule = |kind: Kind| scene.over.contains(&(kind, Kind::Shirt));
    matches!(joint.inner, Kind::UpperArm(_)) && rule(joint.inner) && !rule(joint.outer)
}

fn absorb(inner: &mut Part, outer: Part, joint: &JointDisk, hollow: f64) {
    let both = inner.region.union(&outer.region);
    inner.reshape(both.with_round_hollows(hollow, Some((joint.center, joint.radius))));
    inner.shells.extend(outer.shells);
    inner.kinds.extend(outer.kinds);
    inner.extra.extend(outer.extra);
}
