//! How lines are told apart: by dash, marker and lightness, never by color alone.

use super::super::error::ChartError;
use super::super::tones::{EDGE, HEAVY, LINE, THIN, cut, dashed, dotted};
use super::{Multiples, Series};
use crate::color::Color;
use crate::svg::Stroke;

/// The kinds of things that are told apart among themselves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Readings,
    Band,
    Steps,
    Funnel,
    Reference,
}

impl Kind {
    pub(super) const fn of(series: &Series) -> Self {
        match series {
            Series::Line { .. } | Series::Points { .. } => Self::Readings,
            Series::Band { .. } => Self::Band,
            Series::Steps { .. } => Self::Steps,
            Series::Funnel { .. } => Self::Funnel,
            Series::Reference { .. } => Self::Reference,
        }
    }

    const fn most(self) -> usize {
        match self {
            Self::Readings => READINGS.len(),
            Self::Band => 1,
            Self::Steps => STEPS.len(),
            Self::Funnel => FUNNELS.len(),
            // They carry their text themselves.
            Self::Reference => usize::MAX,
        }
    }
}

/// The shape of a marker.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Marker {
    Disk,
    OpenSquare,
    Triangle,
    OpenDiamond,
}

/// How readings are drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Look {
    pub(super) marker: Marker,
    pub(super) line: Stroke,
}

pub(super) const READINGS: [Look; 4] = [
    Look { marker: Marker::Disk, line: Stroke::new(Color::INK, LINE) },
    Look { marker: Marker::OpenSquare, line: dashed(Color::MOVEMENT, LINE, 2.2, 1.1) },
    Look { marker: Marker::Triangle, line: dotted(Color::HATCH, LINE, 1.3) },
    Look { marker: Marker::OpenDiamond, line: dashed(Color::GHOST, LINE, 0.8, 0.7) },
];
pub(super) const STEPS: [Stroke; 2] = [cut(Color::STOP, HEAVY * 0.8), dashed(Color::STOP, HEAVY * 0.8, 2.8, 1.0)];
pub(super) const FUNNELS: [Stroke; 2] = [dashed(Color::INK, EDGE, 1.6, 1.0), dotted(Color::INK, EDGE, 0.9)];
pub(super) const MIDDLE: Stroke = dashed(Color::MOVEMENT, EDGE, 3.4, 0.9);
pub(super) const CENTER: Stroke = cut(Color::INK, EDGE);
pub(super) const REFERENCE: Stroke = dashed(Color::INK, THIN, 4.0, 0.7);

/// The names of each kind, in the order in which they first come; their places are the numbers of their looks.
#[derive(Debug, Default)]
pub(super) struct Names(Vec<(Kind, String)>);

impl Names {
    /// Those of all charts: the same name looks the same in each.
    pub(super) fn of(multiples: &Multiples) -> Result<Self, ChartError> {
        let mut names = Self::default();
        for panel in &multiples.panels {
            for (kind, name) in panel_names(&panel.series) {
                if names.place(kind, &name).is_none() {
                    names.0.push((kind, name));
                }
                let most = kind.most();
                if names.0.iter().filter(|(other, _)| *other == kind).count() > most {
                    return Err(ChartError::TooManyLines { most });
                }
            }
            // Two of one name in one chart would be one in the legend.
            let own = panel_names(&panel.series);
            for (index, (kind, name)) in own.iter().enumerate() {
                let is_twice = own[..index].iter().any(|(other, known)| other == kind && known == name);
                if is_twice && *kind != Kind::Reference {
                    return Err(ChartError::TooManyLines { most: 1 });
                }
            }
        }
        Ok(names)
    }

    /// The number of a look.
    pub(super) fn place(&self, kind: Kind, name: &str) -> Option<usize> {
        let own = self.0.iter().filter(|(other, _)| *other == kind);
        own.map(|(_, name)| name).position(|known| known == name)
    }

    /// Each kind and name with the number of its look.
    pub(super) fn all(&self) -> impl Iterator<Item = (Kind, &str, usize)> {
        self.0.iter().filter_map(|(kind, name)| Some((*kind, name.as_str(), self.place(*kind, name)?)))
    }
}

/// The kinds and names of a chart.
fn panel_names(series: &[Series]) -> Vec<(Kind, String)> {
    series.iter().map(|series| (Kind::of(series), series.name().to_owned())).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    // Told apart in black and white: no two have the same dash, and no two the same marker.
    #[test]
    fn looks_differ_in_shape() {
        for (index, one) in READINGS.iter().enumerate() {
            for other in &READINGS[..index] {
                assert_ne!(one.marker, other.marker);
                assert_ne!(one.line.dash_mm, other.line.dash_mm);
            }
        }
        assert_ne!(STEPS[0].dash_mm, STEPS[1].dash_mm);
        assert_ne!(FUNNELS[0].dash_mm, FUNNELS[1].dash_mm);
    }
}
