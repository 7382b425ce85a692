//! What an exercise does with the arm, so that like is compared with like.

use body::{Joint, Movement};
use exercise::{Entry, UpperArm};

body::words! {
    /// What an exercise does with the arm.
    Work {
        /// Raising it, or holding it up while it does something else.
        Raising = "raising",
        /// Turning it while the upper arm is down or rests.
        Turning = "turning",
        /// Moving it backward, pulling, or reaching behind the back.
        MovingBack = "moving back",
        /// Working elbow, hand or shoulder blade with the arm at the side.
        AtTheSide = "arm at the side",
    }
}

impl Work {
    /// That of an entry, by the movement its target belongs to and by where the upper arm is.
    pub fn of(entry: &Entry) -> Self {
        let Some(key) = entry.target().map(|target| target.key).filter(|key| key.joint == Joint::Shoulder) else {
            return Self::AtTheSide;
        };
        match key.movement {
            Movement::Extension | Movement::HandBehindBack => Self::MovingBack,
            Movement::ExternalRotation | Movement::InternalRotation | Movement::InwardTurnAgainstGravity
                if !is_held_up(entry) =>
            {
                Self::Turning
            }
            _ => Self::Raising,
        }
    }
}

/// Whether the upper arm is up at the start or at the end.
fn is_held_up(entry: &Entry) -> bool {
    let up = |at: UpperArm| match at {
        UpperArm::ForwardElevation
        | UpperArm::LevelAhead
        | UpperArm::ScapularPlaneElevation
        | UpperArm::Abduction
        | UpperArm::HorizontalAdduction => true,
        UpperArm::Hanging
        | UpperArm::HangingDown
        | UpperArm::Resting
        | UpperArm::Extension
        | UpperArm::BehindTheBack => false,
    };
    entry.positions.is_some_and(|positions| [positions.start, positions.end].iter().any(|hold| up(hold.upper_arm)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_exercise_is_compared_with_its_like() {
        let mut sink = diagnostic::Sink::new();
        let catalogue = exercise::shipped(&mut sink, |_, _| diagnostic::FileId(0));
        let of = |id: &str| Work::of(catalogue.get(id).expect("in the catalogue"));
        for id in ["forward-elevation", "full-can", "overhead-press", "prone-raise-outward-weight", "arm-across-chest"]
        {
            assert_eq!(of(id), Work::Raising, "{id}");
        }
        // It turns an arm that is held up: raising is what the weight asks of it.
        assert_eq!(of("side-lying-wiper"), Work::Raising);
        for id in ["external-rotation", "side-lying-external-rotation-weight", "supine-inward-turn"] {
            assert_eq!(of(id), Work::Turning, "{id}");
        }
        for id in ["bent-forward-row", "trapezius-extension", "hand-behind-back-slide"] {
            assert_eq!(of(id), Work::MovingBack, "{id}");
        }
        for id in ["biceps-curl", "elbow-flexion", "shrug", "blade-placing"] {
            assert_eq!(of(id), Work::AtTheSide, "{id}");
        }
    }
}
