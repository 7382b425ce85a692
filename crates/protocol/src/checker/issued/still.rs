//! The other harm: what the dated plan leaves still, and whether anything but the surgeon's own holds, go-backs
//! and safe arcs accounts for it.

use body::Key;
use operative::{Facts, SafeArcs};
use plan::{Cell, Wear};

use super::found::Found;
use super::sling::least_wear;
use super::{Basis, Judge};
use crate::checker::rulebook::Rulebook;
use crate::checker::stillness::{Run, Stillness};

/// Judges the runs of still days.
///
/// # Method
/// Three counts: of the plan as issued, of the files with the holds, go-backs and
/// safe arcs of this patient, and of the files without any of them. Over a cap the
/// last is a fault of the files, and a first that is longer than the second is a
/// fault of the plan. What is left is the surgeon's own, and is printed.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    let issued = of_plan(
        judge,
        |place, day| judge.span_at(day).map_or(Cell::NO, |(span, _)| judge.values[span][place]),
        |day| judge.span_at(day).map_or(Wear::None, |(_, span)| span.sling.wear),
    );
    if issued.beyond_caps().is_empty() {
        return;
    }
    let explained = of_plan(judge, |place, day| judge.cap(place, day), |day| least_wear(judge, day));
    let by_files = without_moves(judge);
    let longer =
        |issued: Run, explained: Run, by_files: Run| if issued.days > explained.days { issued } else { by_files };
    let left = Stillness {
        without_passive: longer(issued.without_passive, explained.without_passive, by_files.without_passive),
        in_sling: longer(issued.in_sling, explained.in_sling, by_files.in_sling),
        without_elbow: longer(issued.without_elbow, explained.without_elbow, by_files.without_elbow),
    };
    left.beyond_caps().into_iter().for_each(|fault| found.push(fault));
}

fn of_plan(judge: &Judge<'_>, value: impl Fn(usize, u16) -> Cell, wear: impl Fn(u16) -> Wear) -> Stillness {
    let value = |key: Key, day: u16| judge.sheet.place(key).map_or(Cell::NO, |place| value(place, day));
    Stillness::of_days(&judge.sheet.keys, judge.horizon, value, wear)
}

/// What the files alone leave still: no hold, no go-back, no safe arc.
fn without_moves(judge: &Judge<'_>) -> Stillness {
    let Basis { family, choices, facts, requested } = judge.issued.basis;
    if facts.safe_arcs.is_empty() {
        return of_plan(judge, |place, day| judge.sheet.most(place, day), |day| judge.sheet.wear(day));
    }
    let facts = Facts { safe_arcs: SafeArcs::default(), ..*facts };
    let in_force = Rulebook::new(family, choices).in_force(&facts, requested);
    let sheet = super::Sheet::new(&in_force, family, judge.sheet.keys.iter().copied(), judge.horizon);
    let value = |key: Key, day: u16| sheet.place(key).map_or(Cell::NO, |place| sheet.most(place, day));
    Stillness::of_days(&judge.sheet.keys, judge.horizon, value, |day| sheet.wear(day))
}
