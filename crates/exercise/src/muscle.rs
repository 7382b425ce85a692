//! How hard a muscle was found to work.

use evidence::{HowKnown, ids};
use quantity::Percent;

/// Classes of muscle activity, in percent of a maximal isometric effort.
///
/// # Source
/// `emg-class-low-top`, `emg-class-low-moderate-top`, `emg-class-moderate-top`, `emg-class-high-top`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ActivityClass {
    /// Up to and including the top of the low class.
    Low,
    /// Above low.
    LowModerate,
    /// Above low to moderate.
    Moderate,
    /// Above moderate.
    High,
    /// Above high.
    VeryHigh,
}

impl ActivityClass {
    /// Every class, lowest first.
    pub const ALL: &'static [Self] = &[Self::Low, Self::LowModerate, Self::Moderate, Self::High, Self::VeryHigh];

    /// The class of a percentage; the top of a class belongs to it.
    ///
    /// # Example
    /// ```
    /// use exercise::ActivityClass;
    /// use quantity::Percent;
    /// assert_eq!(ActivityClass::of(Percent::whole(15)), ActivityClass::Low);
    /// assert_eq!(ActivityClass::of(Percent::from_steps(151)), ActivityClass::LowModerate);
    /// ```
    pub fn of(percent: Percent) -> Self {
        let tops = [
            (ids::EMG_CLASS_LOW_TOP, Self::Low),
            (ids::EMG_CLASS_LOW_MODERATE_TOP, Self::LowModerate),
            (ids::EMG_CLASS_MODERATE_TOP, Self::Moderate),
            (ids::EMG_CLASS_HIGH_TOP, Self::High),
        ];
        tops.iter().find(|(top, _)| percent <= top.percent()).map_or(Self::VeryHigh, |(_, class)| *class)
    }

    /// The class above this one; the highest stays.
    pub const fn next(self) -> Self {
        match self {
            Self::Low => Self::LowModerate,
            Self::LowModerate => Self::Moderate,
            Self::Moderate => Self::High,
            Self::High | Self::VeryHigh => Self::VeryHigh,
        }
    }

    /// The name used in output.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Low => "low",
            Self::LowModerate => "low to moderate",
            Self::Moderate => "moderate",
            Self::High => "high",
            Self::VeryHigh => "very high",
        }
    }
}

/// One muscle's class in one exercise, and where that is known from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    /// The class.
    pub class: ActivityClass,
    /// The entry it was read from.
    pub evidence: &'static evidence::Entry,
}

impl Measured {
    /// The class an entry of the table gives; `None` where it holds no percentage.
    ///
    /// # Method
    /// The highest number given counts, otherwise the value. An entry that only
    /// says "more than" (a lowest number alone) takes the class above that number.
    pub fn of(evidence: &'static evidence::Entry) -> Option<Self> {
        if evidence.unit != evidence::Unit::PercentMvic {
            return None;
        }
        let class = if let Some(percent) = evidence.high.or(evidence.value) {
            ActivityClass::of(tenths_up(percent)?)
        } else {
            ActivityClass::of(tenths_up(evidence.low?)?).next()
        };
        Some(Self { class, evidence })
    }

    /// Whether this may let an exercise in. A value from memory may only keep one out.
    pub const fn may_permit(&self) -> bool {
        !matches!(self.evidence.how_known, HowKnown::Memory)
    }
}

/// A percentage in tenths, rounded up so that a class is never too low.
fn tenths_up(percent: f64) -> Option<Percent> {
    const STEPS_PER_PERCENT: f64 = 10.0; // not medical: the step a percentage is kept in
    const SLACK: f64 = 1e-6; // not medical: rounding of the decimal number
    let steps = (percent * STEPS_PER_PERCENT - SLACK).ceil();
    (steps.is_finite() && steps >= 0.0 && steps <= f64::from(i32::MAX)).then(|| Percent::from_steps(steps as i32))
}

/// What was measured of the three muscles a repair may involve; `None` is "not measured".
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct MuscleActivity {
    /// Supraspinatus.
    pub supraspinatus: Option<Measured>,
    /// Infraspinatus.
    pub infraspinatus: Option<Measured>,
    /// Subscapularis.
    pub subscapularis: Option<Measured>,
}

impl MuscleActivity {
    /// Whether nothing at all was measured.
    pub const fn is_unmeasured(&self) -> bool {
        self.supraspinatus.is_none() && self.infraspinatus.is_none() && self.subscapularis.is_none()
    }
}
