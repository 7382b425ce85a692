//! What must not change when what does not matter changes.

use std::f64::consts::PI;

use glam::DQuat;
use motion::{EventKind, Exercise, measure};
use proptest::prelude::*;

use crate::made::{How, circles, raises, recording, task};

fn peaks_of(how: How) -> Vec<f64> {
    let measured = measure(&raises(&PEAKS, how), &task(Exercise::Abduction));
    assert_eq!((measured.repetitions, measured.uncertain), (Some(6), false), "{:?}", measured.why_not);
    measured.peaks_deg().expect("there is a pose")
}

const PEAKS: [f64; 6] = [60.0, 75.0, 58.0, 90.0, 66.0, 70.0];

fn near(found: &[f64], within: f64) {
    let expected = PEAKS.iter();
    assert!(found.iter().zip(expected).all(|(found, expected)| (found - expected).abs() < within), "{found:?}");
}

#[test]
fn peaks_are_those_of_the_formula_at_any_rate() {
    for rate_hz in [12.0, 25.0, 50.0, 60.0, 100.0, 200.0, 480.0] {
        // Between two samples of a slow recording a peak of one second is still seen.
        near(&peaks_of(How { rate_hz, ..How::default() }), 1.0);
    }
}

#[test]
fn gravity_of_the_other_sign_is_found_on_the_table() {
    near(&peaks_of(How { sign: -1.0, ..How::default() }), 1.0);
    for (sign, way) in [(1.0, 1.0), (1.0, -1.0), (-1.0, 1.0), (-1.0, -1.0)] {
        let measured =
            measure(&circles(9.0, 1.4, 12.0 * way, How { sign, ..How::default() }), &task(Exercise::Pendulum));
        let (clockwise, anticlockwise) = measured.by_direction.expect("circles");
        assert_eq!(measured.sign_turned, sign < 0.0);
        let [with, against] = if way > 0.0 { [anticlockwise, clockwise] } else { [clockwise, anticlockwise] };
        assert!((11..=14).contains(&with) && against == 0, "{sign} {way}: {clockwise} {anticlockwise}");
    }
}

#[test]
fn a_circle_has_its_diameter_and_its_period() {
    for (half_angle, period) in [(3.0, 1.2), (8.0, 1.4), (15.0, 1.8)] {
        let measured = measure(&circles(half_angle, period, 10.0, How::default()), &task(Exercise::Pendulum));
        let expected = 2.0 * 65.0 * f64::to_radians(half_angle).sin();
        let diameter = measured.circle_diameter_cm.expect("circles");
        // A second at each end in which the circle grows and shrinks holds turns that count and are smaller.
        assert!((diameter - expected).abs() < 0.1 * expected, "{diameter} {expected}");
        let found = measured.period_s.expect("circles");
        assert!((found - period).abs() < 0.03 * period, "{found} {period}");
        let wide = measured.events.iter().any(|event| event.kind == EventKind::WideCircle);
        assert_eq!(wide, expected > 20.0);
    }
}

#[test]
fn the_limit_warns_within_two_sigma_and_not_below() {
    let recording = raises(&[60.0; 6], How::default());
    let warns = |limit: f64| {
        let measured = measure(&recording, &motion::Task { limit_deg: Some(limit), ..task(Exercise::Abduction) });
        assert_eq!(measured.repetitions, Some(6));
        measured.events.iter().filter(|event| event.kind == EventKind::Limit).count()
    };
    let sigma = measure(&recording, &task(Exercise::Abduction)).sigma_deg.expect("angles");
    assert_eq!((warns(40.0), warns(59.0), warns(60.0 + 2.0 * sigma - 1.5)), (6, 6, 6));
    assert_eq!((warns(60.0 + 2.0 * sigma + 1.5), warns(90.0)), (0, 0));
}

#[test]
fn a_strap_that_slips_is_told_and_the_count_stays() {
    let whole = raises(&[60.0; 6], How::default());
    let slipped = DQuat::from_rotation_z(0.25);
    let rows = whole.samples().iter().map(|sample| {
        // From the middle of a rest on the phone sits fourteen degrees turned across the limb.
        if sample.t_s < 30.7 {
            return *sample;
        }
        motion::Sample { force: slipped * sample.force, rate: slipped * sample.rate, ..*sample }
    });
    let measured = measure(&recording(rows), &task(Exercise::Abduction));
    assert_eq!(measured.repetitions, Some(6));
    assert!(measured.events.iter().any(|event| event.kind == EventKind::Slipped), "{:?}", measured.slip_deg);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn when_it_was_recorded_does_not_matter(start_s in -1e4..1e5_f64) {
        let [here, there] = [0.0, start_s].map(|start_s| peaks_of(How { start_s, ..How::default() }));
        prop_assert!(here.iter().zip(&there).all(|(a, b)| (a - b).abs() < 0.05));
    }

    #[test]
    fn how_the_strap_is_turned_does_not_matter(about in -PI..PI, tilt in -0.17..0.17_f64, toward in -PI..PI) {
        // Any angle about the limb, ten degrees otherwise (contract).
        let across = glam::DVec3::new(toward.cos(), 0.0, toward.sin());
        let strap = DQuat::from_rotation_y(about) * DQuat::from_axis_angle(across, tilt);
        near(&peaks_of(How { strap, ..How::default() }), 1.2);
    }

    #[test]
    fn the_other_way_around_is_the_other_direction(half_angle in 3.0..14.0_f64, period in 1.1..2.2_f64, strap in -PI..PI) {
        let how = How { strap: DQuat::from_rotation_y(strap), ..How::default() };
        let [one, other] = [9.0, -9.0].map(|turns| {
            measure(&circles(half_angle, period, turns, how), &task(Exercise::Pendulum)).by_direction.expect("circles")
        });
        prop_assert_eq!((one.0, other.1), (0, 0));
        // A second at each end in which the circle grows and shrinks may hold another turn.
        let most = 10 + (2.0 / period).ceil() as u32;
        prop_assert!((8..=most).contains(&one.1) && (8..=most).contains(&other.0), "{:?} {:?}", one, other);
    }
}
