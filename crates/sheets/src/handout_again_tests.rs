//! What a handout does not tell twice: the second of two steps is read together with the first.

use jiff::civil::{Date, date};

use crate::activities::{self, Told};
use crate::document::{Band, Block};
use crate::handout::handout;
use crate::handout_tests::{LATE_BACK, all, opened_ahead};
use crate::letter_world::{Made, PRACTICE, SMALL, World, world};
use crate::parts::on_paper;
use crate::texts::Texts;

/// Plans with two steps on paper: the second begins soon, and once it is stricter.
fn in_two_steps() -> Vec<Made> {
    let of = |name: &str, record: &str, settings: &str, on: Date| {
        world().0.made(name, record, settings, &opened_ahead(on), Some(on))
    };
    let on = |name: &str, settings: &str, on: Date| of(name, SMALL, settings, on);
    let subscapularis = include_str!("../../../examples/subscapularis.toml");
    let made = vec![
        on("to passive", PRACTICE, date(2026, 3, 10)),
        on("to assisted", PRACTICE, date(2026, 3, 20)),
        on("to active", PRACTICE, date(2026, 4, 10)),
        on("to strengthening", PRACTICE, date(2026, 5, 20)),
        on("back to passive", LATE_BACK, date(2026, 6, 20)),
        // Its turn outward is let go farther from step to step.
        of("subscapularis", subscapularis, PRACTICE, date(2026, 7, 10)),
    ];
    for made in &made {
        assert_eq!(on_paper(&world().0.desk(made).parts(), made.issued_on).printed.len(), 2, "{}", made.name);
    }
    made
}

/// The bands of each step.
fn bands(world: &World, made: &Made) -> Vec<Vec<Band>> {
    let document = handout(&world.desk(made)).expect("the numbers are there");
    let bands = all(&document.blocks).into_iter().filter_map(|block| match block {
        Block::Bands { bands } => Some(bands.clone()),
        _ => None,
    });
    bands.collect()
}

/// Every exercise stands in full once; where it stands again its number leads there, and it says how often and when
/// to stop.
#[test]
fn an_exercise_stands_in_full_once() {
    let (world, made) = world();
    let (mut same, mut changed, mut above) = (0, 0, 0);
    let two = in_two_steps();
    for made in made.iter().chain(&two) {
        if made.settings.contact.day.is_none() || made.settings.contact.night.is_none() {
            continue;
        }
        let desk = world.desk(made);
        let texts = Texts::of_patient(&desk);
        let parts = desk.parts();
        let printed = on_paper(&parts, made.issued_on).printed;
        let with_bands: Vec<u16> = printed
            .iter()
            .filter(|part| part.periods.iter().any(|period| !period.exercises.is_empty()))
            .map(|part| u16::try_from(part.number).expect("a few"))
            .collect();
        let steps = bands(world, made);
        assert_eq!(steps.len(), with_bands.len(), "{}", made.name);
        let mut full: Vec<(&str, usize, usize)> = Vec::new();
        for (step, bands) in steps.iter().enumerate() {
            for (number, band) in bands.iter().enumerate() {
                assert!(!band.dose.is_empty() && !band.stop.text.is_empty(), "{}: {}", made.name, band.id);
                let known = full.iter().find(|(id, ..)| *id == band.id);
                let Some((_, of_step, place)) = known else {
                    assert!(band.again.is_empty() && band.start.is_some(), "{}: {}", made.name, band.id);
                    full.push((&band.id, step, number));
                    continue;
                };
                let number = ("number", u16::try_from(place + 1).expect("a few").into());
                let told = if *of_step == step {
                    above += 1;
                    texts.with("handout-exercise-again-here", &[number])
                } else {
                    let first = &steps[*of_step][*place];
                    let is_same = (&first.dose, &first.end) == (&band.dose, &band.end);
                    *(if is_same { &mut same } else { &mut changed }) += 1;
                    let id = if is_same { "handout-exercise-same" } else { "handout-exercise-again" };
                    texts.with(id, &[number, ("step", with_bands[*of_step].into())])
                };
                assert_eq!(band.again, told, "{}: {}", made.name, band.id);
                assert!(band.start.is_none() && band.steps.is_empty(), "{}: {}", made.name, band.id);
            }
        }
    }
    assert!(same > 20 && changed > 0 && above > 2, "{same} the same, {changed} changed, {above} above");
}

/// The answers of the first step, overwritten with what the second says is other, are those of the second.
#[test]
fn the_answers_of_two_steps_read_together() {
    let (world, _) = world();
    let (mut same, mut opened, mut shut) = (0, 0, 0);
    for made in in_two_steps() {
        let desk = world.desk(&made);
        let texts = Texts::of_patient(&desk);
        let parts = desk.parts();
        let [before, part] = on_paper(&parts, made.issued_on).printed else { panic!("{}", made.name) };
        let (earlier, rest) = desk.answers.split_at(before.periods.len());
        let answers = &rest[..part.periods.len()];
        let blocks = activities::changes(&desk, &texts, (before, earlier), (part, answers));
        let mut rows: Vec<(&str, &str)> = Vec::new();
        let mut not_yet: Vec<&str> = Vec::new();
        for block in &blocks {
            match block {
                Block::Table { rows: table, .. } => {
                    rows.extend(
                        table.iter().map(|row| (row[0].text.lines().next().expect("a name"), &row[1].text[..])),
                    );
                }
                Block::Brief { items, .. } => not_yet.extend(items.iter().map(String::as_str)),
                _ => {}
            }
        }
        let first = activities::on_paper(&desk, before, earlier);
        for (activity, really) in activities::on_paper(&desk, part, answers) {
            let name = texts.get(&desk.catalogue.get(&activity).expect("an activity").message_id());
            let (_, was) = first.iter().find(|(other, _)| *other == activity).expect("told before");
            let read = match rows.iter().find(|(row, _)| *row == name) {
                Some((_, answer)) if *answer == texts.get("handout-activities-yes") => Told::Yes,
                Some((_, answer)) if *answer == texts.get("handout-activities-ask") => Told::Ask,
                // The date is looked at where it is told.
                Some((_, answer)) => match really {
                    Told::From(from) if answer.contains(&texts.date(from)) => really,
                    _ => panic!("{}: {name}: {answer}, is {really:?}", made.name),
                },
                None if not_yet.contains(&name.as_str()) => Told::NotYet,
                None if matches!(was, Told::From(_)) => Told::Yes,
                None => *was,
            };
            // With the sling on nothing is done once none is worn.
            if read != really && desk.catalogue.get(&activity).is_some_and(|e| e.sling == exercise::SlingDuring::On) {
                assert_eq!((read, really), (Told::NotYet, Told::Yes), "{}: {name}", made.name);
                continue;
            }
            assert_eq!(read, really, "{}: {name}", made.name);
            let is_named = rows.iter().any(|(row, _)| *row == name) || not_yet.contains(&name.as_str());
            match (is_named, really) {
                (false, _) => same += 1,
                (true, Told::NotYet) => shut += 1,
                (true, _) => opened += 1,
            }
        }
    }
    assert!(same > 100 && opened > 5 && shut > 5, "{same} the same, {opened} opened, {shut} shut");
}
