//! What a perfect sensor feels must follow from where it is.

use glam::{DQuat, DVec3};
use recorder::{Exercise, Negative, Recording, Sample, Scenario, Subject, record};

/// The value of standard gravity in the table of evidence.
const GRAVITY: f64 = 9.806_65;

fn perfect(seed: u64, exercise: Exercise) -> Recording {
    record(&Scenario { rate_hz: 200.0, ..Scenario::perfect(seed, Subject::Exercise(exercise)) })
}

fn phase<'r>(recording: &'r Recording, name: &str) -> Vec<&'r Sample> {
    let phase = recording.phases.iter().find(|phase| phase.name == name).expect("the phase is there");
    // The ways to and from stillness are smooth, so half a second on both sides is not quite still.
    recording.samples.iter().filter(|s| s.t_s > phase.from_s + 0.5 && s.t_s < phase.until_s - 0.5).collect()
}

#[test]
fn on_a_table_the_axis_that_points_up_reads_gravity() {
    for seed in 0..4 {
        let recording = perfect(seed, Exercise::ElbowFlexion);
        for sample in phase(&recording, "table") {
            // A table may be off by 0.6 degrees: 9.81 · sin 0.6° = 0.103.
            assert!((sample.force - DVec3::Z * GRAVITY).length() < 0.105, "{sample:?}");
            assert!(sample.rate.length() < 1e-4, "{sample:?}");
        }
    }
}

#[test]
fn in_the_pose_gravity_lies_along_the_limb_or_across_it() {
    let along = |exercise| {
        let recording = perfect(3, exercise);
        let rows = phase(&recording, "pose");
        rows.iter().map(|sample| sample.force.y.abs()).sum::<f64>() / rows.len() as f64 / GRAVITY
    };
    // Hanging within 7 degrees and a lean; the forearm to the ceiling; the arm along the bed.
    for (exercise, least, most) in [
        (Exercise::Abduction, 0.98, 1.001),
        (Exercise::Pendulum, 0.999, 1.001),
        (Exercise::StickExternalRotation, 0.98, 1.001),
        (Exercise::SupineElevation, 0.0, 0.2),
    ] {
        let share = along(exercise);
        assert!((least..most).contains(&share), "{exercise:?}: {share}");
    }
}

#[test]
fn the_rates_integrate_back_to_the_orientation() {
    for exercise in Exercise::ALL {
        let recording = perfect(5, *exercise);
        let mut up = recording.known[0].up;
        let mut worst = 0.0_f64;
        for (pair, known) in recording.samples.windows(2).zip(&recording.known[1..]) {
            let turn = (pair[0].rate + pair[1].rate) / 2.0 * (pair[1].t_s - pair[0].t_s);
            up = DQuat::from_scaled_axis(-turn) * up;
            worst = worst.max(up.angle_between(known.up).to_degrees());
        }
        // Over two minutes at 200 Hz; the sensor's window of 5 ms flattens tremor and little else.
        assert!(worst < 0.3, "{exercise:?}: {worst} degrees");
    }
}

#[test]
fn nothing_gains_or_loses_speed_for_good() {
    // The mean of the vertical acceleration is the change of vertical speed over the time: none.
    let subjects = [Subject::Exercise(Exercise::Abduction), Subject::Exercise(Exercise::Pendulum)];
    let negatives = Negative::ALL.iter().map(|negative| Subject::Negative(*negative));
    for subject in subjects.into_iter().chain(negatives) {
        let recording = record(&Scenario { rate_hz: 200.0, ..Scenario::perfect(2, subject) });
        let rows = recording.samples.iter().zip(&recording.known);
        let mean = rows.map(|(s, known)| s.force.dot(known.up)).sum::<f64>() / recording.samples.len() as f64;
        assert!((mean - GRAVITY).abs() < 0.02, "{}: {mean}", subject.word());
    }
}

#[test]
fn a_walk_bounces_and_a_table_does_not() {
    let unrest = |negative| {
        let recording = record(&Scenario::perfect(1, Subject::Negative(negative)));
        let rows = &recording.samples[300..];
        let rms =
            |of: &dyn Fn(&Sample) -> f64| (rows.iter().map(|s| of(s).powi(2)).sum::<f64>() / rows.len() as f64).sqrt();
        (rms(&|s| s.force.length() - GRAVITY), rms(&|s| s.rate.length().to_degrees()))
    };
    // Own choice of what is plausible: steps at the arm of 0.8 to 5 m/s², an arm that swings at 10 to 120 degrees a second.
    let (force, rate) = unrest(Negative::Walking);
    assert!((0.8..5.0).contains(&force) && (10.0..120.0).contains(&rate), "{force} {rate}");
    let (force, rate) = unrest(Negative::OnTable);
    assert!(force < 0.2 && rate < 1.0, "{force} {rate}");
    let (force, rate) = unrest(Negative::RidingBus);
    assert!((0.1..2.0).contains(&force) && rate < 20.0, "{force} {rate}");
}
