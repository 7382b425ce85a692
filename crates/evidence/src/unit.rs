//! The units of the table.

macro_rules! units {
    ($($(#[$doc:meta])* $variant:ident = $text:literal,)+) => {
        /// The unit of a value.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Unit {
            $($(#[$doc])* $variant,)+
        }

        impl Unit {
            /// Every unit with its word in the files.
            pub const WORDS: &'static [(&'static str, Self)] = &[$(($text, Self::$variant),)+];

            /// The word used in files and output.
            pub const fn name(self) -> &'static str {
                match self {
                    $(Self::$variant => $text,)+
                }
            }

            /// The name of the variant, as the generated table writes it.
            pub const fn variant(self) -> &'static str {
                match self {
                    $(Self::$variant => stringify!($variant),)+
                }
            }
        }
    };
}

units! {
    /// A postoperative day; day 0 is the day of surgery.
    Day = "day",
    /// A length of time in days.
    Days = "days",
    /// Degrees of an angle.
    Degrees = "deg",
    /// Degrees a second.
    DegreesPerSecond = "deg/s",
    /// Kilograms.
    Kilograms = "kg",
    /// Millimeters.
    Millimeters = "mm",
    /// Percent of whatever `what` names.
    Percent = "%",
    /// Percent of a maximal voluntary isometric contraction.
    PercentMvic = "% MVIC",
    /// Points of a score or index.
    Points = "points",
    /// Repetitions of an exercise.
    Repetitions = "repetitions",
    /// Sets of an exercise.
    Sets = "sets",
    /// Seconds.
    Seconds = "s",
    /// Times a day.
    PerDay = "per day",
    /// Times a week.
    PerWeek = "per week",
    /// Degrees Celsius.
    Celsius = "C",
    /// Hours.
    Hours = "h",
    /// Minutes.
    Minutes = "min",
    /// Years of age, or of follow-up.
    Years = "years",
    /// A length as a part of stature.
    OfStature = "of stature",
    /// A mass as a part of body mass.
    OfBodyMass = "of body mass",
    /// A length as a part of a segment's length.
    OfSegment = "of segment",
    /// Newton meters of a moment.
    NewtonMeters = "Nm",
    /// Meters in a second, in a second.
    Acceleration = "m/s2",
    /// A number of things: tendons, visits, calls.
    Count = "count",
    /// No unit: a ratio, or an entry that holds a statement and no number.
    None = "none",
}
