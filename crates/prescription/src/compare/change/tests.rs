use super::*;
use crate::compare::runs::Runs;
use body::{Joint, Mode, Movement};
use plan::{Bound, Cell};
use quantity::Degrees;

const ELEVATION: Key = Key::any(Joint::Shoulder, Movement::ForwardElevation, Mode::Passive);

fn up_to(degrees: i32) -> Cell {
    Cell::up_to(Bound::Angle(Degrees::whole(degrees)))
}

fn with(key: Key, steps: &[(u16, u16, Cell)]) -> Course {
    let mut course = Course::empty(365, Cell::NO);
    let mut runs = Runs::default();
    for &(from, until, cell) in steps {
        runs.push(from, until, Value::of(cell));
    }
    course.limits.insert(key, runs);
    course
}

fn shown(changes: &[LimitChange]) -> Vec<(u16, u16, Option<Which>, Option<u16>)> {
    changes.iter().map(|change| (change.from_day, change.until_day, change.looser, change.days_later)).collect()
}

#[test]
fn the_later_side_is_told_by_how_much() {
    // policies.md, rows "passive" of `staged` and `delayed`.
    let staged = with(ELEVATION, &[(14, 42, up_to(90)), (42, 365, Cell::FREE)]);
    let delayed = with(ELEVATION, &[(42, 70, up_to(100)), (70, 98, up_to(120)), (98, 365, Cell::FREE)]);
    let there = compare(&staged, &delayed);
    let a = Some(Which::A);
    assert_eq!(shown(&there.limits), [(14, 42, a, Some(28)), (42, 70, a, Some(56)), (70, 98, a, Some(56))]);
    assert_eq!(there.first_allowed, [FirstChange { key: ELEVATION, a: Some(14), b: Some(42) }]);
    let back = compare(&delayed, &staged);
    let b = Some(Which::B);
    assert_eq!(shown(&back.limits), [(14, 42, b, Some(28)), (42, 70, b, Some(56)), (70, 98, b, Some(56))]);
    assert!(compare(&staged, &staged).is_empty());
}

#[test]
fn what_never_comes_has_no_day() {
    let a = with(ELEVATION, &[(14, 42, up_to(90)), (42, 50, up_to(20))]);
    let b = with(ELEVATION, &[(14, 50, up_to(20))]);
    assert_eq!(shown(&compare(&a, &b).limits), [(14, 42, Some(Which::A), None)]);
}

#[test]
fn lying_down_only_is_stricter_and_sometimes_not_comparable() {
    let value = |cell, only_lying| Value { cell, only_lying };
    assert_eq!(looser(value(up_to(90), true), value(up_to(90), false)), Some(Which::B));
    assert_eq!(looser(value(up_to(100), true), value(up_to(90), false)), None);
    assert_eq!(looser(value(Cell::NO, true), value(Cell::NO, false)), None);
    assert_eq!(looser(value(Cell::NO, false), value(up_to(0), true)), Some(Which::B));
}

#[test]
fn a_named_position_without_a_row_has_the_value_of_any() {
    let named = ELEVATION.in_position(Position::AtSide);
    let mut a = with(ELEVATION, &[(14, 42, up_to(90))]);
    let b = with(ELEVATION, &[(14, 42, up_to(90))]);
    a.limits.extend(with(named, &[(14, 20, up_to(30))]).limits);
    let changes = compare(&a, &b).limits;
    assert_eq!(changes.iter().map(|change| change.key).collect::<Vec<_>>(), [named]);
    assert_eq!(shown(&changes), [(14, 20, Some(Which::B), Some(6))]);
    // Both rows change in the same way: once is enough.
    let c = with(ELEVATION, &[]);
    let keys: Vec<(Key, u16, u16)> =
        compare(&a, &c).limits.iter().map(|change| (change.key, change.from_day, change.until_day)).collect();
    assert_eq!(keys, [(ELEVATION, 14, 42), (named, 14, 20)]);
}

#[test]
fn days_that_are_told_elsewhere_still_count() {
    // policies.md, rows "isometric": at the side 30 percent from 49 and from 98; everywhere from 84 and from 126.
    let named = Key { mode: Mode::Isometric, position: Position::AtSide, ..ELEVATION };
    let effort = Cell::up_to(Bound::Effort(quantity::Percent::whole(30)));
    let side = |start: u16, free: u16| {
        let mut course = with(named, &[(start, free, effort), (free, 365, Cell::FREE)]);
        course.limits.extend(with(named.in_position(Position::Any), &[(free, 365, Cell::FREE)]).limits);
        course
    };
    let changes = compare(&side(49, 84), &side(98, 126)).limits;
    let of_named: Vec<LimitChange> = changes.into_iter().filter(|change| change.key == named).collect();
    let a = Some(Which::A);
    assert_eq!(shown(&of_named), [(49, 84, a, Some(49)), (98, 126, a, Some(42))]);
}
