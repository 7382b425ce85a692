//! The poses of the catalogue against what its entries demand, read off the frames and not off the words.

use body::{Joint, Mode, Movement, Pose, Shoulder, Vector};
use quantity::Degrees;

use super::catalogue;
use crate::{Demand, Entry, Hold, Kind, Turn, UpperArm, Weight};

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
    for entry in catalogue.entries() {
        for tenths in [0, 3, 7, 10] {
            // not medical: from the start of the arc to its end
            let reach = |demand: &Demand| {
                let (from, to) = (demand.amount.start_angle(), demand.amount.greatest_angle());
                let (from, to) = (from.expect("an angle").steps(), to.expect("an angle").steps());
                let steps = if demand.amount.follows_the_limit() { from + (to - from) * tenths / 10 } else { to };
                Degrees::from_steps(steps)
            };
            let (start, end) = entry.poses(reach).expect("every shipped entry has poses");
            check(entry, &reach, &start, &end);
            seen += 1;
        }
    }
    assert!(seen >= 4 * 199, "{seen}"); // not medical: entries there are at least
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

/// The angle that a movement has at one end: where the target starts, or as far as its demand goes.
fn demanded(entry: &Entry, movement: Movement, reach: &dyn Fn(&Demand) -> Degrees, at_start: bool) -> f64 {
    if let (Movement::InternalRotation, Some(resting)) = (movement, entry.resting) {
        return resting.rotation_internal.number();
    }
    let demand = of(entry, movement).expect("a word without its demand is refused when the catalogue is read");
    let is_target = entry.target().is_some_and(|target| target.key == demand.key);
    let from = demand.amount.start_angle().expect("an angle").number();
    if at_start && is_target && from > 0.0 { from } else { reach(demand).number() }
}

fn allowance(id: &str) -> f64 {
    evidence::entry(id).expect("in the table").number()
}

/// Where a hold says the upper arm is: plane and elevation; no plane for a hanging arm.
fn place(entry: &Entry, hold: &Hold, lean: f64, demanded: &dyn Fn(Movement) -> f64) -> (Option<f64>, f64) {
    let rests = entry.resting.map_or(f64::INFINITY, |resting| resting.elevation.number());
    let scapular = allowance("scapular-plane-forward");
    match hold.upper_arm {
        UpperArm::Hanging => (None, 0.0),
        UpperArm::HangingDown => (Some(90.0), lean.min(rests)),
        UpperArm::Resting => (Some(scapular), allowance("pose-arm-resting").min(rests)),
        UpperArm::ForwardElevation => (Some(90.0), demanded(Movement::ForwardElevation)),
        UpperArm::LevelAhead => (Some(90.0), demanded(Movement::ForwardElevation).min(90.0)),
        UpperArm::ScapularPlaneElevation => (Some(scapular), demanded(Movement::ScapularPlaneElevation)),
        UpperArm::Abduction => (Some(0.0), demanded(Movement::Abduction)),
        UpperArm::Extension => (Some(-90.0), demanded(Movement::Extension)),
        UpperArm::HorizontalAdduction => {
            let raised = [Movement::ForwardElevation, Movement::Abduction];
            let raised = raised.into_iter().find(|movement| of(entry, *movement).is_some());
            let elevation = raised.map_or_else(|| allowance("pose-across-without-elevation"), demanded);
            (Some(90.0 + demanded(Movement::HorizontalAdduction)), elevation)
        }
        UpperArm::BehindTheBack => {
            let demand = of(entry, Movement::Extension);
            let behind = || allowance("pose-behind-back-extension");
            (Some(-90.0), demand.map_or_else(behind, |_| demanded(Movement::Extension)))
        }
    }
}

/// How far a hold says the arm is turned outward.
fn turn(hold: &Hold, demanded: &dyn Fn(Movement) -> f64) -> f64 {
    match hold.turn {
        Turn::None => 0.0,
        Turn::Outward => demanded(Movement::ExternalRotation),
        Turn::Inward => -demanded(Movement::InternalRotation),
        Turn::RaisedOutward => demanded(Movement::AbductionWithExternalRotation),
        Turn::OnTheBelly => -allowance("pose-forearm-on-belly"),
        Turn::BehindTheBack => -allowance("pose-behind-back-turn"),
    }
}

#[test]
fn every_pose_has_the_angles_that_are_demanded() {
    each(|entry, reach, start, end| {
        let positions = entry.positions.expect("every shipped entry has poses");
        for (hold, pose, at_start) in [(&positions.start, start, true), (&positions.end, end, false)] {
            let demanded = |movement| demanded(entry, movement, reach, at_start);
            let found = read(pose);
            let told = format!("{} ({}): {found:?}", entry.id, if at_start { "start" } else { "end" });
            let (plane, elevation) = place(entry, hold, pose.lean.degrees(), &demanded);
            assert!((found.elevation - elevation).abs() < 1e-6, "{told} is not raised by {elevation}");
            // Of an arm that hangs there is no plane, and of one straight up any plane is as good.
            let has_plane = (1e-6..179.9).contains(&found.elevation);
            if let (true, Some(plane), Some(found)) = (has_plane, plane, found.plane) {
                let off = (found - plane).rem_euclid(360.0);
                assert!(off.min(360.0 - off) < 1e-6, "{told} is not in plane {plane}");
            }
            let turned = turn(hold, &demanded);
            assert!(
                found.outward.is_none_or(|found| (found - turned).abs() < 1e-6),
                "{told} is not turned by {turned}"
            );
        }
    });
}

#[test]
fn the_way_stays_between_its_ends() {
    each(|entry, _, start, end| {
        let ends = [read(start), read(end)];
        let most = ends[0].elevation.max(ends[1].elevation);
        for step in 0..=10 {
            let pose = Pose::between(start, end, f64::from(step) / 10.0);
            let found = read(&pose);
            let told = format!("{} at {step}: {found:?} of {ends:?}", entry.id);
            assert!(found.elevation <= most + 1e-6, "{told}");
            let turns = [ends[0].outward, ends[1].outward, found.outward];
            let [Some(one), Some(other), Some(turned)] = turns else { continue };
            assert!((one.min(other) - 1e-6..=one.max(other) + 1e-6).contains(&turned), "{told}");
        }
    });
}

#[test]
fn what_is_prescribed_is_where_the_movement_ends_or_begins() {
    each(|entry, reach, start, end| {
        let Some(target) = entry.target().filter(|_| matches!(entry.kind, Kind::Exercise | Kind::Test)) else { return };
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
fn who_carries_the_arm_agrees_with_who_moves_it() {
    for entry in catalogue().entries().iter().filter(|entry| matches!(entry.kind, Kind::Exercise | Kind::Test)) {
        let positions = entry.positions.expect("every exercise and test has poses");
        let Some(target) = entry.target() else { continue };
        let fits = match (target.key.joint, target.key.mode) {
            (Joint::Shoulder, Mode::Passive | Mode::EndRangeStretch) => positions.weight == Weight::Carried,
            // The arm slides by its own strength and a board carries it, which its text says.
            (Joint::Shoulder, Mode::ActiveAssisted) if entry.id == "side-lying-elevation" => {
                positions.weight == Weight::Carried
            }
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
