use diagnostic::{FileId, Sink, Sources};

use crate::{Catalogue, read, shipped};

mod bad_files;
mod loads;
mod poses;
mod shipped_catalogue;
mod texts;

/// The shipped catalogue; its diagnostics are a failure, shown with file and line.
fn catalogue() -> Catalogue {
    let mut sources = Sources::new();
    let mut sink = Sink::new();
    let catalogue = shipped(&mut sink, |name, text| sources.add(name, text));
    let found: Vec<String> = sink
        .into_sorted()
        .iter()
        .map(|fault| {
            let place = fault.span.and_then(|span| {
                let source = sources.get(span.file)?;
                Some(format!("{}:{}", source.name, source.position(span.start).line))
            });
            format!("{} {}: {}", place.unwrap_or_default(), fault.code, fault.message)
        })
        .collect();
    assert!(found.is_empty(), "{}", found.join("\n"));
    catalogue
}

/// What reading one file finds, as `code [text under the span] help`.
fn findings(text: &str) -> (Catalogue, Vec<String>) {
    let mut sink = Sink::new();
    let catalogue = read(&[(FileId(0), text)], &mut sink);
    let found = sink
        .into_sorted()
        .iter()
        .map(|fault| {
            let place = fault.span.map_or("", |span| &text[span.start as usize..span.end as usize]);
            let place = place.lines().next().unwrap_or_default();
            format!("{} [{place}] {}", fault.code, fault.helps.join(" / "))
        })
        .collect();
    (catalogue, found)
}
