//! What many rows come to, kept while they stream by.

use std::fmt;

use body::{Angle, ClinicalReading, Movement, Thoracohumeral};

/// An angle and the line it stands in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Extreme {
    pub angle: Angle,
    pub line: u64,
}

impl fmt::Display for Extreme {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:.1} (line {})", self.angle, self.line)
    }
}

/// A movement among the rows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seen {
    pub movement: Movement,
    pub rows: u64,
    pub most: Extreme,
}

/// The movements a row may have the name of.
const NAMED: [Movement; 5] = [
    Movement::ForwardElevation,
    Movement::ScapularPlaneElevation,
    Movement::Abduction,
    Movement::Extension,
    Movement::HorizontalAdduction,
];

/// What rows come to.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Summary {
    pub rows: u64,
    /// Rows without angles.
    pub refused: u64,
    /// Rows where plane and axial rotation have no value.
    pub undefined: u64,
    pub not_orthonormal: u64,
    /// The largest departure from orthonormal among rows with angles, and its line.
    pub largest_defect: Option<(f64, u64)>,
    pub lowest: Option<Extreme>,
    pub highest: Option<Extreme>,
    /// The least outward turn.
    pub inmost: Option<Extreme>,
    pub outmost: Option<Extreme>,
    movements: [Option<Seen>; NAMED.len()],
}

impl Summary {
    /// Rows with angles.
    pub const fn read(&self) -> u64 {
        self.rows - self.refused
    }

    /// The movements among the rows.
    pub fn movements(&self) -> impl Iterator<Item = &Seen> {
        self.movements.iter().flatten()
    }

    /// Counts a row without angles.
    pub const fn refused(&mut self) {
        self.rows += 1;
        self.refused += 1;
    }

    /// Counts a row with angles.
    pub fn add(&mut self, line: u64, angles: &Thoracohumeral, clinical: &ClinicalReading, defect: f64, is_off: bool) {
        self.rows += 1;
        self.undefined += u64::from(!angles.is_defined());
        self.not_orthonormal += u64::from(is_off);
        if self.largest_defect.is_none_or(|(largest, _)| defect > largest) {
            self.largest_defect = Some((defect, line));
        }
        let at = |angle: Angle| Some(Extreme { angle, line });
        keep(&mut self.lowest, at(angles.elevation()), Less);
        keep(&mut self.highest, at(angles.elevation()), More);
        keep(&mut self.inmost, clinical.outward.and_then(at), Less);
        keep(&mut self.outmost, clinical.outward.and_then(at), More);
        if let Some((movement, angle)) = clinical.movement() {
            self.see(Seen { movement, rows: 1, most: Extreme { angle, line } });
        }
    }

    /// Adds the rows further on.
    pub fn extend(&mut self, later: &Self) {
        self.rows += later.rows;
        self.refused += later.refused;
        self.undefined += later.undefined;
        self.not_orthonormal += later.not_orthonormal;
        if let Some((defect, line)) = later.largest_defect
            && self.largest_defect.is_none_or(|(largest, _)| defect > largest)
        {
            self.largest_defect = Some((defect, line));
        }
        keep(&mut self.lowest, later.lowest, Less);
        keep(&mut self.highest, later.highest, More);
        keep(&mut self.inmost, later.inmost, Less);
        keep(&mut self.outmost, later.outmost, More);
        later.movements().for_each(|seen| self.see(*seen));
    }

    fn see(&mut self, seen: Seen) {
        let Some(place) = NAMED.iter().position(|movement| *movement == seen.movement) else { return };
        let known = &mut self.movements[place];
        *known = Some(match known {
            None => seen,
            Some(known) => Seen {
                movement: seen.movement,
                rows: known.rows + seen.rows,
                most: if seen.most.angle > known.most.angle { seen.most } else { known.most },
            },
        });
    }
}

/// Which of two is kept; of equal ones the earlier.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kept {
    Less,
    More,
}
use Kept::{Less, More};

fn keep(known: &mut Option<Extreme>, next: Option<Extreme>, kept: Kept) {
    let Some(next) = next else { return };
    let replaces = known.is_none_or(|known| match kept {
        Less => next.angle < known.angle,
        More => next.angle > known.angle,
    });
    if replaces {
        *known = Some(next);
    }
}

#[cfg(test)]
mod tests {
    use body::Shoulder;

    use super::*;

    #[test]
    fn parts_come_to_the_same_as_the_whole() {
        let rows: Vec<Shoulder> = (0..60)
            .map(|at| {
                let angle = |step: f64, most: f64| Angle::from_degrees((f64::from(at) * step) % most);
                Shoulder::raised(angle(47.0, 180.0), angle(31.0, 170.0)).turned_outward(angle(23.0, 60.0))
            })
            .collect();
        let of = |from: usize, until: usize| {
            let mut summary = Summary::default();
            for (at, row) in rows.iter().enumerate().take(until).skip(from) {
                let angles = Thoracohumeral::of(row.humerus());
                summary.add(at as u64, &angles, &ClinicalReading::of(&angles), at as f64 * 1e-9, false);
            }
            summary
        };
        let mut parts = of(0, 17);
        parts.refused();
        parts.extend(&of(17, 18));
        parts.extend(&of(18, 60));
        let mut whole = of(0, 60);
        whole.refused();
        assert_eq!(parts, whole);
        assert_eq!((whole.rows, whole.read()), (61, 60));
        assert!(whole.movements().count() >= 3);
    }
}
