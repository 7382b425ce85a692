//! Which protocol and which options are in force, and whether the surgeon said so twice.

use diagnostic::{Diagnostic, Sink, Span};
use document::nearest;
use evidence::ids;
use operative::Facts;
use plan::{Change, Plan};
use protocol::{Choices, Compiled, Family, Requested, resolve};

use crate::settings::{Prefer, Settings};
use crate::settings_read::says_something;

/// What was chosen, and what it loosens against the default, in words.
pub(crate) struct Chosen {
    pub requested: Requested,
    pub loosened: Vec<String>,
}

/// Takes the options of the settings; an option that does not exist is a diagnostic.
pub(crate) fn options(family: &Family, settings: &Settings, sink: &mut Sink) -> Choices {
    let mut choices = Choices::of(family);
    for (place, prefer) in settings.prefers.iter().enumerate() {
        if let Some(other) = settings.prefers[..place].iter().find(|other| other.choice.value == prefer.choice.value) {
            sink.push(
                Diagnostic::error("contradiction", format!("`{}` is chosen twice", prefer.choice.value))
                    .at(prefer.choice.span)
                    .also(other.choice.span, "the other one"),
            );
            continue;
        }
        let Some(choice) = family.choices().find(|choice| choice.id == prefer.choice.value) else {
            let mut fault = Diagnostic::error(
                "unknown-choice",
                format!("`{}` is not a choice of this family", prefer.choice.value),
            )
            .at(prefer.choice.span)
            .fact(format!("choices: {}", family.choices().map(|c| c.id.as_str()).collect::<Vec<_>>().join(", ")));
            if let Some(near) = nearest(&prefer.choice.value, family.choices().map(|choice| choice.id.as_str())) {
                fault = fault.help(format!("did you mean \"{near}\"?"));
            }
            sink.push(fault);
            continue;
        };
        if !choice.options.contains(&prefer.option.value) {
            sink.push(
                Diagnostic::error("unknown-option", format!("`{}` is not an option here", prefer.option.value))
                    .at(prefer.option.span)
                    .fact(format!("options: {}", choice.options.join(", "))),
            );
            continue;
        }
        choices.take(&prefer.choice.value, &prefer.option.value);
    }
    choices
}

/// Demands a reason for options that loosen, and the value twice for those that loosen much.
pub(crate) fn check_options(
    family: &Family,
    settings: &Settings,
    facts: &Facts,
    requested: Requested,
    sink: &mut Sink,
) -> Vec<String> {
    let mut loosened = Vec::new();
    for prefer in &settings.prefers {
        let before = Compiled::new(family, &Choices::of(family), &[]);
        let mut choices = Choices::of(family);
        choices.take(&prefer.choice.value, &prefer.option.value);
        let after = Compiled::new(family, &choices, &[]);
        let (before, after) = (resolve(&before, facts, requested), resolve(&after, facts, requested));
        let looser = loosenings(&before, &after);
        let sling = before.wear.iter().zip(&after.wear).any(|(before, after)| after < before);
        if looser.is_empty() && !sling {
            continue;
        }
        demand_reason(prefer, sink);
        if is_large(&looser) || sling {
            demand_confirm(prefer, sink);
        }
        let reason = prefer.reason.as_ref().map_or("", |reason| &reason.value);
        let title = family.choices().find(|choice| choice.id == prefer.choice.value).map_or("", |choice| &choice.title);
        loosened.push(format!("{title}: {} ({reason})", prefer.option.value));
    }
    loosened
}

fn demand_reason(prefer: &Prefer, sink: &mut Sink) {
    if prefer.reason.as_ref().is_none_or(|reason| !says_something(&reason.value)) {
        sink.push(
            Diagnostic::error("no-reason", format!("`{}` loosens the plan and gives no reason", prefer.choice.value))
                .at(prefer.option.span)
                .help("add `reason = \"…\"`; it is printed beside the plan"),
        );
    }
}

fn demand_confirm(prefer: &Prefer, sink: &mut Sink) {
    if prefer.confirm.as_ref().map(|confirm| &confirm.value) != Some(&prefer.option.value) {
        sink.push(
            Diagnostic::error("not-confirmed", "an option that loosens this much is written twice")
                .at(prefer.confirm.as_ref().map_or(prefer.option.span, |confirm| confirm.span))
                .help(format!("if it is meant, add `confirm = \"{}\"`", prefer.option.value)),
        );
    }
}

/// What the second plan allows more of than the first.
pub(crate) fn loosenings(before: &Plan, after: &Plan) -> Vec<Change> {
    before.changes(after).into_iter().filter(|change| change.b > change.a).collect()
}

/// Whether changes loosen more than may be written once.
///
/// # Source
/// `large-loosening-days`, `large-loosening-degrees`: own choice.
pub(crate) fn is_large(changes: &[Change]) -> bool {
    changes.iter().any(|change| {
        // Runs of one key count together, whatever values they have.
        let days: u16 = changes
            .iter()
            .filter(|other| other.lane == change.lane)
            .map(|other| other.until_day - other.from_day)
            .sum();
        days > ids::LARGE_LOOSENING_DAYS.days().count()
            || change.degrees().is_some_and(|degrees| degrees > ids::LARGE_LOOSENING_DEGREES.degrees())
    })
}

/// Decides on the protocol: the family's selection, or what the surgeon named with a reason.
///
/// # Errors
/// `None` with a diagnostic where the protocol is unknown, or a loosening choice lacks its
/// reason or its confirmations.
pub(crate) fn protocol(
    compiled: &Compiled<'_>,
    facts: &Facts,
    settings: &Settings,
    asked: Option<&str>,
    sink: &mut Sink,
) -> Option<Chosen> {
    let family = compiled.family;
    let choice = settings.choice.as_ref();
    let written: Option<(&str, Option<Span>)> = match (asked, choice) {
        (Some(asked), Some(choice)) if asked != choice.protocol.value => {
            sink.push(
                Diagnostic::error(
                    "contradiction",
                    format!("the command asks for `{asked}` and the settings for `{}`", choice.protocol.value),
                )
                .at(choice.protocol.span)
                .help("name one of the two"),
            );
            return None;
        }
        (_, Some(choice)) => Some((&choice.protocol.value, Some(choice.protocol.span))),
        (Some(asked), None) => Some((asked, None)),
        (None, None) => None,
    };
    let default = compiled.selected(facts);
    let Some((id, span)) = written else {
        return Some(Chosen { requested: Requested(None), loosened: Vec::new() });
    };
    let Some(place) = family.protocol(id) else {
        let mut fault = Diagnostic::error("unknown-protocol", format!("`{id}` is not a protocol for this operation"))
            .at_maybe(span)
            .fact(format!("protocols: {}", family.file.protocols.join(", ")));
        if let Some(near) = nearest(id, family.file.protocols.iter().map(String::as_str)) {
            fault = fault.help(format!("did you mean \"{near}\"?"));
        }
        sink.push(fault);
        return None;
    };
    let place = place as u8;
    let requested = Requested(Some(place));
    if place == default {
        return Some(Chosen { requested, loosened: Vec::new() });
    }
    let (usual, chosen) = (resolve(compiled, facts, Requested(None)), resolve(compiled, facts, requested));
    let on_request = family.file.on_request.iter().find(|request| request.protocol == id);
    if chosen.is_within(&usual) && on_request.is_none() {
        return Some(Chosen { requested, loosened: Vec::new() });
    }
    let errors = sink.errors();
    let usual_id = &compiled.protocol(default).id;
    let reason = choice.and_then(|choice| choice.reason.as_ref()).filter(|reason| says_something(&reason.value));
    if reason.is_none() {
        sink.push(
            Diagnostic::error("choice-without-reason", format!("`{id}` is looser than `{usual_id}`, the default here"))
                .at_maybe(span)
                .help(format!("name it in the settings: [choice] with protocol = \"{id}\" and reason = \"…\"")),
        );
    }
    if *usual_id != family.file.default
        && choice.and_then(|choice| choice.confirm.as_ref()).is_none_or(|confirm| confirm.value != id)
    {
        sink.push(
            Diagnostic::error("not-confirmed", format!("`{id}` in place of `{usual_id}` is written twice"))
                .at_maybe(choice.and_then(|c| c.confirm.as_ref()).map(|confirm| confirm.span).or(span))
                .help(format!("if it is meant, add `confirm = \"{id}\"` to [choice]")),
        );
    }
    if let Some((condition, says)) = on_request.and_then(|request| request.confirm_large.as_ref())
        && condition.holds(facts)
        && choice.and_then(|choice| choice.confirm_large.as_ref()).is_none_or(|confirm| confirm.value != *says)
    {
        sink.push(
            Diagnostic::error("not-confirmed", format!("`{id}` above {says} is confirmed a second time"))
                .at_maybe(choice.and_then(|c| c.confirm_large.as_ref()).map(|confirm| confirm.span).or(span))
                .help(format!("if it is meant, add `confirm_large = \"{says}\"` to [choice]")),
        );
    }
    if sink.errors() > errors {
        return None;
    }
    let mut loosened =
        vec![format!("{id} in place of {usual_id}: {}", reason.map_or("", |reason| reason.value.as_str()))];
    loosened.extend(loosenings(&usual, &chosen).iter().map(|change| {
        format!(
            "{} from day {} to day {}: {} in place of {}",
            change.key,
            change.from_day,
            change.until_day - 1,
            in_words(change.b, change.key),
            in_words(change.a, change.key)
        )
    }));
    let shorter: Vec<usize> = (0..usual.wear.len()).filter(|&c| chosen.wear[c] < usual.wear[c]).collect();
    if let (Some(&first), Some(&last)) = (shorter.first(), shorter.last()) {
        loosened.push(format!(
            "the sling is worn less than usual from day {} to day {}",
            usual.grid.days[first],
            usual.grid.days[last + 1] - 1
        ));
    }
    Some(Chosen { requested, loosened })
}

/// A home margin smaller than the usual one brings targets nearer to the limits: it wants a reason and is printed.
pub(crate) fn home_margin(settings: &Settings, sink: &mut Sink) -> Option<String> {
    let margin = settings.home_margin?;
    let usual = ids::HOME_MARGIN.degrees();
    if margin.value >= usual {
        return None;
    }
    let reason = settings.home_margin_reason.as_ref().filter(|reason| says_something(&reason.value));
    if reason.is_none() {
        sink.push(
            Diagnostic::error("no-reason", format!("a home margin under {usual} degrees gives no reason"))
                .at(margin.span)
                .help("add `home_margin_reason = \"…\"`; it is printed beside the plan"),
        );
    }
    Some(format!(
        "targets at home stay {} in place of {usual} degrees below the limit ({})",
        margin.value,
        reason.map_or("", |reason| reason.value.as_str())
    ))
}

/// A value in a few words.
pub(crate) fn in_words(cell: plan::Cell, key: body::Key) -> String {
    use plan::{Allowed, Bound};
    match cell.allowed(key) {
        Allowed::No => "not allowed".into(),
        Allowed::Free => "free".into(),
        Allowed::UpTo(Bound::Angle(angle)) => format!("up to {angle} degrees"),
        Allowed::UpTo(Bound::Load(load)) => format!("up to {load} kg"),
        Allowed::UpTo(Bound::Effort(effort)) => format!("up to {effort} percent effort"),
    }
}
