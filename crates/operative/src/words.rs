//! The words a record may use, each in the trade's spelling.

body::words! {
    /// What the operation was for.
    Procedure {
        /// A torn tendon was fixed back to bone.
        RotatorCuffRepair = "rotator cuff repair",
        /// A tight capsule was cut free, and no tendon was repaired.
        CapsularRelease = "capsular release",
    }
}

body::words! {
    /// The patient's sex as recorded.
    Sex {
        /// Female.
        Female = "female",
        /// Male.
        Male = "male",
        /// Neither of the two.
        Other = "other",
        /// Written down as not known.
        Unknown = "unknown",
    }
}

body::words! {
    /// How the surgeon reached the tendon.
    Approach {
        /// Through portals.
        Arthroscopic = "arthroscopic",
        /// Through a small split of the deltoid.
        MiniOpen = "mini-open",
        /// Through an open incision.
        Open = "open",
    }
}

body::words! {
    /// A tendon of the rotator cuff.
    Tendon {
        /// Supraspinatus.
        Supraspinatus = "supraspinatus",
        /// Infraspinatus.
        Infraspinatus = "infraspinatus",
        /// Teres minor.
        TeresMinor = "teres minor",
        /// Subscapularis.
        Subscapularis = "subscapularis",
    }
}

body::words! {
    /// How deep the tear went.
    Thickness {
        /// Through the whole tendon.
        Full = "full",
        /// Part of the tendon, on the side of the bursa.
        PartialBursal = "partial-bursal",
        /// Part of the tendon, on the side of the joint.
        PartialArticular = "partial-articular",
    }
}

body::words! {
    /// How much of the subscapularis was torn and repaired.
    Part {
        /// The upper part only.
        UpperPart = "upper part",
        /// The whole tendon.
        Complete = "complete",
    }
}

body::words! {
    /// How a tendon was fixed.
    Repair {
        /// One row of anchors.
        SingleRow = "single row",
        /// Two rows of anchors.
        DoubleRow = "double row",
        /// Two linked rows that press the tendon down.
        TransosseousEquivalent = "transosseous equivalent",
        /// The tendon does not reach its whole footprint.
        PartialRepair = "partial repair",
        /// Torn and left.
        NotRepaired = "not repaired",
    }
}

body::words! {
    /// How the tendon looked and held.
    Tissue {
        /// Good.
        Good = "good",
        /// Fair.
        Fair = "fair",
        /// Poor.
        Poor = "poor",
    }
}

body::words! {
    /// The tension on the repair.
    Tension {
        /// Low.
        Low = "low",
        /// Moderate.
        Moderate = "moderate",
        /// High.
        High = "high",
    }
}

body::words! {
    /// What was done to the long head of the biceps.
    Biceps {
        /// Nothing.
        None = "none",
        /// Cut and left.
        Tenotomy = "tenotomy",
        /// Cut and fixed.
        Tenodesis = "tenodesis",
    }
}

body::words! {
    /// What was done to the labrum.
    Labrum {
        /// Nothing.
        None = "none",
        /// Repaired at the top, where the biceps arises.
        SuperiorRepair = "superior repair",
        /// Repaired in front.
        AnteriorRepair = "anterior repair",
    }
}

body::words! {
    /// The state of the arm that has to help.
    OtherShoulder {
        /// Sound.
        Sound = "sound",
        /// Painful.
        Painful = "painful",
        /// Operated on.
        Operated = "operated",
    }
}

body::words! {
    /// How heavy work and leisure are.
    Activity {
        /// Light.
        Light = "light",
        /// Moderate.
        Moderate = "moderate",
        /// Heavy.
        Heavy = "heavy",
    }
}

body::words! {
    /// The surgeon's answer for a shoulder that was stiff or was released.
    StiffShoulder {
        /// Keep the plan as it was composed.
        AsComposed = "as composed",
        /// Loosen passive motion; the settings name the loosening.
        Loosened = "loosened",
    }
}

body::words! {
    /// The surgeon's answer where a finding would ask for more than the slow plan.
    BeyondDelayed {
        /// Keep the plan as it was composed.
        AsComposed = "as composed",
    }
}
