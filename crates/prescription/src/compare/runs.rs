//! Values on runs of days.

/// A value on a run of days.
#[derive(Debug, Clone, PartialEq)]
pub struct Run<T> {
    /// First day.
    pub from: u16,
    /// First day after.
    pub until: u16,
    /// What holds on these days.
    pub value: T,
}

/// Values on runs of days, in order; days between runs have none.
#[derive(Debug, Clone, PartialEq)]
pub struct Runs<T> {
    runs: Vec<Run<T>>,
}

impl<T> Default for Runs<T> {
    fn default() -> Self {
        Self { runs: Vec::new() }
    }
}

impl<T: PartialEq> Runs<T> {
    /// Adds a run after the last one; equal neighbors join, and a run of no days is left out.
    pub fn push(&mut self, from: u16, until: u16, value: T) {
        let from = self.runs.last().map_or(from, |last| from.max(last.until));
        if from >= until {
            return;
        }
        match self.runs.last_mut() {
            Some(last) if last.until == from && last.value == value => last.until = until,
            _ => self.runs.push(Run { from, until, value }),
        }
    }

    /// What holds on a day.
    pub fn at(&self, day: u16) -> Option<&T> {
        let after = self.runs.partition_point(|run| run.from <= day);
        let run = &self.runs[after.checked_sub(1)?];
        (day < run.until).then_some(&run.value)
    }

    /// The runs, in order.
    pub fn iter(&self) -> impl Iterator<Item = &Run<T>> {
        self.runs.iter()
    }

    /// The first and the last border of every run.
    pub(super) fn borders(&self) -> impl Iterator<Item = u16> {
        self.runs.iter().flat_map(|run| [run.from, run.until])
    }
}

/// The borders that cut the days up to the horizon into pieces, in order.
pub(super) fn pieces(borders: impl Iterator<Item = u16>, horizon: u16) -> Vec<(u16, u16)> {
    let mut days: Vec<u16> = borders.filter(|&day| day < horizon).chain([0, horizon]).collect();
    days.sort_unstable();
    days.dedup();
    days.windows(2).map(|pair| (pair[0], pair[1])).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_neighbors_join_and_gaps_stay() {
        let mut runs = Runs::default();
        for (from, until, value) in [(0, 14, 'a'), (14, 20, 'a'), (20, 20, 'b'), (30, 42, 'b'), (35, 50, 'c')] {
            runs.push(from, until, value);
        }
        let shown: Vec<(u16, u16, char)> = runs.iter().map(|run| (run.from, run.until, run.value)).collect();
        assert_eq!(shown, [(0, 20, 'a'), (30, 42, 'b'), (42, 50, 'c')]);
        assert_eq!(
            [0, 19, 20, 29, 30, 41, 42, 49, 50].map(|day| runs.at(day).copied()),
            [Some('a'), Some('a'), None, None, Some('b'), Some('b'), Some('c'), Some('c'), None]
        );
    }

    #[test]
    fn pieces_cover_the_days_once() {
        assert_eq!(pieces([14, 42, 14, 400].into_iter(), 365), [(0, 14), (14, 42), (42, 365)]);
        assert_eq!(pieces([].into_iter(), 1), [(0, 1)]);
        assert_eq!(pieces([5].into_iter(), 0), []);
    }
}
