//! `mendarc explain`: a diagnostic code, a value of the table of evidence, a rule, or an entry of the catalogue.

use std::fmt::Write as _;

use body::UsualMotion;
use diagnostic::Diagnostic;
use document::nearest;
use exercise::{Amount, Catalogue, Demand};
use protocol::Library;
use serde::Serialize;

use crate::arguments::Explain;
use crate::command::inputs::Inputs;
use crate::explanations::{self, Explanation};
use crate::json;
use crate::outcome::{Outcome, print, print_page};
use crate::shelf::Shelf;
use crate::view::paint::{FAINT, HEADING, paint, wrapped};

/// What was found under a name.
#[derive(Debug, Default, Serialize)]
struct Topic {
    topic: String,
    /// diagnostic, evidence, rule, choice, protocol, exercise, activity, care or test.
    kind: &'static str,
    title: String,
    paragraphs: Vec<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    wrong: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    right: Option<String>,
    evidence: Vec<Value>,
    cautions: Vec<String>,
    diagnostics: Vec<json::Diagnostic>,
}

/// A value of the table of evidence.
#[derive(Debug, Serialize)]
struct Value {
    id: &'static str,
    what: &'static str,
    value: Option<f64>,
    low: Option<f64>,
    high: Option<f64>,
    unit: &'static str,
    how_known: String,
    mark: Option<&'static str>,
    sources: Vec<String>,
    note: Option<&'static str>,
}

pub fn run(arguments: &Explain) -> Outcome {
    let mut inputs = Inputs::default();
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    let explained = explanations::all(&mut inputs.sources, &mut inputs.sink);
    let wanted = arguments.topic.trim();
    let found = of_code(&explained, wanted)
        .or_else(|| of_usual_range(wanted))
        .or_else(|| of_evidence(wanted))
        .or_else(|| of_rule(&shelf.library, wanted))
        .or_else(|| of_ground_rule(wanted))
        .or_else(|| of_part(&shelf, wanted))
        .or_else(|| of_entry(&shelf, wanted));
    let Some(mut topic) = found else {
        let mut fault = Diagnostic::error("no-such-topic", format!("nothing is called `{wanted}`")).help(
            "a diagnostic code, an id of the table of evidence, a rule, an exercise or an activity can be explained",
        );
        let names = names(&explained, &shelf.library, &shelf.catalogue);
        if let Some(near) = nearest(wanted, names.iter().map(String::as_str)) {
            fault = fault.help(format!("did you mean `{near}`?"));
        }
        inputs.sink.push(fault);
        return inputs.fail(None, arguments.json);
    };
    topic.topic = wanted.to_owned();
    topic.cautions = json::usual_cautions();
    let written = if arguments.json { print(&json::to_text(&topic)) } else { print_page(&page(&topic, &shelf)) };
    inputs.finish(written)
}

fn of_code(explained: &[Explanation], code: &str) -> Option<Topic> {
    let found = explained.iter().find(|explanation| explanation.code == code)?;
    Some(Topic {
        kind: "diagnostic",
        title: code.to_owned(),
        paragraphs: vec![found.means.clone(), found.matters.clone()],
        wrong: found.wrong.clone(),
        right: found.right.clone(),
        evidence: found.sources.iter().filter_map(|id| evidence::entry(id)).map(value).collect(),
        ..Topic::default()
    })
}

fn of_evidence(id: &str) -> Option<Topic> {
    let entry = evidence::entry(id)?;
    let mut paragraphs: Vec<String> = Vec::new();
    paragraphs.extend(entry.population.map(|population| format!("Population: {population}.")));
    paragraphs.extend(entry.design.map(|design| format!("Design: {design}.")));
    paragraphs.extend(entry.spread.map(|spread| format!("Spread: {spread}.")));
    paragraphs.extend(entry.locator.map(|locator| format!("Place in the source: {locator}.")));
    paragraphs.extend(entry.formula.map(|formula| format!("Derived: {formula}.")));
    Some(Topic {
        kind: "evidence",
        title: entry.what.to_owned(),
        paragraphs,
        evidence: vec![value(entry)],
        ..Topic::default()
    })
}

/// A usual range of motion, by any of its entries or by `normal-` and the motion: always with the other references.
fn of_usual_range(id: &str) -> Option<Topic> {
    let motion = UsualMotion::of_id(id)?;
    let (least, most) = motion.disagreement();
    let asked = motion.references().filter(|entry| entry.id == id);
    let others = motion.references().filter(|entry| entry.id != id);
    Some(Topic {
        kind: "evidence",
        title: format!("usual range of motion: {}", motion.name().replace('-', " ")),
        paragraphs: vec![format!(
            "By one reference or another it is {least} to {most} degrees. They disagree by age, sex and edition, and none \
             is the right one: for one patient the other arm is the better reference. No number here is a limit."
        )],
        evidence: asked.chain(others).map(value).collect(),
        ..Topic::default()
    })
}

fn value(entry: &'static evidence::Entry) -> Value {
    let mut sources: Vec<String> = entry
        .sources
        .iter()
        .filter_map(|key| evidence::source(key))
        .map(|source| match source.year {
            Some(year) if !source.shown_as.contains(&year.to_string()) => format!("{}, {year}", source.shown_as),
            _ => source.shown_as.to_owned(),
        })
        .collect();
    sources.dedup();
    Value {
        id: entry.id,
        what: entry.what,
        value: entry.value,
        low: entry.low,
        high: entry.high,
        unit: entry.unit.name(),
        how_known: entry.how_known.name().to_owned(),
        mark: entry.how_known.mark(),
        sources,
        note: entry.note,
    }
}

fn of_rule(library: &Library, id: &str) -> Option<Topic> {
    let topic = |title: &str, text: String, evidence: &[&'static evidence::Entry]| Topic {
        kind: "rule",
        title: title.to_owned(),
        paragraphs: vec![text],
        evidence: evidence.iter().copied().map(value).collect(),
        ..Topic::default()
    };
    for family in &library.families {
        if let Some(choice) = family.choices().find(|choice| choice.id == id) {
            let text = format!(
                "A choice of the surgeon's, written in the settings as [[prefer]] with choice = \"{id}\" and option. \
                 Options, the default first: {}. An option that loosens needs a reason, and one that loosens much is \
                 written twice.",
                choice.options.join(", ")
            );
            return Some(Topic { kind: "choice", ..topic(&choice.title, text, &choice.evidence) });
        }
        if let Some(protocol) = family.protocols.iter().find(|protocol| protocol.id == id) {
            let stages: Vec<String> =
                protocol.stages.iter().map(|stage| format!("{} from {}", stage.title, stage.gate)).collect();
            let text = format!("{}. Stages: {}.", protocol.summary, stages.join(", "));
            return Some(Topic { kind: "protocol", ..topic(&protocol.title, text, &[]) });
        }
        for (_, rule) in family.rules() {
            if rule.id == id {
                let mut text = String::from("It can only lower a limit, move a start later, or lengthen the sling. ");
                if let Some(cap) = &rule.cap {
                    let _ = write!(text, "It caps the whole plan with the protocol `{cap}`. ");
                }
                for limit in &rule.limits {
                    text.push_str(&steps(limit));
                }
                return Some(topic(&rule.title, text, &rule.evidence));
            }
        }
        for protocol in &family.protocols {
            if let Some(limit) = protocol.limits.iter().find(|limit| format!("{}/{}", protocol.id, limit.id) == id) {
                return Some(topic(&format!("{} ({})", limit.title, protocol.title), steps(limit), &limit.evidence));
            }
            if let Some(stage) = protocol.stages.iter().find(|stage| format!("{}/{}", protocol.id, stage.id) == id) {
                let text = format!("Gate: {}.", stage.gate);
                return Some(topic(&format!("{} ({})", stage.title, protocol.title), text, &stage.evidence));
            }
        }
    }
    None
}

/// The rules that no file writes, because every plan obeys them.
fn of_ground_rule(id: &str) -> Option<Topic> {
    use evidence::ids;
    let (text, evidence): (&str, &[&'static evidence::Entry]) = match id {
        "safe-arc" => (
            "What the surgeon saw to be safe on the table caps that movement in every mode and position until its day; \
             it never raises a limit, and it closes effort away from the side.",
            &[ids::SAFE_ARC_CAPS],
        ),
        "hold" => (
            "A hold keeps the limits of the day before it and moves every later start and lift. It never raises a limit.",
            &[ids::HOLD_KEEPS_LIMITS],
        ),
        "loosening" => (
            "A looser limit by the surgeon's own decision: applied last, outside every proof, and printed wherever the \
             plan is. More than 14 days or 20 degrees are written twice.",
            &[ids::LARGE_LOOSENING_DAYS, ids::LARGE_LOOSENING_DEGREES],
        ),
        "replacement" => (
            "An exercise that a rule removes is replaced from the catalogue where one of the same purpose fits the day.",
            &[ids::LEAST_USEFUL_ARC, ids::HOME_MARGIN],
        ),
        "exercise-ceiling" => (
            "Until active motion opens an exercise of shoulder or blade stays in the lowest class of measured muscle \
             activity, or the protocol names it; later none goes more than two classes above what has been open for \
             a week.",
            &[ids::EMG_CLASS_LOW_TOP, ids::CLASS_STEP, ids::CLASS_SETTLING],
        ),
        "resting-allowance" => (
            "Sling, rest, washing, dressing and the arm hanging from a leaning trunk may use this from day 0; no exercise \
             may. A safe arc below it lowers it.",
            &[ids::RESTING_ELEVATION, ids::RESTING_INTERNAL_ROTATION],
        ),
        "surgeons-choice" => ("The surgeon named this protocol in the settings, with a reason.", &[]),
        _ => return None,
    };
    Some(Topic {
        kind: "rule",
        title: id.to_owned(),
        paragraphs: vec![text.to_owned()],
        evidence: evidence.iter().copied().map(value).collect(),
        ..Topic::default()
    })
}

/// Names that a prescription joins from parts: `staged/sling`, `gate/active`, `staged/exercise/pendulum`.
fn of_part(shelf: &Shelf, id: &str) -> Option<Topic> {
    let parts: Vec<&str> = id.split('/').collect();
    let topic = |title: String, text: String, evidence: Vec<&'static evidence::Entry>| Topic {
        kind: "rule",
        title,
        paragraphs: vec![text],
        evidence: evidence.into_iter().map(value).collect(),
        ..Topic::default()
    };
    let protocols = || shelf.library.families.iter().flat_map(|family| &family.protocols);
    let of = |id: &str| protocols().find(|protocol| protocol.id == id);
    match parts[..] {
        ["catalogue", entry] | [_, "exercise", entry] => of_entry(shelf, entry),
        ["gate", stage] => {
            let found: Vec<_> =
                protocols().flat_map(|p| p.stages.iter().filter(|s| s.id == stage).map(move |s| (p, s))).collect();
            let gates: Vec<String> = found.iter().map(|(p, s)| format!("{} in {}", s.gate, p.id)).collect();
            let evidence = found.iter().flat_map(|(_, s)| s.evidence.iter().copied()).collect();
            let (_, first) = found.first()?;
            Some(topic(format!("gate: {}", first.title), format!("Not before: {}.", gates.join(", ")), evidence))
        }
        ["criterion", stage, criterion] => {
            let stages = protocols().flat_map(|p| &p.stages).filter(|s| s.id == stage);
            let found = stages.flat_map(|s| &s.criteria).find(|c| c.id == criterion)?;
            Some(topic(
                format!("criterion: {}", found.text),
                "Looked at before the stage is opened; stopped at the limit counts.".into(),
                found.evidence.clone(),
            ))
        }
        [protocol, "sling"] => {
            let protocol = of(protocol)?;
            let steps: Vec<String> =
                protocol.slings.iter().map(|step| format!("{} from day {}", step.wear.name(), step.from)).collect();
            let evidence = protocol.slings.iter().flat_map(|step| step.evidence.iter().copied()).collect();
            Some(topic(format!("the sling of {}", protocol.id), format!("{}.", steps.join(", ")), evidence))
        }
        [protocol, "return", activity] => {
            let found = of(protocol)?.returns.iter().find(|line| line.activity == activity)?;
            let text = format!("Not before {}; the limits of the day still bind.", found.from);
            Some(topic(shelf.title(activity), text, found.evidence.clone()))
        }
        [protocol, "goal", goal] => {
            let found = of(protocol)?.goals.iter().find(|known| known.id == goal)?;
            let to = found.to.map_or_else(|| "within normal limits".to_owned(), |to| format!("{to} degrees"));
            let text = format!("{}: from {} degrees to {to}, due on {}.", found.key, found.from, found.due);
            Some(topic(format!("goal: {goal}"), text, found.evidence.clone()))
        }
        [family, select] => {
            let family = shelf.library.families.iter().find(|known| known.file.id == family)?;
            if select == "default" {
                let text = format!("The protocol `{}` is taken where no selection fires.", family.file.default);
                return Some(topic(family.file.title.clone(), text, Vec::new()));
            }
            let found = family.file.selects.iter().find(|known| known.id == select)?;
            let text = format!("It takes the protocol `{}`.", found.protocol);
            Some(topic(found.title.clone(), text, found.evidence.clone()))
        }
        _ => None,
    }
}

/// The values of a limit in a sentence.
fn steps(limit: &protocol::file::Limit) -> String {
    let mut movements: Vec<String> = Vec::new();
    let mut modes: Vec<&str> = Vec::new();
    for key in &limit.keys {
        let movement = format!("{} {}", key.joint, key.movement);
        if !movements.contains(&movement) {
            movements.push(movement);
        }
        if !modes.contains(&key.mode.name()) {
            modes.push(key.mode.name());
        }
    }
    let mut text = format!("{} ({}): ", movements.join(", "), modes.join(", "));
    for step in &limit.steps {
        let key = limit.keys.iter().find(|key| step.counts.fits(**key)).or(limit.keys.first());
        let value = key.map_or_else(String::new, |key| match step.cell.allowed(*key) {
            plan::Allowed::No => "not allowed".into(),
            plan::Allowed::Free => "free".into(),
            plan::Allowed::UpTo(plan::Bound::Angle(angle)) => format!("up to {angle} degrees"),
            plan::Allowed::UpTo(plan::Bound::Load(load)) => format!("up to {load} kg"),
            plan::Allowed::UpTo(plan::Bound::Effort(effort)) => format!("up to {effort} percent effort"),
        });
        let _ = match step.until {
            Some(until) => write!(text, "{value} on days {} to {}; ", step.from, until - 1),
            None => write!(text, "{value} from day {}; ", step.from),
        };
    }
    format!("{}. ", text.trim_end_matches("; "))
}

fn of_entry(shelf: &Shelf, id: &str) -> Option<Topic> {
    let entry = shelf.catalogue.get(id)?;
    let message = entry.message_id();
    let mut paragraphs: Vec<String> = Vec::new();
    let attribute = |name: &str| shelf.messages.attribute(&message, name);
    paragraphs.extend(attribute("purpose"));
    paragraphs.extend(attribute("start"));
    paragraphs.extend((1..).map_while(|step| attribute(&format!("step-{step}"))));
    paragraphs.extend(attribute("how").or_else(|| attribute("until")));
    paragraphs.extend(
        (1..).map_while(|place| attribute(&format!("mistake-{place}"))).map(|text| format!("Common mistake: {text}")),
    );
    paragraphs.extend(attribute("stop"));
    if !entry.demands.is_empty() {
        let demands: Vec<String> = entry.demands.iter().map(demand).collect();
        paragraphs.push(format!("Asks of the operated arm: {}.", demands.join("; ")));
    }
    if !entry.other_demands.is_empty() {
        let demands: Vec<String> = entry.other_demands.iter().map(demand).collect();
        paragraphs.push(format!("Asks of the other arm: {}.", demands.join("; ")));
    }
    let mut cited: Vec<&'static evidence::Entry> = entry.evidence.clone();
    cited.extend(entry.dose.iter().flat_map(|dose| dose.evidence.iter().copied()));
    let muscles = [entry.muscle.supraspinatus, entry.muscle.infraspinatus, entry.muscle.subscapularis];
    cited.extend(muscles.into_iter().flatten().map(|measured| measured.evidence));
    cited.dedup_by_key(|entry| entry.id);
    Some(Topic {
        kind: entry.kind.name(),
        title: shelf.title(id),
        paragraphs,
        evidence: cited.into_iter().map(value).collect(),
        ..Topic::default()
    })
}

fn demand(demand: &Demand) -> String {
    let key = demand.key;
    let amount = match demand.amount {
        Amount::Movement => String::new(),
        Amount::Angle { from, to } if from.steps() == 0 => format!(" to {to}°"),
        Amount::Angle { from, to } => format!(" from {from}° to {to}°"),
        Amount::AngleToLimit { .. } => " as far as the day allows".into(),
        Amount::Load(load) => format!(" of {load} kg"),
        Amount::LoadToLimit { .. } => " as heavy as the day allows".into(),
        Amount::Effort(effort) => format!(" at {effort} percent effort"),
    };
    if key.is_load() {
        format!("{}{amount}", key.movement)
    } else {
        format!("{} {} {}{amount}", key.mode, key.joint, key.movement)
    }
}

fn names(explained: &[Explanation], library: &Library, catalogue: &Catalogue) -> Vec<String> {
    let mut names: Vec<String> = explained.iter().map(|explanation| explanation.code.clone()).collect();
    names.extend(evidence::ENTRIES.iter().map(|entry| entry.id.to_owned()));
    names.extend(UsualMotion::ALL.iter().map(|motion| format!("normal-{}", motion.name())));
    for family in &library.families {
        names.extend(family.rules().map(|(_, rule)| rule.id.clone()));
        names.extend(family.choices().map(|choice| choice.id.clone()));
        names.extend(family.protocols.iter().map(|protocol| protocol.id.clone()));
        for protocol in &family.protocols {
            names.extend(protocol.limits.iter().map(|limit| format!("{}/{}", protocol.id, limit.id)));
        }
    }
    names.extend(catalogue.entries().iter().map(|entry| entry.id.clone()));
    names
}

fn page(topic: &Topic, shelf: &Shelf) -> String {
    let mut page = String::new();
    let _ = writeln!(page, "{}", paint(HEADING, &wrapped(&topic.title, 96, "")));
    let _ = writeln!(page, "{}", paint(FAINT, &format!("{}: {}", topic.kind, topic.topic)));
    for paragraph in &topic.paragraphs {
        let _ = writeln!(page, "\n  {}", wrapped(paragraph, 94, "  "));
    }
    for (title, example) in [("wrong", &topic.wrong), ("right", &topic.right)] {
        let Some(example) = example else { continue };
        let _ = writeln!(page, "\n  {}", paint(HEADING, title));
        for line in example.trim().lines() {
            let _ = writeln!(page, "    {line}");
        }
    }
    if !topic.evidence.is_empty() {
        let _ = writeln!(page, "\n  {}", paint(HEADING, "evidence"));
    }
    for value in &topic.evidence {
        let number = match (value.value, value.low, value.high) {
            (Some(number), Some(low), Some(high)) => format!(" = {number} {} ({low} to {high})", value.unit),
            (Some(number), ..) => format!(" = {number} {}", value.unit),
            (None, Some(low), Some(high)) => format!(" = {low} to {high} {}", value.unit),
            _ => String::new(),
        };
        let _ = writeln!(page, "    {}{number}", value.id);
        let known = match value.mark {
            Some(mark) => format!("[{mark}]"),
            None => format!("known from: {}", value.how_known),
        };
        let sources = if value.sources.is_empty() { String::new() } else { format!("; {}", value.sources.join("; ")) };
        let _ = writeln!(page, "      {}", wrapped(&format!("{}; {known}{sources}", value.what), 90, "      "));
        if let Some(note) = value.note {
            let _ = writeln!(page, "      {}", paint(FAINT, &wrapped(note, 90, "      ")));
        }
    }
    let caution = shelf.messages.text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "\n{}", paint(FAINT, &wrapped(&caution, 96, "")));
    page
}
