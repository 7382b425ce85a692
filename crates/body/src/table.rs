//! An arm that reaches onto a table: how the elbow bends, and when the trunk leans along.

use evidence::ids;

use crate::angle::Angle;
use crate::arm::{Arm, Shoulder};
use crate::pose::Pose;
use crate::posture::Posture;
use crate::skeleton::Skeleton;

/// How far the trunk of a sitting person leans, a straight arm's hand on the table, for an elevation.
///
/// # Units and shape
/// Elevation straight ahead, humerus against thorax, 0 to 180; the lean is 0 to 90.
///
/// # Method
/// The hand stays at the height of the table's top, so the elevation beyond what an upright trunk has comes from
/// leaning. Zero for elevations that an upright trunk has with the elbow bent.
///
/// # Source
/// `table-above-hips` (own choice), and those of [`Skeleton`], whose hand it is.
pub fn lean_over_table(elevation: Angle) -> Angle {
    falling_to(ids::TABLE_ABOVE_HIPS.number(), |lean| grip_height(elevation, Angle::ZERO, lean), UPRIGHT)
}

/// How far the elbow of an upright sitting person bends so that the hand lies on the table, for an elevation.
///
/// # Units and shape
/// As [`lean_over_table`]; zero where a straight arm reaches no lower than the table.
pub fn elbow_on_table(elevation: Angle) -> Angle {
    // Counted from above, so that bending more comes nearer to the table from below.
    let depth = |elbow: Angle| -grip_height(elevation, elbow, Angle::ZERO);
    falling_to(-ids::TABLE_ABOVE_HIPS.number(), depth, ids::POSE_ELBOW_FOLDED.degrees().into())
}

/// How high the grip is above the hips of somebody sitting.
fn grip_height(elevation: Angle, elbow: Angle, lean: Angle) -> f64 {
    let operated = Arm { shoulder: Shoulder::raised_ahead(elevation), elbow, ..Arm::HANGING };
    let pose = Pose { lean, operated, ..Pose::at_rest(Posture::Sitting) };
    Skeleton::of(&pose).operated.grip.y
}

/// From the shoulder to the middle of the grip.
pub(crate) fn straight_arm() -> f64 {
    ids::UPPER_ARM_LENGTH.number() + ids::FOREARM_LENGTH.number() + ids::GRIP_CENTER.number()
}

/// As far over as a trunk goes.
const UPRIGHT: Angle = Angle::from_degrees(90.0); // not medical: a trunk that lies on the table

/// Where a value that falls with the angle comes down to `wanted`; zero where it is there already, `most` where it
/// never comes.
fn falling_to(wanted: f64, of: impl Fn(Angle) -> f64, most: Angle) -> Angle {
    let (mut low, mut high) = (Angle::ZERO, most);
    if of(low) <= wanted {
        return low;
    }
    for _ in 0..HALVINGS {
        let middle = (low + high) * HALF;
        if of(middle) > wanted { low = middle } else { high = middle }
    }
    high
}

const HALVINGS: u32 = 40; // not medical: to far under a thousandth of a degree
const HALF: f64 = 0.5; // not medical: the middle

#[cfg(test)]
mod tests {
    use super::*;

    /// By lengths and angles in one plane, apart from the skeleton: the shoulder rises about the inner end of the
    /// collarbone, out of that plane, and is then carried by the trunk.
    fn hand_height(lean: Angle, elevation: Angle, elbow: Angle) -> f64 {
        let number = |entry: &evidence::Entry| entry.number();
        let beyond = (elevation.degrees() - number(ids::SCAPULA_SETTING)).max(0.0);
        let rise = Angle::from_degrees(beyond * number(ids::CLAVICLE_SHARE));
        let across = number(ids::SHOULDER_HALF_BREADTH) - number(ids::INNER_CLAVICLE_HALF_BREADTH);
        let up = number(ids::SHOULDER_CENTER_HEIGHT) - number(ids::INNER_CLAVICLE_HEIGHT);
        let shoulder =
            number(ids::INNER_CLAVICLE_HEIGHT) - number(ids::HIP_HEIGHT) + up * rise.cos() + across * rise.sin();
        let beyond_elbow = straight_arm() - number(ids::UPPER_ARM_LENGTH);
        let upper = (elevation - lean).cos() * number(ids::UPPER_ARM_LENGTH);
        shoulder * lean.cos() - upper - beyond_elbow * (elevation + elbow - lean).cos()
    }

    #[test]
    fn the_hand_lies_on_the_table_at_every_elevation() {
        for degrees in 20..=175 {
            // not medical: the arc of a table slide and beyond
            let elevation = Angle::from_degrees(f64::from(degrees));
            let (lean, elbow) = (lean_over_table(elevation), elbow_on_table(elevation));
            let off = hand_height(lean, elevation, elbow) - ids::TABLE_ABOVE_HIPS.number();
            assert!(off.abs() < 1e-6, "{degrees}: {off}, lean {lean:.1}, elbow {elbow:.1}"); // not medical: rounding
            assert!(lean == Angle::ZERO || elbow == Angle::ZERO, "{degrees}: {lean:.1} {elbow:.1}");
        }
    }

    #[test]
    fn more_elevation_leans_more() {
        let leans: Vec<_> = (0..=180).map(|degrees| lean_over_table(Angle::from_degrees(f64::from(degrees)))).collect(); // not medical: the arc
        assert!(leans.windows(2).all(|pair| pair[0] <= pair[1]));
    }
}
