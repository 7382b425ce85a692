//! How long one figure takes on one core, from the pose to the text of the picture.
//!
//! `cargo bench -p drawing --bench figure`. The goal is 10 ms a figure.

use std::hint::black_box;

use body::{Angle, Arm, Pose, Posture, Shoulder};
use criterion::{Criterion, criterion_group, criterion_main};
use drawing::Svg;
use drawing::figure::things::{self, Spot, Thing};
use drawing::figure::{Camera, Figure, FigureSpec, Joints, OtherHand, Placing};

fn picture(spec: &FigureSpec, camera: &Camera) -> usize {
    let figure = Figure::compose(spec, camera);
    let mut svg = Svg::new(90.0, 90.0, "figure", "figure");
    figure.paint(&mut svg, &Placing::new((45.0, 45.0), 75.0));
    svg.finish().len()
}

fn figures(criterion: &mut Criterion) {
    let raised =
        Shoulder { plane: Angle::from_degrees(30.0), elevation: Angle::from_degrees(100.0), ..Shoulder::HANGING };
    let arm = Arm { shoulder: raised, ..Arm::HANGING };
    let mut group = criterion.benchmark_group("figure");
    let standing = Pose { operated: arm, ..Pose::at_rest(Posture::Standing) };
    let plain = FigureSpec::new(standing);
    group.bench_function("standing", |bencher| {
        bencher.iter(|| picture(black_box(&plain), &Camera::degrees(35.0, 4.0)));
    });
    let ghost = FigureSpec { ghost: Some(Pose::at_rest(Posture::Standing)), ..FigureSpec::new(standing) };
    group.bench_function("standing, with its start", |bencher| {
        bencher.iter(|| picture(black_box(&ghost), &Camera::degrees(35.0, 4.0)));
    });
    let lying = Pose { operated: arm, other: arm, ..Pose::at_rest(Posture::LyingOnTheBack) };
    let joints = Joints::of(&lying, OtherHand::AsPosed);
    let mut held = [things::bed(&joints), things::pillow_under_head(&joints)].concat();
    held.push(Thing::Stick { ends: [Spot::OperatedHand, Spot::OtherHand], beyond: [0.05; 2] });
    let lying = FigureSpec { things: held, ..FigureSpec::new(lying) };
    group.bench_function("lying on a bed, with a stick", |bencher| {
        bencher.iter(|| picture(black_box(&lying), &Camera::degrees(-78.0, 14.0)));
    });
    group.finish();
}

criterion_group!(benches, figures);
criterion_main!(benches);
