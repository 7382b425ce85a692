//! Angles by the standard: published relations, and what must hold of every arm.

use body::{
    Angle, ClinicalReading, ForwardRightAxial, Frame, Matrix, Reading, Rotation, Shoulder, Side, Thoracohumeral,
};
use proptest::prelude::*;

fn degrees(angle: f64) -> Angle {
    Angle::from_degrees(angle)
}

#[track_caller]
fn reads(humerus: Rotation, [plane, elevation, axial]: [f64; 3], within: f64) {
    let angles = Thoracohumeral::of(humerus);
    let ours =
        [angles.plane_of_elevation().expect("defined"), angles.elevation(), angles.axial_rotation().expect("defined")];
    for (ours, expected) in ours.into_iter().zip([plane, elevation, axial]) {
        assert!((ours - degrees(expected)).wrapped().abs().degrees() < within, "{ours} and {expected}");
    }
}

/// Rows of the evidence's table of clinical terms: the sequence of the recommendation of 2005, computed with SciPy there.
#[test]
fn clinical_poses_read_as_the_table_says() {
    reads(Rotation::about_z(degrees(60.0)), [90.0, 60.0, -90.0], 1e-9);
    reads(Rotation::about_x(degrees(-60.0)), [0.0, 60.0, 0.0], 1e-9);
    reads(Shoulder::raised(degrees(30.0), degrees(90.0)).humerus(), [30.0, 90.0, -30.0], 1e-9);
    let out_and_turned = Shoulder::raised_to_the_side(degrees(90.0));
    reads(out_and_turned.turned_outward(degrees(90.0)).humerus(), [0.0, 90.0, -90.0], 1e-9);
    reads(out_and_turned.turned_outward(degrees(-70.0)).humerus(), [0.0, 90.0, 70.0], 1e-9);
    let at_the_side = Thoracohumeral::of(Shoulder::HANGING.turned_outward(degrees(40.0)).humerus());
    assert!(!at_the_side.is_defined());
    assert!((at_the_side.y_sum().degrees() + 40.0).abs() < 1e-9);
}

/// The two matrices of the evidence, six decimals each; the second is X-Z-Y (−35, 50, −20), for which SciPy's own branch
/// is (−115.701, 58.228, 112.429).
#[test]
fn written_matrices_read_in_the_branch_of_the_standard() {
    let nearest = |rows| Matrix::from_rows(rows).nearest().expect("a turn is near");
    let first =
        nearest([[0.246_202, -0.556_67, -0.793_412], [0.663_414, -0.5, 0.556_67], [-0.706_588, -0.663_414, 0.246_202]]);
    reads(first, [40.0, 120.0, -50.0], 1e-4);
    let sum = Thoracohumeral::of(first).y_sum();
    assert!((sum.degrees() + 10.0).abs() < 1e-4, "(40, 120, −50) is a clinical rotation of −10: {sum}");
    let second = nearest([
        [0.604_023, -0.766_044, -0.219_846],
        [0.785_838, 0.526_541, 0.324_366],
        [-0.132_72, -0.368_688, 0.920_03],
    ]);
    reads(second, [64.299, 58.228, -67.571], 1e-3);
    let alternative = ForwardRightAxial::of(second);
    let ours = [alternative.about_forward, Some(alternative.about_right), alternative.about_humerus];
    for (ours, expected) in ours.into_iter().zip([-35.0, 50.0, -20.0]) {
        assert!((ours.expect("defined").degrees() - expected).abs() < 1e-3, "{ours:?} {expected}");
    }
}

#[test]
fn at_both_ends_only_the_sum_is_left_and_nothing_is_not_a_number() {
    for turned in [-170.0, -90.0, -1e-7, 0.0, 33.0, 180.0] {
        let at_the_side = Thoracohumeral::of(Rotation::about_y(degrees(turned)));
        assert_eq!((at_the_side.plane_of_elevation(), at_the_side.axial_rotation()), (None, None));
        assert_eq!(at_the_side.noise_gain(), None);
        assert!((at_the_side.y_sum() - degrees(turned)).wrapped().abs().degrees() < 1e-9, "{turned}");
        let up = Rotation::about_y(degrees(turned)) * Rotation::about_x(degrees(-180.0));
        let up = Thoracohumeral::of(up);
        assert!(!up.is_defined() && up.y_sum().degrees().is_finite());
        assert!((up.elevation().degrees() - 180.0).abs() < 1e-9);
    }
    // The border is a sine of a thousandth, 0.0573 degrees, on both sides and at both ends.
    let defined = |elevation: f64| Thoracohumeral::of(Rotation::about_z(degrees(elevation))).is_defined();
    assert_eq!([defined(0.0572), defined(0.0574)], [false, true]);
    assert_eq!([defined(179.9426), defined(179.9428)], [true, false]);
}

#[test]
fn the_sum_does_not_jump_where_the_other_angles_do() {
    // A hand that draws a small circle at the side, turned outward by 25 all the while.
    for step in 0..=360 {
        let held = Shoulder::raised(degrees(f64::from(step)), degrees(0.5)).turned_outward(degrees(25.0));
        let sum = Thoracohumeral::of(held.humerus()).y_sum().degrees();
        assert!((sum + 25.0).abs() < 1e-9, "{step}: {sum}");
    }
}

fn any_turn() -> impl Strategy<Value = (f64, f64, f64)> {
    (-180.0..180.0, 0.0..180.0, -180.0..180.0)
}

proptest! {
    #[test]
    fn there_and_back((plane, elevation, axial) in any_turn()) {
        let turn = Thoracohumeral::rotation(degrees(plane), degrees(elevation), degrees(axial));
        let angles = Thoracohumeral::of(turn);
        prop_assert!((angles.elevation().degrees() - elevation).abs() < 1e-6);
        if let (Some(plane), Some(axial)) = (angles.plane_of_elevation(), angles.axial_rotation()) {
            let back = Thoracohumeral::rotation(plane, angles.elevation(), axial);
            prop_assert!(back.distance(turn) < degrees(1e-6));
            // The branch: never a negative elevation, every angle within one turn.
            for angle in [plane, axial, angles.y_sum()] {
                prop_assert!(angle > degrees(-180.0) && angle <= degrees(180.0));
            }
            if elevation < 179.0 {
                prop_assert!((plane + axial - angles.y_sum()).wrapped().abs() < degrees(1e-6));
            }
        } else {
            prop_assert!(degrees(elevation).sin() < 1.000_001e-3);
        }
        let other = ForwardRightAxial::of(turn);
        if let (Some(forward), Some(humerus)) = (other.about_forward, other.about_humerus) {
            let back = ForwardRightAxial::rotation(forward, other.about_right, humerus);
            prop_assert!(back.distance(turn) < degrees(1e-6));
        }
    }

    #[test]
    fn a_mirrored_left_arm_has_the_same_clinical_numbers((plane, elevation, axial) in any_turn()) {
        let right = Matrix::from(Thoracohumeral::rotation(degrees(plane), degrees(elevation), degrees(axial)));
        let left = right.as_right_arm(Side::Left);
        let clinical = |matrix, side| {
            let angles = Reading::of(matrix, side).angles.expect("a turn");
            (angles, ClinicalReading::of(&angles))
        };
        prop_assert_eq!(clinical(&right, Side::Right), clinical(&left, Side::Left));
    }

    #[test]
    fn the_clinical_words_lead_back_to_the_arm(
        plane in -180.0..180.0, elevation in 0.1..179.0, outward in -120.0..120.0
    ) {
        let held = Shoulder::raised(degrees(plane), degrees(elevation)).turned_outward(degrees(outward));
        let back = Shoulder::of(held.humerus());
        prop_assert!((back.elevation - held.elevation).abs() < degrees(1e-6));
        prop_assert!((back.plane - held.plane).wrapped().abs() < degrees(1e-6));
        prop_assert!((back.outward - held.outward).wrapped().abs() < degrees(1e-6));
    }

    #[test]
    fn whatever_the_nine_numbers_nothing_is_not_a_number(entries in prop::array::uniform9(any::<f64>())) {
        let reading = Reading::of(&Matrix::from_array(entries), Side::Right);
        let has_turn = matches!(reading.frame.frame, Frame::Turn | Frame::Off);
        prop_assert_eq!(reading.angles.is_some(), has_turn);
        if let Some(angles) = reading.angles {
            let all = [Some(angles.elevation()), Some(angles.y_sum()), angles.plane_of_elevation(), angles.axial_rotation()];
            prop_assert!(all.into_iter().flatten().all(|angle| angle.degrees().is_finite()), "{:?}", angles);
        }
    }

    #[test]
    fn a_departure_moves_the_nearest_turn_by_no_more_than_itself(
        (plane, elevation, axial) in any_turn(), noise in prop::array::uniform9(-0.05..0.05)
    ) {
        let turn = Thoracohumeral::rotation(degrees(plane), degrees(elevation), degrees(axial));
        let mut entries = *Matrix::from(turn).entries();
        entries.iter_mut().zip(noise).for_each(|(entry, noise)| *entry += noise);
        let near = Matrix::from_array(entries).nearest().expect("far from flat");
        // The nearest is at most twice as far from the turn as the matrix is, by the triangle of distances; a chord of
        // matrices of length d is a turn of 2 asin(d / √8).
        let departure = noise.iter().map(|noise| noise * noise).sum::<f64>().sqrt();
        let most = Angle::from_radians(2.0 * (2.0 * departure / 8.0_f64.sqrt()).asin());
        prop_assert!(near.distance(turn) <= most + degrees(1e-9));
    }
}
