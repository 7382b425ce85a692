//! A prescription on the terminal, for a surgeon with a minute.

use std::fmt::Write as _;

use body::{Joint, Key, Mode, Movement, Position};
use jiff::civil::Date;
use plan::{Allowed, Bound, ExerciseLine, LimitRow, Prescription, Reason, SpanOfDays, TodayBasis, Wear};

use crate::shelf::Shelf;
use crate::view::dates;
use crate::view::paint::{FAINT, HEADING, LOUD, VALUE, paint, wrapped};

const WIDTH: usize = 98;
/// So many loosenings stand at the head; a longer list stands at the end.
const FIRST_LOOSENED: usize = 4;

/// The whole page.
pub fn page(of: &Prescription, shelf: &Shelf, why: bool) -> String {
    let mut page = String::new();
    head(&mut page, of, why);
    recovery_line(&mut page, of);
    today(&mut page, of, shelf);
    questions(&mut page, of, shelf);
    sling(&mut page, of, why);
    limits(&mut page, of, why);
    exercises(&mut page, of, shelf, why);
    gates(&mut page, of, why);
    returns(&mut page, of, shelf, why);
    visits(&mut page, of);
    if of.loosened.len() > FIRST_LOOSENED {
        section(&mut page, "Loosened by the surgeon");
        for line in &of.loosened {
            let _ = writeln!(page, "  {}", wrapped(line, WIDTH, "    "));
        }
    }
    cautions(&mut page, of, shelf);
    page
}

pub(super) fn section(page: &mut String, title: &str) {
    let _ = writeln!(page, "\n{}", paint(HEADING, title));
}

fn head(page: &mut String, of: &Prescription, why: bool) {
    let side = of.side.name().to_uppercase();
    let patient = of.patient.as_ref().map_or(String::new(), |id| format!(" · {id}"));
    let _ = writeln!(page, "{}{patient}", paint(HEADING, &format!("Prescription, {side} shoulder")));
    let _ = writeln!(
        page,
        "operated {} (day 0) · protocol {} · edition {} · evidence {}",
        paint(VALUE, &dates::with_weekday(of.operated_on)),
        paint(HEADING, &of.protocol.id),
        of.protocol.edition,
        evidence::EDITION
    );
    if !of.protocol.capped_by.is_empty() {
        let _ = writeln!(
            page,
            "every limit, start and the sling capped by: {}",
            paint(HEADING, &of.protocol.capped_by.join(", "))
        );
    }
    for reason in &of.protocol.why {
        let _ = writeln!(page, "  {}", wrapped(&format!("why: {}{}", reason.text, found(reason)), WIDTH, "       "));
        if why {
            write_evidence(page, reason, 4);
        }
    }
    for index in &of.indices {
        let score = match index.score {
            Some(score) => format!("{score} of {}", index.of),
            None => format!("{} to {} of {}", index.low, index.high, index.of),
        };
        let text = format!("healing index {score}: {}", index.meaning);
        let _ = writeln!(page, "  {}", wrapped(&text, WIDTH, "    "));
        if !index.missing.is_empty() {
            let _ = writeln!(
                page,
                "    {}",
                wrapped(&format!("missing: {}", index.missing.join(", ")), WIDTH - 2, "      ")
            );
        }
    }
    for line in of.loosened.iter().take(FIRST_LOOSENED) {
        let outside = of.outside_the_proof.contains(line);
        let label = if outside { "loosened by the surgeon, outside the proof:" } else { "loosened by the surgeon:" };
        let _ = writeln!(page, "  {} {}", paint(LOUD, label), wrapped(line, WIDTH - label.len() - 2, "    "));
    }
    if of.loosened.len() > FIRST_LOOSENED {
        let more = of.loosened.len() - FIRST_LOOSENED;
        let _ = writeln!(page, "  {} {more} more, listed at the end", paint(LOUD, "loosened by the surgeon:"));
    }
    let shown = &of.loosened[..of.loosened.len().min(FIRST_LOOSENED)];
    for line in of.outside_the_proof.iter().filter(|line| !shown.contains(line)) {
        let _ = writeln!(page, "  {} {}", paint(LOUD, "outside the proof:"), wrapped(line, WIDTH - 20, "    "));
    }
    for line in &of.moved {
        let _ = writeln!(page, "  {} {line}", paint(HEADING, "moved:"));
    }
}

/// " (operation.tear.anteroposterior 18 mm, line 22; …)".
fn found(reason: &Reason) -> String {
    let places: Vec<String> = reason
        .record
        .iter()
        .map(|place| match place.line {
            Some(line) => format!("{} {}, line {line}", last(&place.path), place.shown),
            None => format!("{} {}", last(&place.path), place.shown),
        })
        .collect();
    if places.is_empty() { String::new() } else { format!(" ({})", places.join("; ")) }
}

fn last(path: &str) -> &str {
    path.rsplit_once('.').map_or(path, |(_, last)| last)
}

/// Weeks from surgery on a line: the sling as a bar, the stages as letters, the day as a mark.
fn recovery_line(page: &mut String, of: &Prescription) {
    const WEEKS: usize = 30;
    section(page, "Recovery line (one sign a week)");
    let at_week = |week: usize| {
        let day = week as u16 * 7;
        of.spans.iter().find(|span| span.from_day.count() <= day && day < span.until_day.count())
    };
    let numbers: String = (0..=WEEKS).step_by(4).map(|week| format!("{week:<8}")).collect();
    let _ = writeln!(page, "  week    {}", numbers.trim_end());
    let bar = |sign: &dyn Fn(&SpanOfDays) -> &'static str| -> String {
        (0..WEEKS).map(|week| at_week(week).map_or("  ", sign)).collect()
    };
    let sling = bar(&|span| match span.sling.wear {
        Wear::Always => "██",
        Wear::Weaning => "▒▒",
        Wear::None => "··",
    });
    let _ = writeln!(page, "  sling   {sling}");
    let mut stages: Vec<char> = vec!['·'; WEEKS * 2];
    let places: Vec<usize> = of.stages.iter().map(|stage| usize::from(stage.from_day.count()) * 2 / 7).collect();
    for (order, (stage, &at)) in of.stages.iter().zip(&places).enumerate() {
        let until = places.get(order + 1).copied().unwrap_or(WEEKS * 2).min(WEEKS * 2);
        let label = std::iter::once('|').chain(stage.id.chars());
        for (slot, sign) in stages.iter_mut().take(until).skip(at).zip(label) {
            *slot = sign;
        }
    }
    let _ = writeln!(page, "  stage   {}", stages.into_iter().collect::<String>());
    if let Some(today) = &of.today {
        let at = (usize::from(today.day.count()) * 2 / 7).min(WEEKS * 2 - 1);
        let _ = writeln!(page, "  today   {}▲ day {}", " ".repeat(at), today.day.count());
    }
    let _ = writeln!(page, "  {}", paint(FAINT, "██ sling always   ▒▒ weaning   | gate of a stage"));
}

fn today(page: &mut String, of: &Prescription, shelf: &Shelf) {
    let Some(today) = &of.today else { return };
    section(page, &format!("On {} (day {})", dates::with_weekday(today.date), today.day.count()));
    let basis = match today.basis {
        TodayBasis::Opened => format!("stage {}", today.stage),
        TodayBasis::Frozen => {
            format!("stage {}; the next stage is not opened, so the limits before its gate hold", today.stage)
        }
    };
    let _ = writeln!(page, "  {basis}");
    let _ = writeln!(page, "  sling {}, {}", today.sling.wear.name(), today.sling.position.name());
    for mode in Mode::ALL {
        let open: Vec<&LimitRow> = today
            .limits
            .iter()
            .filter(|row| row.key.mode == *mode && row.allowed != Allowed::No && is_shown(row.key))
            .collect();
        if open.is_empty() {
            continue;
        }
        let text: Vec<String> = open.iter().map(|row| format!("{} {}", name(row.key), bound(row.allowed))).collect();
        let _ =
            writeln!(page, "  {:<16} {}", mode.name(), wrapped(&text.join(" · "), WIDTH - 18, "                   "));
    }
    for line in &today.exercises {
        let _ = writeln!(page, "  {}", exercise(line, shelf));
    }
    if let Some(next) = &today.not_before {
        let _ = writeln!(
            page,
            "  next: {}, not before {} (day {}), and only after the surgeon's office says so",
            next.stage,
            paint(VALUE, &dates::with_weekday(next.date)),
            next.day.count()
        );
    }
}

fn questions(page: &mut String, of: &Prescription, shelf: &Shelf) {
    section(page, "Questions");
    let blocking = of.questions.iter().filter(|question| question.changes.is_empty());
    for question in blocking {
        let text = wrapped(&format!("{} ({})", question.text, question.path), WIDTH - 18, "    ");
        let _ = writeln!(page, "  {} {text}", paint(LOUD, "before signing:"));
    }
    let limiting: Vec<_> = of.questions.iter().filter(|question| !question.changes.is_empty()).collect();
    for question in &limiting {
        let effect = sheets::question_effect(question, &shelf.messages);
        let _ = writeln!(page, "  {}", wrapped(&format!("{} ({})", question.text, question.path), WIDTH, "    "));
        let _ = writeln!(page, "    {}", paint(FAINT, &wrapped(&effect, WIDTH - 2, "    ")));
    }
    let _ = writeln!(page, "  {}", sheets::completions(limiting.len(), of.completions, &shelf.messages));
}

fn sling(page: &mut String, of: &Prescription, why: bool) {
    section(page, "Sling");
    let mut last: Option<(Wear, plan::SlingPosition)> = None;
    for span in &of.spans {
        let now = (span.sling.wear, span.sling.position);
        if last == Some(now) || (now.0 == Wear::None && last.is_some_and(|(wear, _)| wear == Wear::None)) {
            continue;
        }
        last = Some(now);
        let from = from(span.from, span.from_day.count());
        let text = match now.0 {
            Wear::Always => format!("always, asleep too, {}; off for {}", now.1.name(), span.sling.except.join(", ")),
            Wear::Weaning => format!("weaning: a little less every day, {}", now.1.name()),
            Wear::None => "none".into(),
        };
        let _ = writeln!(page, "  {from} {text}");
        if why {
            for line in reason_lines(&span.sling.reasons, 4) {
                let _ = writeln!(page, "    {line}");
            }
        }
    }
}

fn from(date: Date, day: u16) -> String {
    format!(
        "from {} ({})",
        paint(VALUE, &format!("{:>11}", dates::short(date))),
        paint(FAINT, &format!("day {day:>3}"))
    )
}

/// Values of one key over time: the spans where it changes.
type Timeline<'p> = Vec<(&'p SpanOfDays, Allowed, bool, &'p [Reason])>;

fn timeline<'p>(of: &'p Prescription, key: Key) -> Timeline<'p> {
    let mut line: Timeline<'p> = Vec::new();
    for span in &of.spans {
        // A named position counts where it has a row of its own, else the row for any position.
        let row = span
            .limits
            .iter()
            .find(|row| row.key == key)
            .or_else(|| span.limits.iter().find(|row| row.key == key.in_position(Position::Any)));
        let (allowed, lying, reasons) =
            row.map_or((Allowed::No, false, &[][..]), |row| (row.allowed, row.only_lying, &row.reasons[..]));
        if line.last().is_none_or(|(_, before, before_lying, _)| *before != allowed || *before_lying != lying) {
            line.push((span, allowed, lying, reasons));
        }
    }
    line
}

/// Limits by mode, movements with the same dates in one line.
fn limits(page: &mut String, of: &Prescription, why: bool) {
    section(page, "Limits (what is not listed is not allowed)");
    let mut keys: Vec<Key> = Vec::new();
    for row in of.spans.iter().flat_map(|span| &span.limits) {
        if !keys.contains(&row.key) {
            keys.push(row.key);
        }
    }
    // Where a position is named, the row for any position only repeats it later.
    let named: Vec<Key> =
        keys.iter().filter(|key| key.position != Position::Any).map(|key| key.in_position(Position::Any)).collect();
    keys.retain(|key| !named.contains(key));
    keys.sort_by_key(|key| (key.joint, key.movement));
    for mode in Mode::ALL {
        let mut groups: Vec<(Vec<Key>, Timeline<'_>)> = Vec::new();
        for &key in keys.iter().filter(|key| key.mode == *mode) {
            let line = timeline(of, key);
            let same = groups.iter_mut().find(|(_, known)| {
                known.len() == line.len()
                    && known.iter().zip(&line).all(|(a, b)| a.0.from_day == b.0.from_day && a.1 == b.1 && a.2 == b.2)
            });
            match same {
                Some((members, _)) => members.push(key),
                None => groups.push((vec![key], line)),
            }
        }
        groups.retain(|(_, line)| line.iter().any(|(_, allowed, ..)| *allowed != Allowed::No) || line.len() == 1);
        if groups.is_empty() {
            continue;
        }
        let _ = writeln!(page, "  {}", paint(HEADING, mode_name(*mode)));
        for (members, line) in &groups {
            let _ = writeln!(page, "    {}", wrapped(&names(members), WIDTH - 4, "    "));
            let steps: Vec<String> = line
                .iter()
                .filter(|(span, allowed, ..)| *allowed != Allowed::No || span.from_day.count() > 0 || line.len() == 1)
                .map(|(span, allowed, lying, _)| {
                    let lying = if *lying { " lying on the back" } else { "" };
                    if span.from_day.count() == 0 && line.len() == 1 {
                        return format!("{}{lying}", value(*allowed));
                    }
                    format!(
                        "{}{lying} from {} ({})",
                        value(*allowed),
                        paint(VALUE, &dates::short(span.from)),
                        paint(FAINT, &format!("day {}", span.from_day.count()))
                    )
                })
                .collect();
            let _ = writeln!(page, "      {}", steps.join(", "));
            if why {
                for (span, allowed, _, reasons) in line {
                    let _ = writeln!(page, "        {} from day {}:", value(*allowed), span.from_day.count());
                    for text in reason_lines(reasons, 10) {
                        let _ = writeln!(page, "          {text}");
                    }
                }
            }
        }
    }
}

fn mode_name(mode: Mode) -> &'static str {
    match mode {
        Mode::Resisted => "resisted, and loads",
        other => other.name(),
    }
}

/// "shoulder: forward elevation, abduction; elbow: flexion".
pub(super) fn names(keys: &[Key]) -> String {
    let mut parts: Vec<(Joint, Vec<String>)> = Vec::new();
    for key in keys {
        let mut movement = key.movement.name().to_owned();
        if key.position != Position::Any {
            movement = format!("{movement} ({})", key.position);
        }
        match parts.iter_mut().find(|(joint, _)| *joint == key.joint) {
            Some((_, movements)) => movements.push(movement),
            None => parts.push((key.joint, vec![movement])),
        }
    }
    parts
        .into_iter()
        .map(|(joint, movements)| format!("{joint}: {}", movements.join(", ")))
        .collect::<Vec<_>>()
        .join("; ")
}

fn name(key: Key) -> String {
    match key.joint {
        Joint::Shoulder | Joint::WholeArm => key.movement.name().to_owned(),
        joint => format!("{joint} {}", key.movement),
    }
}

/// On the page of one day only shoulder, blade and loads are named; the rest is short anyway.
fn is_shown(key: Key) -> bool {
    matches!(key.joint, Joint::Shoulder | Joint::WholeArm)
        || (key.joint == Joint::Scapula && key.mode == Mode::Active)
        || (key.joint == Joint::Elbow && key.movement == Movement::Flexion && key.mode == Mode::Active)
}

fn value(allowed: Allowed) -> String {
    match allowed {
        Allowed::No => "not allowed".into(),
        Allowed::Free => "free".into(),
        Allowed::UpTo(bound) => format!("up to {}", measure(bound)),
    }
}

fn bound(allowed: Allowed) -> String {
    match allowed {
        Allowed::UpTo(bound) => format!("≤ {}", measure(bound)),
        other => value(other),
    }
}

fn measure(bound: Bound) -> String {
    match bound {
        Bound::Angle(angle) => format!("{angle}°"),
        Bound::Load(load) => format!("{load} kg"),
        Bound::Effort(effort) => format!("{effort} % effort"),
    }
}

fn exercises(page: &mut String, of: &Prescription, shelf: &Shelf, why: bool) {
    section(page, "Exercises (what is new; each stays until its line ends)");
    let mut before: Vec<(&str, String)> = Vec::new();
    let (mut left_out, mut left_out_now): (Vec<String>, Vec<String>) = (Vec::new(), Vec::new());
    for span in &of.spans {
        let now: Vec<(&str, String)> =
            span.exercises.iter().map(|line| (line.id.as_str(), exercise(line, shelf))).collect();
        let new: Vec<&ExerciseLine> =
            span.exercises.iter().zip(&now).filter(|(_, line)| !before.contains(line)).map(|(line, _)| line).collect();
        let ended: Vec<String> = before
            .iter()
            .filter(|(id, _)| !now.iter().any(|(kept, _)| kept == id))
            .map(|(id, _)| shelf.title(id))
            .collect();
        if !new.is_empty() || !ended.is_empty() {
            let _ = writeln!(page, "  {} {}", from(span.from, span.from_day.count()), paint(FAINT, &span.stage));
        }
        for line in new {
            let _ = writeln!(page, "    {}", exercise(line, shelf));
            if why {
                for text in reason_lines(&line.reasons, 8) {
                    let _ = writeln!(page, "        {text}");
                }
            }
        }
        if !ended.is_empty() {
            let _ = writeln!(
                page,
                "    {}",
                paint(FAINT, &wrapped(&format!("ends: {}", ended.join("; ")), WIDTH, "      "))
            );
        }
        for dropped in span.dropped.iter().filter(|_| why) {
            let text = format!("left out: {}: {}", shelf.title(&dropped.id), dropped.because);
            if !left_out.contains(&text) {
                let _ = writeln!(page, "    {}", paint(FAINT, &text));
            }
            left_out_now.push(text);
        }
        left_out = std::mem::take(&mut left_out_now);
        for replaced in &span.replaced {
            let text = format!("{} stands in for {}", shelf.title(&replaced.taken), shelf.title(&replaced.dropped));
            if !page.contains(&text) {
                let _ = writeln!(page, "    {}", paint(FAINT, &text));
            }
        }
        before = now;
    }
}

/// An exercise with its dose, as it stands on clinicians' paper.
pub(super) fn exercise(line: &ExerciseLine, shelf: &Shelf) -> String {
    sheets::exercise_line(line, &shelf.catalogue, &shelf.messages)
}

fn gates(page: &mut String, of: &Prescription, why: bool) {
    section(page, "Gates (opened by the surgeon, never by the date alone)");
    for stage in of.stages.iter().filter(|stage| stage.from_day.count() > 0) {
        let opened = match stage.closes_again {
            Some((_, date)) => format!(", opened before; closes again on {date}, and has to be opened anew"),
            None if stage.opened => ", opened".into(),
            None => String::new(),
        };
        let _ =
            writeln!(page, "  {} {}{opened}", from(stage.from, stage.from_day.count()), paint(HEADING, &stage.title));
        let criteria: Vec<&str> = stage.criteria.iter().map(|criterion| criterion.text.as_str()).collect();
        if !criteria.is_empty() {
            let _ = writeln!(page, "    {}", wrapped(&criteria.join(" · "), WIDTH - 2, "    "));
        }
        if why {
            let reasons = stage.reasons.iter().chain(stage.criteria.iter().flat_map(|criterion| &criterion.reasons));
            for reason in reasons {
                for text in reason_lines(std::slice::from_ref(reason), 6) {
                    let _ = writeln!(page, "      {text}");
                }
            }
        }
    }
}

fn returns(page: &mut String, of: &Prescription, shelf: &Shelf, why: bool) {
    section(page, "Return");
    for line in &of.returns {
        let title = shelf.title(&line.activity);
        let when = match (line.day, line.date) {
            (Some(day), Some(date)) => from(date, day.count()),
            _ => "no dated day allows it".into(),
        };
        let by = if line.opened_by_surgeon { ", when the surgeon opens it" } else { "" };
        let note = line.note.as_ref().map_or(String::new(), |note| format!(" ({note})"));
        let _ = writeln!(page, "  {when} {title}{by}{}", paint(FAINT, &note));
        if why {
            for text in reason_lines(&line.reasons, 6) {
                let _ = writeln!(page, "      {text}");
            }
        }
    }
}

fn visits(page: &mut String, of: &Prescription) {
    let weekends = of.visits.iter().all(|visit| visit.day == visit.due_day);
    section(page, "Visits");
    if weekends {
        let _ = writeln!(page, "  {}", paint(FAINT, "no clinic days are set: each visit stands on the day it is due"));
    }
    for visit in &of.visits {
        let moved =
            if visit.day == visit.due_day { String::new() } else { format!(", due on day {}", visit.due_day.count()) };
        let _ = writeln!(page, "  {} {}{moved}", paint(VALUE, &dates::with_weekday(visit.date)), visit.purpose);
    }
}

fn cautions(page: &mut String, of: &Prescription, shelf: &Shelf) {
    section(page, "Cautions");
    for caution in &of.cautions {
        let _ = writeln!(page, "  {}", wrapped(caution, WIDTH, "    "));
    }
    let usual = shelf.messages.text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "  {}", wrapped(&usual, WIDTH, "  "));
}

/// Reasons as lines: rule, what it says, the part of the record, the evidence with its mark.
pub fn reason_lines(reasons: &[Reason], indent: usize) -> Vec<String> {
    let pad = " ".repeat(indent + 2);
    let mut lines = Vec::new();
    for reason in reasons {
        lines.push(wrapped(
            &format!("{}: {}{}", reason.rule, reason.text, found(reason)),
            WIDTH.saturating_sub(indent),
            &pad,
        ));
        let mut evidence = String::new();
        write_evidence(&mut evidence, reason, 2);
        lines.extend(evidence.lines().map(|line| paint(FAINT, line)));
    }
    lines
}

fn write_evidence(page: &mut String, reason: &Reason, indent: usize) {
    let pad = " ".repeat(indent);
    for entry in &reason.evidence {
        let number = entry.value.map_or(String::new(), |value| format!(" = {value} {}", entry.unit.name()));
        let mark = entry.how_known.mark().map_or_else(
            || {
                let shown: Vec<&str> = entry
                    .sources
                    .iter()
                    .filter_map(|key| evidence::source(key))
                    .map(|source| source.shown_as)
                    .collect();
                let mut shown = shown;
                shown.dedup();
                shown.join("; ")
            },
            |mark| format!("[{mark}]"),
        );
        let _ = writeln!(page, "{pad}{}{number}: {mark}", entry.id);
    }
}
