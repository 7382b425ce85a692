//! What a handout prints of the stages that are open, and what it leaves to later paper.

use jiff::{Span, civil::Date};
use plan::Allowed;

use crate::document::{Block, Document, Tone};
use crate::handout::{handout, step_title};
use crate::letter_world::{Made, OPENED_TO_ACTIVE, PRACTICE, SMALL, World, world};
use crate::parts::Begins;
use crate::texts::Texts;

/// The first days of a staged plan with a go-back that lies far ahead, its later stages opened as well.
pub(crate) const LATE_BACK: &str = concat!(
    include_str!("../../../examples/practice.toml"),
    "\n[[back]]\nstage = \"passive\"\nday = 120\nreason = \"new pain\"\n"
);

fn printed(world: &World, made: &Made) -> Option<Document> {
    handout(&world.desk(made)).ok()
}

pub(crate) fn all(blocks: &[Block]) -> Vec<&Block> {
    let mut found = Vec::new();
    for block in blocks {
        found.push(block);
        if let Block::Together { blocks } = block {
            found.extend(all(blocks));
        }
    }
    found
}

/// Every opened stage is either printed in full or named with the day from which it has paper of its own.
fn tells_of_every_stage(world: &World, made: &Made) {
    let desk = world.desk(made);
    let Some(document) = printed(world, made) else { return };
    let texts = Texts::of_patient(&desk);
    let blocks = all(&document.blocks);
    let titles = |level: u8| {
        blocks.iter().filter(move |block| matches!(block, Block::Heading { level: own, .. } if *own == level)).count()
    };
    assert!(titles(1) > 0, "{}", made.name);
    let parts = desk.parts();
    let soon = made.issued_on + Span::new().days(14); // not medical: `next-step-on-paper`
    for (place, part) in parts.iter().enumerate() {
        let title = step_title(&texts, part);
        let in_full = blocks.iter().any(|block| matches!(block, Block::Heading { text, .. } if *text == title));
        let date = texts.date(part.from());
        let named = document.texts().iter().any(|text| text.contains(&title) && text.contains(&date));
        let should = place == 0 || (place == 1 && part.from() <= soon);
        assert_eq!(
            in_full || place == 0,
            should || in_full && repeated(&texts, &parts, place),
            "{}: {title}",
            made.name
        );
        assert!(should || named, "{}: {title} from {date} is neither printed nor named", made.name);
    }
}

/// Whether an earlier part has the same title: after a go-back a stage comes twice.
fn repeated(texts: &Texts<'_>, parts: &[crate::parts::Part<'_>], place: usize) -> bool {
    let title = step_title(texts, &parts[place]);
    parts.iter().enumerate().any(|(other, part)| other != place && step_title(texts, part) == title)
}

#[test]
fn a_stage_far_ahead_is_named_and_not_printed() {
    let (world, made) = world();
    for made in made {
        tells_of_every_stage(world, made);
    }
    for (settings, openings, on) in [
        (LATE_BACK, OPENED_TO_ACTIVE, None),
        (LATE_BACK, "", None),
        (PRACTICE, OPENED_TO_ACTIVE, Some(jiff::civil::date(2026, 3, 20))),
    ] {
        tells_of_every_stage(world, &world.made("ahead", SMALL, settings, openings, on));
    }
    for settings in [PRACTICE, LATE_BACK] {
        let on = jiff::civil::date(2026, 3, 2);
        tells_of_every_stage(world, &world.made("ahead", SMALL, settings, &opened_ahead(on), Some(on)));
    }
}

/// The last day that is printed, and the first of what is left to later paper, key by key.
#[test]
fn paper_that_must_not_be_followed_on_says_so() {
    let (world, _) = world();
    let mut seen = [0, 0];
    for (settings, on) in [(LATE_BACK, (2026, 5, 30)), (LATE_BACK, (2026, 3, 2)), (PRACTICE, (2026, 3, 2))] {
        let on: Date = jiff::civil::date(on.0, on.1, on.2);
        let made = world.made("ahead", SMALL, settings, &opened_ahead(on), Some(on));
        let desk = world.desk(&made);
        let parts = desk.parts();
        let paper = crate::parts::on_paper(&parts, on);
        let (Some(last), Some(next)) = (paper.printed.last(), paper.later.first()) else {
            panic!("nothing is left to later paper on {on}")
        };
        let day_before = next.from_day().count() - 1;
        assert!(last.until().is_none_or(|(day, _)| day.count() == day_before + 1));
        // Looked up in the dated plan and not in the parts.
        let limits = |day: u16| {
            let spans = &made.prescription.spans;
            &spans
                .iter()
                .find(|span| (span.from_day.count()..span.until_day.count()).contains(&day))
                .expect("a day")
                .limits
        };
        // A position without a row of its own is bound by the row for every position.
        let of = |rows: &[plan::LimitRow], key: body::Key| {
            let find = |key| rows.iter().find(|row| row.key == key).map(|row| row.allowed);
            find(key).or_else(|| find(key.in_position(body::Position::Any))).unwrap_or(Allowed::No)
        };
        let stricter = limits(day_before).iter().any(|row| of(limits(day_before + 1), row.key) < row.allowed);
        let document = printed(world, &made).expect("the numbers are there");
        let is_stop = |block: &&Block| matches!(block, Block::Paragraph { tone: Tone::Stop, text } if text.contains(&Texts::of_patient(&desk).date(next.from())));
        assert_eq!(all(&document.blocks).iter().any(is_stop), stricter, "{on}");
        seen[usize::from(stricter)] += 1;
    }
    assert!(seen[0] > 0 && seen[1] > 0, "{seen:?}");
}

/// Four stages opened at once, on the day of issue.
pub(crate) fn opened_ahead(on: Date) -> String {
    ["passive", "assisted", "active", "strengthening"]
        .map(|stage| format!("[[opened]]\nstage = \"{stage}\"\non = {on}\nby = \"Dr. Imke Falk\"\n"))
        .concat()
}

/// A move that is not for every day has its days beside it on the sheet that has a box for each day.
#[test]
fn the_fridge_says_how_many_days_a_week() {
    let (world, made) = world();
    let (mut some, mut every) = (0, 0);
    for made in made {
        let desk = world.desk(made);
        let Some(document) = printed(world, made) else { continue };
        let mut rows = document.blocks.iter().filter_map(|block| match block {
            Block::Ticks { rows, .. } => Some(rows),
            _ => None,
        });
        for part in crate::parts::on_paper(&desk.parts(), made.issued_on).printed {
            let runs = crate::exercises::runs(part);
            if runs.is_empty() {
                continue;
            }
            let rows = rows.next().expect("a sheet");
            assert_eq!(rows.len(), runs.len(), "{}", made.name);
            for (row, run) in rows.iter().zip(runs) {
                let days = run.line.days_per_week.map(|days| format!("{days} days a week"));
                assert_eq!(row.dose.contains("days a week"), days.is_some(), "{}: {}", made.name, row.label);
                assert!(
                    days.is_none_or(|days| row.dose.lines().any(|line| line.ends_with(&days))),
                    "{}: {}",
                    made.name,
                    row.dose
                );
                *(if run.line.days_per_week.is_some() { &mut some } else { &mut every }) += 1;
            }
        }
    }
    assert!(some > 5 && every > 50, "{some}, {every}");
}

/// The example's settings and a go-back on 1 May 2026, day 60.
const SOON_BACK: &str = concat!(
    include_str!("../../../examples/practice.toml"),
    "\n[[back]]\nstage = \"passive\"\nday = 60\nreason = \"new pain\"\n"
);

fn on(month: i8, day: i8) -> Date {
    jiff::civil::date(2026, month, day)
}

/// What is signed before a go-back opens nothing after it: neither a part of the handout, nor a gate or a day of the
/// letter.
#[test]
fn nothing_beyond_a_go_back_is_open() {
    let (world, _) = world();
    let made = world.made("ahead", SMALL, SOON_BACK, OPENED_TO_ACTIVE, Some(on(4, 25)));
    let desk = world.desk(&made);
    let parts = desk.parts();
    let told: Vec<_> = parts.iter().map(|part| (part.stage.id.as_str(), part.from(), part.begins)).collect();
    // Back to passive motion on 1 May; the next gate is 14 days after it, on 15 May.
    let expected = [("active", on(4, 25), Begins::InOrder), ("passive", on(5, 1), Begins::GoesBack)];
    assert_eq!(told, expected);
    assert_eq!(parts[1].until().map(|(_, date)| date), Some(on(5, 15)));
    let letter = crate::letter::letter(&desk);
    let texts = letter.texts();
    assert!(texts.iter().any(|text| text.contains("Valid until 30 Apr 2026")), "{texts:?}");
    assert!(texts.contains(&"opened before; closes again on 1 May 2026; new signature needed"));
    // Before active motion is opened, its gate of 13 April ends the paper, and the go-back begins one of its own.
    let made = world.made("unopened", SMALL, SOON_BACK, OPENED_TO_ACTIVE, Some(on(4, 10)));
    let parts = parts_of(&made);
    let expected = [("assisted".to_owned(), on(4, 10)), ("passive".to_owned(), on(5, 1))];
    assert_eq!(parts, expected);
}

fn parts_of(made: &Made) -> Vec<(String, Date)> {
    let parts = crate::parts::parts(&made.prescription, made.issued_on);
    parts.iter().map(|part| (part.stage.id.clone(), part.from())).collect()
}

/// A step back is told as one: what stops, and that it may stop earlier.
#[test]
fn a_step_back_is_no_next_step() {
    let (world, _) = world();
    let made = world.made("back", SMALL, SOON_BACK, OPENED_TO_ACTIVE, Some(on(4, 25)));
    let document = printed(world, &made).expect("the numbers are there");
    let texts = document.texts();
    let box_text = [
        "From Fri 1 May 2026 your rules get stricter.",
        "Stop raising the arm by its own strength.",
        "Wear the sling day and night again.",
        "You may do this earlier.",
    ];
    for text in box_text {
        assert!(texts.contains(&text), "{text}: {texts:?}");
    }
    // The sling is worn less from 13 April on, and by the plan not at all from 27 April on: that is not on paper.
    let wrong = ["Your next step starts on", "Do not start this before", "You do not need the sling any more"];
    for text in &texts {
        assert!(!wrong.iter().any(|wrong| text.contains(wrong)), "{text}");
    }
    let fridge =
        "Use this sheet only until Thu 30 Apr 2026. From Fri 1 May 2026 use the sheet “Step 2: The arm is moved”.";
    assert!(texts.contains(&fridge), "{texts:?}");
    // Driving is open from 27 April (day 56): not on paper, four days before the sling is back.
    let desk = world.desk(&made);
    let told = crate::activities::told(&desk, &desk.parts()[0], &made.answers);
    let drive = told.iter().find(|(activity, _)| activity == "drive").map(|(_, told)| *told);
    assert_eq!(drive, Some(crate::activities::Told::NotYet));
}

/// A sheet for the fridge ends by itself where the next step is open.
#[test]
fn a_fridge_sheet_ends_where_the_next_step_is_open() {
    let (world, _) = world();
    let made = world.made("ahead", SMALL, PRACTICE, &opened_ahead(on(3, 20)), Some(on(3, 20)));
    let document = printed(world, &made).expect("the numbers are there");
    let until = "Valid from Fri 20 Mar 2026 to Sun 29 Mar 2026 (last day).";
    assert!(document.texts().contains(&until), "{:?}", document.texts());
}

/// Every later day is compared with what is printed, and not the next step alone.
#[test]
fn the_stop_line_names_the_first_stricter_day() {
    let (world, _) = world();
    let made = world.made("stale", SMALL, SOON_BACK, &opened_ahead(on(3, 20)), Some(on(3, 20)));
    let desk = world.desk(&made);
    let parts = desk.parts();
    let paper = crate::parts::on_paper(&parts, made.issued_on);
    // Printed are passive and assisted motion; active motion allows more, and from 1 May passive motion less.
    assert_eq!(paper.printed.len(), 2);
    assert_eq!(paper.later.first().map(crate::parts::Part::from), Some(on(4, 13)));
    assert_eq!(paper.stricter_from(), Some(on(5, 1)));
    let document = printed(world, &made).expect("the numbers are there");
    let stops = all(&document.blocks).into_iter().any(|block| matches!(block, Block::Paragraph { tone: Tone::Stop, text } if text.contains("From Fri 1 May 2026 your rules get stricter")));
    assert!(stops);
}

/// Every sheet for the fridge says what is not done: own strength, height, what the hand bears.
#[test]
fn a_fridge_sheet_has_limits() {
    let (world, _) = world();
    for (stage, date) in [("passive", on(3, 20)), ("assisted", on(4, 2)), ("active", on(4, 20))] {
        let made = world.made("fridge", SMALL, PRACTICE, OPENED_TO_ACTIVE, Some(date));
        let document = printed(world, &made).expect("the numbers are there");
        let start = document
            .blocks
            .iter()
            .position(|block| matches!(block, Block::Heading { text, .. } if text.starts_with("For the fridge")));
        let sheet = all(&document.blocks[start.expect("a sheet")..]);
        let limits = sheet.iter().find_map(|block| match block {
            Block::Callout { tone: Tone::Stop, items, .. } => Some(items.len()),
            _ => None,
        });
        assert!(limits.is_some_and(|limits| limits >= 3), "{stage}: {limits:?}");
        let ends = sheet.iter().any(
            |block| matches!(block, Block::Ticks { rows, .. } if rows.iter().any(|row| row.dose.contains("End: "))),
        );
        assert!(ends || stage == "active", "{stage}");
    }
}
