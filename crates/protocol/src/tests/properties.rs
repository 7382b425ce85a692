//! What holds for every record: no finding and no safe arc ever loosens anything.

use std::sync::LazyLock;

use body::Movement;
use operative::{DIMENSIONS, DimensionId, Facts, MAX_SAFE_ARCS, Order, SafeArc, Unknown, dim};
use plan::{Cell, LaneId, Plan};
use proptest::prelude::*;
use quantity::{Degrees, PostoperativeDay};

use super::composed::{LIBRARY, cuff};
use crate::{Choices, Compiled, Family, Requested, resolve};

/// Days on which arcs may end although no file names them, as a record would add them.
const ARC_DAYS: [u16; 4] = [21, 35, 63, 200];

/// Every family under every combination of its options.
static COMPILED: LazyLock<Vec<(Compiled<'static>, Choices)>> = LazyLock::new(|| {
    let of_family = |family: &'static Family| {
        let mut all = vec![Choices::of(family)];
        for choice in family.choices() {
            let taken = |choices: &Choices, option: &String| {
                let mut choices = choices.clone();
                choices.take(&choice.id, option);
                choices
            };
            all = all
                .iter()
                .flat_map(|choices| choice.options.iter().map(|o| taken(choices, o)).collect::<Vec<_>>())
                .collect();
        }
        all.into_iter().map(move |choices| (Compiled::new(family, &choices, &ARC_DAYS), choices))
    };
    LIBRARY.families.iter().flat_map(of_family).collect()
});

fn an_arc() -> impl Strategy<Value = SafeArc> {
    let movement = prop::sample::select(vec![
        Movement::ForwardElevation,
        Movement::ScapularPlaneElevation,
        Movement::Abduction,
        Movement::ExternalRotation,
        Movement::InternalRotation,
        Movement::Extension,
        Movement::HorizontalAdduction,
        Movement::AbductionWithExternalRotation,
    ]);
    let until =
        prop_oneof![Just(None), prop::sample::select(ARC_DAYS.to_vec()).prop_map(Some), (0_u16..420).prop_map(Some),];
    (movement, -30..=180_i32, until, 0..MAX_SAFE_ARCS as u8).prop_map(|(movement, up_to, until, index)| SafeArc {
        movement,
        up_to: Degrees::whole(up_to),
        until: until.map(PostoperativeDay::new),
        index,
    })
}

/// Any class in every dimension, any arcs, any options, any protocol asked for.
#[derive(Debug, Clone, Copy)]
struct Case {
    compiled: usize,
    facts: Facts,
    requested: Requested,
}

impl Case {
    fn compiled(&self) -> &'static Compiled<'static> {
        &COMPILED[self.compiled].0
    }

    fn plan(&self, facts: &Facts) -> Plan {
        resolve(self.compiled(), facts, self.requested)
    }
}

fn a_case() -> impl Strategy<Value = Case> {
    let classes: Vec<_> = DIMENSIONS.iter().map(|dimension| 0..dimension.classes.len() as u8).collect();
    let arcs = prop::collection::vec(an_arc(), 0..=3);
    (0..COMPILED.len(), classes, arcs, any::<prop::sample::Index>(), any::<bool>()).prop_map(
        |(compiled, classes, arcs, place, asked)| {
            let family = COMPILED[compiled].0.family;
            Case {
                compiled,
                facts: Facts {
                    classes: classes.try_into().expect("a class for each dimension"),
                    safe_arcs: arcs.into_iter().collect(),
                },
                requested: Requested(asked.then(|| place.index(family.protocols.len()) as u8)),
            }
        },
    )
}

/// Every pair of classes of which the second is the more severe.
///
/// A greater rank is worse; what is not recorded is at least as bad as every class it
/// counts as, and as what is best. Two answers of the surgeon compare only where one
/// asks for the slower plan.
fn worse(dimension: usize) -> Vec<(u8, u8)> {
    let known = &DIMENSIONS[dimension];
    let unknown = known.unknown_class();
    let mut pairs = Vec::new();
    for (a, milder) in (0_u8..).zip(known.classes) {
        for (b, severer) in (0_u8..).zip(known.classes) {
            let ordered = match known.order {
                Order::Unordered => false,
                Order::Partial => milder.rank == 0 && severer.rank > 0,
                Order::Total => milder.rank < severer.rank,
            };
            if ordered && Some(a) != unknown && Some(b) != unknown {
                pairs.push((a, b));
            }
        }
    }
    if let Some(unknown) = unknown {
        let counted: &[&str] = match known.unknown {
            Unknown::CountsAs(counted) => counted,
            Unknown::OnItsOwn | Unknown::Never => &[],
        };
        let milder = counted.iter().filter_map(|name| known.class(name)).chain([0]);
        pairs.extend(milder.map(|class| (class, unknown)));
    }
    if DimensionId(dimension as u8) == dim::SLOWER {
        let yes = known.class("yes").expect("an answer");
        pairs.extend((0..yes).map(|class| (class, yes)));
    }
    pairs
}

#[track_caller]
fn assert_within(tighter: &Plan, looser: &Plan, why: &str) {
    for (lane, key) in (0_u8..).map(LaneId).zip(&tighter.grid.keys) {
        for (column, day) in tighter.grid.days[..tighter.grid.columns()].iter().enumerate() {
            let (own, other) = (tighter.cell(lane, column), looser.cell(lane, column));
            assert!(own <= other, "{why}: {key} on day {day}: {own:?} above {other:?}");
        }
    }
    for (column, day) in tighter.grid.days[..tighter.grid.columns()].iter().enumerate() {
        assert!(tighter.wear[column] >= looser.wear[column], "{why}: sling on day {day}");
    }
    for (stage, (own, other)) in tighter.gates.iter().zip(&looser.gates).enumerate() {
        assert!(own >= other, "{why}: gate of stage {stage}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(256) })]

    #[test]
    fn a_plan_is_never_looser_than_its_protocol(case in a_case()) {
        let (compiled, plan) = (case.compiled(), case.plan(&case.facts));
        let base = &compiled.bases[usize::from(plan.protocol)];
        prop_assert!(plan.cells.iter().zip(&base.cells).all(|(cell, own)| cell <= own));
        prop_assert!(plan.wear.iter().zip(&base.wear).all(|(worn, own)| worn >= own));
        prop_assert!(plan.gates.iter().zip(&base.gates).all(|(gate, own)| gate >= own));
    }

    #[test]
    fn a_more_severe_finding_never_loosens(case in a_case()) {
        // The kind of operation and the refusals choose the family, not how strict it is.
        for dimension in (0..DIMENSIONS.len()).filter(|&d| DimensionId(d as u8) != dim::PROCEDURE) {
            for (milder, severer) in worse(dimension) {
                let of = DimensionId(dimension as u8);
                let (before, after) = (case.facts.with(of, milder), case.facts.with(of, severer));
                let why = format!("{} from {} to {}", DIMENSIONS[dimension].name, before.class_name(of), after.class_name(of));
                assert_within(&case.plan(&after), &case.plan(&before), &why);
            }
        }
    }

    #[test]
    fn another_safe_arc_never_loosens(case in a_case(), arc in an_arc()) {
        let more = Facts { safe_arcs: case.facts.safe_arcs.iter().chain([arc]).collect(), ..case.facts };
        assert_within(&case.plan(&more), &case.plan(&case.facts), &format!("{arc:?}"));
    }

    #[test]
    fn modes_cascade(case in a_case()) {
        let plan = case.plan(&case.facts);
        for (lane, key) in (0_u8..).map(LaneId).zip(&plan.grid.keys) {
            let Some(below) = key.mode.rests_on().and_then(|mode| plan.grid.governing(key.in_mode(mode))) else { continue };
            for column in 0..plan.grid.columns() {
                prop_assert!(plan.cell(lane, column) <= plan.cell(below, column), "{key} in column {column}");
            }
        }
    }

    /// Said again without the composition: each rule that holds is read as it is written.
    #[test]
    fn every_rule_that_holds_binds_every_day_it_names(case in a_case()) {
        let (compiled, choices) = &COMPILED[case.compiled];
        let plan = case.plan(&case.facts);
        for (own, rule) in compiled.family.rules() {
            let in_force = rule.choice.as_ref().is_none_or(|choice| choices.is(&choice.id, &choice.is));
            if !in_force || !rule.when.holds(&case.facts) || own.is_some_and(|own| own != usize::from(plan.protocol)) {
                continue;
            }
            for (key, step) in rule.limits.iter().flat_map(|limit| limit.keys.iter().flat_map(|key| limit.steps.iter().map(move |step| (key, step)))) {
                let Some(lane) = plan.grid.governing(*key).filter(|_| step.counts.fits(*key)) else { continue };
                for day in step.from..step.until.unwrap_or(365).min(365) {
                    let cell: Cell = plan.cell(lane, plan.grid.column(day));
                    prop_assert!(cell <= step.cell, "{} on day {day}: {key}", rule.id);
                }
            }
            for step in &rule.slings {
                for day in step.from..step.until.unwrap_or(365).min(365) {
                    prop_assert!(plan.wear[plan.grid.column(day)] >= step.wear, "{} on day {day}", rule.id);
                }
            }
            for (stage, day) in &rule.gates {
                let place = compiled.stages.iter().position(|id| id == stage).expect("a stage");
                prop_assert!(plan.gates[place] >= Some(day.count()), "{}", rule.id);
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(48) })]

    #[test]
    fn every_value_has_what_binds_it(case in a_case()) {
        let (compiled, plan) = (case.compiled(), case.plan(&case.facts));
        for (lane, key) in (0_u8..).map(LaneId).zip(&plan.grid.keys) {
            for column in 0..plan.grid.columns() {
                let bound = compiled.binding(&plan, &case.facts, lane, column);
                prop_assert!(!bound.is_empty(), "{key} in column {column}");
            }
        }
        for column in 0..plan.grid.columns() {
            let slings = compiled.sling_binding(&plan, &COMPILED[case.compiled].1, column);
            prop_assert!(!slings.is_empty(), "sling in column {column}");
        }
    }
}

#[test]
fn delayed_is_never_looser_than_staged() {
    let places = ["staged", "delayed"].map(|id| Requested(cuff().protocol(id).map(|place| place as u8)));
    let best = super::composed::facts(&[]);
    for (compiled, choices) in COMPILED.iter().filter(|(compiled, _)| compiled.family.file.id == "cuff") {
        let [staged, delayed] = places.map(|asked| resolve(compiled, &best, asked));
        assert_within(&delayed, &staged, &format!("{choices:?}"));
        assert_ne!(delayed.cells, staged.cells);
    }
}

#[test]
fn every_dimension_but_the_answers_has_classes_that_compare() {
    let without: Vec<&str> =
        (0..DIMENSIONS.len()).filter(|&d| worse(d).is_empty()).map(|d| DIMENSIONS[d].name).collect();
    assert_eq!(without, ["procedure", "stiff shoulder", "beyond delayed"]);
}
