//! A family against the edition that it calls itself: who would be treated otherwise, when, and by how much.
//!
//! A stored prescription names the edition it was made with, so that what an
//! edition says may never change. Files that say another thing under the same
//! edition are a fault, whatever they say.

use body::Key;
use plan::words::{of_cell, of_days, of_difference, of_keys, of_length};
use plan::{Cell, LaneId, Plan};
use protocol::{Choices, Compiled, Decider, Family, resolve};
use rayon::prelude::*;
use rustc_hash::FxHashMap;

use crate::count::{Answered, Axes};
use crate::finding::{About, Finding, record, who};
use crate::groups::Groups;
use crate::lines;
use crate::space::{Space, What};

/// What differs between two editions for some records.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
struct Difference {
    what: Part,
    from_day: u16,
    until_day: u16,
    is_looser: bool,
    says: (Cell, Cell),
}

#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
enum Part {
    Limit(Key),
    Sling(&'static str, &'static str),
    Gate(String),
}

/// How many records a difference is about, and the first of them.
struct Harmed {
    records: u64,
    point: Vec<u8>,
}

/// The kind of a finding that is wrong only against the edition.
pub(crate) const EDITION_CHANGED: &str = "edition-changed";

/// Whether a family is compared with another one as with its edition: by its id, or by a protocol of the same id.
pub fn is_edition_of(family: &Family, shipped: &Family) -> bool {
    family.file.id == shipped.file.id
        || family.protocols.iter().any(|protocol| shipped.protocol(&protocol.id).is_some())
}

/// Whether a family calls itself a newer edition: in every protocol that both have.
///
/// The rules of a family bind each of its protocols, so that one new name among old ones is no new edition.
/// Editions are named by year and month and compared as they are written.
pub fn is_newer(family: &Family, than: &Family) -> bool {
    let mut both = family.protocols.iter().filter_map(|protocol| {
        let known = &than.protocols[than.protocol(&protocol.id)?];
        Some(protocol.edition.trim() > known.edition.trim())
    });
    let first = both.next();
    first == Some(true) && both.all(|newer| newer)
}

/// The name of an edition: that of its protocols.
pub fn name_of(family: &Family) -> &str {
    family.protocols.first().map_or("", |protocol| &protocol.edition)
}

/// Everything that a family says otherwise than an edition of it, each with the records it is about.
///
/// # Method
/// Every record under every option and protocol that both have, each side under its own defaults. Safe arcs lower
/// both alike, so they are gone through only where they end with another stage. Then every line of the files that sets no limit:
/// goals, criteria, exercises, visits, activities, questions.
pub fn differences(edited: &Family, shipped: &Family) -> Vec<Finding> {
    let space = Space::over(edited, shipped);
    if days(edited, &space.options[0]).len() + days(shipped, &space.options[0]).len() > MOST_DAYS {
        return vec![too_different()];
    }
    let protocols = space.axes.iter().find(|axis| axis.what == What::Protocol).map_or(1, |axis| axis.classes.len());
    let arcs: &[u8] =
        if edited.file.safe_arc_until_stage == shipped.file.safe_arc_until_stage { &[0] } else { &[0, 1] };
    let tasks: Vec<(usize, u8, u8)> = (0..space.options.len())
        .filter(|option| has_option(&space, *option, shipped))
        .flat_map(|option| (0..protocols as u8).map(move |protocol| (option, protocol)))
        .filter(|(_, protocol)| protocol.checked_sub(1).is_none_or(|place| has_same_place(edited, shipped, place)))
        .flat_map(|(option, protocol)| arcs.iter().map(move |arc| (option, protocol, *arc)))
        .collect();
    let harmed = tasks.into_par_iter().map(|fixed| of_task(&space, fixed, edited, shipped)).reduce(
        FxHashMap::default,
        |mut all, one| {
            for (difference, of) in one {
                add(&mut all, difference, of);
            }
            all
        },
    );
    let mut findings = told(&space, name_of(shipped), harmed);
    findings.extend(lines::differences(edited, shipped));
    findings
}

/// Whether an edition has an option too; one that it has not is told as a line of its own.
fn has_option(space: &Space<'_>, option: usize, shipped: &Family) -> bool {
    let axis = space.axes.iter().find(|axis| axis.what == What::Options);
    let Some((choice, option)) = axis.and_then(|axis| axis.classes.get(option)?.name.split_once(": ")) else {
        return true;
    };
    shipped.choices().any(|known| known.id == choice && known.options.iter().any(|name| name == option))
}

/// An option beside the defaults of an edition, which need not be those of the files.
fn choices_of_edition(space: &Space<'_>, option: usize, shipped: &Family) -> Choices {
    let mut choices = Choices::of(shipped);
    let axis = space.axes.iter().find(|axis| axis.what == What::Options);
    if let Some((choice, option)) = axis.and_then(|axis| axis.classes.get(option)?.name.split_once(": ")) {
        choices.take(choice, option);
    }
    choices
}

/// Adds records to a difference; the mildest of the points is kept.
fn add(all: &mut FxHashMap<Difference, Harmed>, difference: Difference, of: Harmed) {
    let severity = |point: &[u8]| point.iter().map(|class| u32::from(*class)).sum::<u32>();
    match all.get_mut(&difference) {
        Some(known) => {
            known.records += of.records;
            if (severity(&of.point), &of.point) < (severity(&known.point), &known.point) {
                known.point = of.point;
            }
        }
        None => {
            all.insert(difference, of);
        }
    }
}

/// More days than this on which something changes do not fit one plan.
const MOST_DAYS: usize = 240; // not medical: columns are counted in a byte

fn too_different() -> Finding {
    Finding {
        about: About::Unsafe,
        kind: EDITION_CHANGED.into(),
        message: "so many days differ from the edition it calls itself that they cannot be told one by one".into(),
        key: None,
        from_day: 0,
        until_day: 0,
        rule: None,
        records: 0,
        who: "every record".into(),
        record: String::new(),
        compared_with: None,
    }
}

fn has_same_place(edited: &Family, shipped: &Family, place: u8) -> bool {
    let id = &edited.protocols[usize::from(place)].id;
    shipped.protocol(id) == Some(usize::from(place))
}

fn days(family: &Family, choices: &Choices) -> Vec<u16> {
    Compiled::new(family, choices, &[]).grid.days.clone()
}

fn of_task(
    space: &Space<'_>,
    (option, protocol, arc): (usize, u8, u8),
    edited: &Family,
    shipped: &Family,
) -> FxHashMap<Difference, Harmed> {
    let choices = &space.options[option];
    let of_edition = choices_of_edition(space, option, shipped);
    let own = Compiled::new(edited, choices, &days(shipped, &of_edition));
    let theirs = Compiled::new(shipped, &of_edition, &days(edited, choices));
    let groups = Groups::by_rule(space, &[&own, &theirs]);
    let held = |axis: usize| match space.axes[axis].what {
        What::Options => Some((axis, option as u8)),
        What::Protocol => Some((axis, protocol)),
        What::SafeArc(_) => Some((axis, arc)),
        What::Fact(_) => None,
    };
    let axes = Axes::new(space, groups, (0..space.axes.len()).filter_map(held).collect());
    let (of_own, of_theirs) = (Decider::new(&own), Decider::new(&theirs));
    let (same_own, same_theirs) = (own.same_effect(), theirs.same_effect());
    let effect =
        |same: &[usize], fired: u128| plan::RuleSet(fired).iter().fold(0_u128, |effect, rule| effect | 1 << same[rule]);
    let mut count = axes.start();
    let mut place = axes.place(&count);
    let mut answered = [&of_theirs, &of_own].map(|decider| Answered::new(&axes, decider, &place.facts, &count));
    let requested = space.requested(&place.point);
    let mut compared: FxHashMap<(u8, u128, u8, u128), Harmed> = FxHashMap::default();
    for _ in 0..axes.total {
        if place.excluded.is_none() {
            let [theirs, own] = &answered;
            let (a, b) = (of_theirs.decide(theirs.all(), requested), of_own.decide(own.all(), requested));
            let of_plans = compared.entry((a.0, effect(&same_theirs, a.1), b.0, effect(&same_own, b.1)));
            of_plans.or_insert_with(|| Harmed { records: 0, point: place.point.clone() }).records += count.weight();
        }
        let changed = axes.advance(&mut count);
        axes.follow(&mut place, &count, changed);
        answered.iter_mut().for_each(|answered| answered.follow(&count, changed));
    }
    let lanes: Vec<Option<LaneId>> = own.grid.keys.iter().map(|key| theirs.grid.governing(*key)).collect();
    let mut harmed = FxHashMap::default();
    for of in compared.into_values() {
        let facts = space.facts(&of.point);
        let (before, after) = (resolve(&theirs, &facts, requested), resolve(&own, &facts, requested));
        for difference in between(&before, &after, &own, &lanes) {
            add(&mut harmed, difference, Harmed { records: of.records, point: of.point.clone() });
        }
    }
    harmed
}

/// What differs between two plans whose grids begin on the same days.
fn between(before: &Plan, after: &Plan, compiled: &Compiled<'_>, lanes: &[Option<LaneId>]) -> Vec<Difference> {
    let mut found: Vec<Difference> = Vec::new();
    let columns = before.grid.columns().min(after.grid.columns());
    let mut add = |what: Part, column: usize, is_looser: bool, says: (Cell, Cell)| {
        let (from_day, until_day) = (after.grid.days[column], after.grid.days[column + 1]);
        match found.last_mut() {
            Some(last) if last.what == what && last.until_day == from_day && last.says == says => {
                last.until_day = until_day;
            }
            _ => found.push(Difference { what, from_day, until_day, is_looser, says }),
        }
    };
    for (lane, key) in after.grid.keys.iter().enumerate() {
        let Some(theirs) = lanes[lane] else { continue };
        let own = &after.cells[lane * after.grid.columns()..][..after.grid.columns()];
        if own == before.lane(theirs) {
            continue;
        }
        for (column, (&was, &is)) in before.lane(theirs).iter().zip(own).enumerate().take(columns) {
            if was != is {
                add(Part::Limit(*key), column, is > was, (was, is));
            }
        }
    }
    for column in 0..columns {
        let (was, is) = (before.wear[column], after.wear[column]);
        if was != is {
            add(Part::Sling(was.name(), is.name()), column, is < was, (Cell::NO, Cell::NO));
        }
    }
    for (stage, (was, is)) in compiled.stages.iter().zip(before.gates.iter().zip(&after.gates)) {
        if let (Some(was), Some(is)) = (was, is)
            && was != is
        {
            let (from_day, until_day) = (*was.min(is), *was.max(is));
            let what = Part::Gate((*stage).to_owned());
            found.push(Difference { what, from_day, until_day, is_looser: is < was, says: (Cell::NO, Cell::NO) });
        }
    }
    found
}

/// More differences than this are not told one by one; a screen shows the first of them.
const MOST_TOLD: usize = 400; // not medical: bounds a document

fn told(space: &Space<'_>, edition: &str, harmed: FxHashMap<Difference, Harmed>) -> Vec<Finding> {
    // Keys that change alike, in the same records, are told together.
    let mut together: Vec<(Difference, Vec<Key>, Harmed)> = Vec::new();
    let mut sorted: Vec<(Difference, Harmed)> = harmed.into_iter().collect();
    sorted.sort_by(|(a, _), (b, _)| (a.from_day, &a.what, a.until_day).cmp(&(b.from_day, &b.what, b.until_day)));
    for (difference, of) in sorted {
        let alike = together.iter_mut().find(|(known, keys, known_of)| {
            let same = (known.from_day, known.until_day, known.is_looser, known.says)
                == (difference.from_day, difference.until_day, difference.is_looser, difference.says);
            let counted = matches!((&known.what, &difference.what), (Part::Limit(a), Part::Limit(b))
                if a.is_load() == b.is_load() && a.is_effort() == b.is_effort());
            same && counted && !keys.is_empty() && known_of.records == of.records
        });
        let key = match difference.what {
            Part::Limit(key) => vec![key],
            Part::Sling(..) | Part::Gate(_) => Vec::new(),
        };
        match alike {
            Some((_, keys, _)) => keys.extend(key),
            None => together.push((difference, key, of)),
        }
    }
    together.sort_by_key(|(difference, _, of)| std::cmp::Reverse((difference.is_looser, of.records)));
    together.truncate(MOST_TOLD);
    together.into_iter().map(|(difference, keys, of)| finding(space, edition, &difference, &keys, &of)).collect()
}

fn finding(space: &Space<'_>, edition: &str, difference: &Difference, keys: &[Key], of: &Harmed) -> Finding {
    let Difference { what, from_day, until_day, is_looser, says: (was, is) } = difference;
    let message = match what {
        Part::Limit(key) => {
            let by = of_difference(*was, *is, *key);
            let by = by.map_or_else(String::new, |by| format!(", {by} {}", if *is_looser { "more" } else { "less" }));
            format!(
                "{}: {}: {} where edition {edition} says {}{by}",
                of_days(*from_day, *until_day),
                of_keys(keys),
                of_cell(*is, *key),
                of_cell(*was, *key)
            )
        }
        Part::Sling(was, is) => {
            format!(
                "{}: the sling is worn \"{is}\" where edition {edition} says \"{was}\"",
                of_days(*from_day, *until_day)
            )
        }
        Part::Gate(stage) => {
            let (was, is) = if *is_looser { (until_day, from_day) } else { (from_day, until_day) };
            format!(
                "the stage `{stage}` opens on day {is} where edition {edition} says day {was}, {} {}",
                of_length(until_day - from_day),
                if *is_looser { "earlier" } else { "later" }
            )
        }
    };
    Finding {
        about: if *is_looser { About::Unsafe } else { About::Stiffening },
        kind: EDITION_CHANGED.into(),
        message,
        key: keys.first().copied(),
        from_day: *from_day,
        until_day: *until_day,
        rule: None,
        records: of.records,
        who: who(space, &of.point),
        record: record(space, &of.point),
        compared_with: None,
    }
}
