//! Joints, movements, positions and modes, each with the trade's name.

/// An enum of the trade's words: each value with the name that files and output use.
///
/// Gives `ALL`, `WORDS`, `name`, `named` and `Display`. One macro for every closed list of words in the product.
#[macro_export]
macro_rules! words {
    ($(#[$meta:meta])* $name:ident { $($(#[$doc:meta])* $variant:ident = $text:literal,)+ }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name {
            $($(#[$doc])* $variant,)+
        }

        impl $name {
            /// Every value, in the order of the list.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)+];

            /// Every value with its name, for readers of files.
            pub const WORDS: &'static [(&'static str, Self)] = &[$(($text, Self::$variant),)+];

            /// The name used in files and output.
            pub const fn name(self) -> &'static str {
                match self {
                    $(Self::$variant => $text,)+
                }
            }

            /// The value of this name.
            pub fn named(name: &str) -> Option<Self> {
                Self::WORDS.iter().find(|(word, _)| *word == name).map(|(_, value)| *value)
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(self.name())
            }
        }
    };
}

words! {
    /// Left or right, always as words.
    Side {
        /// The left side of the body.
        Left = "left",
        /// The right side of the body.
        Right = "right",
    }
}

impl Side {
    /// The other side.
    pub const fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

words! {
    /// A joint, or the whole arm where a limit is not of one joint.
    Joint {
        /// Humerus relative to the thorax: the shoulder complex as a goniometer sees it.
        Shoulder = "shoulder",
        /// The shoulder blade on the chest wall.
        Scapula = "scapula",
        /// Elbow: bending and straightening.
        Elbow = "elbow",
        /// Forearm: turning the palm.
        Forearm = "forearm",
        /// Wrist.
        Wrist = "wrist",
        /// Fingers and grip.
        Hand = "hand",
        /// What binds the arm as a whole: loads held, and weight taken through it.
        WholeArm = "whole arm",
    }
}

words! {
    /// A movement, by its name in the trade.
    Movement {
        /// Raising the arm straight ahead.
        ForwardElevation = "forward elevation",
        /// Raising the arm 30 to 40 degrees forward of the side.
        ScapularPlaneElevation = "scapular-plane elevation",
        /// Raising the arm to the side.
        Abduction = "abduction",
        /// Moving the arm backward past the line of the body.
        Extension = "extension",
        /// Turning the arm outward, counted from the forearm pointing straight ahead; one clinical number whatever the elevation.
        ExternalRotation = "external rotation",
        /// Turning the arm inward, counted from the forearm pointing straight ahead.
        InternalRotation = "internal rotation",
        /// Turning the arm inward so that the weight of the forearm has to be lifted.
        InwardTurnAgainstGravity = "inward turn against gravity",
        /// Bringing the arm across the chest.
        HorizontalAdduction = "horizontal adduction",
        /// Reaching up the back with the thumb.
        HandBehindBack = "hand behind back",
        /// The arm out to the side and turned outward together.
        AbductionWithExternalRotation = "abduction with external rotation",
        /// Setting the shoulder blade gently in place.
        Placing = "placing",
        /// Raising the shoulder blade toward the ear.
        Shrug = "shrug",
        /// Rolling the shoulder blade in a circle.
        Roll = "roll",
        /// Scapula: drawing the blade toward the spine. Hand: pressing something soft.
        Squeeze = "squeeze",
        /// Bending, of elbow, wrist or fingers.
        Flexion = "flexion",
        /// Turning the palm up.
        Supination = "supination",
        /// Turning the palm down.
        Pronation = "pronation",
        /// Something held or carried in the hand.
        HandLoad = "hand load",
        /// Something held above shoulder height.
        OverheadLoad = "overhead load",
        /// Pushing up, leaning, or a crutch.
        WeightThroughTheArm = "weight through the arm",
    }
}

words! {
    /// The position of the arm in which a limit holds.
    Position {
        /// Every position.
        Any = "any",
        /// Upper arm at the side.
        AtSide = "at side",
        /// Upper arm 20 degrees out.
        Abduction20 = "20 abduction",
        /// Upper arm 45 degrees out.
        Abduction45 = "45 abduction",
        /// Upper arm 90 degrees out.
        Abduction90 = "90 abduction",
        /// Upper arm in the plane of the shoulder blade.
        ScapularPlane = "scapular plane",
    }
}

words! {
    /// Who or what moves the arm, and against what.
    Mode {
        /// Moved wholly by something else: a therapist, a stick, a pulley, the other arm.
        Passive = "passive",
        /// Pressed gently at the end of the movement.
        EndRangeStretch = "end-range stretch",
        /// The arm works while something helps it.
        ActiveAssisted = "active-assisted",
        /// The arm moves itself.
        Active = "active",
        /// Effort without movement.
        Isometric = "isometric",
        /// The arm moves against a load or a resistance.
        Resisted = "resisted",
    }
}

impl Mode {
    /// The mode that must be allowed first, by the ground rule that modes cascade.
    pub const fn rests_on(self) -> Option<Self> {
        match self {
            Self::Passive | Self::Isometric => None,
            Self::EndRangeStretch | Self::ActiveAssisted => Some(Self::Passive),
            Self::Active => Some(Self::ActiveAssisted),
            Self::Resisted => Some(Self::Active),
        }
    }
}
