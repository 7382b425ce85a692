//! What is no exercise: standing, walking, a table, a meal, a look at the phone, a bus.

use std::f64::consts::{FRAC_PI_2, TAU};

use glam::{DQuat, DVec3};

use crate::arm::{Joints, Limbs, Place};
use crate::exercise::{Negative, Side, Worn};
use crate::parameter::{Draws, own};
use crate::person::Person;
use crate::scene::{Carrying, Extra, Track, lying};
use crate::signal::STEP;
use crate::smooth::{Wander, Ways, minimum_jerk};

/// Where the phone is: on a limb, or by itself.
#[derive(Debug, Clone)]
pub enum Whereabouts {
    /// Strapped to a limb.
    OnLimb(Track),
    /// Lying or held.
    ByItself(Vec<Place>),
}

/// Somebody does something else for some seconds.
pub fn scene(
    negative: Negative,
    person: &Person,
    worn: Worn,
    side: Side,
    seconds: f64,
    seed: u64,
) -> (Whereabouts, Draws) {
    let mut draws = Draws::new(seed, negative.word());
    let whereabouts = match negative {
        Negative::Standing => Whereabouts::OnLimb(standing(person, worn, side, seconds, &mut draws)),
        Negative::Walking => Whereabouts::OnLimb(walking(person, worn, side, seconds, &mut draws)),
        Negative::Eating => Whereabouts::OnLimb(eating(person, worn, side, seconds, &mut draws)),
        Negative::RidingBus => Whereabouts::OnLimb(riding_bus(person, worn, side, seconds, &mut draws)),
        Negative::OnTable => Whereabouts::ByItself(on_table(seconds, &mut draws)),
        Negative::PickingUp => Whereabouts::ByItself(picking_up(seconds, &mut draws)),
    };
    (whereabouts, draws)
}

fn steps(seconds: f64) -> impl Iterator<Item = f64> {
    (0..(seconds / STEP).round() as usize).map(|step| step as f64 * STEP)
}

fn track(person: &Person, worn: Worn, side: Side, seconds: f64, joints: impl Fn(f64) -> Joints) -> Track {
    let mut track = Track::default();
    for time in steps(seconds) {
        let joints = joints(time);
        let limbs = Limbs::of(&joints, &person.lengths);
        track.push(limbs, worn, side, &person.lengths, Extra { axial: joints.outward, ..Extra::default() });
    }
    track
}

fn standing(person: &Person, worn: Worn, side: Side, seconds: f64, draws: &mut Draws) -> Track {
    let shift = draws.draw(&own("shift_of_weight_rms", "m", 0.005, 0.03));
    let arm = draws.draw(&own("hanging_arm_wanders_rms", "deg", 0.3, 2.5)).to_radians();
    let sway = person.sway_deg.to_radians();
    let random = draws.random();
    let sway = [(); 3].map(|()| Wander::new(random, sway, 0.08, 0.4));
    let weight = [(); 2].map(|()| Wander::new(random, shift, 0.02, 0.15));
    let hang = [(); 3].map(|()| Wander::new(random, arm, 0.03, 0.25));
    let base = Joints::standing(&person.lengths);
    track(person, worn, side, seconds, |time| Joints {
        hips: base.hips + DVec3::new(weight[0].at(time), weight[1].at(time), 0.0),
        trunk: DQuat::from_scaled_axis(DVec3::from_array([0, 1, 2].map(|axis: usize| sway[axis].at(time)))),
        plane: FRAC_PI_2,
        elevation: 0.05 + hang[0].at(time),
        outward: hang[1].at(time) * 2.0,
        elbow: 0.15 + hang[2].at(time),
        ..base
    })
}

fn walking(person: &Person, worn: Worn, side: Side, seconds: f64, draws: &mut Draws) -> Track {
    let cadence = draws.draw(&own("steps_a_second", "Hz", 1.5, 2.1));
    let speed = draws.draw(&own("walking_speed", "m/s", 0.7, 1.5));
    let bounce = draws.draw(&own("rise_of_trunk", "m", 0.012, 0.025));
    let arm = draws.draw(&own("arm_swing", "deg", 4.0, 18.0)).to_radians();
    let elbow = draws.draw(&own("elbow_while_walking", "deg", 10.0, 40.0)).to_radians();
    let phase = draws.random().uniform(0.0, TAU);
    let random = draws.random();
    let [wander, pace, limp] = [(0.35, 0.01, 0.08), (0.25, 0.03, 0.15), (0.2, 0.05, 0.3)]
        .map(|(size, low, high)| Wander::new(random, size, low, high));
    let base = Joints::standing(&person.lengths);
    let mut at = DVec3::ZERO;
    let ways: Vec<DVec3> = steps(seconds)
        .map(|time| {
            let heading = wander.at(time) * 2.0;
            // Stands for a second, then gets going.
            at += DVec3::new(heading.cos(), heading.sin(), 0.0) * speed * minimum_jerk((time - 1.0) / 2.0) * STEP;
            at
        })
        .collect();
    track(person, worn, side, seconds, |time| {
        let going = minimum_jerk((time - 1.0) / 2.0);
        let step = TAU * cadence * time + pace.at(time) * 2.0 + phase;
        let along = (1.0 + limp.at(time)) * going;
        let heel: f64 =
            [(2.0, 0.25), (3.0, 0.1), (4.0, 0.04)].iter().map(|(many, part)| part * (many * step + many).cos()).sum();
        let swing = (step / 2.0).sin();
        let up = bounce * along * (step.cos() + heel);
        let aside = 0.02 * going * (step / 2.0).cos();
        let heading = DQuat::from_rotation_z(wander.at(time) * 2.0 + 0.06 * going * swing);
        let place = ways[((time / STEP).round() as usize).min(ways.len() - 1)];
        Joints {
            hips: base.hips + place + heading * DVec3::new(0.0, aside, up),
            trunk: heading * DQuat::from_rotation_y(0.05 + 0.02 * going * step.cos()),
            plane: FRAC_PI_2,
            elevation: 0.05 + arm * along * swing,
            elbow: elbow * (1.0 + 0.2 * along * swing),
            ..base
        }
    })
}

fn eating(person: &Person, worn: Worn, side: Side, seconds: f64, draws: &mut Draws) -> Track {
    let every = draws.draw(&own("time_between_bites", "s", 3.0, 9.0));
    let lift = draws.draw(&own("upper_arm_lifts_for_a_bite", "deg", 8.0, 30.0)).to_radians();
    let bend = draws.draw(&own("elbow_bends_for_a_bite", "deg", 35.0, 60.0)).to_radians();
    let random = draws.random();
    let mut way = Ways::from(0.0, 0.0);
    while way.end() < seconds {
        way.stay(every * random.uniform(0.2, 1.8));
        let reach = random.uniform(0.7, 1.05);
        way.to(reach, random.uniform(0.7, 1.4));
        way.to(reach * random.uniform(0.92, 1.0), random.uniform(0.3, 1.2));
        way.to(random.uniform(0.0, 0.15), random.uniform(0.7, 1.6));
    }
    // Cutting and stirring, now and then.
    let [cut, stir, when, turn] = [(0.07, 0.8, 2.5), (0.06, 0.5, 2.0), (1.0, 0.02, 0.08), (0.25, 0.1, 0.6)]
        .map(|(size, low, high)| Wander::new(random, size, low, high));
    let base = Joints::standing(&person.lengths);
    track(person, worn, side, seconds, |time| {
        let bite = way.at(time);
        let busy = (1.0 - bite.clamp(0.0, 1.0)) * minimum_jerk(0.5 + when.at(time));
        Joints {
            hips: DVec3::new(0.0, 0.0, 0.55),
            trunk: DQuat::from_rotation_y(0.12 + 0.08 * bite),
            plane: 1.0,
            elevation: 0.35 + lift * bite + cut.at(time) * busy,
            outward: -0.4 + 0.1 * turn.at(time),
            elbow: 1.35 + bend * bite + stir.at(time) * busy,
            forearm: 0.5 - 0.9 * bite + turn.at(time),
            ..base
        }
    })
}

fn riding_bus(person: &Person, worn: Worn, side: Side, seconds: f64, draws: &mut Draws) -> Track {
    let brake = draws.draw(&own("bus_acceleration_rms", "m/s2", 0.3, 0.9));
    let rumble = draws.draw(&own("bus_vibration_rms", "m/s2", 0.1, 0.5));
    let random = draws.random();
    // An acceleration of this size at a frequency needs a way of its size over the frequency squared.
    let way = |acceleration: f64, hertz: f64| acceleration / (TAU * hertz).powi(2);
    let [ahead, aside] = [brake, brake * 0.6].map(|size| Wander::new(random, way(size, 0.12), 0.07, 0.16));
    let [bounce, shake] = [(2.5, 1.2, 3.5), (14.0, 10.0, 18.0)]
        .map(|(hertz, low, high)| Wander::new(random, way(rumble, hertz), low, high));
    let [pitch, turn, fidget] = [(0.01, 0.3, 1.5), (0.4, 0.01, 0.06), (0.03, 0.03, 0.25)]
        .map(|(size, low, high)| Wander::new(random, size, low, high));
    let base = Joints::standing(&person.lengths);
    track(person, worn, side, seconds, |time| {
        let bus = DQuat::from_rotation_z(turn.at(time)) * DQuat::from_rotation_y(pitch.at(time));
        let moved = DVec3::new(ahead.at(time), aside.at(time), bounce.at(time) + shake.at(time));
        Joints {
            hips: moved + DVec3::new(0.0, 0.0, 0.5),
            trunk: bus,
            plane: 1.3,
            elevation: 0.3 + fidget.at(time),
            outward: -0.5 + fidget.at(time + 40.0),
            elbow: 1.3 + fidget.at(time + 80.0),
            ..base
        }
    })
}

fn on_table(seconds: f64, draws: &mut Draws) -> Vec<Place> {
    let table = lying(draws);
    let every = draws.draw(&own("time_between_bumps", "s", 5.0, 40.0));
    let random = draws.random();
    let mut bumps = Vec::new();
    let mut next = every * random.uniform(0.2, 1.0);
    while next < seconds {
        bumps.push((next, random.direction() * random.uniform(0.000_05, 0.000_4)));
        next += every * random.uniform(0.3, 1.7);
    }
    steps(seconds)
        .map(|time| {
            // Each bump rings at 12 Hz and is gone in half a second.
            let ring: DVec3 = bumps
                .iter()
                .filter(|(from, _)| (*from..from + 1.0).contains(&time))
                .map(|(from, size)| {
                    let since = time - from;
                    *size * minimum_jerk(since / 0.02) * (-since * 10.0).exp() * (TAU * 12.0 * since).sin()
                })
                .sum();
            Place { at: table.at + ring, turn: table.turn * DQuat::from_scaled_axis(ring * 3.0) }
        })
        .collect()
}

fn picking_up(seconds: f64, draws: &mut Draws) -> Vec<Place> {
    let table = lying(draws);
    let read_for = draws.draw(&own("time_of_looking", "s", 4.0, 20.0));
    let lie_for = draws.draw(&own("time_lying_between", "s", 2.0, 15.0));
    let random = draws.random();
    let hold = [(); 3].map(|()| Wander::new(random, 0.06, 0.1, 1.2));
    let shake = [(); 3].map(|()| Wander::new(random, 0.006, 0.2, 4.0));
    let mut looks = Vec::new();
    let mut next = lie_for * random.uniform(0.3, 1.0);
    while next < seconds {
        let length = 2.4 + read_for * random.uniform(0.4, 1.6);
        let tilt = random.uniform(0.5, 1.1);
        looks.push((next, next + length, tilt, Carrying::draw(random, 1.2), Carrying::draw(random, 1.2)));
        next += length + lie_for * random.uniform(0.4, 1.6);
    }
    let vector = |wanders: &[Wander; 3], time| DVec3::from_array([0, 1, 2].map(|axis: usize| wanders[axis].at(time)));
    steps(seconds)
        .map(|time| {
            let Some((from, until, tilt, up, down)) = looks.iter().find(|look| (look.0..look.1).contains(&time)) else {
                return table;
            };
            let read = Place { at: DVec3::new(0.3, 0.0, 1.1), turn: table.turn * DQuat::from_rotation_x(*tilt) };
            let now = Place {
                at: read.at + vector(&shake, time),
                turn: read.turn * DQuat::from_scaled_axis(vector(&hold, time)),
            };
            let middle = (from + until) / 2.0;
            if time < middle {
                up.between(table, read, now, time - from)
            } else {
                down.between(table, read, now, until - time)
            }
        })
        .collect()
}
