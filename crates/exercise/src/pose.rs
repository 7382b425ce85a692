//! From the words of a pose to the pose.

use body::{Angle, Arm, Blade, Fingers, Key, Movement, Pose, Posture, Shoulder};
use evidence::ids;
use quantity::Degrees;

use crate::{Amount, BladeHold, Demand, Elbow, Entry, Forearm, Other, Path, Trunk, Turn, UpperArm, Weight, Wrist};

/// Where the body is at the start and at the end of an exercise or a test.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Positions {
    /// Where the movement starts.
    pub start: Hold,
    /// Where it ends.
    pub end: Hold,
    /// Whose muscles hold the arm's weight.
    pub weight: Weight,
    /// Where the other arm is.
    pub other: Other,
    /// How it gets from one to the other; only drawings and measurements ask for it.
    pub path: Path,
}

/// One pose in words.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Hold {
    /// How the trunk leans.
    pub trunk: Trunk,
    /// Where the upper arm is.
    pub upper_arm: UpperArm,
    /// How it is turned.
    pub turn: Turn,
    /// How far the elbow is bent.
    pub elbow: Elbow,
    /// How the forearm is turned.
    pub forearm: Forearm,
    /// How the wrist is bent.
    pub wrist: Wrist,
    /// What the fingers do.
    pub fingers: Fingers,
    /// Where the shoulder blade is.
    pub blade: BladeHold,
}

/// Which end of the movement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum End {
    Start,
    Stop,
}

impl Entry {
    /// The poses at the start and at the end, at prescribed angles.
    ///
    /// # Units and shape
    /// `reach` gives how far each demand goes that day: for a demand "to the limit" the prescribed target, never
    /// more than its `most`. It is asked only about demands with an angle. `None` for an entry without poses.
    ///
    /// # Method
    /// A pose holds no degrees of its own but those of resting positions: where it names a movement, it takes the
    /// angle of the entry's demand of that movement. At the start the first demand is at its `from`, if it has one;
    /// every other demand that is named is at its full angle, because it says where the arm is while something else
    /// moves, or from where a throw begins. An arm at zero is written as hanging, or not turned.
    pub fn poses(&self, reach: impl Fn(&Demand) -> Degrees) -> Option<(Pose, Pose)> {
        let positions = self.positions?;
        let at = |hold: &Hold, end: End| {
            let angles = Angles { entry: self, end, reach: &reach };
            let (lean, operated) = hold.at(self.posture, &angles);
            let other = match positions.other {
                Other::AtRest => Arm::HANGING,
                Other::Same => operated,
            };
            Pose { posture: self.posture, lean, operated, other }
        };
        Some((at(&positions.start, End::Start), at(&positions.end, End::Stop)))
    }

    /// The poses with every demand at its greatest angle.
    pub fn widest_poses(&self) -> Option<(Pose, Pose)> {
        self.poses(|demand| demand.amount.greatest_angle().unwrap_or_default())
    }
}

/// The angles of an entry's demands at one end of the movement.
struct Angles<'e> {
    entry: &'e Entry,
    end: End,
    reach: &'e dyn Fn(&Demand) -> Degrees,
}

impl Angles<'_> {
    /// The angle of the demand of a movement; `None` where no demand of it has one.
    fn of(&self, movement: Movement) -> Option<Angle> {
        if let (Movement::InternalRotation, Some(resting)) = (movement, self.entry.resting) {
            return Some(resting.rotation_internal.into());
        }
        let demand = self.entry.demands.iter().find(|demand| names(demand.key, demand.amount, movement))?;
        let is_target = self.entry.target().is_some_and(|target| target.key == demand.key);
        let degrees = match (self.end, is_target) {
            (End::Start, true) if demand.amount.start_angle()? != Degrees::whole(0) => demand.amount.start_angle()?,
            _ => (self.reach)(demand),
        };
        Some(degrees.into())
    }
}

fn names(key: Key, amount: Amount, movement: Movement) -> bool {
    key.joint == body::Joint::Shoulder && key.movement == movement && amount.greatest_angle().is_some()
}

impl UpperArm {
    /// The demand whose degrees it takes.
    pub(crate) const fn movement(self) -> Option<Movement> {
        Some(match self {
            Self::ForwardElevation | Self::LevelAhead => Movement::ForwardElevation,
            Self::ScapularPlaneElevation => Movement::ScapularPlaneElevation,
            Self::Abduction => Movement::Abduction,
            Self::Extension => Movement::Extension,
            Self::HorizontalAdduction => Movement::HorizontalAdduction,
            Self::Hanging | Self::HangingDown | Self::Resting | Self::BehindTheBack => return None,
        })
    }
}

impl Turn {
    /// The demand whose degrees it takes.
    pub(crate) const fn movement(self) -> Option<Movement> {
        Some(match self {
            Self::Outward => Movement::ExternalRotation,
            Self::Inward => Movement::InternalRotation,
            Self::RaisedOutward => Movement::AbductionWithExternalRotation,
            Self::None | Self::OnTheBelly | Self::BehindTheBack => return None,
        })
    }
}

/// Straight ahead, as a plane of elevation.
const AHEAD: Angle = Angle::from_degrees(90.0); // not medical: the standard's zero is to the side
/// Level, as an elevation.
const LEVEL: Angle = Angle::from_degrees(90.0); // not medical: a right angle

impl Hold {
    fn at(&self, posture: Posture, angles: &Angles<'_>) -> (Angle, Arm) {
        let upright = posture.is_upright();
        let bent = match self.trunk {
            Trunk::BentForward => of(ids::POSE_TRUNK_BENT),
            Trunk::AsPlaced if posture == Posture::BentForward => of(ids::POSE_TRUNK_BENT),
            Trunk::Leaning => of(ids::POSE_TRUNK_LEANING),
            _ => Angle::ZERO,
        };
        let mut shoulder = self.upper_arm(angles, if upright { bent } else { Angle::ZERO });
        shoulder.outward = self.outward(angles);
        let mut arm = Arm {
            shoulder,
            blade: self.blade_moved(),
            elbow: match self.elbow {
                Elbow::Straight | Elbow::OnTheTable => Angle::ZERO,
                Elbow::Soft => of(ids::POSE_ELBOW_SOFT),
                Elbow::Bent => of(ids::POSE_ELBOW_BENT),
                Elbow::Folded => of(ids::POSE_ELBOW_FOLDED),
            },
            forearm: match self.forearm {
                Forearm::ThumbLeads => Angle::ZERO,
                Forearm::PalmUp => -of(ids::POSE_PALM_TURNED),
                Forearm::PalmDown => of(ids::POSE_PALM_TURNED),
            },
            wrist: match self.wrist {
                Wrist::Straight => Angle::ZERO,
                Wrist::Bent => of(ids::POSE_WRIST_BENT),
                Wrist::BentBack => -of(ids::POSE_WRIST_BENT),
            },
            fingers: self.fingers,
        };
        let lean = match self.trunk {
            Trunk::AsPlaced if posture == Posture::BentForward => of(ids::POSE_TRUNK_BENT),
            Trunk::AsPlaced => Angle::ZERO,
            Trunk::Leaning => of(ids::POSE_TRUNK_LEANING),
            Trunk::BentForward => of(ids::POSE_TRUNK_BENT),
            Trunk::OverTheTable => body::lean_over_table(shoulder.elevation),
        };
        if self.elbow == Elbow::OnTheTable {
            arm.elbow = body::elbow_on_table(shoulder.elevation);
        }
        (lean, arm)
    }

    fn upper_arm(&self, angles: &Angles<'_>, leans: Angle) -> Shoulder {
        let resting = angles.entry.resting.map(|resting| Angle::from(resting.elevation));
        let no_more = |angle: Angle| resting.map_or(angle, |most| if most < angle { most } else { angle });
        let degrees = |movement| angles.of(movement).unwrap_or(Angle::ZERO);
        match self.upper_arm {
            UpperArm::Hanging => Shoulder::HANGING,
            UpperArm::HangingDown => Shoulder::raised_ahead(no_more(leans)),
            UpperArm::Resting => Shoulder::raised_in_the_scapular_plane(no_more(of(ids::POSE_ARM_RESTING))),
            UpperArm::ForwardElevation => Shoulder::raised_ahead(degrees(Movement::ForwardElevation)),
            UpperArm::LevelAhead => {
                let raised = degrees(Movement::ForwardElevation);
                Shoulder::raised_ahead(if raised < LEVEL { raised } else { LEVEL })
            }
            UpperArm::ScapularPlaneElevation => {
                Shoulder::raised_in_the_scapular_plane(degrees(Movement::ScapularPlaneElevation))
            }
            UpperArm::Abduction => Shoulder::raised_to_the_side(degrees(Movement::Abduction)),
            UpperArm::Extension => Shoulder::raised(-AHEAD, degrees(Movement::Extension)),
            UpperArm::HorizontalAdduction => {
                let level = of(ids::POSE_ACROSS_WITHOUT_ELEVATION);
                let elevation = angles.of(Movement::ForwardElevation).or_else(|| angles.of(Movement::Abduction));
                Shoulder::raised(AHEAD + degrees(Movement::HorizontalAdduction), elevation.unwrap_or(level))
            }
            UpperArm::BehindTheBack => {
                let behind = || of(ids::POSE_BEHIND_BACK_EXTENSION);
                Shoulder::raised(-AHEAD, angles.of(Movement::Extension).unwrap_or_else(behind))
            }
        }
    }

    fn outward(&self, angles: &Angles<'_>) -> Angle {
        let degrees = |movement| angles.of(movement).unwrap_or(Angle::ZERO);
        match self.turn {
            Turn::None => Angle::ZERO,
            Turn::Outward => degrees(Movement::ExternalRotation),
            Turn::Inward => -degrees(Movement::InternalRotation),
            Turn::RaisedOutward => degrees(Movement::AbductionWithExternalRotation),
            Turn::OnTheBelly => -of(ids::POSE_FOREARM_ON_BELLY),
            Turn::BehindTheBack => -of(ids::POSE_BEHIND_BACK_TURN),
        }
    }

    fn blade_moved(&self) -> Blade {
        let [raised, moved] = [of(ids::POSE_BLADE_RAISED), of(ids::POSE_BLADE_MOVED)];
        match self.blade {
            BladeHold::AtRest => Blade::default(),
            BladeHold::Raised => Blade { raised, ..Blade::default() },
            BladeHold::Down => Blade { raised: -moved, ..Blade::default() },
            BladeHold::Forward => Blade { forward: moved, ..Blade::default() },
            BladeHold::Back => Blade { forward: -moved, ..Blade::default() },
        }
    }
}

fn of(entry: &evidence::Entry) -> Angle {
    entry.degrees().into()
}
