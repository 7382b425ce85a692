//! The closed lists that poses are written with: no pose holds a number of its own.

body::words! {
    /// Where the upper arm is; its degrees are those of the entry's demand of the same name.
    UpperArm {
        /// At the side.
        Hanging = "hanging",
        /// Straight down, however the trunk leans; no further from it than the demand or the resting pose goes.
        HangingDown = "hanging down",
        /// On a towel, a pillow or a table, a little out in the plane of the blade.
        Resting = "resting",
        /// Raised straight ahead.
        ForwardElevation = "forward elevation",
        /// Raised straight ahead to level, or as far as the demand of forward elevation goes where that is less.
        LevelAhead = "level ahead",
        /// Raised in the plane of the blade.
        ScapularPlaneElevation = "scapular-plane elevation",
        /// Raised to the side.
        Abduction = "abduction",
        /// Behind the line of the body.
        Extension = "extension",
        /// Raised and across the chest.
        HorizontalAdduction = "horizontal adduction",
        /// Behind the body with the hand on the back.
        BehindTheBack = "hand behind back",
    }
}

body::words! {
    /// How the upper arm is turned; its degrees are those of the entry's demand of the same name.
    Turn {
        /// Not turned: at the side the bent forearm points ahead.
        None = "none",
        /// Turned outward.
        Outward = "external rotation",
        /// Turned inward.
        Inward = "internal rotation",
        /// Turned outward with the arm out to the side.
        RaisedOutward = "abduction with external rotation",
        /// Turned inward until the forearm lies on the belly.
        OnTheBelly = "on the belly",
        /// Turned inward until the forearm passes behind the body; only with a demand of the hand behind the back.
        BehindTheBack = "behind the back",
    }
}

body::words! {
    /// How far the elbow is bent.
    Elbow {
        /// Not at all.
        Straight = "straight",
        /// A little.
        Soft = "slightly bent",
        /// A right angle.
        Bent = "bent",
        /// As far as it goes without force.
        Folded = "folded",
        /// As far as brings the hand onto a table before a sitting person.
        OnTheTable = "on the table",
    }
}

body::words! {
    /// How the forearm is turned.
    Forearm {
        /// The thumb leads.
        ThumbLeads = "thumb leads",
        /// The palm faces up.
        PalmUp = "palm up",
        /// The palm faces down.
        PalmDown = "palm down",
    }
}

body::words! {
    /// How the wrist is bent.
    Wrist {
        /// Straight.
        Straight = "straight",
        /// Toward the palm.
        Bent = "bent",
        /// Toward the back of the hand.
        BentBack = "bent back",
    }
}

body::words! {
    /// Where the shoulder blade is.
    BladeHold {
        /// Where it is by itself.
        AtRest = "at rest",
        /// Toward the ear.
        Raised = "raised",
        /// Away from the ear.
        Down = "down",
        /// Around the chest.
        Forward = "forward",
        /// Toward the spine.
        Back = "back",
    }
}

body::words! {
    /// How the trunk leans.
    Trunk {
        /// As the posture has it.
        AsPlaced = "as placed",
        /// A little forward.
        Leaning = "leaning",
        /// Bent forward.
        BentForward = "bent forward",
        /// Forward as far as a straight arm at the demanded elevation, the hand on a table, asks for.
        OverTheTable = "over the table",
    }
}

body::words! {
    /// Whose muscles hold the weight of the arm.
    Weight {
        /// The arm's own.
        Own = "own",
        /// The forearm's by the arm's own, while the upper arm rests on a bed, a towel or the body.
        Forearm = "forearm",
        /// Partly the arm's own, partly something else.
        Shared = "shared",
        /// Something else: the other arm, a bed, a table, a wall, the floor, the sling, a therapist; or the arm hangs loose.
        Carried = "carried",
    }
}

body::words! {
    /// How the arm gets from the start to the end.
    Path {
        /// The shortest way, and back.
        Direct = "direct",
        /// In circles around both.
        Circles = "circles",
    }
}

body::words! {
    /// Where the other arm is.
    Other {
        /// At its side; or where what it does needs it.
        AtRest = "at rest",
        /// It does the same.
        Same = "the same",
    }
}
