//! What a limit can be about: joint, movement, position and mode together.

use std::fmt;

use crate::words::{Joint, Mode, Movement, Position};

/// One thing that a plan may limit, written `joint/movement/position/mode`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Key {
    /// The joint, or the whole arm.
    pub joint: Joint,
    /// The movement.
    pub movement: Movement,
    /// The position of the arm.
    pub position: Position,
    /// The mode.
    pub mode: Mode,
}

/// Why a text names no key.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum KeyError {
    /// Not four parts between slashes.
    Shape,
    /// A part that is no word of its kind; the kind and the part.
    Word(&'static str, String),
    /// Words that are each known but name nothing together.
    NoSuchKey,
}

impl Key {
    /// The key in the position `any`.
    pub const fn any(joint: Joint, movement: Movement, mode: Mode) -> Self {
        Self { joint, movement, position: Position::Any, mode }
    }

    /// The same movement and mode in another position.
    pub const fn in_position(self, position: Position) -> Self {
        Self { position, ..self }
    }

    /// The same movement in another mode.
    pub const fn in_mode(self, mode: Mode) -> Self {
        Self { mode, ..self }
    }

    /// Whether the joint has this movement, and the movement this mode.
    pub fn exists(self) -> bool {
        modes_of(self.joint, self.movement).contains(&self.mode)
            && (self.position == Position::Any || self.joint == Joint::Shoulder)
    }

    /// Whether the key bounds a load and not a movement.
    pub const fn is_load(self) -> bool {
        matches!(self.joint, Joint::WholeArm)
    }

    /// Whether the key bounds an effort and not a movement.
    pub const fn is_effort(self) -> bool {
        matches!(self.mode, Mode::Isometric)
    }

    /// Reads `shoulder/external rotation/any/passive`.
    ///
    /// # Errors
    /// Not four parts, an unknown word, or words that name nothing together.
    pub fn parse(text: &str) -> Result<Self, KeyError> {
        let mut parts = text.split('/').map(str::trim);
        let (Some(joint), Some(movement), Some(position), Some(mode), None) =
            (parts.next(), parts.next(), parts.next(), parts.next(), parts.next())
        else {
            return Err(KeyError::Shape);
        };
        let key = Self {
            joint: Joint::named(joint).ok_or_else(|| KeyError::Word("joint", joint.into()))?,
            movement: Movement::named(movement).ok_or_else(|| KeyError::Word("movement", movement.into()))?,
            position: Position::named(position).ok_or_else(|| KeyError::Word("position", position.into()))?,
            mode: Mode::named(mode).ok_or_else(|| KeyError::Word("mode", mode.into()))?,
        };
        if key.exists() { Ok(key) } else { Err(KeyError::NoSuchKey) }
    }
}

impl fmt::Display for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}/{}/{}", self.joint, self.movement, self.position, self.mode)
    }
}

const MOVED: &[Mode] =
    &[Mode::Passive, Mode::EndRangeStretch, Mode::ActiveAssisted, Mode::Active, Mode::Isometric, Mode::Resisted];
const BLADE: &[Mode] = &[Mode::Passive, Mode::ActiveAssisted, Mode::Active, Mode::Resisted];
const SMALL: &[Mode] = &[Mode::Passive, Mode::EndRangeStretch, Mode::ActiveAssisted, Mode::Active, Mode::Resisted];

/// The modes a movement of a joint has; none where the joint has no such movement.
fn modes_of(joint: Joint, movement: Movement) -> &'static [Mode] {
    use Movement as M;
    match (joint, movement) {
        (
            Joint::Shoulder,
            M::ForwardElevation
            | M::ScapularPlaneElevation
            | M::Abduction
            | M::Extension
            | M::ExternalRotation
            | M::InternalRotation
            | M::HorizontalAdduction
            | M::HandBehindBack
            | M::AbductionWithExternalRotation,
        ) => MOVED,
        // The weight of the forearm is the load: it is one mode only.
        (Joint::Shoulder, M::InwardTurnAgainstGravity) => &[Mode::Active],
        (Joint::Scapula, M::Placing | M::Shrug | M::Roll | M::Squeeze) => BLADE,
        (Joint::Elbow, M::Flexion | M::Extension) => MOVED,
        (Joint::Forearm, M::Supination | M::Pronation) => MOVED,
        (Joint::Wrist, M::Flexion | M::Extension) => SMALL,
        (Joint::Hand, M::Flexion | M::Extension) => SMALL,
        (Joint::Hand, M::Squeeze) => &[Mode::Resisted],
        (Joint::WholeArm, M::HandLoad | M::OverheadLoad | M::WeightThroughTheArm) => &[Mode::Resisted],
        _ => &[],
    }
}

/// Every key in the position `any`, in the order of joints, movements and modes.
pub static ALL_KEYS: std::sync::LazyLock<Vec<Key>> = std::sync::LazyLock::new(|| {
    let mut keys = Vec::new();
    for &joint in Joint::ALL {
        for &movement in Movement::ALL {
            for &mode in modes_of(joint, movement) {
                keys.push(Key::any(joint, movement, mode));
            }
        }
    }
    keys
});

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_key_reads_as_it_prints() {
        for &key in ALL_KEYS.iter() {
            assert_eq!(Key::parse(&key.to_string()), Ok(key));
            assert!(key.exists());
        }
    }

    #[test]
    fn a_mode_rests_on_a_mode_of_the_same_movement_or_on_none() {
        for &key in ALL_KEYS.iter() {
            if let Some(below) = key.mode.rests_on()
                && !key.is_load()
                && key.movement != Movement::InwardTurnAgainstGravity
                && key != Key::any(Joint::Hand, Movement::Squeeze, Mode::Resisted)
            {
                assert!(key.in_mode(below).exists(), "{key}");
            }
        }
    }

    #[test]
    fn unknown_words_are_named() {
        assert_eq!(Key::parse("shoulder/flight/any/passive"), Err(KeyError::Word("movement", "flight".into())));
        assert_eq!(Key::parse("elbow/shrug/any/active"), Err(KeyError::NoSuchKey));
        assert_eq!(Key::parse("elbow"), Err(KeyError::Shape));
    }
}
