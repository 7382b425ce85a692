//! The poses of the catalogue against what its entries demand, read off the frames and not off the words.

use body::{Joint, Mode, Movement, Pose, Shoulder, Vector};
use quantity::Degrees;

use super::catalogue;
use crate::{Demand, Entry, Kind, Weight};

/// What a clinician would read off a pose, in degrees.
///
/// # Method
/// Elevation is the angle between the humerus and the trunk's length; its plane is where the elbow points; the turn is
/// where the bent forearm points once the swing of the upper arm is undone.
#[derive(Debug)]
struct Read {
    elevation: f64,
    /// 0 to the side, 90 ahead, beyond across the chest, negative behind; `None` while the arm hangs.
    plane: Option<f64>,
    /// `None` for an arm straight up, which no single swing brought there.
    outward: Option<f64>,
}

fn read(pose: &Pose) -> Read {
    let humerus = pose.operated.shoulder.humerus();
    let elbow = humerus * -Vector::Y;
    let elevation = elbow.x.hypot(elbow.z).atan2(-elbow.y).to_degrees();
    let plane = (elevation > 1e-6).then(|| elbow.x.atan2(elbow.z).to_degrees());
    // Undo the shortest swing that brought the elbow there, and see where the forearm would point.
    let axis = (-Vector::Y).cross(elbow);
    let undone = if axis.length() > 1e-9 {
        body::Rotation::about(axis.normalize(), body::Angle::from_degrees(-elevation)) * humerus
    } else {
        humerus
    };
    let forearm = undone * Vector::X;
    let outward = (elevation < 179.9).then(|| forearm.z.atan2(forearm.x).to_degrees()); // not medical: straight up
    Read { elevation, plane, outward }
}

/// Every entry with poses, at some ways between nothing and everything.
fn each(check: impl Fn(&Entry, &dyn Fn(&Demand) -> Degrees, &Pose, &Pose)) {
    let catalogue = catalogue();
    let mut seen = 0;
    for entry in catalogue.entries().iter().filter(|entry| matches!(entry.kind, Kind::Exercise | Kind::Test)) {
        for tenths in [0, 3, 7, 10] {
            // not medical: from the start of the arc to its end
            let reach = |demand: &Demand| {
                let (from, to) = (demand.amount.start_angle(), demand.amount.greatest_angle());
                let (from, to) = (from.expect("an angle").steps(), to.expect("an angle").steps());
                let steps = if demand.amount.follows_the_limit() { from + (to - from) * tenths / 10 } else { to };
                Degrees::from_steps(steps)
            };
            let (start, end) = entry.poses(reach).expect("every exercise and test has poses");
            check(entry, &reach, &start, &end);
            seen += 1;
        }
    }
    assert!(seen >= 4 * 130, "{seen}"); // not medical: exercises and tests there are at least
}

/// The demand of a movement that has an angle.
fn of(entry: &Entry, movement: Movement) -> Option<&Demand> {
    entry.demands.iter().find(|demand| {
        demand.key.joint == Joint::Shoulder
            && demand.key.movement == movement
            && demand.amount.greatest_angle().is_some()
    })
}

/// The angle of a movement in a pose; `None` where the pose is not in the plane of the movement.
fn told(pose: &Pose, movement: Movement) -> Option<f64> {
    let found = read(pose);
    let in_plane = |plane: f64| found.plane.is_none_or(|found| (found - plane).abs() < 1e-6);
    Some(match movement {
        Movement::ExternalRotation | Movement::AbductionWithExternalRotation => found.outward?,
        Movement::InternalRotation => -found.outward?,
        Movement::HorizontalAdduction => found.plane? - 90.0, // not medical: from straight ahead
        Movement::ForwardElevation => in_plane(90.0).then_some(found.elevation)?, // not medical: straight ahead
        Movement::ScapularPlaneElevation => in_plane(35.0).then_some(found.elevation)?, // not medical: `scapular-plane-forward`
        Movement::Abduction => in_plane(0.0).then_some(found.elevation)?,
        Movement::Extension => in_plane(-90.0).then_some(found.elevation)?, // not medical: straight back
        _ => return None,
    })
}

#[test]
fn the_end_of_a_movement_has_the_angle_that_is_prescribed() {
    each(|entry, reach, start, end| {
        let Some(target) = entry.target() else { return };
        if target.key.joint != Joint::Shoulder || target.amount.greatest_angle().is_none() {
            return;
        }
        let wanted = reach(target).number();
        let meets = |pose| told(pose, target.key.movement).is_some_and(|found| (found - wanted).abs() < 1e-6);
        // A throw begins at its greatest turn; what is taken to the limit ends there.
        let fits = meets(end) || (!target.amount.follows_the_limit() && meets(start));
        assert!(fits, "{} {wanted}: {:?} to {:?}", entry.id, read(start), read(end));
    });
}

#[test]
fn no_pose_on_the_way_goes_beyond_what_the_entry_demands() {
    let allowance = |id: &str| evidence::entry(id).expect("in the table").number();
    let resting = allowance("pose-arm-resting");
    let belly = allowance("pose-forearm-on-belly");
    each(|entry, reach, start, end| {
        let most = |movements: &[Movement]| {
            let all = movements.iter().filter_map(|&movement| of(entry, movement));
            all.map(|demand| reach(demand).number()).fold(0.0, f64::max)
        };
        let forward = [Movement::ForwardElevation, Movement::ScapularPlaneElevation, Movement::Abduction];
        let outward = most(&[Movement::ExternalRotation, Movement::AbductionWithExternalRotation]);
        let asks_elevation = forward.iter().any(|&movement| of(entry, movement).is_some());
        for step in 0..=10 {
            // not medical: a movement in tenths
            let pose = Pose::between(start, end, f64::from(step) / 10.0);
            let found = read(&pose);
            let told = format!("{} at {step}: {found:?}", entry.id);
            let behind = found.plane.is_some_and(|plane| plane < -45.0); // not medical: nearer to back than to side
            // Where nothing is asked of elevation, a resting arm may lie a little out.
            let elevation = match (behind, asks_elevation) {
                (true, _) => most(&[Movement::Extension]),
                (false, true) => most(&forward),
                (false, false) => resting,
            };
            let from = entry.target().and_then(|target| target.amount.start_angle()).map_or(0.0, Degrees::number);
            assert!(found.elevation <= elevation.max(from) + 1e-6, "{told} beyond {elevation}");
            let Some(turned) = found.outward else { continue };
            assert!(turned <= outward + 1e-6, "{told} beyond {outward} outward");
            // The hand behind the back is a demand of its own, without degrees.
            let goes_behind = entry.demands.iter().any(|demand| demand.key.movement == Movement::HandBehindBack);
            let behind_back = if goes_behind { allowance("pose-behind-back-turn") } else { 0.0 };
            let inward = most(&[Movement::InternalRotation]).max(belly).max(behind_back);
            assert!(-turned <= inward + 1e-6, "{told} beyond {inward} inward");
        }
    });
}

#[test]
fn who_carries_the_arm_agrees_with_who_moves_it() {
    for entry in catalogue().entries().iter().filter(|entry| matches!(entry.kind, Kind::Exercise | Kind::Test)) {
        let positions = entry.positions.expect("every exercise and test has poses");
        let Some(target) = entry.target() else { continue };
        let fits = match (target.key.joint, target.key.mode) {
            (Joint::Shoulder, Mode::Passive | Mode::EndRangeStretch) => positions.weight == Weight::Carried,
            (Joint::Shoulder, Mode::ActiveAssisted) => positions.weight == Weight::Shared,
            (Joint::Shoulder, _) => matches!(positions.weight, Weight::Own | Weight::Forearm),
            _ => true,
        };
        assert!(fits, "{}: {} is {}", entry.id, target.key, positions.weight);
    }
}

#[test]
fn every_movement_moves_something_and_holds_stay() {
    for entry in catalogue().entries().iter().filter(|entry| matches!(entry.kind, Kind::Exercise | Kind::Test)) {
        let (start, end) = entry.widest_poses().expect("every exercise and test has poses");
        // Effort without movement, walking with a load, and strength held at an angle stay where they are.
        let is_held = entry.target().is_some_and(|target| target.key.mode == Mode::Isometric)
            || ["carry-walk", "strength-at-90", "rotation-strength-at-side"].contains(&entry.id.as_str());
        assert_eq!(start == end, is_held, "{}", entry.id);
    }
}

#[test]
fn an_arm_that_was_not_raised_reads_as_hanging() {
    let read = read(&Pose::at_rest(body::Posture::Standing));
    assert!(read.plane.is_none() && read.elevation < 1e-9 && read.outward.is_some_and(|turned| turned.abs() < 1e-9));
    assert_eq!(Shoulder::HANGING.humerus(), body::Rotation::NONE);
}
