//! The sling: worn at least as much, turned in at least as far, and resting where the arm may rest.

use body::Movement;
use evidence::ids;
use exercise::Resting;
use plan::{SlingPosition, Wear};
use quantity::Degrees;

use super::Judge;
use super::found::{Found, Wrong};

/// Judges the sling of every day.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    for span in &judge.issued.prescription.spans {
        let sling = &span.sling;
        for day in span.from_day.count()..span.until_day.count() {
            let least = least_wear(judge, day);
            if sling.wear < least {
                let message =
                    format!("the sling is worn \"{}\" where it is to be worn \"{}\"", sling.wear.name(), least.name());
                found.on(day, Wrong::overload("sling-worn-less", message));
            }
            if sling.wear != Wear::None && sling.position < least_position(judge, day) {
                let message = "the sling holds the forearm straight ahead where turning outward stays below that";
                found.on(day, Wrong::overload("sling-turned-out", message.into()));
            }
            let rest = Rest::on(judge, day);
            if sling.wear != Wear::None && !rest.holds_sling(sling.position) && rest.holds_a_sling() {
                let message = format!(
                    "the sling's own position (\"{}\") lies outside what the safe arcs allow at rest",
                    sling.position.name()
                );
                found.on(day, Wrong::overload("sling-outside-its-rest", message));
            }
        }
    }
}

/// How much the sling is worn at least on a day: a hold never shortens it.
pub(super) fn least_wear(judge: &Judge<'_>, day: u16) -> Wear {
    judge.sheet.wear(day).max(judge.sheet.wear(judge.lived.arm(day)))
}

/// How the sling holds the arm at least.
pub(super) fn least_position(judge: &Judge<'_>, day: u16) -> SlingPosition {
    judge.sheet.position(day).max(judge.sheet.position(judge.lived.arm(day)))
}

/// How far the arm may rest: for the sling, rest, washing, dressing and the hanging arm alone.
///
/// # Source
/// `resting-elevation`, `resting-internal-rotation`: own choice; a safe arc below it lowers it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Rest {
    elevation: Degrees,
    inward: Degrees,
    outward: Degrees,
}

impl Rest {
    /// The allowance of a day.
    pub(super) fn on(judge: &Judge<'_>, day: u16) -> Self {
        let mut rest = Self {
            elevation: ids::RESTING_ELEVATION.degrees(),
            inward: ids::RESTING_INTERNAL_ROTATION.degrees(),
            outward: Degrees::whole(0),
        };
        let lives = judge.lived.on(body::Joint::Shoulder, day);
        for arc in judge.issued.basis.facts.safe_arcs.iter() {
            if judge.in_force.arc_ends(&arc).is_some_and(|until| lives >= until) {
                continue;
            }
            match arc.movement {
                Movement::ForwardElevation | Movement::ScapularPlaneElevation | Movement::Abduction => {
                    rest.elevation = rest.elevation.min(arc.up_to);
                }
                Movement::InternalRotation => rest.inward = rest.inward.min(arc.up_to),
                Movement::ExternalRotation => rest.outward = rest.outward.min(arc.up_to),
                _ => {}
            }
        }
        rest
    }

    /// Whether a pose lies inside it.
    pub(super) fn holds(&self, pose: &Resting) -> bool {
        pose.elevation <= self.elevation
            && pose.rotation_internal <= self.inward
            && pose.rotation_external <= self.outward
    }

    /// Whether the sling may hold the arm this way.
    fn holds_sling(&self, position: SlingPosition) -> bool {
        match position {
            SlingPosition::Neutral => self.outward >= Degrees::whole(0),
            SlingPosition::InternalRotation => self.inward >= ids::RESTING_INTERNAL_ROTATION.degrees(),
        }
    }

    /// Whether any position of the sling lies inside it; where none does, the surgeon is asked.
    fn holds_a_sling(&self) -> bool {
        self.holds_sling(SlingPosition::Neutral) || self.holds_sling(SlingPosition::InternalRotation)
    }
}
