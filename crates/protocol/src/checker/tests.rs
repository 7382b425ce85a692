//! The checker by itself: it sees each fault that is put into a sound plan, and knows nothing of how plans are made.

use std::path::Path;
use std::sync::LazyLock;

use diagnostic::{FileId, Sink};
use operative::{DIMENSION_COUNT, DIMENSIONS, DimensionId, Facts, SafeArcs, dim};
use plan::{Cell, Plan, SlingPosition, Wear};
use proptest::prelude::*;

use super::{DenseRules, Fault, Rulebook, faults_of_plan};
use crate::{Choices, Compiled, Library, Requested, resolve};

static SHIPPED: LazyLock<Library> = LazyLock::new(|| {
    let mut next = 0..;
    Library::shipped(|_, _| FileId(next.next().unwrap_or_default()), &mut Sink::new())
});

fn mildest() -> Facts {
    Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() }
}

/// Facts by chance: a class for each dimension of a repair.
fn facts() -> impl Strategy<Value = Facts> {
    let classes: Vec<_> = DIMENSIONS.iter().map(|dimension| 0..dimension.classes.len() as u8).collect();
    classes.prop_map(|classes| {
        let all = (0_u8..).map(DimensionId).zip(classes);
        all.fold(mildest(), |facts, (id, class)| facts.with(id, class)).with(dim::PROCEDURE, 0)
    })
}

struct Judged {
    plan: Plan,
    is_sound: bool,
    faults: Vec<Fault>,
}

/// Composes the plan of some facts, lets it be spoilt, and judges it.
fn judge(facts: &Facts, requested: Requested, spoil: impl FnOnce(&mut Plan)) -> Judged {
    let family = SHIPPED.families.iter().find(|family| family.file.id == "cuff").expect("it is shipped");
    let choices = Choices::of(family);
    let compiled = Compiled::new(family, &choices, &[]);
    let mut plan = resolve(&compiled, facts, requested);
    spoil(&mut plan);
    let rules = DenseRules::new(family, &choices, &compiled.grid, &compiled.stages).expect("the grid fits");
    let is_sound = rules.is_sound(&plan, facts, requested);
    let faults = faults_of_plan(&Rulebook::new(family, &choices), &plan, facts, requested);
    Judged { plan, is_sound, faults }
}

#[test]
fn the_checker_names_nothing_of_the_composition() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/checker");
    let mut looked_at = 0;
    let mut folders = vec![folder];
    while let Some(folder) = folders.pop() {
        for file in std::fs::read_dir(folder).expect("the folder is there") {
            let path = file.expect("a file of it").path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            if path.components().any(|part| part.as_os_str().to_string_lossy().starts_with("tests")) {
                continue;
            }
            let text = std::fs::read_to_string(&path).expect("source is text");
            let code: String = text.lines().filter(|line| !line.trim_start().starts_with("//")).collect();
            for name in ["resolve", "compile", "Compiled", "binding", "Base", "Op "] {
                assert!(!code.contains(name), "{} names `{name}`", path.display());
            }
            looked_at += 1;
        }
    }
    assert!(looked_at >= 6, "only {looked_at} files");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn what_is_composed_is_sound(facts in facts(), asked in proptest::option::of(0..3_u8)) {
        let judged = judge(&facts, Requested(asked), |_| {});
        prop_assert_eq!(judged.faults, vec![]);
        prop_assert!(judged.is_sound);
    }

    #[test]
    fn a_value_that_is_raised_is_seen(facts in facts(), at in any::<prop::sample::Index>(), asked in proptest::option::of(0..3_u8)) {
        let mut raised = None;
        let judged = judge(&facts, Requested(asked), |plan| {
            let bound: Vec<usize> = (0..plan.cells.len()).filter(|at| plan.cells[*at] != Cell::FREE).collect();
            let at = bound[at.index(bound.len())];
            plan.cells[at] = Cell::FREE;
            raised = Some((at / plan.grid.columns(), at % plan.grid.columns()));
        });
        let (lane, column) = raised.expect("something is bound");
        let (key, day) = (judged.plan.grid.keys[lane], judged.plan.grid.days[column]);
        prop_assert!(!judged.is_sound, "{key} on day {day}");
        let told = judged.faults.iter().any(|fault| {
            fault.kind == "limit-above-rule" && fault.key == Some(key) && (fault.from_day..fault.until_day).contains(&day)
        });
        prop_assert!(told, "{key} on day {day}: {:?}", judged.faults);
    }

    #[test]
    fn a_sling_that_is_worn_less_is_seen(facts in facts(), at in any::<prop::sample::Index>()) {
        let mut spoilt = 0;
        let judged = judge(&facts, Requested(None), |plan| {
            let worn: Vec<usize> = (0..plan.wear.len()).filter(|at| plan.wear[*at] != Wear::None).collect();
            spoilt = worn[at.index(worn.len())];
            plan.wear[spoilt] = Wear::None;
        });
        prop_assert!(!judged.is_sound);
        let day = judged.plan.grid.days[spoilt];
        prop_assert!(judged.faults.iter().any(|fault| fault.kind == "sling-worn-less" && fault.from_day == day));
    }

    #[test]
    fn a_gate_that_is_moved_is_seen(facts in facts(), at in any::<prop::sample::Index>()) {
        let judged = judge(&facts, Requested(None), |plan| {
            let later: Vec<usize> = (0..plan.gates.len()).filter(|at| plan.gates[*at].is_some_and(|day| day > 0)).collect();
            let at = later[at.index(later.len())];
            plan.gates[at] = plan.gates[at].map(|day| day - 1);
        });
        prop_assert!(!judged.is_sound);
        prop_assert!(judged.faults.iter().any(|fault| fault.kind == "gate-too-early"), "{:?}", judged.faults);
    }
}

/// Each fault of a plan alone, with the kind it is told as.
#[test]
fn each_kind_of_fault_is_told_by_its_name() {
    let subscapularis = mildest().with(dim::SUBSCAPULARIS, 2);
    let lane = |plan: &Plan, key: &str| {
        let key = body::Key::parse(key).expect("a key");
        plan.grid.keys.iter().position(|lane| *lane == key).expect("a lane")
    };
    let fill = |plan: &mut Plan, key: &str, days: std::ops::Range<u16>, cell: Cell| {
        let row = lane(plan, key) * plan.grid.columns();
        for column in 0..plan.grid.columns() {
            if days.contains(&plan.grid.days[column]) {
                plan.cells[row + column] = cell;
            }
        }
    };
    type Spoil<'s> = Box<dyn Fn(&mut Plan) + 's>;
    let cases: Vec<(&str, Spoil<'_>)> = vec![
        (
            "limit-above-rule",
            Box::new(|plan| fill(plan, "shoulder/internal rotation/any/resisted", 0..56, Cell::up_to_zero_degrees())),
        ),
        ("wider-than-its-mode", Box::new(|plan| fill(plan, "elbow/flexion/any/passive", 0..365, Cell::NO))),
        ("limit-falls", Box::new(|plan| fill(plan, "elbow/flexion/any/passive", 100..365, Cell::NO))),
        (
            "limit-never-lifts",
            Box::new(|plan| {
                fill(plan, "shoulder/shrug/any/active".replace("shoulder/", "scapula/").as_str(), 0..366, Cell::NO)
            }),
        ),
        ("sling-comes-back", Box::new(|plan| *plan.wear.last_mut().expect("columns") = Wear::Weaning)),
        ("gates-out-of-order", Box::new(|plan| plan.gates[1] = Some(300))),
        ("passive-too-late", Box::new(|plan| fill(plan, "shoulder/forward elevation/any/passive", 0..60, Cell::NO))),
        (
            "too-long-without-passive-motion",
            Box::new(|plan| {
                let keys = plan.grid.keys.clone();
                for key in
                    keys.iter().filter(|key| key.mode == body::Mode::Passive && key.joint == body::Joint::Shoulder)
                {
                    fill(plan, &key.to_string(), 0..43, Cell::NO);
                }
            }),
        ),
        (
            "too-long-in-the-sling",
            Box::new(|plan| {
                for column in 0..plan.grid.columns() {
                    if plan.grid.days[column] < 57 {
                        plan.wear[column] = Wear::Always;
                    }
                }
                let (last, days) = (plan.grid.column(56), plan.grid.days.clone());
                assert!(days[last] <= 56 && days[last + 1] > 56);
                plan.wear[last] = Wear::Weaning;
            }),
        ),
        ("too-long-without-elbow-motion", Box::new(|plan| fill(plan, "elbow/flexion/any/active", 0..29, Cell::NO))),
    ];
    for (kind, spoil) in cases {
        let judged = judge(&subscapularis, Requested(None), |plan| spoil(plan));
        assert!(!judged.is_sound, "{kind} is not seen");
        assert!(judged.faults.iter().any(|fault| fault.kind == kind), "{kind}: {:?}", judged.faults);
    }
}

/// Safe arc below neutral: the sling must hold the forearm on the belly.
#[test]
fn a_sling_that_turns_out_further_than_an_arc_is_seen() {
    let arc = operative::SafeArc {
        movement: body::Movement::ExternalRotation,
        up_to: quantity::Degrees::whole(-10),
        until: None,
        index: 0,
    };
    let facts = Facts { safe_arcs: [arc].into_iter().collect(), ..mildest() };
    assert!(judge(&facts, Requested(None), |_| {}).is_sound);
    let judged = judge(&facts, Requested(None), |plan| plan.sling_position.fill(SlingPosition::Neutral));
    assert!(!judged.is_sound);
    assert!(judged.faults.iter().any(|fault| fault.kind == "sling-turned-out"), "{:?}", judged.faults);
}

/// The words of a fault: the finding, the days, the movement, by how much.
#[test]
fn a_fault_is_told_so_that_a_surgeon_understands_it() {
    let facts = mildest().with(dim::SUBSCAPULARIS, 1);
    let judged = judge(&facts, Requested(None), |plan| {
        let key = body::Key::parse("shoulder/external rotation/any/passive").expect("a key");
        let lane = plan.grid.keys.iter().position(|lane| *lane == key).expect("a lane");
        let column = plan.grid.column(14);
        let at = lane * plan.grid.columns() + column;
        plan.cells[at] = Cell::up_to(plan::Bound::Angle(quantity::Degrees::whole(20)));
    });
    let told: Vec<&str> = judged.faults.iter().map(|fault| fault.message.as_str()).collect();
    assert_eq!(
        told[0],
        "days 14 to 27: passive external rotation is allowed up to 20 degrees where \"subscapularis repair, upper part, \
         arthroscopic: external rotation opens in steps\" says allowed up to 0 degrees: 20 degrees too much"
    );
}
