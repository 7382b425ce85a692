//! `mendarc first-days`.

use std::fmt::Write as _;

use body::Side;
use diagnostic::Diagnostic;
use wording::Messages;
use wording::first_days::Shape;

use crate::arguments::FirstDays;
use crate::command::inputs::Inputs;
use crate::command::papers;
use crate::folder::Folder;
use crate::json;
use crate::outcome::{Outcome, print, print_page};
use crate::shelf::Shelf;
use crate::view::paint::{HEADING, paint, wrapped};

pub fn run(arguments: &FirstDays) -> Outcome {
    let schema = Some(json::FIRST_DAYS_SCHEMA);
    let mut inputs = Inputs::default();
    let language = inputs.language(&arguments.language);
    let date = inputs.date(&arguments.date);
    let settings = inputs.settings(arguments.settings.as_deref());
    let (Some(language), Some(date), Some(settings)) = (language, date, settings) else {
        return inputs.fail(schema, arguments.json);
    };
    if !operative::is_believable_operation(date) {
        inputs
            .sink
            .push(Diagnostic::error("impossible-date", format!("no operation is on {date}")).help("mend the date"));
        return inputs.fail(schema, arguments.json);
    }
    let side = Side::from(arguments.side);
    let messages = Messages::of(language);
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    if let Some(told) = papers::untranslated(&settings, language) {
        inputs.sink.push(told);
    }
    let made = sheets::first_days(date, side, &settings, &shelf.catalogue, &messages)
        .and_then(|document| Ok((document, sheets::first_days_sections(date, side, &settings, &messages)?)));
    let (document, told) = match made {
        Ok(made) => made,
        Err(missing) => {
            inputs.sink.push(papers::no_number(missing, "no sheet"));
            return inputs.fail(schema, arguments.json);
        }
    };
    if inputs.sink.has_errors() {
        return inputs.fail(schema, arguments.json);
    }
    let sections: Vec<json::SheetSection> = told
        .into_iter()
        .map(|section| json::SheetSection {
            title: section.title,
            list: section.shape == Shape::List,
            paragraphs: section.own.into_iter().chain(section.paragraphs).collect(),
        })
        .collect();
    let text = sheet(&sections, &messages);
    if let Some(folder) = &arguments.out {
        let written = Folder::open(folder).and_then(|mut folder| {
            folder.put("first-days.txt", anstream::adapter::strip_str(&text).to_string().as_bytes())?;
            folder.put("first-days.pdf", &papers::pdf("first-days.pdf", &document)?)?;
            folder.finish()
        });
        if !inputs.wrote(written, folder, arguments.json) {
            return inputs.fail(schema, arguments.json);
        }
    }
    let written = if arguments.json {
        print(&json::first_days(date, side, sections, inputs.sink.found(), &inputs.sources))
    } else {
        print_page(&text)
    };
    inputs.finish(written)
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
