//! Writes pictures of the figure into a directory, to be looked at: `look DIRECTORY`.

use std::path::Path;

use body::{Angle, Arm, Fingers, Pose, Posture, Shoulder, Vector};
use drawing::Svg;
use drawing::figure::things::{self, Spot, Thing};
use drawing::figure::{Build, Camera, Figure, FigureSpec, Hair, Joints, OtherHand, Placing};

fn degrees(value: f64) -> Angle {
    Angle::from_degrees(value)
}

fn arm(plane: f64, elevation: f64, outward: f64, elbow: f64, forearm: f64) -> Arm {
    let shoulder = Shoulder { plane: degrees(plane), elevation: degrees(elevation), outward: degrees(outward) };
    Arm { shoulder, elbow: degrees(elbow), forearm: degrees(forearm), ..Arm::HANGING }
}

fn posed(posture: Posture, operated: Arm) -> Pose {
    Pose { operated, ..Pose::at_rest(posture) }
}

fn studies() -> Vec<(String, FigureSpec, Camera)> {
    let closed = |arm: Arm| Arm { fingers: Fingers::Closed, ..arm };
    let mut all = Vec::new();
    let mut add = |name: String, spec, azimuth, elevation| all.push((name, spec, Camera::degrees(azimuth, elevation)));
    let on_bed = |pose: Pose| {
        let joints = Joints::of(&pose, OtherHand::AsPosed);
        let things = [things::bed(&joints), things::pillow_under_head(&joints)].concat();
        FigureSpec { things, ..FigureSpec::new(pose) }
    };
    let pendulum = Pose { lean: degrees(60.0), ..posed(Posture::BentForward, arm(90.0, 60.0, 0.0, 0.0, 0.0)) };
    let floor = Joints::of(&pendulum, OtherHand::AsPosed).floor;
    let top = Vector::new(0.42, -0.06, -0.10);
    let spec = FigureSpec {
        other_hand: OtherHand::On(Vector::new(0.34, -0.06, -0.13)),
        things: things::table(top, 0.12, 0.16, floor),
        ..FigureSpec::new(pendulum)
    };
    add("pendulum".into(), spec, -75.0, 7.0);
    let rotation = posed(Posture::LyingOnTheBack, closed(arm(60.0, 20.0, 40.0, 90.0, 0.0)));
    let mut spec = on_bed(rotation);
    let grip = Joints::of(&rotation, OtherHand::AsPosed).skeleton.operated.grip;
    spec.other_hand = OtherHand::At(grip - Vector::Z * 0.24);
    spec.things.push(Thing::Stick { ends: [Spot::OperatedHand, Spot::OtherHand], beyond: [0.05, 0.08] });
    add("supine-rotation".into(), spec, -20.0, 36.0);
    let raised = closed(arm(90.0, 110.0, 0.0, 0.0, 80.0));
    let mut spec = on_bed(Pose { other: raised, ..posed(Posture::LyingOnTheBack, raised) });
    spec.things.push(Thing::Stick { ends: [Spot::OperatedHand, Spot::OtherHand], beyond: [0.08, 0.08] });
    add("supine-elevation".into(), spec, -78.0, 14.0);
    let scapular = posed(Posture::Standing, arm(30.0, 100.0, 0.0, 0.0, 0.0));
    let ghost = Some(posed(Posture::Standing, Arm::HANGING));
    let things = things::ground(&Joints::of(&scapular, OtherHand::AsPosed));
    add("scapular".into(), FigureSpec { ghost, things, ..FigureSpec::new(scapular) }, 35.0, 4.0);
    let flexion = posed(Posture::Sitting, closed(arm(0.0, 0.0, 0.0, 100.0, -80.0)));
    let mut things = things::chair(&Joints::of(&flexion, OtherHand::AsPosed));
    things.push(Thing::Weight(Spot::OperatedHand));
    add("elbow-flexion".into(), FigureSpec { things, ..FigureSpec::new(flexion) }, -82.0, 8.0);
    let mut shrug = Pose::at_rest(Posture::Standing);
    shrug.operated.blade.raised = degrees(15.0);
    add("shrug".into(), FigureSpec::new(shrug), -12.0, 4.0);
    let side = posed(Posture::LyingOnTheSoundSide, closed(arm(0.0, 0.0, 30.0, 90.0, 0.0)));
    add("side-rotation".into(), on_bed(side), -120.0, 30.0);
    add("side-rotation-front".into(), on_bed(side), -28.0, 18.0);
    let wall = posed(Posture::Standing, Arm { fingers: Fingers::Straight, ..arm(90.0, 130.0, 0.0, 20.0, 80.0) });
    let joints = Joints::of(&wall, OtherHand::AsPosed);
    let face = joints.skeleton.operated.grip + Vector::X * 0.02;
    let things = [things::wall(face, -Vector::X, joints.floor), things::ground(&joints)].concat();
    add("wall".into(), FigureSpec { things, ..FigureSpec::new(wall) }, -84.0, 6.0);
    add("front".into(), FigureSpec::new(Pose::at_rest(Posture::Standing)), 0.0, 2.0);
    add("back".into(), FigureSpec::new(posed(Posture::Standing, arm(10.0, 60.0, 0.0, 30.0, 0.0))), 180.0, 4.0);
    let sit = posed(Posture::Sitting, arm(10.0, 30.0, 0.0, 60.0, 0.0));
    let things = things::chair(&Joints::of(&sit, OtherHand::AsPosed));
    add("sit-front".into(), FigureSpec { things, ..FigureSpec::new(sit) }, -20.0, 10.0);
    let sling = posed(Posture::Standing, arm(70.0, 12.0, -55.0, 90.0, 0.0));
    let spec = FigureSpec { things: vec![Thing::Sling], ..FigureSpec::new(sling) };
    for azimuth in [-25.0, 20.0, 160.0] {
        add(format!("sling{azimuth}"), spec.clone(), azimuth, 4.0);
    }
    let band = posed(Posture::Standing, closed(arm(0.0, 4.0, 30.0, 90.0, 0.0)));
    let anchor = Spot::At(Vector::new(0.05, 0.07, -0.42));
    let things = vec![Thing::Band(vec![Spot::OperatedHand, anchor])];
    add("band".into(), FigureSpec { things, ..FigureSpec::new(band) }, -10.0, 10.0);
    let prone = posed(Posture::LyingOnTheFront, arm(0.0, 80.0, 0.0, 0.0, 0.0));
    add("prone".into(), on_bed(prone), -70.0, 20.0);
    let kneel = posed(Posture::Kneeling, Arm { wrist: degrees(-80.0), ..arm(90.0, 90.0, 0.0, 4.0, 80.0) });
    add(
        "kneel".into(),
        FigureSpec { things: things::bed(&Joints::of(&kneel, OtherHand::AsPosed)), ..FigureSpec::new(kneel) },
        -70.0,
        12.0,
    );
    for (&build, &hair) in Build::ALL.iter().zip(Hair::ALL) {
        let pose = posed(Posture::Standing, arm(60.0, 60.0, 0.0, 30.0, 0.0));
        let spec = FigureSpec { build, hair, ..FigureSpec::new(pose) };
        for azimuth in [-25.0, -85.0, 150.0] {
            add(format!("build-{build:?}-{hair:?}{azimuth}"), spec.clone(), azimuth, 5.0);
        }
    }
    for (name, fingers) in [("straight", Fingers::Straight), ("soft", Fingers::Soft), ("closed", Fingers::Closed)] {
        let hand = posed(Posture::Standing, Arm { fingers, ..arm(60.0, 70.0, 0.0, 60.0, 0.0) });
        for azimuth in [-120.0, -30.0, 60.0, 150.0] {
            add(format!("hand-{name}{azimuth}"), FigureSpec::new(hand), azimuth, 10.0);
        }
    }
    all
}

fn main() -> std::io::Result<()> {
    let directory = std::env::args().nth(1).unwrap_or_else(|| "look".to_owned());
    std::fs::create_dir_all(&directory)?;
    for (name, spec, camera) in studies() {
        if std::env::args().nth(2).is_some_and(|only| !name.starts_with(&only)) {
            continue;
        }
        let start = std::time::Instant::now();
        let figure = Figure::compose(&spec, &camera);
        let spent = start.elapsed();
        let mm = 75.0;
        let bounds = figure.bounds().inflate(0.03, 0.03);
        let mut svg = Svg::new(bounds.width() * mm, bounds.height() * mm, &name, &name);
        figure.paint(&mut svg, &Placing::new((-bounds.x0 * mm, bounds.y1 * mm), mm));
        let grip = figure.project(figure.joints().skeleton.operated.grip);
        let place = format!("{} {}", (grip.x - bounds.x0) * mm, (bounds.y1 - grip.y) * mm);
        std::fs::write(Path::new(&directory).join(format!("{name}.txt")), place)?;
        let text = svg.finish();
        println!("{name}: {} bytes, {} paths, {spent:?}", text.len(), text.matches("<path").count());
        std::fs::write(Path::new(&directory).join(format!("{name}.svg")), text)?;
    }
    Ok(())
}
