//! The sheets of every step of every story: easy to read, never looser than the limits, and silent about what is
//! not opened.

use body::Position;
use diagnostic::Sink;
use exercise::Entry;
use jiff::ToSpan as _;
use jiff::civil::Date;
use plan::Allowed;
use prescription::{Answer, Case};
use quantity::PostoperativeDay;
use sheets::{Block, Desk, Document, Points, Told};
use wording::{Ease, Language, Messages, dates};

use crate::judged;
use crate::story;
use crate::world::World;

/// What all handouts together came to.
#[derive(Default)]
struct Seen {
    handouts: usize,
    frozen: usize,
    claims: usize,
    answers: usize,
    hardest_grade: f32,
    hardest_smog: f32,
    hardest_spanish: f32,
}

#[test]
fn every_handout_holds() {
    let (english, spanish) = (Messages::english(), Messages::of(Language::Spanish));
    let shelf = crate::shelf();
    let mut seen = Seen { hardest_grade: f32::MIN, hardest_spanish: f32::MAX, ..Seen::default() };
    for path in judged::stories() {
        let text = std::fs::read_to_string(&path).expect("a case is text");
        let file = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        for step in story::read(&text).unwrap_or_default() {
            let Ok(world) = World::new(&step, &shelf) else { continue };
            if world.issued.is_none() {
                continue;
            }
            let name = format!("{file}:{}", step.line);
            // As it is issued, and a week after the gate that nobody has opened.
            let judge = |on: Option<Date>, seen: &mut Seen| {
                world.with_desk(&english, on, |case, desk| {
                    holds(&name, case, desk, [&english, &spanish], seen);
                    desk.prescription.stages.iter().find(|stage| !stage.opened).map(|stage| stage.from)
                })
            };
            let gate = judge(None, &mut seen);
            assert!(gate.is_some(), "{name}: a prescription without a desk");
            if let Some(late) = gate.flatten().and_then(|gate| gate.checked_add(7.days()).ok()) {
                assert!(judge(Some(late), &mut seen).is_some(), "{name}: no desk a week after the gate");
                seen.frozen += 1;
            }
        }
    }
    assert!(seen.frozen > 100, "only {} waiting gates", seen.frozen);
    assert!(seen.handouts > 300, "only {} handouts", seen.handouts);
    assert!(seen.claims > 5000, "only {} claims", seen.claims);
    assert!(seen.answers > 20_000, "only {} answers", seen.answers);
    println!(
        "{} handouts, {} claims, {} answers; hardest: grade {:.2}, SMOG {:.2}, Spanish {:.1}",
        seen.handouts, seen.claims, seen.answers, seen.hardest_grade, seen.hardest_smog, seen.hardest_spanish
    );
}

fn holds(name: &str, case: &Case<'_>, desk: &Desk<'_>, [english, spanish]: [&Messages; 2], seen: &mut Seen) {
    let handout = sheets::handout(desk).unwrap_or_else(|fault| panic!("{name}: {fault:?}"));
    let in_spanish = sheets::handout(&Desk { messages: spanish, ..*desk }).expect("the same numbers");
    seen.handouts += 1;
    every_text_is_there(name, &handout);
    every_text_is_there(name, &in_spanish);
    for letter in [sheets::letter(desk), sheets::surgeon_page(desk, "0"), sheets::work_note(desk)] {
        every_text_is_there(name, &letter);
        clinicians_read_words(name, desk, &letter);
    }
    is_easy_to_read(name, &handout, &in_spanish, seen);
    nothing_unopened_has_a_date(name, desk, &handout, Language::English);
    nothing_unopened_has_a_date(name, desk, &in_spanish, Language::Spanish);
    seen.answers += no_answer_is_looser_than_the_day(name, case, desk);
    seen.claims += no_sentence_is_looser_than_the_limits(name, desk, english);
}

/// Every text is a message that exists, with everything it asks for.
fn every_text_is_there(name: &str, document: &Document) {
    for text in document.texts() {
        assert!(!text.contains(['‹', '›', '$']), "{name}: {text}");
        assert!(!text.contains("{}") && !text.contains("{ }"), "{name}: {text}");
    }
}

/// No path of a record, key of a limit or id of the catalogue reaches a clinician; the columns of rules and evidence,
/// where a name is what `explain` asks for, are left out.
fn clinicians_read_words(name: &str, desk: &Desk<'_>, document: &Document) {
    // "push-up" is an id and a word.
    let is_word = |entry: &&Entry| desk.messages.text(&entry.message_id(), &[]).eq_ignore_ascii_case(&entry.id);
    let entries = desk.catalogue.entries().iter().filter(|entry| !is_word(entry));
    let ids: Vec<&str> = entries.map(|entry| entry.id.as_str()).filter(|id| id.contains('-')).collect();
    assert!(ids.len() > 50, "{}", ids.len());
    let is_named = |column: &sheets::Column| ["reason (rule)", "id"].contains(&column.title.as_str());
    let mut tables: Vec<&str> = Vec::new();
    for block in &document.blocks {
        let Block::Table { columns, rows, .. } = block else { continue };
        for row in rows {
            let mut place = 0;
            for cell in row {
                if columns.get(place).is_some_and(|column| !is_named(column)) {
                    tables.push(&cell.text);
                }
                place += usize::from(cell.span);
            }
        }
    }
    let is_table = |block: &&Block| matches!(block, Block::Table { .. });
    let blocks = document.blocks.iter().filter(|block| !is_table(block)).cloned().collect();
    let others = Document { blocks, ..document.clone() };
    for text in others.texts().into_iter().chain(tables) {
        let letter = |at: Option<char>| at.is_some_and(char::is_alphanumeric);
        for (at, _) in text.match_indices('_') {
            let joins = letter(text[..at].chars().next_back()) && letter(text[at + 1..].chars().next());
            assert!(!joins, "{name}: {text}");
        }
        for position in Position::ALL {
            assert!(!text.contains(&format!("/{}/", position.name())), "{name}: {text}");
        }
        for word in text.split(|sign: char| !(sign.is_alphanumeric() || sign == '-')) {
            assert!(!ids.contains(&word), "{name}: {word} in {text}");
        }
    }
}

/// Grade 6 by Flesch and Kincaid and SMOG 8 for English, 70 by Fernández Huerta for Spanish.
///
/// The bounds: evidence `reading-grade-greatest`; SMOG and Spanish are own choices beside it.
fn is_easy_to_read(name: &str, english: &Document, spanish: &Document, seen: &mut Seen) {
    let ease = Ease::of(&english.sentences(), Language::English);
    let in_spanish = Ease::of(&spanish.sentences(), Language::Spanish);
    assert!(ease.sentences > 60, "{name}: only {} sentences", ease.sentences);
    let (grade, smog, huerta) = (ease.kincaid_grade(), ease.smog_grade(), in_spanish.fernandez_huerta());
    assert!(grade <= 6.0 && smog <= 8.0 && huerta >= 70.0, "{name}: grade {grade}, SMOG {smog}, Spanish {huerta}");
    seen.hardest_grade = seen.hardest_grade.max(grade);
    seen.hardest_smog = seen.hardest_smog.max(smog);
    seen.hardest_spanish = seen.hardest_spanish.min(huerta);
}

/// No sentence lets a patient do more than the limits of any day it stands for, and none forbids what is allowed.
fn no_sentence_is_looser_than_the_limits(name: &str, desk: &Desk<'_>, messages: &Messages) -> usize {
    let mut compared = 0;
    for period in desk.parts().iter().flat_map(|part| &part.periods) {
        let points = Points::of(period, messages, desk.other_arm());
        assert!(!points.may.is_empty() || !points.not.is_empty(), "{name}: nothing is said");
        for point in &points.may {
            assert!(!point.claims.is_empty(), "{name}: {} claims nothing", point.text);
            for (key, claimed) in &point.claims {
                let row = period.limits.iter().find(|row| row.key == *key);
                let named = period.limits.iter().filter(|row| row.key.in_position(key.position) == *key);
                let allowed = row.map(|row| row.allowed).or(named.map(|row| row.allowed).min());
                assert!(
                    *claimed <= allowed.unwrap_or(Allowed::No),
                    "{name}: {} claims {claimed:?} of {key}, allowed {allowed:?}",
                    point.text
                );
                compared += 1;
            }
        }
        for (point, key) in points.not.iter().flat_map(|point| point.claims.iter().map(move |claim| (point, claim.0))) {
            let open = period.limits.iter().any(|row| row.key == key && row.allowed != Allowed::No);
            assert!(!open, "{name}: {} forbids {key}, which is allowed", point.text);
            compared += 1;
        }
    }
    compared
}

/// What a patient is told may be done, may be done on each day it is told for.
fn no_answer_is_looser_than_the_day(name: &str, case: &Case<'_>, desk: &Desk<'_>) -> usize {
    let mut compared = 0;
    let mut answers = desk.answers;
    for part in desk.parts() {
        let (own, rest) = answers.split_at(part.periods.len());
        answers = rest;
        let told = sheets::activities(desk, &part, own);
        assert!(told.len() > 50, "{name}: {} activities", told.len());
        let until = part.until().map_or(part.from_day().count() + 60, |(day, _)| day.count());
        let days: Vec<Date> = (part.from_day().count()..until)
            .step_by(5)
            .map(|day| PostoperativeDay::new(day).date(desk.prescription.operated_on))
            .collect();
        let case = Case { on: Some(desk.issued_on), ..*case };
        let really = prescription::may_all(&case, &days, &mut Sink::new()).expect("answers");
        for (day, of_day) in days.iter().zip(&really) {
            for ((activity, told), may) in told.iter().zip(of_day) {
                assert_eq!(*activity, may.activity);
                let is_told = match told {
                    Told::Yes => true,
                    Told::From(from) => from <= day,
                    Told::Ask | Told::NotYet => false,
                };
                assert!(
                    !is_told || may.answer == Answer::Yes,
                    "{name}: {activity} on {day}: told {told:?}, is {may:?}"
                );
                compared += 1;
            }
        }
    }
    compared
}

/// A date on or after the gate of the first stage that is not open stands on the paper only as that gate, as the
/// visit at which the surgeon looks whether it may be opened, or as a day of the wound.
fn nothing_unopened_has_a_date(name: &str, desk: &Desk<'_>, handout: &Document, language: Language) {
    let Some(gate) = desk.prescription.stages.iter().find(|stage| !stage.opened) else { return };
    let mut known: Vec<Date> = sheets::visits_of_patient(desk).map(|visit| visit.date).collect();
    let wound = [evidence::ids::WOUND_DRY_UNTIL, evidence::ids::WOUND_VISIT_FROM, evidence::ids::WOUND_VISIT_UNTIL];
    known.extend(wound.map(|day| day.day().date(desk.prescription.operated_on)));
    known.push(gate.from);
    let text = handout.texts().join("\n");
    let mut date = gate.from.max(desk.issued_on.tomorrow().expect("a day after"));
    // The plan and a year beyond it.
    for _ in 0..730 {
        let written = dates::short(date, language);
        // "2 Mar 2026" stands in "12 Mar 2026" as well.
        let stands = text.match_indices(&written).any(|(at, _)| !text[..at].ends_with(|c: char| c.is_ascii_digit()));
        assert!(known.contains(&date) || !stands, "{name}: {written} is told, and {} is not opened", gate.id);
        date = date.tomorrow().expect("a day after");
    }
}
