//! What a handout prints of the stages that are open, and what it leaves to later paper.

use jiff::{Span, civil::Date};
use plan::Allowed;

use crate::document::{Block, Document, Tone};
use crate::handout::{handout, step_title};
use crate::letter_world::{Made, OPENED_TO_ACTIVE, PRACTICE, SMALL, World, world};
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
                assert!(days.is_none_or(|days| row.dose.ends_with(&days)), "{}: {}", made.name, row.dose);
                *(if run.line.days_per_week.is_some() { &mut some } else { &mut every }) += 1;
            }
        }
    }
    assert!(some > 5 && every > 50, "{some}, {every}");
}
