//! The closed lists that catalogue files are written with.

body::words! {
    /// What an entry of the catalogue is.
    Kind {
        /// Done for the sake of the shoulder, with a dose.
        Exercise = "exercise",
        /// Something of daily life a patient may ask about.
        Activity = "activity",
        /// A pose of sling, rest, washing or dressing; held against the resting allowance.
        Care = "care",
        /// A measurement a visit asks for.
        Test = "test",
    }
}

body::words! {
    /// What an exercise is for.
    Purpose {
        /// Raising the arm, in any plane.
        Elevation = "elevation",
        /// Turning the arm outward.
        ExternalRotation = "external rotation",
        /// Turning the arm inward.
        InternalRotation = "internal rotation",
        /// Moving the arm backward.
        Extension = "extension",
        /// Bringing the arm across the chest.
        HorizontalAdduction = "horizontal adduction",
        /// Reaching up the back.
        BehindTheBack = "behind the back",
        /// Shoulder blade on the chest wall.
        ShoulderBlade = "shoulder blade",
        /// Elbow motion.
        Elbow = "elbow",
        /// Turning the palm.
        Forearm = "forearm",
        /// Wrist motion.
        Wrist = "wrist",
        /// Fingers and grip.
        Hand = "hand",
        /// Strength of the rotator cuff.
        CuffStrength = "cuff strength",
        /// Strength of the arm as a whole.
        ArmStrength = "arm strength",
        /// Getting ready for sport.
        ReturnToSport = "return to sport",
    }
}

body::words! {
    /// Things people have at home, or that a sport needs.
    Equipment {
        /// A light stick about as long as an arm's span.
        Stick = "stick",
        /// A towel.
        Towel = "towel",
        /// A towel rolled to the thickness of a forearm.
        RolledTowel = "rolled towel",
        /// A washcloth.
        Washcloth = "washcloth",
        /// A pillow.
        Pillow = "pillow",
        /// A table.
        Table = "table",
        /// A chair.
        Chair = "chair",
        /// A bed.
        Bed = "bed",
        /// A wall.
        Wall = "wall",
        /// A door frame.
        DoorFrame = "door frame",
        /// A door.
        Door = "door",
        /// A cord over a pulley or over the top of a door.
        Pulley = "pulley",
        /// A soft ball.
        SoftBall = "soft ball",
        /// A ball the size of a football.
        LargeBall = "large ball",
        /// An elastic band tied at waist height or held in both hands.
        ElasticBand = "elastic band",
        /// A small weight.
        SmallWeight = "small weight",
        /// A bag.
        Bag = "bag",
        /// The sling.
        Sling = "sling",
        /// A fork or a spoon.
        Cutlery = "cutlery",
        /// A cup.
        Cup = "cup",
        /// A kettle or a full jug.
        Kettle = "kettle",
        /// A pan.
        Pan = "pan",
        /// A keyboard.
        Keyboard = "keyboard",
        /// A pen.
        Pen = "pen",
        /// A telephone.
        Telephone = "telephone",
        /// A comb or a brush.
        Comb = "comb",
        /// A toothbrush.
        Toothbrush = "toothbrush",
        /// A razor.
        Razor = "razor",
        /// A shirt.
        Shirt = "shirt",
        /// A jacket.
        Jacket = "jacket",
        /// A bra.
        Bra = "bra",
        /// Trousers, a skirt, socks or shoes.
        LowerClothes = "lower clothes",
        /// A shower.
        Shower = "shower",
        /// A toilet.
        Toilet = "toilet",
        /// A car.
        Car = "car",
        /// A bus or a train.
        Bus = "bus",
        /// A vacuum cleaner.
        VacuumCleaner = "vacuum cleaner",
        /// A broom.
        Broom = "broom",
        /// A shelf above the head.
        HighShelf = "high shelf",
        /// Garden tools.
        GardenTools = "garden tools",
        /// Tools of a manual trade.
        WorkTools = "work tools",
        /// A child.
        Child = "child",
        /// A dog on a lead.
        Dog = "dog",
        /// A bicycle that stands still.
        StandingBicycle = "standing bicycle",
        /// A bicycle.
        Bicycle = "bicycle",
        /// Water to swim in.
        SwimmingPool = "swimming pool",
        /// Racket, club or ball of the sport.
        SportsGear = "sports gear",
    }
}

body::words! {
    /// What the other arm does.
    OtherArm {
        /// Nothing.
        None = "none",
        /// It is leaned on, lain on, holds the body, or does the same alongside.
        Steadies = "steadies",
        /// It assists the operated arm.
        Helps = "helps",
        /// It moves the operated arm wholly.
        Drives = "drives",
    }
}

body::words! {
    /// Who has to be there.
    Supervision {
        /// Nobody: done at home.
        Home = "home",
        /// A therapist or the surgeon.
        Therapist = "therapist",
    }
}

body::words! {
    /// Whether it is done with the sling on.
    SlingDuring {
        /// The sling is off.
        Off = "off",
        /// The sling stays on.
        On = "on",
    }
}

body::words! {
    /// What a care pose is for.
    Occasion {
        /// Wearing the sling.
        Sling = "sling",
        /// Rest and sleep.
        Rest = "rest",
        /// Washing.
        Washing = "washing",
        /// Dressing and undressing.
        Dressing = "dressing",
        /// The arm hanging from a leaning trunk.
        Hanging = "hanging",
    }
}
