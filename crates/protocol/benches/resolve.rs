//! How long a plan takes, alone and with everything that binds each of its values.
//!
//! `cargo bench -p protocol`. Reasons are looked up for every lane at each column
//! where its value changes, which is what a prescription prints; no text is made.

use std::hint::black_box;

use body::Movement;
use criterion::{Criterion, criterion_group, criterion_main};
use diagnostic::{FileId, Sink};
use operative::{DIMENSION_COUNT, Facts, SafeArc, SafeArcs, dimension};
use plan::{LaneId, Plan};
use protocol::{Choices, Compiled, Library, Requested, resolve, resolve_into};
use quantity::{Degrees, PostoperativeDay};

fn facts(findings: &[(&str, &str)]) -> Facts {
    let best = Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() };
    findings.iter().fold(best, |facts, (name, class)| {
        let id = dimension(name).expect("a dimension");
        facts.with(id, id.get().and_then(|known| known.class(class)).expect("a class"))
    })
}

/// What binds every value a prescription prints; gives how many bindings there were.
fn bindings(compiled: &Compiled<'_>, plan: &Plan, facts: &Facts) -> usize {
    let mut count = 0;
    for lane in (0_u8..).map(LaneId).take(plan.grid.keys.len()) {
        let values = plan.lane(lane);
        for column in (0..values.len()).filter(|&at| at == 0 || values[at] != values[at - 1]) {
            count += compiled.binding(plan, facts, lane, column).len();
        }
    }
    count
}

fn plans(criterion: &mut Criterion) {
    let mut sink = Sink::new();
    let mut next = 0..;
    let library = Library::shipped(|_, _| FileId(next.next().expect("few files")), &mut sink);
    assert!(!sink.has_errors());
    let family = library.families.iter().find(|family| family.file.id == "cuff").expect("it is shipped");
    let compiled = Compiled::new(family, &Choices::of(family), &[]);
    let arc = |movement, degrees, until: Option<u16>, index| SafeArc {
        movement,
        up_to: Degrees::whole(degrees),
        until: until.map(PostoperativeDay::new),
        index,
    };
    let arcs = [
        arc(Movement::ExternalRotation, 10, Some(42), 0),
        arc(Movement::ForwardElevation, 80, None, 1),
        arc(Movement::InternalRotation, 30, Some(84), 2),
    ];
    let everything = facts(&[
        ("tear size", "10 to under 30 mm"),
        ("subscapularis", "complete or open"),
        ("teres minor", "repaired"),
        ("tissue", "unknown"),
        ("tension", "unknown"),
        ("repair construct", "unknown"),
        ("revision", "unknown"),
        ("biceps", "unknown"),
        ("labrum", "unknown"),
        ("distal clavicle excision", "unknown"),
        ("slower", "yes"),
    ]);
    let cases = [
        ("one tendon", facts(&[])),
        ("two tendons", facts(&[("repaired tendons", "more than one"), ("infraspinatus", "repaired")])),
        ("most findings at once", Facts { safe_arcs: arcs.into_iter().collect(), ..everything }),
    ];
    for (name, facts) in cases {
        let mut group = criterion.benchmark_group(name);
        let mut plan = resolve(&compiled, &facts, Requested(None));
        group.bench_function("resolve", |bencher| {
            bencher.iter(|| resolve(black_box(&compiled), black_box(&facts), Requested(None)))
        });
        group.bench_function("resolve into the same memory", |bencher| {
            bencher.iter(|| resolve_into(black_box(&compiled), black_box(&facts), Requested(None), &mut plan));
        });
        group.bench_function("resolve with what binds every value", |bencher| {
            bencher.iter(|| {
                let plan = resolve(black_box(&compiled), black_box(&facts), Requested(None));
                bindings(&compiled, &plan, &facts)
            });
        });
        group.finish();
    }
}

criterion_group!(benches, plans);
criterion_main!(benches);
