//! The resting allowance: what sling, rest, washing, dressing and the hanging arm may use from day 0.

use body::Movement;
use evidence::ids;
use exercise::Resting;
use plan::SlingPosition;
use quantity::Degrees;

use crate::dated::Dated;

/// How far the arm may rest on a day.
///
/// # Source
/// `resting-elevation`, `resting-internal-rotation`: own choice. A safe arc below
/// it lowers it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Allowance {
    pub elevation: Degrees,
    pub internal: Degrees,
    pub external: Degrees,
}

impl Allowance {
    /// The allowance of a day.
    pub(crate) fn on(dated: &Dated<'_>, day: u16) -> Self {
        let mut allowance = Self {
            elevation: ids::RESTING_ELEVATION.degrees(),
            internal: ids::RESTING_INTERNAL_ROTATION.degrees(),
            external: Degrees::whole(0),
        };
        let lives = dated.moves.lives(body::Joint::Shoulder, day);
        for arc in dated.facts.safe_arcs.iter() {
            if dated.arc_ends(&arc).is_some_and(|until| until <= lives) {
                continue;
            }
            let lowered = match arc.movement {
                Movement::ForwardElevation | Movement::ScapularPlaneElevation | Movement::Abduction => {
                    &mut allowance.elevation
                }
                Movement::InternalRotation => &mut allowance.internal,
                Movement::ExternalRotation => &mut allowance.external,
                _ => continue,
            };
            *lowered = (*lowered).min(arc.up_to);
        }
        allowance
    }

    /// Whether a pose lies inside the allowance.
    pub(crate) fn holds(&self, pose: &Resting) -> bool {
        pose.elevation <= self.elevation
            && pose.rotation_internal <= self.internal
            && pose.rotation_external <= self.external
    }

    /// Whether the sling's own position lies inside the allowance.
    pub(crate) fn holds_sling(&self, position: SlingPosition) -> bool {
        match position {
            SlingPosition::Neutral => self.external >= Degrees::whole(0),
            SlingPosition::InternalRotation => self.internal >= ids::RESTING_INTERNAL_ROTATION.degrees(),
        }
    }
}
