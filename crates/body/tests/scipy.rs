//! Angles against SciPy's, written down by `checks/angles/compare.py --fixture`: over a thousand random rotations and
//! those at the singular places.

use body::{Angle, ForwardRightAxial, Matrix, Side, Thoracohumeral, read_all};

/// A rotation and its angles as SciPy has them; none where they have no value.
struct Known {
    matrix: Matrix,
    quaternion: [f64; 4],
    plane: Option<f64>,
    elevation: f64,
    axial: Option<f64>,
    sum: Option<f64>,
    forward_right_humerus: [Option<f64>; 3],
}

fn fixture() -> Vec<Known> {
    let text = include_str!("scipy.csv");
    let rows = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    rows.map(|line| {
        let cells: Vec<Option<f64>> =
            line.split(',').map(|cell| (!cell.is_empty()).then(|| cell.parse().expect("a number"))).collect();
        let [w, x, y, z, plane, elevation, axial, sum, forward, right, humerus] = cells[..] else {
            panic!("eleven cells: {line}");
        };
        let quaternion = [w, x, y, z].map(|part| part.expect("a quaternion is whole"));
        Known {
            matrix: matrix(quaternion),
            quaternion,
            plane,
            elevation: elevation.expect("always there"),
            axial,
            sum,
            forward_right_humerus: [forward, right, humerus],
        }
    })
    .collect()
}

/// The rotation of a quaternion of any length, by the formula of every textbook.
fn matrix([w, x, y, z]: [f64; 4]) -> Matrix {
    let n = w * w + x * x + y * y + z * z;
    Matrix::from_rows([
        [(w * w + x * x - y * y - z * z) / n, 2.0 * (x * y - w * z) / n, 2.0 * (x * z + w * y) / n],
        [2.0 * (x * y + w * z) / n, (w * w - x * x + y * y - z * z) / n, 2.0 * (y * z - w * x) / n],
        [2.0 * (x * z - w * y) / n, 2.0 * (y * z + w * x) / n, (w * w - x * x - y * y + z * z) / n],
    ])
}

/// How far two angles of a circle are apart, in degrees.
fn off(one: Angle, other: f64) -> f64 {
    (one - Angle::from_degrees(other)).wrapped().abs().degrees()
}

#[track_caller]
fn agrees(angles: &Thoracohumeral, known: &Known) {
    let quaternion = known.quaternion;
    assert_eq!(angles.is_defined(), known.plane.is_some(), "{quaternion:?}");
    assert!(off(angles.elevation(), known.elevation) < 1e-6, "{quaternion:?}: {}", angles.elevation());
    // A rounding of the matrix grows in plane and axial rotation as any noise does.
    let room = 1e-9 * angles.noise_gain().unwrap_or(1.0);
    for (ours, theirs) in [(angles.plane_of_elevation(), known.plane), (angles.axial_rotation(), known.axial)] {
        if let (Some(ours), Some(theirs)) = (ours, theirs) {
            assert!(off(ours, theirs) < room, "{quaternion:?}: {ours} and {theirs}");
        }
    }
    let sum = angles.y_sum();
    assert!(sum.degrees().is_finite(), "{quaternion:?}");
    if let Some(theirs) = known.sum {
        assert!(off(sum, theirs) < 1e-6, "{quaternion:?}: {sum} and {theirs}");
    }
}

#[test]
fn angles_are_those_of_scipy_in_the_branch_of_the_standard() {
    let known = fixture();
    assert!(known.len() > 1200);
    assert!(known.iter().filter(|known| known.plane.is_none()).count() >= 30);
    for known in &known {
        let turn = known.matrix.nearest().expect("a rotation");
        let angles = Thoracohumeral::of(turn);
        agrees(&angles, known);
        if let (Some(plane), Some(axial)) = (angles.plane_of_elevation(), angles.axial_rotation()) {
            let back = Thoracohumeral::rotation(plane, angles.elevation(), axial);
            assert!(back.distance(turn) < Angle::from_degrees(1e-6), "{:?}", known.quaternion);
        }
    }
}

#[test]
fn many_at_once_are_those_of_scipy() {
    let known = fixture();
    let matrices: Vec<Matrix> = known.iter().map(|known| known.matrix).collect();
    let mut readings = Vec::new();
    read_all(&matrices, Side::Right, &mut readings);
    for (reading, known) in readings.iter().zip(&known) {
        agrees(&reading.angles.expect("a rotation"), known);
    }
    // The mirror image of each, read as a left arm: the same to the last place.
    let mirrored: Vec<Matrix> = matrices.iter().map(|matrix| matrix.as_right_arm(Side::Left)).collect();
    let mut left = Vec::new();
    read_all(&mirrored, Side::Left, &mut left);
    for (left, right) in left.iter().zip(&readings) {
        assert_eq!(left.angles, right.angles);
    }
}

#[test]
fn the_alternative_is_that_of_scipy() {
    for known in fixture() {
        let turn = known.matrix.nearest().expect("a rotation");
        let angles = ForwardRightAxial::of(turn);
        let ours = [angles.about_forward, Some(angles.about_right), angles.about_humerus];
        let room = 1e-9 / angles.about_right.cos().abs().max(1e-3);
        for (ours, theirs) in ours.into_iter().zip(known.forward_right_humerus) {
            assert_eq!(ours.is_some(), theirs.is_some(), "{:?}", known.quaternion);
            if let (Some(ours), Some(theirs)) = (ours, theirs) {
                assert!(off(ours, theirs) < room.max(1e-6), "{:?}: {ours} and {theirs}", known.quaternion);
            }
        }
    }
}
