//! Recordings that are none: a reason, never a count, never a panic.

use motion::{Estimate, Exercise, Recording, Sample, WhyNot, measure, tilt};

use crate::made::{How, circles, raises, recording, task};

/// Every exercise refuses it; gives the reasons of the first.
fn refused(recording: &Recording) -> Vec<WhyNot> {
    let mut reasons = Vec::new();
    for exercise in Exercise::ALL {
        let measured = measure(recording, &task(*exercise));
        assert!(!measured.is_usable(), "{exercise}: {:?}", measured.repetitions);
        assert_eq!(measured.repetitions, None);
        reasons.extend(measured.why_not);
    }
    let _ = [Estimate::Causal, Estimate::Offline].map(|estimate| tilt(recording, estimate));
    reasons.dedup();
    reasons
}

fn samples() -> Vec<Sample> {
    raises(&[60.0; 5], How::default()).samples().to_vec()
}

#[test]
fn nothing_and_nearly_nothing_are_too_short() {
    assert_eq!(refused(&Recording::default()), [WhyNot::TooShort]);
    assert_eq!(refused(&recording(samples().into_iter().take(1))), [WhyNot::TooShort]);
    assert_eq!(refused(&recording(samples().into_iter().take(60))), [WhyNot::TooShort]);
}

#[test]
fn zeros_and_linear_accelerations_have_no_gravity() {
    let zeros = samples().into_iter().map(|s| Sample::new(s.t_s, [0.0; 3], [0.0; 3]));
    assert!(refused(&recording(zeros)).contains(&WhyNot::NoGravity));
    let without = samples().into_iter().map(|s| Sample::new(s.t_s, [0.1, -0.1, 0.0], s.rate.to_array()));
    let without = recording(without);
    assert!(refused(&without).contains(&WhyNot::NoGravity));
    assert_eq!(tilt(&without, Estimate::Causal), None);
}

#[test]
fn four_samples_a_second_are_too_slow_and_a_thousand_too_many() {
    let slow = raises(&[60.0; 5], How { rate_hz: 4.0, ..How::default() });
    assert!(refused(&slow).contains(&WhyNot::TooSlow));
    let fast =
        recording(samples().into_iter().map(|s| Sample::new(s.t_s / 17.0, s.force.to_array(), s.rate.to_array())));
    assert!(refused(&fast).contains(&WhyNot::TooFast));
}

#[test]
fn numbers_no_sensor_gives_are_left_out_and_many_of_them_refused() {
    let spoilt = |every: usize| {
        let rows = samples().into_iter().enumerate().map(|(at, s)| {
            let bad = [f64::NAN, f64::INFINITY, 1e9][at % 3];
            Some(if at % every == 0 { Sample::new(s.t_s, [bad, 0.0, 0.0], [0.0; 3]) } else { s })
        });
        Recording::of(rows)
    };
    assert!(refused(&spoilt(3)).contains(&WhyNot::BadRows));
    // One in a hundred is a sample that never came.
    assert_eq!(measure(&spoilt(100), &task(Exercise::Abduction)).repetitions, Some(5));
}

#[test]
fn time_that_runs_backward_is_never_certain() {
    let reversed = recording(samples().into_iter().rev());
    assert!(refused(&reversed).contains(&WhyNot::TimeBackward));
    let mut swapped = samples();
    swapped.swap(700, 703);
    let measured = measure(&recording(swapped), &task(Exercise::Abduction));
    assert!(measured.uncertain || !measured.is_usable());
}

#[test]
fn what_lies_still_is_not_counted() {
    let still = (0..3600).map(|at| Sample::new(f64::from(at) / 60.0, [0.0, 0.0, 9.8], [0.001, 0.0, -0.002]));
    let reasons = refused(&recording(still));
    assert!(reasons.contains(&WhyNot::NoMovement), "{reasons:?}");
}

#[test]
fn a_time_jump_of_years_takes_no_memory() {
    let mut jumps = samples();
    for sample in jumps.iter_mut().skip(800) {
        sample.t_s += 9e7;
    }
    assert!(refused(&recording(jumps)).contains(&WhyNot::Gaps));
}

#[test]
fn a_gap_in_a_pendulum_is_never_certain() {
    for lost in [0.35, 0.8, 2.0] {
        let whole = circles(8.0, 1.4, 15.0, How::default());
        let kept = whole.samples().iter().copied().filter(|s| !(18.0..18.0 + lost).contains(&s.t_s));
        let measured = measure(&recording(kept), &task(Exercise::Pendulum));
        assert!(measured.uncertain || !measured.is_usable(), "{lost}: {:?}", measured.repetitions);
    }
}

#[test]
fn every_exercise_looks_at_every_recording_without_failing() {
    for samples in [samples(), circles(10.0, 1.3, 8.0, How::default()).samples().to_vec()] {
        for cut in [121, 200, 433, 1000] {
            for exercise in Exercise::ALL {
                let _ = measure(&recording(samples.iter().copied().skip(cut)), &task(*exercise));
                let _ = measure(&recording(samples.iter().copied().take(cut)), &task(*exercise));
            }
        }
    }
}
