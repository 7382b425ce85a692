//! What exercises weigh, against arithmetic done by hand and against properties.

use body::{Person, SegmentTable};
use quantity::{Degrees, Kilograms, Millimeters};

use super::catalogue;
use crate::{Beyond, Demand, Holder, Kind, Load, NoLoad, Whose};

const MEN: &[SegmentTable] = &[SegmentTable::Men];
const BOTH: &[SegmentTable] = &[SegmentTable::Men, SegmentTable::Women];

fn widest(demand: &Demand) -> Degrees {
    demand.amount.greatest_angle().unwrap_or_default()
}

fn man() -> Person {
    Person::new(Millimeters::whole(1750), Kilograms::whole(80), SegmentTable::Men).expect("in range") // not medical: the person of the calculation
}

fn load_of(id: &str, held: Option<i32>) -> Load {
    let held = held.map(Kilograms::from_steps);
    let catalogue = catalogue();
    let entry = catalogue.get(id).expect("in the catalogue");
    entry.load(Whose::Known { person: man(), tables: MEN }, held, widest).expect("a load")
}

fn check(id: &str, held: Option<i32>, expected: f64) {
    let found = load_of(id, held).middle();
    assert!((found - expected).abs() < 0.01, "{id}: {found:.3} for {expected}"); // not medical: a hundredth
}

#[test]
fn each_kind_of_carrying_counts_as_it_should() {
    // A straight arm raised through level: the measure itself, whichever plane.
    check("forward-elevation", None, 1.0);
    check("scapular-plane-elevation", None, 1.0);
    check("abduction", None, 1.0);
    // Lifted from the bed, a straight arm is level at once.
    check("supine-active-elevation", None, 1.0);
    // Moved by something else, or hanging.
    for id in ["pendulum", "table-slide", "supine-self-raise", "therapist-elevation", "stick-external-rotation"] {
        check(id, None, 0.0);
    }
    // Half, between none and all.
    check("stick-flexion-standing", None, 0.5); // not medical: `share-assisted`
    let helped = load_of("stick-flexion-standing", None).ratio();
    assert!(helped.least == 0.0 && (helped.most - 1.0).abs() < 1e-9);
    // The forearm alone: g (1.296 kg × 0.1169 m + 0.488 kg × 0.3239 m) = 3.04 N·m of 12.73 N·m.
    check("side-lying-external-rotation", None, 0.239); // not medical: by hand
    // With 1 kg at 0.3334 m from the elbow: 3.04 + 3.27 N·m.
    check("side-lying-external-rotation-weight", Some(100), 0.496); // not medical: by hand
    // With 1 kg in a straight hand: 12.73 + 6.46 N·m.
    check("full-can", Some(100), 1.508); // not medical: by hand
}

#[test]
fn what_gravity_does_not_tell_is_said() {
    let catalogue = catalogue();
    let known = Whose::Known { person: man(), tables: MEN };
    let beyond = |id: &str| {
        let entry = catalogue.get(id).expect("in the catalogue");
        let beyond = entry.beyond_gravity();
        // What gravity does not tell gets no number, and nothing is said to carry the arm.
        assert_eq!(entry.load(known, None, widest).err(), (!beyond.is_empty()).then_some(NoLoad::NotGravity), "{id}");
        assert_eq!(entry.holder().is_none(), !beyond.is_empty(), "{id}");
        beyond
    };
    assert_eq!(beyond("band-external-rotation"), [Beyond::Band]);
    assert_eq!(beyond("push-up"), [Beyond::BodyWeight]);
    assert_eq!(beyond("carry-walk"), [Beyond::Pull]);
    assert_eq!(beyond("isometric-abduction"), [Beyond::Effort]);
    assert_eq!(beyond("elbow-hand-resistance"), [Beyond::Hand]);
    assert_eq!(beyond("quick-band-rotation"), [Beyond::Band, Beyond::Speed]);
    for id in ["forward-elevation", "full-can", "ball-squeeze", "pendulum", "biceps-curl"] {
        assert_eq!(beyond(id), [], "{id}");
    }
}

#[test]
fn carried_is_said_only_where_something_carries_the_arm() {
    let catalogue = catalogue();
    let holder = |id: &str| catalogue.get(id).expect("in the catalogue").holder();
    assert_eq!(holder("pendulum"), Some(Holder::Hanging));
    assert_eq!(holder("table-slide"), Some(Holder::Carried));
    // Its text lets a board carry the arm.
    assert_eq!(holder("side-lying-elevation"), Some(Holder::Carried));
    assert_eq!(holder("supine-elevation"), Some(Holder::Shared));
    assert_eq!(holder("side-lying-external-rotation"), Some(Holder::Forearm));
    assert_eq!(holder("forward-elevation"), Some(Holder::Own));
    assert_eq!(holder("push-up"), None);
}

#[test]
fn nobody_in_particular_has_ratios_and_no_moments() {
    let catalogue = catalogue();
    let entry = catalogue.get("forward-elevation").expect("in the catalogue");
    let anybody = entry.load(Whose::Anybody(BOTH), None, widest).expect("a ratio");
    let known = load_of("forward-elevation", None);
    assert!((anybody.middle() - known.middle()).abs() < 1e-9);
    assert!(anybody.moment_nm().is_none());
    assert!(known.moment_nm().is_some_and(|nm| (nm.most - 12.7).abs() < 0.05)); // not medical: the calculation's value
    // A weight in the hand of somebody whose body mass nobody knows.
    let full_can = catalogue.get("full-can").expect("in the catalogue");
    assert_eq!(full_can.load(Whose::Anybody(BOTH), Some(Kilograms::whole(1)), widest), Err(NoLoad::MassUnknown));
    let eat = catalogue.get("eat").expect("in the catalogue");
    assert_eq!(eat.load(Whose::Anybody(BOTH), None, widest), Err(NoLoad::NotAnExercise));
}

#[test]
fn ratios_of_an_empty_hand_are_the_same_for_every_size() {
    let small = Person::new(Millimeters::whole(1450), Kilograms::whole(45), SegmentTable::Women).expect("in range"); // not medical: somebody small
    let tall = Person::new(Millimeters::whole(2000), Kilograms::whole(130), SegmentTable::Women).expect("in range"); // not medical: somebody tall
    let women = &[SegmentTable::Women];
    let mut weighed = 0;
    for entry in catalogue().entries().iter().filter(|entry| entry.kind == Kind::Exercise) {
        if entry.load(Whose::Known { person: small, tables: women }, None, widest) == Err(NoLoad::NotGravity) {
            continue;
        }
        weighed += 1;
        let of = |person| entry.load(Whose::Known { person, tables: women }, None, widest).expect("a load").middle();
        assert!((of(small) - of(tall)).abs() < 1e-9, "{}", entry.id);
        // And more in the hand is never less.
        let held = Some(Kilograms::whole(1));
        let with = entry.load(Whose::Known { person: small, tables: women }, held, widest).expect("a load").middle();
        assert!(with >= of(small) - 1e-9, "{}: {with} under {}", entry.id, of(small));
    }
    assert!(weighed > 70, "{weighed}");
}
