//! What findings add: the rules of a family, and how it selects, refuses and asks.

use body::Key;
use plan::{Cell, SlingPosition, Wear};
use protocol::file::{Remark, Rule};
use protocol::{Choices, Family};

use crate::compare::course::{Course, Sling, Value, beside};
use crate::compare::runs::pieces;
use crate::compare::words;

impl Course {
    /// The rules of one id and owner that are in force under the surgeon's choices, as caps.
    pub(super) fn of_rules(family: &Family, owner: Option<usize>, id: &str, choices: &Choices) -> Self {
        let horizon = family.protocols.iter().map(|protocol| protocol.horizon.count()).max().unwrap_or(0);
        let mut course = Self::empty(horizon, Cell::FREE);
        let rules: Vec<&Rule> = family
            .rules()
            .filter(|(own, rule)| *own == owner && rule.id == id)
            .map(|(_, rule)| rule)
            .filter(|rule| rule.choice.as_ref().is_none_or(|choice| choices.is(&choice.id, &choice.is)))
            .collect();
        caps(&mut course, &rules);
        slings(&mut course, &rules);
        for rule in rules {
            course.say(beside::RULE, in_words(rule));
        }
        course
    }

    /// Everything of a family that is told in words.
    pub(super) fn of_family(family: &Family) -> Self {
        let mut course = Self::empty(0, Cell::NO);
        let file = &family.file;
        let mut say = |text: String| course.say(beside::FAMILY, text);
        say(format!("for {}", file.procedure.in_words()));
        say(format!("the default is {}", file.default));
        say(format!("a safe arc without a day binds until stage {}", file.safe_arc_until_stage));
        for protocol in &file.protocols {
            say(format!("has the protocol {protocol}"));
        }
        for (order, select) in (1..).zip(&file.selects) {
            say(format!("selection {order}, {}: {} where {}", select.id, select.protocol, select.when.in_words()));
        }
        for request in &file.on_request {
            let twice = request.confirm_large.as_ref().map_or(String::new(), |(condition, says)| {
                format!(", confirmed once more (\"{says}\") where {}", condition.in_words())
            });
            say(format!("{} only at the surgeon's request{twice}", request.protocol));
        }
        for question in &file.questions {
            let mut text = format!("asks before signing: {} where {}", question.text, question.when.in_words());
            let unless = question.unless_capped_by.as_ref().map(|id| format!("not where {id} is in force"));
            let only = question.only_when_chosen.as_ref().map(|id| format!("only where {id} is chosen"));
            let offers = question.offers_passive_from.map(|day| format!("offers passive motion from {day}"));
            for part in [unless, only, offers].into_iter().flatten() {
                text.push_str("; ");
                text.push_str(&part);
            }
            say(text);
        }
        for choice in family.choices() {
            say(format!("choice {}: {} (the first is the default)", choice.id, choice.options.join(", ")));
        }
        let remark = |what: &str, remark: &Remark| {
            format!("{what} {}: {} where {}", remark.id, remark.title, remark.when.in_words())
        };
        let own = family.protocols.iter().map(|protocol| &protocol.rules);
        for rules in std::iter::once(&family.rules).chain(own) {
            for refusal in &rules.refusals {
                say(remark("refuses", refusal));
            }
            for caution in &rules.cautions {
                say(remark("cautions", caution));
            }
        }
        course
    }
}

/// The lowest cap of the rules on each key and day.
fn caps(course: &mut Course, rules: &[&Rule]) {
    let steps = || {
        let limits = rules.iter().flat_map(|rule| &rule.limits);
        limits.flat_map(|limit| {
            let pairs = limit.keys.iter().flat_map(|key| limit.steps.iter().map(move |step| (*key, step)));
            pairs.filter(|(key, step)| step.counts.fits(*key))
        })
    };
    let mut keys: Vec<Key> = steps().map(|(key, _)| key).collect();
    keys.sort_unstable();
    keys.dedup();
    let end = |until: Option<u16>| until.unwrap_or(course.horizon);
    for key in keys {
        let own: Vec<(u16, u16, Cell)> =
            steps().filter(|(of, _)| *of == key).map(|(_, step)| (step.from, end(step.until), step.cell)).collect();
        let mut runs = crate::compare::Runs::default();
        for (from, until) in pieces(own.iter().flat_map(|(from, until, _)| [*from, *until]), course.horizon) {
            let cell = own.iter().filter(|(first, last, _)| (*first..*last).contains(&from)).map(|(.., cell)| *cell);
            runs.push(from, until, Value::of(cell.min().unwrap_or(Cell::FREE)));
        }
        course.limits.insert(key, runs);
    }
}

/// The longest sling wear the rules demand on each day.
fn slings(course: &mut Course, rules: &[&Rule]) {
    let horizon = course.horizon;
    let steps: Vec<(u16, u16, Wear)> = rules
        .iter()
        .flat_map(|rule| &rule.slings)
        .map(|step| (step.from, step.until.unwrap_or(horizon), step.wear))
        .collect();
    for (from, until) in pieces(steps.iter().flat_map(|(from, until, _)| [*from, *until]), horizon) {
        let worn = steps.iter().filter(|(first, last, _)| (*first..*last).contains(&from)).map(|(.., wear)| *wear);
        let wear = worn.max().unwrap_or(Wear::None);
        course.sling.push(from, until, Sling { wear, position: SlingPosition::Neutral, except: Vec::new() });
    }
}

/// When a rule fires and what it does beside its limits.
fn in_words(rule: &Rule) -> String {
    let mut text = format!("fires where {}", rule.when.in_words());
    let choice = rule.choice.as_ref().map(words::option);
    let cap = rule.cap.as_ref().map(|cap| format!("{cap} caps the plan"));
    let slings = rule.slings.iter().map(words::sling);
    let gates = rule.gates.iter().map(|(stage, day)| format!("stage {stage} not before {day}"));
    for part in choice.into_iter().chain(cap).chain(slings).chain(gates) {
        text.push_str("; ");
        text.push_str(&part);
    }
    text
}
