//! Moments against values computed elsewhere.
//!
//! Where not said otherwise, expected numbers come from the project's evidence on motion, section on physics: an own
//! calculation apart from this code, with the tables of 1996 and of the handbook. They are given to a tenth.

use evidence::ids;
use proptest::prelude::*;
use quantity::{Kilograms, Millimeters};

use crate::*;

fn person(table: SegmentTable) -> Person {
    let (stature, mass) = match table {
        SegmentTable::Women => (1630, 65), // not medical: the person of the calculation
        _ => (1750, 80),                   // not medical: the person of the calculation
    };
    Person::new(Millimeters::whole(stature), Kilograms::whole(mass), table).expect("in range")
}

fn level_arm(elbow_deg: f64) -> Pose {
    let mut pose = Pose::at_rest(Posture::Standing);
    pose.operated.shoulder.elevation = Angle::from_degrees(90.0); // not medical: level
    pose.operated.elbow = Angle::from_degrees(elbow_deg);
    // To the side and turned inward a quarter, the bent forearm hangs straight down.
    pose.operated.shoulder.outward = Angle::from_degrees(-90.0); // not medical: a quarter turn
    pose
}

fn check(table: SegmentTable, elbow_deg: f64, held_g: i32, expected: f64) {
    let moments = Moments::of(person(table), &level_arm(elbow_deg), Kilograms::from_steps(held_g / 10)); // not medical: ten grams
    let found = moments.shoulder.newton_meters();
    assert!((found - expected).abs() <= 0.05 + 1e-9, "{table} {elbow_deg} {held_g}: {found:.3} for {expected}"); // not medical: a tenth, rounded
}

#[test]
fn a_mans_level_arm() {
    check(SegmentTable::Men, 0.0, 0, 12.7); // not medical: the calculation's value
    check(SegmentTable::Men, 90.0, 0, 9.7); // not medical: the calculation's value
    check(SegmentTable::Men, 0.0, 500, 16.0); // not medical: the calculation's value
    check(SegmentTable::Men, 90.0, 500, 11.3); // not medical: the calculation's value
    check(SegmentTable::Men, 0.0, 1000, 19.2); // not medical: the calculation's value
    check(SegmentTable::Men, 90.0, 1000, 12.9); // not medical: the calculation's value
}

#[test]
fn a_womans_level_arm() {
    check(SegmentTable::Women, 0.0, 0, 8.6); // not medical: the calculation's value
    check(SegmentTable::Women, 90.0, 0, 6.6); // not medical: the calculation's value
    check(SegmentTable::Women, 0.0, 1000, 14.6); // not medical: the calculation's value
    check(SegmentTable::Women, 90.0, 1000, 9.6); // not medical: the calculation's value
}

#[test]
fn the_handbooks_table_agrees_within_its_spread() {
    check(SegmentTable::Cadavers, 0.0, 0, 11.6); // not medical: the calculation's value
    check(SegmentTable::Cadavers, 90.0, 0, 8.7); // not medical: the calculation's value
}

fn hanging(table: SegmentTable, held_g: i32, period_s: f64, inertia: Option<f64>) {
    let arm = HangingArm::of(person(table), Kilograms::from_steps(held_g / 10)); // not medical: ten grams
    assert!((arm.natural_period_s() - period_s).abs() <= 0.005 + 1e-9, "{table}: {}", arm.natural_period_s()); // not medical: a hundredth, rounded
    if let Some(expected) = inertia {
        assert!((arm.inertia_kg_m2() - expected).abs() <= 0.0015, "{table}: {}", arm.inertia_kg_m2()); // not medical: the hand's length is from memory
    }
}

#[test]
fn how_fast_a_hanging_arm_swings() {
    hanging(SegmentTable::Men, 0, 1.32, Some(0.559)); // not medical: the calculation's value
    hanging(SegmentTable::Men, 500, 1.39, Some(0.776)); // not medical: the calculation's value
    hanging(SegmentTable::Men, 1000, 1.43, Some(0.993)); // not medical: the calculation's value
    hanging(SegmentTable::Women, 0, 1.26, Some(0.347)); // not medical: the calculation's value
    hanging(SegmentTable::Women, 1000, 1.40, Some(0.721)); // not medical: the calculation's value
    let man = HangingArm::of(person(SegmentTable::Men), Kilograms::whole(0));
    let woman = HangingArm::of(person(SegmentTable::Women), Kilograms::whole(0));
    assert!((man.center_of_oscillation_m() - 0.43).abs() < 0.005); // not medical: the calculation's value
    assert!((woman.center_of_oscillation_m() - 0.40).abs() < 0.01); // not medical: the calculation's value, to its last place
}

#[test]
fn an_arm_that_hangs_or_points_up_has_no_moment() {
    let straight_up = 180.0; // not medical: half a turn
    for elevation in [0.0, straight_up] {
        let mut pose = Pose::at_rest(Posture::Standing);
        pose.operated.shoulder.elevation = Angle::from_degrees(elevation);
        let found = Moments::of(person(SegmentTable::Men), &pose, Kilograms::whole(1));
        assert!(found.shoulder.newton_meters() < 1e-9 && found.elbow.newton_meters() < 1e-9); // not medical: rounding
    }
}

#[test]
fn on_the_back_the_moment_is_that_of_the_angle_to_the_vertical() {
    // Straight up at 90 degrees of elevation: none. At 0, along the bed: all of it.
    let mut pose = Pose::at_rest(Posture::LyingOnTheBack);
    pose.operated.shoulder.plane = Angle::from_degrees(90.0); // not medical: straight ahead
    let reference = Moments::straight_level_arm(person(SegmentTable::Men)).shoulder;
    let cosines = [(0.0, 1.0), (60.0, 0.5), (90.0, 0.0), (120.0, 0.5)]; // not medical: cosine of each, without sign
    for (elevation, share) in cosines {
        pose.operated.shoulder.elevation = Angle::from_degrees(elevation);
        let found = Moments::of(person(SegmentTable::Men), &pose, Kilograms::whole(0)).shoulder;
        let ratio = found.over(reference).expect("a reference");
        assert!((ratio - share).abs() < 1e-9, "{elevation}: {ratio}"); // not medical: rounding
    }
}

#[test]
fn rank_by_load_of_the_evidence() {
    // ρ = 0.50 at 30 degrees, 0.71 at 45; 0.76 bent at 90; with a kilogram 1.5 to 1.7.
    for table in [SegmentTable::Men, SegmentTable::Women] {
        let reference = Moments::straight_level_arm(person(table)).shoulder;
        let ratio = |pose: &Pose, held| Moments::of(person(table), pose, held).shoulder.over(reference).expect("some");
        let given = [(30.0, 0.50), (45.0, 0.71)]; // not medical: the calculation's values
        for (elevation, share) in given {
            let mut pose = Pose::at_rest(Posture::Standing);
            pose.operated.shoulder.elevation = Angle::from_degrees(elevation);
            assert!((ratio(&pose, Kilograms::whole(0)) - share).abs() < 0.005); // not medical: a hundredth, rounded
        }
        assert!((ratio(&level_arm(90.0), Kilograms::whole(0)) - 0.765).abs() < 0.01); // not medical: 0.76 to 0.77
        assert!((1.5..1.75).contains(&ratio(&level_arm(0.0), Kilograms::whole(1)))); // not medical: the calculation's range
    }
}

#[test]
fn a_movement_is_heaviest_where_the_arm_is_level() {
    let first = Pose::at_rest(Posture::Standing);
    let mut second = first;
    second.operated.shoulder.elevation = Angle::from_degrees(120.0); // not medical: any angle past level
    let peak = Moments::greatest_between(person(SegmentTable::Men), &first, &second, Kilograms::whole(0), |moments| {
        moments.shoulder
    });
    assert!((peak.at - 0.75).abs() < 1e-4); // not medical: 90 of 120 degrees
}

#[test]
fn absurd_people_are_refused_with_the_range() {
    let man = |stature, mass| Person::new(Millimeters::whole(stature), Kilograms::whole(mass), SegmentTable::Men);
    let told = |result: Result<Person, PersonError>| result.expect_err("out of range").to_string();
    assert_eq!(told(man(0, 80)), "a stature is accepted from 100 to 230 cm"); // not medical: a slip
    assert_eq!(told(man(2999, 80)), "a stature is accepted from 100 to 230 cm"); // not medical: a slip
    assert_eq!(told(man(1750, 0)), "a body mass is accepted from 25 to 250 kg"); // not medical: a slip
    assert_eq!(told(man(1750, 300)), "a body mass is accepted from 25 to 250 kg"); // not medical: a slip
    assert_eq!(ids::STATURE_LEAST.millimeters(), Millimeters::whole(1000)); // not medical: as the message says
}

proptest! {
    /// More in the hand never weighs less; a longer or heavier person never less either.
    #[test]
    fn more_is_more(plane in -90.0..180.0f64, elevation in 0.0..180.0f64, elbow in 0.0..140.0f64, kg in 0i32..450) { // not medical: what an arm does
        let mut pose = Pose::at_rest(Posture::Standing);
        pose.operated.shoulder.plane = Angle::from_degrees(plane);
        pose.operated.shoulder.elevation = Angle::from_degrees(elevation);
        let elbow_less = pose;
        pose.operated.elbow = Angle::from_degrees(elbow);
        let of = |person: Person, pose: &Pose, steps| Moments::of(person, pose, Kilograms::from_steps(steps));
        let man = person(SegmentTable::Men);
        let heavier = Person::new(man.stature(), Kilograms::whole(90), SegmentTable::Men).expect("in range"); // not medical: ten more
        prop_assert!(of(heavier, &pose, 0).shoulder >= of(man, &pose, 0).shoulder);
        prop_assert!(of(man, &elbow_less, kg).shoulder >= of(man, &elbow_less, 0).shoulder);
        prop_assert!(of(man, &pose, kg).elbow >= of(man, &pose, 0).elbow);
    }

    /// Every bone keeps its length in every pose, and a mirror changes no height.
    #[test]
    fn bones_keep_their_length(
        plane in -90.0..180.0f64, elevation in 0.0..180.0f64, outward in -90.0..120.0f64, // not medical: what an arm does
        elbow in 0.0..140.0f64, forearm in -90.0..90.0f64, wrist in -60.0..60.0f64, lean in 0.0..90.0f64, which in 0usize..8, // not medical: what an arm does
    ) {
        let mut pose = Pose::at_rest(Posture::ALL[which]);
        pose.lean = Angle::from_degrees(lean);
        pose.operated.shoulder = Shoulder {
            plane: Angle::from_degrees(plane),
            elevation: Angle::from_degrees(elevation),
            outward: Angle::from_degrees(outward),
        };
        pose.operated.elbow = Angle::from_degrees(elbow);
        pose.operated.forearm = Angle::from_degrees(forearm);
        pose.operated.wrist = Angle::from_degrees(wrist);
        pose.other = pose.operated;
        let body = Skeleton::of(&pose);
        for arm in [body.operated, body.other] {
            for (length, entry) in [
                ((arm.elbow - arm.shoulder).length(), ids::UPPER_ARM_LENGTH),
                ((arm.wrist - arm.elbow).length(), ids::FOREARM_LENGTH),
                ((arm.fingertip - arm.wrist).length(), ids::HAND_LENGTH),
            ] {
                prop_assert!((length - entry.number()).abs() < 1e-12); // not medical: rounding
            }
        }
        let mirrored = body.mirrored();
        prop_assert!((mirrored.operated.grip.y - body.operated.grip.y).abs() < 1e-12); // not medical: rounding
        prop_assert_eq!(mirrored.mirrored(), body);
        if pose.posture.is_upright() {
            // Both arms alike: the other one is the mirror image.
            prop_assert!((mirrored.operated.grip - body.other.grip).length() < 1e-12); // not medical: rounding
        }
    }
}
