//! `mendarc compare`.

mod families;
mod papers;

use diagnostic::{Diagnostic, FileId, Sink};
use operative::Record;
use prescription::compare::{Course, Scope, Scoped};
use prescription::{Case, Settings};

use self::papers::Paper;
use crate::arguments::Compare;
use crate::command::inputs::Inputs;
use crate::json::comparison::{COMPARISON_SCHEMA, Comparison, Head};
use crate::json::stored;
use crate::outcome::{Outcome, print, print_page};
use crate::shelf::Shelf;
use crate::view;

pub fn run(arguments: &Compare) -> Outcome {
    let mut inputs = Inputs::default();
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    let Some(document) = compared(arguments, &shelf, &mut inputs) else {
        return inputs.fail(Some(COMPARISON_SCHEMA), arguments.json);
    };
    let written = if arguments.json {
        print(&document.json.to_text(inputs.sink.found(), &inputs.sources))
    } else {
        print_page(&document.page)
    };
    inputs.finish(written)
}

/// A comparison for programs and for people.
struct Document {
    json: Comparison,
    page: String,
}

fn compared(arguments: &Compare, shelf: &Shelf, inputs: &mut Inputs) -> Option<Document> {
    let settings = inputs.settings(arguments.settings.as_deref());
    let a = papers::recognize(&arguments.a, inputs);
    let b = arguments.b.as_deref().map(|path| papers::recognize(path, inputs));
    if a.is_none() || matches!(b, Some(None)) {
        // One of the two is no use; what is wrong with the other is told all the same.
        for paper in [a, b.flatten()].into_iter().flatten() {
            if let Paper::Record(file) = paper {
                let _ = inputs.record_of(file);
            }
        }
        return None;
    }
    let (settings, a) = (settings?, a?);
    let Some(b) = b else { return questions(a, &settings, arguments, shelf, inputs) };
    let b = b?;
    let found = match (a, b) {
        (Paper::Record(a), Paper::Record(b)) => records([a, b], &settings, arguments, shelf, inputs)?,
        (Paper::Prescription(a), Paper::Prescription(b)) => {
            without_options(arguments, inputs)?;
            prescriptions([a, b], inputs)?
        }
        (Paper::Protocol(a), Paper::Protocol(b)) => {
            without_options(arguments, inputs)?;
            families::protocols(a, b, shelf, inputs)?
        }
        (Paper::Family(a), Paper::Family(b)) => {
            without_settings(arguments, inputs)?;
            families::editions(a, b, arguments.protocol.as_deref(), shelf, inputs)?
        }
        (a, b) => {
            inputs.sink.push(
                Diagnostic::error("two-kinds", format!("{} and {} do not compare", a.kind(), b.kind()))
                    .fact(format!("{} is {}", arguments.a.display(), a.kind()))
                    .fact(format!("{} is {}", arguments.b.as_deref().unwrap_or(&arguments.a).display(), b.kind()))
                    .help(
                        "name two of one kind; `mendarc prescribe RECORD.toml --json` makes a prescription of a record",
                    ),
            );
            return None;
        }
    };
    Some(found.document(shelf))
}

/// What was compared and what differs.
struct Found {
    kind: &'static str,
    heads: [Head; 2],
    scoped: Vec<Scoped>,
    /// Whether both sides are the same files, letter by letter.
    same_text: bool,
}

impl Found {
    fn document(self, shelf: &Shelf) -> Document {
        let same = self.scoped.iter().all(|scoped| scoped.comparison.is_same_plan());
        let beside = self.scoped.iter().any(|scoped| !scoped.comparison.beside.is_empty());
        let note = match (same, beside) {
            (true, false) if self.same_text => "the same plan",
            (true, false) if self.kind == "records" => "the same plan; the records differ in nothing that it rests on",
            (true, false) => "the same plan; the files differ in words or sources alone",
            (true, true) => "the same plan; what is said beside it differs",
            (false, _) => "the plans differ",
        };
        let page = view::compare::page(self.kind, &self.heads, note, &self.scoped, shelf);
        let [a, b] = self.heads;
        let json = Comparison::new(self.kind, a, Some(b), note.to_owned(), same).with(&self.scoped, shelf);
        Document { json, page }
    }
}

/// Options that mean something for records alone are not silently left unread.
fn without_options(arguments: &Compare, inputs: &mut Inputs) -> Option<()> {
    if arguments.protocol.is_some() {
        inputs.cannot_run(
            Diagnostic::error("usage", "`--protocol` means nothing for these files")
                .help("it goes with two records, or with two folders"),
        );
        return None;
    }
    without_settings(arguments, inputs)
}

fn without_settings(arguments: &Compare, inputs: &mut Inputs) -> Option<()> {
    if arguments.settings.is_some() {
        inputs.cannot_run(
            Diagnostic::error("usage", "`--settings` means nothing for these files").help("it goes with records"),
        );
        return None;
    }
    Some(())
}

fn records(
    files: [FileId; 2],
    settings: &Settings,
    arguments: &Compare,
    shelf: &Shelf,
    inputs: &mut Inputs,
) -> Option<Found> {
    let [a, b] = files.map(|file| inputs.record_of(file));
    if inputs.sink.has_errors() {
        return None;
    }
    let records = [a?, b?];
    let issued = records.each_ref().map(|record| {
        let mut sink = Sink::new();
        let issued =
            with_case(record, settings, arguments, shelf, inputs, |case| prescription::prescribe(case, &mut sink));
        // What the settings lead to is told once, not for each record.
        for found in sink.into_sorted() {
            if !inputs.sink.found().contains(&found) {
                inputs.sink.push(found);
            }
        }
        issued
    });
    let [a, b] = issued;
    let issued = [a?, b?];
    let heads = [0, 1].map(|side| Head {
        file: name(files[side], inputs),
        protocol: Some(issued[side].protocol.id.clone()),
        edition: Some(issued[side].protocol.edition.clone()),
        date: Some(issued[side].operated_on.to_string()),
        side: Some(issued[side].side.name()),
    });
    let [a, b] = issued.each_ref().map(Course::of_prescription);
    let comparison = prescription::compare::compare(&a, &b);
    Some(Found {
        kind: "records",
        heads,
        scoped: vec![Scoped { scope: Scope::default(), comparison }],
        same_text: inputs.text(files[0]) == inputs.text(files[1]),
    })
}

fn with_case<T>(
    record: &Record,
    settings: &Settings,
    arguments: &Compare,
    shelf: &Shelf,
    inputs: &Inputs,
    then: impl FnOnce(&Case<'_>) -> T,
) -> T {
    let line_of = Inputs::line_of(&inputs.sources);
    let title_of = |id: &str| shelf.title(id);
    then(&Case {
        protocol: arguments.protocol.as_deref(),
        line_of: &line_of,
        title_of: &title_of,
        ..Case::new(&shelf.library, &shelf.catalogue, record, settings)
    })
}

fn prescriptions(files: [FileId; 2], inputs: &mut Inputs) -> Option<Found> {
    let texts = files.map(|file| inputs.text(file));
    let [a, b] = [0, 1].map(|side| stored::read(files[side], &texts[side], &mut inputs.sink));
    let stored = [a?, b?];
    let heads = [0, 1].map(|side| Head {
        file: name(files[side], inputs),
        protocol: Some(stored[side].protocol.clone()),
        edition: Some(stored[side].edition.clone()),
        date: Some(stored[side].operated_on.to_string()),
        side: Some(stored[side].side.name()),
    });
    let comparison = prescription::compare::compare(&stored[0].course, &stored[1].course);
    Some(Found {
        kind: "prescriptions",
        heads,
        scoped: vec![Scoped { scope: Scope::default(), comparison }],
        same_text: texts[0] == texts[1],
    })
}

/// What each answer to an open question of a record would change.
fn questions(
    paper: Paper,
    settings: &Settings,
    arguments: &Compare,
    shelf: &Shelf,
    inputs: &mut Inputs,
) -> Option<Document> {
    let Paper::Record(file) = paper else {
        inputs.sink.push(
            Diagnostic::error("two-kinds", format!("{} has no open questions", paper.kind()))
                .help("`--questions` goes with one operative record"),
        );
        return None;
    };
    let record = inputs.record_of(file)?;
    if inputs.sink.has_errors() {
        return None;
    }
    let mut sink = Sink::new();
    let found = with_case(&record, settings, arguments, shelf, inputs, |case| {
        Some((prescription::prescribe(case, &mut Sink::new())?, prescription::questions_of(case, &mut sink)?))
    });
    inputs.sink.extend(sink.into_sorted());
    let (issued, questions) = found?;
    let head = Head {
        file: name(file, inputs),
        protocol: Some(issued.protocol.id.clone()),
        edition: Some(issued.protocol.edition.clone()),
        date: Some(issued.operated_on.to_string()),
        side: Some(issued.side.name()),
    };
    let limiting = questions.iter().filter(|question| !question.blocks_signing).count();
    let note = sheets::completions(limiting, issued.completions, &shelf.messages);
    let page = view::compare::questions(&head, &note, &questions, shelf);
    let json = Comparison::new("questions", head, None, note, true).with_questions(&questions, shelf);
    Some(Document { json, page })
}

fn name(file: FileId, inputs: &Inputs) -> String {
    inputs.sources.get(file).map(|source| source.name.clone()).unwrap_or_default()
}
