//! Reasons, each once and numbered, with their place in the record and their evidence.

use evidence::{Entry, Unit};
use plan::{Reason, RecordPlace};

use crate::document::{Block, Column, Print};
use crate::limits_table::plain;
use crate::texts::Texts;

/// Reasons that a page refers to by number.
#[derive(Debug, Clone, Default)]
pub(crate) struct ReasonsList {
    reasons: Vec<Reason>,
    /// The evidence, in the order of its numbers.
    entries: Vec<&'static Entry>,
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
        let numbers = reasons.into_iter().map(|reason| self.number(reason)).collect();
        runs(numbers, "")
    }

    /// The reasons of a line: what only says that the line stands in the protocol is told by its evidence.
    ///
    /// # Method
    /// The rule of a criterion, a gate, an exercise, a return or a goal says in its text what the line says
    /// already; a number in the list would lead to the same words again.
    pub fn refer_line<'r>(&mut self, reasons: impl IntoIterator<Item = &'r Reason>) -> String {
        const OWN: &[&str] = &["criterion/", "gate/", "/exercise/", "/return/", "/goal/"];
        let (own, others): (Vec<&Reason>, Vec<&Reason>) = reasons
            .into_iter()
            .partition(|reason| !reason.evidence.is_empty() && OWN.iter().any(|own| reason.rule.contains(own)));
        let entries: Vec<&'static Entry> = own.into_iter().flat_map(|reason| &reason.evidence).copied().collect();
        let (numbers, entries) = (self.refer(others), self.refer_entries(&entries));
        let parts: Vec<String> = [numbers, entries].into_iter().filter(|part| !part.is_empty()).collect();
        parts.join(", ")
    }

    /// The numbers of some entries of evidence: "E1, E3–E5".
    pub fn refer_entries(&mut self, entries: &[&'static Entry]) -> String {
        let numbers = entries.iter().map(|entry| self.number_of_entry(entry)).collect();
        runs(numbers, "E")
    }

    fn number_of_entry(&mut self, entry: &'static Entry) -> usize {
        let known = self.entries.iter().position(|known| known.id == entry.id);
        let place = known.unwrap_or_else(|| {
            self.entries.push(entry);
            self.entries.len() - 1
        });
        place + 1
    }

    /// The reasons, and below them the evidence they name.
    pub fn blocks(mut self, say: &Texts<'_>) -> Vec<Block> {
        let columns = vec![
            Column { title: "no.".into(), share: 0 },
            Column { title: "reason (rule)".into(), share: 5 }, // not medical: widths
            Column { title: "found in the record".into(), share: 4 }, // not medical: widths
            Column { title: "evidence".into(), share: 2 },
        ];
        let mut found: Vec<(usize, Vec<RecordPlace>)> = Vec::new();
        let mut rows = Vec::new();
        for (number, reason) in (1..).zip(self.reasons.clone()) {
            let known = found.iter().find(|(_, places)| *places == reason.record).map(|(first, _)| *first);
            let record = match known {
                _ if reason.record.is_empty() => "for every record".into(),
                Some(first) => format!("as for {first}"),
                None => {
                    let text = places(&reason.record);
                    found.push((number, reason.record));
                    text
                }
            };
            rows.push(vec![
                plain(number.to_string()),
                plain(format!("{} ({})", reason.text, reason.rule)),
                plain(record),
                plain(self.refer_entries(&reason.evidence)),
            ]);
        }
        let reasons = Block::Table { alt: say.get("letter-reasons-alt"), print: Print::Smaller, columns, rows };
        if self.entries.is_empty() {
            return vec![reasons];
        }
        vec![reasons, say.heading(2, "letter-evidence-title"), self.evidence(say)]
    }

    fn evidence(&self, say: &Texts<'_>) -> Block {
        let columns = vec![
            Column { title: "no.".into(), share: 0 },
            Column { title: "value".into(), share: 4 }, // not medical: widths
            Column { title: "is".into(), share: 0 },
            Column { title: "from".into(), share: 4 }, // not medical: widths
            Column { title: "id".into(), share: 3 },   // not medical: widths
        ];
        let rows = (1..)
            .zip(&self.entries)
            .map(|(number, entry)| {
                vec![
                    plain(format!("E{number}")),
                    plain(entry.what.to_owned()),
                    plain(measure(entry).unwrap_or_default()),
                    plain(known_from(entry)),
                    plain(entry.id.to_owned()),
                ]
            })
            .collect();
        Block::Table { alt: say.get("letter-evidence-alt"), print: Print::Smaller, columns, rows }
    }
}

/// Numbers as runs: "1, 3–5".
fn runs(mut numbers: Vec<usize>, before: &str) -> String {
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
            0 => format!("{before}{first}"),
            1 => format!("{before}{first}, {before}{last}"),
            _ => format!("{before}{first}–{before}{last}"),
        })
        .collect();
    runs.join(", ")
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

/// The sources of an entry as a page may show them, or its mark.
fn known_from(entry: &Entry) -> String {
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
        Unit::None | Unit::Count => value.to_string(),
        unit => format!("{value} {}", unit.name()),
    })
}
