//! How fast records are composed, checked and compared, on one core.
//!
//! `cargo bench -p proof`. One task of the proof runs on one thread, so the
//! elements a second are those of a core.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use diagnostic::{FileId, Sink};
use proof::{Manner, Space, Watch, differences, prove, walk};
use protocol::Library;

fn shipped() -> Library {
    let mut next = 0..;
    Library::shipped(|_, _| FileId(next.next().expect("few files")), &mut Sink::new())
}

fn records(criterion: &mut Criterion) {
    let library = shipped();
    let family = library.families.iter().find(|family| family.file.id == "cuff").expect("it is shipped");
    let space = Space::of_facts(family);
    let records = walk(&space, Manner::ByRule, &Watch::default()).records;
    let mut group = criterion.benchmark_group("one core, the facts of the record alone");
    group.sample_size(10).throughput(Throughput::Elements(records));
    group.bench_function("every record composed, checked and compared", |bencher| {
        bencher.iter(|| walk(&space, Manner::Singly, &Watch::default()));
    });
    group.bench_function("the same by rule", |bencher| {
        bencher.iter(|| walk(&space, Manner::ByRule, &Watch::default()));
    });
    group.finish();
    let mut group = criterion.benchmark_group("all cores");
    group.sample_size(10);
    group.bench_function("the proof of the shipped family", |bencher| {
        bencher.iter(|| prove(family, Some(family), Manner::ByRule, &Watch::default()).expect("it ends"));
    });
    group.bench_function("the comparison with its edition", |bencher| {
        bencher.iter(|| differences(family, family));
    });
    group.finish();
}

criterion_group!(benches, records);
criterion_main!(benches);
