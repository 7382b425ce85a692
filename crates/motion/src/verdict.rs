//! Whether a recording can be measured, or why not.

body::words! {
    /// Why nothing is measured. "Can't tell" is an answer; a number that was made up is none.
    WhyNot {
        /// Fewer than a few seconds.
        TooShort = "too-short",
        /// Slower than 10 Hz.
        TooSlow = "too-slow",
        /// Faster than 500 Hz.
        TooFast = "too-fast-rate",
        /// Too many rows are no readings.
        BadRows = "bad-rows",
        /// Time runs backward.
        TimeBackward = "time-backward",
        /// Gravity is not in the accelerometer's numbers.
        NoGravity = "no-gravity",
        /// Too much is missing.
        Gaps = "gaps",
        /// Nothing moved: the phone lay on a table, or the arm did not move.
        NoMovement = "no-movement",
        /// The pose is not that of the exercise: the phone is not on the limb as said, or in another hand.
        NotWorn = "not-worn",
        /// The movement is not that of the exercise.
        WrongExercise = "wrong-exercise",
        /// Steps of somebody who walks.
        Walking = "walking",
        /// No movement comes again.
        NothingRepeats = "nothing-repeats",
    }
}

impl WhyNot {
    /// What it means and what to do, for the person who recorded.
    pub const fn means(self) -> &'static str {
        match self {
            Self::TooShort => "the recording is too short to hold a set",
            Self::TooSlow => "there are fewer than 10 samples a second; movements can't be told from that",
            Self::TooFast => "there are more than 500 samples a second; time may be in another unit",
            Self::BadRows => "too many rows are not readings of a sensor",
            Self::TimeBackward => "time runs backward, so nobody can say what came first",
            Self::NoGravity => "gravity is not in the accelerations; record them including gravity",
            Self::Gaps => "too much of the set is missing; keep the page in sight and the screen on",
            Self::NoMovement => "nothing moved; was the phone on the arm?",
            Self::NotWorn => {
                "the pose before the set is not the exercise's; strap the phone along the limb and hold still"
            }
            Self::WrongExercise => "the movement is not that of the exercise",
            Self::Walking => "somebody walks; stand or lie where the exercise is done",
            Self::NothingRepeats => "no movement comes again in a way that can be counted",
        }
    }
}
