//! `mendarc may`.

use exercise::Kind;
use prescription::Case;

use crate::arguments::May;
use crate::command::inputs::Inputs;
use crate::json;
use crate::outcome::{Outcome, print, print_page};
use crate::shelf::Shelf;
use crate::view;

pub fn run(arguments: &May) -> Outcome {
    let mut inputs = Inputs::default();
    if arguments.list {
        let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
        let activities: Vec<(String, String)> =
            shelf.catalogue.of(Kind::Activity).map(|entry| (entry.id.clone(), shelf.title(&entry.id))).collect();
        let written = if arguments.json {
            print(&json::activities(&activities))
        } else {
            print_page(&view::may::list(&activities, &shelf))
        };
        return inputs.finish(written);
    }
    // clap has made sure that these are there when no list is asked for.
    let (Some(activity), Some(path), Some(on)) = (&arguments.activity, &arguments.record, &arguments.on) else {
        return Outcome::CouldNotRun;
    };
    let on = inputs.date(on);
    let record = inputs.record(path);
    let settings = inputs.settings(arguments.settings.as_deref());
    let openings = inputs.openings(arguments.opened.as_deref());
    let (Some(on), Some(record), Some(settings), Some(openings)) = (on, record, settings, openings) else {
        return inputs.fail(None, arguments.json);
    };
    if inputs.sink.has_errors() {
        return inputs.fail(None, arguments.json);
    }
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    let answer = {
        let line_of = Inputs::line_of(&inputs.sources);
        let title_of = |id: &str| shelf.title(id);
        let case = Case {
            protocol: arguments.protocol.as_deref(),
            openings: &openings,
            on: Some(on),
            line_of: &line_of,
            title_of: &title_of,
            ..Case::new(&shelf.library, &shelf.catalogue, &record, &settings)
        };
        prescription::may(&case, activity, on, &mut inputs.sink)
    };
    let Some(answer) = answer else { return inputs.fail(None, arguments.json) };
    let written = if arguments.json {
        print(&json::may(&answer, inputs.sink.found(), &inputs.sources))
    } else {
        print_page(&view::may::answer(&answer, &shelf))
    };
    inputs.finish(written)
}
