//! What is printed for clinicians is what the prescription says, on every day.

use body::{ALL_KEYS, Joint, Key, Mode, Movement, Position};
use plan::Allowed;

use crate::document::{Block, Cell, Column, Document, Field, Shade};
use crate::letter_world::{Made, dates_in, dates_of, world};
use crate::limits_table::{value_in, value_on};
use crate::limits_words;
use crate::{letter, surgeon_page};

const DIGEST: &str = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

fn tables(document: &Document) -> Vec<(&Vec<Column>, &Vec<Vec<Cell>>)> {
    document
        .blocks
        .iter()
        .filter_map(|block| match block {
            Block::Table { columns, rows, .. } => Some((columns, rows)),
            _ => None,
        })
        .collect()
}

/// Reads the labels of a table back: every key of each row. "All other movements" are those that no other row of
/// the same mode has.
fn keys_of_rows(rows: &[Vec<Cell>]) -> Vec<Vec<Key>> {
    const OTHER: &str = "all other movements";
    let whole = |label: &str| keys_of(&label.replace(OTHER, "all movements"));
    let labels = || rows.iter().map(|row| row[0].text.as_str());
    let named: Vec<Key> = labels().filter(|label| !label.contains(OTHER)).flat_map(keys_of).collect();
    labels()
        .map(|label| {
            let keys = whole(label);
            let is_other = label.contains(OTHER);
            keys.into_iter().filter(|key| !(is_other && named.contains(key))).collect()
        })
        .collect()
}

/// Reads the label of a row back: every key it speaks of.
fn keys_of(label: &str) -> Vec<Key> {
    let load = |movement| vec![Key::any(Joint::WholeArm, movement, Mode::Resisted)];
    let label = label.trim_end_matches(crate::limits_table::NO_SOURCE);
    match label {
        "hand load" => return load(Movement::HandLoad),
        "overhead load" => return load(Movement::OverheadLoad),
        "weight through the arm" => return load(Movement::WeightThroughTheArm),
        _ => {}
    }
    let (modes, movements) = label.split_once(": ").expect("modes and movements");
    let mut position = Position::Any;
    let modes: Vec<Mode> = modes
        .replace("passive to active", "passive, assisted, active")
        .split(", ")
        .map(|word| {
            let word = match word.split_once(" (") {
                Some((word, "at side)")) => {
                    position = Position::AtSide;
                    word
                }
                Some((word, "other positions)")) => word,
                Some((_, other)) => panic!("{other}"),
                None => word,
            };
            if word == "assisted" { Mode::ActiveAssisted } else { Mode::named(word).expect(word) }
        })
        .collect();
    let mut keys = Vec::new();
    for part in movements.split("; ") {
        let joints = [
            ("blade", Joint::Scapula),
            ("elbow", Joint::Elbow),
            ("forearm", Joint::Forearm),
            ("wrist", Joint::Wrist),
            ("hand", Joint::Hand),
        ];
        let found = joints.into_iter().find_map(|(word, joint)| match part.strip_prefix(word)? {
            "" => Some((joint, "all")),
            rest => rest.strip_prefix(' ').map(|rest| (joint, rest)),
        });
        let (joint, words) = found.unwrap_or((Joint::Shoulder, part));
        for word in words.split(", ") {
            let movements: Vec<Movement> = match word {
                "all movements" | "all" => ALL_KEYS
                    .iter()
                    .filter(|key| key.joint == joint && key.movement != Movement::InwardTurnAgainstGravity)
                    .filter(|key| !(joint == Joint::Hand && key.movement == Movement::Squeeze))
                    .map(|key| key.movement)
                    .collect(),
                "elevation" => vec![Movement::ForwardElevation, Movement::ScapularPlaneElevation],
                "rotation" => vec![Movement::ExternalRotation, Movement::InternalRotation],
                "cross-body" => vec![Movement::HorizontalAdduction],
                "behind the back" => vec![Movement::HandBehindBack],
                other => vec![Movement::named(other).expect(other)],
            };
            for movement in movements {
                keys.extend(modes.iter().map(|&mode| Key { joint, movement, position, mode }));
            }
        }
    }
    keys.sort();
    keys.dedup();
    keys
}

/// A table of the box: the days of its columns, and whether the first one is what is in force now.
struct BoxPart<'d> {
    has_now: bool,
    starts: Vec<u16>,
    columns: usize,
    rows: &'d [Vec<Cell>],
}

fn parts_of_box<'d>(made: &Made, document: &'d Document) -> Vec<BoxPart<'d>> {
    let boxes = tables(document).into_iter().filter(|(columns, _)| columns[0].title.starts_with("from, in"));
    let parts = boxes.map(|(columns, rows)| {
        let has_now = columns[1].title == "in force\nnow";
        let days = columns[1..columns.len() - 1].iter().skip(usize::from(has_now));
        let starts = days.map(|column| {
            let day = column.title.rsplit_once("day ").expect("a day").1.parse().expect("a number");
            let date = quantity::PostoperativeDay::new(day).date(made.prescription.operated_on);
            let shown = wording::dates::day_and_month(date, wording::Language::English);
            // While a gate waits, no day stands alone over what is not opened.
            let planned = crate::limits_columns::are_planned(&made.prescription);
            let mut spans = made.prescription.spans.iter().zip(planned);
            let is_planned = spans.any(|(span, is_planned)| is_planned && span.from_day.count() == day);
            let is_frozen = crate::limits_columns::frozen(&made.prescription).is_some();
            let head = if is_frozen && is_planned { format!("once opened\nnot before {shown}") } else { shown };
            assert!(column.title.starts_with(&head), "{}: {} is {head}", made.name, column.title);
            day
        });
        BoxPart { has_now, starts: starts.collect(), columns: columns.len(), rows: &rows[2..] }
    });
    parts.collect()
}

/// For each day of the plan and each row, the cell that stands over that day; what is in force while a gate waits
/// stands in the first column.
fn check_box(made: &Made, document: &Document, from: u16) -> usize {
    let of = &made.prescription;
    let frozen = crate::limits_columns::frozen(of);
    let parts = parts_of_box(made, document);
    assert!(!parts.is_empty(), "{}", made.name);
    let begins = |place: usize| place == 0 || parts[place].starts[0] <= parts[place - 1].starts[0];
    let mut compared = 0;
    for (place, part) in parts.iter().enumerate() {
        assert_eq!(part.has_now, begins(place) && frozen.is_some(), "{}", made.name);
        if begins(place) && frozen.is_none() {
            assert!(part.starts[0] <= from, "{}: from day {}", made.name, part.starts[0]);
        }
        let next = parts.get(place + 1).filter(|_| !begins(place + 1));
        let end = next.map_or(366, |next| next.starts[0]);
        for (row, keys) in part.rows.iter().zip(keys_of_rows(part.rows)) {
            let spans: usize = row.iter().map(|cell| usize::from(cell.span)).sum();
            assert_eq!(spans, part.columns, "{}: {}", made.name, row[0].text);
            let cells: Vec<&Cell> =
                row[1..row.len() - 1].iter().flat_map(|cell| vec![cell; usize::from(cell.span)]).collect();
            for key in keys {
                assert!(key.exists(), "{}: {} gives {key}", made.name, row[0].text);
                let mut compare = |cell: &Cell, value: crate::limits_table::Value, what: &str| {
                    assert_eq!(cell.text, limits_words::value(value), "{}: {key} on {what}", made.name);
                    assert_eq!(cell.shade == Shade::Closed, value.allowed == Allowed::No, "{}: {key}", made.name);
                    compared += 1;
                };
                if let Some(today) = frozen.filter(|_| part.has_now) {
                    compare(cells[0], value_in(&today.limits, key), "the day of issue");
                }
                for day in part.starts[0]..end {
                    let Some(span) = of.spans.iter().find(|s| s.from_day.count() <= day && day < s.until_day.count())
                    else {
                        continue;
                    };
                    let column = part.starts.partition_point(|&start| start <= day) - 1;
                    compare(cells[column + usize::from(part.has_now)], value_on(span, key), &format!("day {day}"));
                }
            }
        }
    }
    // Nothing is left out: every key of the prescription stands in one row, and only in one.
    let firsts = parts.iter().enumerate().filter(|(place, _)| begins(*place)).map(|(_, part)| part.rows);
    let mut keys: Vec<Key> = firsts.flat_map(keys_of_rows).flatten().collect();
    keys.sort();
    let many = keys.len();
    keys.dedup();
    assert_eq!(keys.len(), many, "{}: a key stands twice", made.name);
    for row in of.spans.iter().flat_map(|span| &span.limits) {
        let told = if row.key.movement == Movement::InwardTurnAgainstGravity && !keys.contains(&row.key) {
            Key::any(Joint::Shoulder, Movement::InternalRotation, Mode::Active)
        } else {
            row.key
        };
        assert!(keys.contains(&told), "{}: {} is in no row", made.name, row.key);
    }
    compared
}

#[test]
fn every_cell_of_the_box_is_the_limit_of_its_days() {
    let (world, all) = world();
    let mut compared = 0;
    for made in all {
        let issued = quantity::PostoperativeDay::of(made.issued_on, made.prescription.operated_on).expect("a day");
        compared += check_box(made, &letter(&world.desk(made)), issued.count());
        let of_all_days = check_box(made, &surgeon_page(&world.desk(made), DIGEST), 0);
        assert!(of_all_days > 20_000, "{}: only {of_all_days}", made.name);
    }
    assert!(compared > 500_000, "only {compared}");
}

#[test]
fn every_date_is_one_of_the_prescription() {
    let (world, all) = world();
    for made in all {
        let known = dates_of(made);
        for document in [letter(&world.desk(made)), surgeon_page(&world.desk(made), DIGEST)] {
            let shown = dates_in(&document.texts());
            assert!(shown.len() > 8, "{}: {}", made.name, shown.len());
            for date in shown {
                assert!(known.contains(&date), "{}: {date} in {}", made.name, document.title);
            }
        }
    }
}

fn strip_of(document: &Document) -> &[Field] {
    let strip = document.blocks.iter().find_map(|block| match block {
        Block::Strip { fields, .. } => Some(fields),
        _ => None,
    });
    strip.expect("a strip")
}

/// No line of the strip asks for what is not allowed on the day from which it may be filled in, nor later
/// while the letter is valid.
#[test]
fn the_strip_asks_for_nothing_that_is_not_allowed() {
    let (world, all) = world();
    let tests = [
        (1, "forward elevation", Mode::Passive),
        (2, "external rotation", Mode::Passive),
        (3, "forward elevation", Mode::Active),
        (4, "external rotation", Mode::Active),
    ];
    let (mut open, mut shut) = (0, 0);
    for made in all {
        let document = letter(&world.desk(made));
        let fields = strip_of(&document);
        assert_eq!(fields.len(), 10, "{}", made.name);
        let of = &made.prescription;
        let gate = of.stages.iter().find(|stage| !stage.opened).map(|stage| stage.from);
        for (place, movement, mode) in tests {
            let key = Key::any(Joint::Shoulder, Movement::named(movement).expect(movement), mode);
            let field = &fields[place];
            if field.value.is_empty() {
                open += 1;
                let shown = &dates_in(&[&field.hint])[0];
                let span = of.spans.iter().rev().find(|span| {
                    crate::limits_words::short(span.from) == *shown
                        || (span.from <= made.issued_on && crate::limits_words::short(made.issued_on) == *shown)
                });
                let span = span.unwrap_or_else(|| panic!("{}: {shown}", made.name));
                let frozen = of.today.as_ref().filter(|today| today.basis == plan::TodayBasis::Frozen);
                let value = frozen.map_or_else(|| value_on(span, key), |today| value_in(&today.limits, key));
                assert_ne!(value.allowed, Allowed::No, "{}: {key} from {shown}", made.name);
                if frozen.is_none() {
                    assert!(gate.is_none_or(|gate| span.from < gate), "{}: {key} after {gate:?}", made.name);
                }
            } else {
                shut += 1;
            }
        }
    }
    assert!(open > 20 && shut > 20, "{open} open, {shut} shut");
}

#[test]
fn every_number_of_a_reason_is_in_the_list() {
    let (world, all) = world();
    for made in all {
        for document in [letter(&world.desk(made)), surgeon_page(&world.desk(made), DIGEST)] {
            let tables = tables(&document);
            let of = |first: &str, title: &str| {
                let found = tables.iter().find(|(columns, _)| columns[0].title == first && columns[1].title == title);
                found.unwrap_or_else(|| panic!("{}: {title}", made.name)).1
            };
            let (list, evidence) = (of("no.", "reason (rule)"), of("no.", "value"));
            let numbers: Vec<usize> = list.iter().map(|row| row[0].text.parse().expect("a number")).collect();
            assert_eq!(numbers, (1..=list.len()).collect::<Vec<_>>(), "{}", made.name);
            for number in list.iter().flat_map(|row| row[3].text.split([',', '–', ' '])).filter(|part| !part.is_empty())
            {
                let entry = evidence.iter().find(|row| row[0].text == number);
                let entry = entry.unwrap_or_else(|| panic!("{}: {number}", made.name));
                let known = evidence::entry(&entry[4].text).expect("an entry");
                assert_eq!(known.how_known.mark().is_some(), entry[3].text.starts_with('['), "{}", known.id);
                assert!(!entry[3].text.is_empty(), "{}: {}", made.name, known.id);
            }
            let rules: Vec<&str> = list.iter().map(|row| row[1].text.as_str()).collect();
            assert!(rules.iter().all(|rule| !rule.is_empty()), "{}", made.name);
            let mut referred = 0;
            for (columns, rows) in &tables {
                if columns.last().is_none_or(|column| column.title != "why") {
                    continue;
                }
                for text in rows.iter().filter_map(|row| row.last()).map(|cell| &cell.text) {
                    for number in text.split([',', '–', ' ']).filter(|part| !part.is_empty()) {
                        let list = if number.starts_with('E') { evidence } else { list };
                        assert!(list.iter().any(|row| row[0].text == number), "{}: {text}", made.name);
                        referred += 1;
                    }
                }
            }
            assert!(referred > 10, "{}: {referred}", made.name);
        }
    }
}

/// The page shows that it can't be signed exactly where a question blocks it, and the digest in eight groups of eight.
#[test]
fn a_blocked_page_says_so() {
    let (world, all) = world();
    let (mut blocked, mut free) = (0, 0);
    let sentence = world.messages.text("surgeon-blocked", &[]);
    for made in all {
        let document = surgeon_page(&world.desk(made), DIGEST);
        let texts = document.texts();
        let is_blocked = made.prescription.questions.iter().any(|question| question.changes.is_empty());
        assert_eq!(texts.contains(&sentence.as_str()), is_blocked, "{}", made.name);
        *(if is_blocked { &mut blocked } else { &mut free }) += 1;
        let groups = texts.iter().find(|text| text.starts_with("01234567 89abcdef ")).expect("the digest");
        assert_eq!((groups.split(' ').count(), groups.replace(' ', "")), (8, DIGEST.to_owned()));
    }
    assert!(blocked > 0 && free > 0);
}

#[test]
fn no_text_is_missing() {
    let (world, all) = world();
    for made in all {
        for document in
            [letter(&world.desk(made)), surgeon_page(&world.desk(made), DIGEST), crate::work_note(&world.desk(made))]
        {
            for text in document.texts().into_iter().chain([document.foot.as_str(), &document.running_head]) {
                assert!(!text.contains(['‹', '{', '}']), "{}: {text}", made.name);
            }
        }
    }
}
