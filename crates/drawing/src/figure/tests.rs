//! What must hold of every figure, whatever the pose, the camera and the build.

use body::{Angle, Arm, Blade, Fingers, Pose, Posture, Shoulder, Skeleton, Vector};
use kurbo::{ParamCurve, Point};
use proptest::prelude::*;

use super::things::{self, Spot, Thing};
use super::*;
use crate::svg::Svg;

fn degrees(value: f64) -> Angle {
    Angle::from_degrees(value)
}

fn any_arm() -> impl Strategy<Value = Arm> {
    let fingers = prop_oneof![Just(Fingers::Soft), Just(Fingers::Straight), Just(Fingers::Closed)];
    let shoulder = (-90.0..130.0, 0.0..180.0, -110.0..100.0);
    (shoulder, 0.0..145.0, -85.0..85.0, -70.0..70.0, -20.0..20.0, fingers).prop_map(
        |((plane, elevation, outward), elbow, forearm, wrist, raised, fingers)| Arm {
            shoulder: Shoulder { plane: degrees(plane), elevation: degrees(elevation), outward: degrees(outward) },
            blade: Blade { raised: degrees(raised), forward: Angle::ZERO },
            elbow: degrees(elbow),
            forearm: degrees(forearm),
            wrist: degrees(wrist),
            fingers,
        },
    )
}

const POSTURES: [Posture; 8] = [
    Posture::Standing,
    Posture::Sitting,
    Posture::LyingOnTheBack,
    Posture::LyingOnTheSoundSide,
    Posture::LyingOnTheOperatedSide,
    Posture::LyingOnTheFront,
    Posture::BentForward,
    Posture::Kneeling,
];

fn any_pose() -> impl Strategy<Value = Pose> {
    (0..POSTURES.len(), -10.0..70.0, any_arm(), any_arm()).prop_map(|(posture, lean, operated, other)| Pose {
        posture: POSTURES[posture],
        lean: degrees(lean),
        operated,
        other,
    })
}

fn any_camera() -> impl Strategy<Value = Camera> {
    (-180.0..180.0, -20.0..85.0).prop_map(|(azimuth, elevation)| Camera::degrees(azimuth, elevation))
}

fn any_spec() -> impl Strategy<Value = FigureSpec> {
    (any_pose(), any::<bool>(), 0..Build::ALL.len(), 0..Hair::ALL.len(), 0..5_usize).prop_map(
        |(pose, has_ghost, build, hair, thing)| {
            let joints = Joints::of(&pose, OtherHand::AsPosed);
            let things = match thing {
                0 => vec![Thing::Stick { ends: [Spot::OperatedHand, Spot::OtherHand], beyond: [0.05; 2] }],
                1 => [things::bed(&joints), things::pillow_under_head(&joints)].concat(),
                2 => things::chair(&joints),
                3 => vec![Thing::Sling, Thing::Weight(Spot::OtherHand)],
                _ => Vec::new(),
            };
            let ghost = has_ghost.then_some(Pose { operated: Arm::HANGING, ..pose });
            FigureSpec { ghost, build: Build::ALL[build], hair: Hair::ALL[hair], things, ..FigureSpec::new(pose) }
        },
    )
}

fn painted(figure: &Composition, side: body::Side) -> String {
    let mut svg = Svg::new(100.0, 100.0, "figure", "figure");
    figure.paint(&mut svg, &Placing { side, ..Placing::new((50.0, 50.0), 75.0) });
    svg.finish()
}

/// Every place of every path of a picture, in units.
fn places(svg: &str) -> Vec<(i32, i32)> {
    let mut places = Vec::new();
    for path in svg.split(" d=\"").skip(1).map(|rest| rest.split('"').next().unwrap_or_default()) {
        let (mut at, mut start, mut pending) = ((0, 0), (0, 0), Vec::new());
        let mut command = 'M';
        for token in tokens(path) {
            match token {
                Token::Command(letter) => {
                    if letter == 'z' {
                        at = start;
                    }
                    command = letter;
                    pending.clear();
                }
                Token::Number(number) => pending.push(number),
            }
            let wanted = if command == 'c' { 6 } else { 2 };
            if pending.len() == wanted {
                let base = if command == 'M' { (0, 0) } else { at };
                let pairs: Vec<_> = pending.chunks(2).map(|pair| (base.0 + pair[0], base.1 + pair[1])).collect();
                at = pairs[pairs.len() - 1];
                if matches!(command, 'M' | 'm') {
                    start = at;
                }
                places.extend(pairs);
                pending.clear();
            }
        }
    }
    places
}

enum Token {
    Command(char),
    Number(i32),
}

fn tokens(path: &str) -> Vec<Token> {
    let mut tokens = Vec::new();
    let mut number = String::new();
    for letter in path.chars().chain([' ']) {
        if letter.is_ascii_digit() {
            number.push(letter);
            continue;
        }
        if !number.is_empty() {
            tokens.push(Token::Number(number.parse().expect("whole units")));
            number.clear();
        }
        match letter {
            '-' => number.push('-'),
            letter if letter.is_ascii_alphabetic() => tokens.push(Token::Command(letter)),
            _ => {}
        }
    }
    tokens
}

/// The distance from a point to the edge of an area.
fn to_edge(region: &Region, point: Point) -> f64 {
    let to_segment = |a: Point, b: Point| {
        let along = b - a;
        let share = ((point - a).dot(along) / along.hypot2().max(1e-18)).clamp(0.0, 1.0);
        point.distance(a + along * share)
    };
    let contours: Vec<Vec<Point>> = region.contours().collect();
    contours
        .iter()
        .flat_map(|contour| (0..contour.len()).map(|at| to_segment(contour[at], contour[(at + 1) % contour.len()])))
        .fold(f64::INFINITY, f64::min)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn visible_areas_tile_what_is_covered(spec in any_spec(), camera in any_camera()) {
        let figure = Figure::compose(&spec, &camera);
        let areas: Vec<&Region> = Role::ALL.iter().map(|role| figure.area(*role)).collect();
        let sum: f64 = areas.iter().map(|area| area.area()).sum();
        let together = Region::union_all(areas.iter().copied()).area();
        // No place belongs to two, but for the hair's breadth that hides edges.
        prop_assert!((sum - together).abs() < 0.02 * together, "{sum} {together}");
        // No place belongs to nobody, but for slivers.
        let covered = figure.covered().area();
        prop_assert!(together <= covered * 1.0001, "{together} {covered}");
        prop_assert!(covered - together < 0.02 * covered, "{together} {covered}");
    }

    #[test]
    fn a_left_figure_is_the_exact_mirror_of_the_right_one(spec in any_spec(), camera in any_camera()) {
        let figure = Figure::compose(&spec, &camera);
        let [right, left] = [body::Side::Right, body::Side::Left].map(|side| painted(&figure, side));
        // The picture's middle is at 500 units.
        let mirrored: Vec<(i32, i32)> = places(&right).into_iter().map(|(x, y)| (1000 - x, y)).collect();
        prop_assert_eq!(mirrored, places(&left));
        prop_assert_eq!(right.matches("<path").count(), left.matches("<path").count());
    }

    #[test]
    fn an_elbow_is_never_pinched(arm in any_arm(), camera in any_camera()) {
        let spec = FigureSpec::new(Pose { operated: arm, ..Pose::at_rest(Posture::Standing) });
        let figure = Figure::compose(&spec, &camera);
        let outline = Region::union_all(figure.wholes.iter().filter(|whole| whole.0 == Role::OperatedArm).map(|whole| &whole.1));
        let elbow = figure.project(figure.joints().skeleton.operated.elbow);
        prop_assert!(outline.contains(elbow));
        // The limb is 0.0245 of stature thick at its thinnest at the elbow, drawn with twenty corners.
        let thick = 0.0245 * (std::f64::consts::PI / 20.0).cos();
        prop_assert!(to_edge(&outline, elbow) > 0.9 * thick, "{}", to_edge(&outline, elbow));
    }

    #[test]
    fn the_drawn_arm_is_the_poses_arm(pose in any_pose()) {
        let joints = Joints::of(&pose, OtherHand::AsPosed);
        let plain = Skeleton::of(&joints.pose);
        // Told in the trunk's own frame, so that a body leaning on its hands counts too.
        let seen = |skeleton: &Skeleton, place: Vector| skeleton.trunk.inverse() * place;
        for (drawn, wanted) in [
            (joints.skeleton.operated.shoulder, plain.operated.shoulder),
            (joints.skeleton.operated.elbow, plain.operated.elbow),
            (joints.skeleton.operated.wrist, plain.operated.wrist),
            (joints.skeleton.other.wrist, plain.other.wrist),
        ] {
            prop_assert!(seen(&joints.skeleton, drawn).distance(seen(&plain, wanted)) < 1e-12);
        }
        prop_assert_eq!(joints.pose.operated, pose.operated);
    }

    #[test]
    fn hands_keep_their_thumb(pose in any_pose()) {
        let joints = Joints::of(&pose, OtherHand::AsPosed);
        for (arm, frames, flank) in [
            (joints.skeleton.operated, joints.pose.operated, 1.0),
            (joints.skeleton.other, joints.pose.other, -1.0),
        ] {
            let hand = hand_frame(&joints, &frames, flank);
            let distal = (arm.fingertip - arm.wrist).normalize();
            let palm = arm.palm;
            // With the thumb forward, fingers down and the palm inward, a right hand's turn is negative.
            let turn = distal.cross(hand).dot(palm) * flank;
            prop_assert!((turn + 1.0).abs() < 1e-9, "{turn}");
        }
    }
}

/// Toward the thumb of a hand in the room.
fn hand_frame(joints: &Joints, arm: &Arm, flank: f64) -> Vector {
    let trunk = if flank > 0.0 { joints.skeleton.trunk } else { joints.skeleton.trunk.mirrored() };
    let thumb = (trunk * arm.hand_frame()).x();
    Vector::new(thumb.x, thumb.y, thumb.z * flank)
}

#[test]
fn feet_stand_on_the_floor() {
    for posture in [Posture::Standing, Posture::Sitting, Posture::BentForward, Posture::LyingOnTheBack] {
        for lean in [0.0, 30.0, 60.0] {
            let pose = Pose { lean: degrees(lean), ..Pose::at_rest(posture) };
            let joints = Joints::of(&pose, OtherHand::AsPosed);
            for (leg, foot) in [joints.skeleton.operated_leg, joints.skeleton.other_leg].into_iter().zip(joints.feet) {
                assert!(foot.y().distance(Vector::Y) < 1e-9, "{posture} {lean}: the sole is not level");
                let sole = leg.ankle.y - joints::ANKLE_HEIGHT;
                assert!((sole - joints.floor).abs() < 0.003, "{posture} {lean}: {sole} {}", joints.floor);
            }
        }
    }
}

#[test]
fn who_leans_on_the_hands_stands_on_one_floor() {
    let prop = Arm {
        shoulder: Shoulder { plane: degrees(90.0), elevation: degrees(90.0), outward: Angle::ZERO },
        forearm: degrees(80.0),
        wrist: degrees(-50.0),
        fingers: Fingers::Straight,
        ..Arm::HANGING
    };
    for posture in [Posture::Kneeling, Posture::LyingOnTheFront] {
        let pose = Pose { operated: prop, other: prop, ..Pose::at_rest(posture) };
        let joints = Joints::of(&pose, OtherHand::AsPosed);
        for wrist in [joints.skeleton.operated.wrist, joints.skeleton.other.wrist] {
            let above = wrist.y - joints.floor;
            assert!((0.0..0.03).contains(&above), "{posture}: {above}");
        }
        let lowest_knee = joints.skeleton.operated_leg.knee.y.min(joints.skeleton.operated_leg.ankle.y);
        assert!((0.0..0.08).contains(&(lowest_knee - joints.floor)), "{posture}");
    }
}

#[test]
fn a_stick_lies_in_both_palms() {
    let arm = Arm {
        shoulder: Shoulder { plane: degrees(90.0), elevation: degrees(70.0), outward: Angle::ZERO },
        forearm: degrees(80.0),
        fingers: Fingers::Closed,
        ..Arm::HANGING
    };
    let stick = Thing::Stick { ends: [Spot::OperatedHand, Spot::OtherHand], beyond: [0.1; 2] };
    let pose = Pose { operated: arm, other: arm, ..Pose::at_rest(Posture::Standing) };
    let spec = FigureSpec { things: vec![stick], ..FigureSpec::new(pose) };
    let figure = Figure::compose(&spec, &Camera::degrees(-30.0, 10.0));
    let [from, to] = figure.sticks[0];
    for grip in [figure.joints().skeleton.operated.grip, figure.joints().skeleton.other.grip] {
        let along = (to - from).normalize();
        let off = (grip - from) - along * (grip - from).dot(along);
        // The axis lies 0.019 of stature off the middle of the palm.
        assert!((off.length() - 0.019).abs() < 0.002, "{}", off.length());
    }
    assert_eq!(figure.faults(), []);
}

#[test]
fn faults_are_found() {
    let behind = Arm {
        shoulder: Shoulder { plane: degrees(-90.0), elevation: degrees(30.0), outward: degrees(-110.0) },
        elbow: degrees(90.0),
        ..Arm::HANGING
    };
    let pose = Pose { operated: behind, ..Pose::at_rest(Posture::Standing) };
    let from_the_front = Figure::compose(&FigureSpec::new(pose), &Camera::degrees(20.0, 4.0));
    assert!(matches!(from_the_front.faults()[..], [Fault::OperatedArmHidden { .. }]), "{:?}", from_the_front.faults());
    let far = FigureSpec {
        other_hand: OtherHand::At(Vector::new(0.9, 0.2, 0.0)),
        ..FigureSpec::new(Pose::at_rest(Posture::Standing))
    };
    let far = Figure::compose(&far, &Camera::degrees(-90.0, 4.0));
    assert!(far.faults().iter().any(|fault| matches!(fault, Fault::OutOfReach { by } if *by > 0.3)));
    let through = Thing::Stick {
        ends: [Spot::At(Vector::new(-0.3, 0.1, 0.0)), Spot::At(Vector::new(0.3, 0.1, 0.0))],
        beyond: [0.0; 2],
    };
    let spec = FigureSpec { things: vec![through], ..FigureSpec::new(Pose::at_rest(Posture::Standing)) };
    let through = Figure::compose(&spec, &Camera::degrees(0.0, 4.0));
    assert!(through.faults().iter().any(|fault| matches!(fault, Fault::StickThroughBody { by } if *by > 0.04)));
}

#[test]
fn no_line_is_too_thin_to_print() {
    for mm_per_stature in [20.0, 40.0, 75.0, 150.0] {
        let placing = Placing::new((0.0, 0.0), mm_per_stature);
        assert!(placing.line_mm(0.18) >= 0.15);
        assert!(placing.line_mm(0.44) > placing.line_mm(0.18));
    }
}

#[test]
fn a_figure_is_small() {
    let arm = Arm {
        shoulder: Shoulder { plane: degrees(30.0), elevation: degrees(100.0), outward: Angle::ZERO },
        ..Arm::HANGING
    };
    for posture in POSTURES {
        for azimuth in [-90.0, -40.0, 0.0, 35.0, 150.0] {
            let pose = Pose { operated: arm, ..Pose::at_rest(posture) };
            let spec = FigureSpec { ghost: Some(Pose::at_rest(posture)), ..FigureSpec::new(pose) };
            let svg = painted(&Figure::compose(&spec, &Camera::degrees(azimuth, 10.0)), body::Side::Right);
            assert!(svg.len() <= 9_000, "{posture} {azimuth}: {} bytes", svg.len());
            assert!(svg.matches("<path").count() <= 70);
        }
    }
}

#[test]
fn the_same_figure_twice_is_the_same_text() {
    let spec = FigureSpec::new(Pose::at_rest(Posture::Sitting));
    let once = || painted(&Figure::compose(&spec, &Camera::degrees(-40.0, 8.0)), body::Side::Right);
    assert_eq!(once(), once());
}

#[test]
fn the_shirt_hangs_over_the_hips_of_somebody_who_stands() {
    // A leg of the shorts once showed through here, because its outline met a corner of the hem.
    let shoulder = Shoulder { plane: degrees(60.0), elevation: degrees(60.0), outward: Angle::ZERO };
    let arm = Arm { shoulder, elbow: degrees(30.0), ..Arm::HANGING };
    let spec = FigureSpec {
        build: Build::Curved,
        hair: Hair::Scarf,
        ..FigureSpec::new(Pose { operated: arm, ..Pose::at_rest(Posture::Standing) })
    };
    // Beyond these the other arm hangs before the belly.
    for azimuth in -28..=28 {
        let figure = Figure::compose(&spec, &Camera::degrees(f64::from(azimuth), 5.0));
        let belly = kurbo::Rect::new(-0.06, 0.02, 0.06, 0.07);
        for (ink, _, path) in &figure.lines {
            let mut places = path.segments().flat_map(|segment| [0.2, 0.5, 0.8].map(|share| segment.eval(share)));
            assert!(*ink == part::Ink::Ghost || !places.any(|place| belly.contains(place)), "{azimuth}: {ink:?}");
        }
    }
}
