//! Safe arcs: what the surgeon saw was safe on the table caps the plan.

use body::Movement;
use operative::{Facts, SafeArc};
use plan::SlingPosition;
use quantity::{Degrees, PostoperativeDay};

use super::composed::{composed, facts, says};

fn with(movement: Movement, up_to: i32, until: Option<u16>) -> Facts {
    let arc = SafeArc { movement, up_to: Degrees::whole(up_to), until: until.map(PostoperativeDay::new), index: 0 };
    Facts { safe_arcs: std::iter::once(arc).collect(), ..facts(&[]) }
}

#[test]
fn an_arc_binds_through_the_day_before_its_last() {
    let plan = composed(&with(Movement::ExternalRotation, 10, Some(42)), None, &[]);
    let outward = |day| says(&plan, "shoulder/external rotation/any/passive", day);
    assert_eq!(["no", "10 deg", "10 deg", "free"], [13, 14, 41, 42].map(outward)[..]);
    let assisted = says(&plan, "shoulder/external rotation/any/active-assisted", 41);
    assert_eq!(assisted, "10 deg", "every mode: policies");
}

#[test]
fn an_arc_never_raises_a_limit() {
    let plan = composed(&with(Movement::ExternalRotation, 80, Some(84)), None, &[]);
    let outward = |day| says(&plan, "shoulder/external rotation/any/passive", day);
    assert_eq!(["20 deg", "80 deg", "80 deg", "free"], [41, 42, 83, 84].map(outward)[..]);
}

#[test]
fn an_arc_without_a_day_binds_until_active_motion_opens() {
    let arc = with(Movement::ForwardElevation, 70, None);
    let staged = composed(&arc, None, &[]);
    let delayed = composed(&arc.with(operative::dim::TISSUE, 1), None, &[]);
    let forward = |plan, day| says(plan, "shoulder/forward elevation/any/passive", day);
    assert_eq!(["70 deg", "free"], [41, 42].map(|day| forward(&staged, day))[..]);
    assert_eq!(["70 deg", "free"], [97, 98].map(|day| forward(&delayed, day))[..]);
}

#[test]
fn elevations_in_every_plane_bind_one_another() {
    for seen in [Movement::ForwardElevation, Movement::ScapularPlaneElevation, Movement::Abduction] {
        let plan = composed(&with(seen, 60, Some(84)), None, &[]);
        for bound in ["forward elevation", "scapular-plane elevation", "abduction"] {
            assert_eq!(says(&plan, &format!("shoulder/{bound}/any/active"), 83), "60 deg", "{seen} binds {bound}");
            assert_eq!(says(&plan, &format!("shoulder/{bound}/any/active"), 84), "free");
        }
        assert_eq!(says(&plan, "shoulder/external rotation/any/active", 83), "free");
    }
}

#[test]
fn an_arc_below_neutral_turns_the_sling_inward() {
    let plan = composed(&with(Movement::ExternalRotation, -10, Some(42)), None, &[]);
    assert_eq!(says(&plan, "shoulder/external rotation/any/passive", 14), "-10 deg");
    let held = |day: u16| plan.sling_position[plan.grid.column(day)];
    assert_eq!([SlingPosition::InternalRotation; 2], [0, 41].map(held));
    assert_eq!(held(42), SlingPosition::Neutral);
}

#[test]
fn an_arc_leaves_effort_without_movement_at_the_side_alone() {
    let plan = composed(&with(Movement::ForwardElevation, 70, Some(112)), None, &[]);
    let effort = |position: &str, day| says(&plan, &format!("shoulder/abduction/{position}/isometric"), day);
    assert_eq!(["no", "no", "free"], [84, 111, 112].map(|day| effort("any", day))[..]);
    assert_eq!(["30 %", "free", "free"], [49, 84, 111].map(|day| effort("at side", day))[..]);
    assert_eq!(says(&plan, "shoulder/external rotation/any/isometric", 84), "free");
}
