//! What to ask: the missing facts whose answer would change a limit, and what blocks signing.

use std::collections::HashMap;

use operative::{DIMENSIONS, DimensionId, Facts, Record};
use plan::{Plan, Question, QuestionChange};
use protocol::{Compiled, Decider, Requested, resolve_into};
use quantity::PostoperativeDay;

use crate::reasons::Reasons;

/// The questions of a record, and over how many completions they were looked for.
pub(crate) struct Asked {
    pub questions: Vec<Question>,
    pub completions: u64,
}

/// At most so many combinations of the other open facts are looked at for each fact.
const MOST_COMBINATIONS: usize = 512; // not medical: bounds the time

/// A fact that is open, with its answers as the rules tell them apart.
pub(crate) struct Open {
    pub dimension: DimensionId,
    /// One class for each way the rules can tell its answers apart.
    classes: Vec<u8>,
    /// The classes that no rule tells apart, together.
    pub alike: Vec<Vec<u8>>,
}

/// The open facts that some rule or selection reads.
pub(crate) fn open(compiled: &Compiled<'_>, record: &Record) -> Vec<Open> {
    record
        .unsettled()
        .into_iter()
        .map(|(dimension, classes)| {
            let alike = told_apart(compiled, dimension, classes);
            Open { dimension, classes: alike.iter().filter_map(|alike| alike.first().copied()).collect(), alike }
        })
        .filter(|open| !open.alike.is_empty())
        .collect()
}

/// Looks for the missing facts whose answer would change any limit on any day.
///
/// # Method
/// Of each open fact, every answer that some rule or selection tells from the
/// others is tried under the combinations of answers to the other open facts,
/// and compared with leaving the fact open; the greatest change counts. Where
/// the combinations are too many, only the mildest and the present ones of the
/// other facts are tried: rules only tighten, so other facts at their mildest
/// hide the least.
pub(crate) fn all(compiled: &Compiled<'_>, record: &Record, facts: &Facts, requested: Requested) -> Asked {
    let completions = record.unsettled().iter().map(|(_, classes)| classes.len().max(1) as u64).product();
    let open = open(compiled, record);
    let mut plans = Plans::new(compiled, requested);
    let mut found: Vec<(u64, Vec<Question>)> = Vec::new();
    for fact in &open {
        let others: Vec<&Open> = open.iter().filter(|other| other.dimension != fact.dimension).collect();
        let mut best: (u64, Difference) = (0, Difference::default());
        for completed in combinations(facts, &others) {
            let now = plans.of(&completed);
            for &class in &fact.classes {
                let answered = plans.of(&completed.with(fact.dimension, class));
                if let Some(difference) = differ(&plans.known[&now], &plans.known[&answered])
                    && difference.weight() > best.0
                {
                    best = (difference.weight(), difference);
                }
            }
        }
        if best.0 > 0 {
            let changes: Vec<QuestionChange> = question_changes(&best.1);
            let questions = record
                .missing(fact.dimension)
                .into_iter()
                .map(|missing| Question { path: missing.path, text: missing.text, changes: changes.clone() })
                .collect();
            found.push((best.0, questions));
        }
    }
    found.sort_by_key(|(weight, _)| std::cmp::Reverse(*weight));
    let mut questions: Vec<Question> = Vec::new();
    for question in found.into_iter().flat_map(|(_, questions)| questions) {
        if !questions.iter().any(|known| known.path == question.path) {
            questions.push(question);
        }
    }
    Asked { questions, completions }
}

/// What an answer could change: for each key one run of days and the most degrees, the weightiest first.
fn question_changes(difference: &Difference) -> Vec<QuestionChange> {
    let mut runs: Vec<(u64, QuestionChange)> = Vec::new();
    for change in &difference.limits {
        let key = change.key.to_string();
        let (from_day, until_day) = (PostoperativeDay::new(change.from_day), PostoperativeDay::new(change.until_day));
        match runs.last_mut() {
            Some((weight, last)) if last.key == key && last.until_day == from_day => {
                *weight += change.weight();
                last.until_day = until_day;
                last.degrees = last.degrees.max(change.degrees());
            }
            _ => runs.push((change.weight(), QuestionChange { key, from_day, until_day, degrees: change.degrees() })),
        }
    }
    runs.sort_by_key(|(weight, _)| std::cmp::Reverse(*weight));
    let mut changes: Vec<QuestionChange> = runs.into_iter().map(|(_, change)| change).collect();
    changes.extend(difference.sling.map(|(from, until)| QuestionChange {
        key: "sling".into(),
        from_day: PostoperativeDay::new(from),
        until_day: PostoperativeDay::new(until),
        degrees: None,
    }));
    changes
}

/// What differs between two plans.
#[derive(Debug, Clone, Default)]
struct Difference {
    limits: Vec<plan::Change>,
    /// The days from the first to the last on which the sling is worn differently.
    sling: Option<(u16, u16)>,
}

impl Difference {
    fn weight(&self) -> u64 {
        let sling = self.sling.map_or(0, |(from, until)| u64::from(until - from));
        self.limits.iter().map(plan::Change::weight).sum::<u64>() + sling
    }
}

/// What differs between two plans; `None` where limits and sling are the same.
fn differ(a: &Plan, b: &Plan) -> Option<Difference> {
    let limits = a.changes(b);
    let columns = || a.wear.iter().zip(&b.wear).enumerate().filter(|(_, (a, b))| a != b).map(|(column, _)| column);
    let sling = columns().next().zip(columns().next_back());
    let sling = sling.map(|(first, last)| (a.grid.days[first], a.grid.days[last + 1]));
    (!limits.is_empty() || sling.is_some()).then_some(Difference { limits, sling })
}

/// The classes of a dimension, those together that no rule or selection tells apart.
fn told_apart(compiled: &Compiled<'_>, dimension: DimensionId, classes: Vec<u8>) -> Vec<Vec<u8>> {
    let masks = compiled.masks_on(dimension);
    if masks.is_empty() {
        return Vec::new();
    }
    let mut alike: Vec<(Vec<bool>, Vec<u8>)> = Vec::new();
    for class in classes {
        let signature: Vec<bool> = masks.iter().map(|mask| mask & (1 << class) != 0).collect();
        match alike.iter_mut().find(|(known, _)| *known == signature) {
            Some((_, members)) => members.push(class),
            None => alike.push((signature, vec![class])),
        }
    }
    alike.into_iter().map(|(_, members)| members).collect()
}

/// Completions of the other open facts; where they are too many, the present state of the record and the mildest.
pub(crate) fn combinations(facts: &Facts, others: &[&Open]) -> Vec<Facts> {
    let many = others.iter().map(|open| open.classes.len()).try_fold(1_usize, usize::checked_mul);
    if many.is_none_or(|many| many > MOST_COMBINATIONS) {
        let mildest = others.iter().fold(*facts, |facts, open| {
            let rank = |class: &u8| DIMENSIONS[usize::from(open.dimension.0)].classes[usize::from(*class)].rank;
            open.classes.iter().copied().min_by_key(rank).map_or(facts, |class| facts.with(open.dimension, class))
        });
        return vec![*facts, mildest];
    }
    let mut all = vec![*facts];
    for open in others {
        all =
            all.iter().flat_map(|facts| open.classes.iter().map(|&class| facts.with(open.dimension, class))).collect();
    }
    all
}

/// Plans already composed, by what decides them.
pub(crate) struct Plans<'c> {
    pub compiled: &'c Compiled<'c>,
    decider: Decider<'c>,
    requested: Requested,
    known: HashMap<(u8, u128), Plan>,
    spare: Option<Plan>,
}

impl<'c> Plans<'c> {
    pub(crate) fn new(compiled: &'c Compiled<'c>, requested: Requested) -> Self {
        Self { compiled, decider: Decider::new(compiled), requested, known: HashMap::new(), spare: None }
    }

    /// The plan for these facts.
    pub(crate) fn get(&mut self, facts: &Facts) -> &Plan {
        let decides = self.of(facts);
        &self.known[&decides]
    }

    /// How much two plans differ: days and degrees of the limits, and days of the sling.
    pub(crate) fn weight(&mut self, a: &Facts, b: &Facts) -> u64 {
        let (a, b) = (self.of(a), self.of(b));
        differ(&self.known[&a], &self.known[&b]).map_or(0, |difference| difference.weight())
    }

    /// The key under which the plan for these facts is kept.
    fn of(&mut self, facts: &Facts) -> (u8, u128) {
        let decides = self.decider.of(facts, self.requested);
        if !self.known.contains_key(&decides) {
            let mut plan = match self.spare.take() {
                Some(plan) => plan,
                None => protocol::resolve(self.compiled, facts, self.requested),
            };
            resolve_into(self.compiled, facts, self.requested, &mut plan);
            self.known.insert(decides, plan);
        }
        decides
    }
}

/// The questions of the family that block signing.
pub(crate) fn blocking(reasons: &Reasons<'_>, has_loosening: bool) -> Vec<Question> {
    let dated = reasons.dated;
    let (plan, facts) = (&dated.plan, &dated.facts);
    let is = |id: &String, place: u8| dated.compiled.protocol(place).id == *id;
    let in_force = |id: &String| {
        (0_u8..)
            .zip(&dated.compiled.family.protocols)
            .any(|(place, _)| is(id, place) && (place == plan.protocol || plan.caps & (1 << place) != 0))
    };
    let mut questions = Vec::new();
    for question in &dated.compiled.family.file.questions {
        let answered = facts.class(question.answered_by) > 0;
        // Answered with a loosening that the settings do not hold: not answered yet.
        let promised = facts.class_name(question.answered_by) == "loosened" && !has_loosening;
        if (answered && !promised)
            || !question.when.holds(facts)
            || question.unless_capped_by.as_ref().is_some_and(in_force)
            || question.only_when_chosen.as_ref().is_some_and(|id| !is(id, plan.protocol))
        {
            continue;
        }
        let found: Vec<String> =
            reasons.places(&question.when).into_iter().map(|place| format!("{} {}", place.path, place.shown)).collect();
        let conditions = question.when.all.iter().chain(&question.when.any);
        let open: Vec<String> = conditions
            .filter(|condition| facts.is_unknown(condition.dimension) && !condition.holds(facts))
            .flat_map(|condition| reasons.record.missing(condition.dimension))
            .map(|missing| missing.path)
            .collect();
        let mut text = format!("{} (found: {})", question.text, found.join("; "));
        if promised {
            text.push_str("; the answer says loosened, and the settings hold no loosening of passive motion");
        }
        if let Some(offer) = question.offers_passive_from.and_then(|from| offer(dated, from.count())) {
            text.push_str(&offer);
        }
        if !open.is_empty() {
            text.push_str(&format!("; not recorded: {}", open.join(", ")));
        }
        questions.push(Question { path: question.path.clone(), text, changes: Vec::new() });
    }
    questions
}

/// The loosening that a question offers beside the plan as composed: the first passive limits, opened earlier.
fn offer(dated: &crate::dated::Dated<'_>, from: u16) -> Option<String> {
    let grid = &dated.plan.grid;
    let opened: Vec<(body::Key, u16, plan::Cell)> = grid
        .keys
        .iter()
        .filter(|key| key.joint == body::Joint::Shoulder && key.mode == body::Mode::Passive)
        .filter_map(|key| {
            let first = dated.change_days().into_iter().find(|&day| dated.value(*key, day).is_open())?;
            Some((*key, first, dated.value(*key, first)))
        })
        .collect();
    let first = opened.iter().map(|(_, first, _)| *first).min().filter(|first| *first > from)?;
    let lines: Vec<String> = opened
        .iter()
        .filter(|(_, opens, _)| *opens == first)
        .map(|(key, _, cell)| format!("{key} {}", crate::choose::in_words(*cell, *key)))
        .collect();
    Some(format!(
        "; plan one is this page as composed; plan two would be this page with passive motion opened from day {from} until day {first} by the surgeon's own loosening: {}",
        lines.join(", ")
    ))
}

/// A safe arc that keeps the shoulder still for longer than the cap is asked about, never refused.
///
/// # Source
/// `cap-without-passive-motion`: own choice.
pub(crate) fn safe_arc_too_still(dated: &crate::dated::Dated<'_>, record: &Record) -> Option<Question> {
    if dated.facts.safe_arcs.is_empty() || record.surgeon.safe_arc_kept.is_some_and(|kept| kept.value) {
        return None;
    }
    let still = crate::stiffness::Runs::of(dated).without_passive;
    let cap = evidence::ids::CAP_WITHOUT_PASSIVE_MOTION.days().count();
    (still > cap).then(|| Question {
        path: "surgeon.safe_arc_kept".into(),
        text: format!(
            "with the safe arcs of the record the shoulder is not moved for {still} days in a row, over the cap of {cap}: keep them (write safe_arc_kept = true), or name an earlier `until`?"
        ),
        changes: Vec::new(),
    })
}
