//! Names inside spans, numbers of weeks and dates under the line.

use super::super::scale::{Scale, week_ticks};
use super::super::text_width::{width_mm, wrapped};
use super::super::tones::{GAP, SMALL};
use super::{Label, RecoveryLine};
use crate::svg::Weight;

/// The lines of a name inside its span, and where they begin.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Name {
    pub(super) lines: Vec<String>,
    pub(super) x: f64,
}

/// A name inside a span, clear of the mark of today; `None` where it fits in none of its forms.
pub(super) fn inside(
    [left, right]: [f64; 2],
    today: Option<f64>,
    label: &Label,
    weight: Weight,
    most_lines: usize,
) -> Option<Name> {
    let [from, until] = clear([left + PAD, right - PAD], today);
    label.forms().find_map(|form| {
        let lines = wrapped(form, SMALL, weight, until - from)?;
        (lines.len() <= most_lines).then_some(Name { lines, x: from })
    })
}

/// The part of a span that the mark of today leaves free: the wider one, the left one where both are alike.
pub(super) fn clear([left, right]: [f64; 2], today: Option<f64>) -> [f64; 2] {
    let Some(x) = today.filter(|x| left < x + STRIP && x - STRIP < right) else { return [left, right] };
    let (before, after) = ([left, x - STRIP], [x + STRIP, right]);
    if after[1] - after[0] > before[1] - before[0] { after } else { before }
}

/// A number or date under the line.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Under {
    pub(super) day: u16,
    pub(super) text: String,
    /// Its left end.
    pub(super) x: f64,
}

/// The numbers of weeks for which there is room.
pub(super) fn weeks(line: &RecoveryLine, days: &Scale, ends: [f64; 2]) -> Vec<Under> {
    let until = f64::from(line.until_day);
    let first = format!("{} 0", line.week_word);
    let first = Under { day: 0, x: days.at(0.0), text: first };
    let clear = first.x + width_mm(&first.text, SMALL, Weight::Regular) + GAP;
    for most in (1..=MOST_WEEKS).rev() {
        let ticks = week_ticks([0.0, until], most);
        let rest = ticks.into_iter().filter(|day| *day > 0.0);
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a day of the line")]
        let rest = rest.map(|day| (day as u16, format!("{:.0}", day / super::super::scale::DAYS_A_WEEK)));
        // Those under the word at the beginning are left out; all others have to fit.
        let rest = centered(rest, days, ends).into_iter().filter(|under| clear <= under.x);
        let all: Vec<Under> = std::iter::once(first.clone()).chain(rest).collect();
        if fit(&all) {
            return all;
        }
    }
    vec![first]
}

/// The dates for which there is room: all, every second, every third, …
pub(super) fn dates(line: &RecoveryLine, days: &Scale, ends: [f64; 2]) -> Vec<Under> {
    let all = centered(line.dates.iter().cloned(), days, ends);
    (1..=all.len().max(1))
        .map(|stride| all.iter().step_by(stride).cloned().collect::<Vec<_>>())
        .find(|some| fit(some))
        .unwrap_or_default()
}

fn centered(texts: impl Iterator<Item = (u16, String)>, days: &Scale, [left, right]: [f64; 2]) -> Vec<Under> {
    texts
        .map(|(day, text)| {
            let width = width_mm(&text, SMALL, Weight::Regular);
            // What belongs to the beginning begins there.
            let half = if day == 0 { 0.0 } else { width / 2.0 };
            let x = days.at(f64::from(day)) - half;
            Under { day, text, x: x.min(right - width).max(left) }
        })
        .collect()
}

fn fit(row: &[Under]) -> bool {
    row.windows(2).all(|pair| pair[0].x + width_mm(&pair[0].text, SMALL, Weight::Regular) + GAP <= pair[1].x)
}

/// Between the edge of a span and its name, in millimeters.
const PAD: f64 = 1.1;
/// Half of what the mark of today keeps free.
const STRIP: f64 = 1.4;
/// More numbers than fit on the widest line.
const MOST_WEEKS: u16 = 120;
