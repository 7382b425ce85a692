//! What changes between two plans, on the terminal: words first, for a surgeon.

mod days;
mod limits;

use std::fmt::Write as _;

use body::{Key, Mode};
use jiff::civil::Date;
use plan::{SlingPosition, Wear};
use prescription::compare::{
    BesideChange, Comparison, Exercise, ExerciseChange, FirstChange, LineChange, LineKind, Scope, Scoped, Sling,
    SlingChange, Which,
};
use prescription::{OpenQuestion, QuestionAnswer};

use self::days::Days;
use crate::json::comparison::{Head, title};
use crate::shelf::Shelf;
use crate::view::paint::{FAINT, HEADING, LOUD, paint, wrapped};
use crate::view::prescription::{exercise, names, section};

const WIDTH: usize = 98;

/// The whole page.
pub fn page(kind: &str, heads: &[Head; 2], note: &str, found: &[Scoped], shelf: &Shelf) -> String {
    let mut page = format!("{}\n", paint(HEADING, &format!("Comparison of two {kind}")));
    for (name, head) in ["A", "B"].into_iter().zip(heads) {
        let _ = writeln!(page, "  {} {}", paint(HEADING, name), wrapped(&told(head), WIDTH - 2, "    "));
    }
    let days = Days::of(heads);
    if let Some(remark) = days.remark(heads) {
        let _ = writeln!(page, "  {}", paint(FAINT, &wrapped(remark, WIDTH, "  ")));
    }
    let _ = writeln!(page, "\n{}", paint(HEADING, note));
    for scoped in found {
        let mut part = String::new();
        let kind = if scoped.scope.rule.is_some() { Kind::Rule } else { Kind::Plan };
        comparison(&mut part, &scoped.comparison, kind, &days, shelf);
        if let Some(scope) = scope(&scoped.scope)
            && !part.is_empty()
        {
            let _ = writeln!(page, "\n{}", paint(LOUD, &scope));
        }
        page.push_str(&part);
    }
    caution(&mut page, shelf);
    page
}

/// What each answer to an open question changes.
pub fn questions(head: &Head, note: &str, questions: &[OpenQuestion], shelf: &Shelf) -> String {
    let mut page = format!("{}\n", paint(HEADING, "What the answers to the open questions would change"));
    let _ = writeln!(page, "  {}", wrapped(&told(head), WIDTH, "    "));
    let _ = writeln!(page, "  {}", wrapped(note, WIDTH, "    "));
    let days = Days::of(&[head.clone(), head.clone()]).between("now", "then");
    if questions.is_empty() {
        let _ = writeln!(page, "\n  no open question would change a limit, the sling or a gate");
    }
    // The same changes are written out once.
    let mut shown: Vec<(&Comparison, String)> = Vec::new();
    for question in questions {
        page.push('\n');
        for (path, text) in &question.asked {
            let before = if question.blocks_signing { "before signing: " } else { "" };
            let text = format!("{before}{text} ({path})");
            let _ = writeln!(page, "{}", paint(HEADING, &wrapped(&text, WIDTH, "  ")));
        }
        for answer in &question.answers {
            let said = shown.iter().find(|(known, _)| **known == answer.comparison);
            let _ = writeln!(page, "  {}", wrapped(&answered(answer, question, said), WIDTH - 2, "    "));
            if said.is_some() || answer.comparison.is_empty() {
                continue;
            }
            let path = question.asked.first().map_or("", |(path, _)| path.as_str());
            shown.push((&answer.comparison, format!("{path} {}", answer.words.join(" or "))));
            let mut part = String::new();
            comparison(&mut part, &answer.comparison, Kind::Plan, &days, shelf);
            for line in part.lines().filter(|line| !line.is_empty()) {
                let _ = writeln!(page, "    {line}");
            }
        }
    }
    caution(&mut page, shelf);
    page
}

/// "if good or fair, alone nothing; together with tension: low or moderate:".
fn answered(answer: &QuestionAnswer, of: &OpenQuestion, said: Option<&(&Comparison, String)>) -> String {
    let mut text = format!("if {}", answer.words.join(" or "));
    if !answer.together.is_empty() {
        let others = answer.together.iter().map(|other| format!("{}: {}", other.fact, other.answer));
        let others: Vec<String> = others.collect();
        let _ = write!(text, ", alone nothing; together with {}", others.join("; "));
    }
    match said {
        _ if answer.comparison.is_empty() && of.blocks_signing => {
            let _ = write!(text, ": nothing changes by the answer alone; {}", answer.because);
        }
        _ if answer.comparison.is_empty() => text.push_str(": nothing changes"),
        Some((_, above)) => {
            let _ = write!(text, ": the same changes as above for {above}");
        }
        None => text.push(':'),
    }
    text
}

fn told(head: &Head) -> String {
    let mut text = head.file.clone();
    let protocol = head.protocol.as_ref().map(|id| format!("protocol {id}"));
    let edition = head.edition.as_ref().map(|edition| format!("edition {edition}"));
    let date = head.date.as_ref().map(|date| format!("operated {date} (day 0)"));
    let side = head.side.map(|side| format!("{} shoulder", side.to_uppercase()));
    for part in [protocol, edition, date, side].into_iter().flatten() {
        text.push_str(" · ");
        text.push_str(&part);
    }
    text
}

fn scope(scope: &Scope) -> Option<String> {
    let protocol = scope.protocol.as_ref().map(|id| format!("protocol {id}"));
    let rule = scope.rule.as_ref().map(|id| format!("only where the rule {id} fires"));
    let option = scope.option.as_ref().map(|(choice, option)| format!("only with the choice {choice}: {option}"));
    let parts: Vec<String> = [protocol, rule, option].into_iter().flatten().collect();
    (!parts.is_empty()).then(|| parts.join(", "))
}

/// Whether lines tell of a plan, or of a rule that only caps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Plan,
    Rule,
}

fn comparison(page: &mut String, of: &Comparison, kind: Kind, days: &Days, shelf: &Shelf) {
    sling(page, &of.sling, days);
    if kind == Kind::Plan {
        first_allowed(page, &of.first_allowed, days);
    }
    limits::write(page, &of.limits, kind, days);
    exercises(page, &of.exercises, days, shelf);
    for (of_kind, heading) in [
        (LineKind::Stage, "Stages"),
        (LineKind::Goal, "Goals"),
        (LineKind::Visit, "Visits"),
        (LineKind::Return, "Return"),
    ] {
        let of_kind: Vec<&LineChange> = of.lines.iter().filter(|line| line.kind == of_kind).collect();
        lines(page, heading, &of_kind, days, shelf);
    }
    beside(page, &of.beside, days);
}

fn sling(page: &mut String, changes: &[SlingChange], days: &Days) {
    if changes.is_empty() {
        return;
    }
    section(page, "Sling");
    for change in changes {
        let stricter = match change.looser {
            Some(Which::A) => format!(" (longer {})", days.b),
            Some(Which::B) => format!(" (longer {})", days.a),
            None => String::new(),
        };
        let differs_in_release = match (&change.a, &change.b) {
            (Some(a), Some(b)) => a.wear == b.wear && a.position == b.position,
            _ => false,
        };
        let text = format!(
            "{}: {} {}, {} {}{stricter}",
            days.run(change.from_day, change.until_day),
            worn(change.a.as_ref(), differs_in_release),
            days.a,
            worn(change.b.as_ref(), differs_in_release),
            days.b
        );
        let _ = writeln!(page, "  {}", wrapped(&text, WIDTH, "    "));
    }
}

fn worn(sling: Option<&Sling>, with_release: bool) -> String {
    let Some(sling) = sling.filter(|sling| sling.wear != Wear::None) else { return "none".into() };
    let mut text = sling.wear.name().to_owned();
    if sling.position != SlingPosition::Neutral {
        let _ = write!(text, " in {}", sling.position.name());
    }
    if with_release {
        let _ = write!(text, ", off for {}", sling.except.join(", "));
    }
    text
}

/// First days; movements and modes that start on the same days stand together.
fn first_allowed(page: &mut String, changes: &[FirstChange], days: &Days) {
    if changes.is_empty() {
        return;
    }
    section(page, "First days");
    let mut groups: Vec<Group> = Vec::new();
    for change in changes {
        let movement = change.key.in_mode(Mode::Passive);
        match groups
            .iter_mut()
            .find(|group| (group.a, group.b, group.modes[0]) == (change.a, change.b, change.key.mode))
        {
            Some(group) => group.movements.push(movement),
            None => {
                groups.push(Group { a: change.a, b: change.b, modes: vec![change.key.mode], movements: vec![movement] })
            }
        }
    }
    let mut joined: Vec<Group> = Vec::new();
    for group in groups {
        let same = |known: &&mut Group| (known.a, known.b, &known.movements) == (group.a, group.b, &group.movements);
        match joined.iter_mut().find(same) {
            Some(known) => known.modes.extend(group.modes),
            None => joined.push(group),
        }
    }
    joined.sort_by_key(|group| (group.a.into_iter().chain(group.b).min(), group.modes[0]));
    for group in joined {
        let modes: Vec<&str> = group.modes.iter().map(|mode| mode.name()).collect();
        let moved = days.moved(group.a, group.b, "never");
        let text = format!("{}: {}: {moved}", modes.join(", "), names(&group.movements));
        let _ = writeln!(page, "  {}", wrapped(&text, WIDTH, "    "));
    }
}

/// Movements whose first days are the same in some modes.
struct Group {
    a: Option<u16>,
    b: Option<u16>,
    modes: Vec<Mode>,
    movements: Vec<Key>,
}

fn exercises(page: &mut String, changes: &[ExerciseChange], days: &Days, shelf: &Shelf) {
    if changes.is_empty() {
        return;
    }
    section(page, "Exercises");
    let mut last = None;
    for change in changes {
        let run = (change.from_day, change.until_day);
        if last != Some(run) {
            let _ = writeln!(page, "  {}", days.run(run.0, run.1));
            last = Some(run);
        }
        let dose = |exercise: &Exercise| {
            let mut text = self::exercise(&exercise.line, shelf);
            for remark in &exercise.remarks {
                text.push_str(", ");
                text.push_str(remark);
            }
            text
        };
        let text = match (&change.a, &change.b) {
            (Some(a), None) => format!("only {}: {}", days.a, dose(a)),
            (None, Some(b)) => format!("only {}: {}", days.b, dose(b)),
            (Some(a), Some(b)) => {
                let (a, b) = (dose(a), dose(b));
                let title = shelf.title(&change.id);
                let short = |text: &str| text.strip_prefix(&title).unwrap_or(text).trim_start_matches(", ").to_owned();
                format!("{title}: {} {}; {} {}", short(&a), days.a, short(&b), days.b)
            }
            (None, None) => continue,
        };
        let _ = writeln!(page, "    {}", wrapped(&text, WIDTH - 2, "      "));
    }
}

fn lines(page: &mut String, heading: &str, changes: &[&LineChange], days: &Days, shelf: &Shelf) {
    if changes.is_empty() {
        return;
    }
    section(page, heading);
    for change in changes {
        let title = title(change, shelf);
        let name = if title.is_empty() { change.id.clone() } else { title };
        let (a, b) = (change.a.as_ref(), change.b.as_ref());
        let text = match (a, b) {
            (Some(a), Some(b)) if a.day == b.day => {
                format!("{name}: {} {}; {} {}", or_nothing(&a.says), days.a, or_nothing(&b.says), days.b)
            }
            (Some(a), Some(b)) => {
                let mut text = format!("{name}: {}", days.moved(a.day, b.day, "no dated day"));
                if a.says != b.says {
                    let (a, b) = (or_nothing(&a.says), or_nothing(&b.says));
                    let _ = write!(text, "; {a} {}; {b} {}", days.a, days.b);
                }
                text
            }
            (Some(line), None) => format!("{name}: only {}, {}", days.a, days.on(line.day, "no dated day")),
            (None, Some(line)) => format!("{name}: only {}, {}", days.b, days.on(line.day, "no dated day")),
            (None, None) => continue,
        };
        let _ = writeln!(page, "  {}", wrapped(&text, WIDTH, "    "));
    }
}

fn or_nothing(says: &str) -> &str {
    if says.is_empty() { "nothing more" } else { says }
}

fn beside(page: &mut String, changes: &[BesideChange], days: &Days) {
    if changes.is_empty() {
        return;
    }
    section(page, "Said beside it");
    for change in changes {
        for (name, texts) in [(days.a, &change.a), (days.b, &change.b)] {
            for text in texts {
                let _ =
                    writeln!(page, "  {}", wrapped(&format!("{}, only {name}: {text}", change.what), WIDTH, "    "));
            }
        }
    }
}

fn caution(page: &mut String, shelf: &Shelf) {
    let caution = shelf.messages.text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "\n{}", paint(FAINT, &wrapped(&caution, WIDTH, "")));
}

/// The day of operation of a head.
fn operated(head: &Head) -> Option<Date> {
    head.date.as_ref().and_then(|date| date.parse().ok())
}
