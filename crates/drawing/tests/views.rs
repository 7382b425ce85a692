//! Where the degrees of an exercise stand: a number is printed only where the drawn angle is the true one.

use diagnostic::{Sink, Sources};
use drawing::{NumberPlace, Shown, View};
use exercise::{Catalogue, Demand};
use quantity::Degrees;

/// What a printed number may differ from the angle that is drawn beside it, in degrees.
const MAY_DIFFER: f64 = 3.0;

fn catalogue() -> Catalogue {
    let mut sources = Sources::new();
    exercise::shipped(&mut Sink::new(), |name, text| sources.add(name, text))
}

#[test]
fn every_number_stands_at_a_true_angle_all_the_way() {
    let catalogue = catalogue();
    let mut turns = 0;
    for entry in catalogue.entries() {
        let (start, end) = entry.widest_poses().expect("every shipped entry has poses");
        let shown = Shown::of(entry, &start, &end);
        if !matches!(shown, Shown::Turn { .. }) {
            continue;
        }
        // The view is that of the widest movement, whatever is prescribed that week.
        let view = View::of(&start, &end, &shown);
        for share in [0.2, 0.5, 0.8, 1.0] {
            let reach = |demand: &Demand| {
                let most = demand.amount.greatest_angle().unwrap_or_default();
                let least = demand.amount.start_angle().unwrap_or_default();
                let steps = f64::from(least.steps()) + f64::from(most.steps() - least.steps()) * share;
                if demand.amount.follows_the_limit() { Degrees::from_steps(steps.round() as i32) } else { most }
            };
            let (start, end) = entry.poses(reach).expect("poses");
            let Shown::Turn { swing, .. } = Shown::of(entry, &start, &end) else { continue };
            turns += 1;
            let camera = match view.number {
                NumberPlace::InThePicture => view.camera,
                NumberPlace::InAnInset(camera) => camera,
                NumberPlace::Nowhere => panic!("{}: a turn without a number", entry.id),
            };
            let fault = swing.fault(&camera).degrees();
            assert!(fault <= MAY_DIFFER, "{} at {share}: drawn {fault:.1} degrees off", entry.id);
            let tilt = swing.tilt(&camera).degrees();
            assert!(view.number == NumberPlace::InThePicture || tilt < MAY_DIFFER, "{}: tilt {tilt}", entry.id);
        }
    }
    assert!(turns > 4 * 55, "{turns}");
}

#[test]
fn a_turn_that_is_not_level_is_never_seen_from_below() {
    for entry in catalogue().entries() {
        let (start, end) = entry.widest_poses().expect("every shipped entry has poses");
        let shown = Shown::of(entry, &start, &end);
        let view = View::of(&start, &end, &shown);
        assert!(view.camera.elevation.degrees() > 0.0, "{}", entry.id);
        if let NumberPlace::InAnInset(camera) = view.number {
            assert!(camera.elevation.degrees() > -20.0, "{}: {}", entry.id, camera.elevation.degrees());
        }
    }
}
