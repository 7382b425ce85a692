//! The rows of the ladder: one a load, in columns.

use std::fmt::Write as _;

use body::{Posture, Spread};
use exercise::{Holder, Load, Measured, NoLoad, Whose};
use prescription::ladder::{Muscle, Rung};

use crate::json::ladder::not_known;
use crate::shelf::Shelf;
use crate::view::dates;
use crate::view::ladder::Told;
use crate::view::paint::{FAINT, paint};

/// What is between two columns.
const GAP: &str = "  ";
/// The head of the days.
const FROM: &str = "from";

/// Every load of a ladder as a row; all of one page have the same columns.
pub(super) struct Ladder<'t> {
    heads: Vec<Column>,
    rows: Vec<(&'t Rung<'t>, Vec<String>)>,
    /// The widths of what stands beside an exercise without a number: what is held, and why it has none.
    unranked: [usize; 2],
}

struct Column {
    head: String,
    side: Side,
    width: usize,
}

#[derive(Clone, Copy)]
enum Side {
    Left,
    Right,
}

/// What stands together: what has a number, and what has none for which reason.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Group {
    Ranked,
    NotKnown,
    NotGravity,
}

impl Group {
    const ALL: [Self; 3] = [Self::Ranked, Self::NotKnown, Self::NotGravity]; // not medical: each once

    const fn of(rung: &Rung<'_>) -> Self {
        match rung.load {
            Ok(_) => Self::Ranked,
            Err(NoLoad::NotGravity) => Self::NotGravity,
            Err(NoLoad::MassUnknown | NoLoad::NotAnExercise | NoLoad::NoTable) => Self::NotKnown,
        }
    }

    const fn title(self) -> Option<&'static str> {
        match self {
            Self::Ranked => None,
            Self::NotKnown => Some("Not ranked: their load is not known"),
            Self::NotGravity => Some(
                "Not ranked: their load is not gravity (body weight, band, effort, resistance of a hand, speed, pull of a bag)",
            ),
        }
    }
}

impl<'t> Ladder<'t> {
    /// All rows of what is told.
    pub(super) fn of(told: &'t Told<'t>, shelf: &Shelf) -> Self {
        let muscles: Vec<&str> = told.muscles.iter().map(|muscle| muscle.name()).collect();
        let with_dates = told.prescription.is_some();
        let with_moments = matches!(told.whose, Whose::Known { .. });
        let all = [
            (true, "", Side::Left),
            (with_dates, FROM, Side::Left),
            (true, "weight", Side::Left),
            (true, "times", Side::Right),
            (true, "peak at", Side::Right),
            (with_moments, "N·m", Side::Right),
            (true, "held", Side::Right),
            (true, &muscles.join(" / "), Side::Left),
            (true, "", Side::Left),
        ];
        // An exercise without a number takes the first of these columns only.
        let is_ranked = |rung: &Rung<'_>| Group::of(rung) == Group::Ranked;
        let named = 1 + usize::from(with_dates);
        let shown = |place: usize| all.get(place).is_some_and(|column| column.0);
        let rows: Vec<(&Rung<'_>, Vec<String>)> = told
            .rungs
            .iter()
            .map(|rung| {
                let cells = cells(rung, told, shelf).into_iter().enumerate();
                (rung, cells.filter(|(place, _)| shown(*place)).map(|(_, cell)| cell).collect())
            })
            .collect();
        let shown = all.iter().filter(|(is_shown, ..)| *is_shown).enumerate();
        let heads = shown.map(|(place, (_, head, side))| {
            let rows = rows.iter().filter(|(rung, _)| place < named || is_ranked(rung));
            let widths = rows.filter_map(|(_, cells)| Some(cells.get(place)?.chars().count()));
            Column { head: (*head).to_owned(), side: *side, width: widths.fold(head.chars().count(), usize::max) }
        });
        let heads = heads.collect();
        let without = told.rungs.iter().filter(|rung| !is_ranked(rung));
        let unranked = without.fold([0, 0], |[one, other], rung| {
            [one.max(held(rung).chars().count()), other.max(remark(rung).chars().count())]
        });
        Self { heads, rows, unranked }
    }

    /// The rows that are asked for, group by group.
    pub(super) fn print(&self, page: &mut String, asked: impl Fn(&Rung<'_>) -> bool) {
        let rows: Vec<_> = self.rows.iter().filter(|(rung, _)| asked(rung)).collect();
        for group in Group::ALL {
            let of_group: Vec<_> = rows.iter().filter(|(rung, _)| Group::of(rung) == group).collect();
            if of_group.is_empty() {
                continue;
            }
            match group.title() {
                None => {
                    let heads: Vec<&str> = self.heads.iter().map(|column| column.head.as_str()).collect();
                    let _ = writeln!(page, "{}", paint(FAINT, &self.line(&heads)));
                }
                Some(title) => {
                    let _ = writeln!(page, "  {}", paint(FAINT, title));
                }
            }
            for (rung, cells) in of_group {
                let cells: Vec<&str> = cells.iter().map(String::as_str).collect();
                let line = if group == Group::Ranked { self.line(&cells) } else { self.unranked(rung, &cells) };
                let _ = writeln!(page, "{line}");
            }
        }
    }

    /// A row without a number: after its name and day a dash, what is held, why, and the muscles.
    fn unranked(&self, rung: &Rung<'_>, cells: &[&str]) -> String {
        let places = |column: &&Column| column.head.is_empty() || column.head == FROM;
        let named = self.heads.iter().take_while(places).count();
        let [held_width, why_width] = self.unranked;
        let muscles = cells.get(cells.len().saturating_sub(2)).copied().unwrap_or_default();
        let (held, why) = (held(rung), remark(rung));
        let mut parts = vec![self.line(cells.get(..named).unwrap_or_default()), "–".to_owned()];
        let width = self.heads.iter().take(named).map(|column| GAP.len() + column.width).sum::<usize>();
        parts[0] = format!("{:width$}", parts[0]);
        parts.extend([format!("{held:>held_width$}"), format!("{why:why_width$}"), muscles.to_owned()]);
        parts.join(GAP).trim_end().to_owned()
    }

    fn line(&self, cells: &[&str]) -> String {
        let cells = self.heads.iter().zip(cells).map(|(Column { side, width, .. }, cell)| match side {
            Side::Left => format!("{cell:width$}"),
            Side::Right => format!("{cell:>width$}"),
        });
        format!("{GAP}{}", cells.collect::<Vec<_>>().join(GAP)).trim_end().to_owned()
    }
}

/// One for each column, whether it is shown or not.
fn cells(rung: &Rung<'_>, told: &Told<'_>, shelf: &Shelf) -> Vec<String> {
    let load = rung.load.as_ref().ok();
    let holds = load.filter(|load| load.middle() > 0.0);
    let muscles: Vec<String> = told.muscles.iter().map(|muscle| activity(*muscle, rung)).collect();
    vec![
        shelf.title(&rung.entry.id),
        later(rung, told),
        rung.entry.holder().filter(|_| load.is_some()).map_or_else(String::new, |holder| weight(holder).to_owned()),
        load.map_or_else(|| "–".to_owned(), |load| format!("{:.2}", load.middle())),
        holds.map_or_else(String::new, |load| format!("{:.0}°", load.elevation.degrees().abs())),
        load.and_then(Load::moment_nm).map_or_else(String::new, |moment| range(moment, 1)),
        held(rung),
        muscles.join(" / "),
        remark(rung),
    ]
}

fn held(rung: &Rung<'_>) -> String {
    rung.held.map_or_else(String::new, |held| format!("{held} kg"))
}

/// The first day of a load, where that is not the first of its stage.
fn later(rung: &Rung<'_>, told: &Told<'_>) -> String {
    let stages = told.prescription.map(|prescription| (prescription, prescription.stages.iter()));
    let of_stage = stages.and_then(|(prescription, mut stages)| {
        Some((prescription, stages.find(|stage| Some(stage.id.as_str()) == rung.stage)?))
    });
    match (of_stage, rung.from_day) {
        (Some((prescription, stage)), Some(day)) if day != stage.from_day => {
            format!("{} (day {})", dates::short(day.date(prescription.operated_on)), day.count())
        }
        _ => String::new(),
    }
}

const fn weight(holder: Holder) -> &'static str {
    match holder {
        Holder::Own => "own",
        Holder::Forearm => "forearm's",
        Holder::Shared => "helped",
        Holder::Carried => "carried",
        Holder::Hanging => "hangs",
    }
}

/// Why there is no number, or where it is met.
fn remark(rung: &Rung<'_>) -> String {
    match &rung.load {
        Err(NoLoad::NotGravity) => {
            rung.entry.beyond_gravity().iter().map(|beyond| beyond.name()).collect::<Vec<_>>().join(", ")
        }
        Err(why) => not_known(*why).to_owned(),
        Ok(load) => {
            let just_off = load.elevation.degrees() < 2.0 && load.middle() > 0.0;
            let raises = rung.entry.target().is_some_and(|target| target.key.joint == body::Joint::Shoulder);
            match rung.entry.posture {
                Posture::LyingOnTheBack if just_off && raises && rung.entry.holder() != Some(Holder::Forearm) => {
                    "heaviest only just off the bed".to_owned()
                }
                _ => String::new(),
            }
        }
    }
}

fn activity(muscle: Muscle, rung: &Rung<'_>) -> String {
    muscle.measured_in(rung.entry).map_or_else(|| "not measured".to_owned(), told)
}

fn told(measured: Measured) -> String {
    match measured.evidence.how_known.mark() {
        None => measured.class.name().to_owned(),
        Some(mark) => format!("{} ({mark})", measured.class.name()),
    }
}

/// One number where both ends print alike.
pub(super) fn range(spread: Spread, places: usize) -> String {
    let [least, most] = [spread.least, spread.most].map(|value| format!("{value:.places$}"));
    if least == most { most } else { format!("{least} to {most}") }
}
