//! A recording with all that is known about it.

use std::fmt::Write as _;

use glam::{DVec2, DVec3};
use serde_json::{Value, json};

use crate::arm::{Limbs, Place};
use crate::exercise::{Axis, Exercise, Negative, Subject};
use crate::movement::Movement;
use crate::negative::{self, Whereabouts};
use crate::parameter::Draws;
use crate::pendulum::{Course, Figure, PendulumSet, arm_turn, beside};
use crate::person::Person;
use crate::phone::{Gravity, Phone, RateUnit, Rounding, Sample};
use crate::random::Random;
use crate::repetitions::PlannedSet;
use crate::scenario::Scenario;
use crate::scene::{Around, Elbow, Extra, Opening, Phase, Track};
use crate::signal::{STEP, angular_rate, specific_force, up};
use crate::smooth::Wander;
use crate::strap::{Grip, Strap};
use crate::truth::Truth;

mod judge;

/// What is known at the time of a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Known {
    /// Seconds, on the phone's clock.
    pub t_s: f64,
    /// The angle of the exercise, in the set and where there is one.
    pub angle_deg: Option<f64>,
    /// The direction up in the sensor's axes.
    pub up: DVec3,
}

/// An invented recording.
#[derive(Debug, Clone)]
pub struct Recording {
    /// What was asked for.
    pub scenario: Scenario,
    /// The rows.
    pub samples: Vec<Sample>,
    /// What is known at each row.
    pub known: Vec<Known>,
    /// The parts of the recording, on the phone's clock.
    pub phases: Vec<Phase>,
    /// What really happened.
    pub truth: Truth,
    /// Shoulder to the middle of the hand.
    pub arm_length_cm: f64,
    /// Where rows were lost in a run, on the phone's clock.
    pub gaps: Vec<(f64, f64)>,
    draws: Vec<(&'static str, Value)>,
}

/// What happened to the phone, and what is known of it, before it samples.
struct Happened {
    places: Vec<Place>,
    /// The angle of the exercise at every step of the set, from the set's start.
    angle: Vec<f64>,
    set: (f64, f64),
    phases: Vec<Phase>,
    truth: Truth,
    draws: Vec<(&'static str, Value)>,
}

/// Records a scenario.
pub fn record(scenario: &Scenario) -> Recording {
    let seed = scenario.seed;
    let person = Person::draw(seed);
    let mut strap_draws = Draws::new(seed, "strap");
    let mut phone_draws = Draws::new(seed, "phone");
    let phone = Phone::draw(&mut phone_draws, scenario.rate_hz, scenario.gravity, scenario.rounding, scenario.sensors);
    let strap = Strap::draw(&mut strap_draws, scenario.worn, scenario.axis, scenario.fit);
    let mut happened = match scenario.subject {
        Subject::Exercise(exercise) => exercised(scenario, exercise, &person, strap, &mut strap_draws),
        Subject::Negative(negative) => otherwise(scenario, negative, &person, &strap),
    };
    let (from, until) = happened.set;
    let gaps: Vec<(f64, f64)> = scenario
        .gaps
        .iter()
        .map(|gap| from + gap.at * (until - from))
        .zip(&scenario.gaps)
        .map(|(at, gap)| (at, at + gap.seconds))
        .collect();
    let seconds = happened.places.len() as f64 * STEP;
    let times = phone.times(&mut Random::new(seed, "times"), seconds, &gaps);
    let samples = phone.samples(
        &mut Random::new(seed, "noise"),
        &times,
        &specific_force(&happened.places),
        &angular_rate(&happened.places),
    );
    let known_at = |sample: &Sample| {
        let index = (((sample.t_s - phone.clock_s) / STEP).round().max(0.0) as usize).min(happened.places.len() - 1);
        let in_set = index.checked_sub((from / STEP).round() as usize);
        Known {
            t_s: sample.t_s,
            angle_deg: in_set.and_then(|index| happened.angle.get(index)).copied(),
            up: up(&happened.places[index]),
        }
    };
    let known = samples.iter().map(known_at).collect();
    let shift = phone.clock_s;
    happened.truth.shift(shift);
    happened.draws.extend([("strap", strap_draws.to_json()), ("phone", phone_draws.to_json())]);
    happened.draws.insert(0, ("person", person.draws.to_json()));
    Recording {
        scenario: scenario.clone(),
        samples,
        known,
        phases: happened
            .phases
            .into_iter()
            .map(|phase| Phase { from_s: phase.from_s + shift, until_s: phase.until_s + shift, ..phase })
            .collect(),
        truth: happened.truth,
        arm_length_cm: person.lengths.arm() * 100.0,
        gaps: gaps.into_iter().map(|(from, until)| (from + shift, until + shift)).collect(),
        draws: happened.draws,
    }
}

fn otherwise(scenario: &Scenario, negative: Negative, person: &Person, strap: &Strap) -> Happened {
    let (whereabouts, draws) =
        negative::scene(negative, person, scenario.worn, scenario.side, scenario.seconds, scenario.seed);
    let places = match whereabouts {
        Whereabouts::OnLimb(track) => strap.follow(&track.limb, &track.axial),
        Whereabouts::ByItself(places) => places,
    };
    Happened {
        places,
        angle: Vec::new(),
        set: (0.0, 0.0),
        phases: Vec::new(),
        truth: Truth::default(),
        draws: vec![("scene", draws.to_json())],
    }
}

/// What a set needs to be judged beside the track of the limb.
struct Performed {
    track: Track,
    set_until_s: f64,
    truth: Truth,
    course: Option<(Course, PendulumSet)>,
}

fn exercised(
    scenario: &Scenario,
    exercise: Exercise,
    person: &Person,
    mut strap: Strap,
    strap_draws: &mut Draws,
) -> Happened {
    let mut scene_draws = Draws::new(scenario.seed, "scene");
    let mut set_draws = Draws::new(scenario.seed, "set");
    let movement = Movement::draw(exercise, person, &mut set_draws);
    let prepares = movement.prepares() && scenario.elbow == Elbow::Straight;
    let around = Around::draw(&mut scene_draws, scenario.opening, scenario.ending, prepares);
    let mut performed = if exercise == Exercise::Pendulum {
        pendulum(scenario, person, &around, &mut set_draws)
    } else {
        moved(scenario, exercise, person, &movement, &around, &mut set_draws)
    };
    let set = (around.set_from_s(), performed.set_until_s);
    if scenario.grip == Grip::Slips {
        let at = strap_draws.random().uniform(0.25, 0.75);
        strap.slips(strap_draws, set.0 + at * (set.1 - set.0));
        performed.truth.slipped_deg = strap.slip.map(|slip| slip.tilt_deg);
    }
    let worn = strap.follow(&performed.track.limb, &performed.track.axial);
    let own = match scenario.axis {
        Axis::X => DVec3::X,
        Axis::Y => DVec3::Y,
        Axis::Z => DVec3::Z,
    };
    let pose_from_s = set.0.min(around.pose_end_s() - 2.0).max(0.0);
    let pose = match scenario.opening {
        Opening::Nothing => (set.0, set.0 + 0.4),
        Opening::Pose | Opening::TableAndPose => (pose_from_s, around.pose_end_s()),
    };
    let angle = judge::judge(exercise, scenario, &mut performed, set, pose, person);
    performed.truth.elevation_range_deg =
        Some(judge::inclination_range(worn.iter().map(|place| place.turn * own), set));
    let places = around.carry(&mut Random::new(scenario.seed, "carrying"), worn, set.1);
    Happened {
        places,
        angle,
        set,
        phases: around.phases(set.1),
        truth: performed.truth,
        draws: vec![("scene", scene_draws.to_json()), ("set", set_draws.to_json())],
    }
}

/// All steps up to the end of the last phase.
fn steps(around: &Around, set_until_s: f64) -> impl Iterator<Item = f64> {
    let end = around.phases(set_until_s).last().map_or(0.0, |phase| phase.until_s);
    (0..(end / STEP).round() as usize).map(|step| step as f64 * STEP)
}

fn moved(
    scenario: &Scenario,
    exercise: Exercise,
    person: &Person,
    movement: &Movement,
    around: &Around,
    draws: &mut Draws,
) -> Performed {
    let from = around.set_from_s();
    let planned = if exercise == Exercise::ShoulderRoll {
        let sign = draws.random().one_of(&[1.0, -1.0]);
        PlannedSet::rolls(person, draws.random(), from, movement.dose.repetitions, sign)
    } else {
        PlannedSet::of(person, &movement.dose, draws.random(), from)
    };
    let set_until_s = planned.way.end();
    let mut track = Track::default();
    for time in steps(around, set_until_s) {
        let value = planned.way.at(time);
        let joints = movement.joints(time, value, around.prepared(time, set_until_s));
        let limbs = Limbs::of(&joints, &person.lengths);
        let extra = Extra { axial: joints.outward, shoulder_shift: joints.shoulder_shift, value };
        track.push(limbs, scenario.worn, scenario.side, &person.lengths, extra);
    }
    let truth = Truth { planned: Some(planned.full), partial: planned.partial, ..Truth::default() };
    Performed { track, set_until_s, truth, course: None }
}

fn pendulum(scenario: &Scenario, person: &Person, around: &Around, draws: &mut Draws) -> Performed {
    let set = PendulumSet::draw(person, scenario.figure, draws, around.set_from_s());
    let random = draws.random();
    let tremor = [(); 2].map(|()| Wander::new(random, person.tremor_deg.to_radians() * 0.25, 5.0, 9.0));
    let turn = Wander::new(random, 0.03, 0.03, 0.15);
    let held = random.uniform(-0.8, 0.8);
    let seconds = steps(around, set.end_s).last().map_or(0.0, |last| last + STEP);
    let course = set.pendulum.course(seconds);
    let lateral = beside(scenario.side, -person.lengths.shoulder.y);
    let mut track = Track::default();
    for (step, (direction, shoulder)) in course.direction.iter().zip(&course.shoulder).enumerate() {
        let time = step as f64 * STEP;
        let trembling = DVec3::new(tremor[0].at(time), tremor[1].at(time), 0.0);
        let direction = (*direction + trembling).normalize();
        let arm = arm_turn(direction) * glam::DQuat::from_rotation_z(held + turn.at(time));
        let at = DVec3::new(0.35, lateral, 1.0) + *shoulder;
        let down = |by: f64| Place { at: at + direction * by, turn: arm };
        let lengths = &person.lengths;
        let limbs = Limbs {
            upper_arm: down(0.0),
            forearm: down(lengths.upper_arm),
            hand: down(lengths.upper_arm + lengths.forearm),
            grip: at + direction * lengths.arm(),
        };
        // The pendulum is told in the world's directions already, whichever arm it is.
        track.push(limbs, scenario.worn, crate::Side::Right, lengths, Extra::default());
    }
    Performed { track, set_until_s: set.end_s, truth: Truth::default(), course: Some((course, set)) }
}

impl Recording {
    /// The rows as the contract's CSV.
    pub fn csv(&self) -> String {
        let mut text = String::from(match self.scenario.rate_unit {
            RateUnit::Radians => "t_s,ax_m_s2,ay_m_s2,az_m_s2,wx_rad_s,wy_rad_s,wz_rad_s\n",
            RateUnit::Degrees => "t_s,ax_m_s2,ay_m_s2,az_m_s2,wx_deg_s,wy_deg_s,wz_deg_s\n",
        });
        for Sample { t_s, force, rate } in &self.samples {
            let _ = match self.scenario.rounding {
                Rounding::Tenths => write!(text, "{t_s:.4},{:.1},{:.1},{:.1}", force.x, force.y, force.z),
                Rounding::None => write!(text, "{t_s:.4},{:.6},{:.6},{:.6}", force.x, force.y, force.z),
            };
            let rate = match self.scenario.rate_unit {
                RateUnit::Radians => *rate,
                RateUnit::Degrees => *rate * (180.0 / std::f64::consts::PI),
            };
            let _ = writeln!(text, ",{:.7},{:.7},{:.7}", rate.x, rate.y, rate.z);
        }
        text
    }

    /// What is known at each row as CSV: the angle is empty outside the set and where there is none.
    pub fn known_csv(&self) -> String {
        let mut text = String::from("t_s,angle_deg,ux,uy,uz\n");
        for Known { t_s, angle_deg, up } in &self.known {
            let angle = angle_deg.map_or(String::new(), |angle| format!("{angle:.4}"));
            let _ = writeln!(text, "{t_s:.4},{angle},{:.6},{:.6},{:.6}", up.x, up.y, up.z);
        }
        text
    }

    /// Whether a measurement is expected from it.
    pub fn expected(&self) -> &'static str {
        match self.scenario.subject {
            Subject::Negative(_) => "no count",
            Subject::Exercise(_) if self.scenario.grip == Grip::Slips || !self.gaps.is_empty() => "usable or not",
            Subject::Exercise(_) => "usable",
        }
    }

    /// The truth file.
    pub fn truth_json(&self) -> Value {
        let scenario = &self.scenario;
        let figure = match scenario.figure {
            Figure::Circles(_) => "circles",
            Figure::BothWays(_) => "both ways",
            Figure::Ellipses(_) => "ellipses",
            Figure::Swings => "swings",
        };
        let is_pendulum = scenario.subject == Subject::Exercise(Exercise::Pendulum);
        let phase = |phase: &Phase| json!({"name": phase.name, "from_s": phase.from_s, "until_s": phase.until_s});
        json!({
            "schema": "mendarc.invented-recording/1",
            "invented": true,
            "note": "invented data: no person, no phone and no patient stands behind it",
            "seed": scenario.seed,
            "subject": scenario.subject.word(),
            "is_exercise": matches!(scenario.subject, Subject::Exercise(_)),
            "figure": is_pendulum.then_some(figure),
            "side": scenario.side.word(),
            "worn": scenario.worn.word(),
            "axis": scenario.axis.word(),
            "elbow_in_pose": match scenario.elbow { Elbow::Bent => "bent", Elbow::Straight => "straight" },
            "arm_length_cm": self.arm_length_cm,
            "rate_hz": scenario.rate_hz,
            "gravity": match scenario.gravity { Gravity::Specified => "specified", Gravity::Opposite => "opposite" },
            "rounding": match scenario.rounding { Rounding::Tenths => "tenths", Rounding::None => "none" },
            "phases": self.phases.iter().map(phase).collect::<Vec<_>>(),
            "gaps": self.gaps.iter().map(|(from, until)| json!([from, until])).collect::<Vec<_>>(),
            "expected": self.expected(),
            "truth": self.truth.to_json(),
            "parameters": self.draws.iter().map(|(name, drawn)| ((*name).to_owned(), drawn.clone())).collect::<serde_json::Map<_, _>>(),
        })
    }
}

/// The mean of a path over one period around each step.
fn running_mean(path: &[DVec2], half: usize) -> Vec<DVec2> {
    let mut sums = vec![DVec2::ZERO];
    for point in path {
        sums.push(sums[sums.len() - 1] + *point);
    }
    (0..path.len())
        .map(|index| {
            // The same length on both sides, or a path that begins at its rim would have a middle beside it.
            let half = half.min(index).min(path.len() - 1 - index);
            (sums[index + half + 1] - sums[index - half]) / (2 * half + 1) as f64
        })
        .collect()
}
