//! Limits as sentences: what a patient may do, and what not.

use body::{Joint, Key, Mode, Movement};
use plan::{Allowed, Bound};
use wording::{Argument, Messages};

use crate::household;
use crate::parts::Period;

/// One sentence, and what it says of the limits.
#[derive(Debug, Clone, PartialEq)]
pub struct Point {
    /// The sentence.
    pub text: String,
    /// What it claims: of a thing that may be done, how far; of a thing that may not, `No`.
    pub claims: Vec<(Key, Allowed)>,
}

/// What may be done and what not in a period.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Points {
    /// What may be done.
    pub may: Vec<Point>,
    /// What may not.
    pub not: Vec<Point>,
}

/// Whether the other arm can help the operated one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OtherArm {
    /// It is sound.
    Helps,
    /// It is painful, operated, or not known: somebody else has to help.
    Rests,
}

impl OtherArm {
    /// What the texts ask for.
    pub(crate) const fn word(self) -> &'static str {
        match self {
            Self::Helps => "helps",
            Self::Rests => "rests",
        }
    }
}

/// Movements of the shoulder that a patient knows by one word.
struct Way {
    /// The middle of its message ids.
    word: &'static str,
    movements: &'static [Movement],
}

const RAISE: Way = Way { word: "raise", movements: &[Movement::ForwardElevation, Movement::ScapularPlaneElevation] };
/// The two planes of raising the arm, where they differ.
const RAISE_AHEAD: Way = Way { word: "raise-ahead", movements: &[Movement::ForwardElevation] };
const RAISE_OUT: Way = Way { word: "raise-out", movements: &[Movement::ScapularPlaneElevation] };
const TURN_OUT: Way = Way { word: "turn-out", movements: &[Movement::ExternalRotation] };
/// The less common ways.
const OTHER_WAYS: &[Way] = &[
    Way { word: "side", movements: &[Movement::Abduction] },
    Way { word: "across", movements: &[Movement::HorizontalAdduction] },
    Way { word: "turn-in", movements: &[Movement::InternalRotation] },
    Way { word: "back", movements: &[Movement::Extension] },
    Way { word: "behind-back", movements: &[Movement::HandBehindBack] },
];
/// Out to the side and turned out together.
const BEHIND_HEAD: Way = Way { word: "behind-head", movements: &[Movement::AbductionWithExternalRotation] };

/// Who or what moves the arm, the gentlest first.
const MOVED: [Mode; 3] = [Mode::Passive, Mode::ActiveAssisted, Mode::Active];

impl Points {
    /// The sentences of a period.
    pub fn of(period: &Period<'_>, messages: &Messages, other: OtherArm) -> Self {
        let mut writer = Writer { period, messages, other, points: Self::default() };
        writer.shoulder();
        writer.effort_and_loads();
        writer.below_the_shoulder();
        writer.points
    }

    /// The sentences that are new or gone against an earlier period: new things one may do, new things one may not.
    pub fn against(&self, before: &Self) -> Self {
        let fresh = |now: &[Point], before: &[Point]| {
            now.iter().filter(|point| !before.iter().any(|old| old.text == point.text)).cloned().collect()
        };
        Self { may: fresh(&self.may, &before.may), not: fresh(&self.not, &before.not) }
    }
}

struct Writer<'w> {
    period: &'w Period<'w>,
    messages: &'w Messages,
    other: OtherArm,
    points: Points,
}

impl Writer<'_> {
    fn lowest(&self, way: &Way, mode: Mode) -> Allowed {
        self.keys(way, mode).iter().map(|key| self.period.allowed(*key)).min().unwrap_or(Allowed::No)
    }

    fn keys(&self, way: &Way, mode: Mode) -> Vec<Key> {
        way.movements.iter().map(|&movement| Key::any(Joint::Shoulder, movement, mode)).collect()
    }

    /// The way in the mode that asks most of the arm, and what it allows.
    fn most(&self, way: &Way) -> Option<(Mode, Allowed)> {
        MOVED.iter().rev().map(|&mode| (mode, self.lowest(way, mode))).find(|(_, allowed)| *allowed != Allowed::No)
    }

    fn is_closed(&self, way: &Way) -> bool {
        self.most(way).is_none()
    }

    fn is_all_free(&self, way: &Way) -> bool {
        self.most(way) == Some((Mode::Active, Allowed::Free))
    }

    fn shoulder(&mut self) {
        let every = || [&RAISE, &TURN_OUT].into_iter().chain(OTHER_WAYS);
        if every().chain([&BEHIND_HEAD]).all(|way| self.is_closed(way)) {
            let keys: Vec<Key> = every().flat_map(|way| self.closed(way)).collect();
            return self.not("shoulder", &keys);
        }
        if every().all(|way| self.is_all_free(way)) {
            let claims = every().flat_map(|way| self.keys(way, Mode::Active)).map(|key| (key, Allowed::Free)).collect();
            self.may("all-ways", &[], claims);
        } else {
            if self.planes_differ() {
                for way in [&RAISE_AHEAD, &RAISE_OUT, &TURN_OUT] {
                    self.way(way);
                    self.not_by_own_strength(way);
                }
            } else {
                self.way(&RAISE);
                self.way(&TURN_OUT);
                self.own_strength();
            }
            if OTHER_WAYS.iter().all(|way| self.is_closed(way)) {
                let keys: Vec<Key> = OTHER_WAYS.iter().flat_map(|way| self.closed(way)).collect();
                self.not("other-ways", &keys);
            } else {
                for way in OTHER_WAYS {
                    self.way(way);
                    self.not_by_own_strength(way);
                }
            }
        }
        self.way(&BEHIND_HEAD);
        self.not_by_own_strength(&BEHIND_HEAD);
    }

    /// Whether one plane of raising the arm is open further than the other.
    fn planes_differ(&self) -> bool {
        MOVED.iter().any(|&mode| self.lowest(&RAISE_AHEAD, mode) != self.lowest(&RAISE_OUT, mode))
    }

    /// What may be done one way, or that it may not be done at all.
    fn way(&mut self, way: &Way) {
        let Some((mode, allowed)) = self.most(way) else {
            let keys = self.closed(way);
            return self.not(way.word, &keys);
        };
        // What moves the arm may take it further than its own strength.
        let gentler = MOVED.iter().take_while(|&&gentler| gentler != mode);
        let further = gentler.map(|&gentler| (gentler, self.lowest(way, gentler))).find(|(_, more)| *more > allowed);
        for (mode, allowed) in further.into_iter().chain([(mode, allowed)]) {
            self.may_move(way, mode, allowed);
        }
    }

    fn may_move(&mut self, way: &Way, mode: Mode, allowed: Allowed) {
        let keys = self.keys(way, mode);
        let lying = keys.iter().any(|&key| self.period.only_lying(key));
        let mode_word = match mode {
            Mode::Passive => "carried",
            Mode::ActiveAssisted => "helped",
            _ => "alone",
        };
        let mut told: Vec<(&str, Argument<'_>)> =
            vec![("mode", mode_word.into()), ("lying", if lying { "yes" } else { "no" }.into())];
        match allowed {
            Allowed::UpTo(Bound::Angle(angle)) => {
                let landmark = if way.word == TURN_OUT.word {
                    household::forearm_direction(angle)
                } else {
                    household::hand_height(angle)
                };
                told.extend([
                    ("bound", "degrees".into()),
                    ("degrees", household::decimal(&angle.to_string(), self.messages.language()).into()),
                    ("landmark", landmark.into()),
                ]);
            }
            _ => told.push(("bound", "free".into())),
        }
        let claims = keys.into_iter().map(|key| (key, allowed)).collect();
        self.may(way.word, &told, claims);
    }

    /// Raising and turning out by the arm's own strength, in one sentence where both are closed.
    fn own_strength(&mut self) {
        let closed = |way: &Way| !self.is_closed(way) && self.lowest(way, Mode::Active) == Allowed::No;
        if closed(&RAISE) && closed(&TURN_OUT) {
            let keys: Vec<Key> = [&RAISE, &TURN_OUT].into_iter().flat_map(|way| self.keys(way, Mode::Active)).collect();
            self.not("own-strength", &keys);
        } else {
            self.not_by_own_strength(&RAISE);
            self.not_by_own_strength(&TURN_OUT);
        }
    }

    fn not_by_own_strength(&mut self, way: &Way) {
        if !self.is_closed(way) && self.lowest(way, Mode::Active) == Allowed::No {
            let keys = self.keys(way, Mode::Active);
            self.not(&format!("{}-alone", way.word), &keys);
        }
    }

    /// The keys of a way that is closed in every mode in which something moves the arm.
    fn closed(&self, way: &Way) -> Vec<Key> {
        MOVED.iter().flat_map(|&mode| self.keys(way, mode)).collect()
    }

    fn effort_and_loads(&mut self) {
        let moves = self.lowest(&RAISE, Mode::Passive) != Allowed::No;
        let moves_alone = self.lowest(&RAISE, Mode::Active) != Allowed::No;
        let every = || [&RAISE, &TURN_OUT, &BEHIND_HEAD].into_iter().chain(OTHER_WAYS);
        let stretch: Vec<Key> = every().flat_map(|way| self.keys(way, Mode::EndRangeStretch)).collect();
        if stretch.iter().all(|&key| self.period.allowed(key) == Allowed::Free) {
            self.may("stretch", &[], stretch.iter().map(|&key| (key, Allowed::Free)).collect());
        } else if moves && stretch.iter().all(|&key| self.period.allowed(key) == Allowed::No) {
            self.not("stretch", &stretch);
        }
        let press: Vec<Key> = [&RAISE, &TURN_OUT].into_iter().flat_map(|way| self.keys(way, Mode::Isometric)).collect();
        let pressing = press.iter().map(|&key| self.period.allowed(key)).min().unwrap_or(Allowed::No);
        let bands: Vec<Key> = [&RAISE, &TURN_OUT].into_iter().flat_map(|way| self.keys(way, Mode::Resisted)).collect();
        let banded = bands.iter().map(|&key| self.period.allowed(key)).min().unwrap_or(Allowed::No);
        if banded != Allowed::No {
            self.may("bands", &[], bands.iter().map(|&key| (key, banded)).collect());
        } else if moves_alone {
            self.not("bands", &bands);
        }
        if let Allowed::UpTo(Bound::Effort(percent)) = pressing {
            let told = [("effort", household::effort(pressing).into()), ("percent", percent.to_string().into())];
            self.may("press", &told, press.iter().map(|&key| (key, pressing)).collect());
        }
        self.load("hold", Movement::HandLoad);
        if self.period.allowed(whole_arm(Movement::HandLoad)) != Allowed::No {
            self.load("overhead", Movement::OverheadLoad);
        }
        self.load("lean", Movement::WeightThroughTheArm);
    }

    fn load(&mut self, word: &'static str, movement: Movement) {
        let key = whole_arm(movement);
        let allowed = self.period.allowed(key);
        match allowed {
            Allowed::No => self.not(word, &[key]),
            Allowed::UpTo(Bound::Load(load)) => {
                let mut told = vec![("bound", Argument::from("load"))];
                told.extend(household::load(load, self.messages.language()));
                self.may(word, &told, vec![(key, allowed)]);
            }
            _ => self.may(word, &[("bound", "free".into())], vec![(key, allowed)]),
        }
    }

    fn below_the_shoulder(&mut self) {
        let elbow = |movement, mode| Key::any(Joint::Elbow, movement, mode);
        let forearm = |movement, mode| Key::any(Joint::Forearm, movement, mode);
        let all_free = |keys: &[Key]| keys.iter().all(|&key| self.period.allowed(key) == Allowed::Free);
        let all_closed = |keys: &[Key]| keys.iter().all(|&key| self.period.allowed(key) == Allowed::No);
        let of = |mode| [elbow(Movement::Flexion, mode), elbow(Movement::Extension, mode)];
        let palm = |mode| [forearm(Movement::Supination, mode), forearm(Movement::Pronation, mode)];
        let small: Vec<Key> = [Joint::Wrist, Joint::Hand]
            .into_iter()
            .flat_map(|joint| {
                [Movement::Flexion, Movement::Extension].map(|movement| Key::any(joint, movement, Mode::Active))
            })
            .collect();
        let free = |keys: &[Key]| keys.iter().map(|&key| (key, Allowed::Free)).collect::<Vec<_>>();
        let mut may: Vec<(&str, Vec<(Key, Allowed)>)> = Vec::new();
        let mut not: Vec<(&str, Vec<Key>)> = Vec::new();
        let (elbow_alone, palm_alone) = (of(Mode::Active), palm(Mode::Active));
        let every: Vec<Key> = small.iter().chain(&elbow_alone).chain(&palm_alone).copied().collect();
        if all_free(&every) {
            may.push(("arm-below", free(&every)));
        } else {
            if all_free(&small) {
                may.push(("hand", free(&small)));
            }
            if all_free(&elbow_alone) {
                may.push(("elbow", free(&elbow_alone)));
            } else if all_free(&of(Mode::Passive)) {
                may.push(("elbow-carried", free(&of(Mode::Passive))));
            }
            if all_closed(&[elbow(Movement::Flexion, Mode::Active)]) {
                not.push(("elbow-alone", vec![elbow(Movement::Flexion, Mode::Active)]));
            }
            if all_free(&palm_alone) {
                may.push(("palm", free(&palm_alone)));
            } else if all_closed(&[forearm(Movement::Supination, Mode::Active)]) {
                not.push(("palm-alone", vec![forearm(Movement::Supination, Mode::Active)]));
            }
        }
        let straight = elbow(Movement::Extension, Mode::EndRangeStretch);
        if all_closed(&[straight]) {
            not.push(("elbow-straight", vec![straight]));
        }
        let blade: Vec<Key> = [Movement::Shrug, Movement::Roll, Movement::Squeeze]
            .into_iter()
            .map(|movement| Key::any(Joint::Scapula, movement, Mode::Active))
            .collect();
        if all_closed(&blade) {
            not.push(("blade", blade));
        } else if all_free(&blade) {
            may.push(("blade", free(&blade)));
        }
        for (word, claims) in may {
            self.may(word, &[], claims);
        }
        for (word, keys) in not {
            self.not(word, &keys);
        }
    }

    fn may(&mut self, word: &str, told: &[(&str, Argument<'_>)], claims: Vec<(Key, Allowed)>) {
        let all: Vec<(&str, Argument<'_>)> =
            told.iter().cloned().chain([("other", self.other.word().into())]).collect();
        let text = self.messages.text(&format!("handout-may-{word}"), &all);
        self.points.may.push(Point { text, claims });
    }

    fn not(&mut self, word: &str, keys: &[Key]) {
        let text = self.messages.text(&format!("handout-not-{word}"), &[]);
        self.points.not.push(Point { text, claims: keys.iter().map(|&key| (key, Allowed::No)).collect() });
    }
}

const fn whole_arm(movement: Movement) -> Key {
    Key::any(Joint::WholeArm, movement, Mode::Resisted)
}
