//! `mendarc first-days`.

use std::fmt::Write as _;

use body::Side;
use diagnostic::Diagnostic;
use jiff::civil::Date;
use quantity::PostoperativeDay;
use wording::first_days::{SECTIONS, Shape, arguments as numbers};
use wording::{Argument, Messages};

use crate::arguments::{FirstDays, SideWord};
use crate::command::inputs::Inputs;
use crate::command::prescribe::write;
use crate::json;
use crate::outcome::{Outcome, print, print_page};
use crate::view::dates;
use crate::view::paint::{HEADING, paint, wrapped};

pub fn run(arguments: &FirstDays) -> Outcome {
    let schema = Some(json::FIRST_DAYS_SCHEMA);
    let mut inputs = Inputs::default();
    let language = inputs.language(&arguments.language);
    let date = inputs.date(&arguments.date);
    let settings = inputs.settings(arguments.settings.as_deref());
    let (true, Some(date), Some(settings)) = (language, date, settings) else {
        return inputs.fail(schema, arguments.json);
    };
    if !operative::is_believable_operation(date) {
        inputs
            .sink
            .push(Diagnostic::error("impossible-date", format!("no operation is on {date}")).help("mend the date"));
        return inputs.fail(schema, arguments.json);
    }
    let (day, night) = (settings.contact.day.clone(), settings.contact.night.clone());
    let (Some(day), Some(night)) = (&day, &night) else {
        let missing = match (&day, &night) {
            (None, None) => "neither a day nor a night number is set",
            (None, _) => "no day number is set",
            _ => "no night number is set",
        };
        inputs
            .sink
            .push(Diagnostic::error("no-number-to-call", format!("{missing}, and no sheet goes out without both")).help(
            "write [contact] with day = \"…\" and night = \"…\" in the settings and name the file with `--settings`",
        ));
        return inputs.fail(schema, arguments.json);
    };
    if inputs.sink.has_errors() {
        return inputs.fail(schema, arguments.json);
    }
    let side = match arguments.side {
        SideWord::Left => Side::Left,
        SideWord::Right => Side::Right,
    };
    let messages = Messages::english();
    let told = told(date, side, day, night, &settings.clinic);
    let sections: Vec<json::SheetSection> = SECTIONS
        .iter()
        .map(|section| json::SheetSection {
            title: messages.text(section.title_id, &told),
            list: section.shape == Shape::List,
            paragraphs: section.paragraph_ids.iter().map(|id| messages.text(id, &told)).collect(),
        })
        .collect();
    let text = sheet(&sections, &messages);
    if let Some(folder) = &arguments.out
        && let Err(fault) = write(folder, "first-days.txt", &anstream::adapter::strip_str(&text).to_string())
    {
        inputs.cannot_run(fault);
        return inputs.fail(schema, arguments.json);
    }
    let written = if arguments.json {
        print(&json::first_days(date, side, sections, inputs.sink.found(), &inputs.sources))
    } else {
        print_page(&text)
    };
    inputs.finish(written)
}

/// Everything the texts want to be told.
fn told<'a>(
    date: Date,
    side: Side,
    day: &'a str,
    night: &'a str,
    clinic: &prescription::Clinic,
) -> Vec<(&'static str, Argument<'a>)> {
    let on = |days: PostoperativeDay| dates::with_weekday(days.date(date));
    let mut told = numbers();
    let first = evidence::ids::WOUND_VISIT_FROM.day();
    let last = evidence::ids::WOUND_VISIT_UNTIL.day();
    let dry = evidence::ids::WOUND_DRY_UNTIL.day();
    let (from, until) = clinic.window(date, first, last);
    told.extend([
        ("side", side.name().into()),
        ("operation_date", on(PostoperativeDay::SURGERY).into()),
        ("visit_from", dates::with_weekday(from).into()),
        ("visit_until", dates::with_weekday(until).into()),
        ("dry_until", on(dry).into()),
        ("day_number", day.into()),
        ("night_number", night.into()),
    ]);
    told
}

/// The sheet as text.
fn sheet(sections: &[json::SheetSection], messages: &Messages) -> String {
    let mut page = String::new();
    for section in sections {
        let _ = writeln!(page, "{}\n", paint(HEADING, &section.title));
        for paragraph in &section.paragraphs {
            let _ = if section.list {
                writeln!(page, "  - {}", wrapped(paragraph, 76, "    "))
            } else {
                writeln!(page, "  {}", wrapped(paragraph, 78, "  "))
            };
        }
        page.push('\n');
    }
    let _ = writeln!(page, "{}", wrapped(&messages.text(wording::cautions::LINE, &[]), 80, ""));
    page
}
