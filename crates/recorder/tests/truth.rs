//! The truth against a second look at the noise-free movement, by other means.

use glam::DVec2;
use recorder::{Exercise, Figure, Known, Negative, Recording, Scenario, Subject, Way, record};

fn set(recording: &Recording) -> Vec<&Known> {
    let set = recording.phases.iter().find(|phase| phase.name == "set").expect("there is a set");
    recording.known.iter().filter(|known| known.t_s >= set.from_s && known.t_s < set.until_s).collect()
}

fn clean(seed: u64, exercise: Exercise) -> Recording {
    record(&Scenario { gaps: Vec::new(), ..Scenario::draw(seed, Subject::Exercise(exercise)) })
}

#[test]
fn what_was_planned_is_what_is_counted() {
    let partial: usize = (0..3)
        .flat_map(|seed| Exercise::ALL.iter().filter(|one| **one != Exercise::Pendulum).map(move |one| (seed, *one)))
        .map(|(seed, exercise)| {
            let truth = clean(seed, exercise).truth;
            assert_eq!(Some(truth.repetitions), truth.planned, "{exercise:?} {seed}");
            truth.partial
        })
        .sum();
    // Otherwise the test would say nothing of those that fall short.
    assert!(partial >= 3, "{partial}");
}

/// Each row that is the greatest between the places where the angle is below a quarter of the size, if it reaches half.
fn peaks(rows: &[&Known], size: f64) -> Vec<f64> {
    let angle = |index: usize| rows[index].angle_deg.expect("an angle in the set");
    let is_low = |index: &usize| angle(*index) < 0.25 * size;
    let mut peaks = Vec::new();
    let is_top = |index: &usize| angle(*index) >= angle(index - 1).max(angle(index + 1)) && angle(*index) >= 0.5 * size;
    for index in (1..rows.len() - 1).filter(is_top) {
        let before = (0..index).rev().find(is_low).map_or(0, |low| low + 1);
        let Some(after) = (index..rows.len()).find(is_low) else { continue };
        let first = (before..after).max_by(|a, b| angle(*a).total_cmp(&angle(*b)).then(b.cmp(a)));
        if first == Some(index) {
            peaks.push(angle(index));
        }
    }
    peaks
}

#[test]
fn repetitions_and_peaks_by_brute_force() {
    for exercise in Exercise::ALL {
        for seed in 20..21 {
            let recording = clean(seed, *exercise);
            let Some(wanted) = &recording.truth.peaks_deg else { continue };
            let mut sorted = wanted.clone();
            sorted.sort_by(f64::total_cmp);
            let rows: Vec<&Known> = set(&recording).into_iter().filter(|known| known.angle_deg.is_some()).collect();
            let found = peaks(&rows, sorted[sorted.len() / 2]);
            assert_eq!(found.len(), wanted.len(), "{exercise:?} {seed}");
            for (found, wanted) in found.iter().zip(wanted) {
                // The rows carry the tremor and come every 5 to 40 ms; the truth is smooth.
                assert!((found - wanted).abs() < 1.0, "{exercise:?} {seed}: {found} {wanted}");
            }
        }
    }
}

#[test]
fn a_hold_is_as_long_as_it_was_asked_and_a_little_slow_movement_more() {
    let mut seen = 0;
    for seed in 0..8 {
        let recording = clean(seed, Exercise::StickExternalRotation);
        let json = recording.truth_json();
        let drawn = json["parameters"]["set"].as_array().expect("what was drawn");
        let Some(asked) = drawn.iter().find(|one| one["name"] == "hold_asked") else { continue };
        let asked = asked["value"].as_f64().expect("a number");
        let holds = recording.truth.holds_s.as_ref().expect("holds");
        let mean = holds.iter().sum::<f64>() / holds.len() as f64;
        // A person is uneven by 8 percent at most; the ends of the ways add what is slow and near.
        assert!(mean > asked * 0.9 && mean < asked * 1.1 + 1.2, "{seed}: {mean} for {asked}");
        seen += 1;
    }
    assert!(seen >= 3, "{seen}");
}

/// Where the hand is beside the shoulder, over the arm's length, turned by an unknown constant angle: from "up" in the
/// axes of a perfectly worn sensor, whose Y runs along the limb and whose Z points away from it.
fn hand(known: &Known) -> DVec2 {
    DVec2::new(known.up.z, known.up.y.signum() * known.up.x)
}

fn swung(seed: u64, figure: Figure) -> Recording {
    let pendulum = Subject::Exercise(Exercise::Pendulum);
    record(&Scenario { figure, rate_hz: 100.0, ..Scenario::perfect(seed, pendulum) })
}

#[test]
fn circles_by_brute_force() {
    for seed in 0..5 {
        for way in [Way::Clockwise, Way::Anticlockwise] {
            let recording = swung(seed, Figure::Circles(way));
            let truth = &recording.truth;
            let (clockwise, anticlockwise) = truth.by_direction.expect("circles have directions");
            let rows: Vec<DVec2> = set(&recording).into_iter().map(hand).collect();
            // The area that the path goes around is positive anticlockwise.
            let area: f64 = rows.windows(2).map(|pair| pair[0].perp_dot(pair[1])).sum();
            assert_eq!(way == Way::Anticlockwise, area > 0.0, "{seed}");
            assert_eq!(
                (clockwise > 0, anticlockwise > 0),
                (way == Way::Clockwise, way == Way::Anticlockwise),
                "{seed}"
            );
            // Each time around, the path passes ahead of its middle once; small ones are within 2 cm of it.
            let least = 2.0 / recording.arm_length_cm;
            let passages = rows.windows(2).filter(|pair| pair[0].y < 0.0 && pair[1].y >= 0.0 && pair[1].x > least);
            let other = rows.windows(2).filter(|pair| pair[0].y >= 0.0 && pair[1].y < 0.0 && pair[1].x > least);
            let around = passages.count().max(other.count());
            assert!(around.abs_diff(truth.repetitions) <= 1, "{seed} {way:?}: {around}, {}", truth.repetitions);
            // Twice the mean distance from the middle while it is wide is the mean diameter of a near-circle.
            let wide = rows.iter().map(|point| point.length()).fold(0.0, f64::max);
            let far: Vec<f64> = rows.iter().map(|point| point.length()).filter(|far| *far > 0.5 * wide).collect();
            let diameter = 2.0 * far.iter().sum::<f64>() / far.len() as f64 * recording.arm_length_cm;
            let wanted = truth.circle_diameter_cm.expect("a diameter");
            assert!((diameter / wanted - 1.0).abs() < 0.2, "{seed}: {diameter} {wanted}");
        }
    }
}

#[test]
fn both_ways_and_swings() {
    for seed in 0..6 {
        let truth = swung(seed, Figure::BothWays(Way::Anticlockwise)).truth;
        let (clockwise, anticlockwise) = truth.by_direction.expect("directions");
        assert!(clockwise >= 5 && anticlockwise >= 5, "{seed}: {clockwise} {anticlockwise}");
        assert_eq!(truth.repetitions, clockwise + anticlockwise);
        let recording = swung(seed, Figure::Swings);
        let truth = &recording.truth;
        assert_eq!(truth.by_direction, None);
        assert!(truth.axis_ratio.is_some_and(|ratio| ratio < 0.3), "{seed}: {:?}", truth.axis_ratio);
        // A swing is down twice in a cycle, and each time the arm is lowest.
        let rows: Vec<&Known> = set(&recording).into_iter().filter(|known| known.angle_deg.is_some()).collect();
        let angle = |known: &&Known| known.angle_deg.expect("an angle");
        let wide = 2.0 / recording.arm_length_cm;
        let lowest = rows.windows(3).filter(|three| {
            let [a, b, c] = [angle(&three[0]), angle(&three[1]), angle(&three[2])];
            b <= a && b < c && b.to_radians().sin() < wide * 4.0
        });
        let halves = lowest.count();
        assert!(halves + 2 >= 2 * truth.repetitions, "{seed}: {halves}, {}", truth.repetitions);
    }
}

#[test]
fn periods_are_those_of_what_drives() {
    for seed in 0..8 {
        let recording = swung(seed, Figure::Circles(Way::Clockwise));
        let json = recording.truth_json();
        let drawn = json["parameters"]["set"].as_array().expect("what was drawn");
        let tempo = drawn.iter().find(|one| one["name"] == "drive_over_natural_frequency").expect("the tempo");
        let tempo = tempo["value"].as_f64().expect("a number");
        // A person's arm swings freely in 1.1 to 1.6 s (motion.md, (e)).
        let free = recording.truth.period_s.expect("a period") * tempo;
        assert!((1.1..1.6).contains(&free), "{seed}: {free}");
    }
}

#[test]
fn what_is_no_exercise_has_no_repetitions() {
    for negative in Negative::ALL {
        let recording = record(&Scenario::draw(1, Subject::Negative(*negative)));
        assert_eq!((recording.truth.repetitions, recording.expected()), (0, "no count"));
        assert!(recording.samples.len() > 1000, "{negative:?}");
    }
}
