//! A warm handout of about ten pages, and the memory before and after a hundred of them.

use std::hint::black_box;

use criterion::Criterion;
use sheets::Document;

#[path = "../tests/sample/mod.rs"]
mod sample;

/// Documents in a row for the look at the memory.
const MANY: usize = 100;

/// Resident memory in MiB; none where the system has no such file.
fn resident() -> Option<f64> {
    let statm = std::fs::read_to_string("/proc/self/statm").ok()?;
    let pages: f64 = statm.split_whitespace().nth(1)?.parse().ok()?;
    Some(pages * 4096.0 / 1024.0 / 1024.0)
}

/// The handout with another small print, so that nothing of it is remembered whole.
fn numbered(number: usize) -> Document {
    let mut handout = sample::handout();
    handout.foot = format!("{} {number}", handout.foot);
    for block in &mut handout.blocks {
        if let sheets::Block::Bands { bands } = block {
            for band in bands {
                band.dose = format!("{} {number}", band.dose);
            }
        }
    }
    handout
}

fn main() {
    let mut criterion = Criterion::default().configure_from_args().sample_size(20);
    let mut number = 0;
    criterion.bench_function("handout, warm, never the same", |bencher| {
        bencher.iter_batched(
            || {
                number += 1;
                numbered(number)
            },
            |handout| black_box(paper::pdf(&handout).expect("printed")),
            criterion::BatchSize::PerIteration,
        );
    });
    let before = resident();
    for number in 0..MANY {
        let bytes = paper::pdf(&numbered(1_000_000 + number)).expect("printed");
        if number % (MANY / 5) == 0 {
            println!("document {number}: {} bytes, resident {:?} MiB", bytes.len(), resident());
        }
    }
    println!("resident before {before:?} MiB, after {MANY} documents {:?} MiB", resident());
    criterion.final_summary();
}
