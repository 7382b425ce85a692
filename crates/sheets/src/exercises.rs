//! Exercises as bands across the page.

use body::Movement;
use exercise::{Demand, Entry, Posture};
use plan::ExerciseLine;
use wording::Argument;

use crate::desk::Desk;
use crate::document::{Band, Drawing};
use crate::household;
use crate::parts::{Part, Period};
use crate::pictures::{self, Angle, Drawn};
use crate::texts::Texts;

/// An exercise over the periods of a part in which its line stays the same.
#[derive(Debug, Clone)]
pub(crate) struct Run<'p> {
    /// The line.
    pub line: &'p ExerciseLine,
    /// The first period it stands in.
    pub first: usize,
    /// The first period after.
    pub until: usize,
}

/// The exercises of a part in the order they begin; one whose dose or target changes stands once for each.
pub(crate) fn runs<'p>(part: &Part<'p>) -> Vec<Run<'p>> {
    let mut runs: Vec<Run<'p>> = Vec::new();
    for (order, period) in part.periods.iter().enumerate() {
        for line in period.exercises {
            let same = runs.iter_mut().find(|run| run.until == order && is_same(run.line, line));
            match same {
                Some(run) => run.until = order + 1,
                None => runs.push(Run { line, first: order, until: order + 1 }),
            }
        }
    }
    runs
}

/// Whether two lines say the same to a patient; their reasons may differ.
fn is_same(a: &ExerciseLine, b: &ExerciseLine) -> bool {
    let told = |line: &ExerciseLine| ExerciseLine { reasons: Vec::new(), ..line.clone() };
    told(a) == told(b)
}

/// The bands of the last of some parts; what stands in full in an earlier one, or earlier in the part, is not told
/// again in full.
pub(crate) fn bands(desk: &Desk<'_>, texts: &Texts<'_>, parts: &[Part<'_>]) -> Vec<Band> {
    let Some((part, earlier)) = parts.split_last() else { return Vec::new() };
    let known = |line: &ExerciseLine| {
        earlier.iter().find_map(|part| {
            let runs = runs(part);
            let told = [("number", number_of(desk, &runs, &line.id)?.into()), ("step", counted(part.number).into())];
            let is_same = runs.iter().filter(|run| run.line.id == line.id).all(|run| is_same(run.line, line));
            Some(texts.with(if is_same { "handout-exercise-same" } else { "handout-exercise-again" }, &told))
        })
    };
    let own = runs(part);
    let of_run = |(order, run): (usize, &Run<'_>)| {
        let again = known(run.line).or_else(|| {
            let number = number_of(desk, &own[..order], &run.line.id)?;
            Some(texts.with("handout-exercise-again-here", &[("number", number.into())]))
        });
        let band = band(desk, texts, part, run)?;
        Some(match again {
            Some(again) => Band {
                purpose: String::new(),
                again,
                start: None,
                steps: Vec::new(),
                mistakes: Vec::new(),
                picture: None,
                ..band
            },
            None => band,
        })
    };
    own.iter().enumerate().filter_map(of_run).collect()
}

/// The number that the band of an exercise has among those of some runs, where it is one of them.
fn number_of(desk: &Desk<'_>, runs: &[Run<'_>], id: &str) -> Option<u16> {
    let mut bands = runs.iter().filter(|run| desk.catalogue.get(&run.line.id).is_some());
    bands.position(|run| run.line.id == id).map(|place| counted(place + 1))
}

fn counted(number: usize) -> u16 {
    u16::try_from(number).unwrap_or(u16::MAX)
}

fn band(desk: &Desk<'_>, texts: &Texts<'_>, part: &Part<'_>, run: &Run<'_>) -> Option<Band> {
    let entry = desk.catalogue.get(&run.line.id)?;
    let message = entry.message_id();
    let attribute = |name: &str| texts.messages.attribute(&message, name);
    let numbered = |prefix: &str| -> Vec<String> {
        let names = texts.messages.attributes(&message);
        names.iter().filter(|name| name.starts_with(prefix)).filter_map(|name| attribute(name)).collect()
    };
    let title = texts.get(&message);
    Some(Band {
        id: run.line.id.clone(),
        title,
        purpose: attribute("purpose").unwrap_or_default(),
        dates: dates(texts, part, run),
        again: String::new(),
        start: Some(texts.fact("handout-exercise-start", attribute("start").unwrap_or_default())),
        end: reach(texts, entry, run.line).map(|text| texts.fact("handout-exercise-end", text)),
        steps: numbered("step-"),
        dose: dose(desk, texts, run.line),
        mistakes_title: texts.get("handout-exercise-mistakes"),
        mistakes: numbered("mistake-"),
        stop: texts.fact("handout-exercise-stop", attribute("stop").unwrap_or_default()),
        picture: picture(desk, texts, part, run, entry, BAND_ROOM_MM),
    })
}

/// The drawing: as far as the line and the least of the limits of its days go, with the line that says stop there.
pub(crate) fn picture(
    desk: &Desk<'_>,
    texts: &Texts<'_>,
    part: &Part<'_>,
    run: &Run<'_>,
    entry: &Entry,
    room_mm: (f64, f64),
) -> Option<Drawing> {
    let periods = part.periods.get(run.first..run.until)?;
    let reach = |demand: &Demand| {
        let of_day = |period: &Period<'_>| prescription::reach(entry, demand, run.line.target, period.limits);
        periods.iter().map(of_day).min().unwrap_or_default()
    };
    let limit = periods.iter().filter_map(|period| pictures::limit_in_degrees(run.line.key, period.limits)).min();
    let drawn = Drawn {
        entry,
        reach: &reach,
        angle: if run.line.target.is_some() { Angle::Asked } else { Angle::Free },
        limit: run.line.target.and(limit),
        side: texts.side,
        look: desk.settings.paper.look,
        room_mm,
    };
    pictures::drawing(&drawn, texts.messages)
}

/// Room for a drawing beside how an exercise is done, in millimeters.
const BAND_ROOM_MM: (f64, f64) = (58.0, 66.0);

/// From when until when, where that is not the whole part.
pub(crate) fn dates(texts: &Texts<'_>, part: &Part<'_>, run: &Run<'_>) -> String {
    let starts = (run.first > 0).then(|| texts.date(part.periods[run.first].from));
    let stops = part.periods.get(run.until).map(|period| texts.date(period.from));
    let told = |name: &'static str, date: &str| (name, Argument::from(date.to_owned()));
    match (starts, stops) {
        (None, None) => String::new(),
        (Some(from), None) => texts.with("handout-exercise-from", &[told("from", &from)]),
        (None, Some(until)) => texts.with("handout-exercise-until", &[told("until", &until)]),
        (Some(from), Some(until)) => {
            texts.with("handout-exercise-dates", &[told("from", &from), told("until", &until)])
        }
    }
}

/// Where the movement ends, in words and degrees.
fn reach(texts: &Texts<'_>, entry: &Entry, line: &ExerciseLine) -> Option<String> {
    let Some(target) = line.target else {
        return line.as_far_as_comfortable.then(|| texts.get("handout-reach-easy"));
    };
    let degrees = household::decimal(&target.to_string(), texts.messages.language());
    let raises = matches!(
        line.key.movement,
        Movement::ForwardElevation | Movement::ScapularPlaneElevation | Movement::Abduction
    );
    let landmark = if raises { household::hand_height(target) } else { household::forearm_direction(target) };
    let told: [(&str, Argument<'_>); 3] =
        [("bound", "degrees".into()), ("degrees", degrees.into()), ("landmark", landmark.into())];
    // Where the trunk leans or the elbow is bent, the hand's height tells nothing, and the exercise has its own words.
    if let Some(own) = texts.messages.attribute_with(&entry.message_id(), "reach", &told) {
        return Some(own);
    }
    let id = match (line.key.movement, entry.posture) {
        (_, Posture::LyingOnTheBack) if raises => "handout-reach-lying-raise",
        (_, Posture::Standing | Posture::Sitting) if raises => "handout-reach-upright-raise",
        (Movement::ExternalRotation, Posture::LyingOnTheBack | Posture::Standing | Posture::Sitting) => {
            "handout-reach-turn-out"
        }
        _ => "handout-reach-shown",
    };
    Some(texts.with(id, &told))
}

/// How often and how much, as sentences.
pub(crate) fn dose(desk: &Desk<'_>, texts: &Texts<'_>, line: &ExerciseLine) -> String {
    let language = texts.messages.language();
    let counted = desk
        .catalogue
        .get(&line.id)
        .and_then(|entry| texts.messages.attribute(&entry.message_id(), "counted"))
        .unwrap_or_else(|| "times".into());
    let mut sentences = Vec::new();
    if line.sets > 1 {
        sentences.push(texts.with("handout-dose-sets", &[("sets", line.sets.into())]));
    }
    let to = line.repetitions_to.map_or_else(|| "none".to_owned(), |to| to.to_string());
    let told = [("repetitions", line.repetitions.into()), ("counted", counted.into()), ("to", to.into())];
    sentences.push(texts.with("handout-dose-times", &told));
    if line.hold_s > 0 {
        sentences.push(texts.with("handout-dose-hold", &[("seconds", line.hold_s.into())]));
    }
    let times = ("times", line.times_per_day.into());
    sentences.push(match line.days_per_week {
        Some(days) => texts.with("handout-dose-week", &[times, ("days", days.into())]),
        None => texts.with("handout-dose-day", &[times]),
    });
    if let Some(load) = line.load {
        sentences.push(texts.with("handout-dose-load", &household::load(load, language)));
    }
    if line.supervised {
        sentences.push(texts.get("handout-dose-therapist"));
    }
    sentences.join(" ")
}
