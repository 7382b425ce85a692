//! What a catalogue must keep to beyond its shape.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry as Slot;

use body::{Joint, Key, Movement};
use diagnostic::{Diagnostic, Sink, Span};
use evidence::{Unit, ids};
use quantity::{Degrees, Kilograms, Percent};

use crate::{Amount, Demand, Entry, Equipment, Kind, Occasion, OtherArm, Posture};

/// A number as written, to be found in the cited evidence.
#[derive(Debug)]
pub(crate) struct Number {
    value: f64,
    units: &'static [Unit],
    span: Span,
    shown: String,
}

impl Number {
    pub(crate) fn degrees(value: Degrees, span: Span) -> Self {
        Self { value: value.number(), units: &[Unit::Degrees], span, shown: format!("{value} deg") }
    }

    pub(crate) fn kilograms(value: Kilograms, span: Span) -> Self {
        Self { value: value.number(), units: &[Unit::Kilograms], span, shown: format!("{value} kg") }
    }

    pub(crate) fn percent(value: Percent, span: Span) -> Self {
        Self { value: value.number(), units: &[Unit::Percent, Unit::PercentMvic], span, shown: format!("{value} %") }
    }

    pub(crate) fn count(value: u16, unit: Unit, span: Span) -> Self {
        let units: &'static [Unit] = match unit {
            Unit::Sets => &[Unit::Sets],
            Unit::Repetitions => &[Unit::Repetitions],
            Unit::Seconds => &[Unit::Seconds],
            Unit::PerDay => &[Unit::PerDay],
            Unit::PerWeek => &[Unit::PerWeek],
            _ => &[],
        };
        Self { value: f64::from(value), units, span, shown: format!("{value} {}", unit.name()) }
    }
}

/// Every number but zero must be the value, or lie in the range, of a cited entry.
pub(crate) fn numbers(numbers: &[Number], cited: &[&'static evidence::Entry], sink: &mut Sink) {
    for number in numbers.iter().filter(|number| number.value != 0.0) {
        let found = cited.iter().any(|entry| number.units.iter().any(|&unit| entry.holds(number.value, unit)));
        if !found {
            sink.push(
                Diagnostic::error(
                    "number-without-evidence",
                    format!("{} stands in none of the cited entries of evidence", number.shown),
                )
                .at(number.span)
                .help("cite the entry it comes from, or add one to the table of evidence"),
            );
        }
    }
}

/// Whether an amount is of the kind its key takes, and within what a joint does.
pub(crate) fn fits(key: Key, amount: Amount, span: Span, sink: &mut Sink) -> bool {
    let right_kind = match amount {
        Amount::Load(_) | Amount::LoadToLimit { .. } => key.is_load(),
        Amount::Effort(_) => key.is_effort(),
        Amount::Angle { .. } | Amount::AngleToLimit { .. } | Amount::Movement => !key.is_load() && !key.is_effort(),
    };
    if !right_kind {
        let wanted = if key.is_load() {
            "a load"
        } else if key.is_effort() {
            "an effort"
        } else {
            "degrees or nothing"
        };
        sink.push(
            Diagnostic::error("wrong-amount", format!("`{key}` takes {wanted}"))
                .at(span)
                .help("loads are in kilograms, efforts in percent, movements in degrees"),
        );
        return false;
    }
    let (Some(start), Some(end)) = (amount.start_angle(), amount.greatest_angle()) else { return true };
    if end < start {
        sink.push(Diagnostic::error("angle-backwards", "the arc ends before it starts").at(span));
        return false;
    }
    match greatest(key).map(evidence::Entry::degrees) {
        Some(greatest) if end > greatest => {
            sink.push(
                Diagnostic::error(
                    "beyond-the-joint",
                    format!("no shoulder or elbow goes to {end} deg of {}", key.movement),
                )
                .at(span)
                .help(format!("the most that is accepted is {greatest} deg")),
            );
            false
        }
        _ => true,
    }
}

/// The most a movement is accepted at.
fn greatest(key: Key) -> Option<&'static evidence::Entry> {
    match (key.joint, key.movement) {
        (Joint::Shoulder, Movement::ForwardElevation | Movement::ScapularPlaneElevation | Movement::Abduction) => {
            Some(ids::JOINT_RANGE_ELEVATION)
        }
        (Joint::Shoulder, Movement::ExternalRotation | Movement::AbductionWithExternalRotation) => {
            Some(ids::JOINT_RANGE_EXTERNAL_ROTATION)
        }
        (Joint::Shoulder, Movement::InternalRotation) => Some(ids::JOINT_RANGE_INTERNAL_ROTATION),
        (Joint::Shoulder, Movement::Extension) => Some(ids::JOINT_RANGE_EXTENSION),
        (Joint::Shoulder, Movement::HorizontalAdduction) => Some(ids::JOINT_RANGE_HORIZONTAL_ADDUCTION),
        (Joint::Elbow, _) => Some(ids::JOINT_RANGE_ELBOW),
        _ => None,
    }
}

/// What the other arm does, and what is asked of it, must agree.
pub(crate) fn other_arm(kind: Kind, arm: OtherArm, demands: &[Demand], span: Span, sink: &mut Sink) {
    if kind == Kind::Care {
        return;
    }
    let message = match (arm, demands.is_empty()) {
        (OtherArm::None, false) => "something is asked of the other arm, but it is said to do nothing",
        (OtherArm::None, true) | (_, false) => return,
        (_, true) => "the other arm works, but nothing is said to be asked of it",
    };
    sink.push(
        Diagnostic::error("other-arm-demand", message).at(span).help("keep `other_arm` and `other_demands` together"),
    );
}

/// Leaves out the second entry of an id.
pub(crate) fn duplicates(entries: &mut Vec<Entry>, sink: &mut Sink) {
    let mut first: BTreeMap<String, Span> = BTreeMap::new();
    entries.retain(|entry| match first.entry(entry.id.clone()) {
        Slot::Vacant(slot) => {
            slot.insert(entry.span);
            true
        }
        Slot::Occupied(slot) => {
            sink.push(
                Diagnostic::error("duplicate-id", format!("`{}` stands here a second time", entry.id))
                    .at(entry.span)
                    .also(*slot.get(), "the first one"),
            );
            false
        }
    });
}

/// What makes two entries the same one under two names.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct Likeness {
    kind: Kind,
    demands: Vec<(Key, Amount)>,
    other: Vec<(Key, Amount)>,
    posture: Posture,
    equipment: Vec<Equipment>,
    care: Option<Occasion>,
    pose: Option<(Degrees, Degrees, Degrees)>,
}

impl Likeness {
    fn of(entry: &Entry) -> Self {
        let sorted = |demands: &[Demand]| {
            let mut all: Vec<_> = demands.iter().map(|demand| (demand.key, demand.amount)).collect();
            all.sort_unstable();
            all
        };
        let mut equipment = entry.equipment.clone();
        equipment.sort_unstable();
        Self {
            kind: entry.kind,
            demands: sorted(&entry.demands),
            other: sorted(&entry.other_demands),
            posture: entry.posture,
            equipment,
            care: entry.resting.map(|pose| pose.occasion),
            pose: entry.resting.map(|pose| (pose.elevation, pose.rotation_internal, pose.rotation_external)),
        }
    }
}

/// Two entries of one kind with the same demand, posture and equipment are one.
pub(crate) fn same_demand(entries: &[Entry], sink: &mut Sink) {
    let mut seen: BTreeMap<Likeness, &Entry> = BTreeMap::new();
    for entry in entries {
        match seen.entry(Likeness::of(entry)) {
            Slot::Vacant(slot) => {
                slot.insert(entry);
            }
            Slot::Occupied(slot) => {
                let first = slot.get();
                sink.push(
                    Diagnostic::error(
                        "same-exercise",
                        format!(
                            "`{}` asks the same as `{}`, in the same posture with the same things",
                            entry.id, first.id
                        ),
                    )
                    .at(entry.span)
                    .also(first.span, "the first one")
                    .help("leave one out, or say what sets them apart"),
                );
            }
        }
    }
}
