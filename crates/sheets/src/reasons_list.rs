//! Reasons, each once and numbered, with their place in the record and their evidence.

use evidence::{Entry, Unit};
use plan::{Reason, RecordPlace};

use crate::document::{Block, Column, Print};
use crate::limits_table::plain;

/// Reasons that a page refers to by number.
#[derive(Debug, Clone, Default)]
pub(crate) struct ReasonsList {
    reasons: Vec<Reason>,
}

impl ReasonsList {
    /// The number of a reason, from 1; one that is known gets no second number.
    ///
    /// # Method
    /// A rule that gives several steps has one number: its evidence is taken together. Where a rule
    /// has no evidence, what it says tells it from others of its name.
    pub fn number(&mut self, reason: &Reason) -> usize {
        let known = self.reasons.iter().position(|known| {
            known.rule == reason.rule
                && known.record == reason.record
                && (known.text == reason.text || !(known.evidence.is_empty() && reason.evidence.is_empty()))
        });
        let Some(place) = known else {
            self.reasons.push(reason.clone());
            return self.reasons.len();
        };
        let known = &mut self.reasons[place];
        for entry in &reason.evidence {
            if known.evidence.iter().all(|other| other.id != entry.id) {
                known.evidence.push(entry);
            }
        }
        // "…: not before day 14" is the same rule with the day it opens: the longer one tells more.
        if reason.text.len() > known.text.len() {
            known.text.clone_from(&reason.text);
        }
        place + 1
    }

    /// "1, 3–5" for some reasons.
    pub fn refer<'r>(&mut self, reasons: impl IntoIterator<Item = &'r Reason>) -> String {
        let mut numbers: Vec<usize> = reasons.into_iter().map(|reason| self.number(reason)).collect();
        numbers.sort_unstable();
        numbers.dedup();
        let mut runs: Vec<(usize, usize)> = Vec::new();
        for number in numbers {
            match runs.last_mut() {
                Some((_, last)) if *last + 1 == number => *last = number,
                _ => runs.push((number, number)),
            }
        }
        let runs: Vec<String> = runs
            .into_iter()
            .map(|(first, last)| match last - first {
                0 => first.to_string(),
                1 => format!("{first}, {last}"),
                _ => format!("{first}–{last}"),
            })
            .collect();
        runs.join(", ")
    }

    /// Every entry of evidence that a reason names, each once.
    pub fn entries(&self) -> Vec<&'static Entry> {
        let mut entries: Vec<&'static Entry> = Vec::new();
        for entry in self.reasons.iter().flat_map(|reason| &reason.evidence) {
            if entries.iter().all(|known| known.id != entry.id) {
                entries.push(entry);
            }
        }
        entries
    }

    /// The table of reasons.
    pub fn block(&self, alt: String) -> Block {
        let columns = vec![
            Column { title: "no.".into(), share: 0 },
            Column { title: "rule".into(), share: 3 }, // not medical: widths
            Column { title: "found in the record".into(), share: 2 },
            Column { title: "evidence".into(), share: 4 }, // not medical: widths
        ];
        let mut found: Vec<(usize, &[RecordPlace])> = Vec::new();
        let mut rows = Vec::new();
        for (number, reason) in (1..).zip(&self.reasons) {
            let known = found.iter().find(|(_, places)| *places == reason.record.as_slice());
            let record = match known {
                _ if reason.record.is_empty() => "for every record".into(),
                Some((first, _)) => format!("as for {first}"),
                None => {
                    found.push((number, &reason.record));
                    places(&reason.record)
                }
            };
            let evidence: Vec<String> = reason.evidence.iter().map(|entry| sourced(entry)).collect();
            rows.push(vec![
                plain(number.to_string()),
                plain(format!("{} ({})", reason.text, reason.rule)),
                plain(record),
                plain(evidence.join("\n")),
            ]);
        }
        Block::Table { alt, print: Print::Smaller, columns, rows }
    }
}

/// "tear, front to back 18 mm (line 22); …".
fn places(of: &[RecordPlace]) -> String {
    let shown: Vec<String> = of
        .iter()
        .map(|place| {
            let last = place.path.rsplit_once('.').map_or(place.path.as_str(), |(_, last)| last);
            match place.line {
                Some(line) => format!("{} {} (line {line})", last.replace('_', " "), place.shown),
                None => format!("{} {}", last.replace('_', " "), place.shown),
            }
        })
        .collect();
    shown.join("; ")
}

/// "staged-passive-start = day 14: what its sources may be shown as, or the mark".
pub(crate) fn sourced(entry: &Entry) -> String {
    let number = measure(entry).map_or(String::new(), |value| format!(" = {value}"));
    format!("{}{number}: {}", entry.id, known_from(entry))
}

/// The sources of an entry as a page may show them, or its mark.
pub(crate) fn known_from(entry: &Entry) -> String {
    if let Some(mark) = entry.how_known.mark() {
        return format!("[{mark}]");
    }
    let mut shown: Vec<&str> = Vec::new();
    for source in entry.sources.iter().filter_map(|key| evidence::source(key)) {
        if !shown.contains(&source.shown_as) {
            shown.push(source.shown_as);
        }
    }
    shown.join("; ")
}

/// The number of an entry with its unit, as the trade writes it.
pub(crate) fn measure(entry: &Entry) -> Option<String> {
    let value = entry.value?;
    Some(match entry.unit {
        Unit::Day => format!("day {value}"),
        Unit::Degrees => format!("{value}°"),
        Unit::Celsius => format!("{value} °C"),
        Unit::None => value.to_string(),
        unit => format!("{value} {}", unit.name()),
    })
}
