//! What is recorded: an exercise or something that is none, on which side, and where the phone is.

/// A list of words that are read and printed, each with what it means.
macro_rules! words {
    ($(#[$meta:meta])* $name:ident { $($(#[$item:meta])* $variant:ident = $word:literal,)+ }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $($(#[$item])* $variant,)+ }

        impl $name {
            /// All of them.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// As it is written.
            pub const fn word(self) -> &'static str {
                match self { $(Self::$variant => $word,)+ }
            }

            /// The one that is written so.
            pub fn from_word(word: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|item| item.word() == word)
            }
        }
    };
}

words! {
    /// The exercises that are measured, by their ids.
    Exercise {
        /// Bent forward, the arm hanging and swinging.
        Pendulum = "pendulum",
        /// Lying on the back, elbow bent, turned outward by a stick.
        StickExternalRotation = "stick-external-rotation",
        /// Lying on the back, the straight arm raised.
        SupineElevation = "supine-elevation",
        /// Standing, raised 30 to 40 degrees ahead of the side.
        ScapularPlaneElevation = "scapular-plane-elevation",
        /// Standing, raised straight ahead.
        ForwardElevation = "forward-elevation",
        /// Standing, raised to the side.
        Abduction = "abduction",
        /// Standing, elbow bent, the forearm turned inward.
        InternalRotation = "internal-rotation",
        /// Standing, elbow bent, the forearm turned outward.
        ExternalRotation = "external-rotation",
        /// Standing, the elbow bent and straightened.
        ElbowFlexion = "elbow-flexion",
        /// Standing, the hands pulled up along the body.
        Row = "row",
        /// Standing, the straight arm taken backward.
        TrapeziusExtension = "trapezius-extension",
        /// Both shoulders raised.
        Shrug = "shrug",
        /// The shoulders moved in a circle.
        ShoulderRoll = "shoulder-roll",
    }
}

words! {
    /// What is no exercise and must not be counted.
    Negative {
        /// Standing about, the arm hanging.
        Standing = "standing",
        /// Walking about, the phone on the arm.
        Walking = "walking",
        /// The phone lies on a table that is bumped now and then.
        OnTable = "on-table",
        /// Sitting and eating.
        Eating = "eating",
        /// The phone is picked up, looked at and put down.
        PickingUp = "picking-up",
        /// Sitting in a bus, the phone on the arm in the lap.
        RidingBus = "riding-bus",
    }
}

words! {
    /// The arm.
    Side {
        /// Right.
        Right = "right",
        /// Left.
        Left = "left",
    }
}

words! {
    /// Where the phone is worn.
    Worn {
        /// On the upper arm.
        UpperArm = "upper-arm",
        /// On the forearm, about 10 cm below the elbow.
        Forearm = "forearm",
        /// Just above the wrist.
        Wrist = "wrist",
        /// Held in the hand.
        Hand = "hand",
    }
}

words! {
    /// The axis of the sensor that runs along the limb.
    Axis {
        /// Across the screen.
        X = "x",
        /// Along the long side.
        Y = "y",
        /// Out of the screen.
        Z = "z",
    }
}

/// What happens in a recording.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Subject {
    /// An exercise.
    Exercise(Exercise),
    /// None.
    Negative(Negative),
}

impl Subject {
    /// Its id.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Exercise(exercise) => exercise.word(),
            Self::Negative(negative) => negative.word(),
        }
    }

    /// The one of this id.
    pub fn from_word(word: &str) -> Option<Self> {
        Exercise::from_word(word).map(Self::Exercise).or_else(|| Negative::from_word(word).map(Self::Negative))
    }

    /// Every exercise, then every negative.
    pub fn all() -> Vec<Self> {
        let exercises = Exercise::ALL.iter().copied().map(Self::Exercise);
        exercises.chain(Negative::ALL.iter().copied().map(Self::Negative)).collect()
    }
}

impl Exercise {
    /// Where the phone may be worn so that its movement can be measured.
    pub const fn places(self) -> &'static [Worn] {
        match self {
            Self::Pendulum => &[Worn::Forearm, Worn::Wrist, Worn::Hand],
            Self::ElbowFlexion | Self::Row => &[Worn::Forearm, Worn::Wrist],
            Self::StickExternalRotation | Self::InternalRotation | Self::ExternalRotation => {
                &[Worn::Forearm, Worn::Wrist]
            }
            Self::SupineElevation
            | Self::ScapularPlaneElevation
            | Self::ForwardElevation
            | Self::Abduction
            | Self::TrapeziusExtension => &[Worn::Forearm, Worn::UpperArm, Worn::Wrist],
            Self::Shrug | Self::ShoulderRoll => &[Worn::UpperArm],
        }
    }

    /// Whether the person lies on the back.
    pub const fn is_supine(self) -> bool {
        matches!(self, Self::StickExternalRotation | Self::SupineElevation)
    }
}
