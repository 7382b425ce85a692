//! What a safe arc on the table says about a key, written out from the policies.

use body::{Joint, Key, Mode, Movement, Position};

/// What a safe arc of a movement demands of a key.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum ArcSays {
    /// Nothing.
    Nothing,
    /// No further than the arc.
    AtMost,
    /// Not at all: an effort away from the side can't be held to an angle.
    No,
}

/// What a safe arc of a movement demands of a key.
///
/// # Source
/// `safe-arc-caps`: own choice. Every position and mode of the movement; the three
/// elevations bind one another; outward turning binds itself together with abduction.
pub(super) fn arc_says(arc: Movement, key: Key) -> ArcSays {
    if key.joint != Joint::Shoulder || !binds(arc, key.movement) {
        return ArcSays::Nothing;
    }
    match (key.mode, key.position) {
        (Mode::Isometric, Position::Any) => ArcSays::No,
        (Mode::Isometric, _) => ArcSays::Nothing,
        _ => ArcSays::AtMost,
    }
}

fn binds(arc: Movement, movement: Movement) -> bool {
    let is_elevation = |movement| {
        matches!(movement, Movement::ForwardElevation | Movement::ScapularPlaneElevation | Movement::Abduction)
    };
    let has_an_arc = matches!(
        arc,
        Movement::Extension
            | Movement::InternalRotation
            | Movement::ExternalRotation
            | Movement::HorizontalAdduction
            | Movement::AbductionWithExternalRotation
    );
    (is_elevation(arc) && is_elevation(movement))
        || (has_an_arc && arc == movement)
        || (arc == Movement::ExternalRotation && movement == Movement::AbductionWithExternalRotation)
}
