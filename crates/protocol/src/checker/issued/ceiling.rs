//! How hard the repaired muscles may work on a day, worked out here once more.

use body::{Joint, Mode};
use evidence::ids;
use exercise::{ActivityClass, Entry, Measured};
use plan::{Cell, ExerciseLine, SpanOfDays};

use super::Judge;
use super::exercises::{about, entry_of, listed_on};
use super::found::Found;

/// Judges the muscle activity of every exercise.
///
/// # Source
/// Before active motion opens nothing above the low class, and nothing that was not
/// measured unless the protocol names it; after that at most `class-step` classes above
/// what has been open for `class-settling` days: own choice where no study says so.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    let spans = &judge.issued.prescription.spans;
    let settling = ids::CLASS_SETTLING.days().count();
    let active: Vec<bool> = (0..spans.len()).map(|place| is_active(judge, place)).collect();
    let highest: Vec<Option<ActivityClass>> = spans.iter().map(|span| highest(judge, span)).collect();
    for (place, span) in spans.iter().enumerate() {
        let (from, until) = (span.from_day.count(), span.until_day.count());
        // What was open before the last days without active motion no longer counts.
        let counts_from = active[..place].iter().rposition(|active| !active).map_or(0, |last| {
            let run = active[..last].iter().rposition(|active| *active);
            run.map_or(0, |before| before + 1)
        });
        let settled = (counts_from..place)
            .filter(|before| spans[*before].from_day.count() + settling <= from)
            .filter_map(|before| highest[before])
            .max();
        let ceiling = if active[place] { above(settled.unwrap_or(ActivityClass::Low)) } else { ActivityClass::Low };
        for line in &span.exercises {
            let Some(entry) = entry_of(judge, line).filter(|entry| loads_the_repair(entry)) else { continue };
            let message = if active[place] {
                too_hard(judge, entry, ceiling)
            } else {
                (from..until).find_map(|day| too_hard_early(judge, entry, line, day))
            };
            if let Some(message) = message {
                found.on_days(from, until, about(line, "exercise-above-the-ceiling", message));
            }
        }
    }
}

/// Whether any active motion of the shoulder is open.
fn is_active(judge: &Judge<'_>, span: usize) -> bool {
    let keys = judge.sheet.keys.iter().zip(&judge.values[span]);
    keys.filter(|(key, _)| key.joint == Joint::Shoulder && key.mode == Mode::Active).any(|(_, cell)| *cell != Cell::NO)
}

/// So many classes above one.
fn above(class: ActivityClass) -> ActivityClass {
    (0..ids::CLASS_STEP.repetitions()).fold(class, |class, _| class.next())
}

/// Whether an exercise asks anything of shoulder or shoulder blade.
fn loads_the_repair(entry: &Entry) -> bool {
    entry.demands.iter().any(|demand| matches!(demand.key.joint, Joint::Shoulder | Joint::Scapula))
}

/// The muscles that are looked at, with what was measured of them.
fn looked_at(judge: &Judge<'_>, entry: &Entry) -> Vec<(&'static str, Option<Measured>)> {
    let mut muscles = vec![("supraspinatus", entry.muscle.supraspinatus)];
    if judge.issued.basis.facts.protected().infraspinatus {
        muscles.push(("infraspinatus", entry.muscle.infraspinatus));
    }
    muscles
}

/// The highest class that was measured of the exercises of a run of days.
fn highest(judge: &Judge<'_>, span: &SpanOfDays) -> Option<ActivityClass> {
    let entries = span.exercises.iter().filter_map(|line| entry_of(judge, line));
    let classes = entries.flat_map(|entry| looked_at(judge, entry)).filter_map(|(_, measured)| measured);
    classes.map(|measured| measured.class).max()
}

fn too_hard(judge: &Judge<'_>, entry: &Entry, ceiling: ActivityClass) -> Option<String> {
    looked_at(judge, entry).into_iter().find_map(|(muscle, measured)| {
        let class = measured?.class;
        (class > ceiling).then(|| {
            format!(
                "it works the {muscle} in the {} class, and {} is the highest on these days",
                class.name(),
                ceiling.name()
            )
        })
    })
}

/// Before active motion: the low class, measured, or named by the protocol without a measurement.
fn too_hard_early(judge: &Judge<'_>, entry: &Entry, line: &ExerciseLine, day: u16) -> Option<String> {
    let named = listed_on(judge, &line.id, day).is_some_and(|used| used.without_measurement);
    looked_at(judge, entry).into_iter().find_map(|(muscle, measured)| match measured {
        // A study that gives no value, only a bound above the ceiling, is as good as none.
        Some(measured) if named && measured.evidence.value.is_none() => None,
        Some(measured) if measured.class > ActivityClass::Low => {
            Some(format!("it works the {muscle} in the {} class before active motion is open", measured.class.name()))
        }
        Some(measured) if measured.may_permit() || named => None,
        Some(_) => Some(format!("how hard it works the {muscle} is known from memory only")),
        None if named => None,
        None => Some(format!("nobody measured how hard it works the {muscle}")),
    })
}
