//! Invented sheets with every kind of block.
#![allow(dead_code, reason = "each program that takes it in needs a part of it")]

use sheets::{
    Band, Block, Cell, Column, Document, Fact, Field, ListMark, Print, Reader, Shade, Side, Size, SlingRun, StageRun,
    TickRow, Tone,
};

pub fn fact(label: &str, text: &str) -> Fact {
    Fact { label: label.into(), text: text.into() }
}

pub fn field(label: &str, value: &str, hint: &str) -> Field {
    Field { label: label.into(), value: value.into(), hint: hint.into() }
}

pub fn heading(level: u8, text: &str) -> Block {
    Block::Heading { level, text: text.into() }
}

pub fn paragraph(tone: Tone, text: &str) -> Block {
    Block::Paragraph { tone, text: text.into() }
}

fn texts(of: &[&str]) -> Vec<String> {
    of.iter().map(|text| (*text).to_owned()).collect()
}

/// A sheet with these blocks for this reader.
pub fn sheet(reader: Reader, size: Size, blocks: Vec<Block>) -> Document {
    Document {
        title: "Your plan after RIGHT shoulder surgery – RIGHT arm".into(),
        language: "en",
        reader,
        size,
        side: Some(Side { side: "right", shown: "RIGHT arm".into() }),
        running_head: "Your plan after shoulder surgery".into(),
        foot: "Use this plan only while your surgeon cares for you. What your surgeon tells you comes first. \
               This sheet calls no one: in danger, call the emergency number."
            .into(),
        page_of: "Page {page} of {pages}".into(),
        blocks,
    }
}

/// One exercise.
pub fn band(order: usize) -> Band {
    Band {
        id: format!("exercise-{order}"),
        title: ["Lift with the other hand", "Turn out with a stick", "Bend the elbow"][order % 3].into(),
        purpose: if order.is_multiple_of(2) { "It keeps the joint from getting stiff.".into() } else { String::new() },
        dates: if order % 3 == 1 { "From Mon 16 Mar 2026".into() } else { String::new() },
        again: String::new(),
        start: Some(fact("Start", "Lie on your back. Hold the wrist of your sore arm with your good hand.")),
        end: Some(fact("End", "Stop when your hand is as high as your shoulder (85°). Never go past it.")),
        steps: texts(&[
            "Let the sore arm hang loose. Your good hand does all the work.",
            "Raise the arm slowly, to a count of five.",
            "Rest for a breath.",
            "Let it down just as slowly, still led by your good arm.",
        ]),
        dose: "Do this 10 times, 3 times a day.".into(),
        mistakes_title: "Look out".into(),
        mistakes: texts(&[
            "The shoulder creeps up to the ear.",
            "The sore arm helps.",
            "Letting the arm drop on the way down.",
        ]),
        stop: fact("Stop", "Stop when it hurts more than before, or when your hand gets numb."),
        picture: order.is_multiple_of(2).then(|| sheets::Drawing {
            svg: "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"40mm\" height=\"50mm\" viewBox=\"0 0 400 500\">\
                  <path d=\"M0 0H400V500H0Z\" fill=\"#ccc\"/></svg>"
                .into(),
            width_mm: 40.0,
            height_mm: 50.0,
            alt: "A person on the back raises one arm with the other hand.".into(),
        }),
    }
}

/// One exercise that stands in full elsewhere.
pub fn band_again(order: usize) -> Band {
    Band {
        purpose: String::new(),
        again: "You know this move: number 2 of step 1. Do it the same way. What counts now:".into(),
        start: None,
        steps: Vec::new(),
        mistakes: Vec::new(),
        ..band(order)
    }
}

/// The sling and the stages from surgery on.
pub fn recovery_line(stages: usize) -> Block {
    let run = |from_day, until_day, wear, shown: &str| SlingRun { from_day, until_day, wear, shown: shown.into() };
    let stage =
        |from_day, until_day, shown: &str, opened| StageRun { from_day, until_day, shown: shown.into(), opened };
    let all = vec![
        stage(0, 14, "Protection", true),
        stage(14, 42, "Passive motion", true),
        stage(42, 84, "Active motion", false),
        stage(84, 182, "Strengthening", false),
        stage(182, 365, "Return", false),
    ];
    Block::RecoveryLine {
        alt: "Sling day and night for six weeks, then less each day for two weeks.".into(),
        week: "Week".into(),
        sling_word: "Your sling".into(),
        until_day: if stages > 2 { 365 } else { 70 },
        sling: vec![
            run(0, 42, "always", "day and night"),
            run(42, 56, "weaning", "less each day"),
            run(56, 70, "none", "no sling"),
        ],
        stages: all.into_iter().take(stages).collect(),
        dates: vec![(0, "2 Mar 2026".into()), (42, "13 Apr 2026".into()), (56, "27 Apr 2026".into())],
        mark: Some((20, "today".into())),
    }
}

fn cell(text: &str, span: u8, shade: Shade) -> Cell {
    Cell { text: text.into(), span, shade, strong: false }
}

/// The limits of the days, as a clinician reads them.
pub fn limits() -> Block {
    let days =
        ["2 Mar\nday 0", "16 Mar\nday 14", "30 Mar\nday 28", "6 Apr\nday 35", "13 Apr\nday 42", "20 Apr\nday 49"];
    let mut columns = vec![Column { title: "Shoulder".into(), share: 3 }];
    columns.extend(days.iter().map(|day| Column { title: (*day).into(), share: 1 }));
    let row = |label: &str, cells: Vec<Cell>| {
        let mut row = vec![Cell { strong: true, ..cell(label, 1, Shade::None) }];
        row.extend(cells);
        row
    };
    Block::Table {
        alt: "How far each movement may go from which day on.".into(),
        print: Print::Smaller,
        columns,
        rows: vec![
            row(
                "Forward elevation, passive",
                vec![cell("no", 1, Shade::Closed), cell("≤ 90°", 3, Shade::Light), cell("free", 2, Shade::Middle)],
            ),
            row(
                "External rotation, passive",
                vec![cell("no", 1, Shade::Closed), cell("≤ 20°", 3, Shade::Light), cell("free", 2, Shade::Middle)],
            ),
            row(
                "Forward elevation, assisted",
                vec![
                    cell("no", 2, Shade::Closed),
                    cell("≤ 90° lying", 1, Shade::Light),
                    cell("≤ 90°", 1, Shade::Light),
                    cell("free", 2, Shade::Middle),
                ],
            ),
            row("Active, every movement", vec![cell("no", 4, Shade::Closed), cell("free", 2, Shade::Middle)]),
            row("Held in the hand", vec![cell("nothing", 6, Shade::Closed)]),
        ],
    }
}

/// A sheet to tick for a week.
pub fn ticks() -> Block {
    let row = |label: &str, boxes| TickRow { label: label.into(), dose: "3 times a day".into(), boxes };
    Block::Ticks {
        alt: "A row for each exercise, a column for each day.".into(),
        corner: "Exercise".into(),
        days: texts(&["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]),
        rows: vec![row("Lift with the other hand", 3), row("Turn out with a stick", 3), row("Bend the elbow", 5)],
    }
}

/// Frames of every tone.
pub fn callouts() -> Vec<Block> {
    let callout = |tone, title: &str, text: &[&str], items: &[&str]| Block::Callout {
        tone,
        title: title.into(),
        text: texts(text),
        items: texts(items),
    };
    vec![
        callout(
            Tone::Danger,
            "Danger: call 112 now",
            &["Do not wait. Do not drive yourself."],
            &["Chest pain.", "You can hardly breathe.", "You cough up blood, or you faint."],
        ),
        callout(
            Tone::Call,
            "Call us the same day",
            &[],
            &[
                "A temperature of 38.0 °C or more.",
                "The skin by the wound gets red and the red spreads.",
                "A pop, or a fall.",
            ],
        ),
        callout(
            Tone::Stop,
            "Do not",
            &[],
            &[
                "Do not lift your sore arm by its own strength.",
                "Do not hold more than a cup.",
                "Do not lean on the arm.",
            ],
        ),
        callout(
            Tone::Strong,
            "",
            &["Next step: not before Mon 13 Apr 2026, and only after your surgeon’s office says so."],
            &[],
        ),
    ]
}

fn start(blocks: &mut Vec<Block>) {
    blocks.extend([
        Block::Head {
            title: "Your plan after RIGHT shoulder surgery".into(),
            subtitle: "Day of surgery: Mon 2 Mar 2026".into(),
        },
        Block::Fields { columns: 2, fields: vec![field("Name", "", ""), field("Date of birth", "", "")] },
        paragraph(Tone::Strong, "This plan counts only when your surgeon has signed it."),
        Block::Phones {
            numbers: vec![fact("By day", "555-0100"), fact("At night", "555-0101"), fact("Emergency", "112")],
        },
    ]);
}

/// One block of every kind.
pub fn every_kind() -> Vec<Block> {
    let mut blocks = Vec::new();
    start(&mut blocks);
    blocks.extend([
        heading(1, "What is open now"),
        heading(2, "Step 1: Let it heal"),
        paragraph(Tone::Lead, "From Mon 2 Mar 2026 until Mon 13 Apr 2026."),
        recovery_line(2),
        heading(3, "You may"),
        Block::List {
            mark: ListMark::Do,
            items: texts(&["Use your hand to eat and to type.", "Take the sling off to wash."]),
        },
        heading(3, "Not yet"),
        Block::Brief {
            mark: ListMark::Dont,
            items: texts(&["Lift the arm.", "Drive a car until your surgeon says that you may.", "Swim."]),
        },
    ]);
    blocks.extend(callouts());
    blocks.extend([
        Block::PageBreak,
        heading(2, "Exercises"),
        Block::Bands { bands: (0..3).map(band).chain([band_again(3), band_again(1)]).collect() },
        heading(1, "For the fridge"),
        ticks(),
        limits(),
        recovery_line(5),
        Block::List { mark: ListMark::Number, items: texts(&["First.", "Second."]) },
        Block::List { mark: ListMark::Dot, items: texts(&["One.", "Two."]) },
        Block::List { mark: ListMark::Box, items: texts(&["Seen.", "Not seen."]) },
        Block::Facts {
            rows: vec![
                fact("Operated on", "Mon 2 Mar 2026"),
                fact("Repair", "supraspinatus, full thickness, 18 mm\ntransosseous equivalent"),
            ],
        },
        paragraph(Tone::Faint, "A remark."),
        paragraph(Tone::Danger, "Chest pain: call 112."),
        paragraph(Tone::Call, "Call the practice."),
        paragraph(Tone::Stop, "Stop when it hurts."),
        Block::Strip {
            title: "Please send back".into(),
            text: "Cut off here and send back after the visit.".into(),
            fields: vec![
                field("Date seen", "", ""),
                field("Forward elevation, passive", "", "°"),
                field("External rotation at side, passive", "", "°"),
                field("Forward elevation, active", "not before 13 Apr 2026", ""),
                field("External rotation at side, active", "not before 13 Apr 2026", ""),
                field("Pain at rest", "", "0 to 10"),
                field("Pain at night", "", "0 to 10"),
                field("Sling", "", "hours a day"),
                field("Exercises done", "", "days of the last 7"),
                field("Anything that worries you", "", "yes / no"),
            ],
        },
        Block::Together {
            blocks: vec![
                heading(2, "Signature"),
                Block::Signature {
                    text: "I have read the questions above.".into(),
                    labels: texts(&["Surgeon", "Date"]),
                },
            ],
        },
    ]);
    blocks
}

/// A handout of about ten pages.
pub fn handout() -> Document {
    let mut blocks = Vec::new();
    start(&mut blocks);
    blocks.extend([heading(1, "What is open now"), recovery_line(2)]);
    blocks.extend(callouts());
    blocks.push(Block::PageBreak);
    blocks.push(heading(1, "Your exercises"));
    blocks.push(Block::Bands { bands: (0..14).map(band).collect() });
    blocks.push(Block::PageBreak);
    blocks.push(heading(1, "For the fridge"));
    blocks.push(ticks());
    sheet(Reader::Patient, Size::A4, blocks)
}
