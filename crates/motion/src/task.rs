//! What a recording is said to be of.

use body::{HangingArm, Side};
use glam::DVec3;

body::words! {
    /// The exercises that can be measured; ids are those of the catalogue where both have it.
    Exercise {
        /// Arm hanging from a bent trunk, going around or to and fro.
        Pendulum = "pendulum",
        /// Supine, elbow at the side, the other arm turns the forearm outward with a stick.
        StickExternalRotation = "stick-external-rotation",
        /// Supine, the other arm lifts this one.
        SupineElevation = "supine-elevation",
        /// Standing, between ahead and to the side.
        ScapularPlaneElevation = "scapular-plane-elevation",
        /// Standing, ahead.
        ForwardElevation = "forward-elevation",
        /// Standing, to the side.
        Abduction = "abduction",
        /// Standing, against a band, forearm turns inward.
        InternalRotation = "internal-rotation",
        /// Standing, against a band, forearm turns outward.
        ExternalRotation = "external-rotation",
        /// Bending the elbow.
        ElbowFlexion = "elbow-flexion",
        /// Pulling a band back.
        Row = "row",
        /// Pulling the straight arm down and back.
        TrapeziusExtension = "trapezius-extension",
        /// Lifting the shoulders.
        Shrug = "shrug",
        /// Shoulders going around.
        ShoulderRoll = "shoulder-roll",
    }
}

/// Which signal tells the repetitions of an exercise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Tells {
    /// The limb against where it hung: an angle in any plane.
    Cone,
    /// The tilt about one level axis, signed.
    Plane,
    /// How far the limb is raised from where it lay, whatever it turns about itself.
    Raised,
    /// The turn about the movement's own axis by the gyroscope, vertical ones too.
    Turn,
    /// The same, a few degrees only.
    SmallTurn,
    /// The path of the limb's direction, a few degrees only, going around.
    SmallCircle,
    /// The path of the hanging limb.
    Circle,
}

/// How the limb is held in the exercise's pose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Held {
    /// The line along the limb is vertical.
    Upright,
    /// It is level.
    Level,
    /// Not told by the pose.
    Either,
}

impl Exercise {
    pub(crate) const fn tells(self) -> Tells {
        match self {
            Self::Pendulum => Tells::Circle,
            Self::StickExternalRotation => Tells::Plane,
            Self::SupineElevation => Tells::Raised,
            Self::ScapularPlaneElevation | Self::ForwardElevation | Self::Abduction | Self::ElbowFlexion => Tells::Cone,
            Self::InternalRotation | Self::ExternalRotation | Self::Row | Self::TrapeziusExtension => Tells::Turn,
            Self::Shrug => Tells::SmallTurn,
            Self::ShoulderRoll => Tells::SmallCircle,
        }
    }

    /// Whether the signal is the angle of the exercise. A forearm that is pulled back turns, but not by the angle of the
    /// pull; a shoulder blade turns a phone by what nobody asked for.
    pub(crate) const fn tells_angle(self) -> bool {
        !matches!(self, Self::Row | Self::Shrug | Self::ShoulderRoll | Self::Pendulum)
    }

    pub(crate) const fn held(self) -> Held {
        match self {
            Self::Pendulum
            | Self::StickExternalRotation
            | Self::ScapularPlaneElevation
            | Self::ForwardElevation
            | Self::Abduction
            | Self::ElbowFlexion
            | Self::Row
            | Self::TrapeziusExtension
            | Self::Shrug
            | Self::ShoulderRoll => Held::Upright,
            Self::SupineElevation => Held::Level,
            Self::InternalRotation | Self::ExternalRotation => Held::Either,
        }
    }

    /// Whether the body lies on its back, so that the trunk can't lean.
    pub const fn is_supine(self) -> bool {
        matches!(self, Self::StickExternalRotation | Self::SupineElevation)
    }
}

body::words! {
    /// Where the phone is strapped.
    Worn {
        /// At the wrist.
        Wrist = "wrist",
        /// On the forearm.
        Forearm = "forearm",
        /// On the upper arm.
        UpperArm = "upper-arm",
        /// In the hand.
        Hand = "hand",
    }
}

body::words! {
    /// The axis of the sensor that lies along the limb; which of its ends points to the hand is not told.
    Axis {
        /// Across the screen.
        X = "x",
        /// Along the long side of a phone.
        Y = "y",
        /// Out of the screen.
        Z = "z",
    }
}

impl Axis {
    pub(crate) const fn direction(self) -> DVec3 {
        match self {
            Self::X => DVec3::X,
            Self::Y => DVec3::Y,
            Self::Z => DVec3::Z,
        }
    }
}

/// What is to be measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Task {
    /// Which exercise.
    pub exercise: Exercise,
    /// Whose arm.
    pub side: Side,
    /// Where the phone is.
    pub worn: Worn,
    /// Its axis along the limb.
    pub axis: Axis,
    /// From the shoulder to the middle of the hand.
    pub arm_length_m: Option<f64>,
    /// The angle that must not be passed.
    pub limit_deg: Option<f64>,
    /// The hanging arm of this person, where stature and mass are known.
    pub arm: Option<HangingArm>,
}

impl Task {
    /// With nothing said but the exercise and the side.
    pub const fn new(exercise: Exercise, side: Side) -> Self {
        let worn = match exercise {
            Exercise::Shrug | Exercise::ShoulderRoll => Worn::UpperArm,
            _ => Worn::Forearm,
        };
        Self { exercise, side, worn, axis: Axis::Y, arm_length_m: None, limit_deg: None, arm: None }
    }
}
