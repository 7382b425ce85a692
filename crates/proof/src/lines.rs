//! Lines of a family that set no limit, and what differs between two editions of them.

use std::collections::BTreeMap;

use protocol::Family;
use protocol::file::Remark;

use crate::edition::EDITION_CHANGED;
use crate::finding::{About, Finding};

/// What a line says, for people and for comparing.
struct Says {
    shown: String,
    /// The number of the line, and whether more of it is looser.
    number: Option<(i64, bool)>,
}

/// What a family says otherwise than an edition of it, beside its limits.
pub(crate) fn differences(edited: &Family, shipped: &Family) -> Vec<Finding> {
    let (own, theirs) = (lines(edited), lines(shipped));
    let mut findings = Vec::new();
    let names: Vec<&String> = theirs.keys().chain(own.keys().filter(|name| !theirs.contains_key(*name))).collect();
    for name in names {
        let (message, is_looser) = match (theirs.get(name), own.get(name)) {
            (Some(was), Some(is)) if was.shown == is.shown => continue,
            (Some(was), Some(is)) => {
                let looser = match (was.number, is.number) {
                    (Some((was, more_is_looser)), Some((is, _))) => (is > was) == more_is_looser,
                    _ => true,
                };
                (format!("{name}: {} where the edition says {}", is.shown, was.shown), looser)
            }
            (Some(was), None) => {
                (format!("{name} is gone; the edition says {}", was.shown), !name.contains("exercise"))
            }
            (None, Some(is)) => (format!("{name}: {}, which the edition does not have", is.shown), true),
            (None, None) => continue,
        };
        findings.push(Finding {
            about: if is_looser { About::Unsafe } else { About::Stiffening },
            kind: EDITION_CHANGED.into(),
            message,
            key: None,
            from_day: 0,
            until_day: 0,
            rule: Some(name.clone()),
            records: 0,
            who: "every record of the protocol".into(),
            record: String::new(),
            compared_with: None,
        });
    }
    findings
}

/// Every line that sets no limit, by its name.
fn lines(family: &Family) -> BTreeMap<String, Says> {
    let mut lines = BTreeMap::new();
    let mut add = |name: String, shown: String, number: Option<(i64, bool)>| {
        lines.insert(name, Says { shown, number });
    };
    for protocol in &family.protocols {
        let id = &protocol.id;
        add(format!("`{id}`, the last day"), protocol.horizon.to_string(), None);
        add(format!("`{id}`, what it says of itself"), format!("\"{}: {}\"", protocol.title, protocol.summary), None);
        let mut off_for: Vec<&str> = protocol.slings.iter().flat_map(|step| &step.except).map(String::as_str).collect();
        off_for.sort_unstable();
        off_for.dedup();
        add(format!("`{id}`, what the sling comes off for"), off_for.join(", "), None);
        for limit in &protocol.limits {
            let option = limit.choice.as_ref().map_or_else(String::new, |choice| format!(" ({})", choice.is));
            add(format!("`{id}`, the words of the limit {}{option}", limit.id), format!("\"{}\"", limit.title), None);
        }
        for line in &protocol.returns {
            let day = i64::from(line.from.count());
            let opened = if line.opened_by_surgeon { ", opened by the surgeon" } else { "" };
            let name = format!("`{id}`, return to {}", line.activity);
            if let Some(note) = &line.note {
                add(format!("{name}, the note"), format!("\"{note}\""), None);
            }
            add(name, format!("day {day}{opened}"), Some((day, false)));
        }
        for visit in &protocol.visits {
            let (due, latest) = (visit.due.count(), visit.latest.count());
            let name = format!("`{id}`, the {} visit", visit.purpose);
            add(name, format!("days {due} to {latest}"), Some((i64::from(due) + i64::from(latest), true)));
        }
        for goal in &protocol.goals {
            let to = goal.to.map_or_else(|| "the full range".into(), |to| format!("{to} degrees"));
            let number = i64::from(goal.from.steps() + goal.to.map_or(0, |to| to.steps()));
            let shown = format!("{} to {to} by {}", goal.from, goal.due);
            // Degrees first, the day after them.
            let number = (number << u16::BITS) - i64::from(goal.due.count());
            add(format!("`{id}`, the goal {}", goal.id), shown, Some((number, true)));
        }
        for stage in &protocol.stages {
            for criterion in &stage.criteria {
                let name = format!("`{id}`, the criterion {}/{}", stage.id, criterion.id);
                if let Some((key, angle)) = criterion.measure {
                    let number = Some((i64::from(angle.steps()), false));
                    add(format!("{name}, measured"), format!("{angle} degrees of {key}"), number);
                }
                add(name, format!("\"{}\"", criterion.text), None);
            }
        }
        for gate in &protocol.postures {
            let day = i64::from(gate.until.count());
            add(format!("`{id}`, {}", gate.title), format!("until day {day}"), Some((day, false)));
        }
        for promise in &protocol.passive_by {
            for key in &promise.keys {
                let day = i64::from(promise.day.count());
                add(format!("`{id}`, the latest day of {key}"), format!("day {day}"), Some((day, false)));
            }
        }
        for used in &protocol.exercises {
            let dose =
                used.repetitions.map_or_else(String::new, |(low, high)| format!(", {low} to {high} repetitions"));
            let until = used.until_stage.as_ref().map_or_else(String::new, |stage| format!(" until {stage}"));
            let without =
                used.only_without.as_ref().map_or_else(String::new, |other| format!(", only without {other}"));
            let measured = if used.without_measurement { ", without a measured activity" } else { "" };
            let shown = format!("from {}{until}{dose}{without}{measured}", used.stage);
            let number = used.repetitions.map(|(low, high)| (i64::from(low) + i64::from(high), true));
            add(format!("`{id}`, the exercise {}", used.id), shown, number);
        }
        remarks(&mut add, id, &protocol.rules.cautions, &protocol.rules.refusals);
    }
    of_family(&mut add, family);
    remarks(&mut add, &family.file.id, &family.rules.cautions, &family.rules.refusals);
    lines
}

/// The lines of the family's own files.
fn of_family(add: &mut impl FnMut(String, String, Option<(i64, bool)>), family: &Family) {
    let file = &family.file;
    add("safe arcs that name no day".into(), format!("end when the stage {} opens", file.safe_arc_until_stage), None);
    add("the protocol where no selection holds".into(), file.default.clone(), None);
    for select in &file.selects {
        add(format!("the selection {}", select.id), format!("\"{}\"", select.title), None);
    }
    for (_, rule) in family.rules() {
        add(format!("the rule {}", rule.id), format!("\"{}\"", rule.title), None);
    }
    for choice in family.choices() {
        add(format!("the options of {}", choice.id), choice.options.join(", "), None);
    }
    // A part a line, so that a change names what differs and nothing else.
    for question in &file.questions {
        let name = format!("the question {}", question.id);
        add(format!("{name}, its words"), format!("\"{}\"", question.text), None);
        add(format!("{name}, when it is asked"), question.when.in_words(), None);
        let offers = question.offers_passive_from.map_or_else(|| "no day".into(), |day| day.to_string());
        add(format!("{name}, passive motion it offers from"), offers, None);
        let not_asked = question.unless_capped_by.as_deref().unwrap_or("no protocol");
        add(format!("{name}, not asked where the plan has"), not_asked.to_owned(), None);
        let only = question.only_when_chosen.as_deref().unwrap_or("any protocol");
        add(format!("{name}, asked where the plan is"), only.to_owned(), None);
    }
    for request in &file.on_request {
        let large = match &request.confirm_large {
            Some((condition, says)) => format!("with \"{says}\" where {}", condition.in_words()),
            None => "never".into(),
        };
        add(format!("`{}` on request, confirmed a second time", request.protocol), large, None);
    }
}

fn remarks(
    add: &mut impl FnMut(String, String, Option<(i64, bool)>),
    of: &str,
    cautions: &[Remark],
    refusals: &[Remark],
) {
    for (what, list) in [("caution", cautions), ("refusal", refusals)] {
        for remark in list {
            add(
                format!("`{of}`, the {what} {}", remark.id),
                format!("\"{}\" where {}", remark.title, remark.when.in_words()),
                None,
            );
        }
    }
}

/// Every line of the files that is not word for word that of the edition, by its place.
///
/// # Method
/// What was read of each line is compared whole, but for where it stands in its file. A list of
/// what may differ would one day miss something; this can't.
pub(crate) fn changed(edited: &Family, shipped: &Family) -> Vec<String> {
    let mut places = Vec::new();
    let (own, theirs) = (&edited.file, &shipped.file);
    compare(&mut places, "family", "selection", &own.selects, &theirs.selects);
    compare(&mut places, "family", "question", &own.questions, &theirs.questions);
    compare(&mut places, "family", "on request", &own.on_request, &theirs.on_request);
    compare(&mut places, "family", "not read", &own.not_read, &theirs.not_read);
    let head = |family: &Family| {
        let file = &family.file;
        (
            file.id.clone(),
            file.title.clone(),
            file.procedure.mask,
            file.default.clone(),
            file.protocols.clone(),
            file.safe_arc_until_stage.clone(),
        )
    };
    if head(edited) != head(shipped) {
        places.push("family, its head".into());
    }
    of_rules(&mut places, "rules", &edited.rules, &shipped.rules);
    for protocol in &edited.protocols {
        let id = &protocol.id;
        let Some(known) = shipped.protocol(id).map(|place| &shipped.protocols[place]) else {
            places.push(format!("`{id}`, which the edition does not have"));
            continue;
        };
        let head = |p: &protocol::file::ProtocolFile| (p.title.clone(), p.summary.clone(), p.parts.clone(), p.horizon);
        if head(protocol) != head(known) {
            places.push(format!("`{id}`, its head"));
        }
        compare(&mut places, id, "stage", &protocol.stages, &known.stages);
        compare(&mut places, id, "sling", &protocol.slings, &known.slings);
        compare(&mut places, id, "limit", &protocol.limits, &known.limits);
        compare(&mut places, id, "goal", &protocol.goals, &known.goals);
        compare(&mut places, id, "exercise", &protocol.exercises, &known.exercises);
        compare(&mut places, id, "visit", &protocol.visits, &known.visits);
        compare(&mut places, id, "return", &protocol.returns, &known.returns);
        compare(&mut places, id, "posture", &protocol.postures, &known.postures);
        compare(&mut places, id, "latest day", &protocol.passive_by, &known.passive_by);
        of_rules(&mut places, id, &protocol.rules, &known.rules);
    }
    for protocol in shipped.protocols.iter().filter(|protocol| edited.protocol(&protocol.id).is_none()) {
        places.push(format!("`{}`, which is gone", protocol.id));
    }
    places
}

fn of_rules(places: &mut Vec<String>, of: &str, own: &protocol::file::RulesFile, theirs: &protocol::file::RulesFile) {
    compare(places, of, "choice", &own.choices, &theirs.choices);
    compare(places, of, "rule", &own.rules, &theirs.rules);
    compare(places, of, "refusal", &own.refusals, &theirs.refusals);
    compare(places, of, "caution", &own.cautions, &theirs.cautions);
}

fn compare<T: std::fmt::Debug>(places: &mut Vec<String>, of: &str, what: &str, own: &[T], theirs: &[T]) {
    for at in 0..own.len().max(theirs.len()) {
        let read = |list: &[T]| list.get(at).map(|line| without_places(&format!("{line:?}")));
        if read(own) != read(theirs) {
            places.push(format!("{of}, {what} {}", at + 1));
        }
    }
}

/// What was read of a line, without where it stands.
fn without_places(line: &str) -> String {
    let mut text = String::with_capacity(line.len());
    let mut rest = line;
    while let Some(start) = rest.find("Span {") {
        text.push_str(&rest[..start]);
        let after = &rest[start..];
        rest = after.find('}').map_or("", |end| &after[end + 1..]);
    }
    text.push_str(rest);
    text
}
