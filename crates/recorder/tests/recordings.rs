//! The files, and that chance is the same every time.

use recorder::{Elbow, Ending, Exercise, Gap, Gravity, Grip, Opening, RateUnit, Scenario, Subject, record};

const ABDUCTION: Subject = Subject::Exercise(Exercise::Abduction);

#[test]
fn the_same_scenario_gives_the_same_files() {
    for number in 0..10 {
        let scenario = Scenario::draw(40 + number as u64, Scenario::subject_in_turn(number));
        let [first, second] = [record(&scenario), record(&scenario)];
        assert_eq!(first.csv(), second.csv());
        assert_eq!(first.truth_json(), second.truth_json());
        assert_ne!(first.csv(), record(&Scenario { seed: 1_000, ..scenario }).csv());
    }
}

#[test]
fn every_row_has_seven_numbers_under_the_header_of_the_contract() {
    let scenario = Scenario::usual(1, ABDUCTION);
    let csv = record(&scenario).csv();
    let mut lines = csv.lines();
    assert_eq!(lines.next(), Some("t_s,ax_m_s2,ay_m_s2,az_m_s2,wx_rad_s,wy_rad_s,wz_rad_s"));
    let degrees = record(&Scenario { rate_unit: RateUnit::Degrees, ..scenario }).csv();
    assert!(degrees.starts_with("t_s,ax_m_s2,ay_m_s2,az_m_s2,wx_deg_s,wy_deg_s,wz_deg_s\n"));
    let rows = |csv: &str| -> Vec<Vec<f64>> {
        csv.lines().skip(1).map(|line| line.split(',').map(|cell| cell.parse().expect("a number")).collect()).collect()
    };
    for (radians, degrees) in rows(&csv).iter().zip(rows(&degrees)) {
        assert_eq!((radians.len(), degrees.len()), (7, 7));
        // Rounded as browsers round: tenths of a degree a second, tenths of a meter per second squared.
        for axis in 4..7 {
            assert!((radians[axis].to_degrees() - degrees[axis]).abs() < 1e-5);
            assert!((degrees[axis] * 10.0 - (degrees[axis] * 10.0).round()).abs() < 1e-5, "{}", degrees[axis]);
        }
        assert!((radians[1] * 10.0 - (radians[1] * 10.0).round()).abs() < 1e-9);
    }
}

#[test]
fn phases_follow_each_other_and_poses_are_still() {
    for exercise in [Exercise::Abduction, Exercise::StickExternalRotation, Exercise::ExternalRotation] {
        let recording = record(&Scenario { elbow: Elbow::Straight, ..Scenario::usual(9, Subject::Exercise(exercise)) });
        let names: Vec<&str> = recording.phases.iter().map(|phase| phase.name).collect();
        let wanted: &[&str] = if exercise == Exercise::ExternalRotation {
            &["table", "strapping", "pose", "preparing", "set", "lowering", "pose again", "handling"]
        } else {
            &["table", "strapping", "pose", "set", "pose again", "handling"]
        };
        assert_eq!(names, wanted);
        assert!(recording.phases.windows(2).all(|pair| pair[0].until_s == pair[1].from_s));
        let unrest = |name: &str| {
            let phase = recording.phases.iter().find(|phase| phase.name == name).expect("the phase");
            assert!(!name.starts_with("pose") || phase.until_s - phase.from_s >= 3.0, "{name}");
            let rows: Vec<_> = recording
                .samples
                .iter()
                .filter(|row| row.t_s > phase.from_s + 0.3 && row.t_s < phase.until_s - 0.1)
                .collect();
            let mean = rows.iter().map(|row| row.rate).sum::<glam::DVec3>() / rows.len() as f64;
            (rows.iter().map(|row| (row.rate - mean).length_squared()).sum::<f64>() / rows.len() as f64)
                .sqrt()
                .to_degrees()
        };
        assert!(unrest("pose") < 4.0 && unrest("pose again") < 4.0, "{exercise:?}");
        assert!(unrest("strapping") > 20.0, "{exercise:?}");
    }
}

#[test]
fn each_fault_is_in_the_rows_and_in_the_truth() {
    let usual = Scenario::usual(4, ABDUCTION);
    let whole = record(&usual);
    let lost = record(&Scenario { gaps: vec![Gap { at: 0.5, seconds: 1.5 }], ..usual.clone() });
    let widest = |rows: &[recorder::Sample]| rows.windows(2).map(|pair| pair[1].t_s - pair[0].t_s).fold(0.0, f64::max);
    assert!(widest(&whole.samples) < 0.12 && (1.4..1.65).contains(&widest(&lost.samples)));
    assert_eq!((lost.gaps.len(), lost.expected(), whole.expected()), (1, "usable or not", "usable"));
    // The truth is of what happened, whatever the phone lost.
    assert_eq!(lost.truth.repetitions, whole.truth.repetitions);

    let turned = record(&Scenario { gravity: Gravity::Opposite, ..usual.clone() });
    let level = |recording: &recorder::Recording| recording.samples[20].force.z;
    assert!(level(&whole) > 9.3 && level(&turned) < -9.3);

    let slipped = record(&Scenario { grip: Grip::Slips, ..usual.clone() });
    let by = slipped.truth.slipped_deg.expect("it slipped");
    assert!((14.0..=30.0).contains(&by));
    let bare = record(&Scenario { opening: Opening::Nothing, ending: Ending::Nothing, ..usual });
    assert_eq!(bare.phases.iter().map(|phase| phase.name).collect::<Vec<_>>(), ["set"]);
}

#[test]
fn the_truth_file_says_that_it_is_invented_and_where_each_number_comes_from() {
    let json = record(&Scenario::usual(2, ABDUCTION)).truth_json();
    assert_eq!(json["invented"], true);
    for part in ["person", "phone", "strap", "set", "scene"] {
        let drawn = json["parameters"][part].as_array().expect("a list");
        assert!(!drawn.is_empty(), "{part}");
        for one in drawn {
            assert!(one["source"].as_str().is_some_and(|source| !source.is_empty()), "{one}");
            assert!(one["value"].is_number() && one["unit"].is_string(), "{one}");
        }
    }
}

#[test]
fn subjects_in_turn_reach_all() {
    let mut words: Vec<&str> = (0..80).map(|number| Scenario::subject_in_turn(number).word()).collect();
    words.sort_unstable();
    words.dedup();
    assert_eq!(words.len(), Subject::all().len());
}
