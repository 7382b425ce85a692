//! Whatever stands in the file: no panic, bounded work, and facts for every record.

use diagnostic::{FileId, Sink};
use operative::{DIMENSIONS, DimensionId, facts, healing_index};
use proptest::prelude::*;

const EXAMPLES: [&str; 7] = [
    include_str!("../../../examples/small-cuff.toml"),
    include_str!("../../../examples/large-cuff.toml"),
    include_str!("../../../examples/cuff-with-tenodesis.toml"),
    include_str!("../../../examples/sparse.toml"),
    include_str!("../../../examples/subscapularis.toml"),
    include_str!("../../../examples/left-revision.toml"),
    include_str!("../../../examples/capsular-release.toml"),
];

/// Pieces that a slip of the hand, or malice, could put anywhere.
const PIECES: [&str; 24] = [
    "",
    "\n",
    "\"",
    "=",
    "[",
    "]",
    "[[operation.tendon]]\n",
    "[operation]\n",
    "-",
    "0",
    "999999999999",
    "1e308",
    "nan",
    "\u{0}",
    "é",
    "'''",
    "{",
    "}",
    ".",
    "2026-02-29",
    "\"not repaired\"",
    "\"subscapularis\"",
    "true",
    "\"day 42\"",
];

/// Reads a text and asks everything of it that can be asked.
fn ask_everything(text: &str) {
    let mut sink = Sink::new();
    let record = operative::read(FileId(0), text, &mut sink);
    assert_eq!(record.is_none(), sink.has_errors());
    for found in sink.found() {
        let span = found.span.map(|span| (span.start as usize, span.end as usize));
        assert!(span.is_none_or(|(start, end)| start <= end && end <= text.len()), "{found:?}");
        assert!(!found.message.ends_with('.'), "{found:?}");
    }
    let Some(record) = record else { return };
    let facts = facts(&record);
    for (index, dimension) in (0..).zip(DIMENSIONS) {
        let of = DimensionId(index);
        assert!(usize::from(facts.class(of)) < dimension.classes.len(), "{}", dimension.name);
        assert!(!record.basis(of).is_empty(), "{}", dimension.name);
        let _ = record.missing(of);
    }
    let index = healing_index(&record);
    assert!(index.low <= index.high && index.high <= index.of);
    assert_eq!(index.score.is_some(), index.applies && index.missing.is_empty());
}

/// An example with pieces put in place of runs of it.
fn mutated() -> impl Strategy<Value = String> {
    let edit = (any::<prop::sample::Index>(), 0_usize..40, prop::sample::select(&PIECES[..]));
    (prop::sample::select(&EXAMPLES[..]), prop::collection::vec(edit, 1..6)).prop_map(|(example, edits)| {
        let mut text: Vec<char> = example.chars().collect();
        for (at, cut, piece) in edits {
            let at = at.index(text.len() + 1);
            let end = (at + cut).min(text.len());
            text.splice(at..end, piece.chars());
        }
        text.into_iter().collect()
    })
}

/// An example with one value put in place of another of its lines, so that most still parse.
fn revalued() -> impl Strategy<Value = String> {
    let edit = (any::<prop::sample::Index>(), any::<prop::sample::Index>());
    (prop::sample::select(&EXAMPLES[..]), prop::collection::vec(edit, 1..4)).prop_map(|(example, edits)| {
        let mut lines: Vec<String> = example.lines().map(str::to_owned).collect();
        for (target, source) in edits {
            let (target, source) = (target.index(lines.len()), source.index(lines.len()));
            let value = lines[source].split_once(" = ").map(|(_, value)| value.to_owned());
            let key = lines[target].split_once(" = ").map(|(key, _)| key.to_owned());
            match (key, value) {
                (Some(key), Some(value)) => lines[target] = format!("{key} = {value}"),
                _ => drop(lines.remove(target)),
            }
        }
        lines.join("\n")
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_mutated_record_never_panics(text in mutated()) {
        ask_everything(&text);
    }

    #[test]
    fn a_record_with_other_values_never_panics(text in revalued()) {
        ask_everything(&text);
    }

    #[test]
    fn any_text_at_all_never_panics(text in "\\PC{0,200}") {
        ask_everything(&text);
    }
}

#[test]
fn the_examples_themselves_are_read() {
    for text in EXAMPLES {
        ask_everything(text);
        let mut sink = Sink::new();
        assert!(operative::read(FileId(0), text, &mut sink).is_some(), "{:?}", sink.found());
    }
}

/// Leaving out a line of the record never makes a class milder: unknown is never the mildest.
#[test]
fn leaving_out_a_fact_never_makes_a_class_milder() {
    let mut compared = 0;
    for example in EXAMPLES {
        let whole = operative::read(FileId(0), example, &mut Sink::new()).map(|record| facts(&record));
        let Some(whole) = whole else { panic!("an example that cannot be read") };
        for left_out in 0..example.lines().count() {
            let line = example.lines().nth(left_out).unwrap_or_default();
            if !line.contains(" = ") || line.starts_with("repair = ") {
                continue;
            }
            let text: Vec<_> = example.lines().enumerate().filter(|(at, _)| *at != left_out).map(|(_, l)| l).collect();
            let Some(record) = operative::read(FileId(0), &text.join("\n"), &mut Sink::new()) else { continue };
            let less = facts(&record);
            for (index, dimension) in (0..).zip(DIMENSIONS) {
                let of = DimensionId(index);
                if less.class(of) == whole.class(of) || line.starts_with("other = ") {
                    continue;
                }
                let answered = ["slower", "stiff shoulder", "beyond delayed"].contains(&dimension.name);
                let milder = dimension.classes[usize::from(less.class(of))].rank
                    < dimension.classes[usize::from(whole.class(of))].rank;
                assert!(!milder || answered, "{} without `{line}`", dimension.name);
                compared += 1;
            }
        }
    }
    assert!(compared > 60, "only {compared} classes changed");
}
