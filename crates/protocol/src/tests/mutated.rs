//! Shipped files with random changes: whatever is read, nothing panics.

use diagnostic::{FileId, Sink};
use operative::{DIMENSION_COUNT, Facts, SafeArcs};
use plan::LaneId;
use proptest::prelude::*;
use proptest::sample::Index;

use super::catalogue;
use crate::{Choices, Compiled, Library, Requested, SHIPPED, resolve};

/// One change to a text.
#[derive(Debug, Clone)]
enum Change {
    Drop(Index),
    Double(Index),
    Swap(Index, Index),
    Replace(Index, &'static str),
    Quoted(Index, Index),
    Cut(Index),
    Put(Index, char),
}

fn a_change() -> impl Strategy<Value = Change> {
    let values = vec![
        "\"day 0\"",
        "\"day 3650\"",
        "\"day 65535\"",
        "\"-180 deg\"",
        "\"0 kg\"",
        "\"300 kg\"",
        "\"\"",
        "0",
        "-1",
        "9223372036854775807",
        "nan",
        "true",
        "[]",
        "{}",
        "\"free\"",
        "\"no\"",
        "2026-02-30",
    ];
    prop_oneof![
        any::<Index>().prop_map(Change::Drop),
        any::<Index>().prop_map(Change::Double),
        any::<(Index, Index)>().prop_map(|(a, b)| Change::Swap(a, b)),
        (any::<Index>(), prop::sample::select(values)).prop_map(|(at, value)| Change::Replace(at, value)),
        any::<(Index, Index)>().prop_map(|(a, b)| Change::Quoted(a, b)),
        any::<Index>().prop_map(Change::Cut),
        any::<(Index, char)>().prop_map(|(at, letter)| Change::Put(at, letter)),
    ]
}

/// Where quoted texts stand.
fn quoted(text: &str) -> Vec<std::ops::Range<usize>> {
    let quotes: Vec<usize> = text.match_indices('"').map(|(at, _)| at).collect();
    quotes.chunks_exact(2).map(|pair| pair[0]..pair[1] + 1).collect()
}

fn changed(text: &str, change: &Change) -> String {
    let mut lines: Vec<&str> = text.lines().collect();
    let quotes = quoted(text);
    if lines.is_empty() || quotes.is_empty() {
        return text.to_owned();
    }
    match change {
        Change::Drop(at) => drop(lines.remove(at.index(lines.len()))),
        Change::Double(at) => {
            let at = at.index(lines.len());
            lines.insert(at, lines[at]);
        }
        Change::Swap(a, b) => {
            let count = lines.len();
            lines.swap(a.index(count), b.index(count));
        }
        Change::Replace(at, value) => {
            let mut text = text.to_owned();
            text.replace_range(quotes[at.index(quotes.len())].clone(), value);
            return text;
        }
        Change::Quoted(a, b) => {
            let other = text[quotes[b.index(quotes.len())].clone()].to_owned();
            let mut text = text.to_owned();
            text.replace_range(quotes[a.index(quotes.len())].clone(), &other);
            return text;
        }
        Change::Cut(at) => lines.truncate(at.index(lines.len())),
        Change::Put(at, letter) => {
            let mut letters: Vec<char> = text.chars().collect();
            letters.insert(at.index(letters.len()), *letter);
            return letters.into_iter().collect();
        }
    }
    lines.join("\n")
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(96) })]

    #[test]
    fn changed_files_never_panic(file in 0..SHIPPED.len(), changes in prop::collection::vec(a_change(), 1..4)) {
        let text = changes.iter().fold(SHIPPED[file].1.to_owned(), |text, change| changed(&text, change));
        let mut files: Vec<(&str, FileId, &str)> = (0..).zip(SHIPPED).map(|(id, (name, text))| (*name, FileId(id), *text)).collect();
        files[file].2 = &text;
        let mut sink = Sink::new();
        let library = Library::read(&files, &mut sink);
        library.check(&catalogue(), &mut sink);
        for span in sink.found().iter().filter_map(|fault| fault.span) {
            let length = files[usize::from(span.file.0)].2.len();
            prop_assert!(span.start <= span.end && span.end as usize <= length, "{span:?} of {length}");
        }
        if sink.has_errors() {
            return Ok(());
        }
        for family in &library.families {
            let compiled = Compiled::new(family, &Choices::of(family), &[]);
            let facts = Facts { classes: [1; DIMENSION_COUNT], safe_arcs: SafeArcs::default() };
            for place in 0..family.protocols.len() {
                let plan = resolve(&compiled, &facts, Requested(Some(place as u8)));
                for lane in (0_u8..).map(LaneId).take(plan.grid.keys.len()) {
                    prop_assert!(!compiled.binding(&plan, &facts, lane, 0).is_empty());
                }
            }
        }
    }
}
