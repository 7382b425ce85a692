//! The recovery line of the surgeon's page.

use plan::{Prescription, Wear};

use crate::desk::Desk;
use crate::document::{Block, SlingRun, StageRun};
use crate::limits_columns::{frozen, next_gate};
use crate::limits_words::short;
use crate::sling_words;
use crate::texts::Texts;

/// Weeks from surgery, the sling as a bar, and the stages from gate to gate.
pub(crate) fn recovery_line(say: &Texts<'_>, desk: &Desk<'_>) -> Block {
    let of = desk.prescription;
    let last_gate = of.stages.iter().map(|stage| stage.from_day.count()).max().unwrap_or(0);
    let room = 56; // not medical: eight weeks of the last stage are drawn
    let until_day = last_gate.saturating_add(room);
    let mut stages: Vec<StageRun> = Vec::new();
    for span in of.spans.iter().filter(|span| span.from_day.count() < until_day) {
        let until = span.until_day.count().min(until_day);
        match stages.last_mut() {
            Some(last) if last.shown == span.stage => last.until_day = until,
            _ => stages.push(StageRun {
                from_day: span.from_day.count(),
                until_day: until,
                shown: span.stage.clone(),
                opened: of.is_open(span),
            }),
        }
    }
    let gates = of.stages.iter().map(|stage| (stage.from_day.count(), short(stage.from))).collect();
    let mark = of
        .today
        .as_ref()
        .filter(|today| today.day.count() > 0 && today.day.count() < until_day)
        .map(|today| (today.day.count(), "issued".to_owned()));
    Block::RecoveryLine {
        alt: say.get("surgeon-line-alt"),
        week: "week".into(),
        sling_word: "sling".into(),
        until_day,
        sling: sling(of, until_day),
        stages,
        dates: gates,
        mark,
    }
}

/// The sling as it is worn, and after it what is planned.
///
/// # Method
/// While a gate waits, the sling of the day of issue is drawn from that gate until that day, and
/// everything after it is planned.
pub(crate) fn sling(of: &Prescription, until_day: u16) -> Vec<SlingRun> {
    let waiting = frozen(of).map(|today| {
        let gate = next_gate(of).map_or(today.day, |(_, day, _)| day);
        (gate.count().min(today.day.count()), today.day.count(), today.sling.wear)
    });
    let mut drawn: Vec<SlingRun> = Vec::new();
    let mut draw = |from: u16, until: u16, wear: Wear, is_planned: bool| {
        let (until, shown) = (until.min(until_day), word(wear, is_planned));
        match drawn.last_mut() {
            Some(last) if last.shown == shown && last.until_day == from => last.until_day = until,
            _ if from < until => {
                drawn.push(SlingRun { from_day: from, until_day: until, wear: wear.name(), shown: shown.into() })
            }
            _ => {}
        }
    };
    for run in sling_words::runs(of) {
        let (from, until) = (run.first.from_day.count(), run.last.until_day.count());
        let wear = run.first.sling.wear;
        let Some((gate, today, _)) = waiting else {
            draw(from, until, wear, run.is_planned);
            continue;
        };
        draw(from, until.min(gate), wear, false);
        if let Some((gate, today, now)) = waiting.filter(|_| from < gate && gate <= until) {
            draw(gate, today, now, false);
        }
        draw(from.max(today), until, wear, true);
    }
    drawn
}

const fn word(wear: Wear, is_planned: bool) -> &'static str {
    match (wear, is_planned) {
        (Wear::Always, false) => "sling always",
        (Wear::Weaning, false) => "weaning",
        (Wear::None, false) => "no sling",
        (Wear::Always, true) => "always, planned",
        (Wear::Weaning, true) => "weaning, planned",
        (Wear::None, true) => "no sling, planned",
    }
}
