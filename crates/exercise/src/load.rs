//! What an exercise asks an arm to hold against gravity.

use body::{Angle, Moment, Moments, Person, Pose, SegmentTable, Spread};
use evidence::ids;
use quantity::{Degrees, Kilograms};

use crate::{Amount, Demand, Elbow, Entry, Equipment, Kind, Purpose, UpperArm, Weight};

/// The load of an exercise, as far as gravity tells it.
#[derive(Debug, Clone, PartialEq)]
pub struct Load {
    /// With nothing carried, by each table that may fit; at least one.
    by_table: Vec<OfTable>,
    /// How far up the arm is where it is greatest.
    pub elevation: Angle,
    /// Whose muscles hold the weight.
    pub weight: Weight,
    /// What is held in the hand.
    pub held: Option<Kilograms>,
}

/// By one table of segments.
#[derive(Debug, Clone, Copy, PartialEq)]
struct OfTable {
    /// As a multiple of the moment of the own straight arm held level.
    ratio: f64,
    /// Of somebody known.
    moment: Option<Moment>,
}

body::words! {
    /// What an exercise asks of a shoulder beyond the weight of the arm and of what the hand holds.
    Beyond {
        /// The pull of a band, which nobody has measured for this band and this length.
        Band = "pull of a band",
        /// Weight of the body that goes through the arm.
        BodyWeight = "body weight through the arm",
        /// Effort against something that does not move.
        Effort = "effort without movement",
        /// The resistance of the other hand, or of a tester's.
        Hand = "resistance of a hand",
        /// A weight that hangs from a straight arm: it pulls and does not turn.
        Pull = "pull along the arm",
        /// Speed: throwing, catching, swinging.
        Speed = "speed",
    }
}

/// Why the load of an exercise has no number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoLoad {
    /// It is an activity or a care pose: its pose is the one that asks most of a range of motion, not of strength.
    NotAnExercise,
    /// No table of segments was given.
    NoTable,
    /// A weight is held and the body mass is not known, so it can't be compared with the arm's own weight.
    MassUnknown,
    /// What it asks of the shoulder is not, or not mainly, the work of gravity: see [`Entry::beyond_gravity`].
    NotGravity,
}

body::words! {
    /// What holds the weight of an arm.
    Holder {
        /// The arm's own muscles.
        Own = "own",
        /// The arm's own muscles, of the forearm only.
        Forearm = "forearm",
        /// Partly the arm's own muscles.
        Shared = "shared",
        /// The other arm, a bed, a table, a wall, the sling, a therapist.
        Carried = "carried",
        /// Nothing: the arm hangs loose.
        Hanging = "hanging",
    }
}

/// Whose arm: somebody known, or anybody.
///
/// The ratio of a moment to that of the own level arm does not depend on stature, and on body mass only while
/// something is held.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Whose<'t> {
    /// Somebody, with the tables that may fit.
    Known {
        /// Stature and mass.
        person: Person,
        /// One table where sex is known, else those of men and women.
        tables: &'t [SegmentTable],
    },
    /// Somebody whose body mass is known and whose stature is not: ratios, and no moments.
    OfMass {
        /// The body mass.
        mass: Kilograms,
        /// As above.
        tables: &'t [SegmentTable],
    },
    /// Nobody in particular, by these tables.
    Anybody(&'t [SegmentTable]),
}

impl Entry {
    /// The load of this exercise or test.
    ///
    /// # Units and shape
    /// `reach` as in [`Entry::poses`]; `held` is what the hand holds that day.
    ///
    /// # Method
    /// The greatest gravitational moment on the way from start to end, straight at every degree. Of a carried arm the
    /// own muscles hold nothing; of a shared one a half, between nothing and all; where the upper arm rests, what turns
    /// it. It is an outer moment, not the tension of a tendon: muscle activity is to be read beside it.
    ///
    /// # Errors
    /// No poses, something asked that gravity does not tell, or a weight in the hand and no body mass.
    ///
    /// # Source
    /// [`Moments`]; `share-assisted` (own choice).
    pub fn load(
        &self,
        whose: Whose<'_>,
        held: Option<Kilograms>,
        reach: impl Fn(&Demand) -> Degrees,
    ) -> Result<Load, NoLoad> {
        let is_weighed = matches!(self.kind, Kind::Exercise | Kind::Test);
        let positions = self.positions.filter(|_| is_weighed).ok_or(NoLoad::NotAnExercise)?;
        let (start, end) = self.poses(reach).ok_or(NoLoad::NotAnExercise)?;
        // A number of its gravity alone would put a push-up beside an arm that lies on a table.
        if !self.beyond_gravity().is_empty() {
            return Err(NoLoad::NotGravity);
        }
        let held = held.filter(|held| *held > Kilograms::whole(0));
        let (person, tables) = match whose {
            Whose::Known { person, tables } => (person, tables),
            // A ratio does not depend on stature; any will do.
            Whose::OfMass { mass, tables } => (anybody(Some(mass)), tables),
            Whose::Anybody(_) if held.is_some() => return Err(NoLoad::MassUnknown),
            // Without anything in the hand neither stature nor mass changes a ratio; any will do.
            Whose::Anybody(tables) => (anybody(None), tables),
        };
        let in_hand = held.unwrap_or_default();
        let greatest = |person| {
            Moments::greatest_between(person, &start, &end, in_hand, |moments| match positions.weight {
                Weight::Forearm => moments.turning,
                Weight::Own | Weight::Shared | Weight::Carried => moments.shoulder,
            })
        };
        let of = |table| {
            let person = person.by(table);
            let moment = greatest(person).moment;
            let ratio = moment.over(Moments::straight_level_arm(person).shoulder).unwrap_or(0.0);
            OfTable { ratio, moment: matches!(whose, Whose::Known { .. }).then_some(moment) }
        };
        let first = tables.first().copied().ok_or(NoLoad::NoTable)?;
        let peak = greatest(person.by(first));
        Ok(Load {
            by_table: tables.iter().copied().map(of).collect(),
            elevation: Pose::between(&start, &end, peak.at).operated.shoulder.elevation,
            weight: positions.weight,
            held,
        })
    }

    /// What holds the arm's weight; `None` where gravity is not what the arm works against, or there are no poses.
    pub fn holder(&self) -> Option<Holder> {
        let positions = self.positions.filter(|_| self.beyond_gravity().is_empty())?;
        Some(match positions.weight {
            Weight::Own => Holder::Own,
            Weight::Forearm => Holder::Forearm,
            Weight::Shared => Holder::Shared,
            // Nothing lies under the arm of somebody who bends forward.
            Weight::Carried if self.posture == body::Posture::BentForward => Holder::Hanging,
            Weight::Carried => Holder::Carried,
        })
    }

    /// What this asks of a shoulder that gravity does not tell.
    pub fn beyond_gravity(&self) -> Vec<Beyond> {
        let has = |equipment| self.equipment.contains(&equipment);
        let resists = |demand: &Demand| {
            demand.key.mode == body::Mode::Resisted
                && matches!(demand.key.joint, body::Joint::Shoulder | body::Joint::Elbow | body::Joint::Scapula)
        };
        let through = body::Movement::WeightThroughTheArm;
        let mut beyond = Vec::new();
        if has(Equipment::ElasticBand) {
            beyond.push(Beyond::Band);
        }
        if self.demands.iter().any(|demand| demand.key.movement == through) {
            beyond.push(Beyond::BodyWeight);
        }
        if self.demands.iter().any(|demand| matches!(demand.amount, Amount::Effort(_))) {
            beyond.push(Beyond::Effort);
        }
        if self.purpose == Some(Purpose::ReturnToSport) {
            beyond.push(Beyond::Speed);
        }
        let hangs = self.positions.is_some_and(|positions| {
            positions.start == positions.end
                && positions.end.upper_arm == UpperArm::Hanging
                && positions.end.elbow == Elbow::Straight
        });
        if hangs && self.heaviest_held().is_some() {
            beyond.push(Beyond::Pull);
        }
        let holds_weight = self.demands.iter().any(|demand| demand.key.is_load());
        if beyond.is_empty() && !holds_weight && self.demands.iter().any(resists) {
            beyond.push(Beyond::Hand);
        }
        beyond
    }

    /// The heaviest that is held in the hand when everything is free.
    pub fn heaviest_held(&self) -> Option<Kilograms> {
        let loads = self.demands.iter().filter(|demand| demand.key.movement == body::Movement::HandLoad);
        loads
            .filter_map(|demand| match demand.amount {
                Amount::Load(held) | Amount::LoadToLimit { most: held } => Some(held),
                _ => None,
            })
            .max()
    }
}

impl Load {
    /// The greatest moment at the shoulder that the arm's own muscles hold, as a multiple of the person's own straight
    /// arm held level.
    pub fn ratio(&self) -> Spread {
        let [least, most] = share(self.weight);
        let all = self.uncarried();
        Spread { least: all.least * least, most: all.most * most }
    }

    /// The same with nothing carried.
    pub fn uncarried(&self) -> Spread {
        Spread::of(self.by_table.iter().map(|of| of.ratio)).expect("a load has a table")
    }

    /// The moment that the arm's own muscles hold; `None` where nobody in particular is asked about.
    ///
    /// # Units and shape
    /// Newton meters, the least and the most.
    pub fn moment_nm(&self) -> Option<Spread> {
        let [least, most] = share(self.weight);
        let moments = self.by_table.iter().map(|of| of.moment.map(Moment::newton_meters));
        let all = Spread::of(moments.collect::<Option<Vec<f64>>>()?)?;
        Some(Spread { least: all.least * least, most: all.most * most })
    }

    /// The one number of the ratio: what exercises are put in order by.
    ///
    /// # Method
    /// By the heavier table where sex is not known, and the middle of the share that the arm's own muscles hold.
    pub fn middle(&self) -> f64 {
        self.uncarried().most * middle_share(self.weight)
    }

    /// The one number of the moment, in newton meters, as [`Load::middle`] counts.
    pub fn middle_nm(&self) -> Option<f64> {
        let moments = self.by_table.iter().map(|of| of.moment.map(Moment::newton_meters));
        let all = Spread::of(moments.collect::<Option<Vec<f64>>>()?)?;
        Some(all.most * middle_share(self.weight))
    }
}

/// The least and the most of an arm's weight that its own muscles hold.
fn share(weight: Weight) -> [f64; 2] {
    const HUNDRED: f64 = 100.0; // not medical: the prefix of a percentage
    let assisted = ids::SHARE_ASSISTED;
    let part = |bound: Option<f64>| bound.unwrap_or(assisted.number()) / HUNDRED;
    match weight {
        Weight::Own | Weight::Forearm => [1.0, 1.0],
        Weight::Shared => [part(assisted.low), part(assisted.high)],
        Weight::Carried => [0.0, 0.0],
    }
}

fn middle_share(weight: Weight) -> f64 {
    let [least, most] = share(weight);
    (least + most) / 2.0
}

/// Somebody in the middle of the accepted range; ratios of an empty hand are the same for everybody, and with something
/// in it for everybody of one body mass.
fn anybody(known: Option<Kilograms>) -> Person {
    let middle = |least: i32, most: i32| least + (most - least) / 2;
    let stature = middle(ids::STATURE_LEAST.millimeters().steps(), ids::STATURE_MOST.millimeters().steps());
    let mass = middle(ids::BODY_MASS_LEAST.kilograms().steps(), ids::BODY_MASS_MOST.kilograms().steps());
    let mass = known.unwrap_or(Kilograms::from_steps(mass));
    Person::new(quantity::Millimeters::from_steps(stature), mass, SegmentTable::Men)
        .expect("the middle of a range lies in it, and a known mass was accepted before")
}
