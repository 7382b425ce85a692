//! Every record of a family: composed, checked, and compared with the next worse ones.

use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};

use operative::Facts;
use plan::{Plan, RuleSet};
use protocol::checker::DenseRules;
use protocol::{Compiled, Decider, resolve, resolve_into};
use rayon::prelude::*;
use rustc_hash::{FxHashMap, FxHashSet};

use crate::count::{Answered, Axes, Place};
use crate::groups::{Groups, Link};
use crate::space::{Space, What};

/// How the records of a family are gone through.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Manner {
    /// Records that the rules cannot tell apart share one composition.
    ByRule,
    /// Every record is composed and checked by itself.
    Singly,
}

/// What is shared with whoever watches.
#[derive(Debug, Default)]
pub struct Watch {
    /// Set to stop as soon as may be.
    pub stop: AtomicBool,
    /// How many points are done.
    pub done: AtomicU64,
}

/// A point of the space that has a fault.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unsound {
    /// The point.
    pub point: Vec<u8>,
    /// The place of its plan among the representatives.
    pub plan: usize,
}

/// Two points of which the worse has the looser plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LooserThan {
    /// The milder point.
    pub mild: Vec<u8>,
    /// The point one class up on one axis.
    pub worse: Vec<u8>,
}

/// What a walk found and how far it went.
#[derive(Debug, Clone, Default)]
pub struct Walked {
    /// How many records were covered.
    pub records: u64,
    /// How many points of the space no record can be, by rule.
    pub excluded: Vec<(&'static str, u64)>,
    /// How many pairs of a record and the next worse one were compared.
    pub cover_comparisons: u64,
    /// Runs of days on which nothing changes, the most over the options.
    pub breakpoints: usize,
    /// One point for each distinct plan that has a fault.
    pub unsound: Vec<Unsound>,
    /// One pair for each two distinct plans in the wrong order.
    pub looser: Vec<LooserThan>,
    /// A point for each distinct plan, and how many records have that plan.
    pub representatives: Vec<(Vec<u8>, u64)>,
    /// Whether it was stopped before the end.
    pub partial: bool,
    /// A grid that cannot say what the files say.
    pub off_grid: Vec<String>,
    /// Records whose own plan was not the one that stands for them.
    pub not_shared: u64,
}

impl Walked {
    /// How many different plans there are.
    pub fn distinct_plans(&self) -> u64 {
        self.representatives.len() as u64
    }
}

/// Walks the whole space of a family.
///
/// # Method
/// One task for each option and protocol asked for. Within it the points are a
/// mixed-radix count over the other axes; each is composed (singly), or takes the
/// plan of the first point with the same protocol, the same effective rules and
/// the same safe arcs (by rule). Each distinct plan is checked, or with
/// [`Manner::Singly`] every record's own. Then each pair of points that a cover
/// joins is compared, each pair of distinct plans once.
pub fn walk(space: &Space<'_>, manner: Manner, watch: &Watch) -> Walked {
    let options = space.axes.iter().position(|axis| axis.what == What::Options).unwrap_or(0);
    let protocols = space.axes.iter().position(|axis| axis.what == What::Protocol).unwrap_or(0);
    let tasks: Vec<(u8, u8)> = (0..space.axes[options].classes.len() as u8)
        .flat_map(|option| (0..space.axes[protocols].classes.len() as u8).map(move |protocol| (option, protocol)))
        .collect();
    let walked: Vec<Walked> = tasks
        .into_par_iter()
        .map(|(option, protocol)| {
            let compiled = Compiled::new(space.family, &space.options[usize::from(option)], &[]);
            let groups = match manner {
                Manner::ByRule => Groups::by_rule(space, &[&compiled]),
                Manner::Singly => Groups::singly(space),
            };
            let axes = Axes::new(space, groups, vec![(options, option), (protocols, protocol)]);
            Task { axes, compiled: &compiled }.run(&space.options[usize::from(option)], manner, watch)
        })
        .collect();
    walked.into_iter().fold(Walked::default(), join)
}

/// How many points a walk has to go through.
pub fn points(space: &Space<'_>, manner: Manner) -> u128 {
    match manner {
        Manner::Singly => space.product(),
        Manner::ByRule => {
            let counts = space.options.iter().map(|choices| {
                let compiled = Compiled::new(space.family, choices, &[]);
                Groups::by_rule(space, &[&compiled]).product() / space.options.len() as u128
            });
            counts.sum()
        }
    }
}

fn join(mut all: Walked, one: Walked) -> Walked {
    all.records += one.records;
    for (rule, count) in one.excluded {
        match all.excluded.iter_mut().find(|(known, _)| *known == rule) {
            Some((_, known)) => *known += count,
            None => all.excluded.push((rule, count)),
        }
    }
    all.cover_comparisons += one.cover_comparisons;
    all.breakpoints = all.breakpoints.max(one.breakpoints);
    let plans = all.representatives.len();
    all.unsound.extend(one.unsound.into_iter().map(|found| Unsound { plan: found.plan + plans, ..found }));
    all.looser.extend(one.looser);
    all.representatives.extend(one.representatives);
    all.partial |= one.partial;
    all.off_grid.extend(one.off_grid);
    all.not_shared += one.not_shared;
    all
}

/// Index of a point that no record can be.
const NOBODY: u32 = u32::MAX;

/// So many points are done between two looks at the watch.
const STRIDE: usize = 4096; // not medical: how often a walk looks up

struct Task<'t> {
    axes: Axes<'t>,
    compiled: &'t Compiled<'t>,
}

impl Task<'_> {
    fn run(&self, choices: &protocol::Choices, manner: Manner, watch: &Watch) -> Walked {
        let mut walked = Walked { breakpoints: self.compiled.grid.columns(), ..Walked::default() };
        let rules = match DenseRules::new(self.axes.space.family, choices, &self.compiled.grid, &self.compiled.stages) {
            Ok(rules) => rules,
            Err(fault) => {
                walked.off_grid.push(fault);
                return walked;
            }
        };
        let (ids, plans) = self.compose(&rules, manner, watch, &mut walked);
        self.compare(&ids, &plans, watch, &mut walked);
        walked
    }

    /// Gives each point its plan, and checks each plan.
    fn compose(
        &self,
        rules: &DenseRules<'_>,
        manner: Manner,
        watch: &Watch,
        walked: &mut Walked,
    ) -> (Vec<u32>, Vec<Plan>) {
        let axes = &self.axes;
        let same_effect = self.compiled.same_effect();
        let decider = Decider::new(self.compiled);
        let mut ids = vec![NOBODY; axes.total];
        let mut plans: Vec<Plan> = Vec::new();
        let mut known: FxHashMap<(u8, u128), u32> = FxHashMap::default();
        let mut own: Option<Plan> = None;
        let mut count = axes.start();
        let mut place = axes.place(&count);
        let mut answered = Answered::new(axes, &decider, &place.facts, &count);
        let requested = axes.space.requested(&place.point);
        for (index, of_point) in ids.iter_mut().enumerate() {
            if index % STRIDE == 0 && index > 0 {
                watch.done.fetch_add(STRIDE as u64, Ordering::Relaxed);
                if watch.stop.load(Ordering::Relaxed) {
                    walked.partial = true;
                    break;
                }
            }
            let weight = count.weight();
            let Place { point, facts, .. } = &place;
            if let Some(excluded) = place.excluded {
                match walked.excluded.iter_mut().find(|(rule, _)| *rule == excluded.rule) {
                    Some((_, count)) => *count += weight,
                    None => walked.excluded.push((excluded.rule, weight)),
                }
            } else {
                walked.records += weight;
                let (chosen, fired) = decider.decide(answered.all(), requested);
                let effect = RuleSet(fired).iter().fold(0_u128, |effect, rule| effect | 1 << same_effect[rule]);
                let id = *known.entry((chosen, effect)).or_insert_with(|| {
                    let plan = resolve(self.compiled, facts, requested);
                    if manner == Manner::ByRule && !rules.is_sound(&plan, facts, requested) {
                        walked.unsound.push(Unsound { point: point.clone(), plan: plans.len() });
                    }
                    walked.representatives.push((point.clone(), 0));
                    plans.push(plan);
                    plans.len() as u32 - 1
                });
                *of_point = id;
                walked.representatives[id as usize].1 += weight;
                if manner == Manner::Singly {
                    let own = own.get_or_insert_with(|| plans[0].clone());
                    resolve_into(self.compiled, facts, requested, own);
                    if !rules.is_sound(own, facts, requested) && walked.unsound.len() < MOST_KEPT {
                        walked.unsound.push(Unsound { point: point.clone(), plan: id as usize });
                    }
                    if !is_same(own, &plans[id as usize]) {
                        walked.not_shared += 1;
                    }
                }
            }
            let changed = axes.advance(&mut count);
            // Plans under other safe arcs are others; arcs change slowest.
            if matches!(axes.what(changed), What::SafeArc(_)) {
                known.clear();
            }
            axes.follow(&mut place, &count, changed);
            answered.follow(&count, changed);
        }
        watch.done.fetch_add((axes.total % STRIDE) as u64, Ordering::Relaxed);
        (ids, plans)
    }

    /// Compares each point with the next worse one on each axis.
    fn compare(&self, ids: &[u32], plans: &[Plan], watch: &Watch, walked: &mut Walked) {
        let mut compared = Pairs::new(plans.len());
        let axes = &self.axes;
        let links: Vec<Vec<Vec<Link>>> = (0..axes.varying.len()).map(|at| axes.links(at)).collect();
        let mut count = axes.start();
        // Records of the milder side of each cover, by axis and group, each group still counted as often as it is large.
        let mut compared_from: Vec<Vec<u64>> = axes.varying.iter().map(|varying| vec![0; varying.groups]).collect();
        for (index, &mild) in ids.iter().enumerate() {
            if index > 0 {
                axes.advance(&mut count);
            }
            if index % STRIDE == 0 && watch.stop.load(Ordering::Relaxed) {
                walked.partial = true;
                return;
            }
            if mild == NOBODY {
                continue;
            }
            let weight = count.weight();
            for (at, varying) in axes.varying.iter().enumerate() {
                let group = count.digits[at];
                for link in &links[at][group] {
                    let worse = ids[index + link.to * varying.stride - group * varying.stride];
                    if worse == NOBODY {
                        continue;
                    }
                    compared_from[at][group] += weight * link.covers;
                    if mild == worse || !compared.insert(mild, worse) {
                        continue;
                    }
                    if !is_stricter(&plans[worse as usize], &plans[mild as usize]) && walked.looser.len() < MOST_KEPT {
                        let mut digits = count.digits.clone();
                        digits[at] = link.to;
                        let (mild, worse) = (axes.point(&count.digits), axes.point(&digits));
                        walked.looser.push(LooserThan { mild, worse });
                    }
                }
            }
        }
        for (at, counted) in compared_from.iter().enumerate() {
            let groups = axes.groups(at).iter();
            walked.cover_comparisons += groups.zip(counted).map(|(group, counted)| counted / group.size).sum::<u64>();
        }
    }
}

/// Pairs of plans that were compared already.
enum Pairs {
    /// A bit for each pair.
    Bits(usize, Vec<u64>),
    /// Each pair, where the bits would be too many.
    Set(FxHashSet<(u32, u32)>),
}

/// Bits of a word.
const WORD: usize = u64::BITS as usize;

impl Pairs {
    fn new(plans: usize) -> Self {
        const MOST: usize = 20_000; // not medical: fifty megabytes of bits
        if plans <= MOST {
            Self::Bits(plans, vec![0; (plans * plans).div_ceil(WORD)])
        } else {
            Self::Set(FxHashSet::default())
        }
    }

    /// Adds a pair; whether it is new.
    fn insert(&mut self, a: u32, b: u32) -> bool {
        match self {
            Self::Bits(plans, bits) => {
                let at = a as usize * *plans + b as usize;
                let (word, bit) = (&mut bits[at / WORD], 1_u64 << (at % WORD));
                let new = *word & bit == 0;
                *word |= bit;
                new
            }
            Self::Set(set) => set.insert((a, b)),
        }
    }
}

/// So many faults are kept of one task; a family that has more is shown by these.
const MOST_KEPT: usize = 2000; // not medical: bounds the memory of a broken family

/// Whether nothing in a plan is looser than in another: limits, sling, and the gates both have.
pub fn is_stricter(plan: &Plan, than: &Plan) -> bool {
    let mut gates = plan.gates.iter().zip(&than.gates);
    // The forearm on the belly is the stricter way to wear a sling; where there is none it does not matter.
    let turned = plan.sling_position.iter().zip(&than.sling_position).zip(&plan.wear);
    plan.is_within(than)
        && gates.all(|(own, other)| own.is_none() || other.is_none() || own >= other)
        && turned.into_iter().all(|((own, other), wear)| own >= other || *wear == plan::Wear::None)
}

fn is_same(a: &Plan, b: &Plan) -> bool {
    a.cells == b.cells && a.wear == b.wear && a.sling_position == b.sling_position && a.gates == b.gates
}

/// The faults of one point, told from the files.
pub fn faults_at(space: &Space<'_>, point: &[u8]) -> (Facts, Vec<protocol::checker::Fault>) {
    let choices = space.choices(point);
    let compiled = Compiled::new(space.family, choices, &[]);
    let (facts, requested) = (space.facts(point), space.requested(point));
    let plan = resolve(&compiled, &facts, requested);
    let book = protocol::checker::Rulebook::new(space.family, choices);
    (facts, protocol::checker::faults_of_plan(&book, &plan, &facts, requested))
}
