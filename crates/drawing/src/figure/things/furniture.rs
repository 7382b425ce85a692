//! Furniture that fits the person who uses it.

use body::{Posture, Vector};

use super::{Block, BlockPlace, Thing};
use crate::figure::joints::Joints;

/// A bed under somebody who lies, or a mat under somebody on the knees.
pub fn bed(joints: &Joints) -> Vec<Thing> {
    let head = joints.skeleton.head;
    // Along the body: from beyond the head to beyond the feet.
    let along = Vector::new(head.x, 0.0, head.z).normalize_or(-Vector::X);
    let across = Vector::new(-along.z, 0.0, along.x);
    let feet = [joints.skeleton.operated_leg.toe, joints.skeleton.other_leg.toe];
    let foot_end = feet.iter().map(|toe| toe.dot(along)).fold(-0.3, f64::min) - 0.04;
    let head_end = head.dot(along) + 0.13;
    let is_on_the_side = matches!(joints.pose.posture, Posture::LyingOnTheSoundSide | Posture::LyingOnTheOperatedSide);
    // Knees drawn up reach forward of somebody on the side.
    let shift = if is_on_the_side { Vector::X * 0.06 } else { Vector::ZERO };
    let middle = along * ((head_end + foot_end) / 2.0) + shift + Vector::Y * (joints.floor - THICK);
    let half = [along * ((head_end - foot_end) / 2.0), Vector::Y * THICK, across * 0.23];
    vec![Thing::Block(Block { middle, half, place: BlockPlace::Behind })]
}

/// Half the thickness of a mattress.
const THICK: f64 = 0.032;

/// A pillow under the head of somebody who lies; none where the head is far above the bed.
pub fn pillow_under_head(joints: &Joints) -> Vec<Thing> {
    let head = joints.skeleton.head;
    let along = Vector::new(head.x, 0.0, head.z).normalize_or(-Vector::X);
    let across = Vector::new(-along.z, 0.0, along.x);
    // From the bed to a little above the lower side of the head.
    let under = match joints.pose.posture {
        Posture::LyingOnTheSoundSide | Posture::LyingOnTheOperatedSide => 0.040,
        _ => 0.050,
    };
    let top = head.y - under;
    if top - joints.floor > 0.12 {
        return Vec::new();
    }
    let thick = ((top - joints.floor) / 2.0).max(0.012);
    let middle = Vector::new(head.x, joints.floor + thick, head.z) + along * 0.012;
    let half = [along * 0.085, Vector::Y * thick, across * 0.140];
    vec![Thing::Cushion(Block { middle, half, place: BlockPlace::Behind })]
}

/// A chair with a back under somebody who sits.
pub fn chair(joints: &Joints) -> Vec<Thing> {
    let mut things = stool(joints);
    let seat = joints.seat.unwrap_or(SEAT);
    let back = Vector::new(-0.128, seat + 0.150, 0.0);
    things.push(Thing::Block(Block::upright(back, 0.009, 0.085, 0.105, BlockPlace::Among)));
    for right in [-0.090, 0.090] {
        let [low, high] = [seat - 0.01, seat + 0.075].map(|up| Vector::new(-0.128, up, right));
        things.push(Thing::Post { ends: [low, high], radius: LEG });
    }
    things
}

/// A seat without a back.
pub fn stool(joints: &Joints) -> Vec<Thing> {
    let seat = joints.seat.unwrap_or(SEAT);
    let middle = Vector::new(0.020, seat - 0.011, 0.0);
    let mut things = vec![Thing::Block(Block::upright(middle, 0.150, 0.011, 0.115, BlockPlace::Among))];
    for ahead in [-0.115, 0.145] {
        for right in [-0.095, 0.095] {
            let [low, high] = [joints.floor + LEG, seat - 0.022].map(|up| Vector::new(ahead, up, right));
            things.push(Thing::Post { ends: [low, high], radius: LEG });
        }
    }
    things
}

const SEAT: f64 = -0.056;
/// Half the thickness of a leg of furniture.
const LEG: f64 = 0.008;

/// A table: the middle of its top, half its size forward and to the right, and the height of the floor.
pub fn table(top: Vector, ahead: f64, right: f64, floor: f64) -> Vec<Thing> {
    let middle = top - Vector::Y * 0.010;
    let mut things = vec![Thing::Block(Block::upright(middle, ahead, 0.010, right, BlockPlace::Among))];
    for x in [-0.88, 0.88] {
        for z in [-0.88, 0.88] {
            let [low, high] =
                [floor + LEG, top.y - 0.020].map(|up| Vector::new(top.x + x * ahead, up, top.z + z * right));
            things.push(Thing::Post { ends: [low, high], radius: LEG });
        }
    }
    things
}

/// A piece of wall whose face goes through a place and looks somewhere, from the floor up.
pub fn wall(face: Vector, looks: Vector, floor: f64) -> Vec<Thing> {
    let looks = Vector::new(looks.x, 0.0, looks.z).normalize_or(-Vector::X);
    let across = Vector::new(-looks.z, 0.0, looks.x);
    let up = (WALL_TOP - floor) / 2.0;
    let middle = Vector::new(face.x, floor + up, face.z) - looks * 0.012;
    let half = [across * 0.16, Vector::Y * up, looks * 0.012];
    vec![Thing::Block(Block { middle, half, place: BlockPlace::Among })]
}

/// How high a piece of wall goes above the hips.
const WALL_TOP: f64 = 0.66;

/// The two posts of a door frame that stands across a direction at a place, from the floor up.
pub fn door_frame(middle: Vector, across: Vector, half: f64, floor: f64) -> Vec<Thing> {
    let across = Vector::new(across.x, 0.0, across.z).normalize_or(Vector::Z);
    let through = Vector::new(-across.z, 0.0, across.x);
    let up = (WALL_TOP - floor) / 2.0;
    [-1.0, 1.0]
        .map(|side| {
            let place = Vector::new(middle.x, floor + up, middle.z) + across * (side * (half + 0.018));
            let half = [across * 0.018, Vector::Y * up, through * 0.022];
            Thing::Block(Block { middle: place, half, place: BlockPlace::Among })
        })
        .to_vec()
}

/// The ground under somebody who stands or sits.
pub fn ground(joints: &Joints) -> Vec<Thing> {
    let feet = (joints.skeleton.operated_leg.ankle + joints.skeleton.other_leg.ankle) / 2.0;
    vec![Thing::Ground { at: Vector::new(feet.x + 0.02, joints.floor, feet.z), half: 0.21 }]
}
