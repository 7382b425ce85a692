//! A set as somebody performs it: uneven, tiring, with holds, with some repetitions that are none.

use crate::parameter::{Parameter, own};
use crate::person::Person;
use crate::random::Random;
use crate::smooth::Ways;

/// A planned set: the way of one joint, from 0 at the start toward the peak and back.
#[derive(Debug, Clone, PartialEq)]
pub struct PlannedSet {
    /// The way, in the unit of the peak.
    pub way: Ways,
    /// Repetitions that count.
    pub full: usize,
    /// Those that do not reach far enough to count.
    pub partial: usize,
}

/// How a set is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dose {
    /// Repetitions that count.
    pub repetitions: usize,
    /// The peak that is aimed at, in the unit of the way.
    pub peak: f64,
    /// Seconds at the peak.
    pub hold_s: f64,
    /// Fewest seconds from start to peak, so that nobody whips the arm about.
    pub least_out_s: f64,
    /// How far goes what must not count, against usual: a partial repetition, and a return that is not whole.
    pub shallow: f64,
}

/// What may go wrong in one repetition.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Turn {
    Plain,
    /// Stops on the way up for a moment.
    Hesitates(f64),
    /// Sinks from the peak and goes up again, still one repetition.
    Sinks(f64),
}

/// Durations of the holds that patients are asked for.
pub const HOLD: Parameter = own("hold_asked", "s", 0.0, 6.0);
const PARTIAL: f64 = 0.06;
const HESITATES: f64 = 0.06;
const SINKS: f64 = 0.06;
// A counted repetition reaches half of the median peak: what is partial stays clear of the border, and so does the
// most tired full one. All own choice.
const PARTIAL_SHARE: (f64, f64) = (0.12, 0.36);
const SINKS_TO: (f64, f64) = (0.62, 0.8);
const RETURNS_TO: (f64, f64) = (-0.03, 0.1);

impl PlannedSet {
    /// Somebody's set, beginning at a time.
    pub fn of(person: &Person, dose: &Dose, random: &mut Random, from: f64) -> Self {
        let mut set = Self { way: Ways::from(from, 0.0), full: 0, partial: 0 };
        set.way.stay(random.uniform(0.6, 2.0));
        while set.full < dose.repetitions {
            let tired = set.full as f64 / dose.repetitions.max(1) as f64;
            if set.full > 1 && random.happens(PARTIAL) {
                let share = random.uniform(PARTIAL_SHARE.0, PARTIAL_SHARE.1) * dose.shallow;
                set.repeat(person, dose, random, (share, tired), Turn::Plain);
                set.partial += 1;
            }
            let turn = match random.uniform(0.0, 1.0) {
                chance if chance < HESITATES => Turn::Hesitates(random.uniform(0.35, 0.7)),
                chance if chance < HESITATES + SINKS => Turn::Sinks(random.uniform(SINKS_TO.0, SINKS_TO.1)),
                _ => Turn::Plain,
            };
            let uneven = (1.0 + person.unevenness * random.normal().clamp(-2.0, 2.0)).max(0.8);
            set.repeat(person, dose, random, (uneven * (1.0 - person.fatigue * tired * tired), tired), turn);
            set.full += 1;
        }
        set.way.to(0.0, 0.8);
        set.way.stay(random.uniform(0.5, 1.5));
        set
    }

    /// Circles of the shoulders, in turns: a few in one go, then a pause.
    pub fn rolls(person: &Person, random: &mut Random, from: f64, wanted: usize, sign: f64) -> Self {
        let mut set = Self { way: Ways::from(from, 0.0), full: 0, partial: 0 };
        set.way.stay(random.uniform(0.6, 2.0));
        while set.full < wanted {
            let many = random.whole(1, 3.min(wanted - set.full));
            set.full += many;
            let seconds = many as f64 * (person.outward_s * (1.0 + person.back_ratio)).clamp(2.0, 5.0);
            set.way.to(sign * set.full as f64, seconds * (1.0 + 0.1 * random.normal().clamp(-2.0, 2.0)));
            set.way.stay(random.uniform(0.1, 1.0));
        }
        set.way.stay(0.5);
        set
    }

    fn repeat(&mut self, person: &Person, dose: &Dose, random: &mut Random, (share, tired): (f64, f64), turn: Turn) {
        let uneven = |random: &mut Random| 1.0 + person.unevenness * random.normal().clamp(-2.5, 2.5);
        let peak = dose.peak * share;
        // A shorter way takes less time, but not in proportion.
        let pace = (1.0 + 0.25 * tired) * share.min(1.0).sqrt();
        let out = (person.outward_s * uneven(random)).max(dose.least_out_s) * pace;
        match turn {
            Turn::Hesitates(at) => {
                self.way.to(peak * at, out * 0.6);
                self.way.stay(random.uniform(0.15, 0.5));
                self.way.to(peak, out * 0.6);
            }
            Turn::Plain | Turn::Sinks(_) => self.way.to(peak, out),
        }
        if let Turn::Sinks(to) = turn {
            self.way.stay(0.2);
            self.way.to(peak * to, out * 0.5);
            self.way.to(peak * 0.98, out * 0.5);
        }
        if dose.hold_s > 0.3 && share > 0.5 {
            let sag = random.uniform(0.0, 0.02) * peak;
            self.way.to(peak - sag, dose.hold_s * uneven(random));
        } else {
            self.way.stay(random.uniform(0.0, 0.25));
        }
        self.way.to(
            dose.peak * dose.shallow * random.uniform(RETURNS_TO.0, RETURNS_TO.1),
            out * person.back_ratio * uneven(random),
        );
        self.way.stay(random.uniform(0.1, 1.4));
    }
}
