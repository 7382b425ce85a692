//! The filter against its authors' own program: PyPI `vqf` 2.1.2, run once on the same formula.

use motion::{Estimate, Recording, Sample, tilt};

/// 30 s at 60 Hz of a phone that turns about three axes, shaken a little, with a gyroscope that is off.
fn formula() -> Recording {
    let rows = (0..1800).map(|at| {
        let t = f64::from(at) / 60.0;
        let (a, da) = (0.9 * (0.7 * t).sin(), 0.63 * (0.7 * t).cos());
        let (b, db) = (1.1 * (0.5 * t + 0.3).sin(), 0.55 * (0.5 * t + 0.3).cos());
        let (c, dc) = (0.8 * (1.1 * t + 1.0).sin(), 0.88 * (1.1 * t + 1.0).cos());
        let _ = a;
        let rate = [
            dc - da * b.sin() + 0.01,
            db * c.cos() + da * b.cos() * c.sin() - 0.006,
            -db * c.sin() + da * b.cos() * c.cos() + 0.008,
        ];
        let up = [-b.sin(), b.cos() * c.sin(), b.cos() * c.cos()];
        let shaken = [0.6 * (5.0 * t).sin(), 0.4 * (3.3 * t).cos(), 0.5 * (4.1 * t).sin()];
        let force = [0, 1, 2].map(|axis: usize| 9.81 * up[axis] + shaken[axis]);
        Some(Sample::new(t, force, rate))
    });
    Recording::of(rows)
}

fn off_by_deg(estimate: Estimate, expected: &[(usize, [f64; 3])]) -> f64 {
    let found = tilt(&formula(), estimate).expect("gravity is there").up;
    expected
        .iter()
        .map(|(row, expected)| {
            let found = found[*row].expect("every row was used");
            let across: f64 = (0..3).map(|axis| (found[axis] - expected[axis]).powi(2)).sum::<f64>().sqrt();
            (across / 2.0).asin().to_degrees() * 2.0
        })
        .fold(0.0, f64::max)
}

#[test]
fn live_it_is_the_reference_to_the_last_printed_digit() {
    // `VQF(1/60).updateBatch(gyr, acc)["quat6D"]`, the third row of its matrix.
    let reference = [
        (0, [-0.311_703_474, 0.616_419_382, 0.723_096_183]),
        (59, [-0.694_540_140, 0.440_294_464, 0.568_994_533]),
        (300, [-0.362_993_560, 0.184_911_152, 0.913_259_843]),
        (900, [-0.892_982_135, -0.300_508_405, 0.335_078_507]),
        (1799, [-0.417_568_192, 0.382_452_190, 0.824_237_300]),
    ];
    let off = off_by_deg(Estimate::Causal, &reference);
    // The goal is 0.01; numbers are printed with nine decimals, and nothing else differs.
    assert!(off < 1e-6, "{off}");
}

#[test]
fn stored_it_is_the_reference_to_the_last_printed_digit() {
    // `offlineVQF(gyr, acc, None, 1/60)["quat6D"]`.
    let reference = [
        (0, [-0.316_151_162, 0.586_439_390, 0.745_746_126]),
        (59, [-0.706_042_679, 0.447_006_762, 0.549_261_950]),
        (300, [-0.363_446_538, 0.167_907_281, 0.916_358_968]),
        (900, [-0.892_877_591, -0.316_262_498, 0.320_542_727]),
        (1799, [-0.414_830_451, 0.387_296_811, 0.823_357_078]),
    ];
    let off = off_by_deg(Estimate::Offline, &reference);
    // The goal is 0.1.
    assert!(off < 1e-6, "{off}");
}
