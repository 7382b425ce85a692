//! `mendarc prescribe`.

use diagnostic::{Diagnostic, Sink};
use prescription::Case;
use wording::Messages;

use crate::arguments::Prescribe;
use crate::command::inputs::Inputs;
use crate::command::papers;
use crate::json;
use crate::outcome::{Outcome, print, print_page};
use crate::shelf::Shelf;
use crate::view;

pub fn run(arguments: &Prescribe) -> Outcome {
    let schema = Some(json::PRESCRIPTION_SCHEMA);
    let mut inputs = Inputs::default();
    let language = inputs.language(&arguments.language);
    let on = arguments.on.as_deref().map(|on| inputs.date(on));
    let record = inputs.record(&arguments.record);
    let settings = inputs.settings(arguments.settings.as_deref());
    let openings = inputs.openings(arguments.opened.as_deref());
    let other = arguments.other.as_deref().map(|path| inputs.record(path));
    let other_settings = arguments.other_settings.as_deref().map(|path| inputs.settings(Some(path)));
    let (Some(language), Some(record), Some(settings), Some(openings)) = (language, record, settings, openings) else {
        return inputs.fail(schema, arguments.json);
    };
    if inputs.sink.has_errors()
        || matches!(on, Some(None))
        || matches!(other, Some(None))
        || matches!(other_settings, Some(None))
    {
        return inputs.fail(schema, arguments.json);
    }
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    let (on, other, other_settings) = (on.flatten(), other.flatten(), other_settings.flatten());
    let no_lines = |_: diagnostic::Span| 0;
    let title_of = |id: &str| shelf.title(id);
    let case = Case {
        protocol: arguments.protocol.as_deref(),
        openings: &openings,
        on,
        other: other.as_ref(),
        other_settings: other_settings.as_ref(),
        line_of: &no_lines,
        title_of: &title_of,
        ..Case::new(&shelf.library, &shelf.catalogue, &record, &settings)
    };
    let issued = {
        let line_of = Inputs::line_of(&inputs.sources);
        prescription::prescribe(&Case { line_of: &line_of, ..case }, &mut inputs.sink)
    };
    let Some(issued) = issued else { return inputs.fail(schema, arguments.json) };
    let hash = json::hash_of_family(&issued.protocol.id);
    if arguments.out.is_some()
        && let Err(missing) = sheets::Numbers::of(&settings)
    {
        inputs.sink.push(papers::no_number(missing, "no handout"));
    }
    if let Some(told) = arguments.out.as_ref().and_then(|_| papers::untranslated(&settings, language)) {
        inputs.sink.push(told);
    }
    let mut document = json::Prescription::new(&issued, &shelf, hash, inputs.sink.found(), &inputs.sources);
    if let Some(folder) = &arguments.out {
        let text = match serde_json::to_string_pretty(&document) {
            Ok(text) => text,
            Err(error) => {
                inputs.cannot_run(Diagnostic::error("cannot-write", error.to_string()));
                return inputs.fail(schema, arguments.json);
            }
        };
        let patient = Messages::of(language);
        let mut found = Sink::new();
        let written = {
            let line_of = Inputs::line_of(&inputs.sources);
            let case = Case { line_of: &line_of, ..case };
            papers::write(folder, &case, &patient, &shelf.messages, &text, &mut found)
        };
        inputs.sink.extend(found.into_sorted());
        if !inputs.wrote(written, folder, arguments.json) {
            return inputs.fail(schema, arguments.json);
        }
        document.say(inputs.sink.found(), &inputs.sources);
    }
    let written = if arguments.json {
        match serde_json::to_string(&document) {
            Ok(text) => print(&text),
            Err(error) => {
                inputs.cannot_run(Diagnostic::error("cannot-write", error.to_string()));
                return inputs.fail(schema, arguments.json);
            }
        }
    } else {
        print_page(&view::prescription::page(&issued, &shelf, arguments.why))
    };
    inputs.finish(written)
}
