//! From what the limb did to what is true of the set.

use glam::{DVec2, DVec3};

use super::{Performed, running_mean};
use crate::exercise::Exercise;
use crate::pendulum::Figure;
use crate::person::Person;
use crate::scenario::Scenario;
use crate::signal::STEP;
use crate::smooth::low_pass;
use crate::truth::{Truth, counted, cycles, longest_hold, percentile_95, revolutions};

/// Border of the low-pass of the contract's definitions, hertz.
const LOW_PASS: f64 = 3.0;

fn part<T>(values: &[T], (from, until): (f64, f64)) -> &[T] {
    let index = |time: f64| ((time / STEP).round().max(0.0) as usize).min(values.len());
    &values[index(from)..index(until)]
}

/// Fills the truth; gives the angle at every step of the set, where the exercise has one.
pub(super) fn judge(
    exercise: Exercise,
    scenario: &Scenario,
    performed: &mut Performed,
    set: (f64, f64),
    pose: (f64, f64),
    person: &Person,
) -> Vec<f64> {
    let directions: Vec<DVec3> = performed.track.limb.iter().map(|place| place.turn * DVec3::NEG_Z).collect();
    performed.truth.limb_elevation_range_deg = Some(inclination_range(directions.iter().copied(), set));
    match exercise {
        Exercise::Pendulum => {
            swung(scenario, performed, set, person);
            let down = |direction: &DVec3| direction.angle_between(DVec3::NEG_Z).to_degrees();
            return part(&directions, set).iter().map(down).collect();
        }
        Exercise::ShoulderRoll => {
            rolled(performed, set);
            return Vec::new();
        }
        Exercise::Shrug => {
            let height: Vec<f64> = part(&performed.track.shoulder_shift, set).iter().map(|shift| shift.z).collect();
            let spans = counted(&low_pass(&height, STEP, LOW_PASS), set.0, STEP);
            performed.truth.repetitions = spans.len();
            performed.truth.spans = spans;
            return Vec::new();
        }
        _ => {}
    }
    let held = part(&directions, pose).iter().sum::<DVec3>().normalize();
    let moved = part(&directions, set);
    let angle = match exercise {
        Exercise::StickExternalRotation | Exercise::SupineElevation => planar(held, moved),
        Exercise::InternalRotation | Exercise::ExternalRotation => headings(moved),
        _ => moved.iter().map(|direction| direction.angle_between(held).to_degrees()).collect(),
    };
    take_angle(&mut performed.truth, &angle, set.0);
    angle
}

fn take_angle(truth: &mut Truth, angle: &[f64], start_s: f64) {
    let smooth = low_pass(angle, STEP, LOW_PASS);
    let spans = counted(&smooth, start_s, STEP);
    let at = |time: f64| smooth[(((time - start_s) / STEP).round() as usize).min(smooth.len() - 1)];
    truth.peaks_deg = Some(spans.iter().map(|span| at(span.peak_s)).collect());
    truth.peaks_95_deg = Some(spans.iter().map(|span| percentile_95(span, &smooth, start_s, STEP)).collect());
    truth.holds_s = Some(spans.iter().map(|span| longest_hold(span, &smooth, start_s, STEP)).collect());
    truth.repetitions = spans.len();
    truth.spans = spans;
}

/// The angle about the one axis that the whole set turns about, square to the direction held in the pose.
fn planar(held: DVec3, moved: &[DVec3]) -> Vec<f64> {
    let axis = moved.iter().map(|direction| held.cross(*direction)).sum::<DVec3>().normalize();
    moved.iter().map(|direction| axis.dot(held.cross(*direction)).atan2(held.dot(*direction)).to_degrees()).collect()
}

/// The heading against the start of the set, positive the way the set goes.
fn headings(moved: &[DVec3]) -> Vec<f64> {
    let start: DVec2 = moved.iter().take((0.4 / STEP) as usize).map(|direction| direction.truncate()).sum();
    let angles: Vec<f64> = moved.iter().map(|direction| start.angle_to(direction.truncate()).to_degrees()).collect();
    let sign = angles.iter().sum::<f64>().signum();
    angles.into_iter().map(|angle| angle * sign).collect()
}

fn swung(scenario: &Scenario, performed: &mut Performed, set: (f64, f64), person: &Person) {
    let Some((course, plan)) = &performed.course else { return };
    let path: Vec<DVec2> = part(&performed.track.hand, set).iter().map(|hand| hand.truncate()).collect();
    let frequency = plan.pendulum.drives.first().map_or(person.hanging.frequency(), |drive| drive.frequency);
    let middle = running_mean(&path, (std::f64::consts::PI / frequency / STEP) as usize);
    let swings = scenario.figure == Figure::Swings;
    let found = if swings { cycles(&path, &middle, set.0, STEP) } else { revolutions(&path, &middle, set.0, STEP) };
    performed.truth.take_revolutions(found, !swings);
    let driven: Vec<f64> = part(&course.muscle, set).iter().map(|push| push.length_squared()).collect();
    let active = driven.iter().filter(|push| **push > 0.0).count().max(1) as f64;
    performed.truth.muscle_moment_nm = Some(person.hanging.weighted * (driven.iter().sum::<f64>() / active).sqrt());
}

fn rolled(performed: &mut Performed, set: (f64, f64)) {
    let path: Vec<DVec2> =
        part(&performed.track.shoulder_shift, set).iter().map(|shift| DVec2::new(shift.x, shift.z)).collect();
    let (low, high) = path
        .iter()
        .fold((DVec2::INFINITY, DVec2::NEG_INFINITY), |(low, high), point| (low.min(*point), high.max(*point)));
    let middle = vec![(low + high) / 2.0; path.len()];
    let found = revolutions(&path, &middle, set.0, STEP);
    // Ahead at the bottom and back at the top is backward; with X ahead and Z up that turns against a clock's hands.
    let backward = found.iter().filter(|one| one.way == crate::Way::Anticlockwise).count();
    performed.truth.rolls = Some((backward, found.len() - backward));
    performed.truth.repetitions = found.len();
}

/// Largest less smallest inclination of a line in the set, whichever end of it points up.
pub(super) fn inclination_range(lines: impl Iterator<Item = DVec3>, set: (f64, f64)) -> f64 {
    let all: Vec<f64> = lines.map(|line| line.z.clamp(-1.0, 1.0).asin().to_degrees()).collect();
    let (low, high) = part(&all, set)
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| (low.min(*value), high.max(*value)));
    (high - low).max(0.0)
}
