//! Whether the order by weight agrees with what was measured of the muscles.

use body::{Joint, Movement};
use exercise::{ActivityClass, Entry, Holder, Measured};
use operative::{Record, Tendon};

use super::{Rung, Work};

body::words! {
    /// A muscle that a repair may involve.
    Muscle {
        /// Supraspinatus.
        Supraspinatus = "supraspinatus",
        /// Infraspinatus.
        Infraspinatus = "infraspinatus",
        /// Subscapularis.
        Subscapularis = "subscapularis",
    }
}

impl Muscle {
    /// What was measured of it in an exercise.
    pub const fn measured_in(self, entry: &Entry) -> Option<Measured> {
        match self {
            Self::Supraspinatus => entry.muscle.supraspinatus,
            Self::Infraspinatus => entry.muscle.infraspinatus,
            Self::Subscapularis => entry.muscle.subscapularis,
        }
    }

    /// Those whose tendon a record says was repaired; none where that is none of the three.
    pub fn repaired(record: &Record) -> Vec<Self> {
        let of = |tendon| match tendon {
            Tendon::Supraspinatus => Some(Self::Supraspinatus),
            Tendon::Infraspinatus => Some(Self::Infraspinatus),
            Tendon::Subscapularis => Some(Self::Subscapularis),
            Tendon::TeresMinor => None,
        };
        let tendons = record.operation.tendons.iter().filter(|tendon| tendon.is_repaired());
        tendons.filter_map(|tendon| of(tendon.name.value)).collect()
    }
}

/// How far the two orders agree for one muscle.
#[derive(Debug, Clone, PartialEq)]
pub struct Agreement {
    /// The muscle.
    pub muscle: Muscle,
    /// Exercises with a load and a measurement.
    pub measured: usize,
    /// Pairs in which the heavier exercise also has the higher class.
    pub agree: usize,
    /// Pairs in which the heavier exercise has the lower class.
    pub disagree: usize,
    /// Pairs that weigh the same or have the same class, which tell nothing.
    pub tied: usize,
    /// Exercises that work the muscle harder than a heavier one does.
    pub out_of_order: Vec<OutOfOrder>,
}

/// An exercise that works a muscle harder than a heavier one does.
#[derive(Debug, Clone, PartialEq)]
pub struct OutOfOrder {
    /// The lighter exercise.
    pub exercise: String,
    /// Its load.
    pub ratio: f64,
    /// Its class.
    pub class: ActivityClass,
    /// The heaviest exercise of a lower class.
    pub heavier: String,
    /// That one's load.
    pub heavier_ratio: f64,
    /// That one's class.
    pub heavier_class: ActivityClass,
    /// Why; at least one reason.
    pub why: Vec<Why>,
}

body::words! {
    /// Why weight and muscle activity do not agree.
    Why {
        /// The shoulder blade works, and the number tells of the arm only.
        Blade = "a blade exercise: its number is only the arm's weight",
        /// The weight is carried; the muscle was found to work all the same.
        Carried = "the arm's weight is carried, and the muscle works all the same",
        /// The arm hangs; the muscle was found to work all the same.
        Hanging = "the arm hangs, and the muscle works all the same",
        /// Turning against the weight of the forearm lifts little and asks much of the cuff.
        TurningLifts = "turning lifts only the forearm and works the cuff itself",
        /// Turning an upright arm lifts nothing.
        TurningUpright = "upright, the turn meets no weight: the muscle turns the arm",
        /// The number of a helped arm is the half that is assumed.
        AssumedHalf = "the helped one's number is the assumed half of its weight",
        /// The heavier one asks other muscles.
        OtherMuscles = "the heavier one is held mostly by other muscles",
        /// None of the above.
        Unknown = "no reason is known here; go by the measurement",
    }
}

/// For each muscle, how far the order by weight agrees with muscle activity.
///
/// # Method
/// Every pair of exercises that both have a number for their load and a measurement of the muscle; what gravity does not
/// tell has no number. Two loads closer than a twentieth of a level arm's count as the same. An exercise that stands
/// here more than once counts once, in its heaviest form.
pub fn agreement(rungs: &[Rung<'_>]) -> Vec<Agreement> {
    Muscle::ALL.iter().map(|&muscle| of_muscle(muscle, rungs)).collect()
}

fn of_muscle(muscle: Muscle, rungs: &[Rung<'_>]) -> Agreement {
    let mut measured: Vec<(&Rung<'_>, f64, Measured)> = Vec::new();
    for rung in rungs {
        let (Some(load), Some(of_muscle)) = (rung.middle(), muscle.measured_in(rung.entry)) else { continue };
        match measured.iter_mut().find(|(known, ..)| known.entry.id == rung.entry.id) {
            None => measured.push((rung, load, of_muscle)),
            Some(known) if load > known.1 => *known = (rung, load, of_muscle),
            Some(_) => {}
        }
    }
    let mut found =
        Agreement { muscle, measured: measured.len(), agree: 0, disagree: 0, tied: 0, out_of_order: Vec::new() };
    for (place, (_, one, first)) in measured.iter().enumerate() {
        for (_, other, second) in measured.iter().skip(place + 1) {
            let by_load = if (one - other).abs() < SAME { std::cmp::Ordering::Equal } else { one.total_cmp(other) };
            match (by_load, first.class.cmp(&second.class)) {
                (std::cmp::Ordering::Equal, _) | (_, std::cmp::Ordering::Equal) => found.tied += 1,
                (by_load, by_class) if by_load == by_class => found.agree += 1,
                _ => found.disagree += 1,
            }
        }
    }
    for (rung, load, of_muscle) in &measured {
        let heavier = measured
            .iter()
            .filter(|(_, other, second)| *other > load + SAME && second.class < of_muscle.class)
            .max_by(|one, other| one.1.total_cmp(&other.1));
        if let Some((other, heavier_ratio, second)) = heavier {
            found.out_of_order.push(OutOfOrder {
                exercise: rung.entry.id.clone(),
                ratio: *load,
                class: of_muscle.class,
                heavier: other.entry.id.clone(),
                heavier_ratio: *heavier_ratio,
                heavier_class: second.class,
                why: why(rung, other),
            });
        }
    }
    found
}

/// Why a lighter exercise works a muscle harder.
fn why(lighter: &Rung<'_>, heavier: &Rung<'_>) -> Vec<Why> {
    let joint = lighter.entry.target().map(|target| target.key.joint);
    let turns = lighter.entry.target().is_some_and(|target| {
        target.key.joint == Joint::Shoulder
            && matches!(
                target.key.movement,
                Movement::ExternalRotation
                    | Movement::InternalRotation
                    | Movement::InwardTurnAgainstGravity
                    | Movement::AbductionWithExternalRotation
            )
    });
    let asks_elbow = heavier.entry.target().is_some_and(|target| target.key.joint != Joint::Shoulder);
    let helped = [lighter, heavier].iter().any(|rung| rung.entry.holder() == Some(Holder::Shared));
    let of_lighter = match lighter.entry.holder() {
        _ if joint == Some(Joint::Scapula) => Some(Why::Blade),
        Some(Holder::Carried) => Some(Why::Carried),
        Some(Holder::Hanging) => Some(Why::Hanging),
        Some(Holder::Forearm) if turns => Some(Why::TurningLifts),
        Some(Holder::Own) if turns && Work::of(lighter.entry) == Work::Turning => Some(Why::TurningUpright),
        _ => None,
    };
    let mut why: Vec<Why> = of_lighter.into_iter().collect();
    if helped {
        why.push(Why::AssumedHalf);
    }
    if why.is_empty() {
        why.push(if asks_elbow { Why::OtherMuscles } else { Why::Unknown });
    }
    why
}

/// Two loads closer than this part of a level arm's are the same.
const SAME: f64 = 0.05; // not medical: finer than the tables agree among themselves
