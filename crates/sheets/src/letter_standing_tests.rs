//! What has to be opened first, what a hold or a waiting gate stops, and what is over is never told as running.

use jiff::civil::date;
use plan::{Allowed, Bound, Wear};
use prescription::Permission;
use quantity::PostoperativeDay;

use crate::document::{Block, Document};
use crate::letter;
use crate::letter_orders::Order;
use crate::letter_world::{BACK, HELD, Made, OPENED_TO_ACTIVE, PRACTICE, SMALL, world};
use crate::limits_columns::{Days, Standing, frozen, shown};
use crate::limits_table::value_on;

fn row_of<'d>(document: &'d Document, label: &str) -> &'d str {
    let rows = document.blocks.iter().filter_map(|block| match block {
        Block::Table { rows, .. } => Some(rows),
        _ => None,
    });
    let row = rows.flatten().find(|row| row[0].text == label);
    &row.unwrap_or_else(|| panic!("{label}")).get(1).expect("a text").text
}

fn made(settings: &str, openings: &str, on: Option<jiff::civil::Date>) -> Made {
    world().0.made("of these tests", SMALL, settings, openings, on)
}

fn from(day: u16) -> Option<Permission> {
    Some(Permission::From(PostoperativeDay::new(day)))
}

/// The stages of the staged protocol open on days 14, 28, 42, 84 and 140; surgery was on 2 March 2026.
#[test]
fn an_order_is_not_before_its_day_and_once_the_stage_of_it_is_opened() {
    let small = made(PRACTICE, "", None);
    let of = |day| Order::of(&world().0.desk(&small), from(day));
    let passive = of(27);
    assert_eq!(passive, Order::NotBefore(PostoperativeDay::new(27), Some("Passive motion")));
    assert_eq!(of(13), Order::NotBefore(PostoperativeDay::new(13), None));
    assert_eq!(of(84), Order::NotBefore(PostoperativeDay::new(84), Some("Strengthening")));
    assert_eq!(Order::of(&world().0.desk(&small), None), Order::Unsaid);
    assert_eq!(Order::of(&world().0.desk(&small), Some(Permission::No)), Order::No);
}

/// The example's hold is of days 40 to 53: it ends on 25 April 2026.
#[test]
fn a_hold_or_a_go_back_stops_an_order() {
    let desk_of = |made: &Made, day| {
        let desk = world().0.desk(made);
        format!("{:?}", Order::of(&desk, from(day)))
    };
    let held = made(HELD, "", None);
    let until = format!("{:?}", Order::Held(date(2026, 4, 25)));
    assert_eq!((desk_of(&held, 40), desk_of(&held, 53)), (until.clone(), until.clone()));
    assert_eq!((desk_of(&held, 39), desk_of(&held, 54)), ("Moved".to_owned(), "Moved".to_owned()));
    // On a held day every order is stopped, whatever its day.
    let during = made(HELD, OPENED_TO_ACTIVE, Some(date(2026, 4, 15)));
    assert_eq!(desk_of(&during, 20), until);
    let back = made(BACK, "", None);
    assert_eq!((desk_of(&back, 42), desk_of(&back, 60)), ("Moved".to_owned(), "Moved".to_owned()));
}

#[test]
fn a_waiting_gate_stops_every_order_with_a_day() {
    let (world, all) = world();
    let (mut waits, mut others) = (0, 0);
    for made in all {
        let (desk, is_frozen) = (world.desk(made), frozen(&made.prescription).is_some());
        let order = Order::of(&desk, from(42));
        let is_stopped = matches!(order, Order::Waits(_) | Order::Held(_));
        assert_eq!(is_stopped || matches!(order, Order::Moved), is_frozen || !made.prescription.moved.is_empty());
        *(if is_frozen { &mut waits } else { &mut others }) += 1;
    }
    assert!(waits > 5 && others > 5, "{waits}, {others}");
}

#[test]
fn an_order_before_active_motion_says_so() {
    let early = made(&PRACTICE.replace("pool = \"day 42\"", "pool = \"day 41\""), "", None);
    let document = letter(&world().0.desk(&early));
    let orders: Vec<&str> = document
        .texts()
        .into_iter()
        .filter(|text| text.starts_with("not before ") && text.contains("inside"))
        .collect();
    assert_eq!(orders.len(), 2, "{orders:?}");
    // Manual therapy on the first day of active motion, the pool the day before.
    let is_said: Vec<bool> = orders.iter().map(|text| text.contains("earlier than active motion")).collect();
    assert_eq!(is_said, [false, true], "{orders:?}");
}

#[test]
fn no_letter_tells_an_order_as_running() {
    let (world, all) = world();
    for made in all {
        let document = letter(&world.desk(made));
        let orders = document.blocks.iter().find_map(|block| match block {
            Block::Table { columns, rows, .. } if columns[0].title == "manual therapy" => Some(&rows[0]),
            _ => None,
        });
        for place in [0, 2, 3] {
            let text = &orders.expect("the orders")[place].text;
            assert!(!text.starts_with("from "), "{}: {text}", made.name);
        }
    }
}

/// What may be worn loosely, and which column is in force, while the gate of active motion waits.
#[test]
fn a_frozen_letter_shows_what_is_in_force_first() {
    let (world, all) = world();
    let made = all.iter().find(|made| made.name == "small opened, waiting").expect("a case");
    let document = letter(&world.desk(made));
    let sling = row_of(&document, "Sling");
    let (now, planned) = sling.split_once("planned, not open: ").expect("both");
    assert!(now.starts_with("in force now: always") && !now.contains("weaning"), "{sling}");
    assert!(planned.contains("weaning, neutral, not before 13 Apr 2026"), "{sling}");
    for block in &document.blocks {
        let Block::Table { columns, rows, .. } = block else { continue };
        if !columns[0].title.starts_with("from, in") {
            continue;
        }
        assert_eq!(columns[1].title, "in force\nnow");
        assert_eq!((rows[0][1].text.as_str(), rows[1][1].text.as_str()), ("assisted", "open"));
        let [_, now, planned, _] = &rows[1][..] else { panic!("{:?}", rows[1]) };
        assert_eq!((now.span, planned.text.as_str()), (1, "planned, not open"));
    }
    let gates: Vec<&str> = document.texts().into_iter().filter(|text| text.contains("to be made")).collect();
    assert_eq!(gates.len(), 1 + 3, "active on the first page, and all three: {gates:?}");
}

/// The line of the surgeon's page and the row of the sling call nothing weaning that has to be opened first.
#[test]
fn no_sling_comes_off_before_its_stage_is_opened() {
    let (_, all) = world();
    let mut planned = 0;
    for made in all {
        let of = &made.prescription;
        let gate = of.stages.iter().find(|stage| !stage.opened).map_or(u16::MAX, |stage| stage.from_day.count());
        for run in crate::surgeon_line::sling(of, 400) {
            let has_run = run.from_day >= gate && run.wear != Wear::Always.name();
            let is_now = frozen(of).is_some_and(|today| run.until_day == today.day.count());
            assert!(!has_run || is_now || run.shown.ends_with("planned"), "{}: {run:?}", made.name);
            planned += usize::from(run.shown.ends_with("planned"));
        }
        if let Some(today) = frozen(of) {
            let day = today.day.count();
            let runs = crate::surgeon_line::sling(of, 400);
            let now = runs.iter().find(|run| run.from_day < day && day <= run.until_day).expect("a run");
            assert_eq!(now.wear, today.sling.wear.name(), "{}", made.name);
        }
    }
    assert!(planned > 20, "{planned}");
}

#[test]
fn what_is_over_has_no_column_in_the_letter() {
    let (world, all) = world();
    let mut dropped = 0;
    for made in all {
        let of = &made.prescription;
        let issued = made.issued_on;
        for shown in shown(of, Days::Ahead).iter().filter(|shown| shown.standing == Standing::Open) {
            let span = of.spans.iter().find(|span| span.from == shown.date).expect("a run of days");
            assert!(span.until > issued, "{}", made.name);
        }
        dropped += of.spans.iter().filter(|span| span.until <= issued).count();
        let document = letter(&world.desk(made));
        assert!(document.texts().iter().all(|text| *text != "over"), "{}", made.name);
    }
    assert!(dropped > 50, "{dropped}");
}

/// A stage that a go-back closes is planned again, even where it was opened before.
#[test]
fn what_a_go_back_closes_is_planned_again() {
    let ahead = made(BACK, OPENED_TO_ACTIVE, Some(date(2026, 4, 14)));
    let of = &ahead.prescription;
    let standing = |day: u16| {
        let all = shown(of, Days::All);
        all.iter().rev().find(|shown| shown.day.count() <= day).expect("a day").standing
    };
    // Back to passive on day 50: from day 64 assisted motion has to be opened again, from day 78 active motion.
    let told = [40, 43, 49, 50, 63, 64, 78].map(standing);
    use Standing::{Open, Over, Planned};
    assert_eq!(told, [Over, Open, Open, Open, Open, Planned, Planned]);
    // After the go-back, with the first gate still waiting, what it has undone is not planned any more.
    let undone = made(BACK, "", Some(date(2026, 4, 25)));
    let dates = shown(&undone.prescription, Days::Ahead).into_iter().skip(1).map(|shown| shown.day.count());
    assert_eq!(dates.min(), Some(50));
    let sling = crate::sling_words::line(&undone.prescription);
    assert_eq!(sling.matches("always").count(), 1, "{sling}");
    assert!(sling.contains("planned, not open: weaning, neutral, not before 19 May 2026 (day 78)"), "{sling}");
}

#[test]
fn the_first_line_says_that_it_is_not_valid_unsigned() {
    let (world, all) = world();
    for made in all {
        let document = letter(&world.desk(made));
        let validity = document.blocks.iter().find_map(|block| match block {
            Block::Callout { title, .. } => Some(title),
            _ => None,
        });
        assert!(validity.expect("the validity").starts_with("Not valid unsigned. "), "{}", made.name);
        let load =
            document.texts().into_iter().find(|text| text.starts_with("≤ 2.27 kg")).unwrap_or("≤ 2.27 kg (5 lb)");
        assert_eq!(load, "≤ 2.27 kg (5 lb)", "{}", made.name);
    }
}

/// The number of a criterion of motion, as a gate asks for it.
fn degrees(criterion: &str, movement: &str) -> Option<f64> {
    criterion.strip_prefix(movement)?.trim_start().split('°').next()?.parse().ok()
}

#[test]
fn no_gate_asks_for_more_than_the_day_before_it_allows() {
    use body::{Joint, Key, Mode, Movement};
    let (world, all) = world();
    let (mut compared, mut clipped) = (0, 0);
    for made in all {
        let document = letter(&world.desk(made));
        for stage in made.prescription.stages.iter().filter(|stage| stage.from_day.count() > 0) {
            let gate = document.blocks.iter().find_map(|block| match block {
                Block::Table { columns, rows, .. } if columns[0].title == "gate" => {
                    rows.iter().find(|row| row[0].text == stage.id)
                }
                _ => None,
            });
            let before = stage.from_day.count() - 1;
            let span = made.prescription.spans.iter().rfind(|span| span.from_day.count() <= before).expect("a day");
            for criterion in gate.expect("a gate")[3].text.split(" · ") {
                for (words, movement) in [
                    ("passive elevation", Movement::ForwardElevation),
                    ("passive external rotation", Movement::ExternalRotation),
                ] {
                    let Some(asked) = degrees(criterion, words) else { continue };
                    let limit = value_on(span, Key::any(Joint::Shoulder, movement, Mode::Passive)).allowed;
                    let limit = match limit {
                        Allowed::Free => f64::INFINITY,
                        Allowed::UpTo(Bound::Angle(limit)) => limit.number(),
                        other => panic!("{}: {criterion} under {other:?}", made.name),
                    };
                    assert!(asked <= limit, "{}: {criterion}, limit {limit}", made.name);
                    compared += 1;
                    clipped += usize::from(asked < 90.0 && movement == Movement::ForwardElevation);
                }
            }
        }
    }
    assert!(compared > 50 && clipped > 5, "{compared}, {clipped}");
}

/// What is asked of the other arm, whom to call, and how the words are meant stand before the strip to send back.
#[test]
fn the_first_page_says_whom_to_call_and_how_the_other_arm_is() {
    let (world, all) = world();
    for made in all {
        let document = letter(&world.desk(made));
        let until = document.blocks.iter().position(|block| matches!(block, Block::Strip { .. })).expect("a line");
        let first = Document { blocks: document.blocks[..until].to_vec(), ..document.clone() };
        let texts = first.texts().join("\n");
        for number in [&made.settings.contact.day, &made.settings.contact.night].into_iter().flatten() {
            assert!(texts.contains(number.as_str()), "{}: {number}", made.name);
        }
        for words in ["pop or fall", "what the other arm drives wholly", "Other arm", "no published source"] {
            assert!(texts.to_lowercase().contains(&words.to_lowercase()), "{}: {words}", made.name);
        }
        for caution in &made.prescription.cautions {
            assert!(texts.contains(&crate::letter_words::in_trade_words(caution)), "{}: {caution}", made.name);
        }
        let today = made.prescription.today.as_ref().expect("a day");
        let all = document.texts().join("\n");
        for line in &today.exercises {
            assert!(
                all.contains(&crate::surgeon_exercises::dose(&world.desk(made), line)),
                "{}: {}",
                made.name,
                line.id
            );
        }
    }
}

/// The day of the second load is an own choice (`staged-second-hand-load-start`); those of passive elevation were read.
#[test]
fn a_row_with_a_number_of_no_source_is_marked() {
    let small = made(PRACTICE, "", None);
    let document = letter(&world().0.desk(&small));
    assert_eq!(row_of(&document, "hand load *"), "no");
    assert_eq!(row_of(&document, "passive: elevation"), "no");
    assert!(document.texts().iter().any(|text| text.contains("* No published source")));
    assert!(document.texts().contains(&"2 times a week for 12 weeks, from ____________"));
}

/// After a tenodesis stretch into elbow extension is shut for longer: that stands above the strip.
#[test]
fn a_ban_on_stretch_of_the_elbow_is_on_the_first_page() {
    let (world, all) = world();
    let has_row = |name: &str| {
        let made = all.iter().find(|made| made.name == name).expect(name);
        let blocks = letter(&world.desk(made)).blocks;
        let first = blocks.iter().take_while(|block| !matches!(block, Block::Strip { .. }));
        let mut labels = first.filter_map(|block| match block {
            Block::Table { rows, .. } => Some(rows.iter().map(|row| row[0].text.clone()).collect::<Vec<_>>()),
            _ => None,
        });
        labels.any(|labels| labels.iter().any(|label| label.starts_with("end-range stretch: elbow extension")))
    };
    assert_eq!((has_row("tenodesis"), has_row("small")), (true, false));
}
