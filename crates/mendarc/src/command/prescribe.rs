//! `mendarc prescribe`.

use std::path::Path;

use diagnostic::Diagnostic;
use prescription::Case;

use crate::arguments::Prescribe;
use crate::command::inputs::Inputs;
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
    let (true, Some(record), Some(settings), Some(openings)) = (language, record, settings, openings) else {
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
    let issued = {
        let line_of = Inputs::line_of(&inputs.sources);
        let case = Case {
            protocol: arguments.protocol.as_deref(),
            openings: &openings,
            on,
            other: other.as_ref(),
            other_settings: other_settings.as_ref(),
            line_of: &line_of,
            ..Case::new(&shelf.library, &shelf.catalogue, &record, &settings)
        };
        prescription::prescribe(&case, &mut inputs.sink)
    };
    let Some(issued) = issued else { return inputs.fail(schema, arguments.json) };
    let hash = json::hash_of_family(&issued.protocol.id);
    let document = json::Prescription::new(&issued, &shelf, hash, inputs.sink.found(), &inputs.sources);
    if let Some(folder) = &arguments.out {
        let text = match serde_json::to_string_pretty(&document) {
            Ok(text) => text,
            Err(error) => {
                inputs.cannot_run(Diagnostic::error("cannot-write", error.to_string()));
                return inputs.fail(schema, arguments.json);
            }
        };
        if let Err(fault) = write(folder, "prescription.json", &text) {
            inputs.cannot_run(fault);
            return inputs.fail(schema, arguments.json);
        }
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

/// Writes a file so that nobody ever sees half of it: beside its place first, then in one step into it.
pub(super) fn write(folder: &Path, name: &str, text: &str) -> Result<(), Diagnostic> {
    let fault = |error: std::io::Error| {
        Diagnostic::error("cannot-write", format!("cannot write {}: {error}", folder.join(name).display()))
    };
    if folder.exists() && !folder.is_dir() {
        return Err(Diagnostic::error(
            "cannot-write",
            format!("{} is a file, and `--out` names a folder", folder.display()),
        ));
    }
    std::fs::create_dir_all(folder).map_err(fault)?;
    let unfinished = folder.join(format!(".{name}.{}", std::process::id()));
    let written = std::fs::write(&unfinished, text).and_then(|()| std::fs::rename(&unfinished, folder.join(name)));
    written.map_err(|error| {
        // Nothing half-written stays behind; that this may fail as well changes nothing.
        let _ = std::fs::remove_file(&unfinished);
        fault(error)
    })
}
