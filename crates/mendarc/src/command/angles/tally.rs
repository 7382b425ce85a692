//! What was found in a file of any length, in little memory.

use body::FrameCheck;
use diagnostic::{Diagnostic, Severity};

use super::rows::RowFault;
use crate::command::found::Found;
use crate::view::angles::Summary;

/// So many of one kind are told one by one; the others are counted.
const TOLD_OF_A_KIND: usize = 20;

/// Findings of one kind.
#[derive(Debug, Default)]
struct Kind {
    told: Vec<Found>,
    count: u64,
    last_line: u64,
}

/// What was found, and what a file is like as a whole.
#[derive(Debug, Default)]
pub struct Tally {
    kinds: [Kind; RowFault::CODES.len()],
    of_run: Vec<Found>,
    pub errors: u64,
    pub summary: Summary,
    /// Set where reading stopped halfway.
    pub cannot_read: Option<std::io::Error>,
}

impl Tally {
    /// Where reading stopped.
    pub fn stopped(error: std::io::Error) -> Self {
        Self { cannot_read: Some(error), ..Self::default() }
    }

    /// Adds a finding of the whole run.
    pub fn add(&mut self, found: Found) {
        self.errors += u64::from(found.diagnostic.severity == Severity::Error);
        self.of_run.push(found);
    }

    /// Adds a fault of a row; made into words only where it is told.
    pub fn add_row(&mut self, fault: RowFault, line: &[u8], number: u64, check: Option<&FrameCheck>) {
        self.errors += u64::from(fault != RowFault::Off);
        let kind = &mut self.kinds[fault.index()];
        kind.count += 1;
        kind.last_line = number;
        if kind.told.len() < TOLD_OF_A_KIND {
            kind.told.push(fault.told(line, number, check));
        }
    }

    /// Adds what was found further on.
    pub fn extend(&mut self, later: Self) {
        self.errors += later.errors;
        for (kind, mut more) in self.kinds.iter_mut().zip(later.kinds) {
            more.told.truncate(TOLD_OF_A_KIND - kind.told.len());
            kind.told.append(&mut more.told);
            kind.count += more.count;
            kind.last_line = kind.last_line.max(more.last_line);
        }
        self.summary.extend(&later.summary);
        self.cannot_read = self.cannot_read.take().or(later.cannot_read);
    }

    /// Everything that is told: errors first, then by place, then how many more there are of each kind.
    pub fn all(&self) -> Vec<Found> {
        let mut all: Vec<Found> = self.of_run.clone();
        if let Some(error) = &self.cannot_read {
            all.push(Found::of_run(Diagnostic::error("cannot-read", format!("reading stopped halfway: {error}"))));
        }
        all.extend(self.kinds.iter().flat_map(|kind| kind.told.iter().cloned()));
        all.sort_by_key(|found| (found.diagnostic.severity, found.place));
        for (kind, code) in self.kinds.iter().zip(RowFault::CODES) {
            let more = kind.count - kind.told.len() as u64;
            if more > 0 {
                let message = format!("{more} more rows have `{code}`, the last in line {}", kind.last_line);
                let fault = Diagnostic::warning("more-findings", message);
                all.push(Found::of_run(fault.help("mend these first and run it again")));
            }
        }
        all
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_million_bad_rows_are_twenty_and_a_number() {
        let mut tally = Tally::default();
        for piece in 0..1000_u64 {
            let mut later = Tally::default();
            (0..1000).for_each(|row| later.add_row(RowFault::Cells, b"1,2", 2 + piece * 1000 + row, None));
            assert!(later.kinds.iter().all(|kind| kind.told.len() <= TOLD_OF_A_KIND));
            tally.extend(later);
        }
        let all = tally.all();
        assert_eq!((tally.errors, all.len()), (1_000_000, TOLD_OF_A_KIND + 1));
        let places: Vec<u64> = all.iter().filter_map(|found| found.place).map(|(line, _)| line).collect();
        assert_eq!(places, (2..22).collect::<Vec<u64>>());
        let last = all.last().expect("there are some");
        assert_eq!(last.diagnostic.message, "999980 more rows have `cells-in-row`, the last in line 1000001");
    }
}
