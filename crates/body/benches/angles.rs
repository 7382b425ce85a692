//! How many matrices a second are checked and read on one core.
//!
//! `cargo bench -p body`. The goal is 15 million a second with the check of the frame. The other side of the comparison,
//! SciPy's conversion of the same number, is timed by `checks/angles/compare.py --time`.

use std::hint::black_box;

use body::{Angle, Matrix, Reading, Side, Thoracohumeral, read_all};
use criterion::{Criterion, Throughput, criterion_group, criterion_main};

const MATRICES: usize = 100_000;

/// Turns all over the range, each entry written to so many decimals as a file has.
fn matrices(decimals: i32) -> Vec<Matrix> {
    let scale = 10.0_f64.powi(decimals);
    (0..MATRICES)
        .map(|at| {
            // Steps that share no period with each other: no two matrices are alike.
            let angle = |step: f64, most: f64| Angle::from_degrees((at as f64 * step) % most);
            let turn =
                Thoracohumeral::rotation(angle(137.507_764, 360.0), angle(1.618_034, 180.0), angle(53.131, 360.0));
            Matrix::from_rows(turn.rows().map(|row| row.map(|entry| (entry * scale).round() / scale)))
        })
        .collect()
}

fn angles(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("angles");
    group.throughput(Throughput::Elements(MATRICES as u64));
    let mut readings = Vec::with_capacity(MATRICES);
    for decimals in [15, 6, 4] {
        let some = matrices(decimals);
        for side in [Side::Right, Side::Left] {
            group.bench_function(format!("check and read, {decimals} decimals, {side}"), |bencher| {
                bencher.iter(|| {
                    read_all(black_box(&some), side, &mut readings);
                    black_box(readings.len())
                });
            });
        }
    }
    let some = matrices(6);
    group.bench_function("one by one", |bencher| {
        bencher.iter(|| some.iter().filter(|matrix| Reading::of(matrix, Side::Right).angles.is_some()).count());
    });
    group.finish();
}

criterion_group!(benches, angles);
criterion_main!(benches);
