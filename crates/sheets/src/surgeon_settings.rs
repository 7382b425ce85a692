//! What this surgeon's settings change against the built-in defaults, line by line.

use evidence::ids;
use prescription::{FeverLimit, PaperSize, Permission, Settings};

use crate::limits_words::allowed;

/// The differences, in words; empty where every default holds.
pub(crate) fn differences(settings: &Settings) -> Vec<String> {
    let mut lines = Vec::new();
    let because = |reason: Option<&str>| reason.map_or(String::new(), |reason| format!(": {reason}"));
    if let Some(choice) = &settings.choice {
        let reason = choice.reason.as_ref().map(|reason| reason.value.as_str());
        lines.push(format!("protocol chosen: {}{}", choice.protocol.value, because(reason)));
    }
    for prefer in &settings.prefers {
        let reason = prefer.reason.as_ref().map(|reason| reason.value.as_str());
        lines.push(format!("option {} = {}{}", prefer.choice.value, prefer.option.value, because(reason)));
    }
    for hold in &settings.holds {
        let joint = hold.joint.map_or("the whole arm", |joint| joint.name());
        lines.push(format!("hold from day {} for {} days, {joint}: {}", hold.from_day, hold.days, hold.reason));
    }
    for back in &settings.backs {
        lines.push(format!("from day {} back to {}: {}", back.day, back.stage.value, back.reason));
    }
    for loosening in &settings.loosenings {
        lines.push(format!(
            "loosening of {}, days {} to {}: {} ({})",
            plan::words::of_key(loosening.key),
            loosening.from_day,
            loosening.until_day.saturating_sub(1),
            allowed(loosening.up_to.allowed(loosening.key)).replace('\n', " "),
            loosening.reason.value
        ));
    }
    if let Some(margin) = settings.home_margin {
        let reason = settings.home_margin_reason.as_ref().map(|reason| reason.value.as_str());
        let usual = ids::HOME_MARGIN.degrees();
        lines.push(format!("home margin {}° in place of {usual}°{}", margin.value, because(reason)));
    }
    for goal in &settings.adopted_goals {
        lines.push(format!("goal from memory adopted: {}", goal.value));
    }
    let therapy = &settings.therapy;
    for (name, permission) in
        [("manual therapy", therapy.manual_therapy), ("pool", therapy.pool), ("traction", therapy.traction)]
    {
        match permission {
            Some(Permission::No) => lines.push(format!("{name}: no")),
            Some(Permission::From(day)) => lines.push(format!("{name}: from day {}", day.count())),
            None => {}
        }
    }
    if let Some(times) = therapy.times_a_week {
        lines.push(format!("therapy {times} times a week"));
    }
    if let Some(weeks) = therapy.weeks {
        lines.push(format!("therapy for {weeks} weeks"));
    }
    if settings.paper.fever != FeverLimit::default() {
        let usual = FeverLimit::default().name();
        lines.push(format!("patients call at a fever of {} in place of {usual}", settings.paper.fever.name()));
    }
    if settings.paper.size != PaperSize::default() {
        lines.push(format!("paper: {}", settings.paper.size.name()));
    }
    if let Some(tablets) = &settings.paper.tablets {
        lines.push(format!("pain tablets, as patients read it: {tablets}"));
    }
    lines
}
