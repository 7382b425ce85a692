//! An arm that reaches onto a table: how the elbow bends, and when the trunk leans along.

use evidence::ids;

use crate::angle::Angle;

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
/// `table-above-hips`, `shoulder-center-height`, `grip-center` (own choices), lengths of the arm.
pub fn lean_over_table(elevation: Angle) -> Angle {
    let height = |lean: Angle| trunk_length() * lean.cos() - straight_arm() * (elevation - lean).cos();
    falling_to(ids::TABLE_ABOVE_HIPS.number(), height, UPRIGHT)
}

/// How far the elbow of an upright sitting person bends so that the hand lies on the table, for an elevation.
///
/// # Units and shape
/// As [`lean_over_table`]; zero where a straight arm reaches no lower than the table.
pub fn elbow_on_table(elevation: Angle) -> Angle {
    let beyond_elbow = straight_arm() - ids::UPPER_ARM_LENGTH.number();
    // Counted from above, so that bending more comes nearer to the table from below.
    let depth = |elbow: Angle| {
        ids::UPPER_ARM_LENGTH.number() * elevation.cos() + beyond_elbow * (elevation + elbow).cos() - trunk_length()
    };
    falling_to(-ids::TABLE_ABOVE_HIPS.number(), depth, ids::POSE_ELBOW_FOLDED.degrees().into())
}

/// From the hips to the shoulder.
fn trunk_length() -> f64 {
    ids::SHOULDER_CENTER_HEIGHT.number() - ids::HIP_HEIGHT.number()
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

    fn hand_height(lean: Angle, elevation: Angle, elbow: Angle) -> f64 {
        let beyond_elbow = straight_arm() - ids::UPPER_ARM_LENGTH.number();
        let upper = (elevation - lean).cos() * ids::UPPER_ARM_LENGTH.number();
        trunk_length() * lean.cos() - upper - beyond_elbow * (elevation + elbow - lean).cos()
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
